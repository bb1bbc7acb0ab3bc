"""A fresh file in which the rows of a damaged one are gathered, checked, and made to fit together."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Iterator, Mapping, Sequence
from contextlib import closing, contextmanager, suppress
from datetime import UTC, datetime
from pathlib import Path

from sqlalchemy import Connection, Engine, TableClause, select, text
from sqlalchemy.exc import SQLAlchemyError

from calibrator.model import Lot
from calibrator.records import fingerprints
from calibrator.records.engine import begin_writing, make_engine
from calibrator.records.layout import metadata
from calibrator.records.place import place_of
from calibrator.records.plain import NotPlain, kind_word, plain_fields, to_plain
from calibrator.records.readable import Row
from calibrator.records.rows import as_value
from calibrator.records.tables import FACTS, NOUNS, SCHEMA, changes
from calibrator.values import dataclass

PLACEHOLDER = "? {id}"
"""The number of a lot of which only the name inside the program is left."""


MOST_GARBLED = 3  # changes that may be unlike those of a copy because the damage wrote into them
_OWN_NUMBER = ("changes", "fill_strikes", "spot_strikes")


@dataclass(frozen=True)
class Kept:
    """What a change tells of itself."""

    what: str
    at: datetime
    by: str


def like(file: Path, there: Mapping[str, Sequence[str]], told: str) -> Stage | None:
    """An empty stage of the layout that a damaged file has; None where its tables are those of no layout."""
    if not there:
        return None
    layouts = [int(told)] if told.isdigit() and 1 <= int(told) <= SCHEMA else []
    for layout in (*layouts, *range(SCHEMA, 0, -1)):
        stage = Stage(file, layout)
        if all(set(columns) <= set(there.get(table, ())) for table, columns in stage.columns().items()):
            return stage
        stage.close()
    return None


def numbered(table: str, number: int, row: Row) -> Row:
    """A row under the number that it had: rows run in the order of the changes, which tells what is missing."""
    return row if table in _OWN_NUMBER else {"rowid": number} | row


def blank(file: Path) -> None:
    """Records as this program makes them new: the list of tables lies on the pages where it always lies."""
    _bring_up(file)


def newest(file: Path) -> Stage:
    """An empty stage of the newest layout."""
    return Stage(file, SCHEMA)


class Stage:
    """A records file being put together; its guards are off until `close`."""

    def __init__(self, file: Path, layout: int) -> None:
        file.unlink(missing_ok=True)
        self._file = file
        self._guards: dict[str, str] = {}
        _bring_up(file, layout)
        self._raw = self._unguarded()

    def columns(self) -> dict[str, list[str]]:
        """The columns of each table that holds records."""
        named = "SELECT name FROM sqlite_master WHERE type = 'table' AND name <> 'alembic_version'"
        names = [row[0] for row in self._raw.execute(named)]
        return {name: [row[1] for row in self._raw.execute(f"PRAGMA table_info({name})")] for name in names}

    def put(self, rows: Mapping[str, Sequence[Row]], or_else: str = "IGNORE") -> None:
        """Add rows under their names; one that breaks a rule of its table is left out."""
        for table, own in rows.items():
            for row in own:
                named, marks = ", ".join(f'"{name}"' for name in row), ", ".join("?" for _ in row)
                with suppress(sqlite3.Error):
                    statement = f'INSERT OR {or_else} INTO "{table}" ({named}) VALUES ({marks})'
                    self._raw.execute(statement, tuple(row.values()))
        self._raw.commit()

    def bring_up(self) -> None:
        """Bring the rows to the newest layout, and leave out those that are no sound facts."""
        self._raw.close()
        _bring_up(self._file)
        self._raw = self._unguarded()
        for table, kind in ((table, kind) for kinds in (NOUNS, FACTS) for kind, table in kinds.items()):
            self._leave_out_unsound(table, kind)
        self._leave_out_unsound(changes, None)

    def add(self, copy: Path) -> bool:
        """Add the rows of a dated copy, unless it is of records that went another way; tells whether it was done."""
        try:
            _bring_up(copy)
            with closing(sqlite3.connect(copy)) as raw:
                if not self._same_story(raw):
                    return False
                for table, columns in self.columns().items():
                    named = ", ".join(f'"{column}"' for column in columns)
                    rows = raw.execute(f'SELECT rowid, {named} FROM "{table}"').fetchall()
                    told = [numbered(table, n, dict(zip(columns, row, strict=True))) for n, *row in rows]
                    self.put({table: told}, or_else="REPLACE")  # a copy was checked when it was made
        except (sqlite3.Error, SQLAlchemyError, OSError, ValueError):
            return False  # a copy that cannot be used must not stop the rescue
        return True

    def settle(self) -> None:
        """Make the rows fit together: nothing may name what is lost."""
        self._name_things()
        self._tell_changes()
        while self._mend_one_round():
            pass

    def numbers(self) -> set[int]:
        """The changes of which something is there."""
        return set(self.borne())

    def borne(self) -> dict[int, str]:
        """The table of each change of which a row is there."""
        found: dict[int, str] = {}
        for table in _BEARERS:
            found |= {row[0]: table.name for row in self._raw.execute(f"SELECT change FROM {table.name}")}
        return found

    def changes(self) -> dict[int, Kept]:
        """What the changes tell of themselves."""
        rows = self._raw.execute("SELECT number, what, at, by FROM changes")
        return {number: Kept(what, datetime.fromisoformat(at), by) for number, what, at, by in rows}

    def newest(self) -> datetime | None:
        """When the last change that is there was kept."""
        told, there = self.changes(), self.borne()
        last = max((number for number in told if number in there), default=0)
        return told[last].at if last else None

    def row_numbers(self, table: str) -> set[int]:
        """The rows' own numbers in a table."""
        return {row[0] for row in self._raw.execute(f"SELECT rowid FROM {table}")}

    def lot_number(self, table: str, owner: str) -> str:
        """The number of the lot of a fill's weigh-in, or of a spot fill's lot."""
        lot = "(SELECT lot_id FROM weigh_ins WHERE id = ? LIMIT 1)" if table == "fills" else "?"
        query = f"SELECT lot_number FROM lots WHERE id = {lot} ORDER BY change DESC LIMIT 1"
        row = self._raw.execute(query, (owner,)).fetchone()
        return str(row[0]) if row else ""

    def close(self, *, chained: bool = False) -> None:
        """Put the guards back and let go of the file; `chained` gives sign-offs without a fingerprint theirs."""
        for statement in self._guards.values():
            self._raw.execute(statement)
        self._raw.commit()
        self._raw.close()
        if chained:
            _chain(self._file)

    def _unguarded(self) -> sqlite3.Connection:
        raw = sqlite3.connect(self._file)
        found = raw.execute("SELECT name, sql FROM sqlite_master WHERE type = 'trigger'").fetchall()
        self._guards |= dict(found)
        for name, _ in found:
            raw.execute(f"DROP TRIGGER {name}")
        raw.commit()
        return raw

    def _leave_out_unsound(self, table: TableClause, kind: type | None) -> None:
        self._raw.commit()
        engine = make_engine(place_of(str(self._file)), read_only=True)
        rows = [row[0] for row in self._raw.execute(f"SELECT rowid FROM {table.name}")]
        try:
            with engine.connect() as connection:
                bad = [number for number in rows if not _sound(connection, table, kind, number)]
        finally:
            engine.dispose()
        for number in bad:
            self._raw.execute(f"DELETE FROM {table.name} WHERE rowid = ?", (number,))
        self._raw.commit()

    def _same_story(self, raw: sqlite3.Connection) -> bool:
        """Whether the changes that both know are the same ones."""
        own = {number: kept.at for number, kept in self.changes().items()}
        told = raw.execute("SELECT number, at FROM changes")
        unlike = [n for n, at in told if n in own and own[n] != datetime.fromisoformat(at)]
        return len(unlike) <= MOST_GARBLED

    def _name_things(self) -> None:
        for kind, table in NOUNS.items():
            self._raw.execute(
                "INSERT OR IGNORE INTO things (id, kind, change) "
                f"SELECT id, ?, min(change) FROM {table.name} GROUP BY id",
                (kind_word(kind),),
            )

    def _tell_changes(self) -> None:
        """A row whose change is lost stays; when and who is taken from the row or from what was kept before it."""
        told = self.changes()
        near = next((kept.at for _, kept in sorted(told.items())), datetime.now(UTC))
        for number, table in sorted(self.borne().items()):
            if number not in told:
                at, by = self._own_words(table, number, near)
                row: Row = {"number": number, "at": at, "by": by, "why": "", "what": table.removesuffix("s")}
                self.put({"changes": [row]})
            near = told[number].at if number in told else near

    def _own_words(self, table: str, number: int, near: datetime) -> tuple[str, str]:
        known = {"at", "by"} & set(metadata.tables[table].columns.keys())
        told = {name: f'"{name}"' if name in known else "NULL" for name in ("at", "by")}
        query = f"SELECT {told['at']}, {told['by']} FROM {table} WHERE change = ?"
        at, by = self._raw.execute(query, (number,)).fetchone()
        return at or near.isoformat(timespec="microseconds"), by or ""

    def _mend_one_round(self) -> bool:
        for table in NOUNS.values():
            self._mend_replaced(table.name)
        self._stand_in_for_lots()
        broken = list(self._raw.execute("PRAGMA foreign_key_check"))
        for table, number, _, _ in broken:
            self._raw.execute(f"DELETE FROM {table} WHERE rowid = ?", (number,))
        self._raw.commit()
        return bool(broken)

    def _mend_replaced(self, table: str) -> None:
        """A telling whose earlier one is lost replaces the one before that."""
        last: dict[str, str] = {}
        known = {row[0] for row in self._raw.execute(f"SELECT revision FROM {table}")}
        query = f"SELECT revision, id, replaces FROM {table} ORDER BY change"
        for revision, id, replaces in self._raw.execute(query).fetchall():
            if replaces not in known and replaces != last.get(id):
                self._raw.execute(f"UPDATE {table} SET replaces = ? WHERE revision = ?", (last.get(id), revision))
            last[id] = revision

    def _stand_in_for_lots(self) -> None:
        """Fills count more than the lot's name: a lot that is lost whole is told anew by what is left, its id."""
        query = (
            "SELECT w.lot_id, min(w.farm_id), min(w.change) FROM weigh_ins w JOIN things f ON f.id = w.farm_id "
            "WHERE w.lot_id NOT IN (SELECT id FROM lots) GROUP BY w.lot_id"
        )
        for id, farm_id, change in self._raw.execute(query).fetchall():
            self._raw.execute("INSERT OR IGNORE INTO things (id, kind, change) VALUES (?, 'lot', ?)", (id, change))
            told = {"revision": id, "id": id, "change": change, "farm_id": farm_id}
            told |= {"lot_number": PLACEHOLDER.format(id=id[:6])} | self._blank_lot()
            self.put({"lots": [told]})

    def _blank_lot(self) -> Row:
        """The values that a lot begins with, as the table keeps them."""
        blank = Lot(id="", farm_id="", lot_number="")
        left = {"id", "farm_id", "lot_number", "revision"}
        told: Row = {}
        for column in metadata.tables["lots"].columns:
            if column.name in left or not hasattr(blank, column.name):
                continue
            value = to_plain(getattr(blank, column.name))
            told[column.name] = json.dumps(value) if isinstance(value, dict | list) else value
        return told


