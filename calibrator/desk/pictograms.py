"""Small pictures beside the names of the pages, in the emblem's hand: lines of one width, one of them orange."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QGuiApplication, QIcon, QPainter, QPainterPath, QPen, QPixmap

from calibrator.desk.theme import tokens

SIZE = QSize(22, 22)
_GRID, _WIDTH = 24.0, 2.0
_LARGEST = 3.0  # a screen that shows one pixel as three; one that comes later takes a smaller picture from it

Stroke = tuple[tuple[float, float], ...]

# In the lines of a grid of 24: those in the colour of the words, then those in the mark's orange.
PICTURES: dict[str, tuple[tuple[Stroke, ...], tuple[Stroke, ...]]] = {
    "today": (  # the scoop with its line
        (((4, 4), (7, 20), (15, 20), (18, 4)), ((18, 7), (22, 7))),
        (((6, 10.5), (16, 10.5)),),
    ),
    "lots": (  # a sewn bag with its number
        (((7, 3), (17, 3), (16, 6), (19, 20.5), (5, 20.5), (8, 6), (7, 3)), ((8, 6), (16, 6))),
        (((9, 13), (15, 13)),),
    ),
    "weigh_in": (  # a pan on a scale
        (
            ((4, 5), (6, 9.5), (18, 9.5), (20, 5)),
            ((12, 9.5), (12, 12)),
            ((6, 12), (18, 12), (20.5, 20.5), (3.5, 20.5), (6, 12)),
        ),
        (((10, 16.2), (14, 16.2)),),
    ),
    "tables": (  # the chart on its nail
        (
            ((4, 7), (20, 7), (20, 21), (4, 21), (4, 7)),
            ((8, 7), (12, 3), (16, 7)),
            ((9.5, 7), (9.5, 21)),
            ((4, 16.5), (20, 16.5)),
        ),
        (((4, 11.8), (20, 11.8)),),
    ),
    "mix_check": (  # the pail and its handle
        (((4, 9), (6, 21), (18, 21), (20, 9), (4, 9)), ((4, 9), (6.5, 4.5), (12, 3), (17.5, 4.5), (20, 9))),
        (((5.2, 14), (18.8, 14)),),
    ),
    "season": (  # lots with their intervals about a middle
        (((3, 21), (21, 21)), ((6, 4), (6, 11)), ((12, 9), (12, 17)), ((18, 6), (18, 13))),
        (((3, 10.5), (21, 10.5)),),
    ),
    "setup": (  # a ruler
        (
            ((8, 2.5), (16, 2.5), (16, 21.5), (8, 21.5), (8, 2.5)),
            ((8, 6.5), (11, 6.5)),
            ((8, 14.5), (11, 14.5)),
            ((8, 18), (10, 18)),
        ),
        (((8, 10.5), (13, 10.5)),),
    ),
    "help": (  # an open book
        (
            (
                (12, 6),
                (8, 4),
                (3, 4),
                (3, 19),
                (8, 19),
                (12, 21),
                (16, 19),
                (21, 19),
                (21, 4),
                (16, 4),
                (12, 6),
                (12, 21),
            ),
        ),
        (((15, 9.5), (18, 9.5)),),
    ),
}


def pictogram(page: str) -> QIcon:
    """The picture of a page, in the colours in force; in the colour of action while its page is shown.

    Drawn for the screens that there are and at its largest: for all there might be would hold up the first page.
    """
    icon = QIcon()
    scales = {_LARGEST, *(screen.devicePixelRatio() for screen in QGuiApplication.screens())}
    for state, colour in ((QIcon.State.Off, tokens().quiet), (QIcon.State.On, tokens().action)):
        for scale in scales:
            icon.addPixmap(_drawn(page, colour, scale), QIcon.Mode.Normal, state)
    return icon


def _drawn(page: str, colour: str, scale: float) -> QPixmap:
    pixmap = QPixmap(round(SIZE.width() * scale), round(SIZE.height() * scale))
    pixmap.setDevicePixelRatio(scale)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    box = QRectF(0, 0, SIZE.width(), SIZE.height())
    painter.scale(box.width() / _GRID, box.height() / _GRID)
    for strokes, ink in zip(PICTURES[page], (colour, tokens().mark), strict=True):
        painter.setPen(
            QPen(QColor(ink), _WIDTH, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap, Qt.PenJoinStyle.RoundJoin)
        )
        for stroke in strokes:
            painter.drawPath(_path(stroke))
    painter.end()
    return pixmap


def _path(stroke: Stroke) -> QPainterPath:
    path = QPainterPath(QPointF(*stroke[0]))
    for point in stroke[1:]:
        path.lineTo(QPointF(*point))
    return path
