"""A shape by its inner dimensions, or by water poured in by steps: for scoops, pails and tanks."""

from __future__ import annotations

from math import isclose

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.examples import Example, Sizes
from calibrator.desk.forms.pourings import Pourings
from calibrator.desk.speech import decimal_comma
from calibrator.desk.widgets.shape_choice import ShapeChoice, ShapeKind, kind_of
from calibrator.model import Box, Cylinder, Poured, Shape, TaperedCup, UnitSystem
from calibrator.units import Kind, NotUnderstood, edit_text, read


class ShapeFields(QWidget):
    """Asks only for what the chosen shape has. `beside` takes what stands next to the dimensions."""

    edited = Signal()

    def __init__(self, desk: Desk, name: str, how_to_pour: str, widest_mm: float, sizes: Sizes) -> None:
        super().__init__()
        self.desk, self._widest_mm = desk, widest_mm
        self.shapes = ShapeChoice()
        self.shapes.setAccessibleName(name)
        self.diameter = self._length(self.tr("Diameter inside"), sizes.across)
        self.rim = self._length(self.tr("Diameter at the rim"), sizes.across)
        self.floor = self._length(self.tr("Diameter at the floor"), sizes.floor)
        self.inner_length = self._length(self.tr("Length inside"), sizes.across)
        self.inner_width = self._length(self.tr("Width inside"), sizes.across)
        self.inner_height = self._length(self.tr("Height inside"), sizes.height)
        self.pourings = Pourings(desk, how_to_pour)
        self.beside = QHBoxLayout()
        self._lay_out()
        for field in self._every():
            field.edited.connect(self._look)
        self.shapes.chosen.connect(self._look)
        self.pourings.edited.connect(self._look)
        self._show_asked()

    @property
    def poured(self) -> bool:
        return self.shapes.kind is ShapeKind.POURED

    def set_shape(self, shape: Shape | None) -> None:
        """Put a known shape in, or empty all fields."""
        self.shapes.choose(kind_of(shape) if shape else ShapeKind.STRAIGHT)
        self._put(self.diameter, shape.diameter_mm if isinstance(shape, Cylinder) else None)
        self._put(self.rim, shape.rim_diameter_mm if isinstance(shape, TaperedCup) else None)
        self._put(self.floor, shape.floor_diameter_mm if isinstance(shape, TaperedCup) else None)
        self._put(self.inner_length, shape.length_mm if isinstance(shape, Box) else None)
        self._put(self.inner_width, shape.width_mm if isinstance(shape, Box) else None)
        self._put(self.inner_height, shape.height_mm if isinstance(shape, Cylinder | TaperedCup | Box) else None)
        self.pourings.set_shape(shape if isinstance(shape, Poured) else None)
        self._show_asked()

    def shape(self, water_c: float) -> Shape | None:
        """The shape as typed so far; poured water was at `water_c`. None while it is not one."""
        if self.poured:
            return self.pourings.shape(water_c)
        values = [field.value() for field in self._asked()]
        sizes = [value for value in values if value is not None]
        if len(sizes) < len(values):
            return None
        if self.shapes.kind is ShapeKind.STRAIGHT:
            return Cylinder(diameter_mm=sizes[0], height_mm=sizes[1])
        if self.shapes.kind is ShapeKind.TAPERED:
            return TaperedCup(rim_diameter_mm=sizes[0], floor_diameter_mm=sizes[1], height_mm=sizes[2])
        return Box(length_mm=sizes[0], width_mm=sizes[1], height_mm=sizes[2])

    def sizes(self, shape: Shape) -> list[tuple[str, float]]:
        """What was measured inside, in mm, each by the name of its field."""
        if isinstance(shape, Poured):
            return [(self.inner_height.caption.text(), shape.heights_mm[-1])]
        named = ((field.caption.text(), field.value()) for field in self._asked())
        return [(name, size_mm) for name, size_mm in named if size_mm is not None]

    def understood(self, water_c: float) -> bool:
        """Whether it can be kept; says beside the field what is wrong."""
        if self.poured:
            return self.pourings.understood(water_c)
        sound = [field.understood() for field in self._asked()]
        return all(sound)

    def _put(self, field: Amount, size_mm: float | None) -> None:
        """As it was typed here, where that still means this size; else in the system whose ruler has it: 10 cm is
        told "100 mm", not "3.937 in".
        """
        typed = field.told() if size_mm is not None else ""
        if size_mm is not None and not _means(typed, size_mm):
            texts = (edit_text(size_mm, Kind.LENGTH, s, decimal_comma=decimal_comma()) for s in _own_first(self.desk))
            typed = next((text for text in texts if _means(text, size_mm)), "")
        field.set_value(size_mm, typed)

    def _length(self, caption: str, examples: Example) -> Amount:
        return Amount(self.desk, caption, Kind.LENGTH, lowest=1, highest=self._widest_mm, examples=examples)

    def _every(self) -> tuple[Amount, ...]:
        across = (self.diameter, self.rim, self.floor, self.inner_length, self.inner_width)
        return (*across, self.inner_height)

    def _asked(self) -> tuple[Amount, ...]:
        """The dimensions that the chosen shape has."""
        return {
            ShapeKind.STRAIGHT: (self.diameter, self.inner_height),
            ShapeKind.TAPERED: (self.rim, self.floor, self.inner_height),
            ShapeKind.BOX: (self.inner_length, self.inner_width, self.inner_height),
            ShapeKind.POURED: (),
        }[self.shapes.kind]

    def _look(self) -> None:
        self._show_asked()
        self.edited.emit()

    def _show_asked(self) -> None:
        asked = self._asked()
        for field in self._every():
            field.setVisible(field in asked)
        self._dimensions.setVisible(not self.poured)
        self.pourings.setVisible(self.poured)

    def _lay_out(self) -> None:
        self._dimensions = QWidget()
        dimensions = QVBoxLayout(self._dimensions)
        dimensions.setContentsMargins(0, 0, 0, 0)
        for field in self._every():
            dimensions.addWidget(field)
        dimensions.addStretch(1)
        self.beside.addWidget(self._dimensions, 2)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.shapes)
        layout.addWidget(self.pourings)  # above the drawing, which comes with the third step
        layout.addLayout(self.beside)


def _own_first(desk: Desk) -> tuple[UnitSystem, ...]:
    return tuple(sorted(UnitSystem, key=lambda system: system is not desk.system))


def _means(text: str, size_mm: float) -> bool:
    """Whether a text with its unit is exactly this size."""
    try:
        found = read(text, Kind.LENGTH, UnitSystem.METRIC, decimal_comma=decimal_comma())
    except NotUnderstood:
        return False
    return not found.bare and isclose(found.value, size_mm, rel_tol=1e-9)
