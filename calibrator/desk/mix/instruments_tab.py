"""The instruments that a mix is read with, each with how its last check stands."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.desk.context import Desk
from calibrator.desk.forms.things import ThingsTab, Wording
from calibrator.desk.mix.instrument_form import InstrumentForm
from calibrator.desk.mix.instrument_words import about
from calibrator.desk.mix_tools import Tools, read_tools
from calibrator.model import Instrument

translate = QCoreApplication.translate


class InstrumentsTab(ThingsTab[Instrument]):
    """Under Mix check, where they are used, and under Set-up, where things of the farm are looked for."""

    def __init__(self, desk: Desk) -> None:
        self._tools: Tools | None = None
        super().__init__(desk, Instrument, InstrumentForm(desk), _wording(), self._about_tool)

    def reload(self) -> None:
        farm = self.desk.farm
        self._tools = read_tools(self.desk.records, farm) if farm else None
        super().reload()

    def _about_tool(self, tool: Instrument) -> str:
        return about(tool, self._tools, self.desk.clock())


def _wording() -> Wording:
    return Wording(
        add=translate("InstrumentsTab", "&Add an instrument"),
        new=translate("InstrumentsTab", "New instrument"),
        kept=translate("InstrumentsTab", "Instrument kept: {name}"),
        retire=translate("InstrumentsTab", "&Retire this instrument"),
        really_retire=translate(
            "InstrumentsTab", "{name} will no longer be offered; its readings stay. Retire this instrument?"
        ),
    )
