"""Works out by pint what each unit of resources/units.txt is in its kind's base unit, for the program to read.

`python -m tests.make_unit_lines` writes resources/unit_lines.json. Run it when the units change; a test tells.
"""

from __future__ import annotations

import json
import logging
from fractions import Fraction
from typing import Any

from pint import UnitRegistry

from calibrator.places import resource
from calibrator.units.kinds import Kind
from calibrator.units.registry import UNITS

BASE = {
    Kind.MASS: "gram",
    Kind.VOLUME: "milliliter",
    Kind.LENGTH: "millimeter",
    Kind.TEMPERATURE: "degree_celsius",
}


def lines() -> dict[str, list[str]]:
    """For each unit as shown, the factor and the zero point, as exact fractions."""
    # pint reports redefinitions of its own groups as warnings; our file has none to report.
    logging.getLogger("pint").setLevel(logging.ERROR)
    registry: Any = UnitRegistry(str(resource("units.txt")), non_int_type=Fraction, cache_folder=None)
    told = {}
    for symbol, (kind, name, _) in UNITS.items():
        if name:
            zero, one = (Fraction(registry.Quantity(Fraction(n), name).to(BASE[kind]).magnitude) for n in (0, 1))
            told[symbol] = [str(one - zero), str(zero)]
    return told


def text() -> str:
    rows = (f" {json.dumps(symbol, ensure_ascii=False)}: {json.dumps(line)}" for symbol, line in lines().items())
    return "{\n" + ",\n".join(rows) + "\n}\n"


if __name__ == "__main__":
    (resource("units.txt").parent / "unit_lines.json").write_text(text(), "utf-8")
