"""How many more fills and from where; which fills look odd."""

from __future__ import annotations

import math

import pytest

from calibrator.science.advice import MOST_MORE, STOP_SHARE, Outlook, plan
from calibrator.science.nested import Weighed, table
from calibrator.science.odd import odd_fills
from calibrator.science.scale import ScaleFacts
from calibrator.science.spread import IntervalRule, Spread
from calibrator.science.weighing import Advice, level_result
from tests.season_fills import pool_bag_history

STEADY = [
    Weighed(b, m)
    for b, m in ((1, 290.0), (1, 291.0), (2, 291.0), (2, 290.0), (3, 290.0), (3, 292.0), (4, 291.0), (4, 290.0))
]


def advice(fills: list[Weighed], tolerance_g: float = 5.8, lots: int = 0) -> Advice:
    history = pool_bag_history([STEADY] * lots)
    return level_result(fills, ScaleFacts(1.0), history=history, tolerance_g=tolerance_g).advice


def test_enough_when_narrow_enough() -> None:
    found = advice(STEADY)
    assert found.enough
    assert found.wanted_half_width_g == pytest.approx(STOP_SHARE * 5.8)
    assert found.half_width_g <= found.wanted_half_width_g


def test_few_bags_call_for_others() -> None:
    for count in (1, 2, 4):
        found = advice(STEADY[:count])
        assert not found.enough
        assert found.from_other_bags


def test_three_bags_that_agree_are_not_yet_believed() -> None:
    found = advice(STEADY[:6])
    assert not found.enough
    assert found.more_fills >= 2


def test_four_single_fills_that_agree_are_not_yet_believed() -> None:
    found = advice([Weighed(b, 290.0 + b / 10) for b in range(4)])
    assert not found.enough
    assert not found.from_other_bags  # the second fill of each will do
    assert found.more_fills == 4


def test_after_two_fills_a_bag_the_next_fill_comes_from_another_bag() -> None:
    """Else the same few bags are weighed over and over, and how bags differ stays as unsure as before."""
    found = advice(STEADY, tolerance_g=0.4)
    assert not found.enough
    assert found.from_other_bags


def test_a_history_is_believed_from_the_first_bag_on() -> None:
    assert advice(STEADY[:2], lots=3).enough


def test_out_of_reach_is_said() -> None:
    found = advice([Weighed(b, 290.0 * (1 + 0.1 * (-1) ** b)) for b in range(4)], tolerance_g=0.5)
    assert (found.within_reach, found.more_fills) == (False, MOST_MORE)


def known(bag: float, fill: float) -> Outlook:
    return Outlook(IntervalRule.POOLED_HISTORY, Spread(bag**2 + fill**2 / 2, 30, 0.5, fill**2, 40), 0.0)


def test_fills_that_follow_the_plan_get_there_and_one_less_does_not() -> None:
    outlook = known(0.01, 0.015)
    more, other = plan(outlook, [2, 2], 0.012)
    assert other
    assert more is not None
    assert outlook.half_width([2, 2, *[1] * more]) <= 0.012 < outlook.half_width([2, 2, *[1] * (more - 1)])


