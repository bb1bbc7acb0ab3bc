"""The file in hand and how far it is settled. No window, no thread: what takes long tells how far it is."""

from __future__ import annotations

from collections import Counter
from contextlib import suppress
from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import Any

from calibrator.desk.bring_in.choices import Choices, Question, begun, names_of, questions, with_settled
from calibrator.desk.bring_in.judging import Judged, There, fill_key, judge, lot_key
from calibrator.desk.bring_in.meanings import heading_row
from calibrator.model import Farm, Lot, Scale, Scoop, UnitSystem, WeighIn
from calibrator.model.underway import Underway
from calibrator.records import Records
from calibrator.records.bringing import bring_in
from calibrator.records.errors import ForeignRefused
from calibrator.records.foreign.kinds import FileKind, kind_of
from calibrator.records.foreign.table import ForeignTable
from calibrator.records.foreign.text import TextWay, read_text, way_of
from calibrator.records.season import every_fill


class Bringing:
    """One file on its way into a farm's records. Steps that read or write raise `RecordsError`."""

    def __init__(self, records: Records, farm: Farm, file: Path, by: str = "") -> None:
        self.records, self.farm, self.file = records, farm, file
        self.way: TextWay | None = None
        self.sheets: tuple[tuple[str, bool], ...] = ()  # names, and whether they are hidden
        self.sheet = ""
        self.table: ForeignTable | None = None
        self.choices = Choices(by=by)
        self.judged: Judged | None = None

    def look(self, underway: Underway) -> None:
        """Find out how the file is written, and read it; of a workbook the first sheet with headings that are known."""
        if kind_of(self.file) is FileKind.TEXT:
            self.way = way_of(self.file)
            self.read(underway)
            return
        from calibrator.records.foreign.book import sheets_of

        self.sheets = tuple((one.name, one.hidden) for one in sheets_of(self.file, underway))
        seen = [name for name, hidden in self.sheets if not hidden]
        self.sheet = (seen or [self.sheets[0][0]])[0]
        if len(seen) == 1:
            self.read(underway)
        elif not any(self._reads(name, underway) for name in seen):
            self.sheet, self.table = seen[0] if seen else self.sheet, None

    def _reads(self, sheet: str, underway: Underway) -> bool:
        """Whether a sheet is a table under headings that are known."""
        self.sheet = sheet
        with suppress(ForeignRefused):
            self.read(underway)
            return self.choices.heading is not None
        return False

    def read(self, underway: Underway) -> None:
        """Read the sheet, or the text in its way, and settle what it tells of itself."""
        if self.way is not None:
            self.table = read_text(self.file, self.way, underway)
        else:
            from calibrator.records.foreign.book import read_sheet

            self.table = read_sheet(self.file, self.sheet, underway)
        self.judged = None
        self.set_heading(heading_row(self.table))

    def set_heading(self, row: int | None) -> None:
        """Take another row for the headings; columns are matched anew."""
        assert self.table is not None
        kept = self.choices
        of_itself = begun(self.table, row, kept.by, gr_is_gram=self.farm.units is UnitSystem.METRIC)
        self.choices = replace(of_itself, scale_id=kept.scale_id, scoops=kept.scoops)
        self._propose()

    def change(self, **told: Any) -> None:
        """Take an answer; what it settles besides is settled too."""
        assert self.table is not None
        self.choices = with_settled(self.table, replace(self.choices, **told))
        self.judged = None
        if "meanings" in told:
            self._propose()

    def _propose(self) -> None:
        """A scoop of the same name is that scoop, and the only scale is the scale; both can be changed."""
        assert self.table is not None
        scoops = {lot_key(one.name): one.id for one in self.records.every(Scoop, self.farm.id)}
        named = {name: scoops[lot_key(name)] for name in names_of(self.table, self.choices) if lot_key(name) in scoops}
        scales = self.records.every(Scale, self.farm.id)
        scale = scales[0].id if len(scales) == 1 else None if scales else ""
        known = self.choices.scale_id if self.choices.scale_id is not None else scale
        self.choices = replace(self.choices, scoops={**named, **self.choices.scoops}, scale_id=known)

    def open_questions(self) -> list[Question]:
        """What a person still has to say."""
        assert self.table is not None
        return questions(self.table, self.choices)

    def judge(self, today: date, underway: Underway) -> Judged:
        """Hold the table against the records."""
        assert self.table is not None
        self.judged = judge(self.table, self.choices, self._there(), today, underway)
        return self.judged

    def add(self, underway: Underway) -> None:
        """Keep what was judged, all of it or nothing."""
        assert self.judged is not None
        assert self.judged.adds
        bring_in(self.records, self.judged.past, file=self.file.name, by=self.choices.by, underway=underway)

    def lot_numbers(self) -> dict[str, str]:
        """The numbers of the lots of the records and of those that are to come, by id."""
        lots = [*self.records.every(Lot, self.farm.id), *(self.judged.past.lots if self.judged else ())]
        return {lot.id: lot.lot_number for lot in lots}

    def _there(self) -> There:
        lots = tuple(self.records.every(Lot, self.farm.id))
        numbers = {lot.id: lot_key(lot.lot_number) for lot in lots}
        of = {one.id: numbers.get(one.lot_id, "") for one in self.records.every(WeighIn, self.farm.id)}
        kept = Counter(fill_key(fill, of[fill.weigh_in_id]) for fill in every_fill(self.records, self.farm.id))
        return There(
            farm=self.farm,
            lots=lots,
            scoops={one.id: one for one in self.records.every(Scoop, self.farm.id)},
            scales={one.id: one for one in self.records.every(Scale, self.farm.id)},
            fills=kept,
        )
