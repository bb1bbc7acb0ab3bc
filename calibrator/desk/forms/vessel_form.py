"""A pail, tote or tank: its name, its volume to the rim, how far it may be filled."""

from __future__ import annotations

from dataclasses import replace

from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.fields import Suggestions, TextField
from calibrator.desk.forms.form import Form
from calibrator.desk.parts import column, row
from calibrator.model import UnitSystem, Vessel, new_id
from calibrator.units import Kind

VOLUMES = {UnitSystem.FARM: ("5 gal", "30 gal", "125 gal"), UnitSystem.METRIC: ("20 L", "100 L", "500 L")}


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
        self.body.addWidget(self.name)
        self.body.addLayout(row(column(self.volume, self.volumes), column(self.usable, None), spacing=24))
        self.body.addStretch(1)
        self.volumes.chosen.connect(self.volume.take)
        for field in (self.name, self.volume, self.usable):
            field.edited.connect(self.edited)
        self.enter_moves_on()

    def fill_in(self, thing: Vessel | None) -> None:
        self.volumes.offer(VOLUMES[self.desk.system])
        self.name.set_text(thing.name if thing else "")
        self.volume.set_value(thing.rim_volume_ml if thing else None, thing.rim_volume_typed if thing else "")
        self.usable.set_share(thing.usable_share if thing else Vessel.usable_share)

    def made(self) -> Vessel | None:
        farm = self.desk.farm
        sound = [self.name.filled(), self.volume.understood(), self.usable.understood()]
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
        )
