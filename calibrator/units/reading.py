"""From what a person typed to a quantity of a possible size."""

from __future__ import annotations

import re
from fractions import Fraction
from functools import lru_cache
from types import MappingProxyType

from calibrator.model import UnitSystem
from calibrator.units.edit import at_least, at_most, in_brackets, precise
from calibrator.units.kinds import Kind, NotUnderstood, Quantity, clip
from calibrator.units.lexing import Speech, plain_text, stripped_text
from calibrator.units.meant import in_other_units, spaced
from calibrator.units.parse import Parsed, parse
from calibrator.units.registry import default_unit, is_of, kind_of, symbol_of
from calibrator.units.rounding import with_comma
from calibrator.values import dataclass

# Beyond these no farm goes: 1000 t, 1000 m³, 100 m, −60 … 150 °C. They catch the slip of a finger.
_HIGHEST = MappingProxyType(
    {Kind.MASS: 1e9, Kind.VOLUME: 1e9, Kind.LENGTH: 1e5, Kind.TEMPERATURE: 150.0, Kind.PERCENT: 100.0}
)
_HIGHEST_COUNT = 1e6
_COLDEST_C = -60.0
_NEVER_ZERO = (Kind.MASS, Kind.VOLUME, Kind.LENGTH)
_EXAMPLES = MappingProxyType(
    {
        Kind.MASS: ("10.2 oz", "280 g"),
        Kind.VOLUME: ("2 qt", "1.9 L"),
        Kind.LENGTH: ("1 5/16 in", "33 mm"),
        Kind.TEMPERATURE: ("110 °F", "43 °C"),
        Kind.PERCENT: ("40 %", "40 %"),
        Kind.COUNT: ("24", "24"),
    }
)
_GR = re.compile(r"(?<![^\W\d_])grs?(?![^\W\d_])", re.IGNORECASE)
# Scales of farms show these too.
_FURTHER = ("0.64 lb", "0.28 kg")


def read(
    text: str,
    kind: Kind,
    system: UnitSystem,
    *,
    decimal_comma: bool = False,
    default_unit: str | None = None,
    must_name: tuple[str, str] | None = None,
    lowest: float | None = None,
    highest: float | None = None,
) -> Quantity:
    """What a text means, or NotUnderstood with one sentence that says what to mend, and what was likelier meant where
    that can be taken here: a fraction with a space before it, or, where a highest size is told, another unit.

    A number without a unit takes `default_unit`, or the system's own for the kind; where `must_name` gives the two
    units that it could be in, it is refused. `lowest` and `highest`
    are in the kind's base unit (g, mL, mm, °C, %, pieces) and are both allowed themselves. Zero is refused
    for weights, volumes and lengths, and anything below zero for all but temperatures, unless `lowest`
    allows it. `decimal_comma` tells that the locale writes decimals with a comma.
    Raises ValueError for a density (shown only) and for a default unit of another kind.
    """
    asked = _Asked(kind, system, decimal_comma, _left_out(kind, system, default_unit), must_name, lowest, highest)
    try:
        return _read(text, asked)
    except NotUnderstood as problem:
        raise _with_the_meant(problem, text, asked) from None


@dataclass(frozen=True)
class _Asked:
    """What a field takes; `left_out` is the unit of a number without one."""

    kind: Kind
    system: UnitSystem
    decimal_comma: bool
    left_out: str
    must_name: tuple[str, str] | None
    lowest: float | None
    highest: float | None


@lru_cache(maxsize=4096)  # a form asks all of its fields anew at each key, and most stand as they stood
def _read(text: str, asked: _Asked) -> Quantity:
    kind, system, decimal_comma, must_name = asked.kind, asked.system, asked.decimal_comma, asked.must_name
    speech = _speech(kind, system, decimal_comma)
    parsed = parse(text, kind, asked.left_out, speech)
    told = (parsed.value, kind, system)
    typed = stripped_text(text)
    if parsed.bare and must_name is not None:
        raise speech.problem("unit_needed", part=typed, unit=must_name[0], other=must_name[1])
    _check_size(parsed.value, typed, kind, system, speech, asked.lowest, asked.highest)
    return Quantity(
        value=float(parsed.value),
        typed=typed,
        shown=precise(*told, decimal_comma=decimal_comma),
        also="" if is_of(parsed.unit, system) else in_brackets(*told, decimal_comma=decimal_comma),
        kind=kind,
        unit=parsed.unit,
        bare=parsed.bare,
    )


