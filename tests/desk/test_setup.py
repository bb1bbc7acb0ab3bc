"""Set-up typed by keyboard: adding, correcting, retiring; units switched in the middle."""

from __future__ import annotations

from dataclasses import replace
from typing import cast

import pytest
from answers import Answers, at_noon
from herd import Herd
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.forms.plan_form import PlanForm
from calibrator.desk.forms.scale_form import ScaleForm
from calibrator.desk.forms.scoop_form import ScoopForm
from calibrator.desk.mix.instrument_form import InstrumentForm
from calibrator.desk.pages.setup import SetupPage
from calibrator.desk.pages.tables import TablesPage
from calibrator.desk.widgets.shape_choice import ShapeKind
from calibrator.desk.window import Window
from calibrator.model import (
    Cylinder,
    Farm,
    Instrument,
    InstrumentKind,
    Plan,
    Poured,
    Scale,
    Scoop,
    TaperedCup,
    UnitSystem,
    Vessel,
)
from calibrator.records import Records


@pytest.fixture
def page(qtbot: QtBot, desk: Desk) -> SetupPage:
    made = SetupPage(desk)
    qtbot.addWidget(made)
    desk.changed.connect(made.reload)
    made.resize(1024, 700)
    made.reload()
    made.show()
    return made


def type_in(qtbot: QtBot, line: QLineEdit, text: str) -> None:
    line.setFocus()
    line.selectAll()
    qtbot.keyClicks(line, text)


def test_a_scale_is_corrected_and_both_tellings_are_told(qtbot: QtBot, page: SetupPage, desk: Desk) -> None:
    page.show_tab(Scale)
    form = page.scales.form
    assert form.thing is not None
    assert not page.scales.keep_button.isEnabled()
    type_in(qtbot, form.capacity.line, "22 lb")
    assert page.pending() == "Kitchen scale"
    qtbot.mouseClick(page.scales.keep_button, Qt.MouseButton.LeftButton)
    (scale,) = desk.records.every(Scale)
    # 22 lb by the exact pound of NIST SP 811, 453.59237 g.
    assert scale.capacity_g == pytest.approx(22 * 453.59237)
    assert scale.capacity_typed == "22 lb"
    assert scale.resolution_g == pytest.approx(2.8349523125)
    assert len(desk.records.history(Scale, scale.id)) == 2
    assert page.pending() == ""


def test_a_new_scale_needs_its_figures_and_the_typed_text_stays(qtbot: QtBot, page: SetupPage, desk: Desk) -> None:
    page.show_tab(Scale)
    tab = page.scales
    tab.start_new()
    type_in(qtbot, tab.form.name.line, "Barn scale")
    type_in(qtbot, tab.form.step.line, "1 qt")
    tab.keep()
    assert len(desk.records.every(Scale)) == 1
    assert "qt" in tab.form.step.message
    assert tab.form.step.text() == "1 qt"
    assert tab.form.capacity.message
    page.reload()
    assert tab.form.step.text() == "1 qt"
    type_in(qtbot, tab.form.step.line, "1 g")
    type_in(qtbot, tab.form.capacity.line, "1 g")
    tab.keep()
    assert len(desk.records.every(Scale)) == 1
    type_in(qtbot, tab.form.capacity.line, "5 kg")
    tab.keep()
    assert [scale.name for scale in desk.records.every(Scale)] == ["Kitchen scale", "Barn scale"]


def test_the_cursor_goes_to_the_first_field_that_is_to_be_mended(qtbot: QtBot, page: SetupPage) -> None:
    page.show()
    page.show_tab(Scale)
    tab = page.scales
    tab.start_new()
    type_in(qtbot, tab.form.capacity.line, "5")
    type_in(qtbot, tab.form.name.line, "Barn scale")
    tab.keep()
    assert page.window().focusWidget() is tab.form.step.line  # left empty, and read before the other
    type_in(qtbot, tab.form.step.line, "1 g")
    tab.form.name.line.setFocus()
    tab.keep()
    assert page.window().focusWidget() is tab.form.capacity.line
    assert tab.form.capacity.line.selectedText() == "5"


def test_a_missing_unit_is_asked_for_with_the_farms_own_first(qtbot: QtBot, page: SetupPage, desk: Desk) -> None:
    page.show_tab(Scale)
    page.scales.start_new()
    field = page.scales.form.capacity
    type_in(qtbot, field.line, "5")
    assert not field.understood()
    assert field.box.message == "Its unit is missing: write 5 lb or 5 kg."
    farm = desk.farm
    assert farm is not None
    desk.keep(replace(farm, units=UnitSystem.METRIC))
    type_in(qtbot, field.line, "5")
    assert not field.understood()
    assert field.box.message == "Its unit is missing: write 5 kg or 5 lb."


