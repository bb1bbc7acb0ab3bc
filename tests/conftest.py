"""For all tests: no display, never the real data folder, and a database server where one is named.

Set CALIBRATOR_TEST_POSTGRES to the URL of a server's database whose user may create databases
(`tests/records/cluster.py` starts such a server), and every test of the store runs on PostgreSQL too.
"""

from __future__ import annotations

import gc
import os
import shutil
import tempfile
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any
from uuid import uuid4

import pytest

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
# A folder that lies in memory, where there is room in one: every weight is synced to the disk, and waiting for it
# was a third of a test at the screen. What is killed and damaged is so there as well.
_MEMORY = Path("/dev/shm")
_ROOM_BYTES = 2_000_000_000
if os.access(_MEMORY, os.W_OK) and shutil.disk_usage(_MEMORY).free > _ROOM_BYTES:
    os.environ.setdefault("TMPDIR", str(_MEMORY))
    tempfile.tempdir = None  # asked for before, and kept

# Set before anything of ours is imported, and inherited by the programs that tests start.
_FOLDER = tempfile.mkdtemp(prefix="calibrator-")
for name in ("XDG_DATA_HOME", "APPDATA", "LOCALAPPDATA"):
    os.environ[name] = _FOLDER

POSTGRES = os.environ.get("CALIBRATOR_TEST_POSTGRES", "")


def pytest_unconfigure() -> None:
    shutil.rmtree(_FOLDER, ignore_errors=True)


def pytest_collection_finish() -> None:
    """What the tests and their libraries consist of stays to the end: it is not gone through again for garbage."""
    gc.collect()
    gc.freeze()


class _Statements(dict[tuple[Any, ...], Any]):
    """Statements made into SQL, by the kind of store instead of by each store: the thousands of them are alike."""

    def get(self, key: tuple[Any, ...], default: Any = None) -> Any:
        return super().get((type(key[0]), *key[1:]), default)

    def __setitem__(self, key: tuple[Any, ...], made: Any) -> None:
        super().__setitem__((type(key[0]), *key[1:]), made)


@pytest.fixture(scope="session", autouse=True)
def statements_made_once() -> None:
    """As in a program that runs all day: making each statement anew was a sixth of a screen's test."""
    from sqlalchemy import Connection, Engine, event

    known = _Statements()

    @event.listens_for(Engine, "engine_connect")
    def connected(connection: Connection) -> None:
        connection.execution_options(compiled_cache=known)


@pytest.fixture(scope="session")
def server() -> Iterator[Callable[[], str]]:
    """Makes databases on the server and gives their URLs; all are dropped at the end."""
    if not POSTGRES:
        pytest.skip("no server is at hand: python3 tests/records/cluster.py start FOLDER gives one")
    from sqlalchemy import create_engine, make_url

    from calibrator.records import Records

    admin = create_engine(make_url(POSTGRES).set(drivername="postgresql+psycopg"), isolation_level="AUTOCOMMIT")
    made: list[str] = []

    def database() -> str:
        name = f"calibrator_{uuid4().hex}"
        with admin.connect() as connection:
            copied = f" TEMPLATE {made[0]}" if made else ""
            connection.exec_driver_sql(f"CREATE DATABASE {name}{copied}")
        made.append(name)
        return make_url(POSTGRES).set(database=name).render_as_string(hide_password=False)

    Records.open(database()).close()
    yield database
    with admin.connect() as connection:
        for name in made:
            connection.exec_driver_sql(f"DROP DATABASE {name} WITH (FORCE)")
    admin.dispose()
