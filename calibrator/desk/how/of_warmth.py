"""How the water to draw, its hot and cold parts, and the time that a mix stays warm came about."""

from __future__ import annotations

from collections.abc import Iterator
from math import isfinite

from calibrator.desk.counted import counted
from calibrator.desk.how import amounts
from calibrator.desk.how.working import Part, Working, figure, translate
from calibrator.desk.sheets import GroupSheet, PlanSheet, SheetLine
from calibrator.desk.warmth import Warm, blend_of
from calibrator.desk.warmth_words import temperature
from calibrator.model import HotWater, UnitSystem
from calibrator.science.errors import CannotCompute
from calibrator.science.heat import TOO_COOL_C, WATER_HEAT_KJ_PER_KG_C

SOURCES = (
    "Choi and Okos 1986, as in the ASHRAE Handbook, Refrigeration, chapter 9",
    "IAPWS-95",
)


def of_warmth(sheet: PlanSheet, group: GroupSheet, line: SheetLine, known: Warm) -> tuple[Working, ...]:
    """Behind a group's water; nothing where neither its warmth nor the farm's hot water is told."""
    system = group.farm.units
    parts = (*_drawn(sheet, group, known, system), *_blended(line, known, group.farm.hot_water, system))
    if not parts:
        return ()
    words = translate(
        "How",
        "Warm water gives off what the powder takes up, and hot and cold water meet in between. Heat lost to vessel "
        "and air is left out: measure the mix before it is fed.",
    )
    return (Working(translate("How", "Warmth of water and mix"), parts, SOURCES, words),)


def _drawn(sheet: PlanSheet, group: GroupSheet, known: Warm, system: UnitSystem) -> Iterator[Part]:
    told, mix = sheet.plan.warmth, group.per_calf
    if told is None or known.lands_c is None:
        return
    if told.mix_c is not None:
        working = translate(
            "How",
            "as much warmer than the mix as the powder takes: {powder} of powder from {stored}, "
            "{water} of water × {heat}",
        )
        heat = figure(WATER_HEAT_KJ_PER_KG_C, 3, "kJ/(kg °C)")
        stored = temperature(told.powder_c, system)
        told_working = working.format(
            powder=amounts.mass(mix.powder_g, system), stored=stored, water=amounts.mass(mix.water_g, system), heat=heat
        )
        yield Part(translate("How", "Water to draw"), told_working, temperature(known.draw_c, system))
    lands = translate("How", "where water at {water} and powder at {powder} meet").format(
        water=temperature(known.draw_c, system), powder=temperature(told.powder_c, system)
    )
    yield Part(translate("How", "The mix lands at"), lands, temperature(known.lands_c, system))
    if known.minutes is not None and isfinite(known.minutes):
        cooling = translate("How", "cooling as the vessel's two readings show, down to {cool}")
        minutes = counted.minutes(int(known.minutes))
        yield Part(translate("How", "Stays warm"), cooling.format(cool=temperature(TOO_COOL_C, system)), minutes)


def _blended(line: SheetLine, known: Warm, hot: HotWater | None, system: UnitSystem) -> Iterator[Part]:
    try:
        parts = blend_of(line, known.draw_c, hot)
    except CannotCompute:
        return
    if parts is None or hot is None:
        return
    working = translate("How", "water × (drawn − cold) ÷ (hot − cold): {water} × ({drawn} − {cold}) ÷ ({hot} − {cold})")
    told = working.format(
        water=amounts.mass(line.batch.drawn_g, system),
        drawn=amounts.temperature(known.draw_c, system),
        cold=amounts.temperature(hot.cold_c, system),
        hot=amounts.temperature(hot.hot_c, system),
    )
    yield Part(translate("How", "Hot water in a batch"), told, amounts.volume(parts.hot_ml, system))
    yield Part(
        translate("How", "Cold water in a batch"), translate("How", "the rest"), amounts.volume(parts.cold_ml, system)
    )
