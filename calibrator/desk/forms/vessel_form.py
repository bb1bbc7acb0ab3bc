"""A pail, tote or tank: its name, its volume to the rim, how far it may be filled, how high water stands in it."""

from __future__ import annotations

from dataclasses import replace
from math import inf

from PySide6.QtWidgets import QCheckBox, QWidget

from calibrator.desk import shown
from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.examples import FILLED_TO, MIXING_TANK, VESSEL_SIZES
from calibrator.desk.forms.fields import Captioned, Suggestions, TextField
from calibrator.desk.forms.form import Form
from calibrator.desk.forms.reach import VESSEL_ML
from calibrator.desk.forms.shape_fields import ShapeFields
from calibrator.desk.parts import button, column, label, row
from calibrator.desk.refusals import in_words
from calibrator.desk.speech import decimal_comma
from calibrator.desk.warmth import cooling_of
from calibrator.desk.widgets.count_field import CountField
from calibrator.model import CoolingReadings, Shape, UnitSystem, Vessel, new_id
from calibrator.science.errors import CannotCompute
from calibrator.science.heat import FEEDING_RANGE_C, TOO_COOL_C
from calibrator.science.scoop import compare_with_water, rim_volume_ml
from calibrator.units import Kind, edit_text, show_both, show_volume

VOLUMES = {UnitSystem.FARM: ("5 gal", "30 gal", "125 gal"), UnitSystem.METRIC: ("20 L", "100 L", "500 L")}
WIDEST_MM = 5000.0
LONGEST_MINUTES, USUAL_MINUTES = 240, 20
WARM_C = FEEDING_RANGE_C[0]
POURED_AT_C = 20.0  # a jug of water at room temperature; 10 °C more or less is 0.2 %


