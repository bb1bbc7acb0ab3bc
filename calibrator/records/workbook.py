"""Tables as the sheets of one workbook (ECMA-376, .xlsx), written row by row so that a large one needs little memory.

Days and moments become cells of that kind, moments as the clock on the wall here told them. Text is always kept as
text: none runs as a formula. Figures are kept in full and shown in four digits or so; a column is as wide as what
stands in it, and can be filtered.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from datetime import date, datetime
from itertools import islice
from pathlib import Path
from typing import Any

from calibrator.model.underway import Underway, one_by_one, part_of, unwatched
from calibrator.records.table_file import Cell, FlatTable, is_formula, replacing
from calibrator.values import dataclass

MOST_ROWS = 1_048_576
FIRST_DAY = date(1900, 3, 1)
"""Before it, spreadsheets count a day that never was: such days are written as text."""
LONGEST_TEXT = 32_767
_LONGEST_NAME = 31
_NOT_IN_NAMES = str.maketrans(dict.fromkeys("[]:*?/\\'", " "))
_NARROW, _WIDE = 9.0, 40.0
_LOOKED_AT = 500
"""Rows that tell how wide a column is and how its figures are shown."""
_DIGITS = 4
_MOMENT, _DAY = "yyyy-mm-dd hh:mm", "yyyy-mm-dd"


@dataclass(frozen=True)
class SheetOf:
    """One table and the name of its sheet."""

    name: str
    table: FlatTable


def write_workbook(sheets: Sequence[SheetOf], file: Path, underway: Underway = unwatched) -> None:
    """Write tables as the sheets of a workbook. Raises `TableNotWritten`; then an older file stays as it was.

    A table of more rows than a sheet holds goes on in another one.
    """
    from openpyxl import Workbook

    with replacing(file) as unfinished, unfinished.open("wb") as out:
        book = Workbook(write_only=True)
        try:
            _fill(book, sheets, underway)
            book.save(out)
        finally:
            for sheet in book.worksheets:  # the library keeps each open in a file of its own
                if not sheet.closed:
                    sheet.close()


def _fill(book: Any, sheets: Sequence[SheetOf], underway: Underway) -> None:
    done, whole = 0, sum(len(one.table.rows) for one in sheets) or 1
    for one in sheets:
        for number, rows in enumerate(_portions(one.table), start=1):
            name = one.name if number == 1 else f"{one.name[:24]} {number}"
            its_part = part_of(underway, done / whole, (done + len(rows)) / whole)
            _add(book, name, one.table.headings, rows, its_part)
            done += len(rows)


def _portions(table: FlatTable) -> Iterator[tuple[tuple[Cell, ...], ...]]:
    rows = iter(table.rows)
    first = tuple(islice(rows, MOST_ROWS - 1))
    yield first
    while more := tuple(islice(rows, MOST_ROWS - 1)):
        yield more


def _add(book: Any, name: str, headings: Sequence[str], rows: Sequence[Sequence[Cell]], underway: Underway) -> None:
    from openpyxl.cell import WriteOnlyCell
    from openpyxl.styles import Font
    from openpyxl.utils import get_column_letter

    sheet = book.create_sheet(name.translate(_NOT_IN_NAMES)[:_LONGEST_NAME])
    sheet.freeze_panes = "A2"
    if headings:
        sheet.auto_filter.ref = f"A1:{get_column_letter(len(headings))}{len(rows) + 1}"
    figures: list[Any] = []  # a cell for each column whose figures have a way of their own, used again for each row
    for place, heading in enumerate(headings):
        looked_at = [row[place] for row in rows[:_LOOKED_AT]]
        sheet.column_dimensions[get_column_letter(place + 1)].width = _width(heading, looked_at)
        shown = _shown(looked_at)
        figures.append(WriteOnlyCell(sheet) if shown else None)
        if shown:
            figures[-1].number_format = shown
    head = [_cell(sheet, heading, None) for heading in headings]
    for cell in head:
        cell.font = Font(bold=True)
    sheet.append(head)
    for row in one_by_one(rows, underway):
        sheet.append([_cell(sheet, value, figure) for value, figure in zip(row, figures, strict=True)])


def _width(heading: str, cells: Sequence[Cell]) -> float:
    """In letters: the heading whole, and what stands beneath it up to a limit."""
    return max(_NARROW, len(heading) + 2.0, min(_WIDE, max(map(_letters, cells), default=0) + 2.0))


def _letters(cell: Cell) -> int:
    if isinstance(cell, datetime):
        return len(_MOMENT)
    if isinstance(cell, date):
        return len(_DAY)
    return len(cell) if isinstance(cell, str) else 0  # figures fit themselves into what there is


def _shown(cells: Sequence[Cell]) -> str:
    """How a column shows its figures; blank where they are short as they are, or of too many sizes for one way."""
    figures = [cell for cell in cells if isinstance(cell, float) and math.isfinite(cell)]
    largest = max(map(abs, figures), default=0.0)
    if not largest:
        return ""
    places = min(max(1, _DIGITS - 1 - math.floor(math.log10(largest))), 2 * _DIGITS)
    longer = any(round(figure, places) != figure for figure in figures)
    lost = any(0 < abs(figure) < 10.0 ** (1 - places) for figure in figures)
    return f"0.{'0' * places}" if longer and not lost else ""


def _cell(sheet: Any, value: Cell, figure: Any) -> Any:
    """A cell, or a plain number, which needs none."""
    if isinstance(value, int | float) and math.isfinite(value):
        if figure is None:
            return value
        figure.value = value
        return figure
    if value is None:
        return None
    if isinstance(value, date) and _day(value) >= FIRST_DAY:
        return _dated(sheet, value)
    return _text(sheet, value if isinstance(value, str) else _without_end(value))


def _without_end(value: float | date) -> str:
    """A number that is none, as people write it; a day before days are counted."""
    return {math.inf: "∞", -math.inf: "−∞"}.get(value, "–") if isinstance(value, int | float) else f"{value}"


def _text(sheet: Any, text: str) -> Any:
    from openpyxl.cell import WriteOnlyCell
    from openpyxl.cell.cell import ILLEGAL_CHARACTERS_RE

    made = WriteOnlyCell(sheet)
    made.value = ILLEGAL_CHARACTERS_RE.sub(" ", text).encode("utf-8", "replace").decode()[:LONGEST_TEXT]
    made.data_type = "s"  # the library takes "=…" for a formula
    made.quotePrefix = is_formula(text)  # and so would a person's later edit of the cell
    return made


def _dated(sheet: Any, value: date) -> Any:
    from openpyxl.cell import WriteOnlyCell

    naive = _on_the_wall(value) if isinstance(value, datetime) else value
    made = WriteOnlyCell(sheet, value=naive)
    made.number_format = _MOMENT if isinstance(value, datetime) else _DAY
    return made


def _on_the_wall(at: datetime) -> datetime:
    """A cell has no zone: the time where this computer is."""
    try:
        here = at.astimezone() if at.tzinfo else at
    except (OverflowError, ValueError):  # at the ends of the calendar
        here = at
    return here.replace(tzinfo=None, microsecond=0)


def _day(value: date) -> date:
    return value.date() if isinstance(value, datetime) else value
