"""Names and folders that are proposed for files."""

from __future__ import annotations

import gc
from functools import partial
from pathlib import Path

import pytest
import shiboken6 as shiboken
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QEvent, QStandardPaths
from PySide6.QtWidgets import QApplication, QFileDialog, QMessageBox, QWidget
from pytestqt.qtbot import QtBot

from calibrator.desk import ask
from calibrator.desk.ask import Ask
from calibrator.desk.saving import file_name, folder_of


@pytest.mark.parametrize(
    ("parts", "name"),
    [
        (
            ("Windy Hollow", "25-0302A", "chart", "2026-03-02"),
            "Windy Hollow - 25-0302A - chart - 2026-03-02.pdf",
        ),
        (("", "25/03:02A", "label"), "25 03 02A - label.pdf"),
        (("..", "  ", "-"), "calibrator.pdf"),
        (("CON",), "_CON.pdf"),
        (("com1.old",), "_com1.old.pdf"),
        (("Rancho La Niña.", "tab\there"), "Rancho La Niña - tabhere.pdf"),
    ],
)
def test_names_that_file_systems_take(parts: tuple[str, ...], name: str) -> None:
    assert file_name(parts, ".pdf") == name


@given(st.lists(st.text(max_size=200), max_size=4))
def test_any_names_of_farm_and_lot_make_a_name_that_can_be_written(parts: list[str]) -> None:
    name = file_name(parts, ".pdf")
    assert len(name.encode()) <= 255
    assert not set(name) & set('<>:"/\\|?*\x00\n\r\t')
    assert name == name.strip()
    assert not name.startswith((".", "-"))


def test_the_folder_used_last_is_proposed_while_it_is_there(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    documents = tmp_path / "Documents"
    monkeypatch.setattr(QStandardPaths, "writableLocation", lambda _: str(documents))
    assert folder_of(str(tmp_path)) == tmp_path
    assert folder_of(str(tmp_path / "gone")) == Path.home()
    documents.mkdir()
    assert folder_of(str(tmp_path / "gone")) == documents
    assert folder_of("") == documents


def test_the_dialog_opens_there_and_adds_the_ending(
    qapp: QApplication, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """With the ending a file that is there already is asked about before it is written over."""
    window = QWidget()
    qtbot.addWidget(window)
    monkeypatch.setattr(ask, "_window", lambda: window)
    found: list[Path] = []
    Ask(qapp).save_path("Save", str(tmp_path / "label.pdf"), "PDF files (*.pdf)", found.append)
    dialog = window.findChild(QFileDialog)
    assert dialog is not None
    assert Path(dialog.directory().absolutePath()) == tmp_path
    assert Path(dialog.selectedFiles()[0]).name == "label.pdf"
    assert dialog.defaultSuffix() == "pdf"
    dialog.selectFile("other")
    dialog.accept()
    assert found == [tmp_path / "other.pdf"]


def test_what_follows_the_choice_of_a_file_does_not_go_with_the_dialog(
    qapp: QApplication, qtbot: QtBot, tmp_path: Path
) -> None:
    window = QWidget()
    qtbot.addWidget(window)
    window.show()
    window.activateWindow()
    qtbot.waitUntil(lambda: QApplication.activeWindow() is window)
    asking = Ask(qapp)
    asking.save_path("Save", str(tmp_path / "label.pdf"), "PDF files (*.pdf)", lambda path: asking.tell("It is full."))
    dialog = window.findChild(QFileDialog)
    assert dialog is not None
    dialog.accept()
    told = asking.told_now
    assert told is not None
    assert told.parentWidget() is window
    delete_what_is_due()
    assert not shiboken.isValid(dialog)
    assert told.isVisible()
    told.close()
    delete_what_is_due()


def delete_what_is_due() -> None:
    QApplication.processEvents()
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    QApplication.processEvents()


def test_faults_are_told_one_at_a_time_and_the_same_one_is_counted(qapp: QApplication) -> None:
    asking = Ask(qapp)
    for text in ("The disk is full.", "The disk is full.", "The server is away.", "The disk is full."):
        asking.tell(text)
    first = asking.told_now
    assert first is not None
    assert [box for box in qapp.topLevelWidgets() if box.isVisible() and isinstance(box, QMessageBox)] == [first]
    assert first.text() == "The disk is full."
    assert first.informativeText() == "This happened 3 times."
    first.accept()
    delete_what_is_due()
    second = asking.told_now
    assert second is not None
    assert (second.text(), second.informativeText()) == ("The server is away.", "")
    second.accept()
    delete_what_is_due()
    assert asking.told_now is None
    asking.tell("The disk is full.")
    assert asking.told_now.informativeText() == ""
    asking.told_now.accept()
    delete_what_is_due()


def test_a_question_before_there_is_any_window_stays_until_it_is_answered(
    qapp: QApplication, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The second start of the program puts one; gone, the program would go on with nothing to close it by."""
    monkeypatch.setattr(ask, "_window", lambda: None)
    answered: list[bool] = []
    Ask(qapp).confirm("Open in another window. Look?", "Look", lambda: answered.append(True))
    gc.collect()
    (box,) = (found for found in qapp.topLevelWidgets() if isinstance(found, QMessageBox) and found.isVisible())
    assert box.text() == "Open in another window. Look?"
    box.accept()
    assert answered == [True]
    del box
    qtbot.waitUntil(lambda: not any(isinstance(found, QMessageBox) for found in qapp.topLevelWidgets()))
    assert not ask._held


@pytest.mark.parametrize(("pressed", "told"), [("They stay", ["stay"]), ("None is left", ["gone"]), ("Cancel", [])])
def test_a_question_with_two_answers_does_the_one_that_is_pressed(
    qapp: QApplication, pressed: str, told: list[str]
) -> None:
    came: list[str] = []
    Ask(qapp).confirm(
        "Left?", "They stay", partial(came.append, "stay"), ("None is left", partial(came.append, "gone"))
    )
    box = next(w for w in QApplication.topLevelWidgets() if isinstance(w, QMessageBox) and w.isVisible())
    next(one for one in box.buttons() if one.text().replace("&", "") == pressed).click()
    assert came == told
    assert not box.isVisible()
    del box
    gc.collect()
