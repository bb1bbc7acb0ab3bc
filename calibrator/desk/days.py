"""Days as people type them, read without a guess: what can be meant two ways is asked back."""

from __future__ import annotations

import re
from collections.abc import Sequence
from datetime import date, datetime, timedelta

EARLIEST_YEAR = 2000
YEARS_TO_A_LEAP_DAY = 9
_ENGLISH = "january february march april may june july august september october november december"
_SPANISH = "enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre"
_MONTHS = tuple((number, name) for names in (_ENGLISH, _SPANISH) for number, name in enumerate(names.split(), start=1))
_TODAY = ("today", "hoy")
_YESTERDAY = ("yesterday", "ayer")
_FIGURES = re.compile(r"(\d{1,4})\s*([-/.])\s*(\d{1,2})\s*\2\s*(\d{1,4})", re.ASCII)
_NO_YEAR = re.compile(r"(\d{1,2})\s*[-/.]\s*(\d{1,2})\.?", re.ASCII)
_FILLERS = ("de", "del", "of")


class DayNotUnderstood(ValueError):
    """A text that is no day, or more than one. `code` says why; `days` are the readings it could have."""

    def __init__(self, code: str, days: Sequence[date] = ()) -> None:
        super().__init__(code)
        self.code = code
        self.days = tuple(days)


def read_day(text: str, today: date) -> date | None:
    """The day that a text means; None for a blank one.

    Understood are 2026-03-02, Mar 2 2026, 2 March 2026 (English or Spanish months), figures whose day
    cannot be a month (3/14/2026, 25.11.26), today, yesterday; without a year (2 March, 3/14) the last such day.
    Raises DayNotUnderstood with code `two_ways`, `no_day`, `no_such_day`, `to_come` or `too_early`.
    """
    words = text.strip().lower()
    if not words:
        return None
    if words in _TODAY:
        return today
    if words in _YESTERDAY:
        return today - timedelta(days=1)
    day = _day_told(words, today)
    if day.year < EARLIEST_YEAR:
        raise DayNotUnderstood("too_early", [day])
    if day > today:
        raise DayNotUnderstood("to_come", [day])
    return day


def _day_told(text: str, today: date) -> date:
    if _FIGURES.fullmatch(text):
        return _from_figures(text)
    figures = _NO_YEAR.fullmatch(text)
    if figures is not None:
        return _one_of(
            [_newest(int(month), int(day), today) for month, day in (figures.groups(), figures.groups()[::-1])]
        )
    return _last_such_day(text, today) or day_from_words(text)


def _from_figures(text: str) -> date:
    match = _FIGURES.fullmatch(text)
    assert match is not None
    first, _, second, third = match.groups()
    if len(first) == 4:
        return _day(int(first), int(second), int(third))
    if len(third) not in (2, 4) or len(first) > 2:
        raise DayNotUnderstood("no_day")
    year = _year(int(third))
    return _one_of([_possible(year, int(a), int(b)) for a, b in ((first, second), (second, first))])


def _year(number: int) -> int:
    """A year of two figures, as people write it last, is one of this century."""
    return number if number > 99 else 2000 + number


def _one_of(readings: Sequence[date | None]) -> date:
    days = sorted({day for day in readings if day is not None})
    if not days:
        raise DayNotUnderstood("no_such_day")
    if len(days) > 1:
        raise DayNotUnderstood("two_ways", days)
    return days[0]


def _last_such_day(text: str, today: date) -> date | None:
    """The newest day of a month and number without a year, up to today; None where the text is none such."""
    parts = [part for part in re.split(r"[\s,.]+", text) if part and part not in _FILLERS]
    months = [found for part in parts if (found := _month(part))]
    numbers = _numbers(parts)
    if len(parts) != 2 or len(months) != 1 or len(numbers) != 1:
        return None
    return _newest(months[0], numbers[0], today)


def _newest(month: int, day_of_month: int, today: date) -> date | None:
    """The newest such day up to today; None where there is none in any year."""
    days = (_possible(today.year - back, month, day_of_month) for back in range(YEARS_TO_A_LEAP_DAY))
    return next((day for day in days if day and day <= today), None)


def day_from_words(text: str) -> date:
    """The day of a text with a month in letters. Raises DayNotUnderstood."""
    parts = [part for part in re.split(r"[\s,./-]+", text) if part and part not in _FILLERS]
    months = [found for part in parts if (found := _month(part))]
    numbers = _numbers(parts)
    if len(parts) != 3 or len(months) != 1 or len(numbers) != 2:
        raise DayNotUnderstood("no_day")
    years = [number for number in numbers if number > 999]
    if len(years) > 1 or (not years and not re.search(r"\b\d\d$", text, re.ASCII)):
        raise DayNotUnderstood("no_day")
    year = years[0] if years else numbers[-1]
    numbers.remove(year)
    return _day(_year(year), months[0], numbers[0])


def _numbers(parts: Sequence[str]) -> list[int]:
    """The parts that are numbers, 3rd among them; digits of other scripts are none, here as in weights."""
    bare = (re.sub(r"(?<=[0-9])(st|nd|rd|th)$", "", part) for part in parts)
    return [int(text) for text in bare if text.isascii() and text.isdecimal()]


def _month(word: str) -> int | None:
    found = {number for number, name in _MONTHS if len(word) >= 3 and name.startswith(word)}
    if word == "sept":
        found = {9}
    return found.pop() if len(found) == 1 else None


def _day(year: int, month: int, day: int) -> date:
    found = _possible(year, month, day)
    if found is None:
        raise DayNotUnderstood("no_such_day")
    return found


def _possible(year: int, month: int, day: int) -> date | None:
    try:
        return date(year, month, day)
    except (ValueError, OverflowError):
        return None


CLOCK_MAY_DIFFER = timedelta(minutes=10)


def set_back(before: str, now: datetime) -> datetime | None:
    """What the clock said before, where it says clearly less now; None where it went on. `before` is as it was kept."""
    try:
        last = datetime.fromisoformat(before)
    except ValueError:
        return None
    return last if last.tzinfo is not None and now < last - CLOCK_MAY_DIFFER else None
