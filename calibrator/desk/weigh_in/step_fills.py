"""Weighing fills: type a weight, press Enter, see at once what it says."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from itertools import pairwise

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QAction, QKeySequence, QShortcut, QUndoStack
from PySide6.QtWidgets import (
    QHBoxLayout,
    QHeaderView,
    QScrollArea,
    QSizePolicy,
    QSpinBox,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from calibrator.desk import shown
from calibrator.desk.as_typed import as_typed
from calibrator.desk.context import Desk
from calibrator.desk.guide import Guide
from calibrator.desk.parts import button, card, column, label, row, scrolled, set_style_property, show_as_rows
from calibrator.desk.plain_text import tip
from calibrator.desk.theme import SPACE
from calibrator.desk.weigh_in.commands import enter_fill, restore_fill, strike_fill
from calibrator.desk.weigh_in.fill_plot import FillPlot
from calibrator.desk.weigh_in.fill_table import REMARK, FillTable
from calibrator.desk.weigh_in.findings_panel import FindingsPanel
from calibrator.desk.weigh_in.scale_unit import doubted, meant_words, unit_of
from calibrator.desk.weigh_in.step_view import StepView
from calibrator.desk.weigh_in.words import doubt_words, miscounted_words, more_fills_advised, odd_words, swapped_words
from calibrator.desk.widgets.quantity_field import QuantityField
from calibrator.desk.widgets.question import Question
from calibrator.desk.widgets.stray_keys import SteadyButton, SteadySpin, strays
from calibrator.desk.words import usual_slips
from calibrator.model import Fill, FillWay, UnitSystem
from calibrator.science.plausible import Doubt
from calibrator.units import Kind, MaskNotUnderstood, Quantity, read_mask

LINES_SAID = 2  # beneath the weight: what is wrong with one is told there, and nowhere else
MOST_TOGETHER = 20
MOST_BAGS = 999

LIST_PX = 124  # its headings and two fills
GLOVED_ROW_PX = 40  # a fill is chosen to be struck out, with gloves on


class StepFills(StepView):
    """The fills of one way. Undo and redo go through a stack of its own."""

    def __init__(
        self, desk: Desk, way: FillWay, hands: Callable[[Guide], str], stack: QUndoStack, panel: FindingsPanel
    ) -> None:
        super().__init__(desk, "")
        self._way, self._hands, self._stack, self._panel = way, hands, stack, panel
        self._weight = QuantityField(Kind.MASS, desk.system, name=self.tr("Weight"), required=True)
        self._weight.returnPressed.connect(self._enter)
        self._weight.understood.connect(self._typed_anew)
        self._says = self._weight.say_beside("")
        self._says.keep_lines(LINES_SAID)
        self._question = Question(self.tr("It weighs that all the same"), narrow=True)
        self._question.answered.connect(self._keep_asked)
        self._question.hide()
        set_style_property(self._weight.line, "kind", "large")
        self._from_wire = ""
        self._wire_words = label("", "caution")
        desk.wire.weighed.connect(self._take_weighed)
        desk.wire.trouble.connect(self._show_wire)
        strays.came.connect(self._take_stray)
        self._bag = _spin(self.tr("Bag"), MOST_BAGS)
        self._together = _spin(self.tr("Scoopfuls together"), MOST_TOGETHER)
        self._together.valueChanged.connect(self._show_awaited)
        self._table, self._view = self._make_table()
        self._plot = FillPlot()
        self._strike = button(self.tr("Str&ike out …"), self._strike_or_restore)
        self._undo = button(self.tr("&Undo"), self._take_back)
        self._redo = button(self.tr("Re&do"), self._do_again)
        self._odd = label("", "caution")
        self._across = _toggle(self._show_across)
        self._across.setToolTip(tip(self.tr("Esc brings back the usual view.")))
        self._now = label("", "heading")
        self.tools_line.addWidget(self._across)
        self._add_shortcuts()
        stack.canUndoChanged.connect(self._undo.setEnabled)
        stack.canRedoChanged.connect(self._redo.setEnabled)
        stack.undoTextChanged.connect(self._name_undo)
        stack.redoTextChanged.connect(self._name_redo)
        both = QHBoxLayout()
        both.setSpacing(2 * SPACE)
        both.addLayout(self._left(), 5)
        both.addWidget(scrolled(self._right(), _Told()), 6)
        self.body.addLayout(both, 1)
        self._order_keys()
        self._show_stack()
        self._across.setChecked(desk.settings.now.large_figures)
        self._show_across(self._across.isChecked())

    def refresh(self, guide: Guide, fresh: bool) -> None:
        fills = guide.fills_of(self._way)
        odd = guide.odd_fills(self._way)
        system = self.desk.system
        self.hands.setText(self._hands(guide))
        self._weight.set_system(system)
        self._show_unit(guide)
        self._question.withdraw()
        resolution = guide.scale.resolution_g if guide.scale else None
        swapped = guide.swapped(self._way, self.desk.wire.entered)
        miscounted = guide.miscounted(self._way)
        again = swapped or miscounted
        self._table.show_fills(fills, odd, system, resolution, again=again[0].id if again else "")
        self._panel.show_findings(guide, system)
        can_come = guide.signed_off is None
        self._listed.setVisible(can_come and not fills)
        self._plot.show_coming(can_come)
        self._plot.show_fills(fills, odd, self._panel.bands(guide), system)
        self._bag.setValue(guide.next_bag(self._way))
        self._across.setChecked(self.desk.settings.now.large_figures)
        self._say_now(fills, resolution)
        if fresh:
            self._weight.set_typed("")  # what stood there, or was said of it, was of the lot before
            self._together.setValue(max(1, guide.findings.scoopfuls_together))
        told = self._slip_words(swapped, miscounted, resolution)
        told = told or (odd_words(sum(fill.counts for fill in fills)) if odd else "")
        self._odd.setVisible(bool(told))
        self._odd.setText(told)
        more = more_fills_advised(guide, self._way) and not guide.line_should_move
        set_style_property(self._enter_button, "kind", "main" if more else "")
        self._choose_strike_word()
        self._show_stack()
        self._show_wire(self.desk.wire.words)

    def _slip_words(
        self, swapped: tuple[Fill, Fill] | None, miscounted: tuple[Fill, int] | None, resolution_g: float | None
    ) -> str:
        """What slip of the hand a fill far from the others looks like; blank where like none."""

        def told(fill: Fill) -> str:
            return as_typed(fill.mass_g, fill.typed, self.desk.system, resolution_g=resolution_g)

        if swapped is not None:
            return swapped_words(told(swapped[0]), told(swapped[1]))
        return miscounted_words(told(miscounted[0]), miscounted[1]) if miscounted is not None else ""

    def close_entry(self, signed: bool) -> None:
        """Of what is signed off only the fills and what they came to are left to be looked at."""
        far = self._across.isChecked() and not signed  # the farm's own choice stays as it is
        if far != self._looks_far:
            self._look_across(far)
        super().close_entry(signed)
        if signed:
            self._odd.hide()
        for part in (self._entry_card, self._undo, self._redo, self._across):
            part.setVisible(not signed)
        self._strike.setVisible(not signed and not far)

    def first_field(self) -> QWidget:
        return self._weight

    def pending(self) -> str:
        return self._weight.text().strip()

    def take(self) -> bool:
        """A weight that was not entered is no fill yet: whether it is one cannot be guessed."""
        if not self.pending() or self.guide is None or self.guide.signed_off is not None:
            return True
        self._weight.set_problem(self.tr("Not entered yet: press Enter, or clear it."))
        self._weight.setFocus()
        return False

    def _left(self) -> QVBoxLayout:
        weight_name, bag_name = label(self.tr("Wei&ght"), "quiet"), label(self.tr("B&ag"), "quiet")
        together_name = label(self.tr("Scoop&fuls at once"), "quiet")
        weight_name.setBuddy(self._weight)
        bag_name.setBuddy(self._bag)
        together_name.setBuddy(self._together)
        self._enter_button = button(self.tr("Ente&r"), self._enter, "main")
        set_style_property(self._enter_button, "beside", "large")
        entry_card = self._entry_card = card(
            weight_name,
            row(self._weight, column(self._enter_button, None)),
            self._says,
            row(bag_name, self._bag, None, together_name, self._together),
        )
        entry_card.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        return column(
            self._now,
            entry_card,
            self._question,
            self._view,
            row(self._strike, None, self._undo, self._redo),
            spacing=SPACE,
        )

    def _right(self) -> QWidget:
        """What is told, however much it is: it scrolls by itself and leaves the list its room."""
        right = QWidget()
        right.setLayout(column(self.hands, self._wire_words, self._odd, self._panel, self._plot, spacing=SPACE))
        layout = right.layout()
        assert isinstance(layout, QVBoxLayout)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setStretchFactor(self._plot, 1)
        return right

    def _order_keys(self) -> None:
        """From the fields to the list, and from what is chosen there to what can be done with it."""
        keys = (self._weight.line, self._enter_button, self._bag, self._together, self._question)
        for one, then in pairwise((*keys, self._view, self._strike, self._undo, self._redo)):
            QWidget.setTabOrder(one, then)

    def _make_table(self) -> tuple[FillTable, QTableView]:
        model = FillTable()
        view = _Rows()
        show_as_rows(view, model, self.tr("Fills, newest first"))
        view.setAlternatingRowColors(True)
        view.setWordWrap(True)
        view.verticalHeader().setDefaultSectionSize(GLOVED_ROW_PX)
        view.horizontalHeader().setSectionResizeMode(REMARK, QHeaderView.ResizeMode.Stretch)
        view.selectionModel().selectionChanged.connect(self._choose_strike_word)
        QShortcut(QKeySequence.StandardKey.Delete, view, self._strike_by_key, context=Qt.ShortcutContext.WidgetShortcut)
        self._listed = label(self.tr("Each weight is listed here, the newest on top."), "quiet")
        self._listed.setAlignment(Qt.AlignmentFlag.AlignCenter)
        view.viewport().setLayout(column(self._listed))
        return model, view

    def _add_shortcuts(self) -> None:
        for keys, act in (
            (QKeySequence.StandardKey.Undo, self._stack.undo),
            (QKeySequence.StandardKey.Redo, self._stack.redo),
        ):
            action = QAction(self)
            action.setShortcuts(QKeySequence.keyBindings(keys))
            action.triggered.connect(act)
            self.addAction(action)
        self._usual = QAction(self)
        self._usual.setShortcut(Qt.Key.Key_Escape)
        self._usual.triggered.connect(partial(self._across.setChecked, False))
        self.addAction(self._usual)

    def _take_weighed(self, text: str) -> bool:
        """A weight from the scale's wire, as if typed; what a person is typing stays. Gives whether it was taken."""
        guide = self.guide
        if not self.isVisible() or guide is None or guide.signed_off is not None:
            return False
        if self._weight.text() not in ("", self._from_wire):
            return False
        self._from_wire = text
        self._weight.set_typed(text)
        self._weight.setFocus()
        if self.desk.settings.now.scale_enters:
            self._enter()
        return True

    def _take_stray(self, text: str) -> None:
        """A weight that a scale typed where the cursor was not in the field: it waits there to be looked at."""
        if not self.isVisible():
            return
        reading = self._by_mask(text) if self.desk.settings.now.scale_mask else text
        if reading and self._take_weighed(reading):
            self.desk.say(self.tr("The scale typed while the cursor was elsewhere; its weight is in the field now."))
        elif reading:
            words = self.tr(
                "The scale typed {weight} while the cursor was elsewhere: not taken, {typed} is in the field."
            )
            self.desk.say(words.format(weight=reading, typed=self._weight.text()))

    def _by_mask(self, text: str) -> str:
        """The weight in a line of a scale that works as a keyboard, while it stands still; else blank."""
        mask = self.desk.settings.now.scale_mask
        try:
            reading = read_mask(mask).read(text) if mask else None
        except MaskNotUnderstood:
            return ""
        return reading.text if reading is not None and reading.still else ""

    def _as_sent(self) -> Quantity | None:
        """What a scale that works as a keyboard has typed, by the mask of its lines; None where that says nothing."""
        text = self._by_mask(self._weight.text())
        if not text:
            return None
        self._from_wire = text
        self._weight.set_typed(text)
        return self._weight.quantity()

    def _show_wire(self, words: str) -> None:
        self._wire_words.setText(words)
        self._wire_words.setVisible(bool(words))

    def _enter(self) -> None:
        quantity = self._weight.quantity() or self._as_sent()
        guide = self.guide
        if guide is not None and not self.pending() and self._is_enough(guide):
            self._weight.set_typed("")  # without the remark that nothing is typed
            self.finished.emit()
            return
        if guide is None or quantity is None:
            self._weight.setFocus()
            self._weight.line.selectAll()  # what is typed next takes the place of what was refused
            return
        doubt = guide.doubt(self._way, quantity.value, self._together.value())
        if doubt is None or (doubt is Doubt.OVER_LEVEL and self._is_answered(guide, quantity)):
            self._keep(guide, quantity)
            return
        if doubt is not Doubt.OVER_LEVEL:
            meant = "" if doubt is Doubt.WHOLE_FEEDING else self._meant(guide, quantity)
            self._weight.set_problem(self._doubted(doubt, guide, quantity, meant))
        self._weight.setFocus()
        self._weight.line.selectAll()

    def _is_enough(self, guide: Guide) -> bool:
        return bool(guide.fills_of(self._way)) and not (more_fills_advised(guide, self._way) or guide.line_should_move)

    def _is_answered(self, guide: Guide, quantity: Quantity) -> bool:
        """A weight that is only unlikely is asked about in the page: the next one can be typed over it."""
        words = self._doubted(Doubt.OVER_LEVEL, guide, quantity, self._meant(guide, quantity))
        settled = self._question.settled(words, (quantity.value, self._together.value()))
        self._question.setVisible(not settled)
        return settled

    def _typed_anew(self) -> None:
        self._question.hide()
        if not self._weight.text():
            self._weight.set_typed("")  # nothing is wrong with a weight that was cleared away

    def _keep_asked(self) -> None:
        quantity, guide = self._weight.quantity(), self.guide
        if guide is not None and quantity is not None:
            self._keep(guide, quantity)

    def _doubted(self, doubt: Doubt, guide: Guide, quantity: Quantity, meant: str) -> str:
        """Why a weight is doubted, with what it comes to in the farm's units, and then what was likelier meant."""
        weight = doubted(quantity, self._weight.told(), self.desk.system)
        return f"{doubt_words(doubt, weight, guide, self.desk.system, short=bool(meant))} {meant}".rstrip()

    def _meant(self, guide: Guide, quantity: Quantity) -> str:
        """What was likelier meant than a weight that is doubted; blank where nothing else can be."""
        return meant_words(quantity, lambda others: guide.likelier(self._way, others, self._together.value()))

    def _keep(self, guide: Guide, quantity: Quantity) -> None:
        kept = enter_fill(
            self.desk,
            self._stack,
            guide,
            self._way,
            self._bag.value(),
            quantity.value,
            self._weight.told() if unit_of(guide.scale, self.desk.system) else quantity.typed,
            self._together.value(),
            sent=self._weight.text() == self._from_wire,
        )
        if kept is not None:
            self._from_wire = ""
            self._weight.set_typed("")
            self._question.take_as_known(None)
        self._weight.setFocus()

    def _show_unit(self, guide: Guide) -> None:
        """A bare number is what the scale's display shows, so it is read in the display's unit."""
        unit = unit_of(guide.scale, self.desk.system)
        self._weight.set_default_unit(unit)
        self._show_awaited()
        remark = self.tr("A number alone is in {unit}.").format(unit=unit) if unit else ""
        self._weight.set_remark(remark)

    def _show_awaited(self) -> None:
        """The example is what the next weighing will show about, of so many scoopfuls as go into it."""
        guide = self.guide
        each_g = guide.awaited_g(self._way) if guide else None
        if guide is None or each_g is None:
            self._weight.set_examples(None)
            return
        awaited_g, step_g = each_g * self._together.value(), guide.scale.resolution_g if guide.scale else None
        self._weight.set_examples({one: shown.mass(awaited_g, one, resolution_g=step_g) for one in UnitSystem})

    def _show_across(self, on: bool) -> None:
        """Only what a person at the bags needs to see, large enough to be read from there."""
        self.desk.settings.keep(large_figures=on)
        self._look_across(on)

    def _look_across(self, on: bool) -> None:
        self._looks_far = on
        self._across.setText(self.tr("Back to the nor&mal size") if on else self.tr("Read from across the roo&m"))
        for part in (self._view, self._plot, self._strike, self.hands):
            part.setVisible(not on)
        self._now.setVisible(on)
        self._usual.setEnabled(on)
        for widget in (self._now, self._weight.line, self._enter_button, self._bag, self._together):
            set_style_property(widget, "across", "yes" if on else "")
        self._weight.show_example(not on)
        self._panel.show_across(on)
        self._weight.setFocus()

    def _say_now(self, fills: list[Fill], resolution_g: float | None) -> None:
        """The bag to dip next, and the weight kept last, to be checked at a glance against the scale."""
        now = self.tr("Now bag {bag}").format(bag=self._bag.value())
        counted = [fill for fill in fills if fill.counts]
        if counted:
            last = counted[-1]
            kept = as_typed(last.mass_g, last.typed, self.desk.system, resolution_g=resolution_g)
            now = self.tr("{now}\nLast kept: {mass}").format(now=now, mass=kept)
        self._now.setText(now)

    def _take_back(self) -> None:
        self._stack.undo()
        self._weight.setFocus()

    def _do_again(self) -> None:
        self._stack.redo()
        self._weight.setFocus()

    def _selected(self) -> Fill | None:
        rows = self._view.selectionModel().selectedRows()
        return self._table.fill_at(rows[0].row()) if rows else None

    def _strike_or_restore(self) -> None:
        fill, guide = self._selected(), self.guide
        if fill is None or guide is None:
            return
        # From here, not from a button that goes dark, the next weight is typed.
        self._weight.line.setFocus(Qt.FocusReason.OtherFocusReason)
        if not fill.counts:
            restore_fill(self.desk, self._stack, guide, fill)
            return
        desk, stack = self.desk, self._stack

        def strike(reason: str) -> None:
            strike_fill(desk, stack, guide, fill, reason)

        question = self.tr("Why should {typed} from bag {bag} not count?")
        typed = as_typed(fill.mass_g, fill.typed, self.desk.system)
        self.desk.ask.reason(question.format(typed=typed, bag=fill.bag), strike, usual_slips(self._way))

    def _strike_by_key(self) -> None:
        """Delete is not to bring back what it took out of the count."""
        fill = self._selected()
        if fill is not None and fill.counts and self._strike.isVisible():
            self._strike_or_restore()

    def _choose_strike_word(self) -> None:
        fill = self._selected()
        self._strike.setEnabled(fill is not None)
        counted = fill is None or fill.counts
        self._strike.setText(self.tr("Str&ike out …") if counted else self.tr("&Count again"))

    def _show_stack(self) -> None:
        self._undo.setEnabled(self._stack.canUndo())
        self._redo.setEnabled(self._stack.canRedo())
        self._name_undo(self._stack.undoText())
        self._name_redo(self._stack.redoText())

    def _name_undo(self, text: str) -> None:
        nothing = self.tr("Nothing to take back. To take a fill out of the count, select it and strike it out.")
        self._undo.setToolTip(tip(text or nothing))

    def _name_redo(self, text: str) -> None:
        self._redo.setToolTip(tip(text))


