"""From the fills of a lot to the weight of one scoopful, its uncertainty budget and what to do next.

Masses are of one scoopful, in g. The interval is a 95 % interval for the mean over all bags of the lot, by
the rule in `spread`. How readings enter: the container is brought to zero before each fill, so the rounding
of empty and of full (d/√12 each) is fresh every time and part of the spread that the fills show; it is
listed in the budget and sets a floor. Tared once only, the rounding of the empty container is common to all
fills and is added. The spread of the mean is topped up to what rounding alone would leave; readings that
are all the same may share their rounding, so there averaging is not counted on.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from calibrator.science.advice import Advice, Outlook, advise
from calibrator.science.budget import BudgetRow, Distribution, Source, combined, row, with_shares
from calibrator.science.guard import not_negative, positive
from calibrator.science.nested import BagMean, Table, Weighed, table, weighed, weighed_by_lot
from calibrator.science.odd import odd_fills
from calibrator.science.scale import (
    ScaleCheck,
    ScaleFacts,
    Taring,
    check_scale,
    scoopfuls_together,
    smallest_net_weight_g,
)
from calibrator.science.spread import BagHistory, IntervalRule, Spread, dipped_share, spread_of
from calibrator.science.stats import expanded, welch_satterthwaite
from calibrator.values import dataclass

__all__ = [
    "Advice",
    "BagHistory",
    "BudgetRow",
    "DensityResult",
    "IntervalRule",
    "LevelResult",
    "ScaleCheck",
    "ScaleFacts",
    "Weighed",
    "bulk_density",
    "check_scale",
    "level_result",
    "scoopfuls_together",
    "smallest_net_weight_g",
    "weighed",
    "weighed_by_lot",
]


_ALIKE = 1e-9


@dataclass(frozen=True)
class LevelResult:
    """What the fills say of one scoopful of this lot, g.

    `low_g … high_g` is the 95 % interval of the mean over all bags, `next_low_g … next_high_g` that of one
    more scoopful from any bag. `bag_sd_g` and `fill_sd_g` are the spreads between bags and between fills of
    a bag as the rule has them. `odd` are indices into the fills given. `bag_means`, `outlook` (the spread) and
    `parts` (standard uncertainty and degrees of freedom of what the fills show, and of what is common to all
    of them) are what later steps reckon with. `degrees_of_freedom` is that of `u_g` by Welch–Satterthwaite.
    `taken_off_g` is the scale's error, which `bag_means` still have and the mean and its interval do not.
    """

    mean_g: float
    u_g: float
    degrees_of_freedom: float
    low_g: float
    high_g: float
    bags: int
    fills: int
    bag_sd_g: float
    fill_sd_g: float
    rule: IntervalRule
    budget: tuple[BudgetRow, ...]
    next_low_g: float
    next_high_g: float
    odd: tuple[int, ...]
    advice: Advice
    bag_means: tuple[BagMean, ...]
    outlook: Outlook
    parts: tuple[tuple[float, float], ...]
    taken_off_g: float = 0.0

    @property
    def scoopfuls(self) -> int:
        """Those of all fills: more than these where several were weighed together."""
        return sum(bag.scoopfuls for bag in self.bag_means)

    @property
    def half_width_g(self) -> float:
        """Half the width of the 95 % interval."""
        return (self.high_g - self.low_g) / 2

    @property
    def foretells(self) -> bool:
        """Whether the fills tell what one more scoopful may weigh. Where that might be nothing, they lie so far apart
        that one of them is wrong."""
        return self.next_low_g > 0

    @property
    def every_bag(self) -> bool:
        """Was every bag of the lot dipped into, and does that count?"""
        return self.dipped_share == 1

    @property
    def dipped_share(self) -> float:
        """The share of the lot's bags dipped into, as far as it lessens the doubt in the mean."""
        return self.outlook.spread.counted(dipped_share(self.bags, self.outlook.bags_there))

    @property
    def bags_assumed(self) -> bool:
        """Does an assumption stand for how bags differ?"""
        return any(row.source == Source.BAGS and row.assumed for row in self.budget)

    @property
    def scale_half_g(self) -> float:
        """Half the 95 % interval that the scale's error alone leaves where no check weight tells it; else 0."""
        assumed = (row.contribution for row in self.budget if row.source == Source.SCALE_ERROR and row.assumed)
        return expanded([(next(assumed, 0.0), math.inf)])

    @property
    def check_weight_tells(self) -> bool:
        """Would a check weight make the mean much surer: does an unchecked scale leave half of the interval or more?"""
        return self.scale_half_g >= self.half_width_g / 2 > 0

    def interval(self, level: float) -> tuple[float, float]:
        """The interval of the mean at another level, such as 0.90."""
        half = expanded(self.parts, level)
        return self.mean_g - half, self.mean_g + half


