"""Where the line goes: from the weight of a struck-level scoopful to the fill mark for a target weight.

The scoop's volume cancels: density is weight of a struck-level scoopful ÷ rim volume, the line is where the
target weight ÷ density stands, so only the *fraction* of the rim volume matters, and a scoop whose volume is
told 3 % wrong gets the same line. The settling factor is the density when filled to the line ÷ struck level.
Lines are told by their distance down the wall from the rim, mm along the wall.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from enum import StrEnum

from calibrator.model import Fill, FillWay, Shape
from calibrator.science import scoop
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import not_negative, positive
from calibrator.science.nested import Weighed, weighed
from calibrator.science.settling import Settling
from calibrator.science.stats import expanded, two_sided_t
from calibrator.values import dataclass

NEAREST_TO_FLOOR_MM = 6.0
NEAREST_TO_RIM_MM = 3.0
"""A line nearer than this to floor or rim is hard to read: common practice, no source."""

LEAST_REST_SHARE = 0.25
"""What is left after level scoopfuls has a line of its own from this share of a level scoopful on; of less, the shake
and the eye make too much, and equal scoopfuls to one line are taken: common practice, no source."""

_MORE_TRIED = 2  # counts of equal scoopfuls looked at before a line is told to be unreadable

_ROUNDING = 1e-9


class MarkProblem(StrEnum):
    """Why a line cannot be used."""

    TOO_NEAR_FLOOR = "too_near_floor"
    TOO_NEAR_RIM = "too_near_rim"


@dataclass(frozen=True)
class Line:
    """A fill mark: `full_scoops` struck-level scoopfuls, then one to the line; or `to_line` equal ones to it alone.

    `volume_ml` and `height_mm` (above the floor) are of the line; `mass_g` is what one scoopful to the line
    should weigh. `mass_u_g` is the standard uncertainty of the whole feeding's weight, `u_mm` the same told
    as the line's place, `grams_per_mm` what one mm along the wall is worth in a feeding.
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
    feeding_g: float
    to_line: int = 1

    @property
    def several(self) -> bool:
        """Whether one scoopful to the line is not the feeding."""
        return self.full_scoops > 0 or self.to_line > 1

    @property
    def each_g(self) -> float:
        """What a mark is for: the feeding, or each of its equal scoopfuls, g."""
        return self.target_g / self.to_line

    @property
    def struck_level(self) -> bool:
        """Whether no line is needed: level scoopfuls alone are near enough to the target (`level_instead`)."""
        return self.down_wall_mm == 0

    @property
    def error_share(self) -> float:
        """How far level scoopfuls before and the one to the line are off the target."""
        return self.feeding_g / self.target_g - 1

    @property
    def u_share(self) -> float:
        """Standard uncertainty as a share of the target."""
        return self.mass_u_g / self.target_g


def reach_95(line: Line, degrees_of_freedom: float) -> tuple[float, float]:
    """Half-width of the 95 % interval of a line, in g of the feeding and in mm down the wall."""
    t = two_sided_t(0.95, degrees_of_freedom)
    return t * line.mass_u_g, t * line.u_mm


def reach_untried_95(
    line: Line, level_mean_g: float, level_parts: Sequence[tuple[float, float]], settling: Settling
) -> tuple[float, float]:
    """The same for a line to which nothing was filled yet: the parts of the level scoopful's doubt with their degrees
    of freedom, and the settling factor.

    Part by part, as `stats.expanded`. Raises CannotCompute for a weight or factor not above zero.
    """
    _checked_level(level_mean_g, 0.0, line.target_g)
    checked_settling(settling.factor, settling.u)
    scoops = line.target_g / level_mean_g
    to_line_g = line.target_g - line.full_scoops * level_mean_g
    of_settling = to_line_g / settling.factor * settling.u, settling.degrees_of_freedom
    reach_g = expanded([*((scoops * u, df) for u, df in level_parts), of_settling])
    return reach_g, reach_g / line.grams_per_mm


def _checked_level(level_mean_g: float, level_u_g: float, target_g: float) -> None:
    positive(level_mean_g, "The weight of a level scoopful")
    not_negative(level_u_g, "The doubt in the weight of a level scoopful")
    positive(target_g, "The target weight")


