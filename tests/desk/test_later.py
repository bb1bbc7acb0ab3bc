"""A place that is filled when it is first needed stands in the Tab key's order where it stands on the page."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QComboBox, QLineEdit, QSpinBox, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.pages.lots import LotsPage
from calibrator.desk.pages.tables import TablesPage
from calibrator.desk.pages.weigh_in import WeighInPage
from calibrator.desk.pages.welcome import WelcomePage
from calibrator.desk.widgets.later import Later
from calibrator.model import Step


def line(name: str) -> QLineEdit:
    made = QLineEdit()
    made.setObjectName(name)
    return made


def part() -> QWidget:
    """Three things that take the key; two of them are put together of others."""
    made, box, count = QWidget(), QComboBox(), QSpinBox()
    box.setEditable(True)
    box.setObjectName("box")
    count.setObjectName("count")
    layout = QVBoxLayout(made)
    for each in (line("inside"), box, count):
        layout.addWidget(each)
    return made


def stops(window: QWidget) -> list[str]:
    """The names of what the Tab key comes to, from the first on, until it comes round."""
    found: list[str] = []
    while True:
        here = QApplication.focusWidget()
        assert here is not None
        if here.objectName() in found:
            return found
        found.append(here.objectName())
        QTest.keyClick(here, Qt.Key.Key_Tab)


@pytest.fixture
def window(qtbot: QtBot) -> tuple[QWidget, Later[QWidget]]:
    made, place = QWidget(), Later(part)
    layout = QVBoxLayout(made)
    for each in (line("before"), place, line("after"), line("last")):
        layout.addWidget(each)
    qtbot.addWidget(made)
    with qtbot.waitActive(made):
        made.show()
    return made, place


def test_it_is_made_once_and_shown(window: tuple[QWidget, Later[QWidget]]) -> None:
    place = window[1]
    assert place.made is None
    content = place.content
    assert content is place.content is place.made
    assert content.isVisible()


def test_the_tab_key_comes_to_it_in_its_turn(window: tuple[QWidget, Later[QWidget]]) -> None:
    over, place = window
    place.content.show()
    before = over.findChild(QLineEdit, "before")
    assert before is not None
    before.setFocus()
    assert stops(over) == ["before", "inside", "box", "count", "after", "last"]


def test_what_stands_before_it_takes_no_focus_after_it_as_before_it(window: tuple[QWidget, Later[QWidget]]) -> None:
    place = window[1]
    assert place.content.isVisible()
    assert place.focusPolicy() == Qt.FocusPolicy.NoFocus


def test_a_place_before_all_else_follows_the_last(qtbot: QtBot) -> None:
    made, place = QWidget(), Later(partial(line, "first"))
    layout = QVBoxLayout(made)
    layout.addWidget(place)
    layout.addWidget(line("next"))
    qtbot.addWidget(made)
    with qtbot.waitActive(made):
        made.show()
    place.content.setFocus()
    assert stops(made) == ["first", "next"]


def test_a_place_alone_on_its_window_is_reached(qtbot: QtBot) -> None:
    place = Later(partial(line, "only"))
    qtbot.addWidget(place)
    place.resize(300, 200)
    with qtbot.waitActive(place):
        place.show()
    place.content.setFocus()
    assert stops(place) == ["only"]


@pytest.mark.parametrize(
    ("kind", "places"),
    [
        (LotsPage, lambda page: (page._form,)),
        (TablesPage, lambda page: (page._form, page._paper)),
        (WeighInPage, lambda page: tuple(page._areas.values())),
        (WelcomePage, lambda page: (page._scale, page._scoop, page._lot)),
    ],
)
def test_a_page_that_is_only_read_fills_none_of_its_places(
    desk: Desk, qtbot: QtBot, kind: type[QWidget], places: Callable[[QWidget], tuple[Later[QWidget], ...]]
) -> None:
    page = kind(desk)  # type: ignore[call-arg]
    qtbot.addWidget(page)
    page.reload()  # type: ignore[attr-defined]
    assert page.pending() == ""  # type: ignore[attr-defined]
    empty = [place for place in places(page) if place.made is None]
    assert len(empty) >= len(places(page)) - (kind is WelcomePage)
    for place in empty:
        assert place.content.isVisibleTo(place)


def test_a_step_is_made_when_it_is_worked_at(desk: Desk, qtbot: QtBot) -> None:
    page = WeighInPage(desk)
    qtbot.addWidget(page)
    page.reload()
    assert not page._views
    view = page._views[Step.LEVEL_FILLS]
    assert set(page._views) == {Step.LEVEL_FILLS}
    assert page._areas[Step.LEVEL_FILLS].content.widget() is view
