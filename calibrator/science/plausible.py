"""Weights that no scoopful of milk powder can have: a slip of the finger, a wrong unit, a forgotten zero."""

from __future__ import annotations

import math
import re
from collections.abc import Iterable
from enum import StrEnum
from itertools import pairwise

from calibrator.science.guard import positive

LIGHTEST_G_PER_ML = 0.15
DENSEST_G_PER_ML = 1.1
"""Wide of anything published for dried milk, 0.30 (roller dried) to 0.78 g/mL (tapped): Cal Poly dairy
technology center 2001; Food Sci. Anim. Resour. 42(6):915, table 2."""

MIDDLE_G_PER_ML = 0.48
"""Between the two ends published."""
POINT_MOVED = (0.1, 0.01, 10.0, 100.0)
"""What a weight is to be multiplied by where its decimal point was left out or is a place or two off."""

USUAL_FEEDING_G = (141.75, 907.2)
"""Powder for one calf at one feeding, 5 to 32 oz: wide of what labels tell. Common practice, no source."""


def unusual_feeding(powder_g: float) -> bool:
    """Whether that much powder is hardly meant for one calf at one feeding. Raises CannotCompute unless above zero."""
    low, high = USUAL_FEEDING_G
    return not low <= positive(powder_g, "The powder of a feeding") <= high


def likeliest_feeding(powders_g: Iterable[float]) -> float | None:
    """The usual weight of powder for one calf at one feeding, of those that may have been meant; None of none."""
    usual = (powder_g for powder_g in powders_g if not unusual_feeding(powder_g))
    middle_g = math.sqrt(math.prod(USUAL_FEEDING_G))
    return min(usual, key=lambda powder_g: abs(math.log(powder_g / middle_g)), default=None)


class Doubt(StrEnum):
    """Why a weight cannot be meant."""

    TOO_LIGHT = "too_light"
    TOO_HEAVY = "too_heavy"
    OVER_CAPACITY = "over_capacity"
    OVER_LEVEL = "over_level"
    WHOLE_FEEDING = "whole_feeding"  # where the one scoopful to the line is weighed


def weight_doubt(mass_g: float, scoopfuls: int, filled_ml: float, capacity_g: float) -> Doubt | None:
    """Whether a weighing of `scoopfuls` of `filled_ml` each can be right on a scale up to `capacity_g`.

    Raises CannotCompute for a weight, a volume or a count that is not above zero.
    """
    density = positive(mass_g, "The weight") / positive(scoopfuls, "The count of scoopfuls")
    density /= positive(filled_ml, "The scoop's volume")
    if mass_g > capacity_g:
        return Doubt.OVER_CAPACITY
    if density > DENSEST_G_PER_ML:
        return Doubt.TOO_HEAVY
    return Doubt.TOO_LIGHT if density < LIGHTEST_G_PER_ML else None


def likeliest(masses_g: Iterable[float], scoopfuls: int, filled_ml: float) -> float | None:
    """The weight whose powder is most like others, of those that may have been meant; None of none."""
    usual = usual_g(filled_ml) * scoopfuls
    return min(masses_g, key=lambda mass_g: abs(math.log(mass_g / usual)), default=None)


def usual_g(filled_ml: float) -> float:
    """What a scoopful of middling powder weighs, g."""
    return MIDDLE_G_PER_ML * positive(filled_ml, "The scoop's volume")


NEAR_A_FEEDING_SHARE = 0.15
"""A feeding weighed whole lies as near as this to its target before anything is known of the line; a guess."""


def whole_feeding(mass_g: float, feeding_g: float) -> bool:
    """Whether a weight is about that of a whole feeding. Raises CannotCompute unless both are above zero."""
    return abs(positive(mass_g, "The weight") / positive(feeding_g, "The target weight") - 1) <= NEAR_A_FEEDING_SHARE


def over_level(mass_g: float, scoopfuls: int, level_high_g: float) -> bool:
    """Whether a scoopful to a line outweighs what a level one may weigh (`level_high_g`, the most that a further one
    is expected to): below its rim a scoop holds less, so this is rather a slip than powder packed by the shake.

    Raises CannotCompute for a weight or a count that is not above zero.
    """
    each_g = positive(mass_g, "The weight") / positive(scoopfuls, "The count of scoopfuls")
    return each_g > positive(level_high_g, "The weight")


SWAPPED_OFF_SHARE = 0.07
SWAPPED_NEAR_SHARE = 0.02
"""A weight so far off the others, while with two digits the other way round it would be so near them, was rather typed
wrong than filled wrong: common practice, no source."""
MISCOUNTED_OFF_SHARE = 0.25
"""So far off the others a weight is rather of another number of scoopfuls: common practice, no source."""
_ONE_NUMBER = re.compile(r"\D*(\d+(?:[.,]\d+)?)\D*", re.ASCII)


def digits_swapped(typed: str, mass_g: float, others_g: float) -> tuple[str, float] | None:
    """What was likelier meant by a weight of `mass_g` that was `typed` so, beside `others_g` of as many scoopfuls, g:
    "363 g" for "336 g", and its mass. None where it is near them, or no two neighbouring digits make it so.

    Raises CannotCompute unless both weights are above zero.
    """
    number = _ONE_NUMBER.fullmatch(typed)
    if number is None or abs(positive(mass_g, "The weight") / positive(others_g, "The weight") - 1) < SWAPPED_OFF_SHARE:
        return None
    start, end = number.span(1)
    for one, other in pairwise(place for place in range(start, end) if typed[place].isdecimal()):
        turned = typed[:one] + typed[other] + typed[one + 1 : other] + typed[one] + typed[other + 1 :]
        meant_g = mass_g * _number(turned[start:end]) / _number(number[1])
        if abs(meant_g / others_g - 1) <= SWAPPED_NEAR_SHARE:
            return turned, meant_g
    return None


def scoopfuls_meant(mass_g: float, scoopfuls: int, others_each_g: float) -> int | None:
    """How many scoopfuls a weight of `mass_g`, told as of so many, likelier is of, where others weigh `others_each_g`
    each, g: 2 for 23.7 oz told as one beside 11.8 oz. None where it is near enough to what is told, or to no number.

    Raises CannotCompute unless both weights are above zero.
    """
    seen = positive(mass_g, "The weight") / positive(others_each_g, "The weight of a scoopful")
    meant = round(seen)
    if meant in (0, scoopfuls) or abs(seen / scoopfuls - 1) < MISCOUNTED_OFF_SHARE:
        return None
    return meant if abs(seen / meant - 1) <= SWAPPED_OFF_SHARE else None


def _number(text: str) -> float:
    """Of one decimal sign, whichever; only what two such are to each other counts."""
    return float(text.replace(",", "."))
