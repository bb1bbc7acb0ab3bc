"""How a column writes its days and its numbers: what its cells allow, and which cell settles it. Nothing is guessed."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from datetime import date, datetime, time, timedelta
from enum import StrEnum
from functools import lru_cache

from calibrator.desk.days import DayNotUnderstood, day_from_words
from calibrator.records.foreign.table import CellError, Share, Value
from calibrator.values import dataclass

_FIGURES = re.compile(r"(\d{1,4})\s*([-/. ])\s*(\d{1,2})\s*\2\s*(\d{1,4})\.?")
_STAMP = re.compile(
    r"(.*\d)[T ]+(\d{1,2}:\d{2}(?::\d{2}(?:\.\d+)?)?\s*(?:[ap]\.?\s?m\.?)?(?:Z|[+-]\d{2}:?\d{2})?)", re.I
)
_YEAR_FIRST = re.compile(r"\d{4}")
_CENTURY = 2000
_FIRST_SERIAL, _LAST_SERIAL = 30_000, 80_000
"""Days counted from 1900 or 1904 lie there: 1982 to 2119."""
_NUMBER = re.compile(r"(?P<before>[^\d+\-−]{0,6}?)(?P<figures>[-+−]?\d[\d.,' \u00a0\u202f]*)")
"""A number with what may stand before it: the sign or name of a currency."""
_POINT = re.compile(r"[-+−]?(\d+|\d{1,3}([,' \u00a0\u202f]\d{3})+)(\.\d+)?")
_COMMA = re.compile(r"[-+−]?(\d+|\d{1,3}([.' \u00a0\u202f]\d{3})+)(,\d+)?")


class DayOrder(StrEnum):
    """In which order the figures of a day stand."""

    DAY_MONTH = "dmy"
    MONTH_DAY = "mdy"
    YEAR_FIRST = "ymd"


@dataclass(frozen=True)
class Settled:
    """What a column allows, and the first cell (row from 0) that leaves only that; None where none had to."""

    allowed: frozenset[str]
    row: int | None = None
    text: str = ""
    matters: bool = False  # whether any cell would be read otherwise in another way

    @property
    def answer(self) -> str:
        """The one way that is left; blank where a person has to say, or where it does not matter."""
        return next(iter(self.allowed)) if self.matters and len(self.allowed) == 1 else ""

    @property
    def asks(self) -> bool:
        return self.matters and not self.answer


def text_of(cell: Value) -> str:
    """A cell as it can be shown: numbers short, days by the standard."""
    if isinstance(cell, Share):
        return f"{100 * cell:.12g} %"
    if isinstance(cell, float):
        return f"{cell:.12g}"
    if isinstance(cell, datetime):  # a spreadsheet's day is its midnight
        return cell.date().isoformat() if cell.time() == time() else cell.isoformat(" ", "minutes")
    return "" if cell is None else str(cell).strip()


def day_orders(cells: Iterable[tuple[int, Value]]) -> Settled:
    """The orders in which all days of a column can be read; all where no cell needs one.

    Where they cannot all be read in any one order, those are allowed in which most can.
    """
    return _settled(((row, text, _orders(text)) for row, text in _texts(cells)), frozenset(map(str, DayOrder)))


def commas(cells: Iterable[tuple[int, Value]]) -> Settled:
    """Whether the comma or the point is the decimal sign of a column ("," or "."); both where no cell tells."""
    return _settled(((row, text, _signs(text)) for row, text in _texts(cells)), frozenset(".,"))


def counts_days(cells: Iterable[tuple[int, Value]]) -> bool:
    """Whether a column has days as the numbers that spreadsheets count."""
    return any(serial_of(cell) is not None for _, cell in cells)


def serial_of(cell: Value) -> float | None:
    """A cell as a count of days; None for what cannot be one."""
    if isinstance(cell, bool):
        return None
    if isinstance(cell, str):
        if not re.fullmatch(r"\d{5}([.,]\d+)?", cell.strip()):
            return None
        cell = float(cell.strip().replace(",", "."))
    return float(cell) if isinstance(cell, int | float) and _FIRST_SERIAL < cell < _LAST_SERIAL else None


def day_in(cell: Value, order: DayOrder | None, from_1904: bool) -> datetime | date:
    """The day (with its time of day where the cell has one) that a cell tells. Raises DayNotUnderstood."""
    if isinstance(cell, date):
        return cell
    if (serial := serial_of(cell)) is not None:
        begin = datetime(1904, 1, 1) if from_1904 else datetime(1899, 12, 30)
        moment = begin + timedelta(minutes=round(serial * 1440))
        return moment if serial % 1 else moment.date()
    if isinstance(cell, CellError) or not isinstance(cell, str):
        raise DayNotUnderstood("no_day")
    return _day_of(cell.strip(), order)


@lru_cache(maxsize=4096)
def _day_of(text: str, order: DayOrder | None) -> datetime | date:
    day, clock = _parts(text)
    figures = _FIGURES.fullmatch(day)
    found = day_from_words(day.lower()) if figures is None else _figured(day, order)
    return _at(found, clock) if clock else found


def _parts(text: str) -> tuple[str, str]:
    stamp = _STAMP.fullmatch(text)
    return (stamp[1].strip(" ,"), stamp[2].strip()) if stamp else (text, "")


def _figured(text: str, order: DayOrder | None) -> date:
    days = {named: day for named in DayOrder if (day := _in_order(text, named)) is not None}
    if not days:
        raise DayNotUnderstood("no_such_day")
    told = set(days.values())
    if _YEAR_FIRST.match(text) or (order is None and len(told) == 1):
        return told.pop()
    if order is None:
        raise DayNotUnderstood("two_ways", sorted(told))
    if order not in days:
        raise DayNotUnderstood("no_such_day")
    return days[order]


def _at(day: date, clock: str) -> datetime:
    told = re.sub(r"[\s.]", "", clock[:5]) + clock[5:]
    afternoon = re.search(r"([ap])\.?\s?m\.?", told, re.I)
    begun = re.match(r"(\d{1,2}):(\d{2})", clock)
    assert begun is not None  # whoever asks has matched the whole
    hours, minutes = int(begun[1]), int(begun[2])
    if afternoon:
        hours = hours % 12 + (12 if afternoon[1].lower() == "p" else 0)
    zone = re.search(r"(Z|[+-]\d{2}:?\d{2})$", clock)
    try:
        made = datetime(day.year, day.month, day.day, hours, minutes)
        return datetime.fromisoformat(made.isoformat() + zone[1]) if zone else made
    except ValueError:
        raise DayNotUnderstood("no_day") from None


def clock_in(cell: Value) -> tuple[int, int] | None:
    """A time of day as hours and minutes; None for what is none."""
    if isinstance(cell, float | int) and not isinstance(cell, bool) and 0 <= cell < 1:
        return divmod(round(cell * 1440) % 1440, 60)
    if isinstance(cell, datetime | time):
        return cell.hour, cell.minute
    if isinstance(cell, str) and re.fullmatch(r"\d{1,2}:\d{2}(:\d{2})?\s*([ap]\.?\s?m\.?)?", cell.strip(), re.I):
        try:
            made = _at(date(2000, 1, 1), cell.strip())
        except DayNotUnderstood:
            return None
        return made.hour, made.minute
    return None


def _texts(cells: Iterable[tuple[int, Value]]) -> Iterator[tuple[int, str]]:
    for row, cell in cells:
        if isinstance(cell, str) and not isinstance(cell, CellError):
            yield row, cell.strip()


def _settled(told: Iterable[tuple[int, str, frozenset[str] | None]], every: frozenset[str]) -> Settled:
    reading, needed = dict.fromkeys(every, 0), 0
    allowed: frozenset[str] = every
    row, by = None, ""
    for at, text, own in told:
        if not own:
            continue
        needed += 1
        for one in own:
            reading[one] += 1
        if len(own & allowed) == 1 < len(allowed):
            row, by = at, text
        allowed &= own
    if allowed:
        return Settled(allowed, row, by, needed > 0)
    # No one way does for all: those that do for most, and the person decides.
    most = max(reading.values())
    best = frozenset(one for one, count in reading.items() if count == most)
    return Settled(best if len(best) > 1 else every, matters=True)


@lru_cache(maxsize=4096)
def _orders(text: str) -> frozenset[str] | None:
    """The orders that a text can be read in; None for one that needs none, or is no day."""
    day, _ = _parts(text)
    if not _FIGURES.fullmatch(day) or _YEAR_FIRST.match(day):
        return None
    days = {order: found for order in DayOrder if (found := _in_order(day, order)) is not None}
    return frozenset(map(str, days)) if days else None


def _in_order(text: str, order: DayOrder) -> date | None:
    match = _FIGURES.fullmatch(text)
    assert match is not None
    first, _, second, third = match.groups()
    year, month, day = {
        DayOrder.DAY_MONTH: (third, second, first),
        DayOrder.MONTH_DAY: (third, first, second),
        DayOrder.YEAR_FIRST: (first, second, third),
    }[order]
    if len(year) not in (2, 4) or len(day) > 2 or len(month) > 2:
        return None
    try:
        return date(int(year) + (_CENTURY if len(year) == 2 else 0), int(month), int(day))
    except ValueError:
        return None


@lru_cache(maxsize=4096)
def _signs(text: str) -> frozenset[str] | None:
    """The decimal signs that a text allows; None where it has none, or is no number."""
    number = _NUMBER.match(text)
    if number is None or not any(sign in number["figures"] for sign in ".,"):
        return None
    told = number["figures"].rstrip(" \u00a0\u202f'")
    return frozenset(sign for sign, pattern in ((".", _POINT), (",", _COMMA)) if pattern.fullmatch(told))


def with_point(text: str, decimal: str) -> str:
    """A number of a column's way of writing with a point and without signs between thousands; the rest as it is."""
    number = _NUMBER.match(text)
    if number is None:
        return text
    told = number["figures"].rstrip(" \u00a0\u202f'")
    if not (_COMMA if decimal == "," else _POINT).fullmatch(told):
        return text
    plain = re.sub(r"[' \u00a0\u202f]", "", told)
    plain = plain.replace(".", "").replace(",", ".") if decimal == "," else plain.replace(",", "")
    return number["before"] + plain + text[len(number["before"]) + len(told) :]