def test_a_kitchen_scale_up_to_110_lb_is_asked_about_once(qtbot: QtBot, page: SetupPage, desk: Desk) -> None:
    page.show_tab(Scale)
    tab = page.scales
    tab.start_new()
    form = tab.form
    assert isinstance(form, ScaleForm)
    type_in(qtbot, form.name.line, "Barn scale")
    type_in(qtbot, form.step.line, "0.1 oz")
    type_in(qtbot, form.capacity.line, "110 lb")
    tab.keep()
    assert len(desk.records.every(Scale)) == 1
    assert form.question.words == "A scale up to 110 lb that shows every 0.1 oz is rare. Are both figures right?"
    type_in(qtbot, form.capacity.line, "11 lb")
    assert form.question.isHidden()
    type_in(qtbot, form.capacity.line, "110 lb")
    tab.keep()  # the same once more is a yes
    assert [scale.capacity_typed for scale in desk.records.every(Scale)][1:] == ["110 lb"]


@pytest.mark.parametrize(
    ("most", "asked"),
    [
        ("11 oz", "A scale up to 11 oz hardly weighs a full scoop; 11 lb is usual. Is 11 oz right?"),
        ("500 g", "A scale up to 500 g hardly weighs a full scoop. Is 500 g right?"),
        ("1 kg", ""),
    ],
)
def test_a_scale_too_small_for_a_scoop_is_asked_about_once(
    qtbot: QtBot, page: SetupPage, desk: Desk, most: str, asked: str
) -> None:
    page.show_tab(Scale)
    tab = page.scales
    tab.start_new()
    form = tab.form
    for field, text in ((form.name, "Little scale"), (form.step, "0.1 oz"), (form.capacity, most)):
        type_in(qtbot, field.line, text)
    tab.keep()
    assert form.question.words == asked
    if asked:
        tab.keep()
    assert [scale.capacity_typed for scale in desk.records.every(Scale)][1:] == [most]


def test_put_back_lets_go_of_what_was_typed(qtbot: QtBot, page: SetupPage) -> None:
    page.show_tab(Scale)
    tab = page.scales
    type_in(qtbot, tab.form.name.line, "Nonsense")
    assert not tab.list.isEnabled()
    tab.put_back()
    assert tab.form.name.text() == "Kitchen scale"
    assert tab.list.isEnabled()


def test_a_retired_scoop_can_be_shown_and_taken_back(page: SetupPage, desk: Desk) -> None:
    page.show_tab(Scoop)
    tab = page.scoops
    tab.retire_button.click()
    (scoop,) = desk.records.every(Scoop)
    assert scoop.retired_on == desk.clock().date()
    assert tab.list.count() == 0
    assert tab.form.thing is None
    tab.show_retired.setChecked(True)
    assert tab.list.count() == 1
    tab.open(scoop.id)
    tab.retire_button.click()
    assert desk.records.find(Scoop, scoop.id).retired_on is None


def test_a_tapered_scoop_by_its_dimensions(qtbot: QtBot, page: SetupPage, desk: Desk) -> None:
    page.show_tab(Scoop)
    tab = page.scoops
    tab.start_new()
    form = tab.form
    type_in(qtbot, form.name.line, "Blue")
    form.shapes.buttons[ShapeKind.TAPERED].click()
    assert not form.diameter.isVisible()
    for field, text in ((form.rim, "4 in"), (form.floor, "3 in"), (form.inner_height, "4 in")):
        type_in(qtbot, field.line, text)
    tab.keep()
    blue = desk.records.every(Scoop)[-1]
    assert isinstance(blue.shape, TaperedCup)
    # A frustum holds π·h/12·(D² + D·d + d²): 4 in high, 4 and 3 in wide, 38.75 in³ of 16.387064 mL each.
    assert blue.volume_ml == pytest.approx(3.141592653589793 * 4 / 12 * 37 * 16.387064, rel=1e-9)
    assert not blue.volume_from_water


