"""Two lots beside each other, and density against humidity or date."""

from __future__ import annotations

import math
from collections.abc import Sequence

from calibrator.science.errors import CannotCompute
from calibrator.science.guard import finite, not_negative
from calibrator.science.stats import mean_of, two_sided_t, welch_satterthwaite
from calibrator.science.student import student_above
from calibrator.values import dataclass


def t_tails(t: float, degrees_of_freedom: float) -> float:
    """Chance of a t at least so far from zero, either way, where nothing differs."""
    return 2 * student_above(abs(t), degrees_of_freedom)


@dataclass(frozen=True)
class Difference:
    """Second − first, with its 95 % interval; `p` is the chance of one so large where they do not differ."""

    difference: float
    u: float
    degrees_of_freedom: float
    low: float
    high: float
    p: float

    @property
    def differs(self) -> bool:
        """Does the interval leave zero out?"""
        return not self.low <= 0 <= self.high


def compare(first: tuple[float, float, float], second: tuple[float, float, float]) -> Difference:
    """Welch's comparison of two means, each (mean, standard uncertainty, degrees of freedom).

    Welch 1947, Biometrika 34:28; for two plain samples u = s/√n and n − 1. Raises CannotCompute for figures
    that are no numbers or a negative uncertainty.
    """
    for mean, u, _ in (first, second):
        finite(mean, "A mean")
        not_negative(u, "The doubt in a mean")
    difference = second[0] - first[0]
    u, df = welch_satterthwaite([first[1:], second[1:]])
    half = two_sided_t(0.95, df) * u
    p = t_tails(difference / u, df) if u > 0 else float(difference == 0)
    return Difference(difference, u, df, difference - half, difference + half, p)


@dataclass(frozen=True)
class Trend:
    """A straight line by least squares: y = intercept + slope · x, with the slope's 95 % interval.

    `p` is the chance of so steep a slope where there is none.
    """

    slope: float
    slope_u: float
    slope_low: float
    slope_high: float
    intercept: float
    intercept_u: float
    residual_sd: float
    degrees_of_freedom: int
    p: float

    @property
    def seen(self) -> bool:
        """Does the interval of the slope leave zero out?"""
        return not self.slope_low <= 0 <= self.slope_high


def trend(x: Sequence[float], y: Sequence[float]) -> Trend:
    """Least squares line through three or more points. Source: NIST/SEMATECH e-Handbook, 4.1.4.1.

    Raises CannotCompute for fewer points, unequal counts, values that are no numbers, or a single x.
    """
    if len(x) != len(y) or len(x) < 3:
        raise CannotCompute("A trend needs three lots or more, each with both values.")
    xs, ys = [finite(v, "A value") for v in x], [finite(v, "A value") for v in y]
    mx, my = mean_of(xs), mean_of(ys)
    sxx = math.fsum((v - mx) ** 2 for v in xs)
    if sxx <= 1e-24 * max(1.0, mx * mx):
        raise CannotCompute("All lots have the same value here, so no trend can be told.")
    slope = math.fsum((a - mx) * (b - my) for a, b in zip(xs, ys, strict=True)) / sxx
    intercept = my - slope * mx
    df = len(xs) - 2
    rss = math.fsum((b - intercept - slope * a) ** 2 for a, b in zip(xs, ys, strict=True))
    sd = math.sqrt(rss / df)
    u = sd / math.sqrt(sxx)
    half = two_sided_t(0.95, df) * u
    p = t_tails(slope / u, df) if u > 0 else float(slope == 0)
    intercept_u = sd * math.sqrt(1 / len(xs) + mx * mx / sxx)
    return Trend(slope, u, slope - half, slope + half, intercept, intercept_u, sd, df, p)
