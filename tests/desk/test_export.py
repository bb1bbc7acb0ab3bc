"""Every figure out: each sheet has its rows with units in its headings, and what the disk refuses is told."""

from __future__ import annotations

import csv
from collections.abc import Callable
from dataclasses import asdict
from datetime import date
from pathlib import Path

import pypdfium2
import pytest
from answers import Answers, at_noon
from herd import Herd
from openpyxl import load_workbook
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from calibrator.desk import season_tables
from calibrator.desk.context import Desk
from calibrator.desk.export_dialog import ExportDialog
from calibrator.desk.lessons import Lessons
from calibrator.desk.season_doors import SeasonDoors
from calibrator.desk.season_tables import season_sheets
from calibrator.desk.theme import Theme
from calibrator.model import Farm, FillWay, WeighIn
from calibrator.records import Records
from calibrator.records.importing import import_season
from calibrator.science.nested import weighed
from tests.season_fills import pool_bag_history

SHEETS = ["lots", "sign-offs", "budgets", "fills", "spot fills", "lines", "mix checks", "trials"]


@pytest.fixture
def shown(qapp: QApplication, qtbot: QtBot, records: Records, answers: Answers) -> Callable[[], ExportDialog]:
    if qapp.property("tokens") is None:
        Theme(qapp)
    Herd(records).sign("=26-100A", 0.45)

    def show() -> ExportDialog:
        desk = Desk(records, answers, clock=at_noon)
        assert desk.farm is not None
        dialog = ExportDialog(desk, desk.farm)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose, False)
        qtbot.addWidget(dialog)
        dialog.show()
        return dialog

    return show


def test_the_workbook_holds_what_the_records_hold(
    shown: Callable[[], ExportDialog], records: Records, tmp_path: Path
) -> None:
    shown().save(tmp_path / "figures")
    book = load_workbook(tmp_path / "figures.xlsx")
    assert book.sheetnames == SHEETS
    signed = records.sign_offs(records.every(Farm)[0].id)[0]
    heads, row = list(book["sign-offs"].iter_rows(values_only=True))
    told = dict(zip(heads, row, strict=True))
    assert told["lot"] == "=26-100A"
    assert told["bulk density (g/mL)"] == pytest.approx(signed.density_g_per_ml)
    assert told["density 95 % low (g/mL)"] == pytest.approx(signed.density_low_g_per_ml)
    assert book["fills"].max_row == 1 + 8
    assert book["budgets"].max_row > 3


def test_text_files_stand_beside_each_other_and_are_asked_about(
    shown: Callable[[], ExportDialog], answers: Answers, tmp_path: Path
) -> None:
    dialog = shown()
    dialog.text.setChecked(True)
    dialog.comma.setChecked(True)
    dialog.save(tmp_path / "figures.csv")
    assert sorted(one.name for one in tmp_path.glob("*.csv")) == sorted(f"figures {name}.csv" for name in SHEETS)
    with (tmp_path / "figures lots.csv").open(encoding="utf-8-sig", newline="") as read:
        (lot,) = csv.DictReader(read, delimiter=";")
    assert (lot["lot"], lot["protein (%)"]) == ("'=26-100A", "20")
    assert date.fromisoformat(lot["arrived on"])
    again = shown()
    again.text.setChecked(True)
    answers.yes = False
    again.save(tmp_path / "figures.csv")
    assert "already" in answers.asked[-1]


def test_a_place_that_is_not_there_is_told_and_the_dialog_stays(
    shown: Callable[[], ExportDialog], answers: Answers, tmp_path: Path
) -> None:
    dialog = shown()
    answers.yes = False
    dialog.save(tmp_path / "nowhere" / "figures.xlsx")
    assert "is not there any more" in answers.asked[-1]
    assert dialog.isVisible()


