"""The strict parser: from a text to one exact number of one known unit, or to a sentence."""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import pairwise

from calibrator.units.kinds import Kind, NotUnderstood
from calibrator.units.registry import kind_of, symbol_of, to_base

_LONGEST = 48
# Every space of the standard's class Zs, and what a paste or a scale brings along.
_SPACES = (
    " \t\r\n\u00a0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000"
)
_TWO_UNITS = {Kind.MASS: "1 lb 3 oz", Kind.VOLUME: "2 gal 1 qt", Kind.LENGTH: "1 ft 3 in"}
_CUPS = ("cup", "cups", "c", "taza", "tazas")

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
_THOUSANDS = re.compile(r"[1-9][0-9]{0,2}[.,][0-9]{3}")


@dataclass(frozen=True)
class Parsed:
    """An exact value in the base unit, the unit of its last number, and whether that unit was left out."""

    value: Fraction
    unit: str
    bare: bool


@dataclass(frozen=True)
class Speech:
    """How the person speaks: the decimal sign of the locale, and an example to answer with."""

    decimal_comma: bool
    example: str

    def problem(self, code: str, **params: str) -> NotUnderstood:
        return NotUnderstood(code, example=self.example, **params)


@dataclass(frozen=True)
class _Token:
    kind: str
    text: str
    spaced: bool  # a space, or nothing, stands before it


@dataclass(frozen=True)
class _Part:
    amount: Fraction
    text: str
    unit: str | None


def parse(text: str, kind: Kind, unit_left_out: str, speech: Speech) -> Parsed:
    """Read one quantity; raises NotUnderstood. The value may still be of an impossible size."""
    plain = _plain(text, speech)
    if kind is Kind.VOLUME and plain.lower() in _CUPS:
        raise speech.problem("which_cup")
    tokens = _tokens(plain, speech)
    sign, rest = _sign(tokens, speech)
    parts = _parts(rest, kind, speech)
    if kind is Kind.COUNT and (len(parts) > 1 or parts[0].unit or parts[0].amount.denominator > 1):
        raise speech.problem("not_whole")
    if len(parts) == 1:
        unit = parts[0].unit or unit_left_out
        return Parsed(to_base(sign * parts[0].amount, unit), unit, parts[0].unit is None)
    return Parsed(sign * _sum(parts, kind, speech), parts[-1].unit or "", False)


def stripped_text(text: str) -> str:
    """The text without the spaces around it; hidden characters stay, to be found."""
    return text.strip(_SPACES)


def _plain(text: str, speech: Speech) -> str:
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


def _tokens(plain: str, speech: Speech) -> list[_Token]:
    if _EXPONENT.search(plain):
        raise speech.problem("exponent")
    if not re.search(r"[0-9]", plain):
        raise speech.problem("no_number")
    tokens: list[_Token] = []
    spaced = True
    for match in _TOKEN.finditer(plain):
        name, found = str(match.lastgroup), match.group()
        if name == "other":
            raise speech.problem("unexpected", part=found)
        if name != "space":
            tokens.append(_Token(name, found.strip(), spaced))
        spaced = found.endswith(" ")
    return tokens


def _sign(tokens: list[_Token], speech: Speech) -> tuple[int, list[_Token]]:
    sign, rest = 1, tokens
    if tokens[0].kind == "sign":
        sign, rest = (-1 if tokens[0].text == "-" else 1), tokens[1:]
    if not rest or rest[0].kind not in ("number", "fraction"):
        raise speech.problem("unexpected", part=tokens[0].text)
    return sign, rest


def _parts(tokens: list[_Token], kind: Kind, speech: Speech) -> list[_Part]:
    parts: list[_Part] = []
    at = 0
    while at < len(tokens):
        amount, text, at = _amount(tokens, at, speech)
        unit = None
        if at < len(tokens) and tokens[at].kind == "unit":
            unit = _unit(tokens[at].text, kind, speech)
            at += 1
        elif at < len(tokens) and tokens[at].kind != "sign":
            raise speech.problem("numbers_in_row", part=f"{text} {tokens[at].text}")
        parts.append(_Part(amount, text, unit))
    return parts


