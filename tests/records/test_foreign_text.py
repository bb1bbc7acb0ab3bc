"""Text from other programs as cells: letters, separators, quotes, and what is no table."""

from __future__ import annotations

import os
import re
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from wild import OLE

from calibrator.model.underway import Ended
from calibrator.records import ForeignRefused, ImportRefused
from calibrator.records.foreign import text
from calibrator.records.foreign.kinds import FileKind, kind_of
from calibrator.records.foreign.table import ForeignTable
from calibrator.records.foreign.text import TextWay, read_text, way_of

GUARD = r"\A'(?=[=+\-@\t\r\n'])"


def table(tmp_path: Path, content: bytes | str, coding: str = "utf-8") -> ForeignTable:
    file = tmp_path / "weights.csv"
    file.write_bytes(content.encode(coding) if isinstance(content, str) else content)
    assert kind_of(file) is FileKind.TEXT
    return read_text(file, way_of(file))


@pytest.mark.parametrize("coding", ["utf-8", "utf-8-sig", "utf-16", "utf-16-le", "utf-16-be", "cp1252"])
def test_letters_of_every_kind_are_read(tmp_path: Path, coding: str) -> None:
    told = "Lote;Artículo;Peso\r\n24-1;Leche en polvo, niño;10,5\r\n24-2;Añil;11,2\r\n"
    assert table(tmp_path, told, coding).rows == (
        ("Lote", "Artículo", "Peso"),
        ("24-1", "Leche en polvo, niño", "10,5"),
        ("24-2", "Añil", "11,2"),
    )


def test_letters_that_windows_has_not_are_those_of_dos(tmp_path: Path) -> None:
    assert table(tmp_path, "Läufer;über\n1;2\n", "cp850").rows[0] == ("Läufer", "über")


@pytest.mark.parametrize("separator", [",", ";", "\t", "|"])
def test_what_parts_the_cells_is_found(tmp_path: Path, separator: str) -> None:
    rows = (("lot", "weight", "note"), ("A", "10.5", "x"), ("B", "11", "y"))
    assert table(tmp_path, "".join(separator.join(row) + "\n" for row in rows)).rows == rows


def test_a_decimal_comma_parts_nothing(tmp_path: Path) -> None:
    assert table(tmp_path, "lot;weight\nA;10,5\nB;11,2\nC;9,8\n").rows[1] == ("A", "10,5")


def test_a_first_line_may_say_what_parts_the_cells_and_counts_as_a_row(tmp_path: Path) -> None:
    assert table(tmp_path, "sep=;\nlot;a,b,c\nA;1,2,3\n").rows == ((), ("lot", "a,b,c"), ("A", "1,2,3"))


def test_quotes_breaks_in_cells_ragged_and_empty_rows(tmp_path: Path) -> None:
    told = 'lot,note\n"A","two\nlines, ""so"""\n,,\n\nB\nC,d,e\n,,,\n'
    assert table(tmp_path, told).rows == (
        ("lot", "note"), ("A", 'two\nlines, "so"'), (), (), ("B",), ("C", "d", "e"),
    )  # fmt: skip


@pytest.mark.parametrize("bad", ['A,"open\nB,2\n', 'A,"x"y\n'])
def test_a_quotation_mark_out_of_place_names_its_row(tmp_path: Path, bad: str) -> None:
    with pytest.raises(ForeignRefused, match=r"weights.csv, row 2: a quotation mark"):
        table(tmp_path, "lot,weight\n" + bad)


@pytest.mark.parametrize(
    ("content", "told"),
    [
        (b"", "has nothing in it"),
        (b"\xef\xbb\xbf \r\n", "has nothing in it"),
        (b",,\n,\n , \n", "has nothing in it"),
        (b"%PDF-1.7", "neither text"),
        (b"lot,\x00\x00weight\nA,1\n" + b"x" * 40, "neither text"),
        (b"\xff\xfea\x00\x00", "neither text"),
        (b"x" * 1_000_001, "neither text"),
        (b"," * 400, "more than 300 columns"),
        (b"\n <HTML><table><tr><td>1", "web page or XML"),
        (b"<?xml version='1.0'?><?mso-application progid='x'?>", "web page or XML"),
        (OLE + b"\x00" * 600 + "Workbook".encode("utf-16-le"), "older kind"),
        (OLE + b"\x00" * 600 + "EncryptedPackage".encode("utf-16-le"), "locked with a password"),
    ],
)
def test_what_is_no_table_is_told(tmp_path: Path, content: bytes, told: str) -> None:
    with pytest.raises(ForeignRefused, match=told):
        table(tmp_path, content)


