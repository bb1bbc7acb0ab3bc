"""The first tab of the mix check is made in pieces, and whoever types meanwhile loses no key."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.pages.mix_check import MixCheckPage


@pytest.fixture
def fresh(qtbot: QtBot, desk: Desk) -> MixCheckPage:
    """As the window brings it up: made, read, shown, and come to."""
    page = MixCheckPage(desk)
    qtbot.addWidget(page)
    page.reload()
    with qtbot.waitActive(page):
        page.show()
        page.activateWindow()
    return page


def test_the_cursor_comes_to_the_drops_once_all_is_there(qtbot: QtBot, fresh: MixCheckPage) -> None:
    fresh.open("")
    qtbot.waitUntil(lambda: fresh.check.readings.first.line.hasFocus())
    assert fresh.check.isVisible()
    assert fresh.check.batch_form.batch() is not None


def test_keys_typed_before_all_is_there_arrive(qtbot: QtBot, desk: Desk) -> None:
    page = MixCheckPage(desk)
    qtbot.addWidget(page)
    page.reload()
    page.show()
    page.activateWindow()
    page.open("")
    for key in "11.2":
        qtbot.keyClicks(page.focusWidget() or page, key)
    assert page.check.readings.first.text() == "11.2"


def test_what_was_typed_elsewhere_meanwhile_is_not_left_for_it(qtbot: QtBot, desk: Desk) -> None:
    page = MixCheckPage(desk)
    qtbot.addWidget(page)
    page.reload()
    page.show()
    page.bring_up("bags")
    qtbot.keyClicks(page.bags.bags.line, "6")
    for _ in range(6):
        QApplication.processEvents()
    assert page.bags.bags.text() == "6"
    assert not page.check.readings.first.line.hasFocus()
    qtbot.keyClick(page.bags.bags.line, Qt.Key.Key_Tab)
    assert page.pending() == "6"
