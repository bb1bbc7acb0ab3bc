"""Which counts of calves a plan's table has rows for: those about today's, unless somebody types others."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from calibrator.desk.forms.fields import Captioned, TextField
from calibrator.desk.parts import row
from calibrator.desk.sheets import read_counts
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.count_field import CountField
from calibrator.desk.widgets.saying import Held
from calibrator.model import Plan, PlanGroup
from calibrator.science.errors import CannotCompute
from calibrator.science.feeding import ROWS_ABOUT, counts_of

LEAST_RUN = 3  # counts in a row that are told by the first and the last


class TableRows(QWidget):
    """First and last count, the step between them, and counts that are in the table whatever those are.

    It is told which rows each group gets of these.
    """

    edited = Signal()

    def __init__(self) -> None:
        super().__init__()
        # Signs of less and more, which no language writes otherwise: so many about today's count.
        self.first, self.last = CountField(blank=f"−{ROWS_ABOUT}"), CountField(blank=f"+{ROWS_ABOUT}")
        self.step = CountField(1)
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
        self.by_group = Held("quiet", lines=2)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(SPACE)
        layout.addLayout(fields)
        layout.addWidget(self.by_group)
        for field in (self.first, self.last, self.step):
            field.counted.connect(self._count)
        self.own.edited.connect(self.edited)

    def load(self, plan: Plan | None) -> None:
        """Show a plan's rows, or none yet."""
        values = (plan.count_from, plan.count_to, plan.count_step) if plan else (0, 0, 1)
        for field, value in zip((self.first, self.last, self.step), values, strict=True):
            field.set_count(value)
        self.own.set_text(", ".join(str(count) for count in plan.counts) if plan else "")
        self._last.say("")

    def tell(self, groups: Sequence[PlanGroup]) -> None:
        """Say which rows each group has by what is typed."""
        self.by_group.setText(self._rows_of(groups))

    def _rows_of(self, groups: Sequence[PlanGroup]) -> str:
        own, step = self.counts() or (), self.step.count()
        first, last = self.first.count(), self.last.count()
        plan = Plan(
            id="", farm_id="", name="", groups=tuple(groups),
            count_from=first, count_to=last, count_step=step, counts=own,
        )  # fmt: skip
        try:
            counts = [counts_of(plan, group) for group in groups]
        except CannotCompute:
            return ""
        rows = [runs(told, step) or "–" for told in counts]
        if len(groups) > 1:
            one = self.tr("{group}: {counts}")
            rows = [one.format(group=group.name, counts=told) for group, told in zip(groups, rows, strict=True)]
        told = self.tr("Rows – {rows}.").format(rows="; ".join(rows))
        if not last:
            told += " " + self.tr("They follow today's number of calves.")
        if own and len(groups) > 1:
            told += " " + self.tr("A count of your own goes to the group with the nearest number of calves.")
        return told

    def counts(self) -> tuple[int, ...] | None:
        """The counts of one's own; None where they are not understood."""
        return read_counts(self.own.text())

    def understood(self) -> bool:
        """Whether they can be kept; says beneath what is wrong."""
        if self.counts() is None:
            self.own.say(self.tr("Write whole numbers with commas between, like 109, 111, 120."), wrong=True)
            return False
        if self.last.count() < self.first.count():
            below = self.tr("The last count is below the first one.")
            missing = self.tr("Type the last count too, or leave both empty.")
            self._last.say(below if self.last.count() else missing, wrong=True)
            return False
        self._last.say("")
        return True

    def _count(self) -> None:
        self.understood()
        self.edited.emit()


def runs(counts: Sequence[int], step: int) -> str:
    """Counts as people write them: "20–28, 70"."""
    told: list[list[int]] = []
    for count in counts:
        if told and count - told[-1][-1] == step:
            told[-1].append(count)
        else:
            told.append([count])
    texts = ([f"{run[0]}–{run[-1]}"] if len(run) >= LEAST_RUN else map(str, run) for run in told)
    return ", ".join(text for run in texts for text in run)
