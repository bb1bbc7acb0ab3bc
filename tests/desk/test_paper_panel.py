"""Preview, PDF and printer: what leaves the program bears a number that the records know."""

from __future__ import annotations

from pathlib import Path

import pypdfium2
import pytest
from answers import Answers, at_noon
from herd import OZ_G, Herd, group
from keys import RAIL, mnemonics, nameless
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.label_cut import Cut
from calibrator.desk.pages.paper import PaperPanel
from calibrator.desk.theme import Theme
from calibrator.model import Box, Paper, PrintKind, SignOff
from calibrator.records import Records

TEN_OZ_LEVEL = 10 * OZ_G / 665.9


@pytest.fixture
def herd(records: Records) -> Herd:
    return Herd(records)


@pytest.fixture
def panel(qapp: QApplication, qtbot: QtBot, herd: Herd, answers: Answers) -> PaperPanel:
    if qapp.property("tokens") is None:
        Theme(qapp)
    desk = Desk(herd.records, answers, clock=at_noon)
    desk.initials = "AB"
    made = PaperPanel(desk)
    desk.changed.connect(made.reload)
    qtbot.addWidget(made)
    made.resize(780, 620)
    made.show()
    return made


@pytest.fixture
def signed(herd: Herd) -> SignOff:
    return herd.sign("25-1103C", TEN_OZ_LEVEL)


def text_of(path: Path) -> str:
    with pypdfium2.PdfDocument(path) as document:
        return " ".join(page.get_textpage().get_text_bounded() for page in document)


def size_mm(path: Path) -> tuple[float, float]:
    with pypdfium2.PdfDocument(path) as document:
        width, height = document[0].get_size()
    return width / 72 * 25.4, height / 72 * 25.4


def test_a_saved_chart_bears_the_number_that_is_kept(
    panel: PaperPanel, herd: Herd, signed: SignOff, answers: Answers, tmp_path: Path, qtbot: QtBot
) -> None:
    plan = herd.plan("Morning milk", group(10))
    panel.show_plan(plan.id)
    assert "no. 1" in panel.number.text()
    answers.path = tmp_path / "chart.pdf"
    with qtbot.waitSignal(panel.desk.said) as said:
        panel.save_button.click()
    (kept,) = herd.records.prints(herd.farm.id)
    assert (kept.number, kept.kind, kept.plan_id) == (1, PrintKind.WALL_CHART, plan.id)
    assert (kept.sign_off_id, kept.lot_id, kept.by) == (signed.id, signed.lot_id, "AB")
    assert said.args == ["Saved as chart.pdf, no. 1."]
    text = text_of(answers.path)
    assert "Morning milk" in text
    assert "ONLY FOR THIS LOT" in text
    assert size_mm(answers.path) == pytest.approx((215.9, 279.4), abs=0.5)


def test_the_next_one_replaces_it_and_says_so(
    panel: PaperPanel, herd: Herd, signed: SignOff, answers: Answers, tmp_path: Path
) -> None:
    plan = herd.plan("Morning milk", group(10))
    herd.print(PrintKind.WALL_CHART, signed, plan_id=plan.id)
    panel.show_plan(plan.id)
    assert "no. 2" in panel.number.text()
    assert "replaces no. 1" in panel.number.text()
    answers.path = tmp_path / "chart"
    panel.save_button.click()
    assert herd.records.prints(herd.farm.id)[-1].replaces == 1
    assert (tmp_path / "chart.pdf").exists()
    assert sorted(path.name for path in tmp_path.glob("chart*")) == ["chart.pdf"]


def test_a_file_that_cannot_be_written_takes_no_number(
    panel: PaperPanel, herd: Herd, signed: SignOff, answers: Answers, tmp_path: Path
) -> None:
    panel.show_plan(herd.plan().id)
    answers.path = tmp_path / "no such folder" / "chart.pdf"
    panel.save_button.click()
    assert len(answers.told) == 1
    assert herd.records.prints(herd.farm.id) == []


def test_a_store_that_cannot_be_written_leaves_no_file(
    qapp: QApplication, qtbot: QtBot, herd: Herd, signed: SignOff, answers: Answers, tmp_path: Path
) -> None:
    plan = herd.plan()
    herd.records.close()
    with Records.open(str(tmp_path / "records.sqlite"), read_only=True) as looking:
        panel = PaperPanel(Desk(looking, answers, clock=at_noon))
        qtbot.addWidget(panel)
        panel.show_plan(plan.id)
        panel.save_to(tmp_path / "chart.pdf")
        assert len(answers.told) == 1
        assert not (tmp_path / "chart.pdf").exists()
        panel.close()


def test_printing_is_kept_too(panel: PaperPanel, herd: Herd, signed: SignOff, tmp_path: Path) -> None:
    panel.show_plan(herd.plan("Morning milk", group(10)).id)
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "printed.pdf"))
    panel.print_to(printer)
    assert [sheet.number for sheet in herd.records.prints(herd.farm.id)] == [1]
    assert "Morning milk" in text_of(tmp_path / "printed.pdf")


