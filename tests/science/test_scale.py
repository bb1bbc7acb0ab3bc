"""The scale: check weights, repeatability, how little is too little, running totals."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.science.errors import CannotCompute
from calibrator.science.scale import (
    Taring,
    carries_a_scoop,
    check_scale,
    error_allowed_g,
    likeliest_capacity,
    scale_facts,
    scoopfuls_together,
    smallest_net_weight_g,
)


def test_an_error_of_one_step_in_ounces_is_not_taken_off() -> None:
    """15.9 oz read of 16 oz: told in g, the error is a little more than the step by rounding alone."""
    step_g = 0.1 * 28.349523125
    for sign in (-1, 1):
        check = check_scale(160 * step_g, (160 + sign) * step_g, step_g)
        assert not check.taken_off
        assert scale_facts(step_g, check).error_share == 0.0
    assert check_scale(160 * step_g, 158 * step_g, step_g).taken_off


def test_a_scale_that_reads_right_is_ok() -> None:
    found = check_scale(500.0, 500.0, 1.0)
    assert found.ok
    assert found.error_g == 0.0
    assert found.u_g == pytest.approx(math.hypot(1 / math.sqrt(6), 0.08 / math.sqrt(3)))


def test_an_error_of_more_than_a_tenth_is_hardly_meant() -> None:
    assert check_scale(500.0, 50.0, 1.0).hardly_meant
    assert check_scale(500.0, 551.0, 1.0).hardly_meant
    assert not check_scale(500.0, 549.0, 1.0).hardly_meant
    assert not check_scale(5.0, 6.0, 1.0).hardly_meant  # no more than the display's step


def test_a_scale_beyond_what_is_allowed_is_off() -> None:
    assert check_scale(500.0, 501.0, 1.0).ok
    assert not check_scale(500.0, 502.0, 1.0).ok
    assert not check_scale(500.0, 498.0, 1.0).ok
    assert check_scale(1000.0, 1002.0, 1.0).ok
    assert check_scale(500.0, 500.0, 1.0, weight_u_g=3.0).u_g == pytest.approx(math.hypot(1 / math.sqrt(6), 3.0))


def test_without_a_check_the_error_is_assumed_as_of_a_sound_scale() -> None:
    """One step up to 500 steps, two up to 2000 (OIML R 76-1:2006, table 6 doubled), rectangular."""
    facts = scale_facts(1.0, None)
    assert facts.error_share == 0.0
    assert facts.error_u_g(300.0) == pytest.approx(1 / math.sqrt(3))
    assert facts.error_u_g(600.0) == pytest.approx(2 / math.sqrt(3))
    assert facts.error_assumed(300.0)
    assert facts.checked() == facts
    assert scale_facts(1.0, None, taring=Taring.ONCE).taring == Taring.ONCE


@given(st.floats(0.001, 20.0), st.floats(20.0, 5000.0), st.floats(1.0, 10.0))
def test_never_checking_is_never_surer_than_a_check_weight_read_as_right(
    step_g: float, load_g: float, heavier: float
) -> None:
    unchecked = scale_facts(step_g, None).error_u_g(load_g)
    for nominal_g in (load_g * heavier, load_g / heavier):
        checked = scale_facts(step_g, check_scale(nominal_g, nominal_g, step_g))
        assert checked.error_u_g(load_g) <= unchecked * (1 + 1e-9)
    heavy = scale_facts(step_g, check_scale(load_g, load_g, step_g))
    assert heavy.error_u_g(load_g) == pytest.approx(heavy.error_u_share * load_g)
    assert not heavy.error_assumed(load_g)


def test_a_light_check_weight_that_is_off_is_not_taken_for_a_sound_scale() -> None:
    """Two steps off at 100 g: nothing says that heavier loads are righter."""
    facts = scale_facts(1.0, check_scale(100.0, 102.0, 1.0))
    assert facts.error_u_g(400.0) == pytest.approx(400.0 * facts.error_u_share)
    assert not scale_facts(1.0, check_scale(100.0, 0.0, 1.0)).sound


def test_an_error_is_taken_off_in_proportion() -> None:
    """A weight that shows as 1010 g is 1000 g: of what is shown, 10 in 1010 are too much."""
    check = check_scale(1000.0, 1010.0, 1.0)
    facts = scale_facts(1.0, check)
    assert 1010.0 * (1 - facts.error_share) == pytest.approx(1000.0)
    assert 1010.0 * facts.error_u_share == pytest.approx(check.u_g * 1000.0 / 1010.0)


def test_an_error_hardly_meant_is_doubt_only() -> None:
    check = check_scale(500.0, 0.0, 1.0)
    facts = scale_facts(1.0, check)
    assert facts.error_share == 0.0
    assert facts.error_u_share == pytest.approx(math.hypot(500 / math.sqrt(3), check.u_g) / 500)


def test_an_error_within_one_step_is_doubt_only() -> None:
    check = check_scale(500.0, 501.0, 1.0)
    facts = scale_facts(1.0, check)
    assert facts.error_share == 0.0
    assert facts.error_u_share == pytest.approx(math.hypot(1 / math.sqrt(3), check.u_g) / 500)


@given(st.floats(0.01, 10), st.floats(0, 10), st.floats(0.001, 0.1))
def test_the_smallest_weight_meets_the_tolerance(step_g: float, sd_g: float, tolerance: float) -> None:
    smallest = smallest_net_weight_g(step_g, sd_g, tolerance)
    assert 2 * max(sd_g, step_g / math.sqrt(6)) == pytest.approx(tolerance * smallest)


def test_scoopfuls_together_reach_it() -> None:
    assert scoopfuls_together(290.0, 100.0) == 1
    assert scoopfuls_together(290.0, 290.0) == 1
    assert scoopfuls_together(290.0, 291.0) == 2
    assert scoopfuls_together(1.0, 1000.0) == 20


@pytest.mark.parametrize(
    "call",
    [
        lambda: check_scale(0.0, 500.0, 1.0),
        lambda: check_scale(500.0, -1.0, 1.0),
        lambda: check_scale(500.0, 500.0, 0.0),
        lambda: check_scale(500.0, math.nan, 1.0),
        lambda: check_scale(500.0, 500.0, 1.0, weight_u_g=-1.0),
        lambda: error_allowed_g(-1.0, 1.0),
        lambda: smallest_net_weight_g(1.0, 0.0, 0.0),
        lambda: scoopfuls_together(0.0, 100.0),
    ],
)
def test_nonsense_is_refused(call: object) -> None:
    with pytest.raises(CannotCompute, match=r"^[A-Z].*\.$"):
        call()  # type: ignore[operator]


@pytest.mark.parametrize(("capacity_g", "carries"), [(311.8, False), (500.0, False), (907.2, True), (1000.0, True)])
def test_a_full_scoop_needs_a_scale_of_two_pounds(capacity_g: float, carries: bool) -> None:
    assert carries_a_scoop(capacity_g) is carries


def test_the_capacity_that_was_meant_is_that_of_a_kitchen_scale() -> None:
    assert likeliest_capacity((11.0, 4989.5, 11_000.0)) == 4989.5
    assert likeliest_capacity((11.0, 500_000.0)) is None
