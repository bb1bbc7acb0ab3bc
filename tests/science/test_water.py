"""Density of water and volume by weighing: joins, ranges, laws. Published values are in tests/outside."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calibrator.science import water
from calibrator.science.errors import CannotCompute

lawful = settings(deadline=None, max_examples=60)


def test_the_two_formulas_meet_at_40_degrees() -> None:
    below, above = water.density_g_per_ml(40.0), water.density_g_per_ml(math.nextafter(40.0, 41.0))
    assert above == pytest.approx(below, rel=1e-12)


def test_no_kink_where_the_formulas_meet() -> None:
    at, step = 40.0, 0.01
    left = (water.density_g_per_ml(at) - water.density_g_per_ml(at - step)) / step
    right = (water.density_g_per_ml(at + step) - water.density_g_per_ml(at)) / step
    assert right == pytest.approx(left, rel=2e-3)


@lawful
@given(st.floats(4.0, 99.0), st.floats(0.01, 1.0))
def test_warmer_water_is_lighter_above_4_degrees(at: float, by: float) -> None:
    assert water.density_g_per_ml(at + by) < water.density_g_per_ml(at)


@pytest.mark.parametrize("t", [-0.1, 100.1, math.nan, math.inf])
def test_temperature_out_of_range_is_refused(t: float) -> None:
    with pytest.raises(CannotCompute, match="water temperature"):
        water.density_g_per_ml(t)


def test_buoyancy_makes_a_weighing_about_a_thousandth_larger_in_volume() -> None:
    with_air = water.volume_ml(500.0, 20.0)
    assert with_air / (500.0 / water.density_g_per_ml(20.0)) == pytest.approx(1.00105, abs=1e-5)


def test_without_air_volume_is_mass_over_density() -> None:
    assert water.volume_ml(500.0, 20.0, air_density_g_per_ml=0.0) == pytest.approx(
        500.0 / water.density_g_per_ml(20.0), rel=1e-15
    )


@lawful
@given(st.floats(0.0, 1e5), st.floats(0.1, 50.0), st.floats(0.0, 100.0))
def test_volume_is_proportional_to_mass(mass: float, times: float, t: float) -> None:
    assert water.volume_ml(mass * times, t) == pytest.approx(water.volume_ml(mass, t) * times, rel=1e-12)


@pytest.mark.parametrize("mass", [-1.0, math.nan, math.inf])
def test_impossible_weights_of_water_are_refused(mass: float) -> None:
    with pytest.raises(CannotCompute, match="weight of water"):
        water.volume_ml(mass, 20.0)


def test_air_as_heavy_as_water_is_refused() -> None:
    with pytest.raises(CannotCompute, match="air"):
        water.volume_ml(1.0, 20.0, air_density_g_per_ml=1.0)


def test_plain_air_is_at_sea_level_and_half_humid() -> None:
    assert water.air_density_g_per_ml(20) == water.air_density_g_per_ml(20, 1013.25, 50.0)


def test_air_is_thinner_high_above_the_sea_and_when_humid() -> None:
    assert water.air_density_g_per_ml(20, 850) < 0.9 * water.air_density_g_per_ml(20, 1013.25)
    assert water.air_density_g_per_ml(20, humidity_pct=90) < water.air_density_g_per_ml(20, humidity_pct=10)
