"""Fresh records for each test: a copy of an empty SQLite file, and a database on a server where one is named.

Set CALIBRATOR_TEST_POSTGRES to the URL of a server's database whose user may create databases, and every
test that takes `records` runs on PostgreSQL too.
"""

from __future__ import annotations

import os
import shutil
from collections.abc import Callable, Iterator
from pathlib import Path
from uuid import uuid4

import pytest
from sqlalchemy import create_engine, make_url

from calibrator.records import Records, engine

POSTGRES = os.environ.get("CALIBRATOR_TEST_POSTGRES", "")


@pytest.fixture(autouse=True)
def unsynced(request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch) -> None:
    """Waiting for the disk shows nothing in most tests; those that ask for `synced` keep what people get."""
    if "synced" not in request.fixturenames:
        monkeypatch.setattr(engine, "_SYNC", "OFF")


@pytest.fixture
def synced() -> None:
    """The store as people get it, each write waited for."""


@pytest.fixture(scope="session")
def empty_file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    file = tmp_path_factory.mktemp("empty") / "records.sqlite"
    Records.open(str(file)).close()
    return file


@pytest.fixture
def file(empty_file: Path, tmp_path: Path) -> Path:
    """A records file of this program without any records."""
    return Path(shutil.copy(empty_file, tmp_path / "records.sqlite"))


@pytest.fixture(scope="session")
def server() -> Iterator[Callable[[], str]]:
    """Makes databases on the server and gives their URLs; all are dropped at the end."""
    if not POSTGRES:
        pytest.skip("CALIBRATOR_TEST_POSTGRES names no server")
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


@pytest.fixture(params=["sqlite", "postgresql"])
def url(request: pytest.FixtureRequest) -> str:
    """Empty records, on both kinds of store."""
    if request.param == "sqlite":
        return str(request.getfixturevalue("file"))
    made: str = request.getfixturevalue("server")()
    return made


@pytest.fixture
def records(url: str) -> Iterator[Records]:
    with Records.open(url) as opened:
        yield opened
