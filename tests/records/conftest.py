"""Fresh records for each test: a copy of an empty SQLite file, and a database on a server where one is at hand."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest

from calibrator.records import Records, engine


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
