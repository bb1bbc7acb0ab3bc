"""A plan's warmth: the water to draw and to blend, where the mix lands, how long it stays warm, whose turn it is.

No window needed. Refusals are sentences, kept apart from the figures that can be told.
"""

from __future__ import annotations

from calibrator.desk.refusals import in_words
from calibrator.desk.sheet_lines import GroupSheet, SheetLine
from calibrator.desk.sheets import PlanSheet
from calibrator.model import Composition, CoolingReadings, HotWater, Plan
from calibrator.science.errors import CannotCompute
from calibrator.science.heat import (
    TOO_COOL_C,
    Blend,
    Cooling,
    blend,
    cooling,
    hot_water_missing_ml,
    mix_temperature_c,
    water_to_draw_c,
)
from calibrator.science.mixing import Mix
from calibrator.science.serving import Served, Turn, serve
from calibrator.values import dataclass

MINUTES_OF_PACE = 10  # the pace is told as calves in ten minutes


@dataclass(frozen=True)
class Warm:
    """One group's water and mix. `lands_c` is None while the powder's temperature is not told.

    `minutes` is how long a mix stays warm enough in the vessel; None where it is not known how that cools.
    """

    draw_c: float
    lands_c: float | None = None
    minutes: float | None = None
    trouble: str = ""


@dataclass(frozen=True)
class HotNeed:
    """The hot water that a feeding of all groups takes, and what the tank holds too little of."""

    needed_ml: float
    missing_ml: float


def draw_c(plan: Plan, per_calf: Mix, composition: Composition) -> float:
    """The temperature of the water to draw. Raises CannotCompute where no water would do."""
    told = plan.warmth
    if told is None or told.mix_c is None:
        return plan.water_temperature_c
    return water_to_draw_c(told.mix_c, per_calf.water_g, per_calf.powder_g, composition, told.powder_c)


def composition_of(sheet: PlanSheet) -> Composition:
    lot = sheet.powder.lot
    return lot.composition if lot else Composition()


def warm(sheet: PlanSheet, group: GroupSheet) -> Warm:
    """What holds for every batch of a group, whatever the count of calves."""
    plan, mix, composition = sheet.plan, group.per_calf, composition_of(sheet)
    try:
        drawn = draw_c(plan, mix, composition)
        if plan.warmth is None:
            return Warm(drawn)
        lands = mix_temperature_c(drawn, mix.water_g, mix.powder_g, composition, plan.warmth.powder_c)
        how = cooling_of(sheet.vessel.cooling if sheet.vessel else None)
    except CannotCompute as error:
        return Warm(plan.water_temperature_c, trouble=in_words(error))
    return Warm(drawn, lands, how.minutes_until(lands, TOO_COOL_C) if how else None)


def cooling_of(told: CoolingReadings | None) -> Cooling | None:
    """How a vessel cools, from its two readings. Raises CannotCompute for readings that cannot be."""
    return cooling(told.first_c, told.later_c, told.minutes, told.air_c) if told else None


def blend_of(line: SheetLine, drawn_c: float, hot: HotWater | None) -> Blend | None:
    """Hot and cold water of one batch; None where the farm's are not told. Raises CannotCompute."""
    return blend(line.batch.drawn_g, drawn_c, hot.hot_c, hot.cold_c) if hot else None


def hot_needed(sheet: PlanSheet, warms: tuple[Warm, ...]) -> HotNeed | None:
    """What today's calves take of the tank; None without a tank. Raises CannotCompute."""
    hot = sheet.groups[0].farm.hot_water if sheet.groups else None
    if hot is None:
        return None
    hot_g = cold_g = hot_ml = cold_ml = 0.0
    for group, known in zip(sheet.groups, warms, strict=True):
        line = group.today_line
        part = blend_of(line, known.draw_c, hot) if line else None
        if line and part:
            hot_g, hot_ml = hot_g + line.batches * part.hot_g, hot_ml + line.batches * part.hot_ml
            cold_g, cold_ml = cold_g + line.batches * part.cold_g, cold_ml + line.batches * part.cold_ml
    return HotNeed(hot_ml, hot_water_missing_ml(Blend(hot_g, cold_g, hot_ml, cold_ml), hot.tank_ml))


def served(sheet: PlanSheet, warms: tuple[Warm, ...]) -> tuple[tuple[GroupSheet, Served], ...]:
    """Today's groups in the order of the plan, each with its turn; none where the pace is not told."""
    told = sheet.plan.warmth
    if told is None or told.calves_in_ten_minutes < 1:
        return ()
    fed = [
        (group, line, known)
        for group, known in zip(sheet.groups, warms, strict=True)
        if (line := group.today_line) is not None and known.lands_c is not None
    ]
    turns = [Turn(line.calves, line.batches, known.lands_c or 0.0) for _, line, known in fed]
    try:
        times = serve(
            turns,
            told.calves_in_ten_minutes / MINUTES_OF_PACE,
            cooling_of(sheet.vessel.cooling if sheet.vessel else None),
        )
    except CannotCompute:
        return ()
    return tuple(zip((group for group, _, _ in fed), times, strict=True))
