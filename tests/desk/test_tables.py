"""The page of batch tables: typing today's count, what it takes, what another lot changes.

Weights and volumes here are plain multiples: 109 calves at 2 qt of water and 10 oz of powder each.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest
from answers import Answers, at_noon
from herd import OZ_G, QT_ML, TEN_ON_TWO, Herd, group
from keys import RAIL, mnemonics, nameless, tab_through
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication, QLabel, QScrollArea
from pytestqt.modeltest import ModelTester
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.digits import is_digit_off
from calibrator.desk.pages.batch_model import BatchModel, Column
from calibrator.desk.pages.tables import TablesPage
from calibrator.desk.pages.volume_table import VolumeColumn
from calibrator.desk.theme import Theme
from calibrator.desk.widgets.roomy_table import RoomyTable
from calibrator.desk.window import LEAST_WHOLE, RAIL_PX
from calibrator.model import (
    Composition,
    Cylinder,
    MixingRate,
    Plan,
    PrintKind,
    RateBasis,
    Scoopfuls,
    ScoopMarked,
    ScoopRule,
    UnitSystem,
    VolumeMeans,
)
from calibrator.records import Records

TEN_OZ_LEVEL = 10 * OZ_G / 665.9  # the density at which the red scoop holds ten ounces


@pytest.fixture
def herd(records: Records) -> Herd:
    return Herd(records)


@pytest.fixture
def shown(qapp: QApplication, qtbot: QtBot, herd: Herd, answers: Answers) -> Callable[[], TablesPage]:
    """Brings the page up over what the herd's records hold by then."""
    if qapp.property("tokens") is None:
        Theme(qapp)

    def show() -> TablesPage:
        desk = Desk(herd.records, answers, clock=at_noon)
        page = TablesPage(desk)
        desk.changed.connect(page.reload)
        qtbot.addWidget(page)
        page.resize(828, 700)
        page.reload()
        page.show()
        page.activateWindow()
        qtbot.waitUntil(page.isActiveWindow)
        return page

    return show


def cells(page: TablesPage, calves: str) -> dict[Column, str]:
    model = page.view.table.batches
    rows = [r for r in range(model.rowCount()) if model.data(model.index(r, Column.CALVES)) == calves]
    return {column: model.data(model.index(rows[0], column)) for column in Column}


def today(page: TablesPage, number: int = 0) -> tuple[str, str, str]:
    row = page.view.today.rows[number]
    return row.water.value.text(), row.powder.value.text(), row.scoops.value.text()


def test_the_table_is_there_for_every_count_with_todays_stressed(shown: Callable[[], TablesPage], herd: Herd) -> None:
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.plan()
    page = shown()
    assert cells(page, "109")[Column.WATER] == "54 gal 2 qt"
    assert cells(page, "109")[Column.POWDER] == "68 lb 2.0 oz"
    assert cells(page, "120")[Column.POWDER] == "75 lb"
    model = page.view.table.batches
    at = model.index(model.today_row or 0, Column.CALVES)
    assert model.data(at, Qt.ItemDataRole.FontRole).bold()
    assert model.data(at, Qt.ItemDataRole.AccessibleTextRole) == "109, today"
    assert "Lot 25-1103C" in page.view.lot_number.text()
    assert page.view.only_this.isVisible()


def test_each_digit_typed_changes_the_figures_at_once(
    shown: Callable[[], TablesPage], herd: Herd, qtbot: QtBot
) -> None:
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    plan = herd.plan()
    page = shown()
    field = page.view.today.rows[0].calves
    field.setFocus(Qt.FocusReason.TabFocusReason)
    qtbot.keyClicks(field, "1")
    assert today(page) == ("2 qt", "10.0 oz", "1 to the line")
    qtbot.keyClicks(field, "1")
    assert today(page) == ("5 gal 2 qt", "6 lb 14.0 oz", "11 to the line")
    qtbot.keyClicks(field, "1")
    assert today(page)[:2] == ("55 gal 2 qt", "69 lb 6.0 oz")
    assert herd.records.find(Plan, plan.id).groups[0].calves == 109
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert herd.records.find(Plan, plan.id).groups[0].calves == 111
    assert page.view.today.rows[0].calves is field
    assert cells(page, "111")[Column.WATER] == "55 gal 2 qt"


def test_a_digit_too_many_is_asked_about_once_and_kept_by_a_second_enter(
    shown: Callable[[], TablesPage], herd: Herd, qtbot: QtBot
) -> None:
    plan = herd.plan("Milk", group(16))
    page = shown()
    field, question = page.view.today.rows[0].calves, page.view.today.rows[0].question

    def kept() -> int:
        return herd.records.find(Plan, plan.id).groups[0].calves

    def enter(text: str) -> None:
        field.selectAll()
        qtbot.keyClicks(field, text)
        qtbot.keyClick(field, Qt.Key.Key_Return)

    enter("40")
    assert (kept(), question.isVisible()) == (40, False)
    enter("4")
    assert (kept(), question.isVisible(), question.words) == (40, True, "40 before. Is 4 right?")
    enter("41")
    assert (kept(), question.isVisible()) == (41, False)
    enter("410")
    assert (kept(), question.isVisible()) == (41, True)
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert (kept(), question.isVisible()) == (410, False)
    enter("41")
    assert kept() == 410
    page.leave()
    assert kept() == 41  # nothing typed is lost