def _with_the_meant(problem: NotUnderstood, text: str, asked: _Asked) -> NotUnderstood:
    """The same refusal, with what was likelier meant; as it is where nothing else can be taken here."""
    plain = plain_text(text, _speech(asked.kind, asked.system, asked.decimal_comma)) if text.strip() else ""
    code, told = problem.code, problem.params
    if code == "improper":
        meant = [one for one in spaced(plain) if _is_taken(one, asked)]
        meant = [with_unit(one, asked.kind, asked.system, default_unit=asked.left_out or None) for one in meant]
        if len(meant) == 2:
            return NotUnderstood("improper_either", **told, one=meant[0], other=meant[1])
        return NotUnderstood("improper_meant", **told, meant=meant[0]) if len(meant) == 1 else problem
    if code in ("too_little", "too_much") and asked.highest is not None:
        others = in_other_units(plain, asked.kind, asked.system, asked.left_out)
        likely = next((one for one in others if _is_taken(one, asked)), None)
        return NotUnderstood(f"{code}_meant", **told, meant=likely) if likely is not None else problem
    return problem


def _is_taken(text: str, asked: _Asked) -> bool:
    if clip(text) != text:
        return False  # in a sentence it would not stand whole
    try:
        _read(text, asked)
    except NotUnderstood:
        return False
    return True


def with_unit(
    text: str, kind: Kind, system: UnitSystem, *, decimal_comma: bool = False, default_unit: str | None = None
) -> str:
    """The same text, its unit written out where it was left out: "10.2" becomes "10.2 oz".

    So it keeps its meaning when the unit system changes; gr becomes g, which means a gram everywhere. A text that is
    not understood stays as it is.
    """
    left_out = _left_out(kind, system, default_unit)
    speech = _speech(kind, system, decimal_comma)
    try:
        parsed: Parsed = parse(text, kind, left_out, speech)
    except NotUnderstood:
        return text
    if parsed.bare:
        return f"{stripped_text(text).rstrip('°')} {left_out}".rstrip()
    return _GR.sub("g", text) if speech.gr_is_gram else text


def example(kind: Kind, system: UnitSystem, *, unit: str | None = None, decimal_comma: bool = False) -> str:
    """A text that a field of this kind takes, to show people how; in a certain unit where that is asked for.

    Raises ValueError for a unit that no example is told in.
    """
    usual = _EXAMPLES[kind]
    wanted = unit or default_unit(kind, system)
    told = next((one for one in (*usual, *_FURTHER) if one.split()[-1] == wanted), None)
    if told is None and unit is not None:
        raise ValueError(f"no example in {unit}")
    return with_comma(told or usual[0 if system is UnitSystem.FARM else 1], decimal_comma)


def _speech(kind: Kind, system: UnitSystem, decimal_comma: bool) -> Speech:
    if kind is Kind.DENSITY:
        raise ValueError("A density is shown, never typed.")
    return Speech(decimal_comma, example(kind, system, decimal_comma=decimal_comma), system is UnitSystem.METRIC)


def _left_out(kind: Kind, system: UnitSystem, given: str | None) -> str:
    if given is None:
        return default_unit(kind, system)
    symbol = symbol_of(given)
    if symbol is None or kind_of(symbol) is not kind:
        raise ValueError(f"{given} is no unit of {kind}.")
    return symbol


def _check_size(
    value: Fraction,
    typed: str,
    kind: Kind,
    system: UnitSystem,
    speech: Speech,
    lowest: float | None,
    highest: float | None,
) -> None:
    low = lowest if lowest is not None else _COLDEST_C if kind is Kind.TEMPERATURE else 0.0
    high = highest if highest is not None else _HIGHEST.get(kind, _HIGHEST_COUNT)
    if value < 0 and low >= 0 and kind is not Kind.TEMPERATURE:
        raise speech.problem("negative", part=typed)
    if value == 0 and (low > 0 or lowest is None) and kind in _NEVER_ZERO:
        raise speech.problem("zero")
    # Limits come from floats: a typed value that becomes the very same float is at the limit, not past it.
    if float(value) < low:
        limit = at_least(Fraction(low), kind, system, decimal_comma=speech.decimal_comma)
        raise speech.problem("too_little", part=typed, limit=limit)
    if float(value) > high:
        limit = at_most(Fraction(high), kind, system, decimal_comma=speech.decimal_comma)
        raise speech.problem("too_much", part=typed, limit=limit)
