"""Everything that was kept of a lot stands in one list: who, when, what it replaces; filtered, and as a file."""

from __future__ import annotations

import csv
from dataclasses import replace
from datetime import date
from functools import partial
from pathlib import Path

import pytest
from answers import Answers
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot
from speaking import speaking
from sqlalchemy import event

from calibrator.desk.context import Desk
from calibrator.desk.lot_history.dialog import LotHistoryDialog
from calibrator.desk.lot_history.model import WHAT
from calibrator.desk.pages.lots import LotsPage
from calibrator.desk.trust_words import moment
from calibrator.model import Fill, FillWay, Lot, MixCheck, Reading, ReadingKind, Step, WeighIn, new_id
from calibrator.records import Records
from calibrator.records.bringing import Past, bring_in
from calibrator.records.lot_history import Topic, lot_history
from tests.records import invented


class Story:
    """A lot that went through all that a lot can, told in the order in which it happened."""

    def __init__(self, records: Records) -> None:
        self.world = world = invented.World(records)
        keep = partial(records.keep, by="AB")
        records.strike(world.fills[1].id, "spilled", "MK")
        records.restore(world.fills[1].id, "MK")
        world.weigh_in = keep(replace(world.weigh_in, step=Step.MARK, target_mass_g=283.5, target_typed="10 oz"))
        self.first = world.signed()
        again = keep(invented.weigh_in(world.lot, scoop_id=world.scoop.id, scale_id=world.scale.id))
        records.add_fill(invented.fill(again, 295.0))
        second = invented.sign_off(again, world.scoop, world.scale, world.lot, by="MK")
        records.sign_off(second, [invented.mark(second, down_wall_mm=6.0)])
        records.record_print(invented.printed(second))
        sheet = records.record_print(invented.printed(second))
        records.end_sheet(invented.ending(sheet))
        spot = records.add_spot_fill(invented.spot(second))
        records.strike_spot(spot.id, "wrong bag", "MK")
        check = keep(invented.mix_check(world.lot, solids_share=0.131, verdict="inside"))
        keep(replace(check, withdrawn_reason="misread"), why="misread")
        keep(invented.bag_count(world.lot))
        of = keep(invented.trial(world.lot, world.scoop, world.scale))
        records.add_trial_fill(invented.trial_fill(of, "CD"))
        world.lot = keep(replace(world.lot, package_count=40), why="counted again")
        world.lot = keep(replace(world.lot, fed_from=date(2024, 11, 9)))


@pytest.fixture
def story(desk: Desk) -> Story:
    return Story(desk.records)


@pytest.fixture
def dialog(qtbot: QtBot, desk: Desk, story: Story) -> LotHistoryDialog:
    made = LotHistoryDialog(desk, story.world.lot)
    qtbot.addWidget(made)
    return made


def _lines(dialog: LotHistoryDialog) -> list[str]:
    return [str(dialog.model.index(row, WHAT).data()) for row in range(dialog.model.rowCount())]


def test_each_entry_says_what_was_kept_and_what_it_replaces(dialog: LotHistoryDialog, story: Story) -> None:
    signed = moment(story.first.at)
    level = "10.2 oz (10.2 oz to 10.3 oz), mean of 1 bag, 2 fills"
    assert _lines(dialog)[::-1] == [
        "lot 24-1107B entered",
        "weigh-in begun",
        "289.0 g, struck level, bag 1",
        "291.0 g, struck level, bag 1",
        "struck out: 291.0 g, struck level, bag 1, because: spilled",
        "counts again: 291.0 g, struck level, bag 1; replaces the striking out",
        "step the lot → the mark; target weight – → “10 oz”",
        f"red, struck level: {level}",
        "red: line for 10.0 oz at 3/16 in",
        "red: line for 20.0 oz = 1 struck at the rim + 1 to the line at 3/16 in",
        "weigh-in begun",
        "295.0 g, struck level, bag 1",
        f"red, struck level: {level}; replaces the sign-off of {signed} by AB",
        "red: line for 10.0 oz at 1/4 in; replaces the line at 3/16 in",
        "label for red, print no. 1",
        "label for red, print no. 2; replaces number 1",
        "label for red, print no. 2: taken down",
        "288 g, struck level",
        "struck out: 288 g, struck level, because: wrong bag",
        "mix read: 11.2; solids 13.1 %, wanted 13.0 %: As it should be",
        "counts no more, because: misread",
        "bags: 4 of 50 lb emptied over 320 feedings",
        "trial of feeders begun: red, to the line",
        "CD filled 283.0 g",
        "bags and their weight – → 40 (counted again)",
        "fed from Nov 9, 2024 on",
    ]


def test_one_kind_can_be_looked_at_and_saved(dialog: LotHistoryDialog, answers: Answers, tmp_path: Path) -> None:
    place = dialog.kinds.findData(Topic.SHEET)
    dialog.kinds.setCurrentIndex(place)
    dialog.kinds.activated.emit(place)
    assert len(_lines(dialog)) == 3
    assert dialog.count.text() == "3 entries"
    answers.path = tmp_path / "history.csv"
    dialog.save_button.click()
    with answers.path.open(encoding="utf-8-sig", newline="") as written:
        rows = list(csv.DictReader(written))
    assert [row["what"] for row in rows] == [
        "label for red, print no. 1",
        "label for red, print no. 2",
        "label for red, print no. 2: taken down",
    ]
    assert [row["replaces"] for row in rows] == ["", "number 1", ""]
    assert {row["kind"] for row in rows} == {"Print"}


