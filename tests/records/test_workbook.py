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
        ends = {"inf": "∞", "-inf": "−∞", "nan": "–"}
        told = pytest.approx(figure, rel=1e-14) if math.isfinite(figure) else ends[str(figure)]  # sheets keep 16 digits
        assert found[1] == told


FIGURES: tuple[tuple[tuple[float, ...], str], ...] = (
    ((372.9987256875, 364.1), "0.0"),
    ((0.5638680660430839, 0.55), "0.0000"),
    ((0.006577169721118558,), "0.000000"),
    ((22679.6185, 25000.0), "0.0"),
    ((22.5, 20.0), "General"),  # short as they are
    ((84, 80), "General"),
    ((6.916575421435909, 0.000123456), "General"),  # of two sizes: one way would make nothing of the small one
    ((math.inf, 6.5), "General"),
)


@pytest.mark.parametrize(("figures", "shown"), FIGURES)
def test_long_figures_are_shown_short_and_kept_whole(tmp_path: Path, figures: tuple[float, ...], shown: str) -> None:
    file = tmp_path / "season.xlsx"
    write_workbook([SheetOf("lots", FlatTable(("figure",), tuple((one,) for one in figures)))], file)
    cells = [cell for (cell,) in load_workbook(file)["lots"].iter_rows(min_row=2)]
    assert {cell.number_format for cell in cells} == {shown}
    assert [cell.value for cell in cells if cell.value != "∞"] == [one for one in figures if math.isfinite(one)]


def test_a_column_is_as_wide_as_what_stands_in_it_and_can_be_filtered(tmp_path: Path) -> None:
    file = tmp_path / "season.xlsx"
    moment = datetime(2026, 3, 2, 6, 30, tzinfo=UTC)
    rows: tuple[tuple[Cell, ...], ...] = ((moment, date(2026, 3, 2), "22/20 milk replacer, medicated", "x" * 300, 1.5),)
    heads = ("at", "day", "product", "note", "a heading that is longer than the figures beneath it (g/mL)")
    write_workbook([SheetOf("lots", FlatTable(heads, rows))], file)
    sheet = load_workbook(file)["lots"]
    widths = [sheet.column_dimensions[letter].width for letter in "ABCDE"]
    assert widths[0] > len("2026-03-02 06:30")  # a narrower one would be shown as ########
    assert widths[1] > len("2026-03-02")
    assert widths[2] > len("22/20 milk replacer, medicated")
    assert widths[3] == 40
    assert widths[4] > len(heads[4])
    assert (sheet.freeze_panes, sheet.auto_filter.ref) == ("A2", "A1:E2")


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
