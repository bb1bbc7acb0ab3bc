"""A small table of captions and values beside each other, to be read, not edited."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QTableWidget, QTableWidgetItem

from calibrator.desk.plain_text import on_screen, tip

ROW_PX = 28  # many rows beneath a table: a little closer than there


class SideTable(QTableWidget):
    """The first column holds the captions; the first line is the heading."""

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(self.tr("Side by side"))
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setShowGrid(False)
        self.setTabKeyNavigation(False)
        self.verticalHeader().hide()
        self.verticalHeader().setDefaultSectionSize(ROW_PX)
        self.setAlternatingRowColors(True)

    def show_rows(self, rows: Sequence[Sequence[str]]) -> None:
        """Show these lines; the first is the heading."""
        heading, *lines = rows
        self.setColumnCount(len(heading))
        self.setRowCount(len(lines))
        self.setHorizontalHeaderLabels([on_screen(text) for text in heading])
        for number, line in enumerate(lines):
            for place, text in enumerate(line):
                item = QTableWidgetItem(on_screen(text))
                item.setToolTip(tip(text))
                self.setItem(number, place, item)
        self.setMaximumHeight(height_of(self))
        header = self.horizontalHeader()
        header.setHighlightSections(False)
        header.setTextElideMode(Qt.TextElideMode.ElideRight)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.ResizeToContents)


def height_of(table: QTableView) -> int:
    """What a table takes to show all of its rows."""
    return table.horizontalHeader().sizeHint().height() + table.verticalHeader().length() + 2 * table.frameWidth()
