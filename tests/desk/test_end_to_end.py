"""From an empty store to a signed-off lot, a label and a wall chart: the real window, the keyboard alone."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pypdfium2
import pytest
from answers import Answers
from keys import focus, tab_to
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.window import Window
from calibrator.model import Plan, PrintKind, SignOff

ALT = Qt.KeyboardModifier.AltModifier


@pytest.fixture
def window(qtbot: QtBot, empty_desk: Desk) -> Iterator[Window]:
    shown = Window(empty_desk)
    qtbot.addWidget(shown)
    with qtbot.waitExposed(shown):
        shown.show()
    yield shown
    shown._closing = True
    shown.close()


def fill_in(name: str, text: str) -> None:
    QTest.keyClicks(tab_to(name), text)


def press(name: str) -> None:
    QTest.keyClick(tab_to(name), Qt.Key.Key_Return)


def type_and_enter(text: str) -> None:
    QTest.keyClicks(focus(), text)
    QTest.keyClick(focus(), Qt.Key.Key_Return)


def onward(window: Window) -> None:
    QTest.keyClick(window, Qt.Key.Key_Right, ALT)


def welcome(window: Window) -> None:
    fill_in("Name of the farm", "Windy Hollow")
    press("Keep and go on")
    fill_in("Step of the display", "0.1 oz")
    fill_in("Most it weighs", "11 lb")
    press("Keep and go on")
    fill_in("Name of the scoop", "Red")
    fill_in("Diameter inside", "3 3/4 in")
    fill_in("Height inside", "3 5/8 in")
    press("Keep and go on")
    fill_in("Lot number", "26-1102C")
    press("Keep and weigh it in")


def weigh_in(window: Window) -> None:
    for text in ("MK", "", ""):
        type_and_enter(text)
    fill_in("Target weight", "10 oz")
    QTest.keyClick(tab_to("The scale stands level"), Qt.Key.Key_Space)
    onward(window)
    for text in ("11.6", "11.7", "11.8", "11.6", "11.7", "11.6", "11.8", "11.7"):
        type_and_enter(text)
    onward(window)
    press("Drawn at")
    for text in ("10.0", "10.0", "10.1", "10.0", "9.9", "10.0", "10.0", "10.1"):
        type_and_enter(text)
    onward(window)
    QTest.keyClick(focus(), Qt.Key.Key_Return)
    press("Sign off")


def make_a_plan(window: Window) -> None:
    QTest.keyClick(window, Qt.Key.Key_4, Qt.KeyboardModifier.ControlModifier)
    press("Make the first plan")
    fill_in("Name of the plan", "Morning")
    fill_in("How many calves", "6")
    QTest.keyClick(tab_to("Finished mix"), Qt.Key.Key_Space)
    press("Keep the plan")


def test_from_an_empty_store_to_label_and_wall_chart(window: Window, answers: Answers, tmp_path: Path) -> None:
    desk = window.desk
    welcome(window)
    assert window.current_page.key == "weigh_in"
    weigh_in(window)
    (signed,) = desk.records.sign_offs(desk.farm.id) if desk.farm else []
    assert isinstance(signed, SignOff)
    answers.path = tmp_path / "label.pdf"
    press("Print the scoop label")
    press("Save as PDF")
    make_a_plan(window)
    (plan,) = desk.records.every(Plan)
    assert plan.groups[0].calves == 6
    answers.path = tmp_path / "chart.pdf"
    press("Print")
    press("Save as PDF")
    assert answers.told == []
    assert [sheet.kind for sheet in desk.records.prints(signed.farm_id)] == [
        PrintKind.SCOOP_LABEL,
        PrintKind.WALL_CHART,
    ]
    for name in ("label.pdf", "chart.pdf"):
        assert "26-1102C" in words_of(tmp_path / name).replace(" ", "").replace("\n", "")


def words_of(pdf: Path) -> str:
    with pypdfium2.PdfDocument(pdf) as document:
        return "\n".join(page.get_textpage().get_text_range() for page in document)
