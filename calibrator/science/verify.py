"""Is the drawn line right? Fills to it against the target, and the line that they call for."""

from __future__ import annotations

import math
from collections.abc import Sequence
from enum import StrEnum

from calibrator.model import Shape
from calibrator.science.advice import MOST_MORE, plan
from calibrator.science.guard import positive
from calibrator.science.line import Line, fill_line, fraction_at
from calibrator.science.nested import Weighed
from calibrator.science.scale import ScaleFacts
from calibrator.science.scoop import wall_length_mm
from calibrator.science.spread import BagHistory
from calibrator.science.stats import expanded, two_sided_t
from calibrator.science.steps import to_step
from calibrator.science.weighing import LevelResult, level_result
from calibrator.values import dataclass

JUDGED_LEVEL = 0.95
"""The interval that decides is the one that screen and paper show: two one-sided tests at 2.5 % each. Acceptance only
where the whole interval is inside is a decision rule with guard bands of JCGM 106:2012 (clause 8.3, from memory)."""


class LineVerdict(StrEnum):
    """What fills to the line say of it."""

    ON_TARGET = "on_target"
    MOVE = "move"
    AS_NEAR_AS_RULED = "as_near_as_ruled"  # outside the tolerance, yet no division of the ruler is nearer
    WEIGH_MORE = "weigh_more"


@dataclass(frozen=True)
class LineCheck:
    """Fills to the line against the target. `mean_g` and its 95 % interval are of the whole feeding.

    `result` is that of the scoopful to the line alone. On target: fills and bags are as many as planned
    (`Outlook.may_stop`), and the whole interval lies within target ± `tolerance_g`. Move: it does not, it leaves out
    the target, and the ruler's division nearest to `next_line` brings a feeding nearer. Outside the tolerance without
    such a division: as near as ruled. Else weigh more: the interval reaches over a limit of the tolerance.
    `next_line` is the line that these fills call for, `moved_g` what a feeding to the ruler's division nearest to it
    would weigh, `moved_half_g` half its 95 % interval; `within_reach` is False where more fills can hardly tell.
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
    moved_g: float
    moved_half_g: float
    result: LevelResult
    tolerance_g: float
    within_reach: bool = True

    @property
    def is_inside(self) -> bool:
        """Does the mean lie within the tolerance, sure or not?"""
        return abs(self.mean_g - self.next_line.target_g) <= self.tolerance_g

    @property
    def next_reach(self) -> tuple[float, float]:
        """Half-width of the 95 % interval of `next_line`, in g of the feeding and in mm down the wall.

        It rests on the fills to the line and is no narrower than theirs: as large a share of the feeding.
        """
        half_g = (self.high_g - self.low_g) / 2 * self.next_line.target_g / self.mean_g
        return half_g, half_g / self.next_line.grams_per_mm

    @property
    def share(self) -> float:
        """How far a feeding's mean is from the target: mean ÷ target − 1."""
        return self.mean_g / self.next_line.target_g - 1

    @property
    def before_g(self) -> float:
        """What the full scoops before the one to the line weigh, g."""
        return self.mean_g - self.next_line.to_line * self.result.mean_g

    def of_fill_g(self, feeding_g: float) -> float:
        """What a weight of a feeding leaves for one scoopful to the line, g."""
        return (feeding_g - self.before_g) / self.next_line.to_line

    @property
    def bag_reach_g(self) -> float:
        """How far a feeding out of one bag may lie from the lot's mean at 95 %, g, normal."""
        return two_sided_t(JUDGED_LEVEL, math.inf) * self.result.bag_sd_g / self.result.mean_g * self.mean_g

    @property
    def bags_apart(self) -> bool:
        """May a feeding out of one bag miss the tolerance although the lot's mean is right?"""
        return self.bag_reach_g > self.tolerance_g


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

    def half_width_g(self, level: float) -> float:
        return expanded(self.parts, level)

    def interval(self, level: float) -> tuple[float, float]:
        half = self.half_width_g(level)
        return self.mean_g - half, self.mean_g + half


def _feeding(level: LevelResult, to_mark: LevelResult, full_scoops: int, to_line: float) -> Feeding:
    """Full scoops plus those to the line. Both come from the lot's bags, so like parts are added outright.

    `to_line` is no whole number for a line elsewhere: so many times as much as to the line that was filled to.
    """
    parts = tuple(
        (full_scoops * of_level + to_line * of_mark, df)
        for (of_level, _), (of_mark, df) in zip(level.parts, to_mark.parts, strict=True)
    )
    return Feeding(full_scoops * level.mean_g + to_line * to_mark.mean_g, parts)


def inside(interval: tuple[float, float], centre: float, reach: float) -> bool:
    """Does an interval lie within centre ± reach?"""
    return centre - reach <= interval[0] and interval[1] <= centre + reach


