"""What can be printed for a lot, read at one moment, and what a person's choice comes to. No window needed."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import date, datetime
from enum import StrEnum
from functools import cached_property

from calibrator.desk.label_asked import asked_offers
from calibrator.desk.label_lines import LineOffer, line_offers, weights_in_use
from calibrator.desk.paper_facts import LineNames, Options, lot_sheet_facts, weeks_facts
from calibrator.desk.paper_jobs import ChartJob, Job, LabelJob, LotSheetJob, ScoopChoice
from calibrator.desk.scoop_lines import ScoopState, is_drawn, lines_to_wipe_out, scoop_state
from calibrator.desk.sheets import LotInUse, chart_plan, feeding_count, label_step_g, plan_sheet, powder_of
from calibrator.desk.standing import LotStanding, Standing, standing
from calibrator.model import Farm, Plan, Scoop, SignOff, Vessel, WeighIn
from calibrator.prints.chart_facts import TwoLots
from calibrator.prints.label_facts import LineCount, LineUse, same_weight
from calibrator.records import Records
from calibrator.science.errors import CannotCompute
from calibrator.values import dataclass


class Want(StrEnum):
    """What can be printed."""

    LABELS = "labels"
    CHART = "chart"
    LOT_SHEET = "lot_sheet"


@dataclass(frozen=True)
class Chosen:
    """What a person chose: for labels each scoop's lines, and its wall's thickness."""

    want: Want
    options: Options
    plan_id: str
    lines: Mapping[str, tuple[LineOffer, ...]]  # by scoop, those left out are missing
    walls_mm: Mapping[str, float]
    two_lots: tuple[TwoLots, ...] = ()  # batches of the plan's chart from two lots


@dataclass(frozen=True)
class LotPaper:
    """A lot that is signed off, with all that its prints rest on."""

    records: Records
    farm: Farm
    now: Standing
    known: LotStanding
    scoops: tuple[Scoop, ...]  # those in use that bear a line for the lot
    signed: Mapping[str, SignOff]  # the newest of the lot, by scoop
    plans: tuple[Plan, ...]
    powder: LotInUse
    on: date  # the day that it is read for

    def offers(self, scoop: Scoop) -> tuple[LineOffer, ...]:
        """The lines that a scoop's label can bear."""
        signed = self.signed[scoop.id]
        marks = [mark for mark in self.known.marks if mark.scoop_id == scoop.id]
        feeding_g = self.records.find(WeighIn, signed.weigh_in_id).target_mass_g
        main_g = max(mark.target_mass_g for mark in marks)
        if feeding_g is not None and any(mark.target_mass_g == feeding_g for mark in marks):
            main_g = feeding_g
        as_weighed = self.records.revision(Scoop, signed.scoop_revision)
        weights = tuple(weights_in_use(self.plans, self.powder.powder, self.on))
        offers = line_offers(as_weighed, signed, marks, main_g, weights, feeding_g=feeding_g)
        return tuple(self._counts(signed, asked_offers(self.now, self.known, scoop.id, offers, self.powder.powder)))

    def _counts(self, signed: SignOff, offers: Sequence[LineOffer]) -> Iterator[LineOffer]:
        """The offers, those that can be filled in several ways with what each way comes to."""
        half = next((offer for offer in offers if offer.use is LineUse.HALF and offer.problem is None), None)
        own = [way for way in self.powder.ways if way.scoop_id == signed.scoop_id]

        def counted(offer: LineOffer) -> LineOffer:
            return replace(offer, count=feeding_count(self.records, signed, own, offer, half))

        for offer in offers:
            several = counted(offer) if offer.other_ways else offer
            yield replace(several, other_ways=tuple(counted(one) for one in offer.other_ways))

    def state(self, scoop: Scoop) -> ScoopState:
        """Whether a scoop bears the lot's line."""
        return scoop_state(self.now, self.known, scoop.id)

    def wiped(self, scoop: Scoop) -> bool:
        """Whether an old line has to be wiped out for the lot's."""
        return bool(lines_to_wipe_out(self.now, self.known, scoop.id))

    def drawn(self, scoop: Scoop) -> bool:
        """Whether the lot's line is on a scoop since its weigh-in."""
        return is_drawn(self.now, self.known, scoop.id)

    @cached_property
    def label_step_g(self) -> float:
        """The step that weights are told in on every label of this lot."""
        return label_step_g(self.records, self.signed.values())

    def job(self, chosen: Chosen, at: datetime, by: str) -> Job | None:
        """The print; None where nothing is chosen for it. Raises CannotCompute."""
        make = {Want.LABELS: self._labels, Want.CHART: self._chart, Want.LOT_SHEET: self._lot_sheets}
        return make[chosen.want](chosen, at, by)

    def _labels(self, chosen: Chosen, at: datetime, by: str) -> LabelJob | None:
        scoops = tuple(
            ScoopChoice(
                self.records.revision(Scoop, self.signed[scoop.id].scoop_revision),
                self.signed[scoop.id],
                tuple(offer.line for offer in chosen.lines[scoop.id] if offer.counted is None),
                chosen.walls_mm.get(scoop.id, 0.0),
                tuple(offer.counted for offer in chosen.lines[scoop.id] if offer.counted is not None),
            )
            for scoop in self.scoops
            if scoop.id in chosen.lines
        )
        if not scoops:
            return None
        return LabelJob(self.farm, self.known.lot, scoops, self.label_step_g, chosen.options, at, by)

    def _chart(self, chosen: Chosen, at: datetime, by: str) -> ChartJob | None:
        plan = next((plan for plan in self.plans if plan.id == chosen.plan_id), None)
        if plan is None or self.known.sign_off is None:
            return None
        vessels = {vessel.id: vessel for vessel in self.records.every(Vessel, self.farm.id)}
        shown = chart_plan(plan, at.date(), self.powder)
        sheet = plan_sheet(self.farm, shown, vessels.get(plan.vessel_id or ""), self._powder_by(chosen))
        if sheet.trouble:
            raise CannotCompute(sheet.trouble)
        weeks = weeks_facts(plan, self.powder.powder)
        return ChartJob(
            self.farm,
            sheet,
            self.known.sign_off,
            chosen.options,
            at,
            by,
            chosen.two_lots,
            weeks,
            self._line_names(chosen),
        )

    def _powder_by(self, chosen: Chosen) -> LotInUse:
        """The powder with the lines of the labels that hang, without those that the next labels are to lack."""
        lines = {(id, offer.line.mass_g) for id, offers in chosen.lines.items() for offer in offers}
        own = tuple(
            (target_g, way)
            for target_g, way in self.powder.own_lines
            if way.scoop_id not in chosen.lines or (way.scoop_id, way.mass_g) in lines
        )
        return replace(self.powder, own_lines=own)

    def _line_names(self, chosen: Chosen) -> LineNames:
        """The lines of each scoop whose label is to bear more than one; of one left out, those signed off."""
        held: dict[tuple[str, float], float] = {}
        counts: list[LineCount] = []
        for scoop in self.scoops:
            offers = chosen.lines.get(scoop.id) or [one for one in self.offers(scoop) if not one.line.reckoned]
            lines = [one.line for one in offers if one.counted is None and not one.line.struck_level]
            if len(lines) > 1:
                held |= {(scoop.id, line.mass_g): line.held_g for line in lines}
            counts += self._counted(scoop, chosen.lines.get(scoop.id, ()))
        # Of several scoops nobody would know which one is meant.
        return LineNames(held, self.label_step_g, tuple(counts) if len(self.scoops) == 1 else ())

    def _counted(self, scoop: Scoop, chosen: Sequence[LineOffer]) -> list[LineCount]:
        """The feedings that are told in scoopfuls to the lines of a scoop: those without a line of their own."""
        own_g = [offer.target_g for offer in chosen if offer.counted is None]
        every = (offer.counted for offer in self.offers(scoop) if not _is_among(own_g, offer.target_g))
        return [count for count in every if count is not None]

    def _lot_sheets(self, chosen: Chosen, at: datetime, by: str) -> LotSheetJob | None:
        wanted = [self.signed[scoop.id] for scoop in self.scoops if scoop.id in chosen.lines]
        facts = tuple(lot_sheet_facts(self.records, self.farm, signed, chosen.options, at) for signed in wanted)
        return LotSheetJob(facts, at, by) if facts else None


def lot_paper(records: Records, farm: Farm, lot_id: str, on: date) -> LotPaper | None:
    """What can be printed for a lot (blank: the one in use); None before its first sign-off. Raises CannotCompute."""
    now = standing(records, farm, on)
    known = now.lot(lot_id) if lot_id else now.in_use
    if known is None or known.sign_off is None:
        return None
    having = {mark.scoop_id for mark in known.marks}
    return LotPaper(
        records,
        farm,
        now,
        known,
        tuple(scoop for scoop in now.scoops if scoop.id in having),
        {signed.scoop_id: signed for signed in now.sign_offs if signed.lot_id == known.lot.id},
        tuple(plan for plan in records.every(Plan, farm.id) if plan.retired_on is None),
        powder_of(records, now, known, now.sign_offs),
        on,
    )


def _is_among(masses_g: Sequence[float], mass_g: float) -> bool:
    return any(same_weight(mass_g, each) for each in masses_g)
