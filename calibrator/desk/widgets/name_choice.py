"""A choice among names that people chose: closed, one too long has dots amid it; open, every one is read whole."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QPaintEvent
from PySide6.QtWidgets import QStyle, QStyleOptionComboBox, QStylePainter

from calibrator.desk.widgets.calm_box import CalmBox

_AROUND_PX = 40  # frame, scroll bar and air of the open list


class NameChoice(CalmBox):
    """As `CalmBox`; only what is painted is shortened, and the list opens as wide as its names."""

    def paintEvent(self, event: QPaintEvent) -> None:
        option = QStyleOptionComboBox()
        self.initStyleOption(option)
        option.currentText = self._shortened(option)
        painter = QStylePainter(self)
        painter.drawComplexControl(QStyle.ComplexControl.CC_ComboBox, option)
        painter.drawControl(QStyle.ControlElement.CE_ComboBoxLabel, option)

    def showPopup(self) -> None:
        widest = max(self.view().sizeHintForColumn(0) + _AROUND_PX, self.width())
        self.view().setMinimumWidth(min(widest, self.screen().availableGeometry().width()))
        super().showPopup()

    def _shortened(self, option: QStyleOptionComboBox) -> str:
        part = QStyle.SubControl.SC_ComboBoxEditField
        room = self.style().subControlRect(QStyle.ComplexControl.CC_ComboBox, option, part, self).width()
        # Groups of a plan differ in their end, lots in their beginning.
        return self.fontMetrics().elidedText(option.currentText, Qt.TextElideMode.ElideMiddle, room)
