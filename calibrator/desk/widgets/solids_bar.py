"""Solids on a line: the band that is wanted, the reading as a dot, its interval as a bar."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from calibrator.desk.theme import tokens, ui_font
from calibrator.science.check import Judged, Verdict

HEIGHT = 64
SIDE = 14.0


class SolidsBar(QWidget):
    """Told to readers of the screen by its accessible description, which the page sets."""

    def __init__(self) -> None:
        super().__init__()
        self._judged: Judged | None = None
        self._ends = ("", "")
        self._target = ""
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def show_judged(self, judged: Judged, ends: tuple[str, str], target: str) -> None:
        """Draw a verdict; `ends` and `target` are the limits and the aim as people read them."""
        self._judged, self._ends, self._target = judged, ends, target
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(300, HEIGHT)

    def minimumSizeHint(self) -> QSize:
        return QSize(200, HEIGHT)

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._judged is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._paint(painter, self._judged)
        painter.end()

    def _paint(self, painter: QPainter, judged: Judged) -> None:
        t, middle = tokens(), 24.0
        low, high = judged.target - judged.tolerance, judged.target + judged.tolerance
        left, right = self._x(low), self._x(high)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(t.edge))
        painter.drawRoundedRect(QRectF(SIDE, middle - 3, self.width() - 2 * SIDE, 6), 3, 3)
        painter.setPen(QPen(QColor(t.good), 1.5))
        painter.setBrush(QColor(t.good_soft))
        painter.drawRoundedRect(QRectF(left, middle - 14, right - left, 28), 5, 5)
        painter.drawLine(QPointF(self._x(judged.target), middle - 14), QPointF(self._x(judged.target), middle + 14))
        self._write_ends(painter, left, right)
        self._paint_reading(painter, judged, middle)

    def _paint_reading(self, painter: QPainter, judged: Judged, middle: float) -> None:
        t = tokens()
        colours = {Verdict.INSIDE: t.good, Verdict.CANNOT_TELL: t.warn}
        colour = QColor(colours.get(judged.verdict, t.bad))
        painter.setPen(QPen(QBrush(colour), 4, c=Qt.PenCapStyle.RoundCap))
        painter.drawLine(QPointF(self._x(judged.low), middle), QPointF(self._x(judged.high), middle))
        painter.setPen(QPen(QColor(t.surface), 2))
        painter.setBrush(colour)
        painter.drawEllipse(QPointF(self._x(judged.target + judged.deviation), middle), 8, 8)

    def _write_ends(self, painter: QPainter, left: float, right: float) -> None:
        painter.setPen(QColor(tokens().quiet))
        painter.setFont(ui_font(0.85))
        wide = painter.fontMetrics().horizontalAdvance(self._ends[0]) + 6.0
        places: tuple[tuple[float, str], ...]
        if right - left > 2 * wide:
            places = ((left, self._ends[0]), (right, self._ends[1]))
        else:
            places = (((left + right) / 2, self._target),)
        for x, text in places:
            box = QRectF(min(max(x - wide, 0.0), self.width() - 2 * wide), 42, 2 * wide, 20)
            painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)

    def _x(self, share: float) -> float:
        """Where a share stands: the wanted band in the middle, everything shown fits in."""
        assert self._judged is not None
        j = self._judged
        reach = max(2.2 * j.tolerance, abs(j.low - j.target), abs(j.high - j.target)) * 1.08
        place = (share - j.target + reach) / (2 * reach)
        return SIDE + max(0.0, min(1.0, place)) * (self.width() - 2 * SIDE)
