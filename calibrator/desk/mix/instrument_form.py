"""An instrument: what it is, how fine its scale is, what a jug holds."""

from __future__ import annotations

from PySide6.QtWidgets import QCheckBox

from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.bare_field import BareField
from calibrator.desk.forms.examples import JUG
from calibrator.desk.forms.fields import Captioned, TextField
from calibrator.desk.forms.form import Form
from calibrator.desk.forms.reach import JUG_ML
from calibrator.desk.mix.instrument_words import kind_name
from calibrator.desk.parts import row
from calibrator.desk.widgets.calm_box import CalmBox
from calibrator.model import Instrument, InstrumentKind, new_id
from calibrator.units import Kind, default_unit, span_from_default_unit, span_in_default_unit
from calibrator.units.bare import Bare

DIVISIONS = {
    InstrumentKind.REFRACTOMETER: (Bare("0.2", 0.01, 2.0), 0.2),
    InstrumentKind.HYDROMETER: (Bare("0.001", 0.0001, 0.02), 0.001),
    InstrumentKind.THERMOMETER: (Bare("1", 0.01, 5.0), 1.0),
    InstrumentKind.JUG: (Bare("1", 0.01, 5.0), 1.0),
}
JUG_U_SHARE = 0.005  # of a volume that was read off the jug and never weighed with water


class InstrumentForm(Form[Instrument]):
    """Only what belongs to the kind is asked for."""

    kind = Instrument

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self.name = TextField(self.tr("Name of the instrument"))
        self.what = CalmBox()
        for kind in InstrumentKind:
            self.what.addItem(kind_name(kind), kind)
        division_note = self.tr("The smallest step of its scale.")
        bare = DIVISIONS[InstrumentKind.REFRACTOMETER][0]
        self.division = BareField(self.tr("Division of its scale"), bare, 4, division_note, optional=False)
        self.compensated = QCheckBox(self.tr("It corrects for temperature by itself (ATC)"))
        reference_note = self.tr("It stands on the glass, often 60 °F or 20 °C.")
        self.reference = Amount(
            desk, self.tr("Its scale holds at"), Kind.TEMPERATURE, reference_note, lowest=0, highest=60, example=False
        )
        volume_note = self.tr("Up to the brim or a line. Weighing water in it, under Instrument checks, is surer.")
        self.volume = Amount(desk, self.tr("What it holds"), Kind.VOLUME, volume_note, within=JUG_ML, examples=JUG)
        self.body.addWidget(self.name)
        self.body.addLayout(row(Captioned(self.tr("What it is"), self.what), self.division, spacing=24))
        for widget in (self.compensated, self.reference, self.volume):
            self.body.addWidget(widget)
        self.body.addStretch(1)
        for field in (self.name, self.division, self.reference, self.volume):
            field.edited.connect(self.edited)
        self.compensated.toggled.connect(self.edited)
        self.what.activated.connect(self._choose)
        self.enter_moves_on()

    def fill_in(self, thing: Instrument | None) -> None:
        self.name.set_text(thing.name if thing else "")
        kind = thing.kind if thing else InstrumentKind.REFRACTOMETER
        self.what.setCurrentIndex(self.what.findData(kind))
        self.what.setEnabled(thing is None)
        self._follow()
        self.division.set_values(self._shown(thing.division) if thing and thing.division else DIVISIONS[kind][1])
        self.compensated.setChecked(thing.compensated if thing else True)
        self.reference.set_value(thing.reference_c if thing else 20.0, thing.reference_typed if thing else "")
        self.volume.set_value(thing.volume_ml if thing else None, thing.volume_typed if thing else "")

    def made(self) -> Instrument | None:
        farm, kind = self.desk.farm, self._kind
        asked = [self.name.filled()]
        if kind is not InstrumentKind.JUG:
            asked.append(self.division.tell())
        if kind is InstrumentKind.HYDROMETER:
            asked.append(self.reference.understood())
        if kind is InstrumentKind.JUG:
            asked.append(self.volume.understood())
        reference, jug_ml = self.reference.value(), self.volume.value()
        if farm is None or not all(asked):
            return None
        old = self.thing
        jug = kind is InstrumentKind.JUG
        weighed = bool(old and jug and jug_ml is not None and old.volume_ml == jug_ml)
        return Instrument(
            id=old.id if old else new_id(),
            farm_id=farm.id,
            name=self.name.text(),
            kind=kind,
            division=0.0 if jug else self._kept(self.division.value() or 0.0),
            division_typed="" if jug else f"{self.division.text()} {self._unit}".strip(),
            compensated=self.compensated.isChecked(),
            reference_c=reference if reference is not None else 20.0,
            reference_typed=self.reference.told() if kind is InstrumentKind.HYDROMETER else "",
            volume_ml=jug_ml if jug else None,
            volume_u_ml=old.volume_u_ml if weighed and old else JUG_U_SHARE * (jug_ml or 0.0) if jug else 0.0,
            volume_typed=(old.volume_typed if weighed and old else self.volume.told()) if jug else "",
            retired_on=self.retired_on(),
            revision=old.revision if old else "",
        )

    @property
    def _kind(self) -> InstrumentKind:
        return InstrumentKind(self.what.currentData())

    @property
    def _unit(self) -> str:
        """Only a thermometer's division is kept with a unit: the degrees that people here read."""
        warm = self._kind is InstrumentKind.THERMOMETER
        return default_unit(Kind.TEMPERATURE, self.desk.system) if warm else ""

    def _shown(self, division: float) -> float:
        return span_in_default_unit(division, Kind.TEMPERATURE, self.desk.system) if self._unit else division

    def _kept(self, division: float) -> float:
        return span_from_default_unit(division, Kind.TEMPERATURE, self.desk.system) if self._unit else division

    def _choose(self) -> None:
        self._follow()
        if self._kind is not InstrumentKind.JUG:
            self.division.set_values(DIVISIONS[self._kind][1])
        self.edited.emit()

    def _follow(self) -> None:
        kind = self._kind
        self.division.set_bare(DIVISIONS[kind][0])
        unit = "°Brix" if kind is InstrumentKind.REFRACTOMETER else self._unit
        caption = self.tr("Division of its scale, {unit}").format(unit=unit)
        self.division.rename(caption if unit else self.tr("Division of its scale"))
        self.division.setVisible(kind is not InstrumentKind.JUG)
        self.compensated.setVisible(kind is InstrumentKind.REFRACTOMETER)
        self.reference.setVisible(kind is InstrumentKind.HYDROMETER)
        self.volume.setVisible(kind is InstrumentKind.JUG)
