"""A dialog that is only read: what it tells, and one button to close it."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QAbstractSlider, QDialog, QWidget

from calibrator.desk.parts import button, framed, row
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.fitting import fit, whole

WIDTH, MOST_HIGH = 760, 600
Move = QAbstractSlider.SliderAction
MOVES = {
    Qt.Key.Key_Down: Move.SliderSingleStepAdd,
    Qt.Key.Key_Up: Move.SliderSingleStepSub,
    Qt.Key.Key_PageDown: Move.SliderPageStepAdd,
    Qt.Key.Key_PageUp: Move.SliderPageStepSub,
    Qt.Key.Key_Home: Move.SliderToMinimum,
    Qt.Key.Key_End: Move.SliderToMaximum,
}


class ReadingDialog(QDialog):
    """Escape, Enter or the button closes it, and it is gone; the keys that scroll do, whatever has the focus."""

    def __init__(self, title: str, told: QWidget, parent: QWidget | None) -> None:
        super().__init__(parent)
        self.setWindowTitle(title)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.close_button = button(self.tr("Close"), self.close, "main")
        layout = framed(self)
        layout.setSpacing(2 * SPACE)
        self.area = whole(told)
        layout.addWidget(self.area, 1)
        layout.addLayout(row(None, self.close_button))
        self.close_button.setFocus()
        bar = self.area.verticalScrollBar()
        for key, move in MOVES.items():
            QShortcut(QKeySequence(key), self).activated.connect(partial(bar.triggerAction, move))
        _with_edges(told)
        width = max(WIDTH, layout.totalMinimumSize().width())
        fit(self, width, min(MOST_HIGH, layout.totalHeightForWidth(width)))


def _with_edges(told: QWidget) -> None:
    """Have the edges measured that the style sheet gives: known only now, they would lack their room."""
    for part in told.findChildren(QWidget):
        part.ensurePolished()
        part.updateGeometry()
    layout = told.layout()
    if layout is not None:
        layout.activate()
