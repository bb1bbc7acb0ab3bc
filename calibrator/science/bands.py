"""Where a mix stands beside the strengths that are aimed at. Limits are figures to edit, not advice.

The product's label and a veterinarian decide, above all for calves under two weeks of age.
"""

from __future__ import annotations

from enum import StrEnum

from calibrator.science.errors import CannotCompute
from calibrator.science.guard import not_negative
from calibrator.values import dataclass


class Band(StrEnum):
    """Below the aim, within it, above it, or so far above that calves are at risk."""

    BELOW = "below"
    AIM = "aim"
    ABOVE = "above"
    RISK = "risk"


@dataclass(frozen=True)
class Limits:
    """The aim from `low` to `high`, and where the risk begins."""

    low: float
    high: float
    risk: float


OSMOLALITY_MOSM_PER_KG = Limits(300.0, 350.0, 400.0)
"""Aim 300–350 mOsm, diarrhoea risked from 400: common practice, no source. Whole milk is about 270–300."""

OTHER_OSMOLALITY_RISK = 600.0
"""Where other advice sees the risk begin, mOsm/kg: University of California Cooperative Extension, Tulare,
Supplementing Milk with Milk Replacer Powder (more than that only where fresh water is always there)."""

SOLIDS_SHARE = Limits(0.12, 0.15, 0.17)
"""Aim 12–15 % solids, scours risked above 17 %: Michigan State University Extension."""


def band(value: float, limits: Limits) -> Band:
    """Where `value` stands. Raises CannotCompute for a negative value or limits out of order."""
    if not 0 <= limits.low <= limits.high <= limits.risk:
        raise CannotCompute("Give the limits in order: the lowest, the highest, where the risk begins.")
    if not_negative(value, "The strength of the mix") > limits.risk:
        return Band.RISK
    if value > limits.high:
        return Band.ABOVE
    return Band.AIM if value >= limits.low else Band.BELOW
