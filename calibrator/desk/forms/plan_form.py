"""A plan: its groups of calves, its water, its vessel, and the counts of its table."""

from __future__ import annotations

from dataclasses import replace
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.cold_fields import ColdFields
from calibrator.desk.forms.enter import enter_moves_on
from calibrator.desk.forms.fields import Captioned, TextField
from calibrator.desk.forms.group_editor import GroupEditor
from calibrator.desk.forms.history import HistoryList
from calibrator.desk.forms.scoop_rule_fields import ScoopRuleFields
from calibrator.desk.forms.warmth_fields import WarmthFields
from calibrator.desk.parts import button, card, label, row, scrolled
from calibrator.desk.sheets import powder_in_use, read_counts, suggested_range
from calibrator.desk.standing import standing
from calibrator.desk.table_words import hot, scald_words
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.count_field import CountField
from calibrator.desk.widgets.fold import Fold
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.model import Plan, PlanGroup, Scoop, UnitSystem, Vessel, WeighIn, new_id
from calibrator.science.errors import CannotCompute
from calibrator.science.mixing import Powder
from calibrator.units import Kind, show_both

MOST_ALLOWANCE_PCT = 50.0
MOST_TIMES = 10  # a last count so far above the calves of today is asked about
USUAL_WATER = {UnitSystem.FARM: "110 °F", UnitSystem.METRIC: "43 °C"}


