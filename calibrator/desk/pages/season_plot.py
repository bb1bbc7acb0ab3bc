"""The picture of a season: one point a lot, its 95 % interval as a bar, days below, densities at the left."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from html import escape

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QApplication, QWidget

from calibrator.desk.speech import day_text, decimal_comma
from calibrator.desk.theme import Theme, tokens, ui_font

POINT_PX, LAST_PX = 13, 17
MANY = 8  # more lots than these are drawn smaller, or their dots would hide the bars
MOST_LABELS = 7
BAR_DAYS = 0.012  # width of an interval's end bars, as a share of the days shown
LEAST_SPAN_DAYS = 14


@dataclass(frozen=True)
class PlotPoint:
    """One lot in the picture: where it stands, and what is said of it."""

    key: str
    on: date
    value: float
    low: float
    high: float
    words: str


class DayAxis(pg.AxisItem):  # type: ignore[misc]
    """Days as people write them; positions are day numbers, as `date.toordinal` gives them."""

    def tickValues(self, low: float, high: float, size: float) -> list[tuple[float, list[float]]]:  # noqa: N802
        return [(1.0, [float(day) for day in month_days(low, high)])]

    def tickStrings(self, values: Sequence[float], scale: float, spacing: float) -> list[str]:
        return [day_text(date.fromordinal(int(value))) for value in values]


class ValueAxis(pg.AxisItem):  # type: ignore[misc]
    """Figures with the decimal sign that people here write, never in thousandths of the unit."""

    def __init__(self, orientation: str) -> None:
        super().__init__(orientation)
        self.enableAutoSIPrefix(False)

    def tickStrings(self, values: Sequence[float], scale: float, spacing: float) -> list[str]:
        told = super().tickStrings(values, 1.0, spacing)
        return [text.replace(".", ",") for text in told] if decimal_comma() else list(told)


def month_days(low: float, high: float) -> list[int]:
    """Firsts of months between two day numbers, thinned to what can be read; single days in a short span."""
    first, last = int(max(low, 1)), int(high) + 1
    days = [day for day in range(first, last) if date.fromordinal(day).day == 1]
    if len(days) < 2:
        days = list(range(first + 1, last))
    step = -(-len(days) // MOST_LABELS) or 1
    return days[::step]


class SeasonPlot(pg.PlotWidget):  # type: ignore[misc]
    """Lots as points over time. Hovering tells the lot, a click asks to open it."""

    hovered = Signal(str)
    opened = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent, axisItems={"bottom": DayAxis("bottom"), "left": ValueAxis("left")}, enableMenu=False)
        self._points: tuple[PlotPoint, ...] = ()
        self._at = ""
        self._unit = ""
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # the table beneath is the way by keyboard
        self.viewport().setFocusPolicy(Qt.FocusPolicy.NoFocus)
        item = self.getPlotItem()
        item.setMouseEnabled(x=False, y=False)
        item.hideButtons()
        item.disableAutoRange()
        self._bars = pg.ErrorBarItem()
        self._dots = pg.ScatterPlotItem(hoverable=True, tip=None)
        self._dots.sigClicked.connect(self._clicked)
        self._dots.sigHovered.connect(self._hovered)
        for each in (self._bars, self._dots):
            self.addItem(each)
        theme = QApplication.instance().findChild(Theme)  # type: ignore[union-attr]
        if theme is not None:
            theme.changed.connect(self.dress)
        self.dress()

    def show_points(self, points: Sequence[PlotPoint], unit: str) -> None:
        """Draw these, oldest first; `unit` stands at the axis."""
        self._points, self._unit = tuple(points), unit
        self._stretch()
        self.dress()

    def point_at(self, key: str) -> None:
        """Stress one lot, as the table beneath does; an unknown key stresses none."""
        if key != self._at:
            self._at = key
            self.dress()

    @property
    def points(self) -> tuple[PlotPoint, ...]:
        """What is drawn, oldest first."""
        return self._points

    @property
    def keys(self) -> list[str]:
        return [point.key for point in self._points]

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
        self.getAxis("left").setLabel(self._unit, color=t.quiet, **{"font-size": "10pt"})
        self._draw()

    def _draw(self) -> None:
        t = tokens()
        days = [point.on.toordinal() for point in self._points]
        values = [point.value for point in self._points]
        self._bars.setData(
            x=np.asarray(days), y=np.asarray(values),
            top=np.asarray([p.high - p.value for p in self._points]),
            bottom=np.asarray([p.value - p.low for p in self._points]),
            beam=self._beam(days), pen=pg.mkPen(t.quiet, width=2),
        )  # fmt: skip
        last = len(self._points) - 1
        shrink = 4 if len(self._points) > MANY else 0
        self._dots.setData(
            x=days, y=values, data=list(self._points),
            size=[(LAST_PX if n == last else POINT_PX) - shrink for n in range(len(days))],
            brush=[pg.mkBrush(t.mark if n == last else t.action) for n in range(len(days))],
            pen=[pg.mkPen(t.text if p.key == self._at else t.surface, width=3) for p in self._points],
        )  # fmt: skip

    def _beam(self, days: Sequence[int]) -> float:
        return BAR_DAYS * max(days[-1] - days[0], LEAST_SPAN_DAYS) if days else 0.0

    def _stretch(self) -> None:
        if not self._points:
            return
        days = [point.on.toordinal() for point in self._points]
        middle, span = (min(days) + max(days)) / 2, max(max(days) - min(days), LEAST_SPAN_DAYS)
        low, high = min(p.low for p in self._points), max(p.high for p in self._points)
        self.setXRange(middle - 0.55 * span, middle + 0.55 * span, padding=0)
        self.setYRange(low, high, padding=0.12)

    def _clicked(self, dots: object, spots: Sequence[pg.SpotItem], event: object) -> None:
        if len(spots):
            self.opened.emit(spots[0].data().key)

    def _hovered(self, dots: object, spots: Sequence[pg.SpotItem], event: object) -> None:
        found: PlotPoint | None = spots[0].data() if len(spots) else None
        self.setToolTip(f"<p style='white-space: pre'>{escape(found.words)}</p>" if found else "")
        self.setCursor(Qt.CursorShape.PointingHandCursor if found else Qt.CursorShape.ArrowCursor)
        self.hovered.emit(found.key if found else "")
