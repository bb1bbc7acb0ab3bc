"""What to print: labels, a chart or a lot sheet, for which scoops or plan, on which paper, in which language."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import (
    QButtonGroup,
    QCheckBox,
    QFrame,
    QRadioButton,
    QVBoxLayout,
    QWidget,
)

from calibrator.desk.context import Desk
from calibrator.desk.forms.fields import Captioned
from calibrator.desk.label_cut import Cut, cut_of
from calibrator.desk.pages.paper_grid import GridFields
from calibrator.desk.pages.paper_scoops import ScoopPick
from calibrator.desk.paper_facts import Options
from calibrator.desk.paper_making import Chosen, LotPaper, Want
from calibrator.desk.parts import clear, label
from calibrator.desk.theme import SPACE
from calibrator.desk.tongues import PAPER_LANGUAGES, on_paper
from calibrator.desk.widgets.calm_box import CalmBox
from calibrator.desk.widgets.count_field import CountField
from calibrator.desk.widgets.later import take_turn
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.model import Paper, Scoop

MOST_COPIES = 20


class PaperChoice(QFrame):
    """Keeps what was chosen while scoops and plans are offered anew."""

    changed = Signal()
    is_on = Signal(object, bool)  # the scoop, and whether it bears its line

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self.setProperty("kind", "card")
        self.labels = QRadioButton(self.tr("Scoop l&abels"))
        self.chart = QRadioButton(self.tr("Wall c&hart"))
        self.sheet = QRadioButton(self.tr("L&ot sheet"))
        self._kinds = QButtonGroup(self)
        for choice in (self.labels, self.chart, self.sheet):
            self._kinds.addButton(choice)
        self.chart.setChecked(True)
        self.plan = NameChoice()
        self._plan = Captioned(self.tr("Pla&n"), self.plan, speaks=False)
        not_asked = self.tr("The page Today asks for no wall charts; under Set-up it can be told to again.")
        self._not_asked = label(not_asked, "quiet")
        self._scoops = QWidget()
        self._scoop_list = QVBoxLayout(self._scoops)
        self._scoop_list.setContentsMargins(0, 0, 0, 0)
        self._scoop_list.setSpacing(SPACE)
        self.picks: list[ScoopPick] = []
        self.cut = CalmBox()
        self.cut.addItem(self.tr("Strip down the wall"), Cut.STRIP)
        self.cut.addItem(self.tr("Wrap, right around"), Cut.WRAP)
        self.cut.addItem(self.tr("Ready-cut labels"), Cut.READY_CUT)
        self.cut.setCurrentIndex(self.cut.findData(cut_of(desk.settings.now)))
        self._cut = Captioned(self.tr("&Kind of label"), self.cut, speaks=False)
        self._cut_note = label(self.tr("A wrap is as long as its scoop goes around: cut it from plain paper."), "quiet")
        self.grid = GridFields(desk)
        self.copies = CountField(1, MOST_COPIES)
        self.copies.set_count(1)
        self._copies = Captioned(self.tr("&Copies of each label"), self.copies, speaks=False)
        self.paper = CalmBox()
        self.paper.addItem(self.tr("Letter"), Paper.LETTER)
        self.paper.addItem(self.tr("A4"), Paper.A4)
        self.language = CalmBox()
        for name in (self.tr("English"), self.tr("Spanish"), self.tr("English and Spanish")):
            self.language.addItem(name)
        self._offered = False
        self._lay_out()
        self._kinds.buttonClicked.connect(self._tell)
        self.copies.counted.connect(self._tell)
        self.grid.changed.connect(self._tell)
        for box in (self.plan, self.paper):
            box.activated.connect(self._tell)
        self.cut.activated.connect(self._keep_cut)
        self.language.activated.connect(self._keep_language)

    @property
    def boxes(self) -> list[QCheckBox]:
        """For which scoops."""
        return [pick.box for pick in self.picks]

    def offer(self, lot: LotPaper, size: Paper) -> None:
        """Offer what can be printed of a lot.

        The size of the paper is proposed once, the languages are those that this computer remembers.
        """
        if not self._offered:
            self._offered = True
            self.paper.setCurrentIndex(self.paper.findData(size))
        self.language.setCurrentIndex(PAPER_LANGUAGES.index(on_paper(self._desk.settings.now.paper_languages)))
        self.grid.show_kept()
        here = self.plan.currentData()
        blocker = QSignalBlocker(self.plan)
        self.plan.clear()
        for plan in lot.plans:
            self.plan.addItem(plan.name, plan.id)
        self.plan.setCurrentIndex(max(0, self.plan.findData(here)))
        blocker.unblock()
        self._offer_scoops(lot.scoops)
        for pick in self.picks:
            pick.offer(lot.offers(pick.scoop), lot.label_step_g)
            pick.show_state(lot.state(pick.scoop), wiped=lot.wiped(pick.scoop), drawn=lot.drawn(pick.scoop))
        self._show_fields()

    def want(self, what: Want, plan_id: str) -> None:
        """Choose for the person what they came for."""
        self._choices()[what].setChecked(True)
        if plan_id:
            self.plan.setCurrentIndex(max(0, self.plan.findData(plan_id)))
        self._show_fields()

    def wanted(self) -> Want:
        return next(what for what, choice in self._choices().items() if choice.isChecked())

    def chosen(self) -> Chosen | None:
        """What is chosen; None where a size is not understood."""
        options, picks = self._options(), [pick for pick in self.picks if pick.wanted]
        walls = {pick.scoop.id: pick.wall_mm() for pick in picks} if options.cut is Cut.WRAP else {}
        sizes = {id: wall for id, wall in walls.items() if wall is not None}
        lacking = options.cut is Cut.READY_CUT and options.grid is None
        if self.wanted() is Want.LABELS and (lacking or len(sizes) < len(walls)):
            return None
        lines = {pick.scoop.id: pick.chosen() for pick in picks}
        return Chosen(self.wanted(), options, str(self.plan.currentData() or ""), lines, sizes)

    def _options(self) -> Options:
        cut = Cut(self.cut.currentData())
        return Options(
            paper=Paper(self.paper.currentData()),
            languages=PAPER_LANGUAGES[self.language.currentIndex()],
            copies=self.copies.count(),
            cut=cut,
            grid=self.grid.grid() if cut is Cut.READY_CUT else None,
        )

    def _choices(self) -> dict[Want, QRadioButton]:
        return {Want.LABELS: self.labels, Want.CHART: self.chart, Want.LOT_SHEET: self.sheet}

    def _offer_scoops(self, scoops: Sequence[Scoop]) -> None:
        if [pick.scoop for pick in self.picks] == list(scoops):
            return
        left_out = {pick.scoop.id for pick in self.picks if not pick.wanted}
        clear(self._scoop_list)
        self.picks = [ScoopPick(self._desk, scoop) for scoop in scoops]
        for pick in self.picks:
            pick.box.setChecked(pick.scoop.id not in left_out)
            pick.changed.connect(self._tell)
            pick.is_on.connect(self.is_on)
            self._scoop_list.addWidget(pick)
        take_turn(self._scoops, *self.picks)

    def _keep_cut(self) -> None:
        self._desk.settings.keep(label_cut=str(self.cut.currentData()))
        self._tell()

    def _keep_language(self) -> None:
        self._desk.settings.keep(paper_languages=PAPER_LANGUAGES[self.language.currentIndex()])
        self._tell()

    def _tell(self) -> None:
        self._show_fields()
        self.changed.emit()

    def _show_fields(self) -> None:
        labels, cut = self.labels.isChecked(), Cut(self.cut.currentData())
        self._plan.setVisible(self.chart.isChecked())
        asks = self._desk.farm is None or self._desk.farm.asks_for_charts
        self._not_asked.setVisible(self.chart.isChecked() and not asks)
        self._scoops.setVisible(not self.chart.isChecked())
        for pick in self.picks:
            pick.show_for(cut if labels else None)
        self._cut.setVisible(labels)
        self._cut_note.setVisible(labels and cut is Cut.READY_CUT)
        self._copies.setVisible(labels)
        self.grid.setVisible(labels and cut is Cut.READY_CUT)

    def _lay_out(self) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * SPACE, 2 * SPACE, 2 * SPACE, 2 * SPACE)
        layout.setSpacing(SPACE)
        paper = Captioned(self.tr("Pape&r"), self.paper, speaks=False)
        language = Captioned(self.tr("Lang&uage of the paper"), self.language, speaks=False)
        asked = (self.labels, self.chart, self.sheet, self._plan, self._not_asked, self._scoops)
        for widget in (*asked, self._cut, self._cut_note, self.grid, self._copies, paper, language):
            layout.addWidget(widget)
        self._show_fields()
