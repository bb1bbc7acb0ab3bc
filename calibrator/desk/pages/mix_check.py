"""Mix check: is what the calf gets what the chart says, and what to do if not."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial
from typing import TypeVar, cast

from PySide6.QtCore import QCoreApplication, QEvent, Qt, QTimer
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.mix.bag_panel import BagPanel
from calibrator.desk.mix.check_panel import CheckPanel
from calibrator.desk.mix.history_panel import HistoryPanel
from calibrator.desk.mix.instruments_tab import InstrumentsTab
from calibrator.desk.mix.line_panel import LinePanel
from calibrator.desk.mix.tool_checks import ToolChecks
from calibrator.desk.mix_batch import FarmNow, farm_now
from calibrator.desk.mix_tools import Tools, read_tools
from calibrator.desk.page import Page
from calibrator.desk.parts import label
from calibrator.desk.refusals import in_words
from calibrator.desk.standing import Standing, standing
from calibrator.desk.widgets.key_tabs import KeyTabs
from calibrator.model import MixCheck
from calibrator.science.errors import CannotCompute

P = TypeVar("P", bound=QWidget)
CHECK_ANEW, BAGS = "check", "bags"


class MixCheckPage(Page):
    """Six tabs, each made when it is first looked at, the first in a moment of its own: nobody waits for all at once.

    What is typed stays until it is kept or cleared.
    """

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, self.tr("Mix check"), parent)
        self._tools: Tools | None = None
        self._now: FarmNow | None = None
        self._standing: Standing | None = None
        self._wanted = False  # somebody came to the first tab before it was all there
        self.trouble = label("", "caution")
        self.tabs = KeyTabs()
        self.body.addWidget(self.trouble)
        self.body.addWidget(self.tabs, 1)
        self.tabs.setAccessibleName(self.tr("Parts of the mix check"))
        self.tabs.tabBar().setAccessibleName(self.tabs.accessibleName())
        self._places = {
            name: self._add_place(caption)
            for name, caption in (
                ("check", self.tr("This &mix")),
                ("bags", self.tr("Ba&gs")),
                ("history", self.tr("Histor&y")),
                ("line", self.tr("Brix calibrati&on")),
                ("tool_checks", self.tr("Instrument &checks")),
                ("instruments", self.tr("I&nstruments")),
            )
        }
        self._made: dict[str, QWidget] = {}
        self.tabs.currentChanged.connect(self._look_at)
        self.tabs.called.connect(self._called)
        self.setFocusPolicy(Qt.FocusPolicy.ClickFocus)
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(0)
        self._soon.timeout.connect(self._next_piece)
        self._pieces = self._in_pieces()
        self._soon.start()

    @property
    def check(self) -> CheckPanel:
        for _ in self._pieces:  # who asks for it gets it whole
            pass
        return cast(CheckPanel, self._made["check"])

    @property
    def bags(self) -> BagPanel:
        return self._panel("bags", BagPanel)

    @property
    def history(self) -> HistoryPanel:
        return self._panel("history", HistoryPanel)

    @property
    def line(self) -> LinePanel:
        return self._panel("line", self._make_line)

    @property
    def tool_checks(self) -> ToolChecks:
        return self._panel("tool_checks", self._make_tool_checks)

    @property
    def instruments(self) -> InstrumentsTab:
        return self._panel("instruments", InstrumentsTab)

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
        now = self._standing = standing(records, farm, self.desk.clock().date())
        try:
            self._now = farm_now(records, farm, now, self.desk.clock())
            self._tell("")
        except CannotCompute as error:
            self._now = None
            self._tell(in_words(error))
        for name in self._made:
            self._fill(name)

    def open(self, thing_id: str) -> None:
        """An instrument by its id; the count of bags by its name; `check:` and the id of a check, or none, to check
        that batch again; else the check in hand, ready to type."""
        panel = self._made.get("check")
        if isinstance(panel, CheckPanel):
            panel.come_anew()
        kind, _, check_id = thing_id.partition(":")
        if kind == CHECK_ANEW:
            self.bring_up("check")
            if check_id:
                self.check.take_up(self.desk.records.find(MixCheck, check_id))
                self.check.start()
                return
            thing_id = ""
        if kind == BAGS:
            self.bring_up(BAGS)
        elif thing_id and self.instruments.open(thing_id):
            self.bring_up("instruments")
        elif self.tabs.currentWidget() is self._places["check"]:
            self._wanted = True
            if self._soon.isActive():
                self.setFocus(Qt.FocusReason.OtherFocusReason)
            else:
                self.check.start()

    def event(self, event: QEvent) -> bool:
        """Who types before the first tab is all there finds it there, and every key in it."""
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress and self._early():
            self._soon.stop()
            self.check.start()
            QCoreApplication.sendEvent(self.check.readings.begins.line, event.clone())
            return True
        return super().event(event)

    def _early(self) -> bool:
        return self._soon.isActive() and self.tabs.currentWidget() is self._places["check"]

    def help_title(self) -> str:
        if self.tabs.currentWidget() is self._places["line"]:
            return QCoreApplication.translate("Glossary", "Brix calibration")
        if self.tabs.currentWidget() in (self._places["tool_checks"], self._places["instruments"]):
            return QCoreApplication.translate("Glossary", "Brix")
        return QCoreApplication.translate("Hands", "Mix a batch")

    def pending(self) -> str:
        """What is typed in any tab and not kept yet; blank where all is kept."""
        return next(iter(self._typed().values()), "")

    def typed_at(self) -> QWidget:
        name = next(iter(self._typed()), "check")
        self.bring_up(name)
        return self._places[name]

    def _typed(self) -> dict[str, str]:
        """By the name of its tab."""
        made = ((name, self._made[name]) for name in ("check", "bags", "line", "instruments") if name in self._made)
        return {
            name: text
            for name, panel in made
            if isinstance(panel, CheckPanel | BagPanel | LinePanel | InstrumentsTab) and (text := panel.pending())
        }

    def _add_place(self, caption: str) -> QWidget:
        place = QWidget()
        layout = QVBoxLayout(place)
        layout.setContentsMargins(0, 0, 0, 0)
        self.tabs.addTab(place, caption)
        return place

    def _next_piece(self) -> None:
        if next(self._pieces, None) is not None:
            self._soon.start()

    def _in_pieces(self) -> Iterator[CheckPanel]:
        """The first tab, one piece in each moment, so that none of them holds the window up for long."""
        made = self._make_check(self.desk)
        made.hide()  # until all of it stands where it will
        self._place("check", made)
        yield made
        made.complete()
        yield made
        self._fill("check")
        made.show()
        if self._wanted:
            made.start()

    def _look_at(self, place: int) -> None:
        names = {id(widget): name for name, widget in self._places.items()}
        name = names.get(id(self.tabs.widget(place)))
        if name is not None:
            getattr(self, name)
        if name == "line":
            self.line.show_hand(self.check.found)

    def _called(self) -> None:
        if self.tabs.currentWidget() is self._places["check"]:
            self.check.start()

    def _panel(self, name: str, make: Callable[[Desk], P]) -> P:
        if name not in self._made:
            self._place(name, make(self.desk))
            self._made[name].show()
            self._fill(name)
        return cast(P, self._made[name])

    def _place(self, name: str, made: QWidget) -> None:
        self._made[name] = made
        layout = self._places[name].layout()
        assert layout is not None
        layout.addWidget(made)

    def _fill(self, name: str) -> None:
        """Have a panel that is there read anew."""
        panel, farm, now, tools = self._made[name], self.desk.farm, self._now, self._tools
        if farm is None or tools is None:
            return
        if isinstance(panel, InstrumentsTab):
            panel.reload()
        elif isinstance(panel, HistoryPanel):
            panel.show_farm(farm)
        elif now is None:
            return
        elif isinstance(panel, CheckPanel) and self._standing is not None:
            panel.show_farm(now, tools, self._standing)
        elif isinstance(panel, BagPanel):
            panel.show_farm(now)
        elif isinstance(panel, LinePanel):
            panel.show_farm(now, tools)
            panel.show_hand(self.check.found)
        elif isinstance(panel, ToolChecks):
            panel.show_tools(tools, now.powder.resolution_g)

    def _make_check(self, desk: Desk) -> CheckPanel:
        made = CheckPanel(desk, self._places["check"])
        made.instruments_wanted.connect(self._enter_instruments)
        made.water_check_wanted.connect(self._check_in_water)
        made.line_wanted.connect(partial(self.bring_up, "line"))
        return made

    def _make_line(self, desk: Desk) -> LinePanel:
        made = LinePanel(desk)
        made.instruments_wanted.connect(self._enter_instruments)
        return made

    def _make_tool_checks(self, desk: Desk) -> ToolChecks:
        made = ToolChecks(desk)
        made.instruments_wanted.connect(self._enter_instruments)
        return made

    def _tell(self, text: str) -> None:
        self.trouble.setText(text)
        self.trouble.setVisible(bool(text))
