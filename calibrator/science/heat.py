"""Warmth of a mix: the water to draw, hot and cold water to blend, how long a mix stays warm.

Temperatures that the trade works with stand here as figures; the product's label goes before them.
"""

from __future__ import annotations

import math

from calibrator.model import Composition
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import between, finite, not_negative, positive
from calibrator.science.powder import specific_heat
from calibrator.science.steps import to_step
from calibrator.science.water import density_g_per_ml
from calibrator.values import dataclass

SCALD_CAUTION_C = (120.0 - 32.0) / 1.8
"""Water of 120 °F (49 °C) and more scalds skin: five minutes at 120 °F, 30 s at 130 °F, 6 s at 140 °F (leaflet of
the U.S. Consumer Product Safety Commission, as widely reprinted)."""

SCALDS_IN_SECONDS_C = (130.0 - 32.0) / 1.8
"""From here on in half a minute and less; the same leaflet."""

FEEDING_RANGE_C = (37.8, 40.6)
"""The mix at the calf, 100–105 °F: about a calf's own warmth, which is 101 to 103 °F. Common practice, no source."""

TOO_COOL_C = 29.4
"""Below 85 °F calves do not do well. Common practice, no source."""

_ROUNDING_C = 1e-6  # 120 °F typed and turned into °C is 120 °F

WATER_HEAT_KJ_PER_KG_C = 4.182
"""Specific heat of water, within 0.6 % from 5 to 90 °C (IAPWS-95)."""


def scalds(temperature_c: float) -> bool:
    """Whether a caution against scalds belongs beside water of this temperature: from the limit on."""
    return finite(temperature_c, "The temperature") >= SCALD_CAUTION_C - _ROUNDING_C


def scalds_in_seconds(temperature_c: float) -> bool:
    """Whether such water scalds before a hand is drawn back and dried."""
    return finite(temperature_c, "The temperature") >= SCALDS_IN_SECONDS_C - _ROUNDING_C


def _liquid(temperature_c: float, what: str) -> float:
    return between(temperature_c, 0.0, 100.0, what, "32 and 212 °F (0 and 100 °C)")


@dataclass(frozen=True)
class Bath:
    """A vessel that must be warmed too: its mass, its specific heat, and how warm it is."""

    mass_g: float
    specific_heat_kj_per_kg_c: float
    temperature_c: float


def water_to_draw_c(
    mix_temperature_c: float,
    water_g: float,
    powder_g: float,
    composition: Composition,
    powder_temperature_c: float,
    vessel: Bath | None = None,
) -> float:
    """Temperature of the water to draw so that the mix lands at `mix_temperature_c`, °C.

    Heat given by the water = heat taken by powder (specific heat by Choi and Okos 1986, at the mean of its
    two temperatures) and by the vessel where it is known. Heat of wetting and melting, which partly cancel,
    and losses to the air are left out: within a degree. Mix 0–100 °C, powder −30–60 °C. Raises
    CannotCompute where the answer is no liquid water.
    """
    wanted = _liquid(mix_temperature_c, "The temperature of the mix")
    taken = _taken_by_powder(wanted, powder_g, composition, _stored(powder_temperature_c))
    if vessel is not None:
        heat = positive(vessel.specific_heat_kj_per_kg_c, "The specific heat of the vessel")
        start = finite(vessel.temperature_c, "The temperature of the vessel")
        taken += not_negative(vessel.mass_g, "The weight of the vessel") * heat * (wanted - start)
    draw = wanted + taken / _water_heat(water_g)
    if not 0.0 <= draw <= 100.0:
        raise CannotCompute("No water is hot or cold enough for this: warm the powder or the vessel first.")
    return draw


def mix_temperature_c(
    water_temperature_c: float,
    water_g: float,
    powder_g: float,
    composition: Composition,
    powder_temperature_c: float,
) -> float:
    """Where a mix lands, °C: the inverse of `water_to_draw_c`, without a vessel, by halving."""
    _liquid(water_temperature_c, "The water temperature")
    stored = _stored(powder_temperature_c)
    low, high = sorted((water_temperature_c, stored))
    for _ in range(60):
        middle = (low + high) / 2
        taken = _taken_by_powder(middle, powder_g, composition, stored)
        needed = middle + taken / _water_heat(water_g)
        low, high = (middle, high) if needed < water_temperature_c else (low, middle)
    return (low + high) / 2


