"""The first start by keyboard: step by step, back, half-way and again."""

from __future__ import annotations

from contextlib import ExitStack
from typing import Any

import pytest
from PySide6.QtCore import QLocale, QPoint, QProcess, Qt
from PySide6.QtWidgets import QApplication, QLineEdit, QPushButton
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.pages.welcome import WelcomePage
from calibrator.desk.standing import FirstStep
from calibrator.desk.widgets.scoop_drawing import MARGIN
from calibrator.desk.widgets.shape_choice import ShapeKind
from calibrator.model import Farm, Lot, PackageKind, Paper, Scale, Scoop, UnitSystem


def type_in(qtbot: QtBot, line: QLineEdit, text: str) -> None:
    line.setFocus()
    line.selectAll()
    qtbot.keyClicks(line, text)


def opened(qtbot: QtBot, desk: Desk) -> WelcomePage:
    page = WelcomePage(desk)
    qtbot.addWidget(page)
    desk.changed.connect(page.reload)
    page.resize(1024, 700)
    page.show()
    page.reload()
    page.open("")
    return page


@pytest.fixture
def page(qtbot: QtBot, empty_desk: Desk) -> WelcomePage:
    return opened(qtbot, empty_desk)


def add_farm(qtbot: QtBot, page: WelcomePage) -> None:
    type_in(qtbot, page.farm_step.name.line, "Windy Hollow")
    page.keep()


def add_scale(qtbot: QtBot, page: WelcomePage) -> None:
    type_in(qtbot, page.scale_form.step.line, "0.1 oz")
    type_in(qtbot, page.scale_form.capacity.line, "11 lb")
    page.keep()


def add_scoop(qtbot: QtBot, page: WelcomePage) -> None:
    type_in(qtbot, page.scoop_form.name.line, "Red")
    type_in(qtbot, page.scoop_form.diameter.line, "3 3/4")
    type_in(qtbot, page.scoop_form.inner_height.line, "3 5/8 in")
    page.keep()


def test_from_nothing_to_the_weigh_in(qtbot: QtBot, page: WelcomePage, empty_desk: Desk) -> None:
    assert page.step is FirstStep.FARM
    assert page.farm_step.name.line.hasFocus()
    add_farm(qtbot, page)
    assert page.step is FirstStep.SCALE
    add_scale(qtbot, page)
    assert page.step is FirstStep.SCOOP
    add_scoop(qtbot, page)
    assert page.step is FirstStep.LOT
    type_in(qtbot, page.lot_form.number.line, "25-0302A")
    with qtbot.waitSignal(empty_desk.go_to) as asked:
        page.keep()
    records = empty_desk.records
    (farm,), (scale,), (scoop,), (lot,) = (records.every(k) for k in (Farm, Scale, Scoop, Lot))
    assert asked.args == ["weigh_in", lot.id]
    assert (farm.name, farm.units) == ("Windy Hollow", UnitSystem.FARM)
    assert {scale.farm_id, scoop.farm_id, lot.farm_id} == {farm.id}
    assert scale.resolution_typed == "0.1 oz"
    assert scale.resolution_g == pytest.approx(2.8349523125)  # NIST SP 811, appendix B
    # π/4 · 3.75² · 3.625 in³ of 16.387064 mL.
    assert scoop.volume_ml == pytest.approx(3.141592653589793 / 4 * 3.75**2 * 3.625 * 16.387064)


def test_the_scale_in_the_drawing_shows_the_units_that_are_chosen(page: WelcomePage) -> None:
    step = page.farm_step
    for choice, reading in ((step.metric_units, "329 g"), (step.farm_units, "11.6 oz")):
        choice.click()
        assert step.drawings["weigh"].reading == reading


def test_what_the_computer_thinks_in_is_drawn_from_the_beginning(
    monkeypatch: pytest.MonkeyPatch, empty_desk: Desk, qtbot: QtBot
) -> None:
    monkeypatch.setattr("calibrator.desk.pages.welcome.thinks_metric", lambda: True)
    assert opened(qtbot, empty_desk).farm_step.drawings["weigh"].reading == "329 g"


def test_a_step_is_not_left_without_what_it_needs(page: WelcomePage, empty_desk: Desk) -> None:
    page.keep()
    assert page.step is FirstStep.FARM
    assert page.farm_step.name.message
    assert empty_desk.farm is None


