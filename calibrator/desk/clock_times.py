"""Times of day as people type them, read without a guess."""

from __future__ import annotations

import re
from datetime import time

_NOON = {"noon": time(12), "mediodía": time(12), "mediodia": time(12), "midnight": time(0), "medianoche": time(0)}
_CLOCK = re.compile(r"(\d{1,2})(?:[:.h](\d{2}))?\s*([ap])?\.?\s?(?:m\.?)?", re.IGNORECASE)
_FOUR = re.compile(r"(\d{2})(\d{2})")


class TimeNotUnderstood(ValueError):
    """A text that is no time of day. `code` is `no_time` or `no_such_time`."""

    def __init__(self, code: str) -> None:
        super().__init__(code)
        self.code = code


def read_time(text: str) -> time | None:
    """The time of day that a text means; None for a blank one.

    Understood are 6:30, 18:30, 6.30 pm, 6 am, 0630, noon. Hours without am or pm are those of 24, and a single
    number needs one of them. Raises TimeNotUnderstood.
    """
    words = " ".join(text.lower().replace("\u202f", " ").replace("\u00a0", " ").split())
    if not words:
        return None
    if words in _NOON:
        return _NOON[words]
    found = _FOUR.fullmatch(words) or _CLOCK.fullmatch(words)
    if found is None or (words.endswith("m") and not found.group(3)):
        raise TimeNotUnderstood("no_time")
    hour, minute, half = found.group(1), found.group(2), found.group(3) if found.re is _CLOCK else None
    if minute is None and half is None:
        raise TimeNotUnderstood("no_time")
    return _time(int(hour), int(minute or 0), half)


def _time(hour: int, minute: int, half: str | None) -> time:
    if half and not 1 <= hour <= 12:
        raise TimeNotUnderstood("no_such_time")
    if half:
        hour = hour % 12 + (12 if half == "p" else 0)
    try:
        return time(hour, minute)
    except ValueError:
        raise TimeNotUnderstood("no_such_time") from None
