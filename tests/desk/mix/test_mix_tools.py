"""Instruments entered and checked on the page of the mix check."""

from __future__ import annotations

from dataclasses import replace

import pytest
from herd import Herd
from keys import focus
from mix_hands import labels, refractometer, type_in
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.mix_tools import hydrometer, read_tools
from calibrator.desk.mix_tools import refractometer as refractometer_known
from calibrator.desk.pages.mix_check import MixCheckPage
from calibrator.model import (
    Instrument,
    InstrumentCheck,
    InstrumentCheckKind,
    InstrumentKind,
    new_id,
)
from calibrator.science.refractometer import scale_error_brix


def test_a_refractometer_is_entered_and_checked_by_keys(qtbot: QtBot, page: MixCheckPage, desk: Desk) -> None:
    page.bring_up("instruments")
    tab = page.instruments
    tab.start_new()
    type_in(qtbot, tab.form.name.line, "Glass one")  # type: ignore[attr-defined]
    type_in(qtbot, tab.form.division.line, "0.2")  # type: ignore[attr-defined]
    tab.keep()
    (tool,) = desk.records.every(Instrument)
    assert (tool.name, tool.kind, tool.division, tool.compensated) == ("Glass one", "refractometer", 0.2, True)
    page.bring_up("tool_checks")
    checks = page.tool_checks
    assert checks.state.text() == "never checked"
    type_in(qtbot, checks.water.line, "0.4")
    qtbot.keyClick(checks.keep_water_button, Qt.Key.Key_Space)
    assert checks.state.text().startswith("checked")
    type_in(qtbot, checks.total.line, "250 g")
    # The kitchen scale shows 0.1 oz: too coarse for so little sugar.
    assert "too coarse" in checks.recipe.text()
    type_in(qtbot, checks.total.line, "700 g")
    assert "Brix" in checks.recipe.text()
    type_in(qtbot, checks.known.line, "12.4")
    qtbot.keyClick(checks.keep_known_button, Qt.Key.Key_Space)
    water, known = desk.records.every(InstrumentCheck)
    assert (water.kind, water.expected, water.reading, water.typed) == (InstrumentCheckKind.WATER, 0.0, 0.4, "0.4")
    assert known.kind is InstrumentCheckKind.KNOWN
    # °Brix is sugar by weight: 3.0 oz of it in 24.7 oz.
    assert known.expected == pytest.approx(100 * 3.0 / 24.7, abs=0.06)
    assert "0.4, should be 0.0\u00a0°Brix" in labels(checks)
    checks.withdraw(known)
    assert desk.records.find(InstrumentCheck, known.id).withdrawn_reason == "spilled some"


