"""The wheel over a form scrolls the form: no choice in it swallows the wheel, takes the focus or changes."""

from __future__ import annotations

import re
from pathlib import Path

from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QApplication, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

import calibrator.desk
from calibrator.desk.parts import scrolled
from calibrator.desk.widgets.calm_box import CalmTabs
from calibrator.desk.widgets.name_choice import NameChoice


def test_the_wheel_over_a_choice_scrolls_the_form(qtbot: QtBot) -> None:
    inner = QWidget()
    layout = QVBoxLayout(inner)
    choice = NameChoice()
    choice.addItems(["25-0112A", "25-0202B", "25-0303C"])
    layout.addWidget(choice)
    layout.addSpacing(2000)
    area = scrolled(inner)
    qtbot.addWidget(area)
    area.resize(300, 200)
    with qtbot.waitExposed(area):
        area.show()
    assert choice.focusPolicy() == Qt.FocusPolicy.StrongFocus  # Tab and a click, never the wheel
    at = QPointF(choice.rect().center())
    away, none = QPoint(0, -120), QPoint()
    for reason in ("closed", "in focus"):
        if reason == "in focus":
            choice.setFocus()
        rolled = QWheelEvent(
            at, QPointF(choice.mapToGlobal(at.toPoint())), none, away, Qt.MouseButton.NoButton,
            Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False,
        )  # fmt: skip
        QApplication.sendEvent(choice, rolled)
        assert choice.currentIndex() == 0
        assert not rolled.isAccepted()  # so Qt hands it on to the form around it


def test_every_choice_of_the_desk_is_such_a_one() -> None:
    folder = Path(calibrator.desk.__file__).parent
    plain = [path.name for path in folder.rglob("*.py") if re.search(r"\bQComboBox\(", path.read_text("utf-8"))]
    assert plain == []


def test_the_wheel_over_tabs_in_a_page_that_scrolls_turns_none(qtbot: QtBot) -> None:
    """The whole page of batch tables scrolls, and in passing it turned from calves to volumes of water."""
    tabs = CalmTabs()
    qtbot.addWidget(tabs)
    for name in ("By calves", "By volume of water"):
        tabs.addTab(name)
    tabs.show()
    at = QPointF(tabs.rect().center())
    rolled = QWheelEvent(
        at, QPointF(tabs.mapToGlobal(at.toPoint())), QPoint(), QPoint(0, -120), Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False,
    )  # fmt: skip
    QApplication.sendEvent(tabs, rolled)
    assert not rolled.isAccepted()
    assert tabs.currentIndex() == 0


def test_a_page_of_tables_has_only_such_tabs() -> None:
    bars = [
        path.name for path in Path(calibrator.desk.__file__).parent.rglob("*.py") if " QTabBar()" in path.read_text()
    ]
    assert bars == []
