"""Rows of a group's day and weeks: a feeding of its own, a step to weaning."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.fields import Captioned, TextField
from calibrator.desk.forms.reach import FEEDING_ML
from calibrator.desk.forms.rows_editor import RowEditor
from calibrator.desk.parts import button, row
from calibrator.desk.rate_words import BY_SHARE
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.count_field import CountField
from calibrator.model import Feeding, FeedingStep, MixingRate, RateBasis
from calibrator.units import Kind

LAST_DAY, MOST_FEEDINGS = 365, 6


class FeedingRow(RowEditor):
    """A feeding with its name and volume; its powder, where that is not the group's."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.name = TextField(self.tr("Feeding, like “noon”"), longest=30)
        self.volume = Amount(desk, self.tr("Volume of this feeding"), Kind.VOLUME, within=FEEDING_ML)
        note = self.tr("On the same volume. Empty: the group's.")
        self.powder = Amount(desk, self.tr("Powder, if other"), Kind.MASS, note, optional=True)
        self.remove = button(self.tr("Leave this feeding out"), self.ask_remove, "link")
        self.setLayout(_in_a_line(self.name, self.volume, self.powder, self.remove))
        for field in (self.name, self.volume, self.powder):
            field.edited.connect(self.edited)

    def load(self, told: Feeding) -> None:
        self.name.set_text(told.name)
        self.volume.set_value(told.volume_ml)
        self.powder.set_value(told.rate.powder_mass_g if told.rate else None, told.rate.typed if told.rate else "")

    def understood(self) -> bool:
        sound = [self.name.filled(), self.volume.understood(), self.powder.understood()]
        return all(sound)

    def made(self, rate: MixingRate) -> Feeding | None:
        """The feeding as typed; its powder counts as the group's rate does."""
        volume, powder = self.volume.value(), self.powder.value()
        if volume is None:
            return None
        own = None
        if powder is not None and rate.basis not in BY_SHARE:
            own = replace(rate, powder_mass_g=powder, typed=self.powder.told())
        return Feeding(name=self.name.text(), volume_ml=volume, rate=own)

    def show_basis(self, basis: RateBasis) -> None:
        """A rate told as a share of the mix has no weight to change."""
        self.powder.setVisible(basis not in BY_SHARE)

    def first(self) -> QWidget:
        return self.name.line

    def in_order(self) -> tuple[QWidget, ...]:
        return (self.name.line, self.volume.line, self.powder.line, self.remove)


class StepRow(RowEditor):
    """From a day on so much, so often; no feedings from the day the calves are weaned."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.day = CountField(1, LAST_DAY)
        self._day = Captioned(self.tr("From day"), self.day)
        self.volume = Amount(
            desk,
            self.tr("Volume for each calf"),
            Kind.VOLUME,
            optional=True,
            within=FEEDING_ML,
        )
        self.feedings = CountField(0, MOST_FEEDINGS)
        self._feedings = Captioned(self.tr("Feedings a day"), self.feedings, self.tr("0: weaned"))
        self.remove = button(self.tr("Leave this step out"), self.ask_remove, "link")
        self.setLayout(_in_a_line(self._day, self.volume, self._feedings, self.remove))
        self.volume.edited.connect(self.edited)
        for field in (self.day, self.feedings):
            field.counted.connect(self.edited)
        self.feedings.set_count(2)

    def load(self, told: FeedingStep) -> None:
        self.day.set_count(told.from_day)
        self.volume.set_value(told.volume_ml or None)
        self.feedings.set_count(told.feedings_per_day)

    def understood(self) -> bool:
        sound = self.volume.understood()
        if sound and self.feedings.count() and self.volume.value() is None:
            self.volume.say(self.tr("Type how much."), wrong=True)
            return False
        return sound

    def made(self) -> FeedingStep:
        weaned = self.feedings.count() == 0
        volume = 0.0 if weaned else self.volume.value() or 0.0
        return FeedingStep(from_day=self.day.count(), volume_ml=volume, feedings_per_day=self.feedings.count())

    def first(self) -> QWidget:
        return self.day

    def in_order(self) -> tuple[QWidget, ...]:
        return (self.day, self.volume.line, self.feedings, self.remove)


def _in_a_line(*widgets: QWidget) -> QHBoxLayout:
    line = row(spacing=2 * SPACE)
    line.setContentsMargins(0, 0, 0, 0)
    for place, widget in enumerate(widgets):
        last = place == len(widgets) - 1
        line.addWidget(widget, 0 if last else 1, Qt.AlignmentFlag.AlignTop)
    return line
