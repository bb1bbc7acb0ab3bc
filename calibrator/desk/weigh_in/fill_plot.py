"""The fills as they come, with mean, interval and the wanted tolerance."""

from __future__ import annotations

from itertools import groupby

import pyqtgraph as pg
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QFrame, QSizePolicy, QStackedLayout, QVBoxLayout, QWidget

from calibrator import units
from calibrator.desk import shown
from calibrator.desk.counted import counted
from calibrator.desk.parts import label
from calibrator.desk.theme import SPACE, tokens, ui_font
from calibrator.desk.widgets.picture_key import Entry, PictureKey, Sign
from calibrator.model import Fill, UnitSystem, standing_numbers
from calibrator.units import Kind
from calibrator.values import dataclass

SYMBOLS = ("o", "s", "t", "+", "d", "t1", "p", "star")  # one per bag, going round: told apart without colour
STRUCK = "x"
LEAST_FILLS_SHOWN = 8
LEAST_PX = 140  # with two lines of words beneath


@dataclass(frozen=True)
class Bands:
    """What is drawn behind the fills, in grams of one scoopful; `interval` and `wanted` name both bands in the
    key. `taken_off_g` is what the scale reads too much, which the fills as listed still have."""

    mean_g: float
    low_g: float
    high_g: float
    tolerance_low_g: float
    tolerance_high_g: float
    interval: str
    wanted: str
    taken_off_g: float = 0.0


class FillPlot(QFrame):
    """Counted fills as points by number, struck ones hollow grey between them; the mean with its 95 % band."""

    def __init__(self) -> None:
        super().__init__()
        self.setProperty("kind", "card")
        self._system = UnitSystem.FARM
        self._plot = pg.PlotWidget()
        self._plot.setMenuEnabled(False)
        self._plot.setMouseEnabled(False, False)
        self._plot.hideButtons()
        for part in (self._plot, self._plot.viewport()):
            part.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        drawn = QWidget(self)
        self._hint = label("", "quiet")
        self._hint.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._hint.setContentsMargins(2 * SPACE, SPACE, 2 * SPACE, SPACE)
        self._pages = QStackedLayout(self)
        self._pages.addWidget(drawn)
        self._pages.addWidget(self._hint)
        layout = QVBoxLayout(drawn)
        layout.setContentsMargins(SPACE, SPACE, SPACE, SPACE)
        layout.setSpacing(SPACE // 2)
        layout.addWidget(self._plot, 1)
        self._key = PictureKey()
        layout.addWidget(self._key)
        self._dressed: tuple[object, ...] = ()
        self._tolerance, self._interval = _Band(Qt.PenStyle.DashLine), _Band(Qt.PenStyle.DotLine)
        self._mean = pg.InfiniteLine(angle=0)
        self._points = pg.ScatterPlotItem()
        bands = (*self._tolerance.parts, *self._interval.parts)
        for item in (*bands, self._mean, self._points):
            self._plot.addItem(item)
        # It takes the room that is left and asks for none: pyqtgraph's own wish would make the page scroll.
        self._plot.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Ignored)
        self.setMinimumHeight(LEAST_PX)

    def show_coming(self, can_come: bool) -> None:
        """Say what will be drawn here, as long as anything can be weighed."""
        words = self.tr("Each fill becomes a point here; behind them lie the mean and its 95 % interval.")
        self._hint.setText(words if can_come else "")

    def show_fills(self, fills: list[Fill], odd: frozenset[str], bands: Bands | None, system: UnitSystem) -> None:
        """Bring what is drawn up to the fills: between two weights nothing is made anew."""
        self._system = system
        self._explain(fills, bands)
        self._dress()
        self._draw_bands(bands)
        drawn = places(fills)
        self._draw_fills(drawn, fills, odd, bands)
        self._plot.setXRange(min([1.0, *drawn]) - 0.5, max([LEAST_FILLS_SHOWN, *drawn]) + 0.5, padding=0)
        self._pages.setCurrentIndex(0 if fills else 1)
        self._fit_height(_reach_g(fills, bands))
        self._name_it(fills, bands, system)

    def _explain(self, fills: list[Fill], bands: Bands | None) -> None:
        """What the bands and the points mean."""
        entries = []
        if bands is not None:
            interval = Entry(Sign.BAND, "action", bands.interval)
            entries += [interval, Entry(Sign.DASHES, "good", bands.wanted)]
        if any(fill.counts for fill in fills):
            corrected = bands is not None and bands.taken_off_g
            shapes = self.tr("a shape for each bag, corrected") if corrected else self.tr("a shape for each bag")
            entries.append(Entry(Sign.SHAPES, "text", shapes))
        if _struck_in_view(fills, bands):
            entries.append(Entry(Sign.CROSS, "quiet", self.tr("struck out")))
        self._key.show_entries(entries)

    def _dress(self) -> None:
        """In the colours, the letters and the unit that hold now; pyqtgraph measures each axis anew for them."""
        t, font, unit = tokens(), ui_font(0.85), units.default_unit(Kind.MASS, self._system)
        if self._dressed == (t, font, unit):
            return
        self._dressed = (t, font, unit)
        self._plot.setBackground(QColor(t.surface))
        for name in ("left", "bottom"):
            axis = self._plot.getAxis(name)
            axis.setPen(QColor(t.edge))
            axis.setTextPen(QColor(t.quiet))
            axis.setTickFont(font)
        self._plot.getAxis("left").setLabel(unit)
        self._plot.getAxis("left").enableAutoSIPrefix(False)
        self._plot.getAxis("bottom").setTickSpacing(major=1, minor=1)
        self._tolerance.dress(t.good_soft, t.good)
        self._interval.dress(t.action_soft, t.action)
        self._mean.setPen(pg.mkPen(t.action, width=2))

    def _draw_bands(self, bands: Bands | None) -> None:
        for item in (*self._tolerance.parts, *self._interval.parts, self._mean):
            item.setVisible(bands is not None)
        if bands is not None:
            self._tolerance.show_between(self._shown(bands.tolerance_low_g), self._shown(bands.tolerance_high_g))
            self._interval.show_between(self._shown(bands.low_g), self._shown(bands.high_g))
            self._mean.setValue(self._shown(bands.mean_g))

    def _draw_fills(self, drawn: list[float], fills: list[Fill], odd: frozenset[str], bands: Bands | None) -> None:
        t = tokens()
        spots = []
        for place, fill in zip(drawn, fills, strict=True):
            colour = t.quiet if not fill.counts else t.warn if fill.id in odd else t.text
            spots.append(
                {
                    "pos": (place, self._shown(_drawn_g(fill, bands))),
                    "symbol": SYMBOLS[(fill.bag - 1) % len(SYMBOLS)] if fill.counts else STRUCK,
                    "size": 14 if fill.id in odd else 11,
                    "brush": pg.mkBrush(colour if fill.counts else None),
                    "pen": pg.mkPen(colour, width=2),
                }
            )
        self._points.setData(spots)

    def _fit_height(self, reach_g: tuple[float, float] | None) -> None:
        if reach_g is not None:
            low_g, high_g = reach_g
            self._plot.setYRange(self._shown(low_g), self._shown(high_g), padding=0)

    def _shown(self, mass_g: float) -> float:
        return units.in_default_unit(mass_g, Kind.MASS, self._system)

    def _name_it(self, fills: list[Fill], bands: Bands | None, system: UnitSystem) -> None:
        if bands is None:
            self.setAccessibleName(self.tr("Plot of {fills}").format(fills=counted.fills(len(fills))))
            return
        words = self.tr("Plot of {fills}, mean {mean}, 95 % interval {low} to {high}")
        self.setAccessibleName(
            words.format(
                fills=counted.fills(len(fills)),
                mean=shown.mass(bands.mean_g, system),
                low=shown.mass(bands.low_g, system),
                high=shown.mass(bands.high_g, system),
            )
        )


