"""The fill mark: where it goes, whether it is right, whether an old one still does."""

from __future__ import annotations

import math
from datetime import datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.model import Box, Cylinder, Fill, FillWay, Poured, Shape, TaperedCup
from calibrator.science import scoop
from calibrator.science.advice import MOST_MORE
from calibrator.science.errors import CannotCompute
from calibrator.science.mark import (
    LineVerdict,
    MarkProblem,
    OldLineVerdict,
    at_line,
    check_line,
    feeding_of_fill_g,
    fill_line,
    fraction_at,
    off_in_row,
    old_line,
    one_bag,
    proposed_line,
    reach_95,
    reach_untried_95,
    tolerance_band,
    weighed_to_line,
)
from calibrator.science.scale import ScaleFacts
from calibrator.science.settling import Settling
from calibrator.science.verify import fills_until, on_ruler
from calibrator.science.weighing import LevelResult, Weighed, level_result

CUP = TaperedCup(rim_diameter_mm=100.0, floor_diameter_mm=80.0, height_mm=90.0)
CYLINDER = Cylinder(diameter_mm=90.0, height_mm=100.0)
SHAPES: list[Shape] = [
    CUP,
    CYLINDER,
    Box(length_mm=100.0, width_mm=80.0, height_mm=70.0),
    Poured(heights_mm=(10.0, 40.0, 80.0), volumes_ml=(40.0, 210.0, 480.0)),
]
FINE = ScaleFacts(0.1)
OUNCE = 28.349523125


def fills(mean_g: float, *, spread: float = 0.004, bags: int = 5, each: int = 2) -> list[Weighed]:
    """Fills with a little spread between bags and between fills, about a mean."""
    return [
        Weighed(b, mean_g * (1 + spread * ((b - (bags - 1) / 2) / bags + (i - (each - 1) / 2) / each)))
        for b in range(bags)
        for i in range(each)
    ]


def level(mean_g: float = 290.0, **how: float) -> LevelResult:
    return level_result(fills(mean_g, **how), FINE, tolerance_g=5.0)  # type: ignore[arg-type]


@pytest.mark.parametrize("shape", SHAPES)
@given(share=st.floats(0.15, 0.9), settling=st.floats(0.95, 1.1))
def test_the_line_holds_the_target(shape: Shape, share: float, settling: float) -> None:
    target = 290.0 * share
    line = fill_line(shape, 290.0, 2.0, target, settling, 0.01)
    assert line.full_scoops == 0
    assert fraction_at(shape, line.down_wall_mm) * 290.0 * settling == pytest.approx(target, rel=1e-9)
    assert line.mass_g == pytest.approx(target)
    assert scoop.height_mm(shape, line.volume_ml) == pytest.approx(line.height_mm)


@pytest.mark.parametrize("shape", SHAPES)
def test_grams_per_mm_is_the_slope_along_the_wall(shape: Shape) -> None:
    line = fill_line(shape, 290.0, 2.0, 200.0)
    step = 1e-4
    further = fraction_at(shape, line.down_wall_mm - step) * 290.0
    assert (further - 200.0) / step == pytest.approx(line.grams_per_mm, rel=1e-4)
    assert line.u_mm == pytest.approx(line.mass_u_g / line.grams_per_mm)


def test_the_scoops_volume_cancels() -> None:
    small, large = CYLINDER, Cylinder(diameter_mm=90.0 * math.sqrt(1.03), height_mm=100.0)
    one, other = (fill_line(shape, 290.0, 2.0, 220.0) for shape in (small, large))
    assert one.down_wall_mm == pytest.approx(other.down_wall_mm)
    assert one.mass_u_g == pytest.approx(other.mass_u_g)


def test_doubt_by_hand() -> None:
    line = fill_line(CYLINDER, 290.0, 2.9, 200.0, 1.02, 0.0102)
    # 1 % from the level mean and 1 % from the settling factor.
    assert line.u_share == pytest.approx(math.hypot(0.01, 0.01))
    two = fill_line(CYLINDER, 290.0, 2.9, 490.0)
    assert two.mass_u_g == pytest.approx(490.0 * 0.01)
    assert reach_95(two, math.inf)[0] == pytest.approx(1.959964 * 4.9)


