"""Which lot to weigh in: those left open first, then those that came and wait."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.in_use import WEIGHED_IN, LotState
from calibrator.desk.pages.what_to_do import NEW_LOT
from calibrator.desk.parts import button, card, clear, column, label, row, scrolled
from calibrator.desk.scoop_lines import is_drawn, line_of, scoop_state
from calibrator.desk.speech import day_text
from calibrator.desk.standing import LotStanding, Standing, standing
from calibrator.desk.theme import SPACE
from calibrator.desk.weigh_in import words
from calibrator.desk.words import scoop_words_in_full, state_words
from calibrator.model import Scoop

LOUD = 1
"""Up to this place a lot is what one came for; the button of the first one is lit."""


def _place(known: LotStanding) -> int:
    """Those left open, those that came, then those weighed in, and last those out of old files."""
    if known.open_weigh_in is not None:
        return 0
    return {LotState.DELIVERED: LOUD, LotState.BROUGHT_IN: LOUD + 2}.get(known.state, LOUD + 1)


def another_waits(now: Standing, lot_id: str) -> bool:
    """Whether a lot other than this one was left open or waits to be weighed in."""
    return any(known.lot.id != lot_id and _place(known) <= LOUD for known in now.lots)


def left_open(now: Standing) -> str:
    """The one lot whose weigh-in was left open while no other waits; blank where there is a choice to make."""
    waiting = [known for known in now.lots if _place(known) <= LOUD]
    return waiting[0].lot.id if len(waiting) == 1 and waiting[0].open_weigh_in is not None else ""


class LotChooser(QWidget):
    """A card for each lot, with the one button that begins or goes on."""

    begin = Signal(str)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._lit: QPushButton | None = None
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
        layout.setSpacing(int(1.5 * SPACE))
        layout.addWidget(scrolled(inner), 1)

    def take_keys(self) -> None:
        """The keys begin with what stands out."""
        if self._lit is not None:
            self._lit.setFocus(Qt.FocusReason.OtherFocusReason)

    def reload(self) -> None:
        """Show the lots as they stand."""
        clear(self._list)
        self._lit = None
        farm = self._desk.farm
        now = standing(self._desk.records, farm, self._desk.clock().date()) if farm else None
        lots = now.lots if now else ()
        shown = sorted((lot for lot in reversed(lots) if lot.state is not LotState.FINISHED), key=_place)
        for lot in shown:
            self._list.addWidget(self._card(now, lot, first=lot is shown[0]))
        if not any(lot.state == LotState.DELIVERED for lot in shown):
            self._list.addWidget(
                label(self.tr("No lot is waiting. A newly delivered one is entered under Lots."), "quiet")
            )
        enter = button(self.tr("Enter a newly &delivered lot"), self._to_new_lot)
        if not any(_place(lot) <= LOUD for lot in shown):
            enter.setProperty("kind", "main")
            self._lit = enter
        self._list.addWidget(enter, 0, Qt.AlignmentFlag.AlignLeft)
        self._list.addStretch(1)

    def _card(self, now: Standing | None, standing_lot: LotStanding, *, first: bool) -> QWidget:
        lot, does = standing_lot.lot, self._button_text(standing_lot)
        begin = button(does, self._begin)
        begin.setProperty("lot", lot.id)
        if first and _place(standing_lot) <= LOUD:
            begin.setProperty("kind", "main")
            self._lit = begin
        begin.setAccessibleName(f"{does}, {lot.lot_number}")
        scoops = self._scoops(now, standing_lot) if now else ""
        parts = (lot.product, self._arrived(standing_lot), self._state(standing_lot), scoops)
        about = " · ".join(part for part in parts if part)
        told = column(label(lot.lot_number, "heading", wrap=False), label(about, "quiet"), spacing=SPACE // 2)
        line = row(told, begin, spacing=2 * SPACE)
        line.setStretch(0, 1)
        return card(line)

    def _arrived(self, standing_lot: LotStanding) -> str:
        day = standing_lot.lot.arrived_on
        return self.tr("arrived on {day}").format(day=day_text(day)) if day else ""

    def _state(self, standing_lot: LotStanding) -> str:
        if standing_lot.open_weigh_in is not None:
            step = words.step_names()[standing_lot.open_weigh_in.step]
            return self.tr("weigh-in left at: {step}").format(step=step)
        return state_words(standing_lot.state)

    def _scoops(self, now: Standing, known: LotStanding) -> str:
        """The scoops that it was weighed in with, and whether each bears its line."""
        own = [scoop for scoop in now.scoops if line_of(known, scoop.id)]
        text = self.tr("{scoop}: {state}")
        states = ((scoop.name, _scoop_words(now, known, scoop)) for scoop in own)
        return " · ".join(text.format(scoop=name, state=state) for name, state in states)

    def _button_text(self, known: LotStanding) -> str:
        if known.open_weigh_in is not None:
            return self.tr("Go on")
        return self.tr("Weigh in again") if known.state in WEIGHED_IN else self.tr("Weigh in")

    def _begin(self) -> None:
        self.begin.emit(self.sender().property("lot"))

    def _to_new_lot(self) -> None:
        self._desk.go_to.emit("lots", NEW_LOT)


def _scoop_words(now: Standing, known: LotStanding, scoop: Scoop) -> str:
    own = line_of(known, scoop.id)
    state, drawn = scoop_state(now, known, scoop.id), is_drawn(now, known, scoop.id)
    return scoop_words_in_full(state, known.state, level=bool(own and own.struck_level), drawn=drawn)
