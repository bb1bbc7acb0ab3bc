"""How a plan counts scoopfuls: to the line or the fewest, of one kind with the water trimmed, or by weight."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QButtonGroup, QCheckBox, QRadioButton, QVBoxLayout, QWidget

from calibrator.desk.forms.fields import Captioned
from calibrator.desk.parts import label, row
from calibrator.desk.plain_text import on_screen
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.calm_box import CalmBox
from calibrator.model import FillWay, Scoop, Scoopfuls, ScoopRule

HALVES, QUARTERS = (0.5,), (0.25, 0.5, 0.75)


class ScoopRuleFields(QWidget):
    """Which counts a table tells. Unasked, half a scoopful ends only rows that would else be filled otherwise."""

    edited = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.fewest = QRadioButton(self.tr("to the line of one scoop where that comes out, else the fewest scoopfuls"))
        self.one_kind = QRadioButton(self.tr("whole scoopfuls of one kind, the water trimmed to them"))
        self.weigh = QRadioButton(self.tr("none: weigh the powder"))
        self._rules = QButtonGroup(self)
        for choice in (self.fewest, self.one_kind, self.weigh):
            self._rules.addButton(choice)
        self.halves = QCheckBox(self.tr("half scoopfuls in any row"))
        self.quarters = QCheckBox(self.tr("quarter scoopfuls in any row"))
        self.kind = CalmBox()
        self._kind = Captioned(self.tr("Which scoopful"), self.kind)
        self._by_eye = label(self.tr("A part filled by eye is off by about 5 % of the scoop."), "quiet")
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(SPACE)
        layout.addWidget(self.fewest)
        self._parts = QWidget()
        parts = row(self.halves, self.quarters, self._by_eye, None, spacing=2 * SPACE)
        parts.setContentsMargins(3 * SPACE, 0, 0, 0)
        self._parts.setLayout(parts)
        for widget in (self._parts, self.one_kind, self._kind, self.weigh):
            layout.addWidget(widget)
        self._rules.buttonClicked.connect(self._look)
        for box in (self.halves, self.quarters):
            box.clicked.connect(self.edited)
        self.kind.activated.connect(self.edited)

    def load(self, told: Scoopfuls | None, scoops: Sequence[Scoop]) -> None:
        """Show a plan's rule, with the farm's scoops to choose from."""
        known = told or Scoopfuls()
        self._choices()[known.rule].setChecked(True)
        self.halves.setChecked(known.part_fills == HALVES)
        self.quarters.setChecked(known.part_fills == QUARTERS)
        self.kind.clear()
        self.kind.addItem(self.tr("whichever changes the water least"), ("", FillWay.LEVEL))
        for scoop in scoops:
            name = on_screen(scoop.name)
            self.kind.addItem(self.tr("{scoop}, level").format(scoop=name), (scoop.id, FillWay.LEVEL))
            self.kind.addItem(self.tr("{scoop}, to the line").format(scoop=name), (scoop.id, FillWay.TO_MARK))
        places = [p for p in range(self.kind.count()) if self.kind.itemData(p) == (known.scoop_id, known.way)]
        self.kind.setCurrentIndex(places[0] if places else 0)
        self._look()

    def made(self) -> Scoopfuls | None:
        """The rule as chosen; None for the usual one."""
        rule = next(rule for rule, choice in self._choices().items() if choice.isChecked())
        scoop_id, way = self.kind.currentData() if rule is ScoopRule.ONE_KIND else ("", FillWay.LEVEL)
        parts = QUARTERS if self.quarters.isChecked() else HALVES if self.halves.isChecked() else ()
        parts = parts if rule is ScoopRule.FEWEST else ()
        made = Scoopfuls(rule=rule, part_fills=parts, scoop_id=scoop_id, way=FillWay(way))
        return None if made == Scoopfuls() else made

    def _choices(self) -> dict[ScoopRule, QRadioButton]:
        return {ScoopRule.FEWEST: self.fewest, ScoopRule.ONE_KIND: self.one_kind, ScoopRule.WEIGH: self.weigh}

    def _look(self) -> None:
        self._parts.setVisible(self.fewest.isChecked())
        self._kind.setVisible(self.one_kind.isChecked())
        self.edited.emit()