@pytest.mark.parametrize("kept", [1, 2, 3])
def test_left_half_way_it_reopens_where_it_was(qtbot: QtBot, page: WelcomePage, empty_desk: Desk, kept: int) -> None:
    for add in (add_farm, add_scale, add_scoop)[:kept]:
        add(qtbot, page)
    again = opened(qtbot, empty_desk)
    assert again.step is list(FirstStep)[kept]


def test_back_shows_what_was_kept_and_a_change_is_a_correction(
    qtbot: QtBot, page: WelcomePage, empty_desk: Desk
) -> None:
    add_farm(qtbot, page)
    add_scale(qtbot, page)
    page.back_button.click()
    assert page.step is FirstStep.SCALE
    assert page.scale_form.capacity.text() == "11 lb"
    page.keep()
    assert page.step is FirstStep.SCOOP
    assert len(empty_desk.records.every(Scale)) == 1
    page.back_button.click()
    page.back_button.click()
    type_in(qtbot, page.farm_step.name.line, "Far Hill")
    page.farm_step.metric_units.setChecked(True)
    page.keep()
    (farm,) = empty_desk.records.every(Farm)
    assert (farm.name, farm.units) == ("Far Hill", UnitSystem.METRIC)
    assert len(empty_desk.records.every(Scale)) == 1


def test_what_was_typed_stays_when_one_goes_back_and_forth(qtbot: QtBot, page: WelcomePage) -> None:
    add_farm(qtbot, page)
    add_scale(qtbot, page)
    type_in(qtbot, page.scoop_form.name.line, "Re")
    page.back_button.click()
    page.keep()
    assert page.step is FirstStep.SCOOP
    assert page.scoop_form.name.text() == "Re"


def test_enter_goes_to_the_next_field_and_keeps_nothing(qtbot: QtBot, page: WelcomePage, empty_desk: Desk) -> None:
    add_farm(qtbot, page)
    line = page.scale_form.step.line
    type_in(qtbot, line, "0.1 oz")
    qtbot.keyClick(line, Qt.Key.Key_Return)
    assert page.step is FirstStep.SCALE
    assert empty_desk.records.every(Scale) == []
    # The suggestions between the two fields are passed over: a second Enter must not take one.
    assert page.scale_form.capacity.line.hasFocus()
    assert page.scale_form.step.text() == "0.1 oz"


@pytest.mark.parametrize("text", ["0.1", "1"])
def test_a_step_without_its_unit_is_answered_like_a_capacity(
    qtbot: QtBot, page: WelcomePage, empty_desk: Desk, text: str
) -> None:
    add_farm(qtbot, page)
    type_in(qtbot, page.scale_form.step.line, text)
    type_in(qtbot, page.scale_form.capacity.line, "11 lb")
    page.keep()
    assert page.step is FirstStep.SCALE
    assert page.scale_form.step.box.message == f"Its unit is missing: write {text} oz or {text} g."
    assert page.scale_form.step.line.hasFocus()


def test_tab_comes_from_a_field_to_what_is_often_typed_in_it(qtbot: QtBot, page: WelcomePage) -> None:
    add_farm(qtbot, page)
    form = page.scale_form
    for field, often in ((form.step, form.steps), (form.capacity, form.capacities)):
        chip = often.findChildren(QPushButton)[0]
        qtbot.waitUntil(chip.isVisible)
        field.line.setFocus()
        form.focusNextChild()
        assert page.window().focusWidget() is chip
    form.step.line.setFocus()
    qtbot.keyClicks(form.step.line, "0.1")
    form.focusNextChild()  # who types a figure goes on to the next one
    assert page.window().focusWidget() is form.capacity.line


def test_a_capacity_without_its_unit_is_answered_on_leaving_and_enter_in_it_keeps(
    qtbot: QtBot, page: WelcomePage, empty_desk: Desk
) -> None:
    add_farm(qtbot, page)
    type_in(qtbot, page.scale_form.step.line, "0.1 oz")
    line = page.scale_form.capacity.line
    for text in ("5", "11", "99999"):
        type_in(qtbot, line, text)
        page.scale_form.step.line.setFocus()
        assert page.scale_form.capacity.box.message == f"Its unit is missing: write {text} lb or {text} kg."
        line.setFocus()
        qtbot.keyClick(line, Qt.Key.Key_Return)
        assert page.step is FirstStep.SCALE
        assert line.hasFocus()
    assert empty_desk.records.every(Scale) == []
    type_in(qtbot, line, "5 kg")
    qtbot.keyClick(line, Qt.Key.Key_Return)
    (scale,) = empty_desk.records.every(Scale)
    assert scale.capacity_g == 5000
    assert page.step is FirstStep.SCOOP


