"""What could not be sent to a server yet, kept on this computer until it is there: once, and in order.

A small SQLite file of its own, each line synced before the call returns. A line is a change as `entries` tells it, so
that it carries its own name and time: sending one twice, after a crash or a broken connection, changes nothing.
"""

from __future__ import annotations

import hashlib
import json
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from datetime import datetime
from pathlib import Path
from threading import Lock

from calibrator.records.entries import Entry
from calibrator.records.errors import DiskFull, EditedMeanwhile, NotAllowed, RecordsError, RecordsReadOnly
from calibrator.records.importing import bring
from calibrator.records.mirror import Mirror
from calibrator.records.plain import from_plain, to_plain
from calibrator.records.repository import Records
from calibrator.values import dataclass

_TABLES = (
    "CREATE TABLE IF NOT EXISTS waiting (number INTEGER PRIMARY KEY AUTOINCREMENT, told TEXT NOT NULL)",
    "CREATE TABLE IF NOT EXISTS refused (number INTEGER PRIMARY KEY, told TEXT NOT NULL, why TEXT NOT NULL)",
)


@dataclass(frozen=True)
class Refused:
    """A change that the server did not take, and why."""

    entry: Entry
    error: RecordsError


class Outbox:
    """The changes that wait for a server. Two programs on one computer may share the file."""

    def __init__(self, file: Path, mirror: Path | None = None) -> None:
        """Open or make the file. Raises `RecordsReadOnly` or `DiskFull` where it cannot be kept.

        `mirror` is the file for the copy of the server's records. Where it cannot be had there is no reading alone.
        """
        self.file = file
        self.mirror: Mirror | None = None
        if mirror is not None:
            with suppress(RecordsError):
                self.mirror = Mirror(mirror)
        self._counting, self._sending = Lock(), Lock()
        with self._at_work() as store:
            for table in _TABLES:
                store.execute(table)
        self._count = len(self._lines())

    @classmethod
    def beside(cls, folder: Path, place: str) -> Outbox:
        """The outbox for one server, in the folder for this user's data. `place` holds no password."""
        folder.mkdir(parents=True, exist_ok=True)
        named = f"{hashlib.sha256(place.encode()).hexdigest()[:16]}.sqlite"
        return cls(folder / f"outbox-{named}", folder / f"mirror-{named}")

    def close(self) -> None:
        """Let go of the copy of the server's records; what waits is kept."""
        if self.mirror is not None:
            self.mirror.close()
            self.mirror = None

    @property
    def ready(self) -> bool:
        """Whether this computer's copy of the records can stand in for the server and show what waits."""
        return self.mirror is not None and self.mirror.ready

    @property
    def waiting(self) -> int:
        """How many changes are not sent yet; costs nothing to ask."""
        return self._count

    @property
    def since(self) -> datetime | None:
        """When the oldest of them was entered; None where nothing waits."""
        waiting = self.entries()
        return waiting[0].at if waiting else None

    def entries(self) -> list[Entry]:
        """The changes that wait, oldest first."""
        return [_entry(told) for _, told in self._lines()]

    def put(self, entry: Entry) -> None:
        """Keep a change until it can be sent; it is on the disk when this returns."""
        with self._counted() as store:
            store.execute("INSERT INTO waiting (told) VALUES (?)", (json.dumps(to_plain(entry)),))
        if self.mirror is not None:
            self.mirror.take(entry)

    def deliver(self, records: Records) -> list[Refused]:
        """Send all that waits, oldest first; gives what the records' rules refused, and why.

        What is refused is kept in this file for good, apart. Raises `RecordsUnreachable` when the server is away;
        what was not sent then still waits.
        """
        refused: list[Refused] = []
        with self._sending:  # a look beside the window may be at it already
            for number, told in self._lines():
                entry = _entry(told)
                try:
                    bring(records, entry)
                except (NotAllowed, EditedMeanwhile) as error:
                    refused.append(Refused(entry, error))
                    self._done(number, told, str(error))
                else:
                    self._done(number, told, "")
        if refused and self.mirror is not None:
            self.mirror.begin_anew()  # it shows what the server did not take
        return refused

    def _done(self, number: int, told: str, why: str) -> None:
        with self._counted() as store:
            if why:
                store.execute("INSERT OR IGNORE INTO refused VALUES (?, ?, ?)", (number, told, why))
            store.execute("DELETE FROM waiting WHERE number = ?", (number,))

    def _lines(self) -> list[tuple[int, str]]:
        with self._at_work() as store:
            return store.execute("SELECT number, told FROM waiting ORDER BY number").fetchall()

    @contextmanager
    def _counted(self) -> Iterator[sqlite3.Connection]:
        """Write, and count what waits then; from several threads one after another."""
        with self._counting:
            with self._at_work() as store:
                yield store
            self._count = len(self._lines())

    @contextmanager
    def _at_work(self) -> Iterator[sqlite3.Connection]:
        try:
            store = sqlite3.connect(self.file)
            try:
                store.execute("PRAGMA synchronous = EXTRA")
                with store:
                    yield store
            finally:
                store.close()
        except sqlite3.Error as error:
            full = getattr(error, "sqlite_errorname", "") == "SQLITE_FULL"
            kind, code = (DiskFull, "disk_full") if full else (RecordsReadOnly, "read_only")
            raise kind(code, place=str(self.file)) from error


def _entry(told: str) -> Entry:
    entry: Entry = from_plain(Entry, json.loads(told))
    return entry
