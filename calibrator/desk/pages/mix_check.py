"""Mix check: is what the calf gets what the chart says, and what to do if not."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TypeVar, cast

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QTabWidget, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.things import ThingsTab, Wording
from calibrator.desk.mix.bag_panel import BagPanel
from calibrator.desk.mix.check_panel import CheckPanel
from calibrator.desk.mix.history_panel import HistoryPanel
from calibrator.desk.mix.instrument_form import InstrumentForm
from calibrator.desk.mix.instrument_words import about
from calibrator.desk.mix.line_panel import LinePanel
from calibrator.desk.mix.tool_checks import ToolChecks
from calibrator.desk.mix_batch import FarmNow, farm_now
from calibrator.desk.mix_tools import Tools, read_tools
from calibrator.desk.page import Page
from calibrator.desk.parts import label
from calibrator.desk.refusals import in_words
from calibrator.desk.standing import standing
from calibrator.model import Instrument
from calibrator.science.errors import CannotCompute

P = TypeVar("P", bound=QWidget)


class MixCheckPage(Page):
    """Six tabs, each made when it is first looked at. What is typed stays until it is kept or cleared."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, self.tr("Mix check"), parent)
        self._tools: Tools | None = None
        self._now: FarmNow | None = None
        self.trouble = label("", "caution")
        self.tabs = QTabWidget()
        self.body.addWidget(self.trouble)
        self.body.addWidget(self.tabs, 1)
        self.check = CheckPanel(desk)
        self.check.instruments_wanted.connect(self._enter_instruments)
        self.check.water_check_wanted.connect(self._check_in_water)
        self.check.line_wanted.connect(partial(self.bring_up, "line"))
        self.tabs.setAccessibleName(self.tr("Parts of the mix check"))
        self.tabs.tabBar().setAccessibleName(self.tabs.accessibleName())
        self.tabs.addTab(self.check, self.tr("This &mix"))
        self._places = {
            name: self._add_place(caption)
            for name, caption in (
                ("bags", self.tr("Ba&gs")),
                ("history", self.tr("Histor&y")),
                ("line", self.tr("Brix calibrati&on")),
                ("tool_checks", self.tr("Instrument &checks")),
                ("instruments", self.tr("I&nstruments")),
            )
        }
        self._made: dict[str, QWidget] = {}
        self.tabs.currentChanged.connect(self._look_at)

    @property
    def bags(self) -> BagPanel:
        return self._panel("bags", BagPanel)

    @property
    def history(self) -> HistoryPanel:
        return self._panel("history", HistoryPanel)

    @property
    def line(self) -> LinePanel:
        return self._panel("line", LinePanel)

    @property
    def tool_checks(self) -> ToolChecks:
        return self._panel("tool_checks", self._make_tool_checks)

    @property
    def instruments(self) -> ThingsTab[Instrument]:
        return self._panel("instruments", self._make_instruments)

    def bring_up(self, name: str) -> None:
        """Show a tab by its name: bags, history, line, tool_checks or instruments."""
        self.tabs.setCurrentWidget(self._places[name])

    def _check_in_water(self) -> None:
        """The checks of the instrument that the mix was read with; where none is entered yet, entering it."""
        readings = self.check.readings
        tool_id = str(readings.refractometer.currentData() or readings.hydrometer.currentData() or "")
        if not tool_id:
            self._enter_instruments()
            self.instruments.kept.connect(self._check_tool, Qt.ConnectionType.SingleShotConnection)
            return
        self._check_tool(tool_id)

    def _check_tool(self, tool_id: str) -> None:
        self.bring_up("tool_checks")
        self.tool_checks.open(tool_id)

    def _enter_instruments(self) -> None:
        self.bring_up("instruments")
        if not self.instruments.pending():
            self.instruments.start_new()

    def reload(self) -> None:
        farm = self.desk.farm
        if farm is None:
            return
        records = self.desk.records
        self._tools = read_tools(records, farm)
        now = standing(records, farm, self.desk.clock().date())
        try:
            self._now = farm_now(records, farm, now, at=self.desk.clock())
            self._tell("")
        except CannotCompute as error:
            self._now = None
            self._tell(in_words(error))
        if self._now is not None:
            self.check.show_farm(self._now, self._tools, now)
        for name in self._made:
            self._fill(name)

    def open(self, thing_id: str) -> None:
        """An instrument by its id; else the check in hand, ready to type."""
        if thing_id and self.instruments.open(thing_id):
            self.bring_up("instruments")
        elif self.tabs.currentWidget() is self.check:
            self.check.start()

    def pending(self) -> str:
        """What is typed in any tab and not kept yet; blank where all is kept."""
        made = (self.check, *(self._made[name] for name in ("bags", "line", "instruments") if name in self._made))
        found = (panel.pending() for panel in made if isinstance(panel, CheckPanel | BagPanel | LinePanel | ThingsTab))
        return next((text for text in found if text), "")

    def _add_place(self, caption: str) -> QWidget:
        place = QWidget()
        layout = QVBoxLayout(place)
        layout.setContentsMargins(0, 0, 0, 0)
        self.tabs.addTab(place, caption)
        return place

    def _look_at(self, place: int) -> None:
        names = {id(widget): name for name, widget in self._places.items()}
        name = names.get(id(self.tabs.widget(place)))
        if name is not None:
            getattr(self, name)
        if name == "line":
            self.line.show_hand(self.check.found)

    def _panel(self, name: str, make: Callable[[Desk], P]) -> P:
        if name not in self._made:
            made = make(self.desk)
            self._made[name] = made
            layout = self._places[name].layout()
            assert layout is not None
            layout.addWidget(made)
            made.show()
            self._fill(name)
        return cast(P, self._made[name])

    def _fill(self, name: str) -> None:
        """Have a panel that is there read anew."""
        panel, farm, now, tools = self._made[name], self.desk.farm, self._now, self._tools
        if farm is None or tools is None:
            return
        if isinstance(panel, ThingsTab):
            panel.reload()
        elif isinstance(panel, HistoryPanel):
            panel.show_farm(farm)
        elif now is None:
            return
        elif isinstance(panel, BagPanel):
            panel.show_farm(now)
        elif isinstance(panel, LinePanel):
            panel.show_farm(now, tools)
            panel.show_hand(self.check.found)
        elif isinstance(panel, ToolChecks):
            panel.show_tools(tools, now.powder.resolution_g)

    def _make_tool_checks(self, desk: Desk) -> ToolChecks:
        made = ToolChecks(desk)
        made.instruments_wanted.connect(self._enter_instruments)
        return made

    def _make_instruments(self, desk: Desk) -> ThingsTab[Instrument]:
        return ThingsTab(desk, Instrument, InstrumentForm(desk), self._wording(), self._about)

    def _tell(self, text: str) -> None:
        self.trouble.setText(text)
        self.trouble.setVisible(bool(text))

    def _about(self, tool: Instrument) -> str:
        return about(tool, self._tools, self.desk.clock())

    def _wording(self) -> Wording:
        return Wording(
            add=self.tr("&Add an instrument"),
            new=self.tr("New instrument"),
            retire=self.tr("&Retire this instrument"),
            really_retire=self.tr("{name} will no longer be offered; its readings stay. Retire this instrument?"),
        )
