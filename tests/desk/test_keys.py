"""No two things on one page answer to the same key, and every input has a name."""

from __future__ import annotations

import re
from collections import Counter

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QAbstractButton,
    QComboBox,
    QLabel,
    QLineEdit,
    QTabBar,
    QTableView,
    QTabWidget,
    QWidget,
)
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.page import Page
from calibrator.desk.pages.lots import LotsPage
from calibrator.desk.pages.setup import SetupPage
from calibrator.desk.pages.today import TodayPage
from calibrator.desk.pages.welcome import WelcomePage
from calibrator.desk.window import Window
from calibrator.model import Scale, Scoop, Vessel


def keys(page: QWidget) -> list[str]:
    texts = [w.text() for w in page.findChildren(QAbstractButton) if w.isVisible()]
    texts += [w.text() for w in page.findChildren(QLabel) if w.isVisible() and w.buddy()]
    for bar in page.findChildren(QTabBar):
        texts += [bar.tabText(place) for place in range(bar.count())] if bar.isVisible() else []
    return [found.lower() for text in texts for found in re.findall(r"&(\w)", text)]


def all_names(page: QWidget) -> list[str]:
    kinds = (QLineEdit, QComboBox, QTableView)
    inputs = [w for kind in kinds for w in page.findChildren(kind) if w.isVisible()]
    return [w.accessibleName() for w in inputs if not w.objectName().startswith("qt_")]


def checked(page: Page) -> None:
    found = keys(page)
    twice = [key for key, times in Counter(found).items() if times > 1]
    assert twice == []
    assert all(all_names(page))


@pytest.fixture
def shown(qtbot: QtBot, desk: Desk) -> dict[type[Page], Page]:
    made: dict[type[Page], Page] = {}
    for kind in (TodayPage, LotsPage, SetupPage, WelcomePage):
        page = kind(desk)  # type: ignore[call-arg]
        qtbot.addWidget(page)
        page.resize(1024, 700)
        page.reload()
        page.show()
        made[kind] = page
    return made


def test_keys_and_names(shown: dict[type[Page], Page]) -> None:
    checked(shown[TodayPage])
    lots = shown[LotsPage]
    assert isinstance(lots, LotsPage)
    checked(lots)
    lots.start_new()
    checked(lots)
    setup = shown[SetupPage]
    assert isinstance(setup, SetupPage)
    checked(setup)
    for kind in (Scoop, Scale, Vessel):
        setup.show_tab(kind)
        checked(setup)
    checked(shown[WelcomePage])


def test_alt_with_the_letter_of_no_button_writes_nothing(qtbot: QtBot, shown: dict[type[Page], Page]) -> None:
    lines = [line for page in shown.values() for line in page.findChildren(QLineEdit) if line.isVisible()]
    assert len(lines) > 5
    for line in lines:
        before = line.text()
        qtbot.keyClick(line, Qt.Key.Key_J, Qt.KeyboardModifier.AltModifier)
        assert line.text() == before, line.accessibleName()
        if line.hasAcceptableInput() and not line.isReadOnly() and not line.validator():
            qtbot.keyClick(line, Qt.Key.Key_J)
            assert "j" in line.text()


def test_the_rail_is_called_by_numbers_and_leaves_letters_to_the_pages(qtbot: QtBot, desk: Desk) -> None:
    """That no two things of any screen share a letter, a tour of all of them tells in both languages elsewhere."""
    window = Window(desk)
    qtbot.addWidget(window)
    for number, made in enumerate(window.rail.buttons.values(), start=1):
        assert made.text() == f"{number} {made.accessibleName()}"


@pytest.mark.parametrize("page", ["mix_check", "season", "setup"])
def test_a_tab_called_by_its_letter_has_the_keys_where_one_sees_them(window: Window, qtbot: QtBot, page: str) -> None:
    window.show_page(page)
    tabs = window.current_page.tabs  # type: ignore[attr-defined]
    for place in range(1, tabs.count()):
        tabs.setCurrentIndex(place)
        qtbot.waitUntil(lambda: keys_are_seen(tabs))


def keys_are_seen(tabs: QTabWidget) -> bool:
    there = tabs.window().focusWidget()
    return there is not None and there.isVisible() and not there.isAncestorOf(tabs)