def _amount(tokens: list[_Token], at: int, speech: Speech) -> tuple[Fraction, str, int]:
    """One number: 10.2, 1/4, 10 1/4 or 10-1/4; with its text and the place after it."""
    token = tokens[at]
    if token.kind == "fraction":
        return _fraction(token.text, speech), token.text, at + 1
    if token.kind != "number" or (token.text[0] in ".," and not token.spaced):
        raise speech.problem("unexpected", part=token.text)
    follows = [following.kind for following in tokens[at + 1 : at + 3]]
    if follows == ["sign", "fraction"] and _is_hyphen(tokens[at + 1], tokens[at + 2]):
        return (
            _mixed(token.text, "-", tokens[at + 2].text, speech),
            f"{token.text}-{tokens[at + 2].text}",
            at + 3,
        )
    if follows[:1] == ["fraction"]:
        return (
            _mixed(token.text, " ", tokens[at + 1].text, speech),
            f"{token.text} {tokens[at + 1].text}",
            at + 2,
        )
    return _decimal(token.text, speech), token.text, at + 1


def _is_hyphen(sign: _Token, after: _Token) -> bool:
    return sign.text == "-" and not sign.spaced and not after.spaced


def _mixed(whole: str, joint: str, fraction: str, speech: Speech) -> Fraction:
    if not whole.isdecimal():
        raise speech.problem("numbers_in_row", part=f"{whole}{joint}{fraction}")
    return int(whole) + _fraction(fraction, speech)


def _fraction(text: str, speech: Speech) -> Fraction:
    top, bottom = (int(number) for number in text.split("/"))
    if top == 0 or not 2 <= bottom <= 64:
        raise speech.problem("bad_fraction", part=text)
    if top >= bottom:
        raise speech.problem("improper", part=text)
    return Fraction(top, bottom)


def _decimal(text: str, speech: Speech) -> Fraction:
    """One decimal number, by the locale's decimal sign.

    Where the comma is the decimal sign, a point is taken for one as well (scales and keypads send it),
    unless it could part thousands.
    """
    separators = re.findall(r"[.,]", text)
    if len(separators) > 1:
        raise speech.problem("separators", part=text)
    if text[-1] in ".,":
        raise speech.problem("unfinished", part=text)
    if "," in text and not speech.decimal_comma:
        code = "comma_thousands" if _THOUSANDS.fullmatch(text) else "comma"
        raise speech.problem(code, part=text, whole=text.replace(",", ""), point=text.replace(",", "."))
    if "." in text and speech.decimal_comma and _THOUSANDS.fullmatch(text):
        whole, comma = text.replace(".", ""), text.replace(".", ",")
        raise speech.problem("point_thousands", part=text, whole=whole, comma=comma)
    return Fraction(text.replace(",", "."))


def _unit(text: str, kind: Kind, speech: Speech) -> str | None:
    if text == "°" and kind is Kind.TEMPERATURE:
        return None
    symbol = symbol_of(text)
    if symbol is None:
        raise _unknown(text, kind, speech)
    found = kind_of(symbol)
    if found is kind:
        return symbol
    if kind is Kind.COUNT:
        raise speech.problem("not_whole")
    confusion = {("oz", Kind.VOLUME): "oz_in_volume", ("fl oz", Kind.MASS): "fl_oz_in_mass"}
    raise speech.problem(confusion.get((symbol, kind), f"is_{found}"), unit=text)


def _unknown(text: str, kind: Kind, speech: Speech) -> NotUnderstood:
    plain = text.lower().rstrip(".")
    if kind is Kind.COUNT:
        return speech.problem("not_whole")
    if plain in _CUPS:
        return speech.problem("which_cup" if kind is Kind.VOLUME else "is_volume", unit=text)
    if kind is Kind.MASS and plain in ("t", "ton", "tons", "tonne", "tonnes", "tonelada", "toneladas"):
        return speech.problem("which_ton")
    if kind is Kind.MASS and plain in ("gr", "grs", "grain", "grains"):
        return speech.problem("grain")
    if kind is Kind.LENGTH and set(plain) <= set("'\""):
        return speech.problem("foot_mark")
    return speech.problem("unit_unknown", unit=text)


def _sum(parts: list[_Part], kind: Kind, speech: Speech) -> Fraction:
    """A value told in several units: 1 lb 3.4 oz, 2 gal 1 qt. Each part is below one of the unit before."""
    if kind not in _TWO_UNITS:
        raise speech.problem("one_value")
    speech = replace(speech, example=_TWO_UNITS[kind])
    for part in parts:
        if part.unit is None:
            raise speech.problem("unit_missing", part=part.text)
    for larger, smaller in pairwise(parts):
        one = to_base(Fraction(1), larger.unit or "")
        if one <= to_base(Fraction(1), smaller.unit or ""):
            raise speech.problem("order")
        if larger.amount.denominator > 1:
            raise speech.problem("whole_first")
        if to_base(smaller.amount, smaller.unit or "") >= one:
            raise speech.problem("carry", part=f"{smaller.text} {smaller.unit}", unit=larger.unit or "")
    return sum((to_base(part.amount, part.unit or "") for part in parts), Fraction(0))
