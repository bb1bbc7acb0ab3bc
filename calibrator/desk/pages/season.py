"""The season: how dense each lot is, with what certainty, and what the last change means for a feeding."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex
from PySide6.QtWidgets import QComboBox, QHeaderView, QTableView, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.page import Page
from calibrator.desk.pages.season_model import FIELDS, SeasonModel, SeasonRow
from calibrator.desk.parts import button, card, column, label, row, show_as_rows
from calibrator.desk.season_points import (
    DayOf,
    SeasonPoint,
    change_share,
    in_unit,
    last_two,
    placed,
    season_points,
    with_line_of,
)
from calibrator.desk.speech import day_text, decimal_comma
from calibrator.desk.theme import SPACE
from calibrator.model import Farm, UnitSystem
from calibrator.science.mark import OldLine, OldLineVerdict
from calibrator.units import show_density, show_density_oz_per_qt, show_mass, show_percent

if TYPE_CHECKING:
    from calibrator.desk.pages.season_plot import PlotPoint, SeasonPlot

PLOT_HEIGHT = 180
TABLE_HEIGHT = 130


class SeasonPage(Page):
    """Words first, then the picture, then the same figures as a table."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk, self.tr("Season"))
        self._plot: SeasonPlot | None = None
        self._points: list[SeasonPoint] = []
        self._chosen_by_hand = False
        self.finding = label("", "heading")
        self.meaning = label("")
        self.reading = label("", "quiet")
        self.days = QComboBox()
        for name, of in (
            (self.tr("arrived"), DayOf.ARRIVED),
            (self.tr("were made"), DayOf.MADE),
            (self.tr("were weighed in"), DayOf.WEIGHED),
        ):
            self.days.addItem(name, of)
        self.days.setAccessibleName(self.tr("Lots stand at the day they"))
        self.days.activated.connect(self._choose_days)
        self.left_out = label("", "quiet")
        self.pointed = label("", "quiet")
        self.model, self.table = SeasonModel(self), QTableView()
        self.open_button = button(self.tr("&Open the lot"), self._open_chosen)
        self._dress_table()
        self._lay_out()

    def reload(self) -> None:
        farm = self.desk.farm
        if farm is None:
            return
        self._points = season_points(self.desk.records, farm.id)
        self._figures.setVisible(bool(self._points))
        self._tell(farm)
        if self._points:
            self._choose_sensible_days()
            self._show(farm)

    @property
    def plot(self) -> SeasonPlot:
        """The picture; pyqtgraph is imported when it is first needed."""
        if self._plot is None:
            from calibrator.desk.pages.season_plot import SeasonPlot

            self._plot = SeasonPlot()
            self._plot.setMinimumHeight(PLOT_HEIGHT)
            self._plot.setAccessibleName(self.tr("Densities over time; the table beneath has the figures"))
            self._plot.hovered.connect(self._point_out)
            self._plot.chosen.connect(self._open)
            self._plot_place.addWidget(self._plot)
        return self._plot

    def _tell(self, farm: Farm) -> None:
        pair = last_two(self._points)
        self.reading.setVisible(bool(self._points))
        if not self._points:
            self.finding.setText(self.tr("Nothing to compare yet"))
            self.meaning.setText(
                self.tr(
                    "Here every lot that is signed off stands with its density, so that you see how far lots "
                    "differ and what a new one does to a feeding. It begins with the first sign-off."
                )
            )
        elif pair is None:
            self.finding.setText(self._first_words(self._points[-1]))
            self.meaning.setText(self.tr("The next lot will show here how far it is from this one."))
        else:
            self.finding.setText(self._change_words(*pair))
            line = with_line_of(self.desk.records, *pair, farm.tolerance_share)
            self.meaning.setText(self._meaning_words(pair[0], line) if line else "")
        self.meaning.setVisible(bool(self.meaning.text()))

    def _first_words(self, point: SeasonPoint) -> str:
        text = self.tr("Lot {lot} is the first one weighed in: {density}.")
        return text.format(lot=point.lot.lot_number, density=self._density(point.sign_off.density_g_per_ml))

    def _change_words(self, before: SeasonPoint, last: SeasonPoint) -> str:
        share = change_share(before, last)
        names = {"last": last.lot.lot_number, "before": before.lot.lot_number}
        told = show_percent(100 * abs(share), 1, decimal_comma=decimal_comma())
        if share >= 0:
            text = self.tr("A level scoop of lot {last} weighs {share} more than one of lot {before}.")
        else:
            text = self.tr("A level scoop of lot {last} weighs {share} less than one of lot {before}.")
        return text.format(share=told, **names)

    def _meaning_words(self, before: SeasonPoint, line: OldLine) -> str:
        mark = before.marks[0]
        text = self.tr(
            "With the line of lot {before} a feeding would weigh {mass} in place of {target} "
            "(between {low} and {high}). {verdict}"
        )
        return text.format(
            before=before.lot.lot_number,
            mass=self._mass(line.delivers_g),
            target=self._mass(mark.target_mass_g),
            low=self._mass(line.low_g),
            high=self._mass(line.high_g),
            verdict=self._verdict(line.verdict),
        )

    def _verdict(self, verdict: OldLineVerdict) -> str:
        return {
            OldLineVerdict.KEEP: self.tr("That line could have stayed."),
            OldLineVerdict.MOVE: self.tr("That line had to move."),
            OldLineVerdict.WEIGH_MORE: self.tr("Whether that line could have stayed, the fills do not tell."),
        }[verdict]

    def _show(self, farm: Farm) -> None:
        of = DayOf(self.days.currentData())
        shown = placed(self._points, of)
        missing = len(self._points) - len(shown)
        self.left_out.setText(counted.lots_left_out(missing) if missing else "")
        unit = self.tr("oz in a quart") if farm.units is UnitSystem.FARM else self.tr("g/mL")
        self.plot.show_points([self._plot_point(p, of) for p in shown], self.tr("Density, {unit}").format(unit=unit))
        self.model.show_rows(self._rows(shown, of), self._day_name(of))
        if shown:
            self.table.selectRow(0)

    def _rows(self, shown: list[SeasonPoint], of: DayOf) -> list[SeasonRow]:
        rows = []
        for number, point in enumerate(shown):
            earlier = [p for p in shown[:number] if p.scoop.id == point.scoop.id and p.lot.id != point.lot.id]
            rows.append(self._row(point, earlier[-1] if earlier else None, of))
        return rows[::-1]

    def _row(self, point: SeasonPoint, before: SeasonPoint | None, of: DayOf) -> SeasonRow:
        signed = point.sign_off
        weighed = self.tr("{fills}, {bags}")
        return SeasonRow(
            lot_id=point.lot.id,
            lot=point.lot.lot_number,
            day=day_text(point.day(of)),
            scoop=point.scoop.name,
            density=self._density(signed.density_g_per_ml),
            interval=self._interval(point),
            change=self._change(before, point) if before else "–",
            weighed=weighed.format(fills=counted.fills(signed.fills), bags=counted.bags(signed.bags)),
        )

    def _change(self, before: SeasonPoint, point: SeasonPoint) -> str:
        told = show_percent(100 * change_share(before, point), 1, decimal_comma=decimal_comma())
        return told if told.startswith("−") else f"+{told}"

    def _plot_point(self, point: SeasonPoint, of: DayOf) -> PlotPoint:
        from calibrator.desk.pages.season_plot import PlotPoint

        signed, system = point.sign_off, self.desk.system
        day = point.day(of)
        assert day is not None
        words = self.tr("Lot {lot}, {scoop}, {day}: {density}, 95 % interval {interval}")
        return PlotPoint(
            key=point.lot.id,
            on=day,
            value=in_unit(signed.density_g_per_ml, system),
            low=in_unit(signed.density_low_g_per_ml, system),
            high=in_unit(signed.density_high_g_per_ml, system),
            words=words.format(
                lot=point.lot.lot_number,
                scoop=point.scoop.name,
                day=day_text(day),
                density=self._density(signed.density_g_per_ml),
                interval=self._interval(point),
            ),
        )

    def _density(self, g_per_ml: float) -> str:
        comma = decimal_comma()
        if self.desk.system is UnitSystem.FARM:
            return show_density_oz_per_qt(g_per_ml, decimal_comma=comma)
        return show_density(g_per_ml, UnitSystem.METRIC, decimal_comma=comma)

    def _interval(self, point: SeasonPoint) -> str:
        signed = point.sign_off
        low, high = self._density(signed.density_low_g_per_ml), self._density(signed.density_high_g_per_ml)
        return self.tr("{low} – {high}").format(low=low.rpartition(" ")[0], high=high.rpartition(" ")[0])

    def _mass(self, mass_g: float) -> str:
        return show_mass(mass_g, self.desk.system, decimal_comma=decimal_comma())

    def _choose_sensible_days(self) -> None:
        """Deliveries where all are known; else the days of weighing, which are."""
        if self._chosen_by_hand:
            return
        of = DayOf.ARRIVED if all(p.day(DayOf.ARRIVED) for p in self._points) else DayOf.WEIGHED
        self.days.setCurrentIndex(self.days.findData(of))

    def _day_name(self, of: DayOf) -> str:
        return {
            DayOf.ARRIVED: self.tr("Arrived"),
            DayOf.MADE: self.tr("Made"),
            DayOf.WEIGHED: self.tr("Weighed in"),
        }[of]

    def _choose_days(self) -> None:
        self._chosen_by_hand = True
        if (farm := self.desk.farm) is not None:
            self._show(farm)

    def _point_out(self, lot_id: str) -> None:
        found = [p for p in self._points if p.lot.id == lot_id]
        self.pointed.setText(self._plot_point(found[-1], DayOf(self.days.currentData())).words if found else "")

    def _row_chosen(self, current: QModelIndex) -> None:
        self.plot.point_at(self.model.lot_id(current.row()))

    def _open_row(self, index: QModelIndex) -> None:
        self._open(self.model.lot_id(index.row()))

    def _open_chosen(self) -> None:
        self._open_row(self.table.currentIndex())

    def _open(self, lot_id: str) -> None:
        if lot_id:
            self.desk.go_to.emit("lots", lot_id)

    def _dress_table(self) -> None:
        table = self.table
        show_as_rows(table, self.model, self.tr("Densities of the lots, newest first"))
        table.setAlternatingRowColors(True)
        table.setMinimumHeight(TABLE_HEIGHT)
        table.verticalHeader().setDefaultSectionSize(32)
        header = table.horizontalHeader()
        header.setSectionResizeMode(FIELDS.index("scoop"), QHeaderView.ResizeMode.Stretch)
        table.selectionModel().currentRowChanged.connect(self._row_chosen)
        table.activated.connect(self._open_row)

    def _lay_out(self) -> None:
        self.reading.setText(
            self.tr(
                "Densities are of powder struck level. Each bar is a 95 % interval: in 19 lots out of 20 the "
                "true density lies within it."
            )
        )
        self._figures = QWidget()
        body = QVBoxLayout(self._figures)
        body.setContentsMargins(0, 0, 0, 0)
        body.setSpacing(SPACE)
        caption = label(self.tr("Lots stand at the &day they"), wrap=False)
        caption.setBuddy(self.days)
        choice = row(caption, self.days, self.left_out, spacing=SPACE)
        choice.setStretch(2, 1)
        self._plot_place = column()
        frame = card(self._plot_place)
        frame.setContentsMargins(0, 0, 0, 0)
        pointed = row(self.pointed, self.open_button)
        pointed.setStretch(0, 1)
        body.addLayout(choice)
        body.addWidget(frame, 3)
        body.addLayout(pointed)
        body.addWidget(self.table, 2)
        self.body.addWidget(card(self.finding, self.meaning, self.reading))
        self.body.addWidget(self._figures, 1)
        self.body.addStretch(0)
