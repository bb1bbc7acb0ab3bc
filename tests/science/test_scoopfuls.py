"""Fewest scoopfuls, exactly; the water trimmed to whole ones; what a count delivers."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from calibrator.model import Composition, FillWay
from calibrator.science import mixing, scoops
from calibrator.science.delivered import delivered
from calibrator.science.errors import CannotCompute
from calibrator.science.scoopfuls import filled_to_share, scoop_count
from calibrator.science.scoops import (
    ScoopWay,
    fewest_table,
    manner_of,
    parts_of,
    trim_water,
    trimmed_manner,
    usual,
    usual_table,
)
from tests.science.exhaustive_scoops import fewest, misses

lawful = settings(deadline=None, max_examples=60)

BIG = ScoopWay("big", "big", FillWay.LEVEL, 520.0, u_mean_g=2.0, fill_sd_g=8.0)
BIG_MARK = ScoopWay("big", "big", FillWay.TO_MARK, 454.0, u_mean_g=2.0, fill_sd_g=9.0)
SMALL = ScoopWay("small", "small", FillWay.LEVEL, 150.0, u_mean_g=1.0, fill_sd_g=3.0)
ALL = [BIG, BIG_MARK, SMALL]


def told(count: scoops.ScoopCount | None) -> dict[tuple[str, FillWay], float] | None:
    return None if count is None else {(w.scoop_id, w.way): n for w, n in count.parts}


def test_the_quick_search_finds_what_trying_every_count_finds() -> None:
    assert misses(cases=400, seed=20) == []


def test_fewest_scoopfuls_first() -> None:
    assert told(fewest(1040.0, ALL, 0.01)) == {("big", FillWay.LEVEL): 2}
    assert told(fewest(670.0, ALL, 0.01)) == {("big", FillWay.LEVEL): 1, ("small", FillWay.LEVEL): 1}


def test_one_kind_before_two_of_the_same_number() -> None:
    even = [replace(BIG, mass_g=300.0), replace(SMALL, mass_g=200.0), replace(BIG_MARK, mass_g=101.0)]
    assert told(fewest(400.0, even, 0.01)) == {("small", FillWay.LEVEL): 2}


def test_one_scoop_before_two_of_the_same_number() -> None:
    ways = [
        ScoopWay("a", "a", FillWay.LEVEL, 300.0),
        ScoopWay("b", "b", FillWay.LEVEL, 100.0),
        ScoopWay("a", "a", FillWay.TO_MARK, 102.0),
    ]
    assert told(fewest(400.0, ways, 0.01)) == {("a", FillWay.LEVEL): 1, ("a", FillWay.TO_MARK): 1}


def test_nearest_of_equals() -> None:
    ways = [ScoopWay("a", "a", FillWay.LEVEL, 102.0), ScoopWay("b", "b", FillWay.LEVEL, 99.0)]
    assert told(fewest(200.0, ways, 0.03)) == {("b", FillWay.LEVEL): 2}


def test_no_count_within_the_tolerance_is_none() -> None:
    assert fewest(333.0, [SMALL], 0.01) is None
    assert fewest(50.0, ALL, 0.01, fractions=(0.25,)) is None
    assert fewest(1e6, ALL, 0.01) is None


def test_part_fills_only_where_they_are_allowed() -> None:
    assert fewest(260.0, ALL, 0.005) is None
    half = fewest(260.0, ALL, 0.005, fractions=(1, 0.5))
    assert told(half) == {("big", FillWay.LEVEL): 0.5}
    assert half is not None
    assert half.scoopfuls == 1
    more = fewest(780.0, [BIG], 0.005, fractions=(0.5, 0.25))
    assert told(more) == {("big", FillWay.LEVEL): 1.5}
    assert more is not None
    assert more.scoopfuls == 2


def test_whole_fills_before_a_part_fill_of_the_same_number() -> None:
    assert told(fewest(300.0, [BIG, SMALL], 0.02, fractions=(1, 0.5, 0.29))) == {("small", FillWay.LEVEL): 2}


def test_a_count_beyond_counting_says_so() -> None:
    few, many = fewest(BIG.mass_g * 24, [BIG], 0.0), fewest(BIG.mass_g * 25, [BIG], 0.0)
    assert few is not None
    assert many is not None
    assert (few.countable, many.countable) == (True, False)
    assert fewest(BIG.mass_g * 25, [BIG], 0.0, most_scoopfuls=24) is None


@lawful
@given(st.floats(100, 5000), st.floats(0.1, 20.0))
def test_scaling_all_weights_changes_no_count(target: float, by: float) -> None:
    larger = [replace(way, mass_g=way.mass_g * by) for way in ALL]
    one, other = fewest(target, ALL, 0.013), fewest(target * by, larger, 0.013)
    assert told(one) == told(other)


@lawful
@given(st.lists(st.floats(20, 20000), min_size=1, max_size=40), st.sampled_from([0.002, 0.01, 0.03]))
def test_a_table_says_what_single_questions_say(targets: list[float], tolerance: float) -> None:
    table = fewest_table(targets, ALL, tolerance, fractions=(1, 0.5))
    alone = [fewest(t, ALL, tolerance, fractions=(1, 0.5)) for t in targets]
    assert list(table) == alone
    assert table[: len(targets)] == alone
    assert list(table.total_g) == pytest.approx([c.total_g if c else 0.0 for c in alone])
    assert list(table.scoopfuls) == [c.scoopfuls if c else 0 for c in alone]
    for target, count in zip(targets, alone, strict=True):
        if count:
            assert count.total_g == pytest.approx(target + count.error_g)
            assert abs(count.error_share) <= tolerance * (1 + 1e-6)


LINE = ScoopWay("red", "red", FillWay.TO_MARK, 283.5)
LEVEL = ScoopWay("red", "red", FillWay.LEVEL, 300.0)


def test_a_scoop_is_filled_to_its_line_where_that_comes_out() -> None:
    """Six times 10 oz: six to the line, not five level and one of something else."""
    assert told(usual(6 * 283.5, [LEVEL, LINE], 0.02)) == {("red", FillWay.TO_MARK): 6}
    assert told(fewest(5 * 300.0, [LEVEL, LINE], 0.02)) == {("red", FillWay.LEVEL): 5}
    assert told(usual(20 * 283.5, [LEVEL, LINE], 0.0)) == {("red", FillWay.TO_MARK): 20}
    assert told(fewest(20 * 283.5, [LEVEL, LINE], 0.01)) == {("red", FillWay.LEVEL): 19}
    assert told(usual(20 * 283.5, [LEVEL, LINE], 0.01)) == {("red", FillWay.TO_MARK): 20}


def test_n_calves_are_n_to_the_line_from_the_first_row_to_the_last() -> None:
    """A line drawn for the feeding: no row of the table leaves it, not even where so many are better weighed."""
    for calves in range(1, 61):
        count = usual(calves * 283.5 * 1.003, [LEVEL, LINE], 0.02)
        assert count is not None
        assert told(count) == {("red", FillWay.TO_MARK): calves}
        assert (count.countable, count.by_feeding, count.told) == (calves <= 24, True, True)
    level = usual(30 * 300.0, [LEVEL], 0.02)
    assert level is not None
    assert (level.countable, level.by_feeding, level.told) == (False, False, False)


def test_a_feeding_of_several_scoopfuls_is_told_for_each_calf_as_the_label_says() -> None:
    """500 g are one level scoop of 270 g and one to the line: 24 calves are 24 of each, not 52 to the line."""
    level = ScoopWay("bote", "bote", FillWay.LEVEL, 270.0)
    line = ScoopWay("bote", "bote", FillWay.TO_MARK, 230.0, full_scoops=1)
    for calves in range(1, 61):
        count = usual(calves * 500.0, [level, line], 0.02)
        assert count is not None
        assert told(count) == {("bote", FillWay.LEVEL): calves, ("bote", FillWay.TO_MARK): calves}
        assert (count.by_feeding, count.told, count.countable) == (True, True, 2 * calves <= 24)
    alone = replace(level, full_scoops=2)
    for calves in range(1, 61):
        count = usual(calves * 541.0, [alone], 0.02)
        assert count is not None
        assert told(count) == {("bote", FillWay.LEVEL): 2 * calves}  # not the fewest within the tolerance
        assert (count.by_feeding, count.told) == (True, True)
    two = ScoopWay("bote", "bote", FillWay.TO_MARK, 60.0, full_scoops=2)
    count = usual(5 * 600.0, [level, two], 0.001)
    assert count is not None
    assert told(count) == {("bote", FillWay.LEVEL): 10, ("bote", FillWay.TO_MARK): 5}
    # What is no whole number of feedings is told as ever; a level scoop of another scoop is none of this one's.
    assert usual(5.5 * 500.0, [level, line], 0.002) == fewest(5.5 * 500.0, [level, line], 0.002)
    other = replace(level, scoop_id="red")
    found = usual(7 * 500.0, [other, line], 0.02)
    assert found == fewest(7 * 500.0, [other, line], 0.02)
    assert found is None or not found.by_feeding


def test_a_line_that_does_not_come_out_or_takes_too_many_leaves_the_fewest() -> None:
    for target in (5.5 * 283.5, 36.5 * 283.5):
        assert usual(target, [LEVEL, LINE], 0.001) == fewest(target, [LEVEL, LINE], 0.001)
    big = ScoopWay("big", "big", FillWay.LEVEL, 2 * 283.5 * 6)
    assert told(usual(12 * 283.5, [big, LINE], 0.01)) == {("big", FillWay.LEVEL): 1}


def test_a_half_is_told_also_where_no_whole_count_of_any_way_comes_near() -> None:
    """56 oz: 5 or 6 level of 10.6, 5 or 6 to the line of 10 and all between are 5 % off or more; 5 1/2 to the line is
    55 oz, 1.8 % short. A table that counts to the line said to weigh it."""
    oz = 28.349523125
    ways = (ScoopWay("red", "red", FillWay.LEVEL, 10.6 * oz), ScoopWay("red", "red", FillWay.TO_MARK, 10 * oz))
    manner = (ways[1],)
    assert fewest(56 * oz, ways, 0.02) is None
    assert told(usual(56 * oz, ways, 0.02, manner=manner)) == {("red", FillWay.TO_MARK): 5.5}
    assert usual(56 * oz, ways, 0.017, manner=manner) is None
    assert usual(5 * oz, ways, 0.02, manner=manner) is None  # half a scoopful alone is weighed, unless asked for


def test_a_part_fill_to_the_line_goes_before_two_ways_of_filling() -> None:
    """60 oz for five calves: 7 1/2 to the line of 8 oz, not 3 level and 4 to the line; that only without halves."""
    oz, halves = 28.349523125, (1.0, 0.5)
    ways = [
        ScoopWay("red", "red", FillWay.LEVEL, 9.35 * oz),
        ScoopWay("red", "red", FillWay.TO_MARK, 8.04 * oz),
    ]
    mixed = {("red", FillWay.LEVEL): 3, ("red", FillWay.TO_MARK): 4}
    assert told(usual(60 * oz, ways, 0.02)) == told(fewest(60 * oz, ways, 0.02, fractions=halves)) == mixed
    for calves in range(1, 15):
        count = usual(12 * oz * calves, ways, 0.02, fractions=halves)
        assert told(count) == {("red", FillWay.TO_MARK): 1.5 * calves}
    assert told(usual(4 * oz, ways, 0.02, fractions=halves)) == {("red", FillWay.TO_MARK): 0.5}
    big = ScoopWay("big", "big", FillWay.LEVEL, 30 * oz)  # 8 to the line would be more than twice 2 level
    assert told(usual(60 * oz, [*ways, big], 0.02, fractions=halves)) == {("big", FillWay.LEVEL): 2}


@lawful
@given(st.floats(50, 9000), st.lists(st.floats(30, 1200), min_size=1, max_size=4), st.sampled_from([0.005, 0.02]))
@example(7.5 * 283.5, [300.0, 283.5], 0.02)
@example(1.25 * 300.0, [60.0, 300.0], 0.02)
def test_a_part_fill_is_the_one_that_trying_every_line_finds(
    target: float, weights: list[float], tolerance: float
) -> None:
    """The first scoop is struck level, the others are filled to a line, with a quarter or a half at the end."""
    ways = [ScoopWay(str(i), "", FillWay.TO_MARK if i else FillWay.LEVEL, g) for i, g in enumerate(weights)]
    allowed = (1, 0.5, 0.25)
    least = fewest(target, ways, tolerance, fractions=allowed)
    found = usual(target, ways, tolerance, fractions=allowed)
    most = 2 * least.scoopfuls if least else 0
    for parts in ((0.0,), (0.5, 0.25)):  # a whole number of them goes before
        counts = [(max(0, round(target / way.mass_g - part)) + part, way) for way in ways[1:] for part in parts]
        near = [(math.ceil(n), abs(n * way.mass_g - target)) for n, way in counts if 0 < math.ceil(n) <= most]
        if best := min((one for one in near if one[1] <= target * tolerance), default=None):
            assert found is not None
            assert [way.way for way, _ in found.parts] == [FillWay.TO_MARK]
            assert (found.scoopfuls, abs(found.error_g)) == (best[0], pytest.approx(best[1], abs=1e-6))
            return
    assert found == least


@lawful
@given(
    st.floats(50, 9000),
    st.lists(st.tuples(st.floats(30, 1200), st.booleans()), min_size=1, max_size=5),
    st.sampled_from([0.0, 0.005, 0.02, 0.05]),
)
@example(574.0, [(31.0, True)], 0.05)  # 18 would be within the tolerance too; 19 is nearer
def test_the_usual_count_is_the_one_that_trying_every_line_finds(
    target: float, kinds: list[tuple[float, bool]], tolerance: float
) -> None:
    ways = [ScoopWay(str(i), str(i), FillWay.TO_MARK if m else FillWay.LEVEL, g) for i, (g, m) in enumerate(kinds)]
    least, found = fewest(target, ways, tolerance), usual(target, ways, tolerance)
    most = 2 * least.scoopfuls if least else 0
    nearest = [(round(target / way.mass_g), way.mass_g) for way in ways if way.way is FillWay.TO_MARK]
    lines = [
        (n, abs(n * mass_g - target))
        for n, mass_g in nearest
        if 1 <= n <= most and abs(n * mass_g - target) <= target * tolerance
    ]
    if not lines:
        assert found == least
        return
    assert found is not None
    assert len(found.parts) == 1
    assert (found.scoopfuls, abs(found.error_g)) == (min(lines)[0], pytest.approx(min(lines)[1], abs=1e-6))
    assert list(usual_table([target, target], ways, tolerance)) == [found, found]


def test_spread_adds_single_fills_in_squares_and_means_as_they_are() -> None:
    count = scoops.scoop_count([(BIG, 4.0), (SMALL, 2.0)], 2400.0)
    expected = 1.959964 * math.sqrt(4 * 8.0**2 + 2 * 3.0**2 + (4 * 2.0 + 2 * 1.0) ** 2)
    assert count.spread_95_g == pytest.approx(expected, rel=1e-6)
    assert (count.total_g, count.error_g) == (2380.0, -20.0)


def test_a_part_fill_by_eye_spreads_more() -> None:
    half = scoops.spread_95_g([(BIG, 1.5)])
    assert half == pytest.approx(1.959964 * math.sqrt(1.5 * 64 + 26.0**2 + 9.0), rel=1e-6)


def test_the_spread_holds_in_a_simulation() -> None:
    chance, n, runs = np.random.default_rng(7), 6, 20_000
    means = BIG.mass_g + BIG.u_mean_g * chance.standard_normal(runs)
    weights = n * means + BIG.fill_sd_g * math.sqrt(n) * chance.standard_normal(runs)
    inside = np.mean(np.abs(weights - n * BIG.mass_g) <= scoops.spread_95_g([(BIG, float(n))]))
    assert inside == pytest.approx(0.95, abs=0.006)


@lawful
@given(st.floats(10, 20000), st.floats(100, 1e5))
def test_trimmed_water_keeps_the_rate_exactly(target: float, water: float) -> None:
    trim = trim_water(target, water, BIG)
    assert trim.count.total_g / trim.water_ml == pytest.approx(target / water, rel=1e-12)
    n = trim.count.parts[0][1]
    assert n == int(n) >= 1
    assert trim.water_ml / water == pytest.approx(1 + trim.change_share)
    assert n == 1 or abs(trim.change_share) * target <= BIG.mass_g / 2 * (1 + 1e-9)


def test_scoopfuls_out_of_one_bag_share_what_sets_that_bag_apart() -> None:
    """A seeded simulation: 17 scoopfuls out of one bag, bags 1 % apart, fills 1.5 %."""
    way = ScoopWay("cup", "cup", FillWay.LEVEL, 311.0, fill_sd_g=4.7, bag_sd_g=3.1)
    rng, n = np.random.default_rng(20261126), 17
    weights = n * rng.normal(311.0, 3.1, 20_000) + rng.normal(0.0, 4.7, (20_000, n)).sum(axis=1)
    inside = np.mean(np.abs(weights - n * 311.0) <= scoops.spread_95_g([(way, float(n))]))
    assert inside == pytest.approx(0.95, abs=0.006)


def test_what_a_count_delivers_in_solids_and_osmolality() -> None:
    powder = mixing.powder_from(Composition())
    count = scoops.scoop_count([(BIG, 4.0)], 2100.0)
    found = delivered(count, 14000.0, powder, 43.0)
    assert found.mix.powder_g == pytest.approx(2080.0)
    assert found.high.powder_g - found.low.powder_g == pytest.approx(2 * count.spread_95_g)
    assert found.low.solids_share < found.mix.solids_share < found.high.solids_share
    assert found.low.osmolality_mosm_per_kg < found.high.osmolality_mosm_per_kg
    wild = scoops.scoop_count([(replace(BIG, fill_sd_g=400.0), 1.0)], 520.0)
    assert delivered(wild, 4000.0, powder, 43.0).low.powder_g == 0.0


@pytest.mark.parametrize(
    ("target", "ways", "tolerance", "fractions"),
    [
        (0.0, ALL, 0.01, (1,)),
        (math.nan, ALL, 0.01, (1,)),
        (100.0, [], 0.01, (1,)),
        (100.0, [replace(BIG, mass_g=0.0)], 0.01, (1,)),
        (100.0, [replace(BIG, u_mean_g=-1.0)], 0.01, (1,)),
        (100.0, [replace(BIG, fill_sd_g=math.nan)], 0.01, (1,)),
        (100.0, ALL, -0.01, (1,)),
        (100.0, ALL, 0.6, (1,)),
        (100.0, ALL, 0.01, (1, 1.5)),
    ],
)
def test_nonsense_is_refused(
    target: float, ways: list[ScoopWay], tolerance: float, fractions: tuple[float, ...]
) -> None:
    with pytest.raises(CannotCompute, match=r"^[A-Z].*\.$"):
        fewest(target, ways, tolerance, fractions=fractions)


def test_nonsense_for_trimmed_water_is_refused() -> None:
    for target, water, way in [(0, 100, BIG), (100, 0, BIG), (100, 100, replace(BIG, mass_g=-1.0))]:
        with pytest.raises(CannotCompute, match=r"^[A-Z].*\.$"):
            trim_water(target, water, way)


def test_trimmed_water_stays_within_what_is_allowed() -> None:
    """Weights are plain numbers: 11 of 13 g are the nearest to 140 g, 10 where no more than 140 g may be made."""
    way = ScoopWay("s", "Scoop", FillWay.LEVEL, 13.0)
    free, held = trim_water(140.0, 1000.0, way), trim_water(140.0, 1000.0, way, most_share=0.0)
    assert free is not None
    assert held is not None
    assert (free.count.scoopfuls, held.count.scoopfuls) == (11, 10)
    assert held.water_ml == pytest.approx(1000 * 130 / 140)
    assert trim_water(12.0, 1000.0, way, most_share=0.05) is None


def test_a_table_keeps_the_one_manner_that_fits_most_of_its_rows() -> None:
    """Fifteen ounces a calf, level; ten to a line of 13.6 oz come within 2 % of some rows, which then read alike."""
    level = ScoopWay("red", "red", FillWay.LEVEL, 15 * 28.35)
    line = ScoopWay("red", "red", FillWay.TO_MARK, 13.6 * 28.35)
    targets = [calves * 15 * 28.35 for calves in range(1, 25)]
    row_by_row = {way for count in usual_table(targets, [level, line], 0.02) if count for way, _ in count.parts}
    assert row_by_row == {level, line}
    manner = manner_of(targets[0], (level, line), 0.02)
    assert manner == (level,)
    kept = list(usual_table(targets, [level, line], 0.02, manner=manner))
    assert [count.parts if count else () for count in kept] == [((level, calves),) for calves in range(1, 25)]


def test_of_equal_manners_a_table_keeps_what_the_label_says() -> None:
    assert manner_of(283.5, (LEVEL, LINE), 0.02) == (LINE,)
    level = ScoopWay("red", "red", FillWay.LEVEL, 400.0)
    line = ScoopWay("red", "red", FillWay.TO_MARK, 100.0, full_scoops=1)
    assert manner_of(500.0, (level, line), 0.02) == (level, line)
    assert manner_of(50.0, (replace(level, mass_g=900.0),), 0.0) == (replace(level, mass_g=900.0),)
    assert manner_of(510.0, (replace(level, mass_g=1000.0),), 0.0) == ()
    assert manner_of(500.0, (), 0.02) == ()


def test_water_trimmed_to_scoopfuls_keeps_one_kind() -> None:
    near, far = replace(LEVEL, mass_g=290.0), replace(LINE, mass_g=200.0)
    assert trimmed_manner(283.5, (far, near), 0.1) == (near,)
    assert trimmed_manner(283.5, (), 0.1) == ()


@given(calves=st.integers(1, 60), line_g=st.floats(200.0, 300.0), off=st.floats(-0.015, 0.015))
def test_one_and_a_half_to_the_line_a_calf_is_so_for_each_number_of_calves(
    calves: int, line_g: float, off: float
) -> None:
    """The label has a line for the half: a row of level scoopfuls and some to the line is filled otherwise."""
    line, level = replace(LINE, mass_g=line_g), replace(LEVEL, mass_g=1.36 * line_g)
    feeding_g = 1.5 * line_g * (1 + off)
    parts = parts_of(feeding_g, (level, line), 0.02)
    assert parts == (1.0, 0.5)
    manner = manner_of(feeding_g, (level, line), 0.02, parts)
    count = usual(calves * feeding_g, (level, line), 0.02, fractions=parts, manner=manner)
    assert count is not None
    assert [way for way, _ in count.parts] == [line]
    assert abs(count.total_g / (calves * feeding_g) - 1) <= 0.02 + 1e-9


def test_halves_are_counted_unasked_only_where_a_feeding_ends_in_one() -> None:
    line, level = replace(LINE, mass_g=250.0), replace(LEVEL, mass_g=340.0)
    assert parts_of(250.0, (level, line), 0.02) == (1.0,)
    assert parts_of(125.0, (level, line), 0.02) == (1.0,)  # half a scoopful alone has a line of its own
    assert parts_of(510.0, (level, line), 0.02) == (1.0,)  # one and a half level has no line
    assert parts_of(375.0, (level, replace(line, full_scoops=1)), 0.02) == (1.0,)
    assert parts_of(390.0, (level, line), 0.02) == (1.0,)
    assert parts_of(375.0, (level, line), 0.02, (0.5, 0.25)) == (1.0, 0.5, 0.25)


def test_a_row_between_two_whole_counts_ends_in_half_a_scoopful_of_the_tables_way() -> None:
    """25 calves in two batches: 12 1/2 to the line; ten level come as near, and are read as to the line."""
    ways = level, line = replace(LEVEL, mass_g=390.0), replace(LINE, mass_g=312.5)
    targets = [312.5 * calves / 2 for calves in range(20, 31)]
    kept = list(usual_table(targets, ways, 0.02, manner=(line,)))
    assert [count.parts if count else () for count in kept] == [((line, calves / 2),) for calves in range(20, 31)]
    assert usual_table(targets, ways, 0.02, manner=(line,)).parts == (0.5,)
    assert usual_table(targets[::2], ways, 0.02, manner=(line,)).parts == ()
    # Where a half does not come near either, another way does: 3.2 to the line are no 3 and no 3 1/2.
    other = usual(1000.0, ways, 0.02, manner=(line,))
    assert other is not None
    assert other.parts == ((level, 1.0), (line, 2.0))
    # Part fills that a person allows go before: a quarter that is nearer is taken as it was.
    quarter = usual(3.25 * 312.5, ways, 0.02, fractions=(1, 0.25), manner=(line,))
    assert quarter is not None
    assert quarter.parts == ((line, 3.25),)


def test_a_count_filled_to_another_line_weighs_more_by_its_scoopfuls_to_the_line_alone() -> None:
    """Two level ones of 300 g stay; three to the line weigh 220 g in place of 200 g: 60 g more on 1200 g."""
    level, marked = ScoopWay("s", "red", FillWay.LEVEL, 300.0), ScoopWay("s", "red", FillWay.TO_MARK, 200.0)
    count = scoop_count(((level, 2.0), (marked, 3.0)), 1190.0)
    assert filled_to_share(count, 220.0) == pytest.approx(0.05)
    assert filled_to_share(count, 200.0) == 0.0
