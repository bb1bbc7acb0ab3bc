"""Water poured in by steps: how much is in it, and how high it stands."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QButtonGroup, QGridLayout, QRadioButton, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.parts import label, row
from calibrator.desk.refusals import in_words
from calibrator.desk.scoop_volume import poured
from calibrator.model import Poured
from calibrator.science.errors import CannotCompute
from calibrator.units import Kind

STEPS = 8
LEAST_STEPS = 3


class Pourings(QWidget):
    """Up to eight steps, the last one up to the rim. Blank rows at the end are left out."""

    edited = Signal()

    def __init__(self, desk: Desk, how: str) -> None:
        super().__init__()
        self.weighed = QRadioButton(self.tr("Water weighed"))
        self.measured = QRadioButton(self.tr("Water measured in a jug"))
        self.weighed.setChecked(True)
        self._ways = QButtonGroup(self)
        for choice in (self.weighed, self.measured):
            self._ways.addButton(choice)
        self.masses: list[Amount] = []
        self.volumes: list[Amount] = []
        self.heights: list[Amount] = []
        for step in range(1, STEPS + 1):
            self._add_step(desk, step)
        self._message = label("", "quiet")
        grid = QGridLayout()
        grid.setHorizontalSpacing(16)
        for place in range(STEPS):
            line, half = place % (STEPS // 2), place // (STEPS // 2)
            fields = row(self.masses[place], self.volumes[place], self.heights[place])
            grid.addLayout(fields, line, half)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(label(how, "quiet"))
        layout.addLayout(row(self.weighed, self.measured, None))
        layout.addLayout(grid)
        layout.addWidget(self._message)
        self.weighed.toggled.connect(self._show_way)
        self._show_way()

    def set_shape(self, shape: Poured | None) -> None:
        """Put a known shape's steps in, as volumes; or empty the rows."""
        self.measured.setChecked(shape is not None)
        self.weighed.setChecked(shape is None)
        steps = list(zip(shape.volumes_ml, shape.heights_mm, strict=True))[:STEPS] if shape else []
        for place in range(STEPS):
            volume, height = steps[place] if place < len(steps) else (None, None)
            self.masses[place].set_value(None)
            self.volumes[place].set_value(volume)
            self.heights[place].set_value(height)

    def shape(self, temperature_c: float) -> Poured | None:
        """The shape as typed so far, None while it is not one."""
        try:
            return self._shape(temperature_c)
        except CannotCompute:
            return None

    def understood(self, temperature_c: float) -> bool:
        """Whether the rows make a shape; says what is wrong where they do not."""
        amounts = self.masses if self.weighed.isChecked() else self.volumes
        if not all(field.understood() for field in (*amounts, *self.heights)):
            return False
        trouble = ""
        try:
            if self._shape(temperature_c) is None:
                trouble = self.tr("Fill in both fields of at least three steps, without a gap.")
        except CannotCompute as error:
            trouble = in_words(error)
        self._message.setText(trouble)
        self._message.setProperty("tone", "bad")
        return not trouble

    def _shape(self, temperature_c: float) -> Poured | None:
        amounts = [f.value() for f in (self.masses if self.weighed.isChecked() else self.volumes)]
        heights = [field.value() for field in self.heights]
        used = max((place + 1 for place in range(STEPS) if amounts[place] or heights[place]), default=0)
        filled = [a for a in amounts[:used] if a], [h for h in heights[:used] if h]
        if used < LEAST_STEPS or any(len(part) != used for part in filled):
            return None
        if self.weighed.isChecked():
            return poured(filled[1], filled[0], temperature_c)
        return Poured(heights_mm=tuple(filled[1]), volumes_ml=tuple(filled[0]))

    def _add_step(self, desk: Desk, step: int) -> None:
        water, high = self.tr("{step}. water").format(step=step), self.tr("{step}. height").format(step=step)
        self.masses.append(Amount(desk, water, Kind.MASS, optional=True))
        self.volumes.append(Amount(desk, water, Kind.VOLUME, optional=True))
        self.heights.append(Amount(desk, high, Kind.LENGTH, optional=True))
        for field in (self.masses[-1], self.volumes[-1], self.heights[-1]):
            field.edited.connect(self.edited)

    def _show_way(self) -> None:
        by_weight = self.weighed.isChecked()
        for mass, volume in zip(self.masses, self.volumes, strict=True):
            mass.setVisible(by_weight)
            volume.setVisible(not by_weight)
        self.edited.emit()
