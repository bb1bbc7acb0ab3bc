"""A person's way with a second lot: delivered, weighed in, waiting, changed over, its line put on the scoop."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import Any, cast

import pytest
from answers import Answers, at_noon
from herd import delivered, printed
from keys import mnemonics, nameless
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QMessageBox, QPushButton, QScrollArea, QWidget
from pytestqt.qtbot import QtBot
from test_one_lit_button import lit
from test_weigh_in import enter, equip, focused, lot_of, page_of

from calibrator.desk.ask import Ask
from calibrator.desk.context import Desk
from calibrator.desk.pages.paper_scoops import ScoopPick
from calibrator.desk.pages.today import TodayPage, WaitingRow
from calibrator.desk.speech import day_text
from calibrator.desk.standing import standing
from calibrator.desk.theme import the_theme
from calibrator.desk.weigh_in import step_sign_off
from calibrator.desk.weigh_in.step_sign_off import StepSignOff
from calibrator.desk.window import Window
from calibrator.model import Farm, Lot, Plan, PrintKind, Step, new_id
from calibrator.records import Records

LEVEL = {"25-0302A": "11.7", "26-0401B": "12.9"}


def weigh(window: Window, lot: Lot) -> StepSignOff:
    """Eight level fills, the line as proposed, eight fills to it; the sign-off is left open."""
    window.show_page("weigh_in", lot.id)
    focused().selectAll()
    for text in ("MK", "", ""):
        enter(text)
    equip(window)
    page = page_of(window)
    for _ in range(8):
        enter(LEVEL[lot.lot_number])
    QTest.keyClick(window, Qt.Key.Key_Right, Qt.KeyboardModifier.AltModifier)
    QTest.keyClick(cast(Any, QApplication.focusWidget()), Qt.Key.Key_Space)
    for text in ("10.0", "10.0", "10.1", "10.0", "9.9", "10.0", "10.0", "10.1"):
        enter(text)
    QTest.keyClick(window, Qt.Key.Key_Right, Qt.KeyboardModifier.AltModifier)
    return cast(StepSignOff, page._views[Step.SIGN_OFF])


def open_sign_off(window: Window, lot: Lot) -> StepSignOff:
    """The last step of a lot that is weighed in."""
    window.show_page("weigh_in", lot.id)
    page = page_of(window)
    assert page.guide is not None
    assert page.guide.step == Step.SIGN_OFF
    return cast(StepSignOff, page._views[Step.SIGN_OFF])


def sign(window: Window, lot: Lot, answer: str = "") -> StepSignOff:
    step = open_sign_off(window, lot)
    if answer:
        step.fed_from.ways.setFocus()
        QTest.keyClicks(step.fed_from.ways, answer)  # as in any list, the first letters choose
        QTest.keyClick(step.fed_from.ways, Qt.Key.Key_Return)  # goes on, and leaves what is chosen
        assert step.fed_from.answered
    step._initials.setFocus()
    QTest.keyClick(focused(), Qt.Key.Key_Return)
    QTest.keyClick(step._sign_button, Qt.Key.Key_Return)
    return step


def print_label(window: Window, lot: Lot) -> None:
    signed = window.desk.records.sign_offs(lot.farm_id)[-1]
    window.desk.records.record_print(printed(PrintKind.SCOOP_LABEL, signed, scoop_id=signed.scoop_id))
    window.desk.changed.emit()


def plan_without_chart(window: Window) -> None:
    """Calves are fed by a plan, on a farm that wants no wall charts."""
    farm = window.desk.farm
    assert farm is not None
    window.desk.records.keep(Plan(id=new_id(), farm_id=farm.id, name="Milk", groups=()))
    window.desk.keep(replace(farm, asks_for_charts=False))


def today(window: Window) -> TodayPage:
    window.show_page("today")
    return cast(TodayPage, window.page("today"))


def row(window: Window, text: str) -> WaitingRow:
    (found,) = [row for row in today(window).rows if text in row.words]
    return found


def press(row: WaitingRow, text: str) -> None:
    (found,) = [each for each in row.buttons if each.text().replace("&", "") == text]
    assert isinstance(found, QPushButton)
    QTest.mouseClick(found, Qt.MouseButton.LeftButton)


def needs(window: Window) -> list[str]:
    return [row.words for row in today(window).rows if not row.words.startswith("To mix today")]


@pytest.fixture(scope="module")
def waiting_for_its_sign_off(tmp_path_factory: pytest.TempPathFactory, new_store: Path, qapp: QApplication) -> Path:
    """The first lot is fed, its line on the scoop; a second one came and is weighed in: typed once for all tests."""
    path = tmp_path_factory.mktemp("next_lot") / "records.sqlite"
    shutil.copy(new_store, path)
    the_theme()
    with Records.open(str(path)) as records:
        delivered(records)
        window = Window(Desk(records, Answers(), clock=at_noon))
        window.show()
        assert QTest.qWaitForWindowActive(window)
        weigh(window, lot_of(window.desk))
        sign(window, lot_of(window.desk))
        assert "Red scoop: the line of lot 25-0302A is drawn since its weigh-in" in row(window, "Red scoop").words
        pills = [one.text() for one in today(window).lot_card.findChildren(QLabel) if one.property("kind") == "tag"]
        assert "line drawn, label to come" in pills
        assert "not marked yet" not in pills
        press(row(window, "Red scoop"), "Line and label are on")
        assert needs(window) == []
        farm = window.desk.farm
        assert farm is not None
        lot = records.keep(Lot(id=new_id(), farm_id=farm.id, lot_number="26-0401B"))
        window.desk.changed.emit()
        step = weigh(window, lot)
        assert step.fed_from.ways.hasFocus()  # what is asked comes before the initials
        window.replace_by_another()
    return path


@pytest.fixture
def desk(tmp_path: Path, waiting_for_its_sign_off: Path, answers: Answers) -> Iterator[Desk]:
    path = tmp_path / "way.sqlite"
    shutil.copy(waiting_for_its_sign_off, path)
    with Records.open(str(path)) as records:
        yield Desk(records, answers, clock=at_noon)


@pytest.fixture
def second(qtbot: QtBot, window: Window) -> Lot:
    qtbot.waitUntil(window.isActiveWindow)
    (lot,) = [lot for lot in window.desk.records.every(Lot) if lot.lot_number == "26-0401B"]
    return lot


def states(window: Window, on: date | None = None) -> dict[str, str]:
    farm = window.desk.farm
    assert farm is not None
    now = standing(window.desk.records, farm, on or window.desk.clock().date())
    return {known.lot.lot_number: known.state for known in now.lots}


def lot_told(window: Window) -> str:
    QApplication.processEvents()
    return " ".join(visible_words(today(window).lot_card))


def heading(window: Window) -> str:
    return today(window).lot_card.heading.text()


def test_a_lot_that_is_not_fed_yet_leaves_the_day_as_it_is_until_the_change_over(
    window: Window, second: Lot, answers: Answers
) -> None:
    step = sign(window, second, "Not")
    assert not step.fed_from.isVisible()
    assert heading(window).startswith("25-0302A")
    assert needs(window) == ["Lot 26-0401B is weighed in; change over when lot 25-0302A is finished."]
    answers.yes = False
    press(row(window, "26-0401B"), "Change over")
    assert "those of lot 25-0302A no more" in answers.asked[-1]
    assert heading(window).startswith("25-0302A")
    answers.yes = True
    press(row(window, "26-0401B"), "Change over")
    assert heading(window).startswith("26-0401B")
    assert "Red scoop: the line of lot 26-0401B is drawn since its weigh-in, 13/16 in down" in needs(window)[0]
    assert "Wipe out the old line (1/2 in)" in needs(window)[0]  # there are two on it now
    drawing = today(window).lot_card.drawing
    assert "Wipe out 1/2 in" in drawing.words()
    assert "still bears an old line, 1/2 in down the wall" in lot_told(window)
    press(row(window, "Red scoop"), "Old line off, label on")
    assert needs(window) == []
    assert "Wipe out" not in drawing.words()
    assert "still bears" not in lot_told(window)


def test_sign_off_stays_where_it_is_while_the_feeding_is_asked_for_and_chosen(window: Window, second: Lot) -> None:
    step = open_sign_off(window, second)
    QApplication.processEvents()
    stood = step._sign_button.mapTo(window, QPoint(0, 0))
    QTest.mouseClick(step._sign_button, Qt.MouseButton.LeftButton)
    QApplication.processEvents()
    assert step._asked_for.text() == "Say from which feeding on the lot is fed, then sign off."
    assert step._asked_for.width() >= step._asked_for.sizeHint().width()
    assert step.fed_from.ways.hasFocus()
    for chosen in range(step.fed_from.ways.count()):
        assert step._sign_button.mapTo(window, QPoint(0, 0)) == stood
        step.fed_from.ways.setCurrentIndex(chosen)
        QApplication.processEvents()
        assert step._asked_for.text() == ""


def test_today_called_by_its_key_begins_with_what_is_needed(qtbot: QtBot, empty_desk: Desk) -> None:
    """Not with the spot fill, to which Qt gave the keys where none had them on this page before."""
    window = Window(empty_desk)  # the first start, and from there to the weigh-in: Today was never looked at
    qtbot.addWidget(window)
    with qtbot.waitExposed(window):
        window.show()
    delivered(empty_desk.records)  # a farm with all that is asked for at first
    empty_desk.show_farm(empty_desk.records.every(Farm)[0].id)
    qtbot.waitUntil(window.isActiveWindow)
    weigh(window, lot_of(empty_desk))
    sign(window, lot_of(empty_desk))
    QTest.keyClick(window, Qt.Key.Key_1, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: window.current_page.key == "today")
    qtbot.wait(1)
    assert window.focusWidget() is today(window).rows[0].button


def test_today_come_back_to_begins_at_the_top_unless_something_is_typed(
    window: Window, second: Lot, qtbot: QtBot
) -> None:
    window.resize(1024, 500)
    sign(window, second, "From")
    page = today(window)
    bar, spot = page.findChildren(QScrollArea)[0].verticalScrollBar(), page.spot_card.weight
    qtbot.waitUntil(lambda: bar.maximum() > 0)
    for typed, at in (("", 0), ("9.4", bar.maximum())):
        spot.set_text(typed)
        bar.setValue(bar.maximum())
        window.show_page("lots")
        window.show_page("today")
        assert bar.value() == at


def test_the_keys_go_on_after_the_question_with_what_comes_next(window: Window, second: Lot, qtbot: QtBot) -> None:
    sign(window, second, "Not")
    window.desk.ask = Ask(window)
    (asking,) = row(window, "26-0401B").buttons
    asking.setFocus()
    QTest.keyClick(asking, Qt.Key.Key_Space)
    (box,) = window.findChildren(QMessageBox)
    qtbot.waitUntil(box.isActiveWindow)
    assert "Is any of lot 25-0302A left?" in box.text()  # nobody said how much came of it
    answers = [each.text() for each in box.buttons() if each.text() != "Cancel"]
    assert answers == ["&Change over, some is left", "Change &over, none is left"]  # each with a letter of its own
    (yes,) = [each for each in box.buttons() if each.text() == answers[0]]
    QTest.keyClick(yes, Qt.Key.Key_Space)
    assert heading(window).startswith("26-0401B")
    assert window.focusWidget() is today(window).rows[0].button


def test_a_slip_of_the_button_is_undone_where_it_was_pressed(window: Window, second: Lot, answers: Answers) -> None:
    sign(window, second, "From")
    before = needs(window)
    assert "Wipe out the old line" in before[0]
    words = [window.desk.records.find(Lot, lot_of(window.desk).id).scoops_marked]
    press(row(window, "Red scoop"), "Old line off, label on")
    assert needs(window) == before[1:]
    assert window._notice.way.isVisible()
    window.desk.keep(replace(window.desk.records.find(Lot, second.id), note="Two bags are torn."))
    window._notice.way.click()
    assert needs(window) == before
    assert [window.desk.records.find(Lot, lot_of(window.desk).id).scoops_marked] == words
    assert window.desk.records.find(Lot, second.id).note == "Two bags are torn."
    assert not window._notice.way.isVisible()
    assert "is not marked for lot 26-0401B" in window._notice.text()
    assert "It bears that of lot 25-0302A." in window._notice.text()


@pytest.mark.parametrize(("none_left", "state"), [(True, "finished"), (False, "left_over")])
def test_a_sign_off_that_changes_over_asks_what_is_left_and_can_be_undone(
    window: Window, second: Lot, answers: Answers, none_left: bool, state: str
) -> None:
    answers.other = none_left
    sign(window, second, "From")
    assert answers.asked[-1].startswith("Is any of lot 25-0302A left?")
    assert window._notice.text() == "Signed off. Lot 26-0401B is in use."
    assert states(window) == {"25-0302A": state, "26-0401B": "in_use"}
    window._notice.way.click()
    assert window._notice.text() == "Taken back: lot 25-0302A is in use."
    assert states(window) == {"25-0302A": "in_use", "26-0401B": "waiting"}
    press(row(window, "26-0401B"), "Change over")
    assert states(window) == {"25-0302A": state, "26-0401B": "in_use"}
    window._notice.way.click()
    assert states(window) == {"25-0302A": "in_use", "26-0401B": "waiting"}


def test_the_day_chosen_at_sign_off_is_told_back(window: Window, second: Lot) -> None:
    step = open_sign_off(window, second)
    step.fed_from.ways.setCurrentIndex(1)
    step.fed_from.days.setCurrentIndex(3)
    step.fed_from.feedings.setCurrentIndex(1)
    day = day_text(step.fed_from.days.currentData())
    step._initials.setFocus()
    step._sign_button.click()
    assert window._notice.text() == f"Signed off. Lot 26-0401B is fed from {day}, Feeding 2."
    assert f"Lot 26-0401B is fed from {day}, Feeding 2, lot 25-0302A until then." in step.hands.text()


def test_who_does_not_answer_what_is_left_has_not_signed(window: Window, second: Lot, answers: Answers) -> None:
    answers.yes = False
    sign(window, second, "From")
    assert not [signed for signed in window.desk.records.sign_offs(second.farm_id) if signed.lot_id == second.id]


def test_whoever_sees_it_later_takes_it_back_beside_the_label(window: Window, second: Lot, qtbot: QtBot) -> None:
    sign(window, second, "From")
    press(row(window, "Red scoop"), "Old line off, label on")
    assert not any("Red scoop" in words for words in needs(window))
    window.show_page("tables", f"label:{second.id}")
    made = window.current_page.findChildren(ScoopPick)[0]
    assert made.state.text() == "marked"
    assert made.on_button.text() == "Not marked after all"
    made.on_button.click()
    assert "What line is on it now, nobody has told." in window._notice.text()
    assert made.on_button.text() == "Line and label are on"
    assert "the line of lot 26-0401B is drawn since its weigh-in" in needs(window)[0]


def test_beside_the_label_a_line_drawn_at_the_weigh_in_lacks_only_its_label(window: Window, second: Lot) -> None:
    sign(window, second, "From")
    window.show_page("tables", f"label:{second.id}")
    (made,) = window.current_page.findChildren(ScoopPick)
    assert made.state.text() == "line drawn, label to come"


def test_a_label_saved_leaves_the_question_whether_it_is_on_the_scoop(window: Window, second: Lot) -> None:
    sign(window, second, "From")
    assert heading(window).startswith("26-0401B")
    signed = window.desk.records.sign_offs(second.farm_id)[-1]
    print_label(window, second)
    asked = row(window, "Red scoop")
    assert asked.words == (
        "Red scoop: the line of lot 26-0401B is drawn since its weigh-in, 13/16 in down the wall. Wipe out the old "
        "line (1/2 in) and put the label on."
    )
    assert [each.text() for each in asked.buttons] == ["&Old line off, label on", "&Print the label"]
    press(asked, "Old line off, label on")
    assert needs(window) == []
    (told,) = window.desk.records.find(Lot, second.id).scoops_marked or ()
    assert (told.sign_off_id, told.on) == (signed.id, window.desk.clock().date())


def visible_words(part: QWidget) -> list[str]:
    return [each.text() for each in part.findChildren(QLabel) if each.isVisible()]


def test_the_question_is_asked_before_signing_and_only_while_another_lot_is_fed(window: Window, second: Lot) -> None:
    step = open_sign_off(window, second)
    assert step.fed_from.isVisible()
    taken = mnemonics(window.current_page)
    assert len(taken) == len(set(taken))
    assert nameless(window.current_page) == []
    assert step.fed_from.ways.hasFocus()  # what is asked comes before the initials
    told = "Say from which feeding on the lot is fed, then sign off."
    assert told not in visible_words(step)
    step._initials.setFocus()
    QTest.keyClick(focused(), Qt.Key.Key_Return)
    assert told in visible_words(step)  # beneath the question, beside what was pressed
    guide = page_of(window).guide
    assert guide is not None
    assert guide.signed_off is None
    assert step.fed_from.ways.hasFocus()
    for _ in range(2):
        QTest.keyClick(step.fed_from.ways, Qt.Key.Key_Down)
    assert told not in visible_words(step)
    for box in (step.fed_from.days, step.fed_from.feedings):
        assert box.isVisible()
        QTest.keyClick(box, Qt.Key.Key_Down)
    step._initials.setFocus()
    QTest.keyClick(focused(), Qt.Key.Key_Return)
    QTest.keyClick(step._sign_button, Qt.Key.Key_Return)
    assert guide.signed_off is not None
    kept = window.desk.records.find(Lot, second.id)
    assert (kept.fed_from and kept.fed_from.isoformat(), kept.fed_from_feeding) == ("2026-03-04", 1)
    assert needs(window) == ["Lot 26-0401B is fed from Mar 4, 2026 on, Feeding 2; lot 25-0302A until then."]
    assert states(window, kept.fed_from) == {"25-0302A": "in_use", "26-0401B": "waiting"}


def test_what_says_that_a_scoop_is_marked_stands_where_it_is_told_not_to_be(window: Window, second: Lot) -> None:
    step = sign(window, second, "From")
    assert step._on_button.isVisible()
    assert "Once that is done, press “Old line off, label on”." in step.hands.text()
    taken = mnemonics(window.current_page)
    assert len(taken) == len(set(taken))
    window.show_page("weigh_in")
    page_of(window).close_guide()
    texts = [label.text() for label in page_of(window)._chooser.findChildren(type(step.hands))]
    assert any("line drawn, label to come (once that is done, say so under Today)" in text for text in texts)


def test_the_scoop_is_said_to_be_marked_on_the_page_of_the_sign_off(window: Window, second: Lot) -> None:
    step = sign(window, second, "From")
    assert step.first_field() is step._tables_button  # the plan first
    step._on_button.click()
    assert not step._on_button.isVisible()
    assert "press “" not in step.hands.text()
    assert not any("Red scoop" in words for words in needs(window))
    window._notice.way.click()
    window.show_page("weigh_in")
    assert step._on_button.isVisible()


def test_once_all_is_done_the_sign_off_asks_for_nothing_and_lights_nothing(window: Window, second: Lot) -> None:
    step = sign(window, second, "From")
    assert "Make the plan first, under “Batch tables and wall chart”: then the label can bear" in step.hands.text()
    assert "Print the label." in step.hands.text()
    assert lit(step) == ["Batch tables and wall chart"]
    print_label(window, second)
    assert "Make the plan first" not in step.hands.text()
    assert "Put the label on." in step.hands.text()
    assert "Print the label." not in step.hands.text()
    assert lit(step) == ["Old line off, label on"]
    step._on_button.click()
    assert step.hands.text() == "Signed. Make a plan for the batch tables and the wall chart."
    assert lit(step) == ["Batch tables and wall chart"]
    plan_without_chart(window)
    assert step.hands.text() == "All of it is done."
    assert lit(step) == []
    window.desk.keep(replace(window.desk.records.find(Lot, second.id), finished_on=window.desk.clock().date()))
    assert step.hands.text() == "Signed. This lot is not fed now."
    assert lit(step) == []


def test_a_label_that_was_never_printed_here_is_not_called_done(window: Window, second: Lot) -> None:
    step = sign(window, second, "From")
    card = today(window).spot_card
    assert not card.to_mark.isVisibleTo(card)  # the line that is on the scoop is that of the lot before
    assert card.level.isChecked()
    assert card.what.text().startswith("Struck level only, until ")
    window.show_page("weigh_in")
    step._on_button.click()
    plan_without_chart(window)
    assert step.hands.text() == "All of it is done. The label of this line was not printed here."
    card = today(window).spot_card
    assert card.to_mark.isVisibleTo(card)
    assert card.to_mark.isChecked()


def test_a_label_printed_ahead_of_the_change_over_is_lit_no_more(window: Window, second: Lot) -> None:
    plan_without_chart(window)
    step = sign(window, second, "Not")
    assert "Make the plan first" not in step.hands.text()
    assert lit(step) == ["Print the scoop label"]
    print_label(window, second)
    assert lit(step) == []


def test_a_chart_that_does_not_hold_for_the_lot_is_what_comes_next(
    window: Window, second: Lot, monkeypatch: pytest.MonkeyPatch
) -> None:
    plan_without_chart(window)
    monkeypatch.setattr(step_sign_off, "chart_faults", lambda now: ["one"])
    step = sign(window, second, "From")
    assert "Print the wall chart." in step.hands.text()
    step._on_button.click()
    assert step.hands.text() == "Signed. Print the wall chart."
    assert lit(step) == ["Batch tables and wall chart"]


def test_a_lot_that_waits_is_not_asked_about(window: Window, second: Lot) -> None:
    assert not sign(window, second, "Not")._on_button.isVisible()


def test_every_page_tells_the_same_of_lots_and_scoops(window: Window, second: Lot) -> None:
    sign(window, second, "Not")
    window.show_page("weigh_in")
    page_of(window).close_guide()
    told = {card.accessibleName(): card for card in page_of(window)._chooser.findChildren(QPushButton)}
    assert "Weigh in again, 26-0401B" in told
    shown = page_of(window)._chooser.findChildren(type(today(window).title))
    texts = [label.text() for label in shown]
    assert any("waiting · Red scoop: line drawn, label to come" in text for text in texts)
    assert any("in use · Red scoop: marked" in text for text in texts)
    window.show_page("lots")
    lots = window.page("lots")
    column = [lots.model.index(n, 4).data() for n in range(2)]  # type: ignore[attr-defined]
    assert sorted(column) == ["in use", "waiting"]
