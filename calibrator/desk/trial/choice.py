"""What a trial is made with: lot, scoop, scale, and the way of filling; and which trial is in hand."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QWidget

from calibrator.desk.forms.fields import Captioned
from calibrator.desk.plain_text import LONGEST_LINE, on_screen
from calibrator.desk.scoop_names import names_on_paper
from calibrator.desk.speech import day_text
from calibrator.desk.theme import SPACE
from calibrator.desk.trial.work import Setting
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.model import Farm, FeederTrial, FillWay, Lot, Scale, Scoop
from calibrator.records import Records


class TrialChoice(QWidget):
    """Boxes side by side. What is retired or fed up is offered only where the trial in hand was made with it."""

    chosen = Signal(str)
    """Another trial is to be shown: its id, blank for a new one."""

    def __init__(self, records: Records, farm: Farm) -> None:
        super().__init__()
        self._records, self._farm = records, farm
        self.lot, self.scoop, self.scale, self.way = NameChoice(), NameChoice(), NameChoice(), NameChoice()
        self.past = NameChoice()
        self.way.addItem(self.tr("struck level"), FillWay.LEVEL.value)
        self.way.addItem(self.tr("to the line"), FillWay.TO_MARK.value)
        self.past.activated.connect(self._choose)
        line = QHBoxLayout(self)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(SPACE)
        for caption, box, wide in (
            (self.tr("Lot"), self.lot, 3), (self.tr("Scoop"), self.scoop, 3), (self.tr("Scale"), self.scale, 3),
            (self.tr("Filled"), self.way, 3), (self.tr("Trial of"), self.past, 8),
        ):  # fmt: skip
            box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
            box.setMinimumContentsLength(14 if box is self.scale else 10)  # "Báscula de cocina" is read whole
            line.addWidget(Captioned(caption, box), wide)

    def show_trials(self, kept: Sequence[FeederTrial], begun: FeederTrial | None) -> None:
        """Offer the trials, and show what the one in hand was begun with."""
        self._offer(begun)
        for box in (self.lot, self.scoop, self.scale, self.way):
            box.setEnabled(begun is None)
        if begun is not None:
            self.way.setCurrentIndex(self.way.findData(begun.way.value))
        blocker = QSignalBlocker(self.past)
        self.past.clear()
        if begun is None:
            self.past.addItem(self.tr("a new trial"), "")
        for one in reversed(kept):
            self.past.addItem(self._title(one), one.id)
        self.past.setCurrentIndex(max(0, self.past.findData(begun.id if begun else "")))
        self.past.view().setMinimumWidth(self.past.view().sizeHintForColumn(0) + 2 * SPACE)
        blocker.unblock()

    def setting(self) -> Setting | None:
        """What the next fill is made with; None where the farm has no lot, scoop or scale."""
        lot, scoop, scale = (box.currentData() for box in (self.lot, self.scoop, self.scale))
        if not (isinstance(lot, Lot) and isinstance(scoop, Scoop) and isinstance(scale, Scale)):
            return None
        marks = self._records.marks(scoop_id=scoop.id, lot_id=lot.id)
        return Setting(lot, scoop, scale, FillWay(self.way.currentData()), marks[-1] if marks else None)

    def step_g(self) -> float | None:
        """The display step of the scale."""
        scale = self.scale.currentData()
        return scale.resolution_g if isinstance(scale, Scale) else None

    def _offer(self, begun: FeederTrial | None) -> None:
        records, farm = self._records, self._farm.id
        lots = [(one.id, one.lot_number, one) for one in reversed(records.every(Lot, farm)) if one.finished_on is None]
        usable = [one for one in records.every(Scoop, farm) if one.retired_on is None]
        named = names_on_paper(usable)
        scoops = [(one.id, named[one.id], one) for one in usable]
        scales = [(one.id, one.name, one) for one in records.every(Scale, farm) if one.retired_on is None]
        if begun is not None:
            lot, scoop = records.find(Lot, begun.lot_id), records.find(Scoop, begun.scoop_id)
            scale = records.find(Scale, begun.scale_id)
            lots = [(lot.id, lot.lot_number, lot)]
            scoops, scales = [(scoop.id, scoop.name, scoop)], [(scale.id, scale.name, scale)]
        for box, things in ((self.lot, lots), (self.scoop, scoops), (self.scale, scales)):
            before = box.currentData()
            box.clear()
            for id, name, thing in things:
                box.addItem(on_screen(name, LONGEST_LINE), thing)
                if before is not None and before.id == id:
                    box.setCurrentIndex(box.count() - 1)

    def _title(self, one: FeederTrial) -> str:
        day = day_text(one.started_at.astimezone().date())
        lot = on_screen(self._records.find(Lot, one.lot_id).lot_number, LONGEST_LINE)
        if one.counts:
            return self.tr("{day}, lot {lot}").format(day=day, lot=lot)
        return self.tr("{day}, lot {lot} (withdrawn)").format(day=day, lot=lot)

    def _choose(self) -> None:
        self.chosen.emit(self.past.currentData())
