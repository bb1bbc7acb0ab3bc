"""Opening records: lock, check, bring up to date. Nothing is written before all checks have passed."""

from __future__ import annotations

import os
from contextlib import ExitStack
from pathlib import Path

from filelock import FileLock
from sqlalchemy import Connection, Engine, inspect

from calibrator.records import backup, lock
from calibrator.records.engine import make_engine
from calibrator.records.errors import (
    RecordsDamaged,
    RecordsError,
    RecordsReadOnly,
    RecordsTooNew,
    RecordsUnreachable,
    told,
)
from calibrator.records.paths import backups_folder
from calibrator.records.place import Place, place_of
from calibrator.records.tables import SCHEMA
from calibrator.values import dataclass


@dataclass(frozen=True)
class Opened:
    """An open store: its place, its engine, and the lock that keeps other instances out."""

    place: Place
    engine: Engine
    held: FileLock | None
    identity: tuple[int, int] | None
    backup_fault: RecordsError | None = None

    def close(self) -> None:
        self.engine.dispose()
        if self.held:
            self.held.release()


def open_store(url: str, *, read_only: bool) -> Opened:
    """Open records, making or migrating them when writing is allowed. Raises a `RecordsError` otherwise."""
    place = place_of(url)
    with ExitStack() as undo:
        held = _hold(place.file, read_only) if place.file else None
        if held:
            undo.callback(held.release)
        engine = make_engine(place, read_only=read_only)
        undo.callback(engine.dispose)
        with told(place.name, str(place.backups)):
            made = _ready(engine, place, read_only)
        fault = _daily_fault(place.file) if held and place.file and not made else None
        opened = Opened(place, engine, held, identity(place.file), fault)
        undo.pop_all()
    return opened


def not_opened_yet(url: str) -> Opened:
    """A server's records before it was reached. Raises `RecordsError` for what names none."""
    place = place_of(url)
    return Opened(place, make_engine(place, read_only=False), None, None)


def refuse_other_layout(connection: Connection, place: Place) -> None:
    """Raise `RecordsTooNew` or `RecordsReadOnly` unless the tables are those that this program writes."""
    found = _checked_layout(connection, place)
    if found != SCHEMA:
        raise _cannot_look(found, place)


def identity(file: Path | None) -> tuple[int, int] | None:
    """Which file it is, whatever its name; None for a server. Raises `RecordsUnreachable` when it is gone."""
    if file is None:
        return None
    try:
        found = file.stat()
    except OSError:
        raise RecordsUnreachable("gone", place=str(file)) from None
    return found.st_dev, found.st_ino


def layout(connection: Connection) -> int | None:
    """The layout version of the tables; None where there are none. Foreign tables are refused."""
    names = set(inspect(connection).get_table_names())
    if not names:
        return None
    if "alembic_version" not in names or "changes" not in names:
        raise _not_ours(connection)
    told = str(connection.exec_driver_sql("SELECT version_num FROM alembic_version").scalar())
    if not told.isascii() or not told.isdigit():
        raise _not_ours(connection)
    return int(told)


def _not_ours(connection: Connection) -> RecordsDamaged:
    code = "not_records" if connection.dialect.name == "sqlite" else "other_tables"
    return RecordsDamaged(code, place=str(connection.engine.url.database))


def _hold(file: Path, read_only: bool) -> FileLock | None:
    if read_only:
        if not file.is_file():
            raise RecordsUnreachable("missing", place=str(file))
        return None
    try:
        file.parent.mkdir(parents=True, exist_ok=True)
    except OSError:
        raise RecordsReadOnly("read_only", place=str(file)) from None
    if file.exists() and not os.access(file, os.W_OK):
        raise RecordsReadOnly("read_only", place=str(file))
    return lock.take(file)


def _ready(engine: Engine, place: Place, read_only: bool) -> bool:
    """Check, and bring up to date; tells whether the store was made new."""
    if place.file and not read_only:
        _refuse_emptied(place.file)
    with engine.connect() as connection:
        found = _checked_layout(connection, place)
    if found == SCHEMA:
        return False
    if read_only:
        raise _cannot_look(found, place)
    if place.file and found is not None:
        backup.make(place.file, why=f"before-layout-{SCHEMA}")
    make_tables(engine)
    return found is None


def _daily_fault(file: Path) -> RecordsError | None:
    # Work must not stop because a copy cannot be made; the person is told, though.
    try:
        backup.daily(file)
    except RecordsError as fault:
        return fault
    return None


def _refuse_emptied(file: Path) -> None:
    if file.exists() and file.stat().st_size == 0 and backup.every(file):
        raise RecordsDamaged("emptied", place=str(file), backups=str(backups_folder(file)))


def _checked_layout(connection: Connection, place: Place) -> int | None:
    if place.file:
        verdict = str(connection.exec_driver_sql("PRAGMA quick_check(1)").scalar())
        if verdict != "ok":
            raise RecordsDamaged("damaged", place=place.name, detail=verdict, backups=str(place.backups))
    found = layout(connection)
    if found is not None and found > SCHEMA:
        raise RecordsTooNew("too_new", place=place.name, found=str(found), known=str(SCHEMA))
    return found


def _cannot_look(found: int | None, place: Place) -> RecordsError:
    if found is None:
        return RecordsUnreachable("missing", place=place.name)
    return RecordsReadOnly("too_old", place=place.name, found=str(found), known=str(SCHEMA))


def make_tables(engine: Engine) -> None:
    """Make the tables of empty records, or bring older ones up to date."""
    # Alembic costs a fifth of a second to import; an up-to-date store never needs it.
    from calibrator.records.migrations.run import upgrade

    upgrade(engine)
