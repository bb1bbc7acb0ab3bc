"""Everything that was kept of one lot: a list by time, one kind of it where asked, a file for other programs."""

from __future__ import annotations

from functools import partial
from pathlib import Path

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtWidgets import QDialog, QHeaderView, QTableView, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.lot_history.model import WHAT, LotHistoryModel, Row, history_file, rows_of
from calibrator.desk.lot_history.words import Speaker, topic_words
from calibrator.desk.parts import button, framed, label, row, show_as_rows
from calibrator.desk.scoop_names import scoop_title
from calibrator.desk.speech import decimal_comma
from calibrator.desk.table_headings import in_words as headings_in_words
from calibrator.desk.theme import SPACE
from calibrator.desk.trust_words import moment
from calibrator.desk.widgets.calm_box import CalmBox
from calibrator.desk.widgets.fitting import fit
from calibrator.model import Lot, Plan, Scale, Scoop, Vessel
from calibrator.model.underway import Underway
from calibrator.records.bringing import BROUGHT_IN
from calibrator.records.lot_history import Topic, lot_history
from calibrator.records.table_file import CsvStyle, write_csv

WIDTH, HEIGHT, WIDEST_PX = 940, 620, 220


class LotHistoryDialog(QDialog):
    """The newest entry first; the chosen one is told in full beneath."""

    def __init__(self, desk: Desk, lot: Lot, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.desk, self._lot = desk, lot
        self.setWindowTitle(self.tr("History of lot {number}").format(number=lot.lot_number))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._rows: tuple[Row, ...] = rows_of(lot_history(desk.records, lot.id), _speaker(desk, lot))
        self.kinds = CalmBox()
        self.count = label("", "quiet", wrap=False)
        self.model, self.table = LotHistoryModel(self), QTableView()
        self.told = label("")
        self.save_button = button(self.tr("Save as a table …"), self._ask_path)
        self.close_button = button(self.tr("Close"), self.close, "main")
        self._lay_out()
        self._offer()
        self._show()

    def save(self, path: Path) -> None:
        """Write what is shown as a table for other programs."""
        rows = self._wanted()

        def write(underway: Underway) -> int:
            write_csv(headings_in_words(history_file(rows, underway)), path, CsvStyle(decimal_comma=decimal_comma()))
            return len(rows)

        self.desk.work(self.tr("Saving the history as a table"), write, partial(self._saved, path), self._ask_path)

    def _saved(self, path: Path, entries: int) -> None:
        self.desk.say_saved(counted.checks_saved(entries), path)

    def _wanted(self) -> tuple[Row, ...]:
        topic = self.kinds.currentData()
        if topic == BROUGHT_IN:
            return tuple(one for one in self._rows if one[0].why.startswith(BROUGHT_IN))
        return tuple(one for one in self._rows if topic is None or one[0].topic == topic)

    def _offer(self) -> None:
        self.kinds.addItem(self.tr("everything"), None)
        there = {one.topic for one, _ in self._rows}
        for topic in Topic:
            if topic in there:
                self.kinds.addItem(topic_words(topic), topic)
        if any(one.why.startswith(BROUGHT_IN) for one, _ in self._rows):
            self.kinds.addItem(self.tr("Brought in from a file"), BROUGHT_IN)

    def _show(self) -> None:
        rows = self._wanted()
        self.model.show_rows(rows)
        self.count.setText(counted.entries(len(rows)))
        self.table.selectRow(0)

    def _tell(self, current: QModelIndex) -> None:
        found = self.model.row(current.row())
        if found is None:
            self.told.setText("")
            return
        one, told = found
        text = self.tr("{when}, {who}: {what}") if one.by else self.tr("{when}: {what}")
        self.told.setText(text.format(when=moment(one.at), who=one.by, what=told.line))

    def _ask_path(self) -> None:
        farm = self.desk.farm.name if self.desk.farm else ""
        parts = (farm, self._lot.lot_number, self.tr("history"), self.desk.clock().date().isoformat())
        title = self.tr("Save the history as a table")
        self.desk.save_as(title, parts, self.tr("Table (*.csv)"), ".csv", self.save)

    def _lay_out(self) -> None:
        show_as_rows(self.table, self.model, self.tr("All that was kept of this lot, newest first"))
        self.table.setTextElideMode(Qt.TextElideMode.ElideRight)
        header = self.table.horizontalHeader()
        header.setResizeContentsPrecision(100)  # rows looked at for the width; all of them would take long
        header.setMaximumSectionSize(WIDEST_PX)
        header.setSectionResizeMode(WHAT, QHeaderView.ResizeMode.Stretch)
        header.setStretchLastSection(True)
        self.table.selectionModel().currentRowChanged.connect(self._tell)
        self.kinds.activated.connect(self._show)
        self.kinds.setAccessibleName(self.tr("Kind of entry"))
        caption = label(self.tr("Show"), wrap=False)
        caption.setBuddy(self.kinds)
        self.told.setMinimumWidth(1)  # an endless name is no reason for a wider window
        self.told.setMinimumHeight(3 * self.told.fontMetrics().lineSpacing())
        self.told.setAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
        body = framed(self)
        body.setSpacing(SPACE)
        body.addLayout(row(caption, self.kinds, self.count, None))
        body.addWidget(self.table, 1)
        body.addWidget(self.told)
        body.addLayout(row(self.save_button, None, self.close_button))
        fit(self, WIDTH, HEIGHT)


def _speaker(desk: Desk, lot: Lot) -> Speaker:
    names = {scoop.id: scoop_title(scoop) for scoop in desk.records.every(Scoop, lot.farm_id)}
    named: list[Scale | Plan | Vessel] = [*desk.records.every(Scale, lot.farm_id)]
    named += [*desk.records.every(Plan, lot.farm_id), *desk.records.every(Vessel, lot.farm_id)]
    names |= {thing.id: thing.name for thing in named}
    return Speaker(desk.system, names)