def _bring_up(file: Path, to: int = SCHEMA) -> None:
    with closing(sqlite3.connect(file)) as raw:
        if "alembic_version" in [row[0] for row in raw.execute("SELECT name FROM sqlite_master")]:
            (told,) = raw.execute("SELECT version_num FROM alembic_version").fetchone()
            if told == f"{to:04}":
                return
    from calibrator.records.migrations.run import upgrade  # Alembic is slow to come, and needed for a rescue only

    with _engine(file) as engine:
        upgrade(engine, f"{to:04}", chained=False)


def _chain(file: Path) -> None:
    with _engine(file) as engine, engine.connect() as connection:
        begin_writing(connection)
        fingerprints.take_missing(connection)
        connection.commit()


@contextmanager
def _engine(file: Path) -> Iterator[Engine]:
    engine = make_engine(place_of(str(file)), read_only=False)
    try:
        yield engine
    finally:
        engine.dispose()


_BEARERS = [table for table in metadata.sorted_tables if "change" in table.columns and table.name not in ("things",)]


def _sound(connection: Connection, table: TableClause, kind: type | None, number: int) -> bool:
    try:
        query = select(table).where(text("rowid = :number")).params(number=number)
        row = connection.execute(query).mappings().one()
        if kind is not None:
            plain_fields(as_value(kind, {"struck_reason": None, **row}))
    except (ValueError, TypeError, LookupError, AttributeError, NotPlain):
        return False
    return True
