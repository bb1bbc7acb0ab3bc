"""A print in the making: which sheets it is, and its pages once the sheets have their numbers."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from typing import Protocol

from calibrator.desk.paper_facts import LabelWanted, Options, label_sheet_facts, wall_chart_facts
from calibrator.desk.sheets import PlanSheet
from calibrator.model import Farm, Lot, Mark, Printed, PrintKind, Scoop, SignOff, new_id
from calibrator.prints.chart import wall_chart
from calibrator.prints.labels import scoop_labels
from calibrator.prints.page import Document
from calibrator.prints.record import lot_sheet
from calibrator.prints.record_facts import LotSheet
from calibrator.records import Records


class Job(Protocol):
    """`sheets` bear no number yet; `document` takes them with their numbers. It raises DoesNotFit."""

    @property
    def sheets(self) -> tuple[Printed, ...]: ...

    def document(self, numbered: Sequence[Printed]) -> Document: ...


@dataclass(frozen=True)
class LabelJob:
    """The labels of some scoops for one lot, each a sheet of its own in the records."""

    farm: Farm
    lot: Lot
    scoops: tuple[Scoop, ...]
    sign_offs: dict[str, SignOff]  # by scoop
    marks: tuple[Mark, ...]
    targets_g: dict[str, float]  # the main target by scoop
    resolution_g: float
    options: Options
    at: datetime
    by: str

    @property
    def sheets(self) -> tuple[Printed, ...]:
        return tuple(self._sheet(scoop) for scoop in self.scoops)

    def document(self, numbered: Sequence[Printed]) -> Document:
        wanted = [self._wanted(scoop, printed) for scoop, printed in zip(self.scoops, numbered, strict=True)]
        return scoop_labels(label_sheet_facts(self.farm, self.lot, wanted, self.resolution_g, self.options))

    def _wanted(self, scoop: Scoop, printed: Printed) -> LabelWanted:
        marks = tuple(mark for mark in self.marks if mark.scoop_id == scoop.id)
        return LabelWanted(scoop, marks, self.sign_offs[scoop.id], self.targets_g[scoop.id], printed)

    def _sheet(self, scoop: Scoop) -> Printed:
        return Printed(
            id=new_id(),
            farm_id=self.farm.id,
            number=0,
            kind=PrintKind.SCOOP_LABEL,
            lot_id=self.lot.id,
            sign_off_id=self.sign_offs[scoop.id].id,
            at=self.at,
            by=self.by,
            scoop_id=scoop.id,
        )


@dataclass(frozen=True)
class ChartJob:
    """The wall chart of one plan for the lot of a sign-off."""

    farm: Farm
    sheet: PlanSheet
    signed: SignOff
    options: Options
    at: datetime
    by: str

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
        facts = wall_chart_facts(self.farm, self.sheet, self.signed, numbered[0], self.at.date(), self.options)
        return wall_chart(facts)


@dataclass(frozen=True)
class LotSheetJob:
    """The calibration records of a lot. They tell what was, so they never go out of date and bear no number."""

    facts: tuple[LotSheet, ...]

    @property
    def sheets(self) -> tuple[Printed, ...]:
        return ()

    def document(self, numbered: Sequence[Printed]) -> Document:
        documents = [lot_sheet(facts) for facts in self.facts]
        return Document(documents[0].title, tuple(page for each in documents for page in each.pages))


def expected(records: Records, sheets: Sequence[Printed]) -> list[Printed]:
    """The numbers that sheets would bear if they were printed now, and which ones they would replace."""
    before = records.prints(sheets[0].farm_id) if sheets else []
    last = max((sheet.number for sheet in before), default=0)
    return [_numbered(sheet, last + place, before) for place, sheet in enumerate(sheets, start=1)]


def _numbered(sheet: Printed, number: int, before: Sequence[Printed]) -> Printed:
    same = [p.number for p in before if _place(p) == _place(sheet)]
    return replace(sheet, number=number, replaces=max(same, default=None))


def _place(sheet: Printed) -> tuple[PrintKind, str | None, str | None]:
    return sheet.kind, sheet.scoop_id, sheet.plan_id
