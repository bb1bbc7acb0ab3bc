"""Powder at hand: what is left, how long it lasts."""

from __future__ import annotations

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.science.errors import CannotCompute
from calibrator.science.stock import (
    about_packages,
    days_of_each,
    full_days,
    packages_missing,
    packages_needed,
    powder_in_g,
    stock,
    stock_over,
    together_g,
)

BAG_G = 22_679.6185
TODAY = date(2025, 3, 10)


def test_forty_bags_with_ten_fed_last_so_many_days() -> None:
    left = stock(40, BAG_G, 10 * BAG_G, 4.5 * BAG_G, TODAY)
    assert left.packages_left == pytest.approx(30.0)
    assert (left.days, left.last_full_day) == (6, date(2025, 3, 15))


def test_exactly_one_day_is_one_day() -> None:
    left = stock(3, BAG_G, 2 * BAG_G, BAG_G, TODAY)
    assert (left.days, left.last_full_day) == (1, TODAY)


def test_less_than_a_day_and_nothing_fed() -> None:
    short = stock(1, BAG_G, 0.5 * BAG_G, BAG_G, TODAY)
    assert (short.days, short.last_full_day) == (0, None)
    idle = stock(1, BAG_G, 0.0, 0.0, TODAY)
    assert (idle.days, idle.last_full_day, idle.left_g) == (None, None, BAG_G)


def test_a_crumb_fed_a_day_gives_no_date() -> None:
    assert stock(40, BAG_G, 0.0, 1e-6, TODAY).last_full_day is None


def test_all_of_it_fed_leaves_nothing() -> None:
    assert stock(3, 0.1, 0.1 + 0.1 + 0.1, 0.05, TODAY).left_g == 0.0


@pytest.mark.parametrize("figures", [(-1, 1, 0, 1), (1, 0, 0, 1), (1, 1, -1, 1), (1, 1, 0, -1), (1, 1, 2, 1)])
def test_impossible_figures_are_refused(figures: tuple[float, float, float, float]) -> None:
    with pytest.raises(CannotCompute, match=r"^[A-Z].*\.$"):
        stock(*figures, TODAY)


def test_whole_packages_for_a_weight() -> None:
    assert [packages_needed(n * BAG_G, BAG_G) for n in (0, 1, 1.01, 7)] == [0, 1, 2, 7]
    with pytest.raises(CannotCompute):
        packages_needed(-1, BAG_G)


def test_days_that_take_more_and_more_use_it_up_sooner() -> None:
    """Ten bags of 100 g: one day takes 100 g, the next 200, then 300 and 400: just four days."""
    left = stock_over(10, 100.0, 0.0, [100.0, 200.0, 300.0, 400.0, 500.0], TODAY)
    assert (left.days, left.last_full_day) == (4, date(2025, 3, 13))
    assert stock_over(0.5, 100.0, 0.0, [100.0], TODAY).days == 0
    assert stock_over(0.5, 100.0, 0.0, [100.0], TODAY).last_full_day is None
    assert stock_over(50, 100.0, 0.0, [100.0, 100.0], TODAY).days == 2
    assert stock_over(50, 100.0, 0.0, [0.0, 0.0], TODAY).days is None


def test_days_that_are_all_alike_give_what_the_plain_rule_gives() -> None:
    for packages in (0.3, 1.0, 7.5, 12.0):
        plain = stock(packages, BAG_G, 0.0, 2.5 * BAG_G, TODAY)
        assert stock_over(packages, BAG_G, 0.0, [2.5 * BAG_G] * 40, TODAY) == plain


def test_packages_missing_are_those_that_the_days_take_beyond_what_is_left() -> None:
    assert packages_missing([BAG_G] * 10, 2.5 * BAG_G, BAG_G) == 8
    assert packages_missing([BAG_G], 5 * BAG_G, BAG_G) == 0
    with pytest.raises(CannotCompute):
        packages_missing([BAG_G], -1, BAG_G)


def test_full_days_are_counted_over_uneven_days_and_none_where_nothing_is_fed() -> None:
    assert full_days(600.0, [100.0, 200.0, 300.0, 400.0]) == 3
    assert full_days(99.0, [100.0]) == 0
    assert full_days(5000.0, [100.0, 100.0]) == 2
    assert full_days(5000.0, [0.0, 0.0]) is None
    with pytest.raises(CannotCompute):
        full_days(-1.0, [100.0])


def test_lots_to_come_are_fed_one_after_another() -> None:
    """250 g at 100 g a day are two days; 150 g more make four in all, 300 g more seven; the last outlasts the ten."""
    needs_g = [100.0] * 10
    assert days_of_each([150.0, 300.0, 900.0], 250.0, needs_g) == (2, 3, None)
    assert days_of_each([None, 150.0], 250.0, needs_g) == (None, 2)
    assert days_of_each([150.0], 250.0, [0.0]) == (None,)
    with pytest.raises(CannotCompute):
        days_of_each([-1.0], 250.0, needs_g)


def test_weights_are_added_where_each_is_known() -> None:
    assert (together_g([1.0, 2.5]), together_g([1.0, None]), together_g([])) == (3.5, None, 0.0)
    assert powder_in_g(2.5, BAG_G) == pytest.approx(2.5 * BAG_G)
    with pytest.raises(CannotCompute):
        powder_in_g(-1, BAG_G)


def test_half_a_package_is_about_one_whichever_way_a_sum_fell() -> None:
    assert [about_packages(bags) for bags in (19.499999999999996, 19.5, 20.5, 19.49, 0.0)] == [20, 20, 21, 19, 0]


grams = st.floats(0, 1e6)


@given(st.lists(grams, max_size=20), grams, grams)
def test_more_fed_never_leaves_more_days_and_nothing_falls_below_zero(
    needs_g: list[float], fed_g: float, more_g: float
) -> None:
    less = stock_over(3, 1e6, fed_g, needs_g, TODAY)
    more = stock_over(3, 1e6, fed_g + more_g, needs_g, TODAY)
    assert 0 <= more.left_g <= less.left_g
    assert (more.days is None) is (less.days is None)
    assert 0 <= (more.days or 0) <= (less.days or 0) <= len(needs_g)


@given(st.lists(grams, max_size=5), grams, st.lists(grams, max_size=20))
def test_each_lot_adds_its_days_to_those_before(came_g: list[float], left_g: float, needs_g: list[float]) -> None:
    each = days_of_each(came_g, left_g, needs_g)
    assert all(days is None or days >= 0 for days in each)
    if each and None not in each:
        told = [days for days in each if days is not None]
        assert sum(told) + (full_days(left_g, needs_g) or 0) == full_days(left_g + sum(came_g), needs_g)