def test_water_counts_more_than_dimensions_and_a_large_difference_is_said(
    qtbot: QtBot, page: SetupPage, desk: Desk
) -> None:
    page.show_tab(Scoop)
    tab = page.scoops
    form = tab.form
    for field, text in zip(form.waters, ("640 g", "641 g", "640.5 g"), strict=True):
        type_in(qtbot, field.line, text)
    assert "Dimensions and water differ by" in form._difference.text()
    assert not form._difference.isHidden()
    tab.keep()
    (red,) = desk.records.every(Scoop)
    assert red.volume_from_water
    # Water at 20 °C takes 1.0029 mL per gram weighed in air: ISO 8655-6:2022, table A.1, 101.3 kPa.
    assert red.volume_ml == pytest.approx(640.5 * 1.0029, rel=2e-4)
    assert isinstance(red.shape, Cylinder)
    # Correcting the name alone leaves the weighed volume as it is.
    type_in(qtbot, form.name.line, "Old red")
    tab.keep()
    assert desk.records.find(Scoop, red.id).volume_ml == pytest.approx(red.volume_ml, rel=1e-12)
    form.forget_water.setChecked(True)
    tab.keep()
    again = desk.records.find(Scoop, red.id)
    assert not again.volume_from_water
    assert again.volume_ml > red.volume_ml * 1.02


def test_a_poured_scoop_needs_steps_without_a_gap(qtbot: QtBot, page: SetupPage, desk: Desk) -> None:
    page.show_tab(Scoop)
    tab = page.scoops
    tab.start_new()
    form = tab.form
    type_in(qtbot, form.name.line, "Odd one")
    form.shapes.buttons[ShapeKind.POURED].click()
    rows = form.pourings
    for place, (mass, height) in enumerate((("100 g", "20 mm"), ("300 g", "45 mm"))):
        type_in(qtbot, rows.masses[place].line, mass)
        type_in(qtbot, rows.heights[place].line, height)
    tab.keep()
    assert len(desk.records.every(Scoop)) == 1
    assert "three" in rows._message.text()
    type_in(qtbot, rows.masses[2].line, "600 g")
    type_in(qtbot, rows.heights[2].line, "80 mm")
    tab.keep()
    odd = desk.records.every(Scoop)[-1]
    assert isinstance(odd.shape, Poured)
    assert odd.shape.heights_mm == (20, 45, 80)
    tab.open(odd.id)
    assert rows.measured.isChecked()


def test_a_vessel_is_added(qtbot: QtBot, page: SetupPage, desk: Desk) -> None:
    page.show_tab(Vessel)
    tab = page.vessels
    tab.start_new()
    type_in(qtbot, tab.form.name.line, "Pail")
    type_in(qtbot, tab.form.volume.line, "5 gal")
    tab.keep()
    (pail,) = desk.records.every(Vessel)
    assert pail.rim_volume_ml == pytest.approx(5 * 3785.411784)  # NIST Handbook 44, appendix C
    assert pail.usable_share == pytest.approx(0.9)


def test_units_change_everywhere_and_a_half_typed_number_keeps_its_meaning(
    qtbot: QtBot, page: SetupPage, desk: Desk
) -> None:
    page.show_tab(Scoop)
    form = page.scoops.form
    type_in(qtbot, form.inner_height.line, "3.5")
    page.tabs.setCurrentWidget(page.farm)
    page.farm.metric_units.click()
    assert desk.system is UnitSystem.METRIC
    assert form.inner_height.text() == "3.5 in"
    assert page.farm.water_l.isVisible()
    assert not page.farm.water_qt.isVisible()
    page.show_tab(Scoop)
    assert "mL" in page.scoops.list.item(0).text()
    assert page.pending() == "Red scoop"
    page.farm.farm_units.click()
    assert desk.system is UnitSystem.FARM


def test_switching_units_is_not_typing(page: SetupPage) -> None:
    for kind in (Scoop, Scale, Vessel):
        page.show_tab(kind)
    page.farm.metric_units.click()
    assert page.pending() == ""
    page.farm.farm_units.click()
    assert page.pending() == ""


def test_settings_are_kept_as_soon_as_they_are_left(qtbot: QtBot, page: SetupPage, desk: Desk) -> None:
    assert page.farm.tolerance.text() == "2 %"
    type_in(qtbot, page.farm.tolerance.line, "3")
    qtbot.keyClick(page.farm.tolerance.line, Qt.Key.Key_Return)
    (farm,) = desk.records.every(Farm)
    assert farm.tolerance_share == pytest.approx(0.03)
    type_in(qtbot, page.farm.tolerance.line, "300")
    qtbot.keyClick(page.farm.tolerance.line, Qt.Key.Key_Return)
    page.reload()
    assert page.farm.tolerance.text() == "300"
    assert desk.records.every(Farm)[0].tolerance_share == pytest.approx(0.03)
    type_in(qtbot, page.farm.name.line, "Far Hill")
    qtbot.keyClick(page.farm.name.line, Qt.Key.Key_Return)
    assert desk.records.every(Farm)[0].name == "Far Hill"