def test_the_sample_season_fills_every_sheet_but_the_trials(records: Records, answers: Answers) -> None:
    import_season(records, "sample_lots")
    farm = Desk(records, answers, clock=at_noon).farm
    assert farm is not None
    sheets = {one.name: one.table for one in season_sheets(records, farm)}
    assert list(sheets) == SHEETS
    assert {name for name, table in sheets.items() if not table.rows} <= {"trials"}
    with_figures = [heading for name in ("fills", "lines") for heading in sheets[name].headings if "(" in heading]
    assert with_figures == [
        "weight (g)", "line below the rim (mm)", "target (g)", "line above the floor (mm)", "line below the rim (mm)",
        "to the line (g)", "to the line, standard uncertainty (g)",
    ]  # fmt: skip


def test_the_report_is_saved_by_its_button_and_refusals_are_told(
    qapp: QApplication, qtbot: QtBot, records: Records, answers: Answers, tmp_path: Path
) -> None:
    if qapp.property("tokens") is None:
        Theme(qapp)
    herd = Herd(records)
    doors = SeasonDoors(Desk(records, answers, clock=at_noon))
    qtbot.addWidget(doors)
    answers.path = tmp_path / "season.pdf"
    doors.report_button.click()
    assert "first sign-off" in answers.told[-1]
    herd.sign("26-100A", 0.45)
    doors.report_button.click()
    assert answers.proposed[-1].name.startswith(f"{herd.farm.name} ")
    assert answers.path.read_bytes().startswith(b"%PDF")
    answers.first_paths, answers.path = [tmp_path / "nowhere" / "season.pdf"], tmp_path / "there.pdf"
    doors.report_button.click()
    assert any("is not there any more" in asked for asked in answers.asked)
    assert answers.path.read_bytes().startswith(b"%PDF")


@pytest.mark.parametrize(
    ("languages", "said"), [(("es",), "Informe de la temporada"), (("en",), "Season report"), ((), "Season report")]
)
def test_the_report_speaks_the_language_of_the_paper(
    qapp: QApplication,
    qtbot: QtBot,
    records: Records,
    answers: Answers,
    tmp_path: Path,
    languages: tuple[str, ...],
    said: str,
) -> None:
    if qapp.property("tokens") is None:
        Theme(qapp)
    Herd(records).sign("26-100A", 0.45)
    desk = Desk(records, answers, clock=at_noon)
    desk.settings.keep(paper_languages=languages)
    doors = SeasonDoors(desk)
    qtbot.addWidget(doors)
    answers.path = tmp_path / "season.pdf"
    doors.report_button.click()
    qtbot.waitUntil(answers.path.exists)
    with pypdfium2.PdfDocument(answers.path) as written:
        assert said in written[0].get_textpage().get_text_bounded()


def test_budgets_of_fewer_sign_offs_than_there_are_are_told_in_the_dialog(
    desk: Desk, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    farm = desk.farm
    assert farm is not None
    for most, told in ((0, False), (-1, True)):  # of no sign-off none is left out; of −1 one
        monkeypatch.setattr(season_tables, "MOST_BUDGETS", most)
        dialog = ExportDialog(desk, farm)
        qtbot.addWidget(dialog)
        assert any("newest" in one.text() for one in dialog.findChildren(QLabel)) is told


def test_lessons_read_once_are_those_read_for_each_weigh_in(
    tmp_path: Path, season_in: Callable[[Path], Records]
) -> None:
    with season_in(tmp_path) as records:
        farm = records.every(Farm)[0]
        lessons = Lessons(records, farm.id)
        signed = records.sign_offs(farm.id)
        earlier = {one.weigh_in_id: weighed(records.fills(one.weigh_in_id), FillWay.LEVEL) for one in signed}
        for one in signed:
            weigh_in = records.find(WeighIn, one.weigh_in_id)
            before = [s for s in signed if s.at <= weigh_in.started_at and s.id != one.id]
            taught = lessons.before(weigh_in)
            pooled = pool_bag_history([earlier[s.weigh_in_id] for s in before])
            assert (taught.history is None) == (pooled is None)
            if taught.history is not None and pooled is not None:
                assert asdict(taught.history) == pytest.approx(asdict(pooled), rel=1e-9)
            assert taught.settling.lots == sum(s.settling_u > 0 for s in before)
        assert taught.history is not None
