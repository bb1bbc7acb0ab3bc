"""Everything that is kept as plain tables, one of each kind of thing and fact, for spreadsheets to look at.

Each row is one entry with when, by whom and why it was kept; headings are the fields' names, with their units. What
has parts (a shape, groups) is told as JSON in its cell. The JSON export is the one that comes back in.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence
from typing import Any

from sqlalchemy import RowMapping, TableClause, select

from calibrator.model.underway import Underway, unwatched
from calibrator.records.plain import to_plain
from calibrator.records.repository import Records
from calibrator.records.table_file import Cell, FlatTable
from calibrator.records.tables import FACTS, NOUNS, STRIKES, changes, fingerprints
from calibrator.records.workbook import SheetOf

_WHO = ("at", "by", "why")


def everything(records: Records, underway: Underway = unwatched) -> list[SheetOf]:
    """All tables as sheets, empty ones too, rows in the order in which they were kept."""
    with records.reading() as connection:
        tables = [*NOUNS.values(), *FACTS.values(), *STRIKES.values(), fingerprints]
        return [
            SheetOf(table.name, _flat(table, connection.execute(_query(table)).mappings(), underway))
            for table in tables
        ]


def _query(table: TableClause) -> Any:
    if "change" not in table.c:
        return select(table)
    who = [changes.c[name].label(f"kept_{name}") for name in _WHO]
    return select(*who, table).join(changes, changes.c.number == table.c.change).order_by(table.c.change)


def _flat(table: TableClause, rows: Iterable[RowMapping], underway: Underway) -> FlatTable:
    headings = tuple(_query(table).selected_columns.keys())
    return FlatTable(headings, tuple(_cells(row, headings, underway) for row in rows))


def _cells(row: RowMapping, headings: Sequence[str], underway: Underway) -> tuple[Cell, ...]:
    underway(0.0)
    return tuple(_cell(row[name]) for name in headings)


def _cell(value: Any) -> Cell:
    if isinstance(value, bool):
        return "yes" if value else "no"
    plain = to_plain(value)
    return json.dumps(plain, ensure_ascii=False) if isinstance(plain, dict | list) else value
