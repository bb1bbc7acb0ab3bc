"""The geometry behind `scoop`: floor and rim, volume up to a level, and the level of a volume."""

from __future__ import annotations

import math
from functools import lru_cache
from itertools import pairwise

from calibrator.model import Box, Cylinder, Poured, Shape, TaperedCup
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import positive
from calibrator.science.poured import RisingCurve, rising_curve

ML_PER_MM3 = 1e-3
_LEAST_STEP_AREA = 1e-3  # of the widest step; less is a slip of reading or weighing


def _rises(values: tuple[float, ...]) -> bool:
    return all(math.isfinite(v) for v in values) and all(a < b for a, b in pairwise((0.0, *values)))


def _checked_poured(shape: Poured) -> None:
    heights, volumes = shape.heights_mm, shape.volumes_ml
    if not heights or len(heights) != len(volumes):
        raise CannotCompute("Each step of poured water needs its level and its volume.")
    if not (_rises(heights) and _rises(volumes)):
        raise CannotCompute("Each step of poured water must stand higher and hold more than the one before.")
    areas = [
        (v2 - v1) / (h2 - h1)
        for (h1, h2), (v1, v2) in zip(pairwise((0.0, *heights)), pairwise((0.0, *volumes)), strict=True)
    ]
    if min(areas) < _LEAST_STEP_AREA * max(areas):
        raise CannotCompute("One step of poured water rises far too much for its volume; pour it once more.")


@lru_cache(maxsize=512)
def checked(shape: Shape) -> Shape:
    """`shape` itself; raises CannotCompute for sizes that no scoop can have."""
    match shape:
        case Cylinder():
            positive(shape.diameter_mm, "The inner diameter")
            positive(shape.height_mm, "The inner height")
        case TaperedCup():
            positive(shape.rim_diameter_mm, "The inner diameter at the rim")
            positive(shape.floor_diameter_mm, "The inner diameter at the floor")
            positive(shape.height_mm, "The inner height")
        case Box():
            positive(shape.length_mm, "The inner length")
            positive(shape.width_mm, "The inner width")
            positive(shape.height_mm, "The inner height")
        case _:
            _checked_poured(shape)
    return shape


@lru_cache(maxsize=128)
def curve(shape: Poured) -> RisingCurve:
    return rising_curve((0.0, *shape.heights_mm), (0.0, *shape.volumes_ml))


def round_radii_mm(shape: Cylinder | TaperedCup) -> tuple[float, float]:
    """Inner radius at the floor and at the rim."""
    if isinstance(shape, Cylinder):
        return shape.diameter_mm / 2, shape.diameter_mm / 2
    return shape.floor_diameter_mm / 2, shape.rim_diameter_mm / 2


def _radius_mm(shape: Cylinder | TaperedCup, height_mm: float) -> float:
    floor, rim = round_radii_mm(shape)
    return floor + (rim - floor) * height_mm / shape.height_mm


def top_mm(shape: Shape) -> float:
    return shape.heights_mm[-1] if isinstance(shape, Poured) else shape.height_mm


def volume_mm(shape: Shape, height_mm: float) -> float:
    """Volume in mL up to a level; the frustum of a cone for round shapes."""
    match shape:
        case Cylinder() | TaperedCup():
            floor, at = round_radii_mm(shape)[0], _radius_mm(shape, height_mm)
            return math.pi * height_mm * (floor * floor + floor * at + at * at) / 3 * ML_PER_MM3
        case Box():
            return shape.length_mm * shape.width_mm * height_mm * ML_PER_MM3
        case _:
            return curve(shape).value(height_mm)


def area_mm2(shape: Shape, height_mm: float) -> float:
    """Area of the surface at a level."""
    match shape:
        case Cylinder() | TaperedCup():
            return math.pi * _radius_mm(shape, height_mm) ** 2
        case Box():
            return shape.length_mm * shape.width_mm
        case _:
            return curve(shape).slope(height_mm) / ML_PER_MM3


def _round_level_mm(shape: Cylinder | TaperedCup, volume_ml: float) -> float:
    """The frustum's volume solved for its height; this form loses no digits on a nearly straight wall."""
    floor, rim = round_radii_mm(shape)
    steepness = (rim - floor) / shape.height_mm
    thrice = 3 * volume_ml / ML_PER_MM3 / math.pi
    at = math.cbrt(max(floor**3 + steepness * thrice, min(floor, rim) ** 3))
    return thrice / (floor * floor + floor * at + at * at)


def level_mm(shape: Shape, volume_ml: float) -> float:
    """The level in mm at which a volume stands: the inverse of `volume_mm`."""
    match shape:
        case Cylinder() | TaperedCup():
            return _round_level_mm(shape, volume_ml)
        case Box():
            return volume_ml / ML_PER_MM3 / (shape.length_mm * shape.width_mm)
        case _:
            return curve(shape).inverse(volume_ml) if volume_ml > 0 else 0.0
