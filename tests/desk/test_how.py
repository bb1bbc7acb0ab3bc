"""How a figure came about: what is told adds up to what the screens show."""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from answers import Answers
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QPushButton
from pytestqt.qtbot import QtBot
from told import figures

from calibrator.desk.context import Desk
from calibrator.desk.guide import Guide
from calibrator.desk.how.view import HowDialog
from calibrator.desk.how.working import Working
from calibrator.desk.pages.weigh_in import WeighInPage
from calibrator.desk.theme import the_theme
from calibrator.desk.weigh_in.workings import check_workings, level_workings, line_workings
from calibrator.desk.window import Window
from calibrator.model import Lot, Step, WeighIn
from calibrator.records import Records
from tests.tour import weigh_a_new_lot


@pytest.fixture(scope="module")
def weighed(
    qapp: QApplication, tmp_path_factory: pytest.TempPathFactory, season_in: Callable[[Path], Records]
) -> Iterator[Desk]:
    the_theme()
    records = season_in(tmp_path_factory.mktemp("how"))
    desk = Desk(records, Answers())
    weigh_a_new_lot(desk)
    yield desk
    records.close()


@pytest.fixture
def window(weighed: Desk, qtbot: QtBot) -> Iterator[Window]:
    shown = Window(weighed)
    qtbot.addWidget(shown)
    shown.show()
    shown.show_page("weigh_in", weighed.records.every(Lot)[-1].id)
    yield shown
    shown._closing = True
    shown.close()


def page_of(window: Window) -> WeighInPage:
    page = window.page("weigh_in")
    assert isinstance(page, WeighInPage)
    return page


def guide_of(window: Window) -> Guide:
    guide = page_of(window).guide
    assert guide is not None
    return guide


def told(working: Working, what: str) -> str:
    return next(part.result for part in working.parts if part.what == what)


def test_the_mean_and_its_doubts_add_up_as_told(window: Window) -> None:
    scoopful, density = level_workings(guide_of(window))
    bags = [figures(part.result)[0] for part in scoopful.parts if re.fullmatch(r"Bag \d+", part.what)]
    assert len(bags) == 4
    mean = figures(told(scoopful, "Mean of the bags"))[0]
    assert mean == pytest.approx(sum(bags) / 4, abs=0.28)  # told to 0.01 oz
    doubts = [figures(part.result) for part in scoopful.parts if part.what.startswith("Doubt") and part.result != "–"]
    # JCGM 100:2008, 5.1.2: independent contributions add as squares.
    assert figures(told(scoopful, "All doubts together"))[0] == pytest.approx(
        math.hypot(*(row[0] for row in doubts)), abs=0.02
    )
    assert sum(row[1] for row in doubts) == pytest.approx(100, abs=len(doubts) / 2)
    quotient = next(part for part in density.parts if part.what == "Bulk density")
    mass, volume = figures(quotient.working)
    assert figures(quotient.result)[0] == pytest.approx(mass / volume, abs=3e-4)


def test_the_line_follows_from_what_is_told(window: Window) -> None:
    line, old = line_workings(guide_of(window))
    volume = next(part for part in line.parts if part.what == "Volume to the line")
    rim, mass, level, settling = figures(volume.working)
    assert volume.result.endswith(" fl oz")
    assert float(volume.result.split()[0]) == pytest.approx(rim * mass / (level * settling), rel=1.5e-3)
    against = next(part for part in old.parts if part.what == "Against the target")
    delivers, target, _ = figures(against.working)
    assert figures(against.result)[0] == pytest.approx(100 * (delivers / target - 1), abs=0.05)


def test_the_verdict_on_the_line_comes_before_its_mean(window: Window) -> None:
    verdict, scoopful = check_workings(guide_of(window))
    low, high = figures(told(verdict, "95 % interval"))
    assert low < figures(told(verdict, "A feeding to this line"))[0] < high
    assert scoopful.title == "The weight of a scoopful"


@pytest.mark.parametrize("step", [Step.LEVEL_FILLS, Step.MARK, Step.FILLS_TO_MARK])
def test_it_opens_and_closes_by_keyboard(window: Window, qtbot: QtBot, step: Step) -> None:
    page_of(window).open_step(step)
    link = next(b for b in window.findChildren(QPushButton) if b.isVisible() and b.text() == "How is this computed?")
    link.setFocus()
    QTest.keyClick(link, Qt.Key.Key_Space)
    dialog = window.findChild(HowDialog)
    assert dialog is not None
    assert dialog.isVisible()
    QTest.keyClick(dialog, Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: window.findChild(HowDialog) is None)


def test_nothing_weighed_has_no_working(window: Window) -> None:
    guide = guide_of(window)
    begun = WeighIn(id="fresh", farm_id=guide.farm.id, lot_id=guide.lot.id, started_at=guide.clock())
    fresh = Guide(guide.records, guide.records.keep(begun), guide.clock)
    assert level_workings(fresh) == line_workings(fresh) == check_workings(fresh) == ()
