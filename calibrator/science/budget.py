"""The uncertainty budget: one row for each source of doubt, as a calibration laboratory lists it."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from enum import StrEnum

from calibrator.science.stats import welch_satterthwaite
from calibrator.values import dataclass


class Source(StrEnum):
    """Where doubt comes from."""

    BAG_MEANS = "bag_means"  # bags, fills and readings together, as this lot's bag means show them
    BAGS = "bags"
    FILLS = "fills"
    READING = "reading"  # display step, full
    TARE = "tare"  # display step, empty
    SCALE_ERROR = "scale_error"
    LEVEL_MEAN = "level_mean"
    SCOOP_VOLUME = "scoop_volume"
    SETTLING = "settling"


class Distribution(StrEnum):
    """The shape that a source is taken to have."""

    NORMAL = "normal"
    RECTANGULAR = "rectangular"


@dataclass(frozen=True)
class BudgetRow:
    """One source of doubt. `contribution` = |sensitivity| · standard_uncertainty, in the result's unit.

    `share` is its part of the combined variance, 0 … 1. `assumed`: not measured but taken. `contained`: shown
    for the record, already part of another row, so its share is 0.
    """

    source: Source
    distribution: Distribution
    standard_uncertainty: float
    unit: str
    sensitivity: float
    contribution: float
    share: float
    degrees_of_freedom: float
    assumed: bool = False
    contained: bool = False


def row(
    source: Source,
    standard_uncertainty: float,
    sensitivity: float,
    degrees_of_freedom: float = math.inf,
    *,
    unit: str = "g",
    distribution: Distribution = Distribution.NORMAL,
    assumed: bool = False,
    contained: bool = False,
) -> BudgetRow:
    """A row whose share is still to be worked out by `combined`."""
    contribution = abs(sensitivity) * standard_uncertainty
    return BudgetRow(
        source, distribution, standard_uncertainty, unit, sensitivity, contribution, 0.0, degrees_of_freedom,
        assumed, contained,
    )  # fmt: skip


def with_shares(rows: Sequence[BudgetRow]) -> tuple[BudgetRow, ...]:
    """The same rows with each one's share of the combined variance."""
    variance = math.fsum(r.contribution**2 for r in rows if not r.contained)
    return tuple(r if r.contained or variance == 0 else replace(r, share=r.contribution**2 / variance) for r in rows)


def combined(rows: Sequence[BudgetRow]) -> tuple[float, float]:
    """Combined standard uncertainty of independent rows and its effective degrees of freedom (JCGM 100, G.4)."""
    return welch_satterthwaite((r.contribution, r.degrees_of_freedom) for r in rows if not r.contained)
