"""A scale by wire, over a pseudo-terminal: its weights land in the field, and what goes wrong is said."""

from __future__ import annotations

import os
import select
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import replace
from functools import partial

import pytest
from answers import Answers
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog, QLabel, QLineEdit, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from calibrator.desk.ask import Ask
from calibrator.desk.context import Desk
from calibrator.desk.forms.wire_form import SAMPLES, WireForm
from calibrator.desk.pages.weigh_in import WeighInPage
from calibrator.desk.weigh_in.step_fills import StepFills
from calibrator.desk.widgets.stray_keys import strays
from calibrator.desk.wire import GARBAGE_LINES
from calibrator.model import Fill, Lot, Scale, Scoop, Step, UnitSystem

pty = pytest.importorskip("pty", reason="needs a system with pseudo-terminals")
IN_TIME_S = 10
STREAM = "{still:ST},{any},{weight} {unit}"


class Wire:
    """The scale's end of the wire."""

    def __init__(self, desk: Desk) -> None:
        self.desk = desk
        self.end, other = pty.openpty()
        self.port = os.ttyname(other)
        os.set_blocking(self.end, False)
        self._other = other
        self._taken = 0
        take = desk.wire.take

        def counted(sent: bytes) -> None:
            self._taken += len(sent)
            take(sent)

        desk.wire.take = counted  # type: ignore[method-assign]

    def plug_in(self, mask: str = "", enters: bool = False) -> None:
        self.desk.settings.keep(scale_port=self.port, scale_mask=mask, scale_enters=enters)
        self.desk.wire.start()

    def send(self, *lines: str | bytes) -> None:
        """Send, and look until all of it came: the system may take its time to carry it, and may carry it in parts."""
        for line in lines:
            rest = line.encode() + b"\r\n" if isinstance(line, str) else line
            while rest:
                assert select.select([], [self.end], [], IN_TIME_S)[1], "the wire takes no more"
                due = self._taken + (sent := os.write(self.end, rest))
                rest = rest[sent:]
                while self._taken < due:
                    assert select.select([self._other], [], [], IN_TIME_S)[0], "what was sent never came"
                    self.desk.wire._look()

    def pull(self) -> None:
        for end in (self.end, self._other):
            if end >= 0:
                os.close(end)
        self.end = self._other = -1


@pytest.fixture
def wire(desk: Desk) -> Iterator[Wire]:
    made = Wire(desk)
    yield made
    desk.wire.stop()
    made.pull()


@pytest.fixture
def page(desk: Desk, qtbot: QtBot) -> WeighInPage:
    made = WeighInPage(desk)
    desk.changed.connect(made.reload)
    qtbot.addWidget(made)
    made.open(desk.records.every(Lot)[0].id)
    assert made.guide is not None
    scoop, scale = desk.records.every(Scoop)[0], desk.records.every(Scale)[0]
    made.guide.set(by="AB", scoop_id=scoop.id, scale_id=scale.id, target_mass_g=283.5, scale_zeroed=True)
    made.open_step(Step.LEVEL_FILLS)
    made.show()
    return made


def step(page: WeighInPage) -> StepFills:
    view = page._views[Step.LEVEL_FILLS]
    assert isinstance(view, StepFills)
    return view


def fills(page: WeighInPage) -> list[Fill]:
    assert page.guide is not None
    return page.guide.records.fills(page.guide.weigh_in.id)


def test_a_weight_lands_in_the_field_and_waits_for_enter(page: WeighInPage, wire: Wire) -> None:
    wire.plug_in()
    wire.send("11.6 oz")
    assert (step(page)._weight.text(), fills(page)) == ("11.6 oz", [])
    wire.send("11.7 oz")
    QTest.keyClick(step(page)._weight.line, Qt.Key.Key_Return)
    assert [(fill.typed, round(fill.mass_g, 2)) for fill in fills(page)] == [("11.7 oz", 331.69)]


def test_what_a_person_types_stays(page: WeighInPage, wire: Wire) -> None:
    wire.plug_in()
    QTest.keyClicks(step(page)._weight.line, "11.")
    wire.send("12.0 oz")
    assert step(page)._weight.text() == "11."


