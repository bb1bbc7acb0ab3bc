"""Tables for other programs: read back by the standard library, no formula runs, never half a file."""

from __future__ import annotations

import csv
import io
from datetime import UTC, date, datetime
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.records.table_file import FlatTable, by_columns, csv_text, rounded, write_csv


def test_cells_are_told_so_that_any_program_reads_them() -> None:
    table = FlatTable(("day", "at", "solids (%)", "calves", "note"), (
        (date(2026, 3, 2), datetime(2026, 3, 2, 6, 30, tzinfo=UTC), 13.25, 80, 'said "thin", twice'),
        (None, None, None, None, ""),
    ))  # fmt: skip
    rows = list(csv.reader(io.StringIO(csv_text(table))))
    assert rows[1] == ["2026-03-02", "2026-03-02T06:30+00:00", "13.25", "80", 'said "thin", twice']
    assert rows[2] == ["", "", "", "", ""]
    assert csv_text(table).count("\r\n") == 3


@pytest.mark.parametrize("text", ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\n=1"])
def test_no_text_runs_as_a_formula_and_figures_stay_figures(text: str) -> None:
    table = FlatTable(("note", "off (%)"), ((text, -5.5),))
    assert list(csv.reader(io.StringIO(csv_text(table), newline="")))[1] == ["'" + text, "-5.5"]


@given(st.lists(st.tuples(st.text(st.characters(blacklist_categories=("Cs",), blacklist_characters="\0")), st.floats(
    allow_nan=False, allow_infinity=False, width=32)), max_size=6))  # fmt: skip
def test_any_text_and_figure_comes_back(rows: list[tuple[str, float]]) -> None:
    read = list(csv.reader(io.StringIO(csv_text(FlatTable(("text", "figure"), tuple(rows))), newline="")))[1:]
    for (text, figure), back in zip(rows, read, strict=True):
        assert back[0].removeprefix("'") == text.removeprefix("'")
        assert float(back[1]) == pytest.approx(figure, rel=1e-11)


def test_rows_may_leave_columns_out_but_not_invent_any() -> None:
    assert by_columns(("a", "b"), [{"b": 1.0}]).rows == ((None, 1.0),)
    with pytest.raises(KeyError, match="c"):
        by_columns(("a", "b"), [{"c": 1.0}])
    with pytest.raises(ValueError, match="1 cells under 2"):
        FlatTable(("a", "b"), (("x",),))
    assert (rounded(1.23456, 2), rounded(None, 2)) == (1.23, None)


def test_a_file_is_written_whole_or_not_at_all(tmp_path: Path) -> None:
    file = tmp_path / "Wägungen.csv"
    write_csv(FlatTable(("°Brix",), ((11.2,),)), file)
    assert file.read_bytes() == "\ufeff°Brix\r\n11.2\r\n".encode()
    spoiled = FlatTable(("a",), (("\ud800",),))
    with pytest.raises(UnicodeEncodeError):
        write_csv(spoiled, file)
    assert file.read_bytes() == "\ufeff°Brix\r\n11.2\r\n".encode()
    assert [one.name for one in tmp_path.iterdir()] == [file.name]
    with pytest.raises(OSError, match="nowhere"):
        write_csv(FlatTable(("a",)), tmp_path / "nowhere" / "x.csv")
