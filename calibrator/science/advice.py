"""How many more fills, and whether from other bags: planned with the spread seen so far.

Fills stop when the advice says so, so a spread that happens to look small stops them too early. Against that
the advice asks for less than the tolerance (`STOP_SHARE`) and, without a history, for at least
`LEAST_BAGS_TO_STOP` bags; tests/simulation shows what the whole procedure then delivers.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from calibrator.science.nested import Table
from calibrator.science.spread import (
    LEAST_BAGS,
    PLANNED_BAG_SD_SHARE,
    PLANNED_FILL_SD_SHARE,
    IntervalRule,
    Spread,
)
from calibrator.science.stats import two_sided_t

STOP_SHARE = 0.75
LEAST_BAGS_TO_STOP = 4
MOST_MORE = 60


@dataclass(frozen=True)
class Advice:
    """`enough`, or take `more_fills`, each from another bag where `from_other_bags`.

    `half_width_g` is that of the 95 % interval now, `wanted_half_width_g` what it should come down to.
    `within_reach` is False where `MOST_MORE` fills would not do.
    """

    enough: bool
    more_fills: int
    from_other_bags: bool
    half_width_g: float
    wanted_half_width_g: float
    within_reach: bool = True


@dataclass(frozen=True)
class Outlook:
    """What planning counts with: rule, spread (shares²), and the doubt that more fills leave (share)."""

    rule: IntervalRule
    spread: Spread
    fixed_u_share: float

    def components(self) -> tuple[float, float]:
        """Variances between bags and between fills to plan with, shares²."""
        s, bag, fill = self.spread, PLANNED_BAG_SD_SHARE**2, PLANNED_FILL_SD_SHARE**2
        if self.rule == IntervalRule.POOLED_HISTORY:
            return s.bag_variance, s.fill_ms if s.fill_df else max(0.0, s.bag_ms)
        if self.rule == IntervalRule.CAUTIOUS_DEFAULT:
            return bag, fill
        if not s.fill_df:
            whole = s.bag_ms / (bag + fill * s.per_fill)
            return bag * whole, fill * whole
        return s.bag_variance, s.fill_ms

    def half_width(self, scoopfuls: Sequence[int]) -> float:
        """Half-width at 95 %, share, that bags with so many scoopfuls each can be expected to give."""
        bags = len(scoopfuls)
        if self.rule != IntervalRule.POOLED_HISTORY and bags < LEAST_BAGS:
            return math.inf
        bag, fill = self.components()
        variance = (bag + fill * math.fsum(1 / k for k in scoopfuls) / bags) / bags
        df = self.spread.bag_df if self.rule == IntervalRule.POOLED_HISTORY else bags - 1
        u2 = variance + self.fixed_u_share**2
        effective = df * (u2 / variance) ** 2 if variance else math.inf
        return two_sided_t(0.95, effective) * math.sqrt(u2)


def _one_to_the_least(counts: list[int]) -> list[int]:
    least = counts.index(min(counts))
    return [k + (i == least) for i, k in enumerate(counts)]


def _another_bag(counts: list[int]) -> list[int]:
    return [*counts, 1]


def _steps(
    outlook: Outlook, counts: list[int], wanted: float, add: Callable[[list[int]], list[int]], most: int
) -> int | None:
    for more in range(1, most + 1):
        counts = add(counts)
        if outlook.half_width(counts) <= wanted and _bags_do(outlook.rule, len(counts)):
            return more
    return None


def _bags_do(rule: IntervalRule, bags: int) -> bool:
    return rule == IntervalRule.POOLED_HISTORY or bags >= LEAST_BAGS_TO_STOP


def advise(t: Table, outlook: Outlook, half_width_g: float, tolerance_g: float) -> Advice:
    """Whether these fills are enough for a mean known within `STOP_SHARE` of the tolerance at 95 %; if not,
    the fewest more, from other bags where that takes fewer than going on with the same bags."""
    wanted = STOP_SHARE * tolerance_g
    known = outlook.rule != IntervalRule.CAUTIOUS_DEFAULT and _bags_do(outlook.rule, len(t.bags))
    if known and half_width_g <= wanted:
        return Advice(True, 0, False, half_width_g, wanted)
    counts = [bag.scoopfuls for bag in t.bags]
    share = wanted / t.mean_g
    other = _steps(outlook, counts, share, _another_bag, MOST_MORE)
    same = _steps(outlook, counts, share, _one_to_the_least, (other or MOST_MORE + 1) - 1)
    if same is not None:
        return Advice(False, same, False, half_width_g, wanted)
    return Advice(False, other or MOST_MORE, True, half_width_g, wanted, other is not None)
