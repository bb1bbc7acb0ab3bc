"""Checks over time: limits, a running mean for each lot, and when a lot that is off is found out.

Each check tells how far the solids were off their target, as a share. The running mean is the exponentially
weighted one and starts anew with each lot, for it is a new lot that shifts a mix.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

from calibrator.science.charts import LIMIT_SD, running_means, running_reaches
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


def spread_within_lots(points: Sequence[Point]) -> float:
    """How far single checks of one lot spread about the lot's own mean, a share: pooled over the lots and
    joined with the assumed spread, so that a lot's shift does not hide itself."""
    return _pooled([point.lot_id for point in points], points)[0]


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


def watch(points: Sequence[Point]) -> tuple[Watched, ...]:
    """The checks in their order, each judged by what was known up to it; nothing later is used.

    The middle is the mean of earlier lots' checks by the same way once there are `LEAST_BASELINE` of them, which takes
    the way's own doubt with it; else the target.
    """
    found: list[Watched] = []
    for n, point in enumerate(points):
        before = points[: n + 1]
        own = [p for p in before if p.lot_id == point.lot_id]
        earlier = [p.off_share for p in before if p.lot_id != point.lot_id and p.way == point.way]
        known = len(earlier) >= LEAST_BASELINE
        doubts = [0.0 if known and p.way == point.way else p.way_u for p in own]
        found.append(_judged(own, doubts, mean_of(earlier) if known else 0.0, spread_within_lots(before)))
    return tuple(found)


def _judged(own: Sequence[Point], doubts: Sequence[float], middle: float, sd: float) -> Watched:
    newest, running = own[-1], running_means([point.off_share for point in own], middle)[-1]
    # What a way is off, it is off in each of its checks alike: it adds up as the readings themselves do.
    common = LIMIT_SD * math.hypot(COMMON_SD_SHARE, running_means(doubts, 0.0)[-1])
    half = math.hypot(running_reaches([sd * sd] * len(own))[-1], common)
    alone = LIMIT_SD * math.hypot(sd, COMMON_SD_SHARE, doubts[-1])
    off = abs(running - middle) > half or abs(newest.off_share - middle) > alone
    return Watched(newest, running, middle - half, middle + half, off)


def shifted_since(watched: Sequence[Watched], lot_id: str) -> int | None:
    """From which check of a lot on, 1, 2, 3, …, up to its newest its running mean is beyond its limits; None where it
    is within them now."""
    own = [w for w in watched if w.point.lot_id == lot_id]
    within = max((n for n, w in enumerate(own, start=1) if not w.shifted), default=0)
    return within + 1 if within < len(own) else None
