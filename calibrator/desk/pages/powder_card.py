"""Powder at hand on the day's page: what is left, how long it lasts, and a count of the bags that are left."""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import suppress
from dataclasses import replace
from datetime import date, timedelta
from fractions import Fraction

from PySide6.QtWidgets import QFrame, QVBoxLayout

from calibrator.desk.at_hand import LONGEST_DAYS, ORDER_DAYS, AtHand, Beside, at_hand, by_plan_g
from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.forms.bare_field import BareField
from calibrator.desk.how.view import how_button
from calibrator.desk.how.working import Working
from calibrator.desk.in_use import LotState
from calibrator.desk.parts import button, label, row, set_tone
from calibrator.desk.refusals import in_words
from calibrator.desk.speech import day_text, decimal_comma
from calibrator.desk.standing import Standing
from calibrator.desk.theme import SPACE
from calibrator.model import Lot, PackageKind, PackagesLeft, UnitSystem
from calibrator.science.errors import CannotCompute
from calibrator.science.stock import about_packages
from calibrator.units import show_mass
from calibrator.units.bare import Bare, bare_text
from calibrator.units.registry import to_base

BAGS_OF = "bags of "  # what the page of lots takes for the form of a lot, at its bags
WHOLE_FROM = 100
"""From how many pounds or kilograms on powder at hand is told in whole ones: common practice, no source."""
LEFT = Bare("12", 0.0, 5000.0)


