"""Any set of lots as a table, found as one types; the two chosen ones side by side."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QModelIndex
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.forms.fields import TextField
from calibrator.desk.forms.lot_form import LONGEST_NOTE
from calibrator.desk.pages.season_model import FIELDS, SeasonModel
from calibrator.desk.parts import button, card, column, label, row, show_as_rows
from calibrator.desk.plain_text import LONGEST_LINE, on_screen
from calibrator.desk.refusals import in_words
from calibrator.desk.season.facts import SeasonFacts
from calibrator.desk.season.side_by_side import beside_words, rows_of
from calibrator.desk.season.side_table import SideTable, height_of
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.stray_keys import SteadyLine
from calibrator.model import Lot, SeasonLot
from calibrator.science.errors import CannotCompute

BOTH = 2
TABLE_HEIGHT, SIDE_HEIGHT = 160, 190
TABLE_SHARE, SIDE_SHARE, NEARLY_ALL = 3, 9, 100
QWIDGETSIZE_MAX = (1 << 24) - 1  # Qt's own word for no limit, which PySide6 leaves out
WIDEST, NARROWEST_NOTE = 220, 160
GIVE_WAY = ("note", "weighed", "product", "scoop", "money", "solids", "feeding")
"""Columns left out where they would be cut, the last one that fits first to come: two lots compared tell them beneath,
one lot its note."""


class LotsPanel(QWidget):
    """Two rows chosen are compared beneath: one after the other once *Compare two* is pressed, or with Ctrl."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._facts: SeasonFacts | None = None
        self.search = SteadyLine()
        self.found = label("", "quiet", wrap=False)
        self.model, self.table = SeasonModel(self), QTableView()
        self.finding, self.hint = label("", "heading"), label("", "quiet")
        self.beside = SideTable()
        self.note = TextField(self.tr("Note"), longest=LONGEST_NOTE)
        self._widths: dict[str, int] = {}  # px, by what each column holds
        self._noted = ""  # the lot that the note is about
        self.open_button = button(self.tr("&Open the lot"), self._open)
        self.compare_button = button(self.tr("&Compare two"), self._choose_two)
        self.compare_button.setCheckable(True)
        self._dress()
        self._lay_out()

    def show_season(self, facts: SeasonFacts) -> None:
        """Show a season as it is now."""
        noted = self._noted
        self._facts = facts
        self.model.show_season(facts)
        for place in range(len(FIELDS)):  # one left out has no width to be found
            self.table.setColumnHidden(place, False)
        self.table.resizeColumnsToContents()
        self.table.setColumnWidth(FIELDS.index("note"), NARROWEST_NOTE)
        self._widths = {name: self.table.columnWidth(place) for place, name in enumerate(FIELDS)}
        self._leave_out()
        self._count()
        for widget in (self.table, self._find):
            widget.setVisible(bool(facts.lots))
        if rows := self.model.rowCount():
            places = (facts.lots[self.model.place(row)].lot_id for row in range(rows))
            self.table.selectRow(next((row for row, lot in enumerate(places) if noted and lot == noted), 0))
        self._compare()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._leave_out()

    def _leave_out(self) -> None:
        """Whole columns rather than half ones."""
        bar = self.table.verticalScrollBar().sizeHint().width()
        room = self.width() - bar - 2 * SPACE
        left = {name: px for name, px in self._widths.items() if name not in GIVE_WAY}
        for name in reversed(GIVE_WAY) if left else ():
            if sum(left.values()) + self._widths[name] <= room:
                left[name] = self._widths[name]
        for place, name in enumerate(FIELDS):
            self.table.setColumnHidden(place, bool(self._widths) and name not in left)
        self._share_room(left, room)

    def _share_room(self, left: dict[str, int], room: int) -> None:
        """What is over goes behind the note, else to all alike: no row ends before the table does."""
        over = max(0, room - sum(left.values()))
        for name, px in left.items():
            share = (over if name == "note" else 0) if "note" in left else over // len(left)
            self.table.setColumnWidth(FIELDS.index(name), px + share)

    @property
    def chosen(self) -> list[int]:
        """Places of the chosen lots in the season, the older first."""
        rows = self.table.selectionModel().selectedRows()
        return sorted(self.model.place(index.row()) for index in rows)

    def pending(self) -> str:
        """What is typed here and not kept yet; blank where all is kept."""
        return self.tr("a note on a lot") if self._note_typed() else ""

    def keep_note(self) -> None:
        """Keep the note as a new telling of its lot, with who and when."""
        if not self._note_typed():
            return
        lot = replace(self.desk.records.find(Lot, self._noted), note=self.note.text())
        if self.desk.keep(lot, "note") is not None:
            self.desk.say(self.tr("Note on lot {lot} kept.").format(lot=on_screen(lot.lot_number, LONGEST_LINE)))

    def _note_typed(self) -> bool:
        known = self._lot_noted()
        return known is not None and self.note.text() != " ".join(known.note.split())

    def _lot_noted(self) -> SeasonLot | None:
        lots = self._facts.lots if self._facts else ()
        return next((lot for lot in lots if lot.lot_id == self._noted), None)

    def _show_note(self, places: list[int]) -> None:
        """The note of the one lot chosen, to be written on; a note typed for another is kept first."""
        facts = self._facts
        one = facts.lots[places[0]] if facts is not None and len(places) == 1 else None
        if one is None or one.lot_id != self._noted:
            self.keep_note()
        self.note.setVisible(one is not None)
        self._noted = one.lot_id if one else ""
        if one is not None and not self.note.busy:
            self.note.caption.setText(self.tr("Note on lot {lot}").format(lot=on_screen(one.lot_number, LONGEST_LINE)))
            self.note.set_text(one.note)
            self.note.line.setEnabled(not self.desk.records.read_only)

    def _search_for(self, text: str) -> None:
        self.model.search(text)
        self._count()
        if self.model.rowCount():
            self.table.selectRow(0)  # its change compares anew
        else:
            self._compare()

    def _count(self) -> None:
        self.found.setText(counted.lots(self.model.rowCount()))

    def _compare(self) -> None:
        facts, chosen = self._facts, self.chosen
        self.open_button.setEnabled(len(chosen) == 1)
        self.compare_button.setVisible(facts is not None and len(facts.lots) > 1)
        two = facts is not None and len(chosen) == BOTH
        self._show_note(chosen)
        self.hint.setVisible(not two)
        for widget in (self.finding, self.beside):
            widget.setVisible(two)
        self._share_height(two)
        if facts is None or not two:
            self.hint.setText(self._what_to_choose(len(facts.lots) if facts else 0))
            return
        first, second = (facts.lots[place] for place in chosen)
        try:
            self.finding.setText(beside_words(first, second))
        except CannotCompute as error:
            self.finding.setText(in_words(error))
        self.beside.show_rows(rows_of(facts, *chosen))

    def _share_height(self, two: bool) -> None:
        """Of two lots compared the figures have the room that the rows of lots leave."""
        self.table.setMaximumHeight(max(TABLE_HEIGHT, height_of(self.table)) if two else QWIDGETSIZE_MAX)
        self._places.setStretchFactor(self._told, SIDE_SHARE if two else 0)

    def _what_to_choose(self, lots: int) -> str:
        if not lots:
            return self.tr("Here every lot that is signed off stands in a row. It begins with the first sign-off.")
        if lots == 1:
            return self.tr("The next lot that is signed off can be compared with this one.")
        if not self.compare_button.isChecked() and lots == BOTH:
            return self.tr("Press Compare two.")
        if not self.compare_button.isChecked():
            return self.tr("Press Compare two, then click the two lots.")
        chosen = len(self.chosen)
        if chosen > BOTH:
            return self.tr("These are more than two: click those away that are not meant.")
        return self.tr("Now click one more lot.") if chosen else self.tr("Now click the two lots.")

    def _choose_two(self) -> None:
        """With plain clicks, each of which takes a lot or lets it go. None is chosen yet, or the first click on one of
        them lets it go; of two lots, both are meant."""
        several, one = QAbstractItemView.SelectionMode.MultiSelection, QAbstractItemView.SelectionMode.ExtendedSelection
        on = self.compare_button.isChecked()
        self.table.setSelectionMode(several if on else one)
        self.compare_button.setText(self.tr("End &comparing") if on else self.tr("&Compare two"))
        if not on:
            self.table.selectRow(max(0, self.table.currentIndex().row()))
        elif self.model.rowCount() == BOTH:
            self.table.selectAll()
        else:
            self.table.clearSelection()
        self._compare()

    def _open(self) -> None:
        if self._facts is not None and self.chosen:
            self.desk.go_to.emit("lots", self._facts.lots[self.chosen[0]].lot_id)

    def _open_row(self, index: QModelIndex) -> None:
        place = self.model.place(index.row())
        if self._facts is not None and place >= 0:
            self.desk.go_to.emit("lots", self._facts.lots[place].lot_id)

    def _dress(self) -> None:
        self.search.setPlaceholderText(self.tr("Number, product, scoop, in use …"))
        self.search.setClearButtonEnabled(True)
        self.search.setAccessibleName(self.tr("Find"))
        self.search.textChanged.connect(self._search_for)
        table = self.table
        show_as_rows(table, self.model, self.tr("Densities of the lots, newest first"))
        table.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        table.setAlternatingRowColors(True)
        table.setMinimumHeight(TABLE_HEIGHT)
        table.setSortingEnabled(True)
        header = table.horizontalHeader()
        header.setSortIndicator(-1, header.sortIndicatorOrder())
        header.setResizeContentsPrecision(40)
        header.setMaximumSectionSize(WIDEST)
        # Widths are found once a season: at each letter typed they would cost more than the search.
        header.setSectionResizeMode(QHeaderView.ResizeMode.Interactive)
        header.setStretchLastSection(True)
        table.selectionModel().selectionChanged.connect(self._compare)
        table.activated.connect(self._open_row)
        self.note.finished.connect(self.keep_note)
        self.beside.setMinimumHeight(SIDE_HEIGHT)

    def _lay_out(self) -> None:
        caption = label(self.tr("Fin&d"), wrap=False)
        caption.setBuddy(self.search)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, int(1.5 * SPACE), 0, 0)
        layout.setSpacing(SPACE)
        self._find, line = QWidget(), row(caption, self.search, self.found, self.compare_button, self.open_button)
        line.setContentsMargins(0, 0, 0, 0)
        self._find.setLayout(line)
        layout.addWidget(self._find)
        layout.addWidget(self.table, TABLE_SHARE)
        told = column(self.finding, self.note, self.beside, self.hint, None)
        told.setStretchFactor(self.beside, NEARLY_ALL)  # only what it does not need lies beneath it
        self._told, self._places = card(told), layout
        layout.addWidget(self._told, 0)
        layout.addStretch(0)
