"""The copy of a server's records on this computer: it follows, stands in, takes up what waits, and is made anew."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from dataclasses import replace
from pathlib import Path
from typing import cast

import invented
import pytest
from invented import World
from sqlalchemy import Engine
from sqlalchemy.exc import OperationalError

from calibrator.model import Farm, Lot, WeighIn, new_id
from calibrator.model.underway import Ended
from calibrator.records import (
    ELSEWHERE,
    NotAllowed,
    Records,
    RecordsLocked,
    RecordsReadOnly,
    RecordsTooNew,
    RecordsUnreachable,
    import_season,
    mirror,
    sample_lots_folder,
)
from calibrator.records.entries import Added, Told
from calibrator.records.mirror import Mirror
from calibrator.records.outbox import Outbox
from tests.exported import export_text


class _Away:
    def connect(self) -> None:
        raise OperationalError("connect", None, Exception("Connection refused"))

    def dispose(self) -> None: ...


@pytest.fixture
def outbox(records: Records, tmp_path: Path) -> Iterator[Outbox]:
    made = Outbox.beside(tmp_path / "here", records.url)
    records.while_away(made)
    yield made
    made.close()


@contextmanager
def away(records: Records) -> Iterator[None]:
    there = records._opened
    records._opened = replace(there, engine=cast(Engine, _Away()))
    try:
        yield
    finally:
        records._opened = there


def text_alone(records: Records) -> str:
    """What is read while the server is away."""
    with away(records):
        return export_text(records)


def test_it_follows_entry_by_entry_and_stands_in(
    records: Records, outbox: Outbox, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(mirror, "AT_ONCE", 7)
    world = World(records)
    world.signed()
    with pytest.raises(RecordsUnreachable):
        text_alone(records)  # nothing is copied yet
    records.follow()
    assert text_alone(records) == export_text(records)
    fill = world.fills[0]
    spot = records.add_spot_fill(invented.spot(records.sign_offs(world.farm.id)[0]))
    records.strike_spot(spot.id, "spilled", "AB")
    records.restore_spot(spot.id, "AB")
    records.keep(replace(world.lot, package_count=12))
    assert text_alone(records) == export_text(records)  # one's own changes are there at once
    assert fill in records.fills(fill.weigh_in_id)
    assert records.version() < ELSEWHERE
    with away(records):
        assert records.version() > ELSEWHERE
        with pytest.raises(RecordsUnreachable):
            records.version(anew=True)
        with pytest.raises(RecordsUnreachable):
            records.keep(replace(world.lot, package_count=13))


def test_a_whole_season_is_copied_as_it_is(records: Records, outbox: Outbox) -> None:
    import_season(records, sample_lots_folder())
    told: list[float] = []
    records.follow(told.append)
    assert told == sorted(told)
    assert told[-1] == 1.0
    assert text_alone(records) == export_text(records)


def test_ended_on_the_way_it_goes_on_from_there(
    records: Records, outbox: Outbox, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(mirror, "AT_ONCE", 3)
    World(records)

    def end(_share: float) -> None:
        raise Ended

    with pytest.raises(Ended):
        records.follow(end)
    assert not outbox.ready
    shares: list[float] = []
    records.follow(shares.append)
    assert outbox.ready
    assert shares[0] > 3 / records.version()
    assert text_alone(records) == export_text(records)


def test_empty_records_are_copied_too(records: Records, outbox: Outbox) -> None:
    records.follow()
    assert text_alone(records) == export_text(records)


def test_what_waits_is_shown_and_sent_once(records: Records, outbox: Outbox) -> None:
    world = World(records)
    records.follow()
    begun = replace(invented.weigh_in(world.lot), revision=new_id(), by="AB")
    fill = replace(invented.fill(begun), at=begun.started_at)
    for entry in (Told(begun.started_at, "AB", begun), Added(fill.at, fill)):
        outbox.put(entry)
    assert records.find(WeighIn, begun.id) == begun  # the server is there, but what waits comes first
    assert records.fills(begun.id) == [fill]
    assert outbox.deliver(records) == []
    assert records.version() < ELSEWHERE
    assert records.find(WeighIn, begun.id) == begun
    records.follow()
    assert text_alone(records) == export_text(records)


def test_what_the_server_refuses_is_in_the_copy_no_longer(records: Records, outbox: Outbox) -> None:
    world = World(records)
    records.follow()
    outbox.put(Told(invented.NOON, "AB", replace(world.lot, revision=new_id(), note="ours"), replaces="unknown"))
    late = replace(world.lot, revision=new_id(), note="late")
    outbox.put(Told(invented.NOON, "AB", late, replaces=world.lot.revision))
    assert records.find(Lot, world.lot.id).note == "late"
    theirs = records.keep(replace(world.lot, note="theirs"))  # by another desk, in between
    refused = outbox.deliver(records)
    assert [type(one.error) for one in refused] == [NotAllowed, NotAllowed]
    assert [one.entry.noun.note for one in refused if isinstance(one.entry, Told)] == ["ours", "late"]
    assert not outbox.ready
    records.follow()
    assert text_alone(records) == export_text(records)
    assert records.find(Lot, world.lot.id) == theirs


def test_where_it_went_another_way_it_is_made_anew(records: Records, outbox: Outbox) -> None:
    farm = records.keep(invented.farm())
    records.follow()
    assert outbox.mirror is not None
    outbox.mirror.take(Told(invented.NOON, "", replace(farm, revision=new_id(), name="x"), replaces=farm.revision))
    records.keep(replace(farm, name="y"))
    records.follow()
    assert text_alone(records) == export_text(records)


def test_while_it_follows_already_nothing_is_done_twice(records: Records, outbox: Outbox) -> None:
    World(records)
    again: list[float] = []
    records.follow(lambda share: records.follow(again.append))
    assert again == []
    assert outbox.ready


def test_a_copy_that_does_not_fit_is_thrown_away(tmp_path: Path) -> None:
    for content in (b"no database at all", b""):
        (tmp_path / "copy.sqlite").write_bytes(content)
        Mirror(tmp_path / "copy.sqlite").close()
    Records.open(str(tmp_path / "records.sqlite")).close()
    made = Mirror(tmp_path / "records.sqlite")  # records, but no copy
    assert not made.ready
    made.close()
    with closing(sqlite3.connect(tmp_path / "copy.sqlite")) as store, store:
        store.execute("UPDATE alembic_version SET version_num = '9999'")
        store.execute("UPDATE mirrored SET whole = 1")
    made = Mirror(tmp_path / "copy.sqlite")
    assert not made.ready
    made.close()


def test_one_program_has_the_copy_and_another_goes_without(tmp_path: Path) -> None:
    first = Outbox.beside(tmp_path, "server")
    second = Outbox.beside(tmp_path, "server")
    assert first.mirror is not None
    assert second.mirror is None
    assert not second.ready
    with pytest.raises(RecordsLocked):
        Mirror(first.mirror.file)
    for outbox in (first, second):
        outbox.close()


def test_a_copy_that_cannot_be_taken_away_is_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def in_use(*given: object, **named: object) -> None:
        raise PermissionError

    made = Mirror(tmp_path / "copy.sqlite")
    with monkeypatch.context() as patched:
        patched.setattr(Path, "unlink", in_use)
        with pytest.raises(RecordsReadOnly):
            made.begin_anew()
    made.close()
    (tmp_path / "copy.sqlite").write_bytes(b"no database at all")
    with monkeypatch.context() as patched:
        patched.setattr(Path, "unlink", in_use)
        with pytest.raises(RecordsReadOnly):
            Mirror(tmp_path / "copy.sqlite")
    Mirror(tmp_path / "copy.sqlite").close()  # the lock was let go of


def test_started_while_the_server_is_away(server: Callable[[], str], tmp_path: Path) -> None:
    """The layout is looked at once the server is there."""
    url = server()
    outbox = Outbox.beside(tmp_path, "server")
    with Records.open(url) as records:
        farm = records.keep(invented.farm())
        records.while_away(outbox)
        records.follow()
        newest = records.version()
        records._away = None  # the copy stays
    alone = Records.not_reached(url, outbox)
    assert alone.find(Farm, farm.id) == farm
    assert alone.version() > ELSEWHERE  # it was just asked in vain
    with pytest.raises(RecordsUnreachable):
        alone.keep(replace(farm, name="x"))
    assert alone.version(anew=True) == alone.version() == newest
    alone.close()


def test_a_server_brought_up_to_date_meanwhile_is_not_written_to(server: Callable[[], str], tmp_path: Path) -> None:
    url = server()
    with Records.open(url) as records, records.writing("entry") as writing:
        writing.connection.exec_driver_sql("UPDATE alembic_version SET version_num = '9999'")
    outbox = Outbox.beside(tmp_path / "here", "server")
    alone = Records.not_reached(url, outbox)
    with pytest.raises(RecordsTooNew, match="newer version"):
        alone.version(anew=True)
    with pytest.raises(RecordsTooNew):
        alone.keep(invented.farm())
    alone.close()
