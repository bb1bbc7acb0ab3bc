"""Counts that a finger slipped in."""

from __future__ import annotations

TEN_TIMES = 9, 11  # whole calves come and go beside the digit


def is_digit_off(before: int, now: int) -> bool:
    """Whether a count is about ten times the one before, or about a tenth of it, as with a digit too many or too few.

    Both are 0 or more; beside 0 nothing is told. Common practice, no source.
    """
    less, more = sorted((before, now))
    least, most = TEN_TIMES
    return least * less <= more <= most * less and less > 0
