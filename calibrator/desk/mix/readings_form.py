"""The readings of a mix, each in its own field: drops of first and last pail, temperatures, volume, density."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import replace
from functools import partial
from itertools import chain

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QCheckBox, QComboBox, QVBoxLayout, QWidget

from calibrator.desk import shown
from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.bare_field import BareField
from calibrator.desk.forms.examples import AT_THE_CALF, LEVEL, MIX, MIX_IN_VESSEL, WATER_IN_JUG
from calibrator.desk.forms.fields import Captioned
from calibrator.desk.forms.reach import JUG_G, VESSEL_ML
from calibrator.desk.mix.prism_field import prism_field
from calibrator.desk.mix_checks import RightReading
from calibrator.desk.mix_tools import Tools
from calibrator.desk.speech import decimal_comma
from calibrator.desk.theme import ROWS
from calibrator.desk.widgets.later import take_turn
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.desk.widgets.side_by_side import SideBySide
from calibrator.model import Instrument, InstrumentKind, Pail, Reading, ReadingKind, UnitSystem, Vessel
from calibrator.units import Kind, show_in_one_unit
from calibrator.units.bare import Bare

DROPS = Bare("11.2 11.4 11.2", -1.0, 32.0, 8)
SUGAR_SG = Bare("1.045 1.046", 0.998, 1.135, 8)
FLOAT_SG = Bare("1.032", 0.98, 1.15, 4)
READ_WITH = (InstrumentKind.REFRACTOMETER, InstrumentKind.HYDROMETER, InstrumentKind.JUG)
JUG_UNIT = {UnitSystem.FARM: "lb", UnitSystem.METRIC: "g"}  # a bare number means the same beside every example
COLDEST_C, HOTTEST_C = 0.0, 100.0
LIKE_CELSIUS = 30.0, 60.0  # what water and mix have in °C; in °F it would be far too cold for either


class ReadingsForm(QWidget):
    """Only fields for which the farm has an instrument are shown; what is typed is kept as typed.

    Drops can be read with a refractometer that is not entered; where another instrument is, their fields are folded up
    behind a box to tick.
    """

    edited = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._tools: Tools | None = None
        self.refractometer, self.hydrometer, self.jug = NameChoice(), NameChoice(), NameChoice()
        self.thermometer = NameChoice()
        self.scale = NameChoice()
        self.scale.addItem(self.tr("°Brix"), ReadingKind.BRIX)
        self.scale.addItem(self.tr("SG (sugar scale)"), ReadingKind.REFRACTOMETER_SG)
        a_drop = self.tr("Each drop on the refractometer is one reading; best three.")
        self.first = BareField(self.tr("First pail: drops, in °Brix"), DROPS, 1, a_drop)
        self.last = BareField(self.tr("Last pail: drops, in °Brix"), DROPS, 1)
        self.with_drops = QCheckBox(self.tr("With a refractometer too"))
        self.prism = prism_field(desk)
        self.water = self._amount(self.tr("Water drawn at"), Kind.TEMPERATURE, COLDEST_C, HOTTEST_C)
        self.mix = self._amount(self.tr("Mix at"), Kind.TEMPERATURE, COLDEST_C, HOTTEST_C, MIX)
        self.calf = self._amount(self.tr("At the calf"), Kind.TEMPERATURE, COLDEST_C, HOTTEST_C, AT_THE_CALF)
        self.volume = self._amount(self.tr("Mix in the vessel"), Kind.VOLUME, *VESSEL_ML, MIX_IN_VESSEL)
        self.level = self._amount(self.tr("or its level"), Kind.LENGTH, None, None, LEVEL)
        self.floating = BareField(self.tr("Hydrometer floating in the mix, SG"), FLOAT_SG, 3)
        self.jug_mass = self._amount(self.tr("Mix in the jug, without the jug"), Kind.MASS, *JUG_G, WATER_IN_JUG)
        self._lay_out()
        for choice in self._boxes():
            choice.activated.connect(self._tool_chosen)
        self.scale.activated.connect(self._scale_chosen)
        self.with_drops.toggled.connect(self._fold)
        for numbers in (self.first, self.last, self.floating):
            numbers.understood.connect(self.edited)
        for amount in self._amounts():
            amount.edited.connect(self.edited)
        for amount in self._temperatures():
            amount.finished.connect(partial(self._ask_degrees, amount))

    def show_tools(self, tools: Tools) -> None:
        """Offer the farm's instruments."""
        self._tools = tools
        for box, kind in self._boxes().items():
            _offer(box, tools.of(kind))
        self._refractometer.setVisible(self.refractometer.count() > 1)
        self._hydrometer.setVisible(self.hydrometer.count() > 1)
        self._jug.setVisible(self.jug.count() > 1)
        self._thermometer.setVisible(self.thermometer.count() > 1)
        self.floating.setVisible(self.hydrometer.count() > 0)
        self.jug_mass.setVisible(self.jug.count() > 0)
        self._show_prism()
        self._fold()
        self._put_in_order()

    def show_vessel(self, vessel: Vessel | None) -> None:
        """A level tells a volume only where the vessel's shape is known."""
        self.level.setVisible(vessel is not None and vessel.shape is not None)

    def show_batch_volume(self, volume_ml: float | None) -> None:
        """The example is the batch's own finished mix, and a bare number is of the example's unit."""
        examples = dict(MIX_IN_VESSEL)
        if volume_ml is not None:
            comma = decimal_comma()
            examples = {system: show_in_one_unit(volume_ml, system, decimal_comma=comma) for system in UnitSystem}
        self.volume.box.set_examples(examples)

    @property
    def kind(self) -> InstrumentKind:
        """The instrument at hand: of those entered the one that tells most; a refractometer where none is."""
        boxes = ((kind, box) for box, kind in self._boxes().items() if kind in READ_WITH)
        return next((kind for kind, box in boxes if box.count()), InstrumentKind.REFRACTOMETER)

    @property
    def begins(self) -> BareField | Amount:
        """The field of the instrument at hand, which stands first."""
        by_kind: dict[InstrumentKind, BareField | Amount]
        by_kind = {InstrumentKind.HYDROMETER: self.floating, InstrumentKind.JUG: self.jug_mass}
        return by_kind.get(self.kind, self.first)

    @property
    def hydrometer_id(self) -> str:
        """The hydrometer chosen; blank where the farm has none entered."""
        return _id(self.hydrometer)

    @property
    def refractometer_id(self) -> str:
        """The refractometer chosen; blank where the farm has none entered."""
        return _id(self.refractometer)

    @property
    def jug_id(self) -> str:
        """The jug chosen; blank where the farm has none entered."""
        return _id(self.jug)

    @property
    def in_brix(self) -> bool:
        """Whether the drops are read on the Brix scale."""
        return ReadingKind(self.scale.currentData()) is ReadingKind.BRIX

    def show_right(self, right_brix: float | None, others: Iterable[RightReading]) -> None:
        """The examples are what this mix should show, lest any other be taken for that; the usual ones where it is not
        known."""
        if self.in_brix:
            drops = DROPS if right_brix is None else replace(DROPS, example=_drops_about(right_brix))
            for field in (self.first, self.last):
                field.set_example(drops)
        right = {each.kind: each.value for each in others}
        sg = right.get(InstrumentKind.HYDROMETER)
        self.floating.set_example(FLOAT_SG if sg is None else replace(FLOAT_SG, example=f"{sg:.3f}"))
        held_g = right.get(InstrumentKind.JUG)
        full = {system: shown.mass_in(held_g, unit) for system, unit in JUG_UNIT.items()} if held_g else WATER_IN_JUG
        self.jug_mass.box.set_examples(full)

    def readings(self) -> list[Reading]:
        """All that is typed and understood."""
        kind = ReadingKind(self.scale.currentData())
        drops = [
            Reading(kind=kind, value=value, typed=field.text(), pail=pail, instrument_id=_id(self.refractometer))
            for field, pail in ((self.first, Pail.FIRST), (self.last, Pail.LAST))
            for value in field.values()
        ]
        floating = [
            Reading(
                kind=ReadingKind.HYDROMETER_SG,
                value=value,
                typed=self.floating.text(),
                instrument_id=_id(self.hydrometer),
            )
            for value in self.floating.values()
        ]
        return [*drops, *floating, *self._measured()]

    def first_wrong(self) -> BareField | Amount | None:
        """The first field that has to be mended, each wrong one told beneath; None where all is well."""
        for amount in self._temperatures():
            self._ask_degrees(amount)
        wrong = [field for field in self._fields() if field.isVisibleTo(self) and not _sound(field)]
        return wrong[0] if wrong else None

    def unread(self) -> str:
        """Which field has something that is not understood, and what is wrong: then nothing is to be said of the mix.
        Blank where all is well.
        """
        told = ((field.caption.text(), field.problem()) for field in self._fields() if field.isVisibleTo(self))
        return next((f"{name}: {problem}" for name, problem in told if problem), "")

    def _ask_degrees(self, field: Amount) -> None:
        """43 in a field for warm water is 43 °C on many a thermometer: asked, where °F are the usual ones."""
        text = field.text()
        bare = self.desk.system is UnitSystem.FARM and text.replace(".", "", 1).isdecimal()
        if bare and LIKE_CELSIUS[0] <= float(text) <= LIKE_CELSIUS[1]:
            told = self.tr("{number} °F or {number} °C? Write {number} F or {number} C.")
            field.say(told.format(number=text), wrong=True)
            self.edited.emit()

    def clear(self) -> None:
        """Empty the fields for the next check."""
        for numbers in (self.first, self.last, self.floating):
            numbers.set_text("")
        for amount in self._amounts():
            amount.set_text("")
        self.edited.emit()

    def pending(self) -> str:
        """The first text that is typed; blank where nothing is."""
        return next((field.text() for field in self._fields() if field.text()), "")

    def _fields(self) -> tuple[BareField | Amount, ...]:
        return self.first, self.last, self.floating, *self._amounts()

    def _boxes(self) -> dict[QComboBox, InstrumentKind]:
        return {
            self.refractometer: InstrumentKind.REFRACTOMETER,
            self.hydrometer: InstrumentKind.HYDROMETER,
            self.jug: InstrumentKind.JUG,
            self.thermometer: InstrumentKind.THERMOMETER,
        }

    def _amount(
        self,
        caption: str,
        kind: Kind,
        lowest: float | None,
        highest: float | None,
        examples: Mapping[UnitSystem, str] | None = None,
    ) -> Amount:
        return Amount(self.desk, caption, kind, optional=True, lowest=lowest, highest=highest, examples=examples)

    def _amounts(self) -> tuple[Amount, ...]:
        return self.prism, self.water, self.mix, self.calf, self.volume, self.level, self.jug_mass

    def _temperatures(self) -> tuple[Amount, ...]:
        return self.water, self.mix, self.calf

    def _measured(self) -> Iterator[Reading]:
        kinds = (
            (self.prism, ReadingKind.PRISM_TEMPERATURE, self.refractometer),
            (self.water, ReadingKind.WATER_TEMPERATURE, self.thermometer),
            (self.mix, ReadingKind.MIX_TEMPERATURE, self.thermometer),
            (self.calf, ReadingKind.CALF_TEMPERATURE, self.thermometer),
            (self.volume, ReadingKind.FINISHED_VOLUME, None),
            (self.level, ReadingKind.FINISHED_LEVEL, None),
            (self.jug_mass, ReadingKind.JUG_MASS, self.jug),
        )
        for field, kind, box in kinds:
            value = field.value() if field.isVisibleTo(self) and not field.box.problem() else None
            if value is not None:
                yield Reading(kind=kind, value=value, typed=field.told(), instrument_id=_id(box) if box else "")

    def _lay_out(self) -> None:
        self._refractometer = Captioned(self.tr("Refractometer"), self.refractometer)
        self._hydrometer = Captioned(self.tr("Hydrometer"), self.hydrometer)
        self._jug = Captioned(self.tr("Jug"), self.jug)
        self._thermometer = Captioned(self.tr("Thermometer"), self.thermometer)
        self._rows = QVBoxLayout(self)
        self._rows.setContentsMargins(0, 0, 0, 0)
        self._rows.setSpacing(ROWS)
        self._drops = (
            SideBySide(self._refractometer, Captioned(self.tr("Refractometer read in"), self.scale), self.prism),
            SideBySide(self.first, self.last),
        )
        self._read_with: dict[InstrumentKind, tuple[QWidget, ...]] = {
            InstrumentKind.REFRACTOMETER: (self.with_drops, *self._drops),
            InstrumentKind.HYDROMETER: (SideBySide(self._hydrometer, self.floating),),
            InstrumentKind.JUG: (SideBySide(self._jug, self.jug_mass),),
        }
        self._always = (
            SideBySide(self._thermometer),
            SideBySide(self.water, self.mix, self.calf),
            SideBySide(self.volume, self.level),
        )
        for each in self._in_order():
            self._rows.addWidget(each)

    def _fold(self) -> None:
        """Hide what is read with a refractometer while the farm has another instrument only, nobody asks for it, and
        nothing is typed there: what is typed counts, so it stays in view."""
        typed = any(field.text() for field in (self.first, self.last))
        foldable = self.kind is not InstrumentKind.REFRACTOMETER
        if typed and foldable:
            self.with_drops.setChecked(True)
        self.with_drops.setVisible(foldable)
        for each in self._drops:
            each.setVisible(self.with_drops.isChecked() or not foldable)

    def _in_order(self) -> list[QWidget]:
        """What is read with the instrument at hand first, the rest after what every check has: last what the farm has
        no instrument for."""
        entered = {kind for box, kind in self._boxes().items() if box.count()}
        kinds = sorted(
            (kind for kind in self._read_with if kind is not self.kind), key=lambda kind: kind not in entered
        )
        rest = [self._read_with[kind] for kind in kinds]
        return [*self._read_with[self.kind], *self._always, *chain.from_iterable(rest)]

    def _put_in_order(self) -> None:
        wanted = self._in_order()
        if [self._rows.indexOf(each) for each in wanted] == [*range(len(wanted))]:
            return
        for each in wanted:
            self._rows.removeWidget(each)
            self._rows.addWidget(each)
        take_turn(self, *wanted)

    def _scale_chosen(self) -> None:
        sugar = self.scale.currentData() == ReadingKind.REFRACTOMETER_SG
        for field in (self.first, self.last):
            field.set_bare(SUGAR_SG if sugar else DROPS)
        first, last = (
            (self.tr("First pail: drops, sugar SG"), self.tr("Last pail: drops, sugar SG"))
            if sugar
            else (self.tr("First pail: drops, in °Brix"), self.tr("Last pail: drops, in °Brix"))
        )
        self.first.rename(first)
        self.last.rename(last)
        self.edited.emit()

    def _tool_chosen(self) -> None:
        self._show_prism()
        self.edited.emit()

    def _show_prism(self) -> None:
        tool = self._tools.find(_id(self.refractometer)) if self._tools else None
        self.prism.setVisible(tool is not None and not tool.compensated)


def _drops_about(right_brix: float) -> str:
    one, other = (f"{right_brix + more:.1f}" for more in (0.0, 0.2))
    return f"{one} {other} {one}"


def _id(box: QComboBox) -> str:
    return str(box.currentData() or "")


def _sound(field: BareField | Amount) -> bool:
    return field.tell() if isinstance(field, BareField) else field.understood()


def _offer(box: QComboBox, tools: list[Instrument]) -> None:
    blocker = QSignalBlocker(box)
    kept = box.currentData()
    box.clear()
    for tool in tools:
        box.addItem(tool.name, tool.id)
    place = box.findData(kept)
    box.setCurrentIndex(place if place >= 0 else len(tools) - 1)
    blocker.unblock()
