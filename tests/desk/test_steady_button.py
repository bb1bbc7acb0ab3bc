"""A press lands where it was aimed, though the form moves beneath the hand."""

from __future__ import annotations

from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from calibrator.desk.widgets.stray_keys import SteadyButton

LEFT = Qt.MouseButton.LeftButton
MIDDLE = QPoint(50, 15)


def shown(qtbot: QtBot) -> tuple[QWidget, SteadyButton, list[bool]]:
    window = QWidget()
    qtbot.addWidget(window)
    window.resize(400, 400)
    button = SteadyButton("Next")
    button.setParent(window)
    button.setGeometry(20, 100, 100, 30)
    pressed: list[bool] = []
    button.clicked.connect(lambda: pressed.append(True))
    window.show()
    qtbot.waitExposed(window)
    return window, button, pressed


def test_a_button_that_words_push_down_as_it_is_pressed_is_pressed(qtbot: QtBot) -> None:
    window, button, pressed = shown(qtbot)
    aimed = button.mapToGlobal(MIDDLE)
    QTest.mousePress(button, LEFT, pos=MIDDLE)
    button.move(20, 160)  # what leaving a field tells has come above it
    window.repaint()
    QTest.mouseMove(button, button.mapFromGlobal(aimed + QPoint(1, 1)))
    QTest.mouseRelease(button, LEFT, pos=button.mapFromGlobal(aimed + QPoint(1, 1)))
    assert len(pressed) == 1
    assert not button.isDown()


def test_a_hand_that_leaves_the_button_before_it_lets_go_presses_nothing(qtbot: QtBot) -> None:
    _, button, pressed = shown(qtbot)
    aimed = button.mapToGlobal(MIDDLE)
    QTest.mousePress(button, LEFT, pos=MIDDLE)
    button.move(20, 160)
    QTest.mouseRelease(button, LEFT, pos=button.mapFromGlobal(aimed + QPoint(0, 60)))  # where it stands now
    assert pressed == []


def test_a_button_that_stays_is_pressed_as_ever(qtbot: QtBot) -> None:
    _, button, pressed = shown(qtbot)
    QTest.mouseClick(button, LEFT, pos=MIDDLE)
    assert len(pressed) == 1
