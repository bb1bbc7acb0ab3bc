"""Warmth against reference libraries, textbooks and the published equations."""

from __future__ import annotations

import pytest

from calibrator.model import Composition
from calibrator.science import heat, powder
from calibrator.science.powder import Part
from tests.outside.checks import LIBRARY, check

FLUIDS = {
    Part.PROTEIN: "FoodProtein",
    Part.FAT: "FoodFat",
    Part.CARBOHYDRATE: "FoodCarbohydrate",
    Part.FIBRE: "FoodFiber",
    Part.ASH: "FoodAsh",
    Part.MOISTURE: "FoodWater",
}


@pytest.mark.parametrize("part", list(Part))
@pytest.mark.parametrize("t", [20.0, 43.0])
def test_specific_heat_of_the_parts(part: Part, t: float) -> None:
    from CoolProp.CoolProp import PropsSI

    check(
        f"specific heat of {part} at {t:g} °C, kJ/(kg K)",
        "Choi and Okos 1986, library CoolProp",
        PropsSI("C", "T", t + 273.15, "P", 101325, f"INCOMP::{FLUIDS[part]}") / 1000,
        powder.part_specific_heat(part, t),
        1e-6,
        LIBRARY,
    )


def test_specific_heat_of_whole_milk() -> None:
    milk = Composition(protein_pct=3.3, fat_pct=3.7, fibre_pct=0.0, ash_pct=0.7, moisture_pct=87.5)
    check(
        "specific heat of whole milk at 20 °C, kJ/(kg K)",
        "Geankoplis, Transport Processes and Unit Operations, App. A.4",
        3.85,
        powder.specific_heat(milk, 20.0),
        0.02,
    )


@pytest.mark.parametrize("t", [10.0, 43.333, 60.0, 90.0])
def test_specific_heat_of_water(t: float) -> None:
    from iapws import IAPWS95

    check(
        f"specific heat of water at {t:g} °C, kJ/(kg K)",
        "IAPWS-95, library iapws",
        IAPWS95(T=t + 273.15, P=0.101325).cp,
        heat.WATER_HEAT_KJ_PER_KG_C,
        0.025,
        f"{LIBRARY}; one figure for all temperatures",
    )


@pytest.mark.parametrize(("hot", "cold", "wanted"), [(60.0, 10.0, 43.0), (80.0, 5.0, 43.0)])
def test_hot_and_cold_water_by_their_heat_content(hot: float, cold: float, wanted: float) -> None:
    from iapws import IAPWS95

    hot_h, cold_h, wanted_h = (IAPWS95(T=t + 273.15, P=0.101325).h for t in (hot, cold, wanted))
    check(
        f"share of water at {hot:g} °C, with water at {cold:g} °C, for {wanted:g} °C",
        "IAPWS-95, library iapws",
        (wanted_h - cold_h) / (hot_h - cold_h),
        heat.blend(1.0, wanted, hot, cold).hot_g,
        0.001,
        LIBRARY,
    )


def test_water_on_a_hot_pan() -> None:
    pan = heat.Bath(mass_g=500.0, specific_heat_kj_per_kg_c=0.900, temperature_c=150.0)
    check(
        "water that lands at 59.1 °C on 0.5 kg of aluminium at 150 °C, °C",
        "OpenStax, College Physics, example of calorimetry",
        20.0,
        heat.water_to_draw_c(59.1, 250.0, 0.0, Composition(), 20.0, pan),
        0.1,
        "59.1 is printed to three figures",
    )


def test_newtons_cooling() -> None:
    found = heat.cooling(90.0, 60.0, 1.0, 25.0)
    check(
        "minutes from 90 to 40 °C in a room of 25 °C, 60 °C after one",
        "University problem set, Newton's law of cooling",
        2.3687,
        found.minutes_until(90.0, 40.0),
        5e-5,
    )


def test_scald_caution() -> None:
    check(
        "lowest temperature with a stated time to a burn, °F",
        "U.S. Consumer Product Safety Commission, tap water scalds",
        120.0,
        heat.SCALD_CAUTION_C * 1.8 + 32,
        1e-9,
        "as widely reprinted",
    )
