"""Preview, PDF and printer: what leaves the program bears a number that the records know."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise
from pathlib import Path
from threading import Event

import pypdfium2
import pytest
from answers import Answers, at_noon
from herd import OZ_G, TEN_ON_TWO, Herd, group
from keys import RAIL, mnemonics, nameless, tab_through
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtWidgets import QApplication, QDialog, QStyle, QStyleOptionButton, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot
from screens import squeezed
from speaking import speaking

from calibrator.desk.context import Desk
from calibrator.desk.in_use import LotState
from calibrator.desk.label_cut import Cut
from calibrator.desk.pages import paper as paper_module
from calibrator.desk.pages.paper import PaperPanel
from calibrator.desk.paper_jobs import Job, LabelJob, Ready
from calibrator.desk.standing import LotStanding, standing
from calibrator.desk.theme import Theme
from calibrator.desk.widgets.later import Later
from calibrator.desk.window import LEAST_WHOLE, RAIL_PX
from calibrator.model import Box, Ending, Paper, Printed, PrintKind, SignOff, new_id
from calibrator.model.underway import Underway
from calibrator.prints.output import CannotPrint
from calibrator.prints.page import Document, Text
from calibrator.records import Records

TEN_OZ_LEVEL = 10 * OZ_G / 665.9


@pytest.fixture
def herd(records: Records) -> Herd:
    return Herd(records)


@pytest.fixture
def panel(qapp: QApplication, qtbot: QtBot, herd: Herd, answers: Answers) -> PaperPanel:
    if qapp.property("tokens") is None:
        Theme(qapp)
    return shown_panel(qtbot, herd, answers)


def shown_panel(qtbot: QtBot, herd: Herd, answers: Answers) -> PaperPanel:
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
    with qtbot.waitSignal(panel.desk.saved) as said:
        panel.save_button.click()
    (kept,) = herd.records.prints(herd.farm.id)
    assert (kept.number, kept.kind, kept.plan_id) == (1, PrintKind.WALL_CHART, plan.id)
    assert (kept.sign_off_id, kept.lot_id, kept.by) == (signed.id, signed.lot_id, "AB")
    assert said.args == ["Saved as chart.pdf, print no. 1.", answers.path]
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
    answers.path, answers.yes = tmp_path / "no such folder" / "chart.pdf", False
    panel.save_button.click()
    assert "is not there any more" in answers.asked[-1]
    assert herd.records.prints(herd.farm.id) == []


def test_after_a_place_that_is_gone_another_can_be_chosen(
    panel: PaperPanel, herd: Herd, signed: SignOff, answers: Answers, tmp_path: Path
) -> None:
    panel.show_plan(herd.plan().id)
    answers.first_paths, answers.path = [tmp_path / "gone" / "chart.pdf"], tmp_path / "chart.pdf"
    panel.save_button.click()
    assert answers.path.is_file()
    assert [sheet.number for sheet in herd.records.prints(herd.farm.id)] == [1]
    assert answers.proposed[1].parent.is_dir()  # not the one that is gone


def test_a_file_that_another_program_holds_takes_no_number_and_stays(
    panel: PaperPanel, herd: Herd, signed: SignOff, answers: Answers, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    held = tmp_path / "chart.pdf"
    held.write_bytes(b"read elsewhere")
    opened = Path.open

    def refuse(path: Path, mode: str = "r", *more: object) -> object:
        if path == held and mode == "r+b":
            raise PermissionError(13, "held")
        return opened(path, mode, *more)  # type: ignore[call-overload]

    monkeypatch.setattr(Path, "open", refuse)
    panel.show_plan(herd.plan().id)
    answers.path, answers.yes = held, False
    panel.save_button.click()
    assert "another program has it open" in answers.asked[-1]
    assert herd.records.prints(herd.farm.id) == []
    monkeypatch.undo()
    assert held.read_bytes() == b"read elsewhere"


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
    assert panel.number.text() == "This will be print no. 1."
    panel.save_button.click()
    assert panel.number.text().startswith("This is print no. 1, made at ")  # what was just made stays in view
    assert panel.document is not None
    assert any(isinstance(i, Text) and i.text == "Print no. 1" for page in panel.document.pages for i in page.items)
    panel.choice.labels.click()
    assert panel.number.text() == "This will be print no. 2."
    panel.choice.sheet.click()
    assert panel.number.text().startswith("This is print no. 1, made at ")
    panel.save_button.click()
    assert panel.number.text().startswith("This is print no. 2, made at ")
    made = herd.records.prints(herd.farm.id)
    assert [(sheet.number, sheet.kind, sheet.scoop_id, sheet.replaces) for sheet in made] == [
        (1, PrintKind.LOT_SHEET, herd.red.id, None),
        (2, PrintKind.LOT_SHEET, herd.red.id, 1),
    ]
    assert "Windy Hollow" in text_of(answers.path)
    assert "Print no. 2 (replaces no. 1)" in text_of(answers.path)


def test_without_a_sign_off_it_says_what_to_do(panel: PaperPanel, herd: Herd) -> None:
    panel.show_plan(herd.plan().id)
    assert "sign it off" in panel.trouble.text()
    assert not panel.print_button.isEnabled()
    assert panel.document is None


def test_a_farm_without_wall_charts_is_told_where_to_have_them_asked_for(
    panel: PaperPanel, herd: Herd, signed: SignOff
) -> None:
    plan = herd.plan("Milk", group(109))
    panel.show_plan(plan.id)
    assert panel.choice._not_asked.isHidden()
    herd.records.keep(replace(herd.farm, asks_for_charts=False))
    panel.desk.changed.emit()
    assert panel.choice._not_asked.isVisible()
    assert "Set-up" in panel.choice._not_asked.text()
    panel.choice.labels.click()
    assert panel.choice._not_asked.isHidden()


def test_tab_comes_to_the_scoops_beneath_the_kind_of_print_however_often_they_are_offered(
    panel: PaperPanel, herd: Herd, signed: SignOff
) -> None:
    holder = QWidget()
    holder.setWindowTitle("prints")
    place = Later(lambda: panel)
    layout = QVBoxLayout(holder)
    layout.addWidget(place)
    holder.resize(780, 620)
    place.content.show_lot("")
    holder.show()
    holder.activateWindow()
    blue = herd.scoop("Blue scoop", Box(length_mm=90, width_mm=80, height_mm=95))
    herd.sign("25-1103C", TEN_OZ_LEVEL, blue, herd.lot_of(signed))
    panel.desk.changed.emit()
    QApplication.processEvents()
    panel.back.setFocus()
    way = tab_through(holder)
    first = way.index(panel.choice.labels)
    way = [*way[first:], *way[:first]]
    places = [way.index(each) for pick in panel.choice.picks for each in (pick.box, *pick.lines) if each in way]
    assert len(places) >= 2
    assert places == sorted(places)
    assert places[0] > 0
    assert places[-1] < way.index(panel.choice.cut) < way.index(panel.preview)
    panel.setParent(None)
    holder.deleteLater()


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
    panel: PaperPanel, herd: Herd, answers: Answers, tmp_path: Path
) -> None:
    """Whose, of which lot, what, of which day; in the folder where a file was saved last, while it is there."""
    signed = herd.sign('25/11:"03"', TEN_OZ_LEVEL)
    panel.show_plan(herd.plan("Morning milk?", group(10)).id)
    panel.desk.settings.keep(save_folder=str(tmp_path))
    panel.save_button.click()
    assert (
        answers.proposed[-1] == tmp_path / "Windy Hollow - 25 11 03 - wall chart Morning milk - 2026-03-02 - no. 1.pdf"
    )
    panel.show_lot(signed.lot_id)
    folder = tmp_path / "prints"
    folder.mkdir()
    answers.path = folder / "label.pdf"
    panel.save_button.click()
    answers.path = None
    panel.save_button.click()
    assert answers.proposed[-1] == folder / "Windy Hollow - 25 11 03 - scoop labels - 2026-03-02 - no. 2.pdf"


def test_it_tells_to_print_at_full_size(panel: PaperPanel, herd: Herd, signed: SignOff) -> None:
    panel.show_lot(signed.lot_id)
    assert "100 %" in panel.scale.text()
    assert panel.scale.isVisible()
    panel.choice.chart.click()  # nothing on it is measured
    assert not panel.scale.isVisible()


def test_keys_are_unique_and_every_field_has_a_name(panel: PaperPanel, herd: Herd, signed: SignOff) -> None:
    keys_are_unique(panel, herd, RAIL)


def test_keys_are_unique_in_spanish_too(
    panel: PaperPanel, qtbot: QtBot, herd: Herd, signed: SignOff, answers: Answers
) -> None:
    with speaking("es"):
        spanish = shown_panel(qtbot, herd, answers)
        keys_are_unique(spanish, herd, RAIL)
        assert spanish.bar.back.text().replace("&", "") == "Anterior"


def keys_are_unique(panel: PaperPanel, herd: Herd, rail: str) -> None:
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
        taken = [*mnemonics(panel), *rail]
        assert len(taken) == len(set(taken))
        assert not nameless(panel)


def pdf_printer(path: Path) -> QPrinter:
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(path))
    return printer


def test_the_print_dialog_leads_to_the_printer_and_to_a_number(
    panel: PaperPanel, herd: Herd, signed: SignOff, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(panel, "printer", lambda: pdf_printer(tmp_path / "printed.pdf"))
    panel.show_lot(signed.lot_id)
    panel.print_button.click()
    dialog = panel.dialog
    assert dialog is not None
    assert dialog.isVisible()
    assert not dialog.testOption(QPrintDialog.PrintDialogOption.PrintPageRange)
    dialog.done(QDialog.DialogCode.Accepted)
    assert [(sheet.number, sheet.kind) for sheet in herd.records.prints(herd.farm.id)] == [(1, PrintKind.SCOOP_LABEL)]
    assert "Red scoop" in text_of(tmp_path / "printed.pdf")
    assert size_mm(tmp_path / "printed.pdf") == pytest.approx((215.9, 279.4), abs=0.5)


def test_a_print_dialog_that_is_left_prints_nothing(
    panel: PaperPanel, herd: Herd, signed: SignOff, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(panel, "printer", lambda: pdf_printer(tmp_path / "printed.pdf"))
    panel.show_lot(signed.lot_id)
    panel.print_button.click()
    assert panel.dialog is not None
    panel.dialog.reject()
    assert panel.dialog is None
    assert herd.records.prints(herd.farm.id) == []
    assert not (tmp_path / "printed.pdf").exists()


def test_what_the_printer_refused_is_kept_as_never_used(
    panel: PaperPanel,
    herd: Herd,
    signed: SignOff,
    answers: Answers,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    def refuse(document: Document, printer: QPrinter, underway: Underway) -> None:
        raise CannotPrint("The printer stopped. See to it and print again.")

    monkeypatch.setattr("calibrator.desk.paper_out.print_document", refuse)
    panel.show_lot(signed.lot_id)
    panel.print_to(pdf_printer(tmp_path / "printed.pdf"))
    assert len(answers.told) == 1
    (sheet,) = herd.records.prints(herd.farm.id)
    assert [(e.print_id, e.ending) for e in herd.records.sheet_endings(herd.farm.id)] == [(sheet.id, Ending.SPOILED)]
    assert panel.number.text() == "This will be print no. 2."


def test_the_kind_of_label_the_sheet_and_half_lines_are_remembered(
    panel: PaperPanel, herd: Herd, signed: SignOff, tmp_path: Path, qtbot: QtBot
) -> None:
    panel.show_lot(signed.lot_id)
    row = panel.choice.cut.findData(Cut.READY_CUT)
    panel.choice.cut.setCurrentIndex(row)
    panel.choice.cut.activated.emit(row)
    panel.choice.grid.used.selectAll()
    qtbot.keyClicks(panel.choice.grid.used, "1")
    panel.choice.grid.left_mm.line.selectAll()
    qtbot.keyClicks(panel.choice.grid.left_mm.line, "6 mm")
    halves = [line for line in panel.choice.picks[0].lines if "half" in line.text()]
    halves[0].click()
    panel.print_to(pdf_printer(tmp_path / "printed.pdf"))
    again = PaperPanel(panel.desk)
    qtbot.addWidget(again)
    again.show_lot(signed.lot_id)
    kept = again.choice.grid.grid()
    assert again.choice.cut.currentData() == Cut.READY_CUT
    assert kept is not None
    assert (kept.left_mm, kept.used) == (6.0, 2)  # the one just printed is gone too
    assert [line.isChecked() for line in again.choice.picks[0].lines if "half" in line.text()] == [True]


def test_a_size_that_is_not_understood_stops_the_print(panel: PaperPanel, signed: SignOff, qtbot: QtBot) -> None:
    panel.show_lot(signed.lot_id)
    row = panel.choice.cut.findData(Cut.WRAP)
    panel.choice.cut.setCurrentIndex(row)
    panel.choice.cut.activated.emit(row)
    assert panel.print_button.isEnabled()
    qtbot.keyClicks(panel.choice.picks[0].wall.line, "thick")
    assert not panel.print_button.isEnabled()
    assert "not understood" in panel.trouble.text()


def test_several_copies_bear_one_number(panel: PaperPanel, herd: Herd, signed: SignOff, tmp_path: Path) -> None:
    panel.show_lot(signed.lot_id)
    panel.choice.copies.setText("3")
    panel.choice.copies.counted.emit(3)
    panel.save_to(tmp_path / "labels.pdf")
    assert text_of(tmp_path / "labels.pdf").count("Print no. 1") == 3
    assert len(herd.records.prints(herd.farm.id)) == 1


def test_the_preview_turns_pages_by_keys_and_shows_true_size(panel: PaperPanel, signed: SignOff, qtbot: QtBot) -> None:
    panel.show_lot(signed.lot_id)
    panel.choice.sheet.click()
    preview, bar = panel.preview, panel.bar
    assert preview.pages > 1
    assert bar.where.text() == f"Page 1 of {preview.pages}" == preview.accessibleDescription()
    assert not bar.back.isEnabled()
    for _ in range(9 * preview.pages):
        qtbot.keyClick(preview, Qt.Key.Key_PageDown)
    assert preview.page == preview.pages
    qtbot.keyClick(preview, Qt.Key.Key_Home)
    assert preview.page == 1
    bar.forward.click()
    assert preview.page == 2
    bar.true_size.click()
    assert preview.page == 2
    assert preview.widget().width() == pytest.approx(215.9 * panel.logicalDpiX() / 25.4, abs=3)
    assert preview.horizontalScrollBar().maximum() > 0
    bar.true_size.click()
    assert preview.horizontalScrollBar().maximum() == 0
    assert preview.widget().width() <= preview.viewport().width()


def test_page_down_passes_no_page_over(panel: PaperPanel, signed: SignOff, qtbot: QtBot) -> None:
    panel.show_lot(signed.lot_id)
    panel.choice.sheet.click()
    seen = [panel.preview.page]
    for _ in range(9 * panel.preview.pages):
        qtbot.keyClick(panel.preview, Qt.Key.Key_PageDown)
        seen.append(panel.preview.page)
    assert {after - before for before, after in pairwise(seen)} <= {0, 1}


@pytest.mark.parametrize("language", ["en", "es"])
def test_every_line_offered_can_be_read_whole(panel: PaperPanel, herd: Herd, signed: SignOff, language: str) -> None:
    """As painted: on as many lines as it needs, none cut, the rows of one height a line."""
    herd.plan(
        "All the calves of the north barn, evenings", group(20, rate=replace(TEN_ON_TWO, powder_mass_g=15 * OZ_G))
    )
    with speaking(language):
        made = PaperPanel(panel.desk)
        made.resize(780, 620)
        made.show()
        made.show_lot(signed.lot_id)
    QApplication.processEvents()
    boxes = [box for pick in made.choice.picks for box in (pick.box, *pick.lines)]
    assert any(len(box.lines(box.width())) > 1 for box in boxes)
    for box in boxes:
        painted = QStyleOptionButton()
        box.initStyleOption(painted)
        room = box.style().subElementRect(QStyle.SubElement.SE_CheckBoxContents, painted, box)
        words = painted.text.replace("&&", "&").split("\n")
        assert "".join(words).replace(" ", "") == box.text().replace("&&", "&").replace(" ", "")
        assert max(box.fontMetrics().horizontalAdvance(line) for line in words) <= room.width()
        assert len(words) * box.fontMetrics().lineSpacing() <= room.height()
    made.close()


def test_a_line_is_offered_in_the_very_words_that_the_label_bears(
    panel: PaperPanel, herd: Herd, signed: SignOff
) -> None:
    """A scale of 1 g tells ounces to hundredths: so does the panel beside the paper, and a coarser scale's scoop."""
    fine = herd.records.keep(replace(herd.scale, id=new_id(), revision="", resolution_g=1.0, resolution_typed="1 g"))
    coarse, herd.scale = herd.scale, fine
    blue = herd.scoop("Blue", Box(length_mm=90, width_mm=80, height_mm=92))
    herd.sign("", TEN_OZ_LEVEL, blue, herd.lot_of(signed))
    herd.scale = coarse
    panel.show_lot(signed.lot_id)
    assert panel.document is not None
    on_paper = {item.text for page in panel.document.pages for item in page.items if isinstance(item, Text)}
    offered = [line.text() for pick in panel.choice.picks for line in pick.lines if line.isChecked()]
    assert offered
    assert all(words.split(":")[0] in on_paper for words in offered)
    assert all("10.00 oz" in words for words in offered if "main" in words)