def _stored(temperature_c: float) -> float:
    return between(temperature_c, -30.0, 60.0, "The temperature of the powder", "−22 and 140 °F (−30 and 60 °C)")


def _taken_by_powder(wanted: float, powder_g: float, composition: Composition, stored: float) -> float:
    heat = specific_heat(composition, (wanted + stored) / 2)
    return not_negative(powder_g, "The weight of powder") * heat * (wanted - stored)


def _water_heat(water_g: float) -> float:
    return positive(water_g, "The weight of water") * WATER_HEAT_KJ_PER_KG_C


@dataclass(frozen=True)
class Blend:
    """Hot and cold water that make the wanted water; volumes as each is drawn, at its own temperature."""

    hot_g: float
    cold_g: float
    hot_ml: float
    cold_ml: float


def blend(water_g: float, wanted_c: float, hot_c: float, cold_c: float) -> Blend:
    """How much hot and how much cold water, by conservation of mass and heat (one specific heat).

    All 0–100 °C. Raises CannotCompute unless the wanted temperature lies between cold and hot.
    """
    wanted = _liquid(wanted_c, "The water temperature")
    hot, cold = _liquid(hot_c, "The hot water"), _liquid(cold_c, "The cold water")
    if hot <= cold:
        raise CannotCompute("The hot water must be warmer than the cold water.")
    if not cold <= wanted <= hot:
        raise CannotCompute("The wanted temperature must lie between the cold and the hot water.")
    hot_g = positive(water_g, "The weight of water") * (wanted - cold) / (hot - cold)
    cold_g = water_g - hot_g
    return Blend(hot_g, cold_g, hot_g / density_g_per_ml(hot), cold_g / density_g_per_ml(cold))


def as_drawn(found: Blend, water_ml: float, step_ml: float) -> tuple[float, float]:
    """Hot water to a step of what it is drawn with, then cold up to all the water, mL: the two add up to it.

    Hot water takes a little more room than it does once it is mixed, so that its own volumes would not.
    """
    step = not_negative(step_ml, "The step of the water")
    hot = min(to_step(found.hot_ml, step), water_ml)
    return hot, water_ml - hot


def hot_water_missing_ml(needed: Blend, tank_ml: float) -> float:
    """Hot water that a tank holds too little of, mL; 0 where it suffices."""
    return max(0.0, needed.hot_ml - not_negative(tank_ml, "The hot water in the tank"))


@dataclass(frozen=True)
class Cooling:
    """How fast a vessel cools: share of the difference to the room lost per minute, and the room."""

    per_minute: float
    room_c: float

    def temperature_c(self, start_c: float, minutes: float) -> float:
        """Temperature after `minutes` from `start_c`, °C."""
        decay = math.exp(-self.per_minute * not_negative(minutes, "The time"))
        return self.room_c + (finite(start_c, "The temperature") - self.room_c) * decay

    def minutes_until(self, from_c: float, to_c: float) -> float:
        """Minutes until a mix at `from_c` has cooled to `to_c`: 0 when it is there, infinite when never."""
        if finite(from_c, "The temperature") <= finite(to_c, "The temperature"):
            return 0.0
        if to_c <= self.room_c:
            return math.inf
        return math.log((from_c - self.room_c) / (to_c - self.room_c)) / self.per_minute


def cooling(first_c: float, second_c: float, minutes_between: float, room_c: float) -> Cooling:
    """Newton's law of cooling from two readings of one vessel `minutes_between` apart.

    Raises CannotCompute unless the mix has cooled and is still warmer than the room.
    """
    positive(minutes_between, "The time between the readings")
    if not finite(room_c, "The room") < finite(second_c, "The reading") < finite(first_c, "The reading"):
        raise CannotCompute("The second reading must be cooler than the first and still warmer than the room.")
    rate = math.log((first_c - room_c) / (second_c - room_c)) / minutes_between
    return Cooling(rate, room_c)
