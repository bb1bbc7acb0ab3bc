"""F1 opens the help where it tells of what is in hand; Escape goes back to the field that was left."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel, QLineEdit
from pytestqt.qtbot import QtBot
from speaking import speaking

from calibrator.desk.context import Desk
from calibrator.desk.pages.help import HelpPage
from calibrator.desk.pages.mix_check import MixCheckPage
from calibrator.desk.pages.setup import SetupPage
from calibrator.desk.pages.weigh_in import WeighInPage
from calibrator.desk.window import PAGES, Window
from calibrator.model import Lot, Scale, Scoop, Step, Vessel


def press(window: Window, key: Qt.Key) -> None:
    QTest.keyClick(window.focusWidget() or window, key)


def to_help(window: Window, qtbot: QtBot) -> HelpPage:
    press(window, Qt.Key.Key_F1)
    qtbot.waitUntil(lambda: window.current_page.key == "help")
    page = window.current_page
    assert isinstance(page, HelpPage)
    qtbot.waitUntil(lambda: page.isAncestorOf(window.focusWidget()))
    return page


def at_level_fills(window: Window) -> WeighInPage:
    window.show_page("weigh_in", window.desk.records.every(Lot)[0].id)
    page = window.page("weigh_in")
    assert isinstance(page, WeighInPage)
    assert page.guide is not None
    scoop, scale = (window.desk.records.every(kind)[0].id for kind in (Scoop, Scale))
    page.guide.set(by="MK", scoop_id=scoop, scale_id=scale, target_mass_g=283.5, scale_zeroed=True)
    page.open_step(Step.LEVEL_FILLS)
    return page


def seen(page: HelpPage, title: str) -> bool:
    """Whether the place stands at the top of the help."""
    words = next(words for words in page.tabs.findChildren(QLabel) if words.text() == title)
    top = words.mapTo(page.tabs.currentWidget(), QPoint(0, 0)).y()
    return words.isVisible() and 0 <= top < 60


def test_f1_at_the_fills_tells_how_a_scoop_is_struck(window: Window, qtbot: QtBot) -> None:
    at_level_fills(window)
    page = to_help(window, qtbot)
    qtbot.waitUntil(lambda: seen(page, "Strike a scoop level"))


@pytest.mark.parametrize("title", ["Batch", "Rate", "Brix calibration", "Mix a batch"])
def test_what_stands_last_in_the_help_comes_to_the_top_too(window: Window, qtbot: QtBot, title: str) -> None:
    """Or nobody could tell which of the words at its end is meant."""
    window.resize(1024, 700)
    window.show_page("help", title)
    page = window.current_page
    assert isinstance(page, HelpPage)
    qtbot.waitUntil(lambda: seen(page, title))


def test_f1_tells_of_the_paper_that_is_to_be_printed(window: Window) -> None:
    window.show_page("tables", "label:")
    assert window.current_page.help_title() == "Line, or fill mark"
    window.show_page("tables", "sheet:")
    assert window.current_page.help_title() == "Sign-off"


@pytest.mark.parametrize("tab", [0, 1, 2])
def test_escape_goes_back_to_the_field_that_was_left(window: Window, qtbot: QtBot, tab: int) -> None:
    weigh_in = at_level_fills(window)
    field = window.focusWidget()
    assert isinstance(field, QLineEdit)
    QTest.keyClicks(field, "11.")
    page = to_help(window, qtbot)
    page.tabs.setCurrentIndex(tab)
    page.tabs.currentWidget().setFocus()
    press(window, Qt.Key.Key_F1)  # once more leaves it where it is
    press(window, Qt.Key.Key_Escape)
    qtbot.wait(1)  # past what would move the keys
    assert window.current_page is weigh_in
    assert window.focusWidget() is field
    QTest.keyClicks(field, "6")
    assert weigh_in.pending() == "11.6"


def test_escape_first_lets_go_of_what_is_looked_for(window: Window, qtbot: QtBot) -> None:
    page = to_help(window, qtbot)
    page.finder.setFocus()
    QTest.keyClicks(page.finder, "brix")
    press(window, Qt.Key.Key_Down)
    assert page.results.hasFocus()
    press(window, Qt.Key.Key_Escape)
    assert (window.current_page, page.finder.text()) == (page, "")
    assert page.finder.hasFocus()
    press(window, Qt.Key.Key_Escape)
    assert window.current_page.key == "today"


def test_the_first_start_has_its_help_and_the_way_back(qtbot: QtBot, empty_desk: Desk) -> None:
    window = Window(empty_desk)
    qtbot.addWidget(window)
    with qtbot.waitExposed(window):
        window.show()
    to_help(window, qtbot)
    press(window, Qt.Key.Key_Escape)
    assert window.current_page.key == "welcome"
    assert window.rail.isHidden()


@pytest.mark.parametrize("language", ["en", "es"])
def test_what_a_page_names_is_in_the_help(qtbot: QtBot, desk: Desk, language: str) -> None:
    with speaking(language):
        window = Window(desk)
        qtbot.addWidget(window)
        known = {topic.title for topic in HelpPage(desk, window)._topics} | {""}
        told = {key: window.page(key).help_title() for key in PAGES}
        assert set(told.values()) <= known
        assert len(set(told.values())) >= 5
        setup, mix = window.page("setup"), window.page("mix_check")
        assert isinstance(setup, SetupPage)
        assert isinstance(mix, MixCheckPage)
        for kind in (Scoop, Scale, Vessel):
            setup.show_tab(kind)
            assert setup.help_title() in known - {""}
        for name in ("line", "tool_checks"):
            mix.bring_up(name)
            assert mix.help_title() in known - {""}
        weigh_in = at_level_fills(window)
        for step in Step:
            assert weigh_in.guide is not None
            weigh_in.guide.look_at(step)
            assert weigh_in.help_title() in known - {""}
