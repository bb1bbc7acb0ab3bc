"""How days and numbers are written where this computer is: one answer for every page."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QDate, QLocale


def decimal_comma() -> bool:
    """Whether people here write a comma before the decimals."""
    return QLocale().decimalPoint() == ","


def day_text(day: date | None) -> str:
    """A day in figures, as the system writes it, its year whole; a dash where none is known."""
    if day is None:
        return "–"
    pattern = QLocale().dateFormat(QLocale.FormatType.ShortFormat)
    whole = pattern if "yyyy" in pattern else pattern.replace("yy", "yyyy")
    return QLocale().toString(QDate(day.year, day.month, day.day), whole)
