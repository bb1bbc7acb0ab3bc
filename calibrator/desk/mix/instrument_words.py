"""Instruments and their checks in words."""

from __future__ import annotations

from datetime import datetime, timedelta

from PySide6.QtCore import QCoreApplication

from calibrator.desk.counted import counted
from calibrator.desk.mix_tools import Tools, should_show
from calibrator.desk.mix_words import number
from calibrator.desk.speech import day_text
from calibrator.model import Instrument, InstrumentCheck, InstrumentCheckKind, InstrumentKind
from calibrator.science.refractometer import KNOWN_DAYS, ZERO_DAYS
from calibrator.science.thermometer import ICE_F

translate = QCoreApplication.translate


def kind_name(kind: InstrumentKind) -> str:
    """What an instrument is."""
    return {
        InstrumentKind.REFRACTOMETER: translate("Instruments", "refractometer"),
        InstrumentKind.HYDROMETER: translate("Instruments", "hydrometer"),
        InstrumentKind.JUG: translate("Instruments", "jug"),
        InstrumentKind.THERMOMETER: translate("Instruments", "thermometer"),
    }[kind]


def about(tool: Instrument, tools: Tools | None, at: datetime) -> str:
    """Kind and state of an instrument in a line of the list."""
    return translate("Instruments", "{kind}, {state}").format(kind=kind_name(tool.kind), state=_short(tool, tools, at))


def _short(tool: Instrument, tools: Tools | None, at: datetime) -> str:
    days = days_since(tool, tools, at)
    if days is None:
        return translate("Instruments", "never checked")
    return translate("Instruments", "check overdue") if days > limit_days(tool) else translate("Instruments", "checked")


def days_since(tool: Instrument, tools: Tools | None, at: datetime) -> int | None:
    """Days since the check that matters most; None where there was none."""
    ice = tool.kind is InstrumentKind.THERMOMETER
    kind = InstrumentCheckKind.KNOWN if ice else InstrumentCheckKind.WATER
    found = tools.newest(tool.id, kind, at) if tools else None
    return (at - found.at).days if found else None


def limit_days(tool: Instrument) -> int:
    """How long a check of such an instrument holds."""
    weekly = tool.kind in (InstrumentKind.REFRACTOMETER, InstrumentKind.HYDROMETER)
    return ZERO_DAYS if weekly else KNOWN_DAYS


def holds(tool: Instrument, tools: Tools | None, at: datetime) -> bool:
    """Whether it was checked and that check still holds."""
    days = days_since(tool, tools, at)
    return days is not None and days <= limit_days(tool)


def state(tool: Instrument, tools: Tools | None, at: datetime) -> str:
    """Whether its checks still hold."""
    days = days_since(tool, tools, at)
    if days is None:
        return translate("Instruments", "never checked")
    if days > limit_days(tool):
        return translate("Instruments", "check overdue ({days})").format(days=counted.days(days))
    return translate("Instruments", "checked {day}").format(
        day=day_text((at - timedelta(days=days)).astimezone().date())
    )


def check_line(check: InstrumentCheck, tool: Instrument) -> str:
    """One check as a line: when, what it should have shown, what it showed."""
    digits = 3 if tool.kind is InstrumentKind.HYDROMETER else 1
    if tool.kind is InstrumentKind.JUG:
        text = translate("Instruments", "{day}: {typed} of water, so it holds {volume} mL")
        day = day_text(check.at.astimezone().date())
        return text.format(day=day, typed=check.typed, volume=round(check.expected))
    where = translate("Instruments", "in plain water")
    if check.kind is InstrumentCheckKind.KNOWN:
        ice = tool.kind is InstrumentKind.THERMOMETER
        where = translate("Instruments", "in ice water") if ice else translate("Instruments", "in the sugar solution")
    text = translate("Instruments", "{day}, {where}: {reading}, should be {expected}")
    return text.format(
        day=day_text(check.at.astimezone().date()),
        where=where,
        reading=number(check.reading, digits),
        expected=number(should_show(tool, check), digits) + _unit(check, tool),
    )


def _unit(check: InstrumentCheck, tool: Instrument) -> str:
    """What such an instrument is read in, a thermometer by its own scale: ice is 32 on the one and 0 on the other. A
    hydrometer's figure is a ratio and has none."""
    if tool.kind is InstrumentKind.REFRACTOMETER:
        return "\u00a0°Brix"
    if tool.kind is not InstrumentKind.THERMOMETER:
        return ""
    return "\u00a0°F" if check.expected == ICE_F else "\u00a0°C"
