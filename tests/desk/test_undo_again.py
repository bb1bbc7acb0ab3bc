"""What was done to the fills can be taken back also after the program was closed: the records know it."""

from __future__ import annotations

import pytest
from answers import Answers, Onward, at_noon
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.pages.weigh_in import WeighInPage
from calibrator.desk.weigh_in.step_fills import StepFills
from calibrator.model import FillWay, Lot, Scale, Scoop, Step
from calibrator.records import Records

LEVEL = ("11.6", "11.7", "11.8")


class Seat:
    """The weigh-in page as it is after each start of the program, and hands."""

    def __init__(self, qtbot: QtBot, records: Records, answers: Answers) -> None:
        self._qtbot, self._answers = qtbot, answers
        self.records = records
        self._make()

    def start(self) -> None:
        self.page.close()
        self._make()

    def _make(self) -> None:
        desk = Desk(self.records, self._answers, clock=Onward(at_noon()))
        desk.initials = "MK"
        self.page = WeighInPage(desk)
        self._qtbot.addWidget(self.page)
        desk.changed.connect(self.page.reload)
        self.page.resize(1024, 700)
        with self._qtbot.waitActive(self.page):
            self.page.show()
            self.page.activateWindow()
        self.page.open(self.records.every(Lot)[0].id)

    @property
    def view(self) -> StepFills:
        assert self.page.guide is not None
        view = self.page._views[self.page.guide.step]
        assert isinstance(view, StepFills)
        return view

    def enter(self, *texts: str) -> None:
        for text in texts:
            self.view._weight.setFocus()
            QTest.keyClicks(self.view._weight.line, text)
            QTest.keyClick(self.view._weight.line, Qt.Key.Key_Return)

    def counts(self, way: FillWay = FillWay.LEVEL) -> list[bool]:
        assert self.page.guide is not None
        return [fill.counts for fill in self.page.guide.fills_of(way)]

    def strike(self, row: int) -> None:
        self.view._view.selectRow(row)
        self.view._strike.click()

    def undo(self) -> None:
        QTest.keyClick(self.view._weight.line, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)


@pytest.fixture
def seat(qtbot: QtBot, desk: Desk, answers: Answers) -> Seat:
    made = Seat(qtbot, desk.records, answers)
    guide = made.page.guide
    assert guide is not None
    guide.set(
        by="MK",
        scoop_id=made.records.every(Scoop)[0].id,
        scale_id=made.records.every(Scale)[0].id,
        target_mass_g=283.5,
        target_typed="10 oz",
        scale_zeroed=True,
    )
    made.page.open_step(Step.LEVEL_FILLS)
    return made


def test_the_fill_typed_last_is_taken_back_after_a_restart(seat: Seat) -> None:
    seat.enter(*LEVEL)
    seat.start()
    assert seat.view._undo.isEnabled()
    assert "entering 11.8" in seat.view._undo.toolTip()
    seat.view._undo.click()
    assert seat.counts() == [True, True, False]
    seat.undo()
    assert seat.counts() == [True, False, False]
    seat.view._redo.click()
    assert seat.counts() == [True, True, False]


def test_what_was_taken_back_before_the_restart_is_not_taken_back_twice(seat: Seat) -> None:
    seat.enter(*LEVEL)
    seat.undo()
    seat.start()
    assert "entering 11.7" in seat.view._undo.toolTip()
    seat.undo()
    assert seat.counts() == [True, False, False]
    seat.undo()
    assert seat.counts() == [False, False, False]
    assert not seat.view._undo.isEnabled()
    assert "strike it out" in seat.view._undo.toolTip()


def test_a_fill_done_again_is_taken_back_once_more(seat: Seat) -> None:
    seat.enter(*LEVEL)
    seat.undo()
    seat.view._redo.click()
    seat.start()
    seat.undo()
    assert seat.counts() == [True, True, False]


def test_striking_out_is_undone_after_a_restart_with_its_reason_and_again(seat: Seat, answers: Answers) -> None:
    seat.enter(*LEVEL)
    seat.strike(2)  # the oldest stands last
    assert seat.counts() == [False, True, True]
    seat.start()
    assert "striking out 11.6" in seat.view._undo.toolTip()
    seat.undo()
    assert seat.counts() == [True, True, True]
    seat.start()
    assert "entering 11.8" in seat.view._undo.toolTip()
    seat.strike(2)
    seat.strike(1)
    seat.strike(2)  # and counted again
    seat.start()
    assert "counting 11.6" in seat.view._undo.toolTip()
    seat.undo()
    assert seat.counts() == [False, False, True]
    assert seat.page.guide is not None
    assert seat.page.guide.fills_of(FillWay.LEVEL)[0].struck_reason == answers.words


def test_fills_to_a_line_that_was_moved_are_not_taken_back(seat: Seat) -> None:
    """Nothing is taken back that is not in view."""
    seat.enter(*LEVEL)
    guide = seat.page.guide
    assert guide is not None
    guide.set(drawn_line_mm=13.0, drawn_line_typed="13 mm")
    seat.page.open_step(Step.FILLS_TO_MARK)
    seat.enter("9.4", "9.5")
    assert seat.view._undo.isEnabled()
    for line_mm, kept in ((9.0, False), (13.0, True)):
        guide.set(drawn_line_mm=line_mm, drawn_line_typed="")
        seat.page.reload()
        assert seat.view._undo.isEnabled() == kept
        assert seat.counts(FillWay.TO_MARK) == [True, True] * kept
    seat.start()
    seat.undo()
    assert seat.counts(FillWay.TO_MARK) == [True, False]
    assert seat.counts(FillWay.LEVEL) == [True] * 3


def test_nothing_is_taken_back_of_what_was_signed(seat: Seat) -> None:
    seat.enter(*LEVEL)
    guide = seat.page.guide
    assert guide is not None
    guide.set(drawn_line_mm=13.0, drawn_line_typed="13 mm")
    seat.page.open_step(Step.SIGN_OFF)
    QApplication.processEvents()
    guide.sign_off("MK")
    seat.page.reload()
    seat.page.open_step(Step.LEVEL_FILLS)
    assert not seat.view._undo.isEnabled()
