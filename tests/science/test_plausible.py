"""Which of several weights was meant, by what powder can weigh."""

from __future__ import annotations

import pytest

from calibrator.science.errors import CannotCompute
from calibrator.science.plausible import digits_swapped, likeliest, scoopfuls_meant, whole_feeding


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


@pytest.mark.parametrize(
    ("typed", "others", "meant"),
    [
        ("336 g", 363.0, 363.0),
        ("336", 365.0, 363.0),
        ("14.2 oz", 12.6, 12.4),  # over the point too
        ("14,2", 12.4, 12.4),
        ("336 g", 355.0, None),  # 5 % off: so scoopfuls may differ
        ("336 g", 380.0, None),  # off, but 363 would be so too
        ("336 g", 300.0, None),
        ("333 g", 363.0, None),  # nothing to swap
        ("1 lb 4.2 oz", 22.4, None),  # of two numbers nothing is guessed
        ("300 + 36 g", 363.0, None),
    ],
)
def test_two_digits_the_other_way_round_are_seen_where_they_make_the_weight_like_the_others(
    typed: str, others: float, meant: float | None
) -> None:
    mass = float(typed.split()[0].replace(",", ".")) if "lb" not in typed and "+" not in typed else 20.2
    found = digits_swapped(typed, mass, others)
    assert (found and found[1]) == (None if meant is None else pytest.approx(meant))


def test_what_was_meant_is_told_as_it_was_typed() -> None:
    found = digits_swapped("14,2 oz", 402.6, 355.0)
    assert found is not None
    assert found[0] == "12,4 oz"


def test_a_weight_of_nothing_has_no_digits_to_swap() -> None:
    with pytest.raises(CannotCompute):
        digits_swapped("336 g", 336.0, 0.0)


@pytest.mark.parametrize(
    ("mass_g", "scoopfuls", "meant"),
    [
        (672.0, 1, 2),
        (331.0, 2, 1),
        (1000.0, 2, 3),
        (336.0, 1, None),
        (668.0, 2, None),
        (400.0, 1, None),
        (500.0, 1, None),
    ],
)
def test_a_weight_that_others_weigh_times_a_whole_number(mass_g: float, scoopfuls: int, meant: int | None) -> None:
    assert scoopfuls_meant(mass_g, scoopfuls, 334.0) == meant
