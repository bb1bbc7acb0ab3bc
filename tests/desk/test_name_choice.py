"""A choice among long names: dots amid them where the closed box is too narrow, the whole name in the open list."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QApplication, QStyleOptionComboBox
from pytestqt.qtbot import QtBot

from calibrator.desk.theme import Theme
from calibrator.desk.widgets.name_choice import NameChoice

# The offscreen platform says so of every list that opens.
pytestmark = pytest.mark.qt_log_ignore("does not support")
LONG = "all calves Wilhelmina Featherstonehaugh N"


def shown_text(box: NameChoice) -> str:
    """What is painted in the closed box."""
    option = QStyleOptionComboBox()
    box.initStyleOption(option)
    return box._shortened(option)


def test_a_long_name_keeps_both_its_ends_and_is_whole_in_the_open_list(qapp: QApplication, qtbot: QtBot) -> None:
    if qapp.property("tokens") is None:
        Theme(qapp)
    box = NameChoice()
    qtbot.addWidget(box)
    box.addItem("short")
    box.addItem(LONG)
    box.setFixedWidth(160)
    box.show()
    assert shown_text(box) == "short"
    box.setCurrentIndex(1)
    before, after = shown_text(box).split("…")
    assert before
    assert after
    assert LONG.startswith(before)
    assert LONG.endswith(after)
    assert box.currentText() == LONG
    room = box.fontMetrics().horizontalAdvance(shown_text(box))
    assert room < 160
    box.showPopup()
    assert box.view().width() > box.fontMetrics().horizontalAdvance(LONG)
    box.hidePopup()
    box.setFixedWidth(700)
    assert shown_text(box) == LONG
