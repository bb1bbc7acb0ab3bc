"""What was weighed of a lot: fills and spot fills in their order, struck-out ones with the reason."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QModelIndex, QObject, QPersistentModelIndex, Qt
from PySide6.QtGui import QBrush, QColor, QFont

from calibrator.desk.as_typed import as_typed
from calibrator.desk.plain_text import tip
from calibrator.desk.speech import day_text
from calibrator.desk.theme import tokens
from calibrator.desk.widgets.headed_model import HeadedModel
from calibrator.desk.words import way_words
from calibrator.model import Fill, SpotFill, UnitSystem

Index = QModelIndex | QPersistentModelIndex
NOWHERE = QModelIndex()
COLUMNS = 6


class FillsModel(HeadedModel):
    """One row a weighing."""

    figures = (0, 2)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._fills: list[Fill | SpotFill] = []
        self._system = UnitSystem.FARM

    def show(self, fills: Sequence[Fill | SpotFill], system: UnitSystem) -> None:
        """Show these weighings instead."""
        self.beginResetModel()
        self._fills, self._system = list(fills), system
        self.endResetModel()

    def rowCount(self, parent: Index = NOWHERE) -> int:
        return 0 if parent.isValid() else len(self._fills)

    def columnCount(self, parent: Index = NOWHERE) -> int:
        return 0 if parent.isValid() else COLUMNS

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        fill = self._fills[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return self._cells(fill)[index.column()]
        if role == Qt.ItemDataRole.ToolTipRole:
            return tip(self._cells(fill)[index.column()])
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return self.side(index.column())
        if role == Qt.ItemDataRole.FontRole and not fill.counts and index.column() < COLUMNS - 1:
            font = QFont()
            font.setStrikeOut(True)
            return font
        if role == Qt.ItemDataRole.ForegroundRole and not fill.counts:
            return QBrush(QColor(tokens().quiet))
        return None

    def headings(self) -> Sequence[str]:
        return (
            self.tr("Bag"),
            self.tr("Filled"),
            self.tr("Weight"),
            self.tr("By"),
            self.tr("On"),
            self.tr("Struck out because"),
        )

    def _cells(self, fill: Fill | SpotFill) -> tuple[str, ...]:
        bag = str(fill.bag) if isinstance(fill, Fill) else self.tr("spot fill")
        weight = as_typed(fill.mass_g, fill.typed, self._system)
        if isinstance(fill, Fill) and fill.scoopfuls > 1:
            weight = self.tr("{weight} for {count} scoopfuls").format(weight=weight, count=fill.scoopfuls)
        day = day_text(fill.at.astimezone().date())
        return bag, way_words(fill.way), weight, fill.by, day, fill.struck_reason or ""
