"""Lots and weighings from a spreadsheet: the file, its columns, what it comes to; added all of it or not at all."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QDialog, QStackedWidget, QWidget

from calibrator.desk.bring_in.columns_step import ColumnsStep
from calibrator.desk.bring_in.outcome_step import OutcomeStep
from calibrator.desk.bring_in.table_step import TableStep
from calibrator.desk.bring_in.work import Bringing
from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.parts import button, framed, label, row
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.fitting import fit

WIDTH, HEIGHT = 980, 660


def read_file(
    desk: Desk, file: Path, parent: QWidget | None, then: Callable[[BringInDialog], None] = lambda _: None
) -> None:
    """Read a file, and open the dialog on it; where it is no table, that is said instead."""
    farm = desk.farm
    if farm is None:
        return
    work = Bringing(desk.records, farm, file, desk.initials)

    def show(_read: None) -> None:
        dialog = BringInDialog(desk, work, parent)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.open()
        then(dialog)

    desk.work(QCoreApplication.translate("BringIn", "Reading {file}").format(file=file.name), work.look, show)


class BringInDialog(QDialog):
    """Three steps with a way back; closing it at any moment changes nothing that is not added yet."""

    def __init__(self, desk: Desk, work: Bringing, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.desk, self.work = desk, work
        self.setWindowTitle(self.tr("Bring in lots and weighings"))
        self.file = label(work.file.name, "heading", wrap=False)
        self.step = label("", "quiet")
        self.table, self.columns, self.outcome = TableStep(), ColumnsStep(desk), OutcomeStep(desk)
        self.pages = QStackedWidget()
        for page in (self.table, self.columns, self.outcome):
            self.pages.addWidget(page)
        self.cancel_button = button(self.tr("Cancel"), self.close)
        self.back_button = button(self.tr("Bac&k"), self.back)
        self.next_button = button(self.tr("Ne&xt"), self.next, "main")
        self.next_button.setDefault(True)
        self.table.read_again.connect(self.read_again)
        self.table.heading_chosen.connect(self._choose_heading)
        self.columns.changed.connect(self._offer)
        self._lay_out()
        fit(self, WIDTH, HEIGHT)
        self._show_table()

    def read_again(self) -> None:
        """Another sheet, other letters, another sign between cells."""
        doing = self.tr("Reading {file}").format(file=self.work.file.name)
        self.desk.work(doing, self.work.read, self._show_table)

    def next(self) -> None:
        """Go on; from the last step, add what was found."""
        here = self.pages.currentWidget()
        if here is self.table:
            self.columns.show_work(self.work)
            self._go(self.columns)
        elif here is self.columns:
            self.desk.initials = self.work.choices.by or self.desk.initials
            today = self.desk.clock().date()
            self.desk.work(self.tr("Looking through the rows"), partial(self.work.judge, today), self._show_outcome)
        else:
            self.desk.work(self.tr("Adding lots and weighings"), self.work.add, self._added)

    def back(self) -> None:
        """One step back; what was chosen stays chosen."""
        self._go(self.columns if self.pages.currentWidget() is self.outcome else self.table)

    def reject(self) -> None:
        self.done(0)

    def _show_table(self, _read: object = None) -> None:
        self.table.show_work(self.work)
        self._go(self.table)

    def _show_outcome(self, _judged: object) -> None:
        self.outcome.show_work(self.work)
        self._go(self.outcome)

    def _added(self, _none: object) -> None:
        judged = self.work.judged
        assert judged is not None
        told = f"{counted.lots_added(len(judged.past.lots))} {counted.fills_added(len(judged.past.fills))}"
        self.close()
        self.desk.ask.tell(told)

    def _choose_heading(self, at: int | None) -> None:
        if self.work.table is not None:
            self.work.set_heading(at)
            self.table.show_work(self.work)

    def _go(self, page: QWidget) -> None:
        self.pages.setCurrentWidget(page)
        self._offer()

    def _offer(self) -> None:
        """What can be pressed now."""
        here = self.pages.currentWidget()
        self.back_button.setEnabled(here is not self.table)
        self.next_button.setEnabled(self._may_go_on(here))
        self.next_button.setText(self.tr("&Add") if here is self.outcome else self.tr("Ne&xt"))
        self.step.setText(self._step_words(here))

    def _may_go_on(self, here: QWidget | None) -> bool:
        if self.work.table is None:
            return False
        if here is self.columns:
            return not self.work.open_questions()
        return here is self.table or (self.work.judged is not None and self.work.judged.adds)

    def _step_words(self, here: QWidget | None) -> str:
        if here is self.table:
            return self.tr("1 of 3: is the table read rightly?")
        if here is self.columns:
            return self.tr("2 of 3: what do the columns mean? Nothing is guessed; what is not clear is asked.")
        return self.tr("3 of 3: this is what it comes to. Nothing is added yet.")

    def _lay_out(self) -> None:
        body = framed(self)
        body.setSpacing(SPACE)
        body.addLayout(row(self.file, None))
        body.addWidget(self.step)
        body.addWidget(self.pages, 1)
        body.addLayout(row(None, self.cancel_button, self.back_button, self.next_button))