def test_another_computers_correction_is_not_written_over(
    qtbot: QtBot, page: SetupPage, desk: Desk, records: Records, answers: object
) -> None:
    page.show_tab(Scale)
    tab = page.scales
    type_in(qtbot, tab.form.name.line, "Mine")
    (scale,) = records.every(Scale)
    records.keep(replace(scale, name="Theirs"))
    tab.keep()
    assert answers.told  # type: ignore[attr-defined]
    assert records.every(Scale)[0].name == "Theirs"
    assert tab.form.name.text() == "Mine"


def test_a_retired_scoop_says_why_until_it_is_taken_back(page: SetupPage, desk: Desk, answers: Answers) -> None:
    page.show_tab(Scoop)
    tab = page.scoops
    answers.words = "lost in the bedding"
    tab.retire_button.click()
    (scoop,) = desk.records.every(Scoop)
    assert scoop.retired_why == "lost in the bedding"
    tab.show_retired.setChecked(True)
    assert "lost in the bedding" in tab.list.item(0).text()
    tab.open(scoop.id)
    tab.retire_button.click()
    assert desk.records.find(Scoop, scoop.id).retired_why == ""


def test_who_retires_a_scoop_is_told_of_the_lot_that_is_weighed_in_with_it(
    qtbot: QtBot, records: Records, answers: Answers
) -> None:
    herd = Herd(records)
    signed = herd.sign("B-2", 0.5)
    page = SetupPage(Desk(records, answers, clock=at_noon))
    qtbot.addWidget(page)
    page.show_tab(Scoop)
    page.scoops.open(herd.red.id)
    answers.words = ""  # thought better of it
    page.scoops.retire_button.click()
    assert answers.asked[-1].startswith("Red scoop is in use: lot B-2 is weighed in with it alone.")
    blue = herd.scoop("Blue scoop", Cylinder(diameter_mm=80, height_mm=92))
    page.scoops.retire_button.click()
    assert "alone" in answers.asked[-1]
    herd.sign("B-2", 0.5, blue, lot=herd.lot_of(signed))
    page.scoops.retire_button.click()
    assert answers.asked[-1].startswith("Red scoop is in use: lot B-2 is weighed in with it. Red scoop will no longer")


def test_who_retires_a_vessel_is_told_of_the_plans_that_mix_in_it(
    qtbot: QtBot, records: Records, answers: Answers
) -> None:
    herd = Herd(records)
    tank, pail = herd.vessel("Tank"), herd.vessel("Pail")
    for name, vessel in (("Milk", tank), ("Evening milk", tank), ("Sick pen", pail)):
        herd.plan(name, vessel_id=vessel.id)
    page = SetupPage(Desk(records, answers, clock=at_noon))
    qtbot.addWidget(page)
    page.show_tab(Vessel)
    page.vessels.open(tank.id)
    page.vessels.retire_button.click()
    assert answers.asked[-1].startswith(
        "Tank is in use. These plans mix in it and need another vessel then: Milk, Evening milk. Tank will no longer"
    )


def test_scoops_that_look_alike_ask_for_a_word_that_tells_them_apart(qtbot: QtBot, page: SetupPage, desk: Desk) -> None:
    page.show_tab(Scoop)
    tab = page.scoops
    (red,) = desk.records.every(Scoop)
    assert isinstance(red.shape, Cylinder)
    tab.start_new()
    form = tab.form
    assert isinstance(form, ScoopForm)
    type_in(qtbot, form.name.line, "Other scoop")
    for field, size in ((form.diameter, red.shape.diameter_mm), (form.inner_height, red.shape.height_mm + 1)):
        type_in(qtbot, field.line, f"{size} mm")
    assert red.name in form.told_by.message
    type_in(qtbot, form.told_by.line, "two rings of tape")
    assert red.name not in form.told_by.message
    form.replaces.setCurrentIndex(form.replaces.findData(red.id))
    tab.keep()
    other = desk.records.every(Scoop)[-1]
    assert (other.told_by, other.replaces_id) == ("two rings of tape", red.id)
    type_in(qtbot, form.name.line, "Renamed")
    tab.keep()
    assert desk.records.find(Scoop, other.id) == replace(
        other, name="Renamed", revision=tab.form.thing.revision if tab.form.thing else ""
    )


