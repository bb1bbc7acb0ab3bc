"""Which counts of calves a plan's table has rows for. They follow the calves until somebody types others."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from calibrator.desk.forms.fields import Captioned, TextField
from calibrator.desk.parts import row
from calibrator.desk.sheets import read_counts, suggested_range
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.count_field import CountField
from calibrator.model import Plan


class TableRows(QWidget):
    """First and last count, the step between them, and counts that are in the table whatever those are."""

    edited = Signal()

    def __init__(self) -> None:
        super().__init__()
        self._touched = False
        self.first, self.last, self.step = CountField(), CountField(), CountField(1)
        self._last = Captioned(self.tr("Last c&ount"), self.last)
        note = self.tr("Always in the table, like 109, 111, 120. Today's count is in it anyway.")
        self.own = TextField(self.tr("&Counts of your own"), note, longest=200)
        fields = row(
            Captioned(self.tr("&First count"), self.first),
            self._last,
            Captioned(self.tr("&In steps of"), self.step),
            self.own,
            spacing=2 * SPACE,
        )
        fields.setContentsMargins(0, 0, 0, 0)
        for place, stretch in enumerate((2, 2, 2, 5)):
            fields.setStretch(place, stretch)
        self.setLayout(fields)
        for field in (self.first, self.last, self.step):
            field.counted.connect(self._count)
        self.own.edited.connect(self.edited)

    def load(self, plan: Plan | None) -> None:
        """Show a plan's rows, or none yet."""
        self._touched = plan is not None
        values = (plan.count_from, plan.count_to, plan.count_step) if plan else (0, 0, 1)
        for field, value in zip((self.first, self.last, self.step), values, strict=True):
            field.set_count(value)
        self.own.set_text(", ".join(str(count) for count in plan.counts) if plan else "")
        self._last.say("")

    def follow(self, calves: int) -> None:
        """Suggest the rows around so many calves, unless others were typed."""
        if self._touched:
            return
        low, high = suggested_range(calves)
        self.first.set_count(low)
        self.last.set_count(high)

    def counts(self) -> tuple[int, ...] | None:
        """The counts of one's own; None where they are not understood."""
        return read_counts(self.own.text())

    def understood(self) -> bool:
        """Whether they can be kept; says beneath what is wrong."""
        if self.counts() is None:
            self.own.say(self.tr("Write whole numbers with commas between, like 109, 111, 120."), wrong=True)
            return False
        if self.last.count() < self.first.count():
            self._last.say(self.tr("The last count is below the first one."), wrong=True)
            return False
        self._last.say("")
        return True

    def _count(self) -> None:
        self._touched = True
        self.understood()
        self.edited.emit()
