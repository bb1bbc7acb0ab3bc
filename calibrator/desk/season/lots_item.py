"""Draws lots as dots with interval bars, each of them, twenty thousand as smoothly as twenty.

Few in view are drawn finely. Many would lie over each other: they are set into a picture of pixels, every lot at its
place (`lots_dense`).
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
import pyqtgraph as pg
from numpy.typing import NDArray
from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen, QPolygonF

from calibrator.desk.season.lots_dense import DensePicture
from calibrator.desk.theme import tokens, ui_font

FINE_UP_TO = 400
NAMED_UP_TO = 8
DOT_PX, SMALL_PX, MARKED_PX = 9.0, 6.0, 13.0
MANY = 60  # from so many in view on, dots are drawn smaller, or they would hide the bars
EDGE_PX = 12
APART_PX, DAY_PX = 10.0, 60.0  # least distance of two lots of one day, and what a day's lots take for it at most
TAG_PX = 24.0
GAP_PX = 4.0

Floats = NDArray[np.float64]
Bools = NDArray[np.bool_]


class LotsItem(pg.GraphicsObject):  # type: ignore[misc]  # pyqtgraph tells no types
    """Places along the time axis must rise. `marked` lots are diamonds, larger; `hollow` ones are outlines; the current
    one has a ring."""

    def __init__(self) -> None:
        super().__init__()
        none = np.empty(0)
        self.days, self.values, self.lows, self.highs = none, none, none, none
        self.marked = self.hollow = np.empty(0, dtype=bool)
        self.current = -1
        self.names: tuple[str, ...] = ()  # the lots' numbers, drawn where few are in view
        self.states: tuple[str, ...] = ()  # what is said of those fed or waiting, blank for the others
        self.tags: tuple[tuple[int, float], ...] = ()
        self._dense: tuple[object, DensePicture] | None = None  # as of what it was drawn

    def show_lots(self, x: Floats, y: Floats, low: Floats, high: Floats, marked: Bools, hollow: Bools) -> None:
        """Draw these from now on."""
        self.prepareGeometryChange()
        self.days, self.values, self.lows, self.highs = x, y, low, high
        self.marked, self.hollow = marked, hollow
        self.current, self._dense = -1, None
        self.update()

    def show_current(self, place: int) -> None:
        """Put the ring about another lot; −1 for none."""
        if place != self.current:
            self.current = place
            self.update()

    def boundingRect(self) -> QRectF:
        if not len(self.days):
            return QRectF()
        bottom, top = float(self.lows.min()), float(self.highs.max())
        return QRectF(float(self.days[0]) - 1, bottom, float(self.days[-1] - self.days[0]) + 2, top - bottom)

    def nearest(self, x_px: float, y_px: float, reach_px: float) -> int:
        """The lot whose dot is nearest to a place in the picture, −1 where none is within reach."""
        if not len(self.days):
            return -1
        seen = self._seen()
        px, py = self._in_pixels(seen)[:2]
        away = np.hypot(px - x_px, py - y_px)
        place = int(away.argmin()) if len(away) else -1
        return seen.start + place if place >= 0 and away[place] <= reach_px else -1

    def _in_pixels(self, seen: slice) -> tuple[Floats, Floats, Floats, Floats]:
        t = self.deviceTransform_()
        down = [t.m22() * values[seen] + t.dy() for values in (self.values, self.lows, self.highs)]
        across = t.m11() * self.days[seen] + t.dx()
        if len(across) <= FINE_UP_TO:
            across = side_by_side(across, self.days[seen])
        return across, down[0], down[1], down[2]

    def aside(self, days: Floats) -> Floats:
        """How far in pixels the dots of such days are moved aside, so that those of one day can be told apart."""
        seen = self._seen()
        t = self.deviceTransform_()
        plain, moved = t.m11() * self.days[seen] + t.dx(), self._in_pixels(seen)[0]
        if not 0 < len(plain) <= FINE_UP_TO:
            return np.zeros(len(days))
        told: Floats = np.interp(days, self.days[seen], moved - plain, left=0.0, right=0.0)
        return told

    def _seen(self) -> slice:
        view = self.getViewBox().viewRect()
        edge = EDGE_PX * abs(view.width()) / max(1.0, self.getViewBox().width())
        first = int(np.searchsorted(self.days, view.left() - edge))
        return slice(first, int(np.searchsorted(self.days, view.right() + edge, side="right")))

    def paint(self, painter: QPainter, *_: Any) -> None:
        if not len(self.days) or self.getViewBox() is None:
            return
        seen = self._seen()
        x, y, low, high = self._in_pixels(seen)
        frame = self.deviceTransform_().mapRect(QRectF(self.getViewBox().viewRect()))
        painter.resetTransform()
        self._draw_tags(painter, frame)
        if len(x) > FINE_UP_TO:
            self._draw_dense(painter, frame, (x, y, low, high), seen)
        else:
            self._draw_states(painter, frame, seen, x, (low, high))
            self._draw_fine(painter, seen, (x, y, low, high))
            self._draw_marked(painter, seen, x, y)
            self._draw_names(painter, frame, seen, x, y)
        self._draw_current(painter, seen, x, y)

    def _draw_fine(self, painter: QPainter, seen: slice, places: tuple[Floats, Floats, Floats, Floats]) -> None:
        t, (x, y, low, high) = tokens(), places
        few = len(x) <= MANY
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(t.quiet), 2 if few else 1))
        painter.drawLines([QLineF(a, b, a, c) for a, b, c in zip(x, low, high, strict=True)])
        radius = (DOT_PX if few else SMALL_PX) / 2
        rim, edge = (1.5, 2.0) if few else (0.7, 1.2)
        for hollow in (False, True):
            colours = (t.action, t.surface, edge) if hollow else (t.surface, t.action, rim)
            painter.setPen(QPen(QColor(colours[0]), colours[2]))
            painter.setBrush(QColor(colours[1]))
            own = self.hollow[seen] == hollow
            for a, b in zip(x[own], y[own], strict=True):
                painter.drawEllipse(QPointF(a, b), radius, radius)

    def _draw_dense(
        self, painter: QPainter, frame: QRectF, places: tuple[Floats, Floats, Floats, Floats], seen: slice
    ) -> None:
        t, scale = tokens(), painter.device().devicePixelRatio()
        as_of = (*(id(each) for each in (self.days, t)), scale, frame.getRect(), float(places[0][0]),
                 float(places[0][-1]), len(places[0]))  # fmt: skip
        if self._dense is None or self._dense[0] != as_of:
            picture = DensePicture(max(1, int(frame.width() * scale)), max(1, int(frame.height() * scale)))
            x = _pixel(places[0], frame.left(), scale)
            y, low, high = (_pixel(values, frame.top(), scale) for values in places[1:])
            picture.draw_bars(x, high, low, t.edge)
            marked, hollow = self.marked[seen], self.hollow[seen]
            picture.draw_rings(x[hollow], y[hollow], t.action, t.surface)
            picture.draw_dots(x[~hollow], y[~hollow], t.action)
            for own, colour, rim in ((hollow, t.surface, t.mark), (~hollow, t.mark, t.surface)):
                picture.draw_diamonds(x[marked & own], y[marked & own], scale, colour, rim)
            self._dense = as_of, picture
        painter.drawImage(frame.topLeft(), self._dense[1].image(scale))

    def _draw_tags(self, painter: QPainter, frame: QRectF) -> None:
        """A number at the top where something happened, and a line down from it; numbers without room share one."""
        t, across = tokens(), self.deviceTransform_()
        painter.setFont(ui_font(0.9))
        placed = [(across.m11() * day + across.dx(), number) for number, day in self.tags]
        for places in shared_boxes([one for one in placed if frame.left() <= one[0] <= frame.right()]):
            painter.setPen(QPen(QColor(t.edge), 2))
            painter.drawLines([QLineF(x, frame.top(), x, frame.bottom()) for x in {round(x) for x, _ in places}])
            numbers = sorted(number for _, number in places)
            text = numbers_text(numbers)
            wide = max(TAG_PX, painter.fontMetrics().horizontalAdvance(text) + 8.0)
            middle = (places[0][0] + places[-1][0]) / 2
            left = min(max(middle - wide / 2, frame.left()), frame.right() - wide)
            box = QRectF(left, frame.top() + 2, wide, TAG_PX)
            painter.fillRect(box, QColor(t.action))
            painter.setPen(QColor(t.on_action))
            painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)

    def _draw_marked(self, painter: QPainter, seen: slice, x: Floats, y: Floats) -> None:
        t = tokens()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        half, hollow = MARKED_PX / 2, self.hollow[seen]
        for place in np.flatnonzero(self.marked[seen]):
            pen, brush = (t.mark, t.surface) if hollow[place] else (t.surface, t.mark)
            painter.setPen(QPen(QColor(pen), 1.5))
            painter.setBrush(QColor(brush))
            a, b = float(x[place]), float(y[place])
            painter.drawPolygon(
                QPolygonF([QPointF(a, b - half), QPointF(a + half, b), QPointF(a, b + half), QPointF(a - half, b)])
            )

    def _draw_names(self, painter: QPainter, frame: QRectF, seen: slice, x: Floats, y: Floats) -> None:
        """Each lot's number beside its dot, at the side where there is room for it."""
        names = self.names[seen]
        if len(x) > NAMED_UP_TO:
            return
        painter.setFont(ui_font(0.9))
        painter.setPen(QColor(tokens().text))
        metrics = QFontMetricsF(painter.font())
        for place, name in enumerate(names):
            told = metrics.elidedText(name, Qt.TextElideMode.ElideRight, 120.0)
            wide, gap = metrics.horizontalAdvance(told), MARKED_PX
            left = float(x[place - 1]) if place else frame.left()
            right = float(x[place + 1]) if place + 1 < len(x) else frame.right()
            if right - x[place] > wide + 2 * gap:
                at = float(x[place]) + gap
            elif x[place] - left > wide + 2 * gap:
                at = float(x[place]) - gap - wide
            else:
                continue
            painter.drawText(QPointF(at, float(y[place]) - 3), told)

    def _draw_states(
        self, painter: QPainter, frame: QRectF, seen: slice, x: Floats, bars: tuple[Floats, Floats]
    ) -> None:
        """Which lot is fed and which one waits, above its bar, and beneath it where another word is in the way."""
        painter.setFont(ui_font(0.9, QFont.Weight.Bold))
        painter.setPen(QColor(tokens().text))
        metrics, taken = QFontMetricsF(painter.font()), QRectF()
        for place, told in enumerate(self.states[seen]):
            if not told:
                continue
            wide, high = metrics.horizontalAdvance(told), metrics.height()
            left = min(max(float(x[place]) - wide / 2, frame.left()), frame.right() - wide)
            box = QRectF(left, max(frame.top(), float(bars[1][place]) - GAP_PX - high), wide, high)
            if box.adjusted(-GAP_PX, 0, GAP_PX, 0).intersects(taken):
                box.moveTop(min(float(bars[0][place]) + GAP_PX, frame.bottom() - high))
            painter.fillRect(box, QColor(tokens().surface))  # no line goes through the word
            painter.drawText(box, Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextDontClip, told)
            taken = box

    def _draw_current(self, painter: QPainter, seen: slice, x: Floats, y: Floats) -> None:
        at = self.current - seen.start
        if self.current >= 0 and 0 <= at < len(x):
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setBrush(QColor(0, 0, 0, 0))
            painter.setPen(QPen(QColor(tokens().text), 2.5))
            painter.drawEllipse(QPointF(float(x[at]), float(y[at])), MARKED_PX * 0.75, MARKED_PX * 0.75)