def test_a_digit_too_many_is_asked_about_beneath_the_group_it_means(
    shown: Callable[[], TablesPage], herd: Herd, qtbot: QtBot
) -> None:
    plan = herd.plan("Milk", group(16, "hutches"), group(30, "pens"))
    page = shown()
    first, second = page.view.today.rows
    qtbot.keyClicks(first.calves, "0")
    qtbot.keyClick(first.calves, Qt.Key.Key_Return)
    assert first.question.words == "16 before. Is 160 right?"
    assert (first.question.isVisible(), second.question.isVisible()) == (True, False)
    assert first.isAncestorOf(first.question)
    first.question._yes.click()
    assert [one.calves for one in herd.records.find(Plan, plan.id).groups] == [160, 30]
    assert not first.question.isVisible()


def test_where_a_rounded_volume_takes_the_powder_along_row_and_foot_say_so(
    shown: Callable[[], TablesPage], herd: Herd
) -> None:
    """Five calves of 15.35 oz made up to 3.07 qt: 15.35 qt are filled up to 15 1/4, and 76.75 oz become 76.25."""
    rate = MixingRate(basis=RateBasis.MADE_UP, powder_mass_g=5 * OZ_G, volume_ml=QT_ML)
    three = replace(group(5, rate=rate, means=VolumeMeans.FINISHED_MIX), volume_ml=3.07 * QT_ML)
    herd.plan("Milk", three, count_from=3, count_to=6, counts=())
    herd.plan("Water", group(5))
    page = shown()
    told = "Volumes are rounded to 1/4\u00a0qt; in small batches the powder goes with them, so the strength holds."
    assert today(page)[:2] == ("3 gal 1 1/2 qt", "4 lb 12.3 oz")
    assert "fill up to 3\u00a0gal\u00a03\u00a01/4\u00a0qt" in page.view.today.rows[0].more.text()
    assert page.view.today.rows[0].powder.note.text() == "goes by the rounded volume"
    assert told in page.view.temperature.text()
    page.open(next(plan.id for plan in herd.records.every(Plan, herd.farm.id) if plan.name == "Water"))
    assert page.view.today.rows[0].powder.note.text() == ""
    assert "rounded" not in page.view.temperature.text()


def test_a_scale_that_is_off_is_to_be_put_right_before_powder_is_weighed_by_it(
    shown: Callable[[], TablesPage], herd: Herd
) -> None:
    """Scoopfuls are corrected for it, weights that the table tells are not what it shows: 2 % of difference."""
    herd.sign("A", 0.55, check_reading_g=510.0)
    herd.plan("Milk", group(20))
    page = shown()
    assert page.view.scale_off.isVisible()
    assert "showed 2.0 % too much" in page.view.scale_off.text()
    herd.sign("B", 0.55, check_reading_g=500.0)
    page.reload()
    assert not page.view.scale_off.isVisible()


@pytest.mark.parametrize(
    ("parts", "half", "eye"), [((), False, False), ((0.5,), True, False), ((0.25, 0.5, 0.75), True, True)]
)
def test_how_a_part_of_a_scoopful_is_measured_stands_beneath_the_table(
    shown: Callable[[], TablesPage], herd: Herd, parts: tuple[float, ...], half: bool, eye: bool
) -> None:
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.plan("Milk", group(30), scoopfuls=Scoopfuls(rule=ScoopRule.FEWEST, part_fills=parts))
    told = shown().view.temperature.text()
    assert ("1/2 to the line: fill to the ½ line on the label" in told) is half
    assert ("A part of a scoopful without a line is filled by eye" in told) is eye


@pytest.mark.parametrize(
    ("before", "now", "asked"),
    [(16, 160, True), (160, 16, True), (16, 150, True), (16, 100, False), (16, 200, False), (0, 10, False)],
)
def test_only_about_ten_times_or_a_tenth_is_a_digit_off(before: int, now: int, asked: bool) -> None:
    assert is_digit_off(before, now) is asked


def test_tab_comes_to_todays_counts_before_the_table_though_they_are_made_later(
    shown: Callable[[], TablesPage], herd: Herd
) -> None:
    herd.plan("Milk", group(30), group(40, "pens"))
    page = shown()
    page.print.setFocus()
    way = tab_through(page)
    places = [way.index(widget) for widget in (*(row.calves for row in page.view.today.rows), page.view.table)]
    assert len(places) == 3
    assert places == sorted(places)


