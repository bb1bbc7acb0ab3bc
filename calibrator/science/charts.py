"""What control charts share: limits, steps, runs, and the running mean of lots, of bags and of checks of the mix."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import accumulate

D2_OF_TWO = 2 / math.sqrt(math.pi)
"""Mean range of two values ÷ standard deviation, d2 = 1.128."""
D4_OF_TWO = 1 + 3 * math.sqrt(1 - 2 / math.pi) / math.sqrt(2 / math.pi)
"""Upper limit of the moving range ÷ its mean, D4 = 3.267."""
LIMIT_SD = 3.0
RUN_LENGTH = 8
EWMA_WEIGHT = 0.3


def next_running_mean(before: float, value: float) -> float:
    """The exponentially weighted moving average after one more value, zₜ = λ·xₜ + (1 − λ)·zₜ₋₁, see below."""
    return EWMA_WEIGHT * value + (1 - EWMA_WEIGHT) * before


def running_means(values: Sequence[float], middle: float) -> list[float]:
    """The exponentially weighted moving average after each value, begun at the middle of the chart.

    zₜ = λ·xₜ + (1 − λ)·zₜ₋₁: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4.
    """
    return list(accumulate(values, next_running_mean, initial=middle))[1:]


def running_reaches(variances: Sequence[float]) -> list[float]:
    """How far from its middle that average lies at most, by chance, after each value of such a variance.

    L·√Σ λ²·(1 − λ)²⁽ᵗ⁻ⁱ⁾·sᵢ²; of values alike it is `running_reach`.
    """

    def of_mean(before: float, variance: float) -> float:
        return EWMA_WEIGHT**2 * variance + (1 - EWMA_WEIGHT) ** 2 * before

    return [LIMIT_SD * math.sqrt(variance) for variance in accumulate(variances, of_mean, initial=0.0)][1:]


def running_reach(sd: float, count: int) -> float:
    """The same after `count` values of one standard deviation: L·s·√(λ/(2 − λ)·(1 − (1 − λ)²ᵗ)), the same place."""
    return LIMIT_SD * sd * math.sqrt(EWMA_WEIGHT / (2 - EWMA_WEIGHT) * (1 - (1 - EWMA_WEIGHT) ** (2 * count)))


def weight_so_far(count: int) -> float:
    """What the first `count` values weigh in that average, as a share; the rest is the middle's, 0.7, 0.49 …"""
    return 1 - (1 - EWMA_WEIGHT) ** count


def weights_so_far(count: int) -> list[float]:
    """That share after each of so many values.

    Divided by it, the average of values about a middle of 0 begins at its first value. Its limits divided likewise, the
    same averages lie beyond them.
    """
    return [weight_so_far(told) for told in range(1, count + 1)]


def running_means_from_first(offs: Sequence[float]) -> list[float]:
    """The average after each value about a middle of 0, begun at the first value in place of the middle.

    Σ (1 − λ)ᵗ⁻ⁱ·xᵢ ÷ Σ (1 − λ)ᵗ⁻ⁱ, the weighted mean of the values themselves: pandas, `ewm(adjust=True)`.
    """
    return [mean / weight for mean, weight in zip(running_means(offs, 0.0), weights_so_far(len(offs)), strict=True)]


def newest_weight(count: int) -> float:
    """What the last of so many values (one or more) weighs in the average that begins at the first: 1 … 0.3."""
    return EWMA_WEIGHT / weight_so_far(count)
