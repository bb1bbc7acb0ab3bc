"""Which of the day's feedings is mixed, and whether the cold-weather variant is on."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QCheckBox, QWidget

from calibrator.desk import shown
from calibrator.desk.feeding_names import feeding_names
from calibrator.desk.parts import label, row
from calibrator.desk.plain_text import on_screen
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.calm_box import CalmBox
from calibrator.model import ColdWeather, Plan, UnitSystem
from calibrator.science.as_fed import feedings_differ, most_feedings
from calibrator.units import show_temperature


class DayBar(QWidget):
    """Hidden for plans whose feedings are all alike and that know no cold weather."""

    feeding_chosen = Signal(int)
    cold_switched = Signal(bool)

    def __init__(self) -> None:
        super().__init__()
        self.feeding = CalmBox()
        self.feeding.setAccessibleName(self.tr("Feeding"))
        self._caption = label(self.tr("&Feeding"), wrap=False)
        self._caption.setBuddy(self.feeding)
        self.cold = QCheckBox()
        line = row(self._caption, self.feeding, self.cold, None, spacing=SPACE)
        line.setContentsMargins(0, 0, 0, 0)
        self.setLayout(line)
        self.feeding.activated.connect(self.feeding_chosen)
        self.cold.clicked.connect(self.cold_switched)
        self.hide()

    def show_plan(self, plan: Plan, on: date, system: UnitSystem) -> int:
        """Offer a plan's feedings of a day; gives the one that is chosen, kept as long as there are so many."""
        differ = feedings_differ(plan, on)
        here = max(self.feeding.currentIndex(), 0)
        blocker = QSignalBlocker(self.feeding)
        self.feeding.clear()
        for name in feeding_names((plan,), on)[: most_feedings(plan, on) if differ else 1]:
            self.feeding.addItem(on_screen(name))
        chosen = here if here < self.feeding.count() else 0
        self.feeding.setCurrentIndex(chosen)
        blocker.unblock()
        for widget in (self._caption, self.feeding):
            widget.setVisible(differ)
        self.cold.setVisible(plan.cold is not None)
        if plan.cold:
            self.cold.setText(self._cold_text(plan.cold, system))
            self.cold.setChecked(plan.cold.on)
        self.setVisible(differ or plan.cold is not None)
        return chosen

    def _cold_text(self, cold: ColdWeather, system: UnitSystem) -> str:
        limit = show_temperature(cold.below_c, system)
        told = []
        if cold.more_powder_share:
            share = shown.share(cold.more_powder_share)
            told.append(self.tr("{share} more powder").format(share=share))
        if cold.further_feedings == 1:
            told.append(self.tr("one more feeding"))
        elif cold.further_feedings:
            told.append(self.tr("{count} more feedings").format(count=cold.further_feedings))
        text = self.tr("C&old weather, below {limit}: {what}")
        return text.format(limit=limit, what=", ".join(told))
