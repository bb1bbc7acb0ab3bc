"""A season's figures: spreads, charts, comparisons and trends."""

from __future__ import annotations

import math
import random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.science.components import f_tail
from calibrator.science.errors import CannotCompute
from calibrator.science.nested import Weighed
from calibrator.science.season import (
    best_fills_each,
    best_split,
    compare,
    components,
    ewma_chart,
    individuals_chart,
    one_way,
    trend,
)


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


def test_points_beyond_the_limits_and_jumps() -> None:
    values = [10.0, 10.1, 9.9, 10.0, 10.1, 9.9, 10.0, 12.0, 10.0, 10.1]
    chart = individuals_chart(values)
    assert chart.outside == (7,)
    assert chart.jumps == (7, 8)
    assert chart.low < chart.centre < chart.high


def test_eight_on_one_side_are_a_run() -> None:
    values = [1.0, -1.0] * 4 + [0.4] * 9 + [-1.2] * 3
    chart = individuals_chart(values)
    assert chart.centre > -1
    assert chart.runs == tuple(i for i in (15, 16))
    assert individuals_chart([1.0] * 10).runs == ()


def test_charts_refuse_nonsense() -> None:
    for call in (
        lambda: individuals_chart([1.0]),
        lambda: individuals_chart([1.0, math.nan]),
        lambda: ewma_chart([], 0.0, 1.0),
        lambda: ewma_chart([1.0], 0.0, -1.0),
        lambda: ewma_chart([1.0], 0.0, 1.0, weight=0.0),
        lambda: ewma_chart([1.0], 0.0, 1.0, width=0.0),
    ):
        with pytest.raises(CannotCompute, match=r"^[A-Z].*\.$"):
            call()


def test_ewma_sees_a_small_lasting_shift() -> None:
    values = [0.0] * 5 + [1.5] * 8
    chart = ewma_chart(values, 0.0, 1.0)
    assert chart.outside
    assert min(chart.outside) >= 6
    assert chart.high[0] < chart.steady_high
    assert chart.steady_low == pytest.approx(-chart.steady_high)
    assert ewma_chart(values, 0.0, 1.0, weight=1.0).points == tuple(values)


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


def test_a_straight_line_is_found() -> None:
    exact = trend([1.0, 2.0, 3.0], [3.0, 5.0, 7.0])
    assert (exact.slope, exact.intercept, exact.residual_sd) == (2.0, 1.0, 0.0)
    assert exact.seen
    flat = trend([1.0, 2.0, 3.0, 4.0], [1.0, 2.0, 2.0, 1.0])
    assert flat.slope == pytest.approx(0.0)
    assert not flat.seen
    assert flat.p == pytest.approx(1.0)
    for x, y in (
        ([1.0, 2.0], [1.0, 2.0]),
        ([1.0, 2.0, 3.0], [1.0]),
        ([1.0] * 3, [1.0, 2.0, 3.0]),
        ([1.0, 2.0, math.inf], [1.0] * 3),
    ):
        with pytest.raises(CannotCompute):
            trend(x, y)
