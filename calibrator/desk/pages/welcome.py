"""The first start: farm, scale, scoop, first lot, one small step after another. Each is kept at once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import TypeVar

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QRadioButton, QStackedWidget, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.emblem import Emblem
from calibrator.desk.forms.enter import on_enter
from calibrator.desk.forms.fields import TextField, focus_on
from calibrator.desk.forms.following import drawing
from calibrator.desk.forms.form import Form
from calibrator.desk.forms.language_form import ScreenLanguage
from calibrator.desk.forms.lot_form import LotForm
from calibrator.desk.forms.scale_form import ScaleForm
from calibrator.desk.forms.scoop_form import ScoopForm
from calibrator.desk.page import Page
from calibrator.desk.parts import button, card, column, label, row, scrolled
from calibrator.desk.sample import open_sample_season
from calibrator.desk.standing import FirstStep, first_step
from calibrator.desk.theme import SPACE
from calibrator.desk.tongues import PAPER_LANGUAGES, thinks_metric, usual_currency, usual_paper
from calibrator.desk.widgets.drawing import Drawing
from calibrator.desk.widgets.later import Later
from calibrator.desk.widgets.side_by_side import SideBySide
from calibrator.desk.widgets.step_strip import StepStrip
from calibrator.model import Farm, Lot, Scale, Scoop, UnitSystem, new_id

T = TypeVar("T", Lot, Scale, Scoop)
F = TypeVar("F", ScaleForm, ScoopForm, LotForm)
WIDEST = 820
STEPS = tuple(FirstStep)
DRAWINGS = {FirstStep.SCALE: "zero", FirstStep.LOT: "bags"}  # where the step leaves room for one


class FarmStep(QWidget):
    """The farm's name, and which units it thinks in."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self.language = ScreenLanguage(desk)
        self.language.about_to_change.connect(self._carry_over)
        self.name = TextField(self.tr("Name of the farm"))
        self.farm_units = QRadioButton(self.tr("Farm units: oz, lb, qt, gal, in, °F"))
        self.metric_units = QRadioButton(self.tr("Metric: g, kg, L, mm, °C"))
        self._units = QButtonGroup(self)
        for choice in (self.farm_units, self.metric_units):
            self._units.addButton(choice)
        (self.metric_units if thinks_metric() else self.farm_units).setChecked(True)
        told = self.tr("Either can be typed at any time, and the choice can be changed later.")
        shown = label(self.tr("Numbers are shown in"))
        who = SideBySide(self.name, self.language, gap=2 * SPACE)
        units = (shown, self.farm_units, self.metric_units, label(told, "quiet"))
        layout = column(who, *units, None, self._the_way(), None)
        self.metric_units.toggled.connect(self._show_units)
        layout.setContentsMargins(0, 0, 0, 0)
        self.setLayout(layout)

    def load(self, farm: Farm | None) -> None:
        if self.desk.settings.now.paper_languages not in PAPER_LANGUAGES:
            self.language.say(self.tr("Paper comes in it too; Set-up has a choice for paper."))
        carried, self.desk.carried = self.desk.carried, None
        if isinstance(carried, Farm):
            farm = carried
        if farm is not None:
            self.name.set_text(farm.name)
            (self.metric_units if farm.units is UnitSystem.METRIC else self.farm_units).setChecked(True)

    def made(self) -> Farm | None:
        """The farm as typed; None without a name, which is said beside it."""
        if not self.name.filled():
            focus_on(self.name)
            return None
        return self._typed()

    def _the_way(self) -> QHBoxLayout:
        """What this is all about, in three drawings."""
        way = {
            "weigh": self.tr("Weigh every new lot"),
            "ruler": self.tr("Draw its line"),
            "pail": self.tr("Mix by its chart"),
        }
        # No farm is kept yet: the scale in the drawing shows the units that are chosen here.
        self.drawings = {name: Drawing(name, words, self._chosen) for name, words in way.items()}
        drawn = []
        for name, words in way.items():
            told = label(words, "quiet")
            told.setAlignment(Qt.AlignmentFlag.AlignHCenter)
            drawn.append(column(self.drawings[name], told))
        return row(None, *drawn, None)

    @property
    def _chosen(self) -> UnitSystem:
        return UnitSystem.METRIC if self.metric_units.isChecked() else UnitSystem.FARM

    def _show_units(self) -> None:
        for drawn in self.drawings.values():
            drawn.set_system(self._chosen)

    def _carry_over(self) -> None:
        """Another language means another window: what is typed here goes along."""
        self.desk.carried = self._typed()

    def _typed(self) -> Farm:
        units = self._chosen
        farm = self.desk.farm or Farm(id=new_id(), name="", paper=usual_paper(units), currency=usual_currency())
        return replace(farm, name=self.name.text(), units=units)


