"""The passing word in the gap of the rail: it covers nothing that is worked on, and leads to what was saved."""

from __future__ import annotations

from pathlib import Path

import pytest
from answers import Answers
from PySide6.QtCore import QPoint, QRect, Qt, QUrl
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QApplication, QLineEdit, QPushButton, QScrollArea, QTableWidget, QWidget
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.notice import NOTICE_MS
from calibrator.desk.pages.what_to_do import NEW_LOT
from calibrator.desk.window import Window

LONG = "The file could not be written, because the folder is on a disk that was taken out. " * 2


def on_window(window: Window, key: str) -> QRect:
    made = window.rail.buttons[key]
    return QRect(made.mapTo(window, QPoint(0, 0)), made.size())


@pytest.mark.parametrize("size", [(1024, 700), (1280, 800)])
def test_a_word_stands_in_the_gap_of_the_rail(window: Window, desk: Desk, size: tuple[int, int]) -> None:
    window.resize(*size)
    desk.say("Signed off. Now print the label and the wall chart.")
    shown = window._notice.geometry()
    assert window._notice.isVisible()
    assert window.rail.geometry().contains(shown)
    assert not any(shown.intersects(on_window(window, key)) for key in window.rail.buttons)


def test_a_long_word_grows_beside_the_rail_rather_than_over_its_buttons(window: Window, desk: Desk) -> None:
    window.resize(1024, 700)
    desk.say(LONG)
    shown = window._notice.geometry()
    assert window.rect().contains(shown)
    assert not any(shown.intersects(on_window(window, key)) for key in window.rail.buttons)


@pytest.mark.parametrize("height", [480, 540, 600, 700])
@pytest.mark.parametrize("text", ["Kept.", LONG])
def test_in_a_low_window_it_covers_no_button_of_the_rail(window: Window, desk: Desk, height: int, text: str) -> None:
    window.setMinimumSize(0, 0)
    window.resize(1024, height)
    QApplication.processEvents()
    desk.say(text)
    shown = window._notice.geometry()
    assert window.rect().contains(shown)
    assert not any(shown.intersects(on_window(window, key)) for key in window.rail.buttons)


def test_it_gives_way_to_whatever_has_the_keys(window: Window, desk: Desk) -> None:
    desk.say(2 * LONG)
    for made in [each for each in window.current_page.findChildren(QPushButton) if each.isVisible()]:
        window._notice.setGeometry(place(window, made))
        made.setFocus(Qt.FocusReason.OtherFocusReason)
        window._focus_moved()
        assert not window._notice.geometry().intersects(place(window, made))


def test_it_covers_no_field_that_is_typed_in(window: Window, desk: Desk) -> None:
    window.show_page("lots", NEW_LOT)
    for height in (700, 740, 780):
        assert covered(window, desk, height) == []
        assert window.rect().contains(window._notice.geometry())


def test_a_table_that_has_the_keys_does_not_send_it_over_the_title(window: Window, desk: Desk) -> None:
    """The table is as high as the page, but the keys are in one row of it."""
    page = window.current_page
    table, reading = QTableWidget(60, 2, page), QScrollArea(page)
    for each in (table, reading):
        each.setGeometry(page.rect())
        each.show()
        each.setFocus(Qt.FocusReason.OtherFocusReason)
        desk.say(2 * LONG)
        assert window.focusWidget() is each
        assert not window._notice.geometry().intersects(place(window, page.title))
    table.setCurrentCell(59, 0)
    table.setFocus(Qt.FocusReason.OtherFocusReason)
    desk.say(2 * LONG)
    row = table.visualRect(table.currentIndex())
    at_keys = QRect(table.viewport().mapTo(window, row.topLeft()), row.size())
    assert not window._notice.geometry().intersects(at_keys)


def covered(window: Window, desk: Desk, height: int) -> list[QLineEdit]:
    """The fields that a long word stands over in a window so high."""
    window.resize(1024, height)
    QApplication.processEvents()
    desk.say(2 * LONG)
    first = window._notice.geometry()
    lines = window.current_page.findChildren(QLineEdit)
    return [each for each in lines if each.isVisible() and first.intersects(place(window, each))]


def place(window: Window, widget: QWidget) -> QRect:
    return QRect(widget.mapTo(window, QPoint(0, 0)), widget.size())


def test_a_long_word_stays_as_long_as_it_takes_to_read(window: Window, desk: Desk) -> None:
    desk.say("Kept.")
    assert window._notice._timer.interval() == NOTICE_MS
    desk.say(LONG)
    assert window._notice._timer.interval() > 2 * NOTICE_MS


