"""Where a season's spread comes from, with its intervals, and what follows for the work: bags or fills, practice,
the scale. Spreads are shares of a scoopful."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from enum import StrEnum
from statistics import median

from calibrator.model import BagSum, SeasonLot
from calibrator.science.bag_sums import Scatter, bag_means, by_weigh_in, scatter_of
from calibrator.science.components import Components, Split, best_fills_each, best_split, components_of_bags, f_tail
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import positive
from calibrator.science.lot_kinds import by_kind, log_density
from calibrator.science.nested import BagMean
from calibrator.science.spread import LEAST_HISTORY_DF
from calibrator.science.spread_shares import chi2_quantile
from calibrator.science.stats import NORMAL_95, mean_of, two_roundings_u
from calibrator.values import dataclass

STEADY_FILL_SD_SHARE = 0.025
"""Scoopfuls that scatter more than this are worth practising: common practice, no source."""
SCALE_SHARE_OF_SCATTER = 0.5
APART_P = 0.05
WANTED_SHARE_OF_TOLERANCE = 0.5


FEWEST_LOTS = 5
"""Fewer lots do not tell how lots differ: with four the 95 % interval of a spread reaches to 3.7 times itself
(chi-square with 3 degrees of freedom). Where to stop is common practice, no source."""
TOO_WIDE = 10.0
"""An interval that ends so many times as high as its spread has no upper end worth a figure."""


def open_above(sd: float, interval: tuple[float, float]) -> bool:
    """Whether a spread's interval (shares) tells no upper end: too far up, or at all of a scoopful and more."""
    return interval[1] >= min(1.0, TOO_WIDE * sd) > 0


class Do(StrEnum):
    """What follows from the spread."""

    MORE_BAGS = "more_bags"  # the same work tells more from more bags
    MORE_FILLS = "more_fills"  # ... from more fills of each
    AS_NOW = "as_now"
    PRACTISE = "practise"  # scoopfuls scatter much
    PRACTISE_WITH = "practise_with"  # one person's scoopfuls scatter more than the others'
    CHECK_SCALE = "check_scale"  # the scale's step makes up most of the scatter


@dataclass(frozen=True)
class Own:
    """One person's or one scoop's fills: how they scatter (95 % interval), in how many lots."""

    name: str
    lots: int
    scatter: Scatter
    low_share: float
    high_share: float


@dataclass(frozen=True)
class SpreadFindings:
    """The components as shares, between lots of one kind; people and scoops, the steadiest first; what follows.

    `apart` is the person whose scoopfuls scatter more than the others' taken together. `best` is the cheapest
    plan for a mean known to within `wanted_share` at 95 %, `usual` what a weigh-in had so far (bags, fills each;
    medians) and `usual_reach` to within what that knows the mean.
    """

    components: Components
    people: tuple[Own, ...]
    scoops: tuple[Own, ...]
    apart: str
    best: Split | None
    best_fills_each: float | None
    usual: tuple[float, float]
    usual_reach: float | None
    wanted_share: float
    do: tuple[Do, ...]

    @property
    def lots_tell(self) -> bool:
        """Whether there are lots enough to tell how lots differ."""
        return self.components.lots.df >= FEWEST_LOTS - 1


def season_spread(
    lots: Sequence[SeasonLot], sums: Sequence[BagSum], tolerance_share: float, scale_step_g: float
) -> SpreadFindings:
    """Variance between lots, bags and fills, and what follows for a farm with this tolerance and scale.

    The best plan is Cochran's (`components.best_split`), for a mean known to half the tolerance at 95 %; as few bags
    as make no history yet (`spread.LEAST_HISTORY_DF`) give none, nor do lots too few to tell how lots differ.
    Raises CannotCompute for no fills, a tolerance or a step that is not above zero.
    """
    positive(tolerance_share, "The tolerance")
    step = positive(scale_step_g, "The display step of the scale")
    bags_of = by_weigh_in(sums)
    found = components_of_bags([bags for bags in _in_shares(lots, bags_of) if bags])
    people, scoops = _people(lots, sums), _scoops(lots, bags_of)
    apart = _apart(people)
    best, each = _plan(found, tolerance_share)
    usual = _usual(lots, bags_of)
    reading = two_roundings_u(step) / mean_of([lot.level_mean_g for lot in lots])  # tare and gross, d/√12 each
    do = (_work(found, usual, best), *_practice(found, apart, reading))
    told = tuple(d for d in do if d is not None)
    wanted = WANTED_SHARE_OF_TOLERANCE * tolerance_share
    return SpreadFindings(found, people, scoops, apart, best, each, usual, _reach(found, *usual), wanted, told)


def _in_shares(lots: Sequence[SeasonLot], bags_of: Mapping[str, Sequence[BagSum]]) -> list[tuple[BagMean, ...]]:
    """The bags of each lot. Bags and fills count relative to the lot's own mean, as those of a person do, and a lot by
    how far the logarithm of its density is from the middle of its kind."""
    made = []
    for places in by_kind(lots).values():
        middle = mean_of([log_density(lots[p]) for p in places])
        for lot in (lots[p] for p in places):
            off = log_density(lot) - middle
            bags = bag_means(bags_of.get(lot.weigh_in_id, ()), lot.level_mean_g)
            made.append(tuple(BagMean(b.bag, b.mean_g + off, b.weighings, b.scoopfuls, b.sum_squares) for b in bags))
    return made


