"""Refuses numbers that cannot be meant, in a sentence that names them."""

from __future__ import annotations

import math

from calibrator.science.errors import CannotCompute


def finite(value: float, what: str) -> float:
    """`value` itself; raises CannotCompute unless it is an ordinary number."""
    if not math.isfinite(value):
        raise CannotCompute(f"{what} must be an ordinary number.")
    return value


def positive(value: float, what: str) -> float:
    """`value` itself; raises CannotCompute unless it is above zero."""
    if finite(value, what) <= 0:
        raise CannotCompute(f"{what} must be greater than zero.")
    return value


def not_negative(value: float, what: str) -> float:
    """`value` itself; raises CannotCompute when it is below zero."""
    if finite(value, what) < 0:
        raise CannotCompute(f"{what} cannot be less than zero.")
    return value


def between(value: float, low: float, high: float, what: str, limits: str) -> float:
    """`value` itself; raises CannotCompute outside `low … high`, told as `limits`."""
    if not low <= finite(value, what) <= high:
        raise CannotCompute(f"{what} must lie between {limits}.")
    return value
