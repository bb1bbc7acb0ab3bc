"""Checks as a chart by day: solids off their target, their intervals, the limits, the running mean."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from html import escape

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QApplication, QWidget

from calibrator.desk.pages.season_plot import DayAxis, ValueAxis
from calibrator.desk.theme import Theme, tokens, ui_font
from calibrator.science.check import Verdict

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


class CheckPlot(pg.PlotWidget):  # type: ignore[misc]
    """Verdicts differ by shape as well as by colour. Hovering tells a check, a click chooses it."""

    hovered = Signal(str)
    picked = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent, axisItems={"bottom": DayAxis("bottom"), "left": ValueAxis("left")}, enableMenu=False)
        self._points: tuple[CheckPoint, ...] = ()
        self._at, self._caption = "", ""
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        item = self.getPlotItem()
        item.setMouseEnabled(x=False, y=False)
        item.hideButtons()
        item.disableAutoRange()
        self._zero = pg.InfiniteLine(0.0, angle=0)
        self._limits = [pg.PlotDataItem(connect="finite") for _ in range(2)]
        self._running = pg.PlotDataItem(connect="finite")
        self._bars = pg.ErrorBarItem()
        self._dots = pg.ScatterPlotItem(hoverable=True, tip=None)
        self._dots.sigClicked.connect(self._clicked)
        self._dots.sigHovered.connect(self._hovered)
        for each in (self._zero, *self._limits, self._running, self._bars, self._dots):
            self.addItem(each)
        theme = QApplication.instance().findChild(Theme)  # type: ignore[union-attr]
        if theme is not None:
            theme.changed.connect(self.dress)
        self.dress()

    def show_points(self, points: Sequence[CheckPoint], caption: str) -> None:
        """Draw these, oldest first; `caption` stands at the axis."""
        self._points, self._caption = tuple(points), caption
        self._stretch()
        self.dress()

    def point_at(self, key: str) -> None:
        """Stress one check, as the table does."""
        if key != self._at:
            self._at = key
            self.dress()

    @property
    def keys(self) -> list[str]:
        return [point.key for point in self._points]

    def dress(self) -> None:
        """Put on the colours in force and draw anew."""
        t = tokens()
        self.setBackground(QColor(t.surface))
        self.getPlotItem().showGrid(y=True, alpha=0.2)
        for side in ("left", "bottom"):
            axis = self.getAxis(side)
            axis.setPen(pg.mkPen(t.edge))
            axis.setTextPen(pg.mkPen(t.text))
            axis.setTickFont(ui_font(0.9))
        self.getAxis("left").setLabel(self._caption, color=t.quiet, **{"font-size": "10pt"})
        self._zero.setPen(pg.mkPen(t.good, width=2))
        self._draw()

    def _draw(self) -> None:
        t, points = tokens(), self._points
        days, values = [p.on for p in points], [p.off_pct for p in points]
        self._bars.setData(
            x=np.asarray(days), y=np.asarray(values),
            top=np.asarray([p.high_pct - p.off_pct for p in points]),
            bottom=np.asarray([p.off_pct - p.low_pct for p in points]),
            beam=0.0, pen=pg.mkPen(t.edge, width=2),
        )  # fmt: skip
        x, running = self._by_lot([p.running_pct for p in points])
        self._running.setData(x, running, pen=pg.mkPen(t.mark, width=3))
        for line, limits in zip(
            self._limits, ([p.limit_low_pct for p in points], [p.limit_high_pct for p in points]), strict=True
        ):
            line.setData(*self._by_lot(limits), pen=pg.mkPen(t.mark, width=1.5, style=Qt.PenStyle.DashLine))
        colours = {Verdict.INSIDE: t.good, Verdict.CANNOT_TELL: t.quiet, Verdict.THIN: t.bad, Verdict.STRONG: t.bad}
        shapes = {Verdict.INSIDE: "o", Verdict.CANNOT_TELL: "d", Verdict.THIN: "t", Verdict.STRONG: "t1"}
        self._dots.setData(
            x=days, y=values, data=list(points),
            size=[STRESSED_PX if p.key == self._at else DOT_PX for p in points],
            symbol=[shapes.get(Verdict(p.verdict), "o") if p.verdict else "s" for p in points],
            brush=[pg.mkBrush(colours.get(Verdict(p.verdict), t.action) if p.verdict else t.action) for p in points],
            pen=[pg.mkPen(t.text if p.key == self._at else t.surface, width=2) for p in points],
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
        if not self._points:
            return
        days = [p.on for p in self._points]
        middle, span = (min(days) + max(days)) / 2, max(max(days) - min(days), LEAST_SPAN_DAYS)
        far = [abs(v) for p in self._points for v in (p.off_pct, p.limit_low_pct, p.limit_high_pct)]
        reach = max(LEAST_REACH_PCT, 1.15 * max(far))
        self.setXRange(middle - 0.55 * span, middle + 0.55 * span, padding=0)
        self.setYRange(-reach, reach, padding=0.02)

    def _clicked(self, dots: object, spots: Sequence[pg.SpotItem], event: object) -> None:
        if len(spots):
            self.picked.emit(spots[0].data().key)

    def _hovered(self, dots: object, spots: Sequence[pg.SpotItem], event: object) -> None:
        found: CheckPoint | None = spots[0].data() if len(spots) else None
        self.setToolTip(f"<p style='white-space: pre'>{escape(found.words)}</p>" if found else "")
        self.hovered.emit(found.key if found else "")