def test_arrow_keys_count_up_and_leaving_keeps_the_count(
    shown: Callable[[], TablesPage], herd: Herd, qtbot: QtBot
) -> None:
    plan = herd.plan()
    page = shown()
    field = page.view.today.rows[0].calves
    qtbot.keyClick(field, Qt.Key.Key_Up)
    qtbot.keyClick(field, Qt.Key.Key_Up)
    assert field.text() == "111"
    assert page.leave()
    assert herd.records.find(Plan, plan.id).groups[0].calves == 111


def test_an_emptied_field_shows_no_figures_and_letters_do_not_enter(
    shown: Callable[[], TablesPage], herd: Herd, qtbot: QtBot
) -> None:
    herd.plan()
    page = shown()
    field = page.view.today.rows[0].calves
    field.setFocus(Qt.FocusReason.TabFocusReason)
    qtbot.keyClick(field, Qt.Key.Key_Backspace)
    assert today(page)[0] == "–"
    qtbot.keyClicks(field, "x-1.5")
    assert field.text() == "15"
    assert today(page)[0] == "7 gal 2 qt"


def test_without_a_signed_off_lot_it_goes_by_weight_and_says_what_to_do(
    shown: Callable[[], TablesPage], herd: Herd, qtbot: QtBot
) -> None:
    herd.plan()
    page = shown()
    assert page.view.table.isColumnHidden(Column.SCOOPFULS)
    assert cells(page, "109")[Column.POWDER] == "68 lb 2.0 oz"
    assert "by weight only" in page.view.no_lot.text()
    assert page.view.no_lot.isVisible()
    with qtbot.waitSignal(page.desk.go_to) as went:
        page.view.weigh.click()
    assert went.args == ["weigh_in", ""]


def changes(page: TablesPage) -> str:
    """What the card says of changes; blank while it is hidden."""
    card = page.view._changes_card
    return "" if card.isHidden() else "\n".join(line.text() for line in card.findChildren(QLabel))


def test_another_lot_changes_every_plan_and_says_what_changed(shown: Callable[[], TablesPage], herd: Herd) -> None:
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.plan("Morning milk", group(10))
    herd.plan(
        "Night milk", group(4, "Old & strong"), scoopfuls=Scoopfuls(rule=ScoopRule.ONE_KIND, scoop_id=herd.red.id)
    )
    page = shown()
    assert not changes(page)
    herd.sign("25-1204A", 2 * TEN_OZ_LEVEL)
    page.desk.changed.emit()
    title, morning, night = changes(page).split("\n")
    assert "25-1204A" in title
    assert "25-1103C" in title
    assert morning == "Morning milk, 10 calves: 10 to the line, as many as before, each to the new line"
    assert night == "Night milk, Old & strong, 4 calves: 4 level  →  2 level"
    assert "Lot 25-1204A" in page.view.lot_number.text()
    page.view.seen.click()
    assert not changes(page)


def test_until_the_line_is_on_the_table_says_to_weigh(shown: Callable[[], TablesPage], herd: Herd) -> None:
    signed = herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.plan("Morning milk", group(10))
    lot = herd.records.keep(replace(herd.lot_of(signed), scoops_marked=()))
    page = shown()
    warned = "Red scoop: not marked for this lot yet. Weigh the powder until its line is on."
    assert warned in page.view.lot_words.text()
    marked = ScoopMarked(scoop_id=herd.red.id, sign_off_id=signed.id, on=signed.at.date())
    herd.records.keep(replace(lot, scoops_marked=(marked,)))
    page.desk.changed.emit()
    assert warned not in page.view.lot_words.text()


def test_a_line_that_another_lot_has_at_the_same_place_is_no_new_line(
    shown: Callable[[], TablesPage], herd: Herd
) -> None:
    herd.sign("25-1103C", TEN_OZ_LEVEL * 1.2)
    herd.plan("Morning milk", group(18))
    herd.sign("25-1204A", TEN_OZ_LEVEL * 1.2)
    _, morning = changes(shown()).split("\n")
    assert morning == "Morning milk, 18 calves: 18 to the line, as many as before, to the same line"


def test_changes_tell_every_group_of_the_plans_that_were_fed_before(
    shown: Callable[[], TablesPage], herd: Herd
) -> None:
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.plan("Calf barn", group(9, "Younger"), replace(group(60, "Older"), volume_ml=3 * QT_ML))
    new = herd.sign("25-1204A", 2 * TEN_OZ_LEVEL)
    other = herd.plan("One", group(10))
    page = shown()
    _, younger, older = changes(page).split("\n")
    assert younger == "Calf barn, Younger, 9 calves: 9 to the line, as many as before, each to the new line"
    assert older.startswith("Calf barn, Older, 60 calves: weigh it")
    herd.print(PrintKind.WALL_CHART, new, plan_id=other.id)
    page.reload()
    assert "Older" in changes(page)
    herd.print(PrintKind.WALL_CHART, new, plan_id=page.plans.itemData(0))
    page.reload()
    assert not changes(page)  # the plan made since has no chart to be printed anew


