"""A workbook's sheets (ECMA-376, .xlsx) as cells, row by row, with the values that the spreadsheet last worked out."""

from __future__ import annotations

import re
import struct
import warnings
import zlib
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import date, time
from functools import lru_cache
from itertools import repeat
from pathlib import Path
from typing import Any
from zipfile import BadZipFile

from calibrator.model.underway import Underway, part_of, unwatched
from calibrator.records.errors import ForeignRefused, RecordsError
from calibrator.records.foreign.kinds import reading
from calibrator.records.foreign.packed import holds_formulas
from calibrator.records.foreign.table import MOST_CELLS, MOST_COLUMNS, MOST_ROWS, CellError, ForeignTable, Share, Value
from calibrator.values import dataclass

_LOOKING = 0.2  # the share of the whole that looking through the package takes
_YEAR_OF_1904 = 1904
_QUOTED = re.compile(r'"[^"]*"|\\.')


@dataclass(frozen=True)
class SheetName:
    """A sheet that can be chosen; a hidden one is chosen by nobody unasked."""

    name: str
    hidden: bool


def sheets_of(file: Path, underway: Underway = unwatched) -> tuple[SheetName, ...]:
    """The sheets of a workbook in their order. Raises `ForeignRefused`."""
    holds_formulas(file, underway)
    with _book(file) as book:
        found = tuple(SheetName(sheet.title, sheet.sheet_state != "visible") for sheet in book.worksheets)
    if not found:
        raise ForeignRefused("foreign_empty", file=file.name)
    return found


def read_sheet(file: Path, name: str, underway: Underway = unwatched) -> ForeignTable:
    """The cells of one sheet. A formula's cell has its last value and is named; macros are never looked at.

    Raises `ForeignRefused`, which names the file and what to do.
    """
    formulas = holds_formulas(file, part_of(underway, 0.0, _LOOKING))
    with _book(file) as book:
        if name not in book.sheetnames:
            raise ForeignRefused("foreign_empty", file=file.name)
        if not formulas:
            return _table(book, book[name], repeat(()), file, underway)
        with _book(file, values=False) as told:
            sheet = told[name]
            sheet.reset_dimensions()
            return _table(book, book[name], sheet.iter_rows(), file, underway)


@contextmanager
def _book(file: Path, *, values: bool = True) -> Iterator[Any]:
    from openpyxl import load_workbook

    try:
        with reading(file), file.open("rb") as opened, warnings.catch_warnings():
            warnings.simplefilter("ignore")  # of what is left out of styles and rules nothing is needed here
            book = load_workbook(opened, read_only=True, data_only=values, keep_links=False)
            try:
                yield book
            finally:
                book.close()
    except RecordsError:
        raise
    except _BROKEN:
        raise ForeignRefused("foreign_broken", file=file.name) from None


# What a library makes of a workbook that is not as it should be has many kinds; none of them is a person's ending it.
_BROKEN = (
    ValueError, TypeError, KeyError, IndexError, AttributeError, AssertionError, ArithmeticError, EOFError,
    NotImplementedError, RuntimeError, SyntaxError, MemoryError, BadZipFile, zlib.error, struct.error,
)  # fmt: skip


def _table(book: Any, sheet: Any, told: Any, file: Path, underway: Underway) -> ForeignTable:
    expected = max(1, min(sheet.max_row or MOST_ROWS, MOST_ROWS))
    sheet.reset_dimensions()  # some programs write wrong ones
    rows: list[tuple[Value, ...]] = []
    formulas: set[tuple[int, int]] = set()
    empty = held = 0
    for values, marks in zip(sheet.iter_rows(), told, strict=False):
        at = len(rows) + empty
        row = _row(values, marks, at, formulas)
        if len(row) > MOST_COLUMNS:
            raise ForeignRefused("foreign_wide", file=file.name, most=str(MOST_COLUMNS))
        if row:  # empty rows count only when something comes after them
            rows += [()] * empty
            rows.append(row)
        empty, held = 0 if row else empty + 1, held + len(row)
        if held > MOST_CELLS:
            raise ForeignRefused("foreign_cells", file=file.name, most=f"{MOST_CELLS:,}")
        if at >= MOST_ROWS:
            raise ForeignRefused("foreign_long", file=file.name, most=f"{MOST_ROWS:,}")
        if at % 500 == 0:
            underway(_LOOKING + (1 - _LOOKING) * min(1.0, at / expected))
    if not rows:
        raise ForeignRefused("foreign_empty", file=file.name)
    return ForeignTable(sheet.title, tuple(rows), frozenset(formulas), book.epoch.year == _YEAR_OF_1904)


def _row(cells: Any, marks: Any, at: int, formulas: set[tuple[int, int]]) -> tuple[Value, ...]:
    found = [_value(cell) for cell in cells]
    for place, mark in enumerate(marks):
        if mark.data_type == "f":
            if place >= len(found):
                found += [None] * (place + 1 - len(found))
            formulas.add((at, place))
            if found[place] is None:
                found[place] = CellError(_formula_text(mark.value))
    while found and found[-1] is None:
        found.pop()
    return tuple(found)


def _value(cell: Any) -> Value:
    value = cell.value
    if cell.data_type == "e" and value is not None:
        return CellError(value)
    if isinstance(value, str):
        return value if value.strip() else None
    if value is None or isinstance(value, bool | date | time):
        return value
    if isinstance(value, int | float):
        return Share(value) if _in_percent(cell.number_format) else value
    return str(value)


@lru_cache(maxsize=256)
def _in_percent(number_format: str) -> bool:
    """Whether a format shows a number a hundred times itself: by its percent sign, not by one that is only a text."""
    return "%" in _QUOTED.sub("", number_format)


def _formula_text(value: Any) -> str:
    return str(getattr(value, "text", value) or "=")
