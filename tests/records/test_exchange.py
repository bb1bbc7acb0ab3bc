"""Everything out and in again: the same store, all or nothing, and faults named by entry and field."""

from __future__ import annotations

import json
import os
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import Any

import invented
import pytest
from hypothesis import HealthCheck, Phase, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, precondition, rule
from invented import World

from calibrator.model import (
    BagCount,
    Farm,
    FeederTrial,
    Fill,
    Instrument,
    InstrumentCheck,
    Lot,
    MixCheck,
    ReferenceMix,
    Scoop,
)
from calibrator.records import ImportRefused, NotAllowed, Records, import_season
from calibrator.records.errors import TableNotWritten
from calibrator.records.exporting import export_file
from tests.exported import export_text

invented.register()


def _filled(records: Records) -> World:
    world = World(records)
    records.strike(world.fills[0].id, "spilled", "AB")
    records.restore(world.fills[0].id, "CD")
    world.scoop_again(name="red, new handle")
    told = world.signed()
    spots = [records.add_spot_fill(invented.spot(told)) for _ in range(2)]
    records.strike_spot(spots[0].id, "wrong scoop", "AB")
    records.end_sheet(invented.ending(records.record_print(invented.printed(told))))
    records.keep(replace(world.lot, note="naïve “quotes”, \N{SNOWMAN}"), by="CD", why="a note")
    return world


def _copied(text: str, tmp_path: Path, empty: Path) -> Records:
    told = tmp_path / "everything.json"
    told.write_text(text, encoding="utf-8")
    copy = tmp_path / "copy.sqlite"
    copy.write_bytes(empty.read_bytes())
    records = Records.open(str(copy))
    import_season(records, told)
    return records


def test_everything_comes_back_in_an_empty_store(records: Records, tmp_path: Path, empty_file: Path) -> None:
    world = _filled(records)
    text = export_text(records)
    with _copied(text, tmp_path, empty_file) as copy:
        assert export_text(copy) == text
        assert copy.history(Lot, world.lot.id) == records.history(Lot, world.lot.id)
        assert copy.fills(world.weigh_in.id) == records.fills(world.weigh_in.id)
        assert copy.version() == records.version()


class AnySeason(RuleBasedStateMachine):
    """Any sequence of work on the records, and after each run: out, in again, the same."""

    folder: Path
    empty: Path
    open_again: Callable[[], Records]

    def __init__(self) -> None:
        super().__init__()
        self.records = self.open_again()
        self.world = World(self.records)
        self.signed: list[Any] = []

    @rule(name=invented.TEXT, by=invented.TEXT, why=invented.TEXT)
    def rename(self, name: str, by: str, why: str) -> None:
        self.world.scoop = self.records.keep(replace(self.world.scoop, name=name), by=by, why=why)

    @precondition(lambda self: not self.signed)
    @rule(fill=invented.any_of(Fill))
    def weigh(self, fill: Fill) -> None:
        made = replace(fill, id=invented.new_id(), weigh_in_id=self.world.weigh_in.id, struck_reason=None)
        self.world.fills.append(self.records.add_fill(made))

    @precondition(lambda self: not self.signed)
    @rule(at=st.integers(0, 100), reason=st.sampled_from(["spilled", "bumped", None]))
    def strike(self, at: int, reason: str | None) -> None:
        id = self.world.fills[at % len(self.world.fills)].id
        if reason is None:
            self.records.restore(id, "AB")
        else:
            self.records.strike(id, reason, "AB")

    @rule()
    def sign(self) -> None:
        if self.signed:
            self.world.weigh_in = self.records.keep(invented.weigh_in(self.world.lot))
        self.signed.append(self.world.signed())

    @precondition(lambda self: self.signed)
    @rule(struck=st.booleans())
    def spot(self, struck: bool) -> None:
        spot = self.records.add_spot_fill(invented.spot(self.signed[-1]))
        if struck:
            self.records.strike_spot(spot.id, "spilled", "AB")

    @precondition(lambda self: self.signed)
    @rule()
    def sheet(self) -> None:
        self.records.record_print(invented.printed(self.signed[-1]))

    def teardown(self) -> None:
        text = export_text(self.records)
        with _copied(text, self.folder, self.empty) as copy:
            assert export_text(copy) == text
            again = import_season(copy, self.folder / "everything.json")
            assert (again.added, again.there) == (0, text.count("\n") - 2)
            assert export_text(copy) == text
        self.records.close()