def _all_alike(t: Table) -> bool:
    return t.range_g <= _ALIKE * t.mean_g


def _reading_floor_g2(t: Table, scale: ScaleFacts) -> float:
    """Variance of the mean that rounding alone leaves, g²."""
    if _all_alike(t):
        return (scale.step_u_g * t.per_weighing) ** 2
    return _fresh_roundings(scale) * scale.step_u_g**2 * t.reading_share


def _fresh_roundings(scale: ScaleFacts) -> float:
    return 2.0 if scale.taring == Taring.EACH_FILL else 1.0


def _spread_rows(t: Table, rule: IntervalRule, spread: Spread, share: float) -> list[BudgetRow]:
    """Bags, as far as some of the lot were not dipped, and fills, as far as the bags do not show them too."""
    n, dipped = len(t.bags), spread.counted(share)
    of_bags = math.sqrt((1 - dipped) / n)
    if rule in (IntervalRule.BAG_MEANS, IntervalRule.EVERY_BAG):
        bags = row(Source.BAG_MEANS, math.sqrt(t.bag_ms), of_bags, t.bag_df)
        fills = row(Source.FILLS, math.sqrt(t.fill_ms), math.sqrt(dipped * t.per_fill / n), t.fill_df)
        return [*([bags] if dipped < 1 else []), *([fills] if dipped else [])]
    variance, df = spread.of_lot_mean(n, t.per_fill, share)
    assumed = rule == IntervalRule.CAUTIOUS_DEFAULT
    of_fills = min(variance, spread.fill_ms * t.per_fill / n)
    fill_sd = math.sqrt(of_fills * n / t.per_fill) * t.mean_g
    fills = row(
        Source.FILLS, fill_sd, math.sqrt(t.per_fill / n), spread.fill_df or df, assumed=assumed and not t.fill_df
    )
    if dipped == 1:
        return [fills]
    bag_sd = math.sqrt(variance - of_fills) / of_bags * t.mean_g
    return [row(Source.BAGS, bag_sd, of_bags, spread.bag_df, assumed=assumed and not spread.bags_seen), fills]


def _reading_rows(t: Table, scale: ScaleFacts, missing_g2: float) -> list[BudgetRow]:
    """Rounding full and empty; `missing_g2` is what rounding leaves beyond what the spread shows."""
    step_u, share = scale.step_u_g, math.sqrt(t.reading_share)
    once = scale.taring == Taring.ONCE
    counted = math.sqrt(missing_g2) / step_u if missing_g2 > 0 else share
    flat = Distribution.RECTANGULAR
    return [
        row(Source.READING, step_u, counted, distribution=flat, contained=missing_g2 <= 0),
        row(
            Source.TARE, step_u, t.per_weighing if once else share,
            distribution=flat, contained=not once,
        ),
    ]  # fmt: skip


@dataclass(frozen=True)
class _Doubt:
    u_g: float
    df: float
    parts: tuple[tuple[float, float], ...]
    budget: tuple[BudgetRow, ...]
    shared_rounding_g: float

    @property
    def common_u_g(self) -> float:
        """What more fills do not lessen: tare and scale error, and one rounding that fills all alike may share."""
        return math.hypot(self.parts[1][0], self.shared_rounding_g)


def _doubt(t: Table, scale: ScaleFacts, rule: IntervalRule, spread: Spread, share: float) -> _Doubt:
    """Spread of bags and fills, topped up to what rounding leaves, with what is common to all fills."""
    share2, df = spread.of_lot_mean(len(t.bags), t.per_fill, share)
    seen = share2 * t.mean_g**2
    missing = max(0.0, _reading_floor_g2(t, scale) - seen)
    reading, tare = _reading_rows(t, scale, missing)
    load_g = t.mean_g / t.per_weighing
    assumed = scale.error_assumed(load_g)
    error = row(
        Source.SCALE_ERROR, scale.error_u_g(load_g), t.per_weighing, math.inf if assumed else scale.error_df,
        distribution=Distribution.RECTANGULAR if assumed else Distribution.NORMAL, assumed=assumed,
    )  # fmt: skip
    together = row(Source.BAG_MEANS, math.sqrt(seen), 1.0, df)
    u, effective = combined([together, reading, tare, error])
    parts = combined([together, reading]), combined([tare, error])
    rows = [*_spread_rows(t, rule, spread, share), reading, tare, error]
    return _Doubt(u, effective, parts, with_shares(rows), math.sqrt(missing) if _all_alike(t) else 0.0)


def _component_sds(t: Table, spread: Spread, outlook: Outlook) -> tuple[float, float]:
    bag, fill = (spread.bag_variance, spread.fill_ms) if spread.fill_df else outlook.components()
    if outlook.bags_there == 1:
        bag = 0.0  # the lot is that bag
    return math.sqrt(bag) * t.mean_g, math.sqrt(fill) * t.mean_g


