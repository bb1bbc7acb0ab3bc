"""A scoop's shape: volume against level, distance down the wall, the wall laid flat, the volume it holds.

Levels are heights above the inner floor in mm, distances down the wall are measured from the rim along the
wall, because that is where a label sits and a ruler lies. Nothing is clipped: a level or a volume that the
scoop does not have raises CannotCompute. All functions raise it for impossible dimensions, too.
"""

from __future__ import annotations

import math

from calibrator.model import Box, Cylinder, Shape, TaperedCup
from calibrator.science import shapes
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import not_negative
from calibrator.science.struck import (
    DimensionCheck,
    VolumeEstimate,
    compare_with_water,
    odd_pourings,
    struck_volume,
    volume_from_dimensions,
)
from calibrator.values import dataclass

__all__ = [
    "DimensionCheck",
    "VolumeEstimate",
    "Wrap",
    "compare_with_water",
    "down_wall_mm",
    "height_from_down_wall_mm",
    "height_mm",
    "inner_height_mm",
    "odd_pourings",
    "outline_mm",
    "rim_volume_ml",
    "slope_ml_per_mm",
    "struck_volume",
    "volume_from_dimensions",
    "volume_ml",
    "wall_length_mm",
    "wrap",
]

_ROUNDING = 1e-12  # a rim reached by arithmetic may be overshot in the last digits
_OUTLINE_STEPS = 32
SAME_LINE_MM = 0.05
_ML_PER_FL_OZ = 29.5735295625
_MM_PER_INCH = 25.4


def inner_height_mm(shape: Shape) -> float:
    """Height of the rim above the floor, mm."""
    return shapes.top_mm(shapes.checked(shape))


def rim_volume_ml(shape: Shape) -> float:
    """Volume up to the rim, mL."""
    return shapes.volume_mm(shapes.checked(shape), shapes.top_mm(shape))


def _height_within(shape: Shape, height_mm: float) -> float:
    top = inner_height_mm(shape)
    if not_negative(height_mm, "The level above the floor") > top * (1 + _ROUNDING):
        raise CannotCompute("This level is above the rim: the inside is {inches} in ({mm} mm) high.", **_length(top))
    return min(height_mm, top)


def volume_ml(shape: Shape, height_mm: float) -> float:
    """Volume in mL up to `height_mm` above the floor, 0 … rim. Raises CannotCompute outside."""
    return shapes.volume_mm(shape, _height_within(shape, height_mm))


def height_mm(shape: Shape, volume_ml: float) -> float:
    """Level in mm at which `volume_ml` stands, 0 … rim volume. Raises CannotCompute outside."""
    rim = rim_volume_ml(shape)
    if not_negative(volume_ml, "The volume") > rim * (1 + _ROUNDING):
        raise CannotCompute(
            "This is more than it holds: only {fl_oz} fl oz ({ml} mL) to the rim.",
            fl_oz=f"{rim / _ML_PER_FL_OZ:.1f}",
            ml=f"{rim:.0f}",
        )
    return shapes.level_mm(shape, min(volume_ml, rim))


def slope_ml_per_mm(shape: Shape, height_mm: float) -> float:
    """How many mL one more mm of level adds at `height_mm`: the area of the surface there."""
    return shapes.area_mm2(shape, _height_within(shape, height_mm)) * shapes.ML_PER_MM3


def _wall_per_height(shape: Shape) -> float:
    """mm along the wall per mm of height: 1/cos of the wall's angle. Poured heights are read on the wall."""
    if not isinstance(shape, TaperedCup):
        return 1.0
    floor, rim = shapes.round_radii_mm(shape)
    return math.hypot(1.0, (rim - floor) / shape.height_mm)


def wall_length_mm(shape: Shape) -> float:
    """Length of the wall from floor to rim, mm, along the wall."""
    return inner_height_mm(shape) * _wall_per_height(shape)


def down_wall_mm(shape: Shape, height_mm: float) -> float:
    """Distance from the rim down along the wall to a level, mm. Raises CannotCompute outside the scoop."""
    within = _height_within(shape, height_mm)
    return (inner_height_mm(shape) - within) * _wall_per_height(shape)


