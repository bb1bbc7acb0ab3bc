"""A lot: what stands on the bag and the delivery note."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from PySide6.QtWidgets import QCheckBox, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.examples import BAG
from calibrator.desk.forms.fields import Captioned, DayField, Suggestions, TextField
from calibrator.desk.forms.form import Form
from calibrator.desk.forms.price_field import PriceField
from calibrator.desk.forms.reach import BAG_G, OLDEST_POWDER_YEARS, PACKAGE_G, TOTE_G
from calibrator.desk.parts import add_all, column, label, row
from calibrator.desk.speech import day_text
from calibrator.desk.widgets.calm_box import CalmBox
from calibrator.desk.widgets.saying import Held
from calibrator.desk.words import medicated_caution
from calibrator.model import Composition, Lot, PackageKind, UnitSystem, new_id
from calibrator.units import Kind

BAG_MASSES = {UnitSystem.FARM: ("50 lb", "25 lb", "25 kg"), UnitSystem.METRIC: ("25 kg", "20 kg", "10 kg")}
LONGEST_NOTE = 300
MOST_PACKAGES = 10_000
WHOLE_PCT = 100.0


class LotForm(Form[Lot]):
    """Only the lot number is asked for; all else can follow."""

    kind = Lot

    def __init__(self, desk: Desk, *, brief: bool = False) -> None:
        super().__init__(desk)
        self._brief = brief
        self.number = TextField(self.tr("Lot number"), self.tr("As printed on the bag or its tag."))
        self.product = TextField(self.tr("Product"), longest=80)
        self.arrived_on = DayField(self.tr("Arrived on"), self._today)
        self.made_on = DayField(self.tr("Made on"), self._today)
        self.package = CalmBox()
        self.package.addItem(self.tr("Bags"), PackageKind.BAG)
        self.package.addItem(self.tr("Totes"), PackageKind.TOTE)
        count = self.tr("How many bags or totes") if brief else self.tr("How many")
        told = self.tr("It tells how many bags to open. Leave it empty if not known yet.") if brief else ""
        self.count = Amount(
            desk, count, Kind.COUNT, told, optional=True, lowest=1, highest=MOST_PACKAGES, example=False
        )
        mass = self.tr("Weight of each")
        printed = self.tr("As printed on it.")
        self.mass = Amount(desk, mass, Kind.MASS, printed, optional=True, within=BAG_G, examples=BAG, example=False)
        self.parts = {
            "protein_pct": self._percent(self.tr("Protein")),
            "fat_pct": self._percent(self.tr("Fat")),
            "fibre_pct": self._percent(self.tr("Fiber")),
            "ash_pct": self._percent(self.tr("Ash")),
            "moisture_pct": self._percent(self.tr("Moisture")),
        }
        self.supplier = TextField(self.tr("Supplier"))
        plant = self.tr("The plant or line that made it, where the bag tells.")
        self.plant_code = TextField(self.tr("Plant code"), plant, longest=30)
        self.agglomerated = CalmBox()
        self.agglomerated.addItem(self.tr("Not known"), None)
        self.agglomerated.addItem(self.tr("Yes: agglomerated, instantized"), True)
        self.agglomerated.addItem(self.tr("No"), False)
        self.price = PriceField(desk, self.tr("Price of each"))
        # Tab goes from figure to figure; what is often right comes after them.
        self.masses = Suggestions(self.tr("Often:"), self.mass.line)
        self.medicated = QCheckBox(self.tr("Medicated powder"))
        self.note = TextField(self.tr("Note"), longest=LONGEST_NOTE)
        self._label_told = Held("quiet", lines=2)  # another product's words move nothing beneath them
        self._lots: list[Lot] = []  # whose labels may be carried over, as the form was opened
        self._carried: Composition | None = None
        """What the fields hold of the label of an earlier lot, as long as nobody types into them."""
        self._trouble = label("", tone="bad")
        self._caution = label(medicated_caution(), "caution")
        self._later = QWidget()
        self._lay_out()
        for part in (self._later, self.made_on):
            part.setVisible(not brief)
        self._watch()
        self.enter_moves_on()

    def fill_in(self, thing: Lot | None) -> None:
        lot = thing or self._like_the_last()
        self.masses.offer(BAG_MASSES[self.desk.system])
        self.number.set_text(lot.lot_number)
        self.product.set_text(lot.product)
        self.arrived_on.set_day(lot.arrived_on if thing else self._today())
        self.made_on.set_day(lot.made_on)
        self.package.setCurrentIndex(self.package.findData(lot.package))
        self._set_reach()
        self.count.set_value(lot.package_count)
        self.mass.set_value(lot.package_mass_g, lot.package_mass_typed)
        self._fill_label(lot.composition)
        self._carried = self._label_typed() if thing is None and not self._brief else None
        self._tell_label()
        self.supplier.set_text(lot.supplier)
        self.plant_code.set_text(lot.plant_code)
        self.agglomerated.setCurrentIndex(self.agglomerated.findData(lot.agglomerated))
        self.price.set_text(lot.price_typed)
        self.price.show_example()
        self.medicated.setChecked(lot.medicated)
        self.note.set_text(lot.note)
        self._trouble.hide()
        if thing is None and lot.product:
            self.product.say(self.tr("As the last lot; type over it if not."))

    def _like_the_last(self) -> Lot:
        """What a new lot most likely has in common with the one entered last, where it is shown and can be seen."""
        farm = self.desk.farm
        self._lots = [] if farm is None or self._brief else self.desk.records.every(Lot, farm.id)
        if not self._lots:
            return Lot(id="", farm_id="", lot_number="")
        last = self._lots[-1]
        return Lot(
            id="",
            farm_id=last.farm_id,
            lot_number="",
            product=last.product,
            package=last.package,
            package_mass_g=last.package_mass_g,
            package_mass_typed=last.package_mass_typed,
            composition=self._label_of(last.product),
            supplier=last.supplier,
        )

    def _label_of(self, product: str) -> Composition:
        """What the newest lot of a product with a label told by it; nothing where none has."""
        lots = reversed(self._lots) if product else ()
        known = (lot.composition for lot in lots if lot.product.casefold() == product.casefold())
        return next((told for told in known if told != Composition()), Composition())

    def _fill_label(self, told: Composition) -> None:
        for name, field in self.parts.items():
            field.set_value(getattr(told, name))

    def _follow_product(self) -> None:
        """Another product has another label; what somebody typed stays."""
        if self._carried is not None and self._label_typed() == self._carried:
            self._fill_label(self._label_of(self.product.text()))
            self._carried = self._label_typed()
            self._tell_label()

    def _tell_label(self) -> None:
        """Where the figures come from: an earlier bag's are only likely."""
        if self._carried not in (None, Composition()):
            told = self.tr(
                "As on the bags of this product before. Check each against the new bag; type over it if not."
            )
        else:
            told = self.tr(
                "From the label, percent of the powder. Leave empty what it does not say; it can follow later."
            )
        self._label_told.setText(told)

    def _label_typed(self) -> Composition:
        return Composition(**{name: field.value() for name, field in self.parts.items()})

    def made(self) -> Lot | None:
        farm = self.desk.farm
        if farm is None or not self._sound():
            return None
        count, mass = self.count.value(), self.mass.value()
        lot = self.thing or Lot(id=new_id(), farm_id=farm.id, lot_number="")
        return replace(
            lot,
            lot_number=self.number.text(),
            product=self.product.text(),
            made_on=self.made_on.day(),
            arrived_on=self.arrived_on.day(),
            package=self._kind_of(mass),
            package_count=None if count is None else round(count),
            package_mass_g=mass,
            package_mass_typed=self.mass.told() if mass is not None else "",
            composition=self._label_typed(),
            medicated=self.medicated.isChecked(),
            note=self.note.text(),
            supplier=self.supplier.text(),
            plant_code=self.plant_code.text(),
            agglomerated=self.agglomerated.currentData(),
            price_per_package=self.price.value(),
            price_typed=self.price.text(),
        )

    def _percent(self, caption: str) -> Amount:
        return Amount(self.desk, caption, Kind.PERCENT, optional=True, lowest=0, highest=WHOLE_PCT, example=False)

    def _lay_out(self) -> None:
        kind = Captioned(self.tr("Comes in"), self.package)
        heavy = column(self.mass, self.masses)
        # Put in later, a field would come under Tab after all the others.
        packages = row(kind, *(() if self._brief else (self.count, heavy)), self.price, spacing=24)
        later = column(
            packages,
            row(self.supplier, self.plant_code, Captioned(self.tr("Agglomerated"), self.agglomerated), spacing=24),
            label(self.tr("Label composition"), "heading"),
            self._label_told,
            row(*self.parts.values(), spacing=12),
            self.note,
        )
        later.setContentsMargins(0, 0, 0, 0)
        self._later.setLayout(later)
        names = row(self.number, self.product, spacing=24)
        arrived = (self.arrived_on, self.count, heavy) if self._brief else (self.arrived_on,)
        days = row(*arrived, self.made_on, spacing=24)
        add_all(self.body, (names, days, self._later, self.medicated, self._caution, self._trouble))
        self.body.addStretch(1)

    def _watch(self) -> None:
        for text in (self.number, self.product, self.arrived_on, self.made_on, self.note):
            text.edited.connect(self.edited)
        for text in (self.supplier, self.plant_code, self.price):
            text.edited.connect(self.edited)
        for amount in (self.count, self.mass, *self.parts.values()):
            amount.edited.connect(self.edited)
        self.product.edited.connect(self._follow_product)
        self.masses.chosen.connect(self.mass.take)
        self.package.activated.connect(self._set_reach)
        for choice in (self.package, self.agglomerated):
            choice.activated.connect(self.edited)
        self.medicated.toggled.connect(self._caution.setVisible)
        self.medicated.toggled.connect(self.edited)
        self._caution.hide()

    def _today(self) -> date:
        return self.desk.clock().date()

    def _set_reach(self) -> None:
        """A tote weighs as much as many bags."""
        of_kind = TOTE_G if self.package.currentData() == PackageKind.TOTE else BAG_G
        self.mass.box.set_limits(*(PACKAGE_G if self._brief else of_kind))

    def _kind_of(self, mass_g: float | None) -> PackageKind:
        """What it comes in; where that is not asked, what no bag weighs is a tote."""
        chosen = PackageKind(self.package.currentData())
        return PackageKind.TOTE if self._brief and mass_g is not None and mass_g > BAG_G[1] else chosen

    def _sound(self) -> bool:
        fields = (self.count, self.mass, *self.parts.values())
        numbers = [field.understood() for field in fields]
        days = [self.arrived_on.understood(), self.made_on.understood()]
        if not all([self._numbered(), *numbers, *days, self.price.understood()]):
            return False
        self._trouble.setText(self._contradiction())
        self._trouble.setVisible(bool(self._trouble.text()))
        return not self._trouble.text()

    def _numbered(self) -> bool:
        if not self.number.text():
            self.number.say(self.tr("Type the lot number: each lot is weighed for itself."), wrong=True)
        return bool(self.number.text())

    def _contradiction(self) -> str:
        made, arrived = self.made_on.day(), self.arrived_on.day()
        if made and arrived and made > arrived:
            return self.tr("It was made after it arrived. Check both days.")
        if made and arrived and arrived.year - made.year > OLDEST_POWDER_YEARS:
            return self.tr("It was made years before it arrived. Check both days.")
        # An older contradiction, as a file could have brought it, does not keep other changes back.
        fed = self.thing.fed_from if self.thing and arrived != self.thing.arrived_on else None
        if fed and arrived and arrived > fed:
            return self.tr("It is fed since {day}, before it arrived. Check both days.").format(day=day_text(fed))
        told = [value for field in self.parts.values() if (value := field.value()) is not None]
        if sum(told) > WHOLE_PCT:
            return self.tr("Protein, fat, fiber, ash and moisture together are more than 100 %. Check them.")
        return ""
