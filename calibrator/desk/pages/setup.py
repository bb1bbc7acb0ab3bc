"""Set-up: the farm's settings, its scales, scoops and vessels."""

from __future__ import annotations

from PySide6.QtWidgets import QTabWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.farm_form import FarmForm
from calibrator.desk.forms.scale_form import ScaleForm
from calibrator.desk.forms.scoop_form import ScoopForm
from calibrator.desk.forms.things import ThingsTab, Wording
from calibrator.desk.forms.vessel_form import VesselForm
from calibrator.desk.page import Page
from calibrator.desk.speech import decimal_comma
from calibrator.model import Scale, Scoop, Vessel
from calibrator.units import show_percent, show_scoop_volume, show_volume


class SetupPage(Page):
    """Four tabs; a thing's id opens it on its tab."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk, "")
        self.title.setText(self.tr("Set-up"))
        self.farm = FarmForm(desk)
        self.scales = ThingsTab(desk, Scale, ScaleForm(desk), self._scale_words(), self._about_scale)
        self.scoops = ThingsTab(desk, Scoop, ScoopForm(desk), self._scoop_words(), self._about_scoop)
        self.vessels = ThingsTab(desk, Vessel, VesselForm(desk), self._vessel_words(), self._about_vessel)
        self.tabs = QTabWidget()
        self.tabs.addTab(self.farm, self.tr("&Farm"))
        self.tabs.addTab(self.scoops, self.tr("Sc&oops"))
        self.tabs.addTab(self.scales, self.tr("S&cales"))
        self.tabs.addTab(self.vessels, self.tr("&Vessels"))
        self.tabs.setAccessibleName(self.tr("Parts of the set-up"))
        self.body.addWidget(self.tabs, 1)

    def reload(self) -> None:
        self.farm.reload()
        for tab in (self.scales, self.scoops, self.vessels):
            tab.reload()

    def open(self, thing_id: str) -> None:
        for tab in (self.scales, self.scoops, self.vessels):
            if thing_id == tab.kind.__name__.lower():
                self.tabs.setCurrentWidget(tab)
                tab.start_new()
            elif tab.open(thing_id):
                self.tabs.setCurrentWidget(tab)

    def unkept(self) -> str:
        """What is typed here and not kept yet; blank where all is kept."""
        found = [tab.unkept() for tab in (self.scales, self.scoops, self.vessels)]
        return ", ".join(name for name in found if name)

    def _about_scale(self, scale: Scale) -> str:
        text = self.tr("{step} steps, up to {capacity}")
        return text.format(step=scale.resolution_typed, capacity=scale.capacity_typed)

    def _about_scoop(self, scoop: Scoop) -> str:
        volume = show_scoop_volume(scoop.volume_ml, self.desk.system, decimal_comma=decimal_comma())
        text = (
            self.tr("{volume}, by water") if scoop.volume_from_water else self.tr("{volume}, by dimensions")
        )
        return text.format(volume=volume)

    def _about_vessel(self, vessel: Vessel) -> str:
        volume = show_volume(vessel.rim_volume_ml, self.desk.system, decimal_comma=decimal_comma())
        share = show_percent(100 * vessel.usable_share, 0, decimal_comma=decimal_comma())
        return self.tr("{volume}, filled to {share}").format(volume=volume, share=share)

    def _scale_words(self) -> Wording:
        return Wording(
            add=self.tr("&Add a scale"),
            new=self.tr("New scale"),
            retire=self.tr("&Retire this scale"),
            really_retire=self.tr("{name} will no longer be offered; its weighings stay. Retire this scale?"),
        )

    def _scoop_words(self) -> Wording:
        return Wording(
            add=self.tr("&Add a scoop"),
            new=self.tr("New scoop"),
            retire=self.tr("&Retire this scoop"),
            really_retire=self.tr("{name} will no longer be offered; its marks stay. Retire this scoop?"),
        )

    def _vessel_words(self) -> Wording:
        return Wording(
            add=self.tr("&Add a vessel"),
            new=self.tr("New vessel"),
            retire=self.tr("&Retire this vessel"),
            really_retire=self.tr("{name} will no longer be offered for batches. Retire this vessel?"),
        )
