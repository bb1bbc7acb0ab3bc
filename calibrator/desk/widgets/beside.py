"""A form and what it comes to beside it, with one scroll bar for both."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QScrollArea, QSizePolicy, QWidget

from calibrator.desk.parts import scrolled
from calibrator.desk.theme import SPACE

FORM, TOLD = 11, 10  # their shares of the width


def beside(form: QWidget, told: QWidget) -> QScrollArea:
    """Both in one frame that scrolls; what is told stays in view while a longer form is scrolled."""
    inner = QWidget()
    area = scrolled(inner)
    halves = QHBoxLayout(inner)
    halves.setContentsMargins(0, 0, 0, 0)
    halves.setSpacing(2 * SPACE)
    form.setObjectName("form")
    halves.addWidget(form, FORM)
    halves.addWidget(_Staying(told, area), TOLD)
    return area


class _Staying(QWidget):
    """As much room as the form takes; what is told moves down in it as far as the frame is scrolled."""

    def __init__(self, told: QWidget, area: QScrollArea) -> None:
        super().__init__()
        self._told, self._bar = told, area.verticalScrollBar()
        told.setParent(self)
        # Words of what is told never make the form narrower: nothing moves while somebody types.
        policy = QSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        self._bar.valueChanged.connect(self._place)

    def heightForWidth(self, width: int) -> int:
        return max(self._told.heightForWidth(width), self._told.minimumSizeHint().height())

    def sizeHint(self) -> QSize:
        return QSize(self._told.sizeHint().width(), self.heightForWidth(max(self.width(), 1)))

    def minimumSizeHint(self) -> QSize:
        return QSize(0, 0)

    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.LayoutRequest:
            self.updateGeometry()
            self._place()
        return super().event(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._place()

    def _place(self) -> None:
        height = self.heightForWidth(self.width())
        down = max(0, min(self._bar.value(), self.height() - height))
        self._told.setGeometry(0, down, self.width(), height)
