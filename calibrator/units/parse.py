"""The strict parser: from a text to one exact number of one known unit, or to a sentence."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

from calibrator.units.kinds import Kind, NotUnderstood
from calibrator.units.lexing import Speech, Token, plain_text, tokens_of
from calibrator.units.numbers import amount_at
from calibrator.units.registry import GR, kind_of, symbol_of, to_base
from calibrator.values import dataclass

_TWO_UNITS = {Kind.MASS: "1 lb 3 oz", Kind.VOLUME: "2 gal 1 qt", Kind.LENGTH: "1 ft 3 in"}
# As a scale set to pounds and ounces shows a weight: 0:10.2, with or without its lb:oz. In a weight no other is meant.
_POUNDS_OUNCES = re.compile(r"([-+]? ?[0-9]+) ?: ?([0-9][0-9.,/ ]*?)(?: ?lb ?[: ] ?oz)?", re.IGNORECASE)
_CUPS = ("cup", "cups", "c", "taza", "tazas")


@dataclass(frozen=True)
class Parsed:
    """An exact value in the base unit, the unit of its last number, and whether that unit was left out."""

    value: Fraction
    unit: str
    bare: bool


@dataclass(frozen=True)
class _Part:
    amount: Fraction
    text: str
    unit: str | None


def parse(text: str, kind: Kind, unit_left_out: str, speech: Speech) -> Parsed:
    """Read one quantity; raises NotUnderstood. The value may still be of an impossible size."""
    plain = plain_text(text, speech)
    if kind is Kind.VOLUME and plain.lower() in _CUPS:
        raise speech.problem("which_cup")
    if kind is Kind.MASS and (scale := _POUNDS_OUNCES.fullmatch(plain)):
        plain = f"{scale[1]} lb {scale[2]} oz"
    tokens = tokens_of(plain, speech)
    sign, rest = _sign(tokens, speech)
    parts = _parts(rest, kind, speech)
    if kind is Kind.COUNT and (len(parts) > 1 or parts[0].unit or parts[0].amount.denominator > 1):
        raise speech.problem("not_whole")
    if len(parts) == 1:
        unit = parts[0].unit or unit_left_out
        return Parsed(to_base(sign * parts[0].amount, unit), unit, parts[0].unit is None)
    return Parsed(sign * _sum(parts, kind, speech), parts[-1].unit or "", False)


def _sign(tokens: list[Token], speech: Speech) -> tuple[int, list[Token]]:
    sign, rest = 1, tokens
    if tokens[0].kind == "sign":
        sign, rest = (-1 if tokens[0].text == "-" else 1), tokens[1:]
    if not rest or rest[0].kind not in ("number", "fraction"):
        raise speech.problem("unexpected", part=tokens[0].text)
    return sign, rest


def _parts(tokens: list[Token], kind: Kind, speech: Speech) -> list[_Part]:
    parts: list[_Part] = []
    at = 0
    while at < len(tokens):
        amount, text, at = amount_at(tokens, at, speech)
        unit = None
        if at < len(tokens) and tokens[at].kind == "unit":
            unit = _unit(tokens[at].text, kind, speech)
            at += 1
        elif at < len(tokens) and tokens[at].kind != "sign":
            raise speech.problem("numbers_in_row", part=f"{text} {tokens[at].text}")
        parts.append(_Part(amount, text, unit))
    return parts


def _unit(text: str, kind: Kind, speech: Speech) -> str | None:
    if text == "°" and kind is Kind.TEMPERATURE:
        return None
    if kind is Kind.VOLUME and text.lower().rstrip(".") in _CUPS:
        raise speech.problem("which_cup")
    symbol = symbol_of(text, gr_is_gram=speech.gr_is_gram)
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
        return speech.problem("is_volume", unit=text)
    if kind is Kind.MASS and plain in ("t", "ton", "tons", "tonne", "tonnes", "tonelada", "toneladas"):
        return speech.problem("which_ton")
    if kind is Kind.MASS and plain in (*GR, "grain", "grains"):
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
