"""A print in the making: which sheets it is, and its pages once the sheets have their numbers."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import datetime
from typing import Protocol

from calibrator.desk.hung import never_up, place_of
from calibrator.desk.label_lines import labelled
from calibrator.desk.paper_facts import NO_NAMES, LabelWanted, LineNames, Options, label_sheet_facts, wall_chart_facts
from calibrator.desk.sheets import PlanSheet
from calibrator.model import Farm, LabelledLine, Lot, Printed, PrintKind, Scoop, SheetEnding, SignOff, new_id
from calibrator.model.underway import Underway
from calibrator.prints.chart import wall_chart
from calibrator.prints.chart_facts import TwoLots, Weeks
from calibrator.prints.label_facts import LabelLine, LineCount
from calibrator.prints.labels import scoop_labels
from calibrator.prints.page import Document
from calibrator.prints.record import lot_sheet
from calibrator.prints.record_facts import LotSheet
from calibrator.records import Records
from calibrator.values import dataclass


class Job(Protocol):
    """`sheets` bear no number yet; `document` takes them with their numbers. It raises DoesNotFit."""

    @property
    def at(self) -> datetime: ...

    @property
    def by(self) -> str: ...

    @property
    def sheets(self) -> tuple[Printed, ...]: ...

    def document(self, numbered: Sequence[Printed]) -> Document: ...


@dataclass(frozen=True)
class ScoopChoice:
    """A scoop that gets a label: the lines on it, how thick its wall is (for a wrap), and what is counted by lines."""

    scoop: Scoop
    signed: SignOff
    lines: tuple[LabelLine, ...]
    wall_mm: float = 0.0
    counts: tuple[LineCount, ...] = ()


@dataclass(frozen=True)
class LabelJob:
    """The labels of some scoops for one lot, each a sheet of its own in the records."""

    farm: Farm
    lot: Lot
    scoops: tuple[ScoopChoice, ...]
    resolution_g: float
    options: Options
    at: datetime
    by: str

    @property
    def sheets(self) -> tuple[Printed, ...]:
        return tuple(self._sheet(choice) for choice in self.scoops)

    def document(self, numbered: Sequence[Printed]) -> Document:
        wanted = [
            LabelWanted(choice.scoop, choice.lines, choice.signed, printed, choice.wall_mm, choice.counts)
            for choice, printed in zip(self.scoops, numbered, strict=True)
        ]
        return scoop_labels(label_sheet_facts(self.farm, self.lot, wanted, self.resolution_g, self.options))

    def _sheet(self, choice: ScoopChoice) -> Printed:
        return Printed(
            id=new_id(),
            farm_id=self.farm.id,
            number=0,
            kind=PrintKind.SCOOP_LABEL,
            lot_id=self.lot.id,
            sign_off_id=choice.signed.id,
            at=self.at,
            by=self.by,
            scoop_id=choice.scoop.id,
            lines=tuple(_labelled(choice)),
        )


def _labelled(choice: ScoopChoice) -> Iterator[LabelledLine]:
    """What the records keep of a label: its lines, and what is counted by them."""
    for line in choice.lines:
        yield labelled(line)
    for count in choice.counts:
        yield LabelledLine(target_mass_g=count.target_mass_g, down_wall_mm=None)


@dataclass(frozen=True)
class ChartJob:
    """The wall chart of one plan for the lot of a sign-off."""

    farm: Farm
    sheet: PlanSheet
    signed: SignOff
    options: Options
    at: datetime
    by: str
    two_lots: tuple[TwoLots, ...] = ()
    weeks: tuple[Weeks, ...] = ()
    named: LineNames = NO_NAMES

    @property
    def sheets(self) -> tuple[Printed, ...]:
        return (
            Printed(
                id=new_id(),
                farm_id=self.farm.id,
                number=0,
                kind=PrintKind.WALL_CHART,
                lot_id=self.signed.lot_id,
                sign_off_id=self.signed.id,
                at=self.at,
                by=self.by,
                plan_id=self.sheet.plan.id,
            ),
        )

    def document(self, numbered: Sequence[Printed]) -> Document:
        on, printed, options = self.at.date(), numbered[0], self.options
        facts = wall_chart_facts(
            self.farm, self.sheet, self.signed, printed, on, options, self.two_lots, self.weeks, self.named
        )
        return wall_chart(facts)


@dataclass(frozen=True)
class LotSheetJob:
    """The calibration records of a lot, one for each scoop, each a sheet of its own in the records."""

    facts: tuple[LotSheet, ...]
    at: datetime
    by: str

    @property
    def sheets(self) -> tuple[Printed, ...]:
        return tuple(self._sheet(facts.sign_off) for facts in self.facts)

    def document(self, numbered: Sequence[Printed]) -> Document:
        documents = [
            lot_sheet(replace(facts, number=printed.number, replaces=printed.replaces))
            for facts, printed in zip(self.facts, numbered, strict=True)
        ]
        return Document(documents[0].title, tuple(page for each in documents for page in each.pages))

    def _sheet(self, signed: SignOff) -> Printed:
        return Printed(
            id=new_id(),
            farm_id=signed.farm_id,
            number=0,
            kind=PrintKind.LOT_SHEET,
            lot_id=signed.lot_id,
            sign_off_id=signed.id,
            at=self.at,
            by=self.by,
            scoop_id=signed.scoop_id,
        )


def expected(records: Records, sheets: Sequence[Printed]) -> list[Printed]:
    """The numbers that sheets would bear if they were printed now, and which ones they would replace."""
    before = records.prints(sheets[0].farm_id) if sheets else []
    spoiled = never_up(records.sheet_endings(sheets[0].farm_id)) if sheets else frozenset()
    last = max((sheet.number for sheet in before), default=0)
    hung = [sheet for sheet in before if sheet.id not in spoiled]
    return [_numbered(sheet, last + place, hung) for place, sheet in enumerate(sheets, start=1)]


@dataclass(frozen=True)
class Ready:
    """A print as it is looked at: its sheets with the numbers that they would bear, or bear already."""

    job: Job
    sheets: tuple[Printed, ...]
    document: Document


def ready(records: Records, job: Job, made: tuple[Sequence[Printed], Job] | None, _underway: Underway) -> Ready:
    """The print of a job: where it would be the very same as the one just made, and none has followed, that one."""
    after = expected(records, job.sheets)
    if made is not None and [sheet.replaces for sheet in after] == [sheet.number for sheet in made[0]]:
        sheets, before = made
        document = job.document(sheets)
        if document == before.document(sheets):
            return Ready(job, tuple(sheets), document)
    return Ready(job, tuple(after), job.document(after))


def end_sheets(records: Records, endings: Sequence[SheetEnding]) -> int:
    """Keep what became of sheets; gives of how many."""
    records.end_sheets(endings)
    return len(endings)


def _numbered(sheet: Printed, number: int, before: Sequence[Printed]) -> Printed:
    same = [p.number for p in before if place_of(p) == place_of(sheet)]
    return replace(sheet, number=number, replaces=max(same, default=None))