def test_at_once_where_that_is_chosen_each_still_weight_once(page: WeighInPage, wire: Wire) -> None:
    wire.plug_in(STREAM, enters=True)
    wire.send("US,GS,+ 5.20 oz", "ST,GS,+ 11.60 oz", "ST,GS,+ 11.60 oz", b"ST,GS,+ 11", b".60 oz\r")
    wire.send("US,GS,+ 3.00 oz", "ST,GS,+ 0.00 oz", "ST,GS,- 0.10 oz", "ST,GS,+ 11.60 oz")
    assert [fill.typed for fill in fills(page)] == ["11.60 oz", "11.60 oz"]


def test_with_a_key_on_the_scale_every_line_counts(page: WeighInPage, wire: Wire) -> None:
    wire.plug_in(enters=True)
    wire.send("330 g", "330 g")
    assert [fill.typed for fill in fills(page)] == ["330 g", "330 g"]


def test_an_impossible_weight_is_refused_as_if_typed(page: WeighInPage, wire: Wire) -> None:
    wire.plug_in(enters=True)
    wire.send("3 kg")
    assert fills(page) == []
    assert step(page)._weight.message


def test_no_digits_were_swapped_in_what_the_scale_sent_itself(page: WeighInPage, wire: Wire) -> None:
    """336 beside three of 363 is asked about where it was typed; the scale's own figure is only far off."""
    wire.plug_in(enters=True)
    wire.send("363 g", "363 g", "363 g", "336 g")
    assert [fill.typed for fill in fills(page)] == ["363 g", "363 g", "363 g", "336 g"]
    assert "meant" not in step(page)._odd.text()
    QTest.keyClicks(step(page)._weight.line, "336 g")  # the same figure, from a person
    QTest.keyClick(step(page)._weight.line, Qt.Key.Key_Return)
    assert "was 12.8 oz (363 g) meant?" in step(page)._odd.text().replace("\N{NO-BREAK SPACE}", " ")


def test_a_scale_that_types_whole_lines_is_read_by_the_mask(page: WeighInPage) -> None:
    page.desk.settings.keep(scale_mask=STREAM)
    for line in ("US,GS,+ 11.50 oz", "ST,GS,+ 11.60 oz"):
        step(page)._weight.line.selectAll()
        QTest.keyClicks(step(page)._weight.line, line)
        QTest.keyClick(step(page)._weight.line, Qt.Key.Key_Return)
    assert [fill.typed for fill in fills(page)] == ["11.60 oz"]


def test_garbage_is_told_and_forgotten_when_sense_comes(page: WeighInPage, wire: Wire) -> None:
    wire.plug_in()
    wire.send(*[b"\xff\x00\x1b[2J<b>\r\n"] * GARBAGE_LINES, b"\xff" * 5000)
    told = step(page)._wire_words
    assert "lines that are not understood" in told.text()
    assert told.isVisible()
    wire.send(b"\r\n", "330 g")
    assert (step(page)._weight.text(), told.isVisible()) == ("330 g", False)


def test_unplugged_is_told_and_typing_goes_on(page: WeighInPage, wire: Wire, answers: Answers) -> None:
    wire.plug_in()
    wire.pull()
    page.desk.wire._look()
    assert "is gone" in step(page)._wire_words.text()
    page.desk.wire._look()
    assert "keeps looking" in step(page)._wire_words.text()
    QTest.keyClicks(step(page)._weight.line, "11.6")
    QTest.keyClick(step(page)._weight.line, Qt.Key.Key_Return)
    assert (len(fills(page)), answers.told) == (1, [])


def test_plugged_in_again_it_is_heard_again(desk: Desk, wire: Wire) -> None:
    heard: list[str] = []
    desk.wire.weighed.connect(heard.append)
    wire.plug_in()
    port = wire.port
    desk.settings.keep(scale_port="/dev/no-such-port")
    desk.wire.start()
    assert "No scale at /dev/no-such-port" in desk.wire.words
    desk.settings.keep(scale_port=port)
    desk.wire._look()
    assert desk.wire.words == ""
    wire.send("330 g")
    assert heard == ["330 g"]


@pytest.fixture
def form(desk: Desk, qtbot: QtBot) -> WireForm:
    made = WireForm(desk)
    qtbot.addWidget(made)
    made.reload()
    made.show()
    return made


def type_over(form: WireForm, mask: str, line: str) -> str:
    for field, text in ((form.looks, mask), (form.line, line)):
        field.line.selectAll()
        QTest.keyClick(field.line, Qt.Key.Key_Backspace)
        QTest.keyClicks(field.line, text)
    return form.understood.text() if not form.looks.message else form.looks.message


SAMPLE = SAMPLES[UnitSystem.FARM]


