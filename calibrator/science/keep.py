"""Does an old line still do for a new lot? Keep it, move it, or weigh more level fills to tell."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from enum import StrEnum
from itertools import takewhile

from calibrator.model import Fill, FillWay, Shape
from calibrator.science.guard import not_negative, positive
from calibrator.science.line import checked_settling, fraction_at, tolerance_band, weighed_to_line
from calibrator.science.settling import Settling
from calibrator.science.stats import two_roundings_u, two_sided_t
from calibrator.science.verify import Feeding, LineVerdict, fills_until, inside
from calibrator.science.weighing import LevelResult
from calibrator.values import dataclass

VERDICT_LEVEL = 0.985
"""The verdict is looked at anew after each fill, which gives chance more than one try; at this level it is wrong
in less than 3 % of the worst cases, stopping included (tests/simulation)."""

_AS_95 = 0.78  # plans reckon with half-widths at 95 %: about this share of those at VERDICT_LEVEL


class OldLineVerdict(StrEnum):
    """What to do with the line found on the scoop."""

    KEEP = "keep"
    MOVE = "move"
    WEIGH_MORE = "weigh_more"


FOR_OLD_LINE = {
    LineVerdict.ON_TARGET: OldLineVerdict.KEEP,
    LineVerdict.MOVE: OldLineVerdict.MOVE,
    LineVerdict.AS_NEAR_AS_RULED: OldLineVerdict.KEEP,
    LineVerdict.WEIGH_MORE: OldLineVerdict.WEIGH_MORE,
}
"""What fills to a line that is there already say of keeping it."""


@dataclass(frozen=True)
class OldLine:
    """What a feeding with the old line would weigh from this lot, with its 95 % interval, g.

    `share` is how far that is from the target (delivers ÷ target − 1). KEEP when the interval at `VERDICT_LEVEL`
    lies inside target ± tolerance, MOVE when outside, else WEIGH_MORE, with how many more level fills;
    `within_reach` is False where the answer lies so near the edge that fills alone can hardly give it. `by_level` is
    the verdict of the level fills alone: where it is another, only the settling is not known well enough.
    `full_scoops` go before the one to the line, or `to_line` equal ones go to it.
    """

    delivers_g: float
    u_g: float
    low_g: float
    high_g: float
    share: float
    verdict: OldLineVerdict
    more_fills: int
    from_other_bags: bool
    within_reach: bool = True
    by_level: OldLineVerdict = OldLineVerdict.WEIGH_MORE
    full_scoops: int = 0
    to_line: int = 1

    def fill_g(self, level_mean_g: float) -> float:
        """What one of its scoopfuls to the line weighs, g, where a level one weighs `level_mean_g`."""
        return (self.delivers_g - self.full_scoops * level_mean_g) / self.to_line


@dataclass(frozen=True)
class OneBag:
    """A feeding out of one bag, by one fill from it: its weight, g, how far that is from the target
    (weight ÷ target − 1), and whether it lies within target ± tolerance. `coarse_g` is 0 but for a scale too coarse to
    tell that, whose steps may have the weight off so far, g: `within` then is what lies no farther out than so much."""

    feeding_g: float
    share: float
    within: bool
    coarse_g: float = 0.0


def one_bag(feeding_g: float, target_g: float, tolerance_share: float, step_g: float = 0.0) -> OneBag:
    """What one fill says of the bag in hand, and of no other. `step_g` is what one step of the display makes of the
    feeding: where two standard deviations of its roundings, empty and full, are more than the tolerance
    (`smallest_net_weight_g`), the steps alone would accuse a bag. Raises CannotCompute unless the others are above 0.
    """
    low, high = tolerance_band(target_g, tolerance_share)
    reach_g = 2 * two_roundings_u(not_negative(step_g, "The step of the scale's display"))
    coarse_g = reach_g if reach_g > tolerance_share * target_g else 0.0
    within = low - coarse_g <= positive(feeding_g, "The weight") <= high + coarse_g
    return OneBag(feeding_g, feeding_g / target_g - 1, within, coarse_g)


def fits_line(fill_g: float, shape: Shape, level: LevelResult, settling: Settling, down_wall_mm: float) -> bool:
    """Whether one scoopful weighs what this lot weighs filled to a line, as near as single scoopfuls lie (95 %).

    Raises CannotCompute for an impossible line or factor.
    """
    wanted = feeding_to_line(shape, level.mean_g, (), settling, down_wall_mm)
    low, high = wanted.interval(0.95)
    of_one = wanted.mean_g * (level.next_high_g - level.next_low_g) / (2 * level.mean_g)
    return abs(positive(fill_g, "The weight") - wanted.mean_g) <= math.hypot((high - low) / 2, of_one)


def feeding_of_fill_g(
    fill: Fill, shape: Shape, level_mean_g: float, settling_factor: float, down_wall_mm: float, full_scoops: int
) -> float:
    """What one fill makes a feeding weigh, g: `full_scoops` level ones and one to the line, mm down the wall.

    A fill to a line stands for itself, one to another line by the volumes; a level one stands for every scoopful of the
    feeding, settled to the line. Raises CannotCompute for an impossible line or factor.
    """
    if fill.way is FillWay.TO_MARK:
        (last,) = weighed_to_line([replace(fill, line_mm=fill.line_mm or down_wall_mm)], shape, down_wall_mm)
        return full_scoops * level_mean_g + last.mass_g
    settling = Settling(settling_factor, 0.0)
    return feeding_to_line(shape, fill.mass_g, (), settling, down_wall_mm, full_scoops=full_scoops).mean_g


def off_in_row(bags: Sequence[OneBag]) -> int:
    """How many bags, the newest last, miss the tolerance one after the other to the side of the newest; 0 where that
    one lies within."""
    to_one_side = takewhile(lambda bag: not bag.within and bag.share * bags[-1].share > 0, reversed(bags))
    return sum(1 for _ in to_one_side)


def old_line(
    shape: Shape,
    level: LevelResult,
    settling: Settling,
    old_down_wall_mm: float,
    target_g: float,
    tolerance_share: float,
    *,
    full_scoops: int = 0,
    to_line: int = 1,
) -> OldLine:
    """Keep or move the line found on the scoop, judged by this lot's level fills.

    Raises CannotCompute for an impossible line, target, factor or tolerance.
    """
    positive(target_g, "The target weight")
    tolerance_g = positive(tolerance_share, "The tolerance") * target_g
    manner = {"full_scoops": full_scoops, "to_line": to_line}
    feeding = feeding_to_line(shape, level.mean_g, level.parts, settling, old_down_wall_mm, **manner)
    delivers = feeding.mean_g
    low, high = feeding.interval(0.95)
    judged = feeding.interval(VERDICT_LEVEL)
    verdict = old_verdict(*judged, target_g, tolerance_g)
    more, other, reach = 0, False, True
    if verdict == OldLineVerdict.WEIGH_MORE:
        more, other, reach = _more(feeding, level, target_g, tolerance_g)
    share = delivers / target_g - 1
    alone = Feeding(delivers, feeding.parts[:-1]).interval(VERDICT_LEVEL)
    by_level = old_verdict(*alone, target_g, tolerance_g)
    return OldLine(delivers, feeding.u_g, low, high, share, verdict, more, other, reach, by_level, **manner)


def manner_before(
    shape: Shape,
    level_mean_g: float,
    settling_factor: float,
    down_wall_mm: float,
    target_g: float,
    now: tuple[int, int],
) -> tuple[int, int]:
    """How a feeding was filled by an old line, most likely: as brings it nearest to the target.

    Told as level scoopfuls before it and scoopfuls to it. `now` is what the line takes that this lot calls for; a
    looser or denser lot has a scoopful more or less, or has what is left shared out where it was not, or the other way.
    """
    full, to_line = now
    beside = [(full - 1, 1), (full + 1, 1), (0, full + 1)] if to_line == 1 else [(to_line - 1, 1), (to_line - 2, 1)]

    def off_g(manner: tuple[int, int]) -> float:
        full, to_line = manner
        settling = Settling(settling_factor, 0.0)
        fed = feeding_to_line(shape, level_mean_g, (), settling, down_wall_mm, full_scoops=full, to_line=to_line)
        return abs(fed.mean_g - target_g)

    return min((now, *(manner for manner in beside if manner[0] >= 0)), key=off_g)


def feeding_to_line(
    shape: Shape,
    level_mean_g: float,
    level_parts: Sequence[tuple[float, float]],
    settling: Settling,
    down_wall_mm: float,
    *,
    full_scoops: int = 0,
    to_line: int = 1,
) -> Feeding:
    """What a feeding to a line weighs, by the level scoopful (its mean, the parts of its doubt with their degrees
    of freedom) and the settling factor.

    Raises CannotCompute for an impossible line or factor.
    """
    checked_settling(settling.factor, settling.u)
    fraction = to_line * fraction_at(shape, down_wall_mm)
    scoops = full_scoops + fraction * settling.factor
    of_level = ((scoops * u, df) for u, df in level_parts)
    of_settling = fraction * level_mean_g * settling.u, settling.degrees_of_freedom
    return Feeding(scoops * level_mean_g, (*of_level, of_settling))


def old_verdict(low: float, high: float, target_g: float, tolerance_g: float) -> OldLineVerdict:
    """Keep, move, or weigh more: what an interval at `VERDICT_LEVEL` says of a line."""
    if inside((low, high), target_g, tolerance_g):
        return OldLineVerdict.KEEP
    if high < target_g - tolerance_g or low > target_g + tolerance_g:
        return OldLineVerdict.MOVE
    return OldLineVerdict.WEIGH_MORE


def _more(feeding: Feeding, level: LevelResult, target_g: float, tolerance_g: float) -> tuple[int, bool, bool]:
    """Level fills until the interval can be expected to clear the nearer edge of the tolerance.

    What the settling adds to the doubt is not lessened by level fills, so the edge may be out of reach.
    """
    room = abs(abs(feeding.mean_g - target_g) - tolerance_g)
    settling_u, settling_df = feeding.parts[-1]
    left = room**2 - (two_sided_t(VERDICT_LEVEL, settling_df) * settling_u) ** 2
    return fills_until(level, left * (_AS_95 / feeding.mean_g) ** 2)
