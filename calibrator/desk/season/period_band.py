"""A band beneath a chart over days: all lots as ticks, and the period shown as a window to be dragged."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QLineF, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from calibrator.desk.theme import the_theme, tokens

HEIGHT = 30
SIDE = 6.0
GRIP_PX = 9.0
LEAST_DAYS = 14.0
STEP_SHARE = 0.2
NEARER = 0.7


class PeriodBand(QWidget):
    """Dragging the window moves it, dragging an end makes it longer, dragging beside it begins a new one.

    By keys: Left and Right move it, plus and minus make it shorter and longer, Home shows all.
    """

    chosen = Signal(float, float)

    def __init__(self) -> None:
        super().__init__()
        self._days: NDArray[np.float64] = np.empty(0)
        self._whole = (0.0, 1.0)
        self._period = (0.0, 1.0)
        self._held: tuple[str, float, tuple[float, float]] | None = None
        self._ticks: tuple[int, list[QLineF]] | None = None  # at a width of the widget
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setMouseTracking(True)
        the_theme().changed.connect(self.update)

    @property
    def period(self) -> tuple[float, float]:
        """First and last day of the window, as day numbers."""
        return self._period

    def show_days(self, days: NDArray[np.float64], whole: tuple[float, float]) -> None:
        """The days of all lots, and the days from end to end."""
        self._days, self._whole, self._ticks = days, whole, None
        self.update()

    def show_period(self, first: float, last: float) -> None:
        """Put the window where the chart is now; tells nobody."""
        self._period = first, last
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(300, HEIGHT)

    def minimumSizeHint(self) -> QSize:
        return QSize(120, HEIGHT)

    def _x(self, day: float) -> float:
        first, last = self._whole
        return SIDE + (self.width() - 2 * SIDE) * (day - first) / (last - first)

    def _day(self, x: float) -> float:
        first, last = self._whole
        return first + (last - first) * (x - SIDE) / max(1.0, self.width() - 2 * SIDE)

    def _choose(self, first: float, last: float) -> None:
        """Keep the window inside, and as long as a fortnight."""
        start, end = self._whole
        length = min(max(last - first, min(LEAST_DAYS, end - start)), end - start)
        first = min(max(first, start), end - length)
        self._period = first, first + length
        self.update()
        self.chosen.emit(*self._period)

    def _part_at(self, x: float) -> str:
        left, right = (self._x(day) for day in self._period)
        if abs(x - left) <= GRIP_PX:
            return "first"
        if abs(x - right) <= GRIP_PX:
            return "last"
        return "all" if left < x < right else "new"

    def mousePressEvent(self, event: QMouseEvent) -> None:
        x = event.position().x()
        self._held = self._part_at(x), self._day(x), self._period
        self.setFocus(Qt.FocusReason.MouseFocusReason)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        x = event.position().x()
        if self._held is None:
            part = self._part_at(x)
            shapes = {"all": Qt.CursorShape.OpenHandCursor, "new": Qt.CursorShape.CrossCursor}
            self.setCursor(shapes.get(part, Qt.CursorShape.SizeHorCursor))
            return
        part, from_day, (first, last) = self._held
        day = self._day(x)
        if part == "all":
            self._choose(first + day - from_day, last + day - from_day)
        elif part == "first":
            self._choose(min(day, last - LEAST_DAYS), last)
        elif part == "last":
            self._choose(first, max(day, first + LEAST_DAYS))
        elif abs(day - from_day) >= LEAST_DAYS / 2:
            self._choose(min(day, from_day), max(day, from_day))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self._held = None

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        self._choose(*self._whole)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        first, last = self._period
        middle, length = (first + last) / 2, last - first
        step = STEP_SHARE * length
        wanted = {
            Qt.Key.Key_Left: (first - step, last - step),
            Qt.Key.Key_Right: (first + step, last + step),
            Qt.Key.Key_Plus: (middle - NEARER * length / 2, middle + NEARER * length / 2),
            Qt.Key.Key_Minus: (middle - length / NEARER / 2, middle + length / NEARER / 2),
            Qt.Key.Key_Home: self._whole,
        }.get(Qt.Key(event.key()))
        if wanted is None:
            super().keyPressEvent(event)
        else:
            self._choose(*wanted)

    def paintEvent(self, event: QPaintEvent) -> None:
        t, painter = tokens(), QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        frame = QRectF(1, 1, self.width() - 2, self.height() - 2)
        painter.setPen(QPen(QColor(t.action if self.hasFocus() else t.edge), 2 if self.hasFocus() else 1))
        painter.setBrush(QColor(t.ground))
        painter.drawRoundedRect(frame, 6, 6)
        left, right = (min(max(self._x(day), SIDE), self.width() - SIDE) for day in self._period)
        painter.setPen(QPen(QColor(t.action), 1.5))
        painter.setBrush(QColor(t.action_soft))
        painter.drawRoundedRect(QRectF(left, 3, max(4.0, right - left), self.height() - 6), 4, 4)
        self._draw_ticks(painter)
        for x in (left, right):
            painter.setPen(QPen(QColor(t.action), 4))
            painter.drawLine(QPointF(x, 9), QPointF(x, self.height() - 9))
        painter.end()

    def _draw_ticks(self, painter: QPainter) -> None:
        """One tick a lot; those on one pixel are one."""
        if self._ticks is None or self._ticks[0] != self.width():
            first, last = self._whole
            places = SIDE + (self.width() - 2 * SIDE) * (self._days - first) / (last - first)
            middle, lots = self.height() / 2, set(np.round(places).tolist())
            self._ticks = self.width(), [QLineF(x + 0.5, middle - 5, x + 0.5, middle + 5) for x in lots]
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        painter.setPen(QPen(QColor(tokens().quiet), 1))
        painter.drawLines(self._ticks[1])
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
