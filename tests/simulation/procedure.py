"""The whole procedure, followed as the program advises, stopping as soon as it says so.

Uses the program's own functions for each look: level fills, line, fills to the line, moving it, until the
verdict is *on target*. Each look comes after every single fill, as on the screen.
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from calibrator.model import TaperedCup
from calibrator.science.mark import LineVerdict, at_line, check_line, fill_line, fraction_at
from calibrator.science.scale import ScaleFacts
from calibrator.science.spread import BagHistory
from calibrator.science.weighing import LevelResult, Weighed, level_result
from tests.season_fills import pool_bag_history

from .farm import BETWEEN_LOTS, MEAN_SCOOPFUL_G, World, fills

SHAPE = TaperedCup(rim_diameter_mm=100.0, floor_diameter_mm=80.0, height_mm=90.0)
TARGET_G = 220.0
TOLERANCE = 0.02
SETTLING_MEAN, SETTLING_SPREAD = 1.02, 0.015
DRAWN_SPREAD_MM = 0.4
FIRST_BAGS, FIRST_EACH = 4, 2
MOST_FILLS = 80


@dataclass
class Lot:
    """One lot as nature made it, and the weighings so far."""

    rng: np.random.Generator
    world: World
    level_g: float
    settling: float
    bags: list[float] = field(default_factory=list)
    weighings: int = 0

    def weigh(self, bag: int, true_g: float) -> Weighed:
        """One fill from a bag (opened when first asked for), as the scale shows it."""
        while bag >= len(self.bags):
            self.bags.append(self.world.bag_spread * self.rng.standard_normal())
        self.weighings += 1
        weight = true_g * (1 + self.bags[bag] + self.world.fill_spread * self.rng.standard_normal())
        step = self.world.step_g
        empty = self.rng.uniform(0, step)
        shown = (np.round((weight + empty) / step) - np.round(empty / step)) * step
        return Weighed(bag, float(max(step, shown)))


@dataclass(frozen=True)
class Outcome:
    """How far the mean feeding is from its target, what it took, and how the interval at the stop did."""

    off_share: float
    bags: int
    level_fills: int
    all_fills: int
    moves: int
    level_covered: bool
    settled: bool


def new_lot(rng: np.random.Generator, world: World) -> Lot:
    level = MEAN_SCOOPFUL_G * (1 + BETWEEN_LOTS * rng.standard_normal())
    return Lot(rng, world, level, SETTLING_MEAN + SETTLING_SPREAD * rng.standard_normal())


def earlier_lots(rng: np.random.Generator, world: World, lots: int = 10) -> BagHistory | None:
    """The farm's history: four bags, two fills each, of so many lots."""
    level = MEAN_SCOOPFUL_G * (1 + BETWEEN_LOTS * rng.standard_normal(lots))
    readings = fills(rng, world, level, FIRST_BAGS, FIRST_EACH)
    return pool_bag_history([[Weighed(b, float(x)) for b, bag in enumerate(lot) for x in bag] for lot in readings])


def next_bag(taken: list[Weighed], another: bool) -> int:
    """A bag not yet dipped for these fills, or the one with the fewest."""
    counts = [sum(f.bag == b for f in taken) for b in range(max(f.bag for f in taken) + 1)]
    return len(counts) if another else counts.index(min(counts))


def weigh_level(lot: Lot, scale: ScaleFacts, history: BagHistory | None) -> LevelResult:
    """Level fills until the advice says enough."""
    taken = [lot.weigh(b, lot.level_g) for _ in range(FIRST_EACH) for b in range(FIRST_BAGS)]
    while True:
        result = level_result(taken, scale, history=history, tolerance_g=TOLERANCE * lot.level_g)
        if result.advice.enough or len(taken) >= MOST_FILLS:
            return result
        taken.append(lot.weigh(next_bag(taken, result.advice.from_other_bags), lot.level_g))


def to_line(lot: Lot, line_mm: float) -> float:
    """What the mean scoopful to a line weighs in truth."""
    return lot.level_g * lot.settling * fraction_at(SHAPE, line_mm)


def whole_procedure(
    rng: np.random.Generator, world: World, history: BagHistory | None, *, carry_over: bool = False
) -> Outcome:
    """From the first level fill to the signed-off line.

    `carry_over`: fills to an earlier line count for the moved one, in proportion to the volumes.
    """
    lot, scale = new_lot(rng, world), ScaleFacts(world.step_g)
    level = weigh_level(lot, scale, history)
    level_fills = lot.weighings
    line = fill_line(SHAPE, level.mean_g, level.u_g, TARGET_G)
    taken: list[Weighed] = []
    drawn, moves, settled = 0.0, 0, False
    while not settled and lot.weighings < MOST_FILLS:
        before, drawn = drawn, max(0.0, line.down_wall_mm + DRAWN_SPREAD_MM * rng.standard_normal())
        taken = list(at_line(taken, SHAPE, before, drawn)) if carry_over and taken else []
        taken += _first_to_line(lot, drawn, taken)
        while True:
            check = check_line(SHAPE, level, taken, drawn, TARGET_G, TOLERANCE, scale, history)
            if check.verdict != LineVerdict.WEIGH_MORE or lot.weighings >= MOST_FILLS:
                break
            taken.append(lot.weigh(next_bag(taken, check.from_other_bags), to_line(lot, drawn)))
        settled = check.verdict == LineVerdict.ON_TARGET
        if check.verdict == LineVerdict.MOVE:
            moves, line = moves + 1, check.next_line
    covered = level.low_g <= lot.level_g <= level.high_g
    off = to_line(lot, drawn) / TARGET_G - 1
    return Outcome(off, len(lot.bags), level_fills, lot.weighings, moves, covered, settled)


def _first_to_line(lot: Lot, drawn: float, taken: list[Weighed]) -> list[Weighed]:
    if taken:
        return [lot.weigh(next_bag(taken, False), to_line(lot, drawn))]
    return [lot.weigh(b, to_line(lot, drawn)) for b in range(FIRST_BAGS)]


def old_line_kept(rng: np.random.Generator, many: int) -> float:
    """Share of lots within the tolerance when the line drawn for the lot before is kept.

    It was right then; both lots' scoopful weights and settling differ from the farm's mean.
    """
    before, now = (
        (1 + BETWEEN_LOTS * rng.standard_normal(many)) * (SETTLING_MEAN + SETTLING_SPREAD * rng.standard_normal(many))
        for _ in range(2)
    )
    return float(np.mean(abs(now / before - 1) <= TOLERANCE))


def one_fill_per_lot(rng: np.random.Generator, world: World, many: int) -> float:
    """Share of lots within the tolerance when one fill to the line moves it and nothing else is weighed."""
    wrong = world.bag_spread * rng.standard_normal(many) + world.fill_spread * rng.standard_normal(many)
    return float(np.mean(abs(1 / (1 + wrong) - 1) <= TOLERANCE))
