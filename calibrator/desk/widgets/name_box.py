"""A check box for a name that people chose: one longer than its room ends in dots, the whole is told over it."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QCheckBox, QSizePolicy, QStyle, QStyleOptionButton

from calibrator.desk.plain_text import on_screen, tip

NARROWEST = 120


class NameBox(QCheckBox):
    """`text()` stays whole; only what is painted is shortened."""

    def __init__(self, name: str) -> None:
        super().__init__(on_screen(name).replace("&", "&&"))
        self.setToolTip(tip(name))
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)

    def minimumSizeHint(self) -> QSize:
        return QSize(min(NARROWEST, super().minimumSizeHint().width()), super().minimumSizeHint().height())

    def initStyleOption(self, option: QStyleOptionButton) -> None:  # noqa: N802
        super().initStyleOption(option)
        room = self.style().subElementRect(QStyle.SubElement.SE_CheckBoxContents, option, self).width()
        option.text = self.fontMetrics().elidedText(option.text, Qt.TextElideMode.ElideRight, room)
