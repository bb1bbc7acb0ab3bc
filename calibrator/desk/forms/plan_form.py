"""A plan: its groups of calves, its water, its vessel, and the counts of its table."""

from __future__ import annotations

from contextlib import suppress
from dataclasses import replace
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QPushButton, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.cold_fields import ColdFields
from calibrator.desk.forms.enter import enter_moves_on
from calibrator.desk.forms.examples import IN_HOSES
from calibrator.desk.forms.fields import TextField
from calibrator.desk.forms.group_editor import GroupEditor
from calibrator.desk.forms.history import HistoryList
from calibrator.desk.forms.plan_groups import PlanGroups
from calibrator.desk.forms.scoop_rule_fields import ScoopRuleFields
from calibrator.desk.forms.table_rows import TableRows
from calibrator.desk.forms.vessel_choice import VesselChoice
from calibrator.desk.forms.warmth_fields import WarmthFields
from calibrator.desk.label_news import label_news
from calibrator.desk.parts import button, card, column, label, row, scrolled
from calibrator.desk.plain_text import on_screen
from calibrator.desk.sheet_words import label_words
from calibrator.desk.sheets import powder_in_use
from calibrator.desk.signed_for import SignedFor, signed_for
from calibrator.desk.standing import standing
from calibrator.desk.table_words import scald_words
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.fold import Fold
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.model import Plan, Scoop, UnitSystem, new_id
from calibrator.science.errors import CannotCompute
from calibrator.science.heat import scalds
from calibrator.science.mixing import Powder
from calibrator.units import Kind

MOST_ALLOWANCE_PCT = 50.0
MOST_TIMES = 10  # a last count so far above the calves of today is asked about
USUAL_WATER = {UnitSystem.FARM: "110 °F", UnitSystem.METRIC: "43 °C"}
MOST_NAMES = 80  # letters of other plans' names; who has more knows that there are several


