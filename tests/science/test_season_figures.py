"""A season's figures: spreads and comparisons."""

from __future__ import annotations

import math
import random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.science.compare import compare
from calibrator.science.components import best_fills_each, best_split, f_tail, one_way
from calibrator.science.errors import CannotCompute
from calibrator.science.nested import Weighed
from tests.season_fills import components


def season(chance: random.Random, lots: int, designs: list[tuple[int, ...]]) -> list[list[Weighed]]:
    """Lots that spread by 14 g, bags by 4 g, fills by 5 g."""
    made = []
    for lot in range(lots):
        lot_g = 290 + chance.gauss(0, 14)
        design = designs[lot % len(designs)]
        bags = [(lot_g + chance.gauss(0, 4), n) for n in design]
        made.append([Weighed(b, g + chance.gauss(0, 5)) for b, (g, n) in enumerate(bags) for _ in range(n)])
    return made


@pytest.mark.parametrize("designs", [[(2, 2, 2, 2)], [(4, 1), (2, 2, 2), (1, 1, 1, 1), (3,)]])
def test_components_are_found_on_average(designs: list[tuple[int, ...]]) -> None:
    chance = random.Random(5)
    runs = 60
    sums = [0.0, 0.0, 0.0]
    for _ in range(runs):
        found = components(season(chance, 24, designs))
        for i, sd in enumerate((found.lot_sd, found.bag_sd, found.fill_sd)):
            sums[i] += (sd or 0.0) ** 2 / runs
    assert sums[0] == pytest.approx(14**2, rel=0.15)
    assert sums[1] == pytest.approx(4**2, rel=0.25)
    assert sums[2] == pytest.approx(5**2, rel=0.1)


def test_components_by_hand() -> None:
    # Two lots of two bags of two fills: lot means 11 and 21, bag means 10, 12, 20, 22, fills one off each side.
    rows = [[(1, 9), (1, 11), (2, 11), (2, 13)], [(1, 19), (1, 21), (2, 21), (2, 23)]]
    found = components([[Weighed(b, float(v)) for b, v in lot] for lot in rows])
    assert found.mean == 16.0
    assert (found.fills.sum_squares, found.bags.sum_squares, found.lots.sum_squares) == (8.0, 8.0, 200.0)
    assert found.fill_sd == pytest.approx(math.sqrt(2))
    assert found.bag_sd == pytest.approx(1.0)  # (4 − 2)/2
    assert found.lot_sd == pytest.approx(7.0)  # (200 − 4)/4 = 49
    assert found.shares == pytest.approx((49 / 52, 1 / 52, 2 / 52))


def test_what_cannot_be_told_is_none() -> None:
    one = components([[Weighed(1, 290.0)]])
    assert (one.lot_sd, one.bag_sd, one.fill_sd, one.shares) == (None, None, None, (0.0, 0.0, 0.0))
    lots = components([[Weighed(1, 290.0)], [Weighed(1, 300.0)], []])
    assert lots.lot_sd == pytest.approx(math.sqrt(50))
    assert lots.bag_sd is None
    with pytest.raises(CannotCompute):
        components([[]])


def test_equal_groups_give_no_ratio() -> None:
    between, within = one_way([[1.0, 1.0], [2.0, 2.0]])
    assert (between.f, within.mean_square) == (None, 0.0)
    for groups in ([[1.0]], [[1.0], []], [[1.0], [math.nan]]):
        with pytest.raises(CannotCompute):
            one_way(groups)
    with pytest.raises(CannotCompute):
        f_tail(1.0, 0, 3)


@given(st.floats(0.0, 0.03), st.floats(0.001, 0.05), st.floats(0.003, 0.02))
def test_the_split_meets_the_wish_at_the_least_cost(bag: float, fill: float, wanted: float) -> None:
    found = best_split(bag, fill, wanted)
    assert found.u <= wanted * (1 + 1e-9)
    assert found.cost == found.bags * (2 + found.fills_each)
    for each in range(1, 11):
        bags = math.ceil((bag**2 + fill**2 / each) / wanted**2 * (1 - 1e-12))
        assert found.cost <= max(1, bags) * (2 + each)


def test_the_best_number_of_fills() -> None:
    assert best_fills_each(1.0, 1.5, bag_cost=2.0) == pytest.approx(math.sqrt(2) * 1.5)
    assert best_fills_each(0.0, 1.5) == math.inf
    for call in (
        lambda: best_split(-1.0, 1.0, 1.0),
        lambda: best_split(1.0, 1.0, 0.0),
        lambda: best_split(1.0, 1.0, 1.0, bag_cost=0.0),
        lambda: best_fills_each(1.0, -1.0),
    ):
        with pytest.raises(CannotCompute):
            call()


def test_two_lots_that_differ() -> None:
    found = compare((290.0, 1.0, 5.0), (300.0, 1.0, 5.0))
    assert found.difference == 10.0
    assert found.differs
    assert found.p < 0.001
    assert compare((300.0, 1.0, 5.0), (290.0, 1.0, 5.0)).low == pytest.approx(-found.high)
    assert not compare((290.0, 1.0, 5.0), (291.0, 1.0, 5.0)).differs
    assert compare((290.0, 0.0, 5.0), (290.0, 0.0, 5.0)).p == 1.0
    assert compare((290.0, 1.0, math.inf), (290.0, 1.0, math.inf)).p == pytest.approx(1.0)
    for bad in ((math.nan, 1.0, 5.0), (290.0, -1.0, 5.0)):
        with pytest.raises(CannotCompute):
            compare(bad, (290.0, 1.0, 5.0))