def test_enter_in_the_farms_name_keeps_it_and_goes_on(qtbot: QtBot, page: SetupPage, desk: Desk) -> None:
    line = page.farm.name.line
    line.setFocus()
    line.selectAll()
    qtbot.keyClicks(line, "Windy Hill")
    qtbot.keyClick(line, Qt.Key.Key_Return)
    assert desk.farm is not None
    assert desk.farm.name == "Windy Hill"
    assert not line.hasFocus()


def test_enter_goes_on_through_the_hot_water_and_the_cable(qtbot: QtBot, page: SetupPage) -> None:
    water = page.farm.hot_water
    water.tank.line.setFocus()
    for field in (water.hot, water.cold):
        qtbot.keyClick(page.window().focusWidget(), Qt.Key.Key_Return)
        assert field.line.hasFocus()
    page.tabs.setCurrentIndex(5)
    wire = page.wire
    wire.port.setFocus()
    for there in (wire.speed, wire.looks.line, wire.enters, wire.listen_button):
        qtbot.keyClick(page.window().focusWidget(), Qt.Key.Key_Return)
        assert page.window().focusWidget() is there


def test_a_currency_is_kept_and_an_emptied_one_comes_back(qtbot: QtBot, page: SetupPage, desk: Desk) -> None:
    line = page.farm.currency.line
    for typed in ("MXN", ""):
        line.setFocus()
        line.selectAll()
        qtbot.keyClick(line, Qt.Key.Key_Delete)
        qtbot.keyClicks(line, typed)
        qtbot.keyClick(line, Qt.Key.Key_Return)
        assert desk.farm is not None
        assert desk.farm.currency == line.text() == "MXN"


def test_another_thing_opens_at_its_top_with_the_cursor_in_its_first_field(
    qtbot: QtBot, page: SetupPage, desk: Desk
) -> None:
    page.show_tab(Scoop)
    tab = page.scoops
    bar = tab._area.verticalScrollBar()
    qtbot.waitUntil(lambda: bar.maximum() > 0)
    first, *_ = desk.records.every(Scoop)

    def left_at_its_end() -> None:
        bar.setValue(bar.maximum())
        assert bar.value() > 0

    for opened in (lambda: page.open("scoop"), lambda: page.open(first.id)):
        left_at_its_end()
        opened()
        assert bar.value() == 0
        qtbot.waitUntil(tab.form.name.line.hasFocus)
    left_at_its_end()
    qtbot.mouseClick(tab.add_button, Qt.MouseButton.LeftButton)
    assert bar.value() == 0
    left_at_its_end()
    tab.put_back()
    assert bar.value() == 0


def half_typed_plan(window: Window) -> PlanForm:
    window.show_page("tables", "new")
    form = cast(TablesPage, window.page("tables")).form
    QTest.keyClicks(form.name.line, "Milk")
    QTest.keyClicks(form.groups[0].calves, "24")
    form.groups[0].water.click()
    form.enter_vessel.click()
    return form


def test_a_half_typed_plan_leads_to_the_vessels_and_is_there_again_with_the_new_one(
    window: Window, desk: Desk, qtbot: QtBot
) -> None:
    form = half_typed_plan(window)
    page = cast(SetupPage, window.current_page)
    assert page.back.isVisible()
    type_in(qtbot, page.vessels.form.name.line, "Cart tank")
    type_in(qtbot, page.vessels.form.volume.line, "40 gal")
    page.vessels.keep()
    assert window.current_page.key == "tables"
    assert form.isVisible()
    assert (form.name.text(), form.groups[0].calves.count(), form.groups[0].water.isChecked()) == ("Milk", 24, True)
    (tank,) = desk.records.every(Vessel)
    assert form.vessel.currentData() == tank.id
    form.keep()
    (plan,) = desk.records.every(Plan)
    assert (plan.name, plan.vessel_id) == ("Milk", tank.id)


def test_the_way_back_to_the_plan_is_there_without_a_vessel_too_and_only_then(window: Window, qtbot: QtBot) -> None:
    form = half_typed_plan(window)
    page = cast(SetupPage, window.current_page)
    page.back.click()
    assert form.isVisible()
    assert (form.name.text(), form.vessel.currentData()) == ("Milk", "")
    window.show_page("setup")
    assert not page.back.isVisible()
    type_in(qtbot, page.vessels.form.name.line, "Cart tank")
    type_in(qtbot, page.vessels.form.volume.line, "40 gal")
    page.vessels.keep()
    assert window.current_page is page