@pytest.mark.parametrize("language", ["en", "es"])
def test_fields_abreast_stand_level(panel: PaperPanel, signed: SignOff, language: str) -> None:
    with speaking(language):
        made = PaperPanel(panel.desk)
    made.resize(780, 620)
    made.show()
    made.show_lot(signed.lot_id)
    made.choice.cut.setCurrentIndex(made.choice.cut.findData(Cut.READY_CUT))
    made.choice.cut.activated.emit(0)
    QApplication.processEvents()
    grid = made.choice.grid
    for one, other in (
        (grid.columns, grid.rows),
        (grid.width_mm, grid.height_mm),
        (grid.left_mm, grid.top_mm),
        (grid.pitch_x_mm, grid.pitch_y_mm),
    ):
        assert one.y() == other.y()
    made.close()


def drawn(panel: PaperPanel) -> int:
    """How many points of the preview are dark."""
    place = QRect(panel.preview.mapTo(panel, QPoint()), panel.preview.size())
    picture = panel.grab(place).toImage()
    points = ((x, y) for x in range(0, picture.width(), 2) for y in range(0, picture.height(), 2))
    return sum(picture.pixelColor(x, y).lightness() < 100 for x, y in points)


def test_what_is_asked_for_while_the_print_is_made_is_done_once_it_is_there(
    panel: PaperPanel, signed: SignOff, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Somebody kept something elsewhere while the file was chosen: the print is made anew just then."""
    hold, made = Event(), paper_module.ready

    def slowly(records: Records, job: Job, before: tuple[Sequence[Printed], Job] | None, underway: Underway) -> Ready:
        hold.wait(60)
        return made(records, job, before, underway)

    monkeypatch.setattr(paper_module, "ready", slowly)
    monkeypatch.setattr("calibrator.desk.busy.PATIENCE_S", 0)
    panel.show_lot(signed.lot_id)
    panel.save_to(tmp_path / "label.pdf")
    hold.set()
    qtbot.waitUntil(lambda: panel.number.text().startswith("This is print no. 1"), timeout=60_000)
    assert (tmp_path / "label.pdf").exists()


def test_a_print_that_takes_its_time_is_made_beside_the_window(
    panel: PaperPanel, herd: Herd, signed: SignOff, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    plan = herd.plan("Morning milk", group(10))
    hold, made = Event(), paper_module.ready

    def slowly(records: Records, job: Job, before: tuple[Sequence[Printed], Job] | None, underway: Underway) -> Ready:
        hold.wait(60)
        return made(records, job, before, underway)

    panel.show_lot(signed.lot_id)
    full = drawn(panel)
    monkeypatch.setattr(paper_module, "ready", slowly)
    monkeypatch.setattr("calibrator.desk.busy.PATIENCE_S", 0)
    panel.show_plan(plan.id)
    assert drawn(panel) < full / 4  # blank paper: nobody prints the label for the chart
    assert panel.preview.accessibleDescription() == "Making the preview …"
    assert panel.number.text() == "Making the preview …"
    assert not panel.print_button.isEnabled()
    assert not panel.save_button.isEnabled()
    panel.choice.labels.click()  # chosen meanwhile: the chart is wanted no more
    hold.set()
    qtbot.waitUntil(panel.print_button.isEnabled, timeout=60_000)
    assert panel.document is not None
    assert isinstance(panel._ready, Ready)
    assert isinstance(panel._ready.job, LabelJob)
    assert panel.number.text() == "This will be print no. 1."


def test_the_keys_stay_on_the_button_while_the_print_is_made_anew(
    panel: PaperPanel, signed: SignOff, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    panel.show_lot(signed.lot_id)
    qtbot.waitUntil(panel.isActiveWindow)
    panel.save_button.setFocus()
    monkeypatch.setattr("calibrator.desk.busy.PATIENCE_S", 0)
    panel._show()
    assert not panel.save_button.isEnabled()
    qtbot.waitUntil(panel.save_button.isEnabled, timeout=60_000)
    assert panel.save_button.hasFocus()


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_preview_turns_pages_by_whole_words_in_a_window_with_a_frame(
    qapp: QApplication, herd: Herd, signed: SignOff, answers: Answers, qtbot: QtBot, language: str
) -> None:
    """On a screen of 1024 by 768 the frame takes its part: “Previous page” had lost both ends there."""
    if qapp.property("tokens") is None:
        Theme(qapp)
    with speaking(language):
        panel = shown_panel(qtbot, herd, answers)
        panel.resize(LEAST_WHOLE.width() - RAIL_PX - 48, 620)  # the page's own edges are 24 px each
        panel.show_plan(herd.plan("Morning milk", group(10)).id)
        QApplication.processEvents()
        assert list(squeezed(panel.bar)) == []


def test_a_label_for_a_powder_that_is_not_fed_says_so(panel: PaperPanel, herd: Herd, signed: SignOff) -> None:
    """It may be printed ahead; nobody is to take it for the label of today's powder."""
    panel.show_lot(signed.lot_id)
    assert panel.not_fed.isHidden()
    later = herd.sign("25-1201A", TEN_OZ_LEVEL)
    fed = next(known for known in standing_of(herd) if known.state is LotState.IN_USE)
    other = later if fed.lot.id == signed.lot_id else signed
    panel.show_lot(other.lot_id)
    assert not panel.not_fed.isHidden()
    assert fed.lot.lot_number in panel.not_fed.text()
    assert panel.print_button.isEnabled()
    panel.show_lot_sheet(other.lot_id)
    assert panel.not_fed.isHidden()


def standing_of(herd: Herd) -> Sequence[LotStanding]:
    return standing(herd.records, herd.farm, at_noon().date()).lots
