"""Temperatures in words: as they really were, and what the thermometer was off by in ice water."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.desk.mix_checks import MixFindings
from calibrator.desk.speech import decimal_comma
from calibrator.model import ReadingKind, UnitSystem
from calibrator.science.check import WANTED_WARMTH_C, Caution, Drunk, drawn, drunk
from calibrator.science.thermometer import Thermometer, Warmth, needs_mending
from calibrator.units import show_temperature, show_temperature_span, show_temperature_within, whole_degrees

translate = QCoreApplication.translate


def warm_words(found: MixFindings, system: UnitSystem, planned_c: float | None) -> str:
    """The temperatures with their spread, how the water stands to what the plan has it at, where there is one, and what
    was taken off; blank where none was read.
    """
    if not found.warm or found.thermometer is None:
        return ""
    told = "; ".join(_name(kind).format(warmth=_estimate(warm, system)) for kind, warm in found.warm)
    temperatures = translate("MixWords", "{temperatures} (95 %).").format(temperatures=told)
    pieces = (temperatures, _drawn(found, system, planned_c), _as_wanted(found, system))
    return " ".join(part for part in (*pieces, _ice(found.thermometer, system)) if part)


def off_words(found: MixFindings, system: UnitSystem) -> str:
    """That the mix is cooler or warmer than calves want it, which is a caution; blank where it is not, or where a
    graver one tells it.
    """
    warm = _at_the_calf(found)
    if warm is None or (lies := _about_wanted(warm, system)) is Drunk.AS_WANTED:
        return ""
    text = {
        Drunk.COOLER: translate(
            "MixWords",
            "{warmth} is cooler than the {low} to {high} that calves want, about as warm as they are themselves. The "
            "product's label decides.",
        ),
        Drunk.WARMER: translate(
            "MixWords", "{warmth} is warmer than the {low} to {high} that calves want. The product's label decides."
        ),
    }[lies]
    low, high = (_plain(each, system) for each in WANTED_WARMTH_C)
    return text.format(warmth=_plain(warm.celsius, system), low=low.partition("\u00a0")[0], high=high)


def _at_the_calf(found: MixFindings) -> Warmth | None:
    """The warmth at the calf, else of the mix; None where a grave caution tells of it."""
    read = dict(found.warm)
    if {Caution.SCALD, Caution.TOO_HOT, Caution.TOO_COOL} & set(found.cautions):
        return None
    return read.get(ReadingKind.CALF_TEMPERATURE) or read.get(ReadingKind.MIX_TEMPERATURE)


def _about_wanted(warm: Warmth, system: UnitSystem) -> Drunk:
    low, high = (whole_degrees(each, system) for each in WANTED_WARMTH_C)
    return drunk(whole_degrees(warm.celsius, system), (low, high))


def _as_wanted(found: MixFindings, system: UnitSystem) -> str:
    warm = _at_the_calf(found)
    if warm is None or _about_wanted(warm, system) is not Drunk.AS_WANTED:
        return ""
    return translate("MixWords", "{warmth}: as calves want it.").format(warmth=_plain(warm.celsius, system))


def _drawn(found: MixFindings, system: UnitSystem, planned_c: float | None) -> str:
    """How the water stands to what the plan has it at; blank where nothing is planned, or it scalds."""
    water = dict(found.warm).get(ReadingKind.WATER_TEMPERATURE)
    if water is None or planned_c is None or Caution.SCALD in found.cautions:
        return ""
    text = {
        Drunk.COOLER: translate("MixWords", "The water was cooler than the {planned} of the plan."),
        Drunk.AS_WANTED: translate("MixWords", "The water was as warm as the plan has it."),
        Drunk.WARMER: translate("MixWords", "The water was warmer than the {planned} of the plan."),
    }[drawn(water.celsius, planned_c)]
    return text.format(planned=_plain(planned_c, system))


def _plain(celsius: float, system: UnitSystem) -> str:
    return show_temperature(celsius, system).replace(" ", "\u00a0")


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
