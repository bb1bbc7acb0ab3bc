"""A damaged file: what can be read is in the fresh one, the rest is told, and the file itself is kept whole."""

from __future__ import annotations

import os
import random
import shutil
import sqlite3
from collections import Counter
from contextlib import closing
from pathlib import Path

import invented
import pytest
from invented import World

from calibrator.model import Farm, Lot, WeighIn
from calibrator.records import Records, RecordsDamaged, RecordsError, RecordsLocked, backup, staging
from calibrator.records.entries import Told
from calibrator.records.exporting import every_entry
from calibrator.records.paths import backups_folder
from calibrator.records.readable import Readable
from calibrator.records.salvage import Salvaged, salvage

PAGE = 4096


def _season(file: Path, lots: int = 12) -> None:
    with Records.open(str(file)) as records:
        world = World(records)
        world.signed()
        for at in range(lots):
            world.lot = records.keep(invented.lot(world.farm.id, lot_number=f"lot {at}"))
            world.weigh_in = records.keep(invented.weigh_in(world.lot, scoop_id=world.scoop.id), by="AB")
            for mass in range(280, 288):
                records.add_fill(invented.fill(world.weigh_in, float(mass)))
            told = world.signed()
            records.add_spot_fill(invented.spot(told))
            records.record_print(invented.printed(told))


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory, empty_file: Path) -> Path:
    """Records of a season, without copies, made once."""
    file = Path(shutil.copy(empty_file, tmp_path_factory.mktemp("whole") / "records.sqlite"))
    _season(file)
    shutil.rmtree(backups_folder(file))
    return file


@pytest.fixture
def season(whole: Path, tmp_path: Path) -> Path:
    return Path(shutil.copy(whole, tmp_path / "records.sqlite"))


def _kept(file: Path) -> dict[str, object]:
    """Every change of a file by what it is about, however it is ordered."""
    with Records.open(str(file), read_only=True) as records, records.reading() as connection:
        return {_name(entry): entry for entry in every_entry(connection)}


def _name(entry: object) -> str:
    if isinstance(entry, Told):
        return f"told {entry.noun.revision}"
    fact = getattr(entry, "fact", None) or getattr(entry, "sign_off", None)
    return f"{type(entry).__name__} {fact.id if fact else getattr(entry, 'of', '')}"


def _overwrite(file: Path, at: int, count: int, seed: int = 1) -> bytes:
    content = bytearray(file.read_bytes())
    content[at : at + count] = random.Random(seed).randbytes(min(count, len(content) - at))
    file.write_bytes(content)
    return bytes(content)


def _check(file: Path, before: dict[str, object], spoilt: bytes, told: Salvaged) -> int:
    """Nothing invented, nothing lost unsaid, the file kept as it was; gives how much was lost."""
    assert told.aside.read_bytes() == spoilt
    now = _kept(file)
    assert not [name for name in now if name not in before]
    missing = [name for name in before if name not in now]
    assert len(missing) <= len(told.lost) + _unseen(told, before, now)
    with Records.open(str(file)) as records:
        assert records.keep(invented.farm()).revision
        for farm in records.every(Farm):
            for lot in records.every(Lot, farm.id):
                records.history(Lot, lot.id)
        with pytest.raises(RecordsError, match="only ever added"), records.writing("fill") as writing:
            writing.connection.exec_driver_sql("DELETE FROM things")
    return len(missing)


def _unseen(told: Salvaged, before: dict[str, object], now: dict[str, object]) -> int:
    """What came after the last change that left a trace: the day of that one is told instead."""
    numbers = {name: number for number, name in enumerate(before, start=1)}
    last = max([loss.number for loss in told.lost] + [numbers[name] for name in now])
    return len(before) - last


def _pages_of(file: Path, name: str) -> list[int]:
    """The root page of a table, and of what hangs on it the pages where its rows lie."""
    with closing(sqlite3.connect(file)) as raw:
        (root,) = raw.execute("SELECT rootpage FROM sqlite_master WHERE name = ?", (name,)).fetchone()
    content = file.read_bytes()
    start = (root - 1) * PAGE
    if content[start] != 5:
        return [root]
    cells = int.from_bytes(content[start + 3 : start + 5], "big")
    places = [int.from_bytes(content[start + 12 + 2 * at : start + 14 + 2 * at], "big") for at in range(cells)]
    return [int.from_bytes(content[start + place : start + place + 4], "big") for place in places]


