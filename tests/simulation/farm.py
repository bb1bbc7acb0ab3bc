"""An imagined farm: lots whose true scoopful weight is known, weighed on a scale that rounds."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

MEAN_SCOOPFUL_G = 290.0
BETWEEN_LOTS = 0.05
TENTH_OF_AN_OUNCE_G = 2.8349523125
SCALES_G = (TENTH_OF_AN_OUNCE_G, 1.0)
BAG_SPREADS = (0.005, 0.01, 0.02)
FILL_SPREADS = (0.015, 0.03)


@dataclass(frozen=True)
class World:
    """Spreads as shares of the mean; `tared_once`: one rounding of the empty container common to all fills."""

    bag_spread: float
    fill_spread: float
    step_g: float
    tared_once: bool = False


def worlds(tared_once: bool = False) -> list[World]:
    """Every combination of scale, bag spread and fill spread."""
    return [World(b, f, s, tared_once) for s in SCALES_G for b in BAG_SPREADS for f in FILL_SPREADS]


def lots(rng: np.random.Generator, many: int) -> Floats:
    """True weights of a scoopful, one for each lot."""
    return MEAN_SCOOPFUL_G * (1 + BETWEEN_LOTS * rng.standard_normal(many))


def read(rng: np.random.Generator, world: World, true_g: Floats) -> Floats:
    """What a scale shows as net weights: empty and full container both rounded, the container anywhere."""
    shape = (true_g.shape[0], *(1 for _ in true_g.shape[1:])) if world.tared_once else true_g.shape
    empty = rng.uniform(0.0, world.step_g, shape)
    full = np.round((true_g + empty) / world.step_g)
    return np.asarray((full - np.round(empty / world.step_g)) * world.step_g)


def fills(rng: np.random.Generator, world: World, true_g: Floats, bags: int, each: int) -> Floats:
    """Readings of `each` fills from each of `bags` bags for every lot: lots × bags × fills."""
    many = true_g.shape[0]
    bag = 1 + world.bag_spread * rng.standard_normal((many, bags, 1))
    fill = world.fill_spread * rng.standard_normal((many, bags, each))
    return read(rng, world, true_g[:, None, None] * (bag + fill))