def test_changes_go_once_every_chart_is_printed_anew(shown: Callable[[], TablesPage], herd: Herd) -> None:
    old = herd.sign("25-1103C", TEN_OZ_LEVEL)
    plan = herd.plan("Morning milk", group(10))
    herd.print(PrintKind.WALL_CHART, old, plan_id=plan.id)
    new = herd.sign("25-1204A", 2 * TEN_OZ_LEVEL)
    page = shown()
    assert "chart no. 1" in changes(page)
    herd.print(PrintKind.WALL_CHART, new, plan_id=plan.id)
    page.reload()
    assert not changes(page)


def test_a_batch_that_would_run_over_is_split_and_says_by_how_much(shown: Callable[[], TablesPage], herd: Herd) -> None:
    """5 gal of water with 100 oz of powder runs over a 5-gallon pail (common practice, no source)."""
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    pail = herd.vessel("Pail", 5.0)
    herd.plan("Pails", group(10), vessel_id=pail.id, count_from=7, count_to=10)
    page = shown()
    assert today(page) == ("2 × 2 gal 2 qt", "2 × 50.0 oz", "2 × 5 to the line")
    assert page.view.today.rows[0].water.note.text().startswith("2 equal batches: a single one would run over by ")
    assert page.view.today.rows[0].scoops.accessibleName() == "Scoopfuls, 2 batches: 2 × 5 to the line"
    assert "2 batches of 5 to the line" in page.view.table.batches.data(
        page.view.table.batches.index(3, 0), Qt.ItemDataRole.ToolTipRole
    )
    assert cells(page, "8")[Column.BATCHES] == "1"
    page.view.today.rows[0].calves.setText("8")
    page.view.today.rows[0].calves.textEdited.emit("8")
    assert page.view.today.rows[0].scoops.accessibleName() == "Scoopfuls: 8 to the line"


def test_groups_of_one_rate_have_a_table_together(shown: Callable[[], TablesPage], herd: Herd) -> None:
    herd.plan("Morning milk", group(12, "Young"), group(23, "Old"), count_from=0, count_to=0)
    page = shown()
    names = [page.view.tabs.tabText(place) for place in range(page.view.tabs.count())]
    assert names == ["Young", "Old", "All together"]
    page.view.tabs.setCurrentIndex(2)
    assert cells(page, "35")[Column.WATER] == "17 gal 2 qt"
    assert today(page, 1)[0] == "11 gal 2 qt"


def test_groups_of_different_rates_have_none(shown: Callable[[], TablesPage], herd: Herd) -> None:
    weak = replace(TEN_ON_TWO, powder_mass_g=8 * OZ_G)
    herd.plan("Morning milk", group(12, "Young", weak), group(23, "Old"))
    page = shown()
    assert page.view.tabs.count() == 2
    assert today(page)[1] == "6 lb"


def test_the_basis_is_named_and_the_osmolality_is_an_estimate(shown: Callable[[], TablesPage], herd: Herd) -> None:
    """10 oz on 2 qt of water is about 13 % solids (common practice, no source)."""
    herd.plan("Morning milk", group(109, means=VolumeMeans.FINISHED_MIX))
    page = shown()
    words = page.view.words.text()
    assert "2 qt of finished mix for each calf; 9.0 oz of powder per calf; 10.0 oz of powder on 2 qt of water" in words
    assert "13.1 % solids as mixed" in words
    assert "an estimate" in words


def test_metric_by_the_farms_switch(shown: Callable[[], TablesPage], herd: Herd) -> None:
    herd.plan("Morning milk", replace(group(100), volume_ml=2000.0))
    page = shown()
    page.desk.attempt(lambda: herd.records.keep(replace(herd.farm, units=UnitSystem.METRIC)))
    assert today(page)[0] == "200.0 L"


def test_the_osmolality_is_told_once(shown: Callable[[], TablesPage], herd: Herd) -> None:
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.plan("Milk", group(9, rate=replace(TEN_ON_TWO, powder_mass_g=13 * OZ_G)))
    herd.plan("Night", group(9, rate=replace(TEN_ON_TWO, powder_mass_g=8 * OZ_G)))
    page = shown()
    for name, cautioned in (("Milk", True), ("Night", False)):
        page.plans.setCurrentText(name)
        page.plans.activated.emit(page.plans.currentIndex())
        told = (page.view.words.text(), page.view.strength.text() if page.view.strength.isVisible() else "")
        assert ["smolality" in text for text in told] == [not cautioned, cautioned], name


def test_scalding_water_brings_a_caution(shown: Callable[[], TablesPage], herd: Herd) -> None:
    plan = herd.plan(water_temperature_c=(120 - 32) / 1.8)
    page = shown()
    assert "scald" in page.view.scald.text()
    assert page.view.scald.isVisible()
    page.desk.attempt(lambda: herd.records.keep(replace(plan, water_temperature_c=43.0)))
    assert not page.view.scald.isVisible()


