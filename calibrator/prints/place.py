"""Moving finished items about: a label is drawn once at its own corner, then laid on the page."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import assert_never

from calibrator.prints.page import Go, Item, Line, PathStep, Shape, Text


def moved(items: Iterable[Item], x_mm: float, y_mm: float, angle_deg: float = 0.0) -> tuple[Item, ...]:
    """The items turned clockwise about the origin, then shifted."""
    turn = math.radians(angle_deg)
    cos, sin = math.cos(turn), math.sin(turn)

    def at(x: float, y: float) -> tuple[float, float]:
        return x_mm + x * cos - y * sin, y_mm + x * sin + y * cos

    def step(old: PathStep) -> PathStep:
        x, y = at(old.x_mm, old.y_mm)
        return old if old.go is Go.CLOSE else replace(old, x_mm=x, y_mm=y, start_deg=old.start_deg + angle_deg)

    def one(item: Item) -> Item:
        match item:
            case Text():
                x, y = at(item.x_mm, item.y_mm)
                return replace(item, x_mm=x, y_mm=y, angle_deg=item.angle_deg + angle_deg)
            case Line():
                (x1, y1), (x2, y2) = at(item.x1_mm, item.y1_mm), at(item.x2_mm, item.y2_mm)
                return replace(item, x1_mm=x1, y1_mm=y1, x2_mm=x2, y2_mm=y2)
            case Shape():
                return replace(item, steps=tuple(step(s) for s in item.steps))
            case _:
                assert_never(item)

    return tuple(one(item) for item in items)


def spread(wanted: Sequence[float], heights: Sequence[float], low_mm: float, high_mm: float) -> tuple[float, ...]:
    """Middles for boxes of these heights, as near to where they are wanted as no two overlap.

    `wanted` rises. Where there is too little room between `low_mm` and `high_mm`, the last ones stand beyond.
    """
    middles: list[float] = []
    edge = low_mm
    for want, height in zip(wanted, heights, strict=True):
        middles.append(max(want, edge + height / 2))
        edge = middles[-1] + height / 2
    edge = max(high_mm, low_mm + sum(heights))
    for i in reversed(range(len(middles))):
        middles[i] = min(middles[i], edge - heights[i] / 2)
        edge = middles[i] - heights[i] / 2
    return tuple(middles)
