"""Kept checks as a table."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QModelIndex, QObject, QPersistentModelIndex, Qt

from calibrator.desk.plain_text import tip
from calibrator.desk.widgets.headed_model import HeadedModel
from calibrator.values import dataclass

Index = QModelIndex | QPersistentModelIndex
FIELDS = ("day", "lot", "batch", "feeder", "solids", "wanted", "verdict")
FIGURES = (4, 5)


@dataclass(frozen=True)
class HistoryRow:
    """One line of the table, as it is read: a check, or a count of bags."""

    check_id: str
    day: str
    lot: str
    batch: str
    feeder: str
    solids: str
    wanted: str
    verdict: str


class HistoryModel(HeadedModel):
    """The newest check first; its id is the user data of each cell."""

    figures = FIGURES

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._rows: tuple[HistoryRow, ...] = ()

    def show_rows(self, rows: Sequence[HistoryRow]) -> None:
        self.beginResetModel()
        self._rows = tuple(rows)
        self.endResetModel()

    def check_id(self, row: int) -> str:
        return self._rows[row].check_id if 0 <= row < len(self._rows) else ""

    def row_of(self, check_id: str) -> int:
        """Where a check stands; −1 where it is not shown."""
        return next((n for n, row in enumerate(self._rows) if row.check_id == check_id), -1)

    def rowCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(FIELDS)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        row = self._rows[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return getattr(row, FIELDS[index.column()])
        if role == Qt.ItemDataRole.ToolTipRole:
            return tip(getattr(row, FIELDS[index.column()]))
        if role == Qt.ItemDataRole.UserRole:
            return row.check_id
        return self.side(index.column()) if role == Qt.ItemDataRole.TextAlignmentRole else None

    def headings(self) -> Sequence[str]:
        return (
            self.tr("Day"), self.tr("Lot"), self.tr("Batch"), self.tr("Mixed by"), self.tr("Found"),
            self.tr("Wanted"), self.tr("Verdict"),
        )  # fmt: skip
