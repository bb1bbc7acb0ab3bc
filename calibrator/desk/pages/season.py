"""The season: what density did, where its spread comes from, why it moved, and what to do about it."""

from __future__ import annotations

from datetime import date
from functools import partial
from typing import TypeVar

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.page import Page
from calibrator.desk.season.facts import Part, SeasonFacts
from calibrator.desk.season.happened_panel import HappenedPanel
from calibrator.desk.season.inside_panel import InsidePanel
from calibrator.desk.season.looking import Looking
from calibrator.desk.season.lots_panel import LotsPanel
from calibrator.desk.season.spread_panel import SpreadPanel
from calibrator.desk.season.why_panel import WhyPanel
from calibrator.desk.season_doors import SeasonDoors
from calibrator.desk.widgets.key_tabs import KeyTabs
from calibrator.model import Farm

Panel = HappenedPanel | LotsPanel | SpreadPanel | WhyPanel | InsidePanel
P = TypeVar("P", LotsPanel, SpreadPanel, WhyPanel, InsidePanel)


class SeasonPage(Page):
    """Five tabs, each made when it is first looked at and filled when it is in view."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, self.tr("Season"), parent)
        self.doors = SeasonDoors(desk)
        self.beside_title(self.doors)
        self._facts: SeasonFacts | None = None
        self._seen: tuple[int, Farm, date] | None = None
        self.happened = HappenedPanel(desk)
        self.tabs = KeyTabs()
        self.tabs.setAccessibleName(self.tr("Parts of the season"))
        self.tabs.tabBar().setAccessibleName(self.tabs.accessibleName())
        self.tabs.addTab(self.happened, self.tr("What &happened"))
        makers = (
            (self.tr("Lots s&ide by side"), LotsPanel),
            (self.tr("Where spread comes &from"), SpreadPanel),
            (self.tr("Wh&y it moved"), WhyPanel),
            (self.tr("I&nside a lot"), InsidePanel),
        )
        self._makers = {self._add_place(caption): maker for caption, maker in makers}
        self._parts = {self.tabs.widget(place): part for place, part in enumerate(Part)}
        self._made: dict[QWidget, Panel] = {self.happened: self.happened}
        self._filled: dict[QWidget, tuple[SeasonFacts, bool]] = {}
        self.looking = Looking()
        self.looking.done.connect(self._fill)
        self.tabs.currentChanged.connect(self._fill)
        self.body.addWidget(self.looking)
        self.body.addWidget(self.tabs, 1)

    def reload(self) -> None:
        farm = self.desk.farm
        if farm is None:
            return
        today = self.desk.clock().date()
        seen = (self.desk.records.version(), farm, today)
        if seen != self._seen or self._facts is None:
            self._seen, self._facts = seen, SeasonFacts(self.desk.records, farm, today)
            self.looking.leave()
        self._fill()

    def help_title(self) -> str:
        return QCoreApplication.translate("Glossary", "Bulk density")

    def pending(self) -> str:
        """What is typed here and not kept yet; blank where all is kept."""
        return next(
            (told for panel in self._made.values() if isinstance(panel, LotsPanel) and (told := panel.pending())), ""
        )

    @property
    def lots(self) -> LotsPanel:
        """The table of lots, two of them side by side."""
        return self._panel(1, LotsPanel)

    @property
    def spread(self) -> SpreadPanel:
        """Where the spread comes from."""
        return self._panel(2, SpreadPanel)

    @property
    def why(self) -> WhyPanel:
        """What density goes with."""
        return self._panel(3, WhyPanel)

    @property
    def inside(self) -> InsidePanel:
        """The bags of one lot."""
        return self._panel(4, InsidePanel)

    @property
    def panel(self) -> Panel:
        """The one in view."""
        found = self.tabs.currentWidget()
        assert found is not None
        return self._made[found]

    def _panel(self, place: int, kind: type[P]) -> P:
        self.tabs.setCurrentIndex(place)
        assert isinstance(self.panel, kind)
        return self.panel

    def _add_place(self, caption: str) -> QWidget:
        place = QWidget()
        QVBoxLayout(place).setContentsMargins(0, 0, 0, 0)
        self.tabs.addTab(place, caption)
        return place

    def _fill(self) -> None:
        """Fill the tab in view, unless it shows this already."""
        place = self.tabs.currentWidget()
        if place is None:
            return
        if place not in self._made:
            made = self._makers[place](self.desk)
            layout = place.layout()
            assert layout is not None
            layout.addWidget(made)
            self._made[place] = made
        facts = self._facts
        if facts is None:
            return
        part, panel = self._parts[place], self._made[place]
        ready = facts.ready(part)
        panel.setVisible(ready or panel is self.happened)
        if self._filled.get(place) != (facts, ready) and (ready or panel is self.happened):
            self._filled[place] = facts, ready
            panel.show_season(facts)
        if not ready and not self.looking.at_work:
            self.looking.begin(self._what_is_looked_through(facts), partial(facts.prepare, part))

    def _what_is_looked_through(self, facts: SeasonFacts) -> str:
        signed = facts.signed_count
        what = self.tr("Looking through {lots}, of which none is left out …")
        if facts.past_count:
            what = self.tr("Looking through {lots} and the weighings out of files, of which none is left out …")
        return what.format(lots=counted.lots(signed))