class _Told(QScrollArea):
    """It asks for no height: the page around it never scrolls for what is told."""

    def sizeHint(self) -> QSize:
        return QSize(super().sizeHint().width(), 0)

    def minimumSizeHint(self) -> QSize:
        return QSize(super().minimumSizeHint().width(), 0)


class _Rows(QTableView):
    """It takes the room that is left and scrolls by itself: asking for more, it would make the page scroll too."""

    def sizeHint(self) -> QSize:
        return QSize(super().sizeHint().width(), LIST_PX)

    def minimumSizeHint(self) -> QSize:
        return QSize(super().minimumSizeHint().width(), LIST_PX)


def _toggle(on_change: Callable[[bool], None]) -> SteadyButton:
    made = SteadyButton("")
    made.setProperty("kind", "link")
    made.setCheckable(True)
    made.setAutoDefault(True)
    made.toggled.connect(on_change)
    return made


def _spin(name: str, highest: int) -> QSpinBox:
    spin = SteadySpin()
    spin.setRange(1, highest)
    spin.setAccessibleName(name)
    spin.lineEdit().setAccessibleName(name)
    spin.setMinimumWidth(84)
    spin.lineEdit().setTextMargins(SPACE, 0, 0, 0)  # the style leaves the number at the very edge
    set_style_property(spin, "kind", "count")
    return spin
