"""A chart over days: points with bars, hovered for their words, clicked to choose; dressed in the colours in force.

The table beneath such a chart is the way by keyboard, so the chart itself takes no focus.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Any, Protocol

import pyqtgraph as pg
from PySide6.QtCore import QRectF, Qt, Signal
from PySide6.QtGui import QColor, QFontMetricsF, QPainter
from PySide6.QtWidgets import QWidget

from calibrator.desk.plain_text import tip
from calibrator.desk.speech import day_text, figure_text
from calibrator.desk.theme import the_theme, tokens, ui_font

MOST_LABELS = 7


class Told(Protocol):
    """What every point brings: a key of its own, and what is said of it."""

    @property
    def key(self) -> str: ...

    @property
    def words(self) -> str: ...


class QuickAxis(pg.AxisItem):  # type: ignore[misc]  # pyqtgraph tells no types
    """Draws its ticks straight away, each as a filled strip: from a recorded picture, with fonts sought anew and
    pens set pixel by pixel, they would take half the time of a frame while the period is dragged."""

    picture: Any
    """What is to be drawn; the base sets it to None when that has changed."""

    def __init__(self, orientation: str) -> None:
        super().__init__(orientation)
        self.enableAutoSIPrefix(False)  # it would set the caption anew at each step of a drag

    def paint(self, painter: QPainter, *_: Any) -> None:
        painter.save()
        if self.picture is None:
            self.picture = self.generateDrawSpecs(painter)
        if self.picture is not None:
            axis, ticks, texts = self.picture
            for pen, start, end in ticks:
                across = QRectF(start, end).normalized()
                painter.fillRect(
                    across.adjusted(0, 0, 1 - min(1, across.width()), 1 - min(1, across.height())), pen.color()
                )
            self.drawPicture(painter, axis, [], texts)
        painter.restore()


class DayAxis(QuickAxis):
    """Days as people write them; positions are day numbers, as `date.toordinal` gives them."""

    def tickValues(self, low: float, high: float, size: float) -> list[tuple[float, list[float]]]:
        """Only those with room for their whole date: a tick without one tells nothing."""
        per_day, metrics = (
            size / (high - low) if high > low else 0.0,
            QFontMetricsF(self.style["tickFont"] or self.font()),
        )

        def fits(day: int) -> bool:
            half: float = metrics.horizontalAdvance(day_text(date.fromordinal(day))) / 2
            return half <= per_day * (day - low) <= size - half

        return [(1.0, [float(day) for day in month_days(low, high) if fits(day)])]

    def tickStrings(self, values: Sequence[float], scale: float, spacing: float) -> list[str]:
        return [day_text(date.fromordinal(int(value))) for value in values]


class ValueAxis(QuickAxis):
    """Figures with the decimal sign that people here write, never in thousandths of the unit."""

    def tickValues(self, low: float, high: float, size: float) -> list[tuple[float, list[float]]]:
        """Up the side only those with room for their whole figure: at an end half of it would be cut off."""
        told: list[tuple[float, list[float]]] = super().tickValues(low, high, size)
        if self.orientation != "left" or size <= 0:
            return told
        half = QFontMetricsF(self.style["tickFont"] or self.font()).height() / 2 * abs(high - low) / size
        least, most = min(low, high) + half, max(low, high) - half
        return [(spacing, [value for value in values if least <= value <= most]) for spacing, values in told]

    def tickStrings(self, values: Sequence[float], scale: float, spacing: float) -> list[str]:
        return [figure_text(text) for text in super().tickStrings(values, 1.0, spacing)]


def month_days(low: float, high: float) -> list[int]:
    """Firsts of months between two day numbers, thinned to what can be read; single days in a short span."""
    first, last = int(max(low, 1)), min(int(high) + 1, date.max.toordinal())
    days = [day for day in _firsts(first, last) if first <= day < last]
    if len(days) < 2:
        days = list(range(first + 1, last))
    step = -(-len(days) // MOST_LABELS) or 1
    return days[::step]


def _firsts(first: int, last: int) -> list[int]:
    """Firsts of all months that two day numbers touch."""
    if last < first:
        return []
    start, end = date.fromordinal(first), date.fromordinal(last)
    months = range(12 * start.year + start.month - 1, 12 * end.year + end.month)
    return [date(month // 12, month % 12 + 1, 1).toordinal() for month in months]


class DayPlot(pg.PlotWidget):  # type: ignore[misc]  # pyqtgraph tells no types
    """What the charts over days have in common; a chart of its own draws in `_draw` and fits in `_stretch`.

    `lines` lie beneath the bars and dots; `across` is the axis beneath, where it is not one of days. Hovering
    and choosing tell a point by its key.
    """

    hovered = Signal(str)
    chosen = Signal(str)

    def __init__(
        self,
        lines: Sequence[pg.GraphicsObject] = (),
        parent: QWidget | None = None,
        across: type[DayAxis | ValueAxis] = DayAxis,
    ) -> None:
        super().__init__(parent, axisItems={"bottom": across("bottom"), "left": ValueAxis("left")}, enableMenu=False)
        self._told: tuple[Told, ...] = ()
        self._at = self._caption = ""
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.viewport().setFocusPolicy(Qt.FocusPolicy.NoFocus)
        item = self.getPlotItem()
        item.setMouseEnabled(x=False, y=False)
        item.hideButtons()
        item.disableAutoRange()
        self._bars = pg.ErrorBarItem()
        self._dots = pg.ScatterPlotItem(hoverable=True, tip=None)
        self._dots.sigClicked.connect(self._clicked)
        self._dots.sigHovered.connect(self._hovered)
        for each in (*lines, self._bars, self._dots):
            self.addItem(each)
        the_theme().changed.connect(self.dress)
        self.dress()

    def point_at(self, key: str) -> None:
        """Stress one point, as the table does; an unknown key stresses none."""
        if key != self._at:
            self._at = key
            self.dress()

    @property
    def stressed(self) -> str:
        """The key of the point that is stressed; blank for none."""
        return self._at

    @property
    def keys(self) -> list[str]:
        return [point.key for point in self._told]

    def dress(self) -> None:
        """Put on the colours in force and draw anew."""
        t = tokens()
        self.setBackground(QColor(t.surface))
        self.getPlotItem().showGrid(y=True, alpha=0.25)
        for side in ("left", "bottom"):
            axis = self.getAxis(side)
            axis.setPen(pg.mkPen(t.edge))
            axis.setTextPen(pg.mkPen(t.text))
            axis.setTickFont(ui_font(0.9))
        self.getAxis("left").setLabel(self._caption, color=t.quiet, **{"font-size": "10pt"})
        self._draw()

    def _show(self, points: Sequence[Told], caption: str) -> None:
        """Draw these, oldest first; `caption` stands at the axis of values."""
        self._told, self._caption = tuple(points), caption
        if points:
            self._stretch()
        self.dress()

    def _span_days(self, days: Sequence[float], least: float) -> None:
        """Let the days fill the width, `least` of them at the least."""
        middle, span = (min(days) + max(days)) / 2, max(max(days) - min(days), least)
        self.setXRange(middle - 0.55 * span, middle + 0.55 * span, padding=0)

    def _draw(self) -> None:
        """Put the points into bars and dots."""

    def _stretch(self) -> None:
        """Fit both axes to the points; asked only when there are any."""

    def _clicked(self, dots: object, spots: Sequence[pg.SpotItem], event: object) -> None:
        if len(spots):
            self.chosen.emit(spots[0].data().key)

    def _hovered(self, dots: object, spots: Sequence[pg.SpotItem], event: object) -> None:
        found: Told | None = spots[0].data() if len(spots) else None
        self.setToolTip(tip(found.words) if found else "")
        self.setCursor(Qt.CursorShape.PointingHandCursor if found else Qt.CursorShape.ArrowCursor)
        self.hovered.emit(found.key if found else "")
