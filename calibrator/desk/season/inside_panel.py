"""Inside a lot: its bags as they were opened, with limits; a drift or a jump is said with what to look at."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSignalBlocker
from PySide6.QtWidgets import QComboBox, QVBoxLayout, QWidget

from calibrator.desk import shown
from calibrator.desk.context import Desk
from calibrator.desk.how.of_season import of_inside
from calibrator.desk.how.view import how_button
from calibrator.desk.how.working import Working
from calibrator.desk.parts import button, card, column, label, row
from calibrator.desk.plain_text import on_screen
from calibrator.desk.season.facts import Bag, SeasonFacts
from calibrator.desk.season.words import mass_text
from calibrator.desk.speech import day_text
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.desk.widgets.picture_key import Entry, PictureKey, Sign
from calibrator.model import SeasonLot, UnitSystem
from calibrator.science.mark import OldLineVerdict
from calibrator.science.within_lot import Inside, InsideLot
from calibrator.units import Kind
from calibrator.units import read as read_typed

if TYPE_CHECKING:
    from calibrator.desk.season.xy_plot import XyPlot

PLOT_HEIGHT = 220


class InsidePanel(QWidget):
    """One lot at a time, the newest first."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._facts: SeasonFacts | None = None
        self._plot: XyPlot | None = None
        self.lots = NameChoice()
        self.lots.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.lots.setMinimumContentsLength(22)
        self.lots.setMaxVisibleItems(16)
        self.lots.activated.connect(self._show)
        self.finding, self.advice = label("", "heading"), label("")
        self.key = PictureKey()
        self.reading = label("", "quiet")
        self.open_button = button(self.tr("&Open the lot"), self._open)
        self.how = how_button(self.workings)
        caption = label(self.tr("&Choose a lot"), wrap=False)
        caption.setBuddy(self.lots)
        self.lots.setAccessibleName(self.tr("Lot"))
        self._plot_place = column()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, int(1.5 * SPACE), 0, 0)
        layout.setSpacing(SPACE)
        layout.addLayout(row(caption, self.lots, None, self.open_button))
        layout.addWidget(card(column(self.finding, self.advice)))
        self._frame = card(self._plot_place, self.key)
        layout.addWidget(self._frame, 1)
        told = row(self.reading, self.how)
        told.setStretch(0, 1)
        layout.addLayout(told)
        layout.addStretch(0)

    @property
    def plot(self) -> XyPlot:
        """The picture; pyqtgraph is imported when it is first needed."""
        if self._plot is None:
            from calibrator.desk.season.xy_plot import XyPlot

            self._plot = XyPlot()
            self._plot.setMinimumHeight(PLOT_HEIGHT)
            self._plot.setAccessibleName(self.tr("Scoopfuls bag by bag"))
            self._plot_place.addWidget(self._plot)
        return self._plot

    def show_season(self, facts: SeasonFacts) -> None:
        """Offer this season's lots, the one looked at before again."""
        self._facts = facts
        blocker = QSignalBlocker(self.lots)
        kept = self.lots.currentData()
        self.lots.clear()
        text = self.tr("{lot}, {scoop}")
        told = (text.format(lot=lot.lot_number, scoop=lot.scoop_name) for lot in reversed(facts.lots))
        self.lots.addItems([on_screen(words) for words in told])
        for number, lot in enumerate(reversed(facts.lots)):
            self.lots.setItemData(number, lot.sign_off_id)
        self.lots.setCurrentIndex(max(0, self.lots.findData(kept)) if facts.lots else -1)
        blocker.unblock()
        self._show()

    def show_lot(self, lot_id: str) -> None:
        """Look into one lot."""
        for number, lot in enumerate(reversed(self._facts.lots if self._facts else ())):
            if lot.lot_id == lot_id:
                self.lots.setCurrentIndex(number)
                self._show()
                return

    @property
    def _lot(self) -> SeasonLot | None:
        """The lot looked into; the newest is offered first."""
        number = self.lots.currentIndex()
        return self._facts.lots[-1 - number] if self._facts and number >= 0 else None

    def _show(self) -> None:
        facts, lot = self._facts, self._lot
        there = lot is not None
        self._frame.setVisible(there)
        self.reading.setVisible(there)
        self.open_button.setEnabled(there)
        if facts is None or lot is None:
            self.finding.setText(self.tr("No lot is signed off yet"))
            self.advice.setText(self.tr("A lot is looked into once it is weighed in."))
            self.how.hide()
            return
        bags, found = facts.inside(lot)
        self.how.setVisible(found is not None)
        self.finding.setText(self._headline(found))
        advice = self._by_spots(facts, lot, bags) if found is not None and found.told is Inside.STEADY else ""
        self.advice.setText(advice or self._advice(found, bags, level=lot.struck_level))
        self.key.show_entries(
            (
                Entry(Sign.SQUARE, "action", self.tr("bag of the weigh-in")),
                Entry(Sign.CIRCLE, "action", self.tr("spot fill of a bag opened later")),
                Entry(Sign.DASHES, "quiet", self.tr("limits for each bag")),
                Entry(Sign.LINE, "mark", self.tr("running mean")),
            )
        )
        self.reading.setText(
            self.tr(
                "All as one scoopful struck level. The limits hold for one bag each, at 99.7 %: of bags as alike as "
                "those weighed, 3 in 1,000 lie outside by chance."
            )
        )
        if found is not None:
            self._draw(bags, found)

    def workings(self) -> tuple[Working, ...]:
        """How the limits and what is told of the bags came about."""
        facts, lot = self._facts, self._lot
        if facts is None or lot is None:
            return ()
        found = facts.inside(lot)[1]
        return (of_inside(lot, found, self.desk.system),) if found else ()

    def _headline(self, found: InsideLot | None) -> str:
        if found is None:
            return self.tr("These bags cannot be judged")
        text = {
            Inside.STEADY: self.tr("Steady: its bags are as alike as bags are here."),
            Inside.JUMP: self.tr("Its bags jumped by {share} ({low} to {high})."),
            Inside.DRIFT: self.tr("Its bags drifted by {share} from first to last ({low} to {high})."),
            Inside.ONE_OFF: self.tr("One bag is {share} off ({low} to {high})."),
            Inside.TOO_FEW: self.tr("Too few bags to tell. Weigh one scoopful of each bag that is opened."),
        }[found.told]
        ends = {"low": shown.signed_share(found.low_share), "high": shown.signed_share(found.high_share)}
        return text.format(share=shown.signed_share(found.share), **ends)

    def _advice(self, found: InsideLot | None, bags: list[Bag], *, level: bool) -> str:
        """What to do; a scoop that is used level has no mark that could hold or move."""
        if found is None:
            return ""
        if found.told is Inside.STEADY and level:
            return self.tr("The scoop goes on being used level. Weigh one scoopful of each bag opened.")
        if found.told is Inside.STEADY:
            return self.tr("The mark holds. Go on with one scoopful of each bag opened.")
        if found.told is Inside.TOO_FEW:
            return ""
        when = day_text(bags[found.at].on) if found.at is not None else ""
        if found.told is Inside.DRIFT and level:
            return self.tr(
                "Look whether powder cakes or takes up damp in the store, and stir each bag up. Weigh level fills: "
                "level may no longer be the right weight."
            )
        if found.told is Inside.DRIFT:
            return self.tr(
                "Look whether powder cakes or takes up damp in the store, and stir each bag up. Weigh fills to the "
                "line: the mark may have to move."
            )
        if found.told is Inside.ONE_OFF:
            return self.tr(
                "It was weighed on {day}. Look into that bag: caked or damp powder, or a slip of the hand. Weigh it "
                "again."
            ).format(day=when)
        if level:
            return self.tr(
                "It happened on {day}. Look at the bags since: another run under the same number (read the code on "
                "the bag), caking, or another scoop. Until it is clear weigh level fills: level may no longer be the "
                "right weight."
            ).format(day=when)
        return self.tr(
            "It happened on {day}. Look at the bags since: another run under the same number (read the code on the "
            "bag), caking, or another scoop. Until it is clear weigh fills to the line: the mark may have to move."
        ).format(day=when)

    def _by_spots(self, facts: SeasonFacts, lot: SeasonLot, bags: list[Bag]) -> str:
        """Of a steady row of bags, where the spot fills do not say that the mark holds; blank where they do."""
        now = facts.mark_now(lot)
        if now is None:
            return ""
        if not now.bag.within:
            text = self.tr(
                "The last spot fill, of {day}, is off all the same: its feeding is {share} from the target, and "
                "{tolerance} is the tolerance."
            )
            again = self.tr("Stir that bag and weigh it again; as far off again, feed from it by the scale.")
            twice = self.tr(
                "The one before was off to the same side. If they are of two bags, weigh the lot in anew; if of one, "
                "weigh a scoopful of another bag."
            )
            told = text.format(
                day=day_text(bags[-1].on),
                share=shown.signed_share(now.bag.share),
                tolerance=shown.share(facts.farm.tolerance_share),
            )
            return f"{told} {twice if now.off_again else again}"
        if now.verdict is OldLineVerdict.KEEP:
            return ""
        if now.verdict is OldLineVerdict.MOVE:
            return self.tr("By all spot fills together a feeding is outside the tolerance: weigh the lot in anew.")
        return self.tr(
            "Whether a feeding still lies within the tolerance is not sure yet: weigh one scoopful of each bag opened."
        )

    def _draw(self, bags: list[Bag], found: InsideLot) -> None:
        from calibrator.desk.season.xy_plot import Xy

        system = self.desk.system
        unit = self.tr("oz") if system is UnitSystem.FARM else self.tr("g")
        per = read_typed("1 oz", Kind.MASS, system).value if system is UnitSystem.FARM else 1.0
        x = [float(n) for n in range(1, len(bags) + 1)]

        def scaled(values: tuple[float, ...]) -> list[float]:
            return [value / per for value in values]

        stressed = set(found.outside)
        if found.told is Inside.JUMP and found.at is not None:
            stressed.add(found.at)
        self.plot.show_xy(
            Xy(
                points=[(n, bag.mass_g / per) for n, bag in zip(x, bags, strict=True)],
                x_caption=self.tr("Bags in the order in which they were opened"),
                y_caption=self.tr("One scoopful, {unit}").format(unit=unit),
                squares=frozenset(n for n, bag in enumerate(bags) if bag.at_weigh_in),
                stressed=frozenset(stressed),
                limits=((x, scaled(found.low_g)), (x, scaled(found.high_g))),
                line=(x, scaled(found.running_g)),
                level=found.centre_g / per,
                whole=True,
            )
        )
        self.plot.setAccessibleDescription(
            self.tr("{headline} Mean {mean}, spread of bags about {spread}.").format(
                headline=self.finding.text(),
                mean=mass_text(found.centre_g, system),
                spread=shown.share(found.high_g[0] / found.centre_g - 1) if found.high_g else "–",
            )
        )

    def _open(self) -> None:
        if lot := self._lot:
            self.desk.go_to.emit("lots", lot.lot_id)
