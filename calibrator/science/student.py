"""Student's t without a library: every page needs it, and scipy costs more than all the rest of the first page.

Up to a thousand degrees of freedom the tail is an incomplete beta function (Abramowitz and Stegun 1964, 26.7.1,
by the continued fraction 26.5.8), inverted by Newton's steps between bounds; above, the quantile is
expanded about the normal one (26.7.5). Checked against scipy in tests/outside.
"""

from __future__ import annotations

import math
from functools import lru_cache
from statistics import NormalDist

_MANY = 1000.0
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


def _exceeded(t: float, df: float) -> float:
    """The share of Student's t above t ≥ 0."""
    square = t * t
    return _beta(df / (df + square), square / (df + square), df / 2, 0.5) / 2


def _beta(x: float, rest: float, a: float, b: float) -> float:
    """The incomplete beta function's ratio at x; `rest` is 1 − x, told apart so that none of it is lost."""
    if x > (a + 1) / (a + b + 2):
        return 1.0 - _beta(rest, x, b, a)
    if x == 0.0:
        return 0.0
    scale = math.lgamma(a + b) - math.lgamma(a) - math.lgamma(b) + a * math.log(x) + b * math.log(rest)
    return math.exp(scale) * _fraction(x, a, b) / a


def _fraction(x: float, a: float, b: float) -> float:
    """The continued fraction 26.5.8, from the front (Lentz 1976, Applied Optics 15:668)."""
    value = upper = 1.0
    lower = 0.0
    for m in range(_STEPS):
        for part in _parts(x, a, b, m):
            lower = 1.0 / _apart(1.0 + part * lower)
            upper = _apart(1.0 + part / upper)
            value *= upper * lower
        if abs(upper * lower - 1.0) < 2e-16:
            break
    return 1.0 / value


def _parts(x: float, a: float, b: float, m: int) -> tuple[float, float]:
    odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1))
    n = m + 1
    return odd, n * (b - n) * x / ((a + 2 * n - 1) * (a + 2 * n))


def _apart(value: float) -> float:
    return value if abs(value) > _TINY else _TINY
