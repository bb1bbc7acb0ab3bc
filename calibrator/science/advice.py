"""How many more fills, and whether from other bags: planned with the spread seen so far.

Fills stop when the advice says so, so a spread that happens to look small stops them too early. Against that
the advice asks for an interval narrower than the tolerance (`STOP_SHARE` of it) and, without a history, for
at least `LEAST_BAGS_TO_STOP` bags (all of a lot that has fewer) and `LEAST_FILLS_TO_STOP` fills; these figures are
those with which the whole procedure, stopping included, puts 99 lots of 100 within the tolerance (tests/simulation).
"""

from __future__ import annotations

import math
from bisect import bisect_left
from collections.abc import Callable, Sequence

from calibrator.science.nested import Table
from calibrator.science.spread import (
    LEAST_FILL_DF,
    PLANNED_BAG_SD_SHARE,
    PLANNED_FILL_SD_SHARE,
    IntervalRule,
    Spread,
    dipped_share,
)
from calibrator.science.stats import two_sided_t, welch_satterthwaite
from calibrator.values import dataclass

STOP_SHARE = 0.7
LEAST_BAGS_TO_STOP = 4
LEAST_FILLS_TO_STOP = 8
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
    """What planning counts with: rule, spread (shares²), the doubt that more fills leave (share), and how many bags
    the lot has (None: not known, as many as are asked for)."""

    rule: IntervalRule
    spread: Spread
    fixed_u_share: float
    bags_there: int | None = None

    @property
    def least_bags(self) -> int:
        """Bags from which the spread that they show is believed; all of a lot that has fewer."""
        return min(LEAST_BAGS_TO_STOP, self.bags_there or LEAST_BAGS_TO_STOP)

    def spare_bags(self, dipped: int) -> int:
        """Bags of the lot not dipped yet, up to `MOST_MORE`."""
        return MOST_MORE if self.bags_there is None else max(0, self.bags_there - dipped)

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
        if self.rule != IntervalRule.POOLED_HISTORY and (
            bags < self.least_bags or sum(scoopfuls) < LEAST_FILLS_TO_STOP
        ):
            return math.inf
        bag, fill = self.components()
        of_fills = fill * math.fsum(1 / k for k in scoopfuls) / bags
        bag_df, fill_df = float(bags - 1), float(sum(scoopfuls) - bags)
        if self.rule == IntervalRule.POOLED_HISTORY:
            bag_df, fill_df = self.spread.bag_df, self.spread.fill_df
        dipped = dipped_share(bags, self.bags_there) if fill_df >= LEAST_FILL_DF else 0.0
        shown = (1 - dipped) * (bag + of_fills) / bags, bag_df
        alone = dipped * of_fills / bags, fill_df
        u, df = welch_satterthwaite(
            [*((math.sqrt(part), df) for part, df in (shown, alone)), (self.fixed_u_share, math.inf)]
        )
        return two_sided_t(0.95, df) * u

    def may_stop(self, bags: int, weighings: int) -> bool:
        """Are there bags and fills enough to believe the spread that they show?"""
        if self.rule == IntervalRule.CAUTIOUS_DEFAULT:
            return False
        if self.rule == IntervalRule.POOLED_HISTORY:
            return True
        return bags >= self.least_bags and weighings >= LEAST_FILLS_TO_STOP


def _shared_out(counts: Sequence[int], more: int) -> list[int]:
    """`more` fills given one by one to whichever bag has the fewest."""
    found = list(counts)
    for _ in range(more):
        found[found.index(min(found))] += 1
    return found


def _fewest(enough: Callable[[int], bool], most: int) -> int | None:
    """The fewest fills that are enough, up to `most`; once enough, more stay enough."""
    found = bisect_left(range(1, most + 1), True, key=enough) + 1
    return found if found <= most else None


def plan(outlook: Outlook, scoopfuls: Sequence[int], wanted_share: float) -> tuple[int | None, bool]:
    """The fewest further fills until the half-width can be expected to be `wanted_share` of the mean, and
    whether they must come from other bags, as far as the lot has any; going on with the same bags where that takes
    no more. Where how bags differ is seen from these bags alone, a further bag tells that better as well, so there
    no bag gets a third scoopful before the next is opened, nor a further bag its second where others do as well.
    None where `MOST_MORE` would not do."""
    spare = outlook.spare_bags(len(scoopfuls))

    def others(more: int) -> bool:
        new = min(more, spare)
        return outlook.half_width(_shared_out([*scoopfuls, *[1] * new], more - new)) <= wanted_share

    def same_ones(more: int) -> bool:
        return outlook.half_width(_shared_out(scoopfuls, more)) <= wanted_share

    other = _fewest(others, MOST_MORE)
    same = _fewest(same_ones, other or MOST_MORE)
    if other is not None and spare and outlook.rule == IntervalRule.BAG_MEANS:
        as_well = same is None or other <= same
        if min(scoopfuls) > 1 or (max(scoopfuls) > 1 and as_well):
            return other, True
    return (same, False) if same is not None else (other, True)


def advise(t: Table, outlook: Outlook, half_width_g: float, tolerance_g: float) -> Advice:
    """Whether these fills are enough for a mean known within `STOP_SHARE` of the tolerance at 95 %; if not,
    the fewest more."""
    wanted = STOP_SHARE * tolerance_g
    if outlook.may_stop(len(t.bags), t.weighings) and half_width_g <= wanted:
        return Advice(True, 0, False, half_width_g, wanted)
    more, other = plan(outlook, [bag.scoopfuls for bag in t.bags], wanted / t.mean_g)
    return Advice(False, more or MOST_MORE, other, half_width_g, wanted, more is not None)
