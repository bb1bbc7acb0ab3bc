"""The settling factor to reckon with before any fill to the line of this lot was weighed."""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import reduce
from typing import NamedTuple

from calibrator.science.guard import positive
from calibrator.values import dataclass

ASSUMED_FACTOR = 1.0
ASSUMED_U = 0.02
"""Without any experience the shake is taken to settle nothing, within 2 %, and from one lot to the next to settle as
before within the same: common practice, no source."""
LEAST_LOTS = 3
"""Of fewer lots the scatter says too little about itself: t of one degree of freedom is 12.7."""


@dataclass(frozen=True)
class Settling:
    """A settling factor, its standard uncertainty for the lot in hand with its degrees of freedom, and from how many
    lots it comes."""

    factor: float
    u: float
    lots: int = 0
    degrees_of_freedom: float = math.inf


STRUCK = Settling(ASSUMED_FACTOR, 0.0)
"""Of scoopfuls struck level: nothing settles beyond what was weighed."""


def signed_off(factor: float, u: float) -> Settling:
    """The factor that a sign-off keeps: a `u` of 0 is one that was only assumed."""
    return Settling(factor, u or ASSUMED_U)


class Settled(NamedTuple):
    """The settling factors of the lots so far: how many, their mean, their sum of squares about it, the least."""

    lots: int = 0
    mean: float = 0.0
    squares: float = 0.0
    least: float = math.inf

    def joined(self, factor: float) -> Settled:
        """With one more lot: Welford 1962, Technometrics 4:419."""
        off, lots = factor - self.mean, self.lots + 1
        mean = self.mean + off / lots
        return Settled(lots, mean, self.squares + off * (factor - mean), min(self.least, factor))

    def next(self) -> Settling:
        """What the factor will be for the next lot.

        The mean of the earlier factors with the doubt of a further one, s·√(1 + 1/n) with n − 1 degrees of freedom
        (Hahn and Meeker 1991, Statistical Intervals, 4.7); of fewer than `LEAST_LOTS` with the assumed scatter in
        place of s; from none the assumption. Raises CannotCompute where a factor was not above zero.
        """
        if not self.lots:
            return Settling(ASSUMED_FACTOR, ASSUMED_U)
        for factor in (self.least, self.mean):
            positive(factor, "A settling factor")
        for_one = 1 + 1 / self.lots
        if self.lots < LEAST_LOTS:
            return Settling(self.mean, ASSUMED_U * math.sqrt(for_one / 2), self.lots)
        freedom = self.lots - 1
        return Settling(self.mean, math.sqrt(self.squares / freedom * for_one), self.lots, freedom)


def settling_before(earlier: Sequence[float]) -> Settling:
    """`Settled.next` after these factors. Raises CannotCompute for one not above zero."""
    return reduce(Settled.joined, earlier, Settled()).next()
