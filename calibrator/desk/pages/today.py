"""Today: where am I needed. The lot in use and its marks, what is waiting, the spot fill."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from calibrator.desk.at_hand import AtHand
from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.page import Page
from calibrator.desk.pages.powder_card import PowderCard
from calibrator.desk.pages.spot_card import SpotCard
from calibrator.desk.parts import button, card, clear, column, in_tab_order, label, row, rule, scrolled, set_tone
from calibrator.desk.sheet_words import outdated_words
from calibrator.desk.speech import day_text, decimal_comma
from calibrator.desk.standing import (
    THIN,
    LotStanding,
    Need,
    Standing,
    Waiting,
    first_step,
    line_on,
    standing,
    waiting,
)
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.scoop_drawing import ScoopDrawing
from calibrator.desk.words import mark_words, medicated_caution, step_words
from calibrator.model import Plan, Printed, Scoop
from calibrator.records import RecordsUnreachable
from calibrator.units import show_mass

if TYPE_CHECKING:
    from calibrator.desk.pages.sheets_gone import SheetsGone

NEW_LOT = "new"  # what the page of lots takes for an empty form


class LotCard(QFrame):
    """The lot in use, and for each scoop whether it is marked for it."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self.setProperty("kind", "card")
        self.heading = label("", "heading")
        self.caution = label(medicated_caution(), "caution")
        self.drawing = ScoopDrawing(desk.system)
        self.drawing.set_names(self.tr("The line"), "")
        self._lines = QVBoxLayout()
        self._lines.setSpacing(SPACE)
        layout = column(label(self.tr("Lot in use"), "quiet"), self.heading, self.caution, self._lines, self.drawing)
        layout.setContentsMargins(2 * SPACE, 2 * SPACE, 2 * SPACE, 2 * SPACE)
        layout.setStretch(4, 1)
        self.setLayout(layout)

    def show_standing(self, now: Standing) -> None:
        """Show the lot in use; says so where none is."""
        clear(self._lines)
        known = now.in_use
        self.caution.setVisible(bool(known and known.lot.medicated))
        if known is None:
            self.heading.setText(self.tr("None yet"))
            words = self.tr("A lot is in use once its weigh-in is signed off.")
            self._lines.addWidget(label(words, "quiet"))
        else:
            self.heading.setText(f"{known.lot.lot_number}  {known.lot.product}".strip())
            for scoop in now.scoops:
                self._lines.addLayout(self._line(now, known, scoop))
        self._draw(now)

    def _line(self, now: Standing, known: LotStanding, scoop: Scoop) -> QHBoxLayout:
        mark = line_on(now, scoop.id)
        tag = label("", "tag", wrap=False)
        tag.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Maximum)
        if mark is None:
            tag.setText(self.tr("not marked"))
            told = self.tr("{scoop}: no line yet").format(scoop=scoop.name)
        elif mark.lot_id == known.lot.id:
            tag.setText(self.tr("marked"))
            set_tone(tag, "good")
            told = self.tr("{scoop}: {line} down the wall for {target}").format(
                scoop=scoop.name,
                line=mark_words(mark, self.desk.system),
                target=show_mass(mark.target_mass_g, self.desk.system, decimal_comma=decimal_comma()),
            )
        else:
            tag.setText(self.tr("line of another lot"))
            set_tone(tag, "warn")
            told = self.tr("{scoop}: do not use it for this lot").format(scoop=scoop.name)
        line = row(label(told), tag)
        line.setStretch(0, 1)
        return line

    def _draw(self, now: Standing) -> None:
        marks = now.in_use.marks if now.in_use else ()
        scoops = {scoop.id: scoop for scoop in now.scoops}
        shown = [mark for mark in marks if mark.scoop_id in scoops]
        self.drawing.setVisible(bool(shown))
        if shown:
            self.drawing.set_system(self.desk.system)
            self.drawing.set_shape(scoops[shown[-1].scoop_id].shape)
            self.drawing.set_lines(shown[-1].down_wall_mm, None)


