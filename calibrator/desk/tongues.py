"""The language of the screen: our words, Qt's own, and how days and decimals are written, put in place together."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from calibrator.desk.money import LONGEST_CURRENCY
from calibrator.model import Farm, Paper, UnitSystem
from calibrator.places import resource

LANGUAGES = ("en", "es")
PAPER_LANGUAGES = (("en",), ("es",), ("en", "es"))
_CARRIED = {"en": ("desk_en",), "es": ("qt_es", "desk_es")}
"""`qt` mends what Qt's own file leaves in English or says in other words than ours."""
_LETTER_COUNTRIES = ["BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE"]
"""Paper size US-Letter in the Unicode Common Locale Data Repository, elsewhere A4: from memory, not verified."""
_LOCALES = {"en": "en_US", "es": "es_MX"}


def spoken(wanted: str) -> str:
    """The language to speak: the one wanted, else the system's where we have it, else English."""
    if wanted in LANGUAGES:
        return wanted
    system = _system_language()
    return system if system in LANGUAGES else "en"


def locale_of(wanted: str) -> QLocale:
    """How days and decimals are written: as this computer does, unless another language than its own was chosen."""
    if wanted not in LANGUAGES or wanted == _system_language():
        return QLocale.system()
    return QLocale(_LOCALES[wanted])


def thinks_metric() -> bool:
    """Whether this computer's country measures in g and L; one that names no country tells nothing."""
    system = QLocale.system()
    named = system.language() != QLocale.Language.C
    return named and system.measurementSystem() == QLocale.MeasurementSystem.MetricSystem


def usual_currency() -> str:
    """The sign of a new farm's prices: that of this computer's country, where it names one."""
    system = QLocale.system()
    sign = system.currencySymbol() if system.language() != QLocale.Language.C else ""
    return sign if 0 < len(sign) <= LONGEST_CURRENCY else Farm.currency


def code_of(sign: str) -> str:
    """The three letters of the currency of this computer's country, USD, where that has this sign; else blank."""
    system = QLocale.system()
    own = system.language() != QLocale.Language.C and system.currencySymbol() == sign
    return system.currencySymbol(QLocale.CurrencySymbolFormat.CurrencyIsoCode) if own else ""


def usual_paper(units: UnitSystem) -> Paper:
    """What a new farm most likely has in its printer: many countries that measure in g and L print on Letter."""
    country = QLocale.territoryToCode(QLocale().territory())  # of the language chosen, where this computer tells none
    letter = units is UnitSystem.FARM or country in _LETTER_COUNTRIES
    return Paper.LETTER if letter else Paper.A4


def on_paper(chosen: tuple[str, ...]) -> tuple[str, ...]:
    """The languages to propose for a print: those chosen, else the one of the screen."""
    if chosen in PAPER_LANGUAGES:
        return chosen
    return ("es",) if QLocale().language() == QLocale.Language.Spanish else ("en",)


class Tongue:
    """What is installed in the application; English too has a file, for its plurals."""

    def __init__(self, app: QCoreApplication) -> None:
        self._app = app
        self._installed: list[QTranslator] = []
        self.language = ""

    def speak(self, wanted: str) -> None:
        """Change the language. Windows made before keep theirs: they are made anew."""
        QLocale.setDefault(locale_of(wanted))
        language = spoken(wanted)
        if language == self.language:
            return
        for translator in self._installed:
            self._app.removeTranslator(translator)
        qt_words = QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)
        self._installed = [
            made
            for made in (
                _loaded(self._app, f"{qt_words}/qtbase_{language}.qm"),
                *(_loaded(self._app, str(resource(f"translations/{name}.qm"))) for name in _CARRIED[language]),
            )
            if made is not None
        ]
        for translator in self._installed:
            self._app.installTranslator(translator)
        self.language = language


def _system_language() -> str:
    return QLocale.system().name().split("_")[0]


def _loaded(app: QCoreApplication, path: str) -> QTranslator | None:
    translator = QTranslator(app)
    return translator if translator.load(path) else None
