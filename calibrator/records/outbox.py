"""What could not be sent to a server yet, kept on this computer until it is there: once, and in order.

A small SQLite file of its own, each line synced before the call returns. A line is a change as `entries` tells it, so
that it carries its own name and time: sending one twice, after a crash or a broken connection, changes nothing. What is
sent is kept until the copy of the server's records has it too, or it would be in neither while the server is away.
"""

from __future__ import annotations

import hashlib
import json
import os
import sqlite3
from collections.abc import Iterable, Iterator
from contextlib import contextmanager, suppress
from datetime import datetime
from pathlib import Path
from threading import Lock, get_ident
from typing import Any

from sqlalchemy import Connection

from calibrator.model.underway import Underway, one_by_one, unwatched
from calibrator.records.entries import Entry, pieces_told
from calibrator.records.errors import (
    SENTENCES,
    DiskFull,
    EditedMeanwhile,
    NotAllowed,
    RecordsError,
    RecordsLocked,
    RecordsReadOnly,
    RecordsTooNew,
    RecordsUnreachable,
)
from calibrator.records.importing import bring
from calibrator.records.mirror import Mirror
from calibrator.records.plain import from_plain, to_plain
from calibrator.records.repository import Records
from calibrator.records.table_file import replacing
from calibrator.values import dataclass

_TABLES = (
    "CREATE TABLE IF NOT EXISTS waiting (number INTEGER PRIMARY KEY AUTOINCREMENT, told TEXT NOT NULL)",
    "CREATE TABLE IF NOT EXISTS sent (number INTEGER PRIMARY KEY, told TEXT NOT NULL)",
    "CREATE TABLE IF NOT EXISTS refused (number INTEGER PRIMARY KEY, told TEXT NOT NULL, why TEXT NOT NULL)",
    "CREATE TABLE IF NOT EXISTS dismissed (number INTEGER PRIMARY KEY)",
)
_LISTED = "FROM refused WHERE number NOT IN (SELECT number FROM dismissed)"
_SHOWN = "SELECT number, told FROM sent UNION SELECT number, told FROM waiting ORDER BY number"
_MAY_PASS = RecordsUnreachable, RecordsLocked, DiskFull, RecordsReadOnly, RecordsTooNew


@dataclass(frozen=True)
class Refused:
    """A change that the server did not take, and why. `number` is its own, and grows.

    `entry` is None where this version of the program cannot read it.
    """

    number: int
    entry: Entry | None
    error: Exception


