"""The table of a plan's batches: every column as wide as what is in sight needs, today's row never cut off."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, Qt, QTimer
from PySide6.QtGui import QFocusEvent, QFont, QFontMetrics
from PySide6.QtWidgets import QAbstractItemView

from calibrator.desk.pages.batch_model import BatchModel, Column
from calibrator.desk.parts import show_as_rows
from calibrator.desk.sheets import GroupSheet
from calibrator.desk.theme import ui_font
from calibrator.desk.widgets.roomy_table import RoomyTable

TABLE_HEIGHT = 250
FIT_AFTER_MS = 200
ONE_LINE, TWO_LINES, LINE = 34, 50, 20  # scoops that need their names take a second line


class BatchTable(RoomyTable):
    """Rows of calves; `batches` is what it shows."""

    def __init__(self, name: str) -> None:
        # Why one batch would not do stands in the tip and at today's calves too: it gives way first.
        super().__init__((Column.BATCHES, Column.SCOOPFULS))
        self.batches = BatchModel(self)
        self._fitting: dict[int, int] = {}  # how wide a text fits each column, px
        self._stressed = QFontMetrics(ui_font(1.0, QFont.Weight.Bold))
        self._today = 0
        show_as_rows(self, self.batches, name, lambda: self._today)
        self.setAlternatingRowColors(True)
        self.setWordWrap(True)
        self.setMinimumHeight(TABLE_HEIGHT)
        self.own_widths()
        self._fit_later = QTimer(self)
        self._fit_later.setSingleShot(True)
        self._fit_later.setInterval(FIT_AFTER_MS)
        self._fit_later.timeout.connect(self.fit_columns)

    def dress_for(self, sheet: GroupSheet) -> None:
        """The columns and the height of rows that a sheet needs, whatever the count of calves."""
        several = len({way.scoop_id for way in sheet.ways}) > 1
        self.verticalHeader().setDefaultSectionSize(
            max(TWO_LINES if several or sheet.made_up else ONE_LINE, ONE_LINE + len(sheet.additives) * LINE)
        )
        self.setColumnHidden(Column.SCOOPFULS, not sheet.ways)
        self.setColumnHidden(Column.ERROR, not sheet.ways)
        self.setColumnHidden(Column.BATCHES, sheet.table.vessel is None)
        self.fit_columns()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Today's row stays lit by itself; another one that was chosen is told of until one is chosen anew."""
        super().focusOutEvent(event)
        leaves = event.reason() not in (Qt.FocusReason.ActiveWindowFocusReason, Qt.FocusReason.PopupFocusReason)
        if leaves and self.chosen_row() == self._today:
            self.clearSelection()

    def show_today(self, row: int) -> None:
        self._today = row
        self._widen_for(row)
        at = self.batches.index(row, 0, QModelIndex())
        self.scrollTo(at, QAbstractItemView.ScrollHint.PositionAtCenter)

    def fit_soon(self) -> None:
        """Once no more numbers are typed."""
        self._fit_later.start()

    def chosen_row(self) -> int | None:
        rows = self.selectionModel().selectedRows()
        return rows[0].row() if rows else None

    def fit_columns(self) -> None:
        self._fitting.clear()
        super().fit_columns()

    def _widen_for(self, row: int) -> None:
        """Today's row is never cut off, not even while its number is typed.

        A column is measured only for a text that is wider than any that was found to fit: Qt takes long over it.
        """
        grown = False
        for column in (one for one in self._wanted if one is not Column.BATCHES):
            index = self.batches.index(row, column)
            wide = max(self._stressed.horizontalAdvance(line) for line in str(self.batches.data(index)).split("\n"))
            if wide <= self._fitting.get(column, 0):
                continue
            self._fitting[column] = wide
            wanted = self.sizeHintForIndex(index).width() + 1
            if wanted > self._wanted[column]:
                self._wanted[column], grown = wanted, True
        if grown:
            self.share_room()
