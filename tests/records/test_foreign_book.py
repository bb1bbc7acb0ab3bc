"""Workbooks from other programs as cells: dates of both systems, formulas never run, and files that would do harm."""

from __future__ import annotations

import zipfile
from datetime import datetime
from pathlib import Path

import pytest
from openpyxl import Workbook
from wild import NOON, book, repacked, worked_out

from calibrator.model.underway import Ended
from calibrator.records import ForeignRefused, ImportRefused
from calibrator.records.foreign import book as reader
from calibrator.records.foreign import packed
from calibrator.records.foreign.book import SheetName, read_sheet, sheets_of
from calibrator.records.foreign.kinds import FileKind, kind_of
from calibrator.records.foreign.table import CellError, Share


def test_cells_are_what_they_are(tmp_path: Path) -> None:
    file = book(
        tmp_path / "a.xlsx", [["Lot", "When", "oz", "ok"], [], ["A", NOON, 10.25, True], ["B", None, 11], [" "]]
    )
    table = read_sheet(file, "Sheet1")
    assert kind_of(file) is FileKind.BOOK
    assert table.rows == (("Lot", "When", "oz", "ok"), (), ("A", NOON, 10.25, True), ("B", None, 11))
    assert (table.from_1904, table.columns, table.formulas) == (False, 4, frozenset())


@pytest.mark.parametrize(
    ("number_format", "in_percent"),
    [("0%", True), ("0.00%", True), ('0.0" % "', False), (r"0.0\%", False), ("General", False), ("0.00", False)],
)
def test_a_number_shown_in_percent_is_known_as_such(tmp_path: Path, number_format: str, in_percent: bool) -> None:
    made = Workbook()
    for row in (["fat", "n"], [0.26, 1], [1, 2]):
        made.active.append(row)
    for cell in made.active["A"][1:]:
        cell.number_format = number_format
    made.save(tmp_path / "a.xlsx")
    rows = read_sheet(tmp_path / "a.xlsx", "Sheet").rows
    assert rows == (("fat", "n"), (0.26, 1), (1, 2))
    assert [isinstance(cell, Share) for row in rows[1:] for cell in row] == [in_percent, False] * 2


def test_a_workbook_that_counts_from_1904_tells_the_same_days(tmp_path: Path) -> None:
    file = book(tmp_path / "mac.xlsx", [["when"], [NOON]], since_1904=True)
    table = read_sheet(file, "Sheet1")
    assert table.from_1904
    assert table.rows[1] == (NOON,)


def test_sheets_are_listed_and_hidden_ones_are_known(tmp_path: Path) -> None:
    made = Workbook()
    made.active.title = "Weights"
    made.create_sheet("Prices").sheet_state = "hidden"
    made.create_sheet("Old").sheet_state = "veryHidden"
    made.save(tmp_path / "a.xlsx")
    assert sheets_of(tmp_path / "a.xlsx") == (
        SheetName("Weights", False),
        SheetName("Prices", True),
        SheetName("Old", True),
    )
    for name in ("Prices", "no such sheet"):
        with pytest.raises(ForeignRefused, match="nothing in it"):
            read_sheet(tmp_path / "a.xlsx", name)


def test_a_formula_has_its_last_value_and_is_named_one_without_is_an_error(tmp_path: Path) -> None:
    file = book(tmp_path / "a.xlsx", [["gross", "net"], [400, "=A2-120"], [410, "=A3-120"], [420]])
    table = read_sheet(worked_out(file, "A2-120", "280"), "Sheet1")
    assert table.rows[1:] == ((400, 280), (410, "=A3-120"), (420,))
    assert isinstance(table.rows[2][1], CellError)
    assert table.formulas == {(1, 1), (2, 1)}


def test_errors_of_the_spreadsheet_are_told_from_words(tmp_path: Path) -> None:
    file = book(tmp_path / "a.xlsx", [["net"], ["#DIV/0!"], ["#note"]])
    rows = read_sheet(file, "Sheet1").rows
    assert [isinstance(row[0], CellError) for row in rows] == [False, True, False]


def test_macros_are_left_alone(tmp_path: Path) -> None:
    file = book(tmp_path / "a.xlsm", [["lot"], ["A"]])
    with zipfile.ZipFile(file, "a") as package:
        package.writestr("xl/vbaProject.bin", b"Sub AutoOpen()")
    assert read_sheet(file, "Sheet1").rows == (("lot",), ("A",))


def test_wrong_dimensions_and_a_lone_cell_far_below(tmp_path: Path) -> None:
    file = book(tmp_path / "a.xlsx", [["lot"], ["A"], ["B"]])
    repacked(file, lambda _, part: part.replace(b'ref="A1:A3"', b'ref="A1:A1"'))
    assert len(read_sheet(file, "Sheet1").rows) == 3
    repacked(file, lambda _, part: part.replace(b'r="3"', b'r="900000"').replace(b'"A3"', b'"A900000"'))
    with pytest.raises(ForeignRefused, match="more than 200,000 rows"):
        read_sheet(file, "Sheet1")


def test_a_sheet_too_wide_is_told(tmp_path: Path) -> None:
    with pytest.raises(ForeignRefused, match="more than 300 columns"):
        read_sheet(book(tmp_path / "a.xlsx", [["x"] * 301]), "Sheet1")


def test_more_cells_than_memory_should_hold_are_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(reader, "MOST_CELLS", 6)
    assert len(read_sheet(book(tmp_path / "a.xlsx", [["a", "b"]] * 3), "Sheet1").rows) == 3
    with pytest.raises(ForeignRefused, match="more than 6 cells"):
        read_sheet(book(tmp_path / "b.xlsx", [["a", "b"]] * 4), "Sheet1")