def test_few_fills_do_not_widen_what_the_settling_adds() -> None:
    """A level scoopful known by two degrees of freedom beside an assumed settling: each part by its own factor."""
    line = fill_line(CYLINDER, 290.0, 0.5, 200.0, 1.0, 0.02)
    reach_g, reach_mm = reach_untried_95(line, 290.0, [(0.5, 2.0)], Settling(1.0, 0.02))
    # t(0.975, 2) = 4.3027 and z = 1.95996: NIST/SEMATECH e-Handbook, 1.3.6.7.2.
    assert reach_g == pytest.approx(math.hypot(4.3027 * 0.5 * 200 / 290, 1.95996 * 200 * 0.02), rel=1e-4)
    assert reach_mm == pytest.approx(reach_g / line.grams_per_mm)
    assert reach_untried_95(line, 290.0, [(0.0, 5.0)], Settling(1.0, 0.02))[0] == pytest.approx(1.95996 * 4, rel=1e-4)


def test_more_than_the_scoop_holds() -> None:
    line = fill_line(CYLINDER, 290.0, 2.0, 490.0)
    assert line.full_scoops == 1
    assert line.mass_g == pytest.approx(200.0)
    assert line.problem is None
    assert fill_line(CYLINDER, 290.0, 2.0, 1000.0).full_scoops == 3


def test_lines_that_cannot_be_read() -> None:
    assert fill_line(CYLINDER, 290.0, 2.0, 285.0).problem == MarkProblem.TOO_NEAR_RIM
    assert fill_line(CYLINDER, 290.0, 2.0, 10.0).problem == MarkProblem.TOO_NEAR_FLOOR
    assert fill_line(CYLINDER, 290.0, 2.0, 300.0).problem == MarkProblem.TOO_NEAR_FLOOR
    whole = fill_line(CYLINDER, 290.0, 2.0, 290.0)
    assert (whole.full_scoops, whole.down_wall_mm, whole.problem) == (
        0,
        pytest.approx(0, abs=1e-9),
        MarkProblem.TOO_NEAR_RIM,
    )
    loose = fill_line(CYLINDER, 290.0, 2.0, 285.0, 0.95)
    assert (loose.down_wall_mm, loose.problem) == (0.0, MarkProblem.TOO_NEAR_RIM)
    assert loose.mass_g == pytest.approx(0.95 * 290.0)


@pytest.mark.parametrize(
    "args",
    [
        (0.0, 1.0, 200.0), (290.0, -1.0, 200.0), (290.0, 1.0, 0.0), (290.0, 1.0, -5.0), (math.nan, 1.0, 200.0),
        (290.0, 1.0, math.inf), (290.0, 1.0, 200.0, 0.0), (290.0, 1.0, 200.0, 1.0, -0.1),
    ],
)  # fmt: skip
def test_nonsense_is_refused(args: tuple[float, ...]) -> None:
    with pytest.raises(CannotCompute, match=r"^[A-Z].*\.$"):
        fill_line(CYLINDER, *args)


def test_impossible_lines_are_refused() -> None:
    for down in (100.0, 101.0, -1.0, math.nan):
        with pytest.raises(CannotCompute):
            fraction_at(CYLINDER, down)
    for weight, share in ((0.0, 0.02), (200.0, 0.0)):
        with pytest.raises(CannotCompute):
            tolerance_band(weight, share)


def test_the_tolerance_about_a_weight() -> None:
    assert tolerance_band(200.0, 0.02) == (196.0, 204.0)


def to_mark(mass_g: float, line_mm: float | None, struck: str | None = None) -> Fill:
    return Fill(
        id="f", weigh_in_id="w", way=FillWay.TO_MARK, bag=1, mass_g=mass_g, typed="", by="ab",
        at=datetime(2024, 3, 1), line_mm=line_mm, struck_reason=struck,
    )  # fmt: skip


