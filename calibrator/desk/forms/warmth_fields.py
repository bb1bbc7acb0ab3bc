"""How warm powder and mix are, and how fast calves are fed: the plan's warmth."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.examples import MIX
from calibrator.desk.forms.fields import Captioned
from calibrator.desk.parts import label, row
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.count_field import CountField
from calibrator.model import Warmth
from calibrator.units import Kind

MOST_CALVES = 600


class WarmthFields(QWidget):
    """All of it may stay empty. With the powder's temperature the table tells what water to draw."""

    edited = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.powder = Amount(
            desk,
            self.tr("Powder is stored at"),
            Kind.TEMPERATURE,
            optional=True,
            lowest=-30.0,
            highest=60.0,
            example=False,
        )
        note = self.tr("Empty: the water is drawn as told above.")
        self.mix = Amount(
            desk,
            self.tr("The mix is to land at"),
            Kind.TEMPERATURE,
            note,
            optional=True,
            lowest=0.0,
            highest=60.0,
            examples=MIX,
        )
        self.pace = CountField(0, MOST_CALVES)
        self._pace = Captioned(self.tr("Calves fed in ten minutes"), self.pace)
        told = self.tr(
            "Groups are fed in the order in which they stand here; youngest first is common practice. "
            "How long a mix stays warm is told by its vessel, in the set-up."
        )
        fields = row(self.powder, self.mix, self._pace, spacing=2 * SPACE)
        for place in range(3):
            fields.setStretch(place, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(fields)
        layout.addWidget(label(told, "quiet"))
        for field in (self.powder, self.mix):
            field.edited.connect(self.edited)
        self.pace.counted.connect(self.edited)

    def load(self, told: Warmth | None) -> None:
        """Show a plan's warmth, or empty fields."""
        self.powder.set_value(told.powder_c if told else None, told.powder_typed if told else "")
        self.mix.set_value(told.mix_c if told else None, told.mix_typed if told else "")
        self.pace.set_count(told.calves_in_ten_minutes if told else 0)

    def understood(self) -> bool:
        """Whether it can be kept; what is missing is said beside the field."""
        sound = [self.powder.understood(), self.mix.understood()]
        needed = self.mix.text() or self.pace.count()
        if all(sound) and needed and self.powder.value() is None:
            self.powder.say(self.tr("Type how warm the powder is too: it takes its warmth from the water."), wrong=True)
            return False
        return all(sound)

    def made(self) -> Warmth | None:
        """The warmth as typed; None where nothing is told."""
        powder = self.powder.value()
        if powder is None:
            return None
        return Warmth(
            powder_c=powder,
            mix_c=self.mix.value(),
            powder_typed=self.powder.told(),
            mix_typed=self.mix.told() if self.mix.text() else "",
            calves_in_ten_minutes=self.pace.count(),
        )
