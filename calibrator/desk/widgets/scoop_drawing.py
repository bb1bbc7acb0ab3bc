"""A scoop cut through the middle, true to its shape, with the new line, the old line and how far it moves."""

from __future__ import annotations

import math
from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPainterPath, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from calibrator.desk.speech import decimal_comma
from calibrator.desk.theme import tokens, ui_font
from calibrator.model import Box, Shape, TaperedCup, UnitSystem
from calibrator.science.errors import CannotCompute
from calibrator.science.scoop import height_from_down_wall_mm, inner_height_mm, outline_mm
from calibrator.units import Kind, edit_text, line_in_both, on_line_step, other_system, show_move
from calibrator.values import dataclass

MARGIN = 14.0
GAP = 14.0  # between the wall and what is written beside it
WALL = 4.0
BESIDE_SHARE = 0.3  # of the width, for the name of one more line
ABOVE_SIZES = 2.9 * GAP  # for the size across the rim and its arrow
BELOW_SIZES = 2.4 * GAP  # a box has its length beneath: behind the rim it goes back
SLANT = 0.35  # of a box's width, each way
HEAD = 5.0  # an arrow's head, and a cross's arms
CROSSES = (0.2, 0.4, 0.6, 0.8)  # of the way along a line that is crossed out
FIGURE = 1.35  # the line's distance, beside the base size of what is written

Told = list[tuple[str, QFont]]


@dataclass(frozen=True)
class _View:
    """Millimetres of the scoop to pixels of the widget."""

    outline: tuple[tuple[float, float], ...]
    axis: float
    floor: float
    scale: float

    def right(self, height_mm: float) -> QPointF:
        return QPointF(self.axis + self._half_width(height_mm) * self.scale, self._y(height_mm))

    def left(self, height_mm: float) -> QPointF:
        return QPointF(self.axis - self._half_width(height_mm) * self.scale, self._y(height_mm))

    def powder(self, height_mm: float) -> QPolygonF:
        levels = [h for h, _ in self.outline if h < height_mm] + [height_mm]
        walls = [self.left(h) for h in reversed(levels)] + [self.right(h) for h in levels]
        return QPolygonF(walls)

    def wall(self) -> QPainterPath:
        path = QPainterPath(self.left(self.outline[-1][0]))
        for height, _ in reversed(self.outline[:-1]):
            path.lineTo(self.left(height))
        for height, _ in self.outline:
            path.lineTo(self.right(height))
        return path

    def _y(self, height_mm: float) -> float:
        return self.floor - height_mm * self.scale

    def _half_width(self, height_mm: float) -> float:
        below = self.outline[0]
        for above in self.outline[1:]:
            if height_mm <= above[0]:
                part = (height_mm - below[0]) / (above[0] - below[0])
                return below[1] + part * (above[1] - below[1])
            below = above
        return below[1]


@dataclass(frozen=True)
class FurtherLine:
    """A line beside those two: what it is called, mm from the rim down the wall, whether it is an `old` one, and
    to be wiped out."""

    name: str
    down_wall_mm: float
    wiped: bool = False
    old: bool = False

    @property
    def holds(self) -> bool:
        return not (self.wiped or self.old)


