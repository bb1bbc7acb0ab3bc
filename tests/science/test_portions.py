"""Powder heavier than the scale weighs."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.science.errors import CannotCompute
from calibrator.science.portions import FOR_CONTAINER, Portions, most_at_once_g, portions

OZ_G = 28.349523125
LB_G = 16 * OZ_G


def test_fifteen_pounds_on_a_scale_of_eleven_are_two_portions_of_seven_and_a_half() -> None:
    """A fifth of 11 lb is left to the pail: 8.8 lb of powder at once, so two portions."""
    found = portions(15 * LB_G, 11 * LB_G, 0.1 * OZ_G)
    assert found is not None
    assert found.count == 2
    assert found.each_g == pytest.approx(7.5 * LB_G)


def test_what_the_scale_weighs_with_its_container_is_one_portion() -> None:
    assert portions(4000.0, 5000.0, 1.0) is None
    assert portions(4001.0, 5000.0, 1.0) == Portions(2, 2001.0)  # halves go up, as figures are shown
    assert portions(10.0, 0.0, 1.0) is None  # no scale is known


@given(st.floats(1.0, 1e6), st.floats(500.0, 50_000.0), st.sampled_from([0.1, 1.0, 2.0, 5.0]))
def test_each_portion_is_weighed_and_one_fewer_would_not_be(mass_g: float, capacity_g: float, step_g: float) -> None:
    found, most = portions(mass_g, capacity_g, step_g), most_at_once_g(capacity_g)
    if found is None:
        assert mass_g <= most * (1 + 1e-6)
        return
    assert found.each_g <= most + step_g / 2 + 1e-6
    assert mass_g / (found.count - 1) > most * (1 - 1e-6)
    assert found.count * found.each_g == pytest.approx(mass_g, abs=found.count * step_g / 2 + 1e-6)


def test_a_fifth_is_left_to_the_container() -> None:
    assert most_at_once_g(5000.0) == pytest.approx(5000.0 * (1 - FOR_CONTAINER)) == pytest.approx(4000.0)


@pytest.mark.parametrize("figures", [(-1.0, 5000.0, 1.0), (6000.0, -5.0, 1.0), (6000.0, 5000.0, -1.0)])
def test_what_no_scale_has_is_refused(figures: tuple[float, float, float]) -> None:
    with pytest.raises(CannotCompute):
        portions(*figures)
