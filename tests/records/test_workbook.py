"""Workbooks: read back by the library for them and by a plain look into the file; no text runs as a formula."""

from __future__ import annotations

import math
import zipfile
from datetime import UTC, date, datetime
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from openpyxl import load_workbook

from calibrator.records import workbook
from calibrator.records.errors import TableNotWritten
from calibrator.records.table_file import Cell, FlatTable
from calibrator.records.workbook import SheetOf, write_workbook

MOMENTS = st.datetimes(timezones=st.just(UTC))


def read(file: Path, name: str) -> list[tuple[object, ...]]:
    return list(load_workbook(file)[name].iter_rows(values_only=True))


def test_figures_days_and_moments_come_back_as_such(tmp_path: Path) -> None:
    file = tmp_path / "season.xlsx"
    rows: tuple[tuple[Cell, ...], ...] = ((0.5125, date(2026, 3, 2), datetime(2026, 3, 2, 6, 30, tzinfo=UTC), "Añil"),)
    write_workbook([SheetOf("lots", FlatTable(("density (g/mL)", "day", "at", "name"), rows))], file)
    head, row = read(file, "lots")
    assert head == ("density (g/mL)", "day", "at", "name")
    assert row == (0.5125, datetime(2026, 3, 2), datetime(2026, 3, 2, 6, 30), "Añil")


@pytest.mark.parametrize("text", ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", '=HYPERLINK("a")'])
def test_no_text_is_a_formula(tmp_path: Path, text: str) -> None:
    file = tmp_path / "season.xlsx"
    write_workbook([SheetOf("lots", FlatTable(("=head",), ((text,),)))], file)
    with zipfile.ZipFile(file) as packed:
        assert b"<f>" not in packed.read("xl/worksheets/sheet1.xml")
    cell = load_workbook(file)["lots"]["A2"]
    assert (cell.value, cell.data_type, cell.quotePrefix) == (text, "s", True)


@settings(max_examples=25)
@given(
    st.lists(st.tuples(st.text(), st.floats(width=32), st.dates(), st.datetimes(timezones=st.just(UTC))), max_size=4)
)
def test_any_cell_is_written_so_that_the_file_opens(
    tmp_path_factory: pytest.TempPathFactory, rows: list[tuple[Cell, ...]]
) -> None:
    file = tmp_path_factory.mktemp("book") / "any.xlsx"
    write_workbook([SheetOf("any", FlatTable(("text", "figure", "day", "at"), tuple(rows)))], file)
    back = read(file, "any")[1:]
    assert len(back) == len(rows)
    for row, found in zip(rows, back, strict=True):
        figure = row[1]
        assert isinstance(figure, float)
        told = pytest.approx(figure, rel=1e-14) if math.isfinite(figure) else str(figure)  # sheets keep 16 digits
        assert found[1] == told


def test_a_sheet_that_is_full_goes_on_in_another(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(workbook, "MOST_ROWS", 3)
    file = tmp_path / "season.xlsx"
    write_workbook([SheetOf("fills", FlatTable(("n",), tuple((float(n),) for n in range(5))))], file)
    assert load_workbook(file).sheetnames == ["fills", "fills 2", "fills 3"]
    assert read(file, "fills 3") == [("n",), (4,)]


def test_names_that_a_sheet_may_not_have_are_mended(tmp_path: Path) -> None:
    file = tmp_path / "season.xlsx"
    write_workbook([SheetOf("lots/bags: all [of them] in the season", FlatTable(("a",)))], file)
    assert load_workbook(file).sheetnames == ["lots bags  all  of them  in the"]


def test_a_place_that_is_not_there_is_told(tmp_path: Path) -> None:
    with pytest.raises(TableNotWritten, match="Choose another place"):
        write_workbook([SheetOf("a", FlatTable(("a",)))], tmp_path / "nowhere" / "a.xlsx")