def test_a_plan_of_the_impossible_says_so(shown: Callable[[], TablesPage], herd: Herd) -> None:
    herd.plan("Odd", group(5, rate=replace(TEN_ON_TWO, volume_ml=0.0)))
    page = shown()
    assert page.view.trouble.isVisible()
    assert "water" in page.view.trouble.text()


def test_plans_are_chosen_from_the_list_and_a_new_one_begun(
    shown: Callable[[], TablesPage], herd: Herd, qtbot: QtBot
) -> None:
    herd.plan("Morning milk")
    night = herd.plan("Night milk", group(40))
    page = shown()
    qtbot.keyClick(page.plans, Qt.Key.Key_Down)
    assert page.view.today.rows[0].calves.text() == "40"
    assert page.plans.currentData() == night.id
    page.new.click()
    assert page.form.isVisible()


def test_an_empty_store_offers_the_first_plan(shown: Callable[[], TablesPage]) -> None:
    page = shown()
    assert not page.view.isVisible()
    page.open("new")
    assert page.form.isVisible()


def test_keys_are_unique_and_every_field_has_a_name(shown: Callable[[], TablesPage], herd: Herd) -> None:
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.sign("25-1204A", 2 * TEN_OZ_LEVEL)
    herd.plan("Morning milk", group(12, "Young"), group(23, "Old"))
    page = shown()
    taken = [*mnemonics(page), *RAIL]
    assert len(taken) == len(set(taken))
    assert not nameless(page)


@pytest.mark.parametrize("lots", [0, 1])
def test_the_model_keeps_its_promises(
    shown: Callable[[], TablesPage], herd: Herd, qtmodeltester: ModelTester, lots: int
) -> None:
    for number in range(lots):
        herd.sign(f"lot {number}", TEN_OZ_LEVEL)
    herd.plan()
    page = shown()
    model: BatchModel = page.view.table.batches
    assert model.rowCount() == 12
    qtmodeltester.check(model)


def test_typing_emits_changes_without_a_reset(shown: Callable[[], TablesPage], herd: Herd, qtbot: QtBot) -> None:
    herd.plan("Morning milk", group(109), counts=(108, 110))
    page = shown()
    with qtbot.assertNotEmitted(page.view.table.batches.modelReset):
        qtbot.keyClick(page.view.today.rows[0].calves, Qt.Key.Key_Up)
    model = page.view.table.batches
    assert model.data(model.index(model.today_row or 0, 0)) == "110"


def test_calves_fed_by_finished_mix_get_less_water(shown: Callable[[], TablesPage], herd: Herd) -> None:
    """Powder takes room: 2 qt of finished mix hold less than 2 qt of water."""
    herd.plan("Morning milk", group(100, means=VolumeMeans.FINISHED_MIX))
    page = shown()
    line = page.view.today_line()
    assert line is not None
    assert line.batch.mix.volume_ml == pytest.approx(200 * QT_ML, rel=0.002)
    assert line.batch.mix.water_ml < 190 * QT_ML


def test_a_count_typed_survives_what_another_computer_keeps(
    shown: Callable[[], TablesPage], herd: Herd, qtbot: QtBot
) -> None:
    plan = herd.plan("Morning milk", group(109))
    page = shown()
    field = page.view.today.rows[0].calves
    qtbot.keyClick(field, Qt.Key.Key_Up)
    herd.records.keep(replace(plan, name="Early milk"))
    page.reload()
    assert field.text() == "110"
    qtbot.keyClick(field, Qt.Key.Key_Return)
    kept = herd.records.find(Plan, plan.id)
    assert (kept.name, kept.groups[0].calves) == ("Early milk", 110)


def test_a_label_that_cannot_be_is_told_in_place_of_figures(shown: Callable[[], TablesPage], herd: Herd) -> None:
    signed = herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.plan()
    lot = herd.lot_of(signed)
    herd.records.keep(replace(lot, composition=Composition(protein_pct=60.0, fat_pct=60.0)))
    page = shown()
    assert "100 %" in page.view.trouble.text()
    assert page.view.trouble.isVisible()
    assert not page.view.today.isVisible()


def test_labels_of_a_lot_come_up_by_its_address(shown: Callable[[], TablesPage], herd: Herd) -> None:
    first = herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.sign("25-1204A", TEN_OZ_LEVEL)
    page = shown()
    page.open(f"label:{first.lot_id}")
    assert "25-1103C" in page.paper.heading.text()
    assert page.paper.choice.labels.isChecked()
    page.paper.back.click()
    assert not page.paper.isVisible()


