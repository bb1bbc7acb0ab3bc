"""Control charts of a season: is a lot out of the ordinary, has the powder drifted?"""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

from calibrator.science.errors import CannotCompute
from calibrator.science.guard import finite, not_negative, positive
from calibrator.science.stats import mean_of
from calibrator.values import dataclass

D2_OF_TWO = 2 / math.sqrt(math.pi)
"""Mean range of two values ÷ standard deviation, d2 = 1.128."""
D4_OF_TWO = 1 + 3 * math.sqrt(1 - 2 / math.pi) / math.sqrt(2 / math.pi)
"""Upper limit of the moving range ÷ its mean, D4 = 3.267."""
LIMIT_SD = 3.0
RUN_LENGTH = 8


@dataclass(frozen=True)
class IndividualsChart:
    """Centre, three-sigma limits, mean moving range and its upper limit. `outside` are the points beyond the
    limits, `jumps` those whose step from the point before is, `runs` those that end eight or more on one side
    of the centre."""

    centre: float
    low: float
    high: float
    mean_range: float
    range_high: float
    sd: float
    outside: tuple[int, ...]
    jumps: tuple[int, ...]
    runs: tuple[int, ...]


def individuals_chart(values: Sequence[float]) -> IndividualsChart:
    """Individuals and moving-range chart of two or more values in their order.

    Montgomery, Introduction to Statistical Quality Control, 6.4; limits mean ± 3·MR̄/1.128. Raises
    CannotCompute for fewer than two values or one that is no number.
    """
    if len(values) < 2:
        raise CannotCompute("A control chart needs two lots or more.")
    points = [finite(v, "A value") for v in values]
    ranges = [abs(b - a) for a, b in pairwise(points)]
    centre, mean_range = mean_of(points), mean_of(ranges)
    sd = mean_range / D2_OF_TWO
    low, high, top = centre - LIMIT_SD * sd, centre + LIMIT_SD * sd, D4_OF_TWO * mean_range
    return IndividualsChart(
        centre, low, high, mean_range, top, sd,
        outside=tuple(i for i, v in enumerate(points) if not low <= v <= high),
        jumps=tuple(i + 1 for i, r in enumerate(ranges) if r > top),
        runs=_runs([v - centre for v in points]),
    )  # fmt: skip


def _runs(off: Sequence[float]) -> tuple[int, ...]:
    found, length, side = [], 0, 0.0
    for i, value in enumerate(off):
        sign = math.copysign(1.0, value) if value else 0.0
        length = length + 1 if sign and sign == side else 1
        side = sign
        if sign and length >= RUN_LENGTH:
            found.append(i)
    return tuple(found)


@dataclass(frozen=True)
class EwmaChart:
    """Exponentially weighted moving average after each value, with its own limits, which widen at first."""

    points: tuple[float, ...]
    low: tuple[float, ...]
    high: tuple[float, ...]
    outside: tuple[int, ...]

    @property
    def steady_low(self) -> float:
        return self.low[-1]

    @property
    def steady_high(self) -> float:
        return self.high[-1]


def ewma_chart(
    values: Sequence[float], centre: float, sd: float, *, weight: float = 0.3, width: float = 3.0
) -> EwmaChart:
    """EWMA chart about a known centre and standard deviation of single values; finds small lasting shifts.

    NIST/SEMATECH e-Handbook, 6.3.2.4: zₜ = λ·xₜ + (1 − λ)·zₜ₋₁ from the centre, limits centre ± width · sd ·
    √(λ/(2 − λ)·(1 − (1 − λ)²ᵗ)). Raises CannotCompute for no value, a negative spread, or a weight outside
    0 … 1.
    """
    if not values:
        raise CannotCompute("A control chart needs a lot.")
    if not 0 < weight <= 1:
        raise CannotCompute("The weight of the newest lot must lie between 0 and 1.")
    spread = not_negative(sd, "The spread") * positive(width, "The width of the limits")
    z, points, reach = finite(centre, "The centre"), [], []
    for t, value in enumerate(values, start=1):
        z = weight * finite(value, "A value") + (1 - weight) * z
        points.append(z)
        reach.append(spread * math.sqrt(weight / (2 - weight) * (1 - (1 - weight) ** (2 * t))))
    outside = tuple(i for i, (p, r) in enumerate(zip(points, reach, strict=True)) if abs(p - centre) > r)
    low, high = (tuple(centre + sign * r for r in reach) for sign in (-1, 1))
    return EwmaChart(tuple(points), low, high, outside)
