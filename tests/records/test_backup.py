"""Dated copies: made daily, kept by the rule, put back; damaged files set aside and never deleted."""

from __future__ import annotations

import os
import sqlite3
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import invented
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from invented import World

from calibrator.records import (
    Records,
    RecordsDamaged,
    RecordsError,
    RecordsLocked,
    RecordsUnreachable,
    backup,
    backups_of,
    restore_backup,
)
from calibrator.records.backup import DAILY, Backup
from tests.exported import export_text

TODAY = date(2024, 11, 7)
_DAYS = st.lists(st.integers(0, 1500), unique=True, max_size=80)


def _copies(days_ago: list[int], why: str = DAILY) -> list[Backup]:
    noon = datetime(2024, 11, 7, 12, tzinfo=UTC)
    return [Backup(Path(f"{day}-{why}"), noon - timedelta(days=day), why) for day in days_ago]


@settings(deadline=None)
@given(_DAYS)
def test_the_rule_keeps_two_weeks_then_one_a_week_then_one_a_month(days: list[int]) -> None:
    newest = _copies(list(range(-14, 0)))  # these stay in any case; the rule is seen in the others
    copies = _copies(days)
    kept = sorted({one.at for one in copies} - {one.at for one in backup.to_drop([*copies, *newest], TODAY)})
    assert {at for at in kept if TODAY - at.date() < timedelta(14)} == {
        one.at for one in copies if TODAY - one.at.date() < timedelta(14)
    }
    weeks = [at.date().isocalendar()[:2] for at in kept if 14 <= (TODAY - at.date()).days < 92]
    months = [(at.year, at.month) for at in kept if (TODAY - at.date()).days >= 92]
    assert len(weeks) == len(set(weeks))
    assert len(months) == len(set(months))
    assert {(one.at.year, one.at.month) for one in copies} == {(at.year, at.month) for at in kept} or any(
        (TODAY - one.at.date()).days < 92 for one in copies
    )


@settings(deadline=None)
@given(_DAYS)
def test_the_newest_stays_and_applying_the_rule_again_drops_nothing(days: list[int]) -> None:
    copies = _copies(days)
    dropped = backup.to_drop(copies, TODAY)
    kept = [one for one in copies if one not in dropped]
    assert backup.to_drop(kept, TODAY) == []
    assert not copies or max(copies, key=lambda one: one.at) in kept


@settings(deadline=None)
@given(_DAYS, st.integers(-4000, 4000))
def test_a_clock_set_wrong_by_any_days_leaves_the_newest_fourteen(days: list[int], wrong: int) -> None:
    copies = _copies(days)
    dropped = backup.to_drop(copies, TODAY + timedelta(days=wrong))
    assert not {one.at for one in dropped} & set(sorted(one.at for one in copies)[-14:])


def test_a_clock_set_back_lets_go_of_no_copy(file: Path) -> None:
    start = datetime(2024, 11, 7, 6, tzinfo=UTC)
    for day in range(20):
        backup.daily(file, start + timedelta(days=day))
    made = {one.at for one in backup.every(file)}
    backup.daily(file, start - timedelta(days=400))
    assert made < {one.at for one in backup.every(file)}


def test_copies_before_a_change_of_layout_are_always_kept() -> None:
    assert backup.to_drop(_copies([400, 401, 402], "before-layout-2"), TODAY) == []


def test_the_first_opening_of_a_day_makes_a_copy(file: Path) -> None:
    with Records.open(str(file)) as records:
        World(records)
        assert not records.backup_if_due()
    assert [one.why for one in backup.every(file)] == [DAILY]
    tomorrow = datetime.now(UTC) + timedelta(days=1)
    assert backup.daily(file, tomorrow) == backup.every(file)[-1]
    assert backup.daily(file, tomorrow) is None
    assert len(backup.every(file)) == 2