def test_the_table_by_volume_goes_up_to_what_the_vessel_holds(shown: Callable[[], TablesPage], herd: Herd) -> None:
    """5 qt of water take 25 oz and serve two calves and a half; typed ends and steps make other rows."""
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.plan("Pails", group(10), vessel_id=herd.vessel("Pail", 5.0).id, count_from=7, count_to=10)
    page = shown()
    page.view.rows_by.setCurrentIndex(1)
    volumes = page.view.volumes
    assert volumes.isVisible()
    assert not page.view.table.isVisible()
    for field, text in zip((volumes.least, volumes.most, volumes.step), ("1 gal", "10 qt", "5 qt"), strict=True):
        field.line.setText(text)
        field.line.textEdited.emit(text)
    model = volumes.model
    rows = [[model.data(model.index(r, c)) for c in VolumeColumn] for r in range(model.rowCount())]
    assert [row[:2] for row in rows] == [["1 gal 1 qt", "25.0 oz"], ["2 gal 2 qt", "50.0 oz"]]
    assert [row[VolumeColumn.CALVES] for row in rows] == ["2 calves", "5 calves"]
    assert [row[VolumeColumn.SCOOPFULS] for row in rows] == ["2 1/2 to the line", "5 to the line"]
    volumes.step.line.setText("5 gal")
    volumes.step.line.textEdited.emit("5 gal")
    assert volumes.trouble.isVisible()
    assert model.rowCount() == 0
    volumes.least.line.setText("")
    volumes.step.line.setText("")
    volumes.most.line.setText("")
    volumes.most.line.textEdited.emit("")
    assert 10 <= model.rowCount() <= 40
    assert nameless(page) == []


def test_who_comes_back_by_the_side_bar_finds_the_table(shown: Callable[[], TablesPage], herd: Herd) -> None:
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.plan()
    page = shown()
    page.print.click()
    assert not page.view.isVisibleTo(page)
    assert page.leave()
    assert page.view.isVisibleTo(page)


def test_many_scoopfuls_to_the_line_keep_their_percent_and_the_reason_to_weigh_stands_once_beneath(
    shown: Callable[[], TablesPage], herd: Herd
) -> None:
    herd.sign("25-1103C", 1.04 * TEN_OZ_LEVEL)
    herd.plan(count_from=20, count_to=30)
    page = shown()
    for calves in ("24", "25", "30"):
        assert cells(page, calves)[Column.ERROR].endswith(" %")
    assert cells(page, "25")[Column.SCOOPFULS].startswith("weigh it, or ")
    assert page.view.many.isVisibleTo(page)
    assert page.view.many.text().startswith("More than 24 scoopfuls")


def test_powder_heavier_than_the_scale_weighs_is_told_in_portions(
    shown: Callable[[], TablesPage], herd: Herd, qtbot: QtBot
) -> None:
    """5 kg with a fifth left to the pail: 4 kg at once. 24 calves take 15 lb, 6804 g, so two portions of 7 lb 8 oz."""
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.plan("Milk", group(24), count_from=10, count_to=30, counts=())
    page = shown()
    note = page.view.today.rows[0].powder.note
    assert note.text() == "weigh it as 2\u00a0×\u00a07\u00a0lb\u00a08.0\u00a0oz"
    assert note.alignment() & Qt.AlignmentFlag.AlignTop
    assert page.view.unweighed.isVisibleTo(page)
    assert page.view.unweighed.text().startswith("Powder heavier than 8 lb 13.1 oz: weigh it in portions.")
    assert page.view.unweighed.text().endswith("The scale weighs 11 lb 0.4 oz, 35.3 oz of it for the pail.")
    model = page.view.table.batches
    tips = [model.data(model.index(row, Column.POWDER), Qt.ItemDataRole.ToolTipRole) for row in range(model.rowCount())]
    assert ["weigh " in tip for tip in tips] == [calves * 10 * OZ_G > 4000 for calves in range(10, 31)]
    page.view.today.rows[0].calves.selectAll()
    qtbot.keyClicks(page.view.today.rows[0].calves, "10")
    assert page.view.today.rows[0].powder.note.text() == ""


def test_a_larger_scale_of_the_farm_weighs_at_once_what_the_one_of_the_weigh_in_does_not(
    shown: Callable[[], TablesPage], herd: Herd
) -> None:
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.plan("Milk", group(24), count_from=10, count_to=30, counts=())
    herd.records.keep(replace(herd.scale, id="hanging", name="Hanging scale", capacity_g=50_000.0, revision=""))
    page = shown()
    assert page.view.unweighed.isHidden()
    assert page.view.today.rows[0].powder.note.text() == ""


def test_a_vessel_that_makes_several_batches_tells_the_portions_of_each(
    shown: Callable[[], TablesPage], herd: Herd
) -> None:
    """66 gal filled to nine tenths, 59.4 gal, hold 107 calves of 0.553 gal: 109 calves are two batches of 34 lb 1 oz,
    15.45 kg each, and each four portions of 8 lb 8.3 oz, 3862.5 g to the gram above.
    """
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.plan(vessel_id=herd.vessel().id)
    told = shown().view.today.rows[0].powder.note.text().replace("\u00a0", " ")
    assert told == "weigh each batch as 4 × 8 lb 8.3 oz"


