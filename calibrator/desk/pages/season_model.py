"""The season's figures as a table."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from calibrator.desk.plain_text import tip

Index = QModelIndex | QPersistentModelIndex


@dataclass(frozen=True)
class SeasonRow:
    """One line of the table, as it is read."""

    lot_id: str
    lot: str
    day: str
    scoop: str
    density: str
    interval: str
    change: str
    weighed: str


FIELDS = ("lot", "day", "scoop", "density", "interval", "change", "weighed")
FIGURES = (3, 4, 5)


class SeasonModel(QAbstractTableModel):
    """Lots in their order; the lot's id is the user data of each cell."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._rows: tuple[SeasonRow, ...] = ()
        self._day_name = ""

    def show_rows(self, rows: Sequence[SeasonRow], day_name: str) -> None:
        self.beginResetModel()
        self._rows, self._day_name = tuple(rows), day_name
        self.endResetModel()

    def row_of(self, lot_id: str) -> int:
        """Where a lot stands, last telling of it; −1 where it is not shown."""
        return max((n for n, row in enumerate(self._rows) if row.lot_id == lot_id), default=-1)

    def lot_id(self, row: int) -> str:
        return self._rows[row].lot_id if 0 <= row < len(self._rows) else ""

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008
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
            return row.lot_id
        if role == Qt.ItemDataRole.TextAlignmentRole and index.column() in FIGURES:
            return int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if orientation != Qt.Orientation.Horizontal or not 0 <= section < len(FIELDS):
            return None
        if role == Qt.ItemDataRole.TextAlignmentRole:
            side = Qt.AlignmentFlag.AlignRight if section in FIGURES else Qt.AlignmentFlag.AlignLeft
            return int(side | Qt.AlignmentFlag.AlignVCenter)
        if role != Qt.ItemDataRole.DisplayRole:
            return None
        names = (
            self.tr("Lot"), self._day_name, self.tr("Scoop"), self.tr("Density"),
            self.tr("95 % interval"), self.tr("Lot before"), self.tr("Weighed"),
        )  # fmt: skip
        return names[section]
