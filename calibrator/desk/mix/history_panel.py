"""History: the checks as a chart by day, by feeder and by lot, with limits; a table; a file for others."""

from __future__ import annotations

from dataclasses import replace
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex, QSignalBlocker
from PySide6.QtWidgets import QComboBox, QTableView, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.mix.history_model import HistoryModel, HistoryRow
from calibrator.desk.mix_history import Kept, chosen, csv_text, feeders, kept_checks, names
from calibrator.desk.mix_words import percent, verdict_words
from calibrator.desk.parts import button, card, column, label, row, show_as_rows
from calibrator.desk.speech import day_text
from calibrator.desk.theme import SPACE
from calibrator.model import Farm, MixCheck
from calibrator.science.check import Verdict
from calibrator.science.check_season import first_found, off_share

if TYPE_CHECKING:
    from calibrator.desk.mix.check_plot import CheckPlot, CheckPoint

PLOT_HEIGHT, TABLE_HEIGHT = 190, 110
_DAY_S = 86_400.0


class HistoryPanel(QWidget):
    """What the checks say together first, then the picture, then each of them."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._kept: list[Kept] = []
        self._plot: CheckPlot | None = None
        self.finding, self.meaning = label("", "heading"), label("", "quiet")
        self.lots, self.feeders = QComboBox(), QComboBox()
        for choice in (self.lots, self.feeders):
            choice.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
            choice.setMinimumContentsLength(12)
            choice.activated.connect(self._show)
        self.pointed = label("", "quiet")
        self.model, self.table = HistoryModel(self), QTableView()
        self.export_button = button(self.tr("Sa&ve as a table …"), self._ask_path)
        self.withdraw_button = button(self.tr("With&draw …"), self._ask_withdraw)
        self._dress_table()
        self._lay_out()

    def show_farm(self, farm: Farm) -> None:
        """Read anew."""
        self._kept = kept_checks(self.desk.records, farm)
        known = {k.lot.id: k.lot.lot_number for k in self._kept}
        _offer(self.lots, [(self.tr("all lots"), ""), *((number, lot_id) for lot_id, number in known.items())])
        everyone = [(self.tr("everyone"), ""), *((name, name) for name in feeders(self._kept))]
        _offer(self.feeders, everyone)
        self._show()

    @property
    def plot(self) -> CheckPlot:
        """The picture; pyqtgraph is imported when it is first needed."""
        if self._plot is None:
            from calibrator.desk.mix.check_plot import CheckPlot

            self._plot = CheckPlot()
            self._plot.setMinimumHeight(PLOT_HEIGHT)
            self._plot.setAccessibleName(self.tr("Checks over time; the table beneath has the figures"))
            self._plot.hovered.connect(self._point_out)
            self._plot.chosen.connect(self._choose)
            self._plot_place.addWidget(self._plot)
        return self._plot

    def save_table(self, path: Path) -> None:
        """Write what is shown as a table for other programs."""
        farm = self.desk.farm
        if farm is None:
            return
        text = csv_text(self._shown(), names(self.desk.records, farm))
        try:
            path.write_text(text, encoding="utf-8-sig", newline="")
        except OSError as error:
            told = self.tr("{path} cannot be written: {fault}. Choose another place.")
            self.desk.ask.tell(told.format(path=path.name, fault=error.strerror or ""))
            return
        self.desk.say(counted.checks_saved(len(self._shown())))

    def _shown(self) -> list[Kept]:
        return chosen(self._kept, str(self.lots.currentData() or ""), str(self.feeders.currentData() or ""))

    def _show(self) -> None:
        shown = self._shown()
        self._figures.setVisible(bool(self._kept))
        self._tell(shown)
        self.model.show_rows([self._row(k) for k in reversed(shown)])
        if self._kept:
            points = [self._point(k) for k in shown if k.watched is not None]
            self.plot.show_points(points, self.tr("solids off target, %"))
        self.withdraw_button.setEnabled(bool(shown))
        if shown:
            self.table.selectRow(0)

    def _tell(self, shown: list[Kept]) -> None:
        if not self._kept:
            self.finding.setText(self.tr("No check yet"))
            told = self.tr(
                "Here every check stands by its day, so that a lot that is off is found out by the checks. With an own "
                "line and three drops a check, 5 % too much powder is found after about four checks, 8 % after one or "
                "two; 2 % often not within a dozen: count the bags too."
            )
            self.meaning.setText(told)
            return
        watched = [k.watched for k in shown if k.watched is not None]
        newest = watched[-1] if watched else None
        lots = {k.lot.id: k.lot.lot_number for k in shown}
        found = first_found(watched, newest.point.lot_id) if newest else None
        if newest is None:
            self.finding.setText(self.tr("No solids were read in these checks"))
        elif found is not None:
            text = self.tr("The mix of lot {lot} has shifted: it was found out at check {count}.")
            self.finding.setText(text.format(lot=lots[newest.point.lot_id], count=found))
        else:
            text = self.tr("Nothing unusual in the checks of lot {lot}.")
            self.finding.setText(text.format(lot=lots[newest.point.lot_id]))
        self.meaning.setText(
            self.tr(
                "Orange: the running mean of each lot and its limits. Circles are inside, triangles too thin (down) or "
                "too strong (up), diamonds cannot tell."
            )
        )

    def _row(self, one: Kept) -> HistoryRow:
        check = one.check
        batch = f"{check.group_name} {check.calves or ''}".strip()
        return HistoryRow(
            check_id=check.id,
            day=day_text(check.at.astimezone().date()),
            lot=one.lot.lot_number,
            batch=batch or "–",
            feeder=check.feeder or "–",
            solids="–" if check.solids_share is None else percent(check.solids_share),
            wanted=percent(check.target_share),
            verdict=verdict_words(Verdict(check.verdict)) if check.verdict else "–",
        )

    def _point(self, one: Kept) -> CheckPoint:
        from calibrator.desk.mix.check_plot import CheckPoint

        check, watched = one.check, one.watched
        assert watched is not None
        target = check.target_share
        at = check.at.astimezone()
        return CheckPoint(
            key=check.id,
            lot_id=one.lot.id,
            on=at.toordinal() + (at.hour * 3600 + at.minute * 60) / _DAY_S,
            off_pct=100 * watched.point.off_share,
            low_pct=100 * off_share(check.solids_low or 0.0, target),
            high_pct=100 * off_share(check.solids_high or 0.0, target),
            running_pct=100 * watched.running,
            limit_low_pct=100 * watched.low,
            limit_high_pct=100 * watched.high,
            verdict=check.verdict,
            words=self._words(one),
        )

    def _words(self, one: Kept) -> str:
        row_ = self._row(one)
        text = self.tr("{day}, lot {lot}, {feeder}: {solids} solids, wanted {wanted}. {verdict}.")
        return text.format(
            day=row_.day, lot=row_.lot, feeder=row_.feeder, solids=row_.solids, wanted=row_.wanted, verdict=row_.verdict
        )

    def _point_out(self, key: str) -> None:
        found = [k for k in self._kept if k.check.id == key]
        self.pointed.setText(self._words(found[0]) if found else "")

    def _choose(self, key: str) -> None:
        self.table.selectRow(self.model.row_of(key))

    def _row_chosen(self, current: QModelIndex) -> None:
        key = self.model.check_id(current.row())
        self._point_out(key)
        if self._plot is not None:
            self._plot.point_at(key)

    def _ask_path(self) -> None:
        title, kinds = self.tr("Save the checks as a table"), self.tr("Table (*.csv)")
        self.desk.ask.save_path(title, self.tr("mix-checks.csv"), kinds, self.save_table)

    def _ask_withdraw(self) -> None:
        key = self.model.check_id(self.table.currentIndex().row())
        found = [k.check for k in self._kept if k.check.id == key]
        if found:
            self.desk.ask.reason(self.tr("Why does this check count no more?"), partial(self._withdraw, found[0]))

    def _withdraw(self, check: MixCheck, reason: str) -> None:
        telling = replace(check, withdrawn_reason=reason)
        self.desk.attempt(partial(self.desk.records.keep, telling, by=self.desk.initials, why=reason))

    def _dress_table(self) -> None:
        table = self.table
        show_as_rows(table, self.model, self.tr("Checks of the mix, newest first"))
        table.setAlternatingRowColors(True)
        table.setMinimumHeight(TABLE_HEIGHT)
        table.verticalHeader().setDefaultSectionSize(32)
        header = table.horizontalHeader()
        header.setStretchLastSection(True)
        table.selectionModel().currentRowChanged.connect(self._row_chosen)

    def _lay_out(self) -> None:
        self._figures = QWidget()
        body = QVBoxLayout(self._figures)
        body.setContentsMargins(0, 0, 0, 0)
        body.setSpacing(SPACE)
        lots, feeders_ = label(self.tr("Lot"), wrap=False), label(self.tr("Mixed by"), wrap=False)
        lots.setBuddy(self.lots)
        feeders_.setBuddy(self.feeders)
        self.lots.setAccessibleName(self.tr("Lot"))
        self.feeders.setAccessibleName(self.tr("Mixed by"))
        body.addLayout(row(lots, self.lots, feeders_, self.feeders, None, self.export_button, self.withdraw_button))
        self._plot_place = column()
        body.addWidget(card(self._plot_place), 3)
        body.addWidget(self.pointed)
        body.addWidget(self.table, 2)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, int(1.5 * SPACE), 0, 0)
        layout.setSpacing(SPACE)
        layout.addWidget(card(self.finding, self.meaning))
        layout.addWidget(self._figures, 1)
        layout.addStretch(0)


def _offer(box: QComboBox, items: list[tuple[str, str]]) -> None:
    blocker = QSignalBlocker(box)
    kept = box.currentData()
    box.clear()
    for name, data in items:
        box.addItem(name, data)
    box.setCurrentIndex(max(0, box.findData(kept)))
    blocker.unblock()
