"""Headings of what is saved for spreadsheets, in the language of the screen."""

from __future__ import annotations

from pathlib import Path

import pytest
from answers import Answers, at_noon
from PySide6.QtWidgets import QApplication
from speaking import speaking

from calibrator.desk.bring_in.meanings import Meaning, meaning_of
from calibrator.desk.context import Desk
from calibrator.desk.export_dialog import ExportDialog
from calibrator.desk.lot_history.model import FIELDS
from calibrator.desk.season_tables import season_sheets
from calibrator.desk.table_headings import HEADINGS, heading, sheets_in_words
from calibrator.desk.theme import Theme
from calibrator.records import Records, import_season
from calibrator.records.workbook import SheetOf

ALIKE = {"plan"}


@pytest.fixture
def sheets(records: Records) -> tuple[SheetOf, ...]:
    import_season(records, "sample_lots")
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
        assert heading("budgets (newest 1000)") == "cuentas de incertidumbre (las 1000 más nuevas)"
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


def test_a_spanish_screen_saves_spanish_headings(
    qapp: QApplication, records: Records, answers: Answers, tmp_path: Path
) -> None:
    if qapp.property("tokens") is None:
        Theme(qapp)
    import_season(records, "sample_lots")
    desk = Desk(records, answers, clock=at_noon)
    assert desk.farm is not None
    with speaking("es"):
        dialog = ExportDialog(desk, desk.farm)
        dialog.text.setChecked(True)
        dialog.save(tmp_path / "cifras.csv")
    assert (tmp_path / "cifras lotes.csv").read_text("utf-8-sig").startswith("lote")