def test_an_unlikely_scoop_is_asked_about_in_the_page_and_a_second_enter_keeps_it(
    qtbot: QtBot, page: WelcomePage, empty_desk: Desk
) -> None:
    add_farm(qtbot, page)
    add_scale(qtbot, page)
    form = page.scoop_form
    for field, text in ((form.name, "Blue"), (form.diameter, "50 mm"), (form.inner_height, "40 mm")):
        type_in(qtbot, field.line, text)
    line = form.temperature.line
    line.setFocus()
    qtbot.keyClick(line, Qt.Key.Key_Return)
    assert (page.step, empty_desk.records.every(Scoop)) == (FirstStep.SCOOP, [])
    assert form.question.isVisible()
    assert "0.08 qt (79 mL)" in form.question.words  # 0.7854 × 5² × 4 cm³
    assert line.hasFocus()
    qtbot.keyClick(line, Qt.Key.Key_Return)
    assert page.step is FirstStep.LOT


def test_enter_goes_past_a_box_to_be_ticked_and_keeps_the_last_step(
    qtbot: QtBot, page: WelcomePage, empty_desk: Desk
) -> None:
    add_farm(qtbot, page)
    add_scale(qtbot, page)
    add_scoop(qtbot, page)
    type_in(qtbot, page.lot_form.number.line, "26-A1")
    box = page.lot_form.medicated
    box.setFocus()
    with qtbot.waitSignal(empty_desk.go_to):
        qtbot.keyClick(box, Qt.Key.Key_Return)
    (lot,) = empty_desk.records.every(Lot)
    assert not lot.medicated


@pytest.mark.parametrize("again", [False, True])
def test_a_scoops_size_comes_back_as_it_was_typed(
    qtbot: QtBot, page: WelcomePage, empty_desk: Desk, again: bool
) -> None:
    add_farm(qtbot, page)
    add_scale(qtbot, page)
    form = page.scoop_form
    for field, text in ((form.name, "Red"), (form.diameter, "10 cm"), (form.inner_height, "4,1")):
        type_in(qtbot, field.line, text)
    assert "0.864 ± 0.019 qt (818 ± 18 mL), 95 % sure" in form._by_dimensions.text()  # 0.7854 × 10² × 10.414 cm³
    page.keep()
    if again:  # as after a restart: what was typed is not kept with a scoop, but its ruler can be told
        page = opened(qtbot, empty_desk)
        page._show(FirstStep.SCOOP)
        assert [page.scoop_form.diameter.text(), page.scoop_form.inner_height.text()] == ["100 mm", "4.1 in"]
        return
    page.back_button.click()
    assert [form.diameter.text(), form.inner_height.text()] == ["10 cm", "4,1 in"]


def test_water_is_offered_and_asked_for_only_when_wanted(qtbot: QtBot, page: WelcomePage, empty_desk: Desk) -> None:
    add_farm(qtbot, page)
    add_scale(qtbot, page)
    form = page.scoop_form
    assert not form.waters[0].isVisible()
    form.with_water.setFocus()
    qtbot.keyClick(form.with_water, Qt.Key.Key_Space)
    assert form.waters[0].line.hasFocus()
    assert not form.with_water.isVisible()
    for field, text in ((form.name, "Red"), (form.diameter, "100 mm"), (form.inner_height, "104 mm")):
        type_in(qtbot, field.line, text)
    for field in form.waters:
        type_in(qtbot, field.line, "815 g")
    page.keep()
    (scoop,) = empty_desk.records.every(Scoop)
    assert scoop.volume_from_water
    page.back_button.click()
    assert form.waters[0].isVisible()


def test_going_on_later_leads_to_today(qtbot: QtBot, page: WelcomePage, empty_desk: Desk) -> None:
    assert not page.leave_button.isVisible()
    add_farm(qtbot, page)
    with qtbot.waitSignal(empty_desk.go_to) as asked:
        page.leave_button.click()
    assert asked.args == ["today", ""]


@pytest.mark.parametrize(("starts", "told"), [(True, 0), (False, 1)])
def test_the_sample_season_opens_in_a_window_of_its_own(
    page: WelcomePage, empty_desk: Desk, answers: Any, monkeypatch: pytest.MonkeyPatch, starts: bool, told: int
) -> None:
    started: list[list[str]] = []

    def start(program: str, arguments: list[str], folder: str) -> bool:
        started.append([program, *arguments])
        return starts

    monkeypatch.setattr(QProcess, "startDetached", start)
    page.sample_button.click()
    assert started[0][-1] == "--demo"
    assert len(answers.told) == told
    assert empty_desk.farm is None


