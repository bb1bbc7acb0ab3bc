"""What the program reads of the units is what pint makes of the unit file today."""

from __future__ import annotations

from fractions import Fraction

import pytest
from pint import UnitRegistry

from calibrator.places import resource
from calibrator.units.registry import UNITS, to_base
from tests.make_unit_lines import text

# As pint's own file names them; the two cups of labels and of the metric kitchen are not in it.
ELSEWHERE = {"US cup": "cup", "label cup": "240 mL", "metric cup": "250 mL"}


def test_the_lines_are_up_to_date() -> None:
    assert resource("unit_lines.json").read_text("utf-8") == text(), "run python -m tests.make_unit_lines"


@pytest.fixture(scope="module")
def general() -> UnitRegistry:
    """pint's own file of units, which has nothing from ours."""
    return UnitRegistry(non_int_type=Fraction, cache_folder=None)


@pytest.mark.parametrize("symbol", [symbol for symbol, (_, name, _) in UNITS.items() if name and "°" not in symbol])
def test_the_factors_are_those_of_a_general_library(general: UnitRegistry, symbol: str) -> None:
    base = {"mass": "gram", "volume": "milliliter", "length": "millimeter"}[UNITS[symbol][0].value]
    other = general.Quantity(ELSEWHERE.get(symbol, UNITS[symbol][1]))
    assert float(to_base(Fraction(1), symbol)) == pytest.approx(float(other.to(base).magnitude), rel=1e-12)
