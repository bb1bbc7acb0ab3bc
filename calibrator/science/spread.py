"""How bags and fills of a lot spread, by which rule that is known, and what follows for means and scoopfuls.

Spreads are relative to the lot's mean: variances are shares squared, so that heavy and light lots pool.

The rule is fixed beforehand and never chosen by its result:

1. With a history (`BagHistory` of at least `LEAST_HISTORY_DF` degrees of freedom between bags), the mean
   squares of all the farm's lots, this one included: POOLED_HISTORY.
2. Without, from three bags on, this lot's own bag means: BAG_MEANS. Exact in theory for normal spreads.
3. Without, from one or two bags, an assumed spread between bags: CAUTIOUS_DEFAULT, shown as an assumption.
   Two bags that differ by more than that are not overruled: what they show counts then.
4. Without, where every bag of the lot was dipped and fills of one bag were compared often enough to tell how
   fills differ (`LEAST_FILL_DF`): those fills alone, EVERY_BAG. No bag is left that could be another.

Where the lot's number of bags is known, bags are drawn from so many and no more, and how they differ counts only
for those not dipped (`Spread.of_lot_mean`). That is the lot's mean; a batch still comes out of one bag.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from enum import StrEnum
from typing import NamedTuple

from calibrator.science.nested import BagMean, Table
from calibrator.science.stats import mean_of, sum_of_squares
from calibrator.values import dataclass

ASSUMED_BAG_SD_SHARE = 0.02
"""Spread between bags taken where nothing is known: common practice, no source."""
ASSUMED_FILL_SD_SHARE = 0.03
ASSUMED_FILL_DF = 4.0
"""Where nothing is known scoopfuls are taken to spread so; it counts as much as five readings would."""
PLANNED_BAG_SD_SHARE = 0.01
PLANNED_FILL_SD_SHARE = 0.015
"""What plans for further fills count with until the lot shows its own spread: common practice, no source."""
LEAST_HISTORY_DF = 4
ALIKE_BELOW = 1.2
ALIKE_FROM_FILL_DF = 10
"""Bags count as alike below this ratio of mean squares, from so many degrees of freedom on (below: ratio 1):
the value at which tests/simulation finds 95 % intervals to cover 94–96 % throughout."""
LEAST_BAGS = 3
LEAST_FILL_DF = 3
"""Degrees of freedom between fills of one bag, from which on their spread is taken to stand by itself."""

NEGLIGIBLE_SHARE = 0.1
"""Up to this share of the bags dipped, their number is as good as endless: that errs towards caution, by 5 % of the
doubt at most. Cochran 1977, 2.6 (from memory: negligible up to 5 %, for many purposes up to 10 %)."""


class IntervalRule(StrEnum):
    """Where the doubt in a lot's mean is taken from."""

    BAG_MEANS = "bag_means"
    POOLED_HISTORY = "pooled_history"
    CAUTIOUS_DEFAULT = "cautious_default"
    EVERY_BAG = "every_bag"


def dipped_share(dipped: int, bags_there: int | None) -> float:
    """Which share of a lot's bags was dipped into, where that counts (`NEGLIGIBLE_SHARE`); 0 where their number is
    not known, or more were dipped than told of."""
    share = dipped / bags_there if bags_there else 0.0
    return share if NEGLIGIBLE_SHARE < share <= 1 else 0.0


@dataclass(frozen=True)
class Spread:
    """Mean squares, as shares squared, with their degrees of freedom.

    The expectation of `bag_ms` is bag variance + `per_fill` · fill variance, that of `fill_ms` the fill
    variance. `fill_df` is 0 where fills of one bag were never compared.
    """

    bag_ms: float
    bag_df: float
    per_fill: float
    fill_ms: float
    fill_df: float

    @property
    def bag_variance(self) -> float:
        """Estimated variance between bags, never below 0."""
        return max(0.0, self.bag_ms - self.per_fill * self.fill_ms)

    @property
    def bags_alike(self) -> bool:
        """Do bag means differ no more than the fills explain? Then no spread between bags is subtracted out."""
        threshold = ALIKE_BELOW if self.fill_df >= ALIKE_FROM_FILL_DF else 1.0
        return self.bag_ms < threshold * self.per_fill * self.fill_ms

    @property
    def bags_seen(self) -> bool:
        """Do the bags show more spread between them than would be assumed?"""
        return self.bag_ms > ASSUMED_BAG_SD_SHARE**2

    def variance(self, per_bag: float, per_fill: float) -> tuple[float, float]:
        """Estimate of per_bag · bag variance + per_fill · fill variance, and its degrees of freedom.

        A sum of independent mean squares with Satterthwaite's degrees of freedom (1946, Biometrics 2:110; JCGM
        100, G.4.1), which hold as long as the mean squares are added. Where the design has more fills to a bag
        than the history, the fills' part is subtracted; near zero bag variance that makes intervals too wide,
        so bags that look alike (`bags_alike`) are taken as alike and both mean squares pooled.
        """
        on_fill = per_fill - per_bag * self.per_fill
        if on_fill < 0 and self.bags_alike:
            df = self.bag_df + self.fill_df
            squares = self.bag_ms * self.bag_df / self.per_fill + self.fill_ms * self.fill_df
            return per_fill * squares / df, df
        bags, fills = per_bag * self.bag_ms, on_fill * self.fill_ms
        doubt = _doubt(bags, self.bag_df) + _doubt(fills, self.fill_df)
        return bags + fills, (bags + fills) ** 2 / doubt if doubt > 0 else self.bag_df or self.fill_df

    def counted(self, share: float) -> float:
        """The share of bags dipped, where it can be counted on: what remains is how fills differ, which must be
        known by itself."""
        return share if self.fill_df >= LEAST_FILL_DF else 0.0

    def of_lot_mean(self, bags: int, per_fill: float, share: float) -> tuple[float, float]:
        """Variance of the mean of so many bags about that of all bags of the lot, and its degrees of freedom.

        `share` of the lot's bags were dipped; `per_fill` as in `Table`. Sampling in two stages from a finite number
        of bags: (1 − share) · bag variance ÷ bags, and the fills in full. Source: Cochran 1977, Sampling Techniques,
        3rd ed., 10.3 (clause from memory; tests enumerate every sample of small lots).
        """
        return self.variance((1 - self.counted(share)) / bags, per_fill / bags)

    def of_one_more(self, bags: int, per_fill: float, share: float) -> tuple[float, float]:
        """Variance of one more scoopful about the mean of so many bags: from a bag not dipped, or, where none is
        left, from any of them, which are part of that mean."""
        left = 1 / bags if self.counted(share) < 1 else -1 / bags
        return self.variance(1 + left, 1 + per_fill / bags)


