"""Which lot to weigh in: those left open first, then those that came and wait."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.parts import button, card, clear, label, row, scrolled
from calibrator.desk.speech import day_text
from calibrator.desk.standing import LotStanding, LotState, standing
from calibrator.desk.theme import SPACE
from calibrator.desk.weigh_in import words


class LotChooser(QWidget):
    """A card for each lot, with the one button that begins or goes on."""

    begin = Signal(str)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._list = QVBoxLayout()
        self._list.setSpacing(SPACE)
        self._list.setContentsMargins(0, 0, 0, 0)
        inner = QWidget()
        inner.setLayout(self._list)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(
            label(self.tr("Every new lot number is weighed anew: its powder packs differently from the last one."))
        )
        layout.addWidget(scrolled(inner), 1)

    def reload(self) -> None:
        """Show the lots as they stand."""
        clear(self._list)
        farm = self._desk.farm
        lots = standing(self._desk.records, farm).lots if farm else ()
        order = {LotState.UNDER_WAY: 0, LotState.DELIVERED: 1, LotState.SIGNED_OFF: 2, LotState.BROUGHT_IN: 3}
        shown = sorted((lot for lot in reversed(lots) if lot.state in order), key=lambda lot: order[lot.state])
        for lot in shown:
            self._list.addWidget(self._card(lot))
        if not any(lot.state == LotState.DELIVERED for lot in shown):
            self._list.addWidget(
                label(self.tr("No lot is waiting. A newly delivered one is entered under Lots."), "quiet")
            )
        enter = button(self.tr("Enter a newly &delivered lot"), self._to_lots)
        self._list.addWidget(enter, 0, Qt.AlignmentFlag.AlignLeft)
        self._list.addStretch(1)

    def _card(self, standing_lot: LotStanding) -> QWidget:
        lot = standing_lot.lot
        begin = button(self._button_text(standing_lot.state), self._begin)
        begin.setProperty("lot", lot.id)
        quiet = standing_lot.state in (LotState.SIGNED_OFF, LotState.BROUGHT_IN)
        begin.setProperty("kind", "" if quiet else "main")
        begin.setAccessibleName(f"{self._button_text(standing_lot.state)}, {lot.lot_number}")
        about = " · ".join(
            part for part in (lot.product, self._arrived(standing_lot), self._state(standing_lot)) if part
        )
        return card(row(label(lot.lot_number, "heading", wrap=False), None, begin), label(about, "quiet"))

    def _arrived(self, standing_lot: LotStanding) -> str:
        day = standing_lot.lot.arrived_on
        return self.tr("arrived on {day}").format(day=day_text(day)) if day else ""

    def _state(self, standing_lot: LotStanding) -> str:
        if standing_lot.open_weigh_in is not None:
            step = words.step_names()[standing_lot.open_weigh_in.step]
            return self.tr("weigh-in left at: {step}").format(step=step)
        if standing_lot.state == LotState.SIGNED_OFF:
            return self.tr("signed off")
        return self.tr("not weighed in")

    def _button_text(self, state: LotState) -> str:
        return {
            LotState.UNDER_WAY: self.tr("Go on"),
            LotState.DELIVERED: self.tr("Weigh in"),
            LotState.BROUGHT_IN: self.tr("Weigh in"),
        }.get(state, self.tr("Weigh in again"))

    def _begin(self) -> None:
        self.begin.emit(self.sender().property("lot"))

    def _to_lots(self) -> None:
        self._desk.go_to.emit("lots", "")