def test_fills_to_an_earlier_line_count_in_proportion() -> None:
    # A cylinder of 100 mm: 80 mm high at 20 mm down, 70 at 30 down.
    assert at_line([Weighed(1, 240.0)], CYLINDER, 20.0, 30.0) == (Weighed(1, pytest.approx(210.0)),)
    taken = [to_mark(240.0, 20.0), to_mark(210.0, 30.0), to_mark(1.0, 20.0, "spilt"), to_mark(1.0, None)]
    assert [f.mass_g for f in weighed_to_line(taken, CYLINDER, 30.0)] == pytest.approx([210.0, 210.0])


def test_on_target() -> None:
    found = check_line(CYLINDER, level(), fills(200.0), 31.0, 200.0, 0.02, FINE)
    assert found.verdict == LineVerdict.ON_TARGET
    assert found.more_fills == 0
    assert 196.0 <= found.low_g < found.mean_g < found.high_g <= 204.0
    assert found.settling_factor == pytest.approx(200.0 / (290.0 * 0.69))
    assert found.next_line.down_wall_mm == pytest.approx(31.0)


def test_known_but_off_is_moved_to_where_the_fills_point() -> None:
    found = check_line(CYLINDER, level(), fills(206.0), 31.0, 200.0, 0.02, FINE)
    assert found.verdict == LineVerdict.MOVE
    # A cylinder: the height goes with the weight.
    assert 100.0 - found.next_line.down_wall_mm == pytest.approx(69.0 * 200.0 / 206.0)


def test_a_line_within_the_tolerance_is_kept_though_a_move_would_be_nearer() -> None:
    found = check_line(CYLINDER, level(), fills(202.5), 31.0, 200.0, 0.02, FINE)
    assert (found.low_g > 200.0, found.high_g < 204.0) == (True, True)
    assert found.verdict == LineVerdict.ON_TARGET
    # The interval reaches over the limit: here a stroke of the pen is cheaper than more fills.
    astride = check_line(CYLINDER, level(), fills(203.9), 31.0, 200.0, 0.02, FINE)
    assert astride.low_g < 204.0 < astride.high_g
    assert astride.verdict == LineVerdict.MOVE


def test_a_line_is_moved_only_to_a_division_shown_to_be_nearer() -> None:
    # 3 mm of this cylinder are 8.7 g. 205 g with a line at 31 mm: the next division down gives 196.3 g.
    nearer = check_line(CYLINDER, level(), fills(206.0), 30.0, 200.0, 0.02, FINE, ruler_step_mm=3.0)
    assert nearer.verdict == LineVerdict.MOVE
    coarse = check_line(CYLINDER, level(), fills(204.0), 30.0, 200.0, 0.01, FINE, ruler_step_mm=3.0)
    assert coarse.low_g > 202.0
    assert coarse.verdict == LineVerdict.AS_NEAR_AS_RULED
    assert coarse.more_fills == 0
    # As seen on a farm: 15.14 oz for 15 oz ± 2 %, where a sixteenth of an inch is 0.3 oz.
    farm = check_line(CYLINDER, level(), fills(15.14 * OUNCE), 11.1, 15 * OUNCE, 0.02, FINE, ruler_step_mm=25.4 / 16)
    assert farm.verdict == LineVerdict.ON_TARGET


@given(
    mean=st.floats(185.0, 215.0),
    spread=st.floats(0.001, 0.02),
    step=st.sampled_from([0.0, 1.0, 1.5875, 3.0]),
    tolerance=st.floats(0.005, 0.05),
)
def test_the_verdict_is_what_the_interval_shows(mean: float, spread: float, step: float, tolerance: float) -> None:
    found = check_line(CYLINDER, level(), fills(mean, spread=spread), 30.0, 200.0, tolerance, FINE, ruler_step_mm=step)
    low, high = 200.0 * (1 - tolerance), 200.0 * (1 + tolerance)
    inside = low <= found.low_g and found.high_g <= high
    assert (found.verdict == LineVerdict.ON_TARGET) == inside
    if found.verdict == LineVerdict.WEIGH_MORE:
        assert found.low_g < low < found.high_g or found.low_g < high < found.high_g
        assert found.more_fills >= 1
    if found.verdict == LineVerdict.MOVE:
        there = on_ruler(CYLINDER, found.next_line.down_wall_mm, step)
        assert abs((100.0 - there) / 70.0 * found.mean_g - 200.0) < abs(found.mean_g - 200.0)


