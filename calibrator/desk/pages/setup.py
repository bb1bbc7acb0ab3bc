"""Set-up: the farm's settings, its scales, scoops, vessels and instruments."""

from __future__ import annotations

from functools import partial
from typing import Any

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QWidget

from calibrator.desk import shown
from calibrator.desk.context import Desk
from calibrator.desk.forms.farm_form import FarmForm
from calibrator.desk.forms.records_form import RecordsForm
from calibrator.desk.forms.scale_form import ScaleForm
from calibrator.desk.forms.scoop_form import ScoopForm
from calibrator.desk.forms.things import ThingsTab, Wording
from calibrator.desk.forms.vessel_form import VesselForm
from calibrator.desk.forms.wire_form import WireForm
from calibrator.desk.mix.instruments_tab import InstrumentsTab
from calibrator.desk.page import Page
from calibrator.desk.parts import button, label, row
from calibrator.desk.speech import decimal_comma
from calibrator.desk.standing import standing
from calibrator.desk.widgets.key_tabs import KeyTabs
from calibrator.desk.widgets.later import Later
from calibrator.model import Instrument, Plan, Scale, Scoop, Vessel
from calibrator.units import show_scoop_volume, show_volume

FROM_PLAN = ("tables", "vessel")  # the page in hand before, and what was asked for there


