"""The one seam through which the program puts a question; tests put their own answers in its place.

Nothing here blocks: a question is a window-modal dialog, the answer comes back through a callable.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QObject, Qt, QTimer
from PySide6.QtWidgets import (
    QApplication,
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QMessageBox,
    QVBoxLayout,
    QWidget,
)

from calibrator.desk.parts import framed, label, with_some_letter
from calibrator.desk.plain_text import on_screen
from calibrator.desk.theme import the_theme
from calibrator.desk.widgets.stray_keys import SteadyLine, StrayNet

_held: set[QDialog] = set()  # questions with no window beneath them


class Ask(QObject):
    """Questions as dialogs over the active window."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.told_now: QMessageBox | None = None
        self._text = ""
        self._times = 0
        self._later: deque[str] = deque()

    def tell(self, text: str) -> None:
        """Say what went wrong and what to do about it.

        One such box at a time: the same once more is counted in it, anything else waits until it is read.
        """
        if self.told_now is None:
            self._show(text)
        elif text == self._text:
            self._times += 1
            self.told_now.setInformativeText(_so_often(self._times))
        elif text not in self._later:
            self._later.append(text)

    def _show(self, text: str) -> None:
        self._text, self._times = text, 1
        box = QMessageBox(QMessageBox.Icon.Warning, _title(), on_screen(text), QMessageBox.StandardButton.Ok, _window())
        box.setTextFormat(Qt.TextFormat.PlainText)
        box.destroyed.connect(self._read)  # read, or gone with the window beneath it
        self.told_now = box
        _open(box)

    def _read(self) -> None:
        self.told_now = None
        QTimer.singleShot(0, self, self._next)  # what the box stood over may be going at this moment

    def _next(self) -> None:
        if self._later and self.told_now is None:
            self._show(self._later.popleft())

    def confirm(
        self,
        question: str,
        yes: str,
        on_yes: Callable[[], None],
        other: tuple[str, Callable[[], None]] | None = None,
    ) -> None:
        """Put a question whose *yes* has a name of its own, `other` a second one; anything else changes nothing."""
        text, none = on_screen(question), QMessageBox.StandardButton.NoButton
        box = QMessageBox(QMessageBox.Icon.Question, _title(), text, none, _window())
        box.setTextFormat(Qt.TextFormat.PlainText)
        letters: set[str] = set()
        first = box.addButton(with_some_letter(yes, letters), QMessageBox.ButtonRole.AcceptRole)
        if other is None:
            box.accepted.connect(on_yes)
        else:
            second = box.addButton(with_some_letter(other[0], letters), QMessageBox.ButtonRole.AcceptRole)
            first.clicked.connect(partial(_act, on_yes))
            second.clicked.connect(partial(_act, other[1]))
        cancel = box.addButton(QMessageBox.StandardButton.Cancel)
        box.setDefaultButton(cancel)  # Enter, pressed once too often, changes nothing
        _open(box)

    def reason(self, question: str, on_text: Callable[[str], None], usual: Sequence[str] = ()) -> None:
        """Ask for a line of text that may not be empty; `usual` ones are put there with one press."""
        _open(_ReasonDialog(question, on_text, usual, _window()))

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


def _act(act: Callable[[], None], _checked: bool = False) -> None:
    """A button tells whether it is checked, which no answer asks."""
    act()


REASONS_IN_A_ROW = 3
"""More in one would be cut off on a small screen in Spanish."""


class _ReasonDialog(QDialog):
    def __init__(
        self, question: str, on_text: Callable[[str], None], usual: Sequence[str], parent: QWidget | None
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(_title())
        self._on_text = on_text
        asked = label(question)
        self._line = SteadyLine()
        self._line.setMaxLength(200)
        self._line.setAccessibleName(question)
        asked.setBuddy(self._line)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel)
        self._ok = buttons.button(QDialogButtonBox.StandardButton.Ok)
        self._ok.setEnabled(False)
        self._line.textChanged.connect(self._allow)
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        layout = framed(self)
        for widget in (asked, self._line, buttons):
            layout.addWidget(widget)
        if usual:
            self._suggest(usual, layout)
        self.setMinimumWidth(420)

    def _suggest(self, usual: Sequence[str], layout: QVBoxLayout) -> None:
        from calibrator.desk.forms.fields import Suggestions  # the day's page is up before anybody is asked

        offered = Suggestions(QCoreApplication.translate("Ask", "Often:"), self._line, REASONS_IN_A_ROW)
        layout.insertWidget(layout.count() - 1, offered)
        offered.offer(usual)  # in the dialog by now: the Tab key goes through them
        offered.chosen.connect(self._take)

    def _take(self, text: str) -> None:
        """A usual reason stands in the line like one that was typed: for both it is OK or Enter that takes it."""
        self._line.setText(text)
        self._line.setFocus(Qt.FocusReason.OtherFocusReason)

    def _allow(self, text: str) -> None:
        self._ok.setEnabled(bool(text.strip()))

    def accept(self) -> None:
        super().accept()
        self._on_text(self._line.text().strip())


def _when_chosen(dialog: QFileDialog, on_path: Callable[[Path], None]) -> None:
    def chosen() -> None:
        on_path(Path(dialog.selectedFiles()[0]))

    dialog.accepted.connect(chosen)  # `fileSelected` comes while the dialog is still up: what follows would go with it
    _open(dialog)


def _open(dialog: QDialog) -> None:
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    if not isinstance(dialog, QFileDialog):
        StrayNet(dialog)
    if dialog.parentWidget() is None:
        # Nothing else holds it: it would be gone at once, and the program go on without any window.
        _held.add(dialog)
        the_theme().dress(dialog)
        dialog.finished.connect(partial(_let_go, dialog))
    dialog.open()


def _let_go(dialog: QDialog, _result: int) -> None:
    _held.discard(dialog)


def _window() -> QWidget | None:
    """The window in front that stays: a dialog that is closing would take with it what is opened over it."""
    window = QApplication.activeWindow()
    while window is not None and not window.isVisible():
        beneath = window.parentWidget()
        window = beneath.window() if beneath is not None else None
    return window


def _so_often(times: int) -> str:
    return QCoreApplication.translate("Ask", "This happened {times} times.").format(times=times)


def _title() -> str:
    return QCoreApplication.translate("Ask", "Scoop calibration")
