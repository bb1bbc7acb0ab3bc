"""Why density moved: each cause with its slope and interval, or a plain cannot tell, and the picture of one."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableWidget, QTableWidgetItem, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.how.of_spread import of_effect
from calibrator.desk.how.view import how_button
from calibrator.desk.how.working import Working
from calibrator.desk.parts import card, column, label, row
from calibrator.desk.season.facts import SeasonFacts
from calibrator.desk.season.why_words import (
    cause_words,
    effect_words,
    interval_words,
    level_words,
    sentence,
    told_words,
)
from calibrator.desk.speech import day_text
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.headed_model import LEFT, RIGHT
from calibrator.science.why import Cause, Effect, Told

if TYPE_CHECKING:
    from calibrator.desk.season.xy_plot import XyPlot

ROW_PX, HEADER_PX, PLOT_HEIGHT = 29, 52, 140
LEAST_ROWS = 4
FIGURES = (2, 3)  # the columns of effect and interval


class WhyPanel(QWidget):
    """The causes as a table; the chosen one is drawn and said in a sentence."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._effects: tuple[Effect, ...] = ()
        self._plot: XyPlot | None = None
        self.finding, self.sentence = label("", "heading"), label("")
        self.caution = label(
            self.tr(
                "What goes together need not be the cause, and one answer in twenty is chance. A density is never "
                "corrected by humidity: weigh."
            ),
            "quiet",
        )
        self.table = QTableWidget()
        self.how = how_button(self.workings)
        self._dress()
        self._plot_place = column()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, int(1.5 * SPACE), 0, 0)
        layout.setSpacing(SPACE)
        told = row(self.finding, self.how)
        told.setStretch(0, 1)
        layout.addLayout(told)
        layout.addWidget(self.caution)
        layout.addWidget(self.table)
        layout.addWidget(self.sentence)
        self._frame = card(self._plot_place)
        layout.addWidget(self._frame, 1)
        layout.addStretch(0)

    def show_season(self, facts: SeasonFacts) -> None:
        """Show what this season's densities go with."""
        self._effects = facts.effects if facts.lots else ()
        self.table.setRowCount(len(self._effects))
        for place, effect in enumerate(self._effects):
            cells = (cause_words(effect.cause), told_words(effect), effect_words(effect), interval_words(effect))
            for number, text in enumerate(cells):
                item = QTableWidgetItem(text)
                item.setTextAlignment(Qt.AlignmentFlag(RIGHT if number in FIGURES else LEFT))
                self.table.setItem(place, number, item)
        seen = [effect for effect in self._effects if effect.told is Told.SEEN]
        self.finding.setText(self._headline(seen))
        for widget in (self.table, self.how, self.sentence, self._frame):
            widget.setVisible(bool(self._effects))
        best = min(seen, key=lambda effect: effect.p) if seen else None
        if self._effects:
            self.table.selectRow(self._effects.index(best) if best else 0)
            self._choose()

    @property
    def plot(self) -> XyPlot:
        """The picture; pyqtgraph is imported when it is first needed."""
        if self._plot is None:
            from calibrator.desk.season.xy_plot import XyPlot

            self._plot = XyPlot()
            self._plot.setMinimumHeight(PLOT_HEIGHT)
            self._plot_place.addWidget(self._plot)
        return self._plot

    def workings(self) -> tuple[Working, ...]:
        """How the effect of the chosen cause came about."""
        place = self.table.currentRow()
        return of_effect(self._effects[place]) if 0 <= place < len(self._effects) else ()

    def _headline(self, seen: list[Effect]) -> str:
        if not seen:
            return self.tr("These lots tell no cause yet")
        return self.tr("Density goes with: {causes}").format(
            causes=", ".join(_within(cause_words(effect.cause)) for effect in sorted(seen, key=lambda one: one.p))
        )

    def _choose(self) -> None:
        place = self.table.currentRow()
        if not 0 <= place < len(self._effects):
            return
        effect = self._effects[place]
        self.sentence.setText(sentence(effect))
        self.how.setVisible(effect.told is not Told.TOO_FEW)
        self._frame.setVisible(bool(effect.points) and effect.told is not Told.TOO_FEW)
        self.plot.setAccessibleName(cause_words(effect.cause))
        self.plot.setAccessibleDescription(self.sentence.text())
        self._draw(effect)

    def _draw(self, effect: Effect) -> None:
        from calibrator.desk.season.xy_plot import Xy

        points = [(x, 100 * y) for x, y in effect.points]
        line = [(x, 100 * y) for x, y in effect.line if effect.told is Told.SEEN]
        caption = {
            Cause.HUMIDITY: self.tr("Room humidity, %"),
            Cause.AGE: self.tr("Days since made"),
            Cause.DATE: self.tr("Day of the weigh-in"),
            Cause.TIME_OF_YEAR: self.tr("Day of the year"),
        }.get(effect.cause, "")
        names = tuple(level_words(effect.cause, level) for level in effect.levels)
        if effect.cause is Cause.DATE and points:
            first = points[0][0]
            line = [(x - first, y) for x, y in line]
            caption = self.tr("Days since {day}").format(day=day_text(date.fromordinal(int(first))))
            points = [(x - first, y) for x, y in points]
        ends = ([x for x, _ in line], [y for _, y in line]) if line else None
        self.plot.show_xy(Xy(points, caption, self.tr("off the average, %"), line=ends, level=0.0, names=names))

    def _dress(self) -> None:
        table = self.table
        table.setColumnCount(4)
        table.setHorizontalHeaderLabels(
            [self.tr("Cause"), self.tr("Answer"), self.tr("Effect"), self.tr("95 % interval")]
        )
        for number in FIGURES:
            if (named := table.horizontalHeaderItem(number)) is not None:
                named.setTextAlignment(Qt.AlignmentFlag(RIGHT))
        table.setAccessibleName(self.tr("What density may go with"))
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        table.setShowGrid(False)
        table.setTabKeyNavigation(False)
        table.verticalHeader().hide()
        table.verticalHeader().setDefaultSectionSize(ROW_PX)
        table.setSizeAdjustPolicy(QAbstractItemView.SizeAdjustPolicy.AdjustToContents)
        table.setMinimumHeight(ROW_PX * LEAST_ROWS + HEADER_PX)  # the rest scrolls where the window is low
        table.setMaximumHeight(ROW_PX * len(Cause) + HEADER_PX)
        header = table.horizontalHeader()
        header.setHighlightSections(False)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(1, QHeaderView.ResizeMode.Stretch)
        table.itemSelectionChanged.connect(self._choose)


def _within(words: str) -> str:
    """A cause amid a sentence."""
    return words[:1].lower() + words[1:]
