"""The farm's own line: which mixes to weigh, where to type what they read, the line that comes of it."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from calibrator.desk import shown
from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.bare_field import BareField
from calibrator.desk.forms.enter import enter_moves_on
from calibrator.desk.forms.fields import Captioned
from calibrator.desk.forms.reach import MIX_G
from calibrator.desk.mix.line_picture import LinePicture, Weighed
from calibrator.desk.mix.prism_field import prism_field
from calibrator.desk.mix.readings_form import DROPS
from calibrator.desk.mix.withdrawing import ask_withdraw
from calibrator.desk.mix_batch import FarmNow, as_aimed, batch_of
from calibrator.desk.mix_checks import MixFindings, right_by_line
from calibrator.desk.mix_tools import Tools, own_line, reference, references_for, refractometer
from calibrator.desk.mix_words import number, weighed
from calibrator.desk.parts import button, card, label, row
from calibrator.desk.refusals import in_words
from calibrator.desk.speech import day_text
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.beside import beside
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.desk.widgets.saying import Held
from calibrator.desk.widgets.side_by_side import SideBySide
from calibrator.model import InstrumentKind, ReferenceMix, UnitSystem, new_id
from calibrator.science.errors import CannotCompute
from calibrator.science.own_line import Line, Reference, reference_recipes, reference_solids
from calibrator.science.solids import expected_half_width
from calibrator.units import Kind, with_units_bound

TOTALS = {UnitSystem.FARM: ("2 lb", "4 lb", "8 lb"), UnitSystem.METRIC: ("1 kg", "1.5 kg", "2 kg", "4 kg")}
USUAL_SHARE = 0.13
NAME_LENGTH = 14  # an instrument's name is to be read, not its beginning


class LinePanel(QWidget):
    """Walks through: weigh, mix, read three drops, type. Two mixes make a line, more make it surer."""

    instruments_wanted = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._now: FarmNow | None = None
        self._tools: Tools | None = None
        self._mixes: list[ReferenceMix] = []
        self.which = NameChoice()
        self.which.setMinimumContentsLength(NAME_LENGTH)
        self.which.activated.connect(self._show)
        self.total = Amount(desk, self.tr("Make so much of each"), Kind.MASS, within=MIX_G, example=False)
        self.recipes = Held()
        self.powder = Amount(desk, self.tr("Powder weighed"), Kind.MASS, optional=True, within=MIX_G, example=False)
        self.water = Amount(desk, self.tr("Water weighed"), Kind.MASS, optional=True, within=MIX_G, example=False)
        self.drops = BareField(self.tr("Its drops, in °Brix"), DROPS, 1)
        self.prism = prism_field(desk, example=False)
        self.add_button = button(self.tr("&Add this mix"), self.add, "main")
        self.withdraw_button = button(self.tr("With&draw …"), self._ask_withdraw)
        self.list = QListWidget()
        self.list.setAccessibleName(self.tr("Weighed mixes of this powder"))
        self.list.setMinimumHeight(96)
        self.list.currentRowChanged.connect(self._stress)
        self._hand = MixFindings()
        self.picture = LinePicture()
        self.picture.chosen.connect(self._choose)
        self.list.setSpacing(3)
        self.finding, self.meaning = label("", "heading"), label("", "quiet")
        self.trouble = label("", "caution")
        self.to_instruments = button(self.tr("Enter an instrument"), self.instruments_wanted.emit, "main")
        self.to_weigh_in = button(self.tr("Weigh in"), partial(desk.go_to.emit, "weigh_in", ""), "main")
        self.total.edited.connect(self._show_recipes)
        self._lay_out()

    def show_farm(self, now: FarmNow, tools: Tools) -> None:
        """Read anew; what is typed stays."""
        self._now, self._tools = now, tools
        kept = self.which.currentData()
        self.which.clear()
        for tool in tools.of(InstrumentKind.REFRACTOMETER):
            self.which.addItem(tool.name, tool.id)
        self.which.setCurrentIndex(max(0, self.which.findData(kept)) if self.which.count() else -1)
        if not self.total.text():
            self._suggest_total()
        self._show()

    def add(self) -> None:
        """Keep a weighed mix with its readings."""
        asked = [self.powder, self.water]
        for field in asked:
            if field.value() is None:
                field.say(self.tr("Type this weight."), wrong=True)
                field.line.setFocus(Qt.FocusReason.OtherFocusReason)
                return
        if not (self.drops.tell() and self.prism.understood()):
            return
        if not self.drops.values():
            self.drops.say(self.tr("Type what it reads, best three drops."), wrong=True)
            self.drops.line.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        self._add()

    def _add(self) -> None:
        lot = self._now.powder.lot if self._now else None
        powder, water = self.powder.value(), self.water.value()
        if self._now is None or lot is None or powder is None or water is None:
            return
        try:
            reference_solids(powder, water)
        except CannotCompute as error:
            self.water.say(in_words(error), wrong=True)
            return
        mix = ReferenceMix(
            id=new_id(),
            farm_id=self._now.farm.id,
            lot_id=lot.id,
            instrument_id=str(self.which.currentData()),
            powder_g=powder,
            powder_typed=self.powder.told(),
            water_g=water,
            water_typed=self.water.told(),
            readings_brix=self.drops.values(),
            readings_typed=self.drops.text(),
            at=self.desk.clock(),
            by=self.desk.initials,
            temperature_c=self.prism.value(),
            temperature_typed=self.prism.told(),
        )
        if self.desk.keep(mix) is not None:
            for field in (self.powder, self.water, self.drops):
                field.set_text("")
            self.desk.say(self.tr("The weighed mix is kept."))
            self.powder.line.setFocus(Qt.FocusReason.OtherFocusReason)

    def show_hand(self, found: MixFindings) -> None:
        """Put the mix in hand, as read on the first tab, on the line that it was read by."""
        self._hand = found
        if self._tools is not None:
            self._show_line(self._tools)

    def pending(self) -> str:
        """What is typed and not kept; blank where nothing is."""
        return self.powder.text() or self.water.text() or self.drops.text()

    def _ask_withdraw(self) -> None:
        place = self.list.currentRow()
        if 0 <= place < len(self._mixes):
            ask_withdraw(self.desk, self._mixes[place], self.tr("Why does this weighed mix count no more?"))

    def _lay_out(self) -> None:
        how = label(
            self.tr(
                "Weigh powder and water on the kitchen scale, mix well, and read three drops. Two strengths make a "
                "calibration, six mixes make it sure. It holds for this powder and this refractometer."
            ),
            "quiet",
        )
        self._which = Captioned(self.tr("Refractometer"), self.which)
        left, right = QWidget(), QWidget()
        inside = QVBoxLayout(left)
        inside.setContentsMargins(0, 0, 0, 0)
        inside.setSpacing(int(1.5 * SPACE))
        inside.addWidget(self.trouble)
        inside.addLayout(row(self.to_weigh_in, self.to_instruments, None))
        choice = SideBySide(self._which, self.total)
        self._weigh = card(label(self.tr("1. Weigh these mixes"), "heading"), how, choice, self.recipes)
        weights = SideBySide(self.powder, self.water)
        reads = SideBySide(self.drops, self.prism)
        read_heading = label(self.tr("2. Type each one as it was weighed and read"), "heading")
        self._read = card(read_heading, weights, reads, row(self.add_button, None))
        inside.addWidget(self._weigh)
        inside.addWidget(self._read)
        inside.addStretch(1)
        told = QVBoxLayout(right)
        told.setContentsMargins(0, 0, 0, 0)
        told.setSpacing(int(1.5 * SPACE))
        told.addWidget(card(self.finding, self.meaning, self.picture))
        weighed_mixes = label(self.tr("Weighed mixes"), "heading")
        told.addWidget(card(weighed_mixes, self.list, row(self.withdraw_button, None)))
        told.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, int(1.5 * SPACE), 0, 0)
        layout.addWidget(beside(left, right))
        enter_moves_on(self, self._go_on)

    def _go_on(self) -> None:
        """One mix is typed after the other: Enter in the last figure of one adds it, as in a weigh-in."""
        last = self.drops if self.prism.isHidden() else self.prism
        if last.line.hasFocus():
            self.add()
        else:
            self.focusNextChild()

    def _show(self) -> None:
        if self._now is None or self._tools is None:
            return
        lot, tool = self._now.powder.lot, self._tools.find(str(self.which.currentData() or ""))
        self.prism.setVisible(tool is not None and not tool.compensated)
        missing = ""
        if lot is None:
            missing = self.tr("No lot is in use yet: a calibration belongs to a powder. Sign off a weigh-in first.")
        elif tool is None:
            missing = self.tr("A calibration is made with a refractometer, and none is entered yet.")
        self.trouble.setText(missing)
        self.trouble.setVisible(bool(missing))
        self.to_weigh_in.setVisible(lot is None)
        self.to_instruments.setVisible(lot is not None and tool is None)
        self._weigh.setEnabled(not missing)
        self._read.setEnabled(not missing)
        found = references_for(self._tools, lot.id, tool.id) if lot and tool else []
        self._mixes = list(reversed(found))
        self._show_list(self._tools)
        self._show_recipes()
        self._show_line(self._tools)

    @property
    def target_share(self) -> float:
        """The first plan's strength, or a usual one."""
        now = self._now
        if now and now.plans and now.plans[0].groups:
            plan = now.plans[0]
            batch = batch_of(now, plan, plan.groups[0], max(1, plan.groups[0].calves), None)
            return as_aimed(batch.target_share or USUAL_SHARE)
        return USUAL_SHARE

    def _suggest_total(self) -> None:
        """The smallest usual amount that this scale is fine enough for."""
        for text in TOTALS[self.desk.system]:
            self.total.set_text(text)
            if self._show_recipes():
                return

    def _show_recipes(self) -> bool:
        """Tell what to weigh; whether there is something to tell."""
        total, system = self.total.value(), self.desk.system
        step = self._now.powder.resolution_g if self._now else 0.0
        if total is None:
            self.recipes.setText("")
            return False
        try:
            found = reference_recipes(self.target_share, total, step or 1.0)
        except CannotCompute as error:
            self.recipes.setText(in_words(error))
            return False
        head, line = self.tr("Solids: powder + water"), "{solids}: {powder} + {water}"
        told = [(shown.share(r.solids_share), weighed(r.powder_g, system, step), r.water_g) for r in found]
        self.recipes.setText(
            "\n".join([head, *(line.format(solids=s, powder=p, water=weighed(w, system, step)) for s, p, w in told)])
        )
        return True

    def _show_list(self, tools: Tools) -> None:
        self.list.clear()
        for mix in self._mixes:
            self.list.addItem(QListWidgetItem(with_units_bound(self._mix_words(mix, reference(tools, mix)))))
        self.list.setWordWrap(True)
        self.withdraw_button.setEnabled(bool(self._mixes))
        if self._mixes:
            self.list.setCurrentRow(0)

    def _mix_words(self, mix: ReferenceMix, point: Reference) -> str:
        return self.tr("{day}: {solids} solids read {brix} °Brix ({powder} in {water})").format(
            day=day_text(mix.at.astimezone().date()),
            solids=shown.share(point.solids_share),
            brix=number(point.brix),
            powder=mix.powder_typed,
            water=mix.water_typed,
        )

    def _choose(self, key: str) -> None:
        self.list.setCurrentRow([mix.id for mix in self._mixes].index(key))

    def _stress(self, place: int) -> None:
        self.picture.point_at(self._mixes[place].id if 0 <= place < len(self._mixes) else "")

    def _show_line(self, tools: Tools) -> None:
        self.picture.hide()
        if len(self._mixes) < 2:
            self.finding.setText(self.tr("No Brix calibration yet"))
            told = self.tr("{count} of 2 mixes. Until then one for whole milk serves; replacers differ from it.")
            self.meaning.setText(told.format(count=len(self._mixes)))
            return
        try:
            line = own_line(tools, self._mixes)
            self._tell_line(tools, line)
        except CannotCompute as error:
            self.finding.setText(self.tr("These mixes make no calibration"))
            self.meaning.setText(in_words(error))

    def _tell_line(self, tools: Tools, line: Line) -> None:
        target = self.target_share
        tool = refractometer(tools, str(self.which.currentData()), self.desk.clock())
        half = expected_half_width(line, target, tool)
        text = self.tr("{target} solids: this refractometer shows {brix} °Brix")
        self.finding.setText(text.format(target=shown.share(target), brix=number(right_by_line(line, tool, target))))
        told = self.tr(
            "From {count} mixes: {slope} °Brix for each percent of solids. Three drops tell the solids within "
            "{half} either way (95 %)."
        )
        more = self.tr("With fewer than six mixes that is partly an assumption.") if line.assumed else ""
        words = told.format(count=line.n, slope=number(line.slope / 100, 2), half=shown.share(half))
        self.meaning.setText(f"{words} {more}".strip())
        weighed_mixes = [
            Weighed(mix.id, point, self._mix_words(mix, point))
            for mix in self._mixes
            for point in (reference(tools, mix),)
        ]
        about = f"{self.finding.text()}. {self.meaning.text()}"
        self.picture.show_line(weighed_mixes, line, tool, target, self._hand, about)
        self._stress(self.list.currentRow())
