"""Temperatures in words: as they really were, and what the thermometer was off by in ice water."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.desk.mix_checks import MixFindings
from calibrator.desk.speech import decimal_comma
from calibrator.model import ReadingKind, UnitSystem
from calibrator.science.check import WANTED_WARMTH_C, Caution, Drunk, drunk
from calibrator.science.thermometer import Thermometer, Warmth, needs_mending
from calibrator.units import show_temperature, show_temperature_span, show_temperature_within

translate = QCoreApplication.translate


def warm_words(found: MixFindings, system: UnitSystem) -> str:
    """The temperatures with their spread, and what was taken off; blank where none was read."""
    if not found.warm or found.thermometer is None:
        return ""
    told = "; ".join(_name(kind).format(warmth=_estimate(warm, system)) for kind, warm in found.warm)
    temperatures = translate("MixWords", "{temperatures} (95 %).").format(temperatures=told)
    return " ".join(part for part in (temperatures, _drunk(found, system), _ice(found.thermometer, system)) if part)


def _drunk(found: MixFindings, system: UnitSystem) -> str:
    """How the warmth at the calf, else of the mix, stands to what calves want; blank where a caution tells it."""
    read = dict(found.warm)
    warm = read.get(ReadingKind.CALF_TEMPERATURE) or read.get(ReadingKind.MIX_TEMPERATURE)
    if warm is None or {Caution.SCALD, Caution.TOO_HOT, Caution.TOO_COOL} & set(found.cautions):
        return ""
    text = {
        Drunk.COOLER: translate("MixWords", "{warmth}: cooler than the {low} to {high} that calves want."),
        Drunk.AS_WANTED: translate("MixWords", "{warmth}: as calves want it."),
        Drunk.WARMER: translate("MixWords", "{warmth}: warmer than the {low} to {high} that calves want."),
    }[drunk(warm.celsius)]
    now, low, high = (
        show_temperature(each, system).replace(" ", "\u00a0") for each in (warm.celsius, *WANTED_WARMTH_C)
    )
    return text.format(warmth=now, low=low.partition("\u00a0")[0], high=high)


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
