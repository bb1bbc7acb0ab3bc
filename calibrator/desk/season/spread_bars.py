"""Spreads as bars with their 95 % intervals, each with its figure in words beside it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from calibrator.desk.theme import the_theme, tokens, ui_font
from calibrator.values import dataclass

ROW_PX, BAR_PX, GAP_PX = 34, 14, 12.0
LEAST_FULL = 0.01


@dataclass(frozen=True)
class Bar:
    """One spread: its caption, what it is as text, and value and interval as shares (None where not known)."""

    caption: str
    text: str
    value: float | None
    low: float = 0.0
    high: float = 0.0


class SpreadBars(QWidget):
    """Bars under one another on one scale; read out line by line."""

    def __init__(self) -> None:
        super().__init__()
        self.bars: tuple[Bar, ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        the_theme().changed.connect(self.update)

    def show_bars(self, bars: Sequence[Bar]) -> None:
        """Draw these."""
        self.bars = tuple(bars)
        self.setAccessibleDescription(". ".join(f"{bar.caption}: {bar.text}" for bar in bars))
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(520, ROW_PX * max(1, len(self.bars)) + 4)

    def minimumSizeHint(self) -> QSize:
        return QSize(360, self.sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        if not self.bars:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(ui_font())
        metrics = QFontMetricsF(painter.font())
        captions = max(metrics.horizontalAdvance(bar.caption) for bar in self.bars) + GAP_PX
        texts = max(metrics.horizontalAdvance(bar.text) for bar in self.bars) + GAP_PX
        room = max(40.0, self.width() - captions - texts)
        full = max(LEAST_FULL, *(min(bar.high, 3 * (bar.value or 0.0)) for bar in self.bars if bar.value is not None))
        for place, bar in enumerate(self.bars):
            self._paint_bar(painter, bar, place * ROW_PX, captions, room, full)
        painter.end()

    def _paint_bar(self, painter: QPainter, bar: Bar, top: float, left: float, room: float, full: float) -> None:
        t, middle = tokens(), top + ROW_PX / 2
        painter.setPen(QColor(t.text))
        flags = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
        painter.drawText(QRectF(0, top, left, ROW_PX), flags, bar.caption)
        painter.drawText(QRectF(left + room + GAP_PX, top, self.width() - left - room, ROW_PX), flags, bar.text)
        if bar.value is None:
            return
        painter.setPen(QPen(QColor(t.action), 1.5))
        painter.setBrush(QColor(t.action_soft))
        painter.drawRoundedRect(QRectF(left, middle - BAR_PX / 2, room * min(1, bar.value / full), BAR_PX), 3, 3)
        low, high = (left + room * min(1.0, end / full) for end in (bar.low, bar.high))
        painter.setPen(QPen(QColor(t.text), 2))
        painter.drawLine(QPointF(low, middle), QPointF(high, middle))
        for x, told in ((low, True), (high, bar.high <= full)):
            if told:  # an end beyond the scale is open, not cut off at it
                painter.drawLine(QPointF(x, middle - 5), QPointF(x, middle + 5))
