"""The guided weigh-in driven as a person drives it: typing and Enter through the real window."""

from __future__ import annotations

import subprocess
import sys
import textwrap
from dataclasses import replace
from pathlib import Path

import pytest
from answers import Answers
from PySide6.QtCore import QAbstractItemModel, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit, QPushButton
from pytestqt.modeltest import ModelTester
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.pages.weigh_in import WeighInPage
from calibrator.desk.weigh_in.fill_plot import places
from calibrator.desk.weigh_in.fill_table import NUMBER, REMARK, FillTable
from calibrator.desk.weigh_in.step_mark import StepMark
from calibrator.desk.weigh_in.step_sign_off import StepSignOff
from calibrator.desk.weigh_in.step_tools import StepTools
from calibrator.desk.window import Window
from calibrator.model import FillWay, Lot, Scale, Scoop, Step, UnitSystem, WeighIn, new_id
from calibrator.records import Records

LEVEL = ("11.6", "11.7", "11.8", "11.6 oz", "11.7", "0 lb 11.6 oz", "11.8", "11.7")


def lot_of(desk: Desk) -> Lot:
    return desk.records.every(Lot)[0]


def page_of(window: Window) -> WeighInPage:
    page = window.page("weigh_in")
    assert isinstance(page, WeighInPage)
    return page


def focused() -> QLineEdit:
    widget = QApplication.focusWidget()
    assert isinstance(widget, QLineEdit)
    return widget


def enter(text: str) -> None:
    QTest.keyClicks(focused(), text)
    QTest.keyClick(focused(), Qt.Key.Key_Return)


def press(window: Window, text: str) -> None:
    """Press a visible button by its words, without the mnemonic."""
    for found in window.findChildren(QPushButton):
        if found.isVisible() and found.text().replace("&", "") == text:
            assert found.isEnabled(), f"{text} cannot be pressed"
            QTest.mouseClick(found, Qt.MouseButton.LeftButton)
            return
    raise AssertionError(f"no button {text}")


def begin(window: Window) -> WeighInPage:
    window.show_page("weigh_in", lot_of(window.desk).id)
    page = page_of(window)
    assert page.guide is not None
    for text in ("MK", "", ""):  # the room is not known: Enter goes on from field to field all the same
        assert page.guide.step == Step.LOT
        enter(text)
    assert page.guide.step == Step.SCOOP_AND_SCALE
    return page


def equip(window: Window) -> None:
    page = page_of(window)
    view = page._views[Step.SCOOP_AND_SCALE]
    view._target.setFocus()
    enter("10 oz")
    view._zeroed.setFocus()
    QTest.keyClick(view._zeroed, Qt.Key.Key_Space)
    QTest.keyClick(window, Qt.Key.Key_Right, Qt.KeyboardModifier.AltModifier)


def test_another_scale_chosen_has_its_own_zero_and_check_weight(window: Window) -> None:
    """What goes with the scale before it is told, and comes back with that one."""
    desk, said = window.desk, []
    first = desk.records.every(Scale)[0]
    second = desk.records.keep(replace(first, id=new_id(), name="New scale", revision=""))
    desk.said.connect(said.append)
    page = begin(window)
    view = page._views[Step.SCOOP_AND_SCALE]
    assert isinstance(view, StepTools)
    order = [view._scale.itemData(n) for n in range(view._scale.count())]

    def choose(scale: Scale) -> None:
        view._scale.setCurrentIndex(order.index(scale.id))
        view._scale.activated.emit(order.index(scale.id))

    choose(first)
    for field, text in ((view._target, "10 oz"), (view._nominal, "500 g"), (view._reading, "512 g")):
        field.setFocus()
        enter(text)
    view._zeroed.setFocus()
    QTest.keyClick(view._zeroed, Qt.Key.Key_Space)
    assert "too much" in view._scale_says.text()
    choose(second)
    assert (view._reading.text(), view._zeroed.isChecked(), view._scale_says.isVisible()) == ("", False, False)
    assert view._nominal.text()
    assert said[-1] == f"Zero this scale too. Weigh the check weight on it: 18.1 oz (512 g) was read on {first.name}."
    choose(first)
    assert "512" in view._reading.text()
    assert said[-1] == "The check weight is back as it was read on it: 18.1 oz (512 g)."
    assert not view._zeroed.isChecked()


