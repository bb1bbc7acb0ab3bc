"""Lots: what came, what was weighed in, what is in use; adding and correcting."""

from __future__ import annotations

from dataclasses import replace
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QModelIndex, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHeaderView, QSplitter, QStackedWidget, QTableView, QWidget

from calibrator.desk.change_over import FedFrom, finished
from calibrator.desk.changing_over import ask_change_over, begin_lot, fed_from_now_on, keep_told, used_up_question
from calibrator.desk.context import Desk
from calibrator.desk.forms.enter import on_enter
from calibrator.desk.forms.lot_form import LotForm
from calibrator.desk.in_use import LotState
from calibrator.desk.page import Page
from calibrator.desk.pages.lot_detail import LotDetail
from calibrator.desk.pages.lots_filter import LotsFilter, LotsFilterBoxes
from calibrator.desk.pages.lots_table import ARRIVED, LOT_ROLE, LotsModel
from calibrator.desk.parts import button, card, column, label, row, scrolled, set_style_property, show_as_rows
from calibrator.desk.standing import LotStanding, Standing, standing
from calibrator.desk.widgets.later import Later
from calibrator.desk.widgets.stray_keys import SteadyLine
from calibrator.model import Farm, Lot, Scoop

if TYPE_CHECKING:
    from calibrator.desk.lot_history.dialog import LotHistoryDialog

NEW = "new"
BAGS_OF = "bags of "
"""Before a lot's id: its form with the cursor where the bags that came are told."""
NUMBER, PRODUCT, BAGS = 0, 1, 3
ROOM_FOR_BAGS_PX = 960
WIDEST_COLUMN = 260