def test_who_and_when_and_the_whole_of_the_chosen_entry(dialog: LotHistoryDialog, desk: Desk, story: Story) -> None:
    newest = lot_history(desk.records, story.world.lot.id)[-1]
    assert [dialog.model.index(0, place).data() for place in range(3)] == [moment(newest.at), "AB", "Change-over"]
    assert dialog.told.text() == f"{moment(newest.at)}, AB: fed from Nov 9, 2024 on"


def test_a_file_that_cannot_be_written_is_told(dialog: LotHistoryDialog, answers: Answers, tmp_path: Path) -> None:
    answers.first_paths, answers.path = [tmp_path / "none" / "history.csv"], tmp_path / "there.csv"
    dialog.save_button.click()
    assert any("is not there any more" in asked for asked in answers.asked)
    assert answers.path.is_file()


def test_it_opens_from_the_lots(qtbot: QtBot, desk: Desk) -> None:
    page = LotsPage(desk)
    qtbot.addWidget(page)
    page.reload()
    page.show()
    qtbot.mouseClick(page.history_button, Qt.MouseButton.LeftButton)
    (opened,) = page.findChildren(LotHistoryDialog)
    assert opened.model.rowCount() > 0
    opened.close()


def test_a_thousand_entries_take_no_more_questions_than_a_few(desk: Desk) -> None:
    world = invented.World(desk.records)
    few = _questions(desk.records, world.lot.id)
    for number in range(30):
        kept = desk.records.add_fill(invented.fill(world.weigh_in, 280.0 + number))
        desk.records.strike(kept.id, "spilled", "AB")
        world.lot = desk.records.keep(replace(world.lot, package_count=number))
    assert len(lot_history(desk.records, world.lot.id)) > 90
    assert _questions(desk.records, world.lot.id) == few


def _questions(records: Records, lot_id: str) -> int:
    asked = []
    with records.reading() as connection:
        engine = connection.engine
    event.listen(engine, "before_cursor_execute", lambda *told: asked.append(told[2]))
    before = len(asked)
    lot_history(records, lot_id)
    return len(asked) - before


def test_a_line_of_another_lot_is_told_as_what_was_on_the_scoop(desk: Desk, qtbot: QtBot, story: Story) -> None:
    world = story.world
    other = desk.records.keep(invented.lot(world.farm.id, lot_number="24-1201A"))
    weigh_in = desk.records.keep(invented.weigh_in(other, scoop_id=world.scoop.id, scale_id=world.scale.id))
    signed = invented.sign_off(weigh_in, world.scoop, world.scale, other)
    desk.records.sign_off(signed, [invented.mark(signed)])
    dialog = LotHistoryDialog(desk, other)
    qtbot.addWidget(dialog)
    assert _lines(dialog)[0] == "red: line for 10.0 oz at 3/16 in; replaces the line of another lot at 1/4 in"


def test_a_check_without_solids_and_several_scoopfuls_at_once(desk: Desk, qtbot: QtBot) -> None:
    (lot,) = desk.records.every(Lot)
    read = Reading(kind=ReadingKind.MIX_TEMPERATURE, value=40.0, typed="104 F")
    aims = {"target_share": 0.13, "target_typed": "13 %", "tolerance_share": 0.005, "tolerance_typed": "0.5 %"}
    clock = desk.clock()
    desk.records.keep(MixCheck(id=new_id(), farm_id=lot.farm_id, lot_id=lot.id, at=clock, readings=(read,), **aims))  # type: ignore[arg-type]
    started = WeighIn(id=new_id(), farm_id=lot.farm_id, lot_id=lot.id, started_at=clock)
    weigh_in = desk.records.keep(started)
    more = {"way": FillWay.LEVEL, "bag": 2, "mass_g": 870.0, "typed": "870 g", "by": "AB", "at": clock, "scoopfuls": 3}
    desk.records.add_fill(Fill(id=new_id(), weigh_in_id=weigh_in.id, **more))  # type: ignore[arg-type]
    dialog = LotHistoryDialog(desk, lot)
    qtbot.addWidget(dialog)
    told = _lines(dialog)
    assert told[0] == "870 g for 3 scoopfuls, struck level, bag 2"
    assert told[2] == "mix read: 104 F"


def test_a_weighed_mix_is_told_by_the_name_of_its_page(desk: Desk, qtbot: QtBot) -> None:
    (lot,) = desk.records.every(Lot)
    glass = desk.records.keep(invented.instrument(lot.farm_id))
    desk.records.keep(invented.reference_mix(glass, lot))
    for language, said in (
        ("en", "mix weighed for the Brix calibration: 130 g in 870 g, read 11.4 11.6"),
        ("es", "mezcla pesada para la calibración Brix: 130 g en 870 g, lectura 11.4 11.6"),
    ):
        with speaking(language):
            dialog = LotHistoryDialog(desk, lot)
            qtbot.addWidget(dialog)
            assert _lines(dialog)[0] == said


def test_what_came_out_of_a_file_says_so_and_can_be_looked_at_alone(desk: Desk, qtbot: QtBot, story: Story) -> None:
    world = story.world
    past = invented.weigh_in(world.lot, abandoned=True, revision="")
    weighed = replace(invented.fill(past), by="old book")
    bring_in(desk.records, Past(weigh_ins=(past,), fills=(weighed,)), file="season.csv", by="MK")
    dialog = LotHistoryDialog(desk, world.lot)
    qtbot.addWidget(dialog)
    place = dialog.kinds.findText("Brought in from a file")
    dialog.kinds.setCurrentIndex(place)
    dialog.kinds.activated.emit(place)
    assert _lines(dialog)[-1] == "weigh-in begun (brought in from season.csv)"