def ask_for_initials(view: StepSignOff) -> None:
    """Missing initials are asked for beside their field, and nothing moves for it."""
    view._initials.clear()
    QApplication.processEvents()  # laid out as it came into view
    before = view._initials.geometry(), view._sign_button.geometry()
    view._sign_button.click()
    QApplication.processEvents()
    assert view._asked_for.text() == "Type your initials, then sign off."
    assert view._asked_for.geometry().left() > view._sign_button.geometry().right()
    assert view._asked_for.width() >= view._asked_for.sizeHint().width()
    assert view._initials.property("state") == "wrong"
    QTest.keyClicks(focused(), "MK")
    QApplication.processEvents()
    assert view._asked_for.text() == view._initials.property("state") == ""
    assert (view._initials.geometry(), view._sign_button.geometry()) == before


def test_the_whole_way_by_keyboard(window: Window, answers: Answers) -> None:
    page = begin(window)
    equip(window)
    assert page.guide is not None
    assert page.guide.step == Step.LEVEL_FILLS
    for text in LEVEL:
        enter(text)
    assert [fill.typed for fill in page.guide.fills_of(FillWay.LEVEL)] == list(LEVEL)
    assert [fill.bag for fill in page.guide.fills_of(FillWay.LEVEL)] == [1, 1, 2, 2, 3, 3, 4, 4]

    QTest.keyClick(window, Qt.Key.Key_Right, Qt.KeyboardModifier.AltModifier)
    assert page.guide.step == Step.MARK
    drawn = page.guide.findings.line
    assert drawn is not None
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Space)
    assert page.guide.step == Step.FILLS_TO_MARK
    # As drawn, to the 1/16 in that is shown, not to the last decimal that was computed.
    assert page.guide.weigh_in.drawn_line_mm == pytest.approx(drawn.down_wall_mm, abs=25.4 / 32 + 1e-9)

    for text in ("10.0", "10.0", "10.1", "10.0", "9.9", "10.0", "10.0", "10.1"):
        enter(text)
    assert page.guide.on_target
    QTest.keyClick(window, Qt.Key.Key_Right, Qt.KeyboardModifier.AltModifier)
    assert page.guide.step == Step.SIGN_OFF
    assert page._views[Step.SIGN_OFF].hands.text().startswith("Look it over.")
    QTest.keyClick(focused(), Qt.Key.Key_Return)
    assert page.guide.signed_off is None  # an Enter too many, from the page before, freezes nothing
    assert QApplication.focusWidget() is page._views[Step.SIGN_OFF]._sign_button
    ask_for_initials(page._views[Step.SIGN_OFF])
    assert page.guide.signed_off is None
    QTest.keyClick(focused(), Qt.Key.Key_Return)
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return)
    assert page.guide.signed_off is not None
    assert page.guide.signed_off.by == "MK"
    assert answers.told == []
    assert window.desk.records.marks()[0].target_mass_g == pytest.approx(283.495, abs=1e-3)

    signing = page._views[Step.SIGN_OFF]
    assert signing.hands.text() == (
        "Signed. Make the plan first, under “Batch tables and wall chart”: then the label can bear a line for each "
        "group at once. Nothing is lost otherwise: a label can be printed anew. Go over the line with a pen that "
        "lasts. Print the label. Once that is done, press “Line and label are on”."
    )
    press(window, "Print the scoop label")
    assert window.current_page.key == "tables"
    focus = QApplication.focusWidget()
    assert isinstance(focus, QPushButton)
    assert focus.text() == "&Print"
    press(window, "Go back")
    assert window.current_page is page
    assert signing.isVisible()
    window.show_page("today")
    window.show_page("tables")
    assert window.current_page.came_from == "today"


