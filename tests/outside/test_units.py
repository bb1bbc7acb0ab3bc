"""Unit factors against published values.

NIST SP 811 (2008), App. B.8, and NIST Handbook 44, App. C: the values marked there as exact.
"""

from fractions import Fraction

import pytest
import scipy.constants

from calibrator.model import UnitSystem
from calibrator.units import Kind, read

# NIST Handbook 44, App. C, where these are marked exact.
EXACT = [
    ("1 lb", Kind.MASS, "453.59237"),
    ("1 oz", Kind.MASS, "28.349523125"),
    ("1 kg", Kind.MASS, "1000"),
    ("1 gal", Kind.VOLUME, "3785.411784"),
    ("1 qt", Kind.VOLUME, "946.352946"),
    ("1 pt", Kind.VOLUME, "473.176473"),
    ("1 fl oz", Kind.VOLUME, "29.5735295625"),
    ("1 US cup", Kind.VOLUME, "236.5882365"),
    ("1 L", Kind.VOLUME, "1000"),
    ("1 in", Kind.LENGTH, "25.4"),
    ("1 ft", Kind.LENGTH, "304.8"),
    ("1 cm", Kind.LENGTH, "10"),
    ("1 m", Kind.LENGTH, "1000"),
]

# NIST SP 811 (2008), App. B.8, to the seven figures printed there, in SI units.
PRINTED = [
    ("1 oz", Kind.MASS, 2.834952e-02, 1e3),
    ("1 lb", Kind.MASS, 4.535924e-01, 1e3),
    ("1 gal", Kind.VOLUME, 3.785412e-03, 1e6),
    ("1 qt", Kind.VOLUME, 9.463529e-04, 1e6),
    ("1 pt", Kind.VOLUME, 4.731765e-04, 1e6),
    ("1 fl oz", Kind.VOLUME, 2.957353e-05, 1e6),
    ("1 US cup", Kind.VOLUME, 2.365882e-04, 1e6),
    ("1 in", Kind.LENGTH, 2.54e-02, 1e3),
    ("1 ft", Kind.LENGTH, 3.048e-01, 1e3),
]

# scipy.constants, in SI units.
LIBRARY = [
    ("1 oz", Kind.MASS, scipy.constants.oz, 1e3),
    ("1 lb", Kind.MASS, scipy.constants.lb, 1e3),
    ("1 gal", Kind.VOLUME, scipy.constants.gallon_US, 1e6),
    ("1 fl oz", Kind.VOLUME, scipy.constants.fluid_ounce_US, 1e6),
    ("1 in", Kind.LENGTH, scipy.constants.inch, 1e3),
    ("1 ft", Kind.LENGTH, scipy.constants.foot, 1e3),
]


def value_of(text: str, kind: Kind) -> float:
    return read(text, kind, UnitSystem.FARM).value


@pytest.mark.parametrize(("text", "kind", "expected"), EXACT)
def test_handbook_44_exactly(text: str, kind: Kind, expected: str) -> None:
    assert value_of(text, kind) == float(Fraction(expected))


@pytest.mark.parametrize(("text", "kind", "expected", "per_si"), PRINTED)
def test_sp_811_as_printed(text: str, kind: Kind, expected: float, per_si: float) -> None:
    # Half a unit of the seventh figure.
    assert value_of(text, kind) == pytest.approx(expected * per_si, rel=5e-7)


@pytest.mark.parametrize(("text", "kind", "expected", "per_si"), LIBRARY)
def test_against_a_library_of_constants(text: str, kind: Kind, expected: float, per_si: float) -> None:
    assert value_of(text, kind) == pytest.approx(expected * per_si, rel=1e-14)


def test_a_gallon_is_231_cubic_inches() -> None:
    # NIST Handbook 44, App. C: US gallon = 231 cubic inches, exact.
    cubic_inch_ml = Fraction("25.4") ** 3 / 1000
    assert value_of("1 gal", Kind.VOLUME) == float(231 * cubic_inch_ml)


@pytest.mark.parametrize("fahrenheit", [-40.0, 0.0, 32.0, 98.6, 110.0, 212.0])
def test_degrees_fahrenheit(fahrenheit: float) -> None:
    # NIST SP 811 (2008), App. B.8: t/°C = (t/°F − 32)/1.8
    celsius = value_of(f"{fahrenheit} °F", Kind.TEMPERATURE)
    assert celsius == pytest.approx((fahrenheit - 32) / 1.8, abs=1e-12)
    library = scipy.constants.convert_temperature(fahrenheit, "Fahrenheit", "Celsius")
    assert celsius == pytest.approx(float(library), abs=1e-10)


def test_the_cup_of_a_label() -> None:
    # 21 CFR 101.9(b)(5)(viii): 1 cup means 240 mL on a nutrition label.
    assert value_of("1 label cup", Kind.VOLUME) == 240


def test_the_metric_cup() -> None:
    # common practice, no source
    assert value_of("1 metric cup", Kind.VOLUME) == 250
