"""The table of outside checks is as long as it should be, and has no line that no check gives."""

from __future__ import annotations

import pytest

from tests.outside.checks import TABLE, Row, cells
from tests.outside.table import collect, markdown


def test_the_table_is_long_enough() -> None:
    rows = cells(TABLE.read_text(encoding="utf-8"))[2:]
    assert len(rows) >= 60
    assert len({row[1].split(",")[0] for row in rows}) >= 15


def test_a_line_that_has_changed_would_be_missed() -> None:
    """Or no check could tell that the table is older than itself."""
    row = Row("mass, g", "a book", 10.0, 10.001, 0.01)
    told = ("mass, g", "a book", "0.01", "")
    assert row.stands_in({told: [(9.0, 9.0), (10.0, 10.0011)]})
    assert not row.stands_in({told: [(10.0, 10.1)]})
    assert not row.stands_in({("mass, oz", *told[1:]): [(10.0, 10.001)]})


@pytest.mark.slow  # each check finds its own line in the usual run; this finds the lines left over
def test_committed_table_is_up_to_date() -> None:
    kept, made = TABLE.read_text(encoding="utf-8"), markdown(collect())
    assert len(cells(kept)) == len(cells(made)), "run python -m tests.outside.table"
