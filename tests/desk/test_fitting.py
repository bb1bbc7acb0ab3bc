"""Dialogs fit the window beneath them, on a screen of letters twice as large too; what does not fit is scrolled to."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog, QLabel, QLineEdit, QPushButton, QScrollArea
from pytestqt.qtbot import QtBot
from screens import too_large
from speaking import speaking

from calibrator.desk.ask import Ask
from calibrator.desk.bring_in.dialog import BringInDialog
from calibrator.desk.bring_in.work import Bringing
from calibrator.desk.context import Desk
from calibrator.desk.help.hands import all_of_them
from calibrator.desk.help.view import HandsDialog
from calibrator.desk.how.view import HowDialog
from calibrator.desk.how.working import Part, Working
from calibrator.desk.lot_history.dialog import LotHistoryDialog
from calibrator.desk.server.dialog import ServerDialog
from calibrator.desk.server.door import ServerDoor
from calibrator.desk.trial.dialog import LEAST_PX, TrialDialog
from calibrator.desk.window import LEAST_SEEN, Window
from calibrator.desk.words import usual_slips
from calibrator.model import FillWay, Lot
from calibrator.model.underway import unwatched
from calibrator.records import RecordsUnreachable

TWICE = (952, 500)  # what a screen of 1920 by 1080 leaves at 200 %
PARTS = tuple(Part(f"Step {number}", "one by another", f"{number} g") for number in range(30))
LONG = Working("Many steps", PARTS, ("common practice",))
ADDRESS = "postgresql://feeder@dairy-office:5433/calibrator"


@pytest.fixture
def low(qtbot: QtBot, desk: Desk) -> Iterator[Window]:
    with speaking("es"):
        made = Window(desk)
        qtbot.addWidget(made)
        made.setMinimumSize(LEAST_SEEN)
        made.resize(*TWICE)
        made.show()
        yield made
        made._closing = True
        made.close()


def settle() -> None:
    for _ in range(4):
        QApplication.processEvents()


def dialogs(window: Window, folder: Path) -> Iterator[QDialog]:
    desk = window.desk
    assert desk.farm is not None
    yield HowDialog((LONG,), window)
    yield from (HandsDialog(work, window.desk, window) for work in all_of_them())
    yield TrialDialog(desk, desk.farm, window)
    yield LotHistoryDialog(desk, desk.records.every(Lot)[0], window)
    (folder / "past.csv").write_text("Lote;Peso (oz)\nA;11,2\n", "utf-8")
    work = Bringing(desk.records, desk.farm, folder / "past.csv", "MK")
    work.look(unwatched)
    yield BringInDialog(desk, work, window)
    server = ServerDialog(ADDRESS, None, window)
    server._failed(RecordsUnreachable("not_listening", place=ADDRESS))
    yield server
    door = ServerDoor(ADDRESS, ADDRESS, "3", alone=True, parent=window)
    door._failed(RecordsUnreachable("not_listening", place=ADDRESS))
    yield door


def test_every_dialog_fits_at_twice_the_size_and_its_end_can_be_reached(low: Window, tmp_path: Path) -> None:
    kinds = set()
    for dialog in dialogs(low, tmp_path):
        dialog.show()
        settle()
        kinds.add(type(dialog))
        assert too_large(low) == []
        for area in dialog.findChildren(QScrollArea):
            inner = area.widget()
            assert inner.width() <= area.viewport().width(), type(dialog)
            bar = area.verticalScrollBar()
            assert inner.height() - area.viewport().height() <= bar.maximum(), type(dialog)
        dialog.done(0)
    assert len(kinds) >= 7


def test_words_that_come_later_are_in_view_where_there_is_room(window: Window) -> None:
    window.resize(1280, 800)
    server = ServerDialog(ADDRESS, None, window)
    server.show()
    settle()
    server._failed(RecordsUnreachable("password", place=ADDRESS))
    settle()
    (area,) = server.findChildren(QScrollArea)
    assert area.verticalScrollBar().maximum() == 0
    server.done(0)


@pytest.mark.parametrize("size", [(1024, 700), (1280, 800), (1920, 1080)])
def test_the_fills_of_a_trial_are_in_view_beneath_their_field(window: Window, size: tuple[int, int]) -> None:
    window.resize(*size)
    assert window.desk.farm is not None
    dialog = TrialDialog(window.desk, window.desk.farm, window)
    dialog.show()
    settle()
    top = dialog.fills.mapTo(dialog, QPoint()).y()
    assert top > dialog.enter_button.mapTo(dialog, QPoint()).y()
    assert top + LEAST_PX < dialog.height()
    dialog.done(0)


def test_where_there_is_room_a_dialog_shows_all_at_once(window: Window) -> None:
    window.resize(1280, 800)
    for work in all_of_them():
        dialog = HandsDialog(work, window.desk, window)
        dialog.show()
        settle()
        assert dialog.area.verticalScrollBar().maximum() == 0
        dialog.close()


def at(area: QScrollArea) -> int:
    return area.verticalScrollBar().value()


def test_what_is_only_read_scrolls_by_its_keys_and_closes_by_enter(low: Window, qtbot: QtBot) -> None:
    dialog = HowDialog((LONG,), low)
    with qtbot.waitActive(dialog):
        dialog.show()
    settle()
    assert dialog.close_button.hasFocus()
    seen = [at(dialog.area)]
    for key in (Qt.Key.Key_Down, Qt.Key.Key_PageDown, Qt.Key.Key_End):
        QTest.keyClick(dialog.close_button, key)
        seen.append(at(dialog.area))
    assert seen == sorted(set(seen))
    assert seen[-1] == dialog.area.verticalScrollBar().maximum()
    for key in (Qt.Key.Key_Up, Qt.Key.Key_PageUp, Qt.Key.Key_Home):
        QTest.keyClick(dialog.close_button, key)
        seen.append(at(dialog.area))
    assert seen[-3:] == sorted(set(seen[-3:]), reverse=True)
    assert at(dialog.area) == 0
    QTest.keyClick(dialog.close_button, Qt.Key.Key_Return)
    assert dialog.isHidden()


def test_every_usual_reason_is_read_whole_and_comes_under_tab_in_its_order(window: Window) -> None:
    usual = usual_slips(FillWay.TO_MARK)
    Ask(window).reason("Why?", print, usual)
    (dialog,) = [one for one in window.findChildren(QDialog) if one.isVisible()]
    offered = [one for one in dialog.findChildren(QPushButton) if one.text() in usual]
    assert len(offered) == len(usual)
    assert [one.text() for one in dialog.findChildren(QLabel)].count("Often:") == 1
    assert all(one.width() >= one.sizeHint().width() for one in offered)
    there, met = dialog.findChildren(QLineEdit)[0].nextInFocusChain(), list[str]()
    while len(met) < len(usual):
        met += [there.text()] if isinstance(there, QPushButton) else []
        there = there.nextInFocusChain()
    assert tuple(met) == usual
    dialog.reject()
