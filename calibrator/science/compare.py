"""Two lots beside each other."""

from __future__ import annotations

from calibrator.science.guard import finite, not_negative
from calibrator.science.stats import two_sided_t, welch_satterthwaite
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
