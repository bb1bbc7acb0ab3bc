"""Literals that are said elsewhere by variable, marked so that they are found for translation."""

from __future__ import annotations


def QT_TRANSLATE_NOOP(_context: str, literal: str) -> str:
    """Marks a phrase for the gatherer of words, which knows it by this name; Qt's own tells no type."""
    return literal