def _people(lots: Sequence[SeasonLot], sums: Sequence[BagSum]) -> tuple[Own, ...]:
    known = {lot.weigh_in_id: lot for lot in lots}
    own: dict[str, list[BagSum]] = {}
    for bag in sums:
        if bag.by and bag.weigh_in_id in known:
            own.setdefault(bag.by, []).append(bag)
    return _steadiest_first(
        _own(name, [known[w] for w in dict.fromkeys(bag.weigh_in_id for bag in bags)], by_weigh_in(bags))
        for name, bags in own.items()
    )


def _scoops(lots: Sequence[SeasonLot], bags_of: Mapping[str, Sequence[BagSum]]) -> tuple[Own, ...]:
    own: dict[tuple[str, str], list[SeasonLot]] = {}
    for lot in lots:
        own.setdefault((lot.scoop_id, lot.scoop_name), []).append(lot)
    return _steadiest_first(_own(name, theirs, bags_of) for (_, name), theirs in own.items())


def _own(name: str, lots: Sequence[SeasonLot], sums: Mapping[str, Sequence[BagSum]]) -> Own | None:
    scatter = scatter_of(lots, sums)
    df = scatter.degrees_of_freedom
    if not df:
        return None
    high, low = (math.sqrt(scatter.variance * df / chi2_quantile(p, df)) for p in (0.025, 0.975))
    return Own(name, len(lots), scatter, low, high)


def _steadiest_first(found: Iterable[Own | None]) -> tuple[Own, ...]:
    return tuple(sorted((own for own in found if own is not None), key=_scatter))


def _scatter(own: Own) -> float:
    return own.scatter.variance


def _apart(people: Sequence[Own]) -> str:
    """The person who scatters most, where the others together scatter surely less: an F test, its chance times
    the number of people (Bonferroni), for the one was chosen after looking."""
    if len(people) < 2:
        return ""
    most, others = people[-1], people[:-1]
    df = sum(own.scatter.degrees_of_freedom for own in others)
    variance = math.fsum(own.scatter.variance * own.scatter.degrees_of_freedom for own in others) / df
    if variance <= 0:
        return ""
    p = len(people) * f_tail(most.scatter.variance / variance, most.scatter.degrees_of_freedom, df)
    return most.name if p < APART_P else ""


def _plan(found: Components, tolerance_share: float) -> tuple[Split | None, float | None]:
    if _too_few(found) or found.bag_sd is None or found.fill_sd is None:
        return None, None
    wanted = WANTED_SHARE_OF_TOLERANCE * tolerance_share / NORMAL_95
    try:
        return best_split(found.bag_sd, found.fill_sd, wanted), best_fills_each(found.bag_sd, found.fill_sd)
    except CannotCompute:
        return None, None


def _too_few(found: Components) -> bool:
    """Whether bags or lots are too few to order anything by how they differ."""
    return found.bags.df < LEAST_HISTORY_DF or found.lots.df < FEWEST_LOTS - 1


def _usual(lots: Sequence[SeasonLot], bags_of: Mapping[str, Sequence[BagSum]]) -> tuple[float, float]:
    bags = [len({bag.bag for bag in bags_of.get(lot.weigh_in_id, ())}) for lot in lots]
    fills = [sum(bag.weighings for bag in bags_of.get(lot.weigh_in_id, ())) for lot in lots]
    told = [(b, f / b) for b, f in zip(bags, fills, strict=True) if b]
    return float(median(b for b, _ in told)), float(median(e for _, e in told))


def _reach(found: Components, bags: float, each: float) -> float | None:
    if found.bag_sd is None or found.fill_sd is None:
        return None
    return NORMAL_95 * math.sqrt((found.bag_sd**2 + found.fill_sd**2 / each) / bags)


def _work(found: Components, usual: tuple[float, float], plan: Split | None) -> Do | None:
    """More bags, or more fills of each: what Cochran's optimum says of the fills of a bag so far. Nobody is told to
    go on as now where another plan is the least work."""
    if _too_few(found) or found.bag_sd is None or found.fill_sd is None:
        return None
    best = best_fills_each(found.bag_sd, found.fill_sd)
    if best < usual[1] - 0.5:
        return Do.MORE_BAGS
    if best > usual[1] + 1.0:
        return Do.MORE_FILLS
    other = plan is not None and (plan.bags, plan.fills_each) != (round(usual[0]), round(usual[1]))
    return None if other else Do.AS_NOW


def _practice(found: Components, apart: str, reading_share: float) -> list[Do]:
    do = []
    fill = found.fill_sd
    if fill and reading_share**2 > SCALE_SHARE_OF_SCATTER * fill**2:
        do.append(Do.CHECK_SCALE)
    if apart:
        do.append(Do.PRACTISE_WITH)
    elif fill and fill > STEADY_FILL_SD_SHARE:
        do.append(Do.PRACTISE)
    return do
