"""Solids, room in the mix and osmoles against dairy science, extension services and the trade."""

from __future__ import annotations

import pytest

from calibrator.model import Composition, MixingRate, PlanGroup, RateBasis, VolumeMeans
from calibrator.science import feeding, mixing, powder
from calibrator.science.powder import Part
from tests.outside.checks import COMMON_PRACTICE, FROM_MEMORY, check

POUND_G, OUNCE_G = 453.59237, 28.349523125
GALLON_ML, QUART_ML = 3785.411784, 946.352946
TYPICAL = mixing.powder_from(Composition())


def dried(fat: float, protein: float, lactose: float, ash: float) -> tuple[Composition, float]:
    """Milk's solids as a dry powder, and grams of it per gram of water; input in percent of the milk."""
    solids = fat + protein + lactose + ash
    share = 100.0 / solids
    label = Composition(
        protein_pct=protein * share, fat_pct=fat * share, fibre_pct=0.0, ash_pct=ash * share, moisture_pct=0.0
    )
    return label, solids / (100.0 - solids)


def test_strength_of_three_quarters_of_a_pound_in_three_quarters_of_a_gallon() -> None:
    rate = MixingRate(basis=RateBasis.MADE_UP, powder_mass_g=0.75 * POUND_G, volume_ml=0.75 * GALLON_ML)
    told = mixing.rate_in(RateBasis.SOLIDS, mixing.powder_per_water(rate, TYPICAL, 43.0), TYPICAL, 43.0)
    check(
        "solids of 0.75 lb made up to 0.75 gal, %",
        "Michigan State University Extension, total solids in milk replacer",
        11.63,
        100 * told.solids_share,
        0.1,
        "the source takes 8.6 lb per gallon",
    )


def test_solids_by_pounds() -> None:
    ratio = 1.25 / 8.75
    mix = mixing.mix_on_water(1000.0, ratio, TYPICAL, 20.0)
    check(
        "solids of 1.25 lb with 8.75 lb of water, %",
        "Virginia Tech extension, milk replacer solids",
        12.5,
        100 * mix.solids_share,
        1e-9,
    )


def test_solids_and_volume_of_150_grams_with_850_millilitres() -> None:
    mix = mixing.mix_of(850.0, 150.0, TYPICAL, 15.0)
    source = "Scotland's Farm Advisory Service, milk replacer mixing"
    check("solids of 150 g with 850 mL of water, %", source, 15.0, 100 * mix.solids_share, 0.05)
    check("volume of 150 g with 850 mL of water, L", source, 0.96, mix.volume_ml / 1000, 0.01)


@pytest.mark.parametrize(
    ("powder_g", "water_ml", "source", "expected_ml", "allowed_ml", "note"),
    [
        (150.0, 850.0, "Scotland's Farm Advisory Service, milk replacer mixing", 960.0, 10.0, ""),
        (10 * OUNCE_G, 2 * QUART_ML, "Trade", 2.2 * QUART_ML, 0.05 * QUART_ML, COMMON_PRACTICE),
    ],
)
def test_what_a_calf_drinks_where_the_plan_tells_water(
    powder_g: float, water_ml: float, source: str, expected_ml: float, allowed_ml: float, note: str
) -> None:
    rate = MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=powder_g, volume_ml=water_ml)
    group = PlanGroup(name="all", calves=1, volume_ml=water_ml, volume_means=VolumeMeans.WATER, rate=rate)
    mix = feeding.mix_per_calf(group, TYPICAL, 15.0, allowance_share=0.1)  # the allowance stays in the pail
    name = f"mix that a calf drinks of {powder_g:.0f} g on {water_ml:.0f} mL of water, mL"
    check(name, source, expected_ml, feeding.fed_ml(group, mix), allowed_ml, note)


@pytest.mark.parametrize(("fat", "snf"), [(3.2, 8.5), (4.0, 8.9), (0.1, 9.0)])
def test_density_of_milk_by_the_handbook(fat: float, snf: float) -> None:
    label, ratio = dried(fat, 0.385 * snf, 0.535 * snf, 0.08 * snf)
    mix = mixing.mix_on_water(1000.0, ratio, mixing.powder_from(label), 15.0)
    check(
        f"density of milk of {fat} % fat and {snf} % solids-not-fat at 15 °C, g/mL",
        "Dairy handbook formula, density = 100/(F/0.93 + SNF/1.608 + W)",
        100 / (fat / 0.93 + snf / 1.608 + 100 - fat - snf),
        mix.density_g_per_ml,
        0.0015,
        "the formula's water weighs 1 g/mL",
    )


