"""Finding a place of the help by its words, by keyboard, in both languages."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QAbstractScrollArea, QLabel
from pytestqt.qtbot import QtBot
from speaking import speaking

from calibrator.desk.context import Desk
from calibrator.desk.help.search import Topic, excerpt, found, near, plain
from calibrator.desk.pages.help import HelpPage

TOPICS = (
    Topic(1, 0, "Lot", "Bags made together; the number stands on the bag."),
    Topic(1, 1, "Batch", "Mixed at once in one vessel, from one lot."),
    Topic(2, 7, "Calibración", "Refractómetro, una jarra pesada o costales contados."),
)


@pytest.mark.parametrize(
    ("asked", "titles"),
    [
        ("LOT", ["Lot", "Batch"]),  # in the title before in the text
        ("batch lot", ["Batch"]),
        ("refractometro", ["Calibración"]),
        ("calibracion JARRÁ", ["Calibración"]),
        ("lots", ["Lot", "Batch"]),  # of several the one
        ("lot refractometro", []),
        ("  ", []),
    ],
)
def test_every_word_is_looked_for_without_accents(asked: str, titles: list[str]) -> None:
    assert [topic.title for topic in found(TOPICS, asked)] == titles


@pytest.mark.parametrize(
    ("asked", "titles"),
    [
        ("stands one lot", ["Lot", "Batch"]),
        ("calibración jarra tractor", ["Calibración"]),
        ("of it", []),
    ],
)
def test_where_no_place_has_all_words_those_with_some_come_most_first(asked: str, titles: list[str]) -> None:
    assert found(TOPICS, asked) == []
    assert [topic.title for topic in near(TOPICS, asked)] == titles


def test_an_excerpt_has_the_word_that_was_found() -> None:
    long = Topic(2, 0, "", "palabra " * 60 + "Añada la báscula " + "otra " * 60)
    told = excerpt(long, "bascula")
    assert "báscula" in told
    assert (told[0], told[-1]) == ("…", "…")
    assert len(told) < 200
    assert excerpt(TOPICS[0], "bags") == TOPICS[0].text
    odd = "İñ ﬁ ΐ"
    assert len(plain(odd)) == len(odd)


@pytest.fixture
def page(qtbot: QtBot, desk: Desk) -> HelpPage:
    made = HelpPage(desk)
    qtbot.addWidget(made)
    made.resize(830, 700)
    made.show()
    return made


def seen(page: HelpPage, text: str) -> bool:
    """Whether a label with this text stands within the page's tabs."""
    words = next(words for words in page.tabs.findChildren(QLabel) if words.text() == text)
    top = words.mapTo(page, QPoint(0, 0)).y()
    return words.isVisible() and page.tabs.y() < top < page.height() - words.height()


def test_enter_opens_the_first(qtbot: QtBot, page: HelpPage) -> None:
    page.finder.setFocus()
    qtbot.keyClicks(page.finder, "brix calib")
    assert page.results.isVisible()
    assert page.results.item(0).text().startswith("Brix calibration")
    qtbot.keyClick(page.finder, Qt.Key.Key_Return)
    assert (page.tabs.currentIndex(), page.finder.text(), page.results.isVisible()) == (1, "", False)
    assert seen(page, "Brix calibration")
    qtbot.keyClicks(page.finder, "whisk")
    qtbot.keyClick(page.finder, Qt.Key.Key_Return)
    assert page.tabs.currentIndex() == 0
    assert seen(page, "Mix a batch")


def test_down_goes_to_what_was_found_and_enter_opens_that(qtbot: QtBot, page: HelpPage) -> None:
    page.finder.setFocus()
    qtbot.keyClicks(page.finder, "workbook")
    assert page.results.count() >= 1
    qtbot.keyClick(page.finder, Qt.Key.Key_Down)
    assert page.results.hasFocus()
    last = page.results.count() - 1
    page.results.setCurrentRow(last)
    qtbot.keyClick(page.results, Qt.Key.Key_Return)
    assert page.tabs.currentIndex() == 2
    assert "workbook" in page.manual.textCursor().block().text()
    assert 0 <= page.manual.cursorRect().top() < page.manual.height()
    assert page.manual.verticalScrollBar().value() > 0


def test_nothing_found_is_said_and_escape_brings_the_help_back(qtbot: QtBot, page: HelpPage) -> None:
    qtbot.keyClicks(page.finder, "tractor")
    assert page.nothing.isVisible()
    assert not page.results.isVisible()
    qtbot.keyClick(page.finder, Qt.Key.Key_Return)
    assert page.finder.text() == "tractor"
    qtbot.keyClick(page.finder, Qt.Key.Key_Escape)
    assert page.tabs.isVisible()
    assert page.finder.text() == ""


@pytest.mark.parametrize("asked", ["two groups", "different weights", "target", "half"])
def test_what_a_second_group_gets_is_found(qtbot: QtBot, page: HelpPage, asked: str) -> None:
    qtbot.keyClicks(page.finder, asked)
    titles = [page.results.item(row).text().split("  ·  ")[0] for row in range(page.results.count())]
    assert {"Two groups, two weights", "Half a scoopful, 1 1/2"} & set(titles)
    assert not page.nothing.isVisible()


def test_words_that_no_place_has_together_are_looked_for_by_themselves(qtbot: QtBot, page: HelpPage) -> None:
    qtbot.keyClicks(page.finder, "tractor whisk")
    assert page.results.isVisible()
    assert page.nothing.text().startswith("No place has all")
    assert page.nothing.isVisible()


def test_spanish_is_found_without_its_accents(qtbot: QtBot, desk: Desk) -> None:
    with speaking("es"):
        page = HelpPage(desk)
        qtbot.addWidget(page)
        page.show()
        qtbot.keyClicks(page.finder, "refractometro")
        assert page.results.count() >= 2
        assert "refractómetro" in page.results.item(0).text().lower()


@pytest.mark.parametrize("tab", [0, 1, 2])
def test_each_part_is_scrolled_by_keys(qtbot: QtBot, page: HelpPage, tab: int) -> None:
    page.tabs.setCurrentIndex(tab)
    page.tabs.tabBar().setFocus()
    qtbot.keyClick(page.tabs.tabBar(), Qt.Key.Key_Tab)
    area = page.tabs.currentWidget()
    assert isinstance(area, QAbstractScrollArea)
    assert area.hasFocus()
    qtbot.keyClick(area, Qt.Key.Key_PageDown)
    assert area.verticalScrollBar().value() > 0
