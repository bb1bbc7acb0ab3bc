"""Which lots the table shows: by words, by product, by year, by state; all of them together."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import (
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QSignalBlocker,
    QSortFilterProxyModel,
    Qt,
    Signal,
)
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QSizePolicy, QWidget

from calibrator.desk.in_use import LotState
from calibrator.desk.pages.lots_table import SORT_ROLE, LotsModel
from calibrator.desk.plain_text import LONGEST_LINE, on_screen
from calibrator.desk.standing import LotStanding
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.desk.words import state_words

AROUND_PX = 56  # frame, air and arrow of a closed box


class LotsFilter(QSortFilterProxyModel):
    """The table's rows that have all that is asked for; a blank asks for nothing."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self.product, self.year, self.state = "", 0, ""
        self.setSortRole(SORT_ROLE)
        self.setFilterCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self.setFilterKeyColumn(-1)

    def ask_for(self, product: str, year: int, state: str) -> None:
        """Show only lots of this product, year of arrival and state."""
        self.product, self.year, self.state = product, year, state
        self.invalidate()

    def filterAcceptsRow(self, row: int, parent: QModelIndex | QPersistentModelIndex) -> bool:
        model = self.sourceModel()
        return isinstance(model, LotsModel) and self._fits(model.lot_at(row)) and super().filterAcceptsRow(row, parent)

    def _fits(self, known: LotStanding) -> bool:
        return (
            self.product in ("", known.lot.product)
            and self.year in (0, year_of(known))
            and self.state in ("", known.state)
        )


class LotsFilterBoxes(QWidget):
    """Three boxes that offer what the farm's lots have, each with *all* on top."""

    changed = Signal(str, int, str)

    def __init__(self) -> None:
        super().__init__()
        self.product, self.year, self.state = NameChoice(), NameChoice(), NameChoice()
        self.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Preferred)
        line = QHBoxLayout(self)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(SPACE)
        for box, name in (
            (self.product, self.tr("Product")), (self.year, self.tr("Year")), (self.state, self.tr("Status"))
        ):  # fmt: skip
            box.setAccessibleName(name)
            box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
            box.currentIndexChanged.connect(self._say)
            line.addWidget(box)

    def offer(self, lots: Sequence[LotStanding]) -> None:
        """Offer what these lots have; what is chosen stays where they still have it."""
        products = sorted({known.lot.product for known in lots if known.lot.product}, key=str.casefold)
        years = sorted({year for known in lots if (year := year_of(known))}, reverse=True)
        states = [state for state in LotState if any(known.state is state for known in lots)]
        _fill(self.product, self.tr("all products"), "", [(on_screen(one, LONGEST_LINE), one) for one in products])
        _fill(self.year, self.tr("all years"), 0, [(str(one), one) for one in years])
        _fill(self.state, self.tr("any status"), "", [(state_words(one), one.value) for one in states])
        self._say()

    def clear(self) -> None:
        """Ask for nothing."""
        for box in (self.product, self.year, self.state):
            box.setCurrentIndex(0)

    def _say(self) -> None:
        chosen = (self.product.currentData(), self.year.currentData(), self.state.currentData())
        if all(one is not None for one in chosen):
            self.changed.emit(*chosen)


def year_of(known: LotStanding) -> int:
    """The year in which a lot came; 0 where nobody knows."""
    return known.lot.arrived_on.year if known.lot.arrived_on else 0


def _fill(box: QComboBox, every: str, none: object, choices: Sequence[tuple[str, object]]) -> None:
    blocker = QSignalBlocker(box)
    before = box.currentData()
    box.clear()
    for text, value in ((every, none), *choices):
        box.addItem(text, value)
    box.ensurePolished()
    box.setMinimumWidth(box.fontMetrics().horizontalAdvance(every) + AROUND_PX)
    box.setCurrentIndex(max(0, box.findData(before) if before is not None else 0))
    box.view().setMinimumWidth(box.view().sizeHintForColumn(0) + 2 * SPACE)
    blocker.unblock()
