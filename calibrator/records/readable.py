"""The rows of a damaged file that can still be read, one by one."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
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
        found = dict(self._scanned(table, columns, "ASC"))
        low = max(found, default=0)
        found |= dict(self._scanned(table, columns, "DESC"))
        above = [number for number in found if number > low]
        for number in range(low + 1, min(above) if above else max(low, known) + _BEYOND):
            found |= self._one(table, columns, number)
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

    def _scanned(self, table: str, columns: list[str], direction: str) -> Iterator[tuple[int, Row]]:
        named = ", ".join(map(_named, columns))
        last: int | None = None
        with suppress(sqlite3.Error):
            for number, *values in self._raw.execute(
                f"SELECT rowid, {named} FROM {_named(table)} ORDER BY rowid {direction}"
            ):
                if last is not None and (number <= last) == (direction == "ASC"):
                    return  # pages that point in circles
                last = number
                yield number, dict(zip(columns, values, strict=True))

    def _one(self, table: str, columns: list[str], number: int) -> dict[int, Row]:
        named = ", ".join(map(_named, columns))
        try:
            row = self._raw.execute(f"SELECT {named} FROM {_named(table)} WHERE rowid = ?", (number,)).fetchone()
        except sqlite3.Error:
            return {}
        return {number: dict(zip(columns, row, strict=True))} if row else {}


def _named(name: str) -> str:
    """A name in a query, whatever signs a damaged file has in it."""
    return '"' + name.replace('"', '""') + '"'
