"""A calf's day: supply adds up, needs grow with what they should, gain undoes energy."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calibrator.model import Composition, MixingRate, PlanGroup, RateBasis, VolumeMeans
from calibrator.science import mixing, nutrients
from calibrator.science.errors import CannotCompute
from calibrator.science.nutrients import Calf

lawful = settings(deadline=None, max_examples=80)
LABEL = Composition(protein_pct=25.0, fat_pct=20.0, fibre_pct=0.1, ash_pct=7.0, moisture_pct=4.0)
calves = st.builds(
    Calf,
    weight_kg=st.floats(25, 140),
    age_days=st.integers(0, 90),
    air_c=st.floats(-20, 35),
    eats_starter=st.booleans(),
)


def test_supply_by_the_label() -> None:
    day = nutrients.daily_supply(600.0, LABEL)
    assert (day.protein_g, day.fat_g, day.dry_matter_g) == pytest.approx((150.0, 120.0, 576.0))
    assert day.energy_mcal == pytest.approx(0.576 * nutrients.energy_mcal_per_kg_dm(LABEL))


def test_a_groups_calf_gets_every_feeding_of_the_day() -> None:
    group = PlanGroup(
        name="hutches",
        calves=40,
        volume_ml=2000.0,
        volume_means=VolumeMeans.WATER,
        rate=MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=150.0, volume_ml=1000.0),
        feedings_per_day=3,
    )
    day = nutrients.group_supply(group, LABEL, mixing.powder_from(LABEL), 43.0)
    assert day.powder_g == pytest.approx(900.0)
    with pytest.raises(CannotCompute, match="feedings"):
        nutrients.group_supply(replace(group, feedings_per_day=-1), LABEL, mixing.powder_from(LABEL), 43.0)


def test_fat_holds_more_energy_than_lactose() -> None:
    assert nutrients.energy_mcal_per_kg_dm(replace(LABEL, fat_pct=25.0)) > nutrients.energy_mcal_per_kg_dm(LABEL)


@lawful
@given(calves, st.floats(0.05, 1.5))
def test_gain_undoes_energy(calf: Calf, gain: float) -> None:
    assert nutrients.gain_kg_from_energy(calf, nutrients.energy_needed_mcal(calf, gain)) == pytest.approx(gain)


@lawful
@given(calves)
def test_no_gain_on_less_than_maintenance(calf: Calf) -> None:
    need = nutrients.maintenance_mcal(calf)
    assert nutrients.energy_needed_mcal(calf, 0.0) == pytest.approx(need)
    assert nutrients.gain_kg_from_energy(calf, 0.9 * need) == 0.0


def test_cold_costs_more_and_sooner_for_the_young() -> None:
    warm, cool = Calf(45.0, 10, 20.0), Calf(45.0, 10, 10.0)
    assert nutrients.maintenance_mcal(cool) > nutrients.maintenance_mcal(warm)
    assert nutrients.maintenance_mcal(replace(cool, age_days=40)) == nutrients.maintenance_mcal(
        replace(warm, age_days=40)
    )
    added = nutrients.maintenance_net_mcal(replace(cool, air_c=-5.0)) - nutrients.maintenance_net_mcal(warm)
    assert added == pytest.approx(0.00201 * 20 * 45.0**0.75)


@lawful
@given(calves, st.floats(0.0, 1.0), st.floats(0.05, 0.5))
def test_more_gain_needs_more_protein(calf: Calf, gain: float, more: float) -> None:
    low = nutrients.protein_needed_g(calf, gain, 600.0)
    assert 0 < low < nutrients.protein_needed_g(calf, gain + more, 600.0)


def test_protein_by_hand() -> None:
    """49 kg of a mature 700 kg on 0.6 kg of dry matter: worked out with a pocket calculator."""
    calf = Calf(weight_kg=49.0)
    assert nutrients.protein_needed_g(calf, 0.0, 600.0) == pytest.approx(34.9459, abs=1e-3)
    assert nutrients.protein_needed_g(calf, 0.5, 600.0) == pytest.approx(178.8137, abs=1e-3)


def test_protein_for_half_a_kilo_a_day_is_near_what_farms_feed() -> None:
    """Common practice, no source: about a quarter of 0.8 kg of dry matter."""
    assert 150 < nutrients.protein_needed_g(Calf(50.0), 0.5, 800.0) < 240


@pytest.mark.parametrize("calf", [Calf(0.0), Calf(math.nan), Calf(500.0), Calf(45.0, -1), Calf(45.0, 10, 80.0)])
def test_impossible_calves_are_refused(calf: Calf) -> None:
    with pytest.raises(CannotCompute, match=r"calf|air"):
        nutrients.energy_needed_mcal(calf, 0.5)


def test_impossible_figures_are_refused() -> None:
    calf = Calf(45.0)
    for ask in (
        lambda: nutrients.energy_needed_mcal(calf, -0.1),
        lambda: nutrients.gain_kg_from_energy(calf, -1.0),
        lambda: nutrients.protein_needed_g(calf, 3.0, 600.0),
        lambda: nutrients.protein_needed_g(calf, 0.5, -1.0),
        lambda: nutrients.protein_needed_g(calf, 0.5, 600.0, mature_kg=30.0),
        lambda: nutrients.daily_supply(-1.0, LABEL),
        lambda: nutrients.energy_mcal_per_kg_dm(Composition(moisture_pct=100.0)),
    ):
        with pytest.raises(CannotCompute, match=r"^[A-Z].*\.$"):
            ask()
