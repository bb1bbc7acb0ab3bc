"""The hot water that the farm has: what the tank gives at once, how hot, and how cold the cold water is."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from PySide6.QtWidgets import QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.enter import enter_moves_on
from calibrator.desk.forms.examples import COLD_WATER, HOT_WATER, TANK
from calibrator.desk.forms.reach import VESSEL_ML
from calibrator.desk.parts import card, column, label
from calibrator.desk.table_words import scald_words
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.saying import Held
from calibrator.desk.widgets.side_by_side import SideBySide
from calibrator.model import HotWater, UnitSystem
from calibrator.science.heat import scalds
from calibrator.units import Kind


class HotWaterForm(QWidget):
    """Kept as soon as all three are told; emptied, it is forgotten."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self.tank = Amount(
            desk, self.tr("Hot water in the tank"), Kind.VOLUME, optional=True,
            within=VESSEL_ML, examples=TANK,
        )  # fmt: skip
        self.hot = self._temperature(self.tr("How hot it is"), HOT_WATER)
        self.cold = self._temperature(self.tr("Cold water"), COLD_WATER)
        self.fields = (self.tank, self.hot, self.cold)
        self.scald = label("", "caution")
        told = self.tr(
            "With these three the tables say how much hot and cold water to blend, and when the tank will not do."
        )
        fields = SideBySide(*self.fields, gap=2 * SPACE)
        self._state = Held("quiet", lines=1)
        frame = card(column(fields, self._state, label(told, "quiet"), self.scald, spacing=SPACE))
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(frame)
        for field in self.fields:
            field.finished.connect(self.keep)
            field.edited.connect(self._edited)
        enter_moves_on(self)

    def reload(self) -> None:
        """Show what is kept; what is being typed stays."""
        if self.busy:
            return
        known = self.desk.farm.hot_water if self.desk.farm else None
        self.tank.set_value(known.tank_ml if known else None, known.tank_typed if known else "")
        self.hot.set_value(known.hot_c if known else None, known.hot_typed if known else "")
        self.cold.set_value(known.cold_c if known else None, known.cold_typed if known else "")
        self._caution()

    @property
    def busy(self) -> bool:
        """Whether somebody is at it: typing, or not all three are told."""
        told = [bool(field.text()) for field in self.fields]
        return any(field.busy for field in self.fields) or (any(told) and not all(told))

    def keep(self) -> None:
        """Keep the three as typed, once they make sense together."""
        farm = self.desk.farm
        sound = [field.understood() for field in self.fields]
        told = [field for field in self.fields if field.text()]
        if farm is None or not all(sound):
            return
        if 0 < len(told) < len(self.fields):
            self._state.setText(self.tr("Not kept yet: the three go together."))
            return
        known = self._made()
        if known and known.hot_c <= known.cold_c:
            self.hot.say(self.tr("The hot water must be warmer than the cold water."), wrong=True)
            return
        if known == farm.hot_water:
            return
        changed = replace(farm, hot_water=known)
        if self.desk.keep(changed) is not None:
            self.desk.say(self.tr("Hot water kept.") if known else self.tr("Hot water is no longer told."))
            self._state.setText(self.tr("Kept."))

    def _made(self) -> HotWater | None:
        tank, hot, cold = (field.value() for field in self.fields)
        if tank is None or hot is None or cold is None:
            return None
        typed = [field.told() for field in self.fields]
        return HotWater(
            tank_ml=tank, hot_c=hot, cold_c=cold, tank_typed=typed[0], hot_typed=typed[1], cold_typed=typed[2]
        )

    def _temperature(self, caption: str, examples: Mapping[UnitSystem, str]) -> Amount:
        return Amount(
            self.desk, caption, Kind.TEMPERATURE, optional=True, lowest=0.0, highest=100.0, examples=examples,
        )  # fmt: skip

    def _edited(self) -> None:
        self._state.setText("")
        self._caution()

    def _caution(self) -> None:
        hot = self.hot.value()
        self.scald.setVisible(hot is not None and scalds(hot))
        if hot is not None:
            self.scald.setText(scald_words(hot, self.desk.system))
