"""Initials of the last time are replaced by what is typed, however the line is entered."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from calibrator.desk.widgets.initials import select_on_entry


@pytest.fixture
def window(qtbot: QtBot) -> QWidget:
    window = QWidget()
    before, line = QLineEdit(), QLineEdit("RM")
    layout = QVBoxLayout(window)
    layout.addWidget(before)
    layout.addWidget(line)
    qtbot.addWidget(window)
    select_on_entry(line)
    with qtbot.waitExposed(window):
        window.show()
    before.setFocus()
    return window


@pytest.fixture
def line(window: QWidget) -> QLineEdit:
    return window.findChildren(QLineEdit)[1]


ENTRIES: dict[str, Callable[[QtBot, QLineEdit], object]] = {
    "the program": lambda qtbot, line: line.setFocus(),
    "its key": lambda qtbot, line: line.setFocus(Qt.FocusReason.ShortcutFocusReason),
    "the Tab key": lambda qtbot, line: line.setFocus(Qt.FocusReason.TabFocusReason),
    "a click": lambda qtbot, line: qtbot.mouseClick(line, Qt.MouseButton.LeftButton, pos=QPoint(30, 10)),
}


@pytest.mark.parametrize("way", ENTRIES)
def test_what_is_typed_replaces_the_initials_that_stood_there(qtbot: QtBot, line: QLineEdit, way: str) -> None:
    ENTRIES[way](qtbot, line)
    qtbot.keyClicks(line, "JB")
    assert line.text() == "JB"


def test_a_second_click_sets_the_cursor_for_mending(qtbot: QtBot, line: QLineEdit) -> None:
    for _ in range(2):
        qtbot.mouseClick(line, Qt.MouseButton.LeftButton, pos=QPoint(line.width() - 5, 10))
    qtbot.keyClicks(line, "2")
    assert line.text() == "RM2"
