"""Initials stand there from the last time; what is typed takes their place instead of being added."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QFocusEvent
from PySide6.QtWidgets import QLineEdit


def select_on_entry(line: QLineEdit) -> None:
    """Select all that stands in a line whenever it is entered, by key, by the program or by a click."""
    line.installEventFilter(_Selecting(line))


class _Selecting(QObject):
    def __init__(self, line: QLineEdit) -> None:
        super().__init__(line)
        self._clicked = False

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if not isinstance(watched, QLineEdit):  # what is left of a line on its way out
            return False
        if isinstance(event, QFocusEvent) and event.type() == QEvent.Type.FocusIn:
            # A press sets the cursor after this: then it is the release that selects.
            self._clicked = event.reason() == Qt.FocusReason.MouseFocusReason
            coming_back = event.reason() in (Qt.FocusReason.ActiveWindowFocusReason, Qt.FocusReason.PopupFocusReason)
            if not coming_back:
                watched.selectAll()
        elif event.type() == QEvent.Type.MouseButtonRelease and self._clicked:
            self._clicked = False
            if not watched.hasSelectedText():  # unless a part was chosen by drawing over it
                watched.selectAll()
        return False