def test_copies_that_the_rule_lets_go_are_removed(file: Path) -> None:
    start = datetime(2024, 1, 1, 6, tzinfo=UTC)
    for day in range(30):
        backup.daily(file, start + timedelta(days=day))
    ages = [(start + timedelta(days=29) - one.at).days for one in backup.every(file)]
    # Counted on a calendar of January 2024, today being the 30th: the Sundays 7 and 14, the 16th as the
    # last so far of a week that is leaving the fortnight, and the fortnight itself.
    assert ages == [23, 16, 14, *range(13, -1, -1)]


def test_a_clock_once_set_wrong_does_not_stop_the_copies(file: Path) -> None:
    now = datetime(2024, 11, 7, tzinfo=UTC)
    backup.daily(file, now + timedelta(days=3000))
    assert backup.daily(file, now)
    assert len(backup.every(file)) == 2


def test_a_copy_holds_everything_and_can_be_put_back(file: Path) -> None:
    with Records.open(str(file)) as records:
        world = World(records)
        world.signed()
        copy = backup.make(file, "by-hand")
        told = export_text(records)
        records.keep(invented.farm(name="after the copy"))
        newer = export_text(records)
    aside = backup.restore(file, copy)
    with Records.open(str(file)) as records:
        assert export_text(records) == told
    assert aside is not None
    with Records.open(str(aside)) as records:
        assert export_text(records) == newer


def test_a_damaged_file_is_set_aside_with_its_journal_and_the_copy_put_back(file: Path) -> None:
    with Records.open(str(file)) as records:
        World(records)
        told = export_text(records)
        copy = backup.make(file, "by-hand")
    journal = file.with_name(file.name + "-journal")
    file.write_bytes(b"\x00" * 5000)
    with pytest.raises(RecordsDamaged):
        Records.open(str(file))
    journal.write_bytes(b"left over")
    aside = backup.restore(file, copy)
    assert aside is not None
    assert aside.read_bytes() == b"\x00" * 5000
    assert aside.with_name(aside.name + "-journal").read_bytes() == b"left over"
    assert not journal.exists()
    with Records.open(str(file)) as records:
        assert export_text(records) == told


def test_a_copy_is_put_back_where_the_file_is_gone(file: Path) -> None:
    copy = backup.make(file, "by-hand")
    file.unlink()
    assert backup.restore(file, copy) is None
    Records.open(str(file)).close()


def test_an_emptied_file_with_copies_is_not_taken_for_new(file: Path) -> None:
    backup.make(file, DAILY)
    file.write_bytes(b"")
    with pytest.raises(RecordsDamaged, match=r"are empty, but backups of them exist"):
        Records.open(str(file))
    assert file.read_bytes() == b""


def test_a_copy_that_is_gone_or_broken_leaves_the_file_as_it_is(file: Path) -> None:
    copy = backup.make(file, "by-hand")
    before = file.read_bytes()
    copy.path.write_bytes(b"\x00" * 5000)
    with pytest.raises(RecordsError, match="try again"):
        backup.restore(file, copy)
    copy.path.unlink()
    with pytest.raises(RecordsUnreachable, match="There is no backup"):
        backup.restore(file, copy)
    assert file.read_bytes() == before
    assert not list(file.parent.glob("*.part"))


def test_a_copy_that_cannot_be_written_is_told(file: Path) -> None:
    backup.backups_folder(file).touch()
    with pytest.raises(RecordsError, match="No backup of"):
        backup.make(file, DAILY)
    with Records.open(str(file)) as records:
        assert "No backup of" in str(records.backup_fault)
        assert records.keep(invented.farm()).revision


