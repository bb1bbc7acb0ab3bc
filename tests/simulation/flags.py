"""How often the odd-fill flag fires on clean data, and how often on a misread scale."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from calibrator.science.nested import Weighed, table
from calibrator.science.odd import odd_fills

from .farm import World, fills, lots

DESIGNS = (
    (3,),
    (4,),
    (8,),
    (1, 1, 1, 1),
    (1, 1, 1, 1, 1, 1),
    (2, 2, 2, 2),
    (2, 2, 2),
    (4, 4, 4),
    (2, 2, 1, 1),
    (3, 2, 1),
    (1, 4, 4),
)
FIRST_FILLS = ((2,), (2, 1), (2, 2), (2, 2, 1), (2, 2, 2, 1))
"""Where the last fill is the one just typed, in a bag from which none or one came before."""


@dataclass(frozen=True)
class Flagged:
    """Share of weigh-ins with any fill flagged, clean and with one fill off by `slip` of its weight, and how
    often that one was among the flagged."""

    world: World
    design: tuple[int, ...]
    clean: float
    found: float


def unbalanced(rng: np.random.Generator, world: World, many: int, design: tuple[int, ...]) -> list[list[Weighed]]:
    """Weigh-ins with so many fills from each bag."""
    readings = fills(rng, world, lots(rng, many), len(design), max(design))
    return [[Weighed(b, float(x)) for b, n in enumerate(design) for x in lot[b][:n] if x > 0] for lot in readings]


def flags(fills_g: list[Weighed], step_g: float) -> tuple[int, ...]:
    return odd_fills(fills_g, table(fills_g), step_g / 6**0.5)


def rates(
    rng: np.random.Generator,
    world: World,
    many: int,
    design: tuple[int, ...],
    slip: float = 0.15,
    *,
    last: bool = False,
) -> Flagged:
    """With any of the fills off by `slip`, or always the `last`."""
    clean = found = 0
    for weigh_in in unbalanced(rng, world, many, design):
        clean += bool(flags(weigh_in, world.step_g))
        place = len(weigh_in) - 1 if last else int(rng.integers(len(weigh_in)))
        slipped = list(weigh_in)
        slipped[place] = Weighed(slipped[place].bag, slipped[place].mass_g * (1 + slip))
        found += place in flags(slipped, world.step_g)
    return Flagged(world, design, clean / many, found / many)