def test_enter_on_a_choice_goes_on_as_in_a_field(qtbot: QtBot, page: WelcomePage) -> None:
    type_in(qtbot, page.farm_step.name.line, "Willow Bend")
    page.farm_step.metric_units.setFocus()
    qtbot.keyClick(page.farm_step.metric_units, Qt.Key.Key_Space)
    qtbot.keyClick(page.farm_step.metric_units, Qt.Key.Key_Return)
    assert page.step is FirstStep.SCALE
    page.back_button.click()
    page.farm_step.farm_units.click()
    page.keep()
    add_scale(qtbot, page)
    assert page.step is FirstStep.SCOOP
    straight = page.scoop_form.shapes.buttons[ShapeKind.STRAIGHT]
    straight.setFocus()
    QApplication.processEvents()  # arrow keys go by where the buttons lie
    qtbot.keyClick(straight, Qt.Key.Key_Right)
    tapered = page.scoop_form.shapes.buttons[ShapeKind.TAPERED]
    assert tapered.hasFocus()
    assert tapered.isChecked()
    qtbot.keyClick(tapered, Qt.Key.Key_Return)
    assert page.scoop_form.rim.line.hasFocus()


@pytest.mark.parametrize("metric", [True, False])
def test_the_units_proposed_are_the_countrys(
    qtbot: QtBot, empty_desk: Desk, monkeypatch: pytest.MonkeyPatch, metric: bool
) -> None:
    monkeypatch.setattr("calibrator.desk.pages.welcome.thinks_metric", lambda: metric)
    page = opened(qtbot, empty_desk)
    assert page.farm_step.metric_units.isChecked() is metric


@pytest.mark.parametrize("shape", [ShapeKind.STRAIGHT, ShapeKind.TAPERED, ShapeKind.BOX])
def test_what_the_dimensions_come_to_is_in_view_beside_them(qtbot: QtBot, page: WelcomePage, shape: ShapeKind) -> None:
    add_farm(qtbot, page)
    add_scale(qtbot, page)
    form = page.scoop_form
    form.shapes.choose(shape)
    for field in form.fields._asked():
        type_in(qtbot, field.line, "3.5 in" if field is form.floor else "4 in")
    qtbot.wait(1)
    for widget, air in ((form._by_dimensions, 0), (form.with_water, 0), (form.drawing, MARGIN)):
        assert widget.visibleRegion().boundingRect().height() >= widget.height() - air
    beside = form.fields._asked()[0]
    assert form._by_dimensions.mapTo(page, QPoint(0, 0)).x() > beside.mapTo(page, QPoint(beside.width(), 0)).x()


@pytest.mark.parametrize(("typed", "count"), [("40", 40), ("", None)])
def test_the_number_of_bags_is_asked_and_may_stay_open(
    qtbot: QtBot, page: WelcomePage, empty_desk: Desk, typed: str, count: int | None
) -> None:
    for add in (add_farm, add_scale, add_scoop):
        add(qtbot, page)
    assert page.lot_form.count.isVisible()
    assert page.lot_form.mass.isVisible()
    assert page.lot_form.masses.isVisible()
    type_in(qtbot, page.lot_form.number.line, "A-1")
    type_in(qtbot, page.lot_form.count.line, typed)
    page.keep()
    assert [lot.package_count for lot in empty_desk.records.every(Lot)] == [count]


@pytest.mark.parametrize(("typed", "kind"), [("25 kg", PackageKind.BAG), ("500 kg", PackageKind.TOTE)])
def test_the_weight_of_each_is_asked_too_and_tells_bags_from_totes(
    qtbot: QtBot, page: WelcomePage, empty_desk: Desk, typed: str, kind: PackageKind
) -> None:
    for add in (add_farm, add_scale, add_scoop):
        add(qtbot, page)
    type_in(qtbot, page.lot_form.number.line, "A-1")
    type_in(qtbot, page.lot_form.mass.line, typed)
    page.keep()
    assert [(lot.package, lot.package_mass_typed) for lot in empty_desk.records.every(Lot)] == [(kind, typed)]