@pytest.mark.parametrize(("fat", "snf"), [(3.2, 8.5), (5.0, 9.0)])
def test_density_of_milk_by_regression(fat: float, snf: float) -> None:
    label, ratio = dried(fat, 0.385 * snf, 0.535 * snf, 0.08 * snf)
    mix = mixing.mix_on_water(1000.0, ratio, mixing.powder_from(label), 10.0)
    check(
        f"density of milk of {fat} % fat and {snf} % solids-not-fat at 10 °C, g/mL",
        "Sherbon 1988, Physical properties of milk",
        1.003073 - 0.000179 * 10 - 0.000368 * fat + 0.00374 * snf,
        mix.density_g_per_ml,
        0.003,
        "cold fat is partly solid and takes less room",
    )


def test_density_of_skim_milk() -> None:
    label, ratio = dried(0.1, 3.45, 4.8, 0.75)
    mix = mixing.mix_on_water(1000.0, ratio, mixing.powder_from(label), 20.0)
    check(
        "density of skim milk at 20 °C, g/mL",
        "Walstra et al., Dairy Science and Technology",
        1.0345,
        mix.density_g_per_ml,
        0.0015,
        FROM_MEMORY,
    )


@pytest.mark.parametrize(("percent", "kg_per_m3"), [(5, 1017.8), (12, 1046.5), (15, 1059.2), (20, 1081.0)])
def test_one_measured_mix_up_tells_the_density_of_the_others(percent: float, kg_per_m3: float) -> None:
    """Sucrose at 10 % is taken as the measured mix-up; the other strengths follow."""
    water_ml = 900.0 / 0.9982
    room = (1000.0 / 1.0381 - water_ml) / 100.0
    sucrose = mixing.Powder(room, 1.0, 1000.0 / 342.30, 0.0)
    mix = mixing.mix_on_water(1000.0, percent / (100.0 - percent), sucrose, 20.0)
    check(
        f"density of {percent} % sucrose at 20 °C from one mix-up at 10 %, kg/m³",
        "CRC Handbook of Chemistry and Physics, concentrative properties of sucrose",
        kg_per_m3,
        1000 * mix.density_g_per_ml,
        0.4,
        "room per gram taken as constant",
    )


@pytest.mark.parametrize(
    ("name", "label", "carbohydrate"),
    [
        (
            "whole",
            Composition(protein_pct=26.32, fat_pct=26.71, fibre_pct=0.0, ash_pct=6.08, moisture_pct=2.47),
            38.42,
        ),
        (
            "nonfat",
            Composition(protein_pct=36.16, fat_pct=0.77, fibre_pct=0.0, ash_pct=7.93, moisture_pct=3.16),
            51.98,
        ),
    ],
)
def test_carbohydrate_by_difference(name: str, label: Composition, carbohydrate: float) -> None:
    check(
        f"carbohydrate of dried {name} milk, %",
        "USDA National Nutrient Database, dried milk",
        carbohydrate,
        100 * powder.parts(label).share(Part.CARBOHYDRATE),
        0.011,
        FROM_MEMORY,
    )


def test_osmolality_of_milk() -> None:
    label, ratio = dried(3.7, 3.3, 4.7, 0.72)
    mix = mixing.mix_on_water(1000.0, ratio, mixing.powder_from(label), 20.0)
    check(
        "osmolality of whole milk, mOsm/kg",
        "Freezing point of milk, −0.522 °C ÷ 1.858 °C kg/Osm",
        281.0,
        mix.osmolality_mosm_per_kg,
        2 * mix.osmolality_u,
        "twice the estimate's own standard uncertainty",
    )
    check(
        "osmolality of whole milk, mOsm/kg",
        "Scotland's Farm Advisory Service, milk replacer mixing",
        300.0,
        mix.osmolality_mosm_per_kg,
        2 * mix.osmolality_u,
        "twice the estimate's own standard uncertainty",
    )


@pytest.mark.parametrize(("ounces", "mosm", "solids"), [(8, 260.0, 10.7), (10, 325.0, 13.0)])
def test_figures_of_the_trade(ounces: float, mosm: float, solids: float) -> None:
    mix = mixing.mix_of(2 * QUART_ML, ounces * OUNCE_G, TYPICAL, 43.0)
    name = f"{ounces} oz on 2 qt of water"
    check(f"osmolality of {name}, mOsm/kg", "Trade", mosm, mix.osmolality_mosm_per_kg, 5.0, COMMON_PRACTICE)
    check(f"solids of {name}, %", "Trade", solids, 100 * mix.solids_share, 0.2, COMMON_PRACTICE)
