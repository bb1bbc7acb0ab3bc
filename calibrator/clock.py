"""The time of day as this computer tells it: one clock on every screen and on every print."""

from __future__ import annotations

from datetime import time

from PySide6.QtCore import QLocale, QTime


def clock_text(at: time) -> str:
    """Without points in "a.m.": a full stop behind it would stand twice."""
    here = QLocale()
    told = here.toString(QTime(at.hour, at.minute), QLocale.FormatType.ShortFormat)
    for half in (here.amText(), here.pmText()):
        told = told.replace(half, "".join(letter for letter in half if letter.isalnum()))
    return told.replace("\u202f", "\u00a0")
