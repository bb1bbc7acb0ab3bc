"""Checks of instruments: plain water, a sugar solution made on the kitchen scale, ice water, a weighed jug."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QFrame, QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.bare_field import BareField
from calibrator.desk.forms.enter import enter_moves_on
from calibrator.desk.forms.examples import PLAIN_WATER, WATER_IN_JUG
from calibrator.desk.forms.fields import Captioned
from calibrator.desk.forms.reach import JUG_G, MIX_G
from calibrator.desk.mix.instrument_words import check_line, state
from calibrator.desk.mix.prism_field import prism_field
from calibrator.desk.mix.withdrawing import ask_withdraw
from calibrator.desk.mix_tools import Tools
from calibrator.desk.mix_words import number, weighed
from calibrator.desk.parts import button, card, clear, label, row, scrolled
from calibrator.desk.refusals import in_words
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.desk.widgets.saying import Held
from calibrator.model import Instrument, InstrumentCheck, InstrumentCheckKind, InstrumentKind, UnitSystem, new_id
from calibrator.science.errors import CannotCompute
from calibrator.science.mix_density import Hydrometer, water_shows_sg
from calibrator.science.refractometer import SCALE_OFF_BRIX
from calibrator.science.sucrose import KnownSolution, known_solution
from calibrator.science.thermometer import ICE_C, ICE_F
from calibrator.science.water import volume_ml
from calibrator.units import Kind
from calibrator.units.bare import Bare

SOLUTIONS = {
    UnitSystem.FARM: ("8 oz", "16 oz", "24 oz", "32 oz"),
    UnitSystem.METRIC: ("250 g", "500 g", "750 g", "1 kg"),
}
BRIX, SG = Bare("0.2", -3.0, 32.0), Bare("1.000", 0.95, 1.15)
SUGAR = Bare("12.2", -3.0, 32.0)
DEGREES = {UnitSystem.FARM: Bare("32.5", -4.0, 68.0), UnitSystem.METRIC: Bare("0.5", -20.0, 20.0)}
FREEZING = {UnitSystem.FARM: ICE_F, UnitSystem.METRIC: ICE_C}
SHOWN = 8
JUG_U_SHARE = 0.002


class ToolChecks(QWidget):
    """One instrument at a time: what to do, where to type what it shows, what was found before."""

    instruments_wanted = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._tools: Tools | None = None
        self._step_g = 1.0
        self._solution: KnownSolution | None = None
        self.which = NameChoice()
        self.which.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.which.activated.connect(self._show_tool)
        self.state = label("", "tag", wrap=False)
        self.state.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        enter = button(self.tr("Enter an instrument"), self.instruments_wanted.emit, "main")
        self.none = card(label(self.tr("Checks begin once an instrument is entered.")), row(enter, None))
        self.water = BareField(self.tr("Shown in plain water"), BRIX, 3)
        self.warmth = self._degrees(self.tr("Temperature of it"))
        self.total = Amount(desk, self.tr("Make so much of it"), Kind.MASS, within=MIX_G, example=False)
        self.recipe = Held("heading", lines=3)
        self.known = BareField(self.tr("Shown in the sugar solution, °Brix"), SUGAR, 1)
        self.zero_prism, self.known_prism = prism_field(desk), prism_field(desk)
        self.ice = BareField(self.tr("Shown in ice water, well stirred"), DEGREES[desk.system], 1)
        water = self.tr("Water that fills it, without the jug")
        self.jug = Amount(desk, water, Kind.MASS, optional=True, within=JUG_G, examples=WATER_IN_JUG)
        self.jug_warmth = self._degrees(self.tr("How warm that water is"))
        self._made: list[InstrumentCheck] = []
        self._found = QVBoxLayout()
        self._lay_out()
        self.total.edited.connect(self._show_recipe)

    def _degrees(self, caption: str) -> Amount:
        return Amount(self.desk, caption, Kind.TEMPERATURE, optional=True, lowest=0, highest=60, examples=PLAIN_WATER)

    def show_tools(self, tools: Tools, step_g: float) -> None:
        """Read anew. `step_g` is the step of the scale that sugar is weighed on."""
        self._tools, self._step_g = tools, step_g or 1.0
        kept = self.which.currentData()
        self.which.clear()
        for tool in tools.instruments:
            self.which.addItem(tool.name, tool.id)
        place = self.which.findData(kept)
        self.which.setCurrentIndex(max(0, place) if tools.instruments else -1)
        if not self.total.text():
            self._suggest_total()
        self._show_tool()

    def open(self, instrument_id: str) -> None:
        place = self.which.findData(instrument_id)
        if place >= 0:
            self.which.setCurrentIndex(place)
            self._show_tool()

    @property
    def tool(self) -> Instrument | None:
        return self._tools.find(str(self.which.currentData() or "")) if self._tools else None

    def keep_water(self) -> None:
        """Keep what it shows in plain water: a refractometer 0, a hydrometer what water of that warmth is."""
        tool, reading = self.tool, self.water.value()
        warmth = self.zero_prism if _asks_for_prism(tool) else self.warmth
        if tool is None or not (self.water.tell() and warmth.understood()) or reading is None:
            self._ask_for(self.water)
            return
        expected, warmth_c = 0.0, warmth.value()
        if tool.kind is InstrumentKind.HYDROMETER:
            if warmth_c is None:
                warmth.say(self.tr("Type how warm the water is."), wrong=True)
                return
            expected = water_shows_sg(Hydrometer(tool.reference_c), warmth_c)
        if not self._prism_told(tool, warmth):
            return
        self._keep(tool, InstrumentCheckKind.WATER, expected, reading, self.water, warmth)

    def keep_known(self) -> None:
        """Keep what it shows in the sugar solution."""
        tool, reading = self.tool, self.known.value()
        if tool is None or self._solution is None or not self.known.tell() or reading is None:
            self._ask_for(self.known)
            return
        if self._prism_told(tool, self.known_prism):
            prism = self.known_prism if _asks_for_prism(tool) else None
            self._keep(tool, InstrumentCheckKind.KNOWN, self._solution.brix, reading, self.known, prism)

    def _prism_told(self, tool: Instrument, prism: Amount) -> bool:
        """Whether it is told how warm a refractometer is that does not compensate: a check tells nothing without."""
        if not _asks_for_prism(tool) or prism.value() is not None:
            return True
        if prism.understood():
            prism.say(self.tr("It does not compensate for temperature: type how warm it is."), wrong=True)
        prism.line.setFocus(Qt.FocusReason.OtherFocusReason)
        return False

    def keep_ice(self) -> None:
        """Keep what a thermometer shows in ice water, whose temperature is known."""
        tool, reading = self.tool, self.ice.value()
        if tool is None or not self.ice.tell() or reading is None:
            self._ask_for(self.ice)
            return
        self._keep(tool, InstrumentCheckKind.KNOWN, FREEZING[self.desk.system], reading, self.ice)

    def keep_jug(self) -> None:
        """Keep the jug's volume from the water it holds."""
        tool, weight, warmth = self.tool, self.jug.value(), self.jug_warmth.value()
        if tool is None or not (self.jug.understood() and self.jug_warmth.understood()):
            return
        if weight is None:
            self.jug.say(self.tr("Type what the water in it weighs."), wrong=True)
            return
        try:
            volume = volume_ml(weight, 20.0 if warmth is None else warmth)
        except CannotCompute as error:
            self.jug.say(in_words(error), wrong=True)
            return
        filled = replace(tool, volume_ml=volume, volume_u_ml=JUG_U_SHARE * volume, volume_typed="")
        if self.desk.keep(filled, "water weighed") is not None:
            self._keep(filled, InstrumentCheckKind.WATER, volume, weight, self.jug, self.jug_warmth)

    def withdraw(self, check: InstrumentCheck) -> None:
        """Ask why, then let a check count no more; it stays in the records."""
        ask_withdraw(self.desk, check, self.tr("Why does this check count no more?"))

    def _keep(
        self,
        tool: Instrument,
        kind: InstrumentCheckKind,
        expected: float,
        reading: float,
        field: BareField | Amount,
        warmth: Amount | None = None,
    ) -> None:
        check = InstrumentCheck(
            id=new_id(),
            farm_id=tool.farm_id,
            instrument_id=tool.id,
            kind=kind,
            expected=expected,
            reading=reading,
            typed=field.told() if isinstance(field, Amount) else field.text(),
            at=self.desk.clock(),
            by=self.desk.initials,
            temperature_c=warmth.value() if warmth else None,
            temperature_typed=warmth.told() if warmth else "",
        )
        if self.desk.keep(check) is not None:
            field.set_text("")
            if warmth is not None:
                warmth.set_text("")
            self.desk.say(self.tr("The check of {name} is kept.").format(name=tool.name))

    def _ask_for(self, field: BareField) -> None:
        if not field.text():
            field.say(self.tr("Type what it shows."), wrong=True)
        field.line.setFocus(Qt.FocusReason.OtherFocusReason)

    def _lay_out(self) -> None:
        self.keep_water_button = button(self.tr("&Keep this check"), self.keep_water, "main")
        self.keep_known_button = button(self.tr("Keep the sol&ution's check"), self.keep_known, "main")
        self.keep_ice_button = button(self.tr("&Keep this check"), self.keep_ice, "main")
        self.keep_jug_button = button(self.tr("&Keep what it holds"), self.keep_jug, "main")
        self.advice, self.known_advice = label("", "quiet"), label("", "quiet")
        self.water_card = card(
            label(self.tr("In plain water"), "heading"),
            self.advice,
            _pair(self.water, self.warmth, self.zero_prism),
            _left(self.keep_water_button),
        )
        self.known_card = card(
            label(self.tr("In a sugar solution"), "heading"), self.known_advice, self.total, self.recipe,
            _pair(self.known, self.known_prism), _left(self.keep_known_button),
        )  # fmt: skip
        ice = self.tr("Half crushed ice, half water, stirred: that is 32 °F (0 °C).")
        self.ice_card = card(
            label(self.tr("In ice water"), "heading"), label(ice, "quiet"), self.ice, _left(self.keep_ice_button)
        )
        jug = self.tr("Fill it with water to the brim, or to the line that you will use, and weigh the water.")
        self.jug_card = card(
            label(self.tr("What the jug holds"), "heading"),
            label(jug, "quiet"),
            _pair(self.jug, self.jug_warmth),
            _left(self.keep_jug_button),
        )
        self.found_card = card(label(self.tr("Found so far"), "heading"), self._found)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, int(1.5 * SPACE), 0, 0)
        layout.setSpacing(int(1.5 * SPACE))
        layout.addWidget(self.none)
        self._choice = Captioned(self.tr("Instrument"), self.which)
        head = row(self._choice, self.state, None, spacing=2 * SPACE)
        head.setStretch(0, 1)
        layout.addLayout(head)
        layout.addWidget(self._scrolled_cards(), 1)
        enter_moves_on(self)

    def _scrolled_cards(self) -> QWidget:
        inner = QWidget()
        cards = QHBoxLayout(inner)
        cards.setContentsMargins(0, 0, 0, 0)
        cards.setSpacing(2 * SPACE)
        for column_cards in ((self.water_card, self.ice_card, self.jug_card, self.found_card), (self.known_card,)):
            holder = QVBoxLayout()
            holder.setSpacing(int(1.5 * SPACE))
            for one in column_cards:
                holder.addWidget(one)
            holder.addStretch(1)
            cards.addLayout(holder, 1)
        area = scrolled(inner)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        return area

    def _show_tool(self) -> None:
        tool = self.tool
        kind = tool.kind if tool else None
        optical = kind is InstrumentKind.REFRACTOMETER
        floating = kind is InstrumentKind.HYDROMETER
        for widget, wanted in (
            (self.none, tool is None),
            (self._choice, tool is not None),
            (self.state, tool is not None),
            (self.water_card, optical or floating),
            (self.known_card, optical),
            (self.warmth, not _asks_for_prism(tool)),
            (self.zero_prism, _asks_for_prism(tool)),
            (self.known_prism, _asks_for_prism(tool)),
            (self.ice_card, kind is InstrumentKind.THERMOMETER),
            (self.jug_card, kind is InstrumentKind.JUG),
            (self.found_card, tool is not None),
        ):
            widget.setVisible(wanted)
        if tool is None:
            return
        self.water.set_bare(SG if floating else BRIX)
        optical_caption = self.tr("Shown in plain water, °Brix")
        self.water.rename(self.tr("Shown in plain water") if floating else optical_caption)
        self.ice.set_bare(DEGREES[self.desk.system])
        self.ice.rename(
            self.tr("Shown in ice water, well stirred, °F")
            if self.desk.system is UnitSystem.FARM
            else self.tr("Shown in ice water, well stirred, °C")
        )
        self.advice.setText(
            self.tr("Float it in plain water and type how warm that is.")
            if floating
            else self.tr("A drop of plain water should read 0 °Brix. Weekly, and whenever it was dropped.")
        )
        self.known_advice.setText(
            self.tr(
                "Every three months: table sugar is a standard by weight. More than {off} °Brix off: clean it first."
            ).format(off=number(SCALE_OFF_BRIX))
        )
        self.state.setText(state(tool, self._tools, self.desk.clock()))
        self._show_recipe()
        self._show_found(tool)

    def _suggest_total(self) -> None:
        """The smallest usual amount that this scale is fine enough for."""
        for text in SOLUTIONS[self.desk.system]:
            self.total.set_text(text)
            self._show_recipe()
            if self._solution is not None:
                return

    def _show_recipe(self) -> None:
        self._solution = None
        weight = self.total.value()
        try:
            self._solution = known_solution(weight, self._step_g) if weight is not None else None
        except CannotCompute as error:
            self.recipe.setText(in_words(error))
            return
        if self._solution is None:
            self.recipe.setText("")
            return
        system, made = self.desk.system, self._solution
        text = self.tr("Weigh {sugar} of sugar and {water} of water: {brix} °Brix.")
        sugar, water = (weighed(grams, system, self._step_g) for grams in (made.sugar_g, made.water_g))
        self.recipe.setText(text.format(sugar=sugar, water=water, brix=number(made.brix, 1)))

    def _show_found(self, tool: Instrument) -> None:
        clear(self._found)
        assert self._tools is not None
        checks = [c for c in self._tools.checks if c.instrument_id == tool.id][-SHOWN:]
        self._made = list(reversed(checks))
        if not checks:
            self._found.addWidget(label(self.tr("Nothing yet."), "quiet"))
        for check in self._made:
            self._found.addWidget(label(check_line(check, tool)))
        if checks:
            self._found.addLayout(row(button(self.tr("With&draw the newest"), self._withdraw_newest), None))

    def _withdraw_newest(self) -> None:
        if self._made:
            self.withdraw(self._made[0])


def _asks_for_prism(tool: Instrument | None) -> bool:
    return tool is not None and tool.kind is InstrumentKind.REFRACTOMETER and not tool.compensated


def _left(one: QWidget) -> QWidget:
    holder = QWidget()
    line = row(one, None)
    line.setContentsMargins(0, 0, 0, 0)
    holder.setLayout(line)
    return holder


def _pair(*ones: QWidget) -> QFrame:
    holder = QFrame()
    line = row(*ones, spacing=int(1.5 * SPACE))
    line.setContentsMargins(0, 0, 0, 0)
    holder.setLayout(line)
    return holder
