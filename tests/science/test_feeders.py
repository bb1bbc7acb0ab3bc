"""Trials of feeders: who fills heavy, who scatters, and when a few fills cannot tell."""

from __future__ import annotations

import math
import random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.science.errors import CannotCompute
from calibrator.science.feeders import Level, Scatter, trial

STEADY = [100.0, 100.4, 99.8, 100.2, 99.6]
STEP, TOLERANCE = 0.1, 0.02


def shifted(by: float) -> list[float]:
    return [mass * (1 + by) for mass in STEADY]


def test_a_heavy_hand_is_told_from_a_light_one() -> None:
    found = trial({"Ana": shifted(0.04), "Luis": STEADY}, STEP, TOLERANCE)
    ana, luis = found.people
    assert (ana.level, luis.level) == (Level.HEAVY, Level.LIGHT)
    assert ana.share == pytest.approx(0.04 / 2.04, rel=1e-9)
    assert ana.low < ana.share < ana.high
    assert found.between > found.repeatability.share
    assert found.reproducibility.share > found.between


def test_hands_that_fill_alike_show_no_spread_between_them() -> None:
    found = trial({"Ana": STEADY, "Luis": STEADY[::-1], "Eva": shifted(0.0005)}, STEP, TOLERANCE)
    assert {one.level for one in found.people} == {Level.ALIKE}
    assert {one.scatter for one in found.people} == {Scatter.STEADY}
    assert found.between == 0.0
    assert found.reproducibility == found.repeatability


def test_few_scattered_fills_cannot_tell() -> None:
    found = trial({"Ana": [100.0, 110.0], "Luis": [98.0, 104.0, 93.0]}, STEP, TOLERANCE)
    assert {one.level for one in found.people} == {Level.CANNOT_TELL}
    assert found.people[0].sd_high > 5 * found.people[0].sd_share


def test_a_hand_that_scatters_is_told_and_does_not_blur_the_others() -> None:
    wild = [100.0, 112.0, 91.0, 106.0, 95.0]
    found = trial({"Ana": wild, "Luis": STEADY, "Eva": shifted(0.001)}, STEP, TOLERANCE)
    assert found.people[0].scatter is Scatter.APART
    assert found.people[1].scatter is Scatter.STEADY


def test_a_coarse_scale_is_never_better_than_its_step() -> None:
    found = trial({"Ana": [100.0] * 5, "Luis": [100.0] * 5}, 10.0, TOLERANCE)
    assert found.repeatability.share == pytest.approx(10 / math.sqrt(6) / 100)
    assert found.people[0].level is Level.CANNOT_TELL


def test_who_has_one_fill_is_left_out() -> None:
    found = trial({"Ana": STEADY, "Luis": STEADY, "Eva": [90.0], "Bo": []}, STEP, TOLERANCE)
    assert [person.name for person in found.people] == ["Ana", "Luis"]
    assert found.mean_g == pytest.approx(100.0)


@pytest.mark.parametrize("fills", [{}, {"Ana": STEADY}, {"Ana": STEADY, "Luis": [1.0]}])
def test_one_person_alone_is_not_compared(fills: dict[str, list[float]]) -> None:
    with pytest.raises(CannotCompute, match="two people"):
        trial(fills, STEP, TOLERANCE)


@pytest.mark.parametrize(("mass", "step", "tolerance"), [(0.0, 0.1, 0.02), (100.0, -1.0, 0.02), (100.0, 0.1, 0.0)])
def test_what_cannot_be_is_refused(mass: float, step: float, tolerance: float) -> None:
    with pytest.raises(CannotCompute):
        trial({"Ana": [mass, 100.0], "Luis": STEADY}, step, tolerance)


@given(st.lists(st.lists(st.floats(50, 200), min_size=2, max_size=6), min_size=2, max_size=5), st.floats(0.2, 5))
def test_shares_do_not_depend_on_the_unit_nor_sum_to_anything_but_nought(groups: list[list[float]], by: float) -> None:
    plain = trial({str(n): own for n, own in enumerate(groups)}, 0.1, TOLERANCE)
    other = trial({str(n): [by * m for m in own] for n, own in enumerate(groups)}, 0.1 * by, TOLERANCE)
    assert math.fsum(one.share for one in plain.people) == pytest.approx(0, abs=1e-9)
    for one, same in zip(plain.people, other.people, strict=True):
        assert (one.share, one.high) == pytest.approx((same.share, same.high), rel=1e-6, abs=1e-9)


def test_intervals_hold_for_everybody_at_once_in_nineteen_trials_of_twenty() -> None:
    chance, truth, trials, right = random.Random(7), (0.02, -0.01, -0.01), 400, 0
    for _ in range(trials):
        fills = {str(n): [100 * (1 + b) * (1 + chance.gauss(0, 0.02)) for _ in range(5)] for n, b in enumerate(truth)}
        found = trial(fills, 0.01, TOLERANCE)
        right += all(one.low <= b <= one.high for one, b in zip(found.people, truth, strict=True))
    assert right / trials > 0.93
