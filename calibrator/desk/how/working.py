"""What an explanation is made of."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator import units
from calibrator.desk.speech import decimal_comma
from calibrator.values import dataclass

translate = QCoreApplication.translate

GUM = "JCGM 100:2008"
"""The guide to the expression of uncertainty in measurement: an open standard."""


@dataclass(frozen=True)
class Part:
    """One step: what it is, how it came about with this lot's figures, and what came out."""

    what: str
    working: str
    result: str


@dataclass(frozen=True)
class Working:
    """How one figure came about: in words, step by step with figures, and where the formulas stand, a line each."""

    title: str
    parts: tuple[Part, ...]
    sources: tuple[str, ...]
    words: str = ""


def figure(value: float, digits: int = 1, unit: str = "") -> str:
    """A number as people here write it."""
    return units.show_number(value, digits, unit, decimal_comma=decimal_comma())


def factor(value: float) -> str:
    """A number that others are multiplied by."""
    return units.show_factor(value, decimal_comma=decimal_comma())


def interval(low: str, high: str) -> str:
    return translate("How", "{low} to {high}").format(low=low, high=high)


def degrees(value: float) -> str:
    """Degrees of freedom; endless where the doubt itself is known for sure."""
    return "∞" if value > 9999 else figure(value)