def test_checks_of_the_mix_come_back_as_they_were_typed(records: Records, tmp_path: Path, empty_file: Path) -> None:
    world = World(records)
    invented.checks_of_the_mix(records, world)
    text = export_text(records)
    with _copied(text, tmp_path, empty_file) as copy:
        assert export_text(copy) == text
        for kind in (Instrument, InstrumentCheck, ReferenceMix, MixCheck, BagCount):
            assert copy.every(kind, world.farm.id) == records.every(kind, world.farm.id)
        check, again, other = copy.every(MixCheck, lot_id=world.lot.id)
        assert (check.same_batch_as, again.same_batch_as, other.same_batch_as) == (None, check.id, "")
        assert [change.noun.note for change in copy.history(MixCheck, check.id)] == ["", "read again"]
        assert [reading.typed for reading in check.readings] == ["11.2"]


def test_trials_and_prices_come_back_as_they_were_typed(records: Records, tmp_path: Path, empty_file: Path) -> None:
    world = World(records)
    invented.feeders_and_prices(records, world)
    text = export_text(records)
    with _copied(text, tmp_path, empty_file) as copy:
        assert export_text(copy) == text
        assert import_season(copy, tmp_path / "everything.json").added == 0
        for kind in (FeederTrial, Lot, Scoop):
            assert copy.every(kind, world.farm.id) == records.every(kind, world.farm.id)
        (trial,) = copy.every(FeederTrial, lot_id=world.lot.id)
        assert [fill.struck_reason for fill in copy.trial_fills(trial.id)] == ["spilled", None]
        assert copy.find(Farm, world.farm.id).currency == "€"


def test_a_check_of_an_unknown_lot_is_refused(records: Records) -> None:
    world = World(records)
    with pytest.raises(NotAllowed, match="names something"):
        records.keep(replace(invented.mix_check(world.lot), lot_id="x"))


def test_any_season_goes_out_and_in_again_the_same(tmp_path: Path, empty_file: Path) -> None:
    def fresh() -> Records:
        file = tmp_path / "season.sqlite"
        file.write_bytes(empty_file.read_bytes())
        return Records.open(str(file))

    AnySeason.folder, AnySeason.empty, AnySeason.open_again = tmp_path, empty_file, staticmethod(fresh)
    machine = AnySeason.TestCase
    machine.settings = settings(
        max_examples=8,
        stateful_step_count=12,
        deadline=None,
        phases=[Phase.explicit, Phase.generate],
        suppress_health_check=list(HealthCheck),
    )
    machine("runTest").runTest()


def test_what_is_there_already_is_left_alone(records: Records, tmp_path: Path) -> None:
    _filled(records)
    text = export_text(records)
    file = tmp_path / "everything.json"
    export_file(records, file)
    assert file.read_text(encoding="utf-8") == text
    again = import_season(records, file)
    assert again.added == 0
    assert again.there == records.version()
    assert export_text(records) == text


def test_what_joins_other_records_says_which_file_it_came_with(records: Records, tmp_path: Path) -> None:
    world = _filled(records)
    told = tmp_path / "everything.json"
    told.write_text(export_text(records), encoding="utf-8")
    with Records.open(str(tmp_path / "other.sqlite")) as other:
        other.keep(invented.farm())
        import_season(other, told)
        reasons = [change.why for change in other.history(Lot, world.lot.id)]
        assert reasons == ["imported from everything.json", "a note"]
        before = other.version()
        import_season(other, told)  # known again in spite of the reason
        assert other.version() == before


