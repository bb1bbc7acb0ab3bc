"""A straight line through reference mixes, and back from a reading to the solids that it stands for.

Reference mixes are weighed, so their solids are known; the reading is what varies. The line is fitted with
the reading upon the solids and then turned round, with the interval of inverse prediction.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace

from calibrator.science.errors import CannotCompute
from calibrator.science.guard import between, finite, not_negative, positive
from calibrator.science.stats import mean_of, sum_of_squares, two_sided_t, welch_satterthwaite
from calibrator.science.steps import to_step
from calibrator.values import dataclass

ASSUMED_SD_BRIX = 0.15
ASSUMED_DF = 4.0
"""How far readings of reference mixes are taken to lie off their line before four or more mixes beyond two
show it themselves: common practice, no source."""

REFERENCE_DROPS = 3
"""Drops to read of each reference mix; a new reading's own drops take their place."""

LEAST_SPAN_SHARE = 0.02
"""The weakest and the strongest reference mix must differ by so much solids, or no slope can be seen."""

LEAST_SLOPE, MOST_SLOPE = 50.0, 150.0
"""°Brix per share of solids (0.5 … 1.5 °Brix per percent): milk's solids bend light nearly as sugar does, so
a slope outside is a mix-up of weights. Common practice, no source."""


@dataclass(frozen=True)
class Line:
    """y = intercept + slope · x by least squares. `residual_sd` has `degrees_of_freedom`; `low_x … high_x`
    is where it was fitted, `assumed` tells that the spread is partly an assumption."""

    slope: float
    intercept: float
    residual_sd: float
    degrees_of_freedom: float
    n: int
    mean_x: float
    mean_y: float
    sxx: float
    low_x: float
    high_x: float
    assumed: bool = False

    def y(self, x: float) -> float:
        return self.intercept + self.slope * x


@dataclass(frozen=True)
class Inverse:
    """The x that a reading stands for: standard uncertainty, its degrees of freedom, the interval asked for.

    `within` tells whether the line was fitted there.
    """

    x: float
    u: float
    degrees_of_freedom: float
    low: float
    high: float
    within: bool


def fit(xs: Sequence[float], ys: Sequence[float]) -> Line:
    """Ordinary least squares of y on x, two points or more; exact through two, with no residual to tell.

    Draper and Smith 1998, Applied Regression Analysis, 1.2–1.4. Raises CannotCompute for fewer points, for
    points that all have one x, and for what is no number.
    """
    if len(xs) != len(ys) or len(xs) < 2:
        raise CannotCompute("A Brix calibration needs two weighed mixes or more.")
    for value in (*xs, *ys):
        finite(value, "A figure of a weighed mix")
    mean_x, mean_y, sxx = mean_of(xs), mean_of(ys), sum_of_squares(xs)
    if sxx <= 0:
        raise CannotCompute("The weighed mixes must differ in strength: make one weaker and one stronger.")
    slope = math.fsum((x - mean_x) * (y - mean_y) for x, y in zip(xs, ys, strict=True)) / sxx
    intercept = mean_y - slope * mean_x
    squares = math.fsum((y - intercept - slope * x) ** 2 for x, y in zip(xs, ys, strict=True))
    df = len(xs) - 2
    sd = math.sqrt(squares / df) if df else 0.0
    return Line(slope, intercept, sd, float(df), len(xs), mean_x, mean_y, sxx, min(xs), max(xs))