class WaitingRow(QWidget):
    """One thing that is waiting, with the button that does it; old sheets may also be told gone."""

    pressed = Signal(str, str)
    gone = Signal(object)

    def __init__(
        self, words: str, do: str, page: str, thing_id: str, first: bool, sheets: tuple[Printed, ...] = ()
    ) -> None:
        super().__init__()
        self._page, self._thing_id, self._sheets = page, thing_id, sheets
        self.words = words
        self.button = button(do, self._press, "main" if first else "")
        self.gone_button = button(self.tr("It is gone"), self._tell_gone)
        self.gone_button.setVisible(bool(sheets))
        for each in (self.button, self.gone_button):
            each.setAccessibleDescription(words)
        line = row(label(words), column(self.button, self.gone_button), spacing=2 * SPACE)
        line.setStretch(0, 1)
        line.setContentsMargins(0, 0, 0, 0)
        self.setLayout(line)

    def _press(self) -> None:
        self.pressed.emit(self._page, self._thing_id)

    def _tell_gone(self) -> None:
        self.gone.emit(self._sheets)


class TodayPage(Page):
    """Read anew whenever something is kept; each line brings the person to where it is done."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk, "")
        self.title.setText(self.tr("Today"))
        self.lot_card = LotCard(desk)
        self.spot_card = SpotCard(desk)  # first: it is weighed with the bag open beside the screen
        self.powder_card = PowderCard(desk)
        self.rows: list[WaitingRow] = []
        self.gone_dialog: SheetsGone | None = None
        self._waiting_heading = label("", "heading")
        self._waiting = QVBoxLayout()
        self._waiting.setSpacing(SPACE)
        self._lay_out()

    def reload(self) -> None:
        farm = self.desk.farm
        self.title.setText(self.tr("Today, {day}").format(day=day_text(self.desk.clock().date())))
        if farm is None:
            return
        try:
            now = standing(self.desk.records, farm)
        except RecordsUnreachable:
            self.spot_card.go_on()  # a bag is opened whether the server is there or not
            raise
        self.lot_card.show_standing(now)
        self.spot_card.show_standing(now)
        self.powder_card.show_standing(now)
        self._show_waiting(now)

    def pending(self) -> str:
        """What is typed here and not kept yet; blank where all is kept."""
        return ", ".join(text for text in (self.spot_card.pending(), self.powder_card.pending()) if text)

    def _lay_out(self) -> None:
        inner = QWidget()
        left = column(card(self._waiting_heading, self._waiting), self.lot_card, None, spacing=2 * SPACE)
        inside = row(left, column(self.spot_card, self.powder_card, None, spacing=2 * SPACE), spacing=2 * SPACE)
        inside.setStretch(0, 3)
        inside.setStretch(1, 2)
        inside.setContentsMargins(0, 0, 0, 0)
        inner.setLayout(inside)
        self.body.addWidget(scrolled(inner), 1)

    def _show_waiting(self, now: Standing) -> None:
        had = next((line.words for line in self.rows if line.button.hasFocus()), "")
        clear(self._waiting)
        self.rows = []
        if first_step(self.desk.records, self.desk.farm):
            words = self.tr("The set-up is not finished: scale, scoop or first lot is missing.")
            self._add(words, self.tr("Go on with the set-up"), "welcome", "")
        self._add_powder(self.powder_card.found)
        for found in waiting(now, self.desk.clock().date()):
            self._add(*self._told(found), found.sheets)
        needed = self.tr("Nothing is waiting.") if not self.rows else self.tr("Where you are needed")
        self._waiting_heading.setText(needed)
        for plan in self.desk.records.every(Plan, now.farm_id):
            if plan.retired_on is None:
                words = self.tr("To mix today: {plan}").format(plan=plan.name)
                self._add(words, self.tr("Open the table"), "tables", plan.id)
        in_tab_order(self._waiting_heading, *(line.button for line in self.rows))
        for line in self.rows:
            if line.words == had:
                line.button.setFocus(Qt.FocusReason.OtherFocusReason)

    def _add(self, words: str, do: str, page: str, thing_id: str, sheets: tuple[Printed, ...] = ()) -> None:
        made = WaitingRow(words, do, page, thing_id, not self.rows, sheets)
        made.pressed.connect(self.desk.go_to)
        made.gone.connect(self._ask_what_is_gone)
        if self.rows:
            self._waiting.addWidget(rule())
        self.rows.append(made)
        self._waiting.addWidget(made)

    def _add_powder(self, found: AtHand | None) -> None:
        """The next lot has to be seen to before the last bag of this one is opened."""
        if found is None or not found.low:
            return
        words, follows = counted.powder_for(found.stock.days or 0).format(lot=found.lot.lot_number), found.next_lot
        if follows is None:
            text = self.tr("{powder} No other lot has come.")
            self._add(text.format(powder=words), self.tr("Enter a delivery"), "lots", NEW_LOT)
        elif follows.sign_off is None:
            text = self.tr("{powder} Lot {next} has to be weighed in by then.")
            told = text.format(powder=words, next=follows.lot.lot_number)
            self._add(told, self.tr("Weigh in"), "weigh_in", follows.lot.id)
        else:
            text = self.tr("{powder} Lot {next} is weighed in and goes on.")
            told = text.format(powder=words, next=follows.lot.lot_number)
            self._add(told, self.tr("Show the lot"), "lots", follows.lot.id)

    def _told(self, found: Waiting) -> tuple[str, str, str, str]:
        """The words, the button, and where it leads."""
        lot_id, number = (found.lot.id, found.lot.lot_number) if found.lot else ("", "")
        if found.need is Need.GO_ON and found.weigh_in:
            text = self.tr("The weigh-in of lot {number} stands at this step: {step}.")
            words = text.format(number=number, step=step_words(found.weigh_in.step))
            return words, self.tr("Go on weighing"), "weigh_in", lot_id
        if found.need is Need.MARK_SCOOP and found.scoop:
            text = self.tr("{scoop} still bears the line of lot {old}; lot {number} is in use.")
            old = found.old_lot.lot_number if found.old_lot else "–"
            words = text.format(scoop=found.scoop.name, old=old, number=number)
            return words, self.tr("Weigh in with it"), "weigh_in", lot_id
        if found.need is Need.WEIGH_IN and found.lot:
            return self._delivered(found), self.tr("Weigh in"), "weigh_in", lot_id
        if found.need is Need.MIX_OFF:
            return self._mix_off(found), self.tr("Check again"), "mix_check", ""
        if found.need is Need.CHECK_MIX:
            return self._unchecked(found), self.tr("Check the mix"), "mix_check", ""
        return self._sheets(found, lot_id)

    def _mix_off(self, found: Waiting) -> str:
        assert found.lot is not None
        assert found.day is not None
        thin = found.check is not None and found.check.verdict == THIN
        if thin:
            text = self.tr("The mix with lot {number} was too thin on {day}, and no right one was read since.")
        else:
            text = self.tr("The mix with lot {number} was too strong on {day}, and no right one was read since.")
        return text.format(number=found.lot.lot_number, day=day_text(found.day))

    def _unchecked(self, found: Waiting) -> str:
        assert found.lot is not None
        if found.day is None:
            return self.tr("The mix with lot {number} was not checked yet.").format(number=found.lot.lot_number)
        text = self.tr("The mix with lot {number} was last checked on {day}.")
        return text.format(number=found.lot.lot_number, day=day_text(found.day))

    def _delivered(self, found: Waiting) -> str:
        assert found.lot is not None
        if found.lot.arrived_on is None:
            return self.tr("Lot {number} is not weighed in.").format(number=found.lot.lot_number)
        text = self.tr("Lot {number} came on {day} and is not weighed in.")
        return text.format(number=found.lot.lot_number, day=day_text(found.lot.arrived_on))

    def _sheets(self, found: Waiting, lot_id: str) -> tuple[str, str, str, str]:
        words = outdated_words(self.desk.records, found.sheets)
        if found.need is Need.PRINT_LABELS:
            return words, self.tr("Print the label"), "tables", f"label:{lot_id}"
        if found.need is Need.PRINT_LOT_SHEETS:
            return words, self.tr("Print the lot sheet"), "tables", f"sheet:{lot_id}"
        return words, self.tr("Print the chart"), "tables", f"chart:{found.sheets[0].plan_id or ''}"

    def _ask_what_is_gone(self, sheets: tuple[Printed, ...]) -> None:
        # It brings all that is printed with it; the first page should not wait for that.
        from calibrator.desk.pages.sheets_gone import ask_what_is_gone

        self.gone_dialog = ask_what_is_gone(self.desk, sheets, self.window())