def test_a_file_that_is_not_there_is_told(tmp_path: Path) -> None:
    with pytest.raises(ImportRefused, match="No such file"):
        kind_of(tmp_path / "nowhere.csv")
    with pytest.raises(ImportRefused, match="No such file"):
        way_of(tmp_path / "nowhere.csv")
    with pytest.raises(ImportRefused, match="No such file"):
        read_text(tmp_path / "nowhere.csv", TextWay("utf-8", ","))


def test_letters_chosen_wrongly_name_the_row(tmp_path: Path) -> None:
    file = tmp_path / "weights.csv"
    file.write_bytes("lot,note\nA,niño\n".encode("cp1252"))
    with pytest.raises(ForeignRefused, match="row 1: the letters"):
        read_text(file, TextWay("utf-8", ","))


def test_too_many_rows_and_too_large_files_are_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(text, "MOST_ROWS", 3)
    with pytest.raises(ForeignRefused, match="more than 3 rows"):
        table(tmp_path, "a,b\n" * 4)
    monkeypatch.setattr("calibrator.records.foreign.kinds.LARGEST_FILE_MB", 0)
    with pytest.raises(ForeignRefused, match="larger than 0 MB"):
        table(tmp_path, "a,b\n")


def test_more_cells_than_memory_should_hold_are_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(text, "MOST_CELLS", 6)
    assert len(table(tmp_path, "a,b\n" * 3).rows) == 3
    with pytest.raises(ForeignRefused, match="more than 6 cells"):
        table(tmp_path, "a,b\n" * 4)


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="a pipe under a name is there on some systems only")
def test_what_has_no_end_is_no_table(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "weights.csv")
    with pytest.raises(ForeignRefused, match="neither text in columns nor a workbook"):
        kind_of(tmp_path / "weights.csv")


def test_reading_tells_how_far_it_is_and_can_be_given_up(tmp_path: Path) -> None:
    file = tmp_path / "long.csv"
    file.write_text("lot,weight\n" + "A,10.5\n" * 5000)
    shares: list[float] = []
    assert len(read_text(file, way_of(file), shares.append).rows) == 5001
    assert shares == sorted(shares)
    assert 0 < shares[0] <= shares[-1] <= 1

    def stop(_share: float) -> None:
        raise Ended

    with pytest.raises(Ended):
        read_text(file, way_of(file), stop)


@given(
    st.lists(
        st.lists(st.text(st.characters(exclude_categories=("Cs",), exclude_characters="\0"), max_size=8), max_size=5),
        min_size=1,
        max_size=5,
    ),
    st.sampled_from(text.SEPARATORS),
)
def test_cells_written_by_the_rules_come_back(
    tmp_path_factory: pytest.TempPathFactory, rows: list[list[str]], separator: str
) -> None:
    """RFC 4180, written by hand here: each cell in quotation marks, those in it doubled."""
    if not any(cell.strip() for row in rows for cell in row):
        return
    file = tmp_path_factory.mktemp("csv") / "any.csv"
    lines = [separator.join('"' + cell.replace('"', '""') + '"' for cell in row) for row in rows]
    file.write_bytes("\r\n".join(lines).encode() + b"\r\n")
    wanted = [[re.sub(GUARD, "", cell) if cell.strip() else None for cell in row] for row in rows]
    for row in wanted:
        while row and row[-1] is None:
            row.pop()
    while not wanted[-1]:
        wanted.pop()
    found = read_text(file, TextWay("utf-8", separator)).rows
    if "".join(lines[:1]).strip('"').startswith("sep="):
        return
    assert found == tuple(tuple(row) for row in wanted)
