"""A shifted lot is found out by the checks, as soon as MIX_CHECKS.md says, and right lots are left alone."""

from __future__ import annotations

import pytest

from .mix_checks import CHECKS, RESULTS, run


def test_a_lot_that_is_five_percent_heavy_is_found_after_four_checks() -> None:
    found = run(11, 150, 0.05)
    assert found.found >= 0.9
    assert found.middle <= 5
    assert found.ninety <= 10


def test_a_lot_that_is_eight_percent_heavy_is_found_after_one_or_two() -> None:
    found = run(12, 100, 0.08)
    assert found.found >= 0.98
    assert found.middle <= 2
    assert found.ninety <= 4


@pytest.mark.slow
def test_a_light_lot_is_found_as_soon() -> None:
    assert run(13, 100, -0.08).middle <= 3


def test_right_lots_are_left_alone_and_intervals_hold_what_they_promise() -> None:
    found = run(14, 150, 0.0)
    assert found.accused <= 0.08
    assert 1 - found.found >= 0.92
    assert found.covered == pytest.approx(0.95, abs=0.02)
    assert found.wrong <= 0.01


def test_what_the_screen_says_is_what_was_found() -> None:
    """Half of the seasons by check 4 at 5 %, by check 1 or 2 at 8 %, later than the lot lasts at 2 %."""
    rows = [line.split("|") for line in RESULTS.read_text(encoding="utf-8").splitlines() if line.startswith("| ")]
    by_shift = {row[1].strip(): row[3].strip() for row in rows[1:]}
    assert by_shift["5 %"] in ("3", "4", "5")
    assert by_shift["8 %"] in ("1", "2")
    assert by_shift["2 %"] == "later"
    assert CHECKS == 12
