"""A copy of a server's records in a file of this computer: what is read while the server is away.

It follows the server entry by entry, beside the work, and takes up at once what waits here for the server. It is a
copy only: where it went another way than the server, it is thrown away and made anew.
"""

from __future__ import annotations

from contextlib import suppress
from pathlib import Path
from threading import Lock

from filelock import FileLock
from sqlalchemy import Connection, Engine, text

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
from calibrator.records.tables import SCHEMA

AT_ONCE = 500
"""Entries in one transaction: a long first copy can be ended, and goes on from there."""


class Mirror:
    """The copy of one server. Only one program of this computer has it at a time."""

    def __init__(self, file: Path) -> None:
        """Open or make the file. Raises a `RecordsError` where it cannot be had, such as in a second window."""
        self.place: Place = place_of(str(file))
        self.file = file
        self._following = Lock()
        self._held: FileLock = lock.take(file)
        self.engine: Engine = make_engine(self.place, read_only=False)
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

    def follow(self, server: Connection, underway: Underway = unwatched) -> None:
        """Take up what the server has and this copy has not. Ended, what is taken up stays.

        Where both went different ways the copy is made anew. While it follows already, nothing is done.
        """
        if not self._following.acquire(blocking=False):
            return
        try:
            self._follow(server, underway)
        except (NotAllowed, EditedMeanwhile):
            self.begin_anew()
            self._follow(server, underway)
        finally:
            self._following.release()

    def take(self, entry: Entry) -> None:
        """Show what waits for the server as if it were there; what does not fit is found out when it is sent."""
        with suppress(RecordsError), told(self.place.name), self.engine.connect() as connection:
            begin_writing(connection)
            apply(Writing(connection), entry)
            connection.commit()

    def begin_anew(self) -> None:
        """Forget everything: the next `follow` copies all."""
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
                    connection.exec_driver_sql("CREATE TABLE mirrored (upto INTEGER NOT NULL, whole INTEGER NOT NULL)")
                    connection.exec_driver_sql("INSERT INTO mirrored VALUES (0, 0)")
            with self.engine.connect() as connection:
                self._upto, self._complete = self._told(connection) or (0, False)

    def _told(self, connection: Connection) -> tuple[int, bool] | None:
        if not connection.dialect.has_table(connection, "mirrored"):
            return None
        upto, complete = connection.exec_driver_sql("SELECT upto, whole FROM mirrored").one()
        return int(upto), bool(complete)

    def _follow(self, server: Connection, underway: Underway) -> None:
        newest = version(server)
        while self._upto < newest:
            upto = min(self._upto + AT_ONCE, newest)
            entries = list(entries_between(server, self._upto, upto))
            with told(self.place.name), self.engine.connect() as connection:
                begin_writing(connection)
                writing = Writing(connection)
                for entry in entries:
                    apply(writing, entry)
                self._keep_place(connection, upto, complete=self._complete or upto == newest)
            underway(upto / newest)
        if not self._complete:
            with told(self.place.name), self.engine.connect() as connection:
                begin_writing(connection)
                self._keep_place(connection, newest, complete=True)

    def _keep_place(self, connection: Connection, upto: int, *, complete: bool) -> None:
        place = {"upto": upto, "whole": complete}
        connection.execute(text("UPDATE mirrored SET upto = :upto, whole = :whole"), place)
        connection.commit()
        self._upto, self._complete = upto, complete
