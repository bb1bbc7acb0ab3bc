"""A scale: its name, the step of its display, the most it weighs."""

from __future__ import annotations

from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.examples import CAPACITY, STEP
from calibrator.desk.forms.fields import Suggestions, TextField
from calibrator.desk.forms.form import Form
from calibrator.desk.parts import column, row
from calibrator.desk.weigh_in.scale_unit import in_another_unit
from calibrator.desk.widgets.question import Question
from calibrator.model import Scale, UnitSystem, new_id
from calibrator.science.scale import carries_a_scoop, likeliest_capacity, steps_usual
from calibrator.units import Kind, Quantity

STEPS = {UnitSystem.FARM: ("0.1 oz", "0.05 oz", "0.01 lb", "1 g"), UnitSystem.METRIC: ("1 g", "0.1 g", "5 g")}
CAPACITIES = {UnitSystem.FARM: ("11 lb", "22 lb", "5 kg"), UnitSystem.METRIC: ("5 kg", "10 kg", "2 kg")}


# Wide of every scale that a calf barn has, from a letter scale to one for pallets; common practice, no source.
FINEST_G, COARSEST_G = 0.001, 1000.0
SMALLEST_MAX_G, LARGEST_MAX_G = 200.0, 2_000_000.0
PLATE_UNITS = ("lb", "kg")  # in which plates tell it


class ScaleForm(Form[Scale]):
    """Two figures that stand on the scale's plate, with the usual ones to choose from."""

    kind = Scale

    def __init__(self, desk: Desk, suggested_name: str = "") -> None:
        super().__init__(desk)
        self._suggested_name = suggested_name
        self.name = TextField(self.tr("Name of the scale"))
        step_note = self.tr("The smallest change on its display, in the unit you will read.")
        self.step = Amount(
            desk,
            self.tr("Step of the display"),
            Kind.MASS,
            step_note,
            lowest=FINEST_G,
            highest=COARSEST_G,
            must_name=("oz", "g"),  # a bare 0.1 may be of ounces, pounds or grams, and nothing later shows which
            examples=STEP,
        )
        most_note = self.tr("As on its plate, after Max.")
        self.capacity = Amount(
            desk,
            self.tr("Most it weighs"),
            Kind.MASS,
            most_note,
            lowest=SMALLEST_MAX_G,
            highest=LARGEST_MAX_G,
            must_name=PLATE_UNITS,  # a bare 5 is read by nobody as ounces
            examples=CAPACITY,
        )
        often = self.tr("Often:")
        self.steps = Suggestions(often, self.step.line)
        self.capacities = Suggestions(often, self.capacity.line)
        self.body.addWidget(self.name)
        self.question = Question(self.tr("Yes, that is right"))
        self.question.hide()
        self.question.answered.connect(self.ended)
        self.body.addLayout(row(column(self.step, self.steps), column(self.capacity, self.capacities), spacing=24))
        self.body.addWidget(self.question)
        self.body.addStretch(1)
        self.steps.chosen.connect(self.step.take)
        self.capacities.chosen.connect(self.capacity.take)
        for field in (self.name, self.step, self.capacity):
            field.edited.connect(self.edited)
            field.edited.connect(self.question.hide)
        self.enter_moves_on()

    def fill_in(self, thing: Scale | None) -> None:
        self.capacities.offer(CAPACITIES[self.desk.system])
        self.steps.offer(STEPS[self.desk.system])
        self.name.set_text(thing.name if thing else self._suggested_name)
        self.step.set_value(thing.resolution_g if thing else None, thing.resolution_typed if thing else "")
        self.capacity.set_value(thing.capacity_g if thing else None, thing.capacity_typed if thing else "")
        self.question.hide()
        self.question.take_as_known((thing.resolution_g, thing.capacity_g) if thing else None)

    def made(self) -> Scale | None:
        farm = self.desk.farm
        sound = [self.name.filled(), self.step.understood(), self.capacity.understood()]
        step, capacity = self.step.quantity(), self.capacity.quantity()
        if farm is None or not all(sound) or step is None or capacity is None:
            return None
        if step.value >= capacity.value:
            self.capacity.say(self.tr("This is not more than one step of the display. Check both."), wrong=True)
            return None
        if not self.question.settled(self._doubt(step, capacity), (step.value, capacity.value)):
            self.question.show()
            return None
        return Scale(
            id=self.thing.id if self.thing else new_id(),
            farm_id=farm.id,
            name=self.name.text(),
            resolution_g=step.value,
            resolution_typed=self.step.told(),
            capacity_g=capacity.value,
            capacity_typed=self.capacity.told(),
            retired_on=self.retired_on(),
            revision=self.thing.revision if self.thing else "",
        )

    def _doubt(self, step: Quantity, capacity: Quantity) -> str:
        if not carries_a_scoop(capacity.value):
            return self._small(capacity)
        return "" if steps_usual(step.value, capacity.value) else self._rare()

    def _small(self, capacity: Quantity) -> str:
        others = {g: told for g, told in in_another_unit(capacity).items() if told.endswith(PLATE_UNITS)}
        likeliest_g = likeliest_capacity(others)
        if likeliest_g is None:
            text = self.tr("A scale up to {most} hardly weighs a full scoop. Is {most} right?")
            return text.format(most=self.capacity.told())
        text = self.tr("A scale up to {most} hardly weighs a full scoop; {meant} is usual. Is {most} right?")
        return text.format(most=self.capacity.told(), meant=others[likeliest_g])

    def _rare(self) -> str:
        text = self.tr("A scale up to {most} that shows every {step} is rare. Are both figures right?")
        return text.format(most=self.capacity.told(), step=self.step.told())
