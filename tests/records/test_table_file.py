"""Tables for other programs: read back by the standard library, no formula runs, never half a file."""

from __future__ import annotations

import csv
import errno
import io
from datetime import UTC, date, datetime
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.records.errors import TableNotWritten
from calibrator.records.table_file import (
    CsvStyle,
    Field,
    FlatTable,
    by_columns,
    csv_text,
    guarded,
    rounded,
    table_of,
    unguarded,
    write_csv,
)


def test_cells_are_told_so_that_any_program_reads_them() -> None:
    table = FlatTable(("day", "at", "solids (%)", "calves", "note"), (
        (date(2026, 3, 2), datetime(2026, 3, 2, 6, 30, tzinfo=UTC), 13.25, 80, 'said "thin", twice'),
        (None, None, None, None, ""),
    ))  # fmt: skip
    rows = list(csv.reader(io.StringIO(csv_text(table))))
    assert rows[1] == ["2026-03-02", "2026-03-02T06:30+00:00", "13.25", "80", 'said "thin", twice']
    assert rows[2] == ["", "", "", "", ""]
    assert csv_text(table).count("\r\n") == 3


@pytest.mark.parametrize("text", ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "＝1+1", "＠SUM(A1)"])
def test_no_text_runs_as_a_formula_and_figures_stay_figures(text: str) -> None:
    table = FlatTable(("note", "off (%)"), ((text, -5.5),))
    assert list(csv.reader(io.StringIO(csv_text(table), newline="")))[1] == ["'" + text, "-5.5"]


@pytest.mark.parametrize("text", ["'tis thin", "a=1", "'", "a'=1", ""])
def test_what_never_was_guarded_stays_as_it_is(text: str) -> None:
    assert (guarded(text), unguarded(text)) == (text, text)


@given(st.lists(st.tuples(st.text(st.characters(blacklist_categories=("Cs",), blacklist_characters="\0")), st.floats(
    allow_nan=False, allow_infinity=False, width=32)), max_size=6))  # fmt: skip
def test_any_text_and_figure_comes_back(rows: list[tuple[str, float]]) -> None:
    read = list(csv.reader(io.StringIO(csv_text(FlatTable(("text", "figure"), tuple(rows))), newline="")))[1:]
    for (text, figure), back in zip(rows, read, strict=True):
        assert unguarded(back[0]) == text
        assert not back[0].startswith(("=", "+", "-", "@", "\t", "\r", "\n"))
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
    with pytest.raises(TableNotWritten, match=r"The folder .*nowhere is not there any more"):
        write_csv(FlatTable(("a",)), tmp_path / "nowhere" / "x.csv")


def test_a_write_protected_file_is_not_replaced(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    file = tmp_path / "lots.csv"
    file.write_text("the one before")
    monkeypatch.setattr("os.access", lambda path, mode: False)  # to the system's master nothing is protected
    with pytest.raises(TableNotWritten, match="you may not write there"):
        write_csv(FlatTable(("a",)), file)
    assert file.read_text() == "the one before"


@pytest.mark.parametrize(
    ("fault", "told"),
    [
        (OSError(errno.ENOSPC, "full"), "The disk is full"),
        (OSError(errno.EDQUOT, "quota"), "The disk is full"),
        (PermissionError(errno.EACCES, "locked"), "another program has it open"),
        (OSError(errno.EIO, "Input/output error"), "Input/output error"),
    ],
)
def test_what_the_disk_refuses_is_told_and_the_older_file_stays(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, fault: OSError, told: str
) -> None:
    file = tmp_path / "lots.csv"
    file.write_text("older")

    def refuse(*_: object) -> None:
        raise fault

    monkeypatch.setattr("calibrator.records.table_file.os.replace", refuse)
    with pytest.raises(TableNotWritten, match=told):
        write_csv(FlatTable(("a",)), file)
    assert file.read_text() == "older"
    assert [one.name for one in tmp_path.iterdir()] == ["lots.csv"]


def test_a_decimal_comma_parts_the_cells_with_semicolons_and_leaves_words_and_days_alone() -> None:
    table = FlatTable(("day", "density (g/mL)", "note"), ((date(2026, 3, 2), 0.5125, "1.5; or so"),))
    text = csv_text(table, CsvStyle(decimal_comma=True))
    assert text.splitlines()[1] == '2026-03-02;0,5125;"1.5; or so"'


def test_the_mark_by_which_spreadsheets_know_the_letters_is_left_out_when_asked(tmp_path: Path) -> None:
    file = tmp_path / "lots.csv"
    write_csv(FlatTable(("ñ",)), file, CsvStyle(mark=False))
    assert file.read_bytes() == "ñ\r\n".encode()


def test_a_table_is_drawn_from_things_with_units_in_its_headings() -> None:
    fields = (Field[int]("length", lambda n: 2.0 * n, "mm"), Field[int]("name", str))
    assert table_of(fields, (1, 2)) == FlatTable(("length (mm)", "name"), ((2.0, "1"), (4.0, "2")))
