"""Work beside the window: a sign only where it takes long, a way to end it, nothing left half-done."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from threading import Event

import pytest
import shiboken6 as shiboken
from answers import Answers, at_noon
from herd import Herd
from PySide6.QtCore import Qt
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QApplication, QDialog, QWidget
from pytestqt.qtbot import QtBot

from calibrator.desk import busy as busy_module
from calibrator.desk.busy import Busy
from calibrator.desk.context import Desk
from calibrator.desk.paper_facts import Options
from calibrator.desk.paper_jobs import LabelJob, ScoopChoice, expected
from calibrator.desk.paper_out import save_pdf, send_to_printer
from calibrator.desk.season_tables import season_sheets
from calibrator.desk.widgets.share_bar import STEPS
from calibrator.desk.window import Window
from calibrator.model import Ending, Farm, Paper, Printed, new_id
from calibrator.model.underway import Ended, Underway
from calibrator.prints.label_facts import LabelLine
from calibrator.prints.output import CannotPrint
from calibrator.records import (
    DiskFull,
    NotAllowed,
    Records,
    backup,
    facts,
    import_season,
    restore_backup,
    sample_lots_folder,
)
from calibrator.records.exporting import export_file
from calibrator.records.flat import everything
from calibrator.records.rows import Writing
from calibrator.records.workbook import write_workbook
from tests.exported import export_text


class Held:
    """Work that goes on until it is let go, telling that it is halfway, and notes that it cleaned up."""

    def __init__(self) -> None:
        self.halfway, self.go, self.tidied = Event(), Event(), False

    def __call__(self, underway: Underway) -> str:
        underway(0.5)
        self.halfway.set()
        try:
            while not self.go.wait(0.001):
                underway(0.5)
        finally:
            self.tidied = True
        return "done"


@pytest.fixture
def impatient(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(busy_module, "PATIENCE_S", 0)


@pytest.fixture
def busy(desk: Desk) -> Busy:
    return desk.busy


@pytest.fixture
def held() -> Held:
    return Held()


def test_what_is_done_at_once_shows_no_sign(busy: Busy) -> None:
    came: list[int] = []
    busy.do("Counting", lambda underway: 7, came.append, came.append)
    assert came == [7]
    assert busy.sign is None


def test_the_window_lives_beneath_a_sign_that_tells_how_far_it_is(
    busy: Busy, held: Held, impatient: None, qtbot: QtBot
) -> None:
    came: list[str] = []
    busy.do("Counting bags", held, came.append, came.append)
    sign = busy.sign
    assert sign is not None
    assert sign.isVisible()
    assert QApplication.activeModalWidget() is sign
    assert sign.bar.accessibleName() == "Counting bags"
    held.halfway.wait()
    qtbot.keyClick(sign.focusWidget() or sign, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: sign.bar.value() == STEPS // 2)
    busy.do("Other work", lambda underway: "other", came.append, came.append)
    assert came == []
    held.go.set()
    qtbot.waitUntil(lambda: came == ["done"])
    assert busy.sign is None
    assert not busy.at_work


@pytest.mark.parametrize("way", ["button", "escape", "closed"])
def test_it_can_be_ended(busy: Busy, held: Held, impatient: None, qtbot: QtBot, way: str) -> None:
    wrong: list[Exception] = []
    busy.do("Counting", held, lambda told: None, wrong.append)
    sign = busy.sign
    assert sign is not None
    if way == "button":
        sign.end_button.click()
    elif way == "escape":
        qtbot.keyClick(sign, Qt.Key.Key_Escape)
    else:
        sign.close()
    assert not sign.end_button.isEnabled()
    qtbot.waitUntil(lambda: bool(wrong))
    assert isinstance(wrong[0], Ended)
    assert held.tidied
    assert busy.sign is None


def test_closing_the_window_ends_it_and_waits_until_it_is_tidied(
    desk: Desk, held: Held, impatient: None, qtbot: QtBot
) -> None:
    window = Window(desk)
    qtbot.addWidget(window)
    window.show()
    came: list[object] = []
    desk.busy.do("Counting", held, came.append, came.append)
    assert window.close()
    assert held.tidied
    assert desk.busy.sign is None
    QApplication.processEvents()
    assert came == []


def test_work_begun_from_a_dialog_that_goes_away_is_finished(
    busy: Busy, held: Held, impatient: None, qtbot: QtBot
) -> None:
    """A file is chosen, the dialog closes with its children, the work takes longer than a moment."""
    window = QWidget()
    qtbot.addWidget(window)
    window.show()
    dialog = QDialog(window)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.open()
    dialog.activateWindow()
    qtbot.waitUntil(lambda: QApplication.activeWindow() is dialog)
    came: list[str] = []
    with qtbot.captureExceptions() as raised:
        busy.do("Gathering the figures", held, came.append, came.append)
        held.halfway.wait()
        dialog.accept()
        qtbot.waitUntil(lambda: not shiboken.isValid(dialog))
        sign = busy.sign
        assert sign is not None
        qtbot.waitUntil(lambda: sign.bar.value() == STEPS // 2)
        held.go.set()
        qtbot.waitUntil(lambda: came == ["done"])
    assert raised == []
    assert not busy.at_work


def test_work_whose_sign_is_gone_is_finished(busy: Busy, held: Held, impatient: None, qtbot: QtBot) -> None:
    came: list[str] = []
    with qtbot.captureExceptions() as raised:
        busy.do("Counting", held, came.append, came.append)
        assert busy.sign is not None
        shiboken.delete(busy.sign)
        assert busy.sign is None
        held.go.set()
        qtbot.waitUntil(lambda: came == ["done"])
    assert raised == []


def refuse(underway: Underway) -> None:
    raise NotAllowed("frozen")


def test_the_desk_tells_what_is_refused_and_what_was_stopped(
    desk: Desk, answers: Answers, held: Held, impatient: None, qtbot: QtBot
) -> None:
    said: list[str] = []
    desk.said.connect(said.append)
    desk.work("Counting", refuse, lambda none: None)
    qtbot.waitUntil(lambda: bool(answers.told))
    assert "signed off" in answers.told[0]
    desk.work("Counting", held, lambda none: None)
    assert desk.busy.sign is not None
    desk.busy.sign.end_button.click()
    qtbot.waitUntil(lambda: said == ["Stopped before it was done."])
    assert len(answers.told) == 1


def test_a_mistake_of_our_own_is_not_swallowed(desk: Desk, qtbot: QtBot) -> None:
    def wrong(underway: Underway) -> None:
        raise KeyError("a bug")

    with qtbot.captureExceptions() as raised:
        desk.work("Counting", wrong, lambda none: None)
    assert [kind for kind, *_ in raised] == [KeyError]
    assert not desk.busy.at_work


def stop_at(share: float) -> Underway:
    """Lets a piece of work come that far, and ends it there."""

    def underway(told: float) -> None:
        if told >= share:
            raise Ended

    return underway


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    made = tmp_path / "out"
    made.mkdir()
    return made


@pytest.mark.parametrize("share", [0.0, 0.5])
def test_files_that_are_stopped_are_not_there_and_older_ones_stay(records: Records, folder: Path, share: float) -> None:
    herd = Herd(records)
    for number in ("25-1103B", "25-1124A"):
        herd.sign(number, 0.45)
    sheets = season_sheets(records, herd.farm)
    for name in ("all.json", "all.xlsx"):
        (folder / name).write_text("older")
    with pytest.raises(Ended):
        export_file(records, folder / "all.json", stop_at(share))
    with pytest.raises(Ended):
        write_workbook(sheets, folder / "all.xlsx", stop_at(share))
    with pytest.raises(Ended):
        everything(records, stop_at(0.0))
    with pytest.raises(Ended):
        season_sheets(records, herd.farm, stop_at(share))
    assert {path.name: path.read_text() for path in folder.iterdir()} == {"all.json": "older", "all.xlsx": "older"}


@pytest.mark.parametrize("share", [0.0, 0.1])
def test_records_that_are_stopped_on_their_way_in_are_not_in(desk: Desk, share: float) -> None:
    before = export_text(desk.records)
    with pytest.raises(Ended):
        import_season(desk.records, sample_lots_folder(), stop_at(share))
    assert export_text(desk.records) == before


def test_a_copy_that_is_stopped_changes_nothing(tmp_path: Path) -> None:
    file = tmp_path / "farm.sqlite"
    with Records.open(str(file)) as records:
        copy = backup.make(file, "by-hand")
        records.keep(Farm(id=new_id(), name="after the copy"))
    with pytest.raises(Ended):
        restore_backup(str(file), copy, stop_at(0.0))
    with pytest.raises(Ended):
        backup.make(file, "again", underway=stop_at(0.0))
    assert [path.name for path in tmp_path.glob("farm*.sqlite")] == ["farm.sqlite"]
    assert [one.why for one in backup.every(file)] == ["by-hand"]
    assert not list(tmp_path.rglob("*.part"))
    with Records.open(str(file)) as records:
        assert [farm.name for farm in records.every(Farm)] == ["after the copy"]


@pytest.fixture
def paper(records: Records) -> tuple[Herd, LabelJob]:
    herd = Herd(records)
    signed = herd.sign("25-1103B", 0.45)
    choice = ScoopChoice(herd.red, signed, (LabelLine(target_mass_g=283.5, down_wall_mm=12.0),))
    lot = herd.lot_of(signed)
    return herd, LabelJob(herd.farm, lot, (choice,), 2.8, Options(Paper.LETTER, ("en",)), at_noon(), "AB")


def test_a_print_stopped_before_its_number_takes_none(paper: tuple[Herd, LabelJob], folder: Path) -> None:
    herd, job = paper
    shown = job.document(expected(herd.records, job.sheets))
    with pytest.raises(Ended):
        save_pdf(herd.records, job, shown, folder / "label.pdf", stop_at(0.0))
    assert herd.records.prints(herd.farm.id) == []
    assert not list(folder.iterdir())


def test_a_print_stopped_after_its_number_is_kept_as_never_used(
    paper: tuple[Herd, LabelJob], folder: Path, qapp: QApplication
) -> None:
    herd, job = paper
    shown = job.document(expected(herd.records, job.sheets))
    with pytest.raises(Ended):
        save_pdf(herd.records, job, shown, folder / "label.pdf", stop_at(0.5))
    printer = QPrinter()
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(folder / "printed.pdf"))
    with pytest.raises(CannotPrint, match="Throw away"):
        send_to_printer(herd.records, job, printer, stop_at(0.0))
    made = herd.records.prints(herd.farm.id)
    assert [sheet.number for sheet in made] == [1, 2]
    ended = herd.records.sheet_endings(herd.farm.id)
    assert [(end.print_id, end.ending) for end in ended] == [(sheet.id, Ending.SPOILED) for sheet in made]
    assert not (folder / "label.pdf").exists()


def test_sheets_get_their_numbers_all_or_none(paper: tuple[Herd, LabelJob], monkeypatch: pytest.MonkeyPatch) -> None:
    herd, job = paper
    two = replace(job, scoops=(*job.scoops, *job.scoops))
    add, added = facts.add_print, []

    def failing(writing: Writing, sheet: Printed) -> Printed:
        added.append(sheet)
        if len(added) == 2:
            raise DiskFull("disk_full", place="x")
        return add(writing, sheet)

    monkeypatch.setattr(facts, "add_print", failing)
    with pytest.raises(DiskFull):
        send_to_printer(herd.records, two, QPrinter(), stop_at(2.0))
    assert len(added) == 2
    assert herd.records.prints(herd.farm.id) == []


def test_why_nothing_was_printed_is_told_also_where_that_cannot_be_kept(
    paper: tuple[Herd, LabelJob], folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    herd, job = paper
    shown = job.document(expected(herd.records, job.sheets))

    def failing(*_given: object) -> None:
        raise DiskFull("disk_full", place="x")

    monkeypatch.setattr(facts, "add_ending", failing)
    with pytest.raises(Ended):
        save_pdf(herd.records, job, shown, folder / "label.pdf", stop_at(0.5))
