"""One order of buttons in every dialog: what leaves all as it was stands left of what the dialog is for."""

from __future__ import annotations

from pathlib import Path

import pytest
from answers import Answers, at_noon
from herd import Herd
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication, QDialog, QLineEdit, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from calibrator.desk import ask
from calibrator.desk.ask import Ask
from calibrator.desk.bring_in.dialog import BringInDialog
from calibrator.desk.bring_in.work import Bringing
from calibrator.desk.context import Desk
from calibrator.desk.export_dialog import ExportDialog
from calibrator.desk.pages.sheets_down import SheetsDown
from calibrator.desk.server.dialog import ServerDialog
from calibrator.desk.theme import Theme, the_theme
from calibrator.model import PrintKind
from calibrator.model.underway import unwatched
from calibrator.records import Records

KINDS = ("confirm", "reason", "export", "sheets", "server", "bring in")


@pytest.fixture
def desk(qapp: QApplication, records: Records, answers: Answers) -> Desk:
    if qapp.property("tokens") is None:
        Theme(qapp)
    herd = Herd(records)
    herd.print(PrintKind.SCOOP_LABEL, herd.sign("26-1", 0.45))
    return Desk(records, answers, clock=at_noon)


def made(kind: str, desk: Desk, window: QWidget, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> QDialog:
    assert desk.farm is not None
    monkeypatch.setattr(ask, "_window", lambda: window)
    if kind == "confirm":
        Ask(window).confirm("Put it back?", "Put it back", lambda: None)
    elif kind == "reason":
        Ask(window).reason("Why?", print)
    elif kind == "export":
        ExportDialog(desk, desk.farm, window).open()
    elif kind == "sheets":
        SheetsDown(desk, desk.records.prints(desk.farm.id), window).open()
    elif kind == "server":
        ServerDialog("", None, window).open()
    else:
        file = tmp_path / "lots.csv"
        file.write_text("lot,product\n26-2,20-20\n")
        work = Bringing(desk.records, desk.farm, file, "MK")
        work.look(unwatched)
        BringInDialog(desk, work, window).open()
    return next(dialog for dialog in window.findChildren(QDialog) if dialog.isVisible())


@pytest.mark.parametrize("kind", KINDS)
def test_cancel_stands_left_of_what_the_dialog_is_for(
    desk: Desk, qtbot: QtBot, kind: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = QWidget()
    the_theme().dress(window)
    qtbot.addWidget(window)
    window.show()
    dialog = made(kind, desk, window, tmp_path, monkeypatch)
    QApplication.processEvents()
    buttons = [b for b in dialog.findChildren(QPushButton) if b.isVisible() and b.property("kind") != "link"]
    at = {button: button.mapTo(dialog, QPoint(0, 0)) for button in buttons}
    lowest = max(at.values(), key=QPoint.y).y()
    row = sorted((b for b in buttons if abs(at[b].y() - lowest) < b.height()), key=lambda b: at[b].x())
    words = [button.text().replace("&", "") for button in row]
    leaves = next(place for place, told in enumerate(words) if told in ("Cancel", "Go back"))
    assert leaves < len(row) - 1, words
    assert all(told != "Stop" for told in words[leaves:])
    last = row[-1]
    assert at[last].x() + last.width() > dialog.width() - 40  # at the right edge
    dialog.close()


def test_a_usual_reason_is_taken_by_enter_as_a_typed_one_is(
    desk: Desk, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    told: list[str] = []
    window = QWidget()
    the_theme().dress(window)
    qtbot.addWidget(window)
    monkeypatch.setattr(ask, "_window", lambda: window)
    Ask(window).reason("Why should 94 oz not count?", told.append, ("typed wrong", "spilled"))
    dialog = next(one for one in window.findChildren(QDialog) if one.isVisible())
    (spilled,) = (one for one in dialog.findChildren(QPushButton) if one.text() == "spilled")
    qtbot.mouseClick(spilled, Qt.MouseButton.LeftButton)
    assert told == []
    line = dialog.focusWidget()
    assert isinstance(line, QLineEdit)
    assert line.text() == "spilled"
    qtbot.keyClick(line, Qt.Key.Key_Return)
    assert told == ["spilled"]
    assert not dialog.isVisible()
