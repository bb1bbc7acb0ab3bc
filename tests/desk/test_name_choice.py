"""A choice among long names: dots where the closed box is too narrow, the whole name in the open list."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.theme import Theme
from calibrator.desk.widgets.name_choice import NameChoice

# The offscreen platform says so of every list that opens.
pytestmark = pytest.mark.qt_log_ignore("does not support")
LONG = "all calves Wilhelmina Featherstonehaugh N"


def test_a_long_name_ends_in_dots_and_is_whole_in_the_open_list(qapp: QApplication, qtbot: QtBot) -> None:
    if qapp.property("tokens") is None:
        Theme(qapp)
    box = NameChoice()
    qtbot.addWidget(box)
    box.addItem("short")
    box.addItem(LONG)
    box.setFixedWidth(160)
    box.show()
    assert box.shown_text() == "short"
    box.setCurrentIndex(1)
    assert box.shown_text().endswith("…")
    assert box.currentText() == LONG
    room = box.fontMetrics().horizontalAdvance(box.shown_text())
    assert room < 160
    box.showPopup()
    assert box.view().width() > box.fontMetrics().horizontalAdvance(LONG)
    box.hidePopup()
    box.setFixedWidth(700)
    assert box.shown_text() == LONG
