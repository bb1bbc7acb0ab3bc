"""Checks over time: limits, a running mean for each lot, and when a lot that is off is found out.

Each check tells how far the solids were off their target, as a share. The running mean is the exponentially
weighted one and starts anew with each lot, for it is a new lot that shifts a mix.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

from calibrator.science.charts import LIMIT_SD, next_running_mean, running_reach, weight_so_far
from calibrator.science.guard import finite, positive
from calibrator.science.stats import mean_of, sum_of_squares, two_sided_t
from calibrator.values import dataclass

ASSUMED_SD_SHARE, ASSUMED_DF = 0.025, 6.0
"""Checks of one lot are taken to spread so until they show it themselves: common practice, no source."""

COMMON_SD_SHARE = 0.006
"""What all checks of a lot share without being the lot's: the instrument's zero, the own line. Common
practice, no source."""

LEAST_OF_ONE = 3
"""Of fewer checks nobody is told how somebody mixes: one batch is no habit. Common practice, no source."""

LEAST_BASELINE = 10
"""From so many checks of earlier lots on, their mean is taken for what a right mix reads here."""


@dataclass(frozen=True)
class Point:
    """One check: its lot, and solids ÷ target − 1.

    `way` names the way from reading to solids, `way_u` is the standard uncertainty that all checks by this way share,
    as `off_share`: a rule of thumb may be off for a whole product. The farm's own line has none beyond
    `COMMON_SD_SHARE`.
    """

    lot_id: str
    off_share: float
    way: str = ""
    way_u: float = 0.0


@dataclass(frozen=True)
class Watched:
    """A check as the chart shows it, shares: the running mean and its limits.

    `found` tells that this check, or the running mean with it, is beyond its limits.
    """

    point: Point
    running: float
    low: float
    high: float
    found: bool

    @property
    def shifted(self) -> bool:
        """Whether the running mean is beyond its limits: more than one check that was wide."""
        return not self.low <= self.running <= self.high


def off_share(solids_share: float, target_share: float) -> float:
    """Solids ÷ target − 1. Raises CannotCompute for a target that is not above zero."""
    return finite(solids_share, "The solids") / positive(target_share, "The target") - 1


def _pooled(groups: Iterable[object], points: Sequence[Point]) -> tuple[float, float]:
    """How far checks spread about the mean of their group, joined with the assumed spread; its degrees of freedom."""
    found: dict[object, list[float]] = {}
    for group, point in zip(groups, points, strict=True):
        found.setdefault(group, []).append(finite(point.off_share, "A check"))
    squares, df = ASSUMED_DF * ASSUMED_SD_SHARE**2, ASSUMED_DF
    for values in found.values():
        squares += sum_of_squares(values)
        df += len(values) - 1
    return math.sqrt(squares / df), df


@dataclass(frozen=True)
class Mean:
    """How far checks were off target on average, shares: mean, 95 % interval, how many.

    `sure` tells that it is off even with the chance of so many names looked at reckoned in.
    """

    share: float
    low: float
    high: float
    count: int
    sure: bool = False

    @property
    def half(self) -> float:
        """Half the interval."""
        return (self.high - self.low) / 2


def means_by(names: Sequence[str], points: Sequence[Point]) -> dict[str, Mean]:
    """The mean of each name's checks, of those with `LEAST_OF_ONE` or more. What is common to all checks of a lot, or
    of a way from reading to solids, counts as doubt in each mean: no more checks take it away. The spread of single
    checks is pooled over what one name did with one lot, so that nobody's lean hides itself. Names in the order of the
    alphabet.

    Whether one is surely off target: Bonferroni's inequality, 5 % for all names together.
    """
    sd, df = _pooled([(name, point.lot_id) for name, point in zip(names, points, strict=True)], points)
    found: dict[str, list[Point]] = {}
    for name, point in zip(names, points, strict=True):
        found.setdefault(name, []).append(point)
    enough = {name: its for name, its in sorted(found.items()) if len(its) >= LEAST_OF_ONE}
    return {name: _mean(its, sd, df, len(enough)) for name, its in enough.items()}


def _mean(its: Sequence[Point], sd: float, df: float, names: int) -> Mean:
    mean, common = mean_of([point.off_share for point in its]), mean_of([point.way_u for point in its])
    u = math.hypot(sd / math.sqrt(len(its)), COMMON_SD_SHARE, common)
    half = two_sided_t(0.95, df) * u
    return Mean(mean, mean - half, mean + half, len(its), abs(mean) > two_sided_t(1 - 0.05 / names, df) * u)


class _OfLot:
    """What the checks of one lot come to so far, so that each further one is judged without going over all of them."""

    def __init__(self) -> None:
        self.count, self.mean, self.squares = 0, 0.0, 0.0
        self.running = 0.0  # about a middle of nought
        self.doubts: dict[str, float] = {}  # of each way, running likewise
        self.sums: dict[str, tuple[int, float]] = {}  # of each way

    def add(self, point: Point) -> float:
        """Takes one more check in; by how much it adds to the squares about the lot's mean (Welford 1962)."""
        off = finite(point.off_share, "A check")
        self.count += 1
        from_old = off - self.mean
        self.mean += from_old / self.count
        self.running = next_running_mean(self.running, off)
        self.doubts.setdefault(point.way, 0.0)
        self.doubts = {
            way: next_running_mean(doubt, point.way_u if way == point.way else 0.0)
            for way, doubt in self.doubts.items()
        }
        count, total = self.sums.get(point.way, (0, 0.0))
        self.sums[point.way] = count + 1, total + off
        return from_old * (off - self.mean)