def _reach_of_one_more(t: Table, scale: ScaleFacts, spread: Spread, doubt: _Doubt, share: float) -> float:
    """Half-width at 95 % for the reading of one more scoopful from another bag."""
    scatter, df = spread.of_one_more(len(t.bags), t.per_fill, share)
    seen = scatter * t.mean_g**2
    missing = max(0.0, 2 * scale.step_u_g**2 - seen)
    return expanded([welch_satterthwaite([(math.sqrt(seen), df), (math.sqrt(missing), math.inf)]), doubt.parts[1]])


def tolerance_of_fills_g(fills: Sequence[Weighed], tolerance_share: float) -> float:
    """How far a scoopful may be from what these fills weigh on average, g, for a tolerance told as a share.

    Raises CannotCompute for no fills, or weights not above zero.
    """
    return tolerance_share * table(fills).mean_g


def level_result(
    fills: Sequence[Weighed],
    scale: ScaleFacts,
    *,
    history: BagHistory | None = None,
    tolerance_g: float,
    bags_there: int | None = None,
) -> LevelResult:
    """Mean, interval, budget, odd fills and advice from one or more fills of a lot, struck ones left out.

    `tolerance_g` (above zero) is how far a feeding may be from its target, `bags_there` how many bags the lot has
    where that is known: the advice asks for no more, and those dipped leave no doubt about themselves. Sources: JCGM
    100:2008 for the combination; Searle, Casella, McCulloch 1992, Variance Components, for bags and fills; Hahn and
    Meeker 1991, Statistical Intervals, 4.7, for one more scoopful. Raises CannotCompute for no fills, weights not
    above zero, an impossible scale or tolerance.
    """
    positive(tolerance_g, "The tolerance")
    t = table(fills)
    mean = scale.checked().corrected_g(t.mean_g)
    n = len(t.bags)
    share = dipped_share(n, bags_there)
    rule, spread = spread_of(t, history, share)
    doubt = _doubt(t, scale, rule, spread, share)
    half = expanded(doubt.parts)
    outlook = Outlook(rule, spread, doubt.common_u_g / t.mean_g, bags_there)
    bag_sd, fill_sd = _component_sds(t, spread, outlook)
    reach = _reach_of_one_more(t, scale, spread, doubt, share)
    reading_u = scale.step_u_g * math.sqrt(2.0)
    return LevelResult(
        mean_g=mean,
        u_g=doubt.u_g,
        degrees_of_freedom=doubt.df,
        low_g=mean - half,
        high_g=mean + half,
        bags=n,
        fills=t.weighings,
        bag_sd_g=bag_sd,
        fill_sd_g=fill_sd,
        rule=rule,
        budget=doubt.budget,
        next_low_g=mean - reach,
        next_high_g=mean + reach,
        odd=odd_fills(fills, t, reading_u, history),
        advice=advise(t, outlook, half, tolerance_g),
        bag_means=t.bags,
        outlook=outlook,
        parts=doubt.parts,
        taken_off_g=t.mean_g - mean,
    )


@dataclass(frozen=True)
class DensityResult:
    """Bulk density of the lot in this scoop, g/mL, with its 95 % interval and budget."""

    density_g_per_ml: float
    u_g_per_ml: float
    degrees_of_freedom: float
    low_g_per_ml: float
    high_g_per_ml: float
    budget: tuple[BudgetRow, ...]

    @property
    def expanded(self) -> float:
        """Half the width of the 95 % interval."""
        return (self.high_g_per_ml - self.low_g_per_ml) / 2


def bulk_density(
    level: LevelResult, volume_ml: float, volume_u_ml: float = 0.0, volume_df: float = math.inf
) -> DensityResult:
    """Weight of a struck-level scoopful ÷ its volume (mL, with standard uncertainty and degrees of freedom).

    JCGM 100:2008, 5.1.2. Raises CannotCompute for a volume not above zero or a negative uncertainty.
    """
    volume = positive(volume_ml, "The scoop's volume")
    volume_u = not_negative(volume_u_ml, "The doubt in the scoop's volume")
    density = level.mean_g / volume
    budget = with_shares(
        [
            row(Source.LEVEL_MEAN, level.u_g, 1 / volume, level.degrees_of_freedom),
            row(Source.SCOOP_VOLUME, volume_u, density / volume, volume_df, unit="mL"),
        ]
    )
    u, df = combined(budget)
    half = expanded([*((u / volume, df) for u, df in level.parts), (density / volume * volume_u, volume_df)])
    return DensityResult(density, u, df, density - half, density + half, budget)
