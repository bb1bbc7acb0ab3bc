"""The farm's own line drawn: weighed mixes, the line with its band, the target, and the mix in hand on it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import cast

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QWidget

from calibrator.desk.theme import tokens
from calibrator.desk.widgets.day_plot import DayPlot, ValueAxis
from calibrator.values import dataclass

DOT_PX, STRESSED_PX, TODAY_PX = 11, 15, 17
SPARE = 0.08


@dataclass(frozen=True)
class LinePoint:
    """A weighed mix: its solids in percent, what it read in °Brix, and what is said of it."""

    key: str
    solids_pct: float
    brix: float
    words: str


@dataclass(frozen=True)
class Along:
    """A place on the line: solids in percent, °Brix there, and the ends of the band at that reading."""

    solids_pct: float
    brix: float
    low_pct: float
    high_pct: float


class LinePlot(DayPlot):
    """Solids across, degrees Brix upward. Weighed mixes are circles, the mix in hand is a diamond with its bar."""

    def __init__(self, across: str, parent: QWidget | None = None) -> None:
        self._line = pg.PlotDataItem(antialias=True)
        self._ends = [pg.PlotCurveItem(antialias=True) for _ in range(2)]
        self._band = pg.FillBetweenItem(*self._ends)
        self._target = pg.InfiniteLine(0.0, angle=90)
        self._lead = pg.PlotDataItem()
        self._today = pg.ScatterPlotItem()
        self._along: tuple[Along, ...] = ()
        self._aim_pct: float | None = None
        self._hand: Along | None = None
        self._across = across
        super().__init__((self._band, *self._ends, self._target, self._line, self._lead), parent, ValueAxis)
        self.addItem(self._today)

    def show_line(
        self, points: Sequence[LinePoint], along: Sequence[Along], caption: str, aim_pct: float, hand: Along | None
    ) -> None:
        """Draw the mixes, the line with its band, what is aimed at, and the mix in hand where there is one."""
        self._along, self._aim_pct, self._hand = tuple(along), aim_pct, hand
        self._show(points, caption)

    @property
    def along(self) -> tuple[Along, ...]:
        """The line and its band as they are drawn."""
        return self._along

    @property
    def hand(self) -> Along | None:
        """The mix in hand as it is drawn."""
        return self._hand

    def dress(self) -> None:
        super().dress()
        self.getAxis("bottom").setLabel(self._across, color=tokens().quiet, **{"font-size": "10pt"})

    @property
    def _points(self) -> tuple[LinePoint, ...]:
        return cast(tuple[LinePoint, ...], self._told)

    def _draw(self) -> None:
        t, points, along = tokens(), self._points, self._along
        self._line.setData([a.solids_pct for a in along], [a.brix for a in along], pen=pg.mkPen(t.mark, width=3))
        for curve, ends in zip(self._ends, ([a.low_pct for a in along], [a.high_pct for a in along]), strict=True):
            curve.setData(np.asarray(ends), np.asarray([a.brix for a in along]))
            curve.setPen(pg.mkPen(t.mark, width=1.5, style=Qt.PenStyle.DashLine))
        shade = QColor(t.mark)
        shade.setAlpha(28)
        self._band.setBrush(shade)
        self._target.setVisible(self._aim_pct is not None)
        self._target.setValue(self._aim_pct or 0.0)
        self._target.setPen(pg.mkPen(t.good, width=2, style=Qt.PenStyle.DotLine))
        self._dots.setData(
            x=[p.solids_pct for p in points], y=[p.brix for p in points], data=list(points),
            size=[STRESSED_PX if p.key == self._at else DOT_PX for p in points],
            brush=pg.mkBrush(t.action),
            pen=[pg.mkPen(t.text if p.key == self._at else t.surface, width=2) for p in points],
        )  # fmt: skip
        self._draw_hand()

    def _draw_hand(self) -> None:
        t, hand = tokens(), self._hand
        if hand is None:
            for item in (self._bars, self._lead, self._today):
                item.setVisible(False)
            return
        x, y = np.asarray([hand.solids_pct]), np.asarray([hand.brix])
        self._bars.setData(
            x=x, y=y, left=x - hand.low_pct, right=np.asarray([hand.high_pct]) - x, beam=0.0,
            pen=pg.mkPen(t.text, width=3),
        )  # fmt: skip
        self._lead.setData([self._reach()[0], hand.solids_pct], [hand.brix] * 2, pen=pg.mkPen(t.edge, width=1.5))
        self._today.setData(
            x=x, y=y, symbol="d", size=TODAY_PX, brush=pg.mkBrush(t.surface), pen=pg.mkPen(t.text, width=3)
        )
        for item in (self._bars, self._lead, self._today):
            item.setVisible(True)

    def _reach(self) -> tuple[float, float]:
        far = [end for a in (*self._along, *([self._hand] if self._hand else [])) for end in (a.low_pct, a.high_pct)]
        far += [p.solids_pct for p in self._points]
        return min(far, default=0.0), max(far, default=1.0)

    def _stretch(self) -> None:
        high = [p.brix for p in self._points] + [a.brix for a in self._along]
        high += [self._hand.brix] if self._hand else []
        self.setXRange(*self._reach(), padding=SPARE / 2)
        self.setYRange(min(high), max(high), padding=SPARE)
