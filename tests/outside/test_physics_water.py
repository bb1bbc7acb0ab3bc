"""Water, air and volume by weighing against published tables and reference libraries."""

from __future__ import annotations

import math

import pytest

from calibrator.model import Box, Cylinder, TaperedCup
from calibrator.science import poured, scoop, water
from tests.outside.checks import FROM_MEMORY, LIBRARY, check

TANAKA = "Tanaka et al. 2001, Metrologia 38:301–309"
INCH_MM, GALLON_ML, ML_PER_IN3 = 25.4, 3785.411784, 16.387064


@pytest.mark.parametrize(
    ("t", "kg_per_m3"),
    [(0, 999.84283), (4, 999.97495), (20, 998.20675), (25, 997.04702), (40, 992.21521)],
)
def test_density_to_40_degrees(t: float, kg_per_m3: float) -> None:
    check(f"density of water at {t} °C, kg/m³", TANAKA, kg_per_m3, 1000 * water.density_g_per_ml(t), 6e-6)


@pytest.mark.parametrize("t", [10.0, 30.0, 43.333, 48.889, 60.0, 75.0, 90.0, 99.0])
def test_density_against_the_reference_equation(t: float) -> None:
    from iapws import IAPWS95

    check(
        f"density of water at {t:g} °C, kg/m³",
        "IAPWS-95, library iapws",
        IAPWS95(T=t + 273.15, P=0.101325).rho,
        1000 * water.density_g_per_ml(t),
        0.01,
        f"{LIBRARY}; ten parts in a million",
    )


@pytest.mark.parametrize(("t", "g_per_ml"), [(50, 0.98804), (60, 0.98320), (70, 0.97776), (80, 0.97179)])
def test_density_of_warm_water_as_tables_print_it(t: float, g_per_ml: float) -> None:
    check(
        f"density of water at {t} °C, g/mL",
        "CRC Handbook of Chemistry and Physics, standard density of water",
        g_per_ml,
        water.density_g_per_ml(t),
        1e-5,
        FROM_MEMORY,
    )


@pytest.mark.parametrize(
    ("t", "hpa", "factor"),
    [
        (15, 1013, 1.0020),
        (20, 1013, 1.0029),
        (25, 1013, 1.0040),
        (30, 1013, 1.0054),
        (20, 800, 1.0026),
        (25, 800, 1.0038),
        (30, 853, 1.0052),
    ],
)
def test_millilitres_per_gram_weighed(t: float, hpa: float, factor: float) -> None:
    air = water.air_density_g_per_ml(t, hpa)
    check(
        f"mL per g weighed (Z) at {t} °C and {hpa} hPa",
        "ISO 8655-6, table of Z as reprinted in pipette manuals",
        factor,
        water.volume_ml(1.0, t, air_density_g_per_ml=air),
        6e-5,
        "printed to four decimals",
    )


@pytest.mark.parametrize(("t", "pa", "humidity"), [(20, 101325, 0.5), (10, 90000, 0.3), (30, 101325, 0.8)])
def test_density_of_moist_air(t: float, pa: float, humidity: float) -> None:
    from CoolProp.CoolProp import HAPropsSI

    expected = (1 + HAPropsSI("W", "T", t + 273.15, "P", pa, "R", humidity)) / HAPropsSI(
        "Vda", "T", t + 273.15, "P", pa, "R", humidity
    )
    check(
        f"density of air at {t} °C, {pa / 100:g} hPa and {humidity:.0%}, kg/m³",
        "ASHRAE RP-1485 moist air, library CoolProp",
        expected,
        1000 * water.air_density_g_per_ml(t, pa / 100, 100 * humidity),
        1e-3,
        LIBRARY,
    )


def test_a_gallon_is_a_box_of_231_cubic_inches() -> None:
    box = Box(length_mm=11 * INCH_MM, width_mm=7 * INCH_MM, height_mm=3 * INCH_MM)
    check(
        "volume of a box of 11 × 7 × 3 in, mL",
        "NIST Handbook 44, App. C: 1 gallon = 231 in³ exactly",
        GALLON_ML,
        scoop.rim_volume_ml(box),
        1e-9,
    )


def test_the_bushel_is_a_cylinder() -> None:
    measure = Cylinder(diameter_mm=18.5 * INCH_MM, height_mm=8 * INCH_MM)
    check(
        "volume of a cylinder 18.5 in across and 8 in deep, in³",
        "NIST Handbook 44, App. C: 1 struck bushel = 2150.42 in³",
        2150.42,
        scoop.rim_volume_ml(measure) / ML_PER_IN3,
        0.005,
    )


@pytest.mark.parametrize("level", [20.0, 75.0, 120.0])
def test_a_tapered_cup_against_integration(level: float) -> None:
    from scipy.integrate import quad

    cup = TaperedCup(rim_diameter_mm=104.0, floor_diameter_mm=78.0, height_mm=120.0)
    expected, _ = quad(lambda h: math.pi * (39.0 + 13.0 * h / 120.0) ** 2 / 1000.0, 0.0, level)
    check(
        f"volume of a tapered cup to {level:g} mm, mL",
        "scipy, integrate.quad",
        expected,
        scoop.volume_ml(cup, level),
        1e-9,
        LIBRARY,
    )


@pytest.mark.parametrize("at", [0.05, 0.15, 0.9, 3.0, 6.0])
def test_the_rising_curve_on_its_authors_own_data(at: float) -> None:
    from scipy.interpolate import PchipInterpolator

    x = (0.0, 0.10, 0.20, 0.71, 1.21, 2.01, 4.01, 7.01, 12.01)
    y = (0.0, 2.76429e-5, 4.37498e-2, 0.169183, 0.469428, 0.943740, 0.998636, 0.999919, 0.999994)
    check(
        f"monotone curve through Fritsch and Carlson's data, at {at:g}",
        "Fritsch and Carlson 1980, SIAM J. Numer. Anal. 17:238, data set 3, by scipy PchipInterpolator",
        float(PchipInterpolator(x, y)(at)),
        poured.rising_curve(x, y).value(at),
        1e-12,
        f"{LIBRARY}; data {FROM_MEMORY}",
    )


def test_slopes_of_the_rising_curve() -> None:
    from scipy.interpolate import PchipInterpolator

    x, y = (0.0, 12.0, 30.0, 60.0, 95.0), (0.0, 20.0, 90.0, 260.0, 520.0)
    ours, theirs = poured.rising_curve(x, y), PchipInterpolator(x, y).derivative()
    for at in (6.0, 25.0, 50.0, 90.0):
        check(
            f"area of a poured scoop at {at:g} mm, cm²",
            "scipy, interpolate.PchipInterpolator",
            10 * float(theirs(at)),
            10 * ours.slope(at),
            1e-9,
            LIBRARY,
        )
