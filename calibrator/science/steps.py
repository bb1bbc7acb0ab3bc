"""What is weighed, drawn or told only in whole steps: of a scale, of a jug, of a ruler."""

from __future__ import annotations

import math

_SNAP = 1e-9  # of a step: a half stays one whatever the last digit of a sum made of it


def to_step(value: float, step: float) -> float:
    """The multiple of `step` nearest to `value`, halves away from zero as `units` shows them; both in one
    unit.

    A step of 0 leaves the value as it is.
    """
    if not step:
        return value
    return math.copysign(math.floor(abs(value) / step + 0.5 + _SNAP) * step, value)


def down_to_step(value: float, step: float) -> float:
    """The greatest multiple of `step` that is no more than `value`; otherwise as `to_step`. The value itself where that
    would be nothing."""
    return (math.floor(value / step + _SNAP) * step if step else 0.0) or value
