"""Days and the time of day as people here write them: one calendar and one clock on every screen and every print."""

from __future__ import annotations

from datetime import date, time
from enum import StrEnum
from functools import lru_cache

from PySide6.QtCore import QDate, QLocale, QTime


class DayForm(StrEnum):
    """How much of a day is told, its month in letters: 3/2 is read differently on either side of a border."""

    DATE = "d MMM yyyy"
    WITH_WEEKDAY = "dddd d MMM"
    OF_ANY_YEAR = "d MMMM"


_MONTH_FIRST = {
    DayForm.DATE: "MMM d, yyyy",
    DayForm.WITH_WEEKDAY: "dddd, MMM d",
    DayForm.OF_ANY_YEAR: "MMMM d",
}


def day_text(day: date, form: DayForm = DayForm.DATE, words: QLocale | None = None) -> str:
    """A day in the words of a language, that of the screen where none is given, in the order of this country."""
    spoken = words or QLocale()
    told = _MONTH_FIRST[form] if month_first(spoken) else form
    return spoken.toString(QDate(day.year, day.month, day.day), str(told)).replace(".", "")


def month_first(words: QLocale) -> bool:
    """Whether who speaks so writes Mar 2 in the country of this computer, and not 2 Mar."""
    here = QLocale()
    return here.language() != QLocale.Language.C and _month_first(words.language(), here.territory())


def figures_month_first() -> bool | None:
    """Whether 3/2 is Mar 2 in the country of this computer, whichever language its screen speaks; None where it names
    no country, or one that writes the year first: there a day without it is written both ways."""
    here = QLocale.system()
    return None if here.language() == QLocale.Language.C else _figures_month_first(here.territory())


@lru_cache(maxsize=2)
def _figures_month_first(country: QLocale.Country) -> bool | None:
    """By the short form of the Unicode Common Locale Data Repository, which Qt carries."""
    form = QLocale(QLocale.Language.AnyLanguage, country).dateFormat(QLocale.FormatType.ShortFormat)
    return None if form.find("y") < form.find("d") else form.find("M") < form.find("d")


@lru_cache(maxsize=8)
def _month_first(language: QLocale.Language, country: QLocale.Country) -> bool:
    """By the long form of the Unicode Common Locale Data Repository, which Qt carries."""
    form = QLocale(language, country).dateFormat(QLocale.FormatType.LongFormat).replace("dddd", "")
    return form.find("M") < form.find("d") < form.find("y")


def clock_text(at: time) -> str:
    """Without points in "a.m.": a full stop behind it would stand twice."""
    here = QLocale()
    told = here.toString(QTime(at.hour, at.minute), QLocale.FormatType.ShortFormat)
    for half in (here.amText(), here.pmText()):
        told = told.replace(half, "".join(letter for letter in half if letter.isalnum()))
    return told.replace("\u202f", "\u00a0")
