"""Keep or move an old line: the operating curve, at one look and when the advice to weigh more is followed."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from calibrator.model import Cylinder
from calibrator.science.keep import OldLine, OldLineVerdict, old_line
from calibrator.science.scale import ScaleFacts
from calibrator.science.settling import STRUCK
from calibrator.science.spread import BagHistory
from calibrator.science.weighing import Weighed, level_result

from .farm import World, lots
from .procedure import FIRST_BAGS, FIRST_EACH, Lot, next_bag

SHAPE = Cylinder(diameter_mm=90.0, height_mm=100.0)
LINE_MM = 25.0
TOLERANCE = 0.02
MOST_LEVEL_FILLS = 24
OFFSETS = (-0.04, -0.025, -0.021, -0.019, -0.01, 0.0, 0.01, 0.019, 0.021, 0.025, 0.04)


@dataclass(frozen=True)
class Kept:
    """Shares of verdicts when the old line is truly off by `offset`; `wrong` is keep where that is beyond the
    tolerance, move where it is within; `fills` weighed on average."""

    offset: float
    keep: float
    move: float
    undecided: float
    wrong: float
    fills: float


def _look(taken: list[Weighed], scale: ScaleFacts, history: BagHistory | None, target_g: float) -> OldLine:
    level = level_result(taken, scale, history=history, tolerance_g=TOLERANCE * target_g)
    return old_line(SHAPE, level, STRUCK, LINE_MM, target_g, TOLERANCE)


def verdict(
    rng: np.random.Generator, world: World, history: BagHistory | None, offset: float, *, follow: bool
) -> tuple[OldLineVerdict, int]:
    """The verdict on one lot, after four bags of two fills or as many as the advice asks for."""
    lot = Lot(rng, world, float(lots(rng, 1)[0]), 1.0)
    target = lot.level_g * (1 - LINE_MM / 100.0) / (1 + offset)
    scale = ScaleFacts(world.step_g)
    taken = [lot.weigh(b, lot.level_g) for _ in range(FIRST_EACH) for b in range(FIRST_BAGS)]
    found = _look(taken, scale, history, target)
    while follow and found.verdict == OldLineVerdict.WEIGH_MORE and len(taken) < MOST_LEVEL_FILLS:
        taken.append(lot.weigh(next_bag(taken, found.from_other_bags), lot.level_g))
        found = _look(taken, scale, history, target)
    return found.verdict, len(taken)


def operating_point(
    rng: np.random.Generator,
    world: World,
    histories: list[BagHistory | None],
    offset: float,
    many: int,
    *,
    follow: bool,
) -> Kept:
    """Verdicts over `many` lots of farms with these histories."""
    found = [verdict(rng, world, histories[i % len(histories)], offset, follow=follow) for i in range(many)]
    keep, move, more = (sum(v == w for v, _ in found) / many for w in OldLineVerdict)
    wrong = keep if abs(offset) > TOLERANCE else move
    return Kept(offset, keep, move, more, wrong, sum(n for _, n in found) / many)
