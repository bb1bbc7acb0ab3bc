"""Rates into one another, masses and volumes that add up, and the trade's own figures."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calibrator.model import Composition, MixingRate, RateBasis
from calibrator.science import mixing
from calibrator.science.errors import CannotCompute

lawful = settings(deadline=None, max_examples=120)
OUNCE_G, QUART_ML = 28.349523125, 946.352946
POWDER = mixing.powder_from(Composition())
WARM = 43.0

ratios = st.floats(1e-4, 0.6)
temperatures = st.floats(0.0, 100.0)
volumes = st.floats(10.0, 1e6)
bases = st.sampled_from(list(RateBasis))
powders = st.builds(
    mixing.Powder,
    specific_volume_ml_per_g=st.floats(0.5, 1.1),
    dry_matter_share=st.floats(0.9, 1.0),
    mosmol_per_g=st.floats(0.5, 4.0),
    mosmol_u_per_g=st.floats(0.0, 0.5),
)


def on_two_quarts(ounces: float) -> mixing.Mix:
    rate = MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=ounces * OUNCE_G, volume_ml=2 * QUART_ML)
    ratio = mixing.powder_per_water(rate, POWDER, WARM)
    return mixing.mix_on_water(2 * QUART_ML, ratio, POWDER, WARM)


@lawful
@given(bases, ratios, powders, temperatures, volumes)
def test_every_basis_returns_the_same_mix(
    basis: RateBasis, ratio: float, powder: mixing.Powder, t: float, volume: float
) -> None:
    told = mixing.rate_in(basis, ratio, powder, t, volume)
    assert told.basis is basis
    assert mixing.powder_per_water(told, powder, t) == pytest.approx(ratio, rel=1e-12)


@lawful
@given(bases, bases, ratios, powders, temperatures)
def test_from_any_basis_to_any_other_and_back(
    one: RateBasis, other: RateBasis, ratio: float, powder: mixing.Powder, t: float
) -> None:
    first = mixing.rate_in(one, ratio, powder, t)
    across = mixing.rate_in(other, mixing.powder_per_water(first, powder, t), powder, t)
    back = mixing.rate_in(one, mixing.powder_per_water(across, powder, t), powder, t)
    assert back.powder_mass_g == pytest.approx(first.powder_mass_g, rel=1e-12)
    assert back.solids_share == pytest.approx(first.solids_share, rel=1e-12)


@lawful
@given(ratios, powders, temperatures, volumes)
def test_masses_and_volumes_add_up(ratio: float, powder: mixing.Powder, t: float, water: float) -> None:
    mix = mixing.mix_on_water(water, ratio, powder, t)
    assert mix.mass_g == pytest.approx(mix.water_g + mix.powder_g, rel=1e-14)
    assert mix.volume_ml == pytest.approx(mix.water_ml + mix.powder_g * powder.specific_volume_ml_per_g, rel=1e-14)
    assert mix.solids_share * mix.mass_g == pytest.approx(mix.powder_g, rel=1e-12)
    assert mix.powder_g_per_l * mix.volume_ml / 1000 == pytest.approx(mix.powder_g, rel=1e-12)
    assert mix.dry_matter_share == pytest.approx(mix.solids_share * powder.dry_matter_share, rel=1e-12)
    osmoles = mix.powder_g * powder.mosmol_per_g
    assert mix.osmolality_mosm_per_kg * mix.water_g / 1000 == pytest.approx(osmoles, rel=1e-12)
    assert mix.osmolality_u * mix.water_g / 1000 == pytest.approx(mix.powder_g * powder.mosmol_u_per_g, rel=1e-12)
    assert mix.ratio == pytest.approx(ratio, rel=1e-12)
    assert mix.density_g_per_ml == pytest.approx(mix.mass_g / mix.volume_ml)


@lawful
@given(ratios, powders, temperatures, volumes)
def test_a_mix_made_to_volume_has_it(ratio: float, powder: mixing.Powder, t: float, volume: float) -> None:
    mix = mixing.mix_to_volume(volume, ratio, powder, t)
    assert mix.volume_ml == pytest.approx(volume, rel=1e-12)
    again = mixing.mix_of(mix.water_ml, mix.powder_g, powder, t)
    assert again.volume_ml == pytest.approx(volume, rel=1e-12)


@lawful
@given(ratios, st.floats(1.001, 2.0), powders, temperatures)
def test_more_powder_is_more_of_everything(ratio: float, times: float, powder: mixing.Powder, t: float) -> None:
    weak = mixing.mix_on_water(1000.0, ratio, powder, t)
    strong = mixing.mix_on_water(1000.0, ratio * times, powder, t)
    assert strong.solids_share > weak.solids_share
    assert strong.powder_g_per_l > weak.powder_g_per_l
    assert strong.osmolality_mosm_per_kg > weak.osmolality_mosm_per_kg
    assert strong.volume_ml > weak.volume_ml


@lawful
@given(st.floats(0.01, 0.4), powders, temperatures)
def test_on_top_of_water_is_weaker_than_made_up(ratio: float, powder: mixing.Powder, t: float) -> None:
    grams = ratio * 1000.0
    on = MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=grams, volume_ml=1000.0)
    up = replace(on, basis=RateBasis.MADE_UP)
    assert mixing.powder_per_water(on, powder, t) < mixing.powder_per_water(up, powder, t)


def test_ten_ounces_on_two_quarts_is_about_13_percent_solids() -> None:
    """Common practice, no source."""
    assert on_two_quarts(10).solids_share == pytest.approx(0.13, abs=0.002)


def test_eight_ounces_on_two_quarts_is_about_10_7_percent_solids() -> None:
    """Common practice, no source."""
    assert on_two_quarts(8).solids_share == pytest.approx(0.107, abs=0.002)


def test_two_quarts_with_ten_ounces_do_not_fit_a_two_quart_bottle() -> None:
    """Common practice, no source."""
    mix = on_two_quarts(10)
    assert mix.volume_ml > 2 * QUART_ML * 1.05


def test_in_a_gallon_jug_the_powder_raises_the_level_by_about_half_an_inch() -> None:
    """Common practice, no source; a gallon jug is about six inches wide."""
    mix = on_two_quarts(10)
    area_mm2 = math.pi / 4 * (6 * 25.4) ** 2
    assert (mix.volume_ml - mix.water_ml) * 1000 / area_mm2 / 25.4 == pytest.approx(0.5, abs=0.1)


@pytest.mark.parametrize(("ounces", "osmolality"), [(8, 260), (10, 325)])
def test_osmolality_of_the_trade(ounces: float, osmolality: float) -> None:
    """Common practice, no source: about 260 and 325 mOsm, linear in powder on the same water."""
    mix = on_two_quarts(ounces)
    assert mix.osmolality_mosm_per_kg == pytest.approx(osmolality, rel=0.015)
    assert mix.osmolality_u > 0.1 * mix.osmolality_mosm_per_kg


def test_osmolality_is_linear_in_powder() -> None:
    assert on_two_quarts(10).osmolality_mosm_per_kg == pytest.approx(
        on_two_quarts(8).osmolality_mosm_per_kg * 10 / 8, rel=1e-12
    )


def test_dried_whole_milk_made_up_to_milk_is_near_270() -> None:
    """Common practice, no source: whole milk about 270 mOsm. Composition of dried whole milk from memory."""
    whole_milk = Composition(protein_pct=26.3, fat_pct=26.7, fibre_pct=0.0, ash_pct=6.1, moisture_pct=2.5)
    mix = mixing.mix_on_water(1000.0, 0.125 / 0.875, mixing.powder_from(whole_milk), 20.0)
    assert mix.osmolality_mosm_per_kg == pytest.approx(270.0, abs=10.0)


def test_a_laboratory_value_takes_the_estimates_place() -> None:
    own = mixing.powder_from(Composition(), lab_mosmol_per_g=2.4)
    assert own.mosmol_per_g == 2.4
    assert own.mosmol_u_per_g == pytest.approx(0.072)
    with pytest.raises(CannotCompute):
        mixing.powder_from(Composition(), lab_mosmol_per_g=0.0)


def test_plain_water_is_a_mix_of_nothing() -> None:
    mix = mixing.mix_on_water(1000.0, 0.0, POWDER, 20.0)
    assert (mix.solids_share, mix.osmolality_mosm_per_kg, mix.volume_ml) == (0.0, 0.0, 1000.0)


@pytest.mark.parametrize(
    "rate",
    [
        MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=10.0),
        MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=-1.0, volume_ml=100.0),
        MixingRate(basis=RateBasis.MADE_UP, powder_mass_g=10.0, volume_ml=math.nan),
        MixingRate(basis=RateBasis.PER_FINISHED, powder_mass_g=200.0, volume_ml=100.0),
        MixingRate(basis=RateBasis.SOLIDS, solids_share=1.0),
        MixingRate(basis=RateBasis.DRY_MATTER, solids_share=-0.1),
        MixingRate(basis=RateBasis.DRY_MATTER, solids_share=0.95),
    ],
)
def test_rates_that_no_mix_can_have_are_refused(rate: MixingRate) -> None:
    with pytest.raises(CannotCompute, match=r"^[A-Z].*\.$"):
        mixing.powder_per_water(rate, POWDER, WARM)


def test_impossible_amounts_are_refused() -> None:
    for make in (
        lambda: mixing.mix_on_water(0.0, 0.1, POWDER, WARM),
        lambda: mixing.mix_on_water(1.0, -0.1, POWDER, WARM),
        lambda: mixing.mix_to_volume(math.nan, 0.1, POWDER, WARM),
        lambda: mixing.mix_of(1.0, -1.0, POWDER, WARM),
        lambda: mixing.rate_in(RateBasis.SOLIDS, -0.1, POWDER, WARM),
        lambda: mixing.rate_in(RateBasis.ON_WATER, 0.1, POWDER, WARM, 0.0),
        lambda: mixing.mix_on_water(1.0, 0.1, POWDER, 101.0),
    ):
        with pytest.raises(CannotCompute, match=r"^[A-Z].*\.$"):
            make()
