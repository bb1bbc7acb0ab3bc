"""Where a season's spread comes from: between lots, between bags of a lot, between fills of a bag."""

from __future__ import annotations

import math
from collections.abc import Sequence

from calibrator.science.errors import CannotCompute
from calibrator.science.guard import finite, not_negative, positive
from calibrator.science.nested import BagMean
from calibrator.science.spread_shares import chi2_quantile, f_above, f_quantile
from calibrator.science.stats import mean_of, sum_of_squares
from calibrator.values import dataclass

MOST_FILLS_A_BAG = 10


@dataclass(frozen=True)
class AnovaRow:
    """One line of an analysis of variance; `f` against the line below, `p` the chance of so large an f."""

    sum_squares: float
    df: int
    mean_square: float
    f: float | None = None
    p: float | None = None


def f_tail(f: float, df_above: float, df_below: float) -> float:
    """Chance of an F ratio at least so large where nothing differs. Raises CannotCompute for no freedom."""
    if not (df_above > 0 and df_below > 0):
        raise CannotCompute("There are too few readings to compare their spreads.")
    return f_above(not_negative(f, "The ratio of spreads"), df_above, df_below)


def analysis_row(sum_squares: float, df: int, below: AnovaRow | None = None) -> AnovaRow:
    ms = sum_squares / df if df else 0.0
    if below is None or not df or not below.df or below.mean_square <= 0:
        return AnovaRow(sum_squares, df, ms)
    f = ms / below.mean_square
    return AnovaRow(sum_squares, df, ms, f, f_tail(f, df, below.df))


def one_way(groups: Sequence[Sequence[float]]) -> tuple[AnovaRow, AnovaRow]:
    """Between and within groups, any sizes of one or more. Source: NIST/SEMATECH e-Handbook, 7.4.3.

    Raises CannotCompute for fewer than two groups, an empty group, or a value that is no number.
    """
    if len(groups) < 2:
        raise CannotCompute("It takes two groups or more to compare them.")
    means = [mean_of([finite(v, "A value") for v in group]) for group in groups]
    sizes = [len(group) for group in groups]
    grand = math.fsum(m * n for m, n in zip(means, sizes, strict=True)) / sum(sizes)
    between = math.fsum(n * (m - grand) ** 2 for m, n in zip(means, sizes, strict=True))
    within = analysis_row(math.fsum(sum_of_squares(group) for group in groups), sum(sizes) - len(groups))
    return analysis_row(between, len(groups) - 1, within), within


@dataclass(frozen=True)
class Components:
    """Standard deviations between lots, bags and fills, in the unit of the values (0 where none is seen, None
    where the fills cannot tell), each one's share of the whole variance, and the table they come from.

    `fills_a_bag` and `fills_a_lot` are how often the variance between bags and between lots counts in its mean
    square: the sizes, where all are alike.
    """

    mean: float
    lot_sd: float | None
    bag_sd: float | None
    fill_sd: float | None
    shares: tuple[float, float, float]
    lots: AnovaRow
    bags: AnovaRow
    fills: AnovaRow
    fills_a_bag: float = 1.0
    fills_a_lot: float = 1.0

    @property
    def lot_sd_interval(self) -> tuple[float, float] | None:
        """95 % interval of the spread between lots; None where the fills cannot tell it."""
        under = self.lots.mean_square - self.fills_a_lot * (self.lot_sd or 0.0) ** 2
        return _sd_interval(self.lots, under, self.bags.df or self.fills.df, self.fills_a_lot)

    @property
    def bag_sd_interval(self) -> tuple[float, float] | None:
        """95 % interval of the spread between bags of a lot."""
        return _sd_interval(self.bags, self.fills.mean_square, self.fills.df, self.fills_a_bag)

    @property
    def fill_sd_interval(self) -> tuple[float, float] | None:
        """95 % interval of the spread between fills of a bag: chi-square, JCGM 100:2008, E.4.3."""
        if not self.fills.df:
            return None
        top, bottom = (self.fills.sum_squares / chi2_quantile(p, self.fills.df) for p in (0.025, 0.975))
        return math.sqrt(bottom), math.sqrt(top)


def _sd_interval(row: AnovaRow, under: float, under_df: int, per: float) -> tuple[float, float] | None:
    """Interval of √((mean square − what is under it) ÷ per) by Tukey and Williams: Williams 1962, Biometrika
    49:278; exact bounds for balanced data are no wider. Ends below zero count as zero."""
    if not row.df or not under_df or per <= 0:
        return None
    ends = []
    for p in (0.975, 0.025):
        left = row.sum_squares - row.df * max(0.0, under) * f_quantile(p, row.df, under_df)
        ends.append(math.sqrt(max(0.0, left) / (per * chi2_quantile(p, row.df))))
    return ends[0], ends[1]


@dataclass(frozen=True)
class _Sums:
    total: float
    in_lots: float  # Σ of (bag size² ÷ lot size)
    bags_squared: float
    lots_squared: float


