"""Plain rows of words as a table on the screen."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView

from calibrator.desk.plain_text import LONGEST_LINE, on_screen, tip

Index = QModelIndex | QPersistentModelIndex
WIDEST = 420


class Lines(QAbstractTableModel):
    """Rows under headings. `bold` is the number of a row that is set apart, −1 for none."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._heads: tuple[str, ...] = ()
        self._rows: Sequence[tuple[str, ...]] = ()
        self._bold = -1
        self._numbered = False

    def show_rows(
        self, heads: Sequence[str], rows: Sequence[tuple[str, ...]], *, bold: int = -1, numbered: bool = False
    ) -> None:
        """Show these; `numbered` numbers them from 1 at the side."""
        self.beginResetModel()
        self._heads, self._rows, self._bold, self._numbered = tuple(heads), rows, bold, numbered
        self.endResetModel()

    def rowCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self._heads)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        row = self._rows[index.row()]
        told = row[index.column()] if index.column() < len(row) else ""
        if role == Qt.ItemDataRole.DisplayRole:
            return on_screen(told.replace("\n", " "), LONGEST_LINE * 4)
        if role == Qt.ItemDataRole.ToolTipRole:
            return tip(told)
        if role == Qt.ItemDataRole.FontRole and index.row() == self._bold:
            font = QFont()
            font.setBold(True)
            return font
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role != Qt.ItemDataRole.DisplayRole:
            return None
        if orientation == Qt.Orientation.Vertical:
            return str(section + 1) if self._numbered else None
        return on_screen(self._heads[section], LONGEST_LINE) if 0 <= section < len(self._heads) else None


def lines_view(model: Lines, name: str, *, numbered: bool = False) -> QTableView:
    """A view of such rows: nothing can be changed in it, Tab leaves it."""
    view = QTableView()
    view.setModel(model)
    view.setAccessibleName(name)
    view.setTabKeyNavigation(False)
    view.setWordWrap(False)
    view.setShowGrid(numbered)
    view.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
    view.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
    view.verticalHeader().setVisible(numbered)
    view.verticalHeader().setDefaultSectionSize(28)
    header = view.horizontalHeader()
    header.setHighlightSections(False)
    header.setStretchLastSection(not numbered)
    header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
    if numbered:
        header.setMaximumSectionSize(WIDEST)
    header.setResizeContentsPrecision(40)
    header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
    return view
