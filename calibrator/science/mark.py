"""The fill mark: where to draw it, whether fills to it are on target, whether an old line still does.

The scoop's volume cancels: density is weight of a struck-level scoopful ÷ rim volume, the line is where the
target weight ÷ density stands, so only the *fraction* of the rim volume matters, and a scoop whose volume is
told 3 % wrong gets the same line. The settling factor is the density when filled to the mark ÷ struck level.
Lines are told by their distance down the wall from the rim, mm along the wall.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

from calibrator.model import Shape
from calibrator.science import scoop
from calibrator.science.advice import MOST_MORE
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import not_negative, positive
from calibrator.science.nested import Weighed
from calibrator.science.scale import ScaleFacts
from calibrator.science.spread import BagHistory
from calibrator.science.stats import expanded, two_sided_t
from calibrator.science.weighing import LevelResult, level_result

NEAREST_TO_FLOOR_MM = 6.0
NEAREST_TO_RIM_MM = 3.0
"""A line nearer than this to floor or rim is hard to read: common practice, no source."""
LINE_READ_U_MM = 0.5
"""Standard uncertainty of a line drawn and measured with a ruler by hand: common practice, no source."""

_ROUNDING = 1e-9


class MarkProblem(StrEnum):
    """Why a line cannot be used."""

    TOO_NEAR_FLOOR = "too_near_floor"
    TOO_NEAR_RIM = "too_near_rim"


@dataclass(frozen=True)
class Line:
    """A fill mark: `full_scoops` struck-level scoopfuls, then one to the line.

    `volume_ml` and `height_mm` (above the floor) are of the line; `mass_g` is what the scoopful to the line
    should weigh. `mass_u_g` is the standard uncertainty of the whole feeding's weight, `u_mm` the same told
    as the line's place, `grams_per_mm` what one mm along the wall is worth.
    """

    target_g: float
    full_scoops: int
    volume_ml: float
    height_mm: float
    down_wall_mm: float
    mass_g: float
    mass_u_g: float
    u_mm: float
    grams_per_mm: float
    problem: MarkProblem | None

    @property
    def u_share(self) -> float:
        """Standard uncertainty as a share of the target."""
        return self.mass_u_g / self.target_g


def reach_95(line: Line, degrees_of_freedom: float) -> tuple[float, float]:
    """Half-width of the 95 % interval of a line, in g of the feeding and in mm down the wall."""
    t = two_sided_t(0.95, degrees_of_freedom)
    return t * line.mass_u_g, t * line.u_mm


def _checked_level(level_mean_g: float, level_u_g: float, target_g: float) -> None:
    positive(level_mean_g, "The weight of a level scoopful")
    not_negative(level_u_g, "The doubt in the weight of a level scoopful")
    positive(target_g, "The target weight")


def _checked_settling(factor: float, u: float) -> None:
    positive(factor, "The settling factor")
    not_negative(u, "The doubt in the settling factor")


def _problem(shape: Shape, height_mm: float, fraction: float) -> MarkProblem | None:
    if fraction > 1 or scoop.down_wall_mm(shape, height_mm) < NEAREST_TO_RIM_MM:
        return MarkProblem.TOO_NEAR_RIM
    return MarkProblem.TOO_NEAR_FLOOR if height_mm < NEAREST_TO_FLOOR_MM else None


def _wall_per_height(shape: Shape) -> float:
    return scoop.wall_length_mm(shape) / scoop.inner_height_mm(shape)


def fill_line(
    shape: Shape,
    level_mean_g: float,
    level_u_g: float,
    target_g: float,
    settling_factor: float = 1.0,
    settling_u: float = 0.0,
) -> Line:
    """The line at which a feeding weighs `target_g` (g, above zero).

    V(line) ÷ V(rim) = weight to the line ÷ (level weight · settling factor); uncertainty by JCGM 100:2008,
    5.1.2, with the rim volume cancelled (5.2: fully correlated). Where the powder lies so loosely that even
    the brim is too little, the line is put at the rim and told as TOO_NEAR_RIM. Raises CannotCompute for
    weights or factors that are not above zero.
    """
    _checked_level(level_mean_g, level_u_g, target_g)
    _checked_settling(settling_factor, settling_u)
    full = max(0, math.ceil(target_g / level_mean_g - _ROUNDING) - 1)
    to_line = target_g - full * level_mean_g
    fraction = to_line / (level_mean_g * settling_factor)
    rim = scoop.rim_volume_ml(shape)
    volume = min(fraction, 1.0) * rim
    height = scoop.height_mm(shape, volume)
    per_ml = level_mean_g * settling_factor / rim
    per_mm = per_ml * scoop.slope_ml_per_mm(shape, height) / _wall_per_height(shape)
    u = math.hypot(target_g / level_mean_g * level_u_g, to_line / settling_factor * settling_u)
    return Line(
        target_g=target_g,
        full_scoops=full,
        volume_ml=volume,
        height_mm=height,
        down_wall_mm=scoop.down_wall_mm(shape, height),
        mass_g=volume * per_ml,
        mass_u_g=u,
        u_mm=u / per_mm,
        grams_per_mm=per_mm,
        problem=_problem(shape, height, fraction),
    )


def tolerance_band(mass_g: float, tolerance_share: float) -> tuple[float, float]:
    """From where to where a weight may be from `mass_g`, g. Raises CannotCompute unless both are above zero."""
    reach = positive(tolerance_share, "The tolerance") * positive(mass_g, "The weight")
    return mass_g - reach, mass_g + reach


class LineVerdict(StrEnum):
    """What fills to the line say of it."""

    ON_TARGET = "on_target"
    MOVE = "move"
    WEIGH_MORE = "weigh_more"


@dataclass(frozen=True)
class LineCheck:
    """Fills to the line against the target. `mean_g` and its 90 % interval are of the whole feeding.

    `result` is that of the scoopful to the line alone. `verdict` by two one-sided tests at 5 %: on target when
    the interval lies inside target ± tolerance; else move when it leaves the target itself out, else weigh
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


