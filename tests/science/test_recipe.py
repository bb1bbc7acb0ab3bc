"""Additives in the same mix: they add up, and do to osmolality what the trade says."""

from __future__ import annotations

import pytest

from calibrator.model import Composition, MixingRate, RateBasis
from calibrator.science import mixing, recipe
from calibrator.science.errors import CannotCompute
from calibrator.science.recipe import Additive

OUNCE_G, QUART_ML = 28.349523125, 946.352946
POWDER = mixing.powder_from(Composition())
WARM = 43.0


def ounces_on_two_quarts(ounces: float) -> MixingRate:
    return MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=ounces * OUNCE_G, volume_ml=2 * QUART_ML)


def mix_with(ounces: float, *additives: Additive) -> mixing.Mix:
    made = recipe.recipe(ounces_on_two_quarts(ounces), POWDER, additives, WARM)
    return mixing.mix_on_water(2 * QUART_ML, made.ratio, made.powder, WARM)


def fat_supplement(ounces: float) -> Additive:
    label = Composition(protein_pct=7.0, fat_pct=60.0, fibre_pct=0.0, ash_pct=3.0, moisture_pct=3.0)
    return Additive("fat supplement", mixing.powder_from(label), ounces_on_two_quarts(ounces))


def test_no_additive_is_the_powder_itself() -> None:
    made = recipe.recipe(ounces_on_two_quarts(10), POWDER, [], WARM)
    assert made.shares == (1.0,)
    assert made.powder == POWDER
    assert made.ratio == mixing.powder_per_water(ounces_on_two_quarts(10), POWDER, WARM)


def test_masses_volumes_and_osmoles_of_a_recipe_add_up() -> None:
    extra = fat_supplement(5)
    made = recipe.recipe(ounces_on_two_quarts(10), POWDER, [extra], WARM)
    mix = mixing.mix_on_water(2 * QUART_ML, made.ratio, made.powder, WARM)
    powder_g, extra_g = (share * mix.powder_g for share in made.shares)
    assert (powder_g, extra_g) == pytest.approx((10 * OUNCE_G, 5 * OUNCE_G))
    room = powder_g * POWDER.specific_volume_ml_per_g + extra_g * extra.powder.specific_volume_ml_per_g
    assert mix.volume_ml - mix.water_ml == pytest.approx(room)
    osmoles = powder_g * POWDER.mosmol_per_g + extra_g * extra.powder.mosmol_per_g
    assert mix.osmolality_mosm_per_kg * mix.water_g / 1000 == pytest.approx(osmoles)


def mosm_per_l(mix: mixing.Mix) -> float:
    """Osmoles in a litre of the mix, where its osmolality tells those in a kilogram of its water."""
    return mix.osmolality_mosm_per_kg * mix.water_g / mix.volume_ml


def test_a_fat_supplement_raises_solids_and_is_thinner_in_osmoles_than_powder() -> None:
    """Common practice, no source: up to 5 oz of 60 % fat, 7 % protein on 2 qt. Beside the same solids made
    with more powder the mix is diluted; its osmoles for each percent of solids fall."""
    plain, with_fat, more_powder = mix_with(10), mix_with(10, fat_supplement(5)), mix_with(15)
    assert with_fat.solids_share > plain.solids_share
    assert with_fat.solids_share == pytest.approx(more_powder.solids_share)
    assert mosm_per_l(with_fat) < 0.9 * mosm_per_l(more_powder)
    per_solids = [mosm_per_l(m) / m.solids_share for m in (plain, with_fat)]
    assert per_solids[1] < per_solids[0]


def test_pure_fat_dilutes_outright() -> None:
    label = Composition(protein_pct=0.0, fat_pct=100.0, fibre_pct=0.0, ash_pct=0.0, moisture_pct=0.0)
    fat = Additive("fat", mixing.powder_from(label), ounces_on_two_quarts(5))
    plain, with_fat = mix_with(10), mix_with(10, fat)
    assert mosm_per_l(with_fat) < mosm_per_l(plain)
    assert with_fat.osmolality_mosm_per_kg == pytest.approx(plain.osmolality_mosm_per_kg)


def test_an_electrolyte_raises_osmolality_steeply() -> None:
    """Common practice, no source."""
    salts = (20.0 * 2000 / 58.44 + 60.0 * 1000 / 180.16) / 90.0  # 20 g of salt and 60 g of glucose in 90 g
    electrolyte = mixing.Powder(0.6, 1.0, salts, 0.05 * salts)
    plain = mix_with(10)
    dosed = mix_with(10, Additive("electrolyte", electrolyte, ounces_on_two_quarts(3)))
    per_ounce = (dosed.osmolality_mosm_per_kg - plain.osmolality_mosm_per_kg) / 3
    assert per_ounce > 3 * plain.osmolality_mosm_per_kg / 10
    assert dosed.osmolality_mosm_per_kg > 600


def test_estimates_err_together() -> None:
    made = recipe.recipe(ounces_on_two_quarts(10), POWDER, [fat_supplement(10)], WARM)
    halves = (POWDER.mosmol_u_per_g + fat_supplement(10).powder.mosmol_u_per_g) / 2
    assert made.powder.mosmol_u_per_g == pytest.approx(halves)


def test_nonsense_is_refused() -> None:
    with pytest.raises(CannotCompute, match="weight of powder"):
        recipe.recipe(ounces_on_two_quarts(0), POWDER, [], WARM)


def test_an_additive_told_by_the_finished_mix_counts_on_the_whole_of_it() -> None:
    """20 g in every litre of the mix as fed, powder and additive in it, whatever else is in it."""
    rate = MixingRate(basis=RateBasis.PER_FINISHED, powder_mass_g=20.0, volume_ml=1000.0)
    salts = Additive("salts", mixing.Powder(0.5, 1.0, 9.0, 0.3), rate)
    for others in ((), (fat_supplement(3),)):
        made = recipe.recipe(ounces_on_two_quarts(10), POWDER, [salts, *others], WARM)
        mix = mixing.mix_to_volume(5000.0, made.ratio, made.powder, WARM)
        assert mix.powder_g * made.shares[1] == pytest.approx(100.0)
        powder_g = mix.powder_g * made.shares[0]
        assert powder_g / mix.water_ml == pytest.approx(10 * OUNCE_G / (2 * QUART_ML))


def test_more_additive_than_a_volume_holds_is_refused() -> None:
    rate = MixingRate(basis=RateBasis.PER_FINISHED, powder_mass_g=2000.0, volume_ml=1000.0)
    with pytest.raises(CannotCompute, match="room for water"):
        recipe.recipe(ounces_on_two_quarts(10), POWDER, [Additive("s", mixing.Powder(0.5, 1.0, 9.0, 0.3), rate)], WARM)
