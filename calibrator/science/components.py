"""Where a season's spread comes from: between lots, between bags of a lot, between fills of a bag."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from calibrator.science.errors import CannotCompute
from calibrator.science.guard import finite, not_negative, positive
from calibrator.science.nested import Weighed, table
from calibrator.science.stats import mean_of, sum_of_squares

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
    from scipy.special import fdtrc

    if not (df_above > 0 and df_below > 0):
        raise CannotCompute("There are too few readings to compare their spreads.")
    return float(fdtrc(df_above, df_below, not_negative(f, "The ratio of spreads")))


def _row(sum_squares: float, df: int, below: AnovaRow | None = None) -> AnovaRow:
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
    within = _row(math.fsum(sum_of_squares(group) for group in groups), sum(sizes) - len(groups))
    return _row(between, len(groups) - 1, within), within


@dataclass(frozen=True)
class Components:
    """Standard deviations between lots, bags and fills, in the unit of the values (0 where none is seen, None
    where the fills cannot tell), each one's share of the whole variance, and the table they come from."""

    mean: float
    lot_sd: float | None
    bag_sd: float | None
    fill_sd: float | None
    shares: tuple[float, float, float]
    lots: AnovaRow
    bags: AnovaRow
    fills: AnovaRow


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


def components(lots: Sequence[Sequence[Weighed]]) -> Components:
    """Nested analysis of variance of all fills of a season, unbalanced allowed (lots without fills are passed
    over). The values are weights of one scoopful with one scoop, or densities.

    Expected mean squares of the sequential (Henderson I) analysis: Searle, Casella and McCulloch 1992, Variance
    Components, 5.2 and appendix F. A negative estimate counts as none. Raises CannotCompute for no fills.
    """
    tables = [table(fills) for fills in lots if fills]
    if not tables:
        raise CannotCompute("Weigh at least one scoopful first.")
    sizes = [[bag.scoopfuls for bag in t.bags] for t in tables]
    means = [math.fsum(b.mean_g * b.scoopfuls for b in t.bags) / sum(b.scoopfuls for b in t.bags) for t in tables]
    s = _sums(sizes)
    grand = math.fsum(m * sum(n) for m, n in zip(means, sizes, strict=True)) / s.total
    between = math.fsum(sum(n) * (m - grand) ** 2 for m, n in zip(means, sizes, strict=True))
    in_lots = math.fsum(b.scoopfuls * (b.mean_g - m) ** 2 for t, m in zip(tables, means, strict=True) for b in t.bags)
    fills = _row(math.fsum(b.sum_squares for t in tables for b in t.bags), sum(t.fill_df for t in tables))
    bags = _row(in_lots, sum(t.bag_df for t in tables), fills)
    rows = _row(between, len(tables) - 1, bags), bags, fills
    return _solved(grand, s, *rows)


def _solved(mean: float, s: _Sums, lots: AnovaRow, bags: AnovaRow, fills: AnovaRow) -> Components:
    fill_ms = fills.mean_square
    bag_sd = _sd(bags.mean_square, fill_ms, (s.total - s.in_lots) / bags.df) if bags.df else None
    lot_sd = None
    if lots.df:
        per_bag = (s.in_lots - s.bags_squared / s.total) / lots.df
        taken_off = fill_ms + per_bag * (bag_sd or 0.0) ** 2
        lot_sd = _sd(lots.mean_square, taken_off, (s.total - s.lots_squared / s.total) / lots.df)
    fill_sd = math.sqrt(fill_ms) if fills.df else None
    variances = [(sd or 0.0) ** 2 for sd in (lot_sd, bag_sd, fill_sd)]
    whole = math.fsum(variances)
    lot, bag, fill = (v / whole if whole else 0.0 for v in variances)
    return Components(mean, lot_sd, bag_sd, fill_sd, (lot, bag, fill), lots, bags, fills)


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