def test_a_page_of_fills_is_lost_and_each_of_them_is_told_with_its_lot(season: Path) -> None:
    before = _kept(season)
    page = _pages_of(season, "fills")[2]
    spoilt = _overwrite(season, (page - 1) * PAGE, PAGE)
    with pytest.raises(RecordsDamaged):
        Records.open(str(season))
    told = salvage(str(season))
    assert _check(season, before, spoilt, told) == len(told.lost) > 3
    assert {loss.what for loss in told.lost} == {"fill"}
    assert all(loss.by == "AB" and loss.at for loss in told.lost)
    lost_of = Counter(loss.lot_number for loss in told.lost)
    with Records.open(str(season)) as records:
        (farm, *_) = records.every(Farm)
        for lot in records.every(Lot, farm.id):
            (weigh_in,) = records.every(WeighIn, lot_id=lot.id)
            expected = 2 if lot.lot_number == "24-1107B" else 8
            assert len(records.fills(weigh_in.id)) + lost_of[lot.lot_number] == expected


def test_a_copy_gives_back_what_the_file_lost(season: Path) -> None:
    copy = backup.make(season, "daily")
    with Records.open(str(season)) as records:
        weigh_in = records.keep(invented.weigh_in(records.every(Lot)[0]))
        newest = records.add_fill(invented.fill(weigh_in))
    before = _kept(season)
    page = _pages_of(season, "fills")[2]
    spoilt = _overwrite(season, (page - 1) * PAGE, PAGE)
    told = salvage(str(season))
    assert _check(season, before, spoilt, told) == 0
    assert (told.lost, told.copy_at) == ((), copy.at)
    assert told.from_copy > 3
    with Records.open(str(season)) as records:
        assert newest in records.fills(weigh_in.id)
        assert records.check_fingerprints() == ()


@pytest.mark.parametrize("start", [3 * PAGE + 500, 41 * PAGE, 60 * PAGE + 2000, 90 * PAGE])
def test_bytes_overwritten_anywhere_lose_only_what_is_told(season: Path, start: int) -> None:
    start %= season.stat().st_size
    before = _kept(season)
    spoilt = _overwrite(season, start, 3000, seed=start)
    told = salvage(str(season))
    lost = _check(season, before, spoilt, told)
    assert lost < len(before) * 0.6


def test_the_first_page_gone_is_taken_over_from_a_file_of_the_same_make(season: Path) -> None:
    before = _kept(season)
    spoilt = _overwrite(season, 0, PAGE)
    told = salvage(str(season))
    assert _check(season, before, spoilt, told) == 0
    assert told.copy_at is None


@pytest.mark.parametrize("share", [0.3, 0.6, 0.95])
def test_the_end_cut_off(season: Path, share: float) -> None:
    before = _kept(season)
    content = season.read_bytes()
    season.write_bytes(content[: int(len(content) * share)])
    told = salvage(str(season))
    lost = _check(season, before, content[: int(len(content) * share)], told)
    assert 0 < lost < len(before)