def test_a_table_of_few_scoopfuls_gives_no_reason_to_weigh(shown: Callable[[], TablesPage], herd: Herd) -> None:
    herd.sign("25-1103C", 1.04 * TEN_OZ_LEVEL)
    herd.plan("Milk", group(8), count_from=1, count_to=20, counts=())
    page = shown()
    assert cells(page, "20")[Column.SCOOPFULS] == "20 to the line"
    assert page.view.many.isHidden()


def test_the_side_bar_leads_from_a_print_back_to_the_tables(shown: Callable[[], TablesPage], herd: Herd) -> None:
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.plan("Morning milk", group(10))
    page = shown()
    page.print.click()
    assert page.paper.isVisibleTo(page)
    page.open("")  # as the side bar does for the page in hand
    assert not page.paper.isVisibleTo(page)
    assert page.view.isVisibleTo(page)


@pytest.mark.parametrize("units", list(UnitSystem))
def test_the_table_of_two_groups_has_room_at_the_usual_size(
    shown: Callable[[], TablesPage], herd: Herd, units: UnitSystem
) -> None:
    herd.records.keep(replace(herd.farm, units=units))
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    cart = herd.vessel("Mixing cart", 12.0)
    herd.plan("Milk", group(73, "hutches"), group(36, "pens"), vessel_id=cart.id)
    page = shown()
    page.resize(1280 - RAIL_PX, 800)
    QApplication.processEvents()
    table = page.view.table
    below = table.viewport().mapTo(page, QPoint(0, table.viewport().height())).y()
    assert below <= page.height()  # nothing of it has to be scrolled to
    assert table.viewport().height() >= 6 * table.verticalHeader().defaultSectionSize()
    for row in page.view.today.rows:  # what is told beneath today's figures takes two lines
        assert row.scoops.note.height() <= 2 * row.scoops.note.fontMetrics().lineSpacing() + 1


@pytest.mark.parametrize("vessel", [True, False])
def test_columns_are_as_wide_as_their_words_and_none_stands_apart(
    shown: Callable[[], TablesPage], herd: Herd, vessel: bool
) -> None:
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.plan(vessel_id=herd.vessel("Cart tank", 66.0).id if vessel else None)
    page = shown()
    page.resize(1280 - RAIL_PX, 800)
    QApplication.processEvents()
    as_wide_as_needed(page.view.table, Column.BATCHES if vessel else Column.ERROR)
    page.view.rows_by.setCurrentIndex(1)
    QApplication.processEvents()
    as_wide_as_needed(page.view.volumes.table, VolumeColumn.CALVES)


def as_wide_as_needed(table: RoomyTable, last: int) -> None:
    """What is left goes to all columns alike, or behind the last words."""
    header = table.horizontalHeader()
    columns = [column for column in range(header.count()) if not table.isColumnHidden(column)]
    wanted = [max(table.sizeHintForColumn(column), header.sectionSizeHint(column)) for column in columns]
    spare = [header.sectionSize(column) - px for column, px in zip(columns, wanted, strict=True)]
    assert columns[-1] == last
    assert min(spare) >= 0
    assert max(spare[:-1]) - min(spare[:-1]) <= 1
    assert 0 <= table.viewport().width() - header.length() < len(columns)


def test_why_a_batch_is_mixed_in_several_is_read_whole_on_the_smallest_window(
    shown: Callable[[], TablesPage], herd: Herd
) -> None:
    """Scoopfuls level and to the line, of two batches: as much as a row says of one scoop."""
    herd.sign("25-1103C", TEN_OZ_LEVEL * 1.6)
    herd.plan("Milk", group(24), vessel_id=herd.vessel("Mixing tub", 12.0).id, count_from=20, count_to=28, counts=())
    page = shown()
    page.resize(LEAST_WHOLE.width() - RAIL_PX, LEAST_WHOLE.height())
    QApplication.processEvents()
    assert cells(page, "24")[Column.BATCHES] == "2"
    table = page.view.table
    assert table.columnWidth(Column.BATCHES) >= table.sizeHintForColumn(Column.BATCHES)


def test_a_plan_without_calves_says_what_to_do_in_the_farms_units(shown: Callable[[], TablesPage], herd: Herd) -> None:
    herd.records.keep(replace(herd.farm, units=UnitSystem.METRIC))
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.plan("Milk", group(0), count_from=0, count_to=0, counts=())
    page = shown()
    assert page.view.today.rows[0].water.note.text() == "Type how many calves there are today."
    assert "Water at 43 °C (110 °F)." in page.view.temperature.text()
    page.view.today.rows[0].calves.setText("24")
    page.view.today.rows[0].calves.counted.emit(24)
    assert page.view.today.rows[0].water.note.text() == ""
    assert cells(page, "24")[Column.CALVES] == "24"


def test_a_count_without_error_is_on_target(shown: Callable[[], TablesPage], herd: Herd) -> None:
    """Ten ounces a scoop and calf: 0.0 % over is no way to say so."""
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.plan("Milk", group(10))
    assert shown().view.today.rows[0].scoops.note.text().startswith("within 0.05 % of the weight (± ")


