"""Names as they may stand on the screen: text and nothing else, however they came into the records.

A direction mark in one name would turn the figures beside it, a tip would read a tag in it, and one without an end
would push the rest off the page. The records keep every name as it was typed; only what is shown is tamed.
"""

from __future__ import annotations

import re
from functools import lru_cache

from calibrator.model.names import tame

LONGEST_WORD = 60
UNBROKEN = 20
LONGEST_LINE = 80
LONGEST_TITLE = 360  # a verdict of three sentences too
LONGEST_TEXT = 2000
_JOINERS = "\u200c\u200d"  # families of emoji and the letters of some scripts hang together by them
_KEPT = "\n" + _JOINERS
# A folder's place is read to its end: what its slashes part are words of their own.
_ENDLESS = re.compile(rf"([^\s/\\]{{{LONGEST_WORD - 1}}})[^\s/\\]{{2,}}")
_LONG = re.compile(rf"\S{{{UNBROKEN + 10},}}")
_BREAK = "\u200b"  # of no width; a line may end there


@lru_cache(maxsize=4096)
def on_screen(text: str, longest: int = LONGEST_TEXT) -> str:
    """The text without marks that turn it or pile up on it, and cut where a word or the whole has no end."""
    shown = tame(text, _KEPT)
    shown = _LONG.sub(_broken, _ENDLESS.sub(r"\1…", shown))
    return shown if len(shown) <= longest else shown[: longest - 1].rstrip() + "…"


def tip(text: str) -> str:
    """A text for the tip over a widget, which guesses at markup: told as such, so that it stays as it is."""
    from html import escape  # with the names of all signs: the first page has no tip and does not wait for them

    return f"<p style='white-space: pre-wrap'>{escape(on_screen(text))}</p>" if text else ""


def _broken(word: re.Match[str]) -> str:
    return _BREAK.join(word[0][at : at + UNBROKEN] for at in range(0, len(word[0]), UNBROKEN))
