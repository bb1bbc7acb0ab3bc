"""For each scoop: whether it is printed for, which lines its label bears, how thick its wall is."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QBoxLayout, QVBoxLayout, QWidget

from calibrator.desk import shown
from calibrator.desk.context import Desk
from calibrator.desk.forms.examples import WALL
from calibrator.desk.forms.fields import Captioned
from calibrator.desk.label_cut import Cut
from calibrator.desk.label_lines import LineOffer, Way
from calibrator.desk.marking import not_on_the_scoop, on_the_scoop
from calibrator.desk.parts import button, clear, label, row, set_style_property, set_tone, without_letter
from calibrator.desk.scoop_lines import ScoopState
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.calm_box import CalmBox
from calibrator.desk.widgets.later import take_turn
from calibrator.desk.widgets.name_box import NameBox
from calibrator.desk.widgets.quantity_field import QuantityField
from calibrator.desk.words import scoop_tone, scoop_words
from calibrator.model import Scoop
from calibrator.prints.label_facts import LineCount, LineUse
from calibrator.science.mark import MarkProblem
from calibrator.units import Kind, Quantity, show_percent

THICKEST_MM = 30.0


class ScoopPick(QWidget):
    """One scoop. Half feedings are off until somebody wants them; that is remembered for the next label."""

    changed = Signal()
    is_on = Signal(object, bool)

    def __init__(self, desk: Desk, scoop: Scoop) -> None:
        super().__init__()
        self._desk, self.scoop = desk, scoop
        self._offers: tuple[LineOffer, ...] = ()
        self._told: list[str] = []
        self._chosen_way: dict[float, Way] = {}  # by feeding, where another than the first one offered
        self._step_g = 0.0
        self._bears_it = False
        self.box = NameBox(scoop.name)
        self.box.setAccessibleName(self.tr("For {scoop}").format(scoop=scoop.name))
        self.box.setProperty("scoop", scoop.id)
        self.box.setChecked(True)
        self.box.toggled.connect(self._toggled)
        self.lines: list[NameBox] = []
        self.ways: list[CalmBox | None] = []  # how a feeding is filled, where there is a choice
        self._lines = QWidget()
        self._line_list = QVBoxLayout(self._lines)
        self._line_list.setContentsMargins(3 * SPACE, 0, 0, 0)
        self._line_list.setSpacing(SPACE)
        self.wall = QuantityField(
            Kind.LENGTH, desk.system, required=False, lowest=0.0, highest=THICKEST_MM, examples=WALL
        )
        self.wall.set_value(desk.settings.now.walls_mm.get(scoop.id))
        self.wall.understood.connect(self._keep_wall)
        self.wall.line.textEdited.connect(self._wall_typed)
        self._wall = Captioned(
            self.tr("Thickness of its wall"),
            self.wall,
            self.tr("At the rim. A wrap goes around the outside, and that is longer."),
        )
        self.wall.set_name(self.tr("Thickness of the wall of {scoop}").format(scoop=scoop.name))
        self.state = label("", "quiet")
        self.on_button = button("", self._say_it_is_on)
        self._state = QWidget()
        self._state_line = row(self.state, self.on_button)
        self._state_line.setContentsMargins(3 * SPACE, 0, 0, 0)
        self._state_line.setStretch(0, 1)
        self._state.setLayout(self._state_line)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(SPACE)
        for widget in (self.box, self._state, self._lines, self._wall):
            layout.addWidget(widget)

    def offer(self, offers: Sequence[LineOffer], step_g: float) -> None:
        """Offer these lines, weights told in steps of `step_g`; those left out before stay left out."""
        self._step_g = step_g
        self.wall.set_system(self._desk.system)
        told = [self._words(offer) for offer in offers]
        if tuple(offers) == self._offers and told == self._told:
            return
        before = {offer.target_g: line.isChecked() for offer, line in zip(self._offers, self.lines, strict=True)}
        filled = {offer.target_g: way for offer in self._offers if (way := self._chosen_way.get(offer.target_g))}
        self._offers, self._told, self._chosen_way = tuple(offers), told, filled
        clear(self._line_list)
        self.lines, self.ways = [], []
        for offer, words in zip(offers, told, strict=True):
            line = NameBox(words)
            line.setAccessibleName(f"{self.scoop.name}: {words}")
            line.setChecked(self._wanted(offer, before))
            line.setEnabled(offer.problem is None and offer.use is not LineUse.MAIN)
            line.toggled.connect(self._line_toggled)
            self.lines.append(line)
            self._line_list.addWidget(line)
            self.ways.append(self._choice_of_way(offer, line) if offer.other_ways else None)
        if any(self.ways):
            text = self.tr("“2 to …”: to a line drawn for that weight. ±: how far one feeding may be off, 95 % sure.")
            self._line_list.addWidget(label(text, "quiet"))
        self._bring_half()
        take_turn(self._lines, *(each for pair in zip(self.lines, self.ways, strict=True) for each in pair if each))

    def _choice_of_way(self, offer: LineOffer, line: NameBox) -> CalmBox:
        """In which way a feeding is filled, under the line that it is for."""
        box = CalmBox()
        box.setSizeAdjustPolicy(CalmBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        ways = [way.way for way in offer.ways]
        for way in offer.ways:
            box.addItem(self._way_words(way))
        box.setCurrentIndex(ways.index(offer.filled(self._chosen_way.get(offer.target_g, offer.way)).way))
        box.setAccessibleName(self.tr("How {feeding} is filled").format(feeding=line.text()))
        box.setEnabled(line.isChecked())
        line.toggled.connect(box.setEnabled)
        box.activated.connect(partial(self._way_chosen, offer.target_g, ways))
        self._line_list.addWidget(box)
        return box

    def show_state(self, state: ScoopState, *, wiped: bool, drawn: bool) -> None:
        """Show whether the scoop bears the lot's line; it can be said here too, and taken back. With `wiped` an old
        line has to go first; with `drawn` the line is on since the weigh-in, and lacks only its label."""
        level = any(offer.use is LineUse.MAIN and offer.line.struck_level for offer in self._offers)
        self.state.setText(scoop_words(state, level=level, drawn=drawn))
        set_tone(self.state, scoop_tone(state))
        self._bears_it = state is ScoopState.MARKED
        text = not_on_the_scoop(level=level) if self._bears_it else on_the_scoop(level=level, wiped=wiped)
        ways = QBoxLayout.Direction  # where either tells of a line too, the button is too long to stand beside
        long = (wiped or drawn) and not self._bears_it
        self._state_line.setDirection(ways.TopToBottom if long else ways.LeftToRight)
        self.on_button.setText(without_letter(text))  # several scoops have it on one page
        set_style_property(self.on_button, "kind", "link" if self._bears_it else "")
        self.on_button.setVisible(state in (ScoopState.TO_MARK, ScoopState.MARKED))

    def show_for(self, cut: Cut | None) -> None:
        """Show what this cut asks for; None where no label is printed."""
        self._state.setVisible(cut is not None)
        self._lines.setVisible(cut is not None and self.box.isChecked())
        self._wall.setVisible(cut is Cut.WRAP and self.box.isChecked())

    @property
    def wanted(self) -> bool:
        return self.box.isChecked()

    def chosen(self) -> tuple[LineOffer, ...]:
        """The lines that the label is to bear."""
        return tuple(offer for offer, line in zip(self._filled(), self.lines, strict=True) if line.isChecked())

    def _filled(self) -> list[LineOffer]:
        """What is offered, filled in the way that was chosen."""
        return [offer.filled(self._chosen_way.get(offer.target_g, offer.way)) for offer in self._offers]

    def wall_mm(self) -> float | None:
        """How thick the wall is, 0 where nobody said; None for what is not understood."""
        if not self.wall.text().strip():
            return 0.0
        found = self.wall.quantity()
        return None if found is None else found.value

    def _wanted(self, offer: LineOffer, before: dict[float, bool]) -> bool:
        if offer.use is LineUse.MAIN or offer.problem is not None:
            return offer.unasked
        half = offer.use is LineUse.HALF and self._desk.settings.now.label_half
        return before.get(offer.target_g, half or offer.unasked)

    def _words(self, offer: LineOffer) -> str:
        if offer.other_ways:
            mass = shown.mass(offer.target_g, self._desk.system, resolution_g=self._step_g or None)
            plans = ", ".join(offer.plans)
            return self.tr("{mass}: {plans}").format(mass=mass, plans=plans) if plans else mass
        if offer.counted is not None:
            return self._counted_words(offer, offer.counted)
        told = self._line_words(offer)
        if offer.line.reckoned and offer.problem is None:
            return self.tr("{line} (worked out)").format(line=told)
        return told

    def _line_words(self, offer: LineOffer) -> str:
        mass = shown.mass(offer.target_g, self._desk.system, resolution_g=self._step_g or None)
        plans = ", ".join(offer.plans)
        if offer.problem is MarkProblem.TOO_NEAR_FLOOR:
            return self.tr("{mass}: too near the floor").format(mass=mass)
        if offer.problem is MarkProblem.TOO_NEAR_RIM:
            return self.tr("{mass}: too near the rim").format(mass=mass)
        if offer.use is LineUse.MAIN and offer.line.struck_level:
            return self.tr("{mass}: used level, no line").format(mass=mass)
        if offer.use is LineUse.MAIN:
            return self.tr("{mass}: the main line").format(mass=mass)
        if offer.use is LineUse.HALF:
            return self.tr("{mass}: half a feeding").format(mass=mass)
        if offer.line.several:
            mass = self.tr("{mass} = {fills}").format(mass=mass, fills=self._fills_words(offer))
        return self.tr("{mass}: {plans}").format(mass=mass, plans=plans) if plans else mass

    def _counted_words(self, offer: LineOffer, count: LineCount) -> str:
        """A feeding without a line of its own, and who gets it."""
        text = self.tr("{mass} = {count} to the line: {plans}")
        if count.to_half:
            text = self.tr("{mass} = {count} to the line + 1 to ½: {plans}")
        if offer.weighed_in and not offer.plans:
            text = self.tr("{mass} = {count} to the line")
        mass = shown.mass(offer.target_g, self._desk.system, resolution_g=self._step_g or None)
        return text.format(mass=mass, count=count.to_main, plans=", ".join(offer.plans))

    def _fills_words(self, offer: LineOffer) -> str:
        """What is to be done for one feeding."""
        line, count = offer.line, offer.counted
        if count is not None:
            text, fills = self.tr("{count} to the line"), count.to_main
            if count.to_half:
                text = self.tr("{count} to the line + 1 to ½")
        elif line.full_scoops:
            text, fills = self.tr("{count} level + 1 to {mass}"), line.full_scoops
        else:
            text, fills = self.tr("{count} to {mass}"), line.to_line
        held = shown.mass(line.held_g, self._desk.system, resolution_g=self._step_g or None)
        return text.format(count=fills, mass=held)

    def _way_words(self, offer: LineOffer) -> str:
        """What is to be done for one feeding, and how far that may be off."""
        told = self._fills_words(offer)
        if offer.count is None:
            return told
        return f"{told}, ± {show_percent(100 * offer.count.reach_95_share, 0)}"

    def _say_it_is_on(self) -> None:
        self.is_on.emit(self.scoop, not self._bears_it)

    def _toggled(self) -> None:
        self.changed.emit()

    def _halves(self) -> list[NameBox]:
        return [line for offer, line in zip(self._offers, self.lines, strict=True) if offer.use is LineUse.HALF]

    def _with_half(self) -> list[NameBox]:
        """The feedings of which a scoopful to the half line is a part."""
        pairs = zip(self._filled(), self.lines, strict=True)
        return [line for offer, line in pairs if offer.counted and offer.counted.to_half]

    def _bring_half(self) -> None:
        """A half line that is spoken of stands on the label."""
        if any(line.isChecked() for line in self._with_half()):
            _check(self._halves(), on=True)

    def _line_toggled(self) -> None:
        halves = self._halves()
        if self.sender() in halves:
            self._desk.settings.keep(label_half=halves[0].isChecked())
            _check([] if halves[0].isChecked() else self._with_half(), on=False)
        self._bring_half()
        self.changed.emit()

    def _way_chosen(self, target_g: float, ways: Sequence[Way], at: int) -> None:
        self._chosen_way[target_g] = ways[at]
        halves = [offer for offer in self._offers if offer.use is LineUse.HALF]
        _check(self._halves(), on=any(self._wanted(half, {}) for half in halves))  # another way may have brought it
        self._bring_half()
        self.changed.emit()

    def _keep_wall(self, found: Quantity | None) -> None:
        if found is not None:
            walls = self._desk.settings.now.walls_mm | {self.scoop.id: found.value}
            self._desk.settings.keep(walls_mm=walls)

    def _wall_typed(self) -> None:
        self.changed.emit()


def _check(lines: Sequence[NameBox], *, on: bool) -> None:
    """Tick these, or none of them, without telling it once more."""
    for line in lines:
        blocker = QSignalBlocker(line)
        line.setChecked(on)
        blocker.unblock()
