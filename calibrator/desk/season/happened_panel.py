"""What happened: the findings in words with what to do, and the picture that shows them."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QSignalBlocker, Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QCheckBox,
    QListWidget,
    QListWidgetItem,
    QVBoxLayout,
    QWidget,
)

from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.how.view import how_button
from calibrator.desk.how.working import Working
from calibrator.desk.in_use import LotState
from calibrator.desk.mix_history import kept_checks
from calibrator.desk.parts import button, card, column, label, row
from calibrator.desk.plain_text import on_screen
from calibrator.desk.season.facts import DayOf, Meaning, Part, SeasonFacts
from calibrator.desk.season.period_band import PeriodBand
from calibrator.desk.season.words import bags_off_words, change_words, density_text, meaning_words, said
from calibrator.desk.speech import day_text
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.calm_box import CalmBox
from calibrator.desk.widgets.picture_key import Entry, PictureKey
from calibrator.model import FillWay, LotPoints, SeasonLot, UnitSystem
from calibrator.science.lot_chart import FEWEST_FOR_LIMITS
from calibrator.science.lot_kinds import change_share, last_two
from calibrator.science.mark import OldLineVerdict
from calibrator.science.scoop import same_line
from calibrator.science.season_findings import FEWEST_TO_JUDGE, Finding
from calibrator.units import with_units_bound

if TYPE_CHECKING:
    from calibrator.desk.season.checks_strip import ChecksStrip
    from calibrator.desk.season.lots_plot import LotsPlot, Tag

PLOT_HEIGHT, CHECKS_HEIGHT, LIST_HEIGHT = 130, 110, 150
MOST_TOLD = 60


def day_at(place: float) -> date:
    """The day that a place in the picture belongs to: lots of one day stand before and behind it, beside each other."""
    return date.fromordinal(max(1, round(place)))


class HappenedPanel(QWidget):
    """Words first, then the picture; the period beneath it is dragged."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._facts: SeasonFacts | None = None
        self._points = LotPoints.of(())
        self._plot: LotsPlot | None = None
        self._checks: ChecksStrip | None = None
        self._chosen_by_hand = False
        self.finding, self.meaning = label("", "heading"), label("")
        self.told = QListWidget()
        self.more = label("", "quiet")
        self.days, self.ways = CalmBox(), CalmBox()
        self.checks_box = QCheckBox(self.tr("Mix &checks beneath"))
        self.left_out, self.pointed = label("", "quiet"), label("", "quiet")
        self.key = PictureKey()
        self.period = label("", "quiet", wrap=False)
        self.band = PeriodBand()
        self.open_button = button(self.tr("&Open the lot"), self._open_current)
        self.how = how_button(self.workings)
        self.whole_button = button(self.tr("Show &all"), self._show_whole)
        self._dress()
        self._lay_out()

    @property
    def plot(self) -> LotsPlot:
        """The picture; pyqtgraph is imported when it is first needed."""
        if self._plot is None:
            from calibrator.desk.season.lots_plot import LotsPlot

            self._plot = LotsPlot()
            self._plot.setMinimumHeight(PLOT_HEIGHT)
            self._plot.setAccessibleName(self.tr("Densities over time; Left and Right go from lot to lot, Enter opens"))
            self._plot.hovered.connect(self._point_out)
            self._plot.chosen.connect(self._open)
            self._plot.moved.connect(self._moved)
            self._plot_place.addWidget(self._plot)
            QWidget.setTabOrder(self.checks_box, self._plot)
        return self._plot

    @property
    def _way(self) -> FillWay:
        return FillWay(self.ways.currentData())

    def show_season(self, facts: SeasonFacts) -> None:
        """Show a season as it is now: of many lots the picture first, what happened once it is looked through."""
        self._facts = facts
        told = facts.ready(Part.HAPPENED)
        for widget in (self.finding, self.meaning, self.told, self.more):
            widget.setVisible(told)
        self.ways.setEnabled(told)
        self._points = facts.drawn(self._way)[0]
        self._figures.setVisible(bool(self._points))
        if told:
            self._tell_change(facts)
        if self._points:
            self._choose_sensible_days()
            self.show_again()
        else:
            self.told.hide()
            self.more.hide()

    def show_again(self) -> None:
        """Findings and picture for the days and the filling chosen."""
        if self._facts is None or not self._points:
            return
        from calibrator.desk.season.chart_data import numbered, plot_lots, tags_of

        facts, of, system = self._facts, DayOf(self.days.currentData()), self.desk.system
        (lots, chart), tags = facts.drawn(self._way), list["Tag"]()
        if facts.ready(Part.HAPPENED):
            told = numbered(facts.season.findings, of)
            self._tell(told)
            tags = tags_of(told, of)
        shown = plot_lots(lots, chart, of, system, tags, facts.scoop_name, facts.state)
        missing = len(lots) - len(shown.keys)
        self.left_out.setText(counted.lots_left_out(missing) if missing else "")
        self.left_out.setVisible(bool(missing))
        unit = "oz/qt" if system is UnitSystem.FARM else "g/mL"
        self.plot.show_lots(shown, self.tr("Density, {unit}").format(unit=unit))
        if self.plot.current < 0:
            self._tell_pointed("")
        self.key.show_entries(self._legend())
        self.key.setVisible(self.pointed.isHidden())
        self.band.show_days(shown.days, self.plot.whole_period())
        self._moved(*self.plot.viewRange()[0])
        self._show_checks()

    def workings(self) -> tuple[Working, ...]:
        """How the figures of the lot pointed at came about, else of the newest."""
        from calibrator.desk.how.of_season import of_lot, of_meaning  # the picture is up before anybody asks

        facts = self._facts
        if facts is None or not facts.lots:
            return ()
        key = self.plot.keys[self.plot.current] if self.plot.current >= 0 else facts.lots[-1].lot_id
        place = max((n for n, lot in enumerate(facts.lots) if lot.lot_id == key), default=len(facts.lots) - 1)
        season = facts.season if self._way is FillWay.LEVEL else facts.to_the_mark
        meaning = facts.meaning(place)
        told = (of_meaning(facts.lots[place], meaning, facts.farm),) if meaning else ()
        return (*of_lot(season.lots, season.chart, place, facts.farm.units), *told)

    def _tell_change(self, facts: SeasonFacts) -> None:
        pair = last_two(facts.lots)
        if not facts.lots:
            self.finding.setText(self.tr("Nothing to compare yet"))
            self.meaning.setText(
                self.tr(
                    "Here every lot that is signed off stands with its density, so that you see how far lots "
                    "differ and what a new one does to a feeding. It begins with the first sign-off."
                )
            )
        elif pair is None:
            last = facts.lots[-1]
            text = self.tr("Lot {lot} is the first one weighed in: {density}.")
            density = density_text(last, self.desk.system)
            self.finding.setText(text.format(lot=last.lot_number, density=density))
            told = self.tr("The next lot will show here how far it is from this one.")
            self.meaning.setText(f"{self._bags_off(facts, last)} {told}".strip())
        else:
            before, last = pair
            self.finding.setText(change_words(before, last, change_share(before, last)))
            few = self.tr("Limits are drawn from the third lot on.") if len(facts.lots) < FEWEST_FOR_LIMITS else ""
            meaning = (self._meaning(facts), self._bags_off(facts, last), few)
            self.meaning.setText(" ".join(filter(None, meaning)))
        self.meaning.setVisible(bool(self.meaning.text()))

    def _bags_off(self, facts: SeasonFacts, lot: SeasonLot) -> str:
        counted_off = facts.bags_off.get(lot.lot_id)
        return bags_off_words(counted_off, facts.farm) if counted_off else ""

    def _meaning(self, facts: SeasonFacts) -> str:
        pair = last_two(facts.lots)
        assert pair is not None
        place = max(n for n, lot in enumerate(facts.lots) if lot is pair[1])
        meaning = facts.meaning(place)
        if meaning is None:
            return ""
        waits = facts.state(pair[1].lot_id) is LotState.WAITING
        return f"{meaning_words(meaning, facts.farm)} {self._verdict(meaning, pair[1], waits=waits)}"

    def _verdict(self, meaning: Meaning, lot: SeasonLot, *, waits: bool) -> str:
        """What became of the line of the lot before, or was to become of it; will, where the lot `waits`."""
        verdict = meaning.carried.verdict
        if meaning.before.struck_level:  # there was no line that could have moved
            if lot.struck_level and verdict is OldLineVerdict.KEEP:
                return self.tr("It went on being used level.")
            return {
                OldLineVerdict.KEEP: self.tr("It could have gone on being used level."),
                OldLineVerdict.MOVE: self.tr("Level was no longer the right weight."),
                OldLineVerdict.WEIGH_MORE: self.tr("Whether level was still right, the fills do not tell."),
            }[verdict]
        if same_line(lot.down_wall_mm, meaning.before.down_wall_mm):
            return {
                OldLineVerdict.KEEP: self.tr("That line stayed."),
                OldLineVerdict.MOVE: self.tr("That line stayed, though it had to move."),
                OldLineVerdict.WEIGH_MORE: self.tr("That line stayed. Whether it was right, the fills do not tell."),
            }[verdict]
        if waits and verdict is OldLineVerdict.MOVE:
            return self.tr("That line has to move at the change-over.")
        return {
            OldLineVerdict.KEEP: self.tr("That line could have stayed."),
            OldLineVerdict.MOVE: self.tr("That line had to move."),
            OldLineVerdict.WEIGH_MORE: self.tr("Whether that line could have stayed, the fills do not tell."),
        }[verdict]

    def _tell(self, told: Sequence[tuple[int | None, Finding]]) -> None:
        blocker = QSignalBlocker(self.told)
        self.told.clear()
        for number, finding in told[:MOST_TOLD]:
            words = on_screen(said(finding).text)
            shown = on_screen(f"{number}  {words}" if number is not None else f"◆  {words}")
            item = QListWidgetItem(with_units_bound(shown))
            item.setData(Qt.ItemDataRole.UserRole, finding.at.lot_id)
            self.told.addItem(item)
        blocker.unblock()
        self.told.setVisible(bool(told))
        rest, lots = len(told) - MOST_TOLD, len(self._facts.lots) if self._facts else 0
        words = counted.older_findings(rest) if rest > 0 else ""
        if not told and lots >= FEWEST_TO_JUDGE:  # a few lots have no "as always" yet to be held against
            words = self.tr("Nothing out of the ordinary: lots of one kind differ as they always did.")
        self.more.setText(words)
        self.more.setVisible(bool(words))

    def _show_checks(self) -> None:
        on = self.checks_box.isChecked()
        if self._checks is None and on:
            from calibrator.desk.season.checks_strip import ChecksStrip

            self._checks = ChecksStrip()
            self._checks.setFixedHeight(CHECKS_HEIGHT)
            self._checks.setAccessibleName(self.tr("Solids off their target, check by check"))
            self._plot_place.addWidget(self._checks)
        farm = self.desk.farm
        if self._checks is None or farm is None:
            return
        self._checks.setVisible(on)
        if on:
            checks = [kept for kept in kept_checks(self.desk.records, farm) if kept.watched is not None]
            self._checks.show_checks(checks, self.tr("Mix off, %"))
            self._checks.show_period(*self.plot.viewRange()[0])

    def _moved(self, first: float, last: float) -> None:
        self.band.show_period(first, last)
        if self._checks is not None:
            self._checks.show_period(first, last)
        days = [day_text(day_at(end)) for end in self._within_the_lots(first, last)]
        told = self.tr("{first} – {last}").format(first=days[0], last=days[1])
        self._show_period_words(told if self._spans_days() else "")

    def _within_the_lots(self, first: float, last: float) -> tuple[float, float]:
        """The picture leaves room beside the lots; no day before the first of them, and none to come, is told."""
        shown = self.plot.shown
        if shown is None or not len(shown.days):
            return first, last
        today = float(self.desk.clock().date().toordinal())
        earliest, latest = float(shown.days[0]), max(today, float(shown.days[-1]))
        if last < earliest or first > latest:
            return first, last
        return max(first, earliest), min(last, latest)

    def _spans_days(self) -> bool:
        """Whether the lots are of several days: of a single one no period is worth telling."""
        shown = self.plot.shown
        return shown is not None and len(shown.days) > 0 and day_at(shown.days[0]) != day_at(shown.days[-1])

    def _show_period_words(self, text: str) -> None:
        """Words of a fixed width: else the whole page would be laid out anew at each step of a drag."""
        self.period.setText(text)
        needed = self.period.sizeHint()
        if needed.width() > self.period.minimumWidth():
            self.period.setFixedSize(needed)

    def _show_period(self, first: float, last: float) -> None:
        self.plot.show_period(first, last)

    def _show_whole(self) -> None:
        self.plot.show_period(*self.plot.whole_period())

    def _finding_chosen(self, item: QListWidgetItem | None) -> None:
        lot_id = item.data(Qt.ItemDataRole.UserRole) if item else None
        if lot_id:
            self.plot.point_at(str(lot_id))

    def _finding_opened(self, item: QListWidgetItem) -> None:
        if lot_id := item.data(Qt.ItemDataRole.UserRole):
            self._open(str(lot_id))

    def _point_out(self, lot_id: str) -> None:
        self._tell_pointed(self.plot.words_at(self.plot.current) if lot_id else "")
        self.open_button.setEnabled(bool(lot_id))

    def _tell_pointed(self, words: str) -> None:
        """What is said of a lot stands in the place of the key: nothing is laid out anew for it."""
        self.pointed.setText(words)
        self.pointed.setVisible(bool(words))
        self.key.setVisible(not words)

    def _legend(self) -> list[Entry]:
        from calibrator.desk.season.legend import legend  # numpy waits for the first picture

        return legend(self.plot.shown)

    def _open_current(self) -> None:
        if self.plot.current >= 0:
            self._open(self.plot.keys[self.plot.current])

    def _open(self, lot_id: str) -> None:
        if lot_id:
            self.desk.go_to.emit("lots", lot_id)

    def _choose_sensible_days(self) -> None:
        """Deliveries where all are known; else the days of weighing, which are."""
        if self._chosen_by_hand:
            return
        of = DayOf.ARRIVED if all(self._points.column("arrived_on")) else DayOf.WEIGHED
        self.days.setCurrentIndex(self.days.findData(of))

    def _choose_days(self) -> None:
        self._chosen_by_hand = True
        self.show_again()

    def _dress(self) -> None:
        for name, of in (
            (self.tr("arrived"), DayOf.ARRIVED),
            (self.tr("were made"), DayOf.MADE),
            (self.tr("were weighed in"), DayOf.WEIGHED),
        ):
            self.days.addItem(name, of)
        self.days.activated.connect(self._choose_days)
        self.ways.addItem(self.tr("struck level"), FillWay.LEVEL)
        self.ways.addItem(self.tr("filled to the line"), FillWay.TO_MARK)
        self.ways.activated.connect(self.show_again)
        self.checks_box.toggled.connect(self._show_checks)
        self.told.setWordWrap(True)
        self.told.setSpacing(1)
        self.told.setTextElideMode(Qt.TextElideMode.ElideNone)
        self.told.setAccessibleName(self.tr("What happened, newest first"))
        self.told.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.told.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.told.setMinimumHeight(LIST_HEIGHT)
        self.told.currentItemChanged.connect(self._finding_chosen)
        self.told.itemActivated.connect(self._finding_opened)
        self.band.setAccessibleName(self.tr("Period: Left and Right move it, plus and minus change it, Home shows all"))
        self.open_button.setEnabled(False)

    def _lay_out(self) -> None:
        captions = []
        for text, field in ((self.tr("Lots stand at the &day they"), self.days), (self.tr("&Powder"), self.ways)):
            caption = label(text, wrap=False)
            caption.setBuddy(field)
            field.setAccessibleName(text.replace("&", ""))
            captions += [caption, field]
        self.band.chosen.connect(self._show_period)
        self._plot_place = column(spacing=0)
        self._figures = QWidget()
        body = QVBoxLayout(self._figures)
        body.setContentsMargins(0, 0, 0, 0)
        body.setSpacing(SPACE)
        body.addLayout(row(*captions, None, self.checks_box, spacing=SPACE))
        body.addWidget(self.left_out)
        body.addWidget(card(self._plot_place), 1)
        band = row(self.band, self.period, self.whole_button, spacing=SPACE)
        band.setStretch(0, 1)
        body.addLayout(band)
        foot = row(column(self.pointed, self.key, spacing=0), self.how, self.open_button)
        foot.setStretch(0, 1)
        body.addLayout(foot)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, int(1.5 * SPACE), 0, 0)
        layout.setSpacing(SPACE)
        for each in (self.finding, self.meaning):
            layout.addWidget(each)
        layout.addWidget(self.told, 2)
        layout.addWidget(self.more)
        layout.addWidget(self._figures, 3)
        layout.addStretch(0)
