"""One painter for every device: screen, printer, PDF."""

from __future__ import annotations

import math
from itertools import pairwise
from typing import assert_never

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPainterPath, QPen

from calibrator.prints import fonts
from calibrator.prints.page import Anchor, Go, Item, Line, Page, PathStep, Shape, Text

MM_PER_INCH = 25.4
HAIR_MM = 0.01
_SHIFT = {Anchor.START: 0.0, Anchor.MIDDLE: 0.5, Anchor.END: 1.0}


def paint_page(painter: QPainter, page: Page, pixels_per_mm: float | None = None) -> None:
    """Paint a page with its corner at the painter's origin.

    Without `pixels_per_mm` the page has its true size by the device's logical resolution; the physical one
    is a guess on many devices.
    """
    scale = painter.device().logicalDpiX() / MM_PER_INCH if pixels_per_mm is None else pixels_per_mm
    painter.save()
    painter.scale(scale, scale)
    painter.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.TextAntialiasing)
    for item in page.items:
        _paint(painter, item)
    painter.restore()


def _paint(painter: QPainter, item: Item) -> None:
    match item:
        case Text():
            _paint_text(painter, item)
        case Line():
            painter.setPen(_pen(item.width_mm, item.ink, item.dash_mm))
            painter.drawLine(QPointF(item.x1_mm, item.y1_mm), QPointF(item.x2_mm, item.y2_mm))
        case Shape():
            _paint_shape(painter, item)
        case _:
            assert_never(item)


def _paint_text(painter: QPainter, item: Text) -> None:
    painter.save()
    painter.translate(item.x_mm, item.y_mm)
    painter.rotate(item.angle_deg)
    painter.scale(item.size_mm / fonts.EM, item.size_mm / fonts.EM)
    painter.setPen(colour(item.ink))
    painter.setFont(fonts.font(item.weight))
    x = -_SHIFT[item.anchor] * fonts.advance(item.text, item.weight, item.figures) * fonts.EM
    for run in fonts.runs(item.text, item.figures):
        painter.save()
        painter.translate(x, -run.rise * fonts.EM)
        painter.scale(run.scale, run.scale)
        painter.drawText(QPointF(0, 0), run.text)
        painter.restore()
        x += fonts.advance(run.text, item.weight) * fonts.EM * run.scale
    painter.restore()


def _paint_shape(painter: QPainter, item: Shape) -> None:
    no_pen, no_brush = Qt.PenStyle.NoPen, Qt.BrushStyle.NoBrush
    painter.setPen(no_pen if item.stroke_mm is None else _pen(item.stroke_mm, item.ink, item.dash_mm))
    painter.setBrush(no_brush if item.fill is None else QBrush(colour(item.fill)))
    painter.drawPath(_path(item))


def _path(item: Shape) -> QPainterPath:
    path = QPainterPath()
    for step in item.steps:
        match step.go:
            case Go.MOVE:
                path.moveTo(step.x_mm, step.y_mm)
            case Go.TO:
                path.lineTo(step.x_mm, step.y_mm)
            case Go.ARC:
                _arc(path, step)
            case Go.CLOSE:
                path.closeSubpath()
    return path


def _arc(path: QPainterPath, step: PathStep) -> None:
    """An arc by Bézier curves of its own; a line leads to it where it begins apart from where the path stands.

    Qt's `arcTo` misses an arc's ends by some tenths of a millimetre where the radius is large, and the hair between
    is joined by a spike.
    Four thirds of the tangent of a quarter of the angle is the usual length of the handles; at 15° the curve is
    within a hundred-millionth of the radius.
    """
    parts = max(1, math.ceil(abs(step.sweep_deg) / 15.0))
    turn = math.radians(step.sweep_deg / parts)
    handle = 4 / 3 * math.tan(turn / 4)
    angles = [math.radians(step.start_deg) + turn * number for number in range(parts + 1)]
    corners = [(math.cos(angle), math.sin(angle)) for angle in angles]

    def at(x: float, y: float) -> QPointF:
        return QPointF(step.x_mm + step.radius_mm * x, step.y_mm + step.radius_mm * y)

    if (path.currentPosition() - at(*corners[0])).manhattanLength() > HAIR_MM:
        path.lineTo(at(*corners[0]))
    for (x1, y1), (x2, y2) in pairwise(corners):
        path.cubicTo(at(x1 - handle * y1, y1 + handle * x1), at(x2 + handle * y2, y2 - handle * x2), at(x2, y2))


def colour(ink: float) -> QColor:
    """Grey from black 0 to white 1."""
    level = round(255 * ink)
    return QColor(level, level, level)


def _pen(width_mm: float, ink: float, dash_mm: tuple[float, ...]) -> QPen:
    pen = QPen(colour(ink), width_mm)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    if dash_mm:
        pen.setDashPattern([part / width_mm for part in dash_mm])
    return pen