class PlanForm(QWidget):
    """Edits one plan. `kept` tells its id, `left` that the person went back without keeping.

    `vessel_wanted` leads to where vessels are entered; one that is entered there meanwhile is chosen here.
    """

    kept = Signal(str)
    left = Signal()
    vessel_wanted = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self.plan: Plan | None = None
        self._powder: Powder | None = None
        self._signed: SignedFor | None = None
        self._touched = False
        self.name = TextField(
            self.tr("Na&me of the plan"),
            self.tr("Titles the chart: all calves fed at one time. Groups come below."),
        )
        self.beside = label("", "quiet")
        self.group_list = PlanGroups(desk, self._to_next)
        self.history = HistoryList(desk)
        self._make_water_fields()
        self.rows = TableRows()
        self.warmth = WarmthFields(desk)
        self.scoop_rule = ScoopRuleFields()
        self.cold = ColdFields(desk)
        self._make_folds()
        self.keep_button = button(self.tr("&Keep the plan"), self.keep, "main")
        self.back = button(self.tr("&Go back without keeping"), self._leave)
        self.retire = button(self.tr("Put this plan asi&de"), self._ask_retire, "link")
        self._lay_out()
        for field in (
            self.name,
            self.temperature,
            self.allowance,
            self.rows,
            self.warmth,
            self.cold,
            self.scoop_rule,
            self.group_list,
            self.vessel_choice,
        ):
            field.edited.connect(self._typed)
        self.group_list.counted.connect(self._tell_rows)
        self.group_list.rearranged.connect(self._tie_tabs)
        enter_moves_on(self, self._to_next)  # keeping has its button
        desk.changed.connect(self._mix_anew)
        desk.changed.connect(self._vessels_anew)

    def edit(self, plan: Plan | None) -> None:
        """Show a plan, or an empty form for a new one."""
        self.plan = plan
        self.retire.setVisible(plan is not None)
        self._look_up()
        self.name.set_text(plan.name if plan else self._usual_name())
        self._tell_beside()
        self.rows.load(plan)
        self._show_water(plan)
        self.group_list.mixed_with(self._powder, self.temperature.value(), self._signed)
        self.group_list.show_groups(plan.groups if plan else (None,))
        self.warmth.load(plan.warmth if plan else None)
        self.more_warmth.unfold(bool(plan and (plan.warmth or plan.allowance_share)))
        self.cold.load(plan.cold if plan else None)
        self.more_cold.unfold(bool(plan and plan.cold))
        self.scoop_rule.load(plan.scoopfuls if plan else None, self._scoops())
        self.more_scoopfuls.unfold(bool(plan and plan.scoopfuls))
        self.more_rows.unfold(bool(plan and plan.counts))
        self.history.show_of(Plan, plan.id if plan else "")
        self._mix_anew()
        self._tell_rows()
        self._touched = False

    @property
    def title(self) -> str:
        """What is done here."""
        return self.tr("Change the plan") if self.plan else self.tr("A new plan")

    @property
    def groups(self) -> list[GroupEditor]:
        return self.group_list.editors

    @property
    def add(self) -> QPushButton:
        return self.group_list.add

    @property
    def vessel(self) -> NameChoice:
        return self.vessel_choice.box

    @property
    def enter_vessel(self) -> QPushButton:
        return self.vessel_choice.enter

    def begin(self) -> None:
        """From the top, the cursor in the first field; a name that was only suggested goes with the first letter."""
        self._area.verticalScrollBar().setValue(0)
        self.name.line.setFocus(Qt.FocusReason.OtherFocusReason)
        self.name.line.selectAll()

    def come_back(self) -> None:
        """The person is back from entering a vessel."""
        self.vessel_choice.come_back()

    def _usual_name(self) -> str:
        """A name to begin with, where no other plan has it."""
        farm = self.desk.farm
        usual = self.tr("All calves")
        taken = {plan.name for plan in self.desk.records.every(Plan, farm.id)} if farm else set()
        return "" if usual in taken else usual

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
            self._say_kept(self.tr("The plan “{name}” is kept.").format(name=kept.name))
            self.kept.emit(kept.id)

    def _say_kept(self, kept: str) -> None:
        """Where a label that is on a scoop knows nothing of what is fed now, with the way to a new one."""
        farm, records = self.desk.farm, self.desk.records
        news = label_news(standing(records, farm, self.desk.clock().date())) if farm else ()
        if not news:
            self.desk.say(kept)
            return
        told = " ".join([kept, *(label_words(each, self.desk.system) for each in news)])
        show = partial(self.desk.go_to.emit, "tables", f"label:{news[0].sheet.lot_id}")
        self.desk.say_with_way(told, self.tr("Print the label"), show)

    def _tell_beside(self) -> None:
        """That calves of another plan which are entered here too are fed, and counted, twice."""
        farm = self.desk.farm
        every = self.desk.records.every(Plan, farm.id) if farm else []
        mine = self.plan.id if self.plan else ""
        names = [plan.name for plan in every if plan.retired_on is None and plan.id != mine]
        words = self.tr("Each calf in one plan only: powder at hand adds up this one and {plans}.")
        self.beside.setText(words.format(plans=on_screen(", ".join(names), MOST_NAMES)))
        self.beside.setVisible(bool(names))

    def _made(self) -> Plan | None:
        farm = self.desk.farm
        sound = [self.name.filled(), self.group_list.understood(), self.temperature.understood()]
        sound += [self.allowance.understood(), self.warmth.understood(), self.cold.understood()]
        sound += [self.group_list.named_apart(), self.rows.understood(), self._has_rows()]
        water, allowance = self.temperature.value(), self.allowance.share()
        counts = self.rows.counts()
        if farm is None or water is None or counts is None or not all(sound):
            self._go_to_wrong()
            return None
        plan = self.plan or Plan(id=new_id(), farm_id=farm.id, name="", groups=())
        return replace(
            plan,
            name=self.name.text(),
            groups=self.group_list.groups(),
            allowance_share=allowance or 0.0,
            water_temperature_c=water,
            vessel_id=self.vessel_choice.chosen(),
            count_from=self.rows.first.count(),
            count_to=self.rows.last.count(),
            count_step=self.rows.step.count(),
            counts=counts,
            warmth=self.warmth.made(),
            cold=self.cold.made(),
            scoopfuls=self.scoop_rule.made(),
        )

    def _has_rows(self) -> bool:
        """A table without calves, now or as far as it goes, would have no row: somebody forgot to type them."""
        if self.rows.last.count() or self.rows.counts() or self.group_list.calves():
            return True
        self.groups[0].ask_calves()
        return False

    def _go_to_wrong(self) -> None:
        for widget in self.findChildren(QWidget):
            if widget.property("state") == "wrong" and widget.focusPolicy() != Qt.FocusPolicy.NoFocus:
                for fold in self._folds:
                    if fold.isAncestorOf(widget):
                        fold.unfold()
                widget.setFocus(Qt.FocusReason.OtherFocusReason)
                return
        for editor in self.groups:
            if editor.means() is None:
                editor.finished.setFocus(Qt.FocusReason.OtherFocusReason)
                return

    def _look_up(self) -> None:
        """The powder of the lot in use, and what its lines were drawn for."""
        farm, records = self.desk.farm, self.desk.records
        self._powder = self._signed = None
        if farm is None:
            return
        now = standing(records, farm, self.desk.clock().date())
        self._signed = signed_for(records, now)
        with suppress(CannotCompute):
            self._powder = powder_in_use(records, now).powder

    def _tie_tabs(self) -> None:
        """Cards that came later are still reached in the order they stand in."""
        before: QWidget = self.name.line
        for widget in (self.vessel, self.enter_vessel, self.temperature.line, *self.group_list.in_order()):
            QWidget.setTabOrder(before, widget)
            before = widget

    def _typed(self) -> None:
        self._touched = True
        self._mix_anew()
        self._tell_rows()

    def _mix_anew(self) -> None:
        water = self.temperature.value()
        known = water is not None
        self.scald.setVisible(known and scalds(water or 0.0))
        if water is None:
            return
        self.scald.setText(scald_words(water, self.desk.system))
        self.group_list.mixed_with(self._powder, water, self._signed)

    def _tell_rows(self) -> None:
        self.rows.tell(self.group_list.groups())

    def _show_water(self, plan: Plan | None) -> None:
        self.vessel_choice.load(plan.vessel_id if plan else None)
        if plan:
            self.temperature.set_value(plan.water_temperature_c)
        else:
            self.temperature.set_text(USUAL_WATER[self.desk.system])
        self.allowance.set_share(plan.allowance_share if plan else 0.0)

    def _vessels_anew(self) -> None:
        if self.vessel_choice.reload():
            self._touched = True

    def _to_next(self) -> None:
        """On with Enter, which leads nobody away from the plan."""
        self.focusNextChild()
        if self.enter_vessel.hasFocus():
            self.focusNextChild()

    def _scoops(self) -> list[Scoop]:
        farm = self.desk.farm
        every = self.desk.records.every(Scoop, farm.id) if farm else []
        used = self.plan.scoopfuls.scoop_id if self.plan and self.plan.scoopfuls else ""
        return [scoop for scoop in every if scoop.retired_on is None or scoop.id == used]

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
            examples=IN_HOSES,
        )
        self.vessel_choice = VesselChoice(self.desk)
        self.vessel_choice.wanted.connect(self.vessel_wanted)

    def _make_folds(self) -> None:
        """What a plan can do without, each under its own line."""
        water = QWidget()
        inside = column(row(self.allowance, None, spacing=2 * SPACE), self.warmth)
        inside.setContentsMargins(0, 0, 0, 0)
        water.setLayout(inside)
        self.more_warmth = Fold(
            self.tr("More about the water: extra for hoses and pails, warmth, pace of feeding"),
            self.tr("Less about the water"),
            water,
        )
        self.more_cold = Fold(
            self.tr("More about cold weather: powder, a further feeding"), self.tr("Less about cold weather"), self.cold
        )
        self.more_scoopfuls = Fold(
            self.tr("More about scoopfuls: part fills, one kind, by weight"),
            self.tr("Less about scoopfuls"),
            self.scoop_rule,
        )
        self.more_rows = Fold(
            self.tr("More about the table: first and last count, counts of your own"),
            self.tr("Less about the table"),
            self.rows,
        )
        self._folds = (self.more_warmth, self.more_cold, self.more_scoopfuls, self.more_rows)

    def _plan_card(self) -> QFrame:
        fields = row(self.name, self.vessel_choice, self.temperature, spacing=2 * SPACE)
        for place, stretch in enumerate((4, 3, 3)):
            fields.setStretch(place, stretch)
        return card(fields, self.vessel_choice.several, self.beside, self.scald)

    def _lay_out(self) -> None:
        inner = QWidget()
        body = QVBoxLayout(inner)
        body.setContentsMargins(0, 0, 0, 0)
        body.setSpacing(int(1.5 * SPACE))
        body.addWidget(self._plan_card())
        body.addWidget(self.group_list)
        body.addWidget(card(*self._folds))
        body.addWidget(self.history)
        body.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(int(1.5 * SPACE))
        self._area = scrolled(inner)
        self._area.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # the fields in it scroll into view as one reaches them
        layout.addWidget(self._area, 1)
        layout.addLayout(row(self.keep_button, self.back, None, self.retire))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Escape goes back; not over what is typed, without a question."""
        if event.key() != Qt.Key.Key_Escape:
            super().keyPressEvent(event)
        elif self._touched:
            question = self.tr("Go back without keeping the plan? What you changed here is lost.")
            self.desk.ask.confirm(question, self.tr("Go back without keeping"), self._leave)
        else:
            self._leave()

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
