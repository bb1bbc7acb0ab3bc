"""All records out into one text or file."""

from __future__ import annotations

import os
from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path
from typing import Any

from sqlalchemy import ColumnElement, Connection, TableClause, select

from calibrator.model import Fill, Mark, Printed, SheetEnding, SignOff, SpotFill, TrialFill
from calibrator.model.underway import Underway, one_by_one, unwatched
from calibrator.records import fingerprints
from calibrator.records.entries import Added, Entry, Signed, Struck, Told, pieces_of
from calibrator.records.plain import kind_word
from calibrator.records.repository import Records
from calibrator.records.rows import as_value, version
from calibrator.records.table_file import replacing
from calibrator.records.tables import FACTS, NOUNS, STRIKES, changes, marks, sign_offs

ADDED = (Fill, SpotFill, TrialFill, Printed, SheetEnding)
WORDS = {kind_word(kind) for kind in (*NOUNS, *ADDED, SignOff)}
"""What a change is about; all others strike a fill out or let it count again."""


def export_file(records: Records, file: Path, underway: Underway = unwatched) -> None:
    """Write all records to a file, whole or not at all. Raises `TableNotWritten`."""
    with replacing(file) as unfinished, unfinished.open("w", encoding="utf-8", newline="\n") as written:
        with records.reading() as connection:
            written.writelines(pieces_of(every_entry(connection, underway)))
        written.flush()
        os.fsync(written.fileno())


def every_entry(connection: Connection, underway: Underway = unwatched) -> Iterator[Entry]:
    """All that was ever kept, in its order."""
    yield from entries_between(connection, 0, version(connection), underway)


def entries_between(connection: Connection, since: int, upto: int, underway: Underway = unwatched) -> Iterator[Entry]:
    """What was kept after one change, up to another, in its order."""
    numbered: dict[int, Entry] = {}
    asked = changes.c.number.between(since + 1, upto)
    kinds = set(connection.execute(select(changes.c.what).where(asked).distinct()).scalars())

    def rows(table: TableClause) -> Iterator[Mapping[str, Any]]:
        return _rows(connection, table, underway, asked)

    for kind in (kind for kind in NOUNS if kind_word(kind) in kinds):
        numbered |= {row["change"]: _told(kind, row) for row in rows(NOUNS[kind])}
    for fact in (fact for fact in ADDED if kind_word(fact) in kinds):
        numbered |= {row["change"]: _added(fact, row) for row in rows(FACTS[fact])}
    for strikes in STRIKES.values() if kinds - WORDS else ():
        for row in rows(strikes):
            numbered[row["change"]] = Struck(row["change_at"], row["change_by"], row["of_id"], row["reason"])
    if signed := list(rows(sign_offs)):
        numbered |= dict(_signed(connection, signed, underway))
    for number in one_by_one(sorted(numbered), underway):
        yield numbered[number]


def _told(kind: type, row: Mapping[str, Any]) -> Told:
    return Told(row["change_at"], row["change_by"], as_value(kind, row), row["change_why"], row["replaces"])


def _added(kind: type, row: Mapping[str, Any]) -> Added:
    return Added(row["change_at"], as_value(kind, {"struck_reason": None, **row}))


def _signed(
    connection: Connection, rows: Sequence[Mapping[str, Any]], underway: Underway
) -> Iterator[tuple[int, Signed]]:
    its: dict[str, list[Mark]] = {}
    for row in sorted(_rows(connection, marks, underway), key=lambda row: int(row["position"])):
        its.setdefault(row["sign_off_id"], []).append(as_value(Mark, row))
    links = fingerprints.every(connection)
    for row in rows:
        signed = as_value(SignOff, row)
        own = tuple(its.get(signed.id, ()))
        yield row["change"], Signed(row["change_at"], signed, own, links.get(signed.id))


def _rows(
    connection: Connection, table: TableClause, underway: Underway, asked: ColumnElement[bool] | None = None
) -> Iterator[Mapping[str, Any]]:
    who = [changes.c[name].label(f"change_{name}") for name in ("at", "by", "why")]
    query = select(table, *who).join(changes, changes.c.number == table.c.change)
    for row in connection.execute(query if asked is None else query.where(asked)).mappings():
        underway(0.0)
        yield dict(row)