@pytest.mark.parametrize("bags_there", [1, 2, 3, 5])
def test_no_more_bags_are_asked_for_than_the_lot_has(bags_there: int) -> None:
    taken = fills(201.0, bags=min(bags_there, 4), spread=0.05)
    found = check_line(CYLINDER, level(), taken, 31.0, 200.0, 0.02, FINE, bags_there=bags_there)
    assert found.verdict == LineVerdict.WEIGH_MORE
    assert found.from_other_bags <= (bags_there > 4) or not found.within_reach
    assert found.result.outlook.spare_bags(found.result.bags) == max(0, bags_there - 4)


def test_the_settling_is_as_sure_as_fills_of_the_same_bags_make_it() -> None:
    """What the bags have in common cancels; of five bags, each filled twice either way, a tenth of the variance of a
    fill is left of each."""
    loose, marked = level(), fills(203.0, spread=0.006)
    found = check_line(CYLINDER, loose, marked, 30.0, 200.0, 0.02, FINE)
    of_fills = [result.fill_sd_g / result.mean_g for result in (loose, found.result)]
    assert found.settling_u == pytest.approx(found.settling_factor * math.hypot(*of_fills) / math.sqrt(10))
    reach = 1.959964 * found.result.bag_sd_g / found.result.mean_g * found.mean_g
    assert found.bag_reach_g == pytest.approx(reach, rel=1e-6)
    assert found.bags_apart == (reach > 4.0)
    assert found.next_line.u_share == pytest.approx(found.u_g / found.mean_g)


@pytest.mark.parametrize("mean_g", [200.0, 203.5, 197.0])
def test_an_open_check_asks_for_fills_until_either_answer_can_be_given(mean_g: float) -> None:
    """The interval has to come within the nearer of what settles it: all inside the tolerance, or off the target."""
    found = check_line(CYLINDER, level(), fills(mean_g, spread=0.08), 31.0, 200.0, 0.02, FINE)
    assert found.verdict == LineVerdict.WEIGH_MORE
    room_g = max(abs(found.mean_g - 200.0), 4.0 - abs(found.mean_g - 200.0))
    assert (found.more_fills, found.from_other_bags, found.within_reach) == fills_until(
        found.result, (room_g / found.result.mean_g) ** 2
    )
    wider = fills_until(found.result, (2 * room_g / found.result.mean_g) ** 2)
    assert wider[0] < found.more_fills
    assert fills_until(found.result, -1e-9) == (MOST_MORE, True, False)


def test_all_bags_of_a_small_lot_are_enough() -> None:
    three = [*fills(200.0, bags=3, spread=0.001), Weighed(0, 200.1), Weighed(1, 200.0)]
    unknown = check_line(CYLINDER, level(), three, 31.0, 200.0, 0.02, FINE)
    assert unknown.verdict == LineVerdict.WEIGH_MORE
    assert check_line(CYLINDER, level(), three, 31.0, 200.0, 0.02, FINE, bags_there=3).verdict == LineVerdict.ON_TARGET


def test_few_fills_need_more() -> None:
    found = check_line(CYLINDER, level(), fills(201.0, bags=2), 31.0, 200.0, 0.02, FINE)
    assert found.verdict == LineVerdict.WEIGH_MORE
    assert found.more_fills >= 1
    assert found.from_other_bags


def test_far_off_is_moved_at_once() -> None:
    assert check_line(CYLINDER, level(), fills(260.0, bags=2), 31.0, 200.0, 0.02, FINE).verdict == LineVerdict.MOVE


def test_full_scoops_count_in_the_feeding() -> None:
    found = check_line(CYLINDER, level(), fills(200.0), 31.0, 490.0, 0.02, FINE, full_scoops=1)
    assert found.mean_g == pytest.approx(490.0)
    assert found.verdict == LineVerdict.ON_TARGET
    # Level fills too few to know the full scoop by: the feeding is not known either.
    unsure = check_line(CYLINDER, level(bags=2), fills(200.0), 31.0, 490.0, 0.02, FINE, full_scoops=1)
    assert unsure.verdict == LineVerdict.WEIGH_MORE
    assert unsure.more_fills >= 1


