"""Ordinary least squares with a few columns: a coefficient, its doubt, and whether columns help at all."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from calibrator.science.compare import t_tails
from calibrator.science.components import f_tail
from calibrator.science.errors import CannotCompute
from calibrator.science.stats import two_sided_t
from calibrator.values import dataclass

Floats = NDArray[np.float64]


@dataclass(frozen=True)
class Coefficient:
    """One coefficient with its 95 % interval; `p` is the chance of one so far from zero where there is none."""

    value: float
    u: float
    low: float
    high: float
    p: float


@dataclass(frozen=True)
class Fit:
    """A fit by least squares: the coefficients, the residual standard deviation and its degrees of freedom.

    `covariance` is that of the coefficients, `rss` the sum of squared residuals.
    """

    coefficients: tuple[float, ...]
    covariance: tuple[tuple[float, ...], ...]
    sd: float
    degrees_of_freedom: int
    rss: float

    def combination(self, weights: Sequence[float]) -> Coefficient:
        """Σ of weight · coefficient, such as one coefficient alone or a difference of two."""
        w = np.asarray(weights, dtype=float)
        value = float(w @ np.asarray(self.coefficients))
        u = math.sqrt(max(0.0, float(w @ np.asarray(self.covariance) @ w)))
        half = two_sided_t(0.95, self.degrees_of_freedom) * u
        p = t_tails(value / u, self.degrees_of_freedom) if u > 0 else float(value == 0)
        return Coefficient(value, u, value - half, value + half, p)

    def coefficient(self, place: int) -> Coefficient:
        """One coefficient by its place."""
        return self.combination([float(n == place) for n in range(len(self.coefficients))])


def fit(columns: Floats, y: Floats) -> Fit:
    """Fit y by a sum of columns (one a column of the array; a constant is a column of its own).

    Source: NIST/SEMATECH e-Handbook, 4.1.4.1. Raises CannotCompute where the columns do not tell themselves
    apart, or leave no degree of freedom.
    """
    rows, count = columns.shape
    if rows <= count:
        raise CannotCompute("There are too few lots for this comparison.")
    if not (np.isfinite(columns).all() and np.isfinite(y).all()):
        raise CannotCompute("{what} must be an ordinary number.", what="A value")
    scale = np.sqrt((columns**2).sum(axis=0))
    if not (scale > 0).all() or np.linalg.matrix_rank(columns / scale, tol=1e-9) < count:
        raise CannotCompute("These lots do not tell one cause from another.")
    found, *_ = np.linalg.lstsq(columns / scale, y, rcond=None)
    rss = float(((y - columns / scale @ found) ** 2).sum())
    df = rows - count
    inverse = np.linalg.inv((columns / scale).T @ (columns / scale)) / np.outer(scale, scale)
    covariance = tuple(tuple(float(v) for v in row) for row in inverse * (rss / df))
    return Fit(tuple(float(v) for v in found / scale), covariance, math.sqrt(rss / df), df, rss)


def joint_p(whole: Fit, without: Fit) -> float:
    """Chance that columns help so much where they do nothing: F of the fit with them against that without."""
    more = without.degrees_of_freedom - whole.degrees_of_freedom
    if whole.rss <= 1e-24 * max(1.0, without.rss):
        return 0.0
    gain = max(0.0, without.rss - whole.rss) / more
    return f_tail(gain / whole.sd**2, more, whole.degrees_of_freedom)