class LotsPage(Page):
    """The table with the chosen lot beneath it, or the form in their place."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, "", parent)
        self.title.setText(self.tr("Lots"))
        self._now: Standing | None = None
        self._seen: tuple[int, Farm | None] | None = None
        self._chosen = ""
        self._existing = ""
        self._make_table()
        self.detail = LotDetail(desk)
        self._form = Later(partial(LotForm, desk))
        self._make_buttons()
        self.beside_title(self.add_button)
        self.stack = QStackedWidget()
        self.stack.addWidget(self._table_part())
        self.stack.addWidget(self._form_part())
        self.stack.currentChanged.connect(self._turned)
        self.body.addWidget(self.stack, 1)

    @property
    def form(self) -> LotForm:
        return self._form.content

    def reload(self) -> None:
        farm = self.desk.farm
        seen = (self.desk.records.version(), farm)
        if farm is None or seen == self._seen:
            return
        self._seen = seen
        self._now = standing(self.desk.records, farm, self.desk.clock().date())
        self.filters.offer(self._now.lots)
        self.model.show(self._now.lots, self.desk.records.every(Scoop, farm.id), self.desk.system)
        self._fit_numbers()
        self._choose(self._chosen)
        form = self._form.made
        if form is not None and not form.typed:
            form.load(form.thing)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """On a narrow page the product counts more than how many bags came; those are told beneath."""
        super().resizeEvent(event)
        self.table.setColumnHidden(BAGS, event.size().width() < ROOM_FOR_BAGS_PX)
        self._fit_numbers()

    def _fit_numbers(self) -> None:
        """Long lot numbers leave room for the product; one that is cut is read whole beneath."""
        header = self.table.horizontalHeader()
        wanted = max(self.table.sizeHintForColumn(NUMBER), header.sectionSizeHint(NUMBER))
        header.resizeSection(NUMBER, min(wanted, self.width() // 5))

    def _turned(self, place: int) -> None:
        self.add_button.setVisible(place == 0)

    def open(self, thing_id: str) -> None:
        if thing_id == NEW:
            self.start_new()
        elif thing_id.startswith(BAGS_OF):
            self.open(thing_id.removeprefix(BAGS_OF))
            self.correct()
            self.form.count.line.setFocus(Qt.FocusReason.OtherFocusReason)
        elif thing_id:
            self._show_all()
            self.stack.setCurrentIndex(0)
            self._choose(thing_id)

    def start_new(self) -> None:
        """The form for a lot that came; one that is half filled in is taken up again."""
        if not (self.form.thing is None and self.form.typed):
            self.form.load(None)
        self._form_heading.setText(self.tr("New lot"))
        self._show_form()

    def correct(self) -> None:
        """The form for the chosen lot."""
        known = self.chosen
        if known is None:
            return
        if self.form.thing is None or self.form.thing.id != known.lot.id or not self.form.typed:
            self.form.load(known.lot)
        self._form_heading.setText(self.tr("Correct lot {number}").format(number=known.lot.lot_number))
        self._show_form()

    def keep(self) -> None:
        """Keep the lot as typed, unless another one has its number."""
        made = self.form.take()
        if made is None or self._is_double(made):
            return
        kept = self.desk.keep(made)
        if kept is not None:
            self.form.load(None)
            self.desk.say(self.tr("Lot {number} is kept.").format(number=kept.lot_number))
            self.open(kept.id)
            self.table.setFocus(Qt.FocusReason.OtherFocusReason)

    @property
    def chosen(self) -> LotStanding | None:
        return self._now.lot(self._chosen) if self._now else None

    def open_history(self) -> LotHistoryDialog | None:
        """Everything that was kept of the chosen lot, in one list."""
        if self.chosen is None:
            return None
        from calibrator.desk.lot_history.dialog import LotHistoryDialog  # nothing else needs it

        dialog = LotHistoryDialog(self.desk, self.chosen.lot, self)
        dialog.open()
        return dialog

    def help_title(self) -> str:
        return QCoreApplication.translate("Glossary", "Lot")

    def pending(self) -> str:
        """What is typed here and not kept yet; blank where all is kept."""
        form = self._form.made
        return self._form_heading.text() if form is not None and form.typed else ""

    def _make_table(self) -> None:
        self.model = LotsModel(self)
        self.sorted = LotsFilter(self)
        self.sorted.setSourceModel(self.model)
        self.table = QTableView()
        show_as_rows(self.table, self.sorted, self.tr("Lots"))
        header = self.table.horizontalHeader()
        header.setSortIndicator(ARRIVED, Qt.SortOrder.DescendingOrder)  # the newest first, and its arrow says so
        self.table.setSortingEnabled(True)
        header.setSectionResizeMode(NUMBER, QHeaderView.ResizeMode.Interactive)
        header.setSectionResizeMode(PRODUCT, QHeaderView.ResizeMode.Stretch)
        header.setMinimumSectionSize(48)
        header.setMaximumSectionSize(WIDEST_COLUMN)
        self.table.selectionModel().currentRowChanged.connect(self._row_chosen)
        on_enter(self.table, self._do_what_is_due)

    def _make_buttons(self) -> None:
        self.search = SteadyLine()
        self.search.setPlaceholderText(self.tr("Number, product …"))
        self.search.setClearButtonEnabled(True)
        self.search.textChanged.connect(self._search_for)
        self.filters = LotsFilterBoxes()
        self.filters.changed.connect(self._filter_by)
        self.show_all_button = button(self.tr("Show all"), self._show_all, "link")
        self.add_button = button(self.tr("&Add a lot"), self.start_new)
        self.weigh_button = button(self.tr("We&igh in"), self._weigh_in, "main")
        self.weigh_button.bear(self.tr("We&igh in"), self.tr("We&igh in again …"), self.tr("Go on we&ighing"))
        self.correct_button = button(self.tr("&Correct"), self.correct)
        self.finished_button = button(self.tr("&Finished"), self._finish)
        self.use_button = button(self.tr("Back into &use"), self._take_back)
        self.detail.put_beside_state(self.use_button)
        self.label_button = button(self.tr("&Print label"), self._print_label)
        self.sheet_button = button(self.tr("Lot s&heet"), self._print_sheet)
        self.history_button = button(self.tr("Histor&y …"), self.open_history)
        self.keep_button = button(self.tr("&Keep"), self.keep, "main")
        self.back_button = button(self.tr("&Go back without keeping"), self._go_back)

    def _table_part(self) -> QWidget:
        caption = label(self.tr("Fi&nd"), wrap=False)
        caption.setBuddy(self.search)
        self.search.setAccessibleName(self.tr("Find"))
        self._none_yet = label(self.tr("No lot yet. Add the one that stands in the store."), "quiet")
        self._none_fits = QWidget()
        fits = row(label(self.tr("No lot fits what is asked for."), "quiet", wrap=False), self.show_all_button, None)
        fits.setContentsMargins(0, 0, 0, 0)
        self._none_fits.setLayout(fits)
        self._halves = QSplitter(Qt.Orientation.Vertical)
        self._halves.setChildrenCollapsible(False)
        self._halves.addWidget(self.table)
        self._halves.addWidget(self.detail)
        self._halves.setStretchFactor(0, 3)
        self._halves.setStretchFactor(1, 2)
        self._halves.setSizes([300, 200])  # as shares: whether a lot is chosen makes no difference
        part = QWidget()
        layout = column(
            row(caption, self.search, self.filters),
            self._none_yet,
            self._none_fits,
            self._halves,
            row(
                self.weigh_button,
                self.correct_button,
                self.finished_button,
                self.history_button,
                None,
                self.label_button,
                self.sheet_button,
            ),
        )
        layout.setStretch(3, 1)
        layout.setContentsMargins(0, 0, 0, 0)
        part.setLayout(layout)
        return part

    def _form_part(self) -> QWidget:
        self._form_heading = label("", "heading")
        inner = QWidget()
        inside = column(card(self._form_heading, self._form), None)
        inside.setContentsMargins(0, 0, 0, 0)
        inner.setLayout(inside)
        part = QWidget()
        self._form_area = scrolled(inner)
        layout = column(self._form_area, row(self.keep_button, self.back_button, None))
        layout.setContentsMargins(0, 0, 0, 0)
        part.setLayout(layout)
        return part

    def _show_form(self) -> None:
        self.stack.setCurrentIndex(1)
        self._form_area.verticalScrollBar().setValue(0)  # it stays as it was left, its first field out of view
        self.form.start()

    def _go_back(self) -> None:
        self.form.load(None)
        self.stack.setCurrentIndex(0)
        self.table.setFocus(Qt.FocusReason.OtherFocusReason)

    def _search_for(self, text: str) -> None:
        self.sorted.setFilterFixedString(text.strip())
        self._choose(self._chosen)

    def _filter_by(self, product: str, year: int, state: str) -> None:
        self.sorted.ask_for(product, year, state)
        self._choose(self._chosen)

    def _show_all(self) -> None:
        self.search.clear()
        self.filters.clear()

    def _choose(self, lot_id: str) -> None:
        """Select a lot's row, or the first one where it is not in view."""
        source = self.model.row_of(lot_id)
        index = self.sorted.mapFromSource(self.model.index(source or 0, 0)) if source is not None else QModelIndex()
        if not index.isValid():
            index = self.sorted.index(0, 0)
        self.table.setCurrentIndex(index)
        self._row_chosen(index)

    def _row_chosen(self, index: QModelIndex) -> None:
        if index.isValid():
            self._chosen = str(index.data(LOT_ROLE))
        known = self.chosen if index.isValid() else None
        self.detail.show_lot(self._now, known)
        for made in (self.weigh_button, self.correct_button, self.history_button):
            made.setEnabled(known is not None)
        over = known is not None and known.state is LotState.FINISHED
        self.finished_button.setEnabled(known is not None and not over)
        self.use_button.setEnabled(over or (known is not None and known.state is LotState.LEFT_OVER))
        signed = known is not None and known.sign_off is not None
        for made in (self.label_button, self.sheet_button):
            made.setEnabled(signed)
        self._none_yet.setVisible(self.model.rowCount() == 0)
        self._none_fits.setVisible(self.model.rowCount() > 0 and self.sorted.rowCount() == 0)
        under_way = known is not None and known.open_weigh_in is not None
        again = self.tr("We&igh in again …") if signed else self.tr("We&igh in")
        self.weigh_button.setText(self.tr("Go on we&ighing") if under_way else again)
        due = under_way or not signed  # what is weighed in already asks for nothing
        set_style_property(self.weigh_button, "kind", "main" if due else "")

    def _do_what_is_due(self) -> None:
        """Enter on a row presses the lit button."""
        if self.weigh_button.isEnabled() and self.weigh_button.property("kind") == "main":
            self._weigh_in()

    def _weigh_in(self) -> None:
        known = self.chosen
        if known is None or known.sign_off is None or known.open_weigh_in is not None:
            self._begin_weighing()
            return
        question = self.tr(
            "Lot {number} is signed off. What was weighed stays in the records. A new sign-off takes its place: the "
            "lines, labels and charts made by the old one hold no more then. Weigh it in again?"
        )
        told = question.format(number=known.lot.lot_number)
        self.desk.ask.confirm(told, self.tr("Weigh in again"), self._begin_weighing)

    def _begin_weighing(self) -> None:
        if self._chosen:
            self.desk.go_to.emit("weigh_in", self._chosen)

    def _print_label(self) -> None:
        self.desk.go_to.emit("tables", f"label:{self._chosen}")

    def _print_sheet(self) -> None:
        self.desk.go_to.emit("tables", f"sheet:{self._chosen}")

    def _finish(self) -> None:
        known = self.chosen
        if known is None or self._now is None:
            return
        back = self.tr("It can be taken back into use at any time.")
        told = f"{used_up_question(self._now, known)} {back}"
        follows = self._now.next_lot if known.state is LotState.IN_USE else None
        if follows is not None:
            text = self.tr("From the next feeding on lot {number} is fed.")
            told = f"{told} {text.format(number=follows.lot.lot_number)}"
        self.desk.ask.confirm(told, self.tr("Finished"), self._finish_now)

    def _finish_now(self) -> None:
        known = self.chosen
        if known is not None and self._now is not None:
            said = self.tr("Lot {number} is finished.").format(number=known.lot.lot_number)
            keep_told(self.desk, self._now, finished(self._now, known, self._now.today), said)

    def _take_back(self) -> None:
        """Back into use is fed again: in the place of a lot that was begun meanwhile too."""
        known = self.chosen
        if known is None or self._now is None:
            return
        text = self.tr("Lot {number} is in use.")
        if known.sign_off is None:
            text = self.tr("Lot {number} is no longer finished.")
        said = text.format(number=known.lot.lot_number)
        if known.sign_off is None or self._now.in_use is None:
            keep_told(self.desk, self._now, (replace(known.lot, finished_on=None),), said)
            return
        fed = fed_from_now_on(known.lot.lot_number, self._now.in_use.lot.lot_number)
        again = self.tr("Its line comes on the scoop again, and its chart up: Today asks for both.")
        ask_change_over(self.desk, self._now, f"{fed} {again}", partial(self._begin_again, known, said))

    def _begin_again(self, known: LotStanding, said: str, old_is_finished: bool) -> None:
        if self._now is not None:
            begin_lot(self.desk, self._now, known, FedFrom(self._now.today), said, old_is_finished=old_is_finished)

    def _is_double(self, made: Lot) -> bool:
        others = self.desk.records.every(Lot, made.farm_id)
        same = [lot for lot in others if lot.id != made.id and _alike(lot.lot_number, made.lot_number)]
        if not same:
            return False
        self._existing = same[0].id
        text = self.tr("Lot {number} is entered already.").format(number=same[0].lot_number)
        self.form.number.say(text, wrong=True)
        question = self.tr(
            "Lot {number} is entered already. If more of it came, correct its number of bags. Open it? "
            "What you typed here stays until you keep it or go back."
        )
        self.desk.ask.confirm(question.format(number=same[0].lot_number), self.tr("Open it"), self._open_existing)
        return True

    def _open_existing(self) -> None:
        self.open(self._existing)


def _alike(one: str, other: str) -> bool:
    return "".join(one.split()).casefold() == "".join(other.split()).casefold()
