"""Bags and the fills in them: means, mean squares, and how much of the spread is which.

One-way random effects, unbalanced allowed: fill = lot mean · (1 + bag + fill). A weighing of k scoopfuls
counts as the mean of k. The mean of a lot is the plain mean of its bag means: with few fills a bag most of
the doubt is in the bags, so a bag with many fills has no more to say than one with few.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

from calibrator.model import Fill, FillWay, LevelFill
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import positive
from calibrator.science.stats import mean_of, sum_of_squares
from calibrator.values import dataclass


@dataclass(frozen=True)
class Weighed:
    """One weighing: the bag it came from, g of one scoopful, how many scoopfuls were weighed together."""

    bag: int
    mass_g: float
    scoopfuls: int = 1


def weighed(fills: Iterable[Fill], way: FillWay) -> tuple[Weighed, ...]:
    """The fills of one way that count, in order, as g of one scoopful."""
    return tuple(
        Weighed(fill.bag, fill.mass_g / fill.scoopfuls, fill.scoopfuls)
        for fill in fills
        if fill.counts and fill.way == way
    )


def weighed_by_lot(fills: Iterable[LevelFill]) -> dict[str, list[Weighed]]:
    """As `weighed` for many weigh-ins at once, by their ids."""
    found: dict[str, list[Weighed]] = {}
    for fill in fills:
        found.setdefault(fill.weigh_in_id, []).append(Weighed(fill.bag, fill.mass_g / fill.scoopfuls, fill.scoopfuls))
    return found


@dataclass(frozen=True)
class BagMean:
    """One bag: its mean, its weighings, its scoopfuls, and their sum of squared deviations."""

    bag: int
    mean_g: float
    weighings: int
    scoopfuls: int
    sum_squares: float


@dataclass(frozen=True)
class Table:
    """What the fills of one lot say, in g.

    `bag_ms` is the mean square of the bag means, whose expectation is bag variance + `per_fill` · fill
    variance; `fill_ms` the mean square within bags. Either is 0 where its degrees of freedom are.
    `reading_share` is the variance of the mean that independent readings leave, per variance of one reading;
    `per_weighing` what an error of 1 g common to all weighings does to the mean; `range_g` lies between the
    highest and the lowest weighing.
    """

    bags: tuple[BagMean, ...]
    mean_g: float
    bag_ms: float
    bag_df: int
    per_fill: float
    fill_ms: float
    fill_df: int
    reading_share: float
    per_weighing: float
    range_g: float

    @property
    def weighings(self) -> int:
        return sum(bag.weighings for bag in self.bags)


def _bag(bag: int, fills: Sequence[Weighed]) -> BagMean:
    scoopfuls = sum(f.scoopfuls for f in fills)
    mean = math.fsum(f.mass_g * f.scoopfuls for f in fills) / scoopfuls
    squares = math.fsum(f.scoopfuls * (f.mass_g - mean) ** 2 for f in fills)
    return BagMean(bag, mean, len(fills), scoopfuls, squares)


def _checked(fills: Sequence[Weighed]) -> None:
    if not fills:
        raise CannotCompute("Weigh at least one scoopful first.")
    for fill in fills:
        positive(fill.mass_g, "The weight of a scoopful")
        if fill.scoopfuls < 1:
            raise CannotCompute("At least one scoopful must have been weighed.")


def table(fills: Sequence[Weighed]) -> Table:
    """Means and mean squares of one lot's fills.

    Source: Searle, Casella and McCulloch 1992, Variance Components, 3.6, with the unweighted analysis of bag
    means (Snedecor and Cochran 1989, Statistical Methods, 13.9). Raises CannotCompute for no fills, a weight
    that is not above zero, or less than one scoopful.
    """
    _checked(fills)
    bags = tuple(_bag(b, [f for f in fills if f.bag == b]) for b in dict.fromkeys(f.bag for f in fills))
    means = [bag.mean_g for bag in bags]
    bag_df, fill_df = len(bags) - 1, len(fills) - len(bags)
    masses = [f.mass_g for f in fills]
    return Table(
        bags=bags,
        mean_g=mean_of(means),
        bag_ms=sum_of_squares(means) / bag_df if bag_df else 0.0,
        bag_df=bag_df,
        per_fill=mean_of([1 / bag.scoopfuls for bag in bags]),
        fill_ms=math.fsum(bag.sum_squares for bag in bags) / fill_df if fill_df else 0.0,
        fill_df=fill_df,
        reading_share=math.fsum(bag.weighings / bag.scoopfuls**2 for bag in bags) / len(bags) ** 2,
        per_weighing=mean_of([bag.weighings / bag.scoopfuls for bag in bags]),
        range_g=max(masses) - min(masses),
    )
