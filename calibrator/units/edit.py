"""Values told finely enough to be typed again: what fills a field, and what a field says it understood."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from math import ceil, floor, log10

from calibrator.model import UnitSystem
from calibrator.units.kinds import Kind
from calibrator.units.registry import default_unit, from_base
from calibrator.units.rounding import is_on, on_ruler, round_to, tellable, trimmed, with_comma
from calibrator.units.show import other_system, show_length

_RULER = Fraction(1, 64)


def edit_text(value: float, kind: Kind, system: UnitSystem, *, decimal_comma: bool = False) -> str:
    """Text to fill a field with; reading it gives the value back, closer than any `show_…` step.

    To 0.01 oz (from 10 lb 0.001 lb), 0.01 fl oz, 0.001 qt or gal, a 64th or 0.001 in, 0.1 g, mL, mm or
    degree, 0.001 kg or L, 0.01 %, and never to fewer than three digits. Blank where there is no number.
    """
    if not tellable(value):
        return ""
    return precise(Fraction(value), kind, system, decimal_comma=decimal_comma).replace("−", "-")


def precise(value: Fraction, kind: Kind, system: UnitSystem, *, decimal_comma: bool = False) -> str:
    """What `edit_text` tells, for an exact value and with the real minus sign."""
    unit, places = _unit_and_places(abs(value), kind, system)
    amount = from_base(value, unit)
    text = _inches(amount, places) if unit == "in" else trimmed(amount, places)
    return with_comma(f"{text} {unit}".rstrip(), decimal_comma)


def at_most(value: Fraction, kind: Kind, system: UnitSystem, *, decimal_comma: bool = False) -> str:
    """A highest limit in two or three digits, rounded down so that what it says holds."""
    return _limit(value, kind, system, floor, decimal_comma)


def at_least(value: Fraction, kind: Kind, system: UnitSystem, *, decimal_comma: bool = False) -> str:
    """A lowest limit in two or three digits, rounded up so that what it says holds."""
    return _limit(value, kind, system, ceil, decimal_comma)


def in_brackets(value: Fraction, kind: Kind, system: UnitSystem, *, decimal_comma: bool = False) -> str:
    """A value in the other system, "(290.6 g)"; inches off the ruler's lines as "(≈ 1 5/16 in)"."""
    other = other_system(system)
    told = precise(value, kind, other, decimal_comma=decimal_comma)
    if told == precise(value, kind, system, decimal_comma=decimal_comma):
        return ""
    if kind is Kind.LENGTH and other is UnitSystem.FARM and not is_on(from_base(value, "in"), _RULER):
        told = f"≈ {show_length(float(value), other)}"
    return f"({told})"


def _inches(amount: Fraction, places: int) -> str:
    # 2.125 would be read as 2 1/8 and told so the next time: tell it so at once.
    rounded = round_to(amount, Fraction(10) ** -places)
    on_a_line = is_on(amount, _RULER) or (rounded and is_on(rounded, _RULER))
    return on_ruler(amount, _RULER) if on_a_line else trimmed(amount, places)


def _limit(
    value: Fraction,
    kind: Kind,
    system: UnitSystem,
    inward: Callable[[Fraction], int],
    decimal_comma: bool,
) -> str:
    unit, places = _unit_and_places(abs(value), kind, system)
    amount = from_base(value, unit)
    if unit == "in" and is_on(amount, _RULER):
        return f"{on_ruler(amount, _RULER)} in"
    if kind in (Kind.MASS, Kind.VOLUME, Kind.LENGTH) and amount:
        places = _limit_places(amount)
    fine = Fraction(10) ** places
    # A float's tail must not cost a whole step: 283.49523125 g is 10 oz, not 9.99.
    nearest = Fraction(round(amount * fine))
    count = nearest if abs(nearest - amount * fine) < Fraction(1, 10**6) else inward(amount * fine)
    return with_comma(f"{trimmed(count / fine, max(places, 0))} {unit}".rstrip(), decimal_comma)


def _limit_places(amount: Fraction) -> int:
    """The decimal places of a limit as people say it: a round one of three digits whole, else two digits, and three
    after a leading 1, where two would give away up to a tenth.
    """
    first = -floor(log10(abs(amount)))
    three = amount * Fraction(10) ** (first + 2)
    is_round = abs(three - round(three)) < Fraction(1, 10**4)
    return first + (2 if is_round or abs(three) < 200 else 1)


def _unit_and_places(size: Fraction, kind: Kind, system: UnitSystem) -> tuple[str, int]:
    farm = system is UnitSystem.FARM
    match kind:
        case Kind.MASS if farm:
            return ("lb", 3) if from_base(size, "lb") >= 10 else ("oz", 2)
        case Kind.MASS:
            return ("kg", 3) if size >= 1000 else ("g", 1)
        case Kind.VOLUME if farm:
            return _farm_volume(from_base(size, "qt"))
        case Kind.VOLUME:
            return ("L", 3) if size >= 1000 else ("mL", 1)
        case Kind.LENGTH:
            return ("in", 3) if farm else ("mm", 1)
        case Kind.TEMPERATURE:
            return default_unit(kind, system), 1
        case Kind.PERCENT:
            return "%", 2
        case Kind.DENSITY:
            return "g/mL", 3
    return "", 0


def _farm_volume(quarts: Fraction) -> tuple[str, int]:
    if quarts >= 4:
        return "gal", 3
    return ("qt", 3) if quarts >= 1 else ("fl oz", 2)