def test_what_is_not_a_weight_is_answered_and_stays_for_mending(window: Window) -> None:
    page = begin(window)
    equip(window)
    view = page._views[Step.LEVEL_FILLS]
    assert page.guide is not None
    for text in ("abc", "11.6 qt", "-3", "1.1.6", "116", "11.6 lb"):
        enter(text)
        assert page.guide.fills_of(FillWay.LEVEL) == []
        assert view._weight.text() == text
        assert view._weight.message
        focused().clear()
    enter("11.6")
    assert len(page.guide.fills_of(FillWay.LEVEL)) == 1
    assert view._weight.text() == ""


def test_read_from_across_the_room(window: Window) -> None:
    page = begin(window)
    equip(window)
    view = page._views[Step.LEVEL_FILLS]
    enter("11.6")
    usual = view._weight.line.fontMetrics().height()
    press(window, "Read from across the room")
    assert not view._view.isVisible()
    assert view._weight.line.hasFocus()
    assert view._weight.line.fontMetrics().height() > 2 * usual
    assert view._weight.line.placeholderText() == ""  # or it could be taken for a weight
    enter("11.7")
    enter("11.8")
    assert view._now.text() == "Now bag 2\nLast kept: 11.8 oz"
    assert [fill.typed for fill in page.guide.fills_of(FillWay.LEVEL)] == ["11.6", "11.7", "11.8"]  # type: ignore[union-attr]
    assert view._panel._named.text().startswith("Mean of 3 fills, ± ")
    press(window, "Back to the normal size")
    assert view._view.isVisible()
    assert view._across.text().replace("&", "") == "Read from across the room"
    assert not view._now.isVisible()


def test_undo_and_redo_go_through_the_records(window: Window) -> None:
    page = begin(window)
    equip(window)
    enter("11.6")
    enter("16.6")
    assert page.guide is not None
    QTest.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    wrong = page.guide.fills_of(FillWay.LEVEL)[1]
    assert not wrong.counts
    press(window, "Redo")
    assert page.guide.fills_of(FillWay.LEVEL)[1].counts
    press(window, "Undo")
    press(window, "Undo")
    assert [fill.counts for fill in page.guide.fills_of(FillWay.LEVEL)] == [False, False]


