"""A field for a whole number: digits only, the arrow keys count up and down."""

from __future__ import annotations

from PySide6.QtCore import QRegularExpression, Qt, QTimer, Signal
from PySide6.QtGui import QFocusEvent, QHideEvent, QKeyEvent, QRegularExpressionValidator

from calibrator.desk.widgets.saying import Bubble
from calibrator.desk.widgets.stray_keys import SteadyLine

MOST = 99_999
READ_MS = 8000  # how long a sentence stands that nobody sends away
_UP_DOWN = {Qt.Key.Key_Up: 1, Qt.Key.Key_Down: -1}


class CountField(SteadyLine):
    """An empty field counts as the least number. `counted` tells every change that a person makes.

    Where a `blank` is given, the least number is none: the field stays empty and shows those words instead.
    """

    counted = Signal(int)

    def __init__(self, least: int = 0, most: int = MOST, blank: str = "") -> None:
        super().__init__()
        self._least, self._most = least, most
        self._blank = blank
        self.setValidator(QRegularExpressionValidator(QRegularExpression(r"[0-9]{0,5}"), self))
        self.setInputMethodHints(Qt.InputMethodHint.ImhDigitsOnly)
        self.setPlaceholderText(blank or str(least))
        self._bubble: Bubble | None = None
        self._long_enough = QTimer(self)
        self._long_enough.setSingleShot(True)
        self._long_enough.setInterval(READ_MS)
        self._long_enough.timeout.connect(self._quiet)
        self._refused_after: str | None = None  # what stood there when a sign was refused
        self._stood = ""  # a refusal comes while the refused sign still stands in the text
        self.textChanged.connect(self._note_text)
        self.inputRejected.connect(self._reject)
        self.textEdited.connect(self._tell)
        self.editingFinished.connect(self._tidy)

    def count(self) -> int:
        """The number as typed, kept between the least and the most."""
        return min(max(int(self.text() or self._least), self._least), self._most)

    def set_count(self, count: int) -> None:
        """Show a number; what shows it already stays as it is, cursor and all."""
        if self.count() != count or not (self.text() or self.hasFocus()):
            self.setText(self._shown(count))

    def _shown(self, count: int) -> str:
        return "" if self._blank and count == self._least else str(count)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if event.reason() != Qt.FocusReason.MouseFocusReason:
            self.selectAll()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        step = _UP_DOWN.get(Qt.Key(event.key()))
        if step is None:
            super().keyPressEvent(event)
            return
        self.setText(self._shown(min(max(self.count() + step, self._least), self._most)))
        self._tell()

    def _note_text(self, text: str) -> None:
        self._stood = text

    def _reject(self) -> None:
        self._refused_after = self._stood
        self._refuse()

    def _refuse(self) -> None:
        """A sign that was not taken is answered: what stands in the field is not what was meant."""
        words = self.tr("Only whole numbers go in here, from {least} to {most}.")
        self._bubble = self._bubble or Bubble(self)
        self._bubble.setProperty("state", "wrong")
        self._bubble.tell(words.format(least=self._least, most=self._most), self, beneath=self.height())
        self.setAccessibleDescription(self._bubble.text())
        self._long_enough.start()

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        self._quiet()

    def _quiet(self) -> None:
        if self._bubble is not None and self._bubble.isVisible():
            self._bubble.hide()
            self.setAccessibleDescription("")
        self._refused_after = None

    def _tidy(self) -> None:
        shown = self._shown(self.count())
        if self.text() == shown:
            return
        beyond = self._beyond()
        self.setText(shown)
        if beyond:
            self._refuse()  # what was typed is not what stands there now

    def _beyond(self) -> bool:
        return bool(self.text()) and int(self.text()) != self.count()

    def _tell(self) -> None:
        after, text = self._refused_after, self.text()
        # What goes on after a refused sign is not what was meant: 2.5 must not pass as 25.
        going_on = after is not None and text.startswith(after) and len(text) > max(len(after), len(self._stood))
        if going_on or (text and int(text) > self._most):
            self._refuse()
        else:
            self._quiet()
        self.counted.emit(self.count())
