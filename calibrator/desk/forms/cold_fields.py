"""The cold-weather variant of a plan: below which temperature, and what changes."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.examples import COLD_AIR, MORE_POWDER
from calibrator.desk.forms.fields import Captioned
from calibrator.desk.parts import label, row
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.count_field import CountField
from calibrator.model import ColdWeather
from calibrator.units import Kind

MOST_MORE_PCT, MOST_FURTHER = 50.0, 2


class ColdFields(QWidget):
    """Left empty, the plan knows no cold weather. Its switch is on the page of the tables."""

    edited = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._on = False
        self.below = Amount(
            desk,
            self.tr("Below"),
            Kind.TEMPERATURE,
            optional=True,
            lowest=-50.0,
            highest=25.0,
            examples=COLD_AIR,
            example=False,
        )
        self.more = Amount(
            desk,
            self.tr("More powder"),
            Kind.PERCENT,
            optional=True,
            lowest=0.0,
            highest=MOST_MORE_PCT,
            examples=MORE_POWDER,
        )
        self.further = CountField(0, MOST_FURTHER)
        self._further = Captioned(self.tr("Further feedings a day"), self.further)
        told = self.tr(
            "A further feeding keeps the mix as strong as it is; more powder makes it stronger: watch the osmolality, "
            "and ask your veterinarian."
        )
        fields = row(self.below, self.more, self._further, spacing=2 * SPACE)
        for place in range(3):
            fields.setStretch(place, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(fields)
        layout.addWidget(label(told, "caution"))
        for field in (self.below, self.more):
            field.edited.connect(self.edited)
        self.further.counted.connect(self.edited)

    def load(self, told: ColdWeather | None) -> None:
        """Show a plan's variant, or empty fields."""
        self._on = told.on if told else False
        self.below.set_value(told.below_c if told else None, told.below_typed if told else "")
        if told and told.more_powder_share:
            self.more.set_share(told.more_powder_share)
        else:
            self.more.set_value(None)
        self.further.set_count(told.further_feedings if told else 0)

    def understood(self) -> bool:
        """Whether it can be kept; what is missing is said beside the field."""
        sound = [self.below.understood(), self.more.understood()]
        changes = bool(self.more.share()) or self.further.count() > 0
        if all(sound) and changes and self.below.value() is None:
            self.below.say(self.tr("Type below which temperature this holds."), wrong=True)
            return False
        if all(sound) and not changes and self.below.value() is not None:
            self.below.say(self.tr("Say what changes: more powder, or a further feeding."), wrong=True)
            return False
        return all(sound)

    def made(self) -> ColdWeather | None:
        """The variant as typed; None where nothing is told."""
        below = self.below.value()
        if below is None:
            return None
        return ColdWeather(
            below_c=below,
            below_typed=self.below.told(),
            more_powder_share=self.more.share() or 0.0,
            further_feedings=self.further.count(),
            on=self._on,
        )
