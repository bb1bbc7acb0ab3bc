"""The program's emblem: a scoop cut through the middle, with its fill mark."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, QSizeF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QWidget

from calibrator.desk.theme import tokens

LEAST_PX = 24  # lower than that it would be a blot


class Emblem(QWidget):
    """A tapered cup, powder up to an orange line."""

    def sizeHint(self) -> QSize:
        return QSize(72, 64)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        room = QRectF(self.rect()).adjusted(4, 4, -4, -4)
        box = QRectF(0, 0, *(QSizeF(64, 56).scaled(room.size(), Qt.AspectRatioMode.KeepAspectRatio).toTuple()))
        box.moveCenter(room.center())  # a low window leaves it less room, never another shape
        if box.height() >= LEAST_PX:
            paint_emblem(painter, box)
        painter.end()


def paint_emblem(painter: QPainter, box: QRectF) -> None:
    """Draw the emblem into a box, in the colours in force."""
    t = tokens()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.save()
    painter.translate(box.topLeft())
    painter.scale(box.width() / 64, box.height() / 56)
    powder = QPolygonF([QPointF(13.2, 22), QPointF(42.8, 22), QPointF(38, 50), QPointF(18, 50)])
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(t.action_soft))
    painter.drawPolygon(powder)
    cup = QPainterPath(QPointF(10, 4))
    cup.lineTo(18, 51)
    cup.lineTo(38, 51)
    cup.lineTo(46, 4)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(QColor(t.action), 4, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap, Qt.PenJoinStyle.RoundJoin))
    painter.drawPath(cup)
    painter.drawLine(QPointF(47, 9), QPointF(61, 9))
    painter.setPen(QPen(QColor(t.mark), 4, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap))
    painter.drawLine(QPointF(14.5, 22), QPointF(41.5, 22))
    painter.restore()
