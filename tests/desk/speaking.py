"""Puts a language in place for a while, as the program does, and takes it away again."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QApplication

from calibrator.desk.tongues import Tongue


@contextmanager
def speaking(language: str) -> Iterator[None]:
    """Words, plurals, days and decimals in that language."""
    app = QApplication.instance()
    assert app is not None
    before = QLocale()
    tongue = Tongue(app)
    tongue.speak(language)
    try:
        yield
    finally:
        for translator in tongue._installed:
            app.removeTranslator(translator)
        QLocale.setDefault(before)
