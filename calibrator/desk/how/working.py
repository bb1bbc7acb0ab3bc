"""What an explanation is made of."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

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
    """How one figure came about; `sources` says where the formulas stand, a line each."""

    title: str
    parts: tuple[Part, ...]
    sources: tuple[str, ...]


def grams(mass_g: float, digits: int = 1) -> str:
    return f"{mass_g:.{digits}f} g"


def as_minus(text: str) -> str:
    """The real minus sign where a figure is below zero."""
    return text.replace("-", "−")


def percent(share: float, digits: int = 1) -> str:
    return f"{100 * share:.{digits}f} %"


def degrees(value: float) -> str:
    """Degrees of freedom; endless where the doubt itself is known for sure."""
    return "∞" if value > 9999 else f"{value:.1f}"
