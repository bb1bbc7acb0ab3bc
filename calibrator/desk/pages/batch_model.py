"""The batch table as an item model: a row a count of calves, computed when it is looked at."""

from __future__ import annotations

from enum import IntEnum
from html import escape
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt
from PySide6.QtGui import QBrush, QColor, QFont

from calibrator.desk.sheets import GroupSheet, SheetLine
from calibrator.desk.table_words import (
    Telling,
    additives_text,
    delivered_words,
    each_text,
    error_text,
    error_words,
    filled_up_text,
    levels_text,
    off_heading,
    portions_text,
    powder_text,
    rounding_words,
    scoops_text,
    scoops_words,
    telling,
    vessel_text,
    water_text,
)
from calibrator.desk.theme import tokens, ui_font

Index = QModelIndex | QPersistentModelIndex
Role = Qt.ItemDataRole
ANSWERED = frozenset((Role.FontRole, Role.BackgroundRole, Role.ToolTipRole, Role.AccessibleTextRole))


class Column(IntEnum):
    CALVES = 0
    WATER = 1
    POWDER = 2
    SCOOPFULS = 3
    ERROR = 4
    BATCHES = 5


FIGURES = (Column.CALVES, Column.WATER, Column.POWDER, Column.ERROR)
SIDES = tuple(
    int(
        (Qt.AlignmentFlag.AlignRight if column in FIGURES else Qt.AlignmentFlag.AlignLeft)
        | Qt.AlignmentFlag.AlignVCenter
    )
    for column in Column
)


class BatchModel(QAbstractTableModel):
    """Shows one group's table; today's row is stressed by weight, ground and word."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._sheet: GroupSheet | None = None
        self._telling: Telling | None = None
        self._counts: list[int] = []  # of calves, row by row
        self._texts: dict[tuple[int, int], str] = {}  # by calves and column
        self._stressed = ui_font(1.0, QFont.Weight.Bold)

    def show_sheet(self, sheet: GroupSheet | None) -> None:
        """Show another table; None empties it."""
        was = self._sheet
        if sheet is not None and was is not None and self._bring_rows(sheet):
            self._tell_changed(sheet, was)
            return
        self.beginResetModel()
        self._take(sheet)
        self.endResetModel()

    @property
    def today_row(self) -> int | None:
        return self._sheet.today_row if self._sheet else None

    def rowCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self._counts)

    def columnCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(Column)

    def data(self, index: Index, role: int = Role.DisplayRole) -> Any:
        # Asked some ten times a cell at every digit: what is asked most comes first.
        if role == Role.DisplayRole:
            return self._cell(index.row(), index.column()) if index.isValid() else None
        if role == Role.TextAlignmentRole:
            return SIDES[index.column()] if index.isValid() else None
        if role not in ANSWERED or not index.isValid() or self._sheet is None or self._telling is None:
            return None
        today = index.row() == self._sheet.today_row
        if role == Role.FontRole and today:
            return self._stressed
        if role == Role.BackgroundRole and today:
            return QBrush(QColor(tokens().mark_soft))
        if role == Role.ToolTipRole:
            return self._tip(self._sheet.line(index.row()), self._telling)
        if role == Role.AccessibleTextRole:
            return self._spoken(index, today)
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Role.DisplayRole) -> Any:
        if orientation != Qt.Orientation.Horizontal or not 0 <= section < len(Column):
            return None
        if role == Role.DisplayRole:
            return self._headers()[section]
        return SIDES[section] if role == Role.TextAlignmentRole else None

    def _cell(self, row: int, column: int) -> str:
        """A cell's text, made once: views ask for it many times over."""
        if self._sheet is None or self._telling is None:
            return ""
        at = self._counts[row], column
        if at not in self._texts:
            self._texts[at] = self._text(Column(column), self._sheet.line(row), self._telling)
        return self._texts[at]

    def _tell_changed(self, sheet: GroupSheet, was: GroupSheet) -> None:
        """Every row where the figures differ, else only the one that was and the one that is today's."""
        whole = (0, len(sheet) - 1)
        stressed = (self._counts.index(calves) for calves in {was.today, sheet.today} if calves in self._counts)
        for first, last in {(row, row) for row in stressed} if sheet.kin_of(was) else {whole}:
            self.dataChanged.emit(self.index(first, 0), self.index(last, len(Column) - 1))

    def _headers(self) -> tuple[str, ...]:
        return (
            self.tr("Calves"), self.tr("Water"), self.tr("Powder by weight"), self.tr("Scoopfuls"),
            off_heading(self._sheet), self.tr("Batches"),
        )  # fmt: skip

    def _text(self, column: Column, line: SheetLine, to: Telling) -> str:
        if column is Column.CALVES:
            return str(line.calves)
        if column is Column.WATER:
            told = [each_text(line, water_text(line.batch.drawn_ml, to)), filled_up_text(line, to)]
            return "\n".join(filter(None, told))
        if column is Column.POWDER:
            told = [each_text(line, powder_text(line.powder_g, to))]
            if self._sheet and self._sheet.additives:
                told.append(additives_text(line, self._sheet, to))
            return "\n".join(told)
        if column is Column.SCOOPFULS:
            return scoops_text(line, to)
        return error_text(line) if column is Column.ERROR else str(line.batches)

    def _tip(self, line: SheetLine, to: Telling) -> str:
        """The whole row in words, whatever a narrow column cut off."""
        told = [scoops_words(line, to)] if self._sheet and self._sheet.ways else []
        told.append(portions_text(line, to))
        told.append(error_words(line, to))
        if self._sheet:
            told.append(delivered_words(line, self._sheet))
        told.append(rounding_words(line))
        vessel = self._sheet.table.vessel if self._sheet else None
        if vessel and not line.fits:
            told.append(vessel_text(line, vessel.name, to))
        told.append(levels_text(line, to))
        return "<p>" + "<br>".join(escape(text) for text in told if text) + "</p>" if any(told) else ""

    def _spoken(self, index: Index, today: bool) -> str:
        text = self.data(index)
        if today and index.column() == Column.CALVES:
            return str(self.tr("{calves}, today").format(calves=text))
        return str(text)

    def _bring_rows(self, sheet: GroupSheet) -> bool:
        """Bring a row in and take one out, where no more differs: that of a count as it is typed."""
        counts = sheet.table.calves.tolist()
        gone, come = set(self._counts) - set(counts), set(counts) - set(self._counts)
        if len(gone) > 1 or len(come) > 1:
            return False
        for calves in gone:
            at = self._counts.index(calves)
            self.beginRemoveRows(QModelIndex(), at, at)
            del self._counts[at]
            self.endRemoveRows()
        for calves in come:
            at = counts.index(calves)
            self.beginInsertRows(QModelIndex(), at, at)
            self._take(sheet)
            self.endInsertRows()
        self._take(sheet)
        return True

    def _take(self, sheet: GroupSheet | None) -> None:
        if sheet is None or not sheet.kin_of(self._sheet):
            self._texts.clear()
        self._sheet = sheet
        self._counts = sheet.table.calves.tolist() if sheet else []
        self._telling = telling(sheet) if sheet else None
