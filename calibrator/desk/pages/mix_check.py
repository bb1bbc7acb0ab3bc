"""Mix check: is what the calf gets what the chart says, and what to do if not."""

from __future__ import annotations

from PySide6.QtWidgets import QTabWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.things import ThingsTab, Wording
from calibrator.desk.mix.bag_panel import BagPanel
from calibrator.desk.mix.check_panel import CheckPanel
from calibrator.desk.mix.history_panel import HistoryPanel
from calibrator.desk.mix.instrument_form import InstrumentForm
from calibrator.desk.mix.instrument_words import about
from calibrator.desk.mix.line_panel import LinePanel
from calibrator.desk.mix.tool_checks import ToolChecks
from calibrator.desk.mix_batch import farm_now
from calibrator.desk.mix_tools import Tools, read_tools
from calibrator.desk.page import Page
from calibrator.desk.parts import label
from calibrator.desk.standing import standing
from calibrator.model import Instrument
from calibrator.science.errors import CannotCompute


class MixCheckPage(Page):
    """Six tabs. What is typed in any of them stays until it is kept or cleared."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk, self.tr("Mix check"))
        self._tools: Tools | None = None
        self.check, self.bags, self.history = CheckPanel(desk), BagPanel(desk), HistoryPanel(desk)
        self.line, self.tool_checks = LinePanel(desk), ToolChecks(desk)
        self.instruments = ThingsTab(desk, Instrument, InstrumentForm(desk), self._wording(), self._about)
        self.trouble = label("", "caution")
        self.tabs = QTabWidget()
        self.tabs.setAccessibleName(self.tr("Parts of the mix check"))
        for widget, name in (
            (self.check, self.tr("This &mix")),
            (self.bags, self.tr("Ba&gs")),
            (self.history, self.tr("Histor&y")),
            (self.line, self.tr("&Own line")),
            (self.tool_checks, self.tr("Instrument &checks")),
            (self.instruments, self.tr("I&nstruments")),
        ):
            self.tabs.addTab(widget, name)
        self.body.addWidget(self.trouble)
        self.body.addWidget(self.tabs, 1)

    def reload(self) -> None:
        farm = self.desk.farm
        if farm is None:
            return
        records = self.desk.records
        self._tools = tools = read_tools(records, farm)
        self.instruments.reload()
        self.history.show_farm(farm)
        try:
            now = farm_now(records, farm, standing(records, farm))
        except CannotCompute as error:
            self._tell(str(error))
            return
        self._tell("")
        self.check.show_farm(now, tools)
        self.bags.show_farm(now)
        self.line.show_farm(now, tools)
        self.tool_checks.show_tools(tools, now.powder.resolution_g)

    def open(self, thing_id: str) -> None:
        """An instrument by its id; else the check in hand, ready to type."""
        if thing_id and self.instruments.open(thing_id):
            self.tabs.setCurrentWidget(self.instruments)
        elif self.tabs.currentWidget() is self.check:
            self.check.start()

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
