"""What a scoop holds: pourings of water with their uncertainty, dimensions beside water."""

from __future__ import annotations

import math
import random

import pytest

from calibrator.model import Box, Cylinder, Poured, Shape, TaperedCup
from calibrator.science import scoop, water
from calibrator.science.errors import CannotCompute

CYLINDER = Cylinder(diameter_mm=90.0, height_mm=100.0)


def test_volume_is_that_of_the_mean_weight() -> None:
    found = scoop.struck_volume([500.0, 502.0, 501.0], 21.0, 1.0)
    assert found.volume_ml == pytest.approx(water.volume_ml(501.0, 21.0))


def test_spread_and_display_step_enter_by_the_book() -> None:
    found = scoop.struck_volume([500.0, 504.0, 502.0], 20.0, 0.0, temperature_u_c=0.0)
    per_gram = water.volume_ml(1.0, 20.0)
    assert found.u_ml == pytest.approx(2.0 / math.sqrt(3.0) * per_gram)
    assert found.degrees_of_freedom == pytest.approx(2.0)
    same = scoop.struck_volume([500.0, 500.0, 500.0, 500.0], 20.0, 1.0, temperature_u_c=0.0)
    assert same.u_ml == pytest.approx(1.0 / math.sqrt(6.0) / 2.0 * per_gram)


def test_equal_weights_on_a_perfect_scale_leave_no_doubt() -> None:
    found = scoop.struck_volume([500.0, 500.0], 20.0, 0.0, temperature_u_c=0.0)
    assert (found.u_ml, found.degrees_of_freedom) == (0.0, math.inf)


def test_one_pouring_is_taken_as_half_a_percent() -> None:
    found = scoop.struck_volume([500.0], 20.0, 0.1, temperature_u_c=0.0)
    assert found.u_ml / found.volume_ml == pytest.approx(0.005, rel=1e-3)
    assert found.degrees_of_freedom == pytest.approx(8.0, rel=1e-3)


def test_every_source_of_doubt_makes_it_larger() -> None:
    best = scoop.struck_volume([500.0, 501.0, 502.0], 20.0, 0.1, temperature_u_c=0.0)
    warm = scoop.struck_volume([500.0, 501.0, 502.0], 45.0, 0.1, temperature_u_c=0.0)
    unsure = scoop.struck_volume([500.0, 501.0, 502.0], 20.0, 0.1, temperature_u_c=5.0)
    by_eye = scoop.struck_volume([500.0, 501.0, 502.0], 20.0, 0.1, temperature_u_c=0.0, shape=CYLINDER)
    boiling = scoop.struck_volume([500.0, 501.0, 502.0], 99.5, 0.1)
    assert all(worse.u_ml > best.u_ml for worse in (warm, unsure, by_eye, boiling))
    area = math.pi * 45.0**2 / 1000.0
    assert by_eye.u_ml == pytest.approx(math.hypot(best.u_ml, area * 0.25))


def test_the_stated_doubt_covers_the_true_volume() -> None:
    chance, inside, runs = random.Random(4), 0, 400
    for _ in range(runs):
        weights = [500.0 + chance.gauss(0.0, 2.0) for _ in range(3)]
        found = scoop.struck_volume(weights, 20.0, 0.1, temperature_u_c=0.0)
        inside += abs(found.volume_ml - water.volume_ml(500.0, 20.0)) <= 4.303 * found.u_ml
    assert 0.92 <= inside / runs <= 0.98


@pytest.mark.parametrize(
    ("weights", "t", "step"),
    [
        ([], 20.0, 1.0),
        ([500.0, 0.0], 20.0, 1.0),
        ([math.nan], 20.0, 1.0),
        ([1.0], 200.0, 1.0),
        ([1.0], 20.0, -1.0),
    ],
)
def test_nonsense_is_refused(weights: list[float], t: float, step: float) -> None:
    with pytest.raises(CannotCompute, match=r"^[A-Z].*\.$"):
        scoop.struck_volume(weights, t, step)


@pytest.mark.parametrize(
    ("shape", "expected"),
    [
        (CYLINDER, math.hypot(math.pi / 2 * 90 * 100, math.pi / 4 * 90**2) * 0.5e-3),
        (Box(length_mm=100, width_mm=80, height_mm=60), math.hypot(80 * 60, 100 * 60, 100 * 80) * 0.5e-3),
        (Poured(heights_mm=(50.0,), volumes_ml=(300.0,)), 6.0 * 0.5),
        (
            TaperedCup(rim_diameter_mm=100, floor_diameter_mm=80, height_mm=120),
            math.hypot(
                math.pi * 120 / 12 * (2 * 100 + 80),
                math.pi * 120 / 12 * (2 * 80 + 100),
                math.pi / 12 * (100**2 + 100 * 80 + 80**2),
            )
            * 0.5e-3,
        ),
    ],
)
def test_doubt_in_dimensions_propagates(shape: Shape, expected: float) -> None:
    found = scoop.volume_from_dimensions(shape)
    assert found.volume_ml == pytest.approx(scoop.rim_volume_ml(shape))
    assert found.u_ml == pytest.approx(expected, rel=1e-5)
    assert found.degrees_of_freedom == math.inf


def test_dimensions_and_water_agree_within_two_percent() -> None:
    volume = scoop.rim_volume_ml(CYLINDER)
    assert scoop.compare_with_water(CYLINDER, volume / 1.019).agrees
    apart = scoop.compare_with_water(CYLINDER, volume / 1.021)
    assert not apart.agrees
    assert apart.difference_share == pytest.approx(0.021)
    with pytest.raises(CannotCompute):
        scoop.compare_with_water(CYLINDER, 0.0)


@pytest.mark.parametrize(
    ("masses_g", "odd"),
    [
        ((), ()),
        ((24.6,), ()),
        ((24.6, 24.8, 24.7), ()),
        ((24.6, 24.8, 42.7), (2,)),
        ((2.46, 24.8, 24.7), (0,)),
        ((24.6, 42.7), (0, 1)),
        ((24.6, 30.0, 42.7), (0, 1, 2)),
        ((24.0, 25.1, 26.3), (0, 1, 2)),  # either end could be wrong
    ],
)
def test_a_weighing_of_water_that_does_not_fit_is_found(masses_g: tuple[float, ...], odd: tuple[int, ...]) -> None:
    assert scoop.odd_pourings(masses_g) == odd