def fraction_at(shape: Shape, down_wall_mm: float) -> float:
    """Volume below a line ÷ rim volume. Raises CannotCompute for a line that the scoop does not have, or one
    on the floor."""
    height = scoop.height_from_down_wall_mm(shape, down_wall_mm)
    fraction = scoop.volume_ml(shape, height) / scoop.rim_volume_ml(shape)
    if fraction <= 0:
        raise CannotCompute("A line on the floor of the scoop holds no powder.")
    return fraction


def at_line(
    fills: Sequence[Weighed], shape: Shape, from_down_wall_mm: float, to_down_wall_mm: float
) -> tuple[Weighed, ...]:
    """What fills to one line would have weighed to another: same density, in proportion to the volumes.

    Lets the fills to an earlier line count when the line is moved a little.
    """
    ratio = fraction_at(shape, to_down_wall_mm) / fraction_at(shape, from_down_wall_mm)
    return tuple(Weighed(f.bag, f.mass_g * ratio, f.scoopfuls) for f in fills)


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
class _Feeding:
    """Mean weight of a feeding, g, and the independent parts of its doubt."""

    mean_g: float
    parts: tuple[tuple[float, float], ...]

    @property
    def u_g(self) -> float:
        return math.hypot(*(u for u, _ in self.parts))

    def interval(self, level: float) -> tuple[float, float]:
        half = expanded(self.parts, level)
        return self.mean_g - half, self.mean_g + half


def _feeding(level: LevelResult, to_mark: LevelResult, full_scoops: int) -> _Feeding:
    """Full scoops plus one to the line. Both come from the lot's bags, so like parts are added outright."""
    parts = tuple(
        (full_scoops * of_level + of_mark, df)
        for (of_level, _), (of_mark, df) in zip(level.parts, to_mark.parts, strict=True)
    )
    return _Feeding(full_scoops * level.mean_g + to_mark.mean_g, parts)


