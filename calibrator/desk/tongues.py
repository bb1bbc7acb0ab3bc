"""The language of the screen: our words and Qt's own, put in place together."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from calibrator.places import resource

LANGUAGES = ("en", "es")


def spoken(wanted: str) -> str:
    """The language to speak: the one wanted, else the system's where we have it, else English."""
    if wanted in LANGUAGES:
        return wanted
    system = QLocale.system().name().split("_")[0]
    return system if system in LANGUAGES else "en"


class Tongue:
    """What is installed in the application; English too has a file, for its plurals."""

    def __init__(self, app: QCoreApplication) -> None:
        self._app = app
        self._installed: list[QTranslator] = []
        self.language = ""

    def speak(self, wanted: str) -> None:
        """Change the language. Windows made before keep theirs: they are made anew."""
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
                _loaded(self._app, str(resource(f"translations/desk_{language}.qm"))),
            )
            if made is not None
        ]
        for translator in self._installed:
            self._app.installTranslator(translator)
        self.language = language


def _loaded(app: QCoreApplication, path: str) -> QTranslator | None:
    translator = QTranslator(app)
    return translator if translator.load(path) else None
