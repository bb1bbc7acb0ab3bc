"""What a quantity is, and the sentences that say why a text is none."""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum
from types import MappingProxyType

from calibrator.values import dataclass


class Kind(StrEnum):
    """What a field measures. Values are held in g, mL, mm, °C, %, pieces and g/mL (shown only)."""

    MASS = "mass"
    VOLUME = "volume"
    LENGTH = "length"
    TEMPERATURE = "temperature"
    PERCENT = "percent"
    COUNT = "count"
    DENSITY = "density"


@dataclass(frozen=True, kw_only=True)
class Quantity:
    """A text that was understood.

    `value` is in the kind's base unit (g, mL, mm, °C, %, pieces). `typed` is the text as typed, without the
    spaces around it. `shown` tells it in the unit system asked for; `also`, in brackets, in the other one where it
    was typed in that. `unit` is the unit of its last number; `bare` says that the person left that unit out.
    """

    value: float
    typed: str
    shown: str
    also: str
    kind: Kind
    unit: str
    bare: bool

    def __str__(self) -> str:
        return f"{self.shown} {self.also}".rstrip()


SENTENCES: Mapping[str, str] = MappingProxyType(
    {
        "empty": "Type a value, like {example}.",
        "too_long": "That is too long for one value. Type it like {example}.",
        "hidden": "There is a hidden character in it ({name}). Clear the field and type it like {example}.",
        "no_number": "There is no number in it. Type it like {example}.",
        "unexpected": "“{part}” cannot stand there. Type it like {example}.",
        "exponent": "Write the number out in digits, like {example}.",
        "separators": "“{part}” has more than one decimal sign. Write it like {example}.",
        "unfinished": "Digits are missing after “{part}”. Type it like {example}.",
        "comma_thousands": "“{part}” can be {whole} or {point}. Write the one that is meant.",
        "point_thousands": "“{part}” can be {whole} or {comma}. Write the one that is meant.",
        "numbers_in_row": "“{part}” has two numbers in a row. Write one number, or a unit after each, like {example}.",
        "bad_fraction": "“{part}” is not a fraction that can be used. Halves to sixty-fourths can, like 1/4.",
        "improper": "“{part}” is not less than one. Leave a space between whole number and fraction, like 10 1/4.",
        "improper_meant": "“{part}” is not less than one. Was {meant} meant?",
        "improper_either": "“{part}” can be {one} or {other}. Write the one that is meant.",
        "unit_missing": "Write the unit after “{part}” too, like {example}.",
        "unit_needed": "Its unit is missing: write {part} {unit} or {part} {other}.",
        "unit_unknown": "The unit “{unit}” is not known here. Type it like {example}.",
        "is_mass": "{unit} is a weight, and something else belongs here. Type it like {example}.",
        "is_volume": "{unit} is a volume, and something else belongs here. Type it like {example}.",
        "is_length": "{unit} is a length, and something else belongs here. Type it like {example}.",
        "is_temperature": "{unit} is a temperature, and something else belongs here. Type it like {example}.",
        "is_percent": "{unit} is a share, and something else belongs here. Type it like {example}.",
        "oz_in_volume": "oz is a weight. For a volume write fl oz.",
        "fl_oz_in_mass": "fl oz is a volume. For a weight write oz.",
        "which_cup": "Three cups are in use. Write US cup (237 mL), label cup (240 mL) or metric cup (250 mL).",
        "which_ton": "Several tons are in use. Write the weight in lb or kg.",
        "grain": "gr means grain. For grams write g.",
        "foot_mark": "Write the unit as ft or in, like {example}.",
        "order": "Write the larger unit first and each unit once, like {example}.",
        "carry": "“{part}” is 1 {unit} or more. Check both numbers.",
        "whole_first": "Only a whole number can stand before a second unit, like {example}.",
        "one_value": "Type one value, like {example}.",
        "not_whole": "Type a whole number, like {example}.",
        "negative": "“{part}” is below zero, which cannot be. Type it like {example}.",
        "zero": "Zero cannot be right here. Type it like {example}.",
        "too_little": "Too little: at least {limit}.",
        "too_little_meant": "Too little: at least {limit}. Was {meant} meant?",
        "too_much": "Too much: at most {limit}.",
        "too_much_meant": "Too much: at most {limit}. Was {meant} meant?",
    }
)
"""Every way not to be understood: code → English sentence. The parts in braces are the params."""

_CLIP = 24


class NotUnderstood(ValueError):
    """A text that is no quantity of the kind asked for.

    `code` is a key of `SENTENCES`, `params` fills its braces; `str()` is the English sentence, which says
    what is wrong and what to write instead.
    """

    def __init__(self, code: str, **params: str) -> None:
        self.code = code
        self.params = {name: clip(text) for name, text in params.items()}
        super().__init__(SENTENCES[code].format(**self.params))

    def __reduce__(self) -> tuple[object, tuple[str, dict[str, str]]]:
        return _rebuilt, (self.code, self.params)


def _rebuilt(code: str, params: dict[str, str]) -> NotUnderstood:
    return NotUnderstood(code, **params)


def clip(text: str) -> str:
    """The text, cut where a sentence would grow too long."""
    return text if len(text) <= _CLIP else text[:_CLIP] + "…"
