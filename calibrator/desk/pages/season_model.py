"""The lots of a season as a table: searched as one types, sorted by any column, told only where it is looked at."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from PySide6.QtCore import QModelIndex, QObject, QPersistentModelIndex, Qt

from calibrator.desk import shown
from calibrator.desk.plain_text import on_screen, tip
from calibrator.desk.season.facts import SeasonFacts
from calibrator.desk.season.words import (
    density_text,
    interval_text,
    mass_text,
    named_with_state,
    signed_money_text,
    wanting_words,
    weighed_words,
)
from calibrator.desk.speech import day_text
from calibrator.desk.widgets.headed_model import HeadedModel
from calibrator.model import SeasonLot, UnitSystem
from calibrator.science.lot_kinds import change_share

Index = QModelIndex | QPersistentModelIndex
FIELDS = (
    "lot", "arrived", "density", "interval", "change", "feeding", "solids", "money", "scoop", "product",
    "weighed", "note",
)  # fmt: skip
FIGURES = frozenset(FIELDS.index(name) for name in ("density", "interval", "change", "feeding", "solids", "money"))
_ANSWERED = frozenset(
    int(role)
    for role in (
        Qt.ItemDataRole.DisplayRole,
        Qt.ItemDataRole.ToolTipRole,
        Qt.ItemDataRole.UserRole,
        Qt.ItemDataRole.TextAlignmentRole,
    )
)
"""Of a dozen questions that a table asks for each cell it paints, those that are answered."""


class SeasonModel(HeadedModel):
    """Lots, the newest first until sorted; the place of the lot in the season is the user data of each cell."""

    figures = FIGURES

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._facts: SeasonFacts | None = None
        self._shown: list[int] = []
        self._order: list[int] = []
        self._texts: list[str] = []
        self._wanted: list[str] = []

    def show_season(self, facts: SeasonFacts) -> None:
        """Show these lots, searched as before."""
        self.beginResetModel()
        self._facts = facts
        self._texts = [_searched(facts, lot) for lot in facts.lots]
        self._order = list(range(len(facts.lots)))[::-1]
        self._shown = self._found()
        self.endResetModel()

    def search(self, text: str) -> None:
        """Keep the lots in view in which every word occurs: in number, state, product, scoop, plant, note, initials."""
        self.beginResetModel()
        self._wanted = text.casefold().split()
        self._shown = self._found()
        self.endResetModel()

    def sort(self, column: int, order: Qt.SortOrder = Qt.SortOrder.AscendingOrder) -> None:
        facts = self._facts
        if facts is None or not 0 <= column < len(FIELDS):
            return
        by = _SORTED.get(FIELDS[column], _by_time)
        self.layoutAboutToBeChanged.emit()
        self._order.sort(key=lambda place: by(facts, place), reverse=order is Qt.SortOrder.DescendingOrder)
        self._shown = self._found()
        self.layoutChanged.emit()

    def _found(self) -> list[int]:
        texts, found = self._texts, list(self._order)
        for word in self._wanted:
            found = [place for place in found if word in texts[place]]
        return found

    def place(self, row: int) -> int:
        """Where the lot of a row stands in the season; −1 for no row."""
        return self._shown[row] if 0 <= row < len(self._shown) else -1

    def rowCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self._shown)

    def columnCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(FIELDS)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role not in _ANSWERED or not index.isValid() or self._facts is None:
            return None
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole):
            told = _TOLD[FIELDS[index.column()]](self._facts, self._shown[index.row()])
            if role == Qt.ItemDataRole.DisplayRole:
                return on_screen(told)
            return tip(_why_not_told(self._facts, self._shown[index.row()], FIELDS[index.column()]) or told)
        if role == Qt.ItemDataRole.UserRole:
            return self._shown[index.row()]
        return self.side(index.column()) if role == Qt.ItemDataRole.TextAlignmentRole else None

    @property
    def _metric(self) -> bool:
        return self._facts is not None and self._facts.farm.units is UnitSystem.METRIC

    def headings(self) -> Sequence[str]:
        names = {
            "lot": self.tr("Lot"),
            "product": self.tr("Product"),
            "arrived": self.tr("Arrived"),
            "scoop": self.tr("Scoop"),
            "density": self.tr("Density"),
            "interval": self.tr("95 % within, g/mL") if self._metric else self.tr("95 % within, oz/qt"),
            "change": self.tr("Change"),
            "feeding": self.tr("Filled as before"),
            "solids": self.tr("Solids then"),
            "money": self.tr("Money a day"),
            "weighed": self.tr("Weighed"),
            "note": self.tr("Note"),
        }
        return [names[field] for field in FIELDS]


def _searched(facts: SeasonFacts, lot: SeasonLot) -> str:
    named = named_with_state(lot, facts.state(lot.lot_id))
    return f"{named} {lot.product} {lot.scoop_name} {lot.plant_code} {lot.note} {lot.by}".casefold()


def _change(facts: SeasonFacts, place: int) -> str:
    before = facts.before(place)
    return shown.signed_share(change_share(before, facts.lots[place])) if before else "–"


def _feeding(facts: SeasonFacts, place: int) -> str:
    meaning = facts.meaning(place)
    return mass_text(meaning.carried.mass_g, facts.farm.units) if meaning else "–"


def _solids(facts: SeasonFacts, place: int) -> str:
    meaning = facts.meaning(place)
    return shown.share(meaning.solids) if meaning and meaning.solids is not None else "–"


def _money(facts: SeasonFacts, place: int) -> str:
    meaning = facts.meaning(place)
    if meaning is None or meaning.money_a_day is None:
        return "–"
    return signed_money_text(meaning.money_a_day, facts.farm)


def _why_not_told(facts: SeasonFacts, place: int, field: str) -> str:
    """What has to be entered where solids or money are a dash; blank elsewhere."""
    meaning = facts.meaning(place) if field in ("solids", "money") else None
    if meaning is None or (field == "solids" and meaning.solids is not None):
        return ""
    return wanting_words(meaning)


def _interval(facts: SeasonFacts, place: int) -> str:
    lot = facts.lots[place]
    return interval_text(lot, facts.farm.units)


def _by_time(facts: SeasonFacts, place: int) -> Any:
    return place


_TOLD: dict[str, Callable[[SeasonFacts, int], str]] = {
    "lot": lambda facts, place: named_with_state(facts.lots[place], facts.state(facts.lots[place].lot_id)),
    "product": lambda facts, place: facts.lots[place].product or "–",
    "arrived": lambda facts, place: day_text(facts.lots[place].arrived_on),
    "scoop": lambda facts, place: facts.lots[place].scoop_name,
    "density": lambda facts, place: density_text(facts.lots[place], facts.farm.units),
    "interval": _interval,
    "change": _change,
    "feeding": _feeding,
    "solids": _solids,
    "money": _money,
    "weighed": lambda facts, place: weighed_words(facts.lots[place]),
    "note": lambda facts, place: facts.lots[place].note,
}
_SORTED: dict[str, Callable[[SeasonFacts, int], Any]] = {
    "lot": lambda facts, place: facts.lots[place].lot_number.casefold(),
    "product": lambda facts, place: facts.lots[place].product.casefold(),
    "arrived": lambda facts, place: (facts.lots[place].arrived_on is not None, str(facts.lots[place].arrived_on)),
    "scoop": lambda facts, place: facts.lots[place].scoop_name.casefold(),
    "density": lambda facts, place: facts.lots[place].density_g_per_ml,
    "interval": lambda facts, place: facts.lots[place].density_u_g_per_ml,
    "weighed": lambda facts, place: facts.lots[place].fills,
    "note": lambda facts, place: facts.lots[place].note.casefold(),
}
"""By what a column is sorted; the others, which rest on the lot before, by time."""
