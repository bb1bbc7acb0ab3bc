"""Bags from their sums: what is needed of hundreds of thousands of fills, without looking at each."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence

from calibrator.model import BagSum, SeasonLot
from calibrator.science.nested import BagMean
from calibrator.values import dataclass

ROUNDING = 1e-13
"""Of two sums that are subtracted so small a share may be left by their rounding alone."""


@dataclass(frozen=True)
class Scatter:
    """Fills within bags: variance of one scoopful as a share of the mean squared, and its degrees of freedom."""

    variance: float
    degrees_of_freedom: int

    @property
    def sd_share(self) -> float:
        return math.sqrt(self.variance)


def bag_means(sums: Iterable[BagSum], scale: float) -> tuple[BagMean, ...]:
    """The bags of one weigh-in, whoever filled the scoop, in units of `scale` g."""
    joined: dict[int, list[float]] = {}
    for bag in sums:
        into = joined.setdefault(bag.bag, [0, 0, 0.0, 0.0])
        for n, value in enumerate((bag.weighings, bag.scoopfuls, bag.sum_g / scale, bag.sum_g2 / scale**2)):
            into[n] += value
    return tuple(_bag_mean(bag, *values) for bag, values in joined.items())


def _bag_mean(bag: int, weighings: float, scoopfuls: float, total: float, squares: float) -> BagMean:
    spread = squares - total * total / scoopfuls
    if weighings < 2 or spread < ROUNDING * squares:
        spread = 0.0
    return BagMean(bag, total / scoopfuls, int(weighings), int(scoopfuls), spread)


def by_weigh_in(sums: Iterable[BagSum]) -> dict[str, list[BagSum]]:
    """The sums of each weigh-in."""
    found: dict[str, list[BagSum]] = {}
    for bag in sums:
        found.setdefault(bag.weigh_in_id, []).append(bag)
    return found


def scatter_of(lots: Iterable[SeasonLot], sums: Mapping[str, Sequence[BagSum]]) -> Scatter:
    """How fills of one bag scatter in these lots, pooled, each lot relative to its own mean."""
    squares, df = 0.0, 0
    for lot in lots:
        for bag in sums.get(lot.weigh_in_id, ()):
            squares += _bag_mean(0, *bag[3:]).sum_squares / lot.level_mean_g**2
            df += bag.weighings - 1
    return Scatter(squares / df if df else 0.0, df)