def test_a_folder_is_brought_in_by_file_names(records: Records, tmp_path: Path, empty_file: Path) -> None:
    _filled(records)
    told = json.loads(export_text(records))
    folder = tmp_path / "season"
    folder.mkdir()
    for name, part in (("b.json", told["changes"][5:]), ("a.json", told["changes"][:5])):
        text = json.dumps(told | {"changes": part})
        (folder / name).write_text(text, encoding="utf-8-sig" if name == "a.json" else "utf-8")
    (folder / "README.md").write_text("not for import", encoding="utf-8")
    copy = tmp_path / "copy.sqlite"
    copy.write_bytes(empty_file.read_bytes())
    with Records.open(str(copy)) as fresh:
        brought = import_season(fresh, folder)
        assert export_text(fresh) == export_text(records)
    assert brought.there == 0
    assert brought.counts == {
        "farm": 1,
        "scale": 1,
        "scoop": 1,
        "lot": 1,
        "weigh_in": 1,
        "fill": 2,
        "sign_off": 1,
        "mark": 2,
        "spot_fill": 2,
        "printed": 1,
        "sheet_ending": 1,
    }


def _entry(change: Callable[[list[dict[str, Any]]], object]) -> Callable[[dict[str, Any]], object]:
    return lambda told: change(told["changes"])


@pytest.mark.parametrize(
    ("spoil", "sentence"),
    [
        (_entry(lambda all: all[0]["noun"].update(name=5)), "entry 1: noun.name: should be text"),
        (_entry(lambda all: all[5]["fact"].update(mass_g="x")), "entry 6: fact.mass_g: should be a number"),
        (_entry(lambda all: all[5].update(type="guess")), "entry 6: type: should be one of told, added"),
        (_entry(lambda all: all.insert(2, 7)), "entry 3: should be a group of named values"),
        (_entry(lambda all: all.pop(0)), "entry 1: This scale names something"),
        (_entry(lambda all: all.pop(5)), "entry 7: There is no fill"),
        (_entry(lambda all: all[1].update(replaces="x")), "entry 2: There is no scale"),
        (_entry(lambda all: all[1]["noun"].update(revision="")), "entry 2: A different scale is already"),
        (_entry(lambda all: all.append({**all[0], "noun": {**all[0]["noun"], "name": "x"}})), "A different"),
        (_entry(lambda all: all[-3]["fact"].update(lot_id="x")), "names something that is not"),
        (lambda told: told.update(format="recipes"), "not an export of this program"),
        (lambda told: told.update(version=2), "format version 2, and this program reads 1"),
        (lambda told: told.update(changes={}), "no list of changes"),
    ],
)
def test_a_fault_is_named_and_nothing_is_brought_in(
    records: Records, tmp_path: Path, empty_file: Path, spoil: Callable[[Any], object], sentence: str
) -> None:
    _filled(records)
    told = json.loads(export_text(records))
    spoil(told)
    with pytest.raises(ImportRefused) as refused:
        _copied(json.dumps(told), tmp_path, empty_file)
    assert sentence in str(refused.value)
    assert str(refused.value).startswith("everything.json")
    with Records.open(str(tmp_path / "copy.sqlite"), read_only=True) as copy:
        assert copy.version() == 0


@pytest.mark.parametrize("kind", ["printed", "signed", "fill"])
def test_a_different_fact_under_a_known_name_is_refused(records: Records, tmp_path: Path, kind: str) -> None:
    _filled(records)
    told = json.loads(export_text(records))
    for entry in told["changes"]:
        if entry["type"] == kind == "signed":
            entry["marks"] = []
        if entry.get("fact", {}).get("type") == kind:
            entry["fact"]["by"] = "XY"
    file = tmp_path / "everything.json"
    file.write_text(json.dumps(told), encoding="utf-8")
    before = records.version()
    with pytest.raises(ImportRefused, match="is already kept under the same name"):
        import_season(records, file)
    assert records.version() == before


