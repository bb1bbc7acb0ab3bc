"""Every tab of the mix check: keys, names, widths, units."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime

import pytest
from herd import Herd
from keys import mnemonics, nameless
from mix_hands import NOW, kept_check, refractometer, type_in, zeroed
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.pages.mix_check import MixCheckPage
from calibrator.model import (
    Instrument,
    InstrumentKind,
    UnitSystem,
    new_id,
)


def test_every_tab_has_its_keys_and_names(qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    refractometer(herd)
    kept_check(herd, 1, 0.13)
    desk.changed.emit()
    for place in range(page.tabs.count()):
        page.tabs.setCurrentIndex(place)
        found = mnemonics(page)
        assert len(found) == len(set(found)), page.tabs.tabText(place)
        assert nameless(page) == [], page.tabs.tabText(place)


def test_nothing_wider_than_the_smallest_window(qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    for kind in InstrumentKind:
        herd.records.keep(Instrument(id=new_id(), farm_id=herd.farm.id, name=f"a long name for a {kind}", kind=kind))
    kept_check(herd, 1, 0.13, verdict="strong")
    for system in UnitSystem:
        herd.records.keep(replace(herd.records.find(type(herd.farm), herd.farm.id), units=system))
        desk.changed.emit()
        type_in(qtbot, page.check.readings.first.line, "16.2 16.4")
        for place in range(page.tabs.count()):
            page.tabs.setCurrentIndex(place)
            QApplication.processEvents()
            assert page.minimumSizeHint().width() <= 1024 - 196, page.tabs.tabText(place)
            assert page.minimumSizeHint().height() <= 700, page.tabs.tabText(place)
            here = page.tabs.currentWidget()
            for box in here.findChildren(QLabel):
                if box.isVisible() and not box.wordWrap():
                    assert box.sizeHint().width() <= box.width() + 1, box.text()


def test_units_can_be_switched_in_the_middle(qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    type_in(qtbot, page.check.readings.mix.line, "101")
    assert page.check.readings.mix.value() == pytest.approx((101 - 32) / 1.8)
    herd.records.keep(replace(herd.records.find(type(herd.farm), herd.farm.id), units=UnitSystem.METRIC))
    desk.changed.emit()
    assert page.check.readings.mix.value() == pytest.approx((101 - 32) / 1.8)


def test_a_later_check_of_the_clock_does_not_reach_back(herd: Herd, page: MixCheckPage, desk: Desk) -> None:
    from calibrator.desk.mix_tools import read_tools
    from calibrator.desk.mix_tools import refractometer as as_known

    tool = refractometer(herd)
    zeroed(herd, tool, days=-2)
    tools = read_tools(desk.records, herd.farm)
    assert as_known(tools, tool.id, NOW).water is None
    assert as_known(tools, tool.id, datetime(2027, 1, 1, tzinfo=UTC)).water is not None
