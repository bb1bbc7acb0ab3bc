"""The lot: which powder is in hand, who weighs, what the room is like."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtWidgets import QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.reach import ROOM_C
from calibrator.desk.guide import Guide, Missing
from calibrator.desk.parts import card, label
from calibrator.desk.speech import day_text
from calibrator.desk.weigh_in.step_view import StepView, show_kept, stays_wrong
from calibrator.desk.widgets.form_rows import form_rows
from calibrator.desk.widgets.initials import select_on_entry
from calibrator.desk.widgets.quantity_field import QuantityField
from calibrator.desk.widgets.stray_keys import SteadyLine
from calibrator.model import Lot, UnitSystem
from calibrator.units import Kind

FIELD_WIDTH = 260
MOST_INITIALS = 12
ROOM_TEMPERATURES = {UnitSystem.FARM: "68 °F", UnitSystem.METRIC: "20 °C"}


class StepLot(StepView):
    """Compares the number on the bag with the one in the records; asks who is at work."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(
            desk,
            self.tr(
                "Read the lot number off the bag in front of you. Open four bags if you can, for bags differ as "
                "well as scoopfuls; stir up powder that has caked or settled."
            ),
        )
        self._number = label("", "figure")
        self._about = label("", "quiet")
        self._medicated = label(
            self.tr("This powder is medicated. Follow its label, the veterinarian and local rules; wear gloves."),
            "caution",
        )
        self._initials = SteadyLine()
        self._initials.setMaxLength(MOST_INITIALS)
        self._initials.setAccessibleName(self.tr("Your initials"))
        select_on_entry(self._initials)
        self._initials.textEdited.connect(self.typing)
        self._initials.editingFinished.connect(self._take)
        self._initials.returnPressed.connect(self._onward)
        self._humidity = self._quantity(Kind.PERCENT, self.tr("Room humidity"), None)
        self._temperature = self._quantity(Kind.TEMPERATURE, self.tr("Room temperature"), ROOM_TEMPERATURES)
        self.body.addWidget(card(self._number, self._about, self._medicated))
        self.body.addWidget(card(self._form()))
        self.body.addWidget(
            label(
                self.tr(
                    "Powder dust irritates lungs and eyes and can burn in the air: pour slowly, keep dust down and "
                    "flames away."
                ),
                "caution",
            )
        )
        self.body.addStretch(1)

    def refresh(self, guide: Guide, fresh: bool) -> None:
        lot = guide.lot
        self._number.setText(lot.lot_number)
        self._about.setText(self._facts(lot))
        self._about.setVisible(bool(self._about.text()))
        self._medicated.setVisible(lot.medicated)
        self._humidity.set_system(self.desk.system)
        self._temperature.set_system(self.desk.system)
        w = guide.weigh_in
        if fresh or not self._initials.hasFocus():
            self._initials.setText(w.by or self.desk.initials)
            if self._initials.hasFocus():
                self._initials.selectAll()  # as on entry: what is typed takes its place
        show_kept(self._humidity, w.room_humidity_pct, "", fresh)
        show_kept(self._temperature, w.room_temperature_c, "", fresh)

    def first_field(self) -> QWidget:
        return self._initials

    def typed_already(self) -> frozenset[Missing]:
        return frozenset({Missing.INITIALS} if self._initials.text().strip() else ())

    def take(self) -> bool:
        self._take()
        return True

    def _facts(self, lot: Lot) -> str:
        parts = [lot.product] if lot.product else []
        if lot.made_on:
            parts.append(self.tr("made on {day}").format(day=day_text(lot.made_on)))
        if lot.arrived_on:
            parts.append(self.tr("arrived on {day}").format(day=day_text(lot.arrived_on)))
        return " · ".join(parts)

    def _form(self) -> QWidget:
        rows = (
            (self.tr("Your &initials"), self._initials, self.tr("who weighs today")),
            (self.tr("Room &humidity"), self._humidity, self.tr("if known; only noted, no weight is changed for it")),
            (self.tr("Room tem&perature"), self._temperature, self.tr("if known")),
        )
        return form_rows(rows, FIELD_WIDTH)

    def _quantity(self, kind: Kind, name: str, examples: Mapping[UnitSystem, str] | None) -> QuantityField:
        lowest, highest = ROOM_C if kind is Kind.TEMPERATURE else (None, None)
        field = QuantityField(
            kind, self.desk.system, name=name, required=False, lowest=lowest, highest=highest, examples=examples
        )
        field.editingFinished.connect(self._take)
        field.returnPressed.connect(self._onward)
        return field

    def _take(self) -> None:
        guide = self.guide
        if guide is None:
            return
        by = self._initials.text().strip()
        self.desk.initials = by
        humidity, temperature = self._humidity.quantity(), self._temperature.quantity()
        known: dict[str, object] = {"by": by}
        if humidity is not None or not self._humidity.text():
            known["room_humidity_pct"] = humidity.value if humidity else None
        if temperature is not None or not self._temperature.text():
            known["room_temperature_c"] = temperature.value if temperature else None
        self.desk.attempt(lambda: guide.set(**known))

    def _onward(self) -> None:
        """From field to field, and from the last one to the next step."""
        self._take()
        if any(stays_wrong(field) for field in (self._humidity, self._temperature)):
            return
        if self.sender() is not self._temperature:
            self.focusNextChild()
        elif self.guide and self.guide.weigh_in.by:
            self.ready.emit()
        else:
            self._initials.setFocus()
