"""Where the spread comes from: lots, bags, fills, people, scoops, as bars; and what follows for the work."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QVBoxLayout, QWidget

from calibrator.desk import shown
from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.how.of_spread import of_spread
from calibrator.desk.how.view import how_button
from calibrator.desk.how.working import Working
from calibrator.desk.parts import card, column, label, row, scrolled
from calibrator.desk.season.facts import SeasonFacts
from calibrator.desk.season.spread_bars import Bar, SpreadBars
from calibrator.desk.theme import SPACE
from calibrator.science.season_spread import Do, Own, SpreadFindings, open_above

translate = QCoreApplication.translate


class SpreadPanel(QWidget):
    """Words first: what to do; then the bars they rest on."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self.finding, self.advice = label("", "heading"), label("")
        self.bars, self.people = SpreadBars(), SpreadBars()
        self.reading, self.people_words = label("", "quiet"), label("", "quiet")
        self.bars.setAccessibleName(self.tr("Spread between lots, bags and fills"))
        self.people.setAccessibleName(self.tr("How scoopfuls of one bag scatter, by person and by scoop"))
        self._first = card(column(self.finding, self.advice))
        self._found: SpreadFindings | None = None
        self.how = how_button(self.workings)
        self._second = card(column(label(self.tr("From lot to lot, bag to bag, fill to fill"), "heading"), self.bars,
                                   self.reading, row(self.how, None)))  # fmt: skip
        self._third = card(column(label(self.tr("Scoopfuls of one bag, by person and by scoop"), "heading"),
                                  self.people, self.people_words))  # fmt: skip
        inner = QWidget()
        body = QVBoxLayout(inner)
        body.setContentsMargins(0, int(1.5 * SPACE), 0, 0)
        body.setSpacing(int(1.5 * SPACE))
        for each in (self._first, self._second, self._third):
            body.addWidget(each)
        body.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(scrolled(inner))

    def show_season(self, facts: SeasonFacts) -> None:
        """Show where this season's spread comes from."""
        found = facts.spread if facts.lots else self.tr("Weigh in a lot first.")
        self._found = found if isinstance(found, SpreadFindings) else None
        self._second.setVisible(self._found is not None)
        self._third.setVisible(self._found is not None and bool(self._found.people))
        if not isinstance(found, SpreadFindings):
            self.finding.setText(self.tr("The spread cannot be told yet"))
            self.advice.setText(found)
            self.advice.show()
            return
        self.finding.setText(self._most(found))
        self.advice.setText("\n".join(self._advice(found)))
        self.advice.setVisible(bool(self.advice.text()))
        self.bars.show_bars(self._component_bars(found))
        self.people.show_bars([_own_bar(own) for own in (*found.people, *found.scoops)])
        self.reading.setText(
            self.tr(
                "Each bar is a standard deviation, its line the 95 % interval: between lots of one kind, between bags "
                "of a lot, between scoopfuls of one bag. Two thirds of all lie within it, nearly all within twice."
            )
        )
        self.people_words.setText(
            self.tr(
                "Overlapping lines mean: nobody can be told from the others. It is what to practice, not who to blame."
            )
            if len(found.people) > 1
            else self.tr("So far one person alone weighed in: whoever else does stands here beside them.")
        )

    def workings(self) -> tuple[Working, ...]:
        """How the spreads came about."""
        return of_spread(self._found) if self._found else ()

    def _component_bars(self, found: SpreadFindings) -> list[Bar]:
        c = found.components
        return [
            _bar(self.tr("between lots"), c.lot_sd, c.lot_sd_interval)
            if found.lots_tell
            else Bar(self.tr("between lots"), self.tr("cannot be told from so few lots"), None),
            _bar(self.tr("between bags"), c.bag_sd, c.bag_sd_interval),
            _bar(self.tr("between fills"), c.fill_sd, c.fill_sd_interval),
        ]

    def _most(self, found: SpreadFindings) -> str:
        names = (self.tr("lots"), self.tr("bags"), self.tr("fills"))
        shares = found.components.shares
        if not any(shares):
            return self.tr("The spread cannot be told yet")
        if not found.lots_tell:
            return self.tr("So few lots do not tell yet where most of the spread comes from")
        place = max(range(3), key=lambda n: shares[n])
        text = self.tr("The largest part of the spread lies between {what}: {share} of it.")
        share = shown.share(shares[place], 0)
        return text.format(what=names[place], share=share)

    def _advice(self, found: SpreadFindings) -> list[str]:
        told = [self._do(do, found) for do in found.do]
        if found.components.lot_sd is None:
            told.insert(
                0, self.tr("One lot does not show how lots differ, and its few bags tell little: weigh in more.")
            )
        elif not found.lots_tell:
            told.insert(
                0, self.tr("Go on as each weigh-in says. From about five lots of one powder on it is told here.")
            )
        if found.best is not None and found.usual_reach is not None:
            text = self.tr(
                "For a mean known within {share}: {fills} from each of {bags} are the least work. So far a weigh-in "
                "had {usual_bags} with {usual_fills} each, which knows it within {reach}."
            )
            told.append(
                text.format(
                    share=shown.share(found.wanted_share),
                    fills=counted.fills(found.best.fills_each),
                    bags=counted.bags(found.best.bags),
                    usual_bags=counted.bags(round(found.usual[0])),
                    usual_fills=counted.fills(round(found.usual[1])),
                    reach=shown.share(found.usual_reach),
                )
            )
        return told

    def _do(self, do: Do, found: SpreadFindings) -> str:
        return {
            Do.MORE_BAGS: self.tr("Weigh fewer fills of more bags: bags differ more than scoopfuls of one bag."),
            Do.MORE_FILLS: self.tr("Weigh more fills of each bag: bags are alike, scoopfuls are not."),
            Do.AS_NOW: self.tr("Bags and fills of each are well balanced: go on as now."),
            Do.PRACTISE: self.tr(
                "Practice scooping: scoopfuls of one bag scatter more than 2.5 %. Fill heaped, strike off once, do not "
                "tap."
            ),
            Do.PRACTISE_WITH: self.tr(
                "Practice scooping with {name}: those scoopfuls scatter more than the others'. Fill heaped, strike off "
                "once, do not tap."
            ).format(name=found.apart),
            Do.CHECK_SCALE: self.tr(
                "Look at the scale: its step makes up most of the scatter. Weigh several scoopfuls together, or use a "
                "finer scale."
            ),
        }[do]


def _bar(caption: str, sd: float | None, interval: tuple[float, float] | None) -> Bar:
    if sd is None:
        return Bar(caption, "–", None)
    if interval is None:
        return Bar(caption, shown.share(sd), sd, sd, sd)
    low, high = (shown.share(end) for end in interval)
    span = f"{low} – {high}"
    if open_above(sd, interval):  # as from two lots, which tell next to nothing of how far it may reach
        span = translate("SpreadPanel", "{low} or more").format(low=low)
    return Bar(caption, f"{shown.share(sd)} ({span})", sd, *interval)


def _own_bar(own: Own) -> Bar:
    sd = own.scatter.sd_share
    text = f"{shown.share(sd)} ({shown.share(own.low_share)} – {shown.share(own.high_share)}), {counted.lots(own.lots)}"
    return Bar(own.name, text, sd, own.low_share, own.high_share)
