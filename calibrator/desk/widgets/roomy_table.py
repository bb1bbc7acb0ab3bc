"""A table whose columns are as wide as what is in sight needs, and share what room is left."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHeaderView, QTableView


class RoomyTable(QTableView):
    """`words` are the columns of words, in the order in which they give way where room lacks.

    Room to spare goes behind the last column where that is one of words, else to all alike.
    """

    def __init__(self, words: Sequence[int] = ()) -> None:
        super().__init__()
        self._words = tuple(words)
        self._wanted: dict[int, int] = {}  # px, by what is in sight

    def own_widths(self) -> None:
        """The table alone says how wide its columns are; once it has its model."""
        header = self.horizontalHeader()
        header.setResizeContentsPrecision(0)
        header.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)

    def fit_columns(self) -> None:
        """Look what is in sight. Asking every cell takes long, so not while a number is typed."""
        header = self.horizontalHeader()
        shown = [column for column in range(header.count()) if not self.isColumnHidden(column)]
        self._wanted = {column: max(self.sizeHintForColumn(column), header.sectionSizeHint(column)) for column in shown}
        self.share_room()

    def share_room(self) -> None:
        header, wanted = self.horizontalHeader(), self._wanted
        given, room = dict(wanted), self.viewport().width() - sum(wanted.values())
        if room > 0 and max(wanted, default=-1) in self._words:
            given[max(wanted)] += room
        elif room > 0:
            given = {column: px + room // len(wanted) for column, px in wanted.items()}
        for column in self._words:
            if column in wanted and room < 0:
                given[column] = max(header.sectionSizeHint(column), wanted[column] + room)
                room += wanted[column] - given[column]
        for column, px in given.items():
            header.resizeSection(column, px)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.share_room()
