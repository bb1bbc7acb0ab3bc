"""The weigh-in page: choosing a lot, then the steps one after another."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtGui import QKeySequence, QShortcut, QUndoStack
from PySide6.QtWidgets import QScrollArea, QStackedWidget, QWidget

from calibrator.desk.alone import tell_or_wait
from calibrator.desk.context import Desk
from calibrator.desk.guide import STEPS, Guide
from calibrator.desk.help.hands import of_step
from calibrator.desk.page import Page
from calibrator.desk.parts import button, label, row, scrolled, set_style_property
from calibrator.desk.standing import standing
from calibrator.desk.weigh_in import line_words, words
from calibrator.desk.weigh_in.chooser import LotChooser, another_waits, left_open
from calibrator.desk.weigh_in.commands import recall
from calibrator.desk.weigh_in.findings_panel import LevelPanel, ToMarkPanel
from calibrator.desk.weigh_in.step_fills import StepFills
from calibrator.desk.weigh_in.step_lot import StepLot
from calibrator.desk.weigh_in.step_mark import StepMark
from calibrator.desk.weigh_in.step_sign_off import StepSignOff
from calibrator.desk.weigh_in.step_tools import StepTools
from calibrator.desk.weigh_in.step_view import StepView
from calibrator.desk.widgets.later import Later, take_turn
from calibrator.desk.widgets.question import Question
from calibrator.desk.widgets.step_strip import StepStrip
from calibrator.model import FillWay, Lot, Step, WeighIn, new_id


class WeighInPage(Page):
    """Holds the guide of the weigh-in in hand; the step views show it and act on it."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, "", parent)
        self.guide: Guide | None = None
        self._undo = {way: QUndoStack(self) for way in FillWay}  # nothing is taken back that is not in view
        self._line_mm: float | None = None  # to which the fills were filled that can be taken back
        self._strip = StepStrip()
        self._strip.set_names(words.step_names())
        self._strip.chosen.connect(self.open_step)
        self._chooser = LotChooser(desk)
        self._chooser.begin.connect(self.open)
        self._views = _Views(self._make_view)
        self._stack = QStackedWidget()
        self._stack.addWidget(self._chooser)
        self._areas = {Step(step): Later(partial(self._make_area, Step(step))) for step in STEPS}
        for area in self._areas.values():
            self._stack.addWidget(area)
        self._missing = label("", "quiet")
        self._missing.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self._back = button(self.tr("Bac&k"), self.previous_step)
        self._next = button(self.tr("Ne&xt"), self.next_step, "main")
        self._leave = button(self.tr("Weigh in a&nother lot"), self.close_guide, "link")
        self._foot = QWidget()
        foot = row(self._back, self._leave, self._missing, self._next)
        foot.setStretch(2, 1)
        foot.setContentsMargins(0, 0, 0, 0)
        self._foot.setLayout(foot)
        self._question = Question("")
        self._question.answered.connect(partial(self._move_by, 1))
        self._question.hide()
        self._head = row(self.title)
        self._head.setStretch(0, 1)
        self.body.insertLayout(0, self._head)
        self.body.addWidget(self._strip)
        self.body.addWidget(self._stack, 1)
        self.body.addWidget(self._question)
        self.body.addWidget(self._foot)
        for keys, slot in (("Alt+Right", self.next_step), ("Alt+Left", self.previous_step)):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.activated.connect(slot)

    def _make_area(self, step: Step) -> QScrollArea:
        return scrolled(self._views[step])

    def _make_view(self, step: Step) -> StepView:
        """Put a step together when it is first worked at: six of them would hold up the page."""
        view = self._step_view(step)
        view.ready.connect(self.next_step)
        view.wanted.connect(self.open_step)
        view.finished.connect(self._to_next)
        view.typing.connect(self._show_missing)
        if (work := of_step(step)) is not None:
            view.show_how(work)
        self._head.addWidget(view.tools)
        take_turn(self.title, view.tools)
        QWidget.setTabOrder(self._next, self._back)  # from the last field the keys go on, not out
        QWidget.setTabOrder(self._back, self._leave)
        return view

    def _step_view(self, step: Step) -> StepView:
        if step is Step.LEVEL_FILLS:
            return StepFills(self.desk, FillWay.LEVEL, words.level_hands, self._undo[FillWay.LEVEL], LevelPanel())
        if step is Step.FILLS_TO_MARK:
            panel = ToMarkPanel(self._move_line)
            return StepFills(self.desk, FillWay.TO_MARK, words.mark_hands, self._undo[FillWay.TO_MARK], panel)
        plain: dict[Step, Callable[[Desk], StepView]] = {
            Step.LOT: StepLot,
            Step.SCOOP_AND_SCALE: StepTools,
            Step.MARK: StepMark,
            Step.SIGN_OFF: StepSignOff,
        }
        return plain[step](self.desk)

    def open(self, thing_id: str) -> None:
        """Take up a lot's weigh-in where it was left, or begin one; with no lot, go on with the one in hand."""
        if thing_id or (thing_id := self._left_open()):
            self._take_up(thing_id)
        elif self.guide and self.guide.signed_off and another_waits(self.guide.standing, self.guide.lot.id):
            self.close_guide()  # what was signed is done
        else:
            self._focus_first()

    def _left_open(self) -> str:
        desk = self.desk
        if self.guide is not None or desk.farm is None:
            return ""
        return left_open(standing(desk.records, desk.farm, desk.clock().date()))

    def reload(self) -> None:
        if self.guide is None:
            self._show_chooser()
            return
        self.guide.refresh()
        self._show_guide()

    def leave(self) -> bool:
        """Typed text stays in its field while other pages are looked at."""
        return True

    def help_title(self) -> str:
        work = of_step(self.guide.step) if self.guide else None
        if work is not None:
            return work.title
        if self.guide is not None and self.guide.step is Step.SIGN_OFF:
            return QCoreApplication.translate("Glossary", "Sign-off")
        return QCoreApplication.translate("Glossary", "Weigh-in")

    def pending(self) -> str:
        """What is typed in the open step and not entered."""
        view = self._views.get(self.guide.step) if self.guide else None
        return view.pending() if view else ""

    def close_guide(self) -> None:
        """Put the weigh-in aside; it is kept where it stands."""
        if self.pending() and not self._is_taken() and self.pending():
            return  # a weight that is not entered is of this lot
        self.guide = None
        for stack in self._undo.values():
            stack.clear()
        self._show_chooser()
        self._chooser.take_keys()

    def _recall_done(self, *ways: FillWay) -> None:
        """Let what was done to the fills in view be undone: after a restart, or once another line is drawn."""
        if self.guide is not None:
            self._line_mm = self.guide.weigh_in.drawn_line_mm
            for way in ways:
                recall(self.desk, self._undo[way], self.guide, way)

    def next_step(self) -> None:
        """Go on; past fills that were never weighed, or that say the line is wrong, only if that is meant."""
        guide = self.guide
        if guide is None or not self._is_taken():
            return
        if guide.step is Step.FILLS_TO_MARK and guide.line_untried:
            self._question.ask(line_words.untried_words(), self.tr("G&o on without"))
            self._focus_first()  # a weight typed next is a fill, not an answer
        elif guide.step is Step.FILLS_TO_MARK and guide.line_should_move:
            question = line_words.wrong_line_words(guide, self.desk.system)
            self._question.ask(question, self.tr("G&o on with this line"))
            self._focus_first()
        else:
            self._move_by(1)

    def _is_taken(self) -> bool:
        """Keep what stands in the fields of the open step. Gives whether that leaves nothing to be mended there."""
        guide = self.guide
        if guide is None or guide.signed_off is not None:
            return guide is not None
        step = guide.step
        return self._views[step].take() and guide.step is step

    def _holds_back(self, step: Step) -> bool:
        """Whether a later step has to wait for what is typed in the open one."""
        guide = self.guide
        if guide is None or STEPS.index(step) <= STEPS.index(guide.step):
            return False
        return bool(step not in guide.reachable() or self.pending()) and not self._is_taken()

    def previous_step(self) -> None:
        self._move_by(-1)

    def _move_by(self, steps: int) -> None:
        if self.guide is not None:
            place = STEPS.index(self.guide.step) + steps
            if 0 <= place < len(STEPS):
                self.open_step(STEPS[place])

    def open_step(self, step: str) -> None:
        """Open a step if nothing before it is missing; else say what is."""
        guide = self.guide
        if guide is None:
            return
        if self._holds_back(Step(step)):
            return
        if Step(step) not in guide.reachable():
            self.desk.say(words.missing_words(guide.missing_before(Step(step))))
            return
        if guide.signed_off is None:
            self.desk.attempt(lambda: guide.go(Step(step)))
        else:
            guide.look_at(Step(step))
            self._show_guide()
        self._focus_first()

    def _take_up(self, lot_id: str) -> None:
        lot = self.desk.records.find(Lot, lot_id)
        open_ones = [w for w in self.desk.records.every(WeighIn, lot.farm_id, lot_id=lot_id) if not w.abandoned]
        signed = {s.weigh_in_id for s in self.desk.records.sign_offs(lot.farm_id, lot_id)}
        left = [w for w in open_ones if w.id not in signed]
        found = left[-1] if left else self.desk.attempt(lambda: self._begin(lot))
        if found is None:
            return
        self.guide = Guide(self.desk.records, found, self.desk.clock, self.desk.outbox)
        self._recall_done(*FillWay)
        self._show_guide()
        self._focus_first()

    def _begin(self, lot: Lot) -> WeighIn:
        begun = WeighIn(
            id=new_id(),
            farm_id=lot.farm_id,
            lot_id=lot.id,
            started_at=self.desk.clock(),
            by=self.desk.initials,
        )
        return tell_or_wait(self.desk.records, self.desk.outbox, begun, self.desk.clock())

    def _show_chooser(self) -> None:
        self._question.hide()
        self.title.setText(self.tr("Weigh-in"))
        self._strip.hide()
        self._foot.hide()
        self._stack.setCurrentWidget(self._chooser)
        self._show_tools(None)
        self._chooser.reload()

    def _show_guide(self) -> None:
        guide = self.guide
        if guide is None:
            return
        if guide.signed_off is not None:
            self._recall_done(*FillWay)
        elif guide.weigh_in.drawn_line_mm != self._line_mm:
            self._recall_done(FillWay.TO_MARK)
        step = guide.step
        self._question.hide()
        self.title.setText(words.title(guide))
        view, _area = self._views[step], self._areas[step].content
        self._strip.show()
        self._foot.show()
        self._strip.show_place(step, guide.reachable())
        self._stack.setCurrentWidget(self._areas[step])
        self._show_tools(view)
        view.show_guide(guide)
        self._back.setVisible(step != STEPS[0])
        self._next.setVisible(step != STEPS[-1])
        self._show_missing()
        set_style_property(self._next, "kind", "" if view.has_lit_button else "main")

    def _to_next(self) -> None:
        """Enter with nothing left to type: the button that goes on has the keys, and one Enter more presses it."""
        if self._next.isEnabled():
            self._next.setFocus(Qt.FocusReason.OtherFocusReason)

    def _show_missing(self) -> None:
        """What is still needed, less what stands in the field that is being filled in."""
        guide = self.guide
        if guide is None:
            return
        typed = self._views[guide.step].typed_already()
        missing = tuple(what for what in guide.missing(guide.step) if what not in typed)
        line = guide.findings.line
        told = words.missing_words(missing, level=line is not None and line.struck_level)
        self._missing.setText(told or words.early_words(guide, guide.step))
        self._next.setEnabled(not missing)

    def _show_tools(self, of: StepView | None) -> None:
        for view in self._views.values():
            view.tools.setVisible(view is of)

    def _focus_first(self) -> None:
        if self.guide is not None:
            field = self._views[self.guide.step].first_field()
            if field is not None:
                field.setFocus()

    def _move_line(self) -> None:
        """Take the line that the fills call for; the person draws it on the mark step."""
        guide = self.guide
        if guide is not None and guide.findings.check is not None:
            self.desk.attempt(guide.take_next_line)
            self._focus_first()


class _Views(dict[Step, StepView]):
    """The views of the steps, each made when it is first asked for."""

    def __init__(self, make: Callable[[Step], StepView]) -> None:
        super().__init__()
        self._make = make

    def __missing__(self, step: Step) -> StepView:
        self[step] = made = self._make(step)
        return made
