"""Batch tables: the farm's plans, today's counts, and the way to paper."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from functools import partial

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QComboBox, QStackedWidget, QVBoxLayout, QWidget

from calibrator.desk.both_lots import both_text, group_by_group
from calibrator.desk.change_over import FedFrom
from calibrator.desk.changing_over import ask_change_over, begin_lot
from calibrator.desk.context import Desk
from calibrator.desk.digits import is_digit_off
from calibrator.desk.forms.plan_form import PlanForm
from calibrator.desk.lot_changes import lot_changes, sign_off_in_use
from calibrator.desk.page import Page
from calibrator.desk.pages.paper import PaperPanel
from calibrator.desk.pages.sheet_view import SheetView
from calibrator.desk.paper_facts import two_lots_facts
from calibrator.desk.parts import button, card, label, row
from calibrator.desk.refusals import in_words
from calibrator.desk.scoop_lines import ScoopState, scoop_state
from calibrator.desk.sheets import (
    LotInUse,
    Occasion,
    PlanSheet,
    day_sheet,
    powder_in_use,
    powder_of,
)
from calibrator.desk.speech import day_text
from calibrator.desk.standing import Standing, standing
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.later import Later
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.model import Farm, Plan, Vessel
from calibrator.prints.chart_facts import TwoLots
from calibrator.science.errors import CannotCompute

NEW_PLAN, CHANGE = "new", "change"
FIRST_FEEDING = 0
PRINTS = ("label", "sheet", "chart")


class TablesPage(Page):
    """One plan at a time. Today's counts are kept when the person is done typing, and before they leave."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, self.tr("Batch tables"), parent)
        self._farm: Farm | None = None
        self._now: Standing | None = None
        self._powder: LotInUse | None = None
        self._plans: dict[str, Plan] = {}
        self._vessels: dict[str, Vessel] = {}
        self._plan: Plan | None = None  # with the counts as typed ...
        self._taken: Plan | None = None  # ... and as the records told it
        self._sheet: PlanSheet | None = None
        self._two_lots: tuple[TwoLots, ...] = ()  # today's batches from both, for the chart
        self._feeding = 0
        self._lot_id = ""  # whose table is shown; blank: that of the lot in use
        self._fed_id = ""  # the lot that was in use when that was chosen
        self._back_to = ""  # the page from which the prints were asked for; blank: this one
        self._seen: set[str] = set()
        self.plans = NameChoice()
        self.plans.setAccessibleName(self.tr("Plan"))
        self.plans.setMinimumWidth(200)
        self.plans.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.plans.activated.connect(self._choose)
        self.new = button(self.tr("&New plan"), self._begin_plan)
        self.change = button(self.tr("&Change plan"), self._change_plan)
        self.print = button(self.tr("&Print"), self._show_paper, "main")
        self.view = SheetView(self._today)
        self._form, self._paper = Later(self._make_form), Later(self._make_paper)
        self._empty = self._make_empty()
        self._stack = QStackedWidget()
        for widget in (self._empty, self.view, self._form, self._paper):
            self._stack.addWidget(widget)
        self._lay_out()
        self._stack.currentChanged.connect(self._say_where)
        self.view.calves_typed.connect(self._type_calves)
        self.view.calves_finished.connect(self._finish_calves)
        self.view.today.answered.connect(self._keep_calves)
        self.view.weigh_in_wanted.connect(self._start_weigh_in)
        self.view.changes_seen.connect(self._see_changes)
        self.view.lot_bar.lot_chosen.connect(self._show_lot)
        self.view.lot_bar.changed_over.connect(self._change_over)
        self.view.lot_bar.left_typed.connect(self._tell_both)
        self.view.day_bar.feeding_chosen.connect(self._choose_feeding)
        self.view.day_bar.cold_switched.connect(self._switch_cold)

    @property
    def form(self) -> PlanForm:
        return self._form.content

    @property
    def paper(self) -> PaperPanel:
        return self._paper.content

    def reload(self) -> None:
        farm = self.desk.farm
        if farm is None:
            return
        self._farm, self._now = farm, standing(self.desk.records, farm, self._today())
        self._vessels = {v.id: v for v in self.desk.records.every(Vessel, farm.id)}
        every = self.desk.records.every(Plan, farm.id)
        self._plans = {plan.id: plan for plan in every if plan.retired_on is None}
        try:
            self._powder = self._powder_shown(self._now)
        except CannotCompute as error:
            self._powder = None
            self.view.show_trouble(in_words(error))
        self._take_plan(self._plan.id if self._plan else "")
        self._fill_plans()
        if self._stack.currentWidget() is self._paper:
            self.paper.reload()
        elif self._stack.currentWidget() is not self._form:
            self._back()

    def open(self, thing_id: str) -> None:
        """Open a plan by its id; `new` opens the form for another one, `change:…` that of a plan.

        `label:…` and `sheet:…` open the labels and the lot sheets of a lot, `chart:…` the wall chart of a plan.
        """
        kind, _, its_id = thing_id.partition(":")
        self._back_to = ""
        if thing_id == NEW_PLAN:
            self._begin_plan()
        elif kind == CHANGE and its_id in self._plans:
            if self.pending():
                self._bring_up_form()
                return
            self._keep_calves()
            self._take_plan(its_id, fresh=True)
            self._fill_plans()
            self._edit(self._plan)
        elif kind in PRINTS:
            self._keep_calves()
            self._bring_up_paper(self.came_from)
            show = (self.paper.show_lot, self.paper.show_lot_sheet, self.paper.show_plan)
            show[PRINTS.index(kind)](its_id)
        elif thing_id in self._plans:
            self._keep_calves()
            self._take_plan(thing_id, fresh=True)
            self._fill_plans()
            self._back()
        elif self._stack.currentWidget() is self._form:
            self.form.come_back()
        else:
            if self._stack.currentWidget() is self._paper:
                self._back()  # the side bar leads to the tables, as it says
            self._begin_at_top()

    def help_title(self) -> str:
        if self._stack.currentWidget() is self._paper:
            return self.paper.help_title()
        return QCoreApplication.translate("Glossary", "Batch")

    def pending(self) -> str:
        """What is typed here and not kept yet; counts of calves are kept by leaving."""
        form = self._form.made
        return form.title if form is not None and form.typed else ""

    def leave(self) -> bool:
        self._keep_calves()
        if self._stack.currentWidget() is self._paper:
            self._back()  # the side bar leads to the tables, as it says
        return self.form.leave() if self._stack.currentWidget() is self._form else True

    def _lay_out(self) -> None:
        self.body.removeWidget(self.title)
        self.title.setWordWrap(False)
        self._caption = label(self.tr("P&lan"), wrap=False)
        self._caption.setBuddy(self.plans)
        self._tools = QWidget()
        tools = row(self._caption, self.plans, self.new, self.change, self.print)
        tools.setContentsMargins(0, 0, 0, 0)
        tools.setStretch(1, 1)
        self._tools.setLayout(tools)
        head = row(self.title, spacing=3 * SPACE)
        head.addStretch(1)
        head.addWidget(self._tools, 3)
        self.body.addLayout(head)
        self.body.addWidget(self._stack, 1)

    def _make_form(self) -> PlanForm:
        form = PlanForm(self.desk)
        form.kept.connect(self._plan_kept)
        form.left.connect(self._back)
        form.vessel_wanted.connect(self._enter_vessel)
        return form

    def _make_paper(self) -> PaperPanel:
        paper = PaperPanel(self.desk)
        paper.left.connect(self._leave_paper)
        paper.wants_plan.connect(self._begin_plan)
        return paper

    def _make_empty(self) -> QWidget:
        words = label(
            self.tr(
                "A plan says which calves are fed, how much each, and how strong. From it comes the table of "
                "water, powder and scoopfuls for every number of calves."
            )
        )
        begin = button(self.tr("&Make the first plan"), self._begin_plan, "main")
        made = QWidget()
        layout = QVBoxLayout(made)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(card(label(self.tr("No plan yet"), "heading"), words, row(begin, None)))
        layout.addStretch(1)
        return made

    def _take_plan(self, plan_id: str, *, fresh: bool = False) -> None:
        """Bring up a plan's newest telling; counts that were typed and not kept yet stay typed."""
        typed = self._plan if self._dirty and not fresh else None
        known = self._plans.get(plan_id) or next(iter(self._plans.values()), None)
        self._plan = self._taken = known
        if typed is None or known is None or typed.id != known.id:
            return
        if [g.name for g in typed.groups] == [g.name for g in known.groups]:
            pairs = zip(known.groups, typed.groups, strict=True)
            self._plan = replace(known, groups=tuple(replace(g, calves=t.calves) for g, t in pairs))

    def _powder_shown(self, now: Standing) -> LotInUse:
        """The lot in use, or the other open one that the person looks at. Raises CannotCompute."""
        fed_id = now.in_use.lot.id if now.in_use else ""
        if fed_id != self._fed_id:  # what was chosen beside the old lot is no choice beside the new one
            self._lot_id, self._fed_id = "", fed_id
        known = next((lot for lot in now.open_lots if lot.lot.id == self._lot_id), None)
        self._lot_id = known.lot.id if known else ""
        if known is None:
            return powder_in_use(self.desk.records, now)
        return powder_of(self.desk.records, now, known, now.sign_offs)

    def _show_lot(self, lot_id: str) -> None:
        self._lot_id = lot_id
        self._keep_calves()
        self.reload()

    def _change_over(self, lot_id: str, on: date) -> None:
        """The change-over is a dated event: from that day on this lot is the one that is fed."""
        known = self._now.lot(lot_id) if self._now else None
        if known is None or self._now is None:
            return
        act, fed = partial(self._change_over_now, lot_id, on), self._now.in_use
        if on > self._today() or (fed and fed.lot.id == lot_id):
            act(False)  # the lot that is fed goes on until then
        else:
            ask_change_over(self.desk, self._now, "", act)

    def _change_over_now(self, lot_id: str, on: date, old_is_finished: bool) -> None:
        known = self._now.lot(lot_id) if self._now else None
        if known is None or self._now is None:
            return
        self._keep_calves()
        said = self.tr("From {day} on lot {number} is fed.").format(day=day_text(on), number=known.lot.lot_number)
        when = FedFrom(on, FIRST_FEEDING if on > self._today() else None)
        if begin_lot(self.desk, self._now, known, when, said, old_is_finished=old_is_finished):
            self._lot_id = ""
            self.reload()

    def _today(self) -> date:
        return self.desk.clock().date()

    def _fill_plans(self) -> None:
        self.plans.clear()
        for plan in self._plans.values():
            self.plans.addItem(plan.name, plan.id)
        if self._plan:
            self.plans.setCurrentIndex(self.plans.findData(self._plan.id))

    def _back(self) -> None:
        """Show the table of the plan in hand, or how to begin."""
        shown = self.view if self._plan else self._empty
        self._stack.setCurrentWidget(shown)
        self._tools.setVisible(bool(self._plan))
        self._show_sheet()

    def _begin_at_top(self) -> None:
        """Above the table it is told of which lot it is: whoever comes for the table sees that first."""
        self.view.to_top()
        if self.focusWidget() is not None and self._plan:
            self.plans.setFocus(Qt.FocusReason.OtherFocusReason)

    def _show_sheet(self) -> None:
        if not (self._farm and self._plan and self._powder and self._now):
            return
        here = self._now.lot(self._lot_id) if self._lot_id else self._now.in_use
        scoops, marks = self._now.scoops, here.marks if here else ()
        self.view.lot_bar.show_standing(self._now, here, self._farm.units)
        fed = self._now.in_use
        to_mark = ScoopState.TO_MARK  # of a lot that waits that is as it should be
        unmarked = [s for s in scoops if fed is here and fed and scoop_state(self._now, fed, s.id) is to_mark]
        self.view.show_lot(self._powder, marks, scoops, self._farm.units, unmarked=unmarked, now=self._now)
        self._show_changes(self._farm, self._now, self._powder)
        self._feeding = self.view.day_bar.show_plan(self._plan, self.desk.clock().date(), self._farm.units)
        self._recompute()

    def _recompute(self) -> None:
        if self._farm and self._plan and self._powder:
            vessel = self._vessels.get(self._plan.vessel_id or "")
            when = Occasion(self.desk.clock().date(), self._feeding)
            self._sheet = day_sheet(self._farm, self._plan, vessel, self._powder, when, self._sheet)
            self.view.show_sheet(self._sheet)
            self._tell_both()

    def _tell_both(self) -> None:
        """Batches that take the last of one lot and the rest from another, whichever table is looked at."""
        other = self._now.lot(self.view.lot_bar.other_id()) if self._now else None
        left_g = self.view.lot_bar.left_g()
        self._two_lots = ()
        if other is None or left_g is None or self._sheet is None or self._now is None or self._powder is None:
            self.view.lot_bar.tell_both("")
            return
        try:
            old = powder_of(self.desk.records, self._now, other, self._now.sign_offs)
            every = group_by_group(self._sheet.groups, old, self._powder, left_g, self._now)
        except CannotCompute as error:
            self.view.lot_bar.tell_both(in_words(error))
            return
        self.view.lot_bar.tell_both(both_text(every, old, self._powder))
        self._two_lots = tuple(two_lots_facts(found, old, self._powder) for found in every if found.old_g > 0)

    def _show_changes(self, farm: Farm, now: Standing, powder: LotInUse) -> None:
        seen = sign_off_in_use(now) in self._seen
        found = lot_changes(self.desk.records, farm, now, powder, self._plans, self._vessels, self._today())
        if seen or found is None:
            self.view.show_changes(farm, "", (), "")
        else:
            self.view.show_changes(farm, found.title, found.found, found.outdated)

    @property
    def _dirty(self) -> bool:
        """Whether a count is typed that was not kept yet."""
        if self._plan is None or self._taken is None:
            return False
        return self._plan.groups != self._taken.groups

    def _type_calves(self, number: int, calves: int) -> None:
        if self._plan is None:
            return
        self.view.today.withdraw_questions()
        groups = list(self._plan.groups)
        groups[number] = replace(groups[number], calves=calves)
        self._plan = replace(self._plan, groups=tuple(groups))
        self._recompute()

    def _finish_calves(self) -> None:
        """Keep the counts; one with a digit too many or too few is asked about first, and kept by whoever goes on."""
        if self.desk.records.read_only:
            return
        text = self.tr("{before} before. Is {now} right?")
        doubts = [text.format(before=was, now=now) if is_digit_off(was, now) else "" for was, now in self._counts()]
        if self.view.today.settled(doubts):
            self._keep_calves()

    def _counts(self) -> list[tuple[int, int]]:
        """Each group's count as kept and as typed."""
        if self._plan is None or self._taken is None:
            return []
        pairs = zip(self._taken.groups, self._plan.groups, strict=True)
        return [(was.calves, now.calves) for was, now in pairs]

    def _keep_calves(self) -> None:
        self.view.today.withdraw_questions()
        plan = self._plan
        if plan is None or not self._dirty or self.desk.records.read_only:
            return
        why = "today's count"
        kept = self.desk.keep(plan, why)
        if kept is not None:
            self._plans[kept.id] = self._plan = self._taken = kept

    def _choose_feeding(self, feeding: int) -> None:
        self._feeding = feeding
        self._recompute()

    def _switch_cold(self, on: bool) -> None:
        """The cold is a fact of the barn: kept, so that every computer and chart tells it."""
        self._keep_calves()
        plan = self._plan
        if plan is None or plan.cold is None or plan.cold.on == on:
            return
        switched = replace(plan, cold=replace(plan.cold, on=on))
        if self.desk.keep(switched, "cold weather") is None:
            self._show_sheet()

    def _choose(self, index: int) -> None:
        self._keep_calves()
        self._take_plan(self.plans.itemData(index), fresh=True)
        self._back()

    def _begin_plan(self) -> None:
        self._keep_calves()
        self._edit(None)

    def _change_plan(self) -> None:
        self._keep_calves()
        self._edit(self._plan)

    def _edit(self, plan: Plan | None) -> None:
        self.form.edit(plan)
        self._bring_up_form()
        self.form.begin()

    def _bring_up_form(self) -> None:
        self._tools.hide()
        self._stack.setCurrentWidget(self._form)

    def _plan_kept(self, plan_id: str) -> None:
        self._plan = self._plans.get(plan_id)
        self._stack.setCurrentWidget(self.view)
        self.reload()
        self.open(plan_id)

    def _show_paper(self) -> None:
        self._keep_calves()
        if self._plan is None:
            return
        self._bring_up_paper()
        self.paper.show_plan(self._plan.id, self._lot_id, self._two_lots)

    def _bring_up_paper(self, back_to: str = "") -> None:
        self._back_to = back_to
        self._tools.hide()
        self._stack.setCurrentWidget(self._paper)

    def _leave_paper(self) -> None:
        self._back()
        if self._back_to:
            self.desk.go_to.emit(self._back_to, "")

    def _say_where(self) -> None:
        shown, titles = self._stack.currentWidget(), self.tr("Batch tables")
        if shown is self._paper:
            titles = self.tr("Labels, charts and sheets")
        elif shown is self._form:
            titles = self.form.title
        self.title.setText(titles)

    def _see_changes(self) -> None:
        if self._now and self._now.in_use:
            self._seen.add(sign_off_in_use(self._now))
            self._show_sheet()

    def _enter_vessel(self) -> None:
        """The set-up leads back here; what is typed stays in the form."""
        self.desk.go_to.emit("setup", "vessel")

    def _start_weigh_in(self) -> None:
        self.desk.go_to.emit("weigh_in", "")