def _inside(interval: tuple[float, float], centre: float, reach: float) -> bool:
    return centre - reach <= interval[0] and interval[1] <= centre + reach


def _line_verdict(feeding: _Feeding, target_g: float, tolerance_g: float) -> LineVerdict:
    low, high = feeding.interval(0.90)
    if _inside((low, high), target_g, tolerance_g):
        return LineVerdict.ON_TARGET
    return LineVerdict.WEIGH_MORE if low <= target_g <= high else LineVerdict.MOVE


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
    verdict = _line_verdict(feeding, target_g, tolerance_g)
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


def _next_line(shape: Shape, level: LevelResult, feeding: _Feeding, settling: float, target_g: float) -> Line:
    """The line from the density that the fills to the mark showed; its doubt is that of those fills."""
    u_share = feeding.u_g / feeding.mean_g
    return fill_line(shape, level.mean_g, u_share * level.mean_g, target_g, settling)


class OldLineVerdict(StrEnum):
    """What to do with the line found on the scoop."""

    KEEP = "keep"
    MOVE = "move"
    WEIGH_MORE = "weigh_more"


@dataclass(frozen=True)
class OldLine:
    """What a feeding with the old line would weigh from this lot, with its 95 % interval, g.

    `share` is how far that is from the target (delivers ÷ target − 1). KEEP when the interval lies inside
    target ± tolerance, MOVE when outside, else WEIGH_MORE, with how many more level fills.
    """

    delivers_g: float
    u_g: float
    low_g: float
    high_g: float
    share: float
    verdict: OldLineVerdict
    more_fills: int
    from_other_bags: bool


def old_line(
    shape: Shape,
    level: LevelResult,
    settling_factor: float,
    settling_u: float,
    old_down_wall_mm: float,
    target_g: float,
    tolerance_share: float,
    *,
    full_scoops: int = 0,
) -> OldLine:
    """Keep or move the line found on the scoop, judged by this lot's level fills.

    Raises CannotCompute for an impossible line, target, factor or tolerance.
    """
    positive(target_g, "The target weight")
    _checked_settling(settling_factor, settling_u)
    tolerance_g = positive(tolerance_share, "The tolerance") * target_g
    fraction = fraction_at(shape, old_down_wall_mm)
    scoops = full_scoops + fraction * settling_factor
    delivers = scoops * level.mean_g
    of_level = ((scoops * u, df) for u, df in level.parts)
    feeding = _Feeding(delivers, (*of_level, (fraction * level.mean_g * settling_u, math.inf)))
    low, high = feeding.interval(0.95)
    half = (high - low) / 2
    verdict = _old_verdict(low, high, target_g, tolerance_g)
    more = _more_for_old(half, delivers, target_g, tolerance_g, level) if verdict == OldLineVerdict.WEIGH_MORE else 0
    return OldLine(
        delivers,
        feeding.u_g,
        low,
        high,
        delivers / target_g - 1,
        verdict,
        more,
        more > 0 and level.bags < level.fills + 1,
    )


def _old_verdict(low: float, high: float, target_g: float, tolerance_g: float) -> OldLineVerdict:
    if _inside((low, high), target_g, tolerance_g):
        return OldLineVerdict.KEEP
    if high < target_g - tolerance_g or low > target_g + tolerance_g:
        return OldLineVerdict.MOVE
    return OldLineVerdict.WEIGH_MORE


def _more_for_old(half: float, delivers: float, target_g: float, tolerance_g: float, level: LevelResult) -> int:
    """Fills until the half-width is down to the distance from the nearer edge of the tolerance."""
    room = abs(abs(delivers - target_g) - tolerance_g)
    if room * math.sqrt(1 + MOST_MORE / level.fills) < half:
        return MOST_MORE
    return max(1, math.ceil(level.fills * ((half / room) ** 2 - 1)))
