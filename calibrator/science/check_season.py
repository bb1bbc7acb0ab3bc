"""Checks over time: limits, a running mean for each lot, and when a lot that is off is found out.

Each check tells how far the solids were off their target, as a share. The running mean is the exponentially
weighted one and starts anew with each lot, for it is a new lot that shifts a mix.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from calibrator.science.charts import LIMIT_SD, running_means, running_reaches
from calibrator.science.guard import finite, positive
from calibrator.science.stats import mean_of, sum_of_squares, two_sided_t
from calibrator.values import dataclass

ASSUMED_SD_SHARE, ASSUMED_DF = 0.025, 6.0
"""Checks of one lot are taken to spread so until they show it themselves: common practice, no source."""

COMMON_SD_SHARE = 0.006
"""What all checks of a lot share without being the lot's: the instrument's zero, the own line. Common
practice, no source."""

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


def off_share(solids_share: float, target_share: float) -> float:
    """Solids ÷ target − 1. Raises CannotCompute for a target that is not above zero."""
    return finite(solids_share, "The solids") / positive(target_share, "The target") - 1


def _by_lot(points: Sequence[Point]) -> dict[str, list[float]]:
    found: dict[str, list[float]] = {}
    for point in points:
        found.setdefault(point.lot_id, []).append(finite(point.off_share, "A check"))
    return found


def spread_within_lots(points: Sequence[Point]) -> float:
    """How far single checks of one lot spread about the lot's own mean, a share: pooled over the lots and
    joined with the assumed spread, so that a lot's shift does not hide itself."""
    squares, df = ASSUMED_DF * ASSUMED_SD_SHARE**2, ASSUMED_DF
    for values in _by_lot(points).values():
        squares += sum_of_squares(values)
        df += len(values) - 1
    return math.sqrt(squares / df)


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
    """The mean of each name's checks. What is common to all checks of a lot counts as doubt in each mean; the
    spread of single checks is the pooled one, with its degrees of freedom. Names in the order of the alphabet.

    Whether one is surely off target: Bonferroni's inequality, 5 % for all names together.
    """
    sd, df = spread_within_lots(points), ASSUMED_DF + max(0, len(points) - len(_by_lot(points)))
    found: dict[str, list[float]] = {}
    for name, point in zip(names, points, strict=True):
        found.setdefault(name, []).append(point.off_share)
    return {name: _mean(values, sd, df, len(found)) for name, values in sorted(found.items())}


def _mean(values: Sequence[float], sd: float, df: float, names: int) -> Mean:
    mean, u = mean_of(values), math.hypot(sd / math.sqrt(len(values)), COMMON_SD_SHARE)
    half = two_sided_t(0.95, df) * u
    return Mean(mean, mean - half, mean + half, len(values), abs(mean) > two_sided_t(1 - 0.05 / names, df) * u)


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


def first_found(watched: Sequence[Watched], lot_id: str) -> int | None:
    """After how many checks of a lot it was found out to be off; None where it was not."""
    own = [w for w in watched if w.point.lot_id == lot_id]
    return next((n for n, w in enumerate(own, start=1) if w.found), None)
