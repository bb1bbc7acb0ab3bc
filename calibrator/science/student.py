"""Student's t without a library: every page needs it, and scipy costs more than all the rest of the first page.

Up to a thousand degrees of freedom the tail is an incomplete beta function (Abramowitz and Stegun 1964, 26.7.1,
`incomplete`), inverted by Newton's steps between bounds; above, the quantile is
expanded about the normal one (26.7.5). Checked against scipy in tests/outside.
"""

from __future__ import annotations

import math
from functools import lru_cache
from statistics import NormalDist

from calibrator.science.incomplete import beta_ratio

_MANY = 1000.0
_AS_GOOD_AS_NORMAL = 1e5
_TINY = 1e-300
_STEPS = 200
_NEAR = 1e-9  # a Newton step that small leaves an error of its square


@lru_cache(maxsize=4096)
def student_quantile(probability: float, degrees_of_freedom: float) -> float:
    """The value that Student's t does not exceed with `probability` (0 … 1, both left out), any degrees above 0."""
    tail = min(probability, 1.0 - probability)
    if tail == 0.5:
        return 0.0
    if degrees_of_freedom > _MANY:
        size = _expanded(-NormalDist().inv_cdf(tail), degrees_of_freedom)
    else:
        size = _upper(tail, degrees_of_freedom)
    return math.copysign(size, probability - 0.5)


def _expanded(z: float, df: float) -> float:
    """26.7.5: the fifth term is below 1e-12 from a thousand degrees of freedom on."""
    z2 = z * z
    first = (z2 + 1) * z / 4
    second = ((5 * z2 + 16) * z2 + 3) * z / 96
    third = (((3 * z2 + 19) * z2 + 17) * z2 - 15) * z / 384
    fourth = ((((79 * z2 + 776) * z2 + 1482) * z2 - 1920) * z2 - 945) * z / 92160
    return z + (first + (second + (third + fourth / df) / df) / df) / df


def _upper(tail: float, df: float) -> float:
    """The t ≥ 0 that is exceeded with probability `tail` < ½: Newton on the logarithm, held between bounds."""
    low, high = 0.0, math.inf
    t = max(_expanded(-NormalDist().inv_cdf(tail), max(df, 3.0)), _TINY)
    for _ in range(_STEPS):
        p = _exceeded(t, df)
        low, high = (t, high) if p > tail else (low, t)
        density = _density(t, df)
        if density == 0:
            return math.inf  # beyond what a float can tell
        step = math.log(p / tail) * p / density if p > 0 else math.inf
        if abs(step) <= _NEAR * t:
            return t + step
        t += step
        if not low < t < high:
            t = (low + high) / 2 if high < math.inf else 8 * low
    return t


def _density(t: float, df: float) -> float:
    half = df / 2
    scale = math.lgamma(half + 0.5) - math.lgamma(half) - math.log(df * math.pi) / 2
    return math.exp(scale - (half + 0.5) * math.log1p(t * t / df))


def student_above(t: float, degrees_of_freedom: float) -> float:
    """The share of Student's t above t ≥ 0; with very many degrees by the normal one, 26.7.8."""
    df = degrees_of_freedom
    if df <= _AS_GOOD_AS_NORMAL:
        return _exceeded(t, df)
    z = t * (1 - 1 / (4 * df)) / math.sqrt(1 + t * t / (2 * df)) if math.isfinite(df) else t
    return math.erfc(z / math.sqrt(2)) / 2


def _exceeded(t: float, df: float) -> float:
    square = t * t
    return beta_ratio(df / (df + square), square / (df + square), df / 2, 0.5) / 2
