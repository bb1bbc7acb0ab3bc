"""A table whose columns have names over them, figures at the right."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from typing import Any

from PySide6.QtCore import QAbstractTableModel, Qt

LEFT = int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
RIGHT = int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)


class HeadedModel(QAbstractTableModel):
    """Subclasses name their columns in `headings`, and in `figures` those whose cells stand at the right."""

    figures: Collection[int] = ()

    def headings(self) -> Sequence[str]:
        """A name for each column; without names of their own they are numbered, as Qt does it."""
        return [str(column + 1) for column in range(self.columnCount())]

    def side(self, column: int) -> int:
        """Where the cells of a column stand, and its name over them."""
        return RIGHT if column in self.figures else LEFT

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if orientation != Qt.Orientation.Horizontal or not 0 <= section < self.columnCount():
            return None
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return self.side(section)
        return self.headings()[section] if role == Qt.ItemDataRole.DisplayRole else None
