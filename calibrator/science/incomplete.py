"""The incomplete beta and gamma functions' ratios, of which the tails of t, F and chi-square are made.

Sources: Abramowitz and Stegun 1964, 6.5.29, 6.5.31 and 26.5.8; the fractions from the front by Lentz 1976, Applied
Optics 15:668. Checked against scipy in tests/outside.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from itertools import islice

_TINY = 1e-300
_STEPS = 20_000  # of a fraction; it takes some √a of them where a is large
_NO_MORE = 1e-15


def beta_ratio(x: float, rest: float, a: float, b: float) -> float:
    """The share of a beta distribution (a, b above 0) below x; `rest` is 1 − x, so that none of it is lost."""
    # Each half of the way is reckoned from its own end, once: at the border rounding can put x and rest both beyond.
    return 1.0 - _beta_near(rest, x, b, a) if x > (a + 1) / (a + b + 2) else _beta_near(x, rest, a, b)


def _beta_near(x: float, rest: float, a: float, b: float) -> float:
    """As `beta_ratio`, for x up to (a + 1)/(a + b + 2)."""
    if x == 0.0:
        return 0.0
    scale = math.lgamma(a + b) - math.lgamma(a) - math.lgamma(b) + a * math.log(x) + b * math.log(rest)
    return math.exp(scale) / _fraction(_of_beta(x, a, b), 1.0) / a


def gamma_ratios(x: float, a: float) -> tuple[float, float]:
    """The shares of a gamma distribution (a above 0, scale 1) below and above x ≥ 0, each exact where it is small."""
    if x == 0.0:
        return 0.0, 1.0
    scale = math.exp(a * math.log(x) - x - math.lgamma(a))
    if x < a + 1:
        below = scale * _series(x, a) / a
        return below, 1.0 - below
    above = scale / _fraction(_of_gamma(x, a), x + 1 - a, x + 1 - a)
    return 1.0 - above, above


def _series(x: float, a: float) -> float:
    """6.5.29."""
    term = total = 1.0
    for n in range(1, _STEPS):
        term *= x / (a + n)
        total += term
        if term < _NO_MORE * total / 10:
            break
    return total


def _fraction(parts: Iterator[tuple[float, float]], first: float, upper: float = 1.0) -> float:
    """first + a₁/(b₁ + a₂/(b₂ + …)), the parts given as (a, b)."""
    value, lower = first, 0.0
    for above, beneath in islice(parts, _STEPS):
        lower = 1.0 / _apart(beneath + above * lower)
        upper = _apart(beneath + above / upper)
        value *= upper * lower
        if abs(upper * lower - 1.0) < _NO_MORE:
            break
    return value


def _of_beta(x: float, a: float, b: float) -> Iterator[tuple[float, float]]:
    """26.5.8."""
    for m in range(_STEPS):
        yield -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1)), 1.0
        n = m + 1
        yield n * (b - n) * x / ((a + 2 * n - 1) * (a + 2 * n)), 1.0


def _of_gamma(x: float, a: float) -> Iterator[tuple[float, float]]:
    """6.5.31, its even part."""
    for n in range(1, _STEPS):
        yield -n * (n - a), x + 1 - a + 2 * n


def _apart(value: float) -> float:
    return value if abs(value) > _TINY else _TINY
