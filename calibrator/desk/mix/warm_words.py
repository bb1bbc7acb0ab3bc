"""Temperatures in words: as they really were, and what the thermometer was off by in ice water."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.desk.mix_checks import MixFindings
from calibrator.desk.speech import decimal_comma
from calibrator.model import ReadingKind, UnitSystem
from calibrator.science.thermometer import Thermometer, Warmth, needs_mending
from calibrator.units import show_temperature_span, show_temperature_within

translate = QCoreApplication.translate


def warm_words(found: MixFindings, system: UnitSystem) -> str:
    """The temperatures with their spread, and what was taken off; blank where none was read."""
    if not found.warm or found.thermometer is None:
        return ""
    told = "; ".join(_name(kind).format(warmth=_estimate(warm, system)) for kind, warm in found.warm)
    temperatures = translate("MixWords", "{temperatures} (95 %).").format(temperatures=told)
    return f"{temperatures} {_ice(found.thermometer, system)}".strip()


def _name(kind: ReadingKind) -> str:
    return {
        ReadingKind.WATER_TEMPERATURE: translate("MixWords", "Water {warmth}"),
        ReadingKind.MIX_TEMPERATURE: translate("MixWords", "Mix {warmth}"),
        ReadingKind.CALF_TEMPERATURE: translate("MixWords", "At the calf {warmth}"),
    }[kind]


def _estimate(warm: Warmth, system: UnitSystem) -> str:
    told = show_temperature_within(warm.celsius, warm.half_width_c, system, decimal_comma=decimal_comma())
    return told.replace(" ", "\u00a0")


def _ice(thermometer: Thermometer, system: UnitSystem) -> str:
    off = thermometer.offset_c
    if off is None:
        return translate("MixWords", "Check the thermometer in ice water to be surer.")
    if not off:
        return ""
    high = translate("MixWords", "The thermometer showed {degrees} too much in ice water; that is taken off.")
    low = translate("MixWords", "The thermometer showed {degrees} too little in ice water; that is added.")
    degrees = show_temperature_span(abs(off), system, decimal_comma=decimal_comma())
    told = (high if off > 0 else low).format(degrees=degrees)
    if needs_mending(thermometer):
        told += " " + translate("MixWords", "So far off it is not to be trusted: adjust or replace it.")
    return told
