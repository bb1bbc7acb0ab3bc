"""Today: where am I needed. The lot in use and its marks, what is waiting, the spot fill."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.page import Page
from calibrator.desk.pages.lot_card import LotCard
from calibrator.desk.pages.powder_card import PowderCard
from calibrator.desk.pages.spot_card import SpotCard
from calibrator.desk.pages.what_to_do import Told, WhatToDo
from calibrator.desk.parts import button, card, clear, column, label, row, rule, scrolled, with_free_letter
from calibrator.desk.speech import day_text
from calibrator.desk.standing import Standing, first_step, standing
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.later import take_turn
from calibrator.records import RecordsUnreachable

LONG_WORDS = 160  # more of them beside a wide button were a column of two words a line


class WaitingRow(QWidget):
    """One thing that is waiting, with the button that does it first, and what else can be done about it.

    A button is called by its letter where none of the rows above it has it; `letters` are those taken.
    """

    def __init__(self, told: Told, first: bool, letters: set[str]) -> None:
        super().__init__()
        self.words = told.words
        self.buttons = [button(with_free_letter(each.text, letters), each.act) for each in told.does]
        self.button = self.buttons[0]
        self.button.setProperty("kind", "main" if first else "")
        for each in self.buttons:
            each.setAccessibleDescription(told.words)
        words, does = label(told.words), column(*self.buttons)
        if len(told.words) > LONG_WORDS:
            below = column(words, row(does, None))
            below.setContentsMargins(0, 0, 0, 0)
            self.setLayout(below)
            return
        line = row(words, does, spacing=2 * SPACE)
        line.setStretch(0, 1)
        line.setContentsMargins(0, 0, 0, 0)
        self.setLayout(line)


NEW_PLAN = "new"  # what the page of tables takes for an empty form


class TodayPage(Page):
    """Read anew whenever something is kept; each line brings the person to where it is done."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, "", parent)
        self.title.setText(self.tr("Today"))
        self.lot_card = LotCard(desk)
        self.spot_card = SpotCard(desk)  # first: it is weighed with the bag open beside the screen
        self.powder_card = PowderCard(desk)
        self.rows: list[WaitingRow] = []
        self._letters: set[str] = set()  # with which buttons of the rows are called
        self.what_to_do = WhatToDo(desk, self)
        self._waiting_heading = label("", "heading")
        self._waiting = QVBoxLayout()
        self._waiting.setSpacing(SPACE)
        self._beside = QWidget()
        self._lay_out()

    def reload(self) -> None:
        farm = self.desk.farm
        self.title.setText(self.tr("Today, {day}").format(day=day_text(self.desk.clock().date())))
        if farm is None:
            return
        try:
            now = standing(self.desk.records, farm, self.desk.clock().date())
        except RecordsUnreachable:
            self.spot_card.go_on()  # a bag is opened whether the server is there or not
            raise
        self.spot_card.show_standing(now)
        self.lot_card.show_standing(now, self.spot_card.no_longer)
        self.powder_card.show_standing(now)
        self._beside.setHidden(self.spot_card.isHidden() and self.powder_card.isHidden())  # before a lot is signed off
        self._show_waiting(now)

    def open(self, thing_id: str) -> None:
        """Come back to, from the top, where what is needed stands, unless something is typed here: keys begin there
        too."""
        if self.pending() or not self.came_from:
            return
        self._area.verticalScrollBar().setValue(0)
        if there := self.focusWidget():
            there.clearFocus()

    def help_title(self) -> str:
        there = self.focusWidget()
        at_spot = there is not None and self.spot_card.isAncestorOf(there)
        return QCoreApplication.translate("Glossary", "Spot fill") if at_spot else ""

    def pending(self) -> str:
        """What is typed here and not kept yet; blank where all is kept."""
        return ", ".join(text for text in (self.spot_card.pending(), self.powder_card.pending()) if text)

    def _lay_out(self) -> None:
        inner = QWidget()
        self._area = scrolled(inner)
        self.body.addWidget(self._area, 1)
        left = column(card(self._waiting_heading, self._waiting), self.lot_card, None, spacing=2 * SPACE)
        right = column(self.spot_card, self.powder_card, None, spacing=2 * SPACE)
        right.setContentsMargins(0, 0, 0, 0)
        self._beside.setLayout(right)
        inside = row(left, self._beside, spacing=2 * SPACE)
        inside.setStretch(0, 3)
        inside.setStretch(1, 2)
        inside.setContentsMargins(0, 0, 0, 0)
        inner.setLayout(inside)

    def _show_waiting(self, now: Standing) -> None:
        at = self.window().focusWidget()  # also while a question stands over the window
        had = next((line.words for line in self.rows if at in line.buttons), "")
        clear(self._waiting)
        self.rows, self._letters = [], set()
        if not now.sign_offs and first_step(self.desk.records, self.desk.farm):  # a signed-off lot had all of it
            words = self.tr("The set-up is not finished: scale, scoop or first lot is missing.")
            self._add(self.what_to_do.leading(words, self.tr("Go on with the &set-up"), "welcome"))
        for told in self.what_to_do.every(now, self.powder_card.found, self.spot_card):
            self._add(told)
        needed = self.tr("Where you are needed")
        if not self.rows:
            needed = self.tr("Nothing is waiting.")
        if not self.rows and now.in_use and not now.plans:
            needed = self.tr("What comes next")
        self._waiting_heading.setText(needed)
        for plan in now.plans:
            words = self.tr("To mix today: {plan}").format(plan=plan.name)
            self._add(self.what_to_do.leading(words, self.tr("Open the &table"), "tables", plan.id))
        if now.in_use and not now.plans:
            words = self.tr("To mix today: no plan yet. From one come the batch tables and the wall chart.")
            self._add(self.what_to_do.leading(words, self.tr("&Make a plan"), "tables", NEW_PLAN))
        take_turn(self._waiting_heading, *self.rows)
        if had and self.rows:  # what was there may be done: then the keys go on with what comes first now
            line = next((line for line in self.rows if line.words == had), self.rows[0])
            line.button.setFocus(Qt.FocusReason.OtherFocusReason)

    def _add(self, told: Told) -> None:
        made = WaitingRow(told, not self.rows, self._letters)
        if self.rows:
            self._waiting.addWidget(rule())
        self.rows.append(made)
        self._waiting.addWidget(made)
        made.show()  # at once: the keys come to it before the layout would show it