def test_enter_goes_through_a_check_to_its_button_and_stays_at_what_is_wrong(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    refractometer(herd)
    desk.changed.emit()
    page.bring_up("tool_checks")
    checks = page.tool_checks
    qtbot.waitUntil(page.isActiveWindow)
    checks.water.line.setFocus()
    qtbot.keyClicks(focus(), "068")
    qtbot.keyClick(focus(), Qt.Key.Key_Return)
    assert focus() is checks.water.line
    assert checks.water.wrong
    type_in(qtbot, checks.water.line, "0")
    qtbot.keyClick(focus(), Qt.Key.Key_Return)
    assert focus() is checks.warmth.line
    qtbot.keyClicks(focus(), "68")
    qtbot.keyClick(focus(), Qt.Key.Key_Return)
    assert focus() is checks.keep_water_button
    qtbot.keyClick(focus(), Qt.Key.Key_Return)
    (kept,) = desk.records.every(InstrumentCheck)
    assert (kept.typed, kept.temperature_c) == ("0", pytest.approx(20.0))


def test_who_was_sent_to_enter_an_instrument_comes_to_its_check(qtbot: QtBot, page: MixCheckPage, desk: Desk) -> None:
    type_in(qtbot, page.check.readings.first.line, "11.2 11.4 11.2")
    qtbot.keyClick(page.check.verdict.to_water, Qt.Key.Key_Space)
    tab = page.instruments
    assert page.tabs.currentWidget().isAncestorOf(tab)
    type_in(qtbot, tab.form.name.line, "Glass one")  # type: ignore[attr-defined]
    type_in(qtbot, tab.form.division.line, "0.2")  # type: ignore[attr-defined]
    tab.keep()
    (tool,) = desk.records.every(Instrument)
    assert page.tabs.currentWidget().isAncestorOf(page.tool_checks)
    assert page.tool_checks.state.text() == "never checked"
    page.bring_up("instruments")
    tab.open(tool.id)
    type_in(qtbot, tab.form.name.line, "Glass two")  # type: ignore[attr-defined]
    tab.keep()
    assert page.tabs.currentWidget().isAncestorOf(tab)  # sent once


def test_each_kind_of_instrument_is_checked_in_its_own_way(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    made = {
        kind: herd.records.keep(Instrument(id=new_id(), farm_id=herd.farm.id, name=kind, kind=kind, division=0.001))
        for kind in (InstrumentKind.HYDROMETER, InstrumentKind.JUG, InstrumentKind.THERMOMETER)
    }
    desk.changed.emit()
    page.bring_up("tool_checks")
    checks = page.tool_checks
    checks.open(made[InstrumentKind.HYDROMETER].id)
    type_in(qtbot, checks.water.line, "0.992")
    checks.keep_water()
    assert "how warm" in checks.warmth.message
    type_in(qtbot, checks.warmth.line, "104 F")
    checks.keep_water()
    checks.open(made[InstrumentKind.JUG].id)
    type_in(qtbot, checks.jug.line, "1000 g")
    checks.keep_jug()
    checks.open(made[InstrumentKind.THERMOMETER].id)
    type_in(qtbot, checks.ice.line, "33")
    checks.keep_ice()
    floating, jug, ice = desk.records.every(InstrumentCheck)
    # Water at 40 and 20 °C by Tanaka et al. 2001, glass 25e-6 per °C.
    assert floating.expected == pytest.approx(992.21521 / 998.20675 * (1 + 25e-6 * 20), abs=1e-6)
    # 1000 g of water at 20 °C is 1002.85 mL, Z of ISO 8655-6.
    assert desk.records.find(Instrument, made[InstrumentKind.JUG].id).volume_ml == pytest.approx(1002.9, abs=0.1)
    assert jug.expected == pytest.approx(1002.9, abs=0.1)
    assert (ice.expected, ice.reading) == (32.0, 33.0)


def test_a_refractometer_that_does_not_compensate_is_checked_at_a_temperature_told(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    """At 30 °C water reads 0.8 too little, and so does sugar water: the prism's warmth makes both right."""
    tool = refractometer(herd, compensated=False)
    desk.changed.emit()
    page.bring_up("tool_checks")
    checks = page.tool_checks
    assert not checks.warmth.isVisibleTo(checks)
    for field, prism, shown, button in (
        (checks.water, checks.zero_prism, -0.8, checks.keep_water_button),
        (checks.known, checks.known_prism, 11.3, checks.keep_known_button),
    ):
        type_in(qtbot, field.line, f"{shown}")
        qtbot.keyClick(button, Qt.Key.Key_Space)
        assert prism.message == "It does not compensate for temperature: type how warm it is."
        type_in(qtbot, prism.line, "190 F")
        qtbot.keyClick(button, Qt.Key.Key_Space)
        assert "104" in prism.message
        type_in(qtbot, prism.line, "86 F")
        qtbot.keyClick(button, Qt.Key.Key_Space)
        assert (field.text(), prism.text()) == ("", "")
    assert [check.temperature_c for check in herd.records.every(InstrumentCheck)] == [pytest.approx(30.0)] * 2
    known = refractometer_known(read_tools(herd.records, herd.farm), tool.id, desk.clock())
    assert scale_error_brix(known) == pytest.approx(0.0, abs=0.1)


def test_one_that_compensates_is_not_asked_how_warm_it_is(page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    refractometer(herd)
    desk.changed.emit()
    page.bring_up("tool_checks")
    assert not page.tool_checks.known_prism.isVisibleTo(page)
    assert not page.tool_checks.zero_prism.isVisibleTo(page)


def test_a_check_in_water_follows_a_corrected_reference_temperature(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    """A sound hydrometer for 60 °F shows 1.000 in water of 60 °F, whatever was entered when it was checked."""
    made = herd.records.keep(
        Instrument(
            id=new_id(), farm_id=herd.farm.id, name="Float", kind=InstrumentKind.HYDROMETER, division=0.001,
            reference_c=20.0,
        )
    )  # fmt: skip
    desk.changed.emit()
    page.bring_up("tool_checks")
    checks = page.tool_checks
    type_in(qtbot, checks.water.line, "1.000")
    type_in(qtbot, checks.warmth.line, "60 F")
    checks.keep_water()
    assert "1.000, should be 1.001" in labels(checks)
    herd.records.keep(replace(made, reference_c=(60 - 32) / 1.8, reference_typed="60 F"))
    desk.changed.emit()
    found = hydrometer(read_tools(herd.records, herd.farm), made.id, desk.clock())
    assert found.offset == pytest.approx(0.0, abs=1e-9)
    assert "1.000, should be 1.000" in labels(checks)


WRONG_ZEROS = ("", "x", "0,2,1", "99", "-9", "0.2 0.4", "1e0", "0.2 oz", "0..2", "nan")


def test_wrong_instrument_readings_are_answered_in_words(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    refractometer(herd)
    desk.changed.emit()
    page.bring_up("tool_checks")
    checks = page.tool_checks
    for text in WRONG_ZEROS:
        for field, keep in ((checks.water, checks.keep_water), (checks.known, checks.keep_known)):
            type_in(qtbot, field.line, text)
            keep()
            assert field.message, text
    assert desk.records.every(InstrumentCheck) == []


def test_what_is_read_with_a_refractometer_is_folded_up_where_only_another_instrument_is_entered(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    readings = page.check.readings
    assert readings.first.isVisible()  # with no instrument entered drops are what most have
    assert not readings.with_drops.isVisible()
    floating = InstrumentKind.HYDROMETER
    herd.records.keep(Instrument(id=new_id(), farm_id=herd.farm.id, name="float", kind=floating, division=0.001))
    desk.changed.emit()
    assert readings.floating.isVisible()
    assert readings.with_drops.isVisible()
    assert not readings.first.isVisible()
    readings.with_drops.setFocus()
    qtbot.keyClick(readings.with_drops, Qt.Key.Key_Space)
    assert readings.first.isVisible()
    qtbot.keyClick(readings.with_drops, Qt.Key.Key_Return)  # goes on
    qtbot.waitUntil(page.isActiveWindow)
    assert focus() is readings.scale
    type_in(qtbot, readings.first.line, "11.2 11.4 11.2")
    qtbot.keyClick(readings.with_drops, Qt.Key.Key_Space)
    assert readings.first.isVisible()  # what is typed counts, and stays
    assert readings.with_drops.isChecked()
    page.check.clear()
    qtbot.keyClick(readings.with_drops, Qt.Key.Key_Space)
    assert not readings.first.isVisible()
    refractometer(herd)
    desk.changed.emit()
    assert readings.first.isVisible()
    assert not readings.with_drops.isVisible()
