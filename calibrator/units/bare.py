"""Numbers without a unit of the trade: the drops of a refractometer, a specific gravity, a division."""

from __future__ import annotations

import re
from collections.abc import Sequence

from calibrator.units.kinds import NotUnderstood
from calibrator.units.lexing import Speech, plain_text, tokens_of
from calibrator.units.numbers import amount_at
from calibrator.units.rounding import with_comma
from calibrator.values import dataclass

_THOUSAND = 1000.0
_MAYBE_THOUSANDS = re.compile(r"[-+]?[0-9]+[.,][0-9]{3}")
_PIECE = re.compile(r"[-+]?[0-9]+\s+[0-9]+/[0-9]+(?!\S)|\S+")  # 38 1/2 is one number
_COMMA_BETWEEN = re.compile(r"(\.[0-9]+),(?=[0-9]+\.[0-9])")  # 13.4,13.6 are two; 11.2,3 may be anything
_SCALE_WORDS = re.compile(r"(?<=[0-9])\s*(?:°\s*)?(?:brix|bx|sg|°)(?![a-z])\.?", re.IGNORECASE)


@dataclass(frozen=True)
class Bare:
    """What such a field takes: how it is shown, the limits (both allowed), how many numbers at most."""

    example: str
    lowest: float
    highest: float
    most: int = 1

    def shown(self, *, decimal_comma: bool = False) -> str:
        """The example as people here write it."""
        return with_comma(self.example, decimal_comma)


def read_bare(text: str, bare: Bare, *, decimal_comma: bool = False) -> tuple[float, ...]:
    """The numbers of a text, parted by spaces or semicolons (a comma too, where it stands before a space and the
    locale has a decimal point: "12, 13" are two numbers, as are "13.4,13.6"; "12,13" is one). Names of the scale
    ("11.2 Bx", "1.045 SG") are passed over. Where no thousands go in, a comma and a point are the decimal sign,
    whatever stands behind them: a specific gravity of "1,024" is 1.024.

    Raises NotUnderstood with one sentence that says what to mend, above all for more numbers than asked for.
    """
    speech = Speech(decimal_comma, bare.shown(decimal_comma=decimal_comma))
    plain = _SCALE_WORDS.sub(" ", plain_text(text, speech))
    if not decimal_comma:
        plain = re.sub(r",(?=\s)", " ", plain)
        plain = _COMMA_BETWEEN.sub(r"\1 ", plain) if bare.most > 1 else plain
    pieces = _PIECE.findall(plain.replace(";", " "))
    if not pieces:
        raise speech.problem("no_number")
    if len(pieces) > bare.most:
        raise speech.problem("one_value" if bare.most == 1 else "too_long")
    return tuple(_number(piece, bare, speech) for piece in pieces)


def bare_text(values: Sequence[float], digits: int, *, decimal_comma: bool = False) -> str:
    """Numbers as `read_bare` reads them back, to so many places at most, without idle noughts."""
    told = [f"{value:.{digits}f}" for value in values]
    plain = " ".join(text.rstrip("0").rstrip(".") if "." in text else text for text in told)
    return with_comma(plain.replace("-", "−"), decimal_comma)


def _number(piece: str, bare: Bare, speech: Speech) -> float:
    tokens = tokens_of(_with_own_sign(piece, bare, speech), speech)
    sign = -1 if tokens[0].kind == "sign" and tokens[0].text == "-" else 1
    if tokens[0].kind == "sign":
        tokens = tokens[1:]
    amount, _, after = amount_at(tokens, 0, speech)
    if after < len(tokens):
        raise speech.problem("unexpected", part=tokens[after].text)
    return _in_reach(sign * float(amount), piece, bare, speech)


def _with_own_sign(piece: str, bare: Bare, speech: Speech) -> str:
    """The decimal sign of the locale in place of either, where three digits behind it cannot be thousands."""
    if bare.highest >= _THOUSAND or _MAYBE_THOUSANDS.fullmatch(piece) is None:
        return piece
    return re.sub("[.,]", "," if speech.decimal_comma else ".", piece)


def _in_reach(value: float, piece: str, bare: Bare, speech: Speech) -> float:
    if value < bare.lowest:
        code = "negative" if value < 0 <= bare.lowest else "too_little"
        raise speech.problem(code, part=piece, limit=_limit(bare.lowest, speech))
    if value > bare.highest:
        limit, meant = _limit(bare.highest, speech), _without_its_point(value, bare)
        if meant is None:
            raise speech.problem("too_much", part=piece, limit=limit)
        raise speech.problem("too_much_meant", part=piece, limit=limit, meant=_limit(meant, speech))
    return value


def _without_its_point(value: float, bare: Bare) -> float | None:
    """What a whole number most likely is without its decimal sign: 91 for 9.1, 1045 for 1.045; None for any other."""
    if not value.is_integer():
        return None
    return next((value / ten for ten in (10.0, 100.0, 1000.0) if bare.lowest <= value / ten <= bare.highest), None)


def _limit(value: float, speech: Speech) -> str:
    return bare_text([value], 3, decimal_comma=speech.decimal_comma)


__all__ = ["Bare", "NotUnderstood", "bare_text", "read_bare"]
