"""Trials of feeders that the same people took part in: whose habit lasts, whose changed, what practice did.

Logarithms of the weights are crossed, person by trial: a scoop, a lot or a line that weighs more in one trial than in
another falls out, and a standard deviation is a share of the weight.
"""

from __future__ import annotations

import math
from collections.abc import Collection, Mapping, Sequence

from calibrator.science.crossed import Crossed, crossed
from calibrator.science.feeders import APART_P, LEAST_FILLS, Level, Sd, level_of, sd_of
from calibrator.science.guard import not_negative, positive
from calibrator.science.stats import mean_of, two_sided_t
from calibrator.values import dataclass


@dataclass(frozen=True)
class TrialRead:
    """The fills of one trial that count, g, by person, and the display step of its scale."""

    fills: Mapping[str, Sequence[float]]
    scale_step_g: float


@dataclass(frozen=True)
class Change:
    """How a person's share moved from the first trial to the last, with its interval; `sure` where it did."""

    share: float
    low: float
    high: float

    @property
    def sure(self) -> bool:
        return not self.low <= 0 <= self.high


@dataclass(frozen=True)
class Habit:
    """One person over all trials. `share` is how much more the scoopfuls weigh than the mean of all people, `each`
    the same trial by trial; intervals hold at 95 % for all people at once."""

    name: str
    share: float
    low: float
    high: float
    level: Level
    each: tuple[float, ...]
    change: Change

    @property
    def nearer(self) -> bool:
        """Whether the last trial lies surely nearer to the mean of all than the first."""
        return self.change.sure and abs(self.each[-1]) < abs(self.each[0])


@dataclass(frozen=True)
class Habits:
    """What several trials tell together. `by_trial` is how much people change beside each other from trial to trial,
    by itself; `reproducibility` the spread of fills by anybody in any trial; `moved` whether the changes are more
    than chance."""

    people: tuple[Habit, ...]
    repeatability: Sd
    between: float
    by_trial: float
    reproducibility: Sd
    moved: bool


def who_fit(trials: Sequence[Collection[str]], about: int) -> tuple[tuple[str, ...], tuple[int, ...]]:
    """The people and trials to be compared with trial `about`, so that each took part in each.

    Of all choices the one with the most to compare ((people − 1) × (trials − 1)), of two such the one with more
    people; empty where no two people share two trials.
    """
    best: tuple[tuple[str, ...], tuple[int, ...]] = ((), ())
    most = (0, len(trials[about]))  # one person, or one trial, is nothing to compare
    for other in trials:
        people = tuple(name for name in trials[about] if name in other)
        places = tuple(n for n, names in enumerate(trials) if set(people) <= set(names))
        worth = ((len(people) - 1) * (len(places) - 1), len(people))
        if worth > most:
            best, most = (people, places), worth
    return best


def who_count(read: TrialRead) -> tuple[str, ...]:
    """The people of a trial with fills enough to be judged."""
    return tuple(name for name, masses in read.fills.items() if len(masses) >= LEAST_FILLS)


def habits(trials: Sequence[TrialRead], people: Sequence[str], tolerance_share: float) -> Habits:
    """Judge people over the trials that all of them took part in, the first trial first.

    A person's difference from the mean of all has the variance of person by trial (JCGM 100 would call it the
    reproducibility from day to day); the change from the first trial to the last that of the fills. Intervals are
    shared out over the people (Bonferroni); the one of fills by anybody has Satterthwaite's degrees of freedom.
    Raises CannotCompute for fewer than two people, trials or fills of each, or for a weight that cannot be.
    """
    positive(tolerance_share, "The tolerance")
    cells = [[_logarithms(read.fills[name]) for read in trials] for name in people]
    found = crossed(cells, mean_of([_floor(read, people) for read in trials]) if trials else 0.0)
    middle = [mean_of([mean_of(row[n]) for row in cells]) for n in range(len(trials))]
    told = []
    for name, row in zip(people, cells, strict=True):
        own = [mean_of(cell) - middle[n] for n, cell in enumerate(row)]
        told.append(_habit(name, own, found, tolerance_share))
    return Habits(
        tuple(told),
        sd_of(found.within.mean_square, found.within.df, 1.0),
        math.sqrt(found.row_variance),
        math.sqrt(found.both_variance),
        _anybody(found),
        found.both.p is not None and found.both.p < APART_P,
    )


def _logarithms(masses: Sequence[float]) -> list[float]:
    return [math.log(positive(mass, "The weight of a scoopful")) for mass in masses]


def _floor(read: TrialRead, people: Sequence[str]) -> float:
    """Two readings of the scale, as a share of a scoopful, squared."""
    step = not_negative(read.scale_step_g, "The display step of the scale")
    return step**2 / 6 / mean_of([mass for name in people for mass in read.fills[name]]) ** 2


def _habit(name: str, own: Sequence[float], found: Crossed, tolerance: float) -> Habit:
    people, trials = found.rows.df + 1, found.columns.df + 1
    looks = 1 if people == 2 else people  # two people are told apart by one difference
    left = (1 - 1 / people) / found.each
    share = mean_of(own)
    half = two_sided_t(1 - 0.05 / looks, found.both.df) * math.sqrt(found.both.mean_square * left / trials)
    moved = own[-1] - own[0]
    far = two_sided_t(1 - 0.05 / looks, found.within.df) * math.sqrt(2 * found.within.mean_square * left)
    return Habit(
        name,
        math.expm1(share),
        math.expm1(share - half),
        math.expm1(share + half),
        level_of(share, half, tolerance),
        tuple(math.expm1(one) for one in own),
        Change(math.expm1(moved), math.expm1(moved - far), math.expm1(moved + far)),
    )


def _anybody(found: Crossed) -> Sd:
    """The spread of fills by anybody in any trial: the sum of three variances, each told by mean squares."""
    each, trials = found.each, found.columns.df + 1
    weights = {"rows": 0.0, "both": 0.0, "within": 1.0}
    if found.row_variance:
        weights["rows"], weights["both"] = 1 / (each * trials), -1 / (each * trials)
    if found.both_variance:
        weights["both"] += 1 / each
        weights["within"] -= 1 / each
    rows = {"rows": found.rows, "both": found.both, "within": found.within}
    parts = [(weight * rows[name].mean_square, rows[name].df) for name, weight in weights.items()]
    whole = math.fsum(part for part, _ in parts)
    if whole <= 0:
        return Sd(0.0, 0.0, 0.0)
    return sd_of(whole, whole**2 / math.fsum(part * part / df for part, df in parts), 1.0)
