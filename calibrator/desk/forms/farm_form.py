"""The farm's settings. Each is kept as soon as it is chosen or typed; units change everywhere at once."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from PySide6.QtCore import QSignalBlocker
from PySide6.QtWidgets import QButtonGroup, QCheckBox, QComboBox, QRadioButton, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.examples import TOLERANCE
from calibrator.desk.forms.fields import Captioned, TextField
from calibrator.desk.forms.history import HistoryList
from calibrator.desk.forms.hot_water_form import HotWaterForm
from calibrator.desk.forms.language_form import LanguageForm
from calibrator.desk.money import LONGEST_CURRENCY
from calibrator.desk.parts import card, column, label
from calibrator.desk.speech import figure_text
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.calm_box import CalmBox
from calibrator.desk.widgets.card_columns import card_columns
from calibrator.desk.widgets.side_by_side import SideBySide
from calibrator.model import Farm, Paper, UnitSystem
from calibrator.units import Kind

STEPS_QT = (0.125, 0.25, 0.5, 1.0)
STEPS_L = (0.05, 0.1, 0.25, 0.5)
FRACTIONS = {0.125: "1/8 qt", 0.25: "1/4 qt", 0.5: "1/2 qt", 1.0: "1 qt"}
WIDEST_TOLERANCE_PCT = 20.0
LEAST_PX = 165  # of a field: what it says wants some room


class FarmForm(QWidget):
    """Name, units, paper, tolerance, rounding of water."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self.name = TextField(self.tr("Name of the farm"))
        self.farm_units = QRadioButton(self.tr("Farm units: oz, lb, qt, gal, in, °F"))
        self.metric_units = QRadioButton(self.tr("Metric: g, kg, L, mm, °C"))
        self._units = QButtonGroup(self)
        self.paper = CalmBox()
        self.paper.addItem(self.tr("Letter"), Paper.LETTER)
        self.paper.addItem(self.tr("A4"), Paper.A4)
        note = self.tr("The most that a feeding may be off.")
        self.tolerance = Amount(
            desk, self.tr("Tolerance"), Kind.PERCENT, note, lowest=0.1, highest=WIDEST_TOLERANCE_PCT, examples=TOLERANCE
        )
        self.water_qt, self.water_l = CalmBox(), CalmBox()
        sign = self.tr("Sign or letters: $, MXN.")
        self.currency = TextField(self.tr("Currency"), sign, longest=LONGEST_CURRENCY)
        self.charts = QCheckBox(self.tr("The page Today says when no wall chart of a plan is up"))
        self.languages = LanguageForm(desk)
        self.hot_water = HotWaterForm(desk)
        self.history = HistoryList(desk)
        self._lay_out()
        self.name.finished.connect(self._keep_name)
        self.name.entered.connect(self._to_next)
        self.currency.finished.connect(self._keep_currency)
        self.currency.entered.connect(self._to_next)
        self.tolerance.entered.connect(self._to_next)
        self.farm_units.clicked.connect(self._keep_units)
        self.metric_units.clicked.connect(self._keep_units)
        self.paper.activated.connect(self._keep_paper)
        self.charts.clicked.connect(self._keep_charts)
        self.tolerance.edited.connect(self._unsay)
        self.tolerance.finished.connect(self._keep_tolerance)
        self.water_qt.activated.connect(self._keep_water)
        self.water_l.activated.connect(self._keep_water)

    def reload(self) -> None:
        """Show the settings as kept; a field that is being typed in, or is wrong, stays as it is."""
        farm = self.desk.farm
        if farm is None:
            return
        self.languages.reload()
        self.hot_water.reload()
        self.history.show_of(Farm, farm.id)
        if not self.name.busy:
            self.name.set_text(farm.name)
        if not self.currency.busy:
            self.currency.set_text(farm.currency)
        if not self.tolerance.busy:
            self.tolerance.set_share(farm.tolerance_share)
        (self.metric_units if farm.units is UnitSystem.METRIC else self.farm_units).setChecked(True)
        self.charts.setChecked(farm.asks_for_charts)
        blockers = [QSignalBlocker(box) for box in (self.paper, self.water_qt, self.water_l)]
        self.paper.setCurrentIndex(self.paper.findData(farm.paper))
        self._choose_step(self.water_qt, farm.water_step_qt)
        self._choose_step(self.water_l, farm.water_step_l)
        self._water.setVisible(farm.units is UnitSystem.FARM)
        self._water_metric.setVisible(farm.units is UnitSystem.METRIC)
        del blockers

    def _lay_out(self) -> None:
        for step in STEPS_QT:
            self.water_qt.addItem(FRACTIONS[step], step)
        for step in STEPS_L:
            self.water_l.addItem(self._litres(step), step)
        for choice in (self.farm_units, self.metric_units):
            self._units.addButton(choice)
        self._water = Captioned(self.tr("Water is measured to"), self.water_qt)
        self._water_metric = Captioned(self.tr("Water is measured to"), self.water_l)
        told = self.tr("You can always type either, like 10 oz or 280 g. What you typed is kept as typed.")
        units = column(
            label(self.tr("Numbers are shown in")),
            self.farm_units,
            self.metric_units,
            label(told, "quiet"),
            spacing=2,
        )
        self._paper = Captioned(self.tr("Paper in the printer"), self.paper)
        asked = (self._paper, self.tolerance, self._water, self._water_metric, self.currency)
        self._fields: tuple[Captioned, ...] = (self.name, *asked)
        for each in asked:
            each.setMinimumWidth(LEAST_PX)
        figures = SideBySide(*asked, gap=2 * SPACE)
        frame = card(column(self.name, units, figures, self.charts, spacing=int(2.5 * SPACE)))
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, int(1.5 * SPACE), 0, 0)
        layout.addWidget(card_columns((frame, self.hot_water), (self.languages, self.history)))

    def _litres(self, step: float) -> str:
        return figure_text(f"{step:g} L")

    def _choose_step(self, box: QComboBox, step: float) -> None:
        if box.findData(step) < 0:
            box.addItem(f"{step:g}", step)
        box.setCurrentIndex(box.findData(step))

    def _keep_name(self) -> None:
        farm = self.desk.farm
        if farm and self.name.text() != farm.name and self.name.filled():
            self._keep(self.tr("Name of the farm kept: {value}"), self.name.text(), self.name, name=self.name.text())

    def _keep_currency(self) -> None:
        if self.currency.text():
            told = self.tr("Currency kept: {value}")
            self._keep(told, self.currency.text(), self.currency, currency=self.currency.text())
        else:
            self.reload_currency()

    def reload_currency(self) -> None:
        """An emptied field shows what holds."""
        if self.desk.farm is not None:
            self.currency.set_text(self.desk.farm.currency)

    def _to_next(self) -> None:
        """Enter keeps what is typed (leaving the field does) and goes on to the next one."""
        self.focusNextChild()

    def _keep_units(self) -> None:
        metric = self.metric_units.isChecked()
        told = (self.metric_units if metric else self.farm_units).text()
        self._keep(self.tr("Units kept. {value}"), told, units=UnitSystem.METRIC if metric else UnitSystem.FARM)

    def _keep_paper(self) -> None:
        paper = Paper(self.paper.currentData())
        self._keep(self.tr("Paper in the printer kept: {value}"), self.paper.currentText(), self._paper, paper=paper)

    def _keep_charts(self) -> None:
        asks = self.charts.isChecked()
        told = self.tr("Kept: Today asks for wall charts.") if asks else self.tr("Kept: Today asks for no wall chart.")
        self._keep(told, asks_for_charts=asks)

    def _keep_tolerance(self) -> None:
        if self.tolerance.understood():
            text, share = self.tolerance.told(), self.tolerance.share()
            self._keep(self.tr("Tolerance kept: {value}"), text, self.tolerance, tolerance_share=share)

    def _unsay(self) -> None:
        self.tolerance.say("")

    def _keep_water(self) -> None:
        metric = self.desk.system is UnitSystem.METRIC
        shown, field = (self.water_l, self._water_metric) if metric else (self.water_qt, self._water)
        told = self.tr("Kept: water is measured to {value}")
        quarts, litres = self.water_qt.currentData(), self.water_l.currentData()
        self._keep(told, shown.currentText(), field, water_step_qt=quarts, water_step_l=litres)

    def _keep(self, told: str, value: str = "", field: Captioned | None = None, **known: Any) -> None:
        """Keep what changed, and say what that was: `{value}` stands for it in `told`. No button is pressed here as on
        the other tabs, so the field says too that it is done.
        """
        farm: Farm | None = self.desk.farm
        if farm is None:
            return
        changed = replace(farm, **known)
        if changed == farm:
            return
        kept = self.desk.keep(changed)
        if kept is not None:
            self.desk.say(told.format(value=value))
            self._say_kept(field)

    def _say_kept(self, field: Captioned | None) -> None:
        """Beside the field, and nowhere else; what is wrong with another one stays told."""
        done = self.tr("Kept.")
        if field is self.tolerance and self.desk.farm is not None:
            self.tolerance.set_share(self.desk.farm.tolerance_share)  # with its unit, in place of "= 3 %"
        for each in self._fields:
            if each is field or each.message == done:
                each.say(done if each is field else "")
