"""What every form has in common: a telling that is loaded, fields that are watched, a next telling made."""

from __future__ import annotations

from datetime import date
from typing import Generic, TypeVar

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QAbstractButton, QComboBox, QLineEdit, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.enter import enter_moves_on
from calibrator.desk.theme import ROWS
from calibrator.desk.widgets.quantity_field import QuantityField
from calibrator.model import Instrument, Lot, Scale, Scoop, Vessel

N = TypeVar("N", Lot, Scale, Scoop, Vessel, Instrument)


class Form(QWidget, Generic[N]):
    """Fields over one thing. Subclasses fill `body`, `fill_in` and `made`.

    `typed` tells whether the person has changed anything since `load`; what is typed is never thrown away
    by reading the records anew.
    """

    edited = Signal()
    ended = Signal()
    """What was typed is to be kept: a question was answered, or Enter pressed in the last field, where `enter_keeps`
    says that this keeps it."""
    enter_keeps = False
    kind: type[N]

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self.thing: N | None = None
        self._loaded: list[object] | None = None
        self.body = QVBoxLayout(self)
        self.body.setContentsMargins(0, 0, 0, 0)
        self.body.setSpacing(ROWS)

    def load(self, thing: N | None) -> None:
        """Show one telling, or an empty form for a new thing."""
        self.thing = thing
        self.fill_in(thing)
        self._loaded = self._contents()
        self.edited.emit()

    def enter_moves_on(self) -> None:
        """Enter in a field goes on to the next one; nothing is kept by it, unless by the last where `enter_keeps`."""
        enter_moves_on(self, self._to_next)

    def _to_next(self) -> None:
        here = self.window().focusWidget()
        for _ in range(len(self.findChildren(QAbstractButton)) + 1):
            self.focusNextChild()
            there = self.window().focusWidget()
            if self.enter_keeps and not self.isAncestorOf(there):
                here.setFocus()
                self.ended.emit()
                return
            # A suggestion is taken on purpose only, never by an Enter too many.
            if there.property("kind") != "link":
                return

    def fill_in(self, thing: N | None) -> None:
        """Put the telling into the fields."""

    def made(self) -> N | None:
        """The next telling as typed; None where something is missing, which is said beside the field."""
        return None

    def take(self) -> N | None:
        """As `made`; where a field is to be mended the cursor goes there."""
        made = self.made()
        wrong = [] if made is not None else self._wrong_lines()
        if wrong and self.window().focusWidget() not in wrong:
            wrong[0].setFocus(Qt.FocusReason.OtherFocusReason)
            wrong[0].selectAll()
        return made

    def _wrong_lines(self) -> list[QLineEdit]:
        """The fields in which something is wrong, as they are read."""
        lines = [line for line in self.findChildren(QLineEdit) if line.isVisibleTo(self)]
        wrong = [line for line in lines if line.property("state") == "wrong"]
        return sorted(wrong, key=lambda line: line.mapTo(self, line.rect().topLeft()).toTuple()[::-1])

    @property
    def typed(self) -> bool:
        """Whether something is typed that was not kept yet."""
        return self._loaded is not None and self._contents() != self._loaded

    def retired_on(self) -> date | None:
        """A correction leaves a retired thing retired."""
        return None if self.thing is None or isinstance(self.thing, Lot) else self.thing.retired_on

    def start(self) -> None:
        """Put the cursor into the first field."""
        lines = [line for line in self.findChildren(QLineEdit) if line.isVisibleTo(self)]
        if lines:
            lines[0].setFocus(Qt.FocusReason.OtherFocusReason)
            lines[0].selectAll()

    def _contents(self) -> list[object]:
        # A quantity is the same whatever unit it is told in: changing units is not typing.
        boxes = self.findChildren(QuantityField)
        own = {box.line for box in boxes}
        lines = [line.text() for line in self.findChildren(QLineEdit) if line not in own]
        choices = [choice.currentIndex() for choice in self.findChildren(QComboBox)]
        ticks = [b.isChecked() for b in self.findChildren(QAbstractButton) if b.isCheckable()]
        return [[_meaning(box) for box in boxes], lines, choices, ticks]


def _meaning(box: QuantityField) -> float | str:
    found = box.quantity()
    return found.value if found else box.text()
