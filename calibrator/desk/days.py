"""Days as people type them, read in the order of their country; without one, what can be meant two ways is asked."""

from __future__ import annotations

import re
from collections.abc import Sequence
from datetime import date, datetime, timedelta

EARLIEST_YEAR = 2000
YEARS_TO_A_LEAP_DAY = 9
_ENGLISH = "january february march april may june july august september october november december"
_SPANISH = "enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre"
_MONTHS = tuple((number, name) for names in (_ENGLISH, _SPANISH) for number, name in enumerate(names.split(), start=1))
_NEAR = ("yesterday", "ayer"), ("today", "hoy"), ("tomorrow", "mañana", "manana")
_FIGURES = re.compile(r"(\d{1,4})\s*([-/.])\s*(\d{1,2})\s*\2\s*(\d{1,4})", re.ASCII)
_NO_YEAR = re.compile(r"(\d{1,2})\s*[-/.]\s*(\d{1,2})\.?", re.ASCII)
_FILLERS = ("de", "del", "of")


class DayNotUnderstood(ValueError):
    """A text that is no day, or more than one. `code` says why; `days` are the readings it could have."""

    def __init__(self, code: str, days: Sequence[date] = ()) -> None:
        super().__init__(code)
        self.code = code
        self.days = tuple(days)


def read_day(text: str, today: date, *, month_first: bool | None = None, ahead: int = 0) -> date | None:
    """The day that a text means; None for a blank one.

    Understood are 2026-03-02, Mar 2 2026, 2 March 2026 (English or Spanish months), figures in the order of the
    country, today, yesterday, tomorrow; without a year (2 March, 3/14) such a day nearest to today. `month_first` is
    the country's order of figures; where it is not known, only figures whose day cannot be a month are understood
    (3/14/2026, 25.11.26). A day may lie so many days `ahead`.
    Raises DayNotUnderstood with code `two_ways`, `other_order`, `no_day`, `no_such_day`, `to_come`, `too_far` or
    `too_early`.
    """
    words = text.strip().lower()
    if not words:
        return None
    latest = today + timedelta(days=ahead)
    near = next((day for day, names in enumerate(_NEAR, start=-1) if words in names), None)
    day = _day_told(words, today, latest, month_first) if near is None else today + timedelta(days=near)
    if day.year < EARLIEST_YEAR:
        raise DayNotUnderstood("too_early", [day])
    if day > latest:
        raise DayNotUnderstood("too_far" if ahead else "to_come", [day])
    return day


def _day_told(text: str, today: date, latest: date, month_first: bool | None) -> date:
    if _FIGURES.fullmatch(text):
        return _from_figures(text, month_first)
    figures = _NO_YEAR.fullmatch(text)
    if figures is not None:
        one, other = map(int, figures.groups())
        return _in_order([_nearest(*pair, today, latest) for pair in ((one, other), (other, one))], month_first)
    return _nearest_such_day(text, today, latest) or day_from_words(text)


def _from_figures(text: str, month_first: bool | None) -> date:
    match = _FIGURES.fullmatch(text)
    assert match is not None
    first, _, second, third = match.groups()
    if len(first) == 4:
        return _day(int(first), int(second), int(third))
    if len(third) not in (2, 4) or len(first) > 2:
        raise DayNotUnderstood("no_day")
    year = _year(int(third))
    return _in_order([_possible(year, int(a), int(b)) for a, b in ((first, second), (second, first))], month_first)


def _year(number: int) -> int:
    """A year of two figures, as people write it last, is one of this century."""
    return number if number > 99 else 2000 + number


def _in_order(readings: Sequence[date | None], month_first: bool | None) -> date:
    """The reading in the country's order, of figures read with the month first and with the day first."""
    days = sorted({day for day in readings if day is not None})
    if not days:
        raise DayNotUnderstood("no_such_day")
    meant = None if month_first is None else readings[0 if month_first else 1]
    if meant is not None:
        return meant
    if month_first is not None:
        raise DayNotUnderstood("other_order", days)
    if len(days) > 1:
        raise DayNotUnderstood("two_ways", days)
    return days[0]


def _nearest_such_day(text: str, today: date, latest: date) -> date | None:
    """The nearest day of a month and number without a year; None where the text is none such."""
    parts = [part for part in re.split(r"[\s,.]+", text) if part and part not in _FILLERS]
    months = [found for part in parts if (found := _month(part))]
    numbers = _numbers(parts)
    if len(parts) != 2 or len(months) != 1 or len(numbers) != 1:
        return None
    return _nearest(months[0], numbers[0], today, latest)


def _nearest(month: int, day_of_month: int, today: date, latest: date) -> date | None:
    """Such a day nearest to today, up to the latest; None where there is none in any year."""
    days = (_possible(latest.year - back, month, day_of_month) for back in range(YEARS_TO_A_LEAP_DAY + 1))
    return min((day for day in days if day and day <= latest), key=lambda day: abs(day - today), default=None)


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
