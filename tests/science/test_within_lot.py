"""Inside a lot: steady, a jump, a drift, one odd bag."""

from __future__ import annotations

import math
import random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.model import FillWay
from calibrator.science.errors import CannotCompute
from calibrator.science.stats import two_sided_t
from calibrator.science.within_lot import Inside, InsideLot, Opened, as_level_g, inside_lot

CENTRE = 300.0


def judged(shares: list[float]) -> InsideLot:
    return inside_lot([Opened(CENTRE * share) for share in shares], CENTRE, 0.008, 0.015, 40.0)


def test_bags_about_the_mean_are_steady() -> None:
    found = judged([1.0, 0.99, 1.012, 1.004, 0.985, 1.01])
    assert (found.told, found.outside) == (Inside.STEADY, ())
    assert found.low_g[0] < 0.96 * CENTRE
    assert len(found.running_g) == 6
    assert found.running_g[:2] == pytest.approx([CENTRE, CENTRE * (1.0 * 0.7 + 0.99) / 1.7])


def test_limits_are_narrower_for_bags_with_more_fills() -> None:
    found = inside_lot([Opened(300.0, 4), Opened(301.0)], CENTRE, 0.008, 0.015, 40.0)
    assert found.high_g[0] < found.high_g[1]
    assert found.told is Inside.TOO_FEW


def test_a_jump_is_found_where_it_happened() -> None:
    found = judged([1.0, 1.01, 0.99, 1.0, 1.08, 1.07, 1.09, 1.075])
    assert (found.told, found.at) == (Inside.JUMP, 4)
    assert found.share == pytest.approx(0.079, abs=0.003)
    assert found.low_share < found.share < found.high_share


def test_the_interval_of_a_jump_is_that_of_two_means() -> None:
    """Four bags before and four after, each known to √(0.8² + 1.5²) %: each mean to half of that, by Student's t."""
    found = judged([1.0, 1.0, 1.0, 1.0, 1.08, 1.08, 1.08, 1.08])
    half = two_sided_t(0.95, 40.0) * math.sqrt(2) * math.hypot(0.008, 0.015) / 2
    assert (found.share, found.low_share, found.high_share) == pytest.approx((0.08, 0.08 - half, 0.08 + half))


def test_a_drift_is_found_as_one() -> None:
    found = judged([1.0 + 0.008 * n for n in range(12)])
    assert found.told is Inside.DRIFT
    assert found.share == pytest.approx(0.088, abs=0.001)


def test_one_bag_alone_is_told_as_one() -> None:
    middle = judged([1.0, 1.01, 0.99, 1.09, 1.0, 0.99, 1.01, 1.0])
    assert (middle.told, middle.at) == (Inside.ONE_OFF, 3)
    last = judged([1.0, 1.01, 0.99, 1.0, 1.0, 1.09])
    assert (last.told, last.at) == (Inside.ONE_OFF, 5)


def test_false_alarms_are_rare() -> None:
    chance = random.Random(3)
    sd = (0.008**2 + 0.015**2) ** 0.5
    told = [judged([1 + chance.gauss(0, sd) for _ in range(10)]).told for _ in range(300)]
    assert sum(one is not Inside.STEADY for one in told) / 300 < 0.08


def test_nonsense_is_refused() -> None:
    for call in (
        lambda: inside_lot([Opened(-1.0)], CENTRE, 0.01, 0.01, 10.0),
        lambda: inside_lot([Opened(300.0)], 0.0, 0.01, 0.01, 10.0),
        lambda: inside_lot([Opened(300.0)], CENTRE, 0.0, 0.0, 10.0),
    ):
        with pytest.raises(CannotCompute, match=r"^[A-Z].*\.$"):
            call()


@given(st.floats(1.0, 2000.0), st.floats(1.0, 2000.0), st.floats(1.0, 2000.0))
def test_a_fill_to_the_line_stands_to_the_line_as_a_level_one_to_the_level_scoopful(
    mass_g: float, level_g: float, mark_g: float
) -> None:
    told = as_level_g(mass_g, FillWay.TO_MARK, level_g, mark_g)
    assert told is not None
    assert told / level_g == pytest.approx(mass_g / mark_g)
    assert as_level_g(mass_g, FillWay.LEVEL, level_g, mark_g) == mass_g


def test_a_fill_that_has_nothing_to_be_held_against_is_left_out() -> None:
    assert as_level_g(300.0, FillWay.TO_MARK, 290.0, None) is None
    assert as_level_g(300.0, FillWay.TAPPED, 290.0, 280.0) is None
