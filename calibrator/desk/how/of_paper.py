"""How what is printed came about: the lines of a label, a lot sheet's figures, a chart's row."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import datetime

from calibrator.desk.guide import Guide
from calibrator.desk.how.of_batch import of_row
from calibrator.desk.how.of_line import of_line
from calibrator.desk.how.working import Working
from calibrator.desk.label_lines import LineOffer
from calibrator.desk.paper_jobs import ChartJob
from calibrator.desk.paper_making import Chosen, LotPaper, Want
from calibrator.desk.weigh_in.workings import check_workings, level_workings, line_workings
from calibrator.model import Scoop, SignOff, WeighIn
from calibrator.records import Records
from calibrator.science.mark import reach_95
from calibrator.science.scoop import rim_volume_ml
from calibrator.science.settling import Settling

Clock = Callable[[], datetime]


def of_paper(paper: LotPaper, chosen: Chosen, clock: Clock) -> tuple[Working, ...]:
    """What stands behind the print that is chosen; nothing where nothing is."""
    if chosen.want is Want.CHART:
        return tuple(_of_chart(paper, chosen, clock()))
    of_scoop = _of_label if chosen.want is Want.LABELS else _of_sheet
    return tuple(
        working
        for scoop in paper.scoops
        if scoop.id in chosen.lines
        for working in of_scoop(paper, paper.signed[scoop.id], chosen.lines[scoop.id], clock)
    )


def of_signed(records: Records, signed: SignOff, clock: Clock) -> tuple[Working, ...]:
    """Behind a sign-off, worked out anew from the fills that it rests on: scoopful, density, line, verdicts."""
    guide = Guide(records, records.find(WeighIn, signed.weigh_in_id), clock)
    return (*level_workings(guide), *line_workings(guide), *check_workings(guide))


def _of_sheet(paper: LotPaper, signed: SignOff, lines: tuple[LineOffer, ...], clock: Clock) -> tuple[Working, ...]:
    return of_signed(paper.records, signed, clock)


def _of_label(paper: LotPaper, signed: SignOff, lines: tuple[LineOffer, ...], clock: Clock) -> tuple[Working, ...]:
    drawn: tuple[Working, ...] = ()
    if any(offer.reckoned is None for offer in lines):
        drawn = line_workings(Guide(paper.records, paper.records.find(WeighIn, signed.weigh_in_id), clock))[:1]
    return (*drawn, *_reckoned(paper, signed, lines))


def _reckoned(paper: LotPaper, signed: SignOff, lines: tuple[LineOffer, ...]) -> Iterator[Working]:
    shape = paper.records.revision(Scoop, signed.scoop_revision).shape
    settling = Settling(signed.settling_factor, signed.settling_u, 0)
    for offer in lines:
        if (line := offer.reckoned) is not None:
            reach = reach_95(line, signed.degrees_of_freedom)
            yield of_line(line, signed.level_mean_g, settling, reach, rim_volume_ml(shape), paper.farm.units)


def _of_chart(paper: LotPaper, chosen: Chosen, at: datetime) -> Iterator[Working]:
    job = paper.job(chosen, at, "")
    if not isinstance(job, ChartJob):
        return
    group = next((each for each in job.sheet.groups if each.today_line), None)
    if group is not None and (line := group.today_line):
        yield from of_row(job.sheet, group, line)
