"""One lot in full: what was signed off, what was weighed, what its label says, who changed what."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QFrame,
    QGridLayout,
    QLayout,
    QPushButton,
    QSizePolicy,
    QStackedWidget,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from calibrator.desk import shown
from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.forms.history import HistoryList
from calibrator.desk.how.view import how_button
from calibrator.desk.how.working import Working
from calibrator.desk.in_use import LotState
from calibrator.desk.money import price_text
from calibrator.desk.pages.fills_table import FillsModel
from calibrator.desk.parts import clear, column, label, row, scrolled, set_tone, show_as_rows
from calibrator.desk.scoop_lines import ScoopState, is_drawn, scoop_state
from calibrator.desk.speech import day_text, decimal_comma
from calibrator.desk.standing import LotStanding, Standing
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.figure_block import FigureBlock
from calibrator.desk.widgets.key_tabs import KeyTabs
from calibrator.desk.words import (
    mark_words,
    medicated_caution,
    packages_words,
    scoop_words,
    state_tone,
    state_words,
    step_words,
    target_words,
)
from calibrator.model import Composition, Fill, Lot, Mark, PackageKind, Scoop, SignOff, SpotFill, WeighIn
from calibrator.records import brought_in
from calibrator.units import show_mass, show_typed_percent

BLOCKS_ABREAST = 3


class LotDetail(QFrame):
    """A panel beneath the table of lots."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self.setProperty("kind", "card")
        self.heading = label("", "heading")
        self.state = label("", "tag", wrap=False)
        self.state.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Maximum)
        self.caution = label(medicated_caution(), "caution")
        self.standing_words = label("", "quiet")
        self._now: Standing | None = None
        self._signed: SignOff | None = None
        self.how = how_button(self.workings)
        self._blocks = QGridLayout()
        self._blocks.setHorizontalSpacing(4 * SPACE)
        self.about = label("")
        self.history = HistoryList(desk)
        self.fills_model = FillsModel(self)
        self.fills = QTableView()
        show_as_rows(self.fills, self.fills_model, self.tr("Fills of this lot"))
        self.fills.horizontalHeader().setStretchLastSection(True)
        self.nothing, self.no_fills = label("", "quiet"), label(self.tr("Nothing is weighed of this lot yet."), "quiet")
        for words in (self.nothing, self.no_fills):
            words.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.tabs = KeyTabs()
        self.tabs.setAccessibleName(self.tr("Parts of the lot"))
        self.tabs.tabBar().setAccessibleName(self.tabs.accessibleName())
        self.tabs.addTab(_page(self._blocks, self.standing_words, row(self.how, None)), self.tr("Signed off"))
        self.tabs.addTab(_fills(self.no_fills, self.fills), self.tr("Fills"))
        self.tabs.addTab(_page(self.about, self.history), self.tr("Label and history"))
        self._head = row(self.heading, self.state)
        self._head.setStretch(0, 1)
        inside = column(self._head, self.caution, self.tabs)
        inside.setStretch(2, 1)
        inside.setContentsMargins(0, 0, 0, 0)
        chosen = QWidget()
        chosen.setLayout(inside)
        self._parts = QStackedWidget()  # as high without a lot as with one
        for part in (self.nothing, chosen):
            self._parts.addWidget(part)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * SPACE, SPACE, 2 * SPACE, SPACE)
        layout.addWidget(self._parts)

    def put_beside_state(self, made: QPushButton) -> None:
        """A button that has its own place: no other one comes under the hand."""
        self._head.addWidget(made)

    def show_lot(self, now: Standing | None, known: LotStanding | None) -> None:
        """Show one lot; where none is chosen, what to do."""
        self._now = now
        self._parts.setCurrentIndex(0 if known is None else 1)
        if known is None:
            self.nothing.setText(self._what_to_do(now))
            return
        lot = known.lot
        self.heading.setText(f"{lot.lot_number}  {lot.product}".strip())
        self.state.setText(self._state(known))
        set_tone(self.state, state_tone(known.state))
        self.caution.setVisible(lot.medicated)
        self._show_signed(known)
        self.about.setText("\n".join(self._about(known)))
        weighed = self._weighed(lot)
        self.fills_model.show(weighed, self.desk.system)
        self.fills.setVisible(bool(weighed))
        self.no_fills.setVisible(not weighed)
        self.history.show_of(Lot, lot.id)

    def _state(self, known: LotStanding) -> str:
        """What a lot has come to; of one that is fed though nobody said so, why it is."""
        alone = sum(one.sign_off is not None for one in self._now.lots) == 1 if self._now else False
        if known.state is LotState.IN_USE and known.lot.fed_from is None and alone:
            return self.tr("in use: the only lot weighed in")
        return state_words(known.state)

    def _what_to_do(self, now: Standing | None) -> str:
        if now is None or not now.lots:
            return self.tr("What is weighed and signed off of a lot stands here. Press Add a lot to begin.")
        return self.tr("Press Show all and choose a lot: what was weighed and signed off of it stands here.")

    def workings(self) -> tuple[Working, ...]:
        """How the figures that were signed off came about."""
        from calibrator.desk.how.of_paper import of_signed  # the table of lots is up before anybody asks

        return of_signed(self.desk.records, self._signed, self.desk.clock) if self._signed else ()

    def _weighed(self, lot: Lot) -> list[Fill | SpotFill]:
        found: list[Fill | SpotFill] = []
        for weigh_in in self.desk.records.every(WeighIn, lot.farm_id, lot_id=lot.id):
            found.extend(self.desk.records.fills(weigh_in.id))
        return [*found, *self.desk.records.spot_fills(lot.id)]

    def _show_signed(self, known: LotStanding) -> None:
        clear(self._blocks)
        self.standing_words.setText("\n".join(self._where(known)))
        self._signed = signed = known.sign_off
        self.how.setVisible(signed is not None)
        if signed:
            names = {scoop.id: scoop.name for scoop in self.desk.records.every(Scoop, signed.farm_id)}
            self._add_level(known, signed, names)
            for mark in known.marks:
                self._add_mark(known, mark, names)
        self._blocks.setColumnStretch(BLOCKS_ABREAST, 1)

    def _where(self, known: LotStanding) -> list[str]:
        lines = []
        if known.open_weigh_in and known.state is not LotState.FINISHED:
            text = self.tr("A weigh-in is under way; it stands at this step: {step}. Press Go on weighing.")
            lines.append(text.format(step=step_words(known.open_weigh_in.step)))
        if known.state is LotState.LEFT_OVER:
            lines.append(self.tr("Another lot is fed now. Press Finished once none of this one is left."))
        lines += self._out_of_files(known.lot)
        signed = known.sign_off
        if signed is None and known.open_weigh_in is None and known.state is not LotState.FINISHED:
            return [*lines, self.tr("Nothing is signed off yet for this lot. Press Weigh in to weigh fills of it.")]
        if signed is None:
            return [*lines, self.tr("Nothing is signed off yet for this lot.")]
        text = self.tr("Signed off on {day} by {who}: mean of {bags}, {fills}.")
        day = day_text(signed.at.astimezone().date())
        fills, bags = counted.fills(signed.fills), counted.bags(signed.bags)
        told = text.format(day=day, who=signed.by, fills=fills, bags=bags)
        return [*lines, told, *self._to_mark(known), *self._fed_again(known.state)]

    def _to_mark(self, known: LotStanding) -> list[str]:
        """Where it is said that a scoop bears the line; beneath the figures it would have no room."""
        now = self._now
        if now is None or known.state is not LotState.IN_USE:
            return []
        if not any(scoop_state(now, known, mark.scoop_id) is ScoopState.TO_MARK for mark in known.marks):
            return []
        return [self.tr("Once the scoop is marked, say so under Today.")]

    def _fed_again(self, state: LotState) -> list[str]:
        """How a lot that others were fed after is fed again."""
        if state in (LotState.FINISHED, LotState.LEFT_OVER):
            return [self.tr("To feed it again press Back into use.")]
        return []

    def _out_of_files(self, lot: Lot) -> list[str]:
        """Past weigh-ins, with the file that told them."""
        files = brought_in(self.desk.records, WeighIn)
        text = self.tr("Weighed on {day}, brought in from {file}; not signed off.")
        own = self.desk.records.every(WeighIn, lot.farm_id, lot_id=lot.id) if files else []
        return [
            text.format(day=day_text(one.started_at.astimezone().date()), file=files[one.id])
            for one in own
            if one.id in files
        ]

    def _add_level(self, known: LotStanding, signed: SignOff, names: dict[str, str]) -> None:
        level = FigureBlock()
        text = self.tr("{low} to {high} (95 %)")
        ends = signed.level_low_g, signed.level_high_g
        mean, low, high = shown.mass_between(signed.level_mean_g, *ends, self.desk.system)
        caption = self.tr("{scoop}, struck level").format(scoop=names.get(signed.scoop_id, ""))
        level.tell(caption, mean, text.format(low=low, high=high))
        self._add_block(level)
        if density := known.density:
            block = FigureBlock()
            system = self.desk.system
            spread = shown.density(density.value, system, density.half_width)
            told = shown.density(density.value, system, density.half_width, interval=False, brief=True)
            block.tell(self.tr("Bulk density"), told, spread)
            self._add_block(block)

    def _add_mark(self, known: LotStanding, mark: Mark, names: dict[str, str]) -> None:
        block = FigureBlock()
        caption = self.tr("{scoop}, line down the wall")
        if mark.struck_level:
            caption = self.tr("{scoop}, without a line")
        caption = caption.format(scoop=names.get(mark.scoop_id, ""))
        note = self.tr("for {target}").format(target=target_words(mark, self.desk.system))
        if self._now and known.state is not LotState.FINISHED:
            state = scoop_state(self._now, known, mark.scoop_id)
            if known.state is LotState.LEFT_OVER and state is ScoopState.TO_MARK:
                state = ScoopState.OTHER_LOT  # its line was on the scoop, and made way for the next one
            drawn = is_drawn(self._now, known, mark.scoop_id)
            note = f"{note}, {scoop_words(state, level=mark.struck_level, drawn=drawn)}"
        block.tell(caption, mark_words(mark, self.desk.system), note)
        self._add_block(block)

    def _add_block(self, block: FigureBlock) -> None:
        place = self._blocks.count()
        self._blocks.addWidget(block, place // BLOCKS_ABREAST, place % BLOCKS_ABREAST)

    def _mass(self, mass_g: float) -> str:
        return show_mass(mass_g, self.desk.system, decimal_comma=decimal_comma())

    def _about(self, known: LotStanding) -> list[str]:
        lot = known.lot
        packages = packages_words(lot, self.desk.system)
        lines = [
            self._days(lot),
            packages,
            self._price(lot),
            self._mill(lot),
            self._composition(lot.composition),
            lot.note,
        ]
        if lot.fed_from:
            text = self.tr("Fed from {day} on.")  # until another took over
            if known.state is LotState.IN_USE:
                text = self.tr("Fed since {day}.")
            elif known.state is LotState.WAITING:
                text = self.tr("Is fed from {day} on, as planned.")
            lines.append(text.format(day=day_text(lot.fed_from)))
        if lot.finished_on:
            lines.append(self.tr("The last of it was fed on {day}.").format(day=day_text(lot.finished_on)))
        return [line for line in lines if line]

    def _days(self, lot: Lot) -> str:
        """When it arrived and was made, each where it is known: "made –" is nothing to read."""
        told = []
        if lot.arrived_on:
            told.append(self.tr("Arrived {day}.").format(day=day_text(lot.arrived_on)))
        if lot.made_on:
            told.append(self.tr("Made {day}.").format(day=day_text(lot.made_on)))
        return " ".join(told)

    def _mill(self, lot: Lot) -> str:
        """Who made it, where, and how."""
        told = []
        if lot.supplier:
            told.append(self.tr("From {supplier}.").format(supplier=lot.supplier))
        if lot.plant_code:
            told.append(self.tr("Plant {code}.").format(code=lot.plant_code))
        if lot.agglomerated is not None:
            told.append(self.tr("Agglomerated.") if lot.agglomerated else self.tr("Not agglomerated."))
        return " ".join(told)

    def _price(self, lot: Lot) -> str:
        farm = self.desk.farm
        if farm is None or lot.price_per_package is None:
            return ""
        price = price_text(lot.price_per_package, farm.currency, decimal_comma=decimal_comma())
        told = self.tr("{price} a tote.") if lot.package is PackageKind.TOTE else self.tr("{price} a bag.")
        return told.format(price=price)

    def _composition(self, composition: Composition) -> str:
        named = (
            (self.tr("protein"), composition.protein_pct),
            (self.tr("fat"), composition.fat_pct),
            (self.tr("fiber"), composition.fibre_pct),
            (self.tr("ash"), composition.ash_pct),
            (self.tr("moisture"), composition.moisture_pct),
        )
        told = [
            f"{name} {show_typed_percent(pct, decimal_comma=decimal_comma())}" for name, pct in named if pct is not None
        ]
        return self.tr("Label: {parts}.").format(parts=", ".join(told)) if told else ""


def _fills(none_yet: QWidget, table: QWidget) -> QWidget:
    part = QWidget()
    inside = column(none_yet, table)
    inside.setStretch(0, 1)
    inside.setStretch(1, 1)
    inside.setContentsMargins(0, SPACE, 0, 0)
    part.setLayout(inside)
    return part


def _page(*items: QWidget | QLayout) -> QWidget:
    inner = QWidget()
    inside = column(*items, None)
    inside.setContentsMargins(0, SPACE, 0, SPACE)
    inner.setLayout(inside)
    return scrolled(inner)
