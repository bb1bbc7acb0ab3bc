"""Checks against things outside the project, each kept as a row of one table.

A check file under tests/outside names a published source (or a reference library) beside every value. `check`
asserts and keeps the row. `python -m tests.outside.table` runs all the checks and prints the table;
CHECKS.md beside this file is that table: each check finds its own line there, and the long run finds no other.
"""

from __future__ import annotations

import json
import math
import os
from dataclasses import asdict, dataclass
from functools import cache
from pathlib import Path

FROM_MEMORY = "from memory, not verified"
COMMON_PRACTICE = "common practice, no source"
LIBRARY = "reference library"

TABLE = Path(__file__).with_name("CHECKS.md")
ROWS_TO = "CALIBRATOR_CHECK_ROWS"
"""Names a file to which the rows are added, one JSON object a line, while the table is made."""


Words = tuple[str, str, str, str]
Numbers = tuple[float, float]


def _same(kept: float, made: float) -> bool:
    return math.isclose(kept, made, rel_tol=1e-4, abs_tol=1e-9)


@dataclass(frozen=True)
class Row:
    """One line of the table."""

    quantity: str
    source: str
    expected: float
    computed: float
    tolerance: float
    note: str = ""

    def stands_in(self, kept: dict[Words, list[Numbers]]) -> bool:
        """Numbers may differ in the last figures between machines and versions of a library, words may not."""
        lines = kept.get((self.quantity, self.source, f"{self.tolerance:.2g}", self.note), [])
        return any(_same(expected, self.expected) and _same(computed, self.computed) for expected, computed in lines)


def check(quantity: str, source: str, expected: float, computed: float, tolerance: float, note: str = "") -> None:
    """Assert that `computed` is within `tolerance` (absolute, in the unit of `quantity`) of `expected`.

    `quantity` names what is compared, with its unit; `source` is the publication or library with its place
    in it; `note` is blank for a value seen in the source, else FROM_MEMORY, COMMON_PRACTICE, LIBRARY or why
    the tolerance is what it is.
    """
    row = Row(quantity, source, float(expected), float(computed), tolerance, note)
    _keep(row)
    assert math.isfinite(row.computed), row
    assert abs(row.computed - row.expected) <= tolerance, row
    if ROWS_TO not in os.environ:
        assert row.stands_in(_kept()), f"run python -m tests.outside.table: {row}"


def cells(text: str) -> list[list[str]]:
    """The cells of a Markdown table, line by line, its two head lines first."""
    return [[cell.strip() for cell in line.split("|")[1:-1]] for line in text.splitlines() if line.startswith("| ")]


@cache
def _kept() -> dict[Words, list[Numbers]]:
    """What CHECKS.md has: the numbers by the words beside them."""
    found: dict[Words, list[Numbers]] = {}
    for quantity, source, expected, computed, _, allowed, note in cells(TABLE.read_text(encoding="utf-8"))[2:]:
        found.setdefault((quantity, source, allowed, note), []).append((float(expected), float(computed)))
    return found


def _keep(row: Row) -> None:
    path = os.environ.get(ROWS_TO)
    if path:
        with Path(path).open("a", encoding="utf-8") as rows:
            rows.write(json.dumps(asdict(row), ensure_ascii=False) + "\n")
