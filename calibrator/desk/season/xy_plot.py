"""A plain chart of points over figures or names, in the dress of the charts over days."""

from __future__ import annotations

from collections.abc import Sequence

import pyqtgraph as pg
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor

from calibrator.desk.theme import the_theme, tokens, ui_font
from calibrator.desk.widgets.day_plot import ValueAxis
from calibrator.values import dataclass

MOST_COUNTED = 12  # figures under an axis of counted things


@dataclass(frozen=True)
class Xy:
    """What is drawn. `squares` tells which points are squares; lines are (x, y) lists: limits are dashed, the
    fitted line is whole. `names` stand under whole numbers of the axis in place of figures; `whole` is an axis of
    numbers that are counted."""

    points: Sequence[tuple[float, float]]
    x_caption: str
    y_caption: str
    squares: frozenset[int] = frozenset()
    stressed: frozenset[int] = frozenset()
    limits: Sequence[tuple[Sequence[float], Sequence[float]]] = ()
    line: tuple[Sequence[float], Sequence[float]] | None = None
    level: float | None = None
    names: tuple[str, ...] = ()
    whole: bool = False


class XyPlot(pg.PlotWidget):  # type: ignore[misc]  # pyqtgraph tells no types
    """Only looked at: the words beside it say the same."""

    def __init__(self) -> None:
        self._bottom = ValueAxis("bottom")
        super().__init__(axisItems={"bottom": self._bottom, "left": ValueAxis("left")}, enableMenu=False)
        self._shown: Xy | None = None
        item = self.getPlotItem()
        item.setMouseEnabled(x=False, y=False)
        item.hideButtons()
        item.layout.setContentsMargins(2, 2, 8, 2)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.viewport().setFocusPolicy(Qt.FocusPolicy.NoFocus)
        the_theme().changed.connect(self.dress)

    @property
    def shown(self) -> Xy | None:
        """What is drawn now."""
        return self._shown

    def show_xy(self, shown: Xy) -> None:
        """Draw this in place of what was drawn."""
        self._shown = shown
        self.dress()

    def dress(self) -> None:
        """Put on the colours in force and draw anew."""
        t, shown = tokens(), self._shown
        self.setBackground(QColor(t.surface))
        self.clear()
        if shown is None:
            return
        self.getPlotItem().showGrid(y=True, alpha=0.25)
        for side, caption in (("left", shown.y_caption), ("bottom", shown.x_caption)):
            axis = self.getAxis(side)
            axis.setPen(pg.mkPen(t.edge))
            axis.setTextPen(pg.mkPen(t.text))
            axis.setTickFont(ui_font(0.9))
            axis.setLabel(caption, color=t.quiet, **{"font-size": "10pt"})
        self._bottom.setTicks([list(enumerate(shown.names)), []] if shown.names else None)
        step = -(-len(shown.points) // MOST_COUNTED)
        self._bottom.setTickSpacing(levels=[(step, 0)] if shown.whole and step else None)
        self._draw(shown)

    def _draw(self, shown: Xy) -> None:
        t = tokens()
        if shown.level is not None:
            self.addItem(pg.InfiniteLine(shown.level, angle=0, pen=pg.mkPen(t.good, width=1.5)))
        for x, y in shown.limits:
            self.addItem(
                pg.PlotDataItem(x, y, pen=pg.mkPen(t.quiet, width=1.5, style=Qt.PenStyle.DashLine), antialias=True)
            )
        if shown.line is not None:
            self.addItem(pg.PlotDataItem(*shown.line, pen=pg.mkPen(t.mark, width=2.5), antialias=True))
        places = range(len(shown.points))
        self.addItem(
            pg.ScatterPlotItem(
                x=[x for x, _ in shown.points],
                y=[y for _, y in shown.points],
                symbol=["d" if n in shown.stressed else "s" if n in shown.squares else "o" for n in places],
                size=[14 if n in shown.stressed else 10 for n in places],
                brush=[pg.mkBrush(t.mark if n in shown.stressed else t.action) for n in places],
                pen=pg.mkPen(t.surface, width=1.5),
            )
        )
        self.getPlotItem().autoRange(padding=0.08)
        if shown.names:
            self.setXRange(-0.6, len(shown.names) - 0.4, padding=0)
