"""How often the 95 % interval holds the true mean."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from .farm import World, fills, lots, worlds
from .vector import Squares, half_widths, squares

HISTORY_LOTS = 10
HISTORY_DESIGN = (4, 2)


@dataclass(frozen=True)
class Covered:
    """Share of weigh-ins whose interval held the truth, and the mean half-width as a share of the mean."""

    world: World
    bags: int
    each: int
    covered: float
    half_width: float


def history(
    rng: np.random.Generator, world: World, many: int, design: tuple[int, int] = HISTORY_DESIGN
) -> list[Squares]:
    """Ten earlier lots of each of `many` farms."""
    return [squares(fills(rng, world, lots(rng, many), *design)) for _ in range(HISTORY_LOTS)]


def coverage(
    rng: np.random.Generator, world: World, bags: int, each: int, many: int, past: list[Squares] | None = None
) -> Covered:
    """Coverage of one design in one world over `many` weigh-ins."""
    true = lots(rng, many)
    readings = fills(rng, world, true, bags, each)
    half = half_widths(readings, world.step_g, past, tared_once=world.tared_once)
    mean = readings.mean(axis=(1, 2))
    return Covered(world, bags, each, float(np.mean(abs(mean - true) <= half)), float(np.mean(half / true)))


def without_history(
    rng: np.random.Generator, many: int, bags: range = range(3, 7), *, tared_once: bool = False
) -> list[Covered]:
    """Every design without a history."""
    return [coverage(rng, w, b, n, many) for w in worlds(tared_once) for b in bags for n in range(1, 5)]


def with_history(
    rng: np.random.Generator,
    many: int,
    design: tuple[int, int] = HISTORY_DESIGN,
    *,
    tared_once: bool = False,
) -> list[Covered]:
    """Every design with a history of ten lots of `design`."""
    found = []
    for world in worlds(tared_once):
        past = history(rng, world, many, design)
        found += [coverage(rng, world, b, n, many, past) for b in range(1, 7) for n in range(1, 5)]
    return found