def test_the_same_bags_do_where_bags_do_not_differ() -> None:
    outlook = known(0.0, 0.02)
    more, other = plan(outlook, [2, 2], 0.015)
    assert not other
    assert more is not None
    assert outlook.half_width([2 + more // 2, 2 + more - more // 2]) <= 0.015


def test_bags_alone_matter_where_fills_repeat_well() -> None:
    assert plan(known(0.02, 0.001), [4], 0.02)[1]


def test_doubt_common_to_all_fills_is_not_planned_away() -> None:
    outlook = Outlook(IntervalRule.POOLED_HISTORY, Spread(1e-4, 30, 0.5, 1e-4, 40), 0.01)
    assert plan(outlook, [2, 2], 0.015) == (None, True)


def test_planning_without_any_spread() -> None:
    assert Outlook(IntervalRule.POOLED_HISTORY, Spread(0.0, 30, 0.5, 0.0, 40), 0.0).half_width([1]) == 0.0
    unknown_fills = Outlook(IntervalRule.POOLED_HISTORY, Spread(1e-4, 30, 1.0, 0.0, 0), 0.0)
    assert unknown_fills.components() == (1e-4, 1e-4)


def flagged(values: list[tuple[int, float]], reading_u_g: float = 0.0, lots: int = 0) -> tuple[int, ...]:
    fills = [Weighed(*v) for v in values]
    return odd_fills(fills, table(fills), reading_u_g, pool_bag_history([STEADY] * lots))


def test_a_slip_in_a_bag_is_flagged() -> None:
    assert flagged([(1, 290.0), (1, 291.0), (1, 289.5), (1, 290.5), (1, 310.0)]) == (4,)


def test_of_a_pair_the_one_farther_from_the_lot_is_flagged() -> None:
    fills = [(1, 290.0), (1, 291.0), (2, 291.0), (2, 290.0), (3, 330.0), (3, 290.5), (4, 290.0), (4, 291.5)]
    assert flagged(fills) == (4,)


def test_a_single_fill_is_judged_by_the_other_bags() -> None:
    assert flagged([(1, 290.0), (2, 291.0), (3, 289.5), (4, 290.5), (5, 340.0)]) == (4,)
    assert flagged([(1, 290.0), (1, 291.0), (2, 290.0), (2, 290.5), (3, 289.0), (3, 289.5), (4, 330.0)]) == (6,)


def test_a_single_fill_has_nothing_to_be_odd_beside() -> None:
    assert flagged([(1, 290.0)]) == ()


@pytest.mark.parametrize("bag", [1, 2])
@pytest.mark.parametrize("lots", [0, 3])
def test_of_two_fills_far_apart_either_may_be_the_odd_one(bag: int, lots: int) -> None:
    assert flagged([(1, 290.0), (bag, 400.0)], lots=lots) == (0, 1)
    assert flagged([(1, 290.0), (bag, 291.0)], lots=lots) == ()


@pytest.mark.parametrize("lots", [0, 3])
@pytest.mark.parametrize(
    "before", [[(1, 290.0), (1, 291.0)], [(1, 290.0), (2, 292.0)], [(1, 290.0), (1, 291.0), (2, 289.0), (2, 290.0)]]
)
def test_the_first_fill_of_a_bag_is_flagged_at_once(before: list[tuple[int, float]], lots: int) -> None:
    assert flagged([*before, (5, 350.0)], lots=lots) == (len(before),)
    assert flagged([*before, (5, 291.5)], lots=lots) == ()


def test_a_farm_whose_fills_hardly_spread_is_told_of_smaller_slips() -> None:
    fills = [(1, 290.0), (1, 291.0), (2, 302.0)]
    assert (flagged(fills), flagged(fills, lots=3)) == ((), (2,))


def test_earlier_fills_that_were_never_two_of_a_bag_flag_none_beside_its_fellow() -> None:
    singles = [Weighed(b, 290.0 + b) for b in range(6)]
    fills = [Weighed(1, 290.0), Weighed(1, 310.0)]
    assert odd_fills(fills, table(fills), 0.0, pool_bag_history([singles])) == ()


def test_equal_fills_are_never_odd() -> None:
    assert flagged([(1, 290.0)] * 6) == flagged([(b, 290.0) for b in range(6)]) == ()


def test_two_equal_weights_on_a_coarse_display_do_not_make_the_third_odd() -> None:
    assert flagged([(1, 290.0), (1, 290.0), (1, 293.0)], 3.0 / math.sqrt(6)) == ()
    assert flagged([(1, 290.0), (1, 290.0), (1, 293.0)]) == (2,)
    assert flagged([(1, 290.0), (2, 290.0), (3, 290.0), (4, 293.0)]) == (3,)
    assert flagged([(1, 290.0), (2, 290.0), (3, 290.0), (4, 293.0)], 3.0 / math.sqrt(6)) == ()


def test_a_slip_of_a_tenth_is_odd_however_widely_few_fills_spread() -> None:
    """8.3 typed for 9.3 as the fourth weight. Nobody who strikes level is so far off: common practice, no source."""
    fills = [Weighed(bag, mass) for bag, mass in ((1, 9.6), (1, 9.4), (2, 9.3), (2, 8.3))]
    assert odd_fills(fills, table(fills)) == (3,)
    two = [Weighed(1, 9.5), Weighed(1, 8.3)]
    assert odd_fills(two, table(two)) == (0, 1)
    assert odd_fills(fills[:3], table(fills[:3])) == ()
