"""The units, their spellings and their factors.

pint reads the factors from resources/units.txt, once, when a unit is added (`tests/make_unit_lines.py`); the program
reads what pint made of them, resources/unit_lines.json, because pint is slower to load than the whole first page.
"""

from __future__ import annotations

import json
from fractions import Fraction
from functools import cache
from types import MappingProxyType

from calibrator.model import UnitSystem
from calibrator.places import resource
from calibrator.units.kinds import Kind

# unit as shown → kind, name in resources/units.txt, other spellings (small letters, without dots)
UNITS: dict[str, tuple[Kind, str, str]] = {
    "g": (Kind.MASS, "gram", "gram grams gramme grammes gramo gramos"),
    "kg": (Kind.MASS, "kilogram", "kgs kilo kilos kilogram kilograms kilogramo kilogramos"),
    "oz": (Kind.MASS, "ounce", "ozs ounce ounces onza onzas"),
    "lb": (Kind.MASS, "pound", "lbs # pound pounds libra libras"),
    "mL": (
        Kind.VOLUME,
        "milliliter",
        "ml cc milliliter milliliters millilitre millilitres mililitro mililitros",
    ),
    "L": (Kind.VOLUME, "liter", "l lt lts liter liters litre litres litro litros"),
    "fl oz": (Kind.VOLUME, "fluid_ounce", "floz fl_oz fl_ozs fluid_oz fluid_ounce fluid_ounces"),
    "pt": (Kind.VOLUME, "pint", "pts pint pints pinta pintas"),
    "qt": (Kind.VOLUME, "quart", "qts quart quarts cuarto cuartos"),
    "gal": (Kind.VOLUME, "gallon", "gals gallon gallons galón galon galones"),
    "US cup": (Kind.VOLUME, "us_cup", "us_cup us_cups"),
    "label cup": (Kind.VOLUME, "label_cup", "label_cup label_cups"),
    "metric cup": (Kind.VOLUME, "metric_cup", "metric_cup metric_cups"),
    "mm": (Kind.LENGTH, "millimeter", "millimeter millimeters millimetre millimetres milímetro milímetros"),
    "cm": (Kind.LENGTH, "centimeter", "centimeter centimeters centimetre centimetres centímetro centímetros"),
    "m": (Kind.LENGTH, "meter", "meter meters metre metres metro metros"),
    "in": (Kind.LENGTH, "inch", '" inch inches pulgada pulgadas'),
    "ft": (Kind.LENGTH, "foot", "foot feet pie pies"),
    "°F": (Kind.TEMPERATURE, "degree_fahrenheit", "°f f degf deg_f fahrenheit degrees_fahrenheit"),
    "°C": (Kind.TEMPERATURE, "degree_celsius", "°c c degc deg_c celsius degrees_celsius"),
    "%": (Kind.PERCENT, "", "percent pct per_cent"),
}
_SPELLINGS = MappingProxyType(
    {
        spelling.replace("_", " "): symbol
        for symbol, (_, _, others) in UNITS.items()
        for spelling in (symbol.lower(), *others.split())
    }
)
_DEFAULTS = MappingProxyType(
    {
        UnitSystem.FARM: {Kind.MASS: "oz", Kind.VOLUME: "qt", Kind.LENGTH: "in", Kind.TEMPERATURE: "°F"},
        UnitSystem.METRIC: {Kind.MASS: "g", Kind.VOLUME: "L", Kind.LENGTH: "mm", Kind.TEMPERATURE: "°C"},
    }
)


_METRIC = frozenset({"g", "kg", "mm", "cm", "m", "mL", "L", "°C"})
GR = ("gr", "grs")
_ALIKE = frozenset({"%", ""})


def is_of(symbol: str, system: UnitSystem) -> bool:
    """Whether a farm of that system reads this unit as its own; a percentage or a count is everybody's."""
    return symbol in _ALIKE or (symbol in _METRIC) is (system is UnitSystem.METRIC)


def symbol_of(spelling: str, *, gr_is_gram: bool = False) -> str | None:
    """The unit as shown ("oz", "fl oz", "°F"), for any spelling of it; None where there is no such unit. `gr_is_gram`
    tells that gr is said for grams, as on every metric farm; elsewhere it may be a grain as well.
    """
    plain = " ".join(spelling.lower().replace(".", " ").split())
    return "g" if gr_is_gram and plain in GR else _SPELLINGS.get(plain)


def kind_of(symbol: str) -> Kind:
    """What a unit measures; KeyError for anything but a symbol that `symbol_of` gives."""
    return UNITS[symbol][0]


def default_unit(kind: Kind, system: UnitSystem) -> str:
    """The unit that a bare number takes: oz, qt, in, °F or g, L, mm, °C; % in both; blank for a count."""
    if kind is Kind.DENSITY:
        return "g/mL"
    return "%" if kind is Kind.PERCENT else _DEFAULTS[system].get(kind, "")


def to_base(amount: Fraction, symbol: str) -> Fraction:
    """An amount of a unit in its kind's base unit (g, mL, mm, °C, %), exactly."""
    factor, offset = _line(symbol)
    return amount * factor + offset


def from_base(value: Fraction, symbol: str) -> Fraction:
    """A value in the base unit (g, mL, mm, °C, %) told in another unit of its kind, exactly."""
    factor, offset = _line(symbol)
    return (value - offset) / factor


def span_in(difference: Fraction, symbol: str) -> Fraction:
    """A difference in the base unit told in another unit: like `from_base`, without a zero point."""
    return difference / _line(symbol)[0]


def _line(symbol: str) -> tuple[Fraction, Fraction]:
    """A unit's factor and zero point; a count and a percentage stay as they are."""
    return _lines().get(symbol, (Fraction(1), Fraction(0)))


@cache
def _lines() -> dict[str, tuple[Fraction, Fraction]]:
    told = json.loads(resource("unit_lines.json").read_text("utf-8"))
    return {symbol: (Fraction(factor), Fraction(zero)) for symbol, (factor, zero) in told.items()}
