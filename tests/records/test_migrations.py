"""The steps of the layout: they end at what the program reads, whole or not at all, from any older file."""

from __future__ import annotations

import json
import shutil
import sqlite3
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path
from typing import Any

import invented
import pytest
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from alembic.script import ScriptDirectory
from invented import World
from sqlalchemy import Connection, inspect

from calibrator.records import Records, RecordsReadOnly, RecordsUnreachable, backup, opening
from calibrator.records.layout import metadata
from calibrator.records.migrations import run
from calibrator.records.tables import SCHEMA
from tests.exported import export_text

FROZEN = Path(__file__).with_name("frozen")
FROM_THE_START = {"currency": "$", "asks_for_charts": True}
"""Fields added later that have a value on a farm that never spoke of them."""
FINGERPRINTS = 6  # the layout since which a sign-off is given its fingerprint at once


def test_the_newest_step_is_the_layout_that_the_program_writes() -> None:
    heads = ScriptDirectory.from_config(run.configuration()).get_heads()
    assert [int(head) for head in heads] == [SCHEMA]


def test_the_steps_end_at_the_tables_that_the_program_uses(records: Records) -> None:
    with records.reading() as connection:
        context = MigrationContext.configure(connection, opts={"compare_type": True})
        assert compare_metadata(context, metadata) == []
        for table in metadata.tables.values():
            found = {one["name"]: one for one in inspect(connection).get_columns(table.name)}
            told = {column.name: not column.nullable for column in table.columns}
            assert {name: not one["nullable"] for name, one in found.items()} == told


def test_every_table_is_guarded(file: Path) -> None:
    with closing(sqlite3.connect(file)) as raw:
        guarded = {row[0] for row in raw.execute("SELECT tbl_name FROM sqlite_master WHERE type = 'trigger'")}
    assert guarded == set(metadata.tables)


@pytest.fixture
def next_layout(monkeypatch: pytest.MonkeyPatch) -> Iterator[list[str]]:
    """As if the program were one step ahead: migrating runs the statements in the list."""
    statements: list[str] = []

    def upgrade(engine: Any) -> None:
        with engine.connect().execution_options(calibrator_writes=True) as connection, connection.begin():
            _run(connection, statements)
            connection.exec_driver_sql(f"UPDATE alembic_version SET version_num = '{SCHEMA + 1:04}'")

    monkeypatch.setattr(run, "upgrade", upgrade)
    monkeypatch.setattr(opening, "SCHEMA", SCHEMA + 1)
    return statements


def _run(connection: Connection, statements: list[str]) -> None:
    for statement in statements:
        connection.exec_driver_sql(statement)


def _layout(file: Path) -> int:
    with closing(sqlite3.connect(file)) as raw:
        return int(raw.execute("SELECT version_num FROM alembic_version").fetchone()[0])


def test_an_older_file_is_copied_and_then_brought_up_to_date(file: Path, next_layout: list[str]) -> None:
    next_layout.append("ALTER TABLE farms ADD COLUMN nickname TEXT")
    with pytest.raises(RecordsReadOnly, match=f"older layout {SCHEMA}"):
        Records.open(str(file), read_only=True)
    Records.open(str(file)).close()
    assert _layout(file) == SCHEMA + 1
    copies = [one for one in backup.every(file) if one.why == f"before-layout-{SCHEMA + 1}"]
    assert [_layout(one.path) for one in copies] == [SCHEMA]


def test_a_step_that_fails_leaves_the_file_as_it_was(file: Path, next_layout: list[str]) -> None:
    next_layout += ["ALTER TABLE farms ADD COLUMN nickname TEXT", "SELECT * FROM nowhere"]
    with pytest.raises(Exception, match="nowhere"):
        Records.open(str(file))
    assert _layout(file) == SCHEMA
    with closing(sqlite3.connect(file)) as raw:
        assert "nickname" not in [row[1] for row in raw.execute("PRAGMA table_info(farms)")]


def test_new_tables_are_made_whole_or_not_at_all(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    file = tmp_path / "records.sqlite"
    from calibrator.records.migrations import append_only

    monkeypatch.setattr(append_only, "_statements", lambda *_: ["SELECT * FROM nowhere"])
    with pytest.raises(Exception, match="nowhere"):
        Records.open(str(file))
    monkeypatch.undo()
    with closing(sqlite3.connect(file)) as raw:
        assert raw.execute("SELECT count(*) FROM sqlite_master").fetchone() == (0,)
    with Records.open(str(file)) as records:
        assert records.keep(invented.farm()).revision


def _without_fingerprints(told: dict[str, Any]) -> None:
    for entry in told["changes"]:
        entry.pop("fingerprint", None)


def _tells(now: Any, then: Any) -> bool:
    """Whether all that was told is told still; what came since may only be unknown or as from the start."""
    if isinstance(then, dict) and isinstance(now, dict):
        new = [now[name] for name in now.keys() - then.keys() if now[name] != FROM_THE_START.get(name)]
        return not any(new) and all(name in now and _tells(now[name], then[name]) for name in then)
    if isinstance(then, list) and isinstance(now, list):
        return len(now) == len(then) and all(map(_tells, now, then))
    return bool(now == then)


def test_what_is_lost_or_changed_does_not_tell_the_same() -> None:
    then = {"a": [1, {"b": "c"}]}
    assert _tells({"a": [1, {"b": "c", "new": None}], "more": []}, then)
    assert _tells(then | {"currency": "$"}, then)
    assert not _tells(then | {"currency": "€"}, then)
    for now in ({}, {"a": [1]}, {"a": [1, {"b": "d"}]}, {"a": [1, {"b": "c", "new": 3}]}):
        assert not _tells(now, then)


@pytest.mark.parametrize("frozen", sorted(FROZEN.glob("*.sqlite")), ids=lambda path: path.stem)
def test_the_records_of_every_past_layout_open_and_tell_the_same(frozen: Path, tmp_path: Path) -> None:
    file = Path(shutil.copy(frozen, tmp_path / "records.sqlite"))
    with Records.open(str(file)) as records:
        now = json.loads(export_text(records))
        layout = int(frozen.stem.removeprefix("layout_"))
        links = [one["fingerprint"] for one in now["changes"] if one["type"] == "signed"]
        assert links
        assert all(bool(link["taken_later"]) == (layout < FINGERPRINTS) for link in links)
        assert records.check_fingerprints() == ()
        if layout < FINGERPRINTS:
            _without_fingerprints(now)
        assert _tells(now, json.loads(frozen.with_suffix(".json").read_text(encoding="utf-8")))
        assert World(records).signed() in records.sign_offs(records.every(invented.Farm)[-1].id)


def test_there_is_a_frozen_file_for_every_layout() -> None:
    assert [int(path.stem.removeprefix("layout_")) for path in sorted(FROZEN.glob("*.sqlite"))] == list(
        range(1, SCHEMA + 1)
    )


def test_a_server_without_records_cannot_be_looked_at(server: Any) -> None:
    import re

    from sqlalchemy import create_engine, make_url

    url = server()
    engine = create_engine(make_url(url).set(drivername="postgresql+psycopg"))
    with engine.begin() as connection:
        connection.exec_driver_sql("DROP SCHEMA public CASCADE")
        connection.exec_driver_sql("CREATE SCHEMA public")
    engine.dispose()
    with pytest.raises(RecordsUnreachable, match="There are no records at"):
        Records.open(url, read_only=True)
    with Records.open(re.sub(r"^postgresql:", "postgresql+psycopg:", url)) as records:
        assert records.version() == 0
