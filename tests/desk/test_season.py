"""The season's page: words first, then the picture, then the same figures."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Callable
from dataclasses import replace
from datetime import date

import pytest
from answers import Answers, at_noon
from herd import OZ_G, Herd
from keys import RAIL, mnemonics, nameless
from PySide6.QtCore import QPointF, Qt
from PySide6.QtWidgets import QApplication
from pytestqt.modeltest import ModelTester
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.pages.season import SeasonPage
from calibrator.desk.season_points import DayOf
from calibrator.desk.theme import Theme, tokens
from calibrator.model import Box, Lot, UnitSystem
from calibrator.records import Records

TEN_OZ_LEVEL = 10 * OZ_G / 665.9


@pytest.fixture
def herd(records: Records) -> Herd:
    return Herd(records)


@pytest.fixture
def shown(qapp: QApplication, qtbot: QtBot, herd: Herd, answers: Answers) -> Callable[[], SeasonPage]:
    if qapp.property("tokens") is None:
        Theme(qapp)

    def show() -> SeasonPage:
        page = SeasonPage(Desk(herd.records, answers, clock=at_noon))
        page.desk.changed.connect(page.reload)
        qtbot.addWidget(page)
        page.resize(828, 700)
        page.reload()
        page.show()
        QApplication.processEvents()
        return page

    return show


def row(page: SeasonPage, number: int) -> list[str]:
    model = page.model
    return [model.data(model.index(number, column)) for column in range(model.columnCount())]


def test_an_empty_season_says_what_will_stand_here(shown: Callable[[], SeasonPage]) -> None:
    page = shown()
    assert "first sign-off" in page.meaning.text()
    assert not page.table.isVisible()


def test_one_lot_waits_for_the_next(shown: Callable[[], SeasonPage], herd: Herd) -> None:
    herd.sign("25-1103C", 0.512)
    page = shown()
    assert page.finding.text() == "Lot 25-1103C is the first one weighed in: 17.1 oz/qt."
    assert "next lot" in page.meaning.text()


def test_words_tell_what_the_last_lot_does_to_a_feeding(shown: Callable[[], SeasonPage], herd: Herd) -> None:
    """A lot one tenth denser puts eleven ounces below a line for ten."""
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.sign("25-1204A", 1.1 * TEN_OZ_LEVEL)
    page = shown()
    wanted = "A level scoop of lot 25-1204A weighs 10.0 % more than one of lot 25-1103C."
    assert page.finding.text() == wanted
    assert "would weigh 11.0 oz in place of 10.0 oz" in page.meaning.text()
    assert "had to move" in page.meaning.text()


def test_a_lighter_lot_is_told_as_lighter(shown: Callable[[], SeasonPage], herd: Herd) -> None:
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.sign("25-1204A", 0.95 * TEN_OZ_LEVEL)
    page = shown()
    assert "5.0 % less" in page.finding.text()
    assert "would weigh 9.5 oz" in page.meaning.text()


def test_lots_are_compared_by_the_same_scoop(shown: Callable[[], SeasonPage], herd: Herd) -> None:
    first = herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.sign("25-1204A", 1.1 * TEN_OZ_LEVEL)
    blue = herd.scoop("Blue scoop", Box(length_mm=90, width_mm=80, height_mm=92))
    herd.sign("", 2 * TEN_OZ_LEVEL, blue, herd.lot_of(first))
    page = shown()
    assert "10.0 % more" in page.finding.text()
    assert page.model.rowCount() == 3


def test_the_table_has_the_figures_of_the_picture(shown: Callable[[], SeasonPage], herd: Herd) -> None:
    herd.sign("25-1103C", 0.5)
    herd.sign("25-1204A", 0.51)
    page = shown()
    page.desk.attempt(lambda: herd.records.keep(replace(herd.farm, units=UnitSystem.METRIC)))
    interval = "0.500 – 0.520"
    figures = ["25-1204A", "2 Feb 2026", "Red scoop", "0.510 g/mL", interval, "+2.0 %", "8 fills, 4 bags"]
    assert row(page, 0) == figures
    assert row(page, 1)[5] == "–"
    assert [round(point.value, 3) for point in page.plot.points] == [0.5, 0.51]
    assert [round(point.low, 3) for point in page.plot.points] == [0.49, 0.5]


def test_lots_without_the_chosen_day_are_counted_not_hidden(shown: Callable[[], SeasonPage], herd: Herd) -> None:
    herd.sign("25-1103C", 0.5)
    bare = herd.sign("25-1204A", 0.51)
    lot = herd.records.find(Lot, bare.lot_id)
    herd.records.keep(replace(lot, arrived_on=None, made_on=date(2026, 1, 20)))
    page = shown()
    assert page.days.currentData() == DayOf.WEIGHED
    assert page.left_out.text() == ""
    page.days.setCurrentIndex(page.days.findData(DayOf.ARRIVED))
    page.days.activated.emit(page.days.currentIndex())
    assert page.left_out.text().startswith("1 lot without")
    assert page.plot.keys == [herd.records.every(Lot)[0].id]


def test_hovering_tells_the_lot_and_a_click_opens_it(shown: Callable[[], SeasonPage], herd: Herd, qtbot: QtBot) -> None:
    herd.sign("25-1103C", 0.5)
    signed = herd.sign("25-1204A", 0.51)
    page = shown()
    plot, point = page.plot, page.plot.points[-1]
    scene = plot.getPlotItem().vb.mapViewToScene(QPointF(point.on.toordinal(), point.value))
    place = plot.mapFromScene(scene)
    qtbot.mouseMove(plot.viewport(), place)
    qtbot.waitUntil(lambda: "25-1204A" in page.pointed.text())
    with qtbot.waitSignal(page.desk.go_to) as went:
        qtbot.mouseClick(plot.viewport(), Qt.MouseButton.LeftButton, pos=place)
    assert went.args == ["lots", signed.lot_id]


def test_the_table_opens_a_lot_by_keys(shown: Callable[[], SeasonPage], herd: Herd, qtbot: QtBot) -> None:
    first = herd.sign("25-1103C", 0.5)
    herd.sign("25-1204A", 0.51)
    page = shown()
    qtbot.keyClick(page.table, Qt.Key.Key_Down)
    with qtbot.waitSignal(page.desk.go_to) as went:
        qtbot.keyClick(page.table, Qt.Key.Key_Return)
    assert went.args == ["lots", first.lot_id]
    with qtbot.waitSignal(page.desk.go_to) as went:
        page.open_button.click()
    assert went.args == ["lots", first.lot_id]


def test_the_picture_follows_light_and_dark(qapp: QApplication, shown: Callable[[], SeasonPage], herd: Herd) -> None:
    herd.sign("25-1103C", 0.5)
    page = shown()
    theme = qapp.findChild(Theme)
    assert theme is not None
    try:
        for dark in (True, False):
            theme.force(dark)
            assert page.plot.backgroundBrush().color().name().upper() == tokens().surface.upper()
    finally:
        theme.force(None)


def test_the_model_keeps_its_promises(shown: Callable[[], SeasonPage], herd: Herd, qtmodeltester: ModelTester) -> None:
    herd.sign("25-1103C", 0.5)
    page = shown()
    qtmodeltester.check(page.model)


def test_keys_are_unique_and_every_field_has_a_name(shown: Callable[[], SeasonPage], herd: Herd) -> None:
    herd.sign("25-1103C", 0.5)
    page = shown()
    taken = [*mnemonics(page), *RAIL]
    assert len(taken) == len(set(taken))
    assert not nameless(page)


def test_the_plotting_library_waits_for_the_first_picture() -> None:
    code = "import sys, calibrator.desk.pages.season; sys.exit('pyqtgraph' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0
