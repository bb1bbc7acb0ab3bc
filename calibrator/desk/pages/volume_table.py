"""The table by volume: a row a volume of water in one batch, from and to and in steps as a person types them."""

from __future__ import annotations

from enum import IntEnum
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt
from PySide6.QtWidgets import QVBoxLayout, QWidget

from calibrator.desk.counted import counted
from calibrator.desk.parts import label, row, show_as_rows
from calibrator.desk.refusals import in_words
from calibrator.desk.sheets import GroupSheet, SheetLine, water_step_ml
from calibrator.desk.speech import decimal_comma
from calibrator.desk.table_words import (
    Telling,
    additives_text,
    error_text,
    off_heading,
    powder_text,
    scoops_text,
    telling,
    water_text,
)
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.quantity_field import QuantityField
from calibrator.desk.widgets.roomy_table import RoomyTable
from calibrator.model import UnitSystem
from calibrator.science.batch import usual_waters, waters_of
from calibrator.science.errors import CannotCompute
from calibrator.units import Kind, show_volume

Index = QModelIndex | QPersistentModelIndex
Role = Qt.ItemDataRole
LINE, PADDING = 20, 14


class VolumeColumn(IntEnum):
    WATER = 0
    POWDER = 1
    SCOOPFULS = 2
    ERROR = 3
    MIX = 4
    CALVES = 5


FIELD_WIDTH = 140
WORDS = (VolumeColumn.SCOOPFULS,)


class VolumeModel(QAbstractTableModel):
    """Each row is worked out when it is first looked at."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._sheet: GroupSheet | None = None
        self._telling: Telling | None = None
        self._waters: list[float] = []
        self._lines: dict[int, SheetLine] = {}

    def show_waters(self, sheet: GroupSheet | None, waters_ml: list[float]) -> None:
        self.beginResetModel()
        self._sheet, self._waters, self._lines = sheet, waters_ml, {}
        self._telling = telling(sheet) if sheet else None
        self.endResetModel()

    def rowCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() or self._sheet is None else len(self._waters)

    def columnCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(VolumeColumn)

    def data(self, index: Index, role: int = Role.DisplayRole) -> Any:
        if not index.isValid() or self._sheet is None or self._telling is None:
            return None
        if role == Role.DisplayRole:
            return self._text(VolumeColumn(index.column()), self.line(index.row()), self._sheet, self._telling)
        return _side(index.column()) if role == Role.TextAlignmentRole else None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Role.DisplayRole) -> Any:
        if orientation != Qt.Orientation.Horizontal or not 0 <= section < len(VolumeColumn):
            return None
        if role == Role.DisplayRole:
            return (
                self.tr("Water"), self.tr("Powder by weight"), self.tr("Scoopfuls"), off_heading(self._sheet),
                self.tr("Finished mix"), self.tr("Enough for"),
            )[section]  # fmt: skip
        return _side(section) if role == Role.TextAlignmentRole else None

    def line(self, row_number: int) -> SheetLine:
        """What a row holds, worked out when it is first looked at."""
        if row_number not in self._lines and self._sheet:
            self._lines[row_number] = self._sheet.line_of_water(self._waters[row_number])
        return self._lines[row_number]

    def _text(self, column: VolumeColumn, line: SheetLine, sheet: GroupSheet, to: Telling) -> str:
        if column is VolumeColumn.WATER:
            return water_text(line.batch.drawn_ml, to)
        if column is VolumeColumn.POWDER:
            weighed = [powder_text(line.powder_g, to), *([additives_text(line, sheet, to)] if sheet.additives else [])]
            return "\n".join(weighed)
        if column is VolumeColumn.SCOOPFULS:
            return scoops_text(line, to)
        if column is VolumeColumn.MIX:
            return show_volume(line.batch.mix.volume_ml, to.system, decimal_comma=decimal_comma())
        return error_text(line) if column is VolumeColumn.ERROR else counted.calves(line.calves)


def _side(column: int) -> int:
    side = Qt.AlignmentFlag.AlignLeft if column in WORDS else Qt.AlignmentFlag.AlignRight
    return int(side | Qt.AlignmentFlag.AlignVCenter)


class VolumeTable(QWidget):
    """What is left blank is what the vessel and the farm's step of water suggest; nothing of it is kept."""

    def __init__(self) -> None:
        super().__init__()
        self._sheet: GroupSheet | None = None
        self.least, self.most, self.step = (
            QuantityField(Kind.VOLUME, UnitSystem.FARM, required=False, lowest=0.0) for _ in range(3)
        )
        fields = row(spacing=SPACE)
        captions = (self.tr("Water from"), self.tr("to"), self.tr("in steps of"))
        names = (self.tr("First volume of water"), self.tr("Last volume of water"), self.tr("Step of the water"))
        for field, caption, name in zip(self._fields(), captions, names, strict=True):
            field.set_name(name)
            field.line.textEdited.connect(self._refill)
            told = label(caption, wrap=False)
            told.setMinimumHeight(field.line.sizeHint().height())  # level with the line, not with its message
            fields.addWidget(told, 0, Qt.AlignmentFlag.AlignTop)
            field.setFixedWidth(FIELD_WIDTH)
            fields.addWidget(field)
        fields.addStretch(1)
        self.trouble = label("", "caution")
        self.model, self.table = VolumeModel(self), RoomyTable((VolumeColumn.SCOOPFULS,))
        show_as_rows(self.table, self.model, self.tr("Table by volume"))
        self.table.setAlternatingRowColors(True)
        self.table.setMinimumHeight(250)
        self.table.own_widths()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(SPACE)
        layout.addLayout(fields)
        layout.addWidget(self.trouble)
        layout.addWidget(self.table, 1)

    def show_sheet(self, sheet: GroupSheet | None) -> None:
        """Show a group's volumes; those already shown stay."""
        was, self._sheet = self._sheet, sheet
        if sheet is not None and (was is None or not sheet.kin_of(was)):
            for field in self._fields():
                field.set_system(sheet.farm.units)
            self.table.verticalHeader().setDefaultSectionSize(LINE + PADDING + len(sheet.additives) * LINE)
            for column in (VolumeColumn.SCOOPFULS, VolumeColumn.ERROR):
                self.table.setColumnHidden(column, not sheet.ways)
        if sheet is None or was is None or not sheet.kin_of(was) or sheet.table.vessel is None:
            self._refill()

    def chosen_line(self) -> SheetLine | None:
        """The row chosen; None without one."""
        rows = self.table.selectionModel().selectedRows()
        return self.model.line(rows[0].row()) if rows else None

    def _fields(self) -> tuple[QuantityField, QuantityField, QuantityField]:
        return self.least, self.most, self.step

    def _refill(self) -> None:
        sheet, waters, trouble = self._sheet, [], ""
        if sheet is not None:
            try:
                waters = self._waters(sheet)
            except CannotCompute as error:
                trouble = in_words(error)
        self.trouble.setText(trouble)
        self.trouble.setVisible(bool(trouble))
        self.model.show_waters(sheet, waters)
        self.table.fit_columns()

    def _waters(self, sheet: GroupSheet) -> list[float]:
        step = water_step_ml(sheet.farm, float("inf"))
        usual = usual_waters(sheet.table, sheet.today, step)
        for field, volume in zip(self._fields(), usual, strict=True):
            field.line.setPlaceholderText(show_volume(volume, sheet.farm.units, decimal_comma=decimal_comma()))
        typed = [field.quantity() for field in self._fields()]
        least, most, step = (given.value if given else own for given, own in zip(typed, usual, strict=True))
        if typed[0] is None and typed[2]:
            least = step
        return waters_of(least, most, step)
