"""Which lot a mix was made of and when: the lot in use and now, unless the person says another."""

from __future__ import annotations

from datetime import date, datetime

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QComboBox, QVBoxLayout, QWidget

from calibrator.clock import clock_text
from calibrator.desk.clock_times import TimeNotUnderstood
from calibrator.desk.context import Desk
from calibrator.desk.days import DayNotUnderstood
from calibrator.desk.forms.fields import Captioned, DayField, TextField
from calibrator.desk.forms.time_field import TimeField
from calibrator.desk.mix_occasion import Offered, Wrong, moment, offered_lots, wrong_with
from calibrator.desk.plain_text import on_screen
from calibrator.desk.speech import day_text
from calibrator.desk.standing import Standing
from calibrator.desk.theme import ROWS
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.desk.widgets.side_by_side import SideBySide
from calibrator.desk.words import state_words
from calibrator.model import Lot


class OccasionForm(QWidget):
    """An empty day is today, an empty time is now; both are said when something else is typed.

    `since` is the day before which nothing is meant, where there is one: it stands before the day.
    """

    edited = Signal()

    def __init__(
        self, desk: Desk, lot_caption: str = "", day_caption: str = "", *, since: DayField | None = None
    ) -> None:
        super().__init__()
        self.desk = desk
        self._offered: tuple[Offered, ...] = ()
        self._of_days = since is not None  # a count of days, whose beginning is judged where it stands
        self.lot = NameChoice()
        self.lot.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.lot.setMinimumContentsLength(9)
        self.lot.setPlaceholderText(self.tr("choose a lot"))
        self.day = DayField(day_caption or self.tr("Mixed on"), self._today)
        self.day.set_blank_means(self.tr("today"))
        self.time = TimeField(self.tr("At what time"))
        self.time.line.setPlaceholderText(self.tr("now"))
        self.lot.activated.connect(self._tell)
        self.day.edited.connect(self._tell)
        self.time.edited.connect(self._tell)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(ROWS)
        self._lot = Captioned(lot_caption or self.tr("Mixed from lot"), self.lot)
        layout.addWidget(self._lot)
        if self._of_days:
            self.time.setParent(self)
            self.time.hide()
        layout.addWidget(SideBySide(since, self.day) if since else SideBySide(self.day, self.time))

    def show_lots(self, now: Standing) -> None:
        """Offer the farm's lots; another lot than the one in use stays chosen while it is there."""
        kept = self.chosen()
        own = kept is not None and not kept.in_use
        self._offered = offered_lots(now)
        blocker = QSignalBlocker(self.lot)
        self.lot.clear()
        for one in self._offered:
            self.lot.addItem(on_screen(self._name(one)), one.lot.id)
        place = self.lot.findData(kept.lot.id) if own and kept else -1
        self.lot.setCurrentIndex(place if place >= 0 else self._usual())
        blocker.unblock()

    def chosen(self) -> Offered | None:
        """The lot that is chosen; None before one is."""
        place = self.lot.currentIndex()
        return self._offered[place] if 0 <= place < len(self._offered) else None

    def is_now(self) -> bool:
        """Whether neither day nor time is typed."""
        return not (self.day.text() or self.time.text())

    def at(self) -> datetime | None:
        """When it was mixed; None where that is not understood or cannot be."""
        try:
            at = moment(self.day.day(), self.time.time(), self.desk.clock())
        except (DayNotUnderstood, TimeNotUnderstood):
            return None
        return None if wrong_with(at, self._chosen_lot(), self.desk.clock()) else at

    def first_wrong(self) -> TextField | None:
        """The field that has to be mended, told beneath; None where all is well."""
        for field in (self.day, self.time):
            if not field.understood():
                return field
        return self._judge()

    def clear(self) -> None:
        """Back to the lot in use and to now."""
        self.day.set_text("")
        self.time.set_text("")
        self.lot.setCurrentIndex(self._usual())

    def pending(self) -> str:
        return self.day.text() or self.time.text()

    def _usual(self) -> int:
        return next((n for n, one in enumerate(self._offered) if one.in_use), -1)

    def _chosen_lot(self) -> Lot | None:
        chosen = self.chosen()
        return chosen.lot if chosen else None

    def _today(self) -> date:
        return self.desk.clock().astimezone().date()

    def _tell(self) -> None:
        if self.day.understood() and self.time.understood():
            self._judge()
        self.edited.emit()

    def _judge(self) -> TextField | None:
        at, lot = moment(self.day.day(), self.time.time(), self.desk.clock()), self._chosen_lot()
        wrong = wrong_with(at, lot, self.desk.clock())
        if wrong is Wrong.TO_COME:
            text = self.tr("{time} on {day} is still to come.")
            self.time.say(text.format(time=clock_text(at.time()), day=day_text(at.date())), wrong=True)
            return self.time
        if wrong is Wrong.BEFORE_LOT and lot is not None:
            text = self.tr(
                "{on} is too early: lot {lot} came only on {day}. Choose the lot that was fed then, or correct the day."
            )
            self.day.say(
                text.format(on=day_text(at.date()), lot=lot.lot_number, day=day_text(lot.arrived_on)), wrong=True
            )
            return self.day
        if not self._of_days:
            self._ask_whether_of_lot(at.date())
        if self.day.text() and not self.time.text():
            self.time.say(self.tr("Taken as {time}; type it to be exact.").format(time=clock_text(at.time())))
        elif not self.time.text():
            self.time.say("")
        return None

    def _ask_whether_of_lot(self, day: date) -> None:
        """A lot can have been fed before its own line was signed; more often it was the lot before."""
        chosen = self.chosen()
        if chosen is None or chosen.weighed_on is None or day >= chosen.weighed_on:
            return
        said = day_text(chosen.weighed_on)
        text = self.tr("Lot {lot} was weighed in only on {day}. Was the mix of this day really made from it?")
        short = self.tr("Weighed in {day}.").format(day=said)
        self.day.say(text.format(lot=chosen.lot.lot_number, day=said), care=True, short=short)

    def _name(self, one: Offered) -> str:
        return f"{one.lot.lot_number}, {state_words(one.state)}"