def test_the_example_is_in_the_units_of_the_farm(form: WireForm) -> None:
    assert form.desk.farm is not None
    for system, other in ((UnitSystem.METRIC, UnitSystem.FARM), (UnitSystem.FARM, UnitSystem.METRIC)):
        form.desk.keep(replace(form.desk.farm, units=system))
        form.reload()
        told = " ".join(words.text() for words in form.findChildren(QLabel))
        assert SAMPLES[system] in told
        assert SAMPLES[other] not in told


def test_the_tester_says_what_a_line_means(form: WireForm) -> None:
    assert type_over(form, STREAM, SAMPLE) == "Understood: 11.6 oz"
    assert "the scale moves" in type_over(form, STREAM, SAMPLE.replace("ST", "US"))
    assert "does not fit" in type_over(form, "", SAMPLE)
    assert "is no weight" in type_over(form, "", "0.0 g")
    assert "Write {weight} once" in type_over(form, "{wait}", SAMPLE)


def test_listening_and_letting_go(form: WireForm, wire: Wire) -> None:
    form.port.setCurrentText(wire.port)
    form.listen_button.click()
    assert form.state.text() == f"Listening at {wire.port}."
    wire.send("330 g")
    assert "330 g" in form.last.text()
    form.stop_button.click()
    assert (form.state.text(), form.desk.settings.now.scale_port) == ("No scale with a cable.", "")


def test_what_is_typed_and_not_kept_is_told_and_stays(form: WireForm, desk: Desk) -> None:
    form.reload()
    assert not form.typed
    form.looks.line.setText("{weight} {unit}")
    form.looks.edited.emit()
    form.enters.setChecked(not form.enters.isChecked())
    assert any(words.text() == "Not kept yet" for words in form.findChildren(QLabel))
    form.reload()
    assert form.looks.text() == "{weight} {unit}"
    form.listen()
    assert not form.typed
    assert not any(words.text() == "Not kept yet" for words in form.findChildren(QLabel))


def test_a_mask_that_is_wrong_is_not_remembered(form: WireForm) -> None:
    form.port.setCurrentText("/dev/null")
    form.looks.set_text("{nothing}")
    form.listen_button.click()
    assert form.desk.settings.now.scale_port == ""


def test_without_a_scale_its_library_is_never_loaded() -> None:
    script = "import sys, calibrator.desk.app, calibrator.desk.pages.weigh_in; sys.exit('serial' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", script], check=False, timeout=100).returncode == 0


def types(widget: QWidget, text: str, pace_ms: int = 4, start_ms: int = 1_000_000) -> None:
    """As a keyboard does that is no person: each key `pace_ms` after the one before, to where the cursor is."""
    for number, sign in enumerate(text):
        key = Qt.Key.Key_Return if sign == "\r" else Qt.Key(ord(sign.upper()))
        for kind in (QEvent.Type.KeyPress, QEvent.Type.KeyRelease):
            event = QKeyEvent(kind, key, Qt.KeyboardModifier.NoModifier, sign)
            event.setTimestamp(start_ms + number * pace_ms)
            QApplication.sendEvent(QApplication.focusWidget() or widget, event)


def typed_at(widget: QWidget, text: str, pace_ms: int = 4, start_ms: int = 1_000_000) -> None:
    """The same into a widget of a window that may not be the active one."""
    for number, sign in enumerate(text):
        key = Qt.Key.Key_Return if sign == "\r" else Qt.Key(ord(sign.upper()))
        event = QKeyEvent(QEvent.Type.KeyPress, key, Qt.KeyboardModifier.NoModifier, sign)
        event.setTimestamp(start_ms + number * pace_ms)
        QApplication.sendEvent(widget, event)


def test_a_scale_as_a_keyboard_enters_one_weight_after_another(page: WeighInPage) -> None:
    line = step(page)._weight.line
    line.setFocus()
    types(line, "11.6\r11.7 oz\r 331.2 g\r\r11.8\r")
    assert [fill.typed for fill in fills(page)] == ["11.6", "11.7 oz", "331.2 g", "11.8"]
    types(line, "3 kg\r11.5\r")  # what was refused is typed over
    assert [fill.typed for fill in fills(page)][4:] == ["11.5"]


