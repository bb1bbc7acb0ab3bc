"""Two lots open at once: whose table is shown, which line is for which bag, and the change-over."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import QComboBox, QFrame, QGridLayout

from calibrator.desk.change_over import Refused, Wrong, refused
from calibrator.desk.days import DayNotUnderstood
from calibrator.desk.forms.examples import POWDER_LEFT
from calibrator.desk.forms.fields import DayField, focus_on
from calibrator.desk.in_use import LotState, changed_over
from calibrator.desk.parts import button, column, label, row
from calibrator.desk.plain_text import on_screen
from calibrator.desk.speech import day_text
from calibrator.desk.standing import LotStanding, Standing
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.desk.widgets.quantity_field import QuantityField
from calibrator.desk.widgets.saying import Held, keep_room
from calibrator.desk.words import marks_words, state_words
from calibrator.model import UnitSystem
from calibrator.units import Kind

PLANNED_DAYS = 180
"""As far ahead as a change-over is planned, longer than powder is kept: common practice, no source."""


class LotBar(QFrame):
    """Hidden while only one lot is open."""

    lot_chosen = Signal(str)
    changed_over = Signal(str, object)  # the lot and the day that it is fed from
    left_typed = Signal()

    def __init__(self, today: Callable[[], date]) -> None:
        super().__init__()
        self._today = today
        self._now: Standing | None = None
        self.setProperty("kind", "card")
        self._others: list[str] = []
        self._shown_id = ""
        self.lots = NameChoice()
        self.lots.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.lots.setAccessibleName(self.tr("Table for the lot"))
        self._caption = label(self.tr("Table for the l&ot"), wrap=False)
        self._caption.setBuddy(self.lots)
        self.day = DayField(self.tr("Fed from this da&y on"), today)
        self.day.entered.connect(self._change_over)
        self.day.edited.connect(self._judge)
        self.change = button("", self._change_over)
        self.words, self.both = label(""), Held()
        self.left = QuantityField(Kind.MASS, UnitSystem.FARM, required=False, examples=POWDER_LEFT)
        self._left_caption = label("")
        self._lay_out()
        keep_room(self.day, self.change, self._left_caption, self.left)  # whichever lot is chosen, the table stays
        self.both.hide()
        self.lots.activated.connect(self._choose)
        self.left.line.textEdited.connect(self.left_typed)
        self.hide()

    def show_standing(self, now: Standing, shown: LotStanding | None, system: UnitSystem) -> None:
        """Show the open lots, that of the table chosen."""
        several = len(now.open_lots) > 1 and shown is not None
        self.setVisible(several)
        self._now, self._shown_id = now, shown.lot.id if shown else ""
        waits = LotState.WAITING
        self._others = [k.lot.id for k in now.open_lots if k.lot.id != self._shown_id and k.state is not waits]
        if not several or shown is None or now.in_use is None:
            self.left.set_value(None)
            return
        blocker = QSignalBlocker(self.lots)
        self.lots.clear()
        for known in now.open_lots:
            told = f"{known.lot.lot_number}, {state_words(known.state)}"
            self.lots.addItem(on_screen(told), known.lot.id)
        self.lots.setCurrentIndex(self.lots.findData(self._shown_id))
        blocker.unblock()
        self.change.setText(self._change_text(now, shown))
        self.day.setVisible(bool(self.change.text()))
        self.change.setVisible(bool(self.change.text()))
        self.day.let_in(0 if shown.state is LotState.IN_USE else PLANNED_DAYS)  # what is fed was begun
        counts = self._blank_day()  # what the grey words say is what a blank field means
        self.day.set_blank_means(self.tr("today") if counts == self._today() else day_text(counts))
        self.left.set_system(system)
        self.words.setText("\n".join(self._line(now, known, system) for known in now.open_lots))
        other = now.lot(self.other_id())
        text = self.tr("Powder left of lot {lot}, to be used up first").format(
            lot=other.lot.lot_number if other else "–"
        )
        self._left_caption.setText(text)
        for widget in (self._left_caption, self.left):
            widget.setVisible(other is not None)
        self.left.set_name(text)

    def _change_text(self, now: Standing, shown: LotStanding) -> str:
        """What the button does about the day of a lot; blank where there is no day to tell: nothing was fed before the
        lot in use, so no change led to it."""
        if shown.state is not LotState.IN_USE:
            return self.tr("Change o&ver to it")
        if shown.lot.fed_from is not None:
            return self.tr("Change &the day")
        before = any(known.state is LotState.LEFT_OVER for known in now.open_lots)
        return self.tr("Keep that day as the change-o&ver") if before else ""

    def _lay_out(self) -> None:
        """Two rows of two, so that the table beneath stays in view on a window of 800 pixels."""
        grid = QGridLayout(self)
        grid.setContentsMargins(2 * SPACE, SPACE, 2 * SPACE, SPACE)
        grid.setHorizontalSpacing(2 * SPACE)
        grid.setVerticalSpacing(SPACE // 2)
        when = row(self.day, spacing=SPACE)
        when.addWidget(self.change, 0, Qt.AlignmentFlag.AlignVCenter)
        when.setStretch(0, 1)
        grid.addLayout(column(self._caption, self.lots, None, spacing=3), 0, 0)
        grid.addLayout(when, 0, 1)
        grid.addWidget(self.words, 1, 0, Qt.AlignmentFlag.AlignTop)
        grid.addLayout(column(self._left_caption, self.left, None, spacing=3), 1, 1)
        grid.addWidget(self.both, 2, 0, 1, 2)
        grid.setColumnStretch(0, 2)
        grid.setColumnStretch(1, 3)

    def other_id(self) -> str:
        """The open lot that is used up before the one shown, of several the newest; blank where that waits."""
        return self._others[-1] if self._others else ""

    def left_g(self) -> float | None:
        """What is left of that lot as typed, g; None where nothing is."""
        found = self.left.quantity()
        return found.value if found and found.value > 0 else None

    def tell_both(self, text: str) -> None:
        """Say what goes into one batch from each lot."""
        self.both.setText(text)
        self.both.setVisible(bool(text))

    def _line(self, now: Standing, known: LotStanding, system: UnitSystem) -> str:
        lot = known.lot.lot_number
        lines = marks_words(known.marks, now.scoops, system, now=now) if known.marks else self.tr("no line")
        text = self.tr("Bags of lot {lot}: {lines}")
        if known.state is LotState.LEFT_OVER:
            text = self.tr("Bags of lot {lot} (no longer fed): {lines}")
        elif changed_over(known.lot, now.today):
            text = self.tr("Bags of lot {lot} (fed since {day}): {lines}")
        elif known.lot.fed_from:
            text = self.tr("Bags of lot {lot} (fed from {day} on): {lines}")
        return text.format(lot=lot, day=day_text(known.lot.fed_from) if known.lot.fed_from else "", lines=lines)

    def _choose(self, index: int) -> None:
        self.left.set_value(None)
        self.day.set_text("")
        self.day.say("")
        self.lot_chosen.emit(self.lots.itemData(index))

    def _change_over(self) -> None:
        if not self._judge():
            focus_on(self.day)
            return
        day = self.day.day() or self._blank_day()
        self.day.set_text("")
        self.day.say("")
        self.changed_over.emit(self._shown_id, day)

    def _judge(self) -> bool:
        """Whether the lot can have been fed from that day on; else the reason stands beneath."""
        known = self._now.lot(self._shown_id) if self._now else None
        if known is None or self._now is None or not self.day.understood():
            return False
        on = self._typed() or self._blank_day()
        found = refused(self._now, known, on)
        if found:
            short = self.tr("Too early: from {day} on.").format(day=day_text(found.day))
            self.day.say(self._sentence(found, on), wrong=True, short=short)
        return found is None

    def _blank_day(self) -> date:
        """What a blank field means: the day that was kept for the lot in use, else today."""
        fed = self._now.in_use if self._now else None
        return fed.lot.fed_from or self._today() if fed and fed.lot.id == self._shown_id else self._today()

    def _typed(self) -> date | None:
        try:
            return self.day.day()
        except DayNotUnderstood:
            return None

    def _sentence(self, found: Refused, on: date) -> str:
        """The day is told with its year: one typed without it may have been taken for one of last year."""
        if found.why is Wrong.BEFORE_ARRIVAL:
            text = self.tr("{on} is too early: lot {lot} came only on {day}. Type that day or a later one.")
        elif found.why is Wrong.BEFORE_WEIGHED:
            text = self.tr("{on} is too early: lot {lot} was first weighed in on {day}. Type that day or a later one.")
        else:
            text = self.tr(
                "{on} is too early: lot {lot} was begun on {day}. Change its day first, or type a later one."
            )
        return text.format(on=day_text(on), lot=found.lot.lot_number, day=day_text(found.day))
