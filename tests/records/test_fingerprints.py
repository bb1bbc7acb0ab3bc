"""A signed-off weigh-in that another program changes is found, named and dated; what was left alone is not."""

from __future__ import annotations

import hashlib
import json
import shutil
import sqlite3
from contextlib import closing
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import invented
import pytest
from invented import World

from calibrator.model import WeighIn
from calibrator.records import Fault, Records, backup, fingerprints, import_season, sample_lots_folder
from tests.exported import export_text


def _signed(file: Path, count: int = 3) -> list[str]:
    """A farm with several signed-off weigh-ins of lots of their own; gives the lots' numbers."""
    with Records.open(str(file)) as records:
        world = World(records)
        world.signed()
        for at in range(1, count):
            world.lot = records.keep(invented.lot(world.farm.id, lot_number=f"lot {at}"))
            world.weigh_in = records.keep(invented.weigh_in(world.lot), by="AB")
            records.add_fill(invented.fill(world.weigh_in, 288.0 + at))
            struck = records.add_fill(invented.fill(world.weigh_in, 300.0))
            records.strike(struck.id, "spilled", "AB")
            world.signed()
        world.scoop_again(name="a newer telling, which the sign-offs do not rest on")
        assert records.check_fingerprints() == ()
    return ["24-1107B", *(f"lot {at}" for at in range(1, count))]


def _edit(file: Path, *statements: str) -> None:
    """As another program edits the file: the guards are taken off first and put back afterwards."""
    with closing(sqlite3.connect(file)) as raw:
        guards = raw.execute("SELECT name, sql FROM sqlite_master WHERE type = 'trigger'").fetchall()
        for name, _ in guards:
            raw.execute(f"DROP TRIGGER {name}")
        changed = [raw.execute(statement).rowcount for statement in statements]
        assert all(changed), "an edit that changes nothing shows nothing"
        for _, sql in guards:
            raw.execute(sql)
        raw.commit()


_SECOND = "(SELECT sign_off_id FROM fingerprints WHERE number = 2)"
_ITS_WEIGH_IN = f"(SELECT weigh_in_id FROM sign_offs WHERE id = {_SECOND})"


@pytest.mark.parametrize(
    ("statement", "fault"),
    [
        (f"UPDATE fills SET mass_g = mass_g + 0.1 WHERE weigh_in_id = {_ITS_WEIGH_IN}", Fault.CHANGED),
        (f"UPDATE fills SET typed = 'x' WHERE weigh_in_id = {_ITS_WEIGH_IN}", Fault.CHANGED),
        (f"DELETE FROM fills WHERE weigh_in_id = {_ITS_WEIGH_IN} AND mass_g < 300", Fault.CHANGED),
        (
            "UPDATE fill_strikes SET reason = NULL WHERE of_id IN "
            f"(SELECT id FROM fills WHERE weigh_in_id = {_ITS_WEIGH_IN})",
            Fault.CHANGED,
        ),
        (f"UPDATE fills SET way = 'nonsense' WHERE weigh_in_id = {_ITS_WEIGH_IN}", Fault.CHANGED),
        (f"UPDATE marks SET down_wall_mm = 5 WHERE sign_off_id = {_SECOND}", Fault.CHANGED),
        (f"DELETE FROM marks WHERE sign_off_id = {_SECOND} AND position = 1", Fault.CHANGED),
        (f"UPDATE sign_offs SET by = 'XY' WHERE id = {_SECOND}", Fault.CHANGED),
        (f"UPDATE weigh_ins SET target_mass_g = 1 WHERE id = {_ITS_WEIGH_IN}", Fault.CHANGED),
        ("UPDATE lots SET lot_number = 'other' WHERE lot_number = 'lot 1'", Fault.CHANGED),
        (f"DELETE FROM sign_offs WHERE id = {_SECOND}", Fault.TAKEN_AWAY),
        ("DELETE FROM fingerprints WHERE number = 2", Fault.SLIPPED_IN),
        ("UPDATE fingerprints SET sha256 = previous WHERE number = 2", Fault.CHANGED),
    ],
)
def test_an_edit_by_another_program_is_found_and_named(file: Path, statement: str, fault: Fault) -> None:
    numbers = _signed(file)
    backup.make(file, "by-hand", datetime(2024, 11, 8, 6, tzinfo=UTC))
    _edit(file, statement)
    with Records.open(str(file)) as records:
        found = records.check_fingerprints()
        (own,) = [one for one in found if one.lot_number == numbers[1]]
        assert own.fault is fault
        assert (own.signed_at, own.right_until) == (invented.NOON, datetime(2024, 11, 8, 6, tzinfo=UTC))
        # A later link rests on what was cut out; nothing else is said of weigh-ins that are as they were signed.
        assert {one.fault for one in found if one is not own} <= {Fault.CHAIN_BROKEN}
        assert records.add_fill(invented.fill(records.keep(invented.weigh_in(World(records).lot))))