class ScoopDrawing(QWidget):
    """The cross-section to scale. With lines it tells where they are; without, how large the scoop is."""

    def __init__(self, system: UnitSystem = UnitSystem.FARM) -> None:
        super().__init__()
        self._system = system
        self._shape: Shape | None = None
        self._names = self.tr("New line"), self.tr("Old line")
        self._before = ""
        self._new_mm: float | None = None
        self._old_mm: float | None = None
        self._moves, self._wiped = True, False
        self._further: tuple[FurtherLine, ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self._name_it()

    def set_shape(self, shape: Shape | None) -> None:
        """The scoop to draw; None, or sizes that no scoop can have, leave the drawing empty."""
        self._shape = shape if shape is not None and _can_be_drawn(shape) else None
        self._name_it()

    def set_lines(
        self,
        new_down_wall_mm: float | None,
        old_down_wall_mm: float | None,
        *,
        moves: bool = True,
        wiped: bool = False,
    ) -> None:
        """Where the lines are, mm from the rim down the wall; a line that is not on the wall is left out. `moves` tells
        how far it is from the old one to the new one; an old one to be `wiped` out is crossed out."""
        self._new_mm, self._old_mm = new_down_wall_mm, old_down_wall_mm
        self._moves, self._wiped = moves, wiped
        self._name_it()

    def set_further(self, lines: Sequence[FurtherLine]) -> None:
        """Lines beside the new and the old one, told at the left; one that is not on the wall is left out."""
        self._further = tuple(lines)
        self._name_it()

    def set_names(self, new: str, old: str) -> None:
        """What the two lines are called, where *new line* and *old line* do not fit."""
        self._names = new, old
        self._name_it()

    def set_before(self, words: str) -> None:
        """What is done before the scoop is filled to the line: full scoops; blank where nothing is."""
        self._before = words
        self._name_it()

    def set_system(self, system: UnitSystem) -> None:
        """Which unit is written first; the other follows in brackets."""
        self._system = system
        self._name_it()

    def sizeHint(self) -> QSize:
        return QSize(520, 300)

    def minimumSizeHint(self) -> QSize:
        return QSize(300, 190)

    def words(self) -> str:
        """What the drawing shows, in words: its accessible name."""
        if self._shape is None:
            return self.tr("No scoop to draw yet")
        further = ([line.name, self._length(line.down_wall_mm), self.tr("down the wall")] for line in self._shown())
        told = (self._new_words(), self._move_words(), self._old_words(), *further)
        parts = [" ".join(text) for text in told if text]
        return ". ".join(parts) or self.tr("Scoop in cross-section")

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self._shape is not None:
            self._paint(painter, self._shape)
        painter.end()

    def _paint(self, painter: QPainter, shape: Shape) -> None:
        new, old = self._level(self._new_mm), self._level(self._old_mm)
        with_sizes = new is None and old is None
        view = self._view(shape, with_sizes)
        t = tokens()
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(t.action_soft))
        painter.drawPolygon(view.powder(inner_height_mm(shape) if new is None else new))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for line, level in self._levels():
            self._paint_aside(painter, view, level, holds=line.holds, wiped=line.wiped)
        if old is not None:
            self._paint_aside(painter, view, old, holds=False, wiped=self._wiped)
        self._paint_left(painter, view, old)
        if new is not None:
            self._paint_new(painter, view, new)
        if self._moves and new is not None and old is not None:
            if self._length(abs(new - old)) != self._length(0.0):
                self._paint_move(painter, view, old, new)
            self._paint_moved(painter, view, min(old, new))
        painter.setPen(_pen(t.action, WALL))
        painter.drawPath(view.wall())
        if with_sizes:
            self._paint_sizes(painter, view, shape)

    def _paint_new(self, painter: QPainter, view: _View, level: float) -> None:
        t = tokens()
        painter.setPen(_pen(t.mark, 3.5))
        painter.drawLine(view.left(level), view.right(level) + QPointF(GAP, 0))
        offset = QPointF(GAP * 0.9, 0)
        painter.setPen(_pen(t.mark, 1.5))
        rim = view.outline[-1][0]
        painter.drawLine(view.right(rim), view.right(rim) + QPointF(GAP, 0))
        _arrow(painter, view.right(rim) + offset, view.right(level) + offset)
        left = view.right(rim).x() + 2 * GAP
        told = self._new_label(moved_told=bool(self._moved_inside(view)))
        self._paint_words(painter, told, QPointF(left, view.right(level).y()), t.mark)

    def _paint_aside(self, painter: QPainter, view: _View, level: float, *, holds: bool, wiped: bool) -> None:
        """A line told at the left: one that holds beside the new one, or an old one, crossed out where it is to go."""
        t = tokens()
        painter.setPen(_pen(t.mark, 2.0) if holds else QPen(QColor(t.quiet), 2.5, Qt.PenStyle.DashLine))
        painter.drawLine(view.left(level) - QPointF(GAP, 0), view.right(level))
        if wiped:
            painter.setPen(_pen(t.quiet, 2.0))
            across = view.right(level) - view.left(level)
            for share in CROSSES:
                _cross(painter, view.left(level) + across * share)

    def _paint_left(self, painter: QPainter, view: _View, old: float | None) -> None:
        """What the lines at the left are called, from the rim down, none written over another."""
        t = tokens()
        told = [(level, self._further_label(line), t.mark if line.holds else t.quiet) for line, level in self._levels()]
        if old is not None:
            told.append((old, self._old_label(), t.quiet))
        right = view.left(view.outline[-1][0]).x() - 2 * GAP
        told.sort(key=_level_of, reverse=True)
        middles = _apart([view.left(level).y() for level, *_ in told], [_high(words) for _, words, _ in told])
        for (_, words, colour), middle in zip(told, middles, strict=True):
            self._paint_words(painter, words, QPointF(right, middle), colour, True)

    def _paint_move(self, painter: QPainter, view: _View, old: float, new: float) -> None:
        start, end = QPointF(view.axis, view.right(old).y()), QPointF(view.axis, view.right(new).y())
        if abs(end.y() - start.y()) < 4 * HEAD:
            # Too short for an arrow: let its tail begin on the far side of the old line.
            start.setY(end.y() + (4 * HEAD if start.y() > end.y() else -4 * HEAD))
        painter.setPen(_pen(tokens().mark, 2.0))
        _arrow(painter, start, end)

    def _paint_moved(self, painter: QPainter, view: _View, level: float) -> None:
        """How far the line moves, written into the powder beneath both lines."""
        text = self._moved_inside(view)
        painter.setPen(QColor(tokens().mark))
        painter.setFont(_font(False))
        metrics = QFontMetricsF(painter.font())
        left = view.axis - metrics.horizontalAdvance(text) / 2
        painter.drawText(QPointF(left, view.right(level).y() + GAP / 2 + metrics.ascent()), text)

    def _moved_inside(self, view: _View) -> str:
        """What of it there is room for within the walls: the arrow shows the way it moves. Blank for nothing."""
        words, lines = self._move_words(), (self._level(self._new_mm), self._level(self._old_mm))
        lower = min((level for level in lines if level is not None), default=0.0)
        if not words or lower * view.scale < 2 * GAP + MARGIN:
            return ""
        room = 2 * min(half for height, half in view.outline if height <= lower) * view.scale - GAP
        wide = QFontMetricsF(_font(False))
        return next((text for text in (" ".join(words), words[-1]) if wide.horizontalAdvance(text) <= room), "")

    def _paint_sizes(self, painter: QPainter, view: _View, shape: Shape) -> None:
        t = tokens()
        rim = view.outline[-1][0]
        painter.setPen(_pen(t.quiet, 1.2))
        lift = QPointF(0, BELOW_SIZES / 2 - GAP / 2 if isinstance(shape, Box) else -GAP)
        level = 0.0 if isinstance(shape, Box) else rim
        _arrow(painter, view.left(level) + lift, view.right(level) + lift, both=True)
        high = self._size(inner_height_mm(shape))
        inside = self._fits_inside(view, shape)
        beside = view.left(0).x() + 1.6 * GAP if inside else min(view.left(0).x(), view.left(rim).x()) - GAP
        _arrow(painter, QPointF(beside, view.left(rim).y()), QPointF(beside, view.floor), both=True)
        painter.setPen(QColor(t.text))
        painter.setFont(ui_font(0.95))
        metrics = QFontMetricsF(painter.font())
        across = self._size(2 * view.outline[-1][1])
        from_arrow = metrics.ascent() + 0.4 * GAP if isinstance(shape, Box) else -0.6 * GAP
        middle = QPointF(view.axis - metrics.horizontalAdvance(across) / 2, (view.left(level) + lift).y() + from_arrow)
        painter.drawText(middle, across)
        start = beside + 0.7 * GAP if inside else beside - 0.7 * GAP - metrics.horizontalAdvance(high)
        painter.drawText(QPointF(start, (view.left(rim).y() + view.floor + metrics.ascent()) / 2), high)
        if isinstance(shape, Box):
            self._paint_back(painter, view, shape)
        if isinstance(shape, TaperedCup):
            below = QPointF(0, GAP)
            at = view.right(0) + below + QPointF(GAP / 2, metrics.ascent() / 2 - 1)
            painter.drawText(at, self._size(shape.floor_diameter_mm))
            painter.setPen(_pen(t.quiet, 1.2))
            _arrow(painter, view.left(0) + below, view.right(0) + below, both=True)

    def _paint_back(self, painter: QPainter, view: _View, shape: Box) -> None:
        """How far a box goes back behind the cut, with its size."""
        t, rim = tokens(), view.outline[-1][0]
        away = SLANT * shape.width_mm * view.scale
        back = QPointF(away, -away)
        near, floor = view.right(rim), view.right(0)
        beside = QPointF(GAP / 2, GAP / 2)
        painter.drawText(floor + back / 2 + beside + QPointF(GAP / 2, GAP / 2), self._size(shape.width_mm))
        painter.setPen(_pen(t.quiet, 1.2))
        _arrow(painter, floor + beside, floor + back + beside, both=True)
        painter.setPen(_pen(t.action, 1.5))
        painter.drawPolyline([view.left(rim), view.left(rim) + back, near + back, floor + back, floor])
        painter.drawLine(near, near + back)

    def _fits_inside(self, view: _View, shape: Shape) -> bool:
        """Whether the height can be told within the walls; those of a tapered scoop would cross its arrow."""
        narrowest = 2 * min(half for _, half in view.outline) * view.scale
        high = self._size(inner_height_mm(shape))
        return not isinstance(shape, TaperedCup) and narrowest >= _widest([high]) + 4 * GAP

    def _paint_words(self, painter: QPainter, words: Told, at: QPointF, colour: str, to_the_left: bool = False) -> None:
        high = _high(words)
        top = min(max(at.y() - high / 2, MARGIN / 2), self.height() - high - MARGIN / 2)
        painter.setPen(QColor(colour))
        for text, font in words:
            metrics = QFontMetricsF(font)
            painter.setFont(font)
            width = metrics.horizontalAdvance(text)
            x = at.x() - width if to_the_left else at.x()
            painter.drawText(QRectF(x, top, width + 2, metrics.lineSpacing()), 0, text)
            top += metrics.lineSpacing()

    def _view(self, shape: Shape, with_sizes: bool) -> _View:
        if not with_sizes:
            left = max(_beside(words) for words in (self._old_label(), *map(self._further_label, self._shown())))
            view = self._fit(shape, left, _beside(self._new_label(moved_told=True)), MARGIN)
            if self._moved_inside(view):
                return view
            return self._fit(shape, left, _beside(self._new_label(moved_told=False)), MARGIN)
        if isinstance(shape, Box):
            return self._box_view(shape)
        view = self._fit(shape, 0, 0, ABOVE_SIZES)
        if self._fits_inside(view, shape):
            return view
        left = _widest([self._size(inner_height_mm(shape))]) + 2 * GAP
        if isinstance(shape, TaperedCup):
            return self._fit(shape, left, _widest([self._size(shape.floor_diameter_mm)]), ABOVE_SIZES, 0.6 * GAP)
        return self._fit(shape, left, 0, ABOVE_SIZES)

    def _box_view(self, shape: Box) -> _View:
        right = _widest([self._size(shape.width_mm)]) + GAP
        view = self._fit(shape, 0, right, 0, BELOW_SIZES, SLANT * shape.width_mm)
        if self._fits_inside(view, shape):
            return view
        left = _widest([self._size(inner_height_mm(shape))]) + 2 * GAP
        return self._fit(shape, left, right, 0, BELOW_SIZES, SLANT * shape.width_mm)

    def _fit(
        self, shape: Shape, left: float, right: float, above: float, below: float = 0.0, back_mm: float = 0.0
    ) -> _View:
        """The scoop as large as it goes between what is written at its left, its right, above and below it; `back_mm`
        of it go back, up and to the right.
        """
        outline = outline_mm(shape)
        width_mm, height_mm = 2 * max(half for _, half in outline) + back_mm, outline[-1][0] + back_mm
        room_x = max(self.width() - left - right - MARGIN, 40.0)
        room_y = max(self.height() - above - below - MARGIN - WALL, 40.0)
        scale = min(room_x / width_mm, room_y / height_mm)
        spare = max(room_y - height_mm * scale, 0) / 2
        axis = MARGIN / 2 + left + (room_x - back_mm * scale) / 2
        return _View(outline, axis, self.height() - MARGIN - below - spare, scale)

    def _new_words(self) -> list[str]:
        if self._new_mm is None or self._level(self._new_mm) is None:
            return []
        before = [self._before] if self._before else []
        if self._new_mm == 0:  # at the rim: the scoop is struck level
            return before
        return [self._names[0], self._length(self._new_mm), self.tr("down the wall"), *before]

    def _new_label(self, moved_told: bool) -> Told:
        """What is written beside the new line; how far it moves too, where that is not told already."""
        if not self._new_words():
            return []
        more = [self._before] if self._before else []
        if self._new_mm == 0:
            return [(text, _font(True)) for text in more]
        return self._label(self._names[0], self._new_mm, more if moved_told else [*self._move_words(), *more])

    def _old_label(self) -> Told:
        return self._label(self._names[1], self._old_mm, []) if self._old_words() else []

    def _further_label(self, line: FurtherLine) -> Told:
        """A long name goes over several lines: beside it the scoop and its new line need their room."""
        font = _font(True)
        names = _broken(line.name, font, BESIDE_SHARE * self.width())
        return [*((name, font) for name in names), (self._length(line.down_wall_mm), _font(False))]

    def _levels(self) -> list[tuple[FurtherLine, float]]:
        """The further lines that are on the wall, with how high above the floor."""
        levels = ((line, self._level(line.down_wall_mm)) for line in self._further)
        return [(line, level) for line, level in levels if level is not None]

    def _shown(self) -> list[FurtherLine]:
        return [line for line, _ in self._levels()]

    def _label(self, name: str, down_wall_mm: float | None, more: list[str]) -> Told:
        """The name, the distance large, the same in the other unit; down from where, the drawing shows."""
        first, second = line_in_both(down_wall_mm or 0.0, self._system)
        figure = ui_font(FIGURE, QFont.Weight.Bold)
        also = [f"({second})"] if self._two_rulers else []
        return [(name, _font(True)), (first, figure), *((t, _font(False)) for t in (*also, *more))]

    @property
    def _two_rulers(self) -> bool:
        """A ruler in inches has millimetres on its other edge; where people measure in mm nobody looks for inches."""
        return self._system is UnitSystem.FARM

    def _old_words(self) -> list[str]:
        if self._old_mm is None or self._level(self._old_mm) is None:
            return []
        return [self._names[1], self._length(self._old_mm), self.tr("down the wall")]

    def _move_words(self) -> list[str]:
        if not self._moves or not self._new_mm or self._old_mm is None:
            return []
        if not (self._new_words() and self._old_words()):
            return []
        old, new = (on_line_step(mm, self._system) for mm in (self._old_mm, self._new_mm))
        first, second = (show_move(old, new, system) for system in (self._system, other_system(self._system)))
        distance = f"{first} ({second})" if self._two_rulers else first
        if distance == self._length(0.0):
            return [self.tr("stays where it is")]
        if self._new_mm > self._old_mm:
            return [self.tr("moves down"), distance]
        return [self.tr("moves up"), distance]

    def _size(self, mm: float) -> str:
        """A dimension as finely as it was typed; only lines are told to what a pen can follow."""
        return edit_text(mm, Kind.LENGTH, self._system, decimal_comma=decimal_comma())

    def _length(self, mm: float) -> str:
        first, second = line_in_both(mm, self._system)
        return f"{first} ({second})" if self._two_rulers else first

    def _level(self, down_wall_mm: float | None) -> float | None:
        if self._shape is None or down_wall_mm is None:
            return None
        try:
            return height_from_down_wall_mm(self._shape, down_wall_mm)
        except CannotCompute:
            return None

    def _name_it(self) -> None:
        self.setAccessibleName(self.words())
        self.update()


