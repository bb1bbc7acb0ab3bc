"""The table of outside checks in CHECKS.md is the one that the checks give, and it is as long as it should be."""

from __future__ import annotations

import math

from tests.outside.table import TABLE, collect, markdown

EXPECTED, COMPUTED, DIFFERENCE = 2, 3, 4


def cells(text: str) -> list[list[str]]:
    return [[cell.strip() for cell in line.split("|")[1:-1]] for line in text.splitlines() if line.startswith("| ")]


def same(kept: list[str], made: list[str]) -> bool:
    """Numbers may differ in the last figures between machines and versions of a library, words may not."""
    numbers = {EXPECTED, COMPUTED}
    words = all(a == b for i, (a, b) in enumerate(zip(kept, made, strict=True)) if i not in {*numbers, DIFFERENCE})
    return words and all(math.isclose(float(kept[i]), float(made[i]), rel_tol=1e-4, abs_tol=1e-9) for i in numbers)


def test_committed_table_is_up_to_date() -> None:
    rows = collect()
    kept, made = cells(TABLE.read_text(encoding="utf-8"))[2:], cells(markdown(rows))[2:]
    assert len(kept) == len(made), "run python -m tests.outside.table"
    assert not [(a, b) for a, b in zip(kept, made, strict=True) if not same(a, b)], "run python -m tests.outside.table"
    assert len(rows) >= 60
    assert len({str(row["source"]).split(",")[0] for row in rows}) >= 15
