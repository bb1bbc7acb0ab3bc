"""One additive of a group: its name, how much a calf gets of it, and what it is made of."""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.bare_field import BareField
from calibrator.desk.forms.examples import ADDITIVE
from calibrator.desk.forms.fields import TextField
from calibrator.desk.forms.reach import ADDITIVE_G
from calibrator.desk.forms.rows_editor import RowEditor
from calibrator.desk.parts import button, label, row
from calibrator.desk.theme import SPACE
from calibrator.model import Additive, Composition, MixingRate, RateBasis, VolumeMeans
from calibrator.units import Kind
from calibrator.units.bare import Bare

OSMOLES = Bare("9.5", 0.1, 40.0)  # table salt, the most of any, has 34 in a gram
WHOLE_PCT = 100.0


class AdditiveEditor(RowEditor):
    """Weighed into the mix besides the powder. Without a laboratory's value its composition has to do."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.name = TextField(self.tr("Additive, like “electrolyte”"))
        self.each = Amount(
            desk,
            self.tr("Each calf and feeding"),
            Kind.MASS,
            within=ADDITIVE_G,
            examples=ADDITIVE,
        )
        self.fat, self.protein, self.ash = (
            Amount(desk, caption, Kind.PERCENT, optional=True, lowest=0.0, highest=WHOLE_PCT)
            for caption in (self.tr("Fat"), self.tr("Protein"), self.tr("Ash, salts"))
        )
        self.osmoles = BareField(self.tr("mOsm in a gram"), OSMOLES, 2)
        self.remove = button(self.tr("Leave this additive out"), self.ask_remove, "link")
        first = row(self.name, self.each, spacing=2 * SPACE)
        first.setStretch(0, 3)
        first.setStretch(1, 2)
        second = row(self.fat, self.protein, self.ash, self.osmoles, spacing=2 * SPACE)
        for place in range(4):
            second.setStretch(place, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        open_ones = self.tr("What the label does not tell stays empty: osmolality has a wide give or take then.")
        for line in (first, second, row(label(open_ones, "quiet")), row(self.remove, None)):
            layout.addLayout(line)
        for field in (self.name, self.each, self.fat, self.protein, self.ash, self.osmoles):
            field.edited.connect(self.edited)

    def load(self, told: Additive, calf_ml: float) -> None:
        """Show an additive; `calf_ml` is the volume that a calf of the group gets."""
        self.name.set_text(told.name)
        share = calf_ml / told.rate.volume_ml if told.rate.volume_ml else 1.0
        self.each.set_value(told.rate.powder_mass_g * share, told.rate.typed if share == 1.0 else "")
        made = told.composition
        for field, percent in ((self.fat, made.fat_pct), (self.protein, made.protein_pct), (self.ash, made.ash_pct)):
            field.set_value(percent or None)
        self.osmoles.set_values(*((told.mosmol_per_g,) if told.mosmol_per_g is not None else ()))

    def understood(self) -> bool:
        """Whether it can be kept; what is wrong is said beside the field."""
        sound = [self.name.filled(), self.each.understood(), self.osmoles.tell()]
        parts = (self.fat, self.protein, self.ash)
        sound += [field.understood() for field in parts]
        return all(sound)

    def made(self, calf_ml: float, means: VolumeMeans) -> Additive | None:
        """The additive as typed, counted on what a calf gets; None where its weight is missing."""
        each = self.each.value()
        if each is None:
            return None
        basis = RateBasis.ON_WATER if means is VolumeMeans.WATER else RateBasis.PER_FINISHED
        fat, protein, ash = (field.value() or 0.0 for field in (self.fat, self.protein, self.ash))
        return Additive(
            name=self.name.text(),
            rate=MixingRate(basis=basis, powder_mass_g=each, volume_ml=calf_ml, typed=self.each.told()),
            composition=Composition(protein_pct=protein, fat_pct=fat, ash_pct=ash, fibre_pct=0.0),
            mosmol_per_g=self.osmoles.value(),
            mosmol_typed=self.osmoles.text(),
        )

    def first(self) -> QWidget:
        return self.name.line

    def in_order(self) -> tuple[QWidget, ...]:
        """The fields in the order in which the Tab key reaches them."""
        parts = (self.fat.line, self.protein.line, self.ash.line, self.osmoles.line)
        return (self.name.line, self.each.line, *parts, self.remove)
