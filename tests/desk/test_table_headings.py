"""Headings and words of what is saved for spreadsheets, in the language of the screen."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from answers import Answers, at_noon
from herd import Herd
from mix_hands import bag_count_of, kept_check
from PySide6.QtWidgets import QApplication
from speaking import speaking

from calibrator.desk.bring_in.meanings import Meaning, meaning_of
from calibrator.desk.cell_words import line_verdicts, told
from calibrator.desk.context import Desk
from calibrator.desk.export_dialog import ExportDialog
from calibrator.desk.lot_history.model import FIELDS
from calibrator.desk.season_tables import season_sheets
from calibrator.desk.table_headings import HEADINGS, heading, sheets_in_words
from calibrator.desk.theme import Theme
from calibrator.model import FillWay, ReadingKind
from calibrator.records import Records
from calibrator.records.workbook import SheetOf
from calibrator.science.budget import Source
from calibrator.science.check import Verdict
from calibrator.science.keep import OldLineVerdict
from calibrator.science.solids import SolidsFrom
from calibrator.science.verify import LineVerdict

ALIKE = {"plan"}


@pytest.fixture(scope="module")
def sheets(tmp_path_factory: pytest.TempPathFactory, season_in: Callable[[Path], Records]) -> tuple[SheetOf, ...]:
    with season_in(tmp_path_factory.mktemp("headings")) as records:
        farm = Desk(records, Answers(), clock=at_noon).farm
        assert farm is not None
        return season_sheets(records, farm)


def test_every_heading_is_written_out_for_translation(sheets: tuple[SheetOf, ...]) -> None:
    told = {field.told for field in FIELDS} | {name for one in sheets for name in (one.name, *one.table.headings)}
    assert {one for one in told if one not in HEADINGS and one.rsplit(" (", 1)[0] not in HEADINGS} == set()


def test_in_english_nothing_changes(sheets: tuple[SheetOf, ...]) -> None:
    assert sheets_in_words(sheets) == sheets
    assert heading("budgets (newest 1000)") == "budgets (newest 1000)"
    assert heading("something else (%)") == "something else (%)"


def test_in_spanish_every_heading_is_spanish_and_none_stands_twice(sheets: tuple[SheetOf, ...]) -> None:
    with speaking("es"):
        told = sheets_in_words(sheets)
        assert heading("budgets (newest 1000)") == "cuentas de incertidumbre (las 1000 más recientes)"
        assert heading("weight (g)") == "peso (g)"
    for one, other in zip(sheets, told, strict=True):
        assert one.name != other.name
        assert len(set(other.table.headings)) == len(other.table.headings)
        same = {a for a, b in zip(one.table.headings, other.table.headings, strict=True) if a == b}
        assert same <= ALIKE
        assert one.table.rows == other.table.rows


def test_what_a_spanish_heading_means_is_known_when_it_comes_back(sheets: tuple[SheetOf, ...]) -> None:
    with speaking("es"):
        told = sheets_in_words(sheets)
    for one, other in zip(sheets, told, strict=True):
        if one.name in ("lots", "fills"):
            meant = [meaning_of(words) for words in one.table.headings]
            assert [meaning_of(words) for words in other.table.headings] == meant
            assert Meaning.LOT in meant


def test_words_in_the_cells_are_spanish_too(records: Records) -> None:
    herd = Herd(records)
    herd.sign("26-100A", 0.45)
    kept_check(herd, 1, 0.14, verdict="strong")
    bag_count_of(herd, 17, 1520)
    with speaking("es"):
        told = {one.name: [dict(zip(one.table.headings, row, strict=True)) for row in one.table.rows]
                for one in season_sheets(records, herd.farm)}  # fmt: skip
    assert (told["lots"][0]["kind of package"], told["lots"][0]["medicated"]) == ("costal", "no")
    assert {row["filled"] for row in told["fills"]} == {"al ras"}
    assert {row["of"] for row in told["budgets"]} == {"medida al ras", "densidad aparente"}
    assert {"cuánto difieren los costales", "el volumen de la medida"} <= {row["source"] for row in told["budgets"]}
    check, count = sorted(told["mix checks"], key=lambda row: str(row["kind"]), reverse=True)
    assert (check["kind"], check["verdict"]) == ("Revisión de la mezcla", "Demasiado fuerte")
    assert check["way"] == "calibración Brix"
    assert check["readings as typed"] == "refractómetro, primera cubeta: 11.2 11.4"
    assert (count["kind"], count["verdict"]) == ("Conteo de costales", "Sobra polvo")


def test_no_word_of_the_records_own_stands_in_a_cell(sheets: tuple[SheetOf, ...]) -> None:
    cells = {cell for one in sheets for row in one.table.rows for cell in row if isinstance(cell, str)}
    kept = {str(word) for words in (FillWay, Source, Verdict, LineVerdict, SolidsFrom, ReadingKind) for word in words}
    assert not {cell for cell in cells if cell in kept and "_" in cell}


def test_every_verdict_of_a_sign_off_has_its_word() -> None:
    with speaking("es"):
        said = line_verdicts()
    assert {*LineVerdict, *OldLineVerdict} <= set(said)
    assert not {words for words in said.values() if "_" in words}


def test_a_word_of_another_version_stays() -> None:
    assert told({"a": "b"}, "fermented") == "fermented"


def test_a_spanish_screen_saves_spanish_headings(
    qapp: QApplication, records: Records, answers: Answers, tmp_path: Path
) -> None:
    if qapp.property("tokens") is None:
        Theme(qapp)
    herd = Herd(records)
    herd.sign("26-100A", 0.45)
    with speaking("es"):
        dialog = ExportDialog(Desk(records, answers, clock=at_noon), herd.farm)
        dialog.text.setChecked(True)
        dialog.save(tmp_path / "cifras.csv")
    assert (tmp_path / "cifras lotes.csv").read_text("utf-8-sig").startswith("lote")
