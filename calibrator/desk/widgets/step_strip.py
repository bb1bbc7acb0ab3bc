"""Where one is in guided work: the steps in their order, done, open, to come."""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum
from typing import TypeVar

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFont, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from calibrator.desk.theme import tokens, ui_font

S = TypeVar("S", bound=StrEnum)

DOT = 13.0
RING = 3.0
MIDDLE = DOT + RING + 2


class StepStrip(QWidget):
    """A line with a numbered dot for each step; a click asks for it, whether it can be opened yet or not."""

    chosen = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self._names: dict[StrEnum, str] = {}
        self._open: StrEnum | None = None
        self._reachable: frozenset[StrEnum] = frozenset()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def set_names(self, names: Mapping[S, str]) -> None:
        self._names = dict(names.items())
        self.update()

    def show_place(self, step: S, reachable: frozenset[S]) -> None:
        """Mark the open step, and which others can be opened."""
        self._open, self._reachable = step, frozenset[StrEnum](reachable)
        number = list(self._names).index(step) + 1
        place = self.tr("Step {number} of {count}: {name}")
        self.setAccessibleName(place.format(number=number, count=len(self._names), name=self._names[step]))
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(600, 58)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        t = tokens()
        here = list(self._names).index(self._open) if self._open else 0
        for index, (step, name) in enumerate(self._names.items()):
            x = self._x(index)
            if index:
                painter.setPen(
                    QPen(
                        QColor(t.action if index <= here else t.edge), 2, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap
                    )
                )
                from_x, to_x = self._x(index - 1) + _reach(index - 1 - here), x - _reach(index - here)
                painter.drawLine(QPointF(from_x, MIDDLE), QPointF(to_x, MIDDLE))
            self._paint_dot(painter, x, index, index - here, step in self._reachable)
            current = step == self._open
            painter.setFont(ui_font(0.92, QFont.Weight.Bold if current else QFont.Weight.Normal))
            painter.setPen(QColor(t.text if current or step in self._reachable else t.quiet))
            width = self.width() / len(self._names)
            painter.drawText(QRectF(x - width / 2, MIDDLE + DOT + 6, width, 22), Qt.AlignmentFlag.AlignHCenter, name)
        painter.end()

    def _paint_dot(self, painter: QPainter, x: float, index: int, offset: int, reachable: bool) -> None:
        t = tokens()
        fill, text = (t.action, t.on_action) if offset <= 0 else (t.surface, t.text if reachable else t.quiet)
        painter.setBrush(QColor(fill))
        painter.setPen(QPen(QColor(t.action if offset <= 0 or reachable else t.edge), 2))
        dot = QRectF(x - DOT, MIDDLE - DOT, 2 * DOT, 2 * DOT)
        painter.drawEllipse(dot)
        if offset == 0:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawEllipse(dot.adjusted(-RING, -RING, RING, RING))
        painter.setPen(QColor(text))
        painter.setFont(ui_font(0.95, QFont.Weight.Bold))
        painter.drawText(dot, Qt.AlignmentFlag.AlignCenter, str(index + 1))

    def _x(self, index: int) -> float:
        return self.width() / max(len(self._names), 1) * (index + 0.5)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if self._names:
            index = int(event.position().x() // (self.width() / len(self._names)))
            self.chosen.emit(list(self._names)[min(max(index, 0), len(self._names) - 1)].value)


def _reach(offset: int) -> float:
    """How far from a dot's middle the line begins: the open step has a ring around it."""
    return DOT + RING + 1 if offset == 0 else DOT + 1
