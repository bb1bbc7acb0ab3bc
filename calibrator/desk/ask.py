"""The one seam through which the program puts a question; tests put their own answers in its place.

Nothing here blocks: a question is a window-modal dialog, the answer comes back through a callable.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QObject, Qt
from PySide6.QtWidgets import (
    QApplication,
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QLineEdit,
    QMessageBox,
    QVBoxLayout,
    QWidget,
)

from calibrator.desk.parts import label
from calibrator.desk.plain_text import on_screen


class Ask(QObject):
    """Questions as dialogs over the active window."""

    def tell(self, text: str) -> None:
        """Say what went wrong and what to do about it."""
        box = QMessageBox(QMessageBox.Icon.Warning, _title(), on_screen(text), QMessageBox.StandardButton.Ok, _window())
        box.setTextFormat(Qt.TextFormat.PlainText)
        _open(box)

    def confirm(self, question: str, yes: str, on_yes: Callable[[], None]) -> None:
        """Put a question whose *yes* has a name of its own; anything else changes nothing."""
        text, none = on_screen(question), QMessageBox.StandardButton.NoButton
        box = QMessageBox(QMessageBox.Icon.Question, _title(), text, none, _window())
        box.setTextFormat(Qt.TextFormat.PlainText)
        box.addButton(yes, QMessageBox.ButtonRole.AcceptRole)
        cancel = box.addButton(QMessageBox.StandardButton.Cancel)
        box.accepted.connect(on_yes)
        box.setDefaultButton(cancel)  # Enter, pressed once too often, changes nothing
        _open(box)

    def reason(self, question: str, on_text: Callable[[str], None]) -> None:
        """Ask for a line of text that may not be empty."""
        _open(_ReasonDialog(question, on_text, _window()))

    def save_path(self, title: str, suggestion: str, kinds: str, on_path: Callable[[Path], None]) -> None:
        """Ask where to save a file; `suggestion` is a whole path. A name without an ending gets the suggestion's."""
        proposed = Path(suggestion)
        dialog = QFileDialog(_window(), title, str(proposed.parent), kinds)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setDefaultSuffix(proposed.suffix[1:])  # or the file to be written over would not be asked about
        dialog.selectFile(proposed.name)
        _when_chosen(dialog, on_path)

    def open_path(self, title: str, kinds: str, on_path: Callable[[Path], None]) -> None:
        """Ask which file to read."""
        dialog = QFileDialog(_window(), title, "", kinds)
        dialog.setFileMode(QFileDialog.FileMode.ExistingFile)
        _when_chosen(dialog, on_path)


class _ReasonDialog(QDialog):
    def __init__(self, question: str, on_text: Callable[[str], None], parent: QWidget | None) -> None:
        super().__init__(parent)
        self.setWindowTitle(_title())
        self._on_text = on_text
        asked = label(question)
        self._line = QLineEdit()
        self._line.setMaxLength(200)
        self._line.setAccessibleName(question)
        asked.setBuddy(self._line)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel)
        self._ok = buttons.button(QDialogButtonBox.StandardButton.Ok)
        self._ok.setEnabled(False)
        self._line.textChanged.connect(self._allow)
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        for widget in (asked, self._line, buttons):
            layout.addWidget(widget)
        self.setMinimumWidth(420)

    def _allow(self, text: str) -> None:
        self._ok.setEnabled(bool(text.strip()))

    def accept(self) -> None:
        super().accept()
        self._on_text(self._line.text().strip())


def _when_chosen(dialog: QFileDialog, on_path: Callable[[Path], None]) -> None:
    def chosen(name: str) -> None:
        on_path(Path(name))

    dialog.fileSelected.connect(chosen)
    _open(dialog)


def _open(dialog: QDialog) -> None:
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.open()


def _window() -> QWidget | None:
    return QApplication.activeWindow()


def _title() -> str:
    return QCoreApplication.translate("Ask", "Scoop calibration")
