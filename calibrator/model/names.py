"""Names of things: made for the records, and tamed for whoever reads them on screen or paper."""

from __future__ import annotations

import unicodedata
from uuid import uuid4

_DROPPED = {"Cc", "Cf", "Cs", "Co", "Cn", "Zl", "Zp"}
_MOST_MARKS = 2


def new_id() -> str:
    """A name for a new thing, unique across computers."""
    return uuid4().hex


def tame(text: str, kept: str = "") -> str:
    """A text without control and direction characters, but those `kept`, and without marks that pile up.

    A direction override in one name would turn the words around it.
    """
    if text.isascii() and text.isprintable():
        return text
    tamed: list[str] = []
    marks = 0
    for sign in text:
        kind = unicodedata.category(sign)
        marks = marks + 1 if kind in ("Mn", "Me") else 0
        if kind in _DROPPED and sign not in kept:
            tamed.append(" " if sign.isspace() else "")
        elif marks <= _MOST_MARKS:
            tamed.append(sign)
    return "".join(tamed)
