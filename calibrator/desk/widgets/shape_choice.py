"""The shapes of scoops as pictures to choose from."""

from __future__ import annotations

from enum import StrEnum

from PySide6.QtCore import QPointF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPaintEvent, QPen
from PySide6.QtWidgets import QAbstractButton, QButtonGroup, QGridLayout, QSizePolicy, QWidget

from calibrator.desk.theme import tokens, ui_font
from calibrator.model import Box, Cylinder, Poured, Shape, TaperedCup


class ShapeKind(StrEnum):
    """Which shape a scoop has."""

    STRAIGHT = "straight"
    TAPERED = "tapered"
    BOX = "box"
    POURED = "poured"


def kind_of(shape: Shape) -> ShapeKind:
    """The kind of a shape."""
    return {
        Cylinder: ShapeKind.STRAIGHT,
        TaperedCup: ShapeKind.TAPERED,
        Box: ShapeKind.BOX,
        Poured: ShapeKind.POURED,
    }[type(shape)]


class ShapeButton(QAbstractButton):
    """A picture of a shape with its name; checked is told by a thick frame and a dot."""

    def __init__(self, kind: ShapeKind, name: str) -> None:
        super().__init__()
        self.kind = kind
        self.setText(name)
        self.setAccessibleName(name.replace("&", ""))
        self.setCheckable(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        return QSize(118, 80)

    def minimumSizeHint(self) -> QSize:
        return QSize(96, 78)

    def paintEvent(self, event: QPaintEvent) -> None:
        t = tokens()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        strong = self.isChecked()
        painter.setBrush(QColor(t.action_soft if strong else t.raised))
        edge = t.action if strong else t.text if self.hasFocus() else t.edge
        painter.setPen(QPen(QColor(edge), 2.5 if strong or self.hasFocus() else 1))
        painter.drawRoundedRect(self.rect().adjusted(2, 2, -2, -2), 8, 8)
        if strong and self.hasFocus():
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(QColor(t.action), 3))
            painter.drawRoundedRect(self.rect().adjusted(7, 7, -7, -7), 5, 5)
        painter.setBrush(QColor(t.surface))
        painter.setPen(QPen(QColor(t.action), 3, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap))
        painter.translate(self.width() / 2, 10)
        painter.drawPath(_picture(self.kind))
        painter.resetTransform()
        painter.setPen(QColor(t.action if strong else t.text))
        painter.setFont(ui_font(0.95))
        place = self.rect().adjusted(4, 54, -4, -5)
        painter.drawText(place, Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextShowMnemonic, self.text())
        painter.end()


class ShapeChoice(QWidget):
    """Four pictures of which one is chosen, by mouse or by the arrow keys."""

    chosen = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(self.tr("Shape of the scoop"))
        names = {
            ShapeKind.STRAIGHT: self.tr("Straight round"),
            ShapeKind.TAPERED: self.tr("Tapered round"),
            ShapeKind.BOX: self.tr("Square"),
            ShapeKind.POURED: self.tr("Any other"),
        }
        self.buttons = {kind: ShapeButton(kind, name) for kind, name in names.items()}
        group = QButtonGroup(self)
        layout = QGridLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        for place, made in enumerate(self.buttons.values()):
            group.addButton(made)
            layout.addWidget(made, 0, place)
        self.buttons[ShapeKind.STRAIGHT].setChecked(True)
        group.buttonToggled.connect(self._toggled)

    @property
    def kind(self) -> ShapeKind:
        return next(kind for kind, made in self.buttons.items() if made.isChecked())

    def choose(self, kind: ShapeKind) -> None:
        self.buttons[kind].setChecked(True)

    def _toggled(self, made: QAbstractButton, on: bool) -> None:
        if on:
            self.chosen.emit()


def _picture(kind: ShapeKind) -> QPainterPath:
    path = QPainterPath()
    if kind is ShapeKind.POURED:
        path.moveTo(QPointF(-22, 0))
        path.cubicTo(QPointF(-20, 18), QPointF(-8, 14), QPointF(-10, 40))
        path.lineTo(QPointF(10, 40))
        path.cubicTo(QPointF(8, 14), QPointF(20, 18), QPointF(22, 0))
        return path
    rim, floor = {ShapeKind.STRAIGHT: (18, 18), ShapeKind.TAPERED: (22, 14), ShapeKind.BOX: (28, 28)}[kind]
    top = 8 if kind is ShapeKind.BOX else 0
    path.moveTo(QPointF(-rim, top))
    path.lineTo(QPointF(-floor, 40))
    path.lineTo(QPointF(floor, 40))
    path.lineTo(QPointF(rim, top))
    if kind is ShapeKind.BOX:
        path.moveTo(QPointF(-rim, top))
        path.lineTo(QPointF(-rim + 8, top - 8))
        path.lineTo(QPointF(rim + 8, top - 8))
        path.lineTo(QPointF(rim + 8, 32))
        path.lineTo(QPointF(rim, 40))
        path.moveTo(QPointF(rim, top))
        path.lineTo(QPointF(rim + 8, top - 8))
    else:
        path.addEllipse(QPointF(0, top), rim, 4)
    return path