@pytest.mark.parametrize(
    ("country", "metric", "paper"),
    [("DE", True, Paper.A4), ("DE", False, Paper.LETTER), ("MX", True, Paper.LETTER), ("US", False, Paper.LETTER)],
)
def test_a_new_farm_gets_the_paper_of_its_country_and_an_old_one_keeps_its_own(
    qtbot: QtBot, empty_desk: Desk, country: str, metric: bool, paper: Paper
) -> None:
    before = QLocale()
    with ExitStack() as after:
        after.callback(QLocale.setDefault, before)
        QLocale.setDefault(QLocale(QLocale.Language.English, QLocale.codeToTerritory(country)))
        check_paper(qtbot, empty_desk, metric, paper)


def check_paper(qtbot: QtBot, empty_desk: Desk, metric: bool, paper: Paper) -> None:
    page = opened(qtbot, empty_desk)
    (page.farm_step.metric_units if metric else page.farm_step.farm_units).setChecked(True)
    add_farm(qtbot, page)
    assert [farm.paper for farm in empty_desk.records.every(Farm)] == [paper]
    page._back()
    (page.farm_step.farm_units if metric else page.farm_step.metric_units).setChecked(True)
    page.keep()
    assert [farm.paper for farm in empty_desk.records.every(Farm)] == [paper]


def test_the_down_key_comes_to_what_is_often_typed_in_a_field_that_is_filled_too(
    qtbot: QtBot, page: WelcomePage
) -> None:
    add_farm(qtbot, page)
    form = page.scale_form
    qtbot.waitUntil(lambda: all(chip.isVisible() for chip in form.steps.findChildren(QPushButton)))
    line, chips = form.step.line, form.steps.findChildren(QPushButton)
    type_in(qtbot, line, "5 g")
    form.capacity.line.setFocus()
    line.setFocus()
    assert "Down key" in line.accessibleDescription()
    qtbot.keyClick(line, Qt.Key.Key_Down)
    assert chips[0].hasFocus()
    for key, there in ((Qt.Key.Key_Right, 1), (Qt.Key.Key_Left, 0), (Qt.Key.Key_Down, 1)):
        qtbot.keyClick(QApplication.focusWidget(), key)
        assert chips[there].hasFocus()
    qtbot.keyClick(chips[1], Qt.Key.Key_Space)
    assert line.text() == chips[1].text()
    for chip in (chips[1], chips[0]):
        qtbot.keyClick(chip, Qt.Key.Key_Up)
    assert line.hasFocus()
    assert all(chip.focusPolicy() is Qt.FocusPolicy.ClickFocus for chip in chips)  # Tab goes on to the next figure


def test_the_language_that_paper_will_have_is_told_beside_that_of_the_screen(qtbot: QtBot, empty_desk: Desk) -> None:
    told = "Paper comes in it too; Set-up has a choice for paper."
    first = opened(qtbot, empty_desk)
    assert first.farm_step.language.message == told
    empty_desk.settings.keep(paper_languages=("es",))  # chosen apart
    second = opened(qtbot, empty_desk)
    assert second.farm_step.language.message == ""


def test_another_language_stays_at_the_step_where_it_was_chosen(qtbot: QtBot, empty_desk: Desk) -> None:
    """The farm was kept already, so the window made anew went on with the scale."""
    page = opened(qtbot, empty_desk)
    add_farm(qtbot, page)
    page._back()
    page.farm_step._carry_over()
    anew = WelcomePage(empty_desk)
    qtbot.addWidget(anew)
    anew.reload()
    anew.open("")
    assert anew.step is FirstStep.FARM
    anew.open("")  # whoever comes back to the set-up goes on with what is missing
    assert anew.step is FirstStep.SCALE


def test_an_arrow_key_changes_no_language_in_passing(
    qtbot: QtBot, empty_desk: Desk, monkeypatch: pytest.MonkeyPatch
) -> None:
    page = opened(qtbot, empty_desk)
    box = page.farm_step.language.box
    before, shown = box.currentIndex(), []
    monkeypatch.setattr(box, "showPopup", lambda: shown.append(True))
    qtbot.keyClick(box, Qt.Key.Key_Down)
    assert box.currentIndex() == before
    assert shown


def test_enter_stays_where_something_is_to_be_mended(qtbot: QtBot, empty_desk: Desk) -> None:
    page = opened(qtbot, empty_desk)
    add_farm(qtbot, page)
    step = page.scale_form.step
    step.line.setFocus()
    qtbot.keyClicks(step.line, ".1")
    qtbot.keyClick(step.line, Qt.Key.Key_Return)
    assert page.focusWidget() is step.line
    assert step.message