def height_from_down_wall_mm(shape: Shape, down_wall_mm: float) -> float:
    """Level above the floor, mm, of a line `down_wall_mm` below the rim: the inverse of `down_wall_mm`."""
    length = wall_length_mm(shape)
    if not_negative(down_wall_mm, "The distance down the wall") > length * (1 + _ROUNDING):
        raise CannotCompute("This line is below the floor: the wall has {inches} in ({mm} mm).", **_length(length))
    return inner_height_mm(shape) - min(down_wall_mm, length) / _wall_per_height(shape)


def same_line(one_mm: float | None, other_mm: float | None) -> bool:
    """Whether two distances down the wall are one line: finer than any pen draws. No line is the same as none."""
    return one_mm is not None and other_mm is not None and abs(one_mm - other_mm) < SAME_LINE_MM


def outline_mm(shape: Shape) -> tuple[tuple[float, float], ...]:
    """Cross-section for a drawing: (height, half width) in mm from floor to rim.

    A box shows its length; a poured scoop is drawn round, as wide as its surface at each level.
    """
    top = inner_height_mm(shape)
    match shape:
        case Cylinder() | TaperedCup():
            floor, rim = shapes.round_radii_mm(shape)
            return ((0.0, floor), (top, rim))
        case Box():
            return ((0.0, shape.length_mm / 2), (top, shape.length_mm / 2))
        case _:
            levels = [top * i / _OUTLINE_STEPS for i in range(_OUTLINE_STEPS + 1)]
            return tuple((h, math.sqrt(shapes.area_mm2(shape, h) / math.pi)) for h in levels)


@dataclass(frozen=True)
class Wrap:
    """The wall laid flat, mm: a straight strip, or a part of a ring on a tapered cup.

    `rim_edge_mm` and `floor_edge_mm` are the lengths of its two edges around the scoop. A straight strip has
    no radii; on a tapered cup the edges are arcs about one centre over `angle_deg`.
    """

    wall_length_mm: float
    rim_edge_mm: float
    floor_edge_mm: float
    rim_radius_mm: float | None = None
    floor_radius_mm: float | None = None
    angle_deg: float | None = None


def _ring(shape: TaperedCup, floor_mm: float, rim_mm: float) -> Wrap:
    length = wall_length_mm(shape)
    per_radius = length / abs(rim_mm - floor_mm)
    return Wrap(
        wall_length_mm=length,
        rim_edge_mm=2 * math.pi * rim_mm,
        floor_edge_mm=2 * math.pi * floor_mm,
        rim_radius_mm=rim_mm * per_radius,
        floor_radius_mm=floor_mm * per_radius,
        angle_deg=360.0 / per_radius,
    )


def wrap(shape: Shape, wall_thickness_mm: float = 0.0) -> Wrap:
    """The wall laid flat, for a label that goes around it; outside it when the wall's thickness is given.

    A frustum unrolls to a part of a ring whose radii are the slant distances from the cone's tip. A poured
    scoop is taken as round and straight, as wide as its surface at the rim. Raises CannotCompute for a
    negative thickness.
    """
    thickness = not_negative(wall_thickness_mm, "The wall's thickness")
    length = wall_length_mm(shape)
    match shape:
        case Cylinder() | TaperedCup():
            floor, rim = (r + thickness for r in shapes.round_radii_mm(shape))
            if isinstance(shape, TaperedCup) and floor != rim:
                return _ring(shape, floor, rim)
            around = 2 * math.pi * rim
        case Box():
            around = 2 * (shape.length_mm + shape.width_mm) + 8 * thickness
        case _:
            rim_radius = math.sqrt(shapes.area_mm2(shape, inner_height_mm(shape)) / math.pi)
            around = 2 * math.pi * (rim_radius + thickness)
    return Wrap(wall_length_mm=length, rim_edge_mm=around, floor_edge_mm=around)


def _length(mm: float) -> dict[str, str]:
    return {"inches": f"{mm / _MM_PER_INCH:.2f}", "mm": f"{mm:.0f}"}