class SetupPage(Page):
    """A tab each for the farm, its things and the records; a thing's id opens it on its tab.

    Whoever came from a plan to enter a vessel is led back to it, by keeping the vessel or without.
    """

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, "", parent)
        self.title.setText(self.tr("Set-up"))
        self.back = button(self.tr("Back to the plan"), self._go_back)
        self.back.hide()
        self.keeps = label("", "quiet", wrap=False)
        beside = QWidget()
        inside = row(self.keeps, self.back)
        inside.setContentsMargins(0, 0, 0, 0)
        beside.setLayout(inside)
        self.beside_title(beside)
        self.tabs = KeyTabs()
        self.body.addWidget(self.tabs, 1)
        self.farm = FarmForm(desk)
        self.tabs.setAccessibleName(self.tr("Parts of the set-up"))
        self.tabs.tabBar().setAccessibleName(self.tabs.accessibleName())
        self.tabs.addTab(self.farm, self.tr("&Farm"))
        names = {
            Scoop: self.tr("Sc&oops"),
            Scale: self.tr("S&cales"),
            Vessel: self.tr("&Vessels"),
            Instrument: self.tr("Instru&ments"),
        }
        # A tab is filled when it is first opened, so that the page is up at once.
        self._things: dict[type[Any], Later[ThingsTab[Any]]] = {
            kind: Later(partial(self._make, kind)) for kind in names
        }
        self._wire = Later(partial(WireForm, desk))
        self._records = Later(partial(RecordsForm, desk))
        for kind, name in names.items():
            self.tabs.addTab(self._things[kind], name)
        self.tabs.addTab(self._wire, self.tr("Scale with a ca&ble"))
        self.tabs.addTab(self._records, self.tr("Record&s"))
        self.tabs.currentChanged.connect(self._reload_tab)

    @property
    def wire(self) -> WireForm:
        return self._wire.content

    @property
    def records(self) -> RecordsForm:
        return self._records.content

    @property
    def scoops(self) -> ThingsTab[Scoop]:
        return self._things[Scoop].content

    @property
    def scales(self) -> ThingsTab[Scale]:
        return self._things[Scale].content

    @property
    def instruments(self) -> ThingsTab[Instrument]:
        return self._things[Instrument].content

    @property
    def vessels(self) -> ThingsTab[Vessel]:
        return self._things[Vessel].content

    def reload(self) -> None:
        self._reload_tab()

    def show_tab(self, kind: type[Any]) -> None:
        """Bring up the tab of a kind of thing."""
        self.tabs.setCurrentWidget(self._things[kind])

    def open(self, thing_id: str) -> None:
        """Show a thing by its id, or an empty form by the name of its kind: scoop, scale, vessel, instrument.

        What is typed and not kept stays, whatever was asked for.
        """
        self.back.setVisible((self.came_from, thing_id) == FROM_PLAN)
        if not thing_id:
            return
        for kind, tab in self._things.items():
            if thing_id == kind.__name__.lower():
                self.show_tab(kind)
                if not tab.content.pending():
                    tab.content.start_new()
                return
            if tab.content.open(thing_id):
                self.show_tab(kind)
                return

    def help_title(self) -> str:
        here = self.tabs.currentWidget()
        if here is self._things[Scoop]:
            return QCoreApplication.translate("Glossary", "Scoop")
        if here in (self._things[Scale], self._wire):
            return QCoreApplication.translate("Hands", "Get the scale ready")
        if here is self._things[Instrument]:
            return QCoreApplication.translate("Glossary", "Brix")
        return QCoreApplication.translate("Glossary", "Batch") if here is self._things[Vessel] else ""

    def pending(self) -> str:
        """What is typed here and not kept yet; blank where all is kept."""
        return ", ".join(self._typed().values())

    def typed_at(self) -> QWidget:
        tab = next(iter(self._typed()), self.tabs.currentWidget())
        self.tabs.setCurrentWidget(tab)
        return tab

    def _typed(self) -> dict[QWidget, str]:
        """By its tab."""
        found: dict[QWidget, str] = {tab: tab.made.pending() for tab in self._things.values() if tab.made}
        if self._wire.made and self._wire.made.typed:
            found[self._wire] = self.tr("Scale with a cable")
        return {tab: name for tab, name in found.items() if name}

    def _go_back(self) -> None:
        self.desk.go_to.emit(FROM_PLAN[0], "")

    def _vessel_kept(self) -> None:
        if not self.back.isHidden():
            self._go_back()

    def _reload_tab(self) -> None:
        here = self.tabs.currentWidget()
        self.keeps.setText(self._when_kept(here))
        if here is self.farm:
            self.farm.reload()
        elif isinstance(here, Later):
            here.content.reload()

    def _when_kept(self, here: QWidget | None) -> str:
        """A setting is kept one way, a thing another: its form makes sense only as a whole."""
        if here is self.farm:
            return self.tr("Each setting is kept as soon as you leave it.")
        if here is self._wire:
            return self.tr("Kept when you press Keep and listen.")
        return "" if here is self._records else self.tr("Kept when you press Keep.")

    def _make(self, kind: type[Any]) -> ThingsTab[Any]:
        desk = self.desk
        if kind is Scoop:
            return ThingsTab(desk, Scoop, ScoopForm(desk), self._scoop_words(), self._about_scoop, self._used_scoop)
        if kind is Instrument:
            return InstrumentsTab(desk)
        if kind is Scale:
            return ThingsTab(desk, Scale, ScaleForm(desk), self._scale_words(), self._about_scale)
        vessels = ThingsTab(desk, Vessel, VesselForm(desk), self._vessel_words(), self._about_vessel, self._used_vessel)
        vessels.kept.connect(self._vessel_kept)
        return vessels

    def _about_scale(self, scale: Scale) -> str:
        text = self.tr("{step} steps, up to {capacity}")
        return text.format(step=scale.resolution_typed, capacity=scale.capacity_typed)

    def _about_scoop(self, scoop: Scoop) -> str:
        volume = show_scoop_volume(scoop.volume_ml, self.desk.system, decimal_comma=decimal_comma())
        text = self.tr("{volume}, by water") if scoop.volume_from_water else self.tr("{volume}, by dimensions")
        return text.format(volume=volume)

    def _used_scoop(self, scoop: Scoop) -> str:
        farm = self.desk.farm
        now = standing(self.desk.records, farm, self.desk.clock().date()) if farm else None
        if now is None or now.in_use is None:
            return ""
        lot = now.in_use.lot
        there = now.weighed_in_with(lot.id)
        if scoop.id not in {each.id for each in there}:
            return ""
        if len(there) > 1:
            text = self.tr("{name} is in use: lot {lot} is weighed in with it.")
        else:
            text = self.tr(
                "{name} is in use: lot {lot} is weighed in with it alone. Without it the powder has to be weighed "
                "until the lot is weighed in with another scoop."
            )
        return text.format(name=scoop.name, lot=lot.lot_number)

    def _used_vessel(self, vessel: Vessel) -> str:
        farm = self.desk.farm
        plans = self.desk.records.every(Plan, farm.id) if farm else []
        names = [plan.name for plan in plans if plan.vessel_id == vessel.id and plan.retired_on is None]
        text = self.tr("{name} is in use. These plans mix in it and need another vessel then: {plans}.")
        return text.format(name=vessel.name, plans=", ".join(names)) if names else ""

    def _about_vessel(self, vessel: Vessel) -> str:
        volume = show_volume(vessel.rim_volume_ml, self.desk.system, decimal_comma=decimal_comma())
        share = shown.share(vessel.usable_share, 0)
        return self.tr("{volume}, filled to {share}").format(volume=volume, share=share)

    def _scale_words(self) -> Wording:
        return Wording(
            add=self.tr("&Add a scale"),
            new=self.tr("New scale"),
            kept=self.tr("Scale kept: {name}"),
            retire=self.tr("&Retire this scale"),
            really_retire=self.tr("{name} will no longer be offered; its weighings stay. Retire this scale?"),
        )

    def _scoop_words(self) -> Wording:
        return Wording(
            add=self.tr("&Add a scoop"),
            new=self.tr("New scoop"),
            kept=self.tr("Scoop kept: {name}"),
            retire=self.tr("&Retire this scoop"),
            why_retire=self.tr(
                "{name} will no longer be offered; its marks stay. Why is it retired: worn, lost, broken, replaced?"
            ),
        )

    def _vessel_words(self) -> Wording:
        return Wording(
            add=self.tr("&Add a vessel"),
            new=self.tr("New vessel"),
            kept=self.tr("Vessel kept: {name}"),
            retire=self.tr("&Retire this vessel"),
            really_retire=self.tr("{name} will no longer be offered for batches. Retire this vessel?"),
        )
