"""A table for other programs: comma-separated, UTF-8, written whole or not at all."""

from __future__ import annotations

import csv
import io
import os
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime
from pathlib import Path

Cell = str | float | date | None
_STARTS_A_FORMULA = ("=", "+", "-", "@", "\t", "\r", "\n")


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


def csv_text(table: FlatTable) -> str:
    """The table as text, lines ended as RFC 4180 asks.

    A text that begins like a formula gets an apostrophe before it, so that no spreadsheet runs it.
    """
    out = io.StringIO(newline="")
    writer = csv.writer(out)
    writer.writerow([_told(cell) for cell in table.headings])
    writer.writerows([[_told(cell) for cell in row] for row in table.rows])
    return out.getvalue()


def write_csv(table: FlatTable, file: Path) -> None:
    """Write a table with the mark by which spreadsheets know UTF-8. Raises OSError; then an older file stays."""
    unfinished = file.with_name(file.name + ".part")
    try:
        with unfinished.open("w", encoding="utf-8-sig", newline="") as written:
            written.write(csv_text(table))
            written.flush()
            os.fsync(written.fileno())
        os.replace(unfinished, file)
    finally:
        unfinished.unlink(missing_ok=True)


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


def _told(cell: Cell) -> str:
    if cell is None:
        return ""
    if isinstance(cell, str):
        return f"'{cell}" if cell.startswith(_STARTS_A_FORMULA) else cell
    if isinstance(cell, datetime):
        return cell.isoformat(timespec="minutes")
    return cell.isoformat() if isinstance(cell, date) else f"{cell:.12g}"
