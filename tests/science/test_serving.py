"""Turns of feeding: minutes by arithmetic, cooling by Newton's law."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.science.errors import CannotCompute
from calibrator.science.heat import TOO_COOL_C, Cooling
from calibrator.science.serving import Turn, serve


def test_groups_follow_one_another_at_the_pace_of_feeding() -> None:
    first, second = serve([Turn(60, 3, 40.0), Turn(20, 1, 41.0)], 4.0, None)
    assert (first.starts_min, first.ends_min, first.last_calf_c) == (0.0, 15.0, None)
    assert (second.starts_min, second.ends_min) == (15.0, 20.0)
    assert not first.too_cool


def test_the_last_calf_of_a_batch_gets_what_newton_says() -> None:
    """From 90 to 60 °C in 1 min in a room of 25 °C, 40 °C is reached after 2.3687 min (university problem)."""
    cooling = Cooling(math.log(65 / 35), 25.0)
    (turn,) = serve([Turn(23687, 1, 90.0)], 10000.0, cooling)
    assert turn.last_calf_c == pytest.approx(40.0, abs=1e-3)
    (cold,) = serve([Turn(5, 1, 90.0)], 1.0, cooling)
    assert cold.too_cool
    assert cold.last_calf_c is not None
    assert cold.last_calf_c < TOO_COOL_C


@given(st.lists(st.tuples(st.integers(1, 500), st.integers(1, 9)), min_size=1, max_size=6), st.floats(0.1, 50))
def test_more_batches_keep_the_mix_warmer_and_take_no_longer(groups: list[tuple[int, int]], pace: float) -> None:
    cooling = Cooling(0.01, 5.0)
    one = serve([Turn(calves, 1, 40.0) for calves, _ in groups], pace, cooling)
    some = serve([Turn(calves, batches, 40.0) for calves, batches in groups], pace, cooling)
    assert one[-1].ends_min == pytest.approx(some[-1].ends_min)
    assert one[-1].ends_min == pytest.approx(sum(calves for calves, _ in groups) / pace)
    for a, b in zip(one, some, strict=True):
        assert a.last_calf_c is not None
        assert b.last_calf_c is not None
        assert b.last_calf_c >= a.last_calf_c - 1e-9


@pytest.mark.parametrize(("turn", "pace"), [(Turn(0, 1, 40), 1), (Turn(1, 0, 40), 1), (Turn(1, 1, 40), 0)])
def test_no_calves_no_batch_no_pace_are_refused(turn: Turn, pace: float) -> None:
    with pytest.raises(CannotCompute):
        serve([turn], pace, None)