def test_bags_in_common_cancel_in_the_settling_factor() -> None:
    same = check_line(CYLINDER, level(), fills(200.0), 31.0, 200.0, 0.02, FINE)
    others = [Weighed(f.bag + 50, f.mass_g) for f in fills(200.0)]
    apart = check_line(CYLINDER, level(), others, 31.0, 200.0, 0.02, FINE)
    assert same.settling_factor == pytest.approx(apart.settling_factor)
    assert same.settling_u < apart.settling_u


def test_verdicts_refuse_nonsense() -> None:
    for call in (
        lambda: check_line(CYLINDER, level(), [], 31.0, 200.0, 0.02, FINE),
        lambda: check_line(CYLINDER, level(), fills(200.0), 31.0, 0.0, 0.02, FINE),
        lambda: check_line(CYLINDER, level(), fills(200.0), 31.0, 200.0, 0.0, FINE),
        lambda: check_line(CYLINDER, level(), fills(200.0), 100.0, 200.0, 0.02, FINE),
        lambda: old_line(CYLINDER, level(), Settling(0.0, 0.0), 31.0, 200.0, 0.02),
        lambda: old_line(CYLINDER, level(), Settling(1.0, 0.0), 31.0, -1.0, 0.02),
        lambda: old_line(CYLINDER, level(), Settling(1.0, 0.0), 31.0, 200.0, math.nan),
        lambda: old_line(CYLINDER, level(), Settling(1.0, 0.0), 200.0, 200.0, 0.02),
    ):
        with pytest.raises(CannotCompute, match=r"^[A-Z].*\.$"):
            call()


def test_an_old_line_delivers_by_its_volume() -> None:
    found = old_line(CYLINDER, level(), Settling(1.02, 0.0), 31.0, 204.0, 0.02)
    assert found.delivers_g == pytest.approx(290.0 * 0.69 * 1.02)
    assert found.share == pytest.approx(found.delivers_g / 204.0 - 1)
    assert found.verdict == OldLineVerdict.KEEP
    assert found.more_fills == 0
    assert found.low_g < found.delivers_g < found.high_g


def test_an_old_line_off_by_more_than_the_tolerance_is_moved() -> None:
    for target in (190.0, 212.0):
        assert old_line(CYLINDER, level(), Settling(1.0, 0.0), 31.0, target, 0.02).verdict == OldLineVerdict.MOVE


def test_near_the_edge_more_level_fills_are_asked_for() -> None:
    wide = level(spread=0.02)
    found = old_line(CYLINDER, wide, Settling(1.0, 0.0), 31.0, 200.0 * 1.015, 0.02)
    assert found.verdict == OldLineVerdict.WEIGH_MORE
    assert found.more_fills >= 1
    assert found.within_reach


def test_the_edge_itself_is_out_of_reach() -> None:
    found = old_line(CYLINDER, level(), Settling(1.0, 0.02), 31.0, 200.1 * 1.02, 0.02)
    assert found.verdict == OldLineVerdict.WEIGH_MORE
    assert not found.within_reach
    nearer = old_line(CYLINDER, level(spread=0.1), Settling(1.0, 0.0), 31.0, 200.1 * 1.0201, 0.02)
    assert not nearer.within_reach


def test_full_scoops_before_an_old_line() -> None:
    found = old_line(CYLINDER, level(), Settling(1.0, 0.0), 31.0, 490.1, 0.02, full_scoops=1)
    assert found.delivers_g == pytest.approx(290.0 * 1.69)
    assert found.fill_g(290.0) == pytest.approx(290.0 * 0.69)
    shared = old_line(CYLINDER, level(), Settling(1.0, 0.0), 31.0, 400.2, 0.02, to_line=2)
    assert shared.fill_g(290.0) == pytest.approx(290.0 * 0.69)