class PlanForm(QWidget):
    """Edits one plan. `kept` tells its id, `left` that the person went back without keeping."""

    kept = Signal(str)
    left = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self.plan: Plan | None = None
        self._powder: Powder | None = None
        self._touched = self._range_touched = False
        self.groups: list[GroupEditor] = []
        self.heading = label("", "heading", wrap=False)
        self.name = TextField(self.tr("Na&me of the plan"))
        self.add = button(self.tr("&Add a group of calves"), self._add_group)
        self.history = HistoryList(desk)
        self._make_water_fields()
        self._make_count_fields()
        self.warmth = WarmthFields(desk)
        self.scoop_rule = ScoopRuleFields()
        self.more_scoopfuls = Fold(
            self.tr("More about scoopfuls: part fills, one kind, by weight"),
            self.tr("Less about scoopfuls"),
            self.scoop_rule,
        )
        self.cold = ColdFields(desk)
        self.more_cold = Fold(
            self.tr("More about cold weather: powder, a further feeding"), self.tr("Less about cold weather"), self.cold
        )
        self.more_warmth = Fold(
            self.tr("More about warmth: powder, mix, pace of feeding"), self.tr("Less about warmth"), self.warmth
        )
        self.keep_button = button(self.tr("&Keep the plan"), self.keep, "main")
        self.back = button(self.tr("&Go back without keeping"), self._leave)
        self.retire = button(self.tr("Put this plan asi&de"), self._ask_retire, "link")
        self._lay_out()
        for field in (
            self.name,
            self.temperature,
            self.allowance,
            self.counts,
            self.warmth,
            self.cold,
            self.scoop_rule,
        ):
            field.edited.connect(self._typed)
        enter_moves_on(self)  # keeping has its button
        desk.changed.connect(self._mix_anew)

    def edit(self, plan: Plan | None) -> None:
        """Show a plan, or an empty form for a new one."""
        self.plan, self._range_touched = plan, plan is not None
        self.heading.setText(self.tr("Change the plan") if plan else self.tr("A new plan"))
        self.retire.setVisible(plan is not None)
        self._powder = self._powder_now()
        self.name.set_text(plan.name if plan else "")
        self._show_groups(plan.groups if plan else (None,))
        self._show_water(plan)
        self.warmth.load(plan.warmth if plan else None)
        self.more_warmth.unfold(bool(plan and plan.warmth))
        self.cold.load(plan.cold if plan else None)
        self.more_cold.unfold(bool(plan and plan.cold))
        self.scoop_rule.load(plan.scoopfuls if plan else None, self._scoops())
        self.more_scoopfuls.unfold(bool(plan and plan.scoopfuls))
        self._show_counts(plan)
        self.history.show_of(Plan, plan.id if plan else "")
        self._mix_anew()
        self._touched = False

    def begin(self) -> None:
        """Put the cursor into the first field."""
        self.name.line.setFocus(Qt.FocusReason.OtherFocusReason)

    def leave(self) -> bool:
        """What is typed stays in the form while the window is open."""
        return True

    @property
    def typed(self) -> bool:
        return self._touched

    def keep(self) -> None:
        """Keep the plan as typed; where something is missing, say so and go there."""
        plan = self._made()
        if plan is None:
            return
        calves = sum(group.calves for group in plan.groups)
        if calves and plan.count_to > MOST_TIMES * calves:
            question = self.tr("The table would go up to {most}, and today you have {calves}. Keep it so?")
            told = question.format(most=counted.calves(plan.count_to), calves=counted.calves(calves))
            self.desk.ask.confirm(told, self.tr("Keep it so"), partial(self._keep, plan))
            return
        self._keep(plan)

    def _keep(self, plan: Plan) -> None:
        kept = self.desk.keep(plan)
        if kept is not None:
            self._touched = False
            self.desk.say(self.tr("{name} is kept.").format(name=kept.name))
            self.kept.emit(kept.id)

    def _made(self) -> Plan | None:
        farm = self.desk.farm
        sound = [self.name.filled(), *(g.understood() for g in self.groups), self.temperature.understood()]
        sound += [self.allowance.understood(), self.warmth.understood(), self.cold.understood()]
        sound.append(self._counts_understood())
        groups = [group for editor in self.groups if (group := editor.group())]
        water, allowance = self.temperature.value(), self.allowance.share()
        counts = read_counts(self.counts.text())
        if farm is None or water is None or counts is None or not all(sound):
            self._go_to_wrong()
            return None
        plan = self.plan or Plan(id=new_id(), farm_id=farm.id, name="", groups=())
        return replace(
            plan,
            name=self.name.text(),
            groups=tuple(groups),
            allowance_share=allowance or 0.0,
            water_temperature_c=water,
            vessel_id=self.vessel.currentData() or None,
            count_from=self.count_from.count(),
            count_to=self.count_to.count(),
            count_step=self.count_step.count(),
            counts=counts,
            warmth=self.warmth.made(),
            cold=self.cold.made(),
            scoopfuls=self.scoop_rule.made(),
        )

    def _counts_understood(self) -> bool:
        if read_counts(self.counts.text()) is None:
            self.counts.say(self.tr("Write whole numbers with commas between, like 109, 111, 120."), wrong=True)
            return False
        if self.count_to.count() < self.count_from.count():
            self._to.say(self.tr("The last count is below the first one."), wrong=True)
            return False
        self._to.say("")
        return True

    def _go_to_wrong(self) -> None:
        for widget in self.findChildren(QWidget):
            if widget.property("state") == "wrong" and widget.focusPolicy() != Qt.FocusPolicy.NoFocus:
                widget.setFocus(Qt.FocusReason.OtherFocusReason)
                return
        for editor in self.groups:
            if editor.means() is None:
                editor.finished.setFocus(Qt.FocusReason.OtherFocusReason)
                return

    def _powder_now(self) -> Powder | None:
        farm = self.desk.farm
        if farm is None:
            return None
        try:
            return powder_in_use(self.desk.records, standing(self.desk.records, farm, self.desk.clock().date())).powder
        except CannotCompute:
            return None

    def _load_new(self, editor: GroupEditor) -> None:
        """A new group begins with the powder of a feeding that the newest line of the lot in use was drawn for, as it
        was typed at the weigh-in.
        """
        farm = self.desk.farm
        known = standing(self.desk.records, farm, self.desk.clock().date()).in_use if farm else None
        if known is None or known.sign_off is None or not known.marks:
            editor.load(None)
            return
        signed_g = known.marks[-1].target_mass_g
        editor.load(None, signed_g)
        editor.rate.mass.set_value(signed_g, self.desk.records.find(WeighIn, known.sign_off.weigh_in_id).target_typed)

    def _show_groups(self, groups: tuple[PlanGroup | None, ...]) -> None:
        for editor in list(self.groups):
            self._drop(editor)
        for group in groups:
            self._place_group(group)

    def _add_group(self) -> None:
        editor = self._place_group(None)
        self._typed()
        editor.name.line.setFocus(Qt.FocusReason.OtherFocusReason)

    def _place_group(self, group: PlanGroup | None) -> GroupEditor:
        editor = GroupEditor(self.desk)
        if group is None:
            self._load_new(editor)
        else:
            editor.load(group)
        editor.edited.connect(self._typed)
        editor.calves.counted.connect(self._suggest_range)
        editor.remove_wanted.connect(self._remove_group)
        editor.rearranged.connect(self._tie_tabs)
        self.groups.append(editor)
        self._groups.addWidget(editor)
        self._number_groups()
        self._mix_anew()
        return editor

    def _remove_group(self) -> None:
        editor = self.sender()
        if isinstance(editor, GroupEditor) and len(self.groups) > 1:
            self._drop(editor)
            self._number_groups()
            self._typed()
            self.add.setFocus(Qt.FocusReason.OtherFocusReason)

    def _drop(self, editor: GroupEditor) -> None:
        self.groups.remove(editor)
        self._groups.removeWidget(editor)
        editor.hide()
        editor.deleteLater()

    def _number_groups(self) -> None:
        for number, editor in enumerate(self.groups, start=1):
            editor.show_place(number, len(self.groups) == 1)
        self._tie_tabs()

    def _tie_tabs(self) -> None:
        """Cards that came later are still reached in the order they stand in."""
        before: QWidget = self.name.line
        for editor in self.groups:
            for widget in editor.in_order():
                QWidget.setTabOrder(before, widget)
                before = widget
        QWidget.setTabOrder(before, self.add)

    def _typed(self) -> None:
        self._touched = True
        self._mix_anew()

    def _mix_anew(self) -> None:
        water = self.temperature.value()
        known = water is not None
        self.scald.setVisible(known and hot(water or 0.0))
        if water is None:
            return
        self.scald.setText(scald_words(show_both(water, Kind.TEMPERATURE, self.desk.system)))
        for editor in self.groups:
            editor.mixed_with(self._powder, water)

    def _suggest_range(self) -> None:
        if self._range_touched:
            return
        low, high = suggested_range(sum(editor.calves.count() for editor in self.groups))
        for field, value in ((self.count_from, low), (self.count_to, high)):
            field.set_count(value)

    def _touch_range(self) -> None:
        self._range_touched = True
        self._counts_understood()
        self._typed()

    def _show_water(self, plan: Plan | None) -> None:
        self.vessel.clear()
        self.vessel.addItem(self.tr("none: no limit"), "")
        for vessel in self._vessels():
            self.vessel.addItem(vessel.name, vessel.id)
        self.vessel.setCurrentIndex(max(0, self.vessel.findData(plan.vessel_id if plan else "")))
        if plan:
            self.temperature.set_value(plan.water_temperature_c)
        else:
            self.temperature.set_text(USUAL_WATER[self.desk.system])
        self.allowance.set_share(plan.allowance_share if plan else 0.0)

    def _vessels(self) -> list[Vessel]:
        farm = self.desk.farm
        every = self.desk.records.every(Vessel, farm.id) if farm else []
        used = self.plan.vessel_id if self.plan else None
        return [vessel for vessel in every if vessel.retired_on is None or vessel.id == used]

    def _scoops(self) -> list[Scoop]:
        farm = self.desk.farm
        every = self.desk.records.every(Scoop, farm.id) if farm else []
        used = self.plan.scoopfuls.scoop_id if self.plan and self.plan.scoopfuls else ""
        return [scoop for scoop in every if scoop.retired_on is None or scoop.id == used]

    def _show_counts(self, plan: Plan | None) -> None:
        values = (plan.count_from, plan.count_to, plan.count_step) if plan else (0, 0, 1)
        fields = (self.count_from, self.count_to, self.count_step)
        for field, value in zip(fields, values, strict=True):
            field.set_count(value)
        self.counts.set_text(", ".join(str(count) for count in plan.counts) if plan else "")
        self._to.say("")

    def _make_water_fields(self) -> None:
        aim = self.tr("Common practice: 108–110 °F (42–43 °C) for mixing.")
        self.temperature = Amount(
            self.desk, self.tr("Temperat&ure of the water"), Kind.TEMPERATURE, aim, lowest=0.0, highest=100.0
        )
        self.scald = label("", "caution")
        note = self.tr("Mixed on top, for what stays behind.")
        self.allowance = Amount(
            self.desk,
            self.tr("Extra for &hoses and pails"),
            Kind.PERCENT,
            note,
            lowest=0.0,
            highest=MOST_ALLOWANCE_PCT,
        )
        self.vessel = NameChoice()
        self.vessel.activated.connect(self._typed)
        self._vessel = Captioned(self.tr("Mi&xed in"), self.vessel, self.tr("Vessels are entered in the set-up."))

    def _make_count_fields(self) -> None:
        self.count_from, self.count_to = CountField(), CountField()
        self.count_step = CountField(1)
        self._from = Captioned(self.tr("&First count"), self.count_from)
        self._to = Captioned(self.tr("Last c&ount"), self.count_to)
        self._step = Captioned(self.tr("&In steps of"), self.count_step)
        note = self.tr("Always in the table, like 109, 111, 120. Today's count is in it anyway.")
        self.counts = TextField(self.tr("&Counts of your own"), note, longest=200)
        for field in (self.count_from, self.count_to, self.count_step):
            field.counted.connect(self._touch_range)

    def _water_card(self) -> QFrame:
        fields = row(self.temperature, self.allowance, self._vessel, spacing=2 * SPACE)
        for place in range(3):
            fields.setStretch(place, 1)
        return card(label(self.tr("Water and vessel"), "heading"), fields, self.scald, self.more_warmth, self.more_cold)

    def _counts_card(self) -> QFrame:
        fields = row(self._from, self._to, self._step, self.counts, spacing=2 * SPACE)
        for place, stretch in enumerate((2, 2, 2, 5)):
            fields.setStretch(place, stretch)
        return card(label(self.tr("Rows of the table"), "heading"), fields, self.more_scoopfuls)

    def _lay_out(self) -> None:
        inner = QWidget()
        body = QVBoxLayout(inner)
        body.setContentsMargins(0, 0, 0, 0)
        body.setSpacing(int(1.5 * SPACE))
        self._groups = QVBoxLayout()
        self._groups.setSpacing(int(1.5 * SPACE))
        body.addWidget(card(self.heading, self.name))
        body.addLayout(self._groups)
        body.addLayout(row(self.add, None))
        for widget in (self._water_card(), self._counts_card(), self.history):
            body.addWidget(widget)
        body.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(int(1.5 * SPACE))
        area = scrolled(inner)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # the fields in it scroll into view as one reaches them
        layout.addWidget(area, 1)
        layout.addLayout(row(self.keep_button, self.back, None, self.retire))

    def _leave(self) -> None:
        self._touched = False
        self.left.emit()

    def _ask_retire(self) -> None:
        if self.plan is None:
            return
        question = self.tr("Put {name} aside? It leaves the list; what was printed from it stays in the records.")
        self.desk.ask.confirm(question.format(name=self.plan.name), self.tr("Put aside"), self._retire)

    def _retire(self) -> None:
        if self.plan is None:
            return
        aside = replace(self.plan, retired_on=self.desk.clock().date())
        if self.desk.keep(aside) is not None:
            self._touched = False
            self.kept.emit("")
