"""A trial of feeders: several people fill one scoop from one bag; who fills heavy or light, who scatters, how much.

One-way random effects: fill = mean + person + repeat. People are compared as ISO 5725-2 compares laboratories, but for
the few fills that a farm has time for: each person's scatter stands for itself (Welch), so that one who scatters
much does not blur the others.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from enum import StrEnum

from calibrator.science.components import f_tail, one_way
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import not_negative, positive
from calibrator.science.season_spread import STEADY_FILL_SD_SHARE
from calibrator.science.spread_shares import chi2_quantile
from calibrator.science.stats import mean_of, sum_of_squares, two_sided_t
from calibrator.science.why import NEGLIGIBLE_SHARE
from calibrator.values import dataclass

LEAST_FILLS = 2
FILLS_EACH = 5
"""Asked of each person: enough to tell a scatter within a factor of about three; common practice, no source."""
APART_P = 0.05


class Level(StrEnum):
    """How a person's scoopfuls weigh beside the others'."""

    HEAVY = "heavy"
    LIGHT = "light"
    ALIKE = "alike"
    CANNOT_TELL = "cannot_tell"


class Scatter(StrEnum):
    """How a person's scoopfuls scatter."""

    STEADY = "steady"
    APART = "apart"  # surely more than the others'
    WIDE = "wide"  # more than is good, though not surely more than the others'
    CANNOT_TELL = "cannot_tell"


@dataclass(frozen=True)
class Person:
    """One person's fills. `share` is how much more they weigh than the mean of all people, with an interval that
    holds at 95 % for all people at once; the spread is a share of the person's own mean, with its 95 % interval."""

    name: str
    fills: int
    mean_g: float
    share: float
    low: float
    high: float
    level: Level
    sd_share: float
    sd_low: float
    sd_high: float
    scatter: Scatter


@dataclass(frozen=True)
class Sd:
    """A standard deviation as a share of the mean, with its 95 % interval."""

    share: float
    low: float
    high: float


@dataclass(frozen=True)
class TrialFindings:
    """What a trial tells, people in the order in which they came.

    `repeatability` is the scatter of one person's fills, `reproducibility` that of fills by anybody. `between` is
    the spread between people by itself; 0 where none is seen. `p` is the chance of people so far apart by chance.
    People with fewer than two fills are left out.
    """

    mean_g: float
    people: tuple[Person, ...]
    repeatability: Sd
    reproducibility: Sd
    between: float
    p: float | None


def trial(fills: Mapping[str, Sequence[float]], scale_step_g: float, tolerance_share: float) -> TrialFindings:
    """Judge the fills of each person, g. A scatter is never taken to be less than that of two readings of the scale.

    Intervals: difference from the mean of all by Welch and Satterthwaite (JCGM 100:2008, G.4), shared out over the
    people (Bonferroni) where there are three or more; standard deviations by chi-square, the one of fills by
    anybody with Satterthwaite's degrees of freedom (Searle, Casella and McCulloch 1992, Variance Components, 3.6).
    Raises CannotCompute for fewer than two people with two fills each, or for a weight, a step or a tolerance that
    cannot be.
    """
    floor = not_negative(scale_step_g, "The display step of the scale") ** 2 / 6
    positive(tolerance_share, "The tolerance")
    for mass in (mass for masses in fills.values() for mass in masses):
        positive(mass, "The weight of a scoopful")
    known = {name: list(masses) for name, masses in fills.items() if len(masses) >= LEAST_FILLS}
    if len(known) < 2:
        raise CannotCompute("It takes two people with two fills each to compare them.")
    groups = [_Group.of(name, masses, floor) for name, masses in known.items()]
    mean = mean_of([group.mean for group in groups])
    repeat, whole, between, p = _spreads(groups, mean)
    return TrialFindings(
        mean,
        tuple(_person(group, groups, mean, tolerance_share) for group in groups),
        repeat,
        whole,
        between,
        p,
    )


