"""A check box for words with names that people chose: on as many lines as they need, so that they are read whole."""

from __future__ import annotations

from PySide6.QtCore import QRect, QSize
from PySide6.QtGui import QResizeEvent, QTextLayout, QTextOption
from PySide6.QtWidgets import QCheckBox, QSizePolicy, QStyle, QStyleOptionButton

from calibrator.desk.plain_text import on_screen

NARROWEST = 120
_ENDLESS_PX = 10_000


class NameBox(QCheckBox):
    """`text()` stays one line; only what is painted is wrapped."""

    def __init__(self, name: str) -> None:
        super().__init__(on_screen(name).replace("&", "&&"))
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def lines(self, width: int) -> list[str]:
        """The words as they are painted in a box of this width."""
        return self._wrapped(self._contents(width).width())

    def minimumSizeHint(self) -> QSize:
        return QSize(min(NARROWEST, super().minimumSizeHint().width()), super().minimumSizeHint().height())

    def sizeHint(self) -> QSize:
        return QSize(super().sizeHint().width(), self.heightForWidth(self.width()))

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        around = _ENDLESS_PX - self._contents(width).height()
        return max(super().sizeHint().height(), len(self.lines(width)) * self.fontMetrics().lineSpacing() + around)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.updateGeometry()

    def initStyleOption(self, option: QStyleOptionButton) -> None:
        super().initStyleOption(option)
        room = self.style().subElementRect(QStyle.SubElement.SE_CheckBoxContents, option, self).width()
        option.text = "\n".join(self._wrapped(room))

    def _contents(self, width: int) -> QRect:
        """What is beside the box itself, of a height that is none."""
        option = QStyleOptionButton()
        super().initStyleOption(option)
        option.rect = QRect(0, 0, width, _ENDLESS_PX)
        return self.style().subElementRect(QStyle.SubElement.SE_CheckBoxContents, option, self)

    def _wrapped(self, room: int) -> list[str]:
        words = self.text().replace("&&", "&")
        layout = QTextLayout(words, self.font())
        option = QTextOption()
        option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
        layout.setTextOption(option)
        layout.beginLayout()
        found: list[str] = []
        while (line := layout.createLine()).isValid():
            line.setLineWidth(max(room, 1))
            start, length = line.textStart(), line.textLength()
            found.append(words[start : start + length].strip().replace("&", "&&"))
        layout.endLayout()
        return found or [""]
