"""The control chart of a season's lots: each kind of powder about its own middle, limits by each lot's own doubt.

Shares throughout: a lot's density ÷ the middle of its kind − 1, in logarithms.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise

from calibrator.model import SeasonLot
from calibrator.science.charts import D2_OF_TWO, D4_OF_TWO, LIMIT_SD, RUN_LENGTH
from calibrator.science.lot_kinds import by_kind, log_density, weighing_u_share
from calibrator.science.stats import mean_of

EWMA_WEIGHT = 0.3


class Rule(StrEnum):
    """Why a lot is marked."""

    BEYOND = "beyond"  # outside its limits
    STEP = "step"  # farther from the lot before than lots are from each other
    RUN = "run"  # the eighth or later in a row on one side of the middle
    DRIFT = "drift"  # the running mean is outside its limits


@dataclass(frozen=True)
class Charted:
    """One lot on the chart. `off` is its share from the middle; limits and running mean are shares too.

    `kind` numbers the kinds in the order in which they came. Limits are None where no two lots of one kind
    were ever compared.
    """

    kind: int
    middle_g_per_ml: float
    off: float
    reach: float | None
    running: float
    running_reach: float | None
    rules: tuple[Rule, ...]

    @property
    def low_g_per_ml(self) -> float | None:
        return None if self.reach is None else self.middle_g_per_ml * math.exp(-self.reach)

    @property
    def high_g_per_ml(self) -> float | None:
        return None if self.reach is None else self.middle_g_per_ml * math.exp(self.reach)

    @property
    def running_g_per_ml(self) -> float:
        return self.middle_g_per_ml * math.exp(self.running)


@dataclass(frozen=True)
class LotChart:
    """The lots in the order given. `lot_sd` is the spread between lots of one kind beyond what weighing explains,
    as a share; None where it cannot be told."""

    lots: tuple[Charted, ...]
    lot_sd: float | None


def lot_chart(lots: Sequence[SeasonLot]) -> LotChart:
    """Individuals chart and running mean of lots in their order.

    As `charts.individuals_chart` (Montgomery, Introduction to Statistical Quality Control, 6.4) and
    `charts.ewma_chart` (NIST/SEMATECH e-Handbook, 6.3.2.4), with two additions. The moving ranges are taken
    within kinds and pooled, so that another product does not widen the limits. Of the spread that they show,
    the mean variance of weighing is taken off and each lot's own put in its place, so that a lot known less
    well has wider limits; where all lots are known alike the charts are the plain ones.
    """
    logs = [log_density(lot) for lot in lots]
    us = [weighing_u_share(lot) for lot in lots]
    groups = list(by_kind(lots).values())
    between2 = _between2(logs, us, groups)
    charted: list[Charted | None] = [None] * len(lots)
    for kind, places in enumerate(groups):
        own = _of_kind(kind, [logs[p] for p in places], [us[p] for p in places], between2)
        for place, one in zip(places, own, strict=True):
            charted[place] = one
    return LotChart(tuple(one for one in charted if one is not None), None if between2 is None else math.sqrt(between2))


def _between2(logs: Sequence[float], us: Sequence[float], groups: Sequence[Sequence[int]]) -> float | None:
    """Variance between lots of one kind, that of weighing taken off."""
    pairs = [pair for places in groups for pair in pairwise(places)]
    if not pairs:
        return None
    sd = mean_of([abs(logs[b] - logs[a]) for a, b in pairs]) / D2_OF_TWO
    return max(0.0, sd * sd - mean_of([(us[a] ** 2 + us[b] ** 2) / 2 for a, b in pairs]))


def _of_kind(kind: int, logs: list[float], us: list[float], between2: float | None) -> list[Charted]:
    middle = mean_of(logs)
    offs = [value - middle for value in logs]
    running, variance, length, side = 0.0, 0.0, 0, 0.0
    found = []
    for n, (off, u) in enumerate(zip(offs, us, strict=True)):
        own2 = (between2 or 0.0) + u * u
        running = EWMA_WEIGHT * off + (1 - EWMA_WEIGHT) * running
        variance = EWMA_WEIGHT**2 * own2 + (1 - EWMA_WEIGHT) ** 2 * variance
        sign = math.copysign(1.0, off) if off else 0.0
        length = length + 1 if sign and sign == side else 1
        side = sign
        known = between2 is not None and len(logs) > 1
        reach = LIMIT_SD * math.sqrt(own2) if known else None
        running_reach = LIMIT_SD * math.sqrt(variance) if known else None
        rules = []
        if reach is not None and running_reach is not None:
            before = (abs(off - offs[n - 1]), us[n - 1]) if n else (0.0, u)
            step_reach = D4_OF_TWO * D2_OF_TWO * math.sqrt((between2 or 0.0) + (u * u + before[1] ** 2) / 2)
            told = (
                (Rule.BEYOND, abs(off) > reach),
                (Rule.STEP, before[0] > step_reach),
                (Rule.RUN, bool(sign) and length >= RUN_LENGTH),
                (Rule.DRIFT, abs(running) > running_reach),
            )
            rules = [rule for rule, fires in told if fires]
        found.append(Charted(kind, math.exp(middle), off, reach, running, running_reach, tuple(rules)))
    return found
