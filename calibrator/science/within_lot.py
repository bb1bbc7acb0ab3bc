"""Inside one lot: its bags in the order in which they were opened, and whether they drifted or jumped.

A jump may be caking, a bag of another run under the same number, or another scoop; figures alone do not tell
which. Values are g of one scoopful struck level.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from enum import StrEnum

import numpy as np

from calibrator.model import FillWay
from calibrator.science.charts import running_means_from_first
from calibrator.science.compare import t_tails
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import positive
from calibrator.science.least_squares import fit
from calibrator.science.stats import mean_of, two_sided_t
from calibrator.values import dataclass

LEAST_BAGS = 4
LIMIT_LEVEL = 0.9973
FOUND_P = 0.02
"""Beyond this chance a jump or drift is told: each lot is looked at once a bag, and a false alarm costs a walk
to the store. Common practice, no source."""


class Inside(StrEnum):
    """What the bags of a lot do."""

    STEADY = "steady"
    JUMP = "jump"
    DRIFT = "drift"
    ONE_OFF = "one_off"  # one bag alone is beyond the limits
    TOO_FEW = "too_few"


@dataclass(frozen=True)
class Opened:
    """One bag as it was opened: mean g of one scoopful, and of how many."""

    mass_g: float
    scoopfuls: int = 1


def as_level_g(mass_g: float, way: FillWay, level_mean_g: float, mark_mass_g: float | None) -> float | None:
    """A fill as g of a level scoopful: one to the line in proportion to what the line was signed off to deliver.

    None where it cannot be compared: to a line that was not signed off, or tapped.
    """
    if way is FillWay.LEVEL:
        return mass_g
    if way is not FillWay.TO_MARK or not mark_mass_g:
        return None
    return mass_g / mark_mass_g * level_mean_g


@dataclass(frozen=True)
class InsideLot:
    """The lot's bags about the mean that was signed off, with limits for each bag, g.

    `share` is the step at the jump (later ÷ earlier − 1), the drift over all bags, or how far the one bag is off;
    `at` the first bag after the jump or the bag itself. `p` is the chance of such by chance alone. `running` is
    the running mean after each bag.
    """

    told: Inside
    centre_g: float
    low_g: tuple[float, ...]
    high_g: tuple[float, ...]
    running_g: tuple[float, ...]
    outside: tuple[int, ...]
    at: int | None = None
    share: float = 0.0
    low_share: float = 0.0
    high_share: float = 0.0
    p: float = 1.0


def inside_lot(
    bags: Sequence[Opened], centre_g: float, bag_sd_share: float, fill_sd_share: float, degrees_of_freedom: float
) -> InsideLot:
    """Judge a lot's bags in the order in which they were opened.

    The spreads are those that the farm knows (between bags, between fills of a bag), with the degrees of freedom
    behind them: the lot's own bags would hide a jump in their spread. A jump is looked for at each place, and
    its chance multiplied by their number (Bonferroni; Hawkins 1977, J. Am. Stat. Assoc. 72:180, for the test
    of the largest). Raises CannotCompute for weights or spreads that cannot be.
    """
    positive(centre_g, "The weight of a scoopful")
    values = [positive(bag.mass_g, "The weight of a scoopful") / centre_g for bag in bags]
    sds = [math.sqrt(bag_sd_share**2 + fill_sd_share**2 / bag.scoopfuls) for bag in bags]
    if not all(positive(sd, "The spread") for sd in sds):
        raise CannotCompute("The spread must be greater than zero.")
    reach = [two_sided_t(LIMIT_LEVEL, degrees_of_freedom) * sd for sd in sds]
    outside = tuple(n for n, (v, r) in enumerate(zip(values, reach, strict=True)) if abs(v - 1) > r)
    made = InsideLot(
        Inside.STEADY,
        centre_g,
        tuple(centre_g * (1 - r) for r in reach),
        tuple(centre_g * (1 + r) for r in reach),
        tuple(centre_g * (1 + off) for off in running_means_from_first([value - 1 for value in values])),
        outside,
    )
    return _told(made, values, sds, degrees_of_freedom)


def _told(made: InsideLot, values: list[float], sds: list[float], df: float) -> InsideLot:
    if len(values) < LEAST_BAGS:
        return replace(made, told=Inside.TOO_FEW)
    jump = _jump(values, sds, df)
    drift = _drift(values, sds, df)
    best = max(jump, drift, key=_strength)
    if best.p < FOUND_P and not _is_one_bag(best, made, len(values)):
        return replace(
            made, told=best.told, at=best.at, share=best.share, p=best.p,
            low_share=best.share - best.half, high_share=best.share + best.half,
        )  # fmt: skip
    if made.outside:
        at = max(made.outside, key=lambda n: abs(values[n] - 1) / sds[n])
        half = two_sided_t(0.95, df) * sds[at]
        share = values[at] - 1
        return replace(made, told=Inside.ONE_OFF, at=at, share=share, low_share=share - half, high_share=share + half)
    return made


@dataclass(frozen=True)
class _Candidate:
    told: Inside
    t: float
    p: float
    share: float
    half: float
    at: int | None = None


def _strength(candidate: _Candidate) -> float:
    return abs(candidate.t)


def _is_one_bag(best: _Candidate, made: InsideLot, count: int) -> bool:
    """A jump at the very end that one bag makes is told as that bag."""
    return best.told is Inside.JUMP and best.at == count - 1 and made.outside == (count - 1,)


def _jump(values: list[float], sds: list[float], df: float) -> _Candidate:
    found = []
    for at in range(1, len(values)):
        before, after = values[:at], values[at:]
        share = mean_of(after) / mean_of(before) - 1
        u = math.hypot(_u(sds[:at]), _u(sds[at:]))
        p = min(1.0, (len(values) - 1) * t_tails(share / u, df))
        found.append(_Candidate(Inside.JUMP, share / u, p, share, two_sided_t(0.95, df) * u, at))
    return max(found, key=_strength)


def _u(sds: Sequence[float]) -> float:
    return math.sqrt(math.fsum(sd * sd for sd in sds)) / len(sds)


def _drift(values: list[float], sds: list[float], df: float) -> _Candidate:
    place = np.arange(len(values), dtype=float)
    middle = place - place.mean()
    slope = fit(np.column_stack([np.ones_like(place), middle]), np.asarray(values)).coefficients[1]
    squares = float((middle**2).sum())
    u = math.sqrt(float((middle**2 * np.asarray(sds) ** 2).sum())) / squares
    span = len(values) - 1
    return _Candidate(Inside.DRIFT, slope / u, t_tails(slope / u, df), slope * span, two_sided_t(0.95, df) * u * span)
