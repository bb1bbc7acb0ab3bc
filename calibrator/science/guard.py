"""Refuses numbers that cannot be meant, in a sentence that names them."""

from __future__ import annotations

import math

from calibrator.science.errors import CannotCompute


def finite(value: float, what: str) -> float:
    """`value` itself; raises CannotCompute unless it is an ordinary number."""
    if not math.isfinite(value):
        raise CannotCompute("{what} must be an ordinary number.", what=what)
    return value


def positive(value: float, what: str) -> float:
    """`value` itself; raises CannotCompute unless it is above zero."""
    if finite(value, what) <= 0:
        raise CannotCompute("{what} must be greater than zero.", what=what)
    return value


def not_negative(value: float, what: str) -> float:
    """`value` itself; raises CannotCompute when it is below zero."""
    if finite(value, what) < 0:
        raise CannotCompute("{what} cannot be less than zero.", what=what)
    return value


def between(value: float, low: float, high: float, what: str, limits: str) -> float:
    """`value` itself; raises CannotCompute outside `low … high`, told as `limits`."""
    if not low <= finite(value, what) <= high:
        raise CannotCompute("{what} must lie between {limits}.", what=what, limits=limits)
    return value
