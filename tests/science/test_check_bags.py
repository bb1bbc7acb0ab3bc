"""Bags against feedings: the mean, its interval, and how long a drift stays hidden."""

from __future__ import annotations

import math
import random

import pytest

from calibrator.science.bag_count import (
    BAG_U_SHARE,
    FEEDINGS_U_SHARE,
    Ends,
    bag_count,
    days_until_seen,
)
from calibrator.science.check import Verdict
from calibrator.science.errors import CannotCompute

BAG_G, TARGET_G = 50 * 453.59237, 10 * 28.349523125


@pytest.mark.parametrize(
    ("bags", "feedings", "verdict"),
    [
        (20, 1600, Verdict.INSIDE),
        (20, 1520, Verdict.STRONG),
        (20, 1690, Verdict.THIN),
        (20, 1570, Verdict.CANNOT_TELL),
    ],
)
def test_the_verdict_of_a_count(bags: float, feedings: float, verdict: Verdict) -> None:
    assert bag_count(bags, BAG_G, feedings, TARGET_G, 0.02).verdict is verdict


def test_begun_bags_make_it_less_sure_and_many_bags_surer() -> None:
    few = bag_count(4, BAG_G, 320, TARGET_G, 0.02, Ends.ROUGH)
    many = bag_count(60, BAG_G, 4800, TARGET_G, 0.02, Ends.ROUGH)
    assert few.verdict is Verdict.CANNOT_TELL
    assert many.verdict is Verdict.INSIDE
    assert few.mean_g == pytest.approx(many.mean_g)


def test_the_interval_holds_the_truth_as_often_as_it_says() -> None:
    dice, inside = random.Random(5), 0
    for _ in range(800):
        powder = math.fsum(BAG_G * (1 + dice.gauss(0, BAG_U_SHARE)) for _ in range(6))
        true_mean = TARGET_G * dice.uniform(0.95, 1.05)
        counted = powder / true_mean * (1 + dice.gauss(0, FEEDINGS_U_SHARE))
        found = bag_count(6, BAG_G, counted, TARGET_G, 0.02)
        inside += found.low_g <= true_mean <= found.high_g
    assert 0.93 <= inside / 800 <= 0.97


def test_a_drift_shows_after_the_days_told_in_four_cases_of_five() -> None:
    days = days_until_seen(60, TARGET_G, BAG_G, Ends.ROUGH)
    assert days is not None
    dice, seen = random.Random(11), 0
    for _ in range(1500):
        powder = days * 60 * TARGET_G * 1.02
        opened = sum(dice.uniform(-0.5, 0.5) for _ in range(2))
        bags = powder / BAG_G + opened + dice.gauss(0, BAG_U_SHARE) * math.sqrt(powder / BAG_G)
        found = bag_count(bags, BAG_G, days * 60 * (1 + dice.gauss(0, FEEDINGS_U_SHARE)), TARGET_G, 0.02, Ends.ROUGH)
        seen += found.low_g > TARGET_G
    assert 0.75 <= seen / 1500 <= 0.88


def test_more_calves_find_a_drift_sooner_and_a_count_too_coarse_never() -> None:
    small, large = days_until_seen(8, TARGET_G, BAG_G), days_until_seen(200, TARGET_G, BAG_G)
    assert small is not None
    assert large is not None
    assert large < small
    # One bag alone cannot be weighed off to a fifth of a percent.
    assert days_until_seen(8, TARGET_G, BAG_G, Ends.ROUGH, 0.002) is None


@pytest.mark.parametrize(
    ("bags", "bag_g", "feedings", "target_g", "tolerance"),
    [
        (0, BAG_G, 80, TARGET_G, 0.02),
        (-1, BAG_G, 80, TARGET_G, 0.02),
        (0.2, BAG_G, 16, TARGET_G, 0.02),
        (math.nan, BAG_G, 80, TARGET_G, 0.02),
        (1, 0.0, 80, TARGET_G, 0.02),
        (1, math.inf, 80, TARGET_G, 0.02),
        (1, BAG_G, 0, TARGET_G, 0.02),
        (1, BAG_G, 20, TARGET_G, 0.02),
        (1, BAG_G, 800, TARGET_G, 0.02),
        (1, BAG_G, 80, 0.0, 0.02),
        (1, BAG_G, 80, TARGET_G, 0.0),
    ],
)
def test_impossible_counts_are_refused(
    bags: float, bag_g: float, feedings: float, target_g: float, tolerance: float
) -> None:
    with pytest.raises(CannotCompute, match=r"^[A-Z].*[.]$"):
        bag_count(bags, bag_g, feedings, target_g, tolerance)