def side_by_side(across: Floats, days: Floats) -> Floats:
    """Places in pixels at which lots of one day can be told from each other, however long the period in view; and stand
    at one day, however short it is."""
    _, place, counts = np.unique(np.rint(days), return_inverse=True, return_counts=True)
    if not len(days) or counts.max() == 1:
        return across
    of = counts[place]
    within = np.arange(len(days)) - (np.cumsum(counts) - counts)[place]
    middle = (np.bincount(place, weights=across) / counts)[place]
    aside, place_of_it = np.abs(across - middle), within - (of - 1) / 2
    most, least = APART_PX * np.abs(place_of_it), np.minimum(APART_PX, DAY_PX / of) * np.abs(place_of_it)
    told: Floats = middle + np.sign(place_of_it) * np.clip(aside, least, most)
    return told


def _pixel(places: Floats, start: float, scale: float) -> NDArray[np.intp]:
    return np.floor((places - start) * scale).astype(np.intp)


def shared_boxes(placed: Sequence[tuple[float, int]]) -> list[list[tuple[float, int]]]:
    """Places in pixels with their numbers, those together whose boxes would lie over each other."""
    found: list[list[tuple[float, int]]] = []
    for one in sorted(placed):
        near = TAG_PX if found and len(found[-1]) == 1 else 2 * TAG_PX  # a box of two numbers is broader
        if found and one[0] - found[-1][-1][0] < near:
            found[-1].append(one)
        else:
            found.append([one])
    return found


def numbers_text(numbers: Sequence[int]) -> str:
    """Rising numbers as short as they can be told: 1–3, 7."""
    runs: list[list[int]] = []
    for number in numbers:
        if runs and number == runs[-1][-1] + 1:
            runs[-1].append(number)
        else:
            runs.append([number])
    return ", ".join(f"{run[0]}–{run[-1]}" if len(run) > 1 else str(run[0]) for run in runs)