def watch(points: Sequence[Point]) -> tuple[Watched, ...]:
    """The checks in their order, each judged by what was known up to it; nothing later is used.

    The middle is the mean of earlier lots' checks by the same way once there are `LEAST_BASELINE` of them, which takes
    the way's own doubt with it; else the target. How far checks spread is pooled within the lots, joined with the
    assumed spread, so that a lot's shift does not hide itself.
    """
    lots: dict[str, _OfLot] = {}
    sums: dict[str, tuple[int, float]] = {}
    squares, df = ASSUMED_DF * ASSUMED_SD_SHARE**2, ASSUMED_DF
    found: list[Watched] = []
    for point in points:
        lot = lots.setdefault(point.lot_id, _OfLot())
        squares += lot.add(point)
        df += lot.count > 1
        count, total = sums.get(point.way, (0, 0.0))
        count, total = sums[point.way] = count + 1, total + point.off_share
        own_count, own_total = lot.sums[point.way]
        others = count - own_count
        middle = (total - own_total) / others if others >= LEAST_BASELINE else None
        found.append(_judged(point, lot, middle, math.sqrt(squares / df)))
    return tuple(found)


def _judged(newest: Point, lot: _OfLot, known_middle: float | None, sd: float) -> Watched:
    middle, taken = (0.0, 0.0) if known_middle is None else (known_middle, 1.0)
    running = lot.running + (1 - weight_so_far(lot.count)) * middle
    # What a way is off, it is off in each of its checks alike: it adds up as the readings themselves do.
    doubts = math.fsum(lot.doubts.values()) - taken * lot.doubts[newest.way]
    common = LIMIT_SD * math.hypot(COMMON_SD_SHARE, doubts)
    half = math.hypot(running_reach(sd, lot.count), common)
    alone = LIMIT_SD * math.hypot(sd, COMMON_SD_SHARE, newest.way_u * (1 - taken))
    off = abs(running - middle) > half or abs(newest.off_share - middle) > alone
    return Watched(newest, running, middle - half, middle + half, off)


def shifted_since(watched: Sequence[Watched], lot_id: str) -> int | None:
    """From which check of a lot on, 1, 2, 3, …, up to its newest its running mean is beyond its limits; None where it
    is within them now."""
    own = [w for w in watched if w.point.lot_id == lot_id]
    within = max((n for n, w in enumerate(own, start=1) if not w.shifted), default=0)
    return within + 1 if within < len(own) else None
