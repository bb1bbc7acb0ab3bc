"""The check that costs nothing: bags emptied against feedings made.

A 50 lb bag at 10 oz is 80 feedings; a bag that is empty after 76 tells that each got 5 % too much.
"""

from __future__ import annotations

import math
from enum import StrEnum

from calibrator.science.check import Verdict
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import between, positive
from calibrator.science.stats import NORMAL_95
from calibrator.values import dataclass

BAG_U_SHARE = 0.004
"""How far a bag's weight may lie off what is printed on it, standard uncertainty: common practice, no source."""

FEEDINGS_U_SHARE = 0.003
"""Feedings miscounted, spilled or left, standard uncertainty as a share: common practice, no source."""

OPEN_END_BAGS = 0.5
"""A begun bag at an end may hold so much more or less than nothing, rectangular."""

DRIFT_SHARE = 0.02
_SEEN = NORMAL_95 + 0.8416212335729143
MOST_DAYS = 3650


class Ends(StrEnum):
    """How the count of bags began and ended."""

    SHARP = "sharp"  # from a bag just opened to a bag just emptied
    ROUGH = "rough"  # begun bags at both ends, taken for halves


@dataclass(frozen=True)
class BagResult:
    """Powder that a feeding really got, g: mean, standard uncertainty, 95 % interval, ÷ target − 1."""

    mean_g: float
    u_g: float
    low_g: float
    high_g: float
    share: float
    verdict: Verdict
    feedings_per_bag: float
    should_be_per_bag: float

    @property
    def off_target(self) -> bool:
        """Whether the interval leaves out the target: surely more or less than that, by however little."""
        return not self.low_g <= self.mean_g / (1 + self.share) <= self.high_g


def _u_share(bags: float, ends: Ends) -> float:
    """Standard uncertainty of bags ÷ feedings, as a share: bag weights vary independently, the rest not."""
    opened = OPEN_END_BAGS / math.sqrt(3.0) * math.sqrt(2.0) / bags if ends is Ends.ROUGH else 0.0
    return math.hypot(BAG_U_SHARE / math.sqrt(bags), FEEDINGS_U_SHARE, opened)


def bag_count(
    bags: float, bag_mass_g: float, feedings: float, target_g: float, tolerance_share: float, ends: Ends = Ends.SHARP
) -> BagResult:
    """The mean powder of a feeding: bags · their weight ÷ feedings (of one calf each).

    `bags` is 0.5 or more. Inside when the 95 % interval lies within the tolerance, thin or strong when it
    lies beyond. Raises CannotCompute for impossible counts and for a mean that no feeding can have.
    """
    if positive(bags, "The number of bags") < 0.5:
        raise CannotCompute("Count one bag at least.")
    powder = bags * positive(bag_mass_g, "The weight of a bag")
    target = positive(target_g, "The powder of a feeding")
    mean = powder / positive(feedings, "The number of feedings")
    share = mean / target - 1
    between(share, -0.5, 1.0, "The powder that each feeding got", "half and twice the target; check bags and feedings")
    u = _u_share(bags, ends) * mean
    low, high = mean - NORMAL_95 * u, mean + NORMAL_95 * u
    verdict = _verdict(low / target - 1, high / target - 1, positive(tolerance_share, "The tolerance"))
    return BagResult(mean, u, low, high, share, verdict, bag_mass_g / mean, bag_mass_g / target)


def _verdict(low: float, high: float, tolerance: float) -> Verdict:
    if low > tolerance:
        return Verdict.STRONG
    if high < -tolerance:
        return Verdict.THIN
    return Verdict.INSIDE if low >= -tolerance and high <= tolerance else Verdict.CANNOT_TELL


def days_until_seen(
    feedings_per_day: float,
    target_g: float,
    bag_mass_g: float,
    ends: Ends = Ends.SHARP,
    drift_share: float = DRIFT_SHARE,
) -> int | None:
    """Whole days of counting until a drift of `drift_share` would show in four cases out of five; None where
    it never would.

    It shows when the 95 % interval leaves out the target, for which the drift must be 1.96 + 0.84 standard
    uncertainties (NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.2.2). With sharp ends at least one
    whole bag is needed. Raises CannotCompute for figures not above zero.
    """
    daily = positive(feedings_per_day, "The feedings a day") * positive(target_g, "The powder of a feeding")
    drift = positive(drift_share, "The drift")
    per_day = daily / positive(bag_mass_g, "The weight of a bag")
    for days in range(1, MOST_DAYS + 1):
        bags = days * per_day if ends is Ends.ROUGH else float(math.floor(days * per_day + 1e-9))
        if bags >= 1 and _SEEN * _u_share(bags, ends) <= drift:
            return days
    return None
