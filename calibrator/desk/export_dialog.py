"""Every figure of the farm into a file for other programs: which kind, how its numbers are written, and where."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QButtonGroup, QCheckBox, QDialog, QRadioButton, QWidget

from calibrator.desk import season_tables
from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.parts import button, framed, label, row
from calibrator.desk.season_tables import season_sheets
from calibrator.desk.speech import decimal_comma
from calibrator.desk.table_headings import sheets_in_words
from calibrator.desk.theme import SPACE
from calibrator.model import Farm
from calibrator.model.underway import Underway, one_by_one
from calibrator.records import count_sign_offs
from calibrator.records.table_file import CsvStyle, write_csv
from calibrator.records.workbook import SheetOf, write_workbook


class ExportDialog(QDialog):
    """A workbook with a sheet for each kind of figure, or a text file for each."""

    def __init__(self, desk: Desk, farm: Farm, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.desk, self._farm = desk, farm
        self.setWindowTitle(self.tr("Save all figures"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.workbook = QRadioButton(self.tr("One workbook, a sheet for each kind (.xlsx)"))
        self.text = QRadioButton(self.tr("A text file for each kind (.csv)"))
        self.comma = QCheckBox(self.tr("Decimal comma, cells parted by semicolons"))
        self.mark = QCheckBox(self.tr("Mark the letters as UTF-8, as spreadsheets want it"))
        self.save_button = button(self.tr("&Save …"), self._ask_path, "main")
        self.save_button.setDefault(True)  # Enter saves, whichever choice has the focus
        self._kinds = QButtonGroup(self)
        for kind in (self.workbook, self.text):
            self._kinds.addButton(kind)
        self.workbook.setChecked(True)
        self.comma.setChecked(decimal_comma())
        self.mark.setChecked(True)
        self.text.toggled.connect(self._offer)
        self._lay_out()
        self._offer()

    def save(self, path: Path) -> None:
        """Write the files; what cannot be written is told in words."""
        gather = partial(season_sheets, self.desk.records, self._farm)
        self.desk.work(self.tr("Gathering the figures"), gather, partial(self._gathered, path))

    def style_of_text(self) -> CsvStyle:
        """How the text files are written."""
        return CsvStyle(decimal_comma=self.comma.isChecked(), mark=self.mark.isChecked())

    def _gathered(self, path: Path, sheets: tuple[SheetOf, ...]) -> None:
        self._write(path, sheets_in_words(sheets))

    def _write(self, path: Path, sheets: tuple[SheetOf, ...]) -> None:
        if self.workbook.isChecked():
            file = path.with_suffix(".xlsx")
            self._begin(sheets, file, partial(write_workbook, sheets, file))
        elif any(file.exists() for _, file in self._files(sheets, path)):
            self._ask_over(sheets, path)
        else:
            self._write_texts(sheets, path)

    def _begin(self, sheets: tuple[SheetOf, ...], path: Path, write: Callable[[Underway], None]) -> None:
        self.desk.work(self.tr("Writing the figures"), write, partial(self._saved, sheets, path), self._ask_path)

    def _files(self, sheets: tuple[SheetOf, ...], path: Path) -> list[tuple[SheetOf, Path]]:
        return [(one, path.with_name(f"{path.stem} {one.name}.csv")) for one in sheets]

    def _write_texts(self, sheets: tuple[SheetOf, ...], path: Path) -> None:
        files = self._files(sheets, path)
        self._begin(sheets, files[0][1], partial(_write_texts, files, self.style_of_text()))

    def _ask_over(self, sheets: tuple[SheetOf, ...], path: Path) -> None:
        question = self.tr("Files of these names are there already. Write over them?")
        self.desk.ask.confirm(question, self.tr("Write over them"), partial(self._write_texts, sheets, path))

    def _saved(self, sheets: tuple[SheetOf, ...], path: Path, _none: None) -> None:
        self.desk.say_saved(counted.checks_saved(sum(len(one.table.rows) for one in sheets)), path)
        self.close()

    def _ask_path(self) -> None:
        kinds = self.tr("Workbook (*.xlsx)") if self.workbook.isChecked() else self.tr("Text (*.csv)")
        ending = ".xlsx" if self.workbook.isChecked() else ".csv"
        parts = (self._farm.name, self.tr("figures"), self.desk.clock().date().isoformat())
        self.desk.save_as(self.tr("Save all figures"), parts, kinds, ending, self.save)

    def _offer(self) -> None:
        for box in (self.comma, self.mark):
            box.setEnabled(self.text.isChecked())

    def _lay_out(self) -> None:
        told = self.tr(
            "Lots, sign-offs with intervals and budgets, fills, spot fills, lines, checks of the mix, counts of bags "
            "and trials, struck-out ones too. Units stand in the headings; masses are grams."
        )
        cancel = button(self.tr("Cancel"), self.close)
        body = framed(self)
        body.setSpacing(SPACE)
        body.addWidget(label(told))
        if count_sign_offs(self.desk.records, self._farm.id) > season_tables.MOST_BUDGETS:
            text = self.tr("Budgets are of the newest {count} sign-offs; older ones are left out of that sheet alone.")
            body.addWidget(label(text.format(count=season_tables.MOST_BUDGETS), "quiet"))
        for widget in (self.workbook, self.text, self.comma, self.mark):
            body.addWidget(widget)
        body.addLayout(row(None, cancel, self.save_button))
        self.setMinimumWidth(460)


def _write_texts(files: Sequence[tuple[SheetOf, Path]], style: CsvStyle, underway: Underway) -> None:
    for one, file in one_by_one(files, underway):
        write_csv(one.table, file, style)
