"""The fills as a table: number, bag, weight, what is to be said of it."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, Qt
from PySide6.QtGui import QColor, QFont

from calibrator.desk.as_typed import as_typed
from calibrator.desk.plain_text import tip
from calibrator.desk.theme import tokens, ui_font
from calibrator.desk.widgets.headed_model import HeadedModel
from calibrator.model import Fill, UnitSystem, standing_numbers

Index = QModelIndex | QPersistentModelIndex
NUMBER, BAG, WEIGHT, REMARK = range(4)


class FillTable(HeadedModel):
    """Newest fill first, so that what was just typed is in view."""

    figures = (NUMBER, BAG, WEIGHT)

    def __init__(self) -> None:
        super().__init__()
        self._fills: list[Fill] = []
        self._numbers: list[int | None] = []
        self._odd: frozenset[str] = frozenset()
        self._again = ""
        self._system = UnitSystem.FARM
        self._resolution_g: float | None = None

    def show_fills(
        self,
        fills: list[Fill],
        odd: frozenset[str],
        system: UnitSystem,
        resolution_g: float | None,
        *,
        again: str = "",
    ) -> None:
        """Show these; `again` is the one that was likely typed wrong, by its id."""
        self.beginResetModel()
        self._fills, self._numbers = list(fills), standing_numbers(fills)
        self._odd, self._again, self._system, self._resolution_g = odd, again, system, resolution_g
        self.endResetModel()

    def fill_at(self, row: int) -> Fill:
        return self._fills[-1 - row]

    def rowCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self._fills)

    def columnCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else 4

    def headings(self) -> tuple[str, ...]:
        return self.tr("No."), self.tr("Bag"), self.tr("Weight"), self.tr("Remark")

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        if not index.isValid():
            return None
        fill = self.fill_at(index.row())
        if role == Qt.ItemDataRole.DisplayRole:
            return self._text(fill, self._numbers[-1 - index.row()], index.column())
        if role == Qt.ItemDataRole.ToolTipRole and index.column() == REMARK:
            return tip(self._remark_in_full(fill))
        if role == Qt.ItemDataRole.AccessibleTextRole and index.column() == REMARK:
            return self._remark_in_full(fill)
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return self.side(index.column())
        if role == Qt.ItemDataRole.FontRole and index.column() == WEIGHT:
            return self._font(fill)
        if role == Qt.ItemDataRole.ForegroundRole:
            return self._colour(fill, index.column())
        return None

    def _text(self, fill: Fill, number: int | None, column: int) -> str:
        if column == WEIGHT:
            return as_typed(fill.mass_g, fill.typed, self._system, resolution_g=self._resolution_g)
        if column == REMARK:
            return self._remark(fill)
        return str((number or "–") if column == NUMBER else fill.bag)

    def _remark(self, fill: Fill) -> str:
        if fill.struck_reason is not None:
            return fill.struck_reason  # the line through its weight tells the rest, and there is no room for it
        if fill.id == self._again:
            return self.tr("look again")
        if fill.id in self._odd:
            return self.tr("odd")
        if fill.scoopfuls > 1:
            return self.tr("{count} scoopfuls together").format(count=fill.scoopfuls)
        return ""

    def _remark_in_full(self, fill: Fill) -> str:
        """For who points at a remark, or has it read out."""
        if fill.struck_reason is None:
            return self._remark(fill)
        return self.tr("struck out: {reason}").format(reason=fill.struck_reason)

    def _font(self, fill: Fill) -> QFont:
        font = ui_font(1.0, QFont.Weight.DemiBold)
        font.setStrikeOut(not fill.counts)
        return font

    def _colour(self, fill: Fill, column: int) -> QColor | None:
        if not fill.counts:
            return QColor(tokens().quiet)
        if column == REMARK and (fill.id == self._again or fill.id in self._odd):
            return QColor(tokens().warn)
        return None
