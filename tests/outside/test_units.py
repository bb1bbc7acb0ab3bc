"""Unit factors against published values and a library of constants."""

from fractions import Fraction

import pytest
import scipy.constants

from calibrator.model import UnitSystem
from calibrator.units import Kind, read

from .checks import COMMON_PRACTICE, FROM_MEMORY, LIBRARY, check

HANDBOOK = "NIST Handbook 44, App. C, exact values"
SP_811 = "NIST SP 811 (2008), App. B.8"
MASS, VOLUME, LENGTH = Kind.MASS, Kind.VOLUME, Kind.LENGTH

EXACT = [
    ("1 lb", MASS, "453.59237", ""),
    ("1 oz", MASS, "28.349523125", FROM_MEMORY),
    ("1 gal", VOLUME, "3785.411784", ""),
    ("1 qt", VOLUME, "946.352946", ""),
    ("1 pt", VOLUME, "473.176473", ""),
    ("1 fl oz", VOLUME, "29.5735295625", ""),
    ("1 US cup", VOLUME, "236.5882365", ""),
    ("1 in", LENGTH, "25.4", ""),
    ("1 ft", LENGTH, "304.8", ""),
]

# To the seven figures printed there, in SI units.
PRINTED = [
    ("1 oz", MASS, 2.834952e-02, 1e3, FROM_MEMORY),
    ("1 gal", VOLUME, 3.785412e-03, 1e6, ""),
    ("1 qt", VOLUME, 9.463529e-04, 1e6, FROM_MEMORY),
    ("1 pt", VOLUME, 4.731765e-04, 1e6, ""),
    ("1 fl oz", VOLUME, 2.957353e-05, 1e6, ""),
    ("1 US cup", VOLUME, 2.365882e-04, 1e6, ""),
]

CONSTANTS = [
    ("1 oz", MASS, scipy.constants.oz, 1e3),
    ("1 lb", MASS, scipy.constants.lb, 1e3),
    ("1 gal", VOLUME, scipy.constants.gallon_US, 1e6),
    ("1 fl oz", VOLUME, scipy.constants.fluid_ounce_US, 1e6),
    ("1 in", LENGTH, scipy.constants.inch, 1e3),
    ("1 ft", LENGTH, scipy.constants.foot, 1e3),
]

BASE = {MASS: "g", VOLUME: "mL", LENGTH: "mm", Kind.TEMPERATURE: "°C"}


def value_of(text: str, kind: Kind) -> float:
    return read(text, kind, UnitSystem.FARM).value


@pytest.mark.parametrize(("text", "kind", "expected", "note"), EXACT)
def test_handbook_44_exactly(text: str, kind: Kind, expected: str, note: str) -> None:
    check(f"{text} in {BASE[kind]}", HANDBOOK, float(Fraction(expected)), value_of(text, kind), 0, note)


@pytest.mark.parametrize(("text", "kind", "expected", "per_si", "note"), PRINTED)
def test_sp_811_as_printed(text: str, kind: Kind, expected: float, per_si: float, note: str) -> None:
    half_a_last_figure = 5e-7 * expected * per_si
    check(
        f"{text} in {BASE[kind]}",
        SP_811,
        expected * per_si,
        value_of(text, kind),
        half_a_last_figure,
        note,
    )


@pytest.mark.parametrize(("text", "kind", "expected", "per_si"), CONSTANTS)
def test_against_a_library_of_constants(text: str, kind: Kind, expected: float, per_si: float) -> None:
    computed = value_of(text, kind)
    check(f"{text} in {BASE[kind]}", "scipy.constants", expected * per_si, computed, 1e-13 * computed, LIBRARY)


def test_a_gallon_is_231_cubic_inches() -> None:
    cubic_inch_ml = Fraction("25.4") ** 3 / 1000
    check("231 in³ in mL", HANDBOOK, float(231 * cubic_inch_ml), value_of("1 gal", VOLUME), 0)


@pytest.mark.parametrize("fahrenheit", [-40.0, 0.0, 32.0, 98.6, 110.0, 212.0])
def test_degrees_fahrenheit(fahrenheit: float) -> None:
    celsius = value_of(f"{fahrenheit} °F", Kind.TEMPERATURE)
    quantity = f"{fahrenheit:g} °F in °C"
    check(quantity, f"{SP_811}: (t/°F − 32)/1.8", (fahrenheit - 32) / 1.8, celsius, 1e-12, FROM_MEMORY)
    library = float(scipy.constants.convert_temperature(fahrenheit, "Fahrenheit", "Celsius"))
    check(quantity, "scipy.constants", library, celsius, 1e-10, LIBRARY)


def test_the_cup_of_a_label() -> None:
    source = "21 CFR 101.9(b)(5)(viii), household measures of nutrition labels"
    check("1 label cup in mL", source, 240, value_of("1 label cup", VOLUME), 0, FROM_MEMORY)


def test_the_metric_cup() -> None:
    check("1 metric cup in mL", "kitchen measure", 250, value_of("1 metric cup", VOLUME), 0, COMMON_PRACTICE)