def places(fills: list[Fill]) -> list[float]:
    """Where along the plot each fill is drawn: at its number, those struck out between their neighbours' numbers."""
    drawn: list[float] = []
    last = 0
    for number, run in groupby(standing_numbers(fills)):
        if number is None:
            struck = len(list(run))
            drawn += [last + n / (struck + 1) for n in range(1, struck + 1)]
        else:
            last = number
            drawn.append(last)
    return drawn


class _Band:
    """A stretch of weights with a line along each of its edges."""

    def __init__(self, style: Qt.PenStyle) -> None:
        self._style = style
        self._between = pg.LinearRegionItem((0, 0), "horizontal", pen=pg.mkPen(None), movable=False)
        self._between.setZValue(-10)
        self._edges = (pg.InfiniteLine(angle=0), pg.InfiniteLine(angle=0))

    @property
    def parts(self) -> tuple[pg.GraphicsObject, ...]:
        return self._between, *self._edges

    def dress(self, fill: str, edge: str) -> None:
        colour = QColor(fill)
        colour.setAlpha(190)
        self._between.setBrush(colour)
        for line in self._edges:
            line.setPen(pg.mkPen(edge, width=1.5, style=self._style))

    def show_between(self, low: float, high: float) -> None:
        self._between.setRegion((low, high))
        for line, at in zip(self._edges, (low, high), strict=True):
            line.setValue(at)


def _drawn_g(fill: Fill, bands: Bands | None) -> float:
    """Where a fill is drawn: one scoopful of it, less what the scale reads too much."""
    return fill.mass_g / fill.scoopfuls - (bands.taken_off_g if bands is not None else 0.0)


def _reach_g(fills: list[Fill], bands: Bands | None) -> tuple[float, float] | None:
    """The weights between which all lies that counts, with some room; None where nothing does."""
    masses = [_drawn_g(fill, bands) for fill in fills if fill.counts]
    if bands is not None:
        masses += [bands.tolerance_low_g, bands.tolerance_high_g]
    if not masses:
        return None
    low, high = min(masses), max(masses)
    room = max((high - low) * 0.15, high * 0.004)
    return low - room, high + room


def _struck_in_view(fills: list[Fill], bands: Bands | None) -> bool:
    """Whether a struck fill is to be seen: one that was a slip often lies far beyond the others."""
    reach = _reach_g(fills, bands)
    struck = [_drawn_g(fill, bands) for fill in fills if not fill.counts]
    return bool(struck) and (reach is None or any(reach[0] <= mass_g <= reach[1] for mass_g in struck))
