"""Which of several weights was meant, by what powder can weigh."""

from __future__ import annotations

import pytest

from calibrator.science.errors import CannotCompute
from calibrator.science.plausible import likeliest, whole_feeding


@pytest.mark.parametrize(
    ("masses_g", "scoopfuls", "likely"),
    [
        ((116.0, 328.9), 1, 328.9),  # of 666 mL: 0.17 and 0.49 g/mL
        ((328.9, 535.0), 1, 328.9),
        ((328.9, 650.0), 2, 650.0),
        ((), 1, None),
    ],
)
def test_the_weight_most_like_that_of_other_powder(
    masses_g: tuple[float, ...], scoopfuls: int, likely: float | None
) -> None:
    assert likeliest(masses_g, scoopfuls, 666.0) == likely


def test_a_scoop_of_no_volume_tells_nothing() -> None:
    with pytest.raises(CannotCompute):
        likeliest([300.0], 1, 0.0)


@pytest.mark.parametrize(
    ("mass_g", "whole"), [(600.0, True), (515.0, True), (685.0, True), (500.0, False), (100.0, False)]
)
def test_a_weight_near_the_target_is_that_of_a_whole_feeding(mass_g: float, whole: bool) -> None:
    assert whole_feeding(mass_g, 600.0) is whole
