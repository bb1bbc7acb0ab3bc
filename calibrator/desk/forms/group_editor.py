"""One group of calves of a plan: how many, how much each, how strong."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from functools import partial
from math import isclose
from operator import attrgetter

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QButtonGroup, QFrame, QRadioButton, QVBoxLayout, QWidget

from calibrator.desk import shown as figures
from calibrator.desk.context import Desk
from calibrator.desk.days import DayNotUnderstood
from calibrator.desk.forms.additive_editor import AdditiveEditor
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.day_rows import FeedingRow, StepRow
from calibrator.desk.forms.fields import Captioned, DayField, TextField
from calibrator.desk.forms.rate_editor import RateEditor
from calibrator.desk.forms.reach import FEEDING_ML
from calibrator.desk.forms.rows_editor import RowsEditor
from calibrator.desk.parts import button, column, label, row, set_style_property
from calibrator.desk.rate_words import mass_text
from calibrator.desk.signed_for import SignedFor
from calibrator.desk.speech import decimal_comma
from calibrator.desk.strength_words import solids_caution
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.count_field import CountField
from calibrator.desk.widgets.fold import Fold
from calibrator.desk.widgets.initials import select_on_entry
from calibrator.model import MixingRate, PlanGroup, RateBasis, UnitSystem, VolumeMeans
from calibrator.science.errors import CannotCompute
from calibrator.science.feeding import mix_per_calf, powder_per_calf_g, target_missed_g, usual_volume_ml
from calibrator.science.mixing import Mix, Powder
from calibrator.units import Kind, read, show_typed_volume

MOST_FEEDINGS = 6
FEEDING_STEPS = {UnitSystem.FARM: "1/2 qt", UnitSystem.METRIC: "0.5 L"}  # in which feedings are laid down
MOST_ADDITIVES, MOST_STEPS = 6, 12
_BASES = {VolumeMeans.WATER: RateBasis.ON_WATER, VolumeMeans.FINISHED_MIX: RateBasis.MADE_UP}


def _usual(system: UnitSystem, signed: SignedFor | None, powder: Powder | None, water_c: float) -> PlanGroup:
    """What most farms begin with: the powder of a feeding in the volume of a feeding, in round figures.

    The powder as it was signed off for, in as much as gives it the usual strength; else the usual powder.
    """
    farm = system is UnitSystem.FARM
    basis, usual, feeding = (RateBasis.ON_WATER, "10 oz", "2 qt") if farm else (RateBasis.MADE_UP, "280 g", "2 L")
    each = read(feeding, Kind.VOLUME, system).value
    if signed and powder:
        each = usual_volume_ml(signed.newest_g, powder, water_c, read(FEEDING_STEPS[system], Kind.VOLUME, system).value)
    mass = signed.newest_g if signed else read(usual, Kind.MASS, system).value
    rate = MixingRate(basis=basis, powder_mass_g=mass, volume_ml=each)
    return PlanGroup(name="", calves=0, volume_ml=each, volume_means=VolumeMeans.FINISHED_MIX, rate=rate)


class GroupEditor(QFrame):
    """Fields over one group. Whether a volume is finished mix or water is asked, never guessed."""

    edited = Signal()
    remove_wanted = Signal()
    rearranged = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._powder: Powder | None = None
        self._signed: SignedFor | None = None
        self._water_c = 43.0
        self._alone, self._beside_signed = True, False
        self.setProperty("kind", "card")
        self.heading = label("", "heading", wrap=False)
        self.remove = button(self.tr("Leave this group out"), self._ask_remove, "link")
        self.name = TextField(self.tr("Name, like “under two weeks”"))
        select_on_entry(self.name.line)  # a name that the program gave is typed over
        self.calves, self.feedings = CountField(), CountField(1, MOST_FEEDINGS)
        self._calves = Captioned(self.tr("How many calves"), self.calves)
        self._feedings = Captioned(self.tr("Feedings a day"), self.feedings)
        caption = self.tr("Volume for each calf and feeding")
        self.volume = Amount(desk, caption, Kind.VOLUME, within=FEEDING_ML)
        self.finished, self.water = (
            QRadioButton(self.tr("Finished mix")),
            QRadioButton(self.tr("Water, powder on top")),
        )
        self._means = QButtonGroup(self)
        self._means_note = label("", "quiet")
        for choice in (self.finished, self.water):
            self._means.addButton(choice)
        self.rate = RateEditor(desk)
        self.additives = RowsEditor(partial(AdditiveEditor, desk), self.tr("Add an additive"), MOST_ADDITIVES)
        self.day_feedings = RowsEditor(partial(FeedingRow, desk), self.tr("Add a feeding that differs"), MOST_FEEDINGS)
        self.steps = RowsEditor(partial(StepRow, desk), self.tr("Add a step"), MOST_STEPS)
        self.day_one = DayField(self.tr("Day 1 of these calves"), self._today)
        self._calendar = label("", "quiet")
        self.more = Fold(
            self.tr("More about this group: additives, feedings that differ, steps to weaning"),
            self.tr("Less about this group"),
            self._make_more(),
        )
        self._lay_out()
        self.name.edited.connect(self.edited)
        for field in (self.calves, self.feedings):
            field.counted.connect(self.edited)
        self.calves.counted.connect(self._calves_typed)
        for signal in (self.volume.edited, self._means.buttonClicked):
            signal.connect(self._feeding_typed)
        self.rate.edited.connect(self._typed)

    def load(self, group: PlanGroup) -> None:
        """Show a group."""
        self._show(group, group)

    def begin(self) -> None:
        """Show usual figures; what the volume means is left open."""
        usual, signed = _usual(self.desk.system, self._signed, self._powder, self._water_c), self._signed
        self._show(usual, None)
        self.rate.begin(usual.rate, signed.typed if signed else "", powder_stays=signed is not None, waits=True)
        self._tell_means()

    def begin_like(self, other: PlanGroup) -> None:
        """Show the mix of another group, whose strength stays whatever volume these are given; how many is asked.

        A recipe told for the feeding's own volume follows that: a powder typed beside it is for one calf.
        """
        self.load(replace(other, name="", calves=0, additives=(), feedings=(), steps=(), day_one=None))
        self.calves.clear()
        if other.rate.basis is _BASES[other.volume_means] and isclose(other.rate.volume_ml, other.volume_ml):
            self.rate.begin(other.rate, "", powder_stays=False)

    def _show(self, shown: PlanGroup, group: PlanGroup | None) -> None:
        self.name.set_text(shown.name)
        self.calves.set_count(shown.calves)
        if group is None:
            self.calves.clear()  # to be typed, not to be written over
        self.feedings.set_count(shown.feedings_per_day)
        self.volume.set_value(shown.volume_ml)
        self._means.setExclusive(False)
        self.finished.setChecked(group is not None and shown.volume_means is VolumeMeans.FINISHED_MIX)
        self.water.setChecked(group is not None and shown.volume_means is VolumeMeans.WATER)
        self._means.setExclusive(True)
        self.rate.load(shown.rate)
        self._load_rows(group)
        self.more.unfold(bool(self.additives.rows or self.day_feedings.rows or self.steps.rows))
        self._tell_means()

    def show_place(self, number: int, alone: bool) -> None:
        """Which group of the plan this is."""
        name = self.tr("Group {number}").format(number=number)
        self._alone = alone
        self.heading.setText(self.tr("Calves") if alone else name)
        self.name.line.setPlaceholderText(name)
        self.name.setVisible(not alone or bool(self.name.text()))
        self.remove.setVisible(not alone)
        told = self.tr("Leave group {number} out").format(number=number)
        self.remove.setAccessibleName(told)

    def mixed_with(self, powder: Powder | None, water_temperature_c: float, signed: SignedFor | None) -> None:
        """Tell which powder and water it is, and which powder of a feeding the lot in use was signed off for."""
        self._powder, self._water_c, self._signed = powder, water_temperature_c, signed
        self.rate.mixed_with(powder, water_temperature_c)
        self._tell_means()

    def takes_signed(self) -> bool:
        """Whether its calves get what the lot in use was signed off for."""
        made = self._mix()
        return made is not None and self._signed is not None and self._missed(made[1]) is None

    def stand_beside(self, signed_is_taken: bool) -> None:
        """Tell whether another group takes what was signed off for: then this one may well take something else."""
        if signed_is_taken is not self._beside_signed:
            self._beside_signed = signed_is_taken
            self._tell_means()

    def ask_calves(self) -> None:
        """Say that a number of calves is missing; the field says it no more once one is typed."""
        self._calves.say(self.tr("Type how many."), wrong=True)

    def understood(self) -> bool:
        """Whether the group can be kept; what is missing is said beside the field."""
        chosen = self.means() is not None
        sound = [self.volume.understood(), chosen, self.rate.understood()]
        lists = (self.additives.rows, self.day_feedings.rows, self.steps.rows)
        sound += [made.understood() for rows in lists for made in rows]
        sound.append(self._calendar_understood())
        if not chosen:
            self._means_note.setText(self.tr("Choose which of the two the volume is."))
            set_style_property(self._means_note, "state", "wrong")
        return all(sound)

    def means(self) -> VolumeMeans | None:
        if self.water.isChecked():
            return VolumeMeans.WATER
        return VolumeMeans.FINISHED_MIX if self.finished.isChecked() else None

    def group(self) -> PlanGroup | None:
        """The group as typed; None where something is missing."""
        return self._group_as(self.means(), self.rate.rate())

    def _group_as(self, means: VolumeMeans | None, rate: MixingRate | None) -> PlanGroup | None:
        volume = self.volume.value()
        if volume is None or means is None or rate is None:
            return None
        return PlanGroup(
            name=self.called(),
            calves=self.calves.count(),
            volume_ml=volume,
            volume_means=means,
            rate=rate,
            feedings_per_day=self.feedings.count(),
            additives=tuple(made for editor in self.additives.rows if (made := editor.made(volume, means))),
            feedings=tuple(fed for one in self.day_feedings.rows if (fed := one.made(rate))),
            steps=tuple(sorted((step.made() for step in self.steps.rows), key=attrgetter("from_day"))),
            day_one=self._day_one(),
        )

    def called(self) -> str:
        """The group's name; one among several has its number where none is typed, so that it can be told from them."""
        return self.name.text() or ("" if self._alone else self.name.line.placeholderText())

    def in_order(self) -> tuple[QWidget, ...]:
        """The fields in the order in which the Tab key reaches them."""
        rate = self.rate
        figures = (rate.basis, rate.mass.line, rate.volume.line, rate.share.line)
        choices = (self.volume.line, self.finished, self.water)
        rows = (*self.additives.in_order(), *self.day_feedings.in_order())
        more = (self.more.link, *rows, self.day_one.line, *self.steps.in_order())
        return (self.name.line, self.calves, self.feedings, *choices, *figures, *more, self.remove)

    def _make_more(self) -> QWidget:
        caution = self.tr(
            "Additives change how strong the mix is and how fast a stomach empties: follow the product label, and "
            "ask your veterinarian."
        )
        self.caution = label(caution, "caution")
        by_day = self.tr(
            "Steps: from a day of the calves on they get another volume, up or down to weaning. Before the first step "
            "they get what stands above."
        )
        inner = QWidget()
        inside = column(
            self.additives, self.caution, self.day_feedings, label(by_day, "quiet"), self.day_one, self.steps,
            self._calendar, spacing=SPACE,
        )  # fmt: skip
        inside.setContentsMargins(0, 0, 0, 0)
        inner.setLayout(inside)
        for rows in (self.additives, self.day_feedings, self.steps):
            rows.edited.connect(self._typed)
            rows.rearranged.connect(self.rearranged)
        self.day_one.edited.connect(self._typed)
        return inner

    def _load_rows(self, group: PlanGroup | None) -> None:
        for rows in (self.additives, self.day_feedings, self.steps):
            rows.clear()
        for additive in group.additives if group else ():
            self.additives.place().load(additive, group.volume_ml if group else 0.0)
        for feeding in group.feedings if group else ():
            self.day_feedings.place().load(feeding)
        for step in group.steps if group else ():
            self.steps.place().load(step)
        self.day_one.set_day(group.day_one if group else None)

    def _today(self) -> date:
        return self.desk.clock().date()

    def _day_one(self) -> date | None:
        try:
            return self.day_one.day()
        except DayNotUnderstood:
            return None

    def _calendar_understood(self) -> bool:
        if not self.day_one.understood():
            return False
        if self.steps.rows and self._day_one() is None:
            self.day_one.say(
                self.tr("Type the day that counts as day 1, so that the steps find their days."), wrong=True
            )
            return False
        days = [made.day.count() for made in self.steps.rows]
        if len(days) != len(set(days)):
            self.steps.rows[-1].volume.say(self.tr("Two steps on one day."), wrong=True)
            return False
        return True

    def _tell_more(self) -> None:
        """What is told only where there is something to tell."""
        self.caution.setVisible(bool(self.additives.rows))
        self.rate.set_additives(bool(self.additives.rows))
        self._feedings.setVisible(not self.day_feedings.rows)
        basis = self.rate.shown_basis()
        for made in self.day_feedings.rows:
            made.show_basis(basis)
        self._calendar.setText(self._day_text())

    def _day_text(self) -> str:
        """Which of their days the calves have come to."""
        first = self._day_one()
        if first is None:
            return ""
        return self.tr("Today is their day {day}.").format(day=(self._today() - first).days + 1)

    def _ask_remove(self) -> None:
        self.remove_wanted.emit()

    def _calves_typed(self) -> None:
        self._calves.say("")

    def _feeding_typed(self) -> None:
        volume = self.volume.value()
        if volume is not None:
            means = self.means()
            self.rate.follow(volume, self.volume.told(), _BASES[means] if means else None)
        self._typed()

    def _typed(self) -> None:
        self._tell_means()
        self.edited.emit()

    def _tell_means(self) -> None:
        """Say what the volume amounts to in the other meaning, and what each calf gets."""
        self._tell_more()
        open_ = self.means() is None
        set_style_property(self._means_note, "state", "care" if open_ else "ok")
        mix, powder_g = self._mix() or (None, 0.0)
        if open_:
            self._means_note.setText(self._difference())
        else:
            self._means_note.setText(self._other_meaning(mix) if mix else "")
        if mix is None or self.day_feedings.rows:  # feedings that differ have volumes of their own
            self.rate.tell("", "")
        else:
            self.rate.tell(self._outcome(mix, powder_g), self._advice(mix, powder_g))

    def _mix(self) -> tuple[Mix, float] | None:
        """What one calf gets at a feeding, and the powder alone in it."""
        return self._mix_of(self.group())

    def _mix_of(self, group: PlanGroup | None) -> tuple[Mix, float] | None:
        if group is None or self._powder is None:
            return None
        try:
            mix = mix_per_calf(group, self._powder, self._water_c)
            return mix, powder_per_calf_g(group, self._powder, self._water_c)
        except CannotCompute:
            return None

    def _outcome(self, mix: Mix, powder_g: float) -> str:
        told = self.tr("= {powder} of powder per calf and feeding, {solids} solids")
        outcome = told.format(powder=self._mass(powder_g), solids=figures.share(mix.solids_share))
        missed = self._missed(powder_g) if self._beside_signed else None
        if missed is None:
            return outcome
        words = self.tr("The lot was signed off for {target} a feeding; the table says how many scoopfuls that is.")
        return f"{outcome}\n{words.format(target=self._mass(missed))}"

    def _missed(self, powder_g: float) -> float | None:
        signed, farm = self._signed, self.desk.farm
        return target_missed_g(powder_g, signed.targets_g, farm.tolerance_share) if signed and farm else None

    def _mass(self, mass_g: float) -> str:
        return mass_text(mass_g, self.desk.system)

    def _advice(self, mix: Mix, powder_g: float) -> str:
        """Where the powder is not what scoops are marked for, or the mix is not of the usual strength."""
        told = []
        if not self._beside_signed and (missed := self._missed(powder_g)):
            words = self.tr("The lot in use was signed off for {target} a feeding. Look at both volumes.")
            told.append(words.format(target=self._mass(missed)))
        return "\n".join(text for text in (*told, solids_caution(mix)) if text)

    def _difference(self) -> str:
        """What is to be chosen, by the figures typed; in general words where they make no mix yet."""
        finished, on_water = self._mix_as(VolumeMeans.FINISHED_MIX), self._mix_as(VolumeMeans.WATER)
        if finished is None or on_water is None:
            return self.tr("Choose one: it decides how much powder each calf gets.")
        (as_mix, powder_g), (as_water, on_top_g) = finished, on_water
        words = self.tr(
            "Choose one: {volume} of mix has {water} of water and {powder} of powder in it; {volume} of water becomes "
            "{mix} with {on_top} of powder."
        )
        comma, system = decimal_comma(), self.desk.system
        volume, water, whole = (
            show_typed_volume(each, system, decimal_comma=comma)
            for each in (as_water.water_ml, as_mix.water_ml, as_water.volume_ml)
        )
        powder, on_top = self._mass(powder_g), self._mass(on_top_g)
        return words.format(volume=volume, water=water, powder=powder, mix=whole, on_top=on_top)

    def _mix_as(self, means: VolumeMeans) -> tuple[Mix, float] | None:
        """What one calf would get if the volume meant this, and the powder alone in it."""
        return self._mix_of(self._group_as(means, self.rate.would_be(_BASES[means])))

    def _other_meaning(self, mix: Mix) -> str:
        system = self.desk.system
        comma = decimal_comma()
        water = show_typed_volume(mix.water_ml, system, decimal_comma=comma)
        whole = show_typed_volume(mix.volume_ml, system, decimal_comma=comma)
        if self.means() is VolumeMeans.WATER:
            return self.tr("Each calf gets {water} of water; with its powder it drinks {mix} of mix.").format(
                water=water, mix=whole
            )
        return self.tr("Each calf drinks {mix} of mix: {water} of water and its powder.").format(water=water, mix=whole)

    def _lay_out(self) -> None:
        figures = row(self._calves, self._feedings, self.volume, spacing=2 * SPACE)
        for place, stretch in enumerate((2, 2, 4)):
            figures.setStretch(place, stretch)
        choices = row(label(self.tr("This volume is"), wrap=False), self.finished, self.water, None, spacing=2 * SPACE)
        means = column(choices, self._means_note, spacing=3)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * SPACE, 2 * SPACE, 2 * SPACE, 2 * SPACE)
        layout.setSpacing(int(1.5 * SPACE))
        layout.addLayout(row(self.heading, None, self.remove))
        layout.addWidget(self.name)
        layout.addLayout(figures)
        layout.addLayout(means)
        layout.addWidget(self.rate)
        layout.addWidget(self.more)
