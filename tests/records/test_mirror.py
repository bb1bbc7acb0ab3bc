"""The copy of a server's records on this computer: it follows, stands in, takes up what waits, and is made anew."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager, suppress
from dataclasses import replace
from pathlib import Path
from typing import cast

import invented
import pytest
from invented import World
from sqlalchemy import Engine
from sqlalchemy.exc import DataError, OperationalError

from calibrator.model import Farm, Lot, WeighIn, new_id
from calibrator.model.underway import Ended
from calibrator.records import (
    ELSEWHERE,
    DiskFull,
    NotAllowed,
    Records,
    RecordsError,
    RecordsLocked,
    RecordsReadOnly,
    RecordsTooNew,
    RecordsUnreachable,
    import_season,
    mirror,
    sample_lots_folder,
)
from calibrator.records.entries import Added, Entry, Struck, Told, read_changes
from calibrator.records.errors import Parted, translated
from calibrator.records.importing import bring
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
    outbox.deliver(records)
    assert (outbox.waiting, outbox.refused) == (0, 0)
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
    outbox.deliver(records)
    refused = outbox.list_refused()
    assert [str(one.error) for one in refused] == [str(Parted("lot", theirs, late))] * 2
    assert [one.entry.noun.note for one in refused if isinstance(one.entry, Told)] == ["ours", "late"]
    assert text_alone(records) == export_text(records)
    assert records.find(Lot, world.lot.id) == theirs


def _failing_at(monkeypatch: pytest.MonkeyPatch, number: int, error: Exception) -> None:
    """The server fails so at the change of this number, each time."""
    sent: list[Entry] = []

    def failing(records: Records, entry: Entry) -> None:
        sent.append(entry)
        if len(sent) == number:
            raise error
        bring(records, entry)

    monkeypatch.setattr("calibrator.records.outbox.bring", failing)


@pytest.fixture
def three_wait(records: Records, outbox: Outbox) -> list[str]:
    """Three fills of one weigh-in wait."""
    weigh_in = World(records).weigh_in
    fills = [replace(invented.fill(weigh_in), id=new_id(), typed=f"33{n} g") for n in range(3)]
    for fill in fills:
        outbox.put(Added(fill.at, fill))
    return [fill.id for fill in fills]


@pytest.mark.parametrize(
    "error",
    [
        DiskFull("disk_full", place="x"),
        RecordsReadOnly("read_only", place="x"),
        RecordsLocked("busy", place="x"),
        RecordsError("refused", place="x", detail="no such table"),
    ],
    ids=lambda error: error.code,
)
def test_what_may_pass_keeps_the_rest_waiting_in_order(
    records: Records, outbox: Outbox, three_wait: list[str], monkeypatch: pytest.MonkeyPatch, error: RecordsError
) -> None:
    """What comes behind may rest on the one that could not be kept."""
    _failing_at(monkeypatch, 2, error)
    with pytest.raises(type(error)):
        outbox.deliver(records)
    assert (outbox.waiting, outbox.refused) == (2, 0)
    outbox.deliver(records)  # the cause is gone
    assert _kept_of(records, three_wait) == three_wait


def test_a_value_that_the_server_cannot_hold_holds_nothing_up(
    records: Records, outbox: Outbox, three_wait: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    error = translated(DataError("INSERT", None, Exception("text cannot contain NUL")), "the barn")
    _failing_at(monkeypatch, 2, error)
    outbox.deliver(records)
    assert _kept_of(records, three_wait) == [three_wait[0], three_wait[2]]
    (one,) = outbox.list_refused()
    assert (str(one.error), one.entry.at) == (str(error), invented.NOON)


def test_what_was_dismissed_is_listed_no_more_and_kept(
    records: Records, outbox: Outbox, three_wait: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    _failing_at(monkeypatch, 1, NotAllowed("frozen"))
    outbox.deliver(records)
    again = Outbox(outbox.file)  # at the next start
    assert again.refused == 1
    again.dismiss(again.list_refused())
    assert (again.refused, again.list_refused()) == (0, [])
    with closing(sqlite3.connect(outbox.file)) as store:
        assert store.execute("SELECT count(*) FROM refused").fetchone() == (1,)


@pytest.mark.parametrize("why", ["This weigh-in is frozen.", '{"code": "of_a_later_version", "params": {}}'])
def test_a_reason_kept_by_another_version_is_told_as_it_is(outbox: Outbox, three_wait: list[str], why: str) -> None:
    with closing(sqlite3.connect(outbox.file)) as store, store:
        store.execute("INSERT INTO refused SELECT number, told, ? FROM waiting LIMIT 1", (why,))
    (one,) = outbox.list_refused()
    assert str(one.error) in why


def test_a_fault_of_another_kind_is_stuck_until_it_is_set_aside(
    records: Records, outbox: Outbox, three_wait: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """One that a mistake of our own brings about is no different: the way out is there."""
    with monkeypatch.context() as patched:
        _failing_at(patched, 2, KeyError("way"))
        with pytest.raises(KeyError):
            outbox.deliver(records)
    assert outbox.stuck is not None
    outbox.set_aside_stuck()
    assert (outbox.waiting, outbox.refused, outbox.stuck) == (1, 1, None)
    outbox.deliver(records)
    assert _kept_of(records, three_wait) == [three_wait[0], three_wait[2]]
    (one,) = Outbox(outbox.file).list_refused()
    assert "way" in str(one.error)


def test_what_rests_on_an_entry_that_is_set_aside_follows_it(
    records: Records, outbox: Outbox, monkeypatch: pytest.MonkeyPatch
) -> None:
    world = World(records)
    begun = replace(invented.weigh_in(world.lot), id=new_id(), revision=new_id())
    further = replace(begun, revision=new_id(), target_typed="10 oz")
    fill = replace(invented.fill(begun), id=new_id())
    free = replace(invented.fill(world.weigh_in), id=new_id())
    on_it = [Told(invented.NOON, "AB", begun), Told(invented.NOON, "AB", further, replaces=begun.revision)]
    for entry in (*on_it, Added(fill.at, fill), Struck(fill.at, "AB", fill.id, "spilt"), Added(free.at, free)):
        outbox.put(entry)
    with monkeypatch.context() as patched:
        _failing_at(patched, 1, RecordsError("refused", place="x", detail="no such table"))
        with pytest.raises(RecordsError):
            outbox.deliver(records)
    outbox.set_aside_stuck()
    outbox.deliver(records)
    assert (outbox.waiting, outbox.refused) == (0, 4)
    assert _kept_of(records, [free.id]) == [free.id]


def test_what_passed_is_stuck_no_longer(
    records: Records, outbox: Outbox, three_wait: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    _failing_at(monkeypatch, 1, RecordsError("refused", place="x", detail="no such table"))
    with pytest.raises(RecordsError):
        outbox.deliver(records)
    outbox.deliver(records)
    outbox.set_aside_stuck()  # pressed too late
    assert (outbox.refused, _kept_of(records, three_wait)) == (0, three_wait)


def test_an_entry_that_cannot_be_read_is_kept_apart_and_holds_nothing_up(
    records: Records, outbox: Outbox, three_wait: list[str], tmp_path: Path
) -> None:
    """A later version of the program wrote it, and somebody went back to this one."""
    line = '{"type": "told", "of a later version": 1}'
    with closing(sqlite3.connect(outbox.file)) as store, store:
        store.execute("UPDATE waiting SET told = ? WHERE number = 1", (line,))
    outbox.deliver(records)
    assert _kept_of(records, three_wait) == three_wait[1:]
    (one,) = outbox.list_refused()
    assert one.entry is None
    outbox.save_refused(tmp_path / "refused.json")
    assert read_changes(tmp_path / "refused.json") == [json.loads(line)]


def _as_at_next_start(records: Records, outbox: Outbox) -> Outbox:
    outbox.close()
    again = Outbox.beside(outbox.file.parent, records.url)
    records.while_away(again)
    return again


def test_power_cut_between_outbox_and_copy(
    records: Records, outbox: Outbox, three_wait: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """What is on the disk as waiting is shown again, though the copy never took it."""
    records.follow()
    weigh_in = records.every(WeighIn)[0]
    cut = replace(weigh_in, revision=new_id(), target_typed="10 oz")
    with monkeypatch.context() as patched:
        patched.setattr(Mirror, "take", lambda *given: None)
        outbox.put(Told(invented.NOON, "AB", cut, replaces=weigh_in.revision))
    again = _as_at_next_start(records, outbox)
    with away(records):
        assert records.find(WeighIn, weigh_in.id) == cut
        # and what rests on it is taken by the server
        later = replace(cut, revision=new_id(), target_typed="11 oz")
        again.put(Told(invented.NOON, "AB", later, replaces=cut.revision))
    again.deliver(records)
    assert (again.refused, records.find(WeighIn, weigh_in.id)) == (0, later)
    again.close()


def test_what_was_refused_is_not_shown_after_a_power_cut_either(
    records: Records, outbox: Outbox, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The server went away, and the program ended, before the copy could be set right."""
    world = World(records)
    records.follow()
    late = replace(world.lot, revision=new_id(), note="late")
    outbox.put(Told(invented.NOON, "AB", late, replaces=world.lot.revision))
    _failing_at(monkeypatch, 1, NotAllowed("frozen"))
    with monkeypatch.context() as patched:
        patched.setattr(Outbox, "_set_copy_right", lambda *given: None)
        outbox.deliver(records)
    assert outbox.refused == 1
    again = _as_at_next_start(records, outbox)
    with away(records):
        assert records.find(Lot, world.lot.id) == world.lot
    again.close()


