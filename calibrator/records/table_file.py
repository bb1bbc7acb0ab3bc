"""Tables for other programs: comma-separated text or a workbook, written whole or not at all."""

from __future__ import annotations

import csv
import io
import os
import zipfile
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from datetime import date, datetime
from pathlib import Path
from typing import Generic, Protocol, TypeVar

from calibrator.model.underway import Underway, one_by_one, unwatched
from calibrator.records.errors import TableNotWritten
from calibrator.values import dataclass

T = TypeVar("T")
Cell = str | float | date | None
_STARTS_A_FORMULA = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")
"""The wide signs are taken for the narrow ones where such letters are usual."""
_DISK_IS_FULL = (28, 122)  # ENOSPC, EDQUOT


@dataclass(frozen=True)
class FlatTable:
    """Headings, each with its unit where it has one ("solids (%)"), and rows as long as they are.

    Numbers are written with a point and in full, days as 2026-03-02, moments with their zone, None as nothing.
    """

    headings: tuple[str, ...]
    rows: tuple[tuple[Cell, ...], ...] = ()

    def __post_init__(self) -> None:
        odd = next((row for row in self.rows if len(row) != len(self.headings)), None)
        if odd is not None:
            raise ValueError(f"a row of {len(odd)} cells under {len(self.headings)} headings")


class NamedTable(Protocol):
    """A table with the name of its sheet or text."""

    @property
    def name(self) -> str: ...

    @property
    def table(self) -> FlatTable: ...


@dataclass(frozen=True)
class Field(Generic[T]):
    """A column that is drawn from things of one kind: its heading, its unit, what a thing tells there."""

    heading: str
    value: Callable[[T], Cell]
    unit: str = ""

    @property
    def told(self) -> str:
        return f"{self.heading} ({self.unit})" if self.unit else self.heading


def table_of(fields: Sequence[Field[T]], things: Sequence[T], underway: Underway = unwatched) -> FlatTable:
    """A row for each thing, a column for each field."""
    values = [field.value for field in fields]
    rows = tuple(tuple([value(thing) for value in values]) for thing in one_by_one(things, underway))
    return FlatTable(tuple(field.told for field in fields), rows)


@dataclass(frozen=True)
class CsvStyle:
    """How text for a spreadsheet is written: with a decimal comma (then semicolons part the cells), and with the
    mark by which spreadsheets know UTF-8."""

    decimal_comma: bool = False
    mark: bool = True


def csv_text(table: FlatTable, style: CsvStyle = CsvStyle()) -> str:
    """The table as text, lines ended as RFC 4180 asks.

    A text that begins like a formula gets an apostrophe before it, so that no spreadsheet runs it.
    """
    out = io.StringIO(newline="")
    writer = csv.writer(out, delimiter=";" if style.decimal_comma else ",")
    for row in (table.headings, *table.rows):
        writer.writerow([_told(cell, style.decimal_comma) for cell in row])
    return out.getvalue()


def write_csv(table: FlatTable, file: Path, style: CsvStyle = CsvStyle()) -> None:
    """Write a table as text. Raises `TableNotWritten`; then an older file stays as it was."""
    with replacing(file) as unfinished, unfinished.open("w", encoding=_coding(style), newline="") as written:
        written.write(csv_text(table, style))
        written.flush()
        os.fsync(written.fileno())


def write_texts(tables: Sequence[NamedTable], file: Path, style: CsvStyle = CsvStyle()) -> None:
    """Write tables as texts of one ZIP, `lots.csv` for "lots". Raises `TableNotWritten`, as `write_csv` does."""
    with replacing(file) as unfinished, zipfile.ZipFile(unfinished, "w", zipfile.ZIP_DEFLATED) as packed:
        for one in tables:
            packed.writestr(f"{one.name}.csv", csv_text(one.table, style).encode(_coding(style), "replace"))


@contextmanager
def replacing(file: Path) -> Iterator[Path]:
    """A file beside `file` to write to, put in its place once the block ends well. Raises `TableNotWritten`."""
    unfinished = file.with_name(file.name + ".part")
    try:
        if file.exists() and not os.access(file, os.W_OK):
            raise PermissionError  # some systems would put another in the place of a file that is write-protected
        yield unfinished
        os.replace(unfinished, file)
    except OSError as error:
        raise _refused(error, file) from error
    finally:
        with _quietly():
            unfinished.unlink(missing_ok=True)


@contextmanager
def _quietly() -> Iterator[None]:
    try:
        yield
    except OSError:
        return  # what went wrong before is what is told


def _refused(error: OSError, file: Path) -> TableNotWritten:
    if error.errno in _DISK_IS_FULL:
        return TableNotWritten("table_disk_full", place=file.name)
    if isinstance(error, PermissionError):
        return TableNotWritten("table_in_use", place=file.name)
    if not file.parent.is_dir():
        return TableNotWritten("table_no_folder", place=str(file.parent))
    return TableNotWritten("table_fault", place=file.name, fault=error.strerror or "?")


def rounded(value: float | None, digits: int) -> float | None:
    """A figure to so many places, None left as it is."""
    return None if value is None else round(value, digits)


def by_columns(columns: Sequence[str], rows: Sequence[dict[str, Cell]]) -> FlatTable:
    """A table from rows that each tell some of the columns; the rest is left empty.

    Raises KeyError for a cell that no column is for.
    """
    known = set(columns)
    for row in rows:
        if strange := set(row) - known:
            raise KeyError(", ".join(sorted(strange)))
    return FlatTable(tuple(columns), tuple(tuple(row.get(name) for name in columns) for row in rows))


def is_formula(text: str) -> bool:
    """Would a spreadsheet take the text for something to reckon or run?"""
    return text.startswith(_STARTS_A_FORMULA)


def guarded(text: str) -> str:
    """A text for a table of text: an apostrophe before what a spreadsheet would run. `unguarded` takes it off again."""
    return f"'{text}" if is_formula(text) or _looks_guarded(text) else text


def unguarded(text: str) -> str:
    """The text as it was before `guarded`; one that never needed it stays as it is."""
    return text[1:] if _looks_guarded(text) else text


def _looks_guarded(text: str) -> bool:
    return text.startswith("'") and (is_formula(text[1:]) or text.startswith("''"))


def _coding(style: CsvStyle) -> str:
    return "utf-8-sig" if style.mark else "utf-8"


def _told(cell: Cell, decimal_comma: bool) -> str:
    if cell is None:
        return ""
    if isinstance(cell, str):
        return guarded(cell)
    if isinstance(cell, datetime):
        return cell.isoformat(timespec="minutes")
    if isinstance(cell, date):
        return cell.isoformat()
    figure = f"{cell:.12g}"
    return figure.replace(".", ",") if decimal_comma else figure