def test_a_count_that_is_off_says_off_what(shown: Callable[[], TablesPage], herd: Herd) -> None:
    """It is the count that is short of the batch's weight beside it, and not the mix or a feeding. What that makes of
    the solids is told beside those wanted: 0.131 / (0.131 + 0.869 · 1.012) is 13.0 %."""
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    for more, words, solids in (
        (1.012, "1.2 % short of the weight (± ", "Solids 13.0 % ("),
        (0.988, "1.2 % over the weight (± ", "Solids 13.3 % ("),
    ):
        herd.plan("Milk", replace(group(10), volume_ml=more * group(10).volume_ml))
        page = shown()
        page.plans.setCurrentIndex(page.plans.count() - 1)
        page.plans.activated.emit(page.plans.count() - 1)
        told = page.view.today.rows[0].scoops.note.text()
        assert words in told
        assert solids in told
        assert told.endswith("), wanted 13.1 %.")


def test_a_new_plan_opens_at_its_top_after_another_was_scrolled_down(
    shown: Callable[[], TablesPage], herd: Herd, qtbot: QtBot
) -> None:
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.plan("Calf barn", group(9, "Younger"), group(6, "Older"), counts=(24,))
    page = shown()
    page.change.click()
    bar = page.form.findChild(QScrollArea).verticalScrollBar()
    qtbot.waitUntil(lambda: bar.maximum() > 0)
    page.form.keep_button.setFocus()
    bar.setValue(bar.maximum())
    page.form.back.click()
    page.new.click()
    QApplication.processEvents()
    assert page.form.name.line.hasFocus()
    assert bar.value() == 0
    assert not page.form.name.line.visibleRegion().isEmpty()


def test_called_anew_the_tables_open_at_their_top(shown: Callable[[], TablesPage], herd: Herd, qtbot: QtBot) -> None:
    """However far down one was when one left: the lot that the table is of is told at the top."""
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.plan()
    page = shown()
    page.view.table.setFocus()
    (area,) = page.view.findChildren(QScrollArea)
    inner, bar = area.widget(), area.verticalScrollBar()
    inner.setMinimumHeight(2000)
    qtbot.waitUntil(lambda: bar.maximum() > 0)
    bar.setValue(bar.maximum())
    page.open("")
    assert (bar.value(), page.plans.hasFocus()) == (0, True)


def test_a_lot_whose_scoops_are_all_retired_is_not_called_unsigned(herd: Herd, shown: Callable[[], TablesPage]) -> None:
    herd.plan("Morning milk", group(10))
    page = shown()
    (row,) = page.view.today.rows
    assert row.scoops.note.text() == "no lot signed off"
    herd.sign("A", 0.5)
    herd.records.keep(replace(herd.red, retired_on=at_noon().date()))
    page.reload()
    assert row.scoops.note.text() == "no scoop in use is weighed in for this lot"


def test_a_plan_is_opened_for_change_and_what_is_typed_of_another_stays(
    qtbot: QtBot, herd: Herd, shown: Callable[[], TablesPage]
) -> None:
    first, second = herd.plan("Morning milk"), herd.plan("Evening milk")
    page = shown()
    page.open(f"change:{second.id}")
    assert page.form.isVisibleTo(page)
    assert page.form.plan == second
    qtbot.keyClicks(page.form.name.line, "Night milk")
    page.open(first.id)
    page.open(f"change:{first.id}")
    assert page.form.isVisibleTo(page)
    assert (page.form.plan, page.form.name.text()) == (second, "Night milk")


def test_a_plan_whose_own_scoop_is_retired_says_so_beside_another_in_use(
    herd: Herd, shown: Callable[[], TablesPage]
) -> None:
    signed = herd.sign("A", 0.5)
    blue = herd.scoop("Blue scoop", Cylinder(diameter_mm=80, height_mm=92))
    herd.sign("A", 0.5, blue, lot=herd.lot_of(signed))
    herd.plan("Morning milk", group(10), scoopfuls=Scoopfuls(rule=ScoopRule.ONE_KIND, scoop_id=herd.red.id))
    page = shown()
    (row,) = page.view.today.rows
    assert "retired" not in row.scoops.note.text()
    herd.records.keep(replace(herd.red, retired_on=at_noon().date()))
    page.reload()
    assert row.scoops.note.text() == "the plan's scoop is retired, or not weighed in for this lot"


def test_the_form_says_of_a_plans_vessel_that_it_is_retired(herd: Herd, shown: Callable[[], TablesPage]) -> None:
    tank, pail = herd.vessel("Tank"), herd.vessel("Pail")
    plan = herd.plan("Morning milk", vessel_id=tank.id)
    for vessel in (tank, pail):
        herd.records.keep(replace(vessel, retired_on=at_noon().date()))
    page = shown()
    page.open(f"change:{plan.id}")
    box = page.form.vessel_choice.box
    assert [box.itemText(at) for at in range(box.count())] == ["None: no limit", "Tank (retired)"]
    assert page.form.vessel_choice.chosen() == tank.id
