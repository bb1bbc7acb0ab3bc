"""Each screen of the weigh-in lights the one button that comes next; the mark's screen has no empty card."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QPushButton, QScrollArea, QWidget
from pytestqt.qtbot import QtBot
from test_weigh_in_typing import enter, opened

from calibrator.desk.weigh_in.step_mark import StepMark
from calibrator.desk.window import Window
from calibrator.model import FillWay, Lot, Step, new_id

OUNCE_G = 28.349523125


def lit(part: QWidget) -> list[str]:
    QApplication.processEvents()
    every = part.findChildren(QPushButton)
    return [
        b.text().replace("&", "") for b in every if b.isVisible() and b.property("kind") == "main" and b.isEnabled()
    ]


def test_of_all_lots_only_the_first_ones_button_is_lit(window: Window) -> None:
    records = window.desk.records
    (lot,) = records.every(Lot)
    for number in ("26-1", "26-2"):
        records.keep(replace(lot, id=new_id(), lot_number=number, revision=""))
    window.show_page("weigh_in")
    window.page("weigh_in").reload()
    assert lit(window) == ["Weigh in"]


def test_the_way_through_lights_one_button_at_a_time(window: Window) -> None:
    page, _view = opened(window, Step.LEVEL_FILLS)
    guide = page.guide
    assert guide is not None
    page.open_step(Step.SCOOP_AND_SCALE)
    assert lit(window) == ["Next"]
    page.open_step(Step.LEVEL_FILLS)
    for text in ("11.6", "11.7", "11.8", "11.6", "11.7", "11.6", "11.7"):
        enter(text)
        assert lit(window) == ["Enter"]
    enter("11.7")
    assert lit(window) == ["Next"]
    page.open_step(Step.MARK)
    assert lit(window) == ["Drawn at 1/2 in"]
    guide.set(drawn_line_mm=13.0, drawn_line_typed="13 mm")
    page.reload()
    assert lit(window) == ["Next"]
    page.open_step(Step.FILLS_TO_MARK)
    assert lit(window) == ["Enter"]
    for _ in range(8):
        guide.add_fill(FillWay.TO_MARK, guide.next_bag(FillWay.TO_MARK), 9.0 * OUNCE_G, "9 oz")
    page.reload()
    assert guide.line_should_move
    assert lit(window) == ["See where to draw it"]
    page.open_step(Step.SIGN_OFF)
    assert lit(window) == ["Sign off"]


@pytest.mark.parametrize("old_line_mm", [None, 9.0])
def test_the_mark_is_shown_whole_on_the_smallest_window(
    window: Window, qtbot: QtBot, old_line_mm: float | None
) -> None:
    """1024 by 700: nothing to scroll to, and the drawing fills its card."""
    window.resize(1024, 700)
    page, _view = opened(window, Step.FILLS_TO_MARK)
    assert page.guide is not None
    page.guide.set(old_line_mm=old_line_mm)
    page.open_step(Step.MARK)
    step = page._views[Step.MARK]
    assert isinstance(step, StepMark)
    area = next(area for area in page.findChildren(QScrollArea) if area.isAncestorOf(step))
    qtbot.waitUntil(lambda: step._drawing.height() > 0)
    QApplication.processEvents()
    assert area.verticalScrollBar().maximum() == 0
    for part in (step._field, step._keep_old if old_line_mm else step._as_proposed, step._drawn):
        assert part.visibleRegion().boundingRect() == part.rect()
    assert step._drawing.height() < step._drawing.width()
    last = step._keep_old if old_line_mm else step._as_proposed
    last.setFocus()
    QTest.keyClick(last, Qt.Key.Key_Tab)
    assert step._field.line.hasFocus()


def test_a_signed_weigh_in_makes_room_for_the_lot_that_waits(window: Window) -> None:
    page, _view = opened(window, Step.LEVEL_FILLS)
    assert page.guide is not None
    for mass_g in (331.0, 333.0, 330.0, 332.0):
        page.guide.add_fill(FillWay.LEVEL, page.guide.next_bag(FillWay.LEVEL), mass_g, "")
    page.guide.set(drawn_line_mm=13.0, drawn_line_typed="13 mm")
    page.guide.sign_off("MK")
    window.show_page("today")
    window.show_page("weigh_in")
    assert page.guide is not None  # nothing else waits: what was signed can be looked at
    lot = page.guide.lot
    window.desk.records.keep(replace(lot, id=new_id(), lot_number="26-9", revision=""))
    window.show_page("today")
    window.show_page("weigh_in")
    assert page.guide is None
    assert lit(window) == ["Weigh in"]
