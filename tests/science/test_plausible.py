"""Which of several weights was meant, by what powder can weigh."""

from __future__ import annotations

import pytest

from calibrator.science.errors import CannotCompute
from calibrator.science.plausible import likeliest


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