def checked_settling(factor: float, u: float) -> None:
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
    *,
    to_line: int = 1,
) -> Line:
    """The line at which a feeding weighs `target_g` (g, above zero): as few level scoopfuls as can be and one to the
    line, or `to_line` equal ones where that is more than 1.

    V(line) ÷ V(rim) = weight to the line ÷ (level weight · settling factor); uncertainty by JCGM 100:2008,
    5.1.2, with the rim volume cancelled (5.2: fully correlated). Where the powder lies so loosely that even
    the brim is too little, the line is put at the rim and told as TOO_NEAR_RIM. Raises CannotCompute for
    weights or factors that are not above zero.
    """
    _checked_level(level_mean_g, level_u_g, target_g)
    checked_settling(settling_factor, settling_u)
    full = max(0, math.ceil(target_g / level_mean_g - _ROUNDING) - 1) if to_line == 1 else 0
    all_to_line_g = target_g - full * level_mean_g
    fraction = all_to_line_g / (to_line * level_mean_g * settling_factor)
    rim = scoop.rim_volume_ml(shape)
    volume = min(fraction, 1.0) * rim
    height = scoop.height_mm(shape, volume)
    per_ml = level_mean_g * settling_factor / rim
    per_mm = to_line * per_ml * scoop.slope_ml_per_mm(shape, height) / _wall_per_height(shape)
    u = math.hypot(target_g / level_mean_g * level_u_g, all_to_line_g / settling_factor * settling_u)
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
        feeding_g=full * level_mean_g + to_line * volume * per_ml,
        to_line=to_line,
    )


def proposed_line(
    shape: Shape,
    level_mean_g: float,
    level_u_g: float,
    target_g: float,
    tolerance_share: float,
    settling_factor: float = 1.0,
    settling_u: float = 0.0,
) -> Line:
    """How a feeding is filled: one scoopful to a line, level ones before it where the scoop holds less; level ones
    alone where a line could not be read (`level_instead`). Where what is left after level ones is little, or a line
    could not be read, the fewest equal scoopfuls to a line that can; where none can, the line as it is, with why.

    Otherwise as `fill_line`.
    """
    usual, *others = lines_for(shape, level_mean_g, level_u_g, target_g, settling_factor, settling_u)
    single = next(line for line in (usual, *others) if line.to_line == 1)
    line = level_instead(shape, single, level_mean_g, level_u_g, tolerance_share)
    return line if line.struck_level else usual


def lines_for(
    shape: Shape,
    level_mean_g: float,
    level_u_g: float,
    target_g: float,
    settling_factor: float = 1.0,
    settling_u: float = 0.0,
) -> tuple[Line, ...]:
    """The ways to fill a feeding to a line of its own, the usual one first: one scoopful to the line, after level ones
    where the scoop holds less, or the fewest equal ones. Only those that can be read, beside the single one with why
    not; where what is left after level ones is little, equal ones are the usual.

    Otherwise as `fill_line`.
    """
    facts = shape, level_mean_g, level_u_g, target_g, settling_factor, settling_u
    single = fill_line(*facts)
    if single.problem is None and not single.full_scoops:
        return (single,)
    fewest = max(2, single.full_scoops + 1)
    tried = (fill_line(*facts, to_line=count) for count in range(fewest, fewest + _MORE_TRIED))
    equal = next((one for one in tried if one.problem is None), None)
    if equal is None:
        return (single,)
    little = target_g - single.full_scoops * level_mean_g < LEAST_REST_SHARE * level_mean_g
    return (equal, single) if little or single.problem is not None else (single, equal)


def level_instead(shape: Shape, line: Line, level_mean_g: float, level_u_g: float, tolerance_share: float) -> Line:
    """A whole number of level scoopfuls in place of a line that nobody could read, where that many weigh the target
    within the tolerance; else the line as it is.

    Told as a line at the rim, to which nothing settles: it is struck level as it was weighed. Raises CannotCompute
    for weights that are not above zero.
    """
    _checked_level(level_mean_g, level_u_g, line.target_g)
    count = round(line.target_g / level_mean_g)
    off = abs(count * level_mean_g / line.target_g - 1)
    if line.problem is None or count < 1 or off > positive(tolerance_share, "The tolerance"):
        return line
    rim = scoop.rim_volume_ml(shape)
    height = scoop.inner_height_mm(shape)
    per_mm = level_mean_g / rim * scoop.slope_ml_per_mm(shape, height) / _wall_per_height(shape)
    u = count * level_u_g
    return Line(
        target_g=line.target_g,
        full_scoops=count - 1,
        volume_ml=rim,
        height_mm=height,
        down_wall_mm=0.0,
        mass_g=level_mean_g,
        mass_u_g=u,
        u_mm=u / per_mm,
        grams_per_mm=per_mm,
        problem=None,
        feeding_g=count * level_mean_g,
    )


def tolerance_band(mass_g: float, tolerance_share: float) -> tuple[float, float]:
    """From where to where a weight may be from `mass_g`, g. Raises CannotCompute unless both are above zero."""
    reach = positive(tolerance_share, "The tolerance") * positive(mass_g, "The weight")
    return mass_g - reach, mass_g + reach


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


def weighed_to_line(fills: Iterable[Fill], shape: Shape, down_wall_mm: float) -> tuple[Weighed, ...]:
    """The fills to any mark that count, in order, as g of one scoopful to the line `down_wall_mm`.

    So a line that was moved keeps the fills weighed before. Fills without a line of their own are left out.
    """
    return tuple(
        taken
        for fill in fills
        if fill.line_mm is not None
        for taken in at_line(weighed([fill], FillWay.TO_MARK), shape, fill.line_mm, down_wall_mm)
    )
