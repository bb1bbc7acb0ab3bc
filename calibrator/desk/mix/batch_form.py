"""Which batch a check belongs to: plan and group, calves, vessel, who mixed, what it is to be."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QComboBox, QVBoxLayout, QWidget

from calibrator.desk.batch_names import batch_checked, batch_name
from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.examples import GIVE_OR_TAKE, SOLIDS
from calibrator.desk.forms.fields import Captioned, TextField
from calibrator.desk.mix_batch import Batch, FarmNow, aims_differ, as_aimed, batch_of, together
from calibrator.desk.mix_checks import Aim
from calibrator.desk.plain_text import on_screen
from calibrator.desk.theme import ROWS
from calibrator.desk.widgets.count_field import CountField
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.desk.widgets.side_by_side import SideBySide
from calibrator.model import MixCheck, Plan, PlanGroup, Vessel
from calibrator.science.check import TOLERANCE_SHARE
from calibrator.units import Kind


class BatchForm(QWidget):
    """Follows the chart: choosing a group fills in calves, vessel and target, until the person types others.

    The choice of the group stands where the caller puts it: it decides what is right, so it comes first.
    """

    edited = Signal()

    def __init__(self, desk: Desk, group: NameChoice) -> None:
        super().__init__()
        self.desk = desk
        self._now: FarmNow | None = None
        self._own_target = False
        self._differ = False
        self._group_chosen = False
        self.group, self.vessel = group, NameChoice()
        for choice in (self.group, self.vessel):
            choice.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
            choice.setMinimumContentsLength(9)
        self.calves = CountField(0)
        self.feeder = TextField(self.tr("Mixed by"))
        self.target = Amount(
            desk, self.tr("Solids wanted, as mixed"), Kind.PERCENT, lowest=2, highest=40, examples=SOLIDS, example=False
        )
        self.tolerance = Amount(
            desk, self.tr("Give or take"), Kind.PERCENT, lowest=0.1, highest=5, examples=GIVE_OR_TAKE, example=False
        )
        self.tolerance.set_share(TOLERANCE_SHARE)
        self.group.activated.connect(self._group_picked)
        self.vessel.activated.connect(self.edited)
        self.calves.counted.connect(self._count)
        self.feeder.edited.connect(self.edited)
        self.target.edited.connect(self._type_target)
        self.tolerance.edited.connect(self.edited)
        self._lay_out()

    def show_farm(self, now: FarmNow) -> None:
        """Offer the farm's plans and vessels; what is chosen and typed stays where it still exists."""
        if now is self._now:
            return  # each digit of a day or a time asks again, and nearly all leave the lot and the plans as they are
        first, plan, was = self._now is None, self._chosen()[0], self._planned()
        followed = self.calves.count() == was
        self._now = now
        self._differ = aims_differ(now)
        self._offer(self.group, [one for plan in now.plans for one in self._batches(now, plan)])
        vessels = [(self.tr("not one of ours"), ""), *((v.name, v.id) for v in now.vessels)]
        self._offer(self.vessel, vessels)
        if first or (plan is None and now.plans):
            self._choose_group()
        elif followed and self._planned() != was:  # the plan feeds others since: none were typed that it would undo
            self.calves.set_count(self._planned())
            self._count()

    def batch(self) -> Batch | None:
        """The batch as the chart has it; None before the farm is known."""
        if self._now is None:
            return None
        plan, group = self._chosen()
        return batch_of(self._now, plan, group, self.calves.count(), self._vessel())

    def whose(self, *, by_volume: bool = False) -> str:
        """Whose batch this is, as it stands in the choice; blank where all groups want the same, unless a volume was
        read: of that each has its own."""
        return self.group.currentText() if self._differ or (by_volume and self.group.count() > 1) else ""

    @property
    def group_assumed(self) -> bool:
        """Whether nobody has said yet whose batch it is."""
        return not self._group_chosen

    def ask_again(self) -> None:
        """The next check may be of another group's batch: what was chosen for the last one is told as assumed."""
        self._group_chosen = False

    def is_same(self) -> None:
        """What is read next is the batch that was read last."""
        self._group_chosen = True

    def name_of(self, batch: Batch) -> str:
        """A batch as it stands in the choice."""
        return self.group.itemText(self._place_of(batch))

    def choose(self, batch: Batch) -> None:
        """Take another batch, as if the person had chosen it."""
        self.group.setCurrentIndex(self._place_of(batch))
        self._group_picked()
        if self.calves.count() != batch.calves:
            self.calves.set_count(batch.calves)
            self._count()

    def take_up(self, check: MixCheck) -> None:
        """Turn to the batch of an earlier check, where it is still mixed: that it is the same somebody said."""
        found = batch_checked(check, self._now.plans) if self._now else None
        place = self._place(found[0].id, found[1]) if found else -1
        if place == self.group.currentIndex():
            self.is_same()
        elif place >= 0:
            self.group.setCurrentIndex(place)
            self._group_picked()

    def _place_of(self, batch: Batch) -> int:
        return self._place(batch.plan.id if batch.plan else "", batch.group.name if batch.group else None)

    def _place(self, plan_id: str, group_name: str | None) -> int:
        wanted = plan_id, group_name
        return next((at for at in range(self.group.count()) if self.group.itemData(at) == wanted), -1)

    def aim(self) -> Aim | None:
        """What is wanted; None where it is not typed or not understood."""
        target, tolerance = self.target.share(), self.tolerance.share()
        return None if target is None or tolerance is None else Aim(target, tolerance)

    def _lay_out(self) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(ROWS)
        calves = Captioned(self.tr("Calves"), self.calves)
        layout.addWidget(SideBySide(Captioned(self.tr("Vessel"), self.vessel), calves, stretches=(3, 1)))
        layout.addWidget(self.feeder)
        layout.addWidget(SideBySide(self.target, self.tolerance))

    def _offer(self, box: QComboBox, items: Sequence[tuple[str, object]]) -> None:
        blocker = QSignalBlocker(box)
        kept = box.currentData()
        box.clear()
        for name, data in items:
            box.addItem(name, data)
        found = [n for n, (_, data) in enumerate(items) if data == kept]
        if found:
            box.setCurrentIndex(found[0])
        blocker.unblock()

    def _batches(self, now: FarmNow, plan: Plan) -> list[tuple[str, object]]:
        """What is mixed at one time: each group, and all together where they are mixed alike."""
        found: list[tuple[str, object]] = [
            (on_screen(batch_name(plan, group.name)), (plan.id, group.name)) for group in plan.groups
        ]
        if together(now, plan) is not None:
            found.append((on_screen(batch_name(plan, None)), (plan.id, None)))
        return found

    def _chosen(self) -> tuple[Plan | None, PlanGroup | None]:
        data = self.group.currentData()
        if self._now is None or not data:
            return None, None
        plan = next((p for p in self._now.plans if p.id == data[0]), None)
        group = next((g for g in plan.groups if g.name == data[1]), None) if plan else None
        return plan, group

    def _vessel(self) -> Vessel | None:
        return self._now.vessel(self.vessel.currentData()) if self._now else None

    def _group_picked(self) -> None:
        self._group_chosen = True
        self._choose_group()

    def _choose_group(self) -> None:
        plan, _ = self._chosen()
        if plan is not None:
            self.calves.set_count(self._planned())
            place = self.vessel.findData(plan.vessel_id or "")
            self.vessel.setCurrentIndex(max(0, place))
            self._own_target = False
        self._follow_chart()
        self.edited.emit()

    def _planned(self) -> int:
        """For how many calves the batch chosen is planned; 0 without a plan."""
        plan, group = self._chosen()
        return 0 if plan is None else sum(each.calves for each in (plan.groups if group is None else (group,)))

    def _follow_chart(self) -> None:
        batch = self.batch()
        if batch and batch.target_share and not self._own_target:
            self.target.set_share(as_aimed(batch.target_share))

    def _count(self) -> None:
        self._follow_chart()
        self.edited.emit()

    def _type_target(self) -> None:
        self._own_target = bool(self.target.text())
        self.edited.emit()
