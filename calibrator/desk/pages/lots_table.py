"""The table of lots: one row a lot, sorted by any column, searched as one types."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QModelIndex, QObject, QPersistentModelIndex, Qt

from calibrator.desk import shown
from calibrator.desk.plain_text import tip
from calibrator.desk.speech import day_text
from calibrator.desk.standing import LotStanding
from calibrator.desk.widgets.headed_model import HeadedModel
from calibrator.desk.words import marks_words, packages_words, state_words
from calibrator.model import Lot, PackageKind, Scoop, UnitSystem

Index = QModelIndex | QPersistentModelIndex
SORT_ROLE = Qt.ItemDataRole.UserRole
LOT_ROLE = Qt.ItemDataRole.UserRole + 1
COLUMNS = 7
ARRIVED = 2
NOWHERE = QModelIndex()


class LotsModel(HeadedModel):
    """Lots with what they have come to."""

    figures = (3, 5)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._rows: list[tuple[LotStanding, list[tuple[str, Any]]]] = []
        self._system = UnitSystem.FARM

    def show(self, lots: Sequence[LotStanding], scoops: Sequence[Scoop], system: UnitSystem) -> None:
        """Show these lots instead."""
        self.beginResetModel()
        self._system = system
        self._rows = [(known, _cells(known, scoops, system)) for known in lots]
        self.endResetModel()

    def row_of(self, lot_id: str) -> int | None:
        return next((row for row, (known, _) in enumerate(self._rows) if known.lot.id == lot_id), None)

    def lot_at(self, row: int) -> LotStanding:
        return self._rows[row][0]

    def rowCount(self, parent: Index = NOWHERE) -> int:
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = NOWHERE) -> int:
        return 0 if parent.isValid() else COLUMNS

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        known, cells = self._rows[index.row()]
        shown, by = cells[index.column()]
        if role == Qt.ItemDataRole.DisplayRole:
            return shown
        if role == Qt.ItemDataRole.ToolTipRole:
            return tip(shown)
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return self.side(index.column())
        if role == SORT_ROLE:
            return by
        return known.lot.id if role == LOT_ROLE else None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role == Qt.ItemDataRole.InitialSortOrderRole and section == ARRIVED:
            return Qt.SortOrder.DescendingOrder  # the newest first
        return super().headerData(section, orientation, role)

    def headings(self) -> Sequence[str]:
        return (
            self.tr("Lot"),
            self.tr("Product"),
            self.tr("Arrived"),
            self.tr("Bags"),
            self.tr("Status"),
            self.tr("Density ±, g/mL") if self._system is UnitSystem.METRIC else self.tr("Density ±, oz/qt"),
            self.tr("Mark"),
        )


def _cells(known: LotStanding, scoops: Sequence[Scoop], system: UnitSystem) -> list[tuple[str, Any]]:
    """Each cell as shown, and what it is sorted by."""
    lot, density = known.lot, known.density
    density_shown = shown.density(density.value, system, density.half_width, unit=False) if density else ""
    lines = marks_words(known.marks, scoops, system, made_of=False)
    return [
        (lot.lot_number, lot.lot_number.casefold()),
        (lot.product, lot.product.casefold()),
        (day_text(lot.arrived_on), lot.arrived_on.isoformat() if lot.arrived_on else ""),
        (_packages(lot), lot.package_count or 0),
        (state_words(known.state), list(type(known.state)).index(known.state)),
        (density_shown, density.value if density else 0.0),
        (lines, known.marks[0].down_wall_mm if known.marks else 0.0),
    ]


def _packages(lot: Lot) -> str:
    """The bare number of bags; totes are named."""
    if lot.package is PackageKind.BAG and lot.package_count is not None:
        return str(lot.package_count)
    return packages_words(lot)
