"""What a scoop holds struck level: from weighings of water, or from its inner dimensions."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import fields, replace

from calibrator.model import Poured, Shape
from calibrator.science import shapes
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import not_negative, positive
from calibrator.science.stats import mean_of, sum_of_squares, two_roundings_u
from calibrator.science.water import volume_ml, volume_per_gram_weighed
from calibrator.values import dataclass

AGREES_WITHIN_SHARE = 0.02

_ONE_POURING_SD_SHARE = 0.005  # an assumption, stated in struck_volume
_ONE_POURING_DF = 8.0
_PLASTIC_EXPANSION_PER_C = 3e-4  # in volume; polyethylene and polypropylene, a round figure
_REFERENCE_C = 20.0


COVERAGE_FACTOR = 2.0
"""From a standard uncertainty to about 95 % where no degrees of freedom are known: JCGM 100:2008, 6.3.3."""


POURINGS_ALIKE_SHARE = 0.05
"""The fillings of one scoop to its rim differ by less, however unsteady the hand: common practice, no source."""


def odd_pourings(masses_g: Sequence[float]) -> tuple[int, ...]:
    """Places of the weighings of water, g, that do not fit the others: a slip of the finger, a scale not zeroed.

    One where all the others agree without it; else all, for which is wrong cannot be told. None where all agree.
    """
    if _alike(masses_g):
        return ()
    every = range(len(masses_g))
    without = [place for place in every if _alike([mass for i, mass in enumerate(masses_g) if i != place])]
    return tuple(without) if len(without) == 1 and len(masses_g) > 2 else tuple(every)


def _alike(masses_g: Sequence[float]) -> bool:
    return not masses_g or max(masses_g) <= min(masses_g) * (1 + POURINGS_ALIKE_SHARE)


@dataclass(frozen=True)
class VolumeEstimate:
    """A volume in mL, its standard uncertainty and the degrees of freedom of that."""

    volume_ml: float
    u_ml: float
    degrees_of_freedom: float

    @property
    def expanded_ml(self) -> float:
        """Half the 95 % interval, told alike wherever the volume is."""
        return COVERAGE_FACTOR * self.u_ml


def _pouring_part(masses_g: Sequence[float], reading_u_g: float) -> tuple[float, float]:
    """Standard uncertainty in g of the mean of the pourings, never below the display's own, and its df."""
    n = len(masses_g)
    if n == 1:
        return max(_ONE_POURING_SD_SHARE * masses_g[0], reading_u_g), _ONE_POURING_DF
    spread = math.sqrt(sum_of_squares(masses_g) / (n - 1))
    return max(spread, reading_u_g) / math.sqrt(n), n - 1.0


def _density_slope(temperature_c: float) -> float:
    """Relative change of the mL per gram with 1 °C, by a one-sided step that stays in range."""
    step = 1.0 if temperature_c <= 99.0 else -1.0
    here = volume_per_gram_weighed(temperature_c)
    return abs(volume_per_gram_weighed(temperature_c + step) - here) / here


def struck_volume(
    water_masses_g: Sequence[float],
    temperature_c: float,
    resolution_g: float,
    *,
    temperature_u_c: float = 1.0,
    shape: Shape | None = None,
    level_u_mm: float = 0.25,
) -> VolumeEstimate:
    """Struck-level volume from one or more weighings of water filled to the rim, g net, at 0–100 °C.

    ISO 4787 and ISO 8655-6: mean net weight × Z. The standard uncertainty combines (JCGM 100) the spread of
    the pourings, the display step twice (empty and full, d/√12 each), the water's temperature, the scoop's
    own expansion away from 20 °C (3·10⁻⁴ per °C, as for common plastics), and, where the `shape` is given,
    how well the eye levels the water with the rim. One pouring alone is taken to repeat within 0.5 % (an
    assumption, given eight degrees of freedom); three or more are recommended. Raises CannotCompute for no
    weighing, for weights that are not above zero, and for a temperature out of range.
    """
    if not water_masses_g:
        raise CannotCompute("Weigh the scoop full of water at least once.")
    masses = [positive(m, "Each weight of water") for m in water_masses_g]
    reading_u = two_roundings_u(not_negative(resolution_g, "The step of the display"))
    pouring_u, df = _pouring_part(masses, reading_u)
    volume = volume_ml(mean_of(masses), temperature_c)
    pouring = pouring_u * volume_per_gram_weighed(temperature_c)
    systematic = [
        not_negative(temperature_u_c, "The doubt in the temperature") * _density_slope(temperature_c) * volume,
        _PLASTIC_EXPANSION_PER_C * abs(temperature_c - _REFERENCE_C) / math.sqrt(3.0) * volume,
    ]
    if shape is not None:
        area = shapes.area_mm2(shapes.checked(shape), shapes.top_mm(shape)) * shapes.ML_PER_MM3
        systematic.append(area * not_negative(level_u_mm, "The doubt in the level"))
    u = math.hypot(pouring, *systematic)
    return VolumeEstimate(volume, u, df * (u / pouring) ** 4 if pouring > 0 else math.inf)


def _with_longer(shape: Shape, name: str, by_mm: float) -> Shape:
    return replace(shape, **{name: getattr(shape, name) + by_mm})


def volume_from_dimensions(shape: Shape, u_mm: float = 0.5) -> VolumeEstimate:
    """Rim volume from inner dimensions, each known with standard uncertainty `u_mm`.

    First-order propagation (JCGM 100, 5.1.2), dimensions independent; for a poured scoop the doubt is in
    where the rim is. Infinite degrees of freedom. Raises CannotCompute for impossible dimensions.
    """
    shapes.checked(shape)
    doubt = not_negative(u_mm, "The doubt in a dimension")
    top = shapes.top_mm(shape)
    volume = shapes.volume_mm(shape, top)
    if isinstance(shape, Poured):
        return VolumeEstimate(volume, shapes.area_mm2(shape, top) * shapes.ML_PER_MM3 * doubt, math.inf)
    tiny = 1e-6 * top
    longer = [_with_longer(shape, f.name, tiny) for f in fields(shape)]
    parts = [(shapes.volume_mm(s, shapes.top_mm(s)) - volume) / tiny * doubt for s in longer]
    return VolumeEstimate(volume, math.hypot(*parts), math.inf)


@dataclass(frozen=True)
class DimensionCheck:
    """Rim volume by dimensions beside that by water; `difference_share` is dimensions ÷ water − 1."""

    water_ml: float
    difference_share: float
    agrees: bool


def compare_with_water(shape: Shape, water_ml: float) -> DimensionCheck:
    """Do inner dimensions and a water weighing tell the same volume, within 2 %?

    Raises CannotCompute for impossible dimensions or a volume that is not above zero.
    """
    by_dimensions = volume_from_dimensions(shape).volume_ml
    difference = by_dimensions / positive(water_ml, "The volume of water") - 1
    return DimensionCheck(water_ml, difference, abs(difference) <= AGREES_WITHIN_SHARE)
