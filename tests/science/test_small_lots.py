"""Lots of a known number of bags: those dipped into leave no doubt about themselves.

The estimates are compared with the truth over every sample that small lots can give.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from itertools import combinations, product

import pytest

from calibrator.model import Cylinder
from calibrator.science.budget import Source
from calibrator.science.mark import LineVerdict, check_line
from calibrator.science.scale import ScaleFacts
from calibrator.science.scoopfuls import ScoopWay, spread_95_g
from calibrator.science.spread import IntervalRule, Spread
from calibrator.science.stats import mean_of, sum_of_squares, two_sided_t
from calibrator.science.weighing import LevelResult, Weighed, level_result
from tests.season_fills import pool_bag_history

EXACT, FINE = ScaleFacts(0.0), ScaleFacts(0.1)
BAGS_G = (280.0, 300.0, 286.0, 295.0, 289.0)
FILL_G = 4.0  # a fill lies as often so much above its bag as below
CYLINDER = Cylinder(diameter_mm=90.0, height_mm=100.0)


def samples(there: int, dipped: int, each: int) -> Iterator[list[Weighed]]:
    """Every sample of so many bags out of those there, `each` fills from each, all as likely."""
    for chosen in combinations(range(there), dipped):
        for signs in product((-1, 1), repeat=dipped * each):
            bags = [bag for bag in chosen for _ in range(each)]
            yield [Weighed(bag, BAGS_G[bag] + sign * FILL_G) for bag, sign in zip(bags, signs, strict=True)]


def result(fills: Sequence[Weighed], there: int | None, lots: int = 0) -> LevelResult:
    history = pool_bag_history([SEVEN] * lots)
    return level_result(fills, FINE, history=history, tolerance_g=5.8, bags_there=there)


SEVEN = [Weighed(b, m) for b, m in ((1, 290.0), (1, 293.0), (2, 285.0), (2, 288.0), (3, 295.0), (3, 292.0), (4, 291.0))]


@pytest.mark.parametrize(
    ("there", "dipped", "each", "rule"),
    [
        (1, 1, 4, IntervalRule.EVERY_BAG),
        (2, 2, 3, IntervalRule.EVERY_BAG),
        (3, 3, 2, IntervalRule.EVERY_BAG),
        (4, 3, 2, IntervalRule.BAG_MEANS),
        (5, 3, 2, IntervalRule.BAG_MEANS),
    ],
)
def test_over_every_sample_the_estimate_is_the_variance_about_the_lot_s_own_mean(
    there: int, dipped: int, each: int, rule: IntervalRule
) -> None:
    """Cochran 1977, Sampling Techniques, 3rd ed., 10.3 (clause from memory): an estimate without bias, exactly."""
    lot_mean_g = mean_of(BAGS_G[:there])
    squares, estimates = [], []
    for fills in samples(there, dipped, each):
        found = level_result(fills, EXACT, tolerance_g=5.8, bags_there=there)
        assert found.rule == rule
        squares.append((found.mean_g - lot_mean_g) ** 2)
        estimates.append(found.u_g**2)
    assert mean_of(estimates) == pytest.approx(mean_of(squares), rel=1e-12)
    bags_2, fills_2 = sum_of_squares(BAGS_G[:there]) / max(1, there - 1), FILL_G**2
    by_formula = (1 - dipped / there) * bags_2 / dipped + fills_2 / (dipped * each)
    assert mean_of(squares) == pytest.approx(by_formula, rel=1e-12)


@pytest.mark.parametrize(("there", "dipped", "each"), [(1, 1, 4), (3, 3, 2), (4, 3, 2), (5, 2, 2)])
def test_over_every_sample_one_more_scoopful_strays_as_told(there: int, dipped: int, each: int) -> None:
    """From a bag not dipped; where none is left, from any of them."""
    squares = []
    for fills in samples(there, dipped, each):
        mean_g, used = mean_of([fill.mass_g for fill in fills]), {fill.bag for fill in fills}
        bags = [bag for bag in range(there) if bag not in used] or sorted(used)
        squares += [(BAGS_G[bag] + sign * FILL_G - mean_g) ** 2 for bag in bags for sign in (-1, 1)]
    bags_2 = sum_of_squares(BAGS_G[:there]) / max(1, there - 1)
    spread = Spread(bags_2 + FILL_G**2 / each, dipped - 1, 1 / each, FILL_G**2, 8)
    assert spread.of_one_more(dipped, 1 / each, dipped / there)[0] == pytest.approx(mean_of(squares), rel=1e-12)


def test_one_bag_that_is_the_lot_by_hand() -> None:
    """s/√n, with Student's t for n − 1: there is no other bag that could differ."""
    found = result([Weighed(1, m) for m in (290.0, 294.0, 288.0, 292.0)], 1)
    s = math.sqrt(20.0 / 3)
    assert found.rule == IntervalRule.EVERY_BAG
    assert found.every_bag
    assert found.half_width_g == pytest.approx(two_sided_t(0.95, 3) * s / 2)
    assert found.next_high_g - found.mean_g == pytest.approx(two_sided_t(0.95, 3) * s * math.sqrt(1.25))
    assert [row.source for row in found.budget if not row.contained and row.share] == [Source.FILLS]
    assert found.bag_sd_g == 0.0


