"""The rows of a damaged file that can still be read, one by one."""

from __future__ import annotations

import sqlite3
from contextlib import suppress

Row = dict[str, object]

_BEYOND = 3000  # how many rows are tried behind the last one known, where the end of a table cannot be found


class Readable:
    """A damaged file, asked carefully. What cannot be read is left out and never guessed."""

    def __init__(self, raw: sqlite3.Connection) -> None:
        self._raw = raw

    def tables(self) -> dict[str, list[str]]:
        """The columns of each table. Raises `sqlite3.Error` where the list of tables itself is lost."""
        names = [row[0] for row in self._raw.execute("SELECT name FROM sqlite_master WHERE type = 'table'")]
        return {name: [row[1] for row in self._raw.execute(f"PRAGMA table_info({_named(name)})")] for name in names}

    def rows(self, table: str, columns: list[str], known: int = 0) -> dict[int, Row]:
        """The rows that can be read, by their numbers; `known` is a number that the table must reach."""
        found, whole = self._scanned(table, columns, "ASC")
        if whole:
            return found  # whatever could be asked for by its number was come by on the way
        low = max(found, default=0)
        found |= self._scanned(table, columns, "DESC")[0]
        above = [number for number in found if number > low]
        end = min(above) if above else max(low, known) + _BEYOND
        found |= self._each(table, columns, range(low + 1, end))
        return dict(sorted(found.items()))

    def referred(self, table: str, column: str) -> dict[int, str]:
        """What an index still tells of a column, by the rows' numbers: also of rows that are lost."""
        found: dict[int, str] = {}
        with suppress(sqlite3.Error):
            told, index = _named(column), _named(f"ix_{table}_{column}")
            query = f"SELECT rowid, {told} FROM {_named(table)} INDEXED BY {index} ORDER BY {told}"
            for number, owner in self._raw.execute(query):
                found[number] = owner
        return found

    def _scanned(self, table: str, columns: list[str], direction: str) -> tuple[dict[int, Row], bool]:
        """The rows that are come by from one end, and whether the other end was reached."""
        found: dict[int, Row] = {}
        query = f"SELECT rowid, {_listed(columns)} FROM {_named(table)} ORDER BY rowid {direction}"
        last: int | None = None
        try:
            for number, *values in self._raw.execute(query):
                if last is not None and (number <= last) == (direction == "ASC"):
                    return found, False  # pages that point in circles
                last = number
                found[number] = dict(zip(columns, values, strict=True))
        except sqlite3.Error:
            return found, False
        return found, True

    def _each(self, table: str, columns: list[str], numbers: range) -> dict[int, Row]:
        """The rows of these numbers, each asked for by itself."""
        found: dict[int, Row] = {}
        query = f"SELECT {_listed(columns)} FROM {_named(table)} WHERE rowid = ?"
        for number in numbers:
            with suppress(sqlite3.Error):
                row = self._raw.execute(query, (number,)).fetchone()
                if row:
                    found[number] = dict(zip(columns, row, strict=True))
        return found


def _listed(names: list[str]) -> str:
    return ", ".join(map(_named, names))


def _named(name: str) -> str:
    """A name in a query, whatever signs a damaged file has in it."""
    return '"' + name.replace('"', '""') + '"'