def test_a_saved_file_is_opened_and_its_folder_shown(
    window: Window, desk: Desk, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    opened: list[QUrl] = []
    monkeypatch.setattr(QDesktopServices, "openUrl", lambda url: opened.append(url) or True)
    file = tmp_path / "Wall chart.pdf"
    desk.say_saved("Saved as Wall chart.pdf.", file)
    assert tmp_path.name in window._notice.text().replace("\u200b", "")
    window._notice.open_file.click()
    window._notice.open_folder.click()
    assert [Path(url.toLocalFile()) for url in opened] == [file, tmp_path]
    desk.say("Kept.")
    assert not window._notice.open_file.isVisible()


def test_a_file_s_name_breaks_between_its_parts_and_no_short_end_stands_alone(
    window: Window, desk: Desk, tmp_path: Path
) -> None:
    for name, told in (
        ("Farm - 26-1001B - 37.pdf", "Farm\u00a0- 26-1001B\u00a0-\u00a037.pdf"),
        ("Farm - lot sheet - 2026-03-02.pdf", "Farm\u00a0- lot sheet\u00a0- 2026-03-02.pdf"),
        ("Season.pdf", "Season.pdf"),
    ):
        desk.say_saved(f"Saved as {name}, print no. 3.", tmp_path / name)
        assert window._notice.text().startswith(f"Saved as {told}, print no. 3.")


def test_where_nothing_opens_it_the_place_is_told(
    window: Window, desk: Desk, answers: Answers, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(QDesktopServices, "openUrl", lambda _url: False)
    desk.say_saved("Saved as Wall chart.pdf.", tmp_path / "Wall chart.pdf")
    window._notice.open_file.click()
    assert str(tmp_path / "Wall chart.pdf") in answers.told[-1]


def test_a_saved_file_is_told_of_on_its_own_page_alone(window: Window, desk: Desk, tmp_path: Path) -> None:
    desk.say_saved("Saved as Wall chart.pdf.", tmp_path / "Wall chart.pdf")
    window.show_page("today")
    assert window._notice.isVisible()
    window.show_page("setup")
    assert not window._notice.isVisible()


def test_a_way_back_stays_on_other_pages(window: Window, desk: Desk) -> None:
    desk.done.emit("Fill struck out.", "Undo", lambda: None)
    window.show_page("setup")
    assert window._notice.way.isVisible()


def test_a_way_that_lies_over_a_page_goes_with_it(window: Window, desk: Desk) -> None:
    """It covered the buttons at the foot of the next one for twenty seconds."""
    window.resize(1024, 700)
    desk.say_with_way("The plan is kept. " + LONG, "Print the label", lambda: None)
    assert window._notice.isVisible()
    window.show_page("lots")
    assert not window._notice.isVisible()


def test_it_is_closed_by_its_button_and_by_escape(qtbot: QtBot, window: Window, desk: Desk, tmp_path: Path) -> None:
    for way in (window._notice.close_button.click, lambda: qtbot.keyClick(window, Qt.Key.Key_Escape)):
        desk.say_saved("Saved as Wall chart.pdf.", tmp_path / "Wall chart.pdf")
        assert window._notice.isVisible()
        assert window._notice.close_button.accessibleName() == "Close the notice"
        way()
        assert not window._notice.isVisible()


def test_long_words_are_whole_the_first_time(window: Window, desk: Desk, tmp_path: Path) -> None:
    window.resize(1024, 700)
    desk.say_saved(LONG, tmp_path / "Wall chart.pdf")
    assert window._notice.height() >= window._notice.heightForWidth(window._notice.width())


def test_what_the_gap_does_not_hold_lies_low_along_the_foot_of_the_page(window: Window, desk: Desk) -> None:
    """At three lines it covers the foot of a table, and no column of it from top to bottom."""
    window.resize(1024, 700)
    desk.say_with_way("The plan is kept. " + LONG, "Print the label", lambda: None)
    shown = window._notice.geometry()
    assert not shown.intersects(window.rail.geometry())
    assert shown.bottom() > window.height() - 20
    assert shown.height() <= 80
    assert place(window, window._notice.way).left() > place(window, window._notice._words).right()
    assert shown.contains(place(window, window._notice.close_button))
    desk.say("Kept.")
    assert window.rail.geometry().contains(window._notice.geometry())


def test_beside_buttons_at_the_foot_it_lies_over_none_of_them(window: Window, desk: Desk, tmp_path: Path) -> None:
    """As beside a preview: the buttons that print stand at its left, those that turn pages over it."""
    name = "Thistledown Corner (invented) - 26-1001B - scoop labels - 2026-11-08.pdf"
    desk.say_saved(f"Saved as {name}, print no. 12, print no. 13.", tmp_path / name)
    page, notice = QRect(204, 8, 812, 684), window._notice
    buttons = [QRect(at, 650, 110, 36) for at in (220, 336, 452)]
    turning = QRect(580, 60, 420, 36)
    notice.place(QRect(8, 431, 180, 20), page, buttons[1], [*buttons, turning])
    assert page.contains(notice.geometry())
    assert not any(notice.geometry().intersects(each) for each in (*buttons, turning))
    assert notice.geometry().top() > page.center().y()


def test_low_along_the_foot_it_is_no_wider_than_helps(window: Window, desk: Desk, tmp_path: Path) -> None:
    desk.say_saved("Saved as 26-1001B - 37.pdf.", tmp_path / "26-1001B - 37.pdf")
    window._notice.place(QRect(8, 431, 180, 20), QRect(204, 8, 812, 684), QRect())
    assert window._notice.width() < 600
