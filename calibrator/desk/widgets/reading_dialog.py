"""A dialog that is only read: what it tells, and one button to close it."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QWidget

from calibrator.desk.parts import button, framed, row
from calibrator.desk.theme import SPACE


class ReadingDialog(QDialog):
    """Escape, Enter or the button closes it, and it is gone."""

    def __init__(self, title: str, told: QWidget, parent: QWidget | None) -> None:
        super().__init__(parent)
        self.setWindowTitle(title)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.close_button = button(self.tr("Close"), self.close, "main")
        layout = framed(self)
        layout.setSpacing(2 * SPACE)
        layout.addWidget(told, 1)
        layout.addLayout(row(None, self.close_button))
        self.close_button.setFocus()
