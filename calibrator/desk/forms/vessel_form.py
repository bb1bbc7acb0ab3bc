"""A pail, tote or tank: its name, its volume to the rim, how far it may be filled, how high water stands in it."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtWidgets import QCheckBox, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.fields import Suggestions, TextField
from calibrator.desk.forms.form import Form
from calibrator.desk.forms.shape_fields import ShapeFields
from calibrator.desk.parts import button, column, label, row
from calibrator.desk.refusals import in_words
from calibrator.desk.speech import decimal_comma
from calibrator.model import Shape, UnitSystem, Vessel, new_id
from calibrator.science.errors import CannotCompute
from calibrator.science.scoop import compare_with_water, rim_volume_ml
from calibrator.units import Kind, edit_text, show_percent, show_volume

VOLUMES = {UnitSystem.FARM: ("5 gal", "30 gal", "125 gal"), UnitSystem.METRIC: ("20 L", "100 L", "500 L")}
WIDEST_MM = 5000.0
POURED_AT_C = 20.0  # a jug of water at room temperature; 10 °C more or less is 0.2 %


class VesselForm(Form[Vessel]):
    """What a mix is made in; some room below the rim stays free for stirring."""

    kind = Vessel

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self.name = TextField(self.tr("Name of the vessel"))
        self.volume = Amount(desk, self.tr("Volume to the rim"), Kind.VOLUME)
        share_note = self.tr("The rest is room for stirring.")
        self.usable = Amount(desk, self.tr("May be filled to"), Kind.PERCENT, share_note, lowest=1, highest=100)
        self.volumes = Suggestions(self.tr("Often:"), self.volume.line)
        self.has_levels = QCheckBox(self.tr("Tell how high the water must stand in it"))
        self.fields = ShapeFields(desk, self.tr("Shape of the vessel"), self._how_to_pour(), WIDEST_MM)
        self._holds, self._trouble = label(""), label("", "caution")
        self.take_volume = button(self.tr("Take this volume"), self._take_volume, "link")
        self._lay_out()
        self.volumes.chosen.connect(self.volume.take)
        for field in (self.name, self.volume, self.usable, self.fields):
            field.edited.connect(self._look)
        self.has_levels.toggled.connect(self._look)
        self.enter_moves_on()

    def fill_in(self, thing: Vessel | None) -> None:
        self.volumes.offer(VOLUMES[self.desk.system])
        self.name.set_text(thing.name if thing else "")
        self.volume.set_value(thing.rim_volume_ml if thing else None, thing.rim_volume_typed if thing else "")
        self.usable.set_share(thing.usable_share if thing else Vessel.usable_share)
        self.fields.set_shape(thing.shape if thing else None)
        self.has_levels.setChecked(thing is not None and thing.shape is not None)
        self._look()

    def made(self) -> Vessel | None:
        farm = self.desk.farm
        sound = [self.name.filled(), self.volume.understood(), self.usable.understood(), self._shape_understood()]
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

    def _look(self) -> None:
        """Let the volume by the shape follow what is typed."""
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
            percent = show_percent(100 * abs(check.difference_share), decimal_comma=decimal_comma())
            self._trouble.setText(text.format(percent=percent))

    def _take_volume(self) -> None:
        rim = self._rim_ml()
        if rim is not None:
            self.volume.take(edit_text(rim, Kind.VOLUME, self.desk.system))

    def _lay_out(self) -> None:
        self.body.addWidget(self.name)
        self.body.addLayout(row(column(self.volume, self.volumes), column(self.usable, None), spacing=24))
        self.body.addWidget(self.has_levels)
        self._levels = QWidget()
        inside = column(self.fields, row(self._holds, self.take_volume, None), self._trouble)
        inside.setContentsMargins(0, 0, 0, 0)
        self._levels.setLayout(inside)
        self.body.addWidget(self._levels)
        self.body.addStretch(1)