def test_who_is_led_to_the_vessels_finds_what_was_typed_there(window: Window, qtbot: QtBot) -> None:
    window.show_page("setup", "vessel")
    page = cast(SetupPage, window.current_page)
    type_in(qtbot, page.vessels.form.name.line, "Cart tank")
    half_typed_plan(window)
    assert page.vessels.form.name.text() == "Cart tank"


def test_what_was_kept_is_named(qtbot: QtBot, page: SetupPage, desk: Desk) -> None:
    said: list[str] = []
    desk.said.connect(said.append)
    farm = page.farm
    for line, text in ((farm.name.line, "Wren {5} Farm"), (farm.tolerance.line, "3"), (farm.currency.line, "MXN")):
        type_in(qtbot, line, text)
        qtbot.keyClick(line, Qt.Key.Key_Return)
    farm.metric_units.click()
    farm.charts.click()
    farm.paper.activated.emit(farm.paper.currentIndex())  # chosen anew, nothing changed: nothing to say
    farm.languages.paper.setCurrentIndex(1)
    farm.languages.paper.activated.emit(1)
    page.show_tab(Scale)
    type_in(qtbot, page.scales.form.name.line, "Barn scale")
    page.scales.keep()
    assert said == [
        "Name of the farm kept: Wren {5} Farm",
        "Tolerance kept: 3 %",
        "Currency kept: MXN",
        "Units kept. Metric: g, kg, L, mm, °C",
        "Kept: Today asks for no wall chart.",
        "Language of the paper kept: Spanish",
        "Scale kept: Barn scale",
    ]


def test_an_instrument_is_looked_for_among_the_farms_things_and_entered_there(
    qtbot: QtBot, page: SetupPage, desk: Desk
) -> None:
    page.open("instrument")
    tab = page.instruments
    assert tab.isVisibleTo(page)
    assert page.help_title() == "Brix"
    form = tab.form
    assert isinstance(form, InstrumentForm)
    form.what.setCurrentIndex(form.what.findData(InstrumentKind.HYDROMETER))
    form.what.activated.emit(form.what.currentIndex())
    qtbot.keyClicks(form.name.line, "glass float")
    tab.keep()
    (kept,) = desk.records.every(Instrument)
    assert (kept.name, kept.kind) == ("glass float", InstrumentKind.HYDROMETER)
    assert tab.list.item(0).text() == "glass float\nhydrometer, never checked"


def test_each_tab_says_when_it_keeps(page: SetupPage) -> None:
    told = []
    for place in range(page.tabs.count()):
        page.tabs.setCurrentIndex(place)
        told.append(page.keeps.text())
    with_button = "Kept when you press Keep."
    assert page.scoops.keep_button.text().replace("&", "") == "Keep"
    assert page.wire.listen_button.text().replace("&", "") == "Keep and listen"
    assert told == [
        "Each setting is kept as soon as you leave it.",
        *4 * [with_button],
        "Kept when you press Keep and listen.",
        "",  # buttons for files, nothing to keep
    ]


def test_beside_the_hand_it_says_whether_what_was_typed_is_kept(qtbot: QtBot, page: SetupPage, desk: Desk) -> None:
    farm = page.farm
    type_in(qtbot, farm.tolerance.line, "3")
    assert farm.tolerance.message != "Kept."
    qtbot.keyClick(farm.tolerance.line, Qt.Key.Key_Return)
    assert farm.tolerance.message == "Kept."
    type_in(qtbot, farm.name.line, "Far Hill")
    qtbot.keyClick(farm.name.line, Qt.Key.Key_Return)
    assert (farm.name.message, farm.tolerance.message) == ("Kept.", "The most that a feeding may be off.")
    water = farm.hot_water
    for field, text in zip(water.fields, ("40 gal", "140 °F", "50 °F"), strict=True):
        assert desk.farm is not None
        assert desk.farm.hot_water is None
        type_in(qtbot, field.line, text)
        qtbot.keyClick(field.line, Qt.Key.Key_Return)
        last = field is water.cold
        assert water._state.text() == ("Kept." if last else "Not kept yet: the three go together.")
    page.show_tab(Scale)
    tab = page.scales
    assert tab._unkept.text() == ""
    type_in(qtbot, tab.form.name.line, "Barn scale")
    assert tab._unkept.text() == "Not kept yet"
    tab.keep()
    assert tab._unkept.text() == ""
