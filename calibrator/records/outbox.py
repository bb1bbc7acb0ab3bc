"""What could not be sent to a server yet, kept on this computer until it is there: once, and in order.

A small SQLite file of its own, each line synced before the call returns. A line is a change as `entries` tells it, so
that it carries its own name and time: sending one twice, after a crash or a broken connection, changes nothing.
"""

from __future__ import annotations

import hashlib
import json
import sqlite3
from collections.abc import Iterable, Iterator
from contextlib import contextmanager, suppress
from datetime import datetime
from pathlib import Path
from threading import Lock

from calibrator.model.underway import Underway, one_by_one, unwatched
from calibrator.records.entries import Entry
from calibrator.records.errors import SENTENCES, DiskFull, EditedMeanwhile, NotAllowed, RecordsError, RecordsReadOnly
from calibrator.records.importing import bring
from calibrator.records.mirror import Mirror
from calibrator.records.plain import from_plain, to_plain
from calibrator.records.repository import Records
from calibrator.values import dataclass

_TABLES = (
    "CREATE TABLE IF NOT EXISTS waiting (number INTEGER PRIMARY KEY AUTOINCREMENT, told TEXT NOT NULL)",
    "CREATE TABLE IF NOT EXISTS refused (number INTEGER PRIMARY KEY, told TEXT NOT NULL, why TEXT NOT NULL)",
    "CREATE TABLE IF NOT EXISTS dismissed (number INTEGER PRIMARY KEY)",
)
_LISTED = "FROM refused WHERE number NOT IN (SELECT number FROM dismissed)"


@dataclass(frozen=True)
class Refused:
    """A change that the server did not take, and why. `number` is its own, and grows."""

    number: int
    entry: Entry
    error: Exception


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
        self._astray = False  # whether the copy shows what the server did not take
        self._count, self._refused = self._counts()

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
    def refused(self) -> int:
        """How many changes the server did not take and nobody has dismissed yet; costs nothing to ask."""
        return self._refused

    def list_refused(self) -> list[Refused]:
        """The changes that the server did not take, oldest first, without those that were dismissed."""
        with self._at_work() as store:
            found = store.execute(f"SELECT number, told, why {_LISTED} ORDER BY number").fetchall()
        return [Refused(number, _entry(told), _why(why)) for number, told, why in found]

    def dismiss(self, refused: Iterable[Refused]) -> None:
        """Somebody has read of them: they are listed no more. They stay in this file all the same."""
        with self._counted() as store:
            store.executemany("INSERT OR IGNORE INTO dismissed VALUES (?)", [(one.number,) for one in refused])

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

    def deliver(self, records: Records, underway: Underway = unwatched) -> None:
        """Send all that waits, oldest first. May take long: beside the window.

        What the records' rules refuse would be refused again each time: it is set aside, and the rest goes on. Raises
        a `RecordsError` for what may pass: the server away, busy or full, writing not allowed, this computer's disk
        full. Then nothing more is sent, because a change may rest on the one before, and what was not sent still waits.
        """
        with self._sending:  # a look beside the window may be at it already
            for number, told in one_by_one(self._lines(), underway):
                try:
                    bring(records, _entry(told))
                except (NotAllowed, EditedMeanwhile) as error:
                    self._set_aside(number, told, error)
                else:
                    self._done(number)
            if self._astray and self.mirror is not None:
                self.mirror.begin_anew()
            self._astray = False

    def _set_aside(self, number: int, told: str, error: RecordsError) -> None:
        why = json.dumps({"code": error.code, "params": error.params})
        with self._counted() as store:
            store.execute("INSERT OR IGNORE INTO refused VALUES (?, ?, ?)", (number, told, why))
            store.execute("DELETE FROM waiting WHERE number = ?", (number,))
        self._astray = True

    def _done(self, number: int) -> None:
        with self._counted() as store:
            store.execute("DELETE FROM waiting WHERE number = ?", (number,))

    def _lines(self) -> list[tuple[int, str]]:
        with self._at_work() as store:
            return store.execute("SELECT number, told FROM waiting ORDER BY number").fetchall()

    def _counts(self) -> tuple[int, int]:
        with self._at_work() as store:
            waiting = store.execute("SELECT count(*) FROM waiting").fetchone()[0]
            return waiting, store.execute(f"SELECT count(*) {_LISTED}").fetchone()[0]

    @contextmanager
    def _counted(self) -> Iterator[sqlite3.Connection]:
        """Write, and count what waits then; from several threads one after another."""
        with self._counting:
            with self._at_work() as store:
                yield store
            self._count, self._refused = self._counts()

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


def _why(told: str) -> Exception:
    """Why a change was refused. Earlier versions kept the English sentence alone."""
    if not told.startswith("{"):
        return Exception(told)
    why = json.loads(told)
    return RecordsError(why["code"], **why["params"]) if why["code"] in SENTENCES else Exception(why["code"])
