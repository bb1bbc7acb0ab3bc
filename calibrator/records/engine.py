"""Connections that keep what they acknowledge.

SQLite: rollback journal with extra syncing (such files end up on shared drives, where a write-ahead log is
unsafe), foreign keys on, transactions begun by us because the driver's own habits leave table changes
outside of them. PostgreSQL: its own defaults, with synchronous commit made sure of; nobody waits long for another
writer, and the server soon lets go of a computer whose power was cut, which may have held all others up.
"""

from __future__ import annotations

from typing import Any

from sqlalchemy import Connection, Engine, create_engine, event
from sqlalchemy.exc import NoSuchModuleError

from calibrator.records.errors import RecordsError
from calibrator.records.passwords import with_password
from calibrator.records.place import Place

WRITES = "calibrator_writes"
_WAIT_S = 5
_SYNC = "EXTRA"


def make_engine(place: Place, *, read_only: bool) -> Engine:
    """An engine for a place. Raises `RecordsError` where the server's driver is not installed."""
    try:
        return _sqlite(place, read_only) if place.file else _postgresql(place, read_only)
    except (ModuleNotFoundError, NoSuchModuleError):
        raise RecordsError("no_driver") from None


def begin_writing(connection: Connection) -> None:
    """Begin a transaction that no other writer can share, so that what it reads stays true until it ends."""
    connection.execution_options(**{WRITES: True})
    connection.begin()
    if connection.dialect.name == "postgresql":
        connection.exec_driver_sql("LOCK TABLE changes IN EXCLUSIVE MODE")


def _sqlite(place: Place, read_only: bool) -> Engine:
    engine = create_engine(place.url, connect_args={"timeout": _WAIT_S, "isolation_level": None})

    def connected(raw: Any, _record: Any) -> None:
        raw.execute("PRAGMA foreign_keys = ON")
        raw.execute("PRAGMA trusted_schema = OFF")  # a file may come from anybody: what is written in it runs nothing
        raw.execute(f"PRAGMA synchronous = {_SYNC}")
        raw.execute("PRAGMA query_only = ON" if read_only else "PRAGMA journal_mode = DELETE")

    def begun(connection: Connection) -> None:
        writes = connection.get_execution_options().get(WRITES)
        connection.exec_driver_sql("BEGIN IMMEDIATE" if writes else "BEGIN")

    event.listen(engine, "connect", connected)
    event.listen(engine, "begin", begun)
    return engine


def _postgresql(place: Place, read_only: bool) -> Engine:
    lets_go = (
        f"-c lock_timeout={_WAIT_S}s -c tcp_keepalives_idle=20 -c tcp_keepalives_interval=5 -c tcp_keepalives_count=3"
    )
    options = f"-c synchronous_commit=on {lets_go}" + (" -c default_transaction_read_only=on" if read_only else "")
    waits = {"connect_timeout": _WAIT_S, "tcp_user_timeout": 1000 * _WAIT_S}  # a pulled cable gives no answer at all
    alive = {"keepalives_idle": _WAIT_S, "keepalives_interval": 1, "keepalives_count": 3}
    return create_engine(
        with_password(place.url), pool_pre_ping=True, connect_args={"options": options} | waits | alive
    )