class Outbox:
    """The changes that wait for a server. Two programs on one computer may share the file."""

    def __init__(self, file: Path, mirror: Path | None = None) -> None:
        """Open or make the file. Raises `RecordsReadOnly` or `DiskFull` where it cannot be kept.

        `mirror` is the file for the copy of the server's records. Where it cannot be had there is no reading alone.
        """
        self.file = file
        self.mirror: Mirror | None = None
        self._counting, self._sending = Lock(), Lock()
        self._sender: int | None = None
        self.stuck: Refused | None = None
        """The change that the server, which is there, does not take for what is neither its rules nor sure to pass."""
        with self._at_work() as store:
            for table in _TABLES:
                store.execute(table)
        self._count, self._refused = self._counts()
        if mirror is not None:
            with suppress(RecordsError):
                self.mirror = Mirror(mirror, self._shown)
                self.mirror.show()  # the last run may have ended between the one file and the other

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
        found = self._asked(f"SELECT number, told, why {_LISTED} ORDER BY number")
        return [Refused(number, _readable(told), _why(why)) for number, told, why in found]

    def dismiss(self, refused: Iterable[Refused]) -> None:
        """Somebody has read of them: they are listed no more. They stay in this file all the same."""
        with self._counted() as store:
            store.executemany("INSERT OR IGNORE INTO dismissed VALUES (?)", [(one.number,) for one in refused])

    def save_refused(self, file: Path) -> None:
        """Write the changes that are listed as refused to a file that can be brought in. Raises `TableNotWritten`."""
        self._save(f"SELECT number, told {_LISTED} ORDER BY number", file)

    def save_waiting(self, file: Path) -> None:
        """Write the changes that wait to a file that can be brought in; they wait on. Raises `TableNotWritten`."""
        self._save("SELECT number, told FROM waiting ORDER BY number", file)

    @property
    def since(self) -> datetime | None:
        """When the oldest of them was entered; None where nothing waits."""
        oldest = self._asked("SELECT told FROM waiting ORDER BY number LIMIT 1")
        entry = _readable(oldest[0][0]) if oldest else None
        return entry.at if entry else None

    def entries(self) -> list[Entry]:
        """The changes that wait, oldest first."""
        return [entry for _, told in self._lines() if (entry := _readable(told))]

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
        So it is with any other fault, but then the change is `stuck` too: `set_aside_stuck` lets the rest go on.
        """
        with self._sending:  # a look beside the window may be at it already
            self._sender, before = get_ident(), self._recounted()
            try:
                for number, told in one_by_one(self._lines(), underway):
                    self._send(records, number, told)
                self.stuck = None
            finally:
                self._sender = None
                if self._recounted() != before:
                    self._set_copy_right(records)

    def set_aside_stuck(self) -> None:
        """Put the change that is stuck to the refused ones, so that what waits behind it goes on.

        What rests on it follows it there, because the records' rules refuse that; nothing is lost.
        """
        stuck, self.stuck = self.stuck, None
        if stuck is not None:
            self._set_aside(stuck.number, stuck.error)
            if self.mirror is not None:
                with suppress(RecordsError):
                    self.mirror.show()

    def follow(self, server: Connection, underway: Underway = unwatched) -> None:
        """Bring the copy up to date with the server; once for all that is being sent, not for each of it."""
        if self.mirror is None or self._sender == get_ident():
            return
        last = self._asked("SELECT max(number) FROM sent")[0][0]
        if self.mirror.follow(server, underway) and last is not None:
            with self._at_work() as store:
                store.execute("DELETE FROM sent WHERE number <= ?", (last,))

    def _send(self, records: Records, number: int, told: str) -> None:
        try:
            bring(records, _entry(told))
        except (NotAllowed, EditedMeanwhile) as error:
            self._set_aside(number, error)
        except Exception as error:
            if not isinstance(error, _MAY_PASS):
                self.stuck = Refused(number, _readable(told), error)
            raise
        else:
            self._done(number)

    def _set_copy_right(self, records: Records) -> None:
        if self.mirror is None:
            return
        with suppress(RecordsError):
            self.mirror.show()
            if self.ready:
                records.follow()

    def _set_aside(self, number: int, error: Exception) -> None:
        code, params = (error.code, error.params) if isinstance(error, RecordsError) else (repr(error), {})
        why = {"code": code, "params": params}
        with self._counted() as store:
            store.execute(
                "INSERT OR IGNORE INTO refused SELECT number, told, ? FROM waiting WHERE number = ?",
                (json.dumps(why), number),
            )
            store.execute("DELETE FROM waiting WHERE number = ?", (number,))

    def _done(self, number: int) -> None:
        with self._counted() as store:
            if self.mirror is not None:
                store.execute("INSERT OR IGNORE INTO sent SELECT * FROM waiting WHERE number = ?", (number,))
            store.execute("DELETE FROM waiting WHERE number = ?", (number,))
            store.execute("DELETE FROM refused WHERE number = ?", (number,))  # set aside while it was on its way

    def _lines(self) -> list[tuple[int, str]]:
        return self._asked("SELECT number, told FROM waiting ORDER BY number")

    def _shown(self) -> list[Entry]:
        return [entry for _, told in self._asked(_SHOWN) if (entry := _readable(told))]

    def _save(self, asked: str, file: Path) -> None:
        with replacing(file) as unfinished, unfinished.open("w", encoding="utf-8", newline="\n") as written:
            written.writelines(pieces_told(told for _, told in self._asked(asked)))
            written.flush()
            os.fsync(written.fileno())

    def _asked(self, query: str) -> list[Any]:
        with self._at_work() as store:
            return store.execute(query).fetchall()

    def _recounted(self) -> tuple[int, int]:
        """What another program on this computer sent meanwhile, of the same file, waits no longer."""
        with self._counting:
            self._count, self._refused = self._counts()
            return self._count, self._refused

    def _counts(self) -> tuple[int, int]:
        waiting = self._asked("SELECT count(*) FROM waiting")[0][0]
        return waiting, self._asked(f"SELECT count(*) {_LISTED}")[0][0]

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
    """Raises `NotAllowed` for what another version of the program wrote, or a damage: it may be read elsewhere."""
    try:
        entry: Entry = from_plain(Entry, json.loads(told))
    except ValueError as fault:
        raise NotAllowed("not_kept", kind="entry", fault=str(fault)) from None
    return entry


def _readable(told: str) -> Entry | None:
    with suppress(NotAllowed):
        return _entry(told)
    return None


def _why(told: str) -> Exception:
    """Why a change was refused. Earlier versions kept the English sentence alone."""
    if not told.startswith("{"):
        return Exception(told)
    why = json.loads(told)
    return RecordsError(why["code"], **why["params"]) if why["code"] in SENTENCES else Exception(why["code"])