class PowderCard(QFrame):
    """Hidden while no lot is in use."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._lot: Lot | None = None
        self.found: AtHand | None = None
        self.setProperty("kind", "card")
        self.days, self.left = label("", "heading"), label("")
        self.beside, self.over = label(""), label("")
        self.needed, self.order, self.basis = label(""), label(""), label("", "quiet")
        self.how = how_button(self.workings)
        self.count = BareField("", LEFT, 2)
        self.keep_button = button(self.tr("Keep the co&unt"), self.keep)
        self.enter = button("", self._enter)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * SPACE, 2 * SPACE, 2 * SPACE, 2 * SPACE)
        layout.setSpacing(SPACE)
        layout.addWidget(label(self.tr("Powder at hand"), "quiet"))
        for widget in (self.days, self.left, self.beside, self.over, self.needed, self.order, self.basis):
            layout.addWidget(widget)
        layout.addLayout(row(self.how, None))
        layout.addLayout(row(self.count, self.keep_button))
        layout.addLayout(row(self.enter, None))
        self.count.entered.connect(self.keep)

    def show_standing(self, now: Standing) -> None:
        """Show what is left of the lot in use."""
        known = now.in_use
        self._lot = known.lot if known else None
        self.setVisible(known is not None)
        self.found, trouble = None, ""
        try:
            self.found = at_hand(now, self.desk.clock().date())
        except CannotCompute as error:
            trouble = "\n".join(filter(None, (in_words(error), self._plans_at_fault(now))))
        unknown = self.found is None and not trouble
        if unknown:
            trouble = self._missing_of(self._lot)
        self._tell(trouble)
        for widget in (self.count, self.keep_button):
            widget.setVisible(self._lot is not None and self._lot.package_mass_g is not None)
        self.enter.setVisible(unknown)
        weight_alone = self._lot is not None and self._lot.package_count is not None
        self.enter.setText(self.tr("Enter the bags' weight") if weight_alone else self.tr("Enter what came"))
        tote = self._lot is not None and self._lot.package is PackageKind.TOTE
        self.count.rename(self.tr("Totes left this morning") if tote else self.tr("Bags left this morning"))

    def _missing_of(self, lot: Lot | None) -> str:
        count, mass = (lot.package_count, lot.package_mass_g) if lot is not None else (None, None)
        if count is not None and mass is None:
            return self.tr("How heavy the bags of this lot are is not entered.")
        if mass is not None and count is None:
            return self.tr("How many bags of this lot came is not entered.")
        return self.tr("How many bags of this lot came, and how heavy they are, is not entered.")

    def pending(self) -> str:
        """What is typed here and not kept yet; blank where all is kept."""
        return self.tr("a count of bags") if self.count.text() else ""

    def workings(self) -> tuple[Working, ...]:
        """How the days at hand came about."""
        from calibrator.desk.how.of_stock import of_stock  # the day's page is up before anybody asks

        return (of_stock(self.found, self.desk.system),) if self.found else ()

    def keep(self) -> None:
        """Keep the count; it stands for this morning, before today's feedings."""
        packages = self.count.value()
        if self._lot is None or not self.count.tell() or packages is None:
            return
        if self._lot.package_count is not None and packages > self._lot.package_count:
            self._say_too_many(self._lot.package_count)
            return
        told = PackagesLeft(packages=packages, on=self.desk.clock().date(), typed=self.count.text())
        counted_lot = replace(self._lot, packages_left=told)
        # Emptied first: keeping reads every page anew, and what is typed would stay in the field.
        self.count.set_text("")
        if self.desk.keep(counted_lot, "bags counted") is None:
            self.count.set_text(told.typed)
        else:
            self.desk.say(self.tr("Count of bags kept: {count}").format(count=told.typed))

    def _say_too_many(self, came: int) -> None:
        """In short where the field is narrow: a bubble would lie over the rest of the card."""
        text = self.tr("Only {count} came of this lot. Count again, or correct the lot.")
        short = self.tr("Only {count} came.")
        self.count.say(text.format(count=came), wrong=True, short=short.format(count=came))

    def _tell(self, trouble: str) -> None:
        found = self.found
        self.days.setVisible(found is not None)
        self.left.setText(self._left_text(found) if found else trouble)
        needed = self._needed_text(found) if found else ""
        self.needed.setText(needed)
        self.needed.setVisible(bool(needed))
        set_tone(self.needed, "warn" if found and found.low else "")
        for widget in (self.basis, self.how):
            widget.setVisible(found is not None)
        told = ((self.beside, self._beside_text), (self.over, self._over_text), (self.order, self._order_text))
        for line, words in told:
            line.setText(words(found) if found else "")
            line.setVisible(bool(line.text()))
        if found:
            self.days.setText(self._days_text(found))
            self.basis.setText(self._basis_text(found))

    def _days_text(self, found: AtHand) -> str:
        if found.stock.days is None:
            return self.tr("Lot {lot}: no plan feeds it yet").format(lot=found.lot.lot_number)
        return counted.days_at_hand(found.stock.days).format(lot=found.lot.lot_number)

    def _stored(self, mass_g: float) -> str:
        """Powder by the bag: a part of a pound on hundreds would say more than anybody knows."""
        farm = self.desk.system is UnitSystem.FARM
        unit_g = float(to_base(Fraction(1), "lb" if farm else "kg"))
        return show_mass(
            mass_g,
            self.desk.system,
            resolution_g=unit_g if mass_g >= WHOLE_FROM * unit_g else None,
            style="lb" if farm else "auto",
            decimal_comma=decimal_comma(),
        )

    def _left_text(self, found: AtHand) -> str:
        comma = decimal_comma()
        number = bare_text([found.stock.packages_left], 1, decimal_comma=comma)
        mass = self._stored(found.stock.left_g)
        if found.lot.package is PackageKind.TOTE:
            text = self.tr("{number} totes left, {mass}")
        else:
            text = self.tr("{number} bags left, {mass}")
        return text.format(number=number, mass=mass)

    def _needed_text(self, found: AtHand) -> str:
        if found.stock.days is None:
            return ""
        if found.needed_on is None:
            return self.tr("It does not feed today in full.")
        follows = found.next_lot
        known = found.signed_days is not None
        if found.left_over and known and (follows is None or follows.sign_off is None):
            return self._with_what_is_left(found, found.needed_on)
        if follows is None:
            text = self.tr("A new lot is needed on {day}: weigh it in before the last bag is opened.")
        elif follows.sign_off is None:
            text = self.tr("Lot {lot} is needed on {day}: weigh it in before the last bag is opened.")
        elif follows.lot.fed_from is not None:
            planned = self._planned_text(follows.lot.lot_number, follows.lot.fed_from, found.needed_on)
            return f"{planned} {self._with_what_waits(found)}".strip()
        else:
            text = self.tr("Lot {lot} is needed on {day}: it is weighed in and can follow.")
        told = text.format(day=day_text(found.needed_on), lot=follows.lot.lot_number if follows else "")
        return f"{told} {self._with_what_waits(found)}".strip()

    def _with_what_waits(self, found: AtHand) -> str:
        """The day beyond all that is weighed in, of lots that wait and what is left of earlier ones; blank where none
        waits and where that day is not known."""
        waits = [each.known.lot for each in found.beside if each.known.state is LotState.WAITING]
        if not waits or found.new_lot_on is None:
            return ""
        lots = [lot.lot_number for lot in (*waits, *(old.lot for old in found.left_over))]
        text = self.tr("With lot {lots}, a new lot is needed on {day}.")
        if len(lots) > 1:
            text = self.tr("With lots {lots}, a new lot is needed on {day}.")
        return text.format(lots=", ".join(lots), day=day_text(found.new_lot_on))

    def _with_what_is_left(self, found: AtHand, sooner: date) -> str:
        """Bags of earlier lots are weighed in and can be fed: with them and without them a lot is needed on two
        days."""
        follows = found.next_lot
        if found.lasts:
            text = self.tr(
                "With the bags left of lot {lots} the powder does for more than {days} days, without them until {day}."
            )
        elif follows is None:
            text = self.tr(
                "With the bags left of lot {lots} a new lot is needed on {later}, without them on {sooner}: weigh it "
                "in before the last bag is opened."
            )
        else:
            text = self.tr(
                "With the bags left of lot {lots} lot {lot} is needed on {later}, without them on {sooner}: weigh it "
                "in before the last bag is opened."
            )
        return text.format(
            lots=", ".join(old.lot.lot_number for old in found.left_over),
            lot=follows.lot.lot_number if follows else "",
            later=day_text(found.new_lot_on) if found.new_lot_on else "",
            sooner=day_text(sooner),
            day=day_text(sooner - timedelta(days=1)),
            days=LONGEST_DAYS,
        )

    def _planned_text(self, lot: str, fed_from: date, needed_on: date) -> str:
        """Two days, each with what it means: when the next lot is to follow, and how long the powder there would do."""
        text = self.tr("Lot {lot} follows on {fed}, as planned; what is left would do until {day}.")
        if fed_from > needed_on:
            text = self.tr(
                "What is left does until {day} only, and lot {lot} is planned from {fed} on: change over sooner."
            )
        return text.format(lot=lot, fed=day_text(fed_from), day=day_text(needed_on))

    def _order_text(self, found: AtHand) -> str:
        if not found.to_order:
            return ""
        tote = found.lot.package is PackageKind.TOTE
        text = (counted.totes_to_order if tote else counted.bags_to_order)(found.to_order)
        told = text.format(days=ORDER_DAYS)
        if found.waiting_g:
            told += " " + self.tr("That counts in {mass} of other lots.").format(mass=self._stored(found.waiting_g))
        return told

    def _beside_text(self, found: AtHand) -> str:
        return "\n".join(self._beside_line(each) for each in found.beside)

    def _beside_line(self, beside: Beside) -> str:
        """What a lot to come gives; a lot is fed once it is weighed in, so it is told which ones are."""
        unweighed = beside.known.sign_off is None
        if beside.days is not None:
            text = (counted.days_beside_unweighed if unweighed else counted.days_beside)(beside.days)
        elif unweighed:
            text = self.tr("Lot {lot} is here too, not weighed in yet.")
        else:
            text = self.tr("Lot {lot} is here too, weighed in.")
        return text.format(lot=beside.known.lot.lot_number)

    def _over_text(self, found: AtHand) -> str:
        lines = (
            counted.more_bags_at_hand(about_packages(old.packages)).format(lot=old.lot.lot_number)
            for old in found.left_over
        )
        return "\n".join(lines)

    def _basis_text(self, found: AtHand) -> str:
        """What the figure rests on; without a plan nothing was fed by one, and what came is all that is known."""
        daily = self._stored(found.daily_g)
        if not found.daily_g:
            text = self.tr("Counted on {day}.") if found.counted_on else ""
        elif found.counted_on:
            text = self.tr("Counted on {day}, less what the plans took since; today they take {daily}.")
        elif found.lot.packages_left is not None:
            text = self.tr(
                "What was left on {day} by the plans, less what they took since; today they take {daily}. "
                "Count the bags to be sure."
            )
        else:
            text = self.tr(
                "What came, less what the plans took since {day}; today they take {daily}. Count the bags to be sure."
            )
        told = text.format(day=day_text(found.since), daily=daily)
        return "\n".join(filter(None, (told, self._plans_text(found.by_plan))))

    def _plans_at_fault(self, now: Standing) -> str:
        """The same where more was fed than came: the same calves in two plans are a likely reason."""
        with suppress(CannotCompute):
            return self._plans_text(by_plan_g(now.plans, self._lot, self.desk.clock().date())) if self._lot else ""
        return ""

    def _plans_text(self, by_plan: Sequence[tuple[str, float]]) -> str:
        """Which plans the daily powder is the sum of, where there are several: each counts all of its calves."""
        feeding = [(name, mass_g) for name, mass_g in by_plan if mass_g > 0]
        if len(feeding) < 2:
            return ""
        text = self.tr("The plans added up: {plans}. Calves in two of them are counted twice.")
        each = self.tr("{plan} {powder}")
        plans = (each.format(plan=name, powder=self._stored(mass_g)) for name, mass_g in feeding)
        return text.format(plans=", ".join(plans))

    def _enter(self) -> None:
        if self._lot:
            self.desk.go_to.emit("lots", f"{BAGS_OF}{self._lot.id}")
