"""A copy of a server's records in a file of this computer: what is read while the server is away.

It follows the server entry by entry, beside the work. What this computer keeps for the server is shown on top of it,
and taken off again before anything of the server's is taken up: beneath, it is as the server was, in its order. It is
a copy only: where the server went another way, as after a copy of its records was put back, it is made anew.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from contextlib import suppress
from datetime import UTC
from pathlib import Path
from threading import Lock, RLock
from typing import Any

from filelock import FileLock
from sqlalchemy import Connection, Engine, delete, event, select, text

from calibrator.model.underway import Underway, unwatched
from calibrator.records import lock
from calibrator.records.engine import begin_writing, make_engine
from calibrator.records.entries import Entry
from calibrator.records.errors import EditedMeanwhile, NotAllowed, RecordsError, RecordsReadOnly, told
from calibrator.records.exporting import entries_between
from calibrator.records.importing import apply
from calibrator.records.opening import layout, make_tables
from calibrator.records.place import Place, place_of
from calibrator.records.rows import Writing, version
from calibrator.records.tables import FACTS, NOUNS, SCHEMA, STRIKES, changes, things

AT_ONCE = 500
"""Entries in one transaction: a long first copy can be ended, and goes on from there."""


class Mirror:
    """The copy of one server. Only one program of this computer has it at a time."""

    def __init__(self, file: Path, own: Callable[[], Iterable[Entry]] = tuple) -> None:
        """Open or make the file. Raises a `RecordsError` where it cannot be had, such as in a second window.

        `own` gives what is shown on top, in its order, whenever the copy is put together.
        """
        self.place: Place = place_of(str(file))
        self.file = file
        self._own = own
        self._following, self._changing = Lock(), RLock()
        self._held: FileLock = lock.take(file)
        self.engine: Engine = make_engine(self.place, read_only=False)
        event.listen(self.engine, "connect", _unbound)
        try:
            self._make_ready()
        except RecordsError:
            self.close()
            raise

    @property
    def ready(self) -> bool:
        """Whether all of the server's records were in it once."""
        return self._complete

    def close(self) -> None:
        self.engine.dispose()
        self._held.release()

    def follow(self, server: Connection, underway: Underway = unwatched) -> bool:
        """Take up what the server has and this copy has not. Ended, what is taken up stays.

        Where both went different ways the copy is made anew. While it follows already, nothing is done: False.
        """
        if not self._following.acquire(blocking=False):
            return False
        try:
            if not self._same_story(server):
                self.begin_anew()
            try:
                self._follow(server, underway)
            except (NotAllowed, EditedMeanwhile):
                self.begin_anew()
                self._follow(server, underway)
        finally:
            self._following.release()
        return True

    def take(self, entry: Entry) -> None:
        """Show what waits for the server as if it were there; what does not fit is found out when it is sent."""
        with suppress(RecordsError), told(self.place.name), self.engine.connect() as connection:
            begin_writing(connection)
            apply(Writing(connection), entry)
            connection.commit()

    def show(self) -> None:
        """Put anew on top what this computer keeps for the server, and nothing else."""
        with self._changing:
            self._take_up((), self._upto, self._last, complete=self._complete)

    def begin_anew(self) -> None:
        """Forget everything: the next `follow` copies all."""
        with self._changing:
            self._throw_away()
            self._make_ready()

    def _throw_away(self) -> None:
        self.engine.dispose()
        try:
            self.file.unlink(missing_ok=True)
        except OSError:
            raise RecordsReadOnly("read_only", place=self.place.name) from None

    def _make_ready(self) -> None:
        with told(self.place.name):
            try:
                with told(self.place.name), self.engine.connect() as connection:
                    fits = layout(connection) == SCHEMA and self._told(connection)
            except RecordsError:
                fits = False
            if not fits:
                self._throw_away()
                make_tables(self.engine)
                with self.engine.begin() as connection:
                    for trigger in connection.exec_driver_sql(_TRIGGERS).scalars().all():
                        connection.exec_driver_sql(f"DROP TRIGGER {trigger}")  # what is on top comes off again
                    connection.exec_driver_sql(_MADE)
                    connection.exec_driver_sql("INSERT INTO mirrored VALUES (0, 0, '', 0)")
            with self.engine.connect() as connection:
                self._upto, self._beneath, self._last, self._complete = self._told(connection) or (0, 0, "", False)

    def _told(self, connection: Connection) -> tuple[int, int, str, bool] | None:
        if not connection.dialect.has_table(connection, "mirrored"):
            return None
        upto, beneath, last, complete = connection.exec_driver_sql(
            "SELECT upto, beneath, last, whole FROM mirrored"
        ).one()
        return int(upto), int(beneath), str(last), bool(complete)

    def _same_story(self, server: Connection) -> bool:
        """Whether the newest change that was taken up is still the one that the server has under its number."""
        return self._upto in (0, version(server)) or _change(server, self._upto) == self._last

    def _follow(self, server: Connection, underway: Underway) -> None:
        newest = version(server)
        while self._upto < newest:
            upto = min(self._upto + AT_ONCE, newest)
            entries = list(entries_between(server, self._upto, upto))
            self._take_up(entries, upto, _change(server, upto), complete=self._complete or upto == newest)
            underway(upto / newest)
        if not self._complete:
            self._take_up((), newest, self._last, complete=True)

    def _take_up(self, entries: Iterable[Entry], upto: int, last: str, *, complete: bool) -> None:
        """Go on by some entries of the server's, beneath what is shown on top."""
        with self._changing, told(self.place.name), self.engine.connect() as connection:
            begin_writing(connection)
            self._take_off(connection)
            writing = Writing(connection)
            for entry in entries:
                apply(writing, entry)
            beneath = writing.last
            connection.execute(_KEPT, {"upto": upto, "beneath": beneath, "last": last, "whole": complete})
            for entry in self._own():
                with suppress(NotAllowed, EditedMeanwhile), told(self.place.name), connection.begin_nested():
                    apply(writing, entry)
            connection.commit()
            self._upto, self._beneath, self._last, self._complete = upto, beneath, last, complete

    def _take_off(self, connection: Connection) -> None:
        if version(connection) > self._beneath:
            for table in (*NOUNS.values(), *FACTS.values(), *STRIKES.values(), things):
                connection.execute(delete(table).where(table.c.change > self._beneath))
            connection.execute(delete(changes).where(changes.c.number > self._beneath))


_TRIGGERS = "SELECT name FROM sqlite_master WHERE type = 'trigger'"
_MADE = (
    "CREATE TABLE mirrored "
    "(upto INTEGER NOT NULL, beneath INTEGER NOT NULL, last TEXT NOT NULL, whole INTEGER NOT NULL)"
)
_KEPT = text("UPDATE mirrored SET upto = :upto, beneath = :beneath, last = :last, whole = :whole")


def _unbound(raw: Any, _record: Any) -> None:
    """Bonds are the server's to keep; here each change that comes off would be looked for in every table."""
    raw.execute("PRAGMA foreign_keys = OFF")


def _change(server: Connection, number: int) -> str:
    """What a change is known by again; blank where there is none of the number."""
    found = server.execute(select(changes.c.at, changes.c.by).where(changes.c.number == number)).first()
    return f"{found.at.astimezone(UTC).isoformat()} {found.by}" if found else ""
