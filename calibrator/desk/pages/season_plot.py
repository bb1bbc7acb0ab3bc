"""The picture of a season: one point a lot, its 95 % interval as a bar, days below, densities at the left."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import cast

import numpy as np
import pyqtgraph as pg

from calibrator.desk.theme import tokens
from calibrator.desk.widgets.day_plot import DayPlot

POINT_PX, LAST_PX = 13, 17
MANY = 8  # more lots than these are drawn smaller, or their dots would hide the bars
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


class SeasonPlot(DayPlot):
    """Lots as points over time. Hovering tells the lot, a click asks to open it."""

    @property
    def points(self) -> tuple[PlotPoint, ...]:
        """What is drawn, oldest first."""
        return cast(tuple[PlotPoint, ...], self._told)

    def show_points(self, points: Sequence[PlotPoint], unit: str) -> None:
        """Draw these, oldest first; `unit` stands at the axis."""
        self._show(points, unit)

    def _draw(self) -> None:
        t = tokens()
        days = [point.on.toordinal() for point in self.points]
        values = [point.value for point in self.points]
        self._bars.setData(
            x=np.asarray(days), y=np.asarray(values),
            top=np.asarray([p.high - p.value for p in self.points]),
            bottom=np.asarray([p.value - p.low for p in self.points]),
            beam=self._beam(days), pen=pg.mkPen(t.quiet, width=2),
        )  # fmt: skip
        last = len(self.points) - 1
        shrink = 4 if len(self.points) > MANY else 0
        self._dots.setData(
            x=days, y=values, data=list(self.points),
            size=[(LAST_PX if n == last else POINT_PX) - shrink for n in range(len(days))],
            brush=[pg.mkBrush(t.mark if n == last else t.action) for n in range(len(days))],
            pen=[pg.mkPen(t.text if p.key == self._at else t.surface, width=3) for p in self.points],
        )  # fmt: skip

    def _beam(self, days: Sequence[int]) -> float:
        return BAR_DAYS * max(days[-1] - days[0], LEAST_SPAN_DAYS) if days else 0.0

    def _stretch(self) -> None:
        self._span_days([point.on.toordinal() for point in self.points], LEAST_SPAN_DAYS)
        low, high = min(p.low for p in self.points), max(p.high for p in self.points)
        self.setYRange(low, high, padding=0.12)
