"""Trials of the same people: a habit that lasts, one that practice changed, and what too little cannot tell."""

from __future__ import annotations

import math
import random

import pytest

from calibrator.science.crossed import crossed
from calibrator.science.errors import CannotCompute
from calibrator.science.feeders import Level
from calibrator.science.repeat_trials import Habits, TrialRead, habits, who_count, who_fit

TOLERANCE = 0.02
PEOPLE = ("Ana", "Luis", "Eva", "Bo")


def made(habit: dict[str, float], weight: float, chance: random.Random, fills: int = 5, sd: float = 0.01) -> TrialRead:
    own = {
        name: [weight * (1 + share) * (1 + chance.gauss(0, sd)) for _ in range(fills)] for name, share in habit.items()
    }
    return TrialRead(own, 0.1)


def over(*shares: tuple[float, ...], seed: int = 3, sd: float = 0.01) -> Habits:
    """Trials with other scoops, in which people fill off by `shares`."""
    chance = random.Random(seed)
    trials = [made(dict(zip(PEOPLE, own, strict=False)), 250.0 + 60 * n, chance, sd=sd) for n, own in enumerate(shares)]
    return habits(trials, PEOPLE[: len(shares[0])], TOLERANCE)


def test_a_habit_that_lasts_is_told_whatever_the_scoops_weigh() -> None:
    found = over((0.05, 0.0, 0.0, -0.01), (0.05, 0.0, 0.0, -0.01), (0.05, 0.0, 0.0, -0.01))
    ana = found.people[0]
    assert ana.level is Level.HEAVY
    assert ana.low < 0.04 < ana.high
    assert len(ana.each) == 3
    assert not ana.change.sure
    assert not found.moved
    assert found.between > found.by_trial


def test_practice_is_told_and_the_changed_hand_named() -> None:
    found = over((0.05, 0.0, 0.0, 0.0), (0.01, 0.0, 0.0, 0.0))
    assert found.moved
    assert found.people[0].nearer
    assert max(found.people, key=lambda one: abs(one.change.share)) is found.people[0]
    assert found.people[0].change.share == pytest.approx(-0.03, abs=0.015)
    assert found.by_trial > 0


def test_a_hand_that_moves_away_is_no_nearer() -> None:
    found = over((0.0, 0.0, 0.0), (0.06, 0.0, 0.0))
    assert found.people[0].change.sure
    assert not found.people[0].nearer


def test_two_trials_of_two_people_that_disagree_cannot_tell() -> None:
    found = over((0.03, 0.0), (0.0, 0.03), sd=0.004)
    assert {one.level for one in found.people} == {Level.CANNOT_TELL}


def test_hands_that_agree_show_no_spread_between_them() -> None:
    same = TrialRead({"Ana": [100.0, 101.0], "Luis": [101.0, 100.0]}, 0.0)
    found = habits([same, same], ("Ana", "Luis"), TOLERANCE)
    assert (found.between, found.by_trial) == (0.0, 0.0)
    assert found.reproducibility.share == pytest.approx(found.repeatability.share)
    assert {one.level for one in found.people} == {Level.ALIKE}


def test_a_coarse_scale_is_never_better_than_its_step() -> None:
    flat = TrialRead({"Ana": [100.0] * 5, "Luis": [100.0] * 5}, 10.0)
    found = habits([flat, flat], ("Ana", "Luis"), TOLERANCE)
    assert found.repeatability.share == pytest.approx(10 / math.sqrt(6) / 100)


def test_fills_without_any_scatter_are_no_trouble() -> None:
    flat = TrialRead({"Ana": [100.0] * 2, "Luis": [100.0] * 2}, 0.0)
    found = habits([flat, flat], ("Ana", "Luis"), TOLERANCE)
    assert (found.repeatability.share, found.reproducibility.share, found.moved) == (0.0, 0.0, False)


def test_those_are_compared_who_took_part_in_most() -> None:
    trials = (("Ana", "Luis"), ("Ana", "Luis", "Eva"), ("Eva", "Bo"), ("Luis", "Eva", "Ana"))
    assert who_fit(trials, 1) == (("Ana", "Luis", "Eva"), (1, 3))
    assert who_fit(trials, 0) == (("Ana", "Luis"), (0, 1, 3))
    assert who_fit(trials, 2) == ((), ())
    assert who_fit((("Ana", "Luis"),), 0) == ((), ())


def test_a_single_fill_is_no_part_in_a_trial() -> None:
    assert who_count(TrialRead({"Ana": [1.0, 1.0], "Luis": [1.0], "Eva": []}, 0.1)) == ("Ana",)


@pytest.mark.parametrize(
    ("trials", "people", "said"),
    [
        ([], ("Ana", "Luis"), "same two people"),
        ([TrialRead({"Ana": [1.0, 1.0], "Luis": [1.0, 1.0]}, 0.1)], ("Ana", "Luis"), "same two people"),
        ([TrialRead({"Ana": [1.0, 1.0]}, 0.1)] * 2, ("Ana",), "same two people"),
        ([TrialRead({"Ana": [1.0, 1.0], "Luis": [1.0]}, 0.1)] * 2, ("Ana", "Luis"), "two fills or more"),
        ([TrialRead({"Ana": [1.0, 0.0], "Luis": [1.0, 1.0]}, 0.1)] * 2, ("Ana", "Luis"), "weight of a scoopful"),
    ],
)
def test_too_little_is_refused(trials: list[TrialRead], people: tuple[str, ...], said: str) -> None:
    with pytest.raises(CannotCompute, match=said):
        habits(trials, people, TOLERANCE)


def test_cells_of_other_sizes_count_by_their_means() -> None:
    """By hand: cell means 2, 6, 4, 12 and sizes 2, 2, 2, 4, whose harmonic mean is 16/7."""
    found = crossed([[[1.0, 3.0], [5.0, 7.0]], [[4.0, 4.0], [11.0, 13.0, 12.0, 12.0]]])
    assert found.each == pytest.approx(16 / 7)
    assert found.rows.sum_squares == pytest.approx(16 / 7 * 16)
    assert found.columns.sum_squares == pytest.approx(16 / 7 * 36)
    assert found.both.sum_squares == pytest.approx(16 / 7 * 4)
    assert (found.within.sum_squares, found.within.df) == (pytest.approx(6.0), 6)


def test_changes_are_seen_where_there_are_none_in_less_than_one_trial_of_twenty() -> None:
    chance, seen, tries = random.Random(5), 0, 300
    for _ in range(tries):
        trials = [made({"Ana": 0.02, "Luis": 0.0, "Eva": -0.01}, 283.0, chance) for _ in range(2)]
        found = habits(trials, PEOPLE[:3], TOLERANCE)
        seen += any(one.change.sure for one in found.people)
    assert seen / tries < 0.07