@given(st.floats(0.3, 3.0))
def test_verdicts_do_not_depend_on_the_size_of_the_scoop(factor: float) -> None:
    small = check_line(CYLINDER, level(), fills(203.0, spread=0.02), 31.0, 200.0, 0.02, ScaleFacts(0.0))
    big_level = level_result(fills(290.0 * factor), ScaleFacts(0.1 * factor), tolerance_g=5.0 * factor)
    large = check_line(
        CYLINDER, big_level, fills(203.0 * factor, spread=0.02), 31.0, 200.0 * factor, 0.02, ScaleFacts(0.0)
    )
    assert large.verdict == small.verdict
    assert large.next_line.down_wall_mm == pytest.approx(small.next_line.down_wall_mm)


def test_one_fill_tells_of_its_own_bag() -> None:
    """By hand: 188 of 200 is 6 % less; 204 is the edge of 2 %."""
    light = one_bag(188.0, 200.0, 0.02)
    assert (light.feeding_g, light.within) == (188.0, False)
    assert light.share == pytest.approx(-0.06)
    assert one_bag(204.0, 200.0, 0.02).within
    assert not one_bag(204.1, 200.0, 0.02).within
    # Steps of 3 g have 2 · 3/√6 = 2.4 g off, which is within 2 % of 200; steps of 10 g have 8.2 g.
    assert one_bag(204.1, 200.0, 0.02, 3.0) == one_bag(204.1, 200.0, 0.02)
    assert one_bag(212.0, 200.0, 0.02, 10.0).within
    assert one_bag(212.0, 200.0, 0.02, 10.0).coarse_g == pytest.approx(20 / 6**0.5)
    assert not one_bag(212.2, 200.0, 0.02, 10.0).within
    assert not one_bag(187.8, 200.0, 0.02, 10.0).within
    for wrong in ((0.0, 200.0, 0.02), (188.0, 0.0, 0.02), (188.0, 200.0, 0.0)):
        with pytest.raises(CannotCompute):
            one_bag(*wrong)


def test_bags_off_in_a_row_are_those_off_to_the_side_of_the_newest() -> None:
    light, right, heavy = (one_bag(mass_g, 200.0, 0.02) for mass_g in (188.0, 200.0, 212.0))
    assert off_in_row([light, light]) == 2
    assert off_in_row([light, right, light]) == 1
    assert off_in_row([light, heavy]) == 1
    assert off_in_row([light, right]) == 0
    assert off_in_row([]) == 0


def test_where_only_the_settling_is_not_known_the_level_fills_still_say_their_part() -> None:
    heavy = old_line(CYLINDER, level(), Settling(1.0, 0.02), 31.0, 212.0, 0.02)
    assert (heavy.verdict, heavy.by_level) == (OldLineVerdict.WEIGH_MORE, OldLineVerdict.MOVE)
    right = old_line(CYLINDER, level(), Settling(1.0, 0.02), 31.0, 200.0, 0.02)
    assert (right.verdict, right.by_level) == (OldLineVerdict.WEIGH_MORE, OldLineVerdict.KEEP)
    unknown = old_line(CYLINDER, level(spread=0.02), Settling(1.0, 0.0), 31.0, 200.0 * 1.015, 0.02)
    assert unknown.by_level == unknown.verdict == OldLineVerdict.WEIGH_MORE


@pytest.mark.parametrize(
    ("level_g", "target_g", "manner"),
    [
        (11.6 * OUNCE, 12.0 * OUNCE, (0, 2)),  # a line 1/8 in above the floor after a level one
        (350.0, 375.0, (0, 2)),  # that can be read, with next to nothing in the scoop
        (290.0, 290.0 + 0.24 * 290.0, (0, 2)),
        (290.0, 290.0 + 0.26 * 290.0, (1, 1)),
        (290.0, 2.1 * 290.0, (0, 3)),
        (290.0, 283.0, (0, 2)),  # a line that cannot be told from the rim
        (290.0, 200.0, (0, 1)),
        (290.0, 5.0, (0, 1)),  # no count of scoopfuls helps: it is told why
    ],
)
def test_little_beyond_level_scoopfuls_is_shared_out_to_one_line(
    level_g: float, target_g: float, manner: tuple[int, int]
) -> None:
    line = proposed_line(CYLINDER, level_g, 2.0, target_g, 0.02)
    assert (line.full_scoops, line.to_line) == manner
    assert line.feeding_g == pytest.approx(target_g)
    assert (line.problem is None) == (target_g > 5.0)