def test_what_is_sent_stays_in_sight_when_the_server_goes_again_at_once(
    records: Records, outbox: Outbox, three_wait: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """A storm of reconnections: each time one more is sent, and never the copy followed."""
    records.follow()
    for sent in range(3):
        with monkeypatch.context() as patched:
            _failing_at(patched, 2, RecordsUnreachable("unreachable", place="x"))
            patched.setattr(Records, "follow", failing_to_follow)
            with suppress(RecordsUnreachable):
                outbox.deliver(records)
        assert outbox.waiting == 2 - sent
        if sent == 1:
            outbox = _as_at_next_start(records, outbox)
        with away(records):
            assert _kept_of(records, three_wait) == three_wait
    records.follow()
    assert text_alone(records) == export_text(records)
    with closing(sqlite3.connect(outbox.file)) as store:
        assert store.execute("SELECT count(*) FROM sent").fetchone() == (0,)
    outbox.close()


def failing_to_follow(*_given: object) -> None:
    raise RecordsUnreachable("unreachable", place="x")


def test_the_copy_is_in_the_order_of_the_server_though_others_were_first(records: Records, outbox: Outbox) -> None:
    """Ours was kept here first, theirs was on the server first: what came last there counts in the copy too."""
    world = World(records)
    fill = records.add_fill(replace(invented.fill(world.weigh_in), id=new_id()))
    records.follow()
    ours, theirs = (replace(invented.fill(world.weigh_in), id=new_id(), typed=typed) for typed in ("ours", "theirs"))
    outbox.put(Added(ours.at, ours))
    outbox.put(Struck(ours.at, "AB", fill.id, "spilt"))
    records._away = None  # another computer
    records.add_fill(theirs)
    records.strike(fill.id, "bumped", "CD")
    records.restore(fill.id, "CD")
    records.while_away(outbox)
    outbox.deliver(records)
    assert [one.typed for one in records.fills(world.weigh_in.id)][-2:] == ["theirs", "ours"]
    assert text_alone(records) == export_text(records)


def test_what_waits_is_in_sight_beside_what_others_keep(
    records: Records, outbox: Outbox, three_wait: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """As long as the server takes nothing of it; what this computer keeps directly is seen at once too."""
    records.follow()
    lot = records.every(Lot)[0]
    records._away = None
    records.keep(replace(lot, note="theirs"))
    records.while_away(outbox)
    records.follow()
    assert records.find(Lot, lot.id).note == "theirs"
    assert _kept_of(records, three_wait) == three_wait
    records.keep(replace(records.find(Lot, lot.id), note="ours"))
    assert records.find(Lot, lot.id).note == "ours"
    assert _kept_of(records, three_wait) == three_wait


def test_a_server_put_back_to_an_older_copy_is_copied_anew(server: Callable[[], str], tmp_path: Path) -> None:
    outbox = Outbox.beside(tmp_path, "server")
    with Records.open(server()) as before:
        farm = before.keep(invented.farm())
        for n in range(3):
            farm = before.keep(replace(farm, name=f"Farm {n}"))
        before.while_away(outbox)
        before.follow()
        before._away = None
    with Records.open(server()) as put_back:
        put_back.keep(invented.farm(name="Put back"))
        put_back.while_away(outbox)
        put_back.follow()
        assert text_alone(put_back) == export_text(put_back)
        for n in range(5):
            farm = put_back.keep(replace(put_back.every(Farm)[0], name=f"Later {n}"))
        assert text_alone(put_back) == export_text(put_back)
        put_back._away = None
    with Records.open(server()) as longer:  # more was kept there since than was ever copied here
        for n in range(9):
            longer.keep(invented.farm(id=new_id(), name=f"Other {n}"))
        longer.while_away(outbox)
        longer.follow()
        assert text_alone(longer) == export_text(longer)


def test_what_another_window_sent_waits_here_no_longer(records: Records, outbox: Outbox, three_wait: list[str]) -> None:
    second = Outbox.beside(outbox.file.parent, records.url)
    assert (second.mirror, second.waiting) == (None, 3)
    outbox.deliver(records)
    second.deliver(records)
    assert second.waiting == 0
    assert _kept_of(records, three_wait) == three_wait


def _kept_of(records: Records, ids: list[str]) -> list[str]:
    """Which of these fills are kept, in their order."""
    return [fill.id for fill in records.fills(records.every(WeighIn)[0].id) if fill.id in ids]


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
