"""Reads back what a working tells: its figures in one set of units, and what it tells twice."""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest

from calibrator.desk.how.working import Part, Working
from calibrator.model import UnitSystem
from calibrator.units import Kind, read

OZ_G, QT_ML = 28.349523125, 946.352946
IN_G_AND_ML = {
    "oz/qt": OZ_G / QT_ML, "fl oz": QT_ML / 32, "oz": OZ_G, "qt": QT_ML, "kg": 1000.0, "L": 1000.0,
}  # fmt: skip
_NUMBER = re.compile(r"([−+]?\d+(?:\.\d+)?)(?: (oz/qt|fl oz|oz|qt|kg\b(?! °)|L\b))?")
_FROM_TO = re.compile(r"(\d+\.\d+) to (\d+\.\d+) (oz/qt|oz)")
_AGAIN = re.compile(r"(\d+(?:\.\d+)? (?:oz/qt|oz|qt|in)) \((\d[^()]*)\)")
_KINDS = (
    ("mm", Kind.LENGTH, 0.07), ("gal", Kind.VOLUME, 170.0), ("fl oz", Kind.VOLUME, 0.25),
    ("qt", Kind.VOLUME, 6.0), ("lb", Kind.MASS, 3.2), ("L", Kind.VOLUME, 50.0), ("g", Kind.MASS, 2.0),
)  # fmt: skip
"""How what is told again ends, and how far rounding may bring the two apart."""


def figures(text: str) -> list[float]:
    """The numbers in a text, weights in g, volumes in mL, densities in g/mL; not what is told again in brackets."""
    found = _NUMBER.findall(_FROM_TO.sub(r"\1 \3 to \2 \3", _AGAIN.sub(r"\1", text)))
    return [float(number.replace("−", "-")) * IN_G_AND_ML.get(unit, 1.0) for number, unit in found]


def part(working: Working, what: str) -> Part:
    return next(one for one in working.parts if one.what == what)


def agree_with_what_is_told_again(workings: tuple[Working, ...]) -> int:
    """How many amounts are told twice; each time both are the same."""
    twice = [pair for working in workings for one in working.parts for pair in _twice(one)]
    for told, again in twice:
        if again.endswith("g/mL"):
            assert figures(told) == pytest.approx(figures(again), abs=7e-5)
            continue
        _, kind, apart = next(each for each in _KINDS if each[0] in again)
        one, other = (read(text, kind, UnitSystem.FARM).value for text in (told, again))
        assert one == pytest.approx(other, abs=apart), (told, again)
    return len(twice)


def _twice(one: Part) -> Iterator[tuple[str, str]]:
    for text in (one.working, one.result):
        yield from _AGAIN.findall(text)
