"""The words of the prints in the languages of the barn, whatever the screen speaks.

Each language brings its own translator; it is asked directly and never installed in the application.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, datetime
from functools import lru_cache

from PySide6.QtCore import QDate, QLocale, QTranslator

from calibrator.clock import clock_text, day_text, month_first
from calibrator.model import UnitSystem
from calibrator.places import resource
from calibrator.units import show_length
from calibrator.values import dataclass

LANGUAGES = ("en", "es")
CONTEXT = "Prints"
_LOCALES = {"en": "en_US", "es": "es_MX"}


@lru_cache(maxsize=4)
def _translator(code: str) -> QTranslator:
    translator = QTranslator()
    if not translator.load(str(resource(f"translations/prints_{code}.qm"))):
        raise FileNotFoundError(f"The words for the language {code} are damaged; install the program again.")
    return translator


@dataclass(frozen=True)
class Tongue:
    """One language on paper: "en" or "es"."""

    code: str

    def __call__(self, literal: str) -> str:
        """A phrase of the catalogue in this language."""
        return literal if self.code == "en" else _translator(self.code).translate(CONTEXT, literal) or literal

    def month(self, day: date) -> str:
        """The month in short letters."""
        return self._words.toString(QDate(day.year, day.month, day.day), "MMM").replace(".", "")

    def date(self, day: date) -> str:
        return day_text(day, words=self._words)

    @property
    def month_first(self) -> bool:
        """Whether a day is told as Mar 2 here, and not as 2 Mar."""
        return month_first(self._words)

    def moment(self, at: datetime) -> str:
        here = at.astimezone()
        return f"{self.date(here.date())}, {clock_text(here.time())}"

    @property
    def _words(self) -> QLocale:
        return QLocale(_LOCALES[self.code])

    def length(self, mm: float, system: UnitSystem) -> str:
        return self.ruler(show_length(mm, system))

    def ruler(self, told: str) -> str:
        """A length as it was told, its inches in this language."""
        return told.replace(" in", " pulg") if self.code == "es" else told


@dataclass(frozen=True)
class Words:
    """The languages of one print, in their order on it."""

    tongues: tuple[Tongue, ...]

    @classmethod
    def of(cls, languages: tuple[str, ...]) -> Words:
        """Raises ValueError for a language that is not there."""
        if not languages or any(code not in LANGUAGES for code in languages):
            raise ValueError("A print is in English, in Spanish or in both.")
        return cls(tuple(Tongue(code) for code in dict.fromkeys(languages)))

    def each(self, told: str | Callable[[Tongue], str]) -> tuple[str, ...]:
        """A phrase in every language; what is the same in several is told once."""
        said = (t(told) if isinstance(told, str) else told(t) for t in self.tongues)
        return tuple(dict.fromkeys(said))

    def joined(self, told: str | Callable[[Tongue], str], between: str = " · ") -> str:
        return between.join(self.each(told))
