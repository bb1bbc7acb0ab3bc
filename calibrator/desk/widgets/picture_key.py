"""The key to a picture: each sign as it is drawn there, its words beside it, so that no colour has to be named."""

from __future__ import annotations

from collections.abc import Sequence
from enum import Enum, auto

from PySide6.QtCore import QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from calibrator.desk.theme import SPACE, the_theme, tokens, ui_font
from calibrator.values import dataclass

SIGN_PX, SIZE_PX = 22.0, 10.0
BESIDE_PX, APART_PX = 6.0, 2.0 * SPACE
FONT = 0.9


class Sign(Enum):
    """What can stand in a picture."""

    LINE = auto()
    THIN = auto()
    DASHES = auto()
    DOTS = auto()
    BAR = auto()
    BAND = auto()
    CIRCLE = auto()
    RING = auto()
    SQUARE = auto()
    DIAMOND = auto()
    DOWN = auto()
    UP = auto()
    SHAPES = auto()
    CROSS = auto()
    NUMBER = auto()


@dataclass(frozen=True)
class Entry:
    """A sign, the token of its colour, and what it stands for."""

    sign: Sign
    tone: str
    words: str


class PictureKey(QWidget):
    """Entries one after another, on as many lines as they need; a screen reader hears their words."""

    def __init__(self) -> None:
        super().__init__()
        self._entries: tuple[Entry, ...] = ()
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        the_theme().changed.connect(self.update)

    def show_entries(self, entries: Sequence[Entry]) -> None:
        """Explain these, and nothing else."""
        self._entries = tuple(entries)
        self.setAccessibleName(self.text())
        if not entries or self.parentWidget() is not None:  # shown before it has its place, it were a window
            self.setVisible(bool(entries))
        self.updateGeometry()
        self.update()

    def text(self) -> str:
        """The words of all entries."""
        return "; ".join(entry.words for entry in self._entries)

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        places = self._places(width)
        return int(places[-1].bottom()) + 1 if places else 0

    def sizeHint(self) -> QSize:
        return QSize(320, self.heightForWidth(max(self.width(), 320)))

    def minimumSizeHint(self) -> QSize:
        widest = max((place.width() for place in self._places(1)), default=0.0)
        return QSize(int(widest) + 1, int(QFontMetricsF(_font()).lineSpacing()))

    def paintEvent(self, event: QPaintEvent) -> None:
        painter, t = QPainter(self), tokens()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(_font())
        for entry, place in zip(self._entries, self._places(self.width()), strict=True):
            sign = QRectF(place.left(), place.top(), SIGN_PX, place.height())
            draw_sign(painter, entry.sign, sign, getattr(t, entry.tone))
            painter.setPen(QColor(t.quiet))
            painter.drawText(place.adjusted(SIGN_PX + BESIDE_PX, 0, 2, 0), Qt.AlignmentFlag.AlignVCenter, entry.words)
        painter.end()

    def _places(self, width: int) -> list[QRectF]:
        metrics = QFontMetricsF(_font())
        high, left, top = metrics.lineSpacing(), 0.0, 0.0
        places = []
        for entry in self._entries:
            wide = SIGN_PX + BESIDE_PX + metrics.horizontalAdvance(entry.words)
            if left and left + wide > width:
                left, top = 0.0, top + high
            places.append(QRectF(left, top, wide, high))
            left += wide + APART_PX
        return places


def draw_sign(painter: QPainter, sign: Sign, place: QRectF, colour: str) -> None:
    """One sign in the middle of its place."""
    middle, pen = place.center(), QPen(QColor(colour), 2.0)
    half = SIZE_PX / 2
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    across = QLineF(place.left() + 1, middle.y(), place.right() - 1, middle.y())
    if sign in LINES:
        width, style = LINES[sign]
        painter.setPen(QPen(QColor(colour), width, style, Qt.PenCapStyle.FlatCap))
        painter.drawLine(across)
    elif sign is Sign.BAR:
        painter.drawLine(QPointF(middle.x(), middle.y() - half - 1), QPointF(middle.x(), middle.y() + half + 1))
    elif sign is Sign.BAND:
        soft = QColor(colour)
        soft.setAlpha(40)
        painter.setPen(QPen(QColor(colour), 1.0))
        painter.setBrush(soft)
        painter.drawRect(QRectF(place.left() + 1, middle.y() - half, SIGN_PX - 2, SIZE_PX))
    elif sign is Sign.NUMBER:
        painter.fillRect(QRectF(middle.x() - half - 2, middle.y() - half - 2, SIZE_PX + 4, SIZE_PX + 4), QColor(colour))
        painter.setPen(QColor(tokens().on_action))
        painter.drawText(place, Qt.AlignmentFlag.AlignCenter, "1")
    elif sign is Sign.CROSS:
        for slope in (-half, half):
            painter.drawLine(QLineF(middle.x() - half, middle.y() - slope, middle.x() + half, middle.y() + slope))
    elif sign is Sign.SHAPES:
        painter.setBrush(QColor(colour))
        for one, beside in ((Sign.CIRCLE, -SIGN_PX / 4), (Sign.SQUARE, SIGN_PX / 4)):
            _draw_dot(painter, one, middle + QPointF(beside, 0), 0.8 * half)
    else:
        painter.setBrush(Qt.BrushStyle.NoBrush if sign is Sign.RING else QColor(colour))
        _draw_dot(painter, sign, middle, half)


def _draw_dot(painter: QPainter, sign: Sign, middle: QPointF, half: float) -> None:
    painter.setPen(painter.pen() if sign is Sign.RING else Qt.PenStyle.NoPen)
    if sign in CORNERS:
        painter.drawPolygon(QPolygonF([middle + QPointF(x * half, y * half) for x, y in CORNERS[sign]]))
    else:
        painter.drawEllipse(middle, half, half)


LINES = {
    Sign.LINE: (2.5, Qt.PenStyle.SolidLine),
    Sign.THIN: (1.5, Qt.PenStyle.SolidLine),
    Sign.DASHES: (1.5, Qt.PenStyle.DashLine),
    Sign.DOTS: (2.0, Qt.PenStyle.DotLine),
}
CORNERS = {
    Sign.SQUARE: ((-0.9, -0.9), (0.9, -0.9), (0.9, 0.9), (-0.9, 0.9)),
    Sign.DIAMOND: ((0.0, -1.2), (1.2, 0.0), (0.0, 1.2), (-1.2, 0.0)),
    Sign.DOWN: ((-1.0, -0.9), (1.0, -0.9), (0.0, 1.0)),
    Sign.UP: ((-1.0, 0.9), (1.0, 0.9), (0.0, -1.0)),
}


def _font() -> QFont:
    return ui_font(FONT)