def _sums(sizes: Sequence[Sequence[int]]) -> _Sums:
    lots = [sum(bags) for bags in sizes]
    return _Sums(
        total=float(sum(lots)),
        in_lots=math.fsum(math.fsum(n * n for n in bags) / sum(bags) for bags in sizes),
        bags_squared=float(sum(n * n for bags in sizes for n in bags)),
        lots_squared=float(sum(n * n for n in lots)),
    )


def _sd(mean_square: float, taken_off: float, per: float) -> float:
    return math.sqrt(max(0.0, (mean_square - taken_off) / per))


def components_of_bags(lots: Sequence[Sequence[BagMean]]) -> Components:
    """Nested analysis of variance of a season from the bags of each lot, unbalanced allowed.

    The values are weights of one scoopful with one scoop, or densities. Expected mean squares of the sequential
    (Henderson I) analysis: Searle, Casella and McCulloch 1992, Variance Components, 5.2 and appendix F. A negative
    estimate counts as none. Raises CannotCompute for no lots.
    """
    if not lots:
        raise CannotCompute("Weigh at least one scoopful first.")
    sizes = [[bag.scoopfuls for bag in bags] for bags in lots]
    means = [math.fsum(b.mean_g * b.scoopfuls for b in bags) / sum(b.scoopfuls for b in bags) for bags in lots]
    s = _sums(sizes)
    grand = math.fsum(m * sum(n) for m, n in zip(means, sizes, strict=True)) / s.total
    between = math.fsum(sum(n) * (m - grand) ** 2 for m, n in zip(means, sizes, strict=True))
    in_lots = math.fsum(b.scoopfuls * (b.mean_g - m) ** 2 for bags, m in zip(lots, means, strict=True) for b in bags)
    flat = [bag for bags in lots for bag in bags]
    fills = analysis_row(math.fsum(b.sum_squares for b in flat), sum(b.weighings - 1 for b in flat))
    within = analysis_row(in_lots, len(flat) - len(lots), fills)
    return _solved(grand, s, analysis_row(between, len(lots) - 1, within), within, fills)


def _solved(mean: float, s: _Sums, lots: AnovaRow, bags: AnovaRow, fills: AnovaRow) -> Components:
    fill_ms = fills.mean_square
    a_bag = (s.total - s.in_lots) / bags.df if bags.df else 1.0
    bag_sd = _sd(bags.mean_square, fill_ms, a_bag) if bags.df else None
    lot_sd, a_lot = None, 1.0
    if lots.df:
        per_bag = (s.in_lots - s.bags_squared / s.total) / lots.df
        taken_off = fill_ms + per_bag * (bag_sd or 0.0) ** 2
        a_lot = (s.total - s.lots_squared / s.total) / lots.df
        lot_sd = _sd(lots.mean_square, taken_off, a_lot)
    fill_sd = math.sqrt(fill_ms) if fills.df else None
    variances = [(sd or 0.0) ** 2 for sd in (lot_sd, bag_sd, fill_sd)]
    whole = math.fsum(variances)
    lot, bag, fill = (v / whole if whole else 0.0 for v in variances)
    return Components(mean, lot_sd, bag_sd, fill_sd, (lot, bag, fill), lots, bags, fills, a_bag, a_lot)


@dataclass(frozen=True)
class Split:
    """How to spread the work: so many bags, so many fills from each; what it costs; what doubt it leaves."""

    bags: int
    fills_each: int
    cost: float
    u: float


def best_split(
    bag_sd: float, fill_sd: float, wanted_u: float, *, bag_cost: float = 2.0, fill_cost: float = 1.0
) -> Split:
    """The cheapest bags × fills whose mean has standard uncertainty `wanted_u` (same unit as the spreads).

    Cochran 1977, Sampling Techniques, 10.6: the best number of fills from a bag is √(bag cost ÷ fill cost) ·
    fill spread ÷ bag spread; here the whole numbers beside it are compared at the cost they really have. The
    costs are relative, opening a bag twice a fill by default. Raises CannotCompute for spreads below zero, a
    wanted doubt or a cost that is not above zero.
    """
    bag_var, fill_var = not_negative(bag_sd, "The spread") ** 2, not_negative(fill_sd, "The spread") ** 2
    wanted = positive(wanted_u, "The wanted doubt") ** 2
    a_bag, a_fill = positive(bag_cost, "The cost of a bag"), positive(fill_cost, "The cost of a fill")
    found = []
    for each in range(1, MOST_FILLS_A_BAG + 1):
        one_bag = bag_var + fill_var / each
        bags = max(1, math.ceil(one_bag / wanted * (1 - 1e-12)))
        found.append(Split(bags, each, bags * (a_bag + each * a_fill), math.sqrt(one_bag / bags)))
    return min(found, key=lambda split: (split.cost, split.u))


def best_fills_each(bag_sd: float, fill_sd: float, *, bag_cost: float = 2.0, fill_cost: float = 1.0) -> float:
    """Cochran's optimum itself, not rounded: √(bag cost ÷ fill cost) · fill spread ÷ bag spread; inf where bags
    do not differ."""
    ratio = positive(bag_cost, "The cost of a bag") / positive(fill_cost, "The cost of a fill")
    bag, fill = not_negative(bag_sd, "The spread"), not_negative(fill_sd, "The spread")
    return math.sqrt(ratio) * fill / bag if bag else math.inf
