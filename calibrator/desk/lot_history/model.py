"""A lot's history as a table for the screen, and as one for other programs."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QModelIndex, QObject, QPersistentModelIndex, Qt

from calibrator.desk.lot_history.words import Speaker, Told, topic_words
from calibrator.desk.plain_text import LONGEST_LINE, on_screen, tip
from calibrator.desk.trust_words import moment
from calibrator.desk.widgets.headed_model import HeadedModel
from calibrator.model.underway import Underway, unwatched
from calibrator.records.lot_history import Happening
from calibrator.records.table_file import Field, FlatTable, table_of

Index = QModelIndex | QPersistentModelIndex
WHAT = 3  # the column after when, who and what it is about
LONGEST_WHAT = 300
Row = tuple[Happening, Told]


class LotHistoryModel(HeadedModel):
    """The newest entry first."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._rows: tuple[Row, ...] = ()

    def show_rows(self, rows: Sequence[Row]) -> None:
        """Show these instead."""
        self.beginResetModel()
        self._rows = tuple(rows)
        self.endResetModel()

    def row(self, number: int) -> Row | None:
        return self._rows[number] if 0 <= number < len(self._rows) else None

    def rowCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else 4

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role == Qt.ItemDataRole.ToolTipRole and index.isValid() and index.column() == WHAT:
            return tip(self._rows[index.row()][1].line)
        if not index.isValid() or role != Qt.ItemDataRole.DisplayRole:
            return None
        one, told = self._rows[index.row()]
        match index.column():
            case 0:
                return moment(one.at)
            case 1:
                return on_screen(one.by, LONGEST_LINE) or "–"
            case 2:
                return topic_words(one.topic)
        return on_screen(told.line.replace("\n", " "), LONGEST_WHAT)

    def headings(self) -> Sequence[str]:
        return (self.tr("When"), self.tr("Who"), self.tr("Kind"), self.tr("What was kept"))


FIELDS: tuple[Field[Row], ...] = (
    Field("number", lambda row: row[0].number),
    Field("at", lambda row: row[0].at),
    Field("by", lambda row: row[0].by),
    Field("kind", lambda row: topic_words(row[0].topic)),
    Field("what", lambda row: row[1].what),
    Field("replaces", lambda row: row[1].replaces),
    Field("why", lambda row: row[0].why),
)


def history_file(rows: Sequence[Row], underway: Underway = unwatched) -> FlatTable:
    """The entries as a table, oldest first. Headings are put into words by `table_headings`."""
    return table_of(FIELDS, sorted(rows, key=_number), underway)


def rows_of(happened: Sequence[Happening], speaker: Speaker) -> tuple[Row, ...]:
    """Each entry with its words, the newest first."""
    return tuple((one, speaker.told(one)) for one in reversed(happened))


def _number(row: Row) -> int:
    return row[0].number
