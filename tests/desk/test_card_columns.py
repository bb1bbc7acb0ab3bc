"""The cards of the set-up use the width that there is, and are never wider than can be read."""

from __future__ import annotations

import pytest
from keys import tab_through
from PySide6.QtCore import QPoint
from PySide6.QtWidgets import QApplication, QFrame, QScrollArea, QWidget
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.pages.setup import SetupPage
from calibrator.desk.rail import RAIL_PX
from calibrator.desk.widgets.card_columns import MOST_PX


def cards(page: SetupPage) -> list[QFrame]:
    here = page.tabs.currentWidget()
    return [each for each in here.findChildren(QFrame) if each.property("kind") == "card" and each.isVisible()]


def left_edges(page: SetupPage) -> set[int]:
    return {card.mapTo(page, QPoint()).x() for card in cards(page)}


@pytest.fixture
def page(qtbot: QtBot, desk: Desk) -> SetupPage:
    made = SetupPage(desk)
    qtbot.addWidget(made)
    made.show()
    return made


def sized(page: SetupPage, width: int, height: int) -> None:
    page.resize(width - RAIL_PX, height)
    for _ in range(4):
        QApplication.processEvents()


@pytest.mark.parametrize("tab", ["farm", "wire", "records"])
@pytest.mark.parametrize("size", [(1024, 700, 1), (1280, 800, 2), (1920, 1080, 2)])
def test_a_wide_window_has_two_columns(page: SetupPage, tab: str, size: tuple[int, int, int]) -> None:
    where: QWidget = getattr(page, tab)
    page.tabs.setCurrentIndex({"farm": 0, "wire": 5, "records": 6}[tab])
    sized(page, 1920, 1080)
    width, height, columns = size
    sized(page, width, height)
    assert where.isVisible()
    assert len(left_edges(page)) == columns
    (area,) = [each for each in where.findChildren(QScrollArea) if each.isVisible()]
    inner = area.widget()
    assert inner.width() <= area.viewport().width()
    assert all(card.width() <= MOST_PX for card in cards(page))
    used = max(card.mapTo(inner, QPoint(card.width(), 0)).x() for card in cards(page))
    assert used >= 0.98 * min(area.viewport().width(), 2 * MOST_PX)


@pytest.mark.parametrize("size", [(1024, 700), (1280, 800)])
@pytest.mark.parametrize("tab", [0, 4, 5])
def test_tab_goes_down_one_column_and_then_the_other(
    page: SetupPage, qtbot: QtBot, tab: int, size: tuple[int, int]
) -> None:
    page.tabs.setCurrentIndex(tab)
    with qtbot.waitActive(page):
        page.activateWindow()
    sized(page, *size)
    page.tabs.tabBar().setFocus()
    here = page.tabs.currentWidget()
    way = [widget for widget in tab_through(page) if here.isAncestorOf(widget)]
    edges = sorted(left_edges(page))

    def as_read(widget: QWidget) -> tuple[int, int, int]:
        at = widget.mapTo(page, QPoint())
        return sum(at.x() >= edge for edge in edges), at.y(), at.x()

    assert len(way) >= 4
    assert way == sorted(way, key=as_read)