def test_the_copies_tell_between_which_days_it_happened(file: Path) -> None:
    _signed(file)
    days = [datetime(2024, 11, day, 6, tzinfo=UTC) for day in (8, 9, 10, 11)]
    backup.make(file, "daily", days[0])
    backup.make(file, "daily", days[1])
    _edit(file, f"UPDATE fills SET mass_g = 1 WHERE weigh_in_id = {_ITS_WEIGH_IN}")
    backup.make(file, "daily", days[2])
    backup.make(file, "daily", days[3])
    with Records.open(str(file)) as records:
        (found,) = records.check_fingerprints()
    assert (found.right_until, found.wrong_since) == (days[1], days[2])


def test_without_copies_it_is_found_all_the_same(file: Path) -> None:
    _signed(file)
    _edit(file, f"UPDATE fills SET mass_g = 1 WHERE weigh_in_id = {_ITS_WEIGH_IN}")
    shutil.rmtree(backup.backups_folder(file))
    with Records.open(str(file)) as records:
        (found,) = records.check_fingerprints()
    assert (found.lot_number, found.right_until) == ("lot 1", None)


def test_the_newest_taken_away_whole_is_told_by_the_copy(file: Path) -> None:
    _signed(file)
    backup.make(file, "daily", datetime(2024, 11, 8, 6, tzinfo=UTC))
    last = "(SELECT sign_off_id FROM fingerprints WHERE number = 3)"
    _edit(
        file,
        f"DELETE FROM marks WHERE sign_off_id = {last}",
        f"DELETE FROM sign_offs WHERE id = {last}",
        "DELETE FROM fingerprints WHERE number = 3",
    )
    with Records.open(str(file)) as records:
        (found,) = records.check_fingerprints()
    assert (found.fault, found.lot_number) == (Fault.TAKEN_AWAY, "lot 2")


def test_a_chain_made_anew_by_who_knows_how_is_unlike_the_copy(file: Path) -> None:
    _signed(file)
    backup.make(file, "daily", datetime(2024, 11, 8, 6, tzinfo=UTC))
    _edit(file, f"UPDATE fills SET mass_g = 1 WHERE weigh_in_id = {_ITS_WEIGH_IN}", "DELETE FROM fingerprints")
    with Records.open(str(file)) as records:
        with records.writing("sign-off") as writing:
            assert fingerprints.take_missing(writing.connection) == 3
        found = records.check_fingerprints()
    assert [one.fault for one in found] == [Fault.UNLIKE_COPY] * 2
    assert [one.lot_number for one in found] == ["lot 1", "lot 2"]


def test_a_fingerprint_is_the_sha_256_of_what_is_documented(file: Path) -> None:
    with Records.open(str(file)) as records:
        told = World(records).signed()
        with records.reading() as connection:
            link = fingerprints.every(connection)[told.id]
            content = fingerprints.content_of(connection, told)
    # Checked against hashlib here and not by the program's own function: the rule is written out at its top.
    assert link.sha256 == hashlib.sha256(b"calibrator fingerprint 1\n\n" + content.encode("ascii")).hexdigest()
    read = json.loads(content)
    assert sorted(read) == ["fills", "lot", "marks", "scale", "scoop", "sign_off", "weigh_in"]
    assert [fill["mass_g"] for fill in read["fills"]] == [289.0, 291.0]
    assert "note" not in read["lot"]  # it is what it begins as


def test_fingerprints_travel_and_an_edited_export_is_noticed(file: Path, tmp_path: Path, empty_file: Path) -> None:
    _signed(file)
    with Records.open(str(file)) as records:
        text = export_text(records)
    for spoilt, faults in ((text, []), (text.replace('"mass_g": 291.0', '"mass_g": 299.0'), [Fault.CHANGED])):
        copy = Path(shutil.copy(empty_file, tmp_path / "copy.sqlite"))
        told = tmp_path / "told.json"
        told.write_text(spoilt, encoding="utf-8")
        with Records.open(str(copy)) as records:
            import_season(records, told)
            assert export_text(records) == spoilt
            assert [one.fault for one in records.check_fingerprints()] == faults


def test_an_export_from_before_gets_its_fingerprints_when_it_comes_in(file: Path, tmp_path: Path) -> None:
    told = json.loads((sample_lots_folder() / "season.json").read_text(encoding="utf-8"))
    for entry in told["changes"]:
        entry.pop("fingerprint", None)
    older = tmp_path / "older.json"
    older.write_text(json.dumps(told), encoding="utf-8")
    with Records.open(str(file)) as records:
        import_season(records, older)
        assert records.check_fingerprints() == ()
        with records.reading() as connection:
            links = list(fingerprints.every(connection).values())
    assert [link.number for link in links] == list(range(1, 15))
    assert all(link.taken_later for link in links)


def test_each_store_finds_its_chain_right(records: Records) -> None:
    world = World(records)
    records.keep(replace(world.lot, note="naïve – ☃"))
    world.lot = records.find(type(world.lot), world.lot.id)
    told = world.signed()
    with records.reading() as connection:
        link = fingerprints.every(connection)[told.id]
    assert (link.number, link.previous, link.taken_later) == (1, "", None)
    assert records.check_fingerprints() == ()
    assert records.find(WeighIn, world.weigh_in.id) == world.weigh_in
