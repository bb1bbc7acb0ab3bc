"""Small statistics that the rooms of `science` share."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

from calibrator.science.errors import CannotCompute
from calibrator.science.student import student_quantile

NORMAL_95 = 1.959963984540054
"""Standard deviations to each side of the mean within which 95 % of a normal spread lies: JCGM 100:2008, table G.1."""


def t_quantile(probability: float, degrees_of_freedom: float) -> float:
    """Student's t: the value not exceeded with `probability`, for any degrees of freedom above 0 (inf too).

    Raises CannotCompute for a probability outside 0 … 1 or no degrees of freedom. Source: JCGM 100:2008, G.3.
    """
    if not 0 < probability < 1:
        raise CannotCompute("A probability must lie between 0 and 1.")
    if not degrees_of_freedom > 0:
        raise CannotCompute("There are too few readings to tell how sure this is.")
    return student_quantile(probability, degrees_of_freedom)


def two_sided_t(level: float, degrees_of_freedom: float) -> float:
    """Student's t between whose minus and plus lies the share `level`, such as 0.95."""
    return t_quantile((1 + level) / 2, degrees_of_freedom)


def welch_satterthwaite(parts: Iterable[tuple[float, float]]) -> tuple[float, float]:
    """Combined standard uncertainty and effective degrees of freedom of independent parts.

    Each part is (contribution, degrees of freedom), both ≥ 0, inf allowed. No doubt at all gives (0, inf).
    Source: JCGM 100:2008, 5.1.2 and G.4.1; the degrees of freedom are not rounded down.
    """
    known = [(u * u, df) for u, df in parts]
    variance = math.fsum(v for v, _ in known)
    doubt = math.fsum(v * v / df for v, df in known if v > 0 and df < math.inf)
    return math.sqrt(variance), variance**2 / doubt if doubt > 0 else math.inf


def expanded(parts: Iterable[tuple[float, float]], level: float = 0.95) -> float:
    """Half-width at `level` of independent parts, each (standard uncertainty, degrees of freedom).

    The parts are expanded one by one by Student's t, then added in quadrature. Where a spread of two or three
    degrees of freedom meets a known doubt of like size, `welch_satterthwaite` makes intervals too narrow (they
    cover 92 % instead of 95 %; tests/simulation shows both); with one part the two are the same. The method
    is that of the confidence limits in Howe 1974, J. Am. Stat. Assoc. 69:789.
    """
    return math.sqrt(math.fsum((two_sided_t(level, df) * u) ** 2 for u, df in parts if u > 0))


def rounding_u(step: float) -> float:
    """Standard uncertainty of what is rounded to a step, d/√12: JCGM 100:2008, F.2.2.1."""
    return step / math.sqrt(12.0)


def two_roundings_u(step: float) -> float:
    """The same of a difference of two readings, such as gross and tare: d/√6."""
    return step / math.sqrt(6.0)


def mean_of(values: Sequence[float]) -> float:
    """Arithmetic mean; raises CannotCompute for none."""
    if not values:
        raise CannotCompute("There is nothing to average yet.")
    return math.fsum(values) / len(values)


def sum_of_squares(values: Sequence[float]) -> float:
    """Sum of squared deviations from the mean."""
    mean = mean_of(values)
    return math.fsum((v - mean) ** 2 for v in values)


def deletion_t(
    residual: float,
    leverage_left: float,
    sum_squares: float,
    degrees_of_freedom: float,
    least_variance: float,
) -> float:
    """How many standard deviations a residual is off, that residual itself left out of the deviation.

    `leverage_left` is the residual's variance per unit variance (1 − 1/n in a group of n), `least_variance`
    what the others are taken to vary by at least. The result is Student's t with one degree of freedom less;
    inf when the others do not differ at all. Source: Cook and Weisberg 1982, Residuals and Influence in
    Regression, 2.2.1.
    """
    own = residual * residual / leverage_left
    rest = max((sum_squares - own) / (degrees_of_freedom - 1), least_variance, 0.0)
    if own <= 1e-12 * sum_squares:
        return 0.0
    return math.sqrt(own / rest) if rest > 1e-12 * own else math.inf
