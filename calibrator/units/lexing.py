"""From a text to its tokens: one spelling for signs that look alike, nothing hidden let through."""

from __future__ import annotations

import re
import unicodedata

from calibrator.units.kinds import NotUnderstood
from calibrator.values import dataclass

_LONGEST = 48
# Every space of the standard's class Zs, and what a paste or a scale brings along.
_SPACES = " \t\r\n\u00a0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000"

_VULGAR = {"½": "1/2", "¼": "1/4", "¾": "3/4", "⅓": "1/3", "⅔": "2/3", "⅕": "1/5", "⅖": "2/5", "⅗": "3/5"}
_VULGAR |= {"⅘": "4/5", "⅙": "1/6", "⅚": "5/6", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8", "⅒": "1/10"}
# Spaced apart, or 10¼ would become 101/4.
_PLAIN = {sign: f" {fraction} " for sign, fraction in _VULGAR.items()}
_PLAIN |= dict.fromkeys("−‐‑–", "-") | dict.fromkeys("⁄∕", "/") | dict.fromkeys("º˚", "°")
_PLAIN |= dict.fromkeys("″“”", '"') | dict.fromkeys("′‘’", "'") | {"℃": "°C", "℉": "°F", "\t": " "}
_PLAIN_TABLE = str.maketrans(_PLAIN)

_TOKEN = re.compile(
    r"""(?P<fraction> [0-9]+ \s? / \s? [0-9]+ (?! [0-9.,/]))
      | (?P<number> [0-9.,]+)
      | (?P<unit> (?:[^\W\d_]|[°%"'\#]) (?:[^\W\d_]|[°%"'\# ]|\.(?![0-9.,]))*)
      | (?P<sign> [-+])
      | (?P<space> \s+)
      | (?P<other> .)""",
    re.VERBOSE | re.DOTALL,
)
_EXPONENT = re.compile(r"[0-9.,]e[+-]?[0-9]", re.IGNORECASE)
_LABEL_CUP = re.compile(r"\blabel cups? \(?240 ?ml\)?", re.IGNORECASE)


@dataclass(frozen=True)
class Speech:
    """How the person speaks: the decimal sign of the locale, an example to answer with, and whether gr is said for
    grams, as on every metric farm; elsewhere it may be a grain (0.065 g) as well.
    """

    decimal_comma: bool
    example: str
    gr_is_gram: bool = False

    def problem(self, code: str, **params: str) -> NotUnderstood:
        """The refusal with this code, an example among its params."""
        return NotUnderstood(code, example=self.example, **params)


@dataclass(frozen=True)
class Token:
    """A piece of a text: `kind` is "number", "fraction", "unit" or "sign"."""

    kind: str
    text: str
    spaced: bool  # a space, or nothing, stands before it


def stripped_text(text: str) -> str:
    """The text without the spaces around it; hidden characters stay, to be found."""
    return text.strip(_SPACES)


def plain_text(text: str, speech: Speech) -> str:
    """The text in plain signs and single spaces; NotUnderstood where blank, too long or with hidden signs."""
    stripped = stripped_text(text)
    if not stripped:
        raise speech.problem("empty")
    if len(stripped) > _LONGEST:
        raise speech.problem("too_long")
    for sign in stripped:
        # Of what cannot be seen only the tab is meant.
        if unicodedata.category(sign) in ("Cc", "Cf", "Cs", "Co", "Cn", "Zl", "Zp") and sign != "\t":
            raise speech.problem("hidden", name=f"U+{ord(sign):04X}")
    spaced = "".join(" " if unicodedata.category(sign) == "Zs" else sign for sign in stripped)
    composed = unicodedata.normalize("NFC", spaced).translate(_PLAIN_TABLE)
    return _LABEL_CUP.sub("label cup", " ".join(composed.split()))


def tokens_of(plain: str, speech: Speech) -> list[Token]:
    """The pieces of a plain text; NotUnderstood where it has no digit or a sign that belongs nowhere."""
    if _EXPONENT.search(plain):
        raise speech.problem("exponent")
    if not re.search(r"[0-9]", plain):
        raise speech.problem("no_number")
    tokens: list[Token] = []
    spaced = True
    for match in _TOKEN.finditer(plain):
        name, found = str(match.lastgroup), match.group()
        if name == "other":
            raise speech.problem("unexpected", part=found)
        if name != "space":
            tokens.append(Token(name, found.strip(), spaced))
        spaced = found.endswith(" ")
    return tokens
