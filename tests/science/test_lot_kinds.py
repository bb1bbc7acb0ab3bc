"""Lots one after another with one scoop."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.science.lot_kinds import before, change_share, last_two
from tests.season_rows import lot


def test_the_lot_before_is_the_last_other_one_of_the_same_scoop() -> None:
    lots = [
        lot(0, 0.50),
        lot(1, 0.55),
        lot(2, 0.60, scoop_id="blue"),
        lot(3, 0.56, lot_id="l1"),  # the lot of the second, weighed in anew
    ]
    assert [before(lots, place) for place in range(4)] == [None, lots[0], None, lots[0]]
    assert last_two(lots) == (lots[0], lots[3])
    assert last_two(lots[:1]) is None
    assert last_two(lots[2:]) is None


@given(st.floats(0.2, 0.9), st.floats(0.2, 0.9), st.floats(0.2, 0.9))
def test_changes_one_after_the_other_multiply(first: float, second: float, third: float) -> None:
    a, b, c = (lot(n, density) for n, density in enumerate((first, second, third)))
    assert (1 + change_share(a, b)) * (1 + change_share(b, c)) == pytest.approx(1 + change_share(a, c))
