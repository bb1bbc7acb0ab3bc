"""What to print: labels or a chart, for which scoops or plan, on which paper, in which language."""

from __future__ import annotations

from collections.abc import Sequence
from enum import StrEnum

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import (
    QButtonGroup,
    QCheckBox,
    QComboBox,
    QFrame,
    QRadioButton,
    QVBoxLayout,
    QWidget,
)

from calibrator.desk.forms.fields import Captioned
from calibrator.desk.paper_facts import Options
from calibrator.desk.parts import clear
from calibrator.desk.theme import SPACE
from calibrator.desk.tongues import PAPER_LANGUAGES
from calibrator.desk.widgets.count_field import CountField
from calibrator.model import Paper, Plan, Scoop

MOST_COPIES = 20


class Want(StrEnum):
    """What can be printed."""

    LABELS = "labels"
    CHART = "chart"
    LOT_SHEET = "lot_sheet"


class PaperChoice(QFrame):
    """Keeps what was chosen while scoops and plans are offered anew."""

    changed = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setProperty("kind", "card")
        self.labels = QRadioButton(self.tr("Scoop l&abels"))
        self.chart = QRadioButton(self.tr("Wall c&hart"))
        self.sheet = QRadioButton(self.tr("L&ot sheet"))
        self._kinds = QButtonGroup(self)
        for choice in (self.labels, self.chart, self.sheet):
            self._kinds.addButton(choice)
        self.chart.setChecked(True)
        self.plan = QComboBox()
        self._plan = Captioned(self.tr("Pla&n"), self.plan)
        self._scoops = QWidget()
        self._scoop_list = QVBoxLayout(self._scoops)
        self._scoop_list.setContentsMargins(0, 0, 0, 0)
        self.boxes: list[QCheckBox] = []
        self.copies = CountField(1, MOST_COPIES)
        self.copies.set_count(1)
        self._copies = Captioned(self.tr("&Copies of each label"), self.copies)
        self.paper = QComboBox()
        self.paper.addItem(self.tr("Letter"), Paper.LETTER)
        self.paper.addItem(self.tr("A4"), Paper.A4)
        self.language = QComboBox()
        for name, codes in zip(
            (self.tr("English"), self.tr("Spanish"), self.tr("English and Spanish")), PAPER_LANGUAGES, strict=True
        ):
            self.language.addItem(name, codes)
        self._offered = False
        self._lay_out()
        self._kinds.buttonClicked.connect(self._tell)
        self.copies.counted.connect(self._tell)
        for box in (self.plan, self.paper, self.language):
            box.activated.connect(self._tell)

    def offer(self, scoops: Sequence[Scoop], plans: Sequence[Plan], paper: Paper, languages: tuple[str, ...]) -> None:
        """Offer these; paper and language are proposed once, then left as chosen."""
        if not self._offered:
            self._offered = True
            self.paper.setCurrentIndex(self.paper.findData(paper))
            self.language.setCurrentIndex(PAPER_LANGUAGES.index(languages))
        here = self.plan.currentData()
        blocker = QSignalBlocker(self.plan)
        self.plan.clear()
        for plan in plans:
            self.plan.addItem(plan.name, plan.id)
        self.plan.setCurrentIndex(max(0, self.plan.findData(here)))
        blocker.unblock()
        self._offer_scoops(scoops)

    def want(self, what: Want, plan_id: str) -> None:
        """Choose for the person what they came for."""
        self._choices()[what].setChecked(True)
        if plan_id:
            self.plan.setCurrentIndex(max(0, self.plan.findData(plan_id)))
        self._show_fields()

    def wanted(self) -> Want:
        return next(what for what, choice in self._choices().items() if choice.isChecked())

    def _choices(self) -> dict[Want, QRadioButton]:
        return {Want.LABELS: self.labels, Want.CHART: self.chart, Want.LOT_SHEET: self.sheet}

    def plan_id(self) -> str:
        return str(self.plan.currentData() or "")

    def scoop_ids(self) -> set[str]:
        return {str(box.property("scoop")) for box in self.boxes if box.isChecked()}

    def options(self) -> Options:
        return Options(
            paper=Paper(self.paper.currentData()),
            languages=tuple(self.language.currentData()),
            copies=self.copies.count(),
        )

    def _offer_scoops(self, scoops: Sequence[Scoop]) -> None:
        shown = [str(box.property("scoop")) for box in self.boxes]
        if shown == [scoop.id for scoop in scoops]:
            return
        left_out = set(shown) - self.scoop_ids()
        clear(self._scoop_list)
        self.boxes = []
        for scoop in scoops:
            box = QCheckBox(scoop.name.replace("&", "&&"))
            box.setAccessibleName(self.tr("For {scoop}").format(scoop=scoop.name))
            box.setProperty("scoop", scoop.id)
            box.setChecked(scoop.id not in left_out)
            box.toggled.connect(self._tell)
            self.boxes.append(box)
            self._scoop_list.addWidget(box)

    def _tell(self) -> None:
        self._show_fields()
        self.changed.emit()

    def _show_fields(self) -> None:
        self._plan.setVisible(self.chart.isChecked())
        self._scoops.setVisible(not self.chart.isChecked())
        self._copies.setVisible(self.labels.isChecked())

    def _lay_out(self) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * SPACE, 2 * SPACE, 2 * SPACE, 2 * SPACE)
        layout.setSpacing(SPACE)
        paper = Captioned(self.tr("Pape&r"), self.paper)
        language = Captioned(self.tr("Lang&uage of the paper"), self.language)
        asked = (self.labels, self.chart, self.sheet, self._plan, self._scoops, self._copies, paper, language)
        for widget in asked:
            layout.addWidget(widget)
        self._show_fields()
