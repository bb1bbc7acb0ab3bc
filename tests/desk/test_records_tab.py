"""The records on screen: everything out, in again, as a workbook, and what is said where that cannot be."""

from __future__ import annotations

from pathlib import Path

import pytest
from answers import Answers
from openpyxl import load_workbook
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.forms.records_form import RecordsForm
from calibrator.desk.trust_words import salvaged_words
from calibrator.model import Lot
from calibrator.records import Loss, Salvaged, export_text


@pytest.fixture
def form(qtbot: QtBot, desk: Desk) -> RecordsForm:
    made = RecordsForm(desk)
    qtbot.addWidget(made)
    made.reload()
    return made


def test_everything_goes_out_and_is_found_there_already(
    form: RecordsForm, desk: Desk, answers: Answers, tmp_path: Path
) -> None:
    answers.path = tmp_path / "all.json"
    form.export_button.click()
    assert answers.path.read_text(encoding="utf-8") == export_text(desk.records)
    form.import_button.click()
    assert answers.told == [f"0 entries were brought in. {desk.records.version()} were there already."]


def test_a_workbook_of_everything(form: RecordsForm, answers: Answers, tmp_path: Path) -> None:
    answers.path = tmp_path / "all.xlsx"
    form.workbook_button.click()
    assert load_workbook(answers.path)["lots"].max_row == 2


def test_a_file_that_is_none_of_ours_is_refused_in_words(
    form: RecordsForm, desk: Desk, answers: Answers, tmp_path: Path
) -> None:
    answers.path = tmp_path / "strange.json"
    answers.path.write_text("lot;bags", encoding="utf-8")
    form.import_button.click()
    assert answers.told == ["strange.json cannot be read: it is not JSON text. Nothing was brought in."]
    assert len(desk.records.every(Lot)) == 1


def test_there_being_no_copy_is_said(form: RecordsForm, desk: Desk) -> None:
    assert form.copies.count() == 1  # that of today's opening
    (copy,) = desk.records.backups()
    copy.path.unlink()
    form.reload()
    assert form.copies.count() == 0
    assert not form.no_copies.isHidden()
    assert not form.put_back_button.isEnabled()


def test_what_is_lost_is_told_one_by_one_and_the_rest_is_in_the_file() -> None:
    lost = tuple(Loss(number, "fill", lot_number="25-0302A") for number in range(20))
    told = Salvaged(Path("farm-damaged.sqlite"), 7, 0, None, None, lost)
    assert "20 entries are lost:\n· fill of lot 25-0302A, number 0;" in salvaged_words(told)
    assert salvaged_words(told).endswith("· …")
    assert salvaged_words(told, most=None).count("·") == 20