def test_part_of_the_lot_dipped_by_hand() -> None:
    fills = [Weighed(b, m) for b, m in ((1, 290.0), (1, 293.0), (2, 285.0), (2, 288.0), (3, 295.0), (3, 292.0))]
    found, unknown = result(fills, 6), result(fills, None)
    bag_ms, fill_ms = sum_of_squares([291.5, 286.5, 293.5]) / 2, 4.5
    assert found.u_g**2 == pytest.approx(0.5 * bag_ms / 3 + 0.5 * fill_ms / 2 / 3)
    assert unknown.u_g**2 == pytest.approx(bag_ms / 3)
    assert [row.source for row in found.budget if row.share] == [Source.BAG_MEANS, Source.FILLS]
    assert sum(row.share for row in found.budget) == pytest.approx(1.0)


def test_a_batch_out_of_one_bag_strays_from_the_lot_as_before() -> None:
    """With all bags dipped the lot's mean is known well; how far one bag lies from it is not lessened by that."""
    apart = [Weighed(bag, 290.0 + off + sign) for bag, off in enumerate((-9.0, 3.0, 6.0)) for sign in (-1, 1)]
    every, unknown = result(apart, 3), result(apart, None)
    assert every.half_width_g < 0.3 * unknown.half_width_g
    assert every.bag_sd_g == unknown.bag_sd_g > 5.0

    def reach_g(level: LevelResult) -> float:
        way = ScoopWay("", "", "level", level.mean_g, level.u_g, level.fill_sd_g, level.bag_sd_g)  # type: ignore[arg-type]
        return spread_95_g([(way, 10)])

    assert reach_g(every) > 1.95 * 10 * every.bag_sd_g


def test_more_bags_dipped_than_told_of_are_not_counted_on() -> None:
    assert result(SEVEN, 3).half_width_g == result(SEVEN, None).half_width_g
    assert not result(SEVEN, 3).every_bag


def test_a_few_bags_of_many_are_as_of_endlessly_many() -> None:
    assert result(SEVEN, 40).half_width_g == result(SEVEN, None).half_width_g
    assert result(SEVEN, 39).u_g < result(SEVEN, 40).u_g < 1.055 * result(SEVEN, 39).u_g


def test_single_fills_do_not_tell_how_fills_differ_so_nothing_is_taken_off() -> None:
    single = [Weighed(bag, mass_g) for bag, mass_g in enumerate(BAGS_G)]
    assert result(single, 5).half_width_g == result(single, None).half_width_g
    assert result(single, 5).next_high_g == result(single, None).next_high_g


def test_few_fills_of_a_lone_bag_still_rest_on_an_assumption_about_fills() -> None:
    found = result([Weighed(1, 290.0), Weighed(1, 292.0)], 1)
    assert found.rule == IntervalRule.CAUTIOUS_DEFAULT
    assert not found.bags_assumed
    assert found.half_width_g < result([Weighed(1, 290.0), Weighed(1, 292.0)], None).half_width_g


def test_a_history_and_every_bag_leave_the_fills() -> None:
    found = result(SEVEN, 4, lots=3)
    assert found.rule == IntervalRule.POOLED_HISTORY
    assert [row.source for row in found.budget if row.share] == [Source.FILLS]
    assert found.half_width_g < result(SEVEN, None, lots=3).half_width_g


def test_equal_fills_of_a_lone_bag_are_answered() -> None:
    found = result([Weighed(1, 290.0)] * 8, 1)
    assert 0 < found.half_width_g < 0.1
    assert found.advice.enough


@pytest.mark.parametrize("there", [1, 2, 3])
def test_small_lots_reach_their_target_by_the_advice(there: int) -> None:
    """As many fills as are advised, and no bag that the lot does not have."""
    wobble = (0.4, -0.5, 0.2, -0.3, 0.3, 0.0, -0.2, 0.1)
    fills = [Weighed(1, 290.0)]
    while not (found := result(fills, there)).advice.enough:
        assert found.advice.within_reach
        assert found.advice.more_fills + len(fills) <= 12
        fills.append(Weighed(1 + len(fills) % there, 290.0 + wobble[len(fills) % 8]))
    assert len(fills) == 8
    to_mark = [Weighed(fill.bag, fill.mass_g * 200 / 290) for fill in fills]
    check = check_line(CYLINDER, found, to_mark, 31.0, 200.0, 0.02, FINE, bags_there=there)
    assert check.verdict is LineVerdict.ON_TARGET
    assert not check.bags_apart


def test_bags_that_differ_beyond_the_tolerance_are_told_though_their_mean_is_right() -> None:
    level = result([Weighed(bag, 290.0 + off) for bag in (1, 2) for off in (-1, 0, 1, 0)], 2)
    to_mark = [Weighed(bag, mean + off) for bag, mean in ((1, 190.0), (2, 210.0)) for off in (-0.5, 0, 0.5, 0)]
    found = check_line(CYLINDER, level, to_mark, 31.0, 200.0, 0.02, FINE, bags_there=2)
    assert found.verdict is LineVerdict.ON_TARGET
    assert found.bags_apart
    assert found.bag_reach_g == pytest.approx(1.96 * math.sqrt(200.0), rel=0.01)