class WelcomePage(Page):
    """One step at a time; a step that was kept is shown again when one goes back to it."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, "", parent)
        self.title.setText(self.tr("Welcome"))
        self.body.removeWidget(self.title)
        self._step: FirstStep | None = None
        self._stays = False  # the window was made anew in another language, at the step that was open
        self.farm_step = FarmStep(desk)
        self._scale = Later(lambda: self._ends(ScaleForm(desk, self.tr("Kitchen scale"))))
        self._scoop = Later(lambda: self._ends(ScoopForm(desk)))
        self._lot = Later(lambda: self._ends(LotForm(desk, brief=True)))
        self._strip = StepStrip()
        self._strip.set_names({step: self._words(step)[0] for step in STEPS})
        self._heading = label("", "heading")
        self._about = label("")
        self.back_button = button(self.tr("Bac&k"), self._back)
        self.sample_button = button(self.tr("Look at an invented &season first"), self._open_sample, "link")
        self.leave_button = button(self.tr("Finish setting up &later"), self._later, "link")
        self.next_button = button(self.tr("Keep and go &on"), self.keep, "main")
        self.farm_step.name.entered.connect(self.keep)
        for choice in (self.farm_step.farm_units, self.farm_step.metric_units):
            on_enter(choice, self.keep)
        self._lay_out()

    @property
    def scale_form(self) -> ScaleForm:
        return self._scale.content

    @property
    def scoop_form(self) -> ScoopForm:
        return self._scoop.content

    @property
    def lot_form(self) -> LotForm:
        return self._lot.content

    @property
    def step(self) -> FirstStep:
        """The step that is open."""
        return self._step or FirstStep.FARM

    def reload(self) -> None:
        if self._step is None:
            self._stays = isinstance(self.desk.carried, Farm)
            self._show(FirstStep.FARM if self._stays else self._missing())

    def open(self, thing_id: str) -> None:
        if self._stays:
            self._stays = False
            return
        self._show(self._missing())

    def _missing(self) -> FirstStep:
        return first_step(self.desk.records, self.desk.farm) or FirstStep.LOT

    def _ends(self, form: F) -> F:
        """Enter in the last field of a step keeps it, as in the only field of the first."""
        form.enter_keeps = True
        form.ended.connect(self.keep)
        return form

    def keep(self) -> None:
        """Keep what this step asks for and open the next one."""
        if self.step is FirstStep.FARM:
            self._keep_farm()
        elif self.step is FirstStep.SCALE:
            self._keep_thing(self.scale_form)
        elif self.step is FirstStep.SCOOP:
            self._keep_thing(self.scoop_form)
        else:
            self._keep_lot()

    def help_title(self) -> str:
        return {
            FirstStep.FARM: "",
            FirstStep.SCALE: QCoreApplication.translate("Hands", "Get the scale ready"),
            FirstStep.SCOOP: QCoreApplication.translate("Glossary", "Scoop"),
            FirstStep.LOT: QCoreApplication.translate("Glossary", "Lot"),
        }[self.step]

    def pending(self) -> str:
        """What is typed here and not kept yet; blank where all is kept."""
        forms = (self._scale.made, self._scoop.made, self._lot.made)
        return self._heading.text() if any(form is not None and form.typed for form in forms) else ""

    def _keep_farm(self) -> None:
        made = self.farm_step.made()
        if made is None:
            return
        kept = self.desk.keep(made)
        if kept is not None:
            self.desk.show_farm(kept.id)
            self._go_on()

    def _keep_thing(self, form: Form[T]) -> None:
        if form.thing is not None and not form.typed:
            self._go_on()
            return
        made = form.take()
        if made is None:
            return
        kept = self.desk.keep(made)
        if kept is not None:
            form.load(kept)
            self._go_on()

    def _keep_lot(self) -> None:
        made = self.lot_form.take()
        if made is None:
            return
        kept = self.desk.keep(made)
        if kept is not None:
            self.lot_form.load(kept)
            self._step = None
            self.desk.go_to.emit("weigh_in", kept.id)

    def _open_sample(self) -> None:
        if open_sample_season():
            self.desk.say(self.tr("A second window opens with an invented farm. What is done there is not kept."))
        else:
            self.desk.ask.tell(self.tr("The sample season could not be opened. Start the program with --demo."))

    def _go_on(self) -> None:
        self._show(STEPS[STEPS.index(self.step) + 1])

    def _back(self) -> None:
        self._show(STEPS[max(STEPS.index(self.step) - 1, 0)])

    def _later(self) -> None:
        self._step = None
        self.desk.go_to.emit("today", "")

    def _show(self, step: FirstStep) -> None:
        """Open a step with what is kept of it; what is typed there and not kept stays."""
        self._step = step
        place = STEPS.index(step)
        self._stack.setCurrentIndex(place)
        heading, about = self._words(step)
        self._strip.show_place(step, frozenset())
        self._heading.setText(heading)
        self._about.setText(about)
        self.back_button.setVisible(place > 0)
        self.leave_button.setVisible(self.desk.farm is not None)
        self.sample_button.setVisible(step is FirstStep.FARM)
        last = step is FirstStep.LOT
        self.next_button.setText(self.tr("Keep and weigh it &in") if last else self.tr("Keep and go &on"))
        self._fill_in(step)

    def _fill_in(self, step: FirstStep) -> None:
        records, farm = self.desk.records, self.desk.farm
        if step is FirstStep.FARM or farm is None:
            self.farm_step.load(farm)
            focus_on(self.farm_step.name)
            return
        if step is FirstStep.SCALE:
            _load(self.scale_form, records.every(Scale, farm.id))
        elif step is FirstStep.SCOOP:
            _load(self.scoop_form, records.every(Scoop, farm.id))
        else:
            _load(self.lot_form, records.every(Lot, farm.id))

    def _words(self, step: FirstStep) -> tuple[str, str]:
        return {
            FirstStep.FARM: (
                self.tr("Your farm"),
                self.tr(
                    "This program finds out what a scoop of milk replacer weighs, lot by lot, and where its "
                    "fill line belongs. Four short steps, then the first weigh-in."
                ),
            ),
            FirstStep.SCALE: (
                self.tr("The scale"),
                self.tr("The one on which scoopfuls will be weighed. Look at its plate or its manual."),
            ),
            FirstStep.SCOOP: (
                self.tr("The scoop"),
                self.tr("Choose its shape and measure it inside with a ruler."),
            ),
            FirstStep.LOT: (
                self.tr("The first lot"),
                self.tr(
                    "The powder that is fed now or comes next. Only its lot number is needed; price and the rest of "
                    "the label can be told later, on Lots."
                ),
            ),
        }[step]

    def _drawing(self, step: FirstStep) -> Drawing:
        return drawing(self.desk, DRAWINGS[step], self._words(step)[0])

    def _lay_out(self) -> None:
        self._stack = QStackedWidget()
        parts: tuple[QWidget, ...] = (self.farm_step, self._scale, self._scoop, self._lot)
        for step, part in zip(STEPS, parts, strict=True):
            inner = QWidget()
            drawn = row(None, self._drawing(step), None) if step in DRAWINGS else column()
            inside = column(part, None, drawn, None)
            inside.setContentsMargins(0, 0, 0, 0)
            inner.setLayout(inside)
            self._stack.addWidget(scrolled(inner))
        head = QHBoxLayout()
        head.setSpacing(2 * SPACE)
        head.addWidget(Emblem())
        head.addWidget(self.title)
        head.addWidget(self._strip, 1)
        inside_card = column(self._heading, self._about, self._stack)
        inside_card.setStretch(2, 1)
        frame = card(inside_card)
        foot = row(self.back_button, self.leave_button, self.sample_button, None, self.next_button)
        middle = QWidget()
        middle.setMaximumWidth(WIDEST)
        inside = QVBoxLayout(middle)
        inside.setContentsMargins(0, SPACE, 0, SPACE)
        inside.setSpacing(2 * SPACE)
        inside.addLayout(head)
        inside.addWidget(frame, 1)
        inside.addLayout(foot)
        across = QHBoxLayout()
        across.addStretch(1)
        across.addWidget(middle, 100)
        across.addStretch(1)
        self.body.addLayout(across, 1)


def _load(form: Form[T], things: Sequence[T]) -> None:
    if not form.typed:
        form.load(things[-1] if things else None)
    form.start()