def test_a_package_that_unpacks_to_too_much_is_refused_before_it_is_unpacked(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    file = book(tmp_path / "bomb.xlsx", [["lot"]])
    with zipfile.ZipFile(file, "a", zipfile.ZIP_DEFLATED) as package:
        package.writestr("xl/worksheets/sheet2.xml", b" " * (packed.SMALL + 1))
    opened: list[str] = []
    monkeypatch.setattr(zipfile.ZipFile, "open", lambda _, part: opened.append(part))
    with pytest.raises(ForeignRefused, match="would unpack to far more"):
        sheets_of(file)
    assert opened == []


def test_a_large_workbook_that_is_packed_as_usual_is_read(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(packed, "SMALL", 1)
    assert sheets_of(book(tmp_path / "a.xlsx", [["lot"]])) == (SheetName("Sheet1", False),)


@pytest.mark.parametrize("limit", ["MOST_PARTS", "LARGEST_UNPACKED"])
def test_packages_of_too_many_parts_or_too_large_are_refused(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, limit: str
) -> None:
    monkeypatch.setattr(packed, limit, 2)
    with pytest.raises(ForeignRefused, match="would unpack"):
        sheets_of(book(tmp_path / "a.xlsx", [["lot"]]))


LAUGHS = b'<!DOCTYPE lolz [<!ENTITY lol "lol"><!ENTITY lol2 "&lol;&lol;&lol;">]>'


@pytest.mark.parametrize("part", ["xl/worksheets/sheet1.xml", "xl/workbook.xml", "[Content_Types].xml"])
def test_entities_are_refused(tmp_path: Path, part: str) -> None:
    file = book(tmp_path / "a.xlsx", [["lot"]])
    repacked(file, lambda name, content: LAUGHS + content if name == part else content)
    with pytest.raises(ForeignRefused, match="XML entities"):
        sheets_of(file)


def test_entities_in_other_letters_are_refused_by_the_parser_itself(tmp_path: Path) -> None:
    file = book(tmp_path / "a.xlsx", [["lot"]])
    hidden = b'<?xml version="1.0" encoding="utf-16"?>'

    def hide(name: str, content: bytes) -> bytes:
        return (hidden + LAUGHS + content).decode().encode("utf-16") if name == "xl/workbook.xml" else content

    with pytest.raises(ForeignRefused, match="damaged"):
        sheets_of(repacked(file, hide))


def test_the_library_reads_through_the_safe_parser() -> None:
    import openpyxl

    assert openpyxl.DEFUSEDXML


@pytest.mark.parametrize(
    ("name", "told"),
    [
        ("xl/workbook.bin", "older kind"),
        ("mimetype", "older kind"),
        ("Index/Document.iwa", "older kind"),
        ("word/document.xml", "neither text"),
        ("xl/workbook.xml", "neither text"),
        ("[Content_Types].xml word/document.xml", "neither text"),
    ],
)
def test_packages_of_other_kinds_are_told(tmp_path: Path, name: str, told: str) -> None:
    file = tmp_path / "other.xlsx"
    with zipfile.ZipFile(file, "w") as package:
        for part in name.split():
            package.writestr(part, b"x")
    with pytest.raises(ForeignRefused, match=told):
        sheets_of(file)


def test_a_locked_package_is_told(tmp_path: Path) -> None:
    file = book(tmp_path / "a.xlsx", [["lot"]])
    raw = bytearray(file.read_bytes())
    at = raw.find(b"PK\x01\x02")
    raw[at + 8] |= 1  # the flag of a locked part in the list of parts
    file.write_bytes(raw)
    with pytest.raises(ForeignRefused, match="locked with a password"):
        sheets_of(file)


@pytest.mark.parametrize("keep", [40, 400, 2000])
def test_half_a_workbook_is_told(tmp_path: Path, keep: int) -> None:
    file = book(tmp_path / "a.xlsx", [["lot"]])
    file.write_bytes(file.read_bytes()[:keep])
    with pytest.raises(ForeignRefused, match="damaged"):
        sheets_of(file)


@pytest.mark.parametrize(
    "spoil", [(b't="inlineStr"><is><t>lot</t></is>', b't="s"><v>77</v>'), (b'r="A1"', b'r="!"'), (b"</row>", b"")]
)
def test_a_spoiled_sheet_is_told(tmp_path: Path, spoil: tuple[bytes, bytes]) -> None:
    file = book(tmp_path / "a.xlsx", [["lot"]])
    with pytest.raises(ForeignRefused, match="damaged"):
        read_sheet(repacked(file, lambda _, part: part.replace(*spoil)), "Sheet1")


def test_a_workbook_without_a_sheet_of_cells_is_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    made = Workbook()
    made.create_chartsheet("chart")
    del made["Sheet"]
    made.save(tmp_path / "chart.xlsx")
    with pytest.raises(ForeignRefused, match=r"nothing in it|damaged"):
        sheets_of(tmp_path / "chart.xlsx")


def test_a_file_that_goes_away_is_told(tmp_path: Path) -> None:
    with pytest.raises(ImportRefused, match="No such file"), reader._book(tmp_path / "nowhere.xlsx"):
        pass
    with pytest.raises(ImportRefused, match="No such file"):
        sheets_of(tmp_path / "nowhere.xlsx")


def test_reading_can_be_given_up(tmp_path: Path) -> None:
    file = book(tmp_path / "a.xlsx", [["lot", datetime(2026, 3, 2)]] * 1200)
    shares: list[float] = []
    read_sheet(file, "Sheet1", shares.append)
    assert shares == sorted(shares)
    assert shares[-1] <= 1

    def stop(share: float) -> None:
        if share > 0.5:
            raise Ended

    with pytest.raises(Ended):
        read_sheet(file, "Sheet1", stop)