def test_a_step_takes_back_its_own_fills_only(window: Window) -> None:
    page = begin(window)
    equip(window)
    for text in LEVEL:
        enter(text)
    QTest.keyClick(window, Qt.Key.Key_Right, Qt.KeyboardModifier.AltModifier)
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Space)
    assert page.guide is not None
    assert page.guide.step == Step.FILLS_TO_MARK
    view = page._views[Step.FILLS_TO_MARK]
    assert not view._undo.isEnabled()
    QTest.keyClick(focused(), Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert all(fill.counts for fill in page.guide.fills_of(FillWay.LEVEL))
    enter("10.0")
    QTest.keyClick(focused(), Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert [fill.counts for fill in page.guide.fills_of(FillWay.TO_MARK)] == [False]
    assert not view._undo.isEnabled()
    assert all(fill.counts for fill in page.guide.fills_of(FillWay.LEVEL))
    page.open_step(Step.LEVEL_FILLS)
    press(window, "Undo")
    assert [fill.counts for fill in page.guide.fills_of(FillWay.LEVEL)] == [True] * 7 + [False]
    page.close_guide()
    assert not page._views[Step.LEVEL_FILLS]._undo.isEnabled()


def test_striking_out_asks_for_the_reason(window: Window, answers: Answers) -> None:
    page = begin(window)
    equip(window)
    enter("11.6")
    enter("12.6")
    view = page._views[Step.LEVEL_FILLS]
    view._view.selectRow(0)
    answers.words = "bumped the table"
    press(window, "Strike out …")
    assert page.guide is not None
    assert page.guide.fills_of(FillWay.LEVEL)[1].struck_reason == "bumped the table"
    view._view.selectRow(0)
    press(window, "Count again")
    assert page.guide.fills_of(FillWay.LEVEL)[1].counts


def test_delete_in_the_list_asks_for_the_reason_too_and_brings_nothing_back(window: Window, answers: Answers) -> None:
    page = begin(window)
    equip(window)
    enter("11.6")
    enter("12.6")
    assert page.guide is not None
    view = page._views[Step.LEVEL_FILLS]
    answers.words = "bumped the table"
    for _ in range(2):
        view._view.setFocus()
        view._view.selectRow(0)
        QTest.keyClick(view._view, Qt.Key.Key_Delete)
        assert page.guide.fills_of(FillWay.LEVEL)[1].struck_reason == "bumped the table"
    view._undo.click()
    assert page.guide.fills_of(FillWay.LEVEL)[1].counts


def test_without_a_reason_nothing_is_struck_out(window: Window, answers: Answers) -> None:
    page = begin(window)
    equip(window)
    enter("11.6")
    answers.words = ""
    page._views[Step.LEVEL_FILLS]._view.selectRow(0)
    press(window, "Strike out …")
    assert page.guide is not None
    assert page.guide.fills_of(FillWay.LEVEL)[0].counts


def test_closing_and_coming_back_loses_nothing(window: Window, qtbot: QtBot) -> None:
    page = begin(window)
    equip(window)
    for text in LEVEL[:3]:
        enter(text)
    desk = window.desk
    window.close()
    again = Window(desk)
    qtbot.addWidget(again)
    again.show()
    again.show_page("weigh_in", lot_of(desk).id)
    page = page_of(again)
    assert page.guide is not None
    assert page.guide.step == Step.LEVEL_FILLS
    assert [fill.typed for fill in page.guide.fills_of(FillWay.LEVEL)] == list(LEVEL[:3])
    assert len(desk.records.every(WeighIn)) == 1


def test_coming_back_shows_every_field_as_it_was_kept(window: Window, qtbot: QtBot) -> None:
    begin(window)
    equip(window)
    desk = window.desk
    kept = desk.records.every(WeighIn)[0]
    window.close()
    again = Window(desk)
    qtbot.addWidget(again)
    with qtbot.waitExposed(again):
        again.show()
    again.activateWindow()
    qtbot.waitUntil(again.isActiveWindow)
    again.show_page("weigh_in", lot_of(desk).id)
    page_of(again).previous_step()
    view = page_of(again)._views[Step.SCOOP_AND_SCALE]
    assert view._target.text() == "10 oz"
    assert view._zeroed.isChecked()
    for field in (view._target, view._nominal, view._reading, view._old_line):
        field.setFocus()
        QTest.keyClick(focused(), Qt.Key.Key_Tab)
    now = desk.records.every(WeighIn)[0]
    assert (now.target_mass_g, now.target_typed) == (kept.target_mass_g, "10 oz")


def test_what_was_typed_for_one_lot_is_not_taken_for_the_next(window: Window) -> None:
    desk = window.desk
    first = lot_of(desk)
    other = desk.records.keep(replace(first, id=new_id(), lot_number="25-0409B", revision=""))
    window.show_page("weigh_in", first.id)
    view = page_of(window)._views[Step.LOT]
    view._initials.setText("MK")
    view._humidity.setFocus()
    QTest.keyClicks(focused(), "55")
    view._temperature.setFocus()
    QTest.keyClicks(focused(), "72")
    window.show_page("weigh_in", other.id)
    view = page_of(window)._views[Step.LOT]
    assert (view._humidity.text(), view._temperature.text()) == ("", "")
    view._take()
    made = {one.lot_id: one for one in desk.records.every(WeighIn)}
    assert (made[other.id].room_humidity_pct, made[other.id].room_temperature_c) == (None, None)


def test_changing_units_in_the_middle_changes_no_fact(window: Window) -> None:
    from dataclasses import replace

    page = begin(window)
    equip(window)
    enter("11.6")
    desk = window.desk
    before = desk.records.fills(desk.records.every(WeighIn)[0].id)
    assert desk.farm is not None
    desk.attempt(lambda: desk.records.keep(replace(desk.farm, units=UnitSystem.METRIC)))
    enter("331 g")  # the scale shows ounces, whatever the farm reckons in
    fills = desk.records.fills(before[0].weigh_in_id)
    assert fills[0] == before[0]
    assert fills[1].mass_g == 331.0
    assert page._views[Step.LEVEL_FILLS]._table.data(page._views[Step.LEVEL_FILLS]._table.index(0, 2)) == "331 g"


def test_going_back_keeps_what_was_entered(window: Window) -> None:
    page = begin(window)
    equip(window)
    QTest.keyClick(window, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    assert page._views[Step.SCOOP_AND_SCALE]._target.text() == "10 oz"
    QTest.keyClick(window, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    assert focused().text() == "MK"


def test_a_scoop_cannot_be_changed_under_its_fills(window: Window, answers: Answers) -> None:
    page = begin(window)
    desk = window.desk
    other = desk.records.keep(replace(desk.records.every(Scoop)[0], id=new_id(), name="Blue scoop", revision=""))
    equip(window)
    enter("11.6")
    QTest.keyClick(window, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    view = page._views[Step.SCOOP_AND_SCALE]
    view._scoop.setCurrentIndex(view._scoop.findData(other.id))
    view._scoop.activated.emit(view._scoop.currentIndex())
    assert "new weigh-in" in answers.told[-1]
    assert view._scoop.currentText() == "Red scoop"


def test_the_fill_table_is_a_sound_model(window: Window, qtmodeltester: ModelTester) -> None:
    begin(window)
    equip(window)
    enter("11.6")
    model: QAbstractItemModel = page_of(window)._views[Step.LEVEL_FILLS]._table
    assert isinstance(model, FillTable)
    qtmodeltester.check(model)


def test_the_numbers_count_the_fills_that_stand(window: Window) -> None:
    """A fill that was taken back leaves no gap, in the list and along the plot."""
    page = begin(window)
    equip(window)
    view = page._views[Step.LEVEL_FILLS]
    for weight in ("11.6", "12.6"):
        enter(weight)
    press(window, "Undo")
    for weight in ("11.7", "11.8"):
        enter(weight)
    assert page.guide is not None
    rows = [view._table.index(row, NUMBER).data() for row in range(view._table.rowCount())]
    assert rows == ["3", "2", "–", "1"]
    assert places(page.guide.fills_of(FillWay.LEVEL)) == [1, 1.5, 2, 3]
    remark = view._table.index(2, REMARK)
    assert remark.data() == "taken back"
    assert remark.data(Qt.ItemDataRole.AccessibleTextRole) == "struck out: taken back"


@pytest.mark.parametrize("kills", [2, pytest.param(5, marks=pytest.mark.slow)])
def test_kill_between_any_two_fills_loses_none(tmp_path: Path, desk: Desk, kills: int) -> None:
    """The program is killed, not closed, right after each Enter; what was entered is there each time."""
    url = desk.records.url
    lot_id = lot_of(desk).id
    desk.records.close()
    script = textwrap.dedent(
        """
        import os, signal, sys
        from PySide6.QtCore import Qt
        from PySide6.QtTest import QTest
        from calibrator.desk.app import make_application
        from calibrator.desk.ask import Ask
        from calibrator.desk.context import Desk
        from calibrator.desk.window import Window
        from calibrator.model import Scale, Scoop
        from calibrator.records import Records

        url, lot_id, text = sys.argv[1:]
        app = make_application(["test"])
        desk = Desk(Records.open(url), Ask(app))
        window = Window(desk)
        window.show()
        page = window.page("weigh_in")  # made here, so that it need not be loaded beside the window first
        window.show_page("weigh_in", lot_id)
        if not page.guide.scoop:
            scoop, scale = desk.records.every(Scoop)[0], desk.records.every(Scale)[0]
            page.guide.set(by="MK", scoop_id=scoop.id, scale_id=scale.id, target_mass_g=283.5, scale_zeroed=True)
            page.guide.go("level_fills")
            page.reload()
        line = page._views[page.guide.step]._weight.line
        QTest.keyClicks(line, text)
        QTest.keyClick(line, Qt.Key.Key_Return)
        os.kill(os.getpid(), signal.SIGKILL)
        """
    )
    for count, text in enumerate(LEVEL[:kills], start=1):
        done = subprocess.run([sys.executable, "-c", script, url, lot_id, text], capture_output=True, timeout=60)
        assert done.returncode == -9, done.stderr.decode()
        with Records.open(url) as records:
            weigh_in = records.every(WeighIn)[0]
            assert weigh_in.step == Step.LEVEL_FILLS
            assert [fill.typed for fill in records.fills(weigh_in.id)] == list(LEVEL[:count])


@pytest.mark.parametrize(("typed", "answered"), [("20 in", "told"), ("3 1/8 in", "asked"), ("0 in", "told")])
def test_a_line_that_cannot_be_right_is_not_taken(window: Window, typed: str, answered: str) -> None:
    page = begin(window)
    equip(window)
    for text in LEVEL:
        enter(text)
    QTest.keyClick(window, Qt.Key.Key_Right, Qt.KeyboardModifier.AltModifier)
    view = page._views[Step.MARK]
    view._field.setFocus()
    enter(typed)
    assert page.guide is not None
    assert page.guide.weigh_in.drawn_line_mm is None
    assert page.guide.step == Step.MARK
    assert view._field.text() == typed
    if answered == "asked":
        assert "not from the bottom up" in view._question.words
        assert view._question.isVisible()
        QTest.keyClick(focused(), Qt.Key.Key_Return)
        assert page.guide.weigh_in.drawn_line_mm == pytest.approx(79.375)
    else:
        assert view._field.message


def test_a_line_that_was_asked_about_and_not_answered_is_asked_about_again(window: Window) -> None:
    page = begin(window)
    equip(window)
    for text in LEVEL:
        enter(text)
    QTest.keyClick(window, Qt.Key.Key_Right, Qt.KeyboardModifier.AltModifier)
    view, guide = page._views[Step.MARK], page.guide
    assert isinstance(view, StepMark)
    assert guide is not None
    view._field.setFocus()
    enter("3 1/8 in")
    assert view._question.isVisible()
    for _ in range(2):
        page.previous_step()
        page.next_step()
        assert guide.step is Step.MARK
        assert view._field.text() == "3 1/8 in"
        page.next_step()  # takes along what is typed
        assert guide.step is Step.MARK
        assert view._question.isVisible()
        assert guide.weigh_in.drawn_line_mm is None
    page.previous_step()
    assert guide.weigh_in.target_mass_g is not None
    guide.set(target_mass_g=0.8 * guide.weigh_in.target_mass_g, target_typed="")
    page.next_step()
    assert view._field.text() == ""  # it was refused for another weight


def test_striking_out_and_undoing_need_no_scrolling_on_the_smallest_window(window: Window) -> None:
    """1024 by 700, with a fill that lies far from the others and the sentence about it."""
    window.resize(1024, 700)
    page = begin(window)
    equip(window)
    for text in (*LEVEL, "13.1"):
        enter(text)
        if focused().text():
            enter("")  # questioned first
    view = page._views[Step.LEVEL_FILLS]
    QApplication.processEvents()
    for button in (view._strike, view._undo, view._redo):
        assert button.visibleRegion().boundingRect() == button.rect(), button.text()


def test_after_a_restart_the_only_weigh_in_left_open_goes_on_at_once(window: Window, qtbot: QtBot) -> None:
    """Weights typed right after the page was called are fills: its list is no stop on the way."""
    begin(window)
    equip(window)
    enter("11.6")
    window.hide()
    again = Window(window.desk)
    qtbot.addWidget(again)
    again.show()
    again.activateWindow()
    qtbot.waitUntil(again.isActiveWindow)
    QTest.keyClick(again, Qt.Key.Key_3, Qt.KeyboardModifier.ControlModifier)
    page = page_of(again)
    qtbot.waitUntil(lambda: page.guide is not None)
    enter("11.7")
    assert page.guide is not None
    assert [fill.typed for fill in page.guide.fills_of(FillWay.LEVEL)] == ["11.6", "11.7"]
    page.close_guide()
    assert page._chooser.isVisible()
    again._closing = True


def test_a_choice_to_make_is_not_made_for_one(window: Window) -> None:
    desk = window.desk
    lot = lot_of(desk)
    desk.records.keep(replace(lot, id=new_id(), lot_number="A-778", revision=""))
    begin(window)
    page_of(window).close_guide()
    window.show_page("today")
    window.show_page("weigh_in")
    assert page_of(window).guide is None
    assert page_of(window)._chooser.isVisible()
