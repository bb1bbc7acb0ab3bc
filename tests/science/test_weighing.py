"""From fills to a mean with its interval, budget, one more scoopful, density and a batch."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.science.budget import Distribution, Source
from calibrator.science.errors import CannotCompute
from calibrator.science.scale import ScaleFacts, Taring, check_scale, scale_facts
from calibrator.science.stats import two_sided_t
from calibrator.science.weighing import (
    IntervalRule,
    LevelResult,
    Weighed,
    bulk_density,
    level_result,
    tolerance_of_fills_g,
)
from tests.season_fills import pool_bag_history

FILLS = [
    Weighed(b, m)
    for b, m in ((1, 290.0), (1, 293.0), (2, 285.0), (2, 288.0), (3, 295.0), (3, 292.0), (4, 290.0), (4, 291.0))
]
FINE = ScaleFacts(0.1)


def result(fills: list[Weighed], scale: ScaleFacts = FINE, *, lots: int = 0, tolerance_g: float = 5.8) -> LevelResult:
    return level_result(fills, scale, history=pool_bag_history([FILLS] * lots), tolerance_g=tolerance_g)


def test_three_bags_or_more_by_hand() -> None:
    found = result(FILLS)
    means = [291.5, 286.5, 293.5, 290.5]
    s = math.sqrt(sum((m - 290.5) ** 2 for m in means) / 3)
    assert found.rule == IntervalRule.BAG_MEANS
    assert found.mean_g == 290.5
    assert found.u_g == pytest.approx(s / 2)
    assert found.degrees_of_freedom == pytest.approx(3)
    assert found.half_width_g == pytest.approx(two_sided_t(0.95, 3) * s / 2)
    assert found.interval(0.9)[1] - found.mean_g == pytest.approx(two_sided_t(0.9, 3) * s / 2)
    assert (found.bags, found.fills) == (4, 8)
    fill_ms = (4.5 + 4.5 + 4.5 + 0.5) / 4
    assert found.fill_sd_g == pytest.approx(math.sqrt(fill_ms))
    assert found.bag_sd_g == pytest.approx(math.sqrt(s * s - fill_ms / 2))


def test_one_more_scoopful_by_hand() -> None:
    found = result([Weighed(b, m) for b, m in enumerate((290.0, 286.0, 294.0))])
    # One fill a bag: an ordinary prediction interval, t · s · √(1 + 1/3).
    assert found.next_high_g - found.mean_g == pytest.approx(two_sided_t(0.95, 2) * 4.0 * math.sqrt(4 / 3))
    assert found.next_low_g + found.next_high_g == pytest.approx(2 * found.mean_g)


def test_one_fill_is_answered_with_assumptions_that_are_shown() -> None:
    found = result([Weighed(1, 290.0)])
    assert found.rule == IntervalRule.CAUTIOUS_DEFAULT
    assert 0.05 < found.half_width_g / found.mean_g < 0.12
    rows = {row.source: row for row in found.budget}
    assert rows[Source.BAGS].assumed
    assert rows[Source.FILLS].assumed
    assert rows[Source.BAGS].standard_uncertainty == pytest.approx(0.02 * 290.0)
    assert not result(FILLS[:2]).budget[1].assumed


def test_two_bags_far_apart_are_not_overruled_by_an_assumption() -> None:
    apart = result([Weighed(1, 250.0), Weighed(2, 310.0)])
    # Both bags lie inside, as far out as two readings can show: about s/√2 · 1.96.
    assert apart.half_width_g > 58.0
    assert apart.low_g < 250.0 < 310.0 < apart.high_g
    assert not apart.bags_assumed
    near = result([Weighed(1, 288.0), Weighed(2, 292.0)])
    assert near.bags_assumed
    assert near.half_width_g < apart.half_width_g / 2


def test_a_history_narrows_one_bag() -> None:
    alone, taught = result(FILLS[:2]), result(FILLS[:2], lots=3)
    assert taught.rule == IntervalRule.POOLED_HISTORY
    assert taught.half_width_g < alone.half_width_g
    rows = {row.source: row for row in taught.budget}
    assert not rows[Source.BAGS].assumed
    assert rows[Source.BAGS].contribution ** 2 + rows[Source.FILLS].contribution ** 2 == pytest.approx(taught.u_g**2)


def test_single_fills_split_their_spread_as_planned() -> None:
    found = result([Weighed(b, m) for b, m in enumerate((290.0, 286.0, 294.0))])
    assert math.hypot(found.bag_sd_g, found.fill_sd_g) == pytest.approx(4.0)
    assert found.fill_sd_g / found.bag_sd_g == pytest.approx(1.5)
    taught = level_result(
        [Weighed(1, 290.0)], FINE,
        history=pool_bag_history([[Weighed(b, m) for b, m in enumerate((290.0, 286.0, 294.0))]] * 2), tolerance_g=5.8,
    )  # fmt: skip
    assert taught.u_g == pytest.approx(4.0)


@pytest.mark.parametrize("lots", [0, 3])
@pytest.mark.parametrize("count", range(1, 9))
def test_shares_of_the_budget_add_up_and_give_u(count: int, lots: int) -> None:
    for scale in (ScaleFacts(3.0, 0.01, 0.003, 12.0), ScaleFacts(3.0, taring=Taring.ONCE), ScaleFacts(0.0)):
        found = result(FILLS[:count], scale, lots=lots)
        assert sum(row.share for row in found.budget) == pytest.approx(1.0)
        counted = [row.contribution for row in found.budget if not row.contained]
        assert math.hypot(*counted) == pytest.approx(found.u_g)
        for row in found.budget:
            assert row.contribution == pytest.approx(abs(row.sensitivity) * row.standard_uncertainty)


def test_display_steps_are_shown_and_set_a_floor() -> None:
    same = [Weighed(b, 290.0) for b in (1, 2, 3)]
    found = result(same, ScaleFacts(3.0))
    rows = {row.source: row for row in found.budget}
    # All alike: they may share one rounding, so averaging is not counted on.
    assert found.u_g == pytest.approx(3.0 / math.sqrt(12))
    assert rows[Source.READING].share == pytest.approx(1.0)
    assert rows[Source.READING].distribution == Distribution.RECTANGULAR
    near = result(
        [Weighed(b, m) for b, m in ((1, 290.0), (1, 293.0), (2, 293.0), (2, 290.0), (3, 290.0), (3, 293.0))],
        ScaleFacts(3.0),
    )
    assert near.u_g == pytest.approx(3.0 / math.sqrt(6) / math.sqrt(6))
    wide = result(FILLS, ScaleFacts(0.1))
    assert next(row for row in wide.budget if row.source == Source.READING).contained


def test_more_fills_are_not_asked_for_where_the_display_s_step_is_all_that_is_left() -> None:
    """A hanging scale of 1 oz shows the same figure for every fill: a further like one would not say more.

    JCGM 100:2008, F.2.2.1: the doubt of a reading's step stays when all indications are alike.
    """
    same = [Weighed(b, 12 * 28.35) for b in (1, 1, 2, 2, 3, 3, 4, 4)]
    found = result(same, ScaleFacts(28.35), tolerance_g=6.8)
    assert found.half_width_g > 15
    assert not found.advice.enough
    assert not found.advice.within_reach
    fine = result(same, ScaleFacts(2.835), tolerance_g=6.8)
    assert fine.advice.enough


def test_equal_fills_on_a_perfect_scale_leave_no_doubt() -> None:
    found = result([Weighed(b, 290.0) for b in (1, 2, 3, 4)], ScaleFacts(0.0))
    assert found.u_g == found.half_width_g == 0.0
    assert all(row.share == 0.0 for row in found.budget)


def test_tared_once_is_never_averaged_away() -> None:
    each, once = result(FILLS, ScaleFacts(3.0)), result(FILLS, ScaleFacts(3.0, taring=Taring.ONCE))
    assert once.u_g == pytest.approx(math.hypot(each.u_g, 3.0 / math.sqrt(12)))
    # Three scoopfuls in one weighing share the rounding between them.
    threes = [Weighed(f.bag, f.mass_g, 3) for f in FILLS]
    rows = {row.source: row for row in result(threes, ScaleFacts(3.0, taring=Taring.ONCE)).budget}
    assert rows[Source.TARE].sensitivity == pytest.approx(1 / 3)


def test_scale_error_is_taken_off_and_its_doubt_counted() -> None:
    plain = result(FILLS)
    off = result(FILLS, ScaleFacts(0.1, error_share=2.0 / plain.mean_g, error_u_share=1.0 / plain.mean_g))
    assert off.mean_g == pytest.approx(plain.mean_g - 2.0)
    assert off.taken_off_g == pytest.approx(2.0)
    assert off.u_g == pytest.approx(math.hypot(plain.u_g, 1.0))
    assert off.half_width_g == pytest.approx(math.hypot(plain.half_width_g, 1.959964))


@given(
    st.lists(st.tuples(st.integers(1, 6), st.floats(250, 330), st.integers(1, 4)), min_size=1, max_size=24),
    st.floats(0, 10),
    st.integers(0, 3),
    st.sampled_from(Taring),
)
def test_every_valid_set_of_fills_is_answered(
    rows: list[tuple[int, float, int]], step_g: float, lots: int, taring: Taring
) -> None:
    found = result(
        [Weighed(*row) for row in rows], ScaleFacts(step_g, error_u_share=step_g / 900, taring=taring), lots=lots
    )
    assert found.low_g <= found.mean_g <= found.high_g
    assert found.next_low_g <= found.mean_g <= found.next_high_g
    assert all(math.isfinite(x) for x in (found.u_g, found.low_g, found.high_g, found.next_low_g, found.next_high_g))
    assert found.u_g * 1.9 <= found.half_width_g + 1e-9
    assert set(found.odd) <= set(range(len(rows)))
    assert found.advice.enough == (found.advice.more_fills == 0)


@given(st.lists(st.tuples(st.integers(1, 4), st.floats(250, 330)), min_size=1, max_size=12), st.floats(0.2, 5))
def test_a_larger_scoop_scales_the_whole_result(rows: list[tuple[int, float]], factor: float) -> None:
    small = level_result([Weighed(*row) for row in rows], ScaleFacts(1.0), tolerance_g=5.8)
    large = level_result([Weighed(b, m * factor) for b, m in rows], ScaleFacts(factor), tolerance_g=5.8 * factor)
    assert large.half_width_g == pytest.approx(factor * small.half_width_g, rel=1e-6)
    assert large.advice.more_fills == small.advice.more_fills


@given(st.integers(1, 20), st.floats(-0.09, 0.09), st.integers(1, 4))
def test_a_scale_that_is_off_is_corrected_alike_however_many_scoopfuls_it_bears(
    together: int, off_share: float, bags: int
) -> None:
    """Scoopfuls of 100 g on a scale that shows every weight in the same proportion too high or too low."""
    shown_g = 100.0 * (1 + off_share)
    fills = [Weighed(bag, shown_g, together) for bag in range(bags)]
    check = check_scale(500.0, 500.0 * (1 + off_share), 0.001)
    found = level_result(fills, scale_facts(0.001, check), tolerance_g=2.0)
    assert found.mean_g == pytest.approx(100.0, abs=0.001)
    doubt = next(row for row in found.budget if row.source is Source.SCALE_ERROR)
    assert doubt.contribution == pytest.approx(100.0 * check.u_g / (500.0 * (1 + off_share)), rel=1e-3)


def test_a_scale_that_nobody_checked_leaves_more_doubt_than_a_checked_one() -> None:
    """What nobody measured is estimated by what is known otherwise, and not left out (JCGM 100:2008, 4.3.1)."""
    fills = [Weighed(n // 2 + 1, 335.0 + (0.0, 2.8, -2.8)[n % 3]) for n in range(12)]
    step_g = 2.835
    perfect = result(fills, scale_facts(step_g, check_scale(500.0, 500.0, step_g)))
    unchecked = result(fills, scale_facts(step_g, None))
    assert unchecked.half_width_g > perfect.half_width_g
    row = next(one for one in unchecked.budget if one.source is Source.SCALE_ERROR)
    assert (row.assumed, row.distribution) == (True, Distribution.RECTANGULAR)
    assert row.contribution == pytest.approx(step_g / math.sqrt(3))
    assert unchecked.scale_half_g == pytest.approx(1.96 * step_g / math.sqrt(3), rel=1e-4)
    assert perfect.scale_half_g == 0.0


def test_no_number_of_fills_is_told_where_an_unchecked_scale_leaves_more_than_is_wanted() -> None:
    """In steps of half an ounce: one step of 14 g, rectangular, is ± 16 g at 95 %, of 670 g 2.4 %."""
    fills = [Weighed(n // 3 + 1, 670.0 / 2 + (n % 3 - 1) * 7.0, 2) for n in range(12)]
    found = result(fills, scale_facts(14.175, None), tolerance_g=6.7)
    assert found.scale_half_g > found.advice.wanted_half_width_g
    assert not found.advice.within_reach
    assert found.check_weight_tells
    heavy = result(fills, scale_facts(14.175, check_scale(2000.0, 2000.0, 14.175)), tolerance_g=6.7)
    assert not heavy.check_weight_tells


def test_the_tolerance_goes_by_all_fills_in_any_order() -> None:
    assert tolerance_of_fills_g(FILLS, 0.02) == pytest.approx(0.02 * result(FILLS).mean_g)
    assert tolerance_of_fills_g(FILLS[::-1], 0.02) == pytest.approx(tolerance_of_fills_g(FILLS, 0.02))


def test_several_scoopfuls_together_count_as_several() -> None:
    singles = [Weighed(b, m) for b in (1, 2, 3) for m in (289.0 + b, 289.0 + b, 289.0 + b)]
    threes = [Weighed(b, 289.0 + b, 3) for b in (1, 2, 3)]
    assert result(threes).mean_g == result(singles).mean_g
    assert result(threes).half_width_g == pytest.approx(result(singles).half_width_g)


@pytest.mark.parametrize(
    ("scale", "tolerance_g"),
    [
        (ScaleFacts(-1.0), 5.0),
        (ScaleFacts(math.nan), 5.0),
        (ScaleFacts(1.0, error_share=math.inf), 5.0),
        (ScaleFacts(1.0, error_share=1.4), 5.0),
        (ScaleFacts(1.0, error_u_share=-0.1), 5.0),
        (ScaleFacts(1.0, error_df=0.0), 5.0),
        (ScaleFacts(1.0), 0.0),
        (ScaleFacts(1.0), math.nan),
    ],
)
def test_nonsense_is_refused(scale: ScaleFacts, tolerance_g: float) -> None:
    with pytest.raises(CannotCompute, match=r"^[A-Z].*\.$"):
        result(FILLS, scale, tolerance_g=tolerance_g)


def test_no_fills_are_refused() -> None:
    with pytest.raises(CannotCompute, match="Weigh at least one"):
        result([])


def test_density_takes_the_volume_in() -> None:
    level = result(FILLS)
    exact = bulk_density(level, 580.0)
    assert exact.density_g_per_ml == pytest.approx(290.5 / 580.0)
    assert exact.u_g_per_ml == pytest.approx(level.u_g / 580.0)
    assert exact.expanded == pytest.approx(level.half_width_g / 580.0)
    doubted = bulk_density(level, 580.0, 5.8)
    assert doubted.u_g_per_ml / doubted.density_g_per_ml == pytest.approx(math.hypot(level.u_g / 290.5, 0.01))
    assert [row.source for row in doubted.budget] == [Source.LEVEL_MEAN, Source.SCOOP_VOLUME]
    for volume, u in ((0.0, 0.0), (-1.0, 0.0), (math.nan, 0.0), (580.0, -1.0)):
        with pytest.raises(CannotCompute):
            bulk_density(level, volume, u)


def test_results_are_values() -> None:
    assert result(FILLS) == result(FILLS)
    assert replace(result(FILLS), mean_g=1.0) != result(FILLS)
