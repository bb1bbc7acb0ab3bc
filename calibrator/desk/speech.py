"""How days and numbers are written where this computer is: one answer for every page."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QLocale

from calibrator import clock
from calibrator.clock import DayForm
from calibrator.units.rounding import with_comma


def decimal_comma() -> bool:
    """Whether people here write a comma before the decimals."""
    return QLocale().decimalPoint() == ","


def figure_text(text: str) -> str:
    """A figure with a point, as people here write it."""
    return with_comma(text, decimal_comma())


def day_text(day: date | None) -> str:
    """A day that can be read one way only, its month in letters; a dash where none is known."""
    return "–" if day is None else clock.day_text(day)


def weekday_text(day: date) -> str:
    """A day of the next or last weeks with its weekday."""
    return clock.day_text(day, DayForm.WITH_WEEKDAY)