@pytest.mark.parametrize("name", ["_undo", "_strike", "_redo", "_bag", "_together"])
def test_a_burst_elsewhere_presses_and_changes_nothing(page: WeighInPage, answers: Answers, name: str) -> None:
    view = step(page)
    view._weight.line.setFocus()
    types(view._weight.line, "11.6\r")
    view._view.selectRow(0)
    widget = getattr(view, name)
    widget.setEnabled(True)
    before = (view._bag.value(), view._together.value())
    widget.setFocus()
    types(widget, "11.72\r")
    assert [(fill.typed, fill.counts) for fill in fills(page)] == [("11.6", True)]
    assert (view._bag.value(), view._together.value()) == before
    assert answers.asked == []
    assert view._weight.text() == "11.72"
    QTest.keyClick(view._weight.line, Qt.Key.Key_Return)
    assert [fill.typed for fill in fills(page)] == ["11.6", "11.72"]


def test_a_burst_at_the_sign_off_signs_nothing(page: WeighInPage, answers: Answers) -> None:
    """Nor does it press the button that leads on."""
    page._next.setEnabled(True)
    page._next.setFocus()
    types(page._next, "ST,GS,+ 11.60 oz\r")
    assert page.guide is not None
    assert page.guide.step is Step.LEVEL_FILLS


@pytest.mark.parametrize("kind", ["reason", "confirm", "tell"])
def test_a_weight_that_a_scale_types_into_a_question_is_neither_lost_nor_its_answer(
    page: WeighInPage, kind: str
) -> None:
    view = step(page)
    ask, came = Ask(), []
    if kind == "reason":
        ask.reason("Why?", came.append)
    elif kind == "confirm":
        ask.confirm("Really?", "Yes", partial(came.append, "yes"))
    else:
        ask.tell("Something went wrong.")
    (dialog,) = (top for top in page.window().findChildren(QDialog) if top.isVisible())
    QApplication.processEvents()
    within = dialog.focusWidget()
    assert within is not None
    typed_at(within, "sp")
    typed_at(within, "11.72\r", start_ms=2_000_000)
    assert dialog.isVisible()
    assert came == []
    assert view._weight.text() == "11.72"
    if kind == "reason":
        assert isinstance(within, QLineEdit)
        assert within.text() == "sp"
        typed_at(within, "ill 3 g\r", pace_ms=90, start_ms=3_000_000)
        assert came == ["spill 3 g"]
    dialog.close()


def test_a_stray_weight_that_finds_another_in_the_field_is_told(page: WeighInPage) -> None:
    view = step(page)
    told: list[str] = []
    page.desk.said.connect(told.append)
    QTest.keyClicks(view._weight.line, "11.9")
    page._next.setEnabled(True)
    page._next.setFocus()
    types(page._next, "11.72\r")
    assert view._weight.text() == "11.9"
    assert "typed 11.72" in told[-1]
    assert "11.9 is in the field" in told[-1]


def test_a_moving_scale_that_strays_is_passed_over(page: WeighInPage) -> None:
    page.desk.settings.keep(scale_mask=STREAM)
    page._next.setEnabled(True)
    page._next.setFocus()
    types(page._next, "US,GS,+ 11.50 oz\r")
    assert step(page)._weight.text() == ""
    page._next.setFocus()
    types(page._next, "ST,GS,+ 11.60 oz\r")
    assert step(page)._weight.text() == "11.60 oz"


def test_spaces_of_a_quick_finger_are_no_scale(page: WeighInPage, monkeypatch: pytest.MonkeyPatch) -> None:
    """The Enter after them belongs to the finger too; a weight with spaces before it is still a scale's."""
    came: list[str] = []
    strays.came.connect(came.append)
    entered: list[int] = []
    monkeypatch.setattr(QPushButton, "keyPressEvent", lambda button, event: entered.append(event.key()))
    undo = step(page)._undo
    undo.setEnabled(True)
    undo.setFocus()
    types(undo, "   \r")
    assert (came, entered) == ([], [Qt.Key.Key_Space] * 3 + [Qt.Key.Key_Return])
    undo.setFocus()
    types(undo, "   11.6\r", start_ms=2_000_000)
    assert came == ["11.6"]
    assert entered[4:].count(Qt.Key.Key_Return) == 0


def test_fingers_press_buttons_and_type_counts_as_ever(page: WeighInPage, answers: Answers) -> None:
    view = step(page)
    view._weight.line.setFocus()
    types(view._weight.line, "11.6\r")
    view._bag.setFocus()
    view._bag.selectAll()
    types(view._bag, "12\r", pace_ms=90)
    assert view._bag.value() == 12
    view._undo.setFocus()
    types(view._undo, "11.7\r", pace_ms=90)
    assert [fill.counts for fill in fills(page)] == [False]
