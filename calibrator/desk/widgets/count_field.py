"""A field for a whole number: digits only, the arrow keys count up and down."""

from __future__ import annotations

from PySide6.QtCore import QRegularExpression, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QRegularExpressionValidator
from PySide6.QtWidgets import QLineEdit

MOST = 99_999
_UP_DOWN = {Qt.Key.Key_Up: 1, Qt.Key.Key_Down: -1}


class CountField(QLineEdit):
    """An empty field counts as the least number. `counted` tells every change that a person makes."""

    counted = Signal(int)

    def __init__(self, least: int = 0, most: int = MOST) -> None:
        super().__init__()
        self._least, self._most = least, most
        self.setValidator(QRegularExpressionValidator(QRegularExpression(r"[0-9]{0,5}"), self))
        self.setInputMethodHints(Qt.InputMethodHint.ImhDigitsOnly)
        self.setPlaceholderText(str(least))
        self.textEdited.connect(self._tell)
        self.editingFinished.connect(self._tidy)

    def count(self) -> int:
        """The number as typed, kept between the least and the most."""
        return min(max(int(self.text() or self._least), self._least), self._most)

    def set_count(self, count: int) -> None:
        """Show a number; what shows it already stays as it is, cursor and all."""
        if self.count() != count or not (self.text() or self.hasFocus()):
            self.setText(str(count))

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if event.reason() != Qt.FocusReason.MouseFocusReason:
            self.selectAll()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        step = _UP_DOWN.get(Qt.Key(event.key()))
        if step is None:
            super().keyPressEvent(event)
            return
        self.setText(str(min(max(self.count() + step, self._least), self._most)))
        self._tell()

    def _tidy(self) -> None:
        if self.text() != str(self.count()):
            self.setText(str(self.count()))

    def _tell(self) -> None:
        self.counted.emit(self.count())