def _doubt(part: float, df: float) -> float:
    return part * part / df if part else 0.0


@dataclass(frozen=True)
class BagHistory:
    """What the farm's earlier lots say of the spread between bags and between fills, pooled.

    Sums of squares as shares squared: `bag_ss` of bag means within lots, `fill_ss` of fills within bags;
    `per_fill` as in `Spread`.
    """

    bag_ss: float
    bag_df: int
    per_fill: float
    fill_ss: float
    fill_df: int
    lots: int


class LotSpread(NamedTuple):
    """What one lot adds to a `BagHistory`; `per_fill` is its sum over the degrees of freedom between bags."""

    bag_ss: float
    bag_df: int
    per_fill: float
    fill_ss: float
    fill_df: int


def lot_spread(bags: Sequence[BagMean]) -> LotSpread:
    """The spread of one lot relative to its own mean, from one bag or more."""
    means = [bag.mean_g for bag in bags]
    mean2, df = mean_of(means) ** 2, len(bags) - 1
    return LotSpread(
        bag_ss=sum_of_squares(means) / mean2,
        bag_df=df,
        per_fill=mean_of([1 / bag.scoopfuls for bag in bags]) * df,
        fill_ss=math.fsum(bag.sum_squares for bag in bags) / mean2,
        fill_df=sum(bag.weighings - 1 for bag in bags),
    )


class Pool(NamedTuple):
    """The spreads of the lots so far, summed up; `lots` counts those of two bags or more."""

    bag_ss: float = 0.0
    bag_df: int = 0
    per_fill: float = 0.0
    fill_ss: float = 0.0
    fill_df: int = 0
    lots: int = 0

    def joined(self, one: LotSpread) -> Pool:
        """With one more lot."""
        return Pool(
            self.bag_ss + one.bag_ss,
            self.bag_df + one.bag_df,
            self.per_fill + one.per_fill,
            self.fill_ss + one.fill_ss,
            self.fill_df + one.fill_df,
            self.lots + (one.bag_df > 0),
        )

    def history(self) -> BagHistory | None:
        """What they teach; None below `LEAST_HISTORY_DF` degrees of freedom between bags: that is no history yet."""
        if self.bag_df < LEAST_HISTORY_DF:
            return None
        per_fill = self.per_fill / self.bag_df
        return BagHistory(self.bag_ss, self.bag_df, per_fill, self.fill_ss, self.fill_df, self.lots)


def _own(t: Table) -> Spread:
    scale = t.mean_g**2
    return Spread(t.bag_ms / scale, t.bag_df, t.per_fill, t.fill_ms / scale, t.fill_df)


def _pooled(history: BagHistory, t: Table) -> Spread:
    bag_df, fill_df = history.bag_df + t.bag_df, history.fill_df + t.fill_df
    bag_ss = history.bag_ss + t.bag_ms * t.bag_df / t.mean_g**2
    fill_ss = history.fill_ss + t.fill_ms * t.fill_df / t.mean_g**2
    per_fill = history.per_fill * history.bag_df + t.per_fill * t.bag_df
    fill_ms = fill_ss / fill_df if fill_df else 0.0
    return Spread(bag_ss / bag_df, bag_df, per_fill / bag_df, fill_ms, fill_df)


def _assumed(t: Table) -> Spread:
    df = ASSUMED_FILL_DF + t.fill_df
    fill_ms = (ASSUMED_FILL_DF * ASSUMED_FILL_SD_SHARE**2 + t.fill_ms * t.fill_df / t.mean_g**2) / df
    seen = t.bag_ms / t.mean_g**2 - t.per_fill * fill_ms if t.bag_df else 0.0
    return Spread(max(ASSUMED_BAG_SD_SHARE**2, seen), math.inf, 0.0, fill_ms, df)


def spread_beforehand(t: Table, history: BagHistory | None) -> Spread:
    """What a lot is taken to spread by while it has few fills: as the farm's lots did, else as assumed."""
    return _assumed(t) if history is None else _pooled(history, t)


def spread_of(t: Table, history: BagHistory | None, share: float = 0.0) -> tuple[IntervalRule, Spread]:
    """The rule that applies to this lot, of whose bags `share` were dipped, and the spread that it gives."""
    if history is not None:
        return IntervalRule.POOLED_HISTORY, _pooled(history, t)
    if share == 1 and t.fill_df >= LEAST_FILL_DF:
        return IntervalRule.EVERY_BAG, _own(t)
    if len(t.bags) >= LEAST_BAGS:
        return IntervalRule.BAG_MEANS, _own(t)
    return IntervalRule.CAUTIOUS_DEFAULT, _assumed(t)
