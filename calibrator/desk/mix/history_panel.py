"""History: the checks as a chart by day, by feeder and by lot, with limits; a table; a file for others."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex, QSignalBlocker
from PySide6.QtWidgets import QComboBox, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.mix.history_model import FIELDS, HistoryModel, HistoryRow
from calibrator.desk.mix.history_rows import (
    again_words,
    check_point,
    check_row,
    check_words,
    count_point,
    count_row,
    count_words,
    feeders_words,
    signed,
)
from calibrator.desk.mix.withdrawing import ask_withdraw
from calibrator.desk.mix_history import (
    ANOTHER,
    SAME_BATCH,
    Counted,
    Kept,
    chosen,
    chosen_counts,
    feeders,
    feeders_apart,
    kept_checks,
    kept_counts,
    mixed,
    names,
)
from calibrator.desk.mix_put_right import put_right_words
from calibrator.desk.mix_table import history_table
from calibrator.desk.mix_tools import read_tools
from calibrator.desk.mix_words import powder_verdict_words
from calibrator.desk.needs import OFF, RIGHT, STRONG, THIN, leans
from calibrator.desk.parts import button, card, column, label, row, show_as_rows, show_if
from calibrator.desk.speech import decimal_comma
from calibrator.desk.standing import standing
from calibrator.desk.table_headings import in_words
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.desk.widgets.picture_key import Entry, PictureKey, Sign
from calibrator.desk.widgets.roomy_table import RoomyTable
from calibrator.desk.widgets.saying import Held
from calibrator.model import BagCount, Farm, MixCheck, Plan
from calibrator.model.underway import Underway
from calibrator.records import RecordsUnreachable
from calibrator.records.table_file import CsvStyle, write_csv
from calibrator.science.check_season import Watched, shifted_since

if TYPE_CHECKING:
    from calibrator.desk.mix.check_plot import CheckPlot

PLOT_HEIGHT, TABLE_HEIGHT = 130, 110
WORDS = (FIELDS.index("batch"), FIELDS.index("verdict"))


class HistoryPanel(QWidget):
    """What the checks say together first, then the picture, then each of them."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._kept: list[Kept] = []
        self._counted: list[Counted] = []
        self._plans: list[Plan] = []
        self._put_right: dict[str, str] = {}  # by check, as far as looked at
        self._plot: CheckPlot | None = None
        self.finding, self.meaning = label("", "heading"), label("", "quiet")
        self.lots, self.feeders = NameChoice(), NameChoice()
        for choice in (self.lots, self.feeders):
            choice.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
            choice.setMinimumContentsLength(12)
            choice.activated.connect(self._show)
        self.pointed = Held("quiet")
        self.model, self.table = HistoryModel(self), RoomyTable(WORDS)
        self.export_button = button(self.tr("Sa&ve as a table …"), self._ask_path)
        self.withdraw_button = button(self.tr("With&draw …"), self._ask_withdraw)
        self.batch_button = button("", self._change_batch)
        self.batch_button.hide()
        self._dress_table()
        self._lay_out()

    def show_farm(self, farm: Farm) -> None:
        """Read anew."""
        self._kept, self._counted = kept_checks(self.desk.records, farm), kept_counts(self.desk.records, farm)
        self._plans = list(self.desk.records.every(Plan, farm.id))
        self._put_right.clear()
        every: list[Kept | Counted] = [*self._kept, *self._counted]
        every.sort(key=_time)
        known = {one.lot.id: one.lot.lot_number for one in every}
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
        shown, counts, records = self._shown(), self._shown_counts(), self.desk.records

        def write(underway: Underway) -> int:
            table = history_table(shown, counts, names(records, farm), underway)
            write_csv(in_words(table), path, CsvStyle(decimal_comma=decimal_comma()))
            return len(table.rows)

        self.desk.work(self.tr("Saving the checks as a table"), write, partial(self._saved, path), self._ask_path)

    def _saved(self, path: Path, checks: int) -> None:
        self.desk.say_saved(counted.checks_saved(checks), path)

    def _shown(self) -> list[Kept]:
        return chosen(self._kept, str(self.lots.currentData() or ""), str(self.feeders.currentData() or ""))

    def _shown_counts(self) -> list[Counted]:
        return chosen_counts(self._counted, str(self.lots.currentData() or ""), str(self.feeders.currentData() or ""))

    def _show(self) -> None:
        shown, counts, system = self._shown(), self._shown_counts(), self.desk.system
        for part in (self._choices, self._figures):
            part.setVisible(bool(self._kept or self._counted))
        self._tell(shown)
        rows = [(one.at.timestamp(), check_row(one, self._plans)) for one in shown]
        rows += [(one.at.timestamp(), count_row(one, system)) for one in counts]
        self.model.show_rows([row_ for _, row_ in sorted(rows, key=_moment, reverse=True)])
        self.table.fit_columns()
        if self._kept or self._counted:
            checks = [check_point(one) for one in shown]
            counts_of_bags = [count_point(one, system) for one in counts]
            self.plot.show_points(
                [point for point in checks if point],
                [point for point in counts_of_bags if point],
                self.tr("off target, %"),
            )
        self.withdraw_button.setEnabled(bool(rows))
        if rows:
            self.table.selectRow(0)

    def _tell(self, shown: list[Kept]) -> None:
        if not (self._kept or self._counted):
            self.finding.setText(self.tr("No check yet"))
            told = self.tr(
                "Here every check stands by its day, so that a lot that is off is found out by the checks. With a Brix "
                "calibration and three drops a check, 5 % too much powder is found after about four checks, 8 % after "
                "one or two; 2 % often not within a dozen: count the bags too."
            )
            self.meaning.setText(told)
            return
        batches = [k for k in mixed(shown) if k.watched is not None]
        watched = [k.watched for k in batches if k.watched is not None]
        newest = watched[-1] if watched else None
        if newest is None:
            self.finding.setText(self.tr("No solids were read in these checks"))
        else:
            own = [k for k in batches if k.lot.id == newest.point.lot_id]
            self.finding.setText(self._of_lot(own, newest, shifted_since(watched, newest.point.lot_id)))
        self._tell_bags(shown)
        meanings = [feeders_words(feeders_apart(shown)), again_words(shown)]
        self.meaning.setText(" ".join(filter(None, meanings)))
        self.meaning.setVisible(any(meanings))

    def _tell_bags(self, shown: list[Kept]) -> None:
        """The newest count of bags leads where it is surely off and no check since is sure of anything."""
        last = max(self._shown_counts(), key=_time, default=None)
        if last is None or last.result is None or not last.result.verdict.outside:
            return
        since = [k for k in shown if k.lot.id == last.lot.id and k.at > last.at]
        if not any(k.check.verdict in (*OFF, RIGHT) for k in since):
            text = self.tr("Lot {lot}, by the bags: {verdict}, {share} a feeding.")
            told = text.format(
                lot=last.lot.lot_number,
                verdict=powder_verdict_words(last.result.verdict).lower(),
                share=signed(last.result.share),
            )
            self.finding.setText(told)

    def _of_lot(self, told: list[Kept], newest: Watched, since: int | None) -> str:
        """Of the checks of one lot, no more than the picture and the rows beneath bear out."""
        lot, off = told[-1].lot.lot_number, sum(one.check.verdict in OFF for one in told)
        sides = [leans(one.check) for one in told]
        lean, leaning = sides[-1], sum(map(bool, sides))
        if since == 1 and off:
            text = self.tr("The mix of lot {lot} is off since its first check.")
        elif since is not None and off:
            text = self.tr(
                "The mix of lot {lot} has shifted: since check {since} its running mean is beyond the limits."
            )
        elif since is not None:
            text = self.tr("Taken together, the checks of lot {lot} show a shift; no single one is sure of it.")
        elif newest.found:
            text = self.tr(
                "The newest check of lot {lot} is further off than checks scatter; together they show no shift so far. "
                "Check again."
            )
        elif off:
            text = self.tr("Lot {lot}: {off} of {all} checks off target, without a lasting shift so far.")
        elif lean:
            text = (
                self.tr("The newest check of lot {lot} reads too thin, but is not sure. Check again.")
                if lean == THIN
                else self.tr("The newest check of lot {lot} reads too strong, but is not sure. Check again.")
            )
        elif leaning:
            text = self.tr("Lot {lot}: {leaning} of {all} checks to either side, not surely. Not enough to say.")
            if STRONG not in sides:
                text = self.tr("Lot {lot}: {leaning} of {all} checks on the thin side, not surely. Not enough to say.")
            elif THIN not in sides:
                text = self.tr(
                    "Lot {lot}: {leaning} of {all} checks on the strong side, not surely. Not enough to say."
                )
        else:
            text = self.tr("Nothing unusual in the checks of lot {lot}.")
        return text.format(lot=lot, off=off, leaning=leaning, all=len(told), since=since)

    def _words(self, key: str) -> str:
        checks = [self._check_words(one) for one in self._kept if one.check.id == key]
        counts = [count_words(one, self.desk.system) for one in self._counted if one.count.id == key]
        return next(iter([*checks, *counts]), "")

    def _check_words(self, one: Kept) -> str:
        """A check with its note and with what it told to do, reckoned when it is looked at."""
        key, farm = one.check.id, self.desk.farm
        if key not in self._put_right and farm is not None:
            records = self.desk.records
            try:
                now, tools = standing(records, farm, self.desk.clock().date()), read_tools(records, farm)
                self._put_right[key] = put_right_words(records, farm, now, tools, one.check)
            except RecordsUnreachable:
                return check_words(one)  # told whole once the server is there again
        told = [check_words(one)]
        told.append(self._batch_words(one))
        if one.check.note:
            told.append(self.tr("Note: {note}.").format(note=one.check.note))
        if fix := self._put_right.get(key, ""):
            told.append(fix)
        return " ".join(filter(None, told))

    def _batch_words(self, one: Kept) -> str:
        """Which batch it read, where another check is of the same or may be."""
        text = ""
        if one.again and one.check.same_batch_as is None:
            text = self.tr("Taken to be the same batch, read again: it was read within {hours} h.")
            if one.put_right:
                text = self.tr("Taken to be the same batch, put right: it was read within {hours} h.")
            text = text.format(hours=SAME_BATCH // timedelta(hours=1))
        elif one.again:
            text = self.tr("The same batch as the one before it, read again.")
            if one.put_right:
                text = self.tr("Read again after it was put right.")
        elif one.may_reread:
            text = self.tr("Another batch than the one before it.")
        later = "" if one.put_right or not one.told_by else self.tr("It was read again later, and that counts.")
        return " ".join(filter(None, (text, later)))

    def _point_out(self, key: str) -> None:
        self.pointed.setText(self._words(key))

    def _offer_batch(self, one: Kept | None) -> None:
        """The way to say that a check is of another batch, or of the same."""
        same = one is not None and one.again
        self.batch_button.setText(self.tr("No, another &batch") if same else self.tr("No, the same &batch"))
        show_if(self.batch_button, one is not None and bool(one.may_reread))

    def _change_batch(self) -> None:
        one = self._current()
        if one is not None and one.may_reread:
            told = ANOTHER if one.again else one.may_reread
            self.desk.keep(replace(one.check, same_batch_as=told))
            self._choose(one.check.id)

    def _current(self) -> Kept | None:
        key = self.model.check_id(self.table.currentIndex().row())
        return next((one for one in self._kept if one.check.id == key), None)

    def _choose(self, key: str) -> None:
        self.table.selectRow(self.model.row_of(key))

    def _row_chosen(self, current: QModelIndex) -> None:
        key = self.model.check_id(current.row())
        self._point_out(key)
        self._offer_batch(self._current())
        if self._plot is not None:
            self._plot.point_at(key)

    def _ask_path(self) -> None:
        title, kinds = self.tr("Save the checks as a table"), self.tr("Table (*.csv)")
        farm = self.desk.farm.name if self.desk.farm else ""
        parts = (farm, self.tr("mix checks"), self.desk.clock().date().isoformat())
        self.desk.save_as(title, parts, kinds, ".csv", self.save_table)

    def _ask_withdraw(self) -> None:
        key = self.model.check_id(self.table.currentIndex().row())
        facts: list[MixCheck | BagCount] = [*(one.check for one in self._kept), *(one.count for one in self._counted)]
        found = [fact for fact in facts if fact.id == key]
        if found:
            ask_withdraw(self.desk, found[0], self.tr("Why does this check count no more?"))

    def _key(self) -> PictureKey:
        key = PictureKey()
        key.show_entries(
            (
                Entry(Sign.CIRCLE, "good", self.tr("inside")),
                Entry(Sign.DOWN, "bad", self.tr("too thin")),
                Entry(Sign.UP, "bad", self.tr("too strong")),
                Entry(Sign.DIAMOND, "quiet", self.tr("looks right or leans, not sure yet")),
                Entry(Sign.SQUARE, "quiet", self.tr("bags counted over those days")),
                Entry(Sign.LINE, "mark", self.tr("running mean of the lot")),
                Entry(Sign.DASHES, "quiet", self.tr("its limits")),
            )
        )
        return key

    def _dress_table(self) -> None:
        table = self.table
        show_as_rows(table, self.model, self.tr("Checks of the mix and counts of bags, newest first"))
        table.setAlternatingRowColors(True)
        table.setMinimumHeight(TABLE_HEIGHT)
        table.own_widths()
        table.selectionModel().currentRowChanged.connect(self._row_chosen)

    def _lay_out(self) -> None:
        self._figures, self._choices = QWidget(), QWidget()
        body = QVBoxLayout(self._figures)
        body.setContentsMargins(0, 0, 0, 0)
        body.setSpacing(SPACE)
        lots, feeders_ = label(self.tr("Lot"), wrap=False), label(self.tr("Mixed by"), wrap=False)
        lots.setBuddy(self.lots)
        feeders_.setBuddy(self.feeders)
        self.lots.setAccessibleName(self.tr("Lot"))
        self.feeders.setAccessibleName(self.tr("Mixed by"))
        self._plot_place = column()
        body.addWidget(card(self._plot_place, self._key()), 3)
        pointed = row(self.pointed, self.batch_button)
        pointed.setStretch(0, 1)
        body.addLayout(pointed)
        body.addWidget(self.table, 2)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, int(1.5 * SPACE), 0, 0)
        layout.setSpacing(SPACE)
        choices = row(lots, self.lots, feeders_, self.feeders, None, self.export_button, self.withdraw_button)
        choices.setContentsMargins(0, 0, 0, 0)
        self._choices.setLayout(choices)
        # Above what they change the height of: a choice stays where the hand is.
        layout.addWidget(self._choices)
        layout.addWidget(card(self.finding, self.meaning))
        layout.addWidget(self._figures, 1)
        layout.addStretch(0)


def _time(one: Kept | Counted) -> float:
    return one.at.timestamp()


def _moment(one: tuple[float, HistoryRow]) -> float:
    return one[0]


def _offer(box: QComboBox, items: list[tuple[str, str]]) -> None:
    blocker = QSignalBlocker(box)
    kept = box.currentData()
    box.clear()
    for name, data in items:
        box.addItem(name, data)
    box.setCurrentIndex(max(0, box.findData(kept)))
    blocker.unblock()
