"""A corrected mix is on its target, holds its mass and heat, and never runs over."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.model import Composition, Vessel
from calibrator.science import mixing
from calibrator.science.correction import Add, Addition, Batch, correct
from calibrator.science.errors import CannotCompute
from calibrator.science.heat import WATER_HEAT_KJ_PER_KG_C, mix_temperature_c
from calibrator.science.powder import specific_heat
from calibrator.science.water import density_g_per_ml

POWDER = mixing.powder_from(Composition())
ADDITION = Addition(POWDER, Composition(), powder_c=15.0, water_c=43.0)


def vessel(rim_ml: float, usable: float = 0.9) -> Vessel:
    return Vessel(id="v", farm_id="f", name="tank", rim_volume_ml=rim_ml, usable_share=usable)


@given(share=st.floats(0.05, 0.25), target=st.floats(0.08, 0.18), volume=st.floats(500.0, 500_000.0))
def test_the_corrected_mix_is_on_target(share: float, target: float, volume: float) -> None:
    batch = Batch(volume, 40.0, share)
    found = correct(batch, target, ADDITION)
    per_gram = (1 - share) / density_g_per_ml(40.0) + share * POWDER.specific_volume_ml_per_g
    mass = volume / per_gram
    powder_g = mass * share + found.powder_g
    water_g = mass * (1 - share) + found.water_ml * density_g_per_ml(43.0)
    assert powder_g / (powder_g + water_g) == pytest.approx(target)
    added = found.powder_g * POWDER.specific_volume_ml_per_g + found.water_ml
    assert found.volume_after_ml == pytest.approx(volume + added)
    assert (found.add is Add.POWDER) == (share < target)
    assert found.fits


@given(
    share=st.floats(0.05, 0.25), target=st.floats(0.08, 0.18), filled=st.floats(0.1, 1.0), usable=st.floats(0.5, 1.0)
)
def test_no_correction_runs_over(share: float, target: float, filled: float, usable: float) -> None:
    tank = vessel(40_000.0, usable)
    batch = Batch(filled * 40_000.0, 40.0, share)
    found = correct(batch, target, ADDITION, tank)
    assert found.volume_after_ml <= usable * 40_000.0 * (1 + 1e-9)
    assert 0 <= found.take_out_ml < batch.volume_ml
    # What is left, and what is added to it, are in the same proportion as without a vessel.
    whole = correct(batch, target, ADDITION)
    left = 1 - found.take_out_ml / batch.volume_ml
    assert found.powder_g == pytest.approx(whole.powder_g * left)
    assert found.water_ml == pytest.approx(whole.water_ml * left)
    assert found.temperature_after_c == pytest.approx(whole.temperature_after_c)


def test_what_is_added_cools_a_mix_by_the_specific_heats() -> None:
    """By hand: the heat of mix and powder before is that of all of it after; the mix is powder and water itself."""
    batch = Batch(10_000.0, 40.0, 0.08)
    found = correct(batch, 0.13, ADDITION)
    mass_g = 10_000.0 / (0.92 / density_g_per_ml(40.0) + 0.08 * POWDER.specific_volume_ml_per_g)
    dry = specific_heat(Composition(), (40.0 + 15.0) / 2)
    mix = mass_g * (0.92 * WATER_HEAT_KJ_PER_KG_C + 0.08 * dry)
    expected = (mix * 40.0 + found.powder_g * dry * 15.0) / (mix + found.powder_g * dry)
    assert found.temperature_after_c == pytest.approx(expected, rel=1e-12)


def test_a_vessel_may_be_full_to_its_rim() -> None:
    assert correct(Batch(40_000.0, 40.0, 0.13), 0.13, ADDITION, vessel(40_000.0, 1.0)).add is Add.NOTHING
    with pytest.raises(CannotCompute, match="does not hold so much"):
        correct(Batch(40_001.0, 40.0, 0.13), 0.13, ADDITION, vessel(40_000.0, 1.0))


def test_powder_cools_a_mix_as_it_does_when_it_is_mixed() -> None:
    thin = Batch(10_000.0, 40.0, 0.0)
    found = correct(thin, 0.13, ADDITION)
    water_g = 10_000.0 * density_g_per_ml(40.0)
    assert found.powder_g == pytest.approx(water_g * 0.13 / 0.87)
    expected = mix_temperature_c(40.0, water_g, found.powder_g, Composition(), 15.0)
    assert found.temperature_after_c == pytest.approx(expected, abs=0.1)


def test_warm_water_into_a_cool_mix_warms_it() -> None:
    found = correct(Batch(10_000.0, 36.0, 0.15), 0.13, ADDITION)
    assert found.add is Add.WATER
    assert 36.0 < found.temperature_after_c < 43.0


def test_a_mix_on_target_needs_nothing() -> None:
    found = correct(Batch(10_000.0, 38.0, 0.13), 0.13, ADDITION)
    assert (found.add, found.powder_g, found.water_ml) == (Add.NOTHING, 0.0, 0.0)
    assert found.temperature_after_c == pytest.approx(38.0)


@pytest.mark.parametrize(
    ("volume", "temperature", "share", "target"),
    [
        (0.0, 38.0, 0.12, 0.13),
        (-5.0, 38.0, 0.12, 0.13),
        (math.nan, 38.0, 0.12, 0.13),
        (math.inf, 38.0, 0.12, 0.13),
        (50_000.0, 38.0, 0.12, 0.13),
        (10_000.0, 130.0, 0.12, 0.13),
        (10_000.0, -5.0, 0.12, 0.13),
        (10_000.0, 38.0, 0.7, 0.13),
        (10_000.0, 38.0, -0.1, 0.13),
        (10_000.0, 38.0, 0.12, 0.0),
        (10_000.0, 38.0, 0.12, 13.0),
    ],
)
def test_impossible_batches_are_refused(volume: float, temperature: float, share: float, target: float) -> None:
    with pytest.raises(CannotCompute, match=r"^[A-Z].*[.]$"):
        correct(Batch(volume, temperature, share), target, ADDITION, vessel(40_000.0))


@pytest.mark.parametrize(("share", "far"), [(0.117, False), (0.108, True), (0.145, False), (0.152, True)])
def test_what_is_far_off_is_stirred_and_read_again_first(share: float, far: bool) -> None:
    """More than 15 % off the solids wanted: common practice, no source."""
    assert correct(Batch(10_000.0, 40.0, share), 0.13, ADDITION).far_off is far
    kept = correct(Batch(36_000.0, 40.0, share), 0.13, ADDITION, vessel(40_000.0))
    assert kept.far_off is far


def test_what_is_missing_of_a_recipe_is_told_of_each_part() -> None:
    """Ten of powder and four of a supplement: five seventh and two seventh of what is added."""
    shares = (10 / 14, 4 / 14)
    found = correct(
        Batch(40_000.0, 40.0, 0.11), 0.13, Addition(POWDER, Composition(), 15.0, 43.0, shares), vessel(44_000.0)
    )
    alone = correct(Batch(40_000.0, 40.0, 0.11), 0.13, ADDITION, vessel(44_000.0))
    assert not found.fits
    (supplement_g,) = found.others_g
    assert found.powder_g + supplement_g == pytest.approx(alone.powder_g)
    assert supplement_g / found.powder_g == pytest.approx(0.4)
    assert found.volume_after_ml == pytest.approx(alone.volume_after_ml)
