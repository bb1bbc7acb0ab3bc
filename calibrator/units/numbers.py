"""Exact numbers as people write them: 10.2, 10,2, 1,250.00, .5, 1/4, 10 1/4, 10-1/4."""

from __future__ import annotations

import re
from fractions import Fraction

from calibrator.units.lexing import Speech, Token

_COMMA_IN_DOUBT = re.compile(r"[0-9]*[1-9][0-9]*,[0-9]{3}")
_THOUSANDS = re.compile(r"[1-9][0-9]{0,2}[.,][0-9]{3}")
# Groups of three, parted all by one sign: with the other sign behind them, or two groups of them, no sign is in doubt.
_GROUPED = re.compile(
    r"(?P<groups>[1-9][0-9]{0,2}(?:(?P<sign>[.,])[0-9]{3})(?:(?P=sign)[0-9]{3})*)(?:(?!(?P=sign))[.,](?P<parts>[0-9]+))?"
)


def amount_at(tokens: list[Token], at: int, speech: Speech) -> tuple[Fraction, str, int]:
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


def _is_hyphen(sign: Token, after: Token) -> bool:
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
    """One decimal number.

    The other decimal sign than the locale's is taken for one as well (people and scales from elsewhere write it),
    unless it could part thousands. A comma before three digits counts only after nothing or a nought: 1234,567 may be
    1,234,567 with a comma forgotten. Where there is more than one sign, all but a last one of the other kind have to
    part thousands (1,250.00, 1.250,00), which can be read one way only.
    """
    if text[-1] in ".,":
        raise speech.problem("unfinished", part=text)
    if len(re.findall(r"[.,]", text)) > 1:
        grouped = _GROUPED.fullmatch(text)
        if grouped is None:
            raise speech.problem("separators", part=text)
        return Fraction(f"{re.sub('[.,]', '', grouped['groups'])}.{grouped['parts'] or 0}")
    if "," in text and not speech.decimal_comma and _COMMA_IN_DOUBT.fullmatch(text):
        whole, point = text.replace(",", ""), _brief(text).replace(",", ".")
        raise speech.problem("comma_thousands", part=text, whole=whole, point=point)
    if "." in text and speech.decimal_comma and _THOUSANDS.fullmatch(text):
        whole, comma = text.replace(".", ""), _brief(text).replace(".", ",")
        raise speech.problem("point_thousands", part=text, whole=whole, comma=comma)
    return Fraction(text.replace(",", "."))


def _brief(text: str) -> str:
    """A decimal number without noughts at its end: 1.250 beside 1,250 would tell nobody which is which."""
    return text.rstrip("0").rstrip(".,")
