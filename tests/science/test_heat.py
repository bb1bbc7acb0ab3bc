"""Warmth: heat given is heat taken, blends, cooling, cautions."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calibrator.model import Composition
from calibrator.science import heat
from calibrator.science.errors import CannotCompute

lawful = settings(deadline=None, max_examples=80)
POWDER = Composition()


@lawful
@given(st.floats(36.0, 45.0), st.floats(500, 1e6), st.floats(0.0, 0.25), st.floats(-20, 35))
def test_the_drawn_water_lands_the_mix(wanted: float, water: float, ratio: float, stored: float) -> None:
    draw = heat.water_to_draw_c(wanted, water, ratio * water, POWDER, stored)
    assert draw >= wanted
    assert heat.mix_temperature_c(draw, water, ratio * water, POWDER, stored) == pytest.approx(wanted, abs=1e-6)


def test_powder_as_warm_as_the_mix_changes_nothing() -> None:
    assert heat.water_to_draw_c(39.0, 1000.0, 150.0, POWDER, 39.0) == 39.0
    assert heat.mix_temperature_c(39.0, 1000.0, 150.0, POWDER, 39.0) == pytest.approx(39.0)


def test_a_cold_vessel_takes_its_share() -> None:
    steel = heat.Bath(mass_g=2000.0, specific_heat_kj_per_kg_c=0.5, temperature_c=5.0)
    without = heat.water_to_draw_c(39.0, 10000.0, 1500.0, POWDER, 10.0)
    with_it = heat.water_to_draw_c(39.0, 10000.0, 1500.0, POWDER, 10.0, steel)
    assert with_it - without == pytest.approx(2.0 * 0.5 * 34.0 / (10.0 * 4.182))


def test_no_water_is_hot_enough_or_cold_enough() -> None:
    with pytest.raises(CannotCompute, match="No water"):
        heat.water_to_draw_c(80.0, 100.0, 200.0, POWDER, -20.0)
    with pytest.raises(CannotCompute, match="No water"):
        heat.water_to_draw_c(1.0, 100.0, 100.0, POWDER, 40.0)


@pytest.mark.parametrize(
    ("wanted", "water", "mass", "stored"),
    [(-1, 100, 10, 20), (39, 0, 10, 20), (39, 100, -1, 20), (39, 100, 10, 99), (math.nan, 100, 10, 20)],
)
def test_nonsense_for_the_draw_is_refused(wanted: float, water: float, mass: float, stored: float) -> None:
    with pytest.raises(CannotCompute, match=r"^[A-Z].*\.$"):
        heat.water_to_draw_c(wanted, water, mass, POWDER, stored)
    with pytest.raises(CannotCompute, match=r"^[A-Z].*\.$"):
        heat.mix_temperature_c(wanted, water, mass, POWDER, stored)


@pytest.mark.parametrize("bath", [heat.Bath(-1, 0.5, 5), heat.Bath(1, 0, 5), heat.Bath(1, 0.5, math.nan)])
def test_impossible_vessels_are_refused(bath: heat.Bath) -> None:
    with pytest.raises(CannotCompute, match="vessel"):
        heat.water_to_draw_c(39.0, 100.0, 10.0, POWDER, 20.0, bath)


@lawful
@given(st.floats(100, 1e6), st.floats(0, 1), st.floats(45, 95), st.floats(2, 20))
def test_blend_keeps_mass_and_heat(water: float, part: float, hot: float, cold: float) -> None:
    wanted = min(hot, cold + part * (hot - cold))
    found = heat.blend(water, wanted, hot, cold)
    assert found.hot_g + found.cold_g == pytest.approx(water)
    assert found.hot_g * hot + found.cold_g * cold == pytest.approx(water * wanted)
    assert found.hot_ml >= found.hot_g


def test_blends_that_cannot_be_are_refused() -> None:
    with pytest.raises(CannotCompute, match="warmer than the cold"):
        heat.blend(1000, 40, 30, 30)
    for wanted in (70.0, 5.0):
        with pytest.raises(CannotCompute, match="between the cold and the hot"):
            heat.blend(1000, wanted, 60, 10)
    with pytest.raises(CannotCompute, match="weight of water"):
        heat.blend(0, 40, 60, 10)


def test_a_tank_too_small_says_how_much_is_missing() -> None:
    needed = heat.blend(100_000, 43, 60, 10)
    assert heat.hot_water_missing_ml(needed, needed.hot_ml - 500) == pytest.approx(500)
    assert heat.hot_water_missing_ml(needed, 1e6) == 0.0
    with pytest.raises(CannotCompute, match="tank"):
        heat.hot_water_missing_ml(needed, -1)


@lawful
@given(st.floats(30, 45), st.floats(0.2, 5), st.floats(1, 60), st.floats(-20, 20))
def test_cooling_runs_through_both_readings(first: float, drop: float, minutes: float, room: float) -> None:
    found = heat.cooling(first, first - drop, minutes, room)
    assert found.temperature_c(first, minutes) == pytest.approx(first - drop)
    assert found.minutes_until(first, first - drop) == pytest.approx(minutes, rel=1e-6)
    later = found.minutes_until(first, room + (first - room) / 4)
    assert later == pytest.approx(2 * found.minutes_until(first, room + (first - room) / 2), rel=1e-9)


def test_already_too_cool_and_never_too_cool() -> None:
    found = heat.cooling(40, 38, 10, 20)
    assert found.minutes_until(29, heat.TOO_COOL_C) == 0.0
    assert found.minutes_until(38, 20) == math.inf


@pytest.mark.parametrize("readings", [(40, 41, 5, 20), (40, 40, 5, 20), (40, 19, 5, 20), (40, 38, 0, 20)])
def test_readings_that_tell_no_cooling_are_refused(readings: tuple[float, float, float, float]) -> None:
    with pytest.raises(CannotCompute, match=r"^[A-Z].*\.$"):
        heat.cooling(*readings)


def test_scald_caution_from_120_fahrenheit() -> None:
    assert not heat.scalds((119.9 - 32) / 1.8)
    assert heat.scalds((120 - 32) / 1.8)
    assert heat.scalds(49.0)
    # 30 s at 130 °F, 6 s at 140 °F (leaflet of the U.S. Consumer Product Safety Commission).
    assert [heat.scalds_in_seconds((f - 32) / 1.8) for f in (120, 129, 130, 140)] == [False, False, True, True]


def test_figures_of_the_trade() -> None:
    """Common practice, no source: the calf 100–105 °F, too cool below 85 °F."""
    fahrenheit = [c * 1.8 + 32 for c in (*heat.FEEDING_RANGE_C, heat.TOO_COOL_C)]
    assert fahrenheit == pytest.approx([100, 105, 85], abs=0.1)


def test_hot_and_cold_water_as_they_are_drawn_add_up_to_all_the_water() -> None:
    found = heat.blend(43_300.0, 43.0, 60.0, 18.0)
    assert found.hot_ml + found.cold_ml > 43_700.0  # each at its own warmth, before they are mixed
    hot, cold = heat.as_drawn(found, 43_700.0, 100.0)
    assert (round(hot), round(cold)) == (26_200, 17_500)
    assert heat.as_drawn(found, 43_700.0, 0.0)[0] == found.hot_ml
    assert heat.as_drawn(found, 20_000.0, 100.0) == (20_000.0, 0.0)
