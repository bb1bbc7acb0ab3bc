"""The sheet of ready-cut labels: how many, how large, where; asked once and remembered."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.label_cut import grid_of, kept_grid
from calibrator.desk.parts import label
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.count_field import CountField
from calibrator.desk.widgets.quantity_field import QuantityField
from calibrator.prints.label_facts import LabelGrid
from calibrator.units import Kind

MOST_ABREAST = 30
MOST_USED = 899
LARGEST_MM = 500.0


class GridFields(QWidget):
    """What is understood is kept at once; a field that is not, is told and stops the print."""

    changed = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._layout = QGridLayout(self)
        self._layout.setContentsMargins(0, 0, 0, 0)
        self._layout.setHorizontalSpacing(SPACE)
        self._layout.setVerticalSpacing(3)
        self._placed = 0
        self.columns = self._count(self.tr("Labels abreast"), 1, MOST_ABREAST)
        self.rows = self._count(self.tr("Labels down the sheet"), 1, MOST_ABREAST)
        self.width_mm = self._length(self.tr("Width of a label"))
        self.height_mm = self._length(self.tr("Height of a label"))
        self.left_mm = self._length(self.tr("Left margin"))
        self.top_mm = self._length(self.tr("Top margin"))
        self.pitch_x_mm = self._length(self.tr("Next one across"), self.tr("Left edge to left edge"))
        self.pitch_y_mm = self._length(self.tr("Next one down"), self.tr("Top edge to top edge"))
        self.used = self._count(self.tr("Labels gone already"), 0, MOST_USED)
        self.show_kept()

    def show_kept(self) -> None:
        """Fill in the sheet as it was described last."""
        kept = grid_of(self._desk.settings.now)
        for name, field in self._counts().items():
            field.set_count(int(getattr(kept, name)))
        for name, length in self._lengths().items():
            length.set_system(self._desk.system)
            found = length.quantity()
            if found is None or abs(found.value - getattr(kept, name)) > 1e-9:
                length.set_value(getattr(kept, name))

    def grid(self) -> LabelGrid | None:
        """The sheet as described; None where a size is not understood."""
        sizes = {name: length.quantity() for name, length in self._lengths().items()}
        told = {name: size.value for name, size in sizes.items() if size is not None}
        if len(told) < len(sizes):
            return None
        columns, rows, used = self.columns.count(), self.rows.count(), self.used.count()
        return LabelGrid(columns=columns, rows=rows, used=used, **told)

    def _counts(self) -> dict[str, CountField]:
        return {"columns": self.columns, "rows": self.rows, "used": self.used}

    def _lengths(self) -> dict[str, QuantityField]:
        names = ("width_mm", "height_mm", "left_mm", "top_mm", "pitch_x_mm", "pitch_y_mm")
        return {name: getattr(self, name) for name in names}

    def _count(self, caption: str, least: int, most: int) -> CountField:
        field = CountField(least, most)
        field.counted.connect(self._typed)
        self._place(caption, field, "")
        return field

    def _length(self, caption: str, note: str = "") -> QuantityField:
        field = QuantityField(Kind.LENGTH, self._desk.system, lowest=0.0, highest=LARGEST_MM)
        field.understood.connect(self._typed)
        self._place(caption, field, note)
        field.set_name(caption)
        return field

    def _place(self, words: str, field: QWidget, note: str) -> None:
        """Two abreast; a caption of two lines ends where its neighbour's does, so that their fields stand level."""
        row, column = 3 * (self._placed // 2), self._placed % 2
        self._placed += 1
        caption = label(words)
        caption.setBuddy(field)
        field.setAccessibleName(words)
        field.setAccessibleDescription(note)
        self._layout.addWidget(caption, row, column, Qt.AlignmentFlag.AlignBottom)
        self._layout.addWidget(field, row + 1, column, Qt.AlignmentFlag.AlignTop)
        if note:
            self._layout.addWidget(label(note, "quiet"), row + 2, column, Qt.AlignmentFlag.AlignTop)
        self._layout.setRowMinimumHeight(row + 2, SPACE // 2)
        self._layout.setColumnStretch(column, 1)

    def _typed(self, *_told: object) -> None:
        if (grid := self.grid()) is not None:
            self._desk.settings.keep(label_grid=kept_grid(grid))
        self.changed.emit()
