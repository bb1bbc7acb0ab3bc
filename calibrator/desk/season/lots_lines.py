"""Draws the lines beside the lots: only what is in view, and no more places than the picture has columns for."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
import pyqtgraph as pg
from numpy.typing import NDArray
from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter, QPen

from calibrator.desk.season.lots_item import LotsItem

Floats = NDArray[np.float64]
Joined = list[tuple[Floats, Floats]]


class LinesItem(pg.GraphicsObject):  # type: ignore[misc]  # pyqtgraph tells no types
    """Lines over days, each with its pen, through the places of the lots. It asks for no room of its own: the lots tell
    what is in view."""

    def __init__(self, lots: LotsItem) -> None:
        super().__init__()
        self._lots = lots
        self._lines: list[tuple[Joined, QPen]] = []
        self._fine = False

    def show_lines(self, lines: Sequence[tuple[Joined, QPen]], *, fine: bool) -> None:
        """Draw these from now on; finely where they are few enough for the time that takes."""
        self._lines, self._fine = list(lines), fine
        self.update()

    def boundingRect(self) -> QRectF:
        box = self.getViewBox()
        return QRectF() if box is None else QRectF(box.viewRect())

    def viewRangeChanged(self) -> None:
        self.prepareGeometryChange()

    def paint(self, painter: QPainter, *_: Any) -> None:
        box = self.getViewBox()
        if box is None:
            return
        view, t = box.viewRect(), self.deviceTransform_()
        painter.resetTransform()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, self._fine)
        for joined, pen in self._lines:
            painter.setPen(pen)
            for days, values in joined:
                seen = _seen(days, view.left(), view.right())
                across = t.m11() * days[seen] + t.dx() + self._lots.aside(days[seen])
                x, y = by_columns(across, t.m22() * values[seen] + t.dy())
                painter.drawPolyline(_polygon(x, y))


def joined_runs(days: Floats, series: NDArray[np.intp], values: Floats) -> Joined:
    """What a line joins: the days and values of one series, without a gap."""
    order = np.lexsort((days, series))
    days, series, values = days[order], series[order], values[order]
    told = np.isfinite(values)
    breaks = np.flatnonzero((np.diff(series) != 0) | (told[1:] != told[:-1])) + 1
    runs = zip(np.split(days, breaks), np.split(values, breaks), strict=True)
    return [(d, v) for d, v in runs if len(d) and np.isfinite(v[0])]


def by_columns(x: Floats, y: Floats) -> tuple[Floats, Floats]:
    """A line in pixels, its x rising: of each column the first, lowest, highest and last place, which paint the same
    pixels as all of them. A line with fewer places stays as it is."""
    starts = np.flatnonzero(np.diff(np.floor(x), prepend=-np.inf)) if len(x) else np.empty(0, dtype=np.intp)
    if 4 * len(starts) >= len(x):
        return x, y
    last = np.append(starts[1:], len(x)) - 1
    lowest, highest = np.minimum.reduceat(y, starts), np.maximum.reduceat(y, starts)
    places = np.column_stack((y[starts], lowest, highest, y[last])).ravel()
    return np.column_stack((x[starts], x[starts], x[last], x[last])).ravel(), places


def _seen(days: Floats, left: float, right: float) -> slice:
    """What is in view, and the place before and after it, to which the line goes on."""
    first = max(0, int(np.searchsorted(days, left)) - 1)
    return slice(first, int(np.searchsorted(days, right, side="right")) + 1)


def _polygon(x: Floats, y: Floats) -> Any:
    polygon = pg.functions.create_qpolygonf(len(x))
    places = pg.functions.ndarray_from_qpolygonf(polygon)
    places[:, 0], places[:, 1] = x, y
    return polygon
