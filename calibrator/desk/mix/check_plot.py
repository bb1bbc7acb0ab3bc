"""Checks as a chart by day: solids off their target, their intervals, the limits, the running mean."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget

from calibrator.desk.theme import tokens
from calibrator.desk.widgets.day_plot import DayPlot
from calibrator.science.check import Verdict
from calibrator.values import dataclass

SHAPES = {Verdict.INSIDE: "o", Verdict.CANNOT_TELL: "d", Verdict.THIN: "t", Verdict.STRONG: "t1"}
LEAST_SPAN_DAYS = 6.0
LEAST_REACH_PCT = 6.0
DOT_PX, STRESSED_PX = 11, 15


@dataclass(frozen=True)
class CheckPoint:
    """One check: the day with its fraction, percent off the target, and what is said of it."""

    key: str
    lot_id: str
    on: float
    off_pct: float
    low_pct: float
    high_pct: float
    running_pct: float
    limit_low_pct: float
    limit_high_pct: float
    verdict: str
    words: str


@dataclass(frozen=True)
class CountPoint:
    """A count of bags: the days it covers, percent off the target powder, and what is said of it."""

    key: str
    since: float
    on: float
    off_pct: float
    low_pct: float
    high_pct: float
    verdict: str
    words: str


class CheckPlot(DayPlot):
    """Verdicts differ by shape as well as by colour; counts of bags are squares on a bar over their days.

    Hovering tells a check or a count, a click chooses it.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        self._zero = pg.InfiniteLine(0.0, angle=0)
        self._limits = [pg.PlotDataItem(connect="finite", antialias=True) for _ in range(2)]
        self._running = pg.PlotDataItem(connect="finite", antialias=True)
        self._days_counted = pg.PlotDataItem(connect="pairs")
        super().__init__((self._zero, *self._limits, self._days_counted, self._running), parent)

    @property
    def _points(self) -> tuple[CheckPoint, ...]:
        return tuple(point for point in self._told if isinstance(point, CheckPoint))

    @property
    def _counts(self) -> tuple[CountPoint, ...]:
        return tuple(point for point in self._told if isinstance(point, CountPoint))

    def show_points(self, points: Sequence[CheckPoint], counts: Sequence[CountPoint], caption: str) -> None:
        """Draw checks and counts, oldest first; `caption` stands at the axis."""
        self._show([*points, *counts], caption)

    def _draw(self) -> None:
        t, points = tokens(), self._points
        self._zero.setPen(pg.mkPen(t.good, width=2))
        every: list[CheckPoint | CountPoint] = [*points, *self._counts]
        days, values = [p.on for p in every], [p.off_pct for p in every]
        self._bars.setData(
            x=np.asarray(days), y=np.asarray(values),
            top=np.asarray([p.high_pct - p.off_pct for p in every]),
            bottom=np.asarray([p.off_pct - p.low_pct for p in every]),
            beam=0.0, pen=pg.mkPen(t.field_edge, width=1.5),
        )  # fmt: skip
        self._days_counted.setData(
            [day for c in self._counts for day in (c.since, c.on)],
            [c.off_pct for c in self._counts for _ in range(2)],
            pen=pg.mkPen(t.field_edge, width=2.5),
        )
        x, running = self._by_lot([p.running_pct for p in points])
        self._running.setData(x, running, pen=pg.mkPen(t.mark, width=3))
        for line, limits in zip(
            self._limits, ([p.limit_low_pct for p in points], [p.limit_high_pct for p in points]), strict=True
        ):
            line.setData(*self._by_lot(limits), pen=pg.mkPen(t.quiet, width=1.5, style=Qt.PenStyle.DashLine))
        colours = {Verdict.INSIDE: t.good, Verdict.CANNOT_TELL: t.quiet, Verdict.THIN: t.bad, Verdict.STRONG: t.bad}
        self._dots.setData(
            x=days, y=values, data=list(every),
            size=[STRESSED_PX if p.key == self._at else DOT_PX for p in every],
            symbol=[_shape(p) for p in every],
            brush=[pg.mkBrush(colours[Verdict(p.verdict)] if p.verdict else t.action) for p in every],
            pen=[pg.mkPen(t.text if p.key == self._at else t.surface, width=2) for p in every],
        )  # fmt: skip

    def _by_lot(self, values: Sequence[float]) -> tuple[list[float], list[float]]:
        """A line that is broken where another lot begins."""
        x: list[float] = []
        y: list[float] = []
        before = ""
        for point, value in zip(self._points, values, strict=True):
            if before and point.lot_id != before:
                x.append(point.on)
                y.append(float("nan"))
            x.append(point.on)
            y.append(value)
            before = point.lot_id
        return x, y

    def _stretch(self) -> None:
        days = [p.on for p in self._points] + [day for c in self._counts for day in (c.since, c.on)]
        self._span_days(days, LEAST_SPAN_DAYS)
        every: list[CheckPoint | CountPoint] = [*self._points, *self._counts]
        far = [abs(v) for p in every for v in (p.low_pct, p.high_pct)]
        far += [abs(v) for p in self._points for v in (p.limit_low_pct, p.limit_high_pct)]
        reach = max(LEAST_REACH_PCT, 1.15 * max(far))
        self.setYRange(-reach, reach, padding=0.02)


def _shape(point: CheckPoint | CountPoint) -> str:
    if isinstance(point, CountPoint):
        return "s"
    return SHAPES[Verdict(point.verdict)] if point.verdict else "+"