@pytest.mark.parametrize(
    ("content", "sentence"),
    [
        (b"\xff\xfe\x00", "is not JSON text"),
        (b"lot;mass\n1;2\n", "is not JSON text"),
        (b"[" * 100_000, "is not JSON text"),
        (b"[]", "is not an export of this program"),
        (None, "cannot be read: No such file"),
    ],
)
def test_other_files_are_refused(records: Records, tmp_path: Path, content: bytes | None, sentence: str) -> None:
    file = tmp_path / "strange.json"
    if content is not None:
        file.write_bytes(content)
    with pytest.raises(ImportRefused, match=sentence):
        import_season(records, file)


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="a pipe under a name is there on some systems only")
def test_what_has_no_end_is_refused(records: Records, tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "records.json")
    with pytest.raises(ImportRefused, match="it is not a file"):
        import_season(records, tmp_path / "records.json")


def test_a_file_larger_than_memory_is_refused(
    records: Records, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def too_much(*_: object, **__: object) -> None:
        raise MemoryError

    (tmp_path / "records.json").write_text("{}", "utf-8")
    monkeypatch.setattr("calibrator.records.entries.json.loads", too_much)
    with pytest.raises(ImportRefused, match="too large for the memory"):
        import_season(records, tmp_path / "records.json")


def test_an_empty_folder_and_deep_nesting_are_refused(records: Records, tmp_path: Path) -> None:
    with pytest.raises(ImportRefused, match=r"holds no \.json file"):
        import_season(records, tmp_path)
    world = World(records)
    told = json.loads(export_text(records))
    told["changes"][0]["noun"]["name"] = world.farm.name + "x"
    (tmp_path / "a.json").write_text(json.dumps(told), encoding="utf-8")
    with pytest.raises(ImportRefused, match="entry 1: A different farm"):
        import_season(records, tmp_path)


def test_records_that_went_different_ways_are_not_mixed(records: Records, tmp_path: Path, empty_file: Path) -> None:
    world = World(records)
    with _copied(export_text(records), tmp_path, empty_file) as copy:
        copy.keep(replace(copy.find(Scoop, world.scoop.id), name="there"))
        records.keep(replace(world.scoop, name="here"))
        file = tmp_path / "here.json"
        export_file(records, file)
        with pytest.raises(ImportRefused, match=r"computers.*: ‘there’ stays, ‘here’ was not taken\. Records that"):
            import_season(copy, file)


def test_a_farm_renamed_on_both_sides_keeps_its_name_here_and_the_rest_comes_in(
    records: Records, tmp_path: Path, empty_file: Path
) -> None:
    world = World(records)
    with _copied(export_text(records), tmp_path, empty_file) as copy:
        copy.keep(replace(copy.find(Farm, world.farm.id), name="there"))
        once = records.keep(replace(world.farm, name="here"))
        records.keep(replace(once, name="here again"))
        lot = records.keep(replace(world.lot, note="from here"))
        file = tmp_path / "here.json"
        export_file(records, file)
        brought = import_season(copy, file)
        assert (brought.stayed, brought.added) == (("there",), 1)
        assert copy.find(Farm, world.farm.id).name == "there"
        assert copy.find(Lot, lot.id) == lot
        assert import_season(copy, file).added == 0


@pytest.mark.parametrize(("code", "told"), [(28, "The disk is full"), (13, "another program has it open")])
def test_a_file_that_cannot_be_written_is_told_and_left_whole(
    records: Records,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    code: int,
    told: str,
) -> None:
    file = tmp_path / "everything.json"
    file.write_text("the one before", encoding="utf-8")

    def fails(*_: object) -> None:
        raise OSError(code, "no")

    monkeypatch.setattr("os.fsync", fails)
    with pytest.raises(TableNotWritten, match=told):
        export_file(records, file)
    assert file.read_text(encoding="utf-8") == "the one before"
    assert [path.name for path in tmp_path.glob("*.part")] == []


def test_numbers_of_sheets_stay_unique_when_brought_in(records: Records, tmp_path: Path) -> None:
    world = World(records)
    sheet = records.record_print(invented.printed(world.signed()))
    told = json.loads(export_text(records))
    told["changes"][-1]["fact"]["id"] = "another"
    file = tmp_path / "a.json"
    file.write_text(json.dumps(told), encoding="utf-8")
    with pytest.raises((ImportRefused, NotAllowed), match="refused this"):
        import_season(records, file)
    assert records.prints(world.farm.id) == [sheet]
