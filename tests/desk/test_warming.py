"""Pages are ready before they are asked for, and nobody is disturbed by it."""

from __future__ import annotations

from collections.abc import Iterator
from threading import Event

import pytest
from herd import Herd
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk import warming as warming_module
from calibrator.desk import window as window_module
from calibrator.desk.busy import Busy
from calibrator.desk.context import Desk
from calibrator.desk.page import Page
from calibrator.desk.warming import ORDER, Warming
from calibrator.desk.window import PAGES, Window
from calibrator.model.underway import Underway
from calibrator.records import Records


@pytest.fixture
def quick(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(warming_module, "BEGIN_AFTER_MS", 0)
    monkeypatch.setattr(warming_module, "BETWEEN_MS", 0)


@pytest.fixture
def window(desk: Desk, records: Records, qtbot: QtBot) -> Window:
    Herd(records).sign("25-1103B", 0.45)
    desk.changed.emit()
    made = Window(desk)
    qtbot.addWidget(made)
    made.show()
    return made


@pytest.fixture
def warming(quick: None) -> Iterator[Warming]:
    made = Warming()
    yield made
    made.stop()


def test_every_page_is_there_and_read_before_it_is_asked_for(
    window: Window, warming: Warming, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    assert set(ORDER) == set(PAGES) - {"today", "welcome"}
    window.show_page("today")
    warming.start(window)
    qtbot.waitUntil(lambda: not warming.at_work, timeout=60_000)
    assert window.current_page.key == "today"
    assert window.typed() == ""
    read: list[str] = []
    for key in ORDER:
        assert window.has_page(key)
        monkeypatch.setattr(window.page(key), "reload", lambda key=key: read.append(key))
        window.show_page(key)
    assert read == []


def test_a_page_that_is_not_ready_says_at_once_that_it_opens(
    window: Window, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    window.show_page("today")
    seen: list[tuple[bool, str, bool]] = []
    make = Window.page

    def making(self: Window, key: str) -> Page:
        seen.append((self._notice.isVisible(), self._notice.text(), self.rail.buttons["lots"].isChecked()))
        return make(self, key)

    monkeypatch.setattr(Window, "page", making)
    window.show_page("lots")
    assert seen == [(True, "Opening …", True)]
    assert not window._notice.isVisible()
    window.desk.say("Kept.")
    window.show_page("today")
    window.show_page("weigh_in")
    assert [said for _, said, _ in seen] == ["Opening …", "Kept.", "Opening …"]
    assert (window._notice.isVisible(), window._notice.text()) == (True, "Kept.")


def test_large_records_are_read_when_they_are_asked_for(
    window: Window, warming: Warming, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(warming_module, "READ_UP_TO", 0)
    window.show_page("today")
    warming.start(window)
    qtbot.waitUntil(lambda: not warming.at_work, timeout=60_000)
    assert all(window.has_page(key) for key in ORDER)
    assert set(window._read) == {"today"}


def test_it_waits_for_whoever_works(
    window: Window, warming: Warming, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    window.show_page("today")
    monkeypatch.setattr(Busy, "at_work", True)
    warming.start(window)
    qtbot.waitUntil(lambda: warming._thread is not None and not warming._thread.is_alive(), timeout=60_000)
    for _ in range(20):
        QApplication.processEvents()
    assert not any(window.has_page(key) for key in ORDER)
    monkeypatch.setattr(Busy, "at_work", False)
    qtbot.waitUntil(lambda: window.has_page("weigh_in"))


def test_a_window_that_closes_meanwhile_ends_it(window: Window, warming: Warming, qtbot: QtBot) -> None:
    window.show_page("today")
    warming.start(window)
    qtbot.waitUntil(lambda: window.has_page("weigh_in"), timeout=60_000)
    window.close()
    qtbot.waitUntil(lambda: not warming.at_work)
    assert not window.has_page("help")


def test_a_newcomer_at_the_welcome_is_left_alone(empty_desk: Desk, warming: Warming, qtbot: QtBot) -> None:
    window = Window(empty_desk)
    qtbot.addWidget(window)
    window.show()
    warming.start(window)
    qtbot.waitUntil(lambda: not warming.at_work, timeout=60_000)
    assert not any(window.has_page(key) for key in ORDER)


def test_a_page_is_loaded_beside_the_window_and_whoever_goes_elsewhere_ends_that(
    window: Window, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    window.show_page("today")
    hold, loaded = Event(), window_module.load_page

    def slowly(key: str, underway: Underway) -> None:
        hold.wait(60)
        loaded(key, underway)

    monkeypatch.setattr(window_module, "load_page", slowly)
    monkeypatch.setattr("calibrator.desk.busy.PATIENCE_S", 0)
    qtbot.keyClick(window, Qt.Key.Key_2, Qt.KeyboardModifier.ControlModifier)
    assert window._notice.text() == "Opening …"
    assert window.rail.buttons["lots"].isChecked()
    assert window.current_page.key == "today"
    qtbot.keyClick(window, Qt.Key.Key_1, Qt.KeyboardModifier.ControlModifier)
    assert window.rail.buttons["today"].isChecked()
    assert not window._notice.isVisible()
    qtbot.keyClick(window, Qt.Key.Key_4, Qt.KeyboardModifier.ControlModifier)
    hold.set()
    qtbot.waitUntil(lambda: window.current_page.key == "tables", timeout=60_000)
    assert not window._notice.isVisible()
    assert not window.has_page("lots")


def test_a_page_that_cannot_be_loaded_leaves_one_where_one_is(
    window: Window, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fails(key: str, underway: Underway) -> None:
        raise ModuleNotFoundError(key)

    window.show_page("today")
    monkeypatch.setattr(window_module, "load_page", fails)
    with qtbot.captureExceptions() as caught:
        window.show_page("lots")
    assert [kind for kind, *_ in caught] == [ModuleNotFoundError]
    assert window.current_page.key == "today"
    assert window.rail.buttons["today"].isChecked()
    assert not window._notice.isVisible()