def test_labels_are_numbered_scoop_by_scoop(
    panel: PaperPanel, herd: Herd, signed: SignOff, answers: Answers, tmp_path: Path
) -> None:
    blue = herd.scoop("Blue & tall", Box(length_mm=90, width_mm=80, height_mm=92))
    herd.sign("", TEN_OZ_LEVEL, blue, herd.lot_of(signed))
    panel.show_lot(signed.lot_id)
    assert [box.text() for box in panel.choice.boxes] == ["Red scoop", "Blue && tall"]
    answers.path = tmp_path / "labels.pdf"
    panel.save_button.click()
    made = herd.records.prints(herd.farm.id)
    assert [(sheet.number, sheet.scoop_id) for sheet in made] == [(1, herd.red.id), (2, blue.id)]
    assert all(sheet.kind is PrintKind.SCOOP_LABEL for sheet in made)
    assert "Red scoop" in text_of(answers.path)


def test_a_scoop_left_out_has_no_label(
    panel: PaperPanel, herd: Herd, signed: SignOff, answers: Answers, tmp_path: Path
) -> None:
    blue = herd.scoop("Blue scoop", Box(length_mm=90, width_mm=80, height_mm=92))
    herd.sign("", TEN_OZ_LEVEL, blue, herd.lot_of(signed))
    panel.show_lot(signed.lot_id)
    panel.choice.boxes[0].click()
    answers.path = tmp_path / "labels.pdf"
    panel.save_button.click()
    assert [sheet.scoop_id for sheet in herd.records.prints(herd.farm.id)] == [blue.id]
    panel.choice.boxes[1].click()
    assert not panel.save_button.isEnabled()
    assert "at least one scoop" in panel.trouble.text()


def test_a_lot_sheet_bears_a_number_and_replaces_the_one_before(
    panel: PaperPanel, herd: Herd, signed: SignOff, answers: Answers, tmp_path: Path
) -> None:
    panel.show_lot(signed.lot_id)
    panel.choice.sheet.click()
    answers.path = tmp_path / "sheet.pdf"
    for number in (1, 2):
        assert f"no. {number}" in panel.number.text()
        panel.save_button.click()
    made = herd.records.prints(herd.farm.id)
    assert [(sheet.number, sheet.kind, sheet.scoop_id, sheet.replaces) for sheet in made] == [
        (1, PrintKind.LOT_SHEET, herd.red.id, None),
        (2, PrintKind.LOT_SHEET, herd.red.id, 1),
    ]
    assert "Windy Hollow" in text_of(answers.path)
    assert "Sheet 2 (replaces 1)" in text_of(answers.path)


def test_without_a_sign_off_it_says_what_to_do(panel: PaperPanel, herd: Herd) -> None:
    panel.show_plan(herd.plan().id)
    assert "sign it off" in panel.trouble.text()
    assert not panel.print_button.isEnabled()
    assert panel.document is None


def test_paper_and_language_are_chosen(
    panel: PaperPanel, herd: Herd, signed: SignOff, answers: Answers, tmp_path: Path
) -> None:
    panel.show_plan(herd.plan("Morning milk", group(10)).id)
    assert panel.choice.paper.currentData() == Paper.LETTER
    for box, row in ((panel.choice.paper, 1), (panel.choice.language, 2)):
        box.setCurrentIndex(row)
        box.activated.emit(row)
    answers.path = tmp_path / "chart.pdf"
    panel.save_button.click()
    assert size_mm(answers.path) == pytest.approx((210, 297), abs=0.5)
    assert "ALTO" in text_of(answers.path)
    assert "STOP" in text_of(answers.path)
    assert panel.desk.settings.now.paper_languages == ("en", "es")


def test_a_name_is_proposed_that_every_system_takes(
    panel: PaperPanel, herd: Herd, answers: Answers, monkeypatch: pytest.MonkeyPatch
) -> None:
    herd.sign('25/11:"03"', TEN_OZ_LEVEL)
    panel.show_plan(herd.plan("Morning milk", group(10)).id)
    proposed: list[str] = []
    monkeypatch.setattr(answers, "save_path", lambda title, name, kinds, on_path: proposed.append(name))
    panel.save_button.click()
    assert proposed[0].endswith(".pdf")
    assert not set(proposed[0]) & set('<>:"/\\|?*')


def test_it_tells_to_print_at_full_size(panel: PaperPanel, herd: Herd, signed: SignOff) -> None:
    panel.show_lot(signed.lot_id)
    assert "100 %" in panel.scale.text()
    assert panel.scale.isVisible()
    panel.choice.chart.click()  # nothing on it is measured
    assert not panel.scale.isVisible()


def test_keys_are_unique_and_every_field_has_a_name(panel: PaperPanel, herd: Herd, signed: SignOff) -> None:
    panel.show_plan(herd.plan().id)
    cuts = [panel.choice.cut.findData(cut) for cut in Cut]
    for choice, cut in (
        (panel.choice.chart, 0),
        (panel.choice.sheet, 0),
        *((panel.choice.labels, cut) for cut in cuts),
    ):
        choice.click()
        panel.choice.cut.setCurrentIndex(cut)
        panel.choice.cut.activated.emit(cut)
        taken = [*mnemonics(panel), *RAIL]
        assert len(taken) == len(set(taken))
        assert not nameless(panel)