def _verdict(feeding: Feeding, moved_g: float, planned: bool, target_g: float, tolerance_g: float) -> LineVerdict:
    low, high = feeding.interval(JUDGED_LEVEL)
    if inside((low, high), target_g, tolerance_g):
        return LineVerdict.ON_TARGET if planned else LineVerdict.WEIGH_MORE
    left_out = not low <= target_g <= high
    if left_out and abs(moved_g - target_g) < abs(feeding.mean_g - target_g):
        return LineVerdict.MOVE
    if high < target_g - tolerance_g or low > target_g + tolerance_g:
        return LineVerdict.AS_NEAR_AS_RULED
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
    *,
    to_line: int = 1,
    bags_there: int | None = None,
    ruler_step_mm: float = 0.0,
) -> LineCheck:
    """Judge the drawn line by fills to it (one scoopful to the line each, without the full scoops before it). A feeding
    is `full_scoops` level ones and one to the line, or `to_line` equal ones to it.

    `bags_there` is how many bags the lot has, where that is known; `ruler_step_mm` the division of the ruler by which
    lines are drawn (0: any line can be). Two one-sided tests: Schuirmann 1987, J. Pharmacokinet. Biopharm. 15:657.
    Raises CannotCompute for no fills, an impossible line, target or tolerance.
    """
    positive(target_g, "The target weight")
    tolerance_g = positive(tolerance_share, "The tolerance") * target_g
    fraction = fraction_at(shape, line_down_wall_mm)
    result = level_result(to_mark, scale, history=history, tolerance_g=tolerance_g / to_line, bags_there=bags_there)
    feeding = _feeding(level, result, full_scoops, to_line)
    settling = result.mean_g / (level.mean_g * fraction)
    next_line = _next_line(shape, level, feeding, settling, target_g, to_line)
    ratio = fraction_at(shape, on_ruler(shape, next_line.down_wall_mm, ruler_step_mm)) / fraction
    moved = _feeding(level, result, full_scoops, ratio * to_line)
    planned = result.outlook.may_stop(result.bags, result.fills)
    verdict = _verdict(feeding, moved.mean_g, planned, target_g, tolerance_g)
    low, high = feeding.interval(JUDGED_LEVEL)
    more, other, reach = 0, False, True
    if verdict == LineVerdict.WEIGH_MORE:
        fixed_g = full_scoops * level.half_width_g
        more, other, reach = _more(feeding, result, to_line, fixed_g, target_g, tolerance_g)
    return LineCheck(
        mean_g=feeding.mean_g,
        u_g=feeding.u_g,
        low_g=low,
        high_g=high,
        settling_factor=settling,
        settling_u=settling * _ratio_u_share(level, result),
        verdict=verdict,
        more_fills=more,
        from_other_bags=other,
        next_line=next_line,
        moved_g=moved.mean_g,
        moved_half_g=moved.half_width_g(JUDGED_LEVEL),
        result=result,
        tolerance_g=tolerance_g,
        within_reach=reach,
    )


def on_ruler(shape: Shape, down_wall_mm: float, step_mm: float) -> float:
    """The ruler's division nearest to a line, mm down the wall; the line itself where the scoop does not reach so
    far, or for a step of 0."""
    there = to_step(down_wall_mm, max(0.0, step_mm))
    return there if there < wall_length_mm(shape) else down_wall_mm


def _more(
    feeding: Feeding, result: LevelResult, to_line: int, fixed_g: float, target_g: float, tolerance_g: float
) -> tuple[int, bool, bool]:
    """Fills to the line until the interval can be expected to lie within the tolerance or to leave out the target,
    whichever is sooner; whether from other bags, and whether that is within reach. `fixed_g` is what the full scoops
    add to the half-width."""
    off = abs(feeding.mean_g - target_g)
    return fills_until(result, (max(off, tolerance_g - off) ** 2 - fixed_g**2) / (to_line * result.mean_g) ** 2)


def fills_until(result: LevelResult, half_share2: float) -> tuple[int, bool, bool]:
    """More fills until the mean is known to a half-width, told as its share squared; whether from other bags, and
    whether that is within reach. Less than 0 is left where other doubts take up all the room."""
    if half_share2 <= 0:
        return MOST_MORE, True, False
    counts = [bag.scoopfuls for bag in result.bag_means]
    more, other = plan(result.outlook, counts, math.sqrt(half_share2))
    return more or MOST_MORE, other, more is not None


def _next_line(
    shape: Shape, level: LevelResult, feeding: Feeding, settling: float, target_g: float, to_line: int
) -> Line:
    """The line from the density that the fills to the line showed; its doubt is that of those fills."""
    u_share = feeding.u_g / feeding.mean_g
    return fill_line(shape, level.mean_g, u_share * level.mean_g, target_g, settling, to_line=to_line)