def invert(line: Line, y: float, *, readings: float = 1, y_u: float = 0.0, level: float = 0.95) -> Inverse:
    """The x behind a new y that is the mean of `readings` (inf for a y without scatter of its own), with the
    inverse prediction interval.

    Standard uncertainty s/b · √(1/m + 1/n + (y − ȳ)²/(b² Sxx)) (Miller and Miller, Statistics and
    Chemometrics for Analytical Chemistry, 5.6), joined with `y_u`, a doubt in y that the line's residuals do
    not hold; interval by Fieller's theorem (Draper and Smith 1998, 3.2). Raises CannotCompute where the
    slope cannot be told from none.
    """
    if not readings > 0:
        raise CannotCompute("The number of readings must be greater than zero.")
    finite(y, "The reading")
    own = line.residual_sd**2 * (1 / readings + 1 / line.n)
    distance = y - line.mean_y
    leverage = line.residual_sd**2 * (distance / line.slope) ** 2 / line.sxx
    parts = [
        (math.sqrt(own + leverage), line.degrees_of_freedom or math.inf),
        (not_negative(y_u, "The doubt"), math.inf),
    ]
    u_y, df = welch_satterthwaite(parts)
    t = two_sided_t(level, df)
    slope_part = line.slope**2 - t * t * line.residual_sd**2 / line.sxx
    if slope_part <= 0:
        raise CannotCompute("The weighed mixes scatter so much that they make no calibration: make new ones.")
    root = t * math.sqrt((own + y_u**2) * slope_part + line.residual_sd**2 * distance**2 / line.sxx)
    low = line.mean_x + (line.slope * distance - root) / slope_part
    high = line.mean_x + (line.slope * distance + root) / slope_part
    x = line.mean_x + distance / line.slope
    return Inverse(x, u_y / abs(line.slope), df, low, high, line.low_x <= x <= line.high_x)


@dataclass(frozen=True)
class Reference:
    """A weighed mix of known solids (share, as mixed) and its °Brix, the mean of its drops, zero taken off."""

    solids_share: float
    brix: float


def farm_line(references: Sequence[Reference]) -> Line:
    """°Brix upon solids from the farm's own reference mixes.

    With fewer than six mixes the residuals are joined with an assumed spread (`ASSUMED_SD_BRIX`, worth
    `ASSUMED_DF` degrees of freedom), for two or three points cannot tell their own. Raises CannotCompute for
    fewer than two mixes, too little difference in strength, or a slope that no milk powder has.
    """
    line = fit([r.solids_share for r in references], [r.brix for r in references])
    if line.high_x - line.low_x < LEAST_SPAN_SHARE - 1e-9:
        raise CannotCompute("The weighed mixes are too alike: let the strongest have 2 % more solids than the weakest.")
    between(
        line.slope,
        LEAST_SLOPE,
        MOST_SLOPE,
        "The Brix that one percent of solids adds",
        "0.5 and 1.5; weigh and read anew",
    )
    if line.degrees_of_freedom >= ASSUMED_DF:
        return line
    df = line.degrees_of_freedom + ASSUMED_DF
    squares = line.residual_sd**2 * line.degrees_of_freedom + ASSUMED_SD_BRIX**2 * ASSUMED_DF
    return replace(line, residual_sd=math.sqrt(squares / df), degrees_of_freedom=df, assumed=True)


@dataclass(frozen=True)
class ReferenceRecipe:
    """Powder and water to weigh for one reference mix, g, and the solids they make."""

    powder_g: float
    water_g: float
    solids_share: float


def reference_recipes(target_share: float, total_g: float, scale_step_g: float) -> tuple[ReferenceRecipe, ...]:
    """Three reference mixes of `total_g` each: a fifth below the target, at it, a fifth above.

    Weights are on the scale's step. Raises CannotCompute for a target outside 5 … 30 % solids or a scale too
    coarse (fewer than 50 steps of powder).
    """
    target = between(target_share, 0.05, 0.30, "The target", "5 and 30 % solids")
    step = positive(scale_step_g, "The step of the scale's display")
    found = []
    for share in (0.8 * target, target, 1.2 * target):
        powder = to_step(positive(total_g, "The weight of the mix") * share, step)
        water = to_step(total_g - powder, step)
        if powder < 50 * step:
            raise CannotCompute("This scale is too coarse for so small a mix: make more of it.")
        found.append(ReferenceRecipe(powder, water, powder / (powder + water)))
    return tuple(found)


def reference_solids(powder_g: float, water_g: float) -> float:
    """Solids of a weighed reference mix, share, as mixed. Raises CannotCompute for impossible weights."""
    powder = positive(powder_g, "The weight of powder")
    share = powder / (powder + positive(water_g, "The weight of water"))
    return between(share, 0.02, 0.40, "The solids of a weighed mix", "2 and 40 %; check both weights")