class VesselForm(Form[Vessel]):
    """What a mix is made in; some room below the rim stays free for stirring."""

    kind = Vessel

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self.name = TextField(self.tr("Name of the vessel"))
        self.volume = Amount(
            desk,
            self.tr("Volume to the rim"),
            Kind.VOLUME,
            within=VESSEL_ML,
            examples=MIXING_TANK,
        )
        share_note = self.tr("The rest is room for stirring.")
        self.usable = Amount(
            desk, self.tr("May be filled to"), Kind.PERCENT, share_note, lowest=1, highest=100, examples=FILLED_TO
        )
        self.volumes = Suggestions(self.tr("Often:"), self.volume.line)
        self.has_levels = QCheckBox(self.tr("Tell how high the water must stand in it"))
        self.fields = ShapeFields(desk, self.tr("Shape of the vessel"), self._how_to_pour(), WIDEST_MM, VESSEL_SIZES)
        self.cools = QCheckBox(self.tr("Tell how long a mix stays warm in it"))
        self._make_cooling()
        self._holds, self._trouble = label(""), label("", "caution")
        self.take_volume = button(self.tr("Take this volume"), self._take_volume, "link")
        self._lay_out()
        self.volumes.chosen.connect(self.volume.take)
        for field in (self.name, self.volume, self.usable, self.fields):
            field.edited.connect(self._look)
        for amount in (self.first, self.later, self.air):
            amount.edited.connect(self._look)
        self.minutes.counted.connect(self._look)
        self.has_levels.toggled.connect(self._look)
        self.cools.toggled.connect(self._look)
        self.enter_moves_on()

    def fill_in(self, thing: Vessel | None) -> None:
        self.volumes.offer(VOLUMES[self.desk.system])
        self.name.set_text(thing.name if thing else "")
        self.volume.set_value(thing.rim_volume_ml if thing else None, thing.rim_volume_typed if thing else "")
        self.usable.set_share(thing.usable_share if thing else Vessel.usable_share)
        self.fields.set_shape(thing.shape if thing else None)
        self.has_levels.setChecked(thing is not None and thing.shape is not None)
        self._fill_cooling(thing.cooling if thing else None)
        self._look()

    def made(self) -> Vessel | None:
        farm = self.desk.farm
        sound = [self.name.filled(), self.volume.understood(), self.usable.understood(), self._shape_understood()]
        sound.append(self._cooling_understood())
        volume, usable = self.volume.value(), self.usable.share()
        if farm is None or not all(sound) or volume is None or usable is None:
            return None
        vessel = self.thing or Vessel(id=new_id(), farm_id=farm.id, name="", rim_volume_ml=volume)
        return replace(
            vessel,
            name=self.name.text(),
            rim_volume_ml=volume,
            rim_volume_typed=self.volume.told(),
            usable_share=usable,
            shape=self._shape(),
            cooling=self._cooling() if self.cools.isChecked() else None,
        )

    def _how_to_pour(self) -> str:
        return self.tr(
            "Lines painted on a vessel are often wrong. Stand it where it is used, pour weighed or measured "
            "water in by steps, the last one up to the rim. At each step note all the water that is in it by "
            "then, and how high it stands above the floor."
        )

    def _shape(self) -> Shape | None:
        return self.fields.shape(POURED_AT_C) if self.has_levels.isChecked() else None

    def _shape_understood(self) -> bool:
        if not self.has_levels.isChecked():
            return True
        return self.fields.understood(POURED_AT_C) and self._rim_ml() is not None

    def _rim_ml(self) -> float | None:
        """What the shape holds to the rim; None where there is none, with the reason in words."""
        shape = self._shape()
        try:
            return rim_volume_ml(shape) if shape else None
        except CannotCompute as error:
            self._trouble.setText(in_words(error))
            self._trouble.show()
            return None

    def _make_cooling(self) -> None:
        def temperature(caption: str) -> Amount:
            return Amount(self.desk, caption, Kind.TEMPERATURE, lowest=-30.0, highest=100.0, example=False)

        self.first, self.later = temperature(self.tr("Just mixed")), temperature(self.tr("Later"))
        self.minutes = CountField(1, LONGEST_MINUTES)
        self._minutes = Captioned(self.tr("Minutes between"), self.minutes)
        self.air = temperature(self.tr("Air around it"))
        self._stays = label("", "quiet")

    def _fill_cooling(self, known: CoolingReadings | None) -> None:
        self.cools.setChecked(known is not None)
        self.first.set_value(known.first_c if known else None, known.first_typed if known else "")
        self.later.set_value(known.later_c if known else None, known.later_typed if known else "")
        self.air.set_value(known.air_c if known else None, known.air_typed if known else "")
        self.minutes.set_count(known.minutes if known else USUAL_MINUTES)

    def _cooling(self) -> CoolingReadings | None:
        first, later, air = self.first.value(), self.later.value(), self.air.value()
        if first is None or later is None or air is None:
            return None
        return CoolingReadings(
            first_c=first,
            later_c=later,
            minutes=self.minutes.count(),
            air_c=air,
            first_typed=self.first.told(),
            later_typed=self.later.told(),
            air_typed=self.air.told(),
        )

    def _cooling_understood(self) -> bool:
        if not self.cools.isChecked():
            return True
        sound = [field.understood() for field in (self.first, self.later, self.air)]
        if not all(sound):
            return False
        try:
            cooling_of(self._cooling())
        except CannotCompute as error:
            self.later.say(in_words(error), wrong=True)
            return False
        return True

    def _tell_cooling(self) -> None:
        """What the two readings mean for a mix at 100 °F (38 °C)."""
        self._stays.setText("")
        try:
            how = cooling_of(self._cooling())
        except CannotCompute:
            return
        if how is None:
            return
        minutes = how.minutes_until(WARM_C, TOO_COOL_C)
        system = self.desk.system
        warm, cool = (show_both(celsius, Kind.TEMPERATURE, system) for celsius in (WARM_C, TOO_COOL_C))
        if minutes == inf:
            self._stays.setText(self.tr("In this air a mix never gets below {cool}.").format(cool=cool))
        else:
            told = self.tr("From {warm} it takes {minutes} to get below {cool}, too cool for calves.")
            self._stays.setText(told.format(warm=warm, minutes=counted.minutes(int(minutes)), cool=cool))

    def _look(self) -> None:
        """Let the volume by the shape follow what is typed."""
        self._warmth.setVisible(self.cools.isChecked())
        self._tell_cooling()
        self._levels.setVisible(self.has_levels.isChecked())
        self._trouble.hide()
        rim, typed, shape = self._rim_ml(), self.volume.value(), self._shape()
        for widget in (self._holds, self.take_volume):
            widget.setVisible(rim is not None)
        if rim is not None and shape is not None:
            volume = show_volume(rim, self.desk.system, decimal_comma=decimal_comma())
            self._holds.setText(self.tr("By this shape it holds {volume} to the rim.").format(volume=volume))
            self._compare(shape, typed)
        self.edited.emit()

    def _compare(self, shape: Shape, typed_ml: float | None) -> None:
        if not typed_ml:
            return
        check = compare_with_water(shape, typed_ml)
        self._trouble.setVisible(not check.agrees)
        if not check.agrees:
            text = self.tr(
                "The volume to the rim and this shape differ by {percent}. Measure once more, or take the "
                "volume that the shape gives."
            )
            percent = shown.unsigned_share(check.difference_share)
            self._trouble.setText(text.format(percent=percent))

    def _take_volume(self) -> None:
        rim = self._rim_ml()
        if rim is not None:
            self.volume.take(edit_text(rim, Kind.VOLUME, self.desk.system, decimal_comma=decimal_comma()))

    def _lay_out(self) -> None:
        self.body.addWidget(self.name)
        self.body.addLayout(row(column(self.volume, self.volumes), column(self.usable, None), spacing=24))
        self.body.addWidget(self.has_levels)
        self._levels = QWidget()
        inside = column(self.fields, row(self._holds, self.take_volume, None), self._trouble)
        inside.setContentsMargins(0, 0, 0, 0)
        self._levels.setLayout(inside)
        self.body.addWidget(self._levels)
        self.body.addWidget(self.cools)
        self._warmth = QWidget()
        how = self.tr("Read a mix just mixed, and once more when it has stood for some minutes.")
        readings = column(
            label(how, "quiet"), row(self.first, self.later, self._minutes, self.air, spacing=24), self._stays
        )
        readings.setContentsMargins(0, 0, 0, 0)
        self._warmth.setLayout(readings)
        self.body.addWidget(self._warmth)
        self.body.addStretch(1)
