"""Checks against things outside the project, each kept as a row of one table.

A check file under tests/outside names a published source (or a reference library) beside every value. `check`
asserts and keeps the row. `python -m tests.outside.table` runs all the checks and prints the table;
CHECKS.md beside this file is that table, and a test keeps it up to date.
"""

from __future__ import annotations

import json
import math
import os
from dataclasses import asdict, dataclass
from pathlib import Path

FROM_MEMORY = "from memory, not verified"
COMMON_PRACTICE = "common practice, no source"
LIBRARY = "reference library"

_ROWS_TO = "CALIBRATOR_CHECK_ROWS"
"""Names a file to which the rows are added, one JSON object a line, while the table is made."""


@dataclass(frozen=True)
class Row:
    """One line of the table."""

    quantity: str
    source: str
    expected: float
    computed: float
    tolerance: float
    note: str = ""


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


def _keep(row: Row) -> None:
    path = os.environ.get(_ROWS_TO)
    if path:
        with Path(path).open("a", encoding="utf-8") as rows:
            rows.write(json.dumps(asdict(row), ensure_ascii=False) + "\n")