@dataclass(frozen=True)
class _Group:
    name: str
    masses: tuple[float, ...]
    mean: float
    variance: float

    @classmethod
    def of(cls, name: str, masses: Sequence[float], floor: float) -> _Group:
        variance = max(sum_of_squares(masses) / (len(masses) - 1), floor)
        return cls(name, tuple(masses), mean_of(masses), variance)

    @property
    def df(self) -> int:
        return len(self.masses) - 1

    @property
    def of_mean(self) -> float:
        return self.variance / len(self.masses)


def _person(own: _Group, groups: Sequence[_Group], mean: float, tolerance: float) -> Person:
    half = _half(own, groups) / mean
    share = own.mean / mean - 1
    sd = sd_of(own.variance, own.df, own.mean)
    level = level_of(share, half, tolerance)
    return Person(
        own.name, len(own.masses), own.mean, share, share - half, share + half, level,
        sd.share, sd.low, sd.high, _scatter(own, groups, sd),
    )  # fmt: skip


def _half(own: _Group, groups: Sequence[_Group]) -> float:
    """Half-width for a person's mean less the mean of all people's means."""
    count = len(groups)
    weights = [(1 - 1 / count) if group is own else 1 / count for group in groups]
    parts = [w * w * group.of_mean for w, group in zip(weights, groups, strict=True)]
    variance = math.fsum(parts)
    if variance <= 0:
        return 0.0
    df = variance**2 / math.fsum(part * part / group.df for part, group in zip(parts, groups, strict=True))
    looks = 1 if count == 2 else count  # two people are told apart by one difference
    return two_sided_t(1 - 0.05 / looks, df) * math.sqrt(variance)


def level_of(share: float, half: float, tolerance: float) -> Level:
    low, high = share - half, share + half
    reach = max(-low, high)
    if reach <= NEGLIGIBLE_SHARE or (low <= 0 <= high and reach <= tolerance):
        return Level.ALIKE
    if low > 0:
        return Level.HEAVY
    return Level.LIGHT if high < 0 else Level.CANNOT_TELL


def _scatter(own: _Group, groups: Sequence[_Group], sd: Sd) -> Scatter:
    others = [group for group in groups if group is not own]
    df = sum(group.df for group in others)
    pooled = math.fsum(group.variance * group.df for group in others) / df
    if pooled > 0 and len(groups) * f_tail(own.variance / pooled, own.df, df) < APART_P:
        return Scatter.APART
    if len(own.masses) < FILLS_EACH:
        return Scatter.CANNOT_TELL
    return Scatter.WIDE if sd.share > STEADY_FILL_SD_SHARE else Scatter.STEADY


def sd_of(variance: float, df: float, mean: float) -> Sd:
    high, low = (math.sqrt(variance * df / chi2_quantile(p, df)) / mean for p in (0.025, 0.975))
    return Sd(math.sqrt(variance) / mean, low, high)


def _spreads(groups: Sequence[_Group], mean: float) -> tuple[Sd, Sd, float, float | None]:
    """Repeatability, reproducibility, spread between people, chance; sizes may differ."""
    above, within = one_way([group.masses for group in groups])
    total = sum(len(group.masses) for group in groups)
    each = (total - sum(len(group.masses) ** 2 for group in groups) / total) / above.df
    floored = math.fsum(group.variance * group.df for group in groups) / within.df
    repeat = sd_of(floored, within.df, mean)
    between2 = max(0.0, (above.mean_square - floored) / each)
    if not between2:
        return repeat, repeat, 0.0, above.p
    parts = ((above.mean_square / each, above.df), ((1 - 1 / each) * floored, within.df))
    whole = math.fsum(part for part, _ in parts)
    df = whole**2 / math.fsum(part * part / df for part, df in parts)
    return repeat, sd_of(whole, df, mean), math.sqrt(between2) / mean, above.p