@given(
    shape=st.sampled_from(SHAPES),
    target_g=st.floats(5.0, 2000.0),
    tolerance=st.sampled_from([0.005, 0.02, 0.05]),
    settling=st.floats(0.97, 1.06),
)
def test_scoopfuls_add_up_to_the_target_and_their_line_can_be_read_or_it_is_told_why(
    shape: Shape, target_g: float, tolerance: float, settling: float
) -> None:
    line = proposed_line(shape, 290.0, 2.0, target_g, tolerance, settling, 0.01)
    each_g = line.mass_g
    assert line.feeding_g == pytest.approx(line.full_scoops * 290.0 + line.to_line * each_g)
    if line.struck_level and line.problem is None:
        assert abs(line.error_share) <= tolerance
    elif line.problem is None:
        assert line.feeding_g == pytest.approx(target_g)
        assert line.height_mm >= 6.0
        assert line.down_wall_mm >= 3.0
        assert each_g == pytest.approx(fraction_at(shape, line.down_wall_mm) * 290.0 * settling)
    assert line.to_line == 1 or line.full_scoops == 0


def test_equal_scoopfuls_are_judged_as_the_feeding_that_they_are() -> None:
    """Two scoopfuls of one line have twice the weight and twice the doubt of one, for both are of the same lot."""
    single = check_line(CYLINDER, level(), fills(170.0), 40.0, 170.0, 0.02, FINE)
    double = check_line(CYLINDER, level(), fills(170.0), 40.0, 340.0, 0.02, FINE, to_line=2)
    assert double.mean_g == pytest.approx(2 * single.mean_g)
    assert double.u_g == pytest.approx(2 * single.u_g)
    assert double.verdict is single.verdict
    assert double.more_fills == single.more_fills
    assert double.next_line.down_wall_mm == pytest.approx(single.next_line.down_wall_mm)
    assert double.moved_g == pytest.approx(2 * single.moved_g)
    assert double.moved_half_g == pytest.approx(2 * single.moved_half_g)
    assert single.moved_half_g / single.moved_g == pytest.approx((single.high_g - single.low_g) / 2 / single.mean_g)
    assert single.next_reach[0] / 170.0 == pytest.approx((single.high_g - single.low_g) / 2 / single.mean_g)
    assert (double.before_g, double.of_fill_g(340.0)) == (pytest.approx(0.0), 170.0)
    old = old_line(CYLINDER, level(), Settling(1.02, 0.01), 40.0, 340.0, 0.02, to_line=2)
    assert old.delivers_g == pytest.approx(
        2 * old_line(CYLINDER, level(), Settling(1.02, 0.01), 40.0, 170.0, 0.02).delivers_g
    )


@given(st.sampled_from(SHAPES), st.floats(50.0, 900.0), st.floats(0.9, 1.1), st.integers(0, 3))
def test_a_level_fill_and_one_to_the_line_of_the_same_powder_make_the_same_feeding(
    shape: Shape, level_g: float, factor: float, full: int
) -> None:
    """A fill to the line that weighs what the level scoopful makes of it says no more than the level one."""
    down_mm = 0.3 * scoop.wall_length_mm(shape)
    told = {"id": "f", "weigh_in_id": "w", "bag": 1, "typed": "", "by": "MK", "at": datetime(2026, 1, 5)}
    to_line_g = level_g * factor * fraction_at(shape, down_mm)
    level, filled = (
        Fill(way=way, mass_g=mass_g, **told)  # type: ignore[arg-type]
        for way, mass_g in ((FillWay.LEVEL, level_g), (FillWay.TO_MARK, to_line_g))
    )
    by_level, by_line = (feeding_of_fill_g(fill, shape, level_g, factor, down_mm, full) for fill in (level, filled))
    assert by_level == pytest.approx(full * level_g + to_line_g)
    assert by_line == pytest.approx(by_level)
