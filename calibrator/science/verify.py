"""Is the drawn line right? Fills to it against the target, and the line that they call for."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

from calibrator.model import Shape
from calibrator.science.advice import STOP_SHARE
from calibrator.science.guard import positive
from calibrator.science.line import Line, fill_line, fraction_at
from calibrator.science.nested import Weighed
from calibrator.science.scale import ScaleFacts
from calibrator.science.spread import BagHistory
from calibrator.science.stats import expanded
from calibrator.science.weighing import LevelResult, level_result

NEAR_SHARE = 1 / 3
"""A line whose fills lie farther from the target than this share of the tolerance is moved: a stroke of the
pen is cheaper than half a per cent of powder. Chosen with the whole procedure in tests/simulation."""


class LineVerdict(StrEnum):
    """What fills to the line say of it."""

    ON_TARGET = "on_target"
    MOVE = "move"
    WEIGH_MORE = "weigh_more"


@dataclass(frozen=True)
class LineCheck:
    """Fills to the line against the target. `mean_g` and its 90 % interval are of the whole feeding.

    `result` is that of the scoopful to the line alone. On target: two one-sided tests at 5 % find the mean
    within target ± tolerance, it is known well enough to stop (`Advice.enough`) and near the target
    (`NEAR_SHARE`). Move: known well enough but not so, or the interval leaves the target itself out. Else weigh
    more. `next_line` is the line that these fills call for.
    """

    mean_g: float
    u_g: float
    low_g: float
    high_g: float
    settling_factor: float
    settling_u: float
    verdict: LineVerdict
    more_fills: int
    from_other_bags: bool
    next_line: Line
    result: LevelResult


def _ratio_u_share(level: LevelResult, to_mark: LevelResult) -> float:
    """Relative standard uncertainty of to-mark mean ÷ level mean; what bags have in common cancels."""
    weights: dict[int, float] = {}
    for result, sign in ((to_mark, 1.0), (level, -1.0)):
        for bag in result.bag_means:
            weights[bag.bag] = weights.get(bag.bag, 0.0) + sign / len(result.bag_means)
    bags = math.fsum(w * w for w in weights.values()) * _larger(level.bag_sd_g / level.mean_g, to_mark)
    fills = math.fsum(
        (r.fill_sd_g / r.mean_g) ** 2 * math.fsum(1 / b.scoopfuls for b in r.bag_means) / len(r.bag_means) ** 2
        for r in (level, to_mark)
    )
    return math.sqrt(bags + fills)


def _larger(bag_share: float, to_mark: LevelResult) -> float:
    return max(bag_share, to_mark.bag_sd_g / to_mark.mean_g) ** 2


@dataclass(frozen=True)
class Feeding:
    """Mean weight of a feeding, g, and the independent parts of its doubt."""

    mean_g: float
    parts: tuple[tuple[float, float], ...]

    @property
    def u_g(self) -> float:
        return math.hypot(*(u for u, _ in self.parts))

    def interval(self, level: float) -> tuple[float, float]:
        half = expanded(self.parts, level)
        return self.mean_g - half, self.mean_g + half


def _feeding(level: LevelResult, to_mark: LevelResult, full_scoops: int) -> Feeding:
    """Full scoops plus one to the line. Both come from the lot's bags, so like parts are added outright."""
    parts = tuple(
        (full_scoops * of_level + of_mark, df)
        for (of_level, _), (of_mark, df) in zip(level.parts, to_mark.parts, strict=True)
    )
    return Feeding(full_scoops * level.mean_g + to_mark.mean_g, parts)


def inside(interval: tuple[float, float], centre: float, reach: float) -> bool:
    """Does an interval lie within centre ± reach?"""
    return centre - reach <= interval[0] and interval[1] <= centre + reach


def _verdict(feeding: Feeding, known: bool, target_g: float, tolerance_g: float) -> LineVerdict:
    low, high = feeding.interval(0.90)
    near = abs(feeding.mean_g - target_g) <= NEAR_SHARE * tolerance_g
    if known and near and inside((low, high), target_g, tolerance_g):
        return LineVerdict.ON_TARGET
    if known or not low <= target_g <= high:
        return LineVerdict.MOVE
    return LineVerdict.WEIGH_MORE


def check_line(
    shape: Shape,
    level: LevelResult,
    to_mark: Sequence[Weighed],
    line_down_wall_mm: float,
    target_g: float,
    tolerance_share: float,
    scale: ScaleFacts,
    history: BagHistory | None = None,
    full_scoops: int = 0,
) -> LineCheck:
    """Judge the drawn line by fills to it (one scoopful to the line each, without the full scoops before it).

    Two one-sided tests: Schuirmann 1987, J. Pharmacokinet. Biopharm. 15:657. Raises CannotCompute for no
    fills, an impossible line, target or tolerance.
    """
    positive(target_g, "The target weight")
    tolerance_g = positive(tolerance_share, "The tolerance") * target_g
    fraction = fraction_at(shape, line_down_wall_mm)
    result = level_result(to_mark, scale, history=history, tolerance_g=tolerance_g)
    feeding = _feeding(level, result, full_scoops)
    settling = result.mean_g / (level.mean_g * fraction)
    settling_u = settling * _ratio_u_share(level, result)
    known = result.advice.enough and expanded(feeding.parts) <= STOP_SHARE * tolerance_g * (1 + full_scoops)
    verdict = _verdict(feeding, known, target_g, tolerance_g)
    low, high = feeding.interval(0.90)
    open_question = verdict == LineVerdict.WEIGH_MORE
    return LineCheck(
        mean_g=feeding.mean_g,
        u_g=feeding.u_g,
        low_g=low,
        high_g=high,
        settling_factor=settling,
        settling_u=settling_u,
        verdict=verdict,
        more_fills=max(1, result.advice.more_fills) if open_question else 0,
        from_other_bags=open_question and result.advice.from_other_bags,
        next_line=_next_line(shape, level, feeding, settling, target_g),
        result=result,
    )


def _next_line(shape: Shape, level: LevelResult, feeding: Feeding, settling: float, target_g: float) -> Line:
    """The line from the density that the fills to the mark showed; its doubt is that of those fills."""
    u_share = feeding.u_g / feeding.mean_g
    return fill_line(shape, level.mean_g, u_share * level.mean_g, target_g, settling)
