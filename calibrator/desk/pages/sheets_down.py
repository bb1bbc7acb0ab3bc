"""Old sheets that were taken down although none was printed in their place: somebody says so, and the reminder ends."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QButtonGroup, QCheckBox, QDialog, QRadioButton, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.paper_jobs import end_sheets
from calibrator.desk.parts import button, framed, label, row
from calibrator.desk.plain_text import on_screen
from calibrator.desk.sheet_words import sheet_words
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.initials import select_on_entry
from calibrator.desk.widgets.stray_keys import SteadyLine
from calibrator.model import Ending, Printed, SheetEnding, new_id

LONGEST_INITIALS = 12


class SheetsDown(QDialog):
    """Asks which were taken down, how, and who says so. Kept with the time."""

    def __init__(self, desk: Desk, sheets: Sequence[Printed], parent: QWidget | None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Old sheets still to take down"))
        self._desk, self._sheets = desk, tuple(sheets)
        self.boxes = [QCheckBox(on_screen(sheet_words(desk.records, sheet)).replace("&", "&&")) for sheet in sheets]
        self.taken_down = QRadioButton(self.tr("&Taken down, nothing in its place"))
        self.replaced = QRadioButton(self.tr("&Replaced: a new sheet is there"))
        self.spoiled = QRadioButton(self.tr("Thrown away &unused: jammed, or its bars were off"))
        self._ways = QButtonGroup(self)
        self.initials = SteadyLine(desk.initials)
        self.initials.setMaxLength(LONGEST_INITIALS)
        self.initials.setFixedWidth(140)
        self.initials.setAccessibleName(self.tr("Initials"))
        select_on_entry(self.initials)
        self.keep = button(self.tr("&Keep"), self._keep, "main")
        self.cancel = button(self.tr("&Go back"), self.reject)
        self._lay_out()
        self._judge()

    def _lay_out(self) -> None:
        self.taken_down.setChecked(True)
        layout = framed(self)
        layout.setSpacing(SPACE)
        layout.addWidget(label(self.tr("Which of them did you take down?"), "heading"))
        for box in self.boxes:
            box.setChecked(len(self.boxes) == 1)
            box.toggled.connect(self._judge)
            layout.addWidget(box)
        for way in (self.taken_down, self.replaced, self.spoiled):
            self._ways.addButton(way)
            layout.addWidget(way)
        caption = label(self.tr("Your &initials"), wrap=False)
        caption.setBuddy(self.initials)
        self.initials.textChanged.connect(self._judge)
        layout.addLayout(row(caption, self.initials, None))
        layout.addLayout(row(None, self.cancel, self.keep))
        self.setMinimumWidth(460)

    def _judge(self) -> None:
        self.keep.setEnabled(any(box.isChecked() for box in self.boxes) and bool(self.initials.text().strip()))

    def _ending(self) -> Ending:
        ways = {self.taken_down: Ending.TAKEN_DOWN, self.replaced: Ending.REPLACED, self.spoiled: Ending.SPOILED}
        return next(ending for way, ending in ways.items() if way.isChecked())

    def _keep(self) -> None:
        by, at, ending = self.initials.text().strip(), self._desk.clock(), self._ending()
        told = [
            SheetEnding(id=new_id(), farm_id=sheet.farm_id, print_id=sheet.id, ending=ending, at=at, by=by)
            for sheet, box in zip(self._sheets, self.boxes, strict=True)
            if box.isChecked()
        ]
        self._desk.initials = by
        if self._desk.attempt(partial(end_sheets, self._desk.records, told)) is not None:
            self._desk.say(self.tr("Kept: taken down."))
            self.accept()


def ask_what_is_down(desk: Desk, sheets: Sequence[Printed], parent: QWidget | None) -> SheetsDown:
    """Open the question; nothing blocks."""
    dialog = SheetsDown(desk, sheets, parent)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.open()
    return dialog
