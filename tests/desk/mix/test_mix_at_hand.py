"""The page begins with the instrument that the farm has, and tells what that one should show."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest
from herd import Herd
from mix_hands import labels, refractometer, type_in
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.pages.mix_check import MixCheckPage
from calibrator.model import Instrument, InstrumentKind, ReadingKind, UnitSystem, new_id


@pytest.fixture
def floating(page: MixCheckPage, herd: Herd, desk: Desk) -> MixCheckPage:
    entered(herd, InstrumentKind.HYDROMETER)
    desk.changed.emit()
    QApplication.processEvents()
    return page


def entered(herd: Herd, kind: InstrumentKind, volume_ml: float = 1000.0) -> None:
    herd.records.keep(Instrument(id=new_id(), farm_id=herd.farm.id, name=kind, kind=kind, volume_ml=volume_ml))


def top(field: QWidget, page: MixCheckPage) -> int:
    return field.mapTo(page, QPoint(0, 0)).y()


def test_with_no_instrument_the_page_says_what_else_can_be_used(page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    panel = page.check
    assert "hydrometer or a weighed jug" in labels(panel)
    assert panel.no_tools.isVisible()
    entered(herd, InstrumentKind.THERMOMETER)  # which tells no solids
    desk.changed.emit()
    assert panel.no_tools.isVisible()
    refractometer(herd)
    desk.changed.emit()
    assert not panel.no_tools.isVisible()
    assert not panel.other_ways.isVisible()


def test_a_farm_with_a_hydrometer_alone_begins_with_it(qtbot: QtBot, floating: MixCheckPage) -> None:
    readings = floating.check.readings
    order = (readings.floating, readings.mix, readings.with_drops)
    assert [top(each, floating) for each in order] == sorted(top(each, floating) for each in order)
    assert "what the hydrometer shows" in floating.check.verdict.solids.text()
    assert "Brix" not in floating.check.verdict.solids.text()
    qtbot.waitUntil(lambda: floating.isActiveWindow() and not floating._soon.isActive())
    floating.open("")
    assert readings.floating.line.hasFocus()
    for field in (readings.water, readings.mix):
        qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
        assert field.line.hasFocus()
    type_in(qtbot, readings.volume.line, "66 gal")
    assert "refractometer" not in floating.check.verdict.would_tell.text()


def test_the_hydrometer_field_stands_first_no_more_once_a_refractometer_is_entered(
    floating: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    refractometer(herd)
    desk.changed.emit()
    QApplication.processEvents()
    readings = floating.check.readings
    assert top(readings.first, floating) < top(readings.mix, floating) < top(readings.floating, floating)
    assert "Type the drops" in floating.check.verdict.solids.text()


def test_what_the_hydrometer_should_show_is_told_and_is_right(qtbot: QtBot, floating: MixCheckPage) -> None:
    panel = floating.check
    type_in(qtbot, panel.readings.mix.line, "105 F")
    told = re.search(r"about (1\.\d{3}) on the hydrometer, in a mix of 105 °F", panel.verdict.solids.text())
    assert told is not None, panel.verdict.solids.text()
    type_in(qtbot, panel.readings.floating.line, told[1])
    judged = panel.found.judged
    assert judged is not None
    assert judged.deviation == pytest.approx(0.0, abs=0.002)
    assert told[0] in panel.verdict.solids.text()


def test_what_the_full_jug_should_weigh_is_told_and_is_right(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    entered(herd, InstrumentKind.JUG)
    desk.changed.emit()
    panel = page.check
    type_in(qtbot, panel.readings.mix.line, "105 F")
    pattern = r"about (3\d\.\d\d oz) \((1\.\d{3}|9\d\d) k?g\) of mix in the full jug, at 105 °F"
    told = re.search(pattern, panel.verdict.solids.text())
    assert told is not None, panel.verdict.solids.text()
    assert "hydrometer" not in panel.verdict.solids.text()
    type_in(qtbot, panel.readings.jug_mass.line, told[1])
    judged = panel.found.judged
    assert judged is not None
    assert judged.deviation == pytest.approx(0.0, abs=0.002)
    assert told[0] in panel.verdict.solids.text()


@pytest.mark.parametrize("system", UnitSystem)
def test_the_examples_are_what_the_mix_should_show(
    qtbot: QtBot, floating: MixCheckPage, herd: Herd, desk: Desk, system: UnitSystem
) -> None:
    """Beside "right would be 1.029" no example of another reading, nor of one litre beside a jug of two."""
    herd.records.keep(replace(herd.farm, units=system))
    desk.changed.emit()
    entered(herd, InstrumentKind.JUG, 2000.0)
    desk.changed.emit()
    panel = floating.check
    readings = panel.readings
    type_in(qtbot, readings.mix.line, "105 F")
    told = re.search(r"about (1\.\d{3}) on the hydrometer", panel.verdict.solids.text())
    assert told is not None
    assert readings.floating.line.placeholderText() == told[1]
    like = readings.jug_mass.line.placeholderText()
    number, unit = like.removeprefix("like ").split()
    assert unit == {UnitSystem.FARM: "lb", UnitSystem.METRIC: "g"}[system]
    type_in(qtbot, readings.jug_mass.line, number)
    (jug_g,) = (each.value for each in readings.readings() if each.kind is ReadingKind.JUG_MASS)
    assert 2000 * float(told[1]) * 0.97 < jug_g < 2000 * float(told[1]) * 1.01  # SG beside water at 20 °C
    type_in(qtbot, panel.batch_form.target.line, "2")
    panel.batch_form.target.line.clear()
    panel.work_out()
    assert readings.jug_mass.line.placeholderText() != like  # nothing is known to be right: the usual one


def test_the_fields_of_an_instrument_that_nobody_has_come_last(
    qtbot: QtBot, floating: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    entered(herd, InstrumentKind.JUG)
    desk.changed.emit()
    QApplication.processEvents()
    readings = floating.check.readings
    order = (readings.floating, readings.mix, readings.jug_mass, readings.with_drops)
    heights = [top(field, floating) for field in order]
    assert heights == sorted(heights)
    readings.volume.line.setFocus()
    qtbot.keyClick(readings.volume.line, Qt.Key.Key_Tab)
    assert readings.jug_mass.isAncestorOf(QApplication.focusWidget())
    refractometer(herd)
    desk.changed.emit()
    QApplication.processEvents()
    heights = [top(field, floating) for field in (readings.first, readings.mix, readings.floating, readings.jug_mass)]
    assert heights == sorted(heights)


def test_a_jug_of_unknown_volume_is_told_no_weight(page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    kind = InstrumentKind.JUG
    herd.records.keep(Instrument(id=new_id(), farm_id=herd.farm.id, name=kind, kind=kind))
    desk.changed.emit()
    assert "in the full jug" not in page.check.verdict.solids.text()


def test_back_by_its_letter_the_tab_begins_at_its_first_field(qtbot: QtBot, page: MixCheckPage) -> None:
    panel = page.check
    bar = panel._area.verticalScrollBar()
    qtbot.waitUntil(page.isActiveWindow)
    panel.note.line.setFocus()
    bar.setValue(bar.maximum())
    assert bar.value() > 0
    for letter in (Qt.Key.Key_Y, Qt.Key.Key_M):
        qtbot.keyClick(page, letter, Qt.KeyboardModifier.AltModifier)
        qtbot.wait(1)
    assert panel.readings.first.line.hasFocus()
    assert bar.value() == 0
