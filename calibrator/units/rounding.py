"""Rounding for people, and the plain text of a rounded number.

One rule: to the nearest step, halves away from zero. A value within a billionth of a step from a half counts
as a half, so that 10.25 oz kept in grams still rounds as 10.25. Minus is the real sign.
"""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache
from math import floor, isfinite, log10

_SNAPS = 10**9
_SNAP = Fraction(1, _SNAPS)
_RULER_PARTS = (2, 4, 8, 16, 32, 64)
_MOST = 1e15


def tellable(value: float) -> bool:
    """Whether a value is a number of a size that text is of use for: below 10¹⁵, no NaN, no infinity."""
    return isfinite(value) and abs(value) < _MOST


def round_to(amount: Fraction, step: Fraction) -> Fraction:
    """The nearest multiple of `step`, halves away from zero."""
    count = _nearest(abs(amount.numerator) * step.denominator, amount.denominator * step.numerator)
    return step * (count if amount >= 0 else -count)


def _nearest(size: int, unit: int) -> int:
    """How often `unit` goes into `size`, to the nearest. In whole numbers: every figure of a screen comes here."""
    return (size * _SNAPS + unit * (_SNAPS // 2 + 1)) // (unit * _SNAPS)


def is_on(amount: Fraction, step: Fraction) -> bool:
    """Whether an amount is a multiple of `step`, within a billionth."""
    return abs(amount - round_to(amount, step)) <= _SNAP


def decimals(amount: Fraction, places: int) -> str:
    """Plain decimal text with so many places; a negative number of places rounds to tens, hundreds …"""
    more, less = 10 ** max(places, 0), 10 ** max(-places, 0)
    count = _nearest(abs(amount.numerator) * more, amount.denominator * less)
    sign = "−" if amount < 0 < count else ""
    whole, rest = divmod(count * less, more)
    return f"{sign}{whole}.{rest:0{places}d}" if places > 0 else f"{sign}{whole}"


def on_step(amount: Fraction, step: Fraction) -> str:
    """The rounded amount, with as many decimals as the step has (at most three)."""
    places = next((places for places in range(3) if (step * 10**places).denominator == 1), 3)
    return decimals(round_to(amount, step), places)


def on_ruler(amount: Fraction, step: Fraction) -> str:
    """The rounded amount with a fraction, 2 1/4, for steps of halves to 64ths; with decimals for others."""
    if step.denominator not in _RULER_PARTS:
        return on_step(amount, step)
    rounded = round_to(amount, step)
    whole, rest = divmod(abs(rounded), 1)
    told = " ".join(str(part) for part in (whole, rest) if part) or "0"
    return f"−{told}" if rounded < 0 else told


def in_two(amount: Fraction, step: Fraction, ratio: int) -> tuple[str, Fraction]:
    """Whole large units (text, with sign) and the rest in small ones, `ratio` small to a large.

    Rounded first, so that 15.96 oz become the next pound.
    """
    rounded = round_to(amount, step)
    whole, rest = divmod(abs(rounded), ratio)
    return f"−{whole}" if rounded < 0 else str(whole), rest


def trimmed(amount: Fraction, places: int) -> str:
    """Decimal text to so many places, or to three digits where that is more, without trailing noughts."""
    text = decimals(amount, at_least_three_digits(amount, places))
    return text.rstrip("0").rstrip(".") if "." in text else text


def at_least_three_digits(amount: Fraction, places: int) -> int:
    """The decimal places that show three digits, where `places` would show fewer (nine at most)."""
    if not 0 < abs(amount) < 100:
        return places
    return max(places, min(9, 2 - floor(log10(abs(amount)))))


def uncertainty_places(uncertainty: Fraction) -> int:
    """The decimal places that leave two significant digits, also where 9.96 has become 10."""
    places = 1 - floor(log10(uncertainty))
    grown = round_to(uncertainty, Fraction(10) ** -places) >= Fraction(10) ** (2 - places)
    return places - 1 if grown else places


def exact_step(step: float) -> Fraction:
    """A step as the fraction that the float is. Raises ValueError for one that is not above zero."""
    if not (isfinite(step) and step > 0):
        raise ValueError("A rounding step is above zero.")
    return Fraction(step)


def plain_step(step: float) -> Fraction:
    """A step as it was meant: 0.1 is 1/10. Raises ValueError for one that is not above zero."""
    return exact_step(step).limit_denominator(1000)


_COUNTED = (Fraction(1), Fraction(2), Fraction(5), Fraction(5, 2), Fraction(5, 4))
_POUND_IN_OZ = Fraction(16)
_PLAIN_STEPS = (_POUND_IN_OZ, *(lead * Fraction(10) ** power for power in range(-5, 6) for lead in _COUNTED))


@lru_cache(maxsize=256)  # a farm's scales have a few, and every weight asks
def scale_step(step: Fraction) -> Fraction:
    """A scale's step where displays count by it (1, 2, 5, 1/4, 1/8 and their tens); else the power of ten below."""
    counted = next((plain for plain in _PLAIN_STEPS if abs(plain - step) <= step / 10_000), None)
    return counted or Fraction(10) ** floor(log10(step))


def with_comma(text: str, decimal_comma: bool) -> str:
    """A figure as it is written where the comma is the decimal sign; else as it stands."""
    return text.replace(".", ",") if decimal_comma else text
