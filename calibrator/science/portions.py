"""Powder that is heavier than the scale weighs: in how many portions, and of how much each."""

from __future__ import annotations

import math

from calibrator.science.guard import not_negative, positive
from calibrator.science.steps import to_step
from calibrator.values import dataclass

FOR_CONTAINER = 0.2
"""The part of a scale's capacity that is left to the pail or tub it weighs in: what it is, nobody has told. A pail of
1 kg on a scale of 5 kg. Common practice, no source."""
_ROUNDING = 1e-9  # what fills the scale exactly must not ask for one portion more


@dataclass(frozen=True)
class Portions:
    """So many portions of the same weight, to the scale's step; together they are off by half a step each at most."""

    count: int
    each_g: float


def most_at_once_g(capacity_g: float) -> float:
    """The most powder that a scale of this capacity weighs at once, with a container on it, g.

    Raises CannotCompute for a capacity that is not above zero.
    """
    return positive(capacity_g, "The capacity of the scale") * (1 - FOR_CONTAINER)


def portions(mass_g: float, capacity_g: float, step_g: float) -> Portions | None:
    """The fewest equal portions that the scale weighs; None where it weighs all at once, or none is known (0).

    Equal, so that there is one weight to keep in mind. Raises CannotCompute for figures below zero.
    """
    mass = not_negative(mass_g, "The weight of powder")
    if not not_negative(capacity_g, "The capacity of the scale"):
        return None
    count = math.ceil(mass / most_at_once_g(capacity_g) * (1 - _ROUNDING))
    if count < 2:
        return None
    step = not_negative(step_g, "The step of the scale")
    each = mass / count
    return Portions(count, to_step(each, step))
