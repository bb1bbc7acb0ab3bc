"""What is weighed and drawn in whole steps."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.science.steps import to_step
from calibrator.units.rounding import round_to

STEPS = st.sampled_from([0.1, 0.5, 1.0, 2.0, 5.0, 250.0])


@pytest.mark.parametrize(
    ("value", "step", "there"),
    [(12.4, 5.0, 10.0), (12.5, 5.0, 15.0), (-12.5, 5.0, -15.0), (2.5, 1.0, 3.0), (0.3, 1.0, 0.0), (7.3, 0.0, 7.3)],
)
def test_halves_go_away_from_zero_and_no_step_rounds_nothing(value: float, step: float, there: float) -> None:
    assert to_step(value, step) == there


def test_a_half_stays_one_whatever_the_last_digit_of_a_quotient() -> None:
    assert 0.35 / 0.1 < 3.5
    assert to_step(0.35, 0.1) == pytest.approx(0.4)


@given(st.floats(-1e6, 1e6), STEPS)
def test_no_multiple_of_the_step_is_nearer(value: float, step: float) -> None:
    there = to_step(value, step)
    assert abs(there - value) <= step * (0.5 + 1e-6)
    assert there / step == pytest.approx(round(there / step))
    assert to_step(there, step) == pytest.approx(there)


@given(st.floats(-1e5, 1e5), STEPS)
def test_it_is_the_rule_that_figures_are_shown_by(value: float, step: float) -> None:
    assert to_step(value, step) == pytest.approx(float(round_to(Fraction(value), Fraction(step))))