def test_a_journal_taken_away_in_the_middle_of_writing(season: Path) -> None:
    """A write that was cut off, and its journal thrown away by somebody who tidies up: pages of two moments."""
    before = _kept(season)
    older = season.read_bytes()
    with Records.open(str(season)) as records:
        weigh_in = records.keep(invented.weigh_in(records.every(Lot)[0]))
        for mass in range(60):
            records.add_fill(invented.fill(weigh_in, 280.0 + mass))
    newer = season.read_bytes()
    half = bytearray(newer)
    for page in range(0, len(older) // PAGE, 2):
        half[page * PAGE : (page + 1) * PAGE] = older[page * PAGE : (page + 1) * PAGE]
    shutil.rmtree(backups_folder(season))
    season.write_bytes(half)
    told = salvage(str(season))
    now = _kept(season)
    assert sum(name in now for name in before) > 0.6 * len(before)
    assert told.aside.read_bytes() == bytes(half)


def test_a_file_of_another_journal_mode_is_read_without_its_side_files(season: Path) -> None:
    before = _kept(season)
    with closing(sqlite3.connect(season)) as raw:
        raw.execute("PRAGMA journal_mode = WAL")
    season.with_name(season.name + "-wal").unlink(missing_ok=True)
    season.with_name(season.name + "-shm").unlink(missing_ok=True)
    with Records.open(str(season)) as records:
        assert records.version() == len(before)
    assert _kept(season) == before


def test_a_copy_of_records_that_went_another_way_is_not_mixed_in(season: Path, empty_file: Path) -> None:
    file = Path(shutil.copy(empty_file, season.with_name("other.sqlite")))
    with Records.open(str(file)) as records:
        for _ in range(6):
            World(records)
    (other,) = backup.every(file)
    other = backup.make(file, "daily", other.at.replace(year=other.at.year + 1))
    folder = backups_folder(season)
    folder.mkdir(exist_ok=True)
    shutil.copy(other.path, folder / other.path.name)
    before = _kept(season)
    page = _pages_of(season, "fills")[2]
    _overwrite(season, (page - 1) * PAGE, PAGE)
    told = salvage(str(season))
    assert told.copy_at is None
    assert set(_kept(season)) < set(before)


def test_nothing_left_but_a_copy(season: Path) -> None:
    backup.make(season, "daily")
    before = _kept(season)
    season.write_bytes(os.urandom(20_000))
    told = salvage(str(season))
    assert (told.read, told.from_copy) == (0, len(before))
    assert _kept(season) == before


@pytest.mark.parametrize("content", [b"", b"Dear diary, " * 3000, bytes(50_000)])
def test_nothing_left_at_all_changes_nothing(tmp_path: Path, content: bytes) -> None:
    file = tmp_path / "records.sqlite"
    file.write_bytes(content)
    with pytest.raises(RecordsDamaged, match="Nothing could be read"):
        salvage(str(file))
    assert file.read_bytes() == content
    assert sorted(path.name for path in tmp_path.iterdir()) == ["records.sqlite", "records.sqlite.lock"]


def test_an_older_layout_is_brought_over_and_up(tmp_path: Path) -> None:
    frozen = Path(__file__).with_name("frozen") / "layout_0004.sqlite"
    file = Path(shutil.copy(frozen, tmp_path / "records.sqlite"))
    (page, *_) = _pages_of(file, "prints")
    _overwrite(file, (page - 1) * PAGE, PAGE)
    told = salvage(str(file))
    assert {loss.what for loss in told.lost} == {"printed", "sheet_ending"}
    with Records.open(str(file)) as records:
        assert records.every(Farm)
        assert records.check_fingerprints() == ()


def test_a_lot_lost_whole_keeps_its_fills_under_a_name_that_says_so(file: Path) -> None:
    with Records.open(str(file)) as records:
        world = World(records)
    shutil.rmtree(backups_folder(file))
    (page, *_) = _pages_of(file, "lots")
    _overwrite(file, (page - 1) * PAGE, PAGE)
    told = salvage(str(file))
    assert [loss.what for loss in told.lost] == ["lot"]
    with Records.open(str(file)) as records:
        assert records.fills(world.weigh_in.id) == world.fills
        (lot,) = records.every(Lot)
        assert (lot.id, lot.lot_number) == (world.lot.id, f"? {world.lot.id[:6]}")
        assert records.keep(invented.lot(world.farm.id, id=lot.id, revision=lot.revision, lot_number="24-1107B"))


NAMES = ("it's", 'a "b"', "x' OR '1' = '1", "; DROP TABLE lots")


@pytest.mark.parametrize("name", NAMES)
def test_whatever_signs_a_damaged_file_has_in_it_a_query_takes_them_for_a_name(tmp_path: Path, name: str) -> None:
    stage = staging.newest(tmp_path / "fresh.sqlite")
    assert {stage.lot_number(table, name) for table in ("fills", "spot_fills")} == {""}
    stage.close()
    with closing(sqlite3.connect(":memory:")) as raw:
        quoted = '"' + name.replace('"', '""') + '"'
        raw.execute(f"CREATE TABLE {quoted} (id, {quoted})")
        raw.execute(f"INSERT INTO {quoted} VALUES (1, 2)")
        found = Readable(raw)
        assert found.tables() == {name: ["id", name]}
        assert found.rows(name, ["id", name]) == {1: {"id": 1, name: 2}}


def test_it_is_not_done_to_open_records_nor_to_a_server(season: Path) -> None:
    with Records.open(str(season)), pytest.raises(RecordsLocked):
        salvage(str(season))
    with pytest.raises(RecordsError, match="backups of a server"):
        salvage("postgresql://u@127.0.0.1:1/none")