def test_a_full_disk_is_told_and_work_goes_on(file: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    real = sqlite3.connect

    def full(place: object, *more: object, **named: object) -> sqlite3.Connection:
        made = real(place, *more, **named)  # type: ignore[call-overload]
        if str(place).endswith(".part"):
            made.execute("PRAGMA max_page_count = 2")
        return made  # type: ignore[no-any-return]

    monkeypatch.setattr(backup.sqlite3, "connect", full)
    with Records.open(str(file)) as records:
        assert "database or disk is full. Free some space" in str(records.backup_fault)
        assert records.keep(invented.farm()).revision
        with pytest.raises(RecordsError, match="disk is full"):
            records.backup_if_due()
    assert not list(backup.backups_folder(file).glob("*"))


def test_what_a_cut_short_copy_left_goes_with_the_next_one(file: Path) -> None:
    folder = backup.backups_folder(file)
    folder.mkdir()
    for name in ("20241107T000000-daily.part", "20241107T000000-daily.part-journal"):
        (folder / name).write_bytes(b"half")
    made = backup.make(file, DAILY)
    assert list(folder.iterdir()) == [made.path]


def test_a_copy_is_looked_through_as_it_was_written(file: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    real = os.fsync

    def torn(descriptor: int) -> None:
        os.pwrite(descriptor, os.urandom(4096), 2 * 4096)  # what the disk kept is not what was written
        real(descriptor)

    monkeypatch.setattr(backup.os, "fsync", torn)
    with pytest.raises(RecordsError, match="No backup of"):
        backup.make(file, DAILY)
    assert backup.every(file) == []


@pytest.mark.parametrize("links", [True, False])
def test_what_is_replaced_twice_in_a_second_is_kept_twice(
    file: Path, monkeypatch: pytest.MonkeyPatch, links: bool
) -> None:
    if not links:
        monkeypatch.setattr(backup.os, "link", _no_links)
    now, kept = datetime(2024, 11, 7, tzinfo=UTC), []
    for content in (b"one", b"two"):
        fresh = file.with_name("fresh")
        fresh.write_bytes(content)
        kept.append(backup.put_in_place(fresh, file, now))
    assert file.read_bytes() == b"two"
    assert [one.name for one in kept if one] == [
        "records-damaged-20241107T000000.sqlite",
        "records-damaged-20241107T000000-2.sqlite",
    ]
    assert kept[1] is not None
    assert kept[1].read_bytes() == b"one"


def _no_links(_from: Path, _to: Path) -> None:
    raise OSError("this drive knows no second names")


def test_a_copy_found_broken_is_not_kept(file: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    with Records.open(str(file)) as records:
        World(records)
    made = len(backup.every(file))
    content = bytearray(file.read_bytes())
    content[3 * 4096 : 9 * 4096] = os.urandom(6 * 4096)
    file.write_bytes(content)
    with pytest.raises((RecordsError, sqlite3.Error)):
        backup.make(file, "by-hand")
    assert len(backup.every(file)) == made
    assert not list(backup.backups_folder(file).glob("*.part"))


def test_other_files_in_the_folder_are_no_backups(file: Path) -> None:
    folder = backup.backups_folder(file)
    folder.mkdir()
    for name in ("notes.sqlite", "20241399T000000-daily.sqlite", "20241107T000000-daily.txt"):
        (folder / name).touch()
    assert backup.every(file) == []


def test_what_is_open_is_not_replaced_under_the_hands(file: Path) -> None:
    with Records.open(str(file)) as records:
        World(records)
        told = export_text(records)
        backup.make(file, "by-hand")
        (chosen,) = (one for one in backups_of(str(file)) if one.why == "by-hand")
        with pytest.raises(RecordsLocked, match="open in another window"):
            restore_backup(str(file), chosen)
        records.keep(invented.farm())
    aside = restore_backup(f"sqlite:///{file}", chosen)
    assert aside is not None
    with Records.open(str(file)) as records:
        assert export_text(records) == told


def test_a_server_keeps_its_own_backups() -> None:
    url = "postgresql://u@127.0.0.1:1/none"
    assert backups_of(url) == []
    with pytest.raises(RecordsError, match="backups of a server"):
        restore_backup(url, _copies([1])[0])