def _can_be_drawn(shape: Shape) -> bool:
    try:
        outline_mm(shape)
    except CannotCompute:
        return False
    return True


def _font(strong: bool) -> QFont:
    return ui_font(1.0 if strong else 0.95, QFont.Weight.Bold if strong else QFont.Weight.Normal)


def _broken(text: str, font: QFont, width: float) -> list[str]:
    """The words in lines of so much width; a single word that is wider stands by itself."""
    metrics, lines = QFontMetricsF(font), [""]
    for word in text.split(" "):
        longer = f"{lines[-1]} {word}".strip()
        if lines[-1] and metrics.horizontalAdvance(longer) > width:
            lines.append(word)
        else:
            lines[-1] = longer
    return lines


def _beside(words: Told) -> float:
    """The room that a label takes beside the wall."""
    return max((QFontMetricsF(font).horizontalAdvance(text) + 2 * GAP for text, font in words), default=GAP)


def _high(words: Told) -> float:
    return sum(QFontMetricsF(font).lineSpacing() for _, font in words)


def _level_of(told: tuple[float, Told, str]) -> float:
    return told[0]


def _apart(middles: Sequence[float], heights: Sequence[float]) -> list[float]:
    """Where labels stand, from the top down, so that each begins beneath the one before; as near as that lets them."""
    placed: list[float] = []
    beneath = -math.inf
    for middle, high in zip(middles, heights, strict=True):
        placed.append(max(middle, beneath + high / 2))
        beneath = placed[-1] + high / 2
    return placed


def _widest(words: list[str]) -> float:
    return max((QFontMetricsF(_font(True)).horizontalAdvance(text) for text in words), default=0.0)


def _pen(colour: str, width: float) -> QPen:
    return QPen(QColor(colour), width, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap, Qt.PenJoinStyle.RoundJoin)


def _cross(painter: QPainter, at: QPointF) -> None:
    for slant in (HEAD, -HEAD):
        arm = QPointF(HEAD, slant)
        painter.drawLine(at - arm, at + arm)


def _arrow(painter: QPainter, start: QPointF, end: QPointF, *, both: bool = False) -> None:
    """A line with a head at its end, or at both ends."""
    painter.drawLine(start, end)
    for tip, other in ((end, start), (start, end))[: 2 if both else 1]:
        along = tip - other
        length = max((along.x() ** 2 + along.y() ** 2) ** 0.5, 1e-6)
        unit = along / length * HEAD
        side = QPointF(-unit.y(), unit.x()) * 0.7
        painter.drawLine(tip, tip - unit + side)
        painter.drawLine(tip, tip - unit - side)
