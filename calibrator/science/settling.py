"""The settling factor to reckon with before any fill to the mark of this lot was weighed."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from statistics import fmean, stdev

from calibrator.science.guard import positive

ASSUMED_FACTOR = 1.0
ASSUMED_U = 0.02
"""Without any experience the shake is taken to settle nothing, within 2 %: common practice, no source."""


@dataclass(frozen=True)
class Settling:
    """A settling factor, its standard uncertainty for the lot in hand, and from how many lots it comes."""

    factor: float
    u: float
    lots: int


def settling_before(earlier: Sequence[float]) -> Settling:
    """What the factor will be for the next lot, going by the farm's `earlier` ones.

    The mean of the earlier factors with the doubt of a further one, s·√(1 + 1/n) (Hahn and Meeker 1991,
    Statistical Intervals, 4.7); from a single one its own value with the assumed doubt; from none the
    assumption. Raises CannotCompute for a factor not above zero.
    """
    factors = [positive(factor, "A settling factor") for factor in earlier]
    if not factors:
        return Settling(ASSUMED_FACTOR, ASSUMED_U, 0)
    if len(factors) == 1:
        return Settling(factors[0], ASSUMED_U, 1)
    return Settling(fmean(factors), stdev(factors) * math.sqrt(1 + 1 / len(factors)), len(factors))
