"""The picture of a season: lots over days, limits, running mean, and tags where something happened."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import field

import numpy as np
import pyqtgraph as pg
from numpy.typing import NDArray
from pyqtgraph.GraphicsScene.mouseEvents import MouseClickEvent
from PySide6.QtCore import QPointF, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent

from calibrator.desk.plain_text import tip
from calibrator.desk.season.lots_item import LotsItem
from calibrator.desk.season.lots_lines import LinesItem, joined_runs
from calibrator.desk.theme import tokens
from calibrator.desk.widgets.day_plot import DayPlot
from calibrator.values import dataclass

Floats = NDArray[np.float64]
REACH_PX = 14.0
LEAST_SPAN_DAYS = 14.0
MOST_BESIDE = 0.1  # empty days that dragging and the wheel come to on either side, as a share of the whole period
MOST_ROOM = 1.5  # above and below the lots for limits, as a share of what the lots take
MANY_LINES = 1500  # dashes and broad pens over more points than this take too long to paint


@dataclass(frozen=True)
class Tag:
    """A number at the top of the picture, at the day where something happened."""

    number: int
    day: float


@dataclass(frozen=True)
class PlotLots:
    """What is drawn, in the order of the days: values in the unit of the axis, one entry a lot.

    Limits are not-a-number where there are none. `series` tells which lots are joined by lines, `hollow` which came
    out of a file. `names` are the lots' numbers, `states` tell of those fed or waiting that they are.
    """

    keys: Sequence[str]
    days: Floats
    values: Floats
    lows: Floats
    highs: Floats
    marked: NDArray[np.bool_]
    hollow: NDArray[np.bool_]
    series: NDArray[np.intp]
    middles: Floats
    limit_lows: Floats
    limit_highs: Floats
    running: Floats
    words: Callable[[int], str]
    tags: Sequence[Tag] = field(default=())
    names: Sequence[str] = ()
    states: Sequence[str] = ()


def _room(shown: PlotLots) -> tuple[float, float]:
    """The values in view: every interval whole, and the limits, unless the lots would shrink for them."""
    low, high = float(shown.lows.min()), float(shown.highs.max())
    most, known = MOST_ROOM * (high - low), np.isfinite(shown.limit_lows)
    least = float(np.min(shown.limit_lows, where=known, initial=low))
    top = float(np.max(shown.limit_highs, where=known, initial=high))
    return max(least, low - most), min(top, high + most)


class LotsPlot(DayPlot):
    """Dragging moves through time, the wheel goes nearer; keys go from lot to lot, Enter opens one."""

    moved = Signal(float, float)

    def __init__(self) -> None:
        self.lots = LotsItem()
        self.lines = LinesItem(self.lots)
        self._shown: PlotLots | None = None
        super().__init__((self.lines, self.lots))
        item = self.getPlotItem()
        item.setMouseEnabled(x=True, y=False)
        item.layout.setContentsMargins(2, 2, 8, 6)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.scene().sigMouseMoved.connect(self._mouse_moved)
        self.scene().sigMouseClicked.connect(self._mouse_clicked)
        item.vb.sigXRangeChanged.connect(self._range_changed)

    @property
    def shown(self) -> PlotLots | None:
        """What is drawn now."""
        return self._shown

    @property
    def current(self) -> int:
        """The place of the lot that is pointed at; −1 for none."""
        return self.lots.current

    @property
    def keys(self) -> list[str]:
        return list(self._shown.keys) if self._shown else []

    def show_lots(self, shown: PlotLots, caption: str) -> None:
        """Draw these lots; `caption` stands at the axis of values."""
        whole = self._shown is None or len(self._shown.days) != len(shown.days)
        self._shown, self._caption = shown, caption
        self.lots.show_lots(shown.days, shown.values, shown.lows, shown.highs, shown.marked, shown.hollow)
        self.lots.names, self.lots.states = tuple(shown.names), tuple(shown.states)
        self.lots.tags = tuple((tag.number, tag.day) for tag in shown.tags)
        if len(shown.days):
            self.setYRange(*_room(shown), padding=0.14)
            self._keep_near_the_lots()
            if whole:
                self.show_period(*self.whole_period())
        self.dress()

    def whole_period(self) -> tuple[float, float]:
        """The days that show every lot."""
        if self._shown is None or not len(self._shown.days):
            return 0.0, LEAST_SPAN_DAYS
        first, last = float(self._shown.days[0]), float(self._shown.days[-1])
        middle, span = (first + last) / 2, max(last - first, LEAST_SPAN_DAYS)
        return middle - 0.53 * span, middle + 0.53 * span

    def _keep_near_the_lots(self) -> None:
        """Neither the wheel nor dragging leaves the lots for years in which there are none."""
        first, last = self.whole_period()
        beside = MOST_BESIDE * (last - first)
        self.getPlotItem().vb.setLimits(xMin=first - beside, xMax=last + beside)

    def show_period(self, first: float, last: float) -> None:
        """Show these days."""
        self.setXRange(first, last, padding=0)

    def point_at(self, key: str) -> None:
        """Put the ring about a lot; an unknown key takes it away."""
        keys = self._shown.keys if self._shown else ()
        self._go_to(next((n for n, known in enumerate(keys) if known == key), -1), follow=True)

    def words_at(self, place: int) -> str:
        """What is said of a lot."""
        return self._shown.words(place) if self._shown is not None and 0 <= place < len(self._shown.keys) else ""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        count = len(self._shown.keys) if self._shown else 0
        steps = {
            Qt.Key.Key_Left: max(0, self.current - 1) if self.current >= 0 else count - 1,
            Qt.Key.Key_Right: min(count - 1, self.current + 1) if self.current >= 0 else count - 1,
            Qt.Key.Key_Home: 0,
            Qt.Key.Key_End: count - 1,
        }
        key = Qt.Key(event.key())
        if count and key in steps:
            self._go_to(steps[key], follow=True)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self._shown and self.current >= 0:
            self.chosen.emit(self._shown.keys[self.current])
        else:
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.dress()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.dress()

    def _go_to(self, place: int, *, follow: bool = False) -> None:
        if place == self.current:
            return
        self.lots.show_current(place)
        self.setAccessibleDescription(self.words_at(place))
        shown = self._shown
        if follow and shown is not None and place >= 0:
            (first, last), day = self.viewRange()[0], float(shown.days[place])
            if not first <= day <= last:
                self.show_period(day - (last - first) / 2, day + (last - first) / 2)
        self.hovered.emit(shown.keys[place] if shown is not None and place >= 0 else "")

    def _mouse_moved(self, at: QPointF) -> None:
        place = self.lots.nearest(at.x(), at.y(), REACH_PX)
        text = self.words_at(place)
        self.setToolTip(tip(text))
        self.setCursor(Qt.CursorShape.PointingHandCursor if place >= 0 else Qt.CursorShape.ArrowCursor)
        if place >= 0:
            self._go_to(place)

    def _mouse_clicked(self, event: MouseClickEvent) -> None:
        at = event.scenePos()
        place = self.lots.nearest(at.x(), at.y(), REACH_PX)
        if place >= 0 and self._shown is not None:
            self._go_to(place)
            self.chosen.emit(self._shown.keys[place])

    def _range_changed(self, _: object, days: tuple[float, float]) -> None:
        self.moved.emit(*days)

    def _draw(self) -> None:
        if self._shown is None:
            return
        t, shown = tokens(), self._shown
        many = len(shown.days) > MANY_LINES
        dash = Qt.PenStyle.SolidLine if many else Qt.PenStyle.DashLine
        lines = []
        for name, colour, width, style in (
            ("middles", t.good, 2, Qt.PenStyle.SolidLine if many else Qt.PenStyle.DotLine),
            ("limit_lows", t.quiet, 1.5, dash),
            ("limit_highs", t.quiet, 1.5, dash),
            ("running", t.mark, 2.5, Qt.PenStyle.SolidLine),
        ):
            pen = pg.mkPen(colour, width=1 if many else width, style=style)
            lines.append((joined_runs(shown.days, shown.series, getattr(shown, name)), pen))
        self.lines.show_lines(lines, fine=not many)
        self.lots.update()
        self.setStyleSheet(f"LotsPlot {{ border: 2px solid {t.action if self.hasFocus() else t.surface}; }}")
