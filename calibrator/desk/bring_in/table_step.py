"""First step: which sheet, how its text is written, which row has the headings; the table as it was read."""

from __future__ import annotations

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QComboBox, QVBoxLayout, QWidget

from calibrator.desk.bring_in.lines import Lines, lines_view
from calibrator.desk.bring_in.meanings import column_name
from calibrator.desk.bring_in.orders import text_of
from calibrator.desk.bring_in.work import Bringing
from calibrator.desk.forms.fields import Captioned
from calibrator.desk.parts import label
from calibrator.desk.plain_text import LONGEST_LINE, on_screen
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.calm_box import CalmBox
from calibrator.desk.widgets.side_by_side import SideBySide
from calibrator.records.foreign.text import CODINGS, SEPARATORS, TextWay

SHOWN, HEADINGS = 60, 30
_FEW = 6


class TableStep(QWidget):
    """`read_again` asks for another sheet or way of reading; `heading_chosen` gives the row, None for no headings."""

    read_again = Signal()
    heading_chosen = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self.sheet, self.coding, self.separator, self.heading = CalmBox(), CalmBox(), CalmBox(), CalmBox()
        self.model = Lines(self)
        self.view = lines_view(self.model, self.tr("The table as it was read"), numbered=True)
        self._boxes = {
            self.sheet: Captioned(self.tr("Sheet"), self.sheet),
            self.coding: Captioned(self.tr("Letters"), self.coding),
            self.separator: Captioned(self.tr("Between cells"), self.separator),
            self.heading: Captioned(self.tr("Row of the headings"), self.heading),
        }
        self.told = label("", "quiet")
        for box in self._boxes:
            box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
            box.setMinimumContentsLength(14)
        self.heading.setMinimumContentsLength(34)
        self.sheet.activated.connect(self._choose_sheet)
        self.coding.activated.connect(self._choose_way)
        self.separator.activated.connect(self._choose_way)
        self.heading.activated.connect(self._choose_heading)
        self._work: Bringing | None = None
        body = QVBoxLayout(self)
        body.setContentsMargins(0, 0, 0, 0)
        body.setSpacing(SPACE)
        body.addWidget(SideBySide(*self._boxes.values(), stretches=(1, 1, 1, 2), gap=2 * SPACE))
        body.addWidget(self.told)
        body.addWidget(self.view, 1)

    def show_work(self, work: Bringing) -> None:
        """Show the file as far as it is read."""
        self._work = work
        blocked = [QSignalBlocker(box) for box in self._boxes]
        self._offer_sheets(work)
        self._offer_ways(work)
        self._offer_headings(work)
        for blocker in blocked:
            blocker.unblock()
        table = work.table
        if table is None:
            self.told.setText(self.tr("Choose the sheet."))
            self.model.show_rows((), ())
            return
        self.told.setText(
            self.tr("{rows} rows. Look whether the letters, the columns and the headings are right.").format(
                rows=f"{len(table.rows):,}"
            )
        )
        shown = [tuple(map(text_of, cells)) for cells in table.rows[:SHOWN]]
        at = work.choices.heading
        heads = tuple(column_name(place) for place in range(table.columns))
        self.model.show_rows(heads, shown, bold=-1 if at is None else at, numbered=True)

    def _offer_sheets(self, work: Bringing) -> None:
        self._boxes[self.sheet].setVisible(len(work.sheets) > 1)
        self.sheet.clear()
        for name, hidden in work.sheets:
            told = self.tr("{name} (hidden)").format(name=name) if hidden else name
            self.sheet.addItem(on_screen(told, LONGEST_LINE), name)
        self.sheet.setCurrentIndex(self.sheet.findData(work.sheet))

    def _offer_ways(self, work: Bringing) -> None:
        for box in (self.coding, self.separator):
            self._boxes[box].setVisible(work.way is not None)
            box.clear()
        if work.way is None:
            return
        letters = {"utf-8": "UTF-8", "cp1252": "Windows-1252", "cp850": "DOS 850", "mac_roman": "Mac Roman"}
        for coding in dict.fromkeys((*CODINGS, work.way.coding)):
            self.coding.addItem(letters.get(coding, coding.upper()), coding)
        signs = {
            ",": self.tr("comma"), ";": self.tr("semicolon"), "\t": self.tr("tab"), "|": self.tr("bar"),
        }  # fmt: skip
        for sign in dict.fromkeys((",", ";", "\t", *SEPARATORS, work.way.separator)):
            self.separator.addItem(signs.get(sign, sign), sign)
        self.coding.setCurrentIndex(self.coding.findData(work.way.coding))
        self.separator.setCurrentIndex(self.separator.findData(work.way.separator))

    def _offer_headings(self, work: Bringing) -> None:
        self.heading.clear()
        self.heading.setEnabled(work.table is not None)
        self.heading.addItem(self.tr("there are no headings"), None)
        for at, cells in enumerate(work.table.rows[:HEADINGS] if work.table else ()):
            told = " | ".join(text for cell in cells[:_FEW] if (text := text_of(cell)))
            self.heading.addItem(f"{at + 1}: {on_screen(told, LONGEST_LINE)}", at)
        chosen = work.choices.heading
        self.heading.setCurrentIndex(0 if chosen is None else chosen + 1)

    def _choose_sheet(self) -> None:
        if self._work is not None:
            self._work.sheet = self.sheet.currentData()
            self.read_again.emit()

    def _choose_way(self) -> None:
        if self._work is not None:
            self._work.way = TextWay(self.coding.currentData(), self.separator.currentData())
            self.read_again.emit()

    def _choose_heading(self) -> None:
        self.heading_chosen.emit(self.heading.currentData())
