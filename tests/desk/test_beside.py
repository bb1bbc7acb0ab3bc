"""A form and what is told beside it: one scroll bar, what is told in view, no field that moves for it."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint
from PySide6.QtWidgets import QApplication, QLabel, QScrollArea, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from calibrator.desk.parts import label
from calibrator.desk.widgets.beside import beside

HIGH = 300


def _two(qtbot: QtBot, form_px: int, told_px: int) -> tuple[QScrollArea, QWidget, QLabel]:
    form, told, words = QWidget(), QWidget(), label("word " * 3)
    form.setFixedHeight(form_px)
    inside = QVBoxLayout(told)
    inside.setContentsMargins(0, 0, 0, 0)
    words.setMinimumHeight(told_px)
    inside.addWidget(words)
    area = beside(form, told)
    qtbot.addWidget(area)
    area.resize(400, HIGH)
    with qtbot.waitExposed(area):
        area.show()
    return area, told, words


def _top(told: QWidget, area: QScrollArea) -> int:
    return told.mapTo(area.viewport(), QPoint(0, 0)).y()


@pytest.mark.parametrize(("form_px", "told_px"), [(900, 200), (900, 500), (200, 900), (100, 120)])
def test_what_is_told_stays_in_view_as_long_as_the_form_lasts(qtbot: QtBot, form_px: int, told_px: int) -> None:
    area, told, _ = _two(qtbot, form_px, told_px)
    bar = area.verticalScrollBar()
    assert bar.maximum() == max(0, max(form_px, told_px) - HIGH)
    for place in (0, bar.maximum() // 2, bar.maximum()):
        bar.setValue(place)
        assert _top(told, area) == -max(0, place - max(0, form_px - told_px))
    assert _top(told, area) + told.height() <= HIGH  # the last of it can be read at the foot


def test_what_grows_beside_the_form_can_be_scrolled_to_its_end(qtbot: QtBot) -> None:
    area, told, words = _two(qtbot, 200, 100)
    assert area.verticalScrollBar().maximum() == 0
    words.setMinimumHeight(700)
    qtbot.waitUntil(lambda: area.verticalScrollBar().maximum() == 700 - HIGH)
    assert told.height() == 700


def test_a_long_word_beside_a_form_does_not_make_it_narrower(qtbot: QtBot) -> None:
    area, _, words = _two(qtbot, 200, 100)
    form = area.findChild(QWidget, "form")
    assert isinstance(form, QWidget)
    width = form.width()
    words.setText("w" * 90)
    QApplication.processEvents()
    assert form.width() == width
