"""The wall of a scoop laid flat: points, lines and directions on a straight strip or a part of a ring."""

from __future__ import annotations

import math

from calibrator.prints.page import Go, Item, PathStep, Shape
from calibrator.science.scoop import Wrap
from calibrator.values import dataclass


@dataclass(frozen=True)
class Unrolled:
    """A part of the wall, `length_mm` along the rim, `wall_mm` down.

    A place is told by s along the rim from the left end and d down the wall. `radius_mm` is the rim's in the
    flat, None on a straight wall; `rim_outside` tells whether the rim is the ring's outer edge.
    """

    length_mm: float
    wall_mm: float
    radius_mm: float | None = None
    rim_outside: bool = True

    def at(self, s_mm: float, d_mm: float) -> tuple[float, float]:
        """The point on paper, the ring's centre at the origin; on a straight wall (s, d) itself."""
        if self.radius_mm is None:
            return s_mm, d_mm
        turn, r = self._turn(s_mm), self._radius(d_mm)
        return r * math.sin(turn), r * math.cos(turn) * (-1 if self.rim_outside else 1)

    def angle_deg(self, s_mm: float) -> float:
        """How far text that runs along the rim is turned there, clockwise."""
        if self.radius_mm is None:
            return 0.0
        return math.degrees(self._turn(s_mm)) * (1 if self.rim_outside else -1)

    def sag_mm(self, width_mm: float) -> float:
        """How far the arc departs from a flat box of this width."""
        if self.radius_mm is None:
            return 0.0
        least = self.radius_mm - self.wall_mm if self.rim_outside else self.radius_mm
        return width_mm**2 / (8 * max(least, width_mm / 2))

    def spread(self, d_mm: float) -> float:
        """How much of the rim a width at this depth spans, at the most, per mm."""
        if self.radius_mm is None:
            return 1.0
        return max(1.0, self.radius_mm / self._radius(d_mm))

    def along(self, d_mm: float, s1_mm: float, s2_mm: float) -> tuple[PathStep, ...]:
        """A path at one depth from s1 to s2, either way."""
        x, y = self.at(s1_mm, d_mm)
        start = PathStep(Go.MOVE, x, y)
        if self.radius_mm is None:
            return start, PathStep(Go.TO, *self.at(s2_mm, d_mm))
        return start, self._arc(d_mm, s1_mm, s2_mm)

    def _arc(self, d_mm: float, s1_mm: float, s2_mm: float) -> PathStep:
        way = 1 if self.rim_outside else -1
        first = -90 * way + way * math.degrees(self._turn(s1_mm))
        sweep = way * math.degrees(self._turn(s2_mm) - self._turn(s1_mm))
        return PathStep(Go.ARC, 0.0, 0.0, self._radius(d_mm), first, sweep)

    def stroke(self, d_mm: float, s1_mm: float, s2_mm: float, width_mm: float, dash_mm: tuple[float, ...] = ()) -> Item:
        return Shape(self.along(d_mm, s1_mm, s2_mm), stroke_mm=width_mm, dash_mm=dash_mm)

    def band(self, d1_mm: float, d2_mm: float, s1_mm: float, s2_mm: float, fill: float) -> Item:
        """A filled band between two depths."""
        there = self.along(d1_mm, s1_mm, s2_mm)
        if self.radius_mm is None:
            back: tuple[PathStep, ...] = tuple(PathStep(Go.TO, *self.at(s, d2_mm)) for s in (s2_mm, s1_mm))
        else:
            back = (PathStep(Go.TO, *self.at(s2_mm, d2_mm)), self._arc(d2_mm, s2_mm, s1_mm))
        return Shape((*there, *back, PathStep(Go.CLOSE)), fill=fill)

    def bounds(self, d_mm: float) -> tuple[float, float, float, float]:
        """Left, top, right and bottom of the part from the rim to a depth."""
        steps = 90
        points = [self.at(self.length_mm * i / steps, d) for i in range(steps + 1) for d in (0.0, d_mm)]
        xs, ys = [x for x, _ in points], [y for _, y in points]
        return min(xs), min(ys), max(xs), max(ys)

    def _turn(self, s_mm: float) -> float:
        assert self.radius_mm is not None
        return (s_mm - self.length_mm / 2) / self.radius_mm

    def _radius(self, d_mm: float) -> float:
        assert self.radius_mm is not None
        return self.radius_mm - d_mm if self.rim_outside else self.radius_mm + d_mm


def unrolled(wall: Wrap, length_mm: float) -> Unrolled:
    """So much of a scoop's wall, measured along the rim."""
    if wall.rim_radius_mm is None or wall.floor_radius_mm is None:
        return Unrolled(length_mm, wall.wall_length_mm)
    outside = wall.rim_radius_mm > wall.floor_radius_mm
    return Unrolled(length_mm, wall.wall_length_mm, wall.rim_radius_mm, outside)
