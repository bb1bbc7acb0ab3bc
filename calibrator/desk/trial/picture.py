"""Each person's fills as dots on a line of their own, their mean as a stroke, the mean of all dashed."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from calibrator.desk.theme import tokens, ui_font
from calibrator.values import dataclass

LINE_HEIGHT, FOOT = 34, 24
NAME_SHARE = 0.24


@dataclass(frozen=True)
class Row:
    """A person with the weights that count, g, and their mean."""

    name: str
    masses: tuple[float, ...]
    mean_g: float


class TrialPicture(QWidget):
    """What it shows is told to screen readers by its accessible description, which the page sets."""

    def __init__(self) -> None:
        super().__init__()
        self._rows: tuple[Row, ...] = ()
        self._middle: float | None = None
        self._ends = ("", "")
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def show_rows(self, rows: tuple[Row, ...], middle_g: float | None, ends: tuple[str, str]) -> None:
        """Draw people; `ends` are the lightest and the heaviest fill as people read them."""
        self._rows, self._middle, self._ends = rows, middle_g, ends
        self.setVisible(bool(rows))
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(320, LINE_HEIGHT * max(1, len(self._rows)) + FOOT)

    def minimumSizeHint(self) -> QSize:
        return QSize(220, self.sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(ui_font(0.9))
        for place, row in enumerate(self._rows):
            self._paint_row(painter, row, LINE_HEIGHT * (place + 0.5))
        self._paint_foot(painter)
        painter.end()

    def _paint_row(self, painter: QPainter, row: Row, y: float) -> None:
        t, left = tokens(), self._left()
        painter.setPen(QColor(t.text))
        name = painter.fontMetrics().elidedText(row.name, Qt.TextElideMode.ElideRight, int(left) - 20)
        painter.drawText(QRectF(0, y - 12, left - 16, 24), Qt.AlignmentFlag.AlignVCenter, name)
        painter.setPen(QPen(QColor(t.edge), 1))
        painter.drawLine(QPointF(left - 8, y), QPointF(self.width() - 4, y))
        painter.setPen(QPen(QColor(t.text), 1.5))
        painter.setBrush(QColor(t.action_soft))
        for mass in row.masses:
            painter.drawEllipse(QPointF(self._x(mass), y), 5.5, 5.5)
        painter.setPen(QPen(QColor(t.action), 3))
        x = self._x(row.mean_g)
        painter.drawLine(QPointF(x, y - 12), QPointF(x, y + 12))

    def _paint_foot(self, painter: QPainter) -> None:
        t, bottom = tokens(), float(LINE_HEIGHT * len(self._rows))
        if self._middle is not None:
            painter.setPen(QPen(QColor(t.quiet), 1.5, Qt.PenStyle.DashLine))
            x = self._x(self._middle)
            painter.drawLine(QPointF(x, 2), QPointF(x, bottom - 2))
        painter.setPen(QColor(t.quiet))
        box = QRectF(self._left() - 8, bottom, self.width() - self._left() + 4, FOOT)
        painter.drawText(box, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, self._ends[0])
        painter.drawText(box, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, self._ends[1])

    def _left(self) -> float:
        return self.width() * NAME_SHARE + 16

    def _x(self, mass_g: float) -> float:
        masses = [mass for row in self._rows for mass in row.masses]
        low, high = min(masses), max(masses)
        span = high - low or 1.0
        left, right = self._left(), self.width() - 12
        return left + (mass_g - low) / span * (right - left) if high > low else (left + right) / 2
