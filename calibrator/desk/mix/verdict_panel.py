"""What a check says, verdict first: how sure, what would tell more, what to do, why, and cautions."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QLabel, QVBoxLayout, QWidget

from calibrator.clock import clock_text
from calibrator.desk import mix_odds as odds
from calibrator.desk import mix_words as words
from calibrator.desk import shown
from calibrator.desk.how.of_check import of_solids
from calibrator.desk.how.view import how_button
from calibrator.desk.how.working import Working
from calibrator.desk.mix.warm_words import off_words, warm_words
from calibrator.desk.mix_batch import Batch
from calibrator.desk.mix_checks import MixFindings, RightReading
from calibrator.desk.needs import OFF
from calibrator.desk.parts import button, card, clear, column, label, row, set_style_property, set_tone, show_if
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.solids_bar import SolidsBar
from calibrator.model import InstrumentKind, MixCheck, UnitSystem
from calibrator.science.causes import Slip
from calibrator.science.check import Caution, Judged, Pails, Verdict, WouldTell, surely_inside
from calibrator.science.solids import Solids, SolidsFrom
from calibrator.values import dataclass

OF_DROPS = (SolidsFrom.OWN_LINE, SolidsFrom.WHOLE_MILK, SolidsFrom.TRADE_RULE)


@dataclass(frozen=True)
class Told:
    """All that is told of a check: `unread` says which reading could not be read and why, `stale` names other
    instruments whose checks no longer hold, `right_brix` is what the refractometer would show of a mix as wanted,
    `right_density` what hydrometer and jug would, `kind` the instrument at hand, `whose` whose batch it is where that
    decides what is right, `assumed` where nobody has said it, `other` names the batch that the volume is right for.
    `read_before` is the check of the batch that this one is the `same` as, or is said not to be."""

    found: MixFindings
    batch: Batch
    unread: str = ""
    stale: str = ""
    right_brix: float | None = None
    right_density: tuple[RightReading, ...] = ()
    kind: InstrumentKind = InstrumentKind.REFRACTOMETER
    whose: str = ""
    assumed: bool = False
    other: str = ""
    read_before: MixCheck | None = None
    same: bool = False


class VerdictPanel(QWidget):
    """Shows `MixFindings`; called anew with every digit typed.

    Whether it may be fed today comes straight beneath the verdict, or what to do first where two ways are at odds; what
    to put right in the next card, with what to look at above it there. By which way and how surely the verdict was
    found stands last.
    """

    water_check_wanted = Signal()
    line_wanted = Signal()
    again_wanted = Signal()
    other_wanted = Signal()
    chosen_wanted = Signal()
    batch_changed = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.verdict, self.solids = label("", "figure"), label("")
        self.bar = SolidsBar()
        self.today, self.would_tell = label("", "heading"), label("")
        self.way, self.doubts = label("", "quiet"), label("")
        self.warm, self.basis = label(""), label("", "quiet")
        self.odds = label("", "caution")
        self.whose = label("", "heading")
        self.to_water = button(self.tr("Check in plain water"), self.water_check_wanted.emit)
        self.to_line = button(self.tr("Brix calibration"), self.line_wanted.emit)
        self._next = row(self.to_water, self.to_line, None)
        self.other = button(self.tr("Yes, that batch"), self.other_wanted.emit)
        self.chosen = button(self.tr("No, as chosen"), self.chosen_wanted.emit)
        self._answers = QWidget()
        answers = row(self.other, self.chosen, None)
        answers.setContentsMargins(0, 0, 0, 0)
        self._answers.setLayout(answers)
        self.same = label("")
        self.not_same = button("", self.batch_changed.emit)
        self._same = column(self.same, row(self.not_same, None))
        self.kept, self._over = label(""), column()
        self.verdict_card = card(
            self._over,
            self.whose,
            self.kept,
            self.verdict,
            self.today,
            self._answers,
            self._same,
            self.solids,
            self.bar,
            self.would_tell,
            self._next,
        )
        self._found = MixFindings()
        self._right: list[str] = []
        self._kind = InstrumentKind.REFRACTOMETER
        self.how = how_button(self._workings)
        self._cautions = QVBoxLayout()
        self._cautions.setSpacing(SPACE)
        self.correction = label("")
        self.again = button(self.tr("Read again"), self.again_wanted.emit)
        self.now = label("", "quiet")
        self.correction_card = card(
            label(self.tr("Put it right"), "heading"), self.odds, self.correction, self.now, row(self.again, None)
        )
        self.causes, self.causes_card = _told_card(self.tr("Likeliest causes"))
        self.pails, self.pails_card = _told_card(self.tr("First pail and last"))
        self.way_card = card(self.warm, self.doubts, self.way, self.basis, row(self.how, None))
        self.troubles = label("", "caution")
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(int(1.5 * SPACE))
        for widget in (self.verdict_card, self.correction_card, self.troubles):
            layout.addWidget(widget)
        layout.addLayout(self._cautions)
        for widget in (self.causes_card, self.pails_card, self.way_card):
            layout.addWidget(widget)
        layout.addStretch(1)
        for part in (
            self.odds,
            self.again,
            self.now,
            self.kept,
            self.whose,
            self.to_water,
            self.to_line,
            self._answers,
            self.not_same,
        ):
            part.hide()

    def show_told(self, told: Told, system: UnitSystem) -> None:
        """Tell what the readings say."""
        found, batch = told.found, told.batch
        self._found = found
        self._kind = told.kind
        self._right = [] if told.right_brix is None else [words.right_words(told.right_brix)]
        self._right += [words.right_density_words(right, system) for right in told.right_density]
        show_if(self.how, found.best is not None)
        _say(self.whose, self._whose_words(told))
        set_tone(self.whose, "warn" if told.assumed else "")
        self._show_verdict(found)
        if found.batch_doubted:
            self._doubt_batch(told, system)
        show_if(self._answers, found.other is not None)
        self._show_same(told.read_before, same=told.same)
        if told.unread:
            self.solids.setText(told.unread)
        self._show_way(found, told.stale)
        assumed = batch.now.powder.moisture_assumed
        basis = words.basis_words(found.best, batch.powder, assumed=assumed) if found.best else ""
        _say(self.basis, " ".join(filter(None, (basis, words.jug_words(found)))))
        _say(self.warm, warm_words(found, system, batch.plan.water_temperature_c if batch.plan else None))
        self._show_cautions(found, off_words(found, system))
        self._show_correction(found, batch, system)
        self.show_kept("", "")
        self._show_causes(found, system)
        self.pails.setText(words.pails_words(found.pails.verdict) if found.pails else "")
        show_if(self.pails_card, found.pails is not None)
        troubles = [*found.troubles, *([batch.trouble] if batch.trouble else [])]
        _say(self.troubles, "\n".join(troubles))

    def head(self, words: QLabel) -> None:
        """Put what the verdict is about over it."""
        self._over.addWidget(words)

    def show_kept(self, told: str, now: str) -> None:
        """Say that what is shown is kept, and what is to be done now, after which the mix is read again; blank for one
        that is being typed, or where nothing is to be done."""
        _say(self.kept, told)
        _say(self.now, now)
        judged = self._found.judged
        outside = judged is not None and judged.verdict.outside
        self.again.setText(self.tr("Read again, corrected") if outside else self.tr("Read again"))
        show_if(self.again, bool(now))

    def _whose_words(self, told: Told) -> str:
        """Whose batch is judged; blank where all groups want the same."""
        if not told.whose:
            return ""
        if told.assumed:
            text = self.tr("Taken to be the batch for {group}. If it is another's, choose that at “Batch for”.")
        else:
            text = self.tr("The batch for {group}")
        return text.format(group=told.whose)

    def _show_same(self, before: MixCheck | None, *, same: bool) -> None:
        """Whether it counts as a batch that was read before, with the way to say the other."""
        put_right = before is not None and before.verdict in OFF
        if not same:
            text, button_ = self.tr("Counted as another batch than that of {time}."), self.tr("No, the same batch")
        elif put_right:
            text, button_ = self.tr("Counted as the same batch as at {time}, put right."), self.tr("No, another batch")
        else:
            text, button_ = self.tr("Counted as the same batch as at {time}, read again."), self.tr("No, another batch")
        at = clock_text(before.at.astimezone().time()) if before else ""
        _say(self.same, text.format(time=at) if before else "")
        self.not_same.setText(button_)
        show_if(self.not_same, before is not None)

    def _workings(self) -> tuple[Working, ...]:
        return of_solids(self._found)

    def _show_verdict(self, found: MixFindings) -> None:
        judged, best = found.judged, found.best
        show_if(self.bar, judged is not None)
        if judged is None or best is None:
            set_style_property(self.verdict_card, "tone", "")
            set_tone(self.verdict, "")
            self.verdict.setText(self.tr("No verdict yet"))
            awaited = words.awaited_words(self._kind)
            self.solids.setText(
                self.tr("Say what solids are wanted.") if best is not None else " ".join([awaited, *self._right])
            )
            self.today.hide()
            self.would_tell.hide()
            self._offer(None, found)
            return
        tone = words.leaning_tone(judged)
        set_style_property(self.verdict_card, "tone", tone)
        set_tone(self.verdict, tone)
        self.verdict.setText(words.leaning_words(judged))
        self.solids.setText(" ".join([words.solids_words(judged, best), *self._right]))
        ends = (shown.share(judged.target - judged.tolerance), shown.share(judged.target + judged.tolerance))
        self.bar.show_judged(judged, ends, shown.share(judged.target))
        self.bar.setAccessibleDescription(self.solids.text())
        self._offer(judged.would_tell, found)
        fed = words.may_be_fed_words(judged, alike=_alike(found)) if may_be_fed(found) else ""
        _say(self.today, fed or words.conflict_words(found))
        told = [
            words.would_tell_words(judged, best.way, self._kind),
            self._inside_words(found, judged, best),
        ]
        _say(self.would_tell, " ".join(text for text in told if text))

    def _doubt_batch(self, told: Told, system: UnitSystem) -> None:
        """Ask whose batch it is, or say what cannot be, in place of a verdict that would rest on one or the other."""
        set_style_property(self.verdict_card, "tone", "warn")
        set_tone(self.verdict, "warn")
        for part in (self.bar, self.would_tell, self.to_line):
            part.hide()
        self.verdict.setText(odds.doubted_heading(told.found, told.batch))
        _say(self.today, odds.doubted_words(told.found, told.batch, told.other, system))
        _say(self.solids, self.tr("Each way: {ways}.").format(ways=words.ways_words(told.found)))

    def _offer(self, would_tell: WouldTell | None, found: MixFindings) -> None:
        """The way to what would tell more, at hand."""
        show_if(self.to_water, _water_ordered(found))
        show_if(self.to_line, would_tell in (WouldTell.OWN_LINE, WouldTell.MORE_REFERENCES) and _of_drops(found))

    def _inside_words(self, found: MixFindings, judged: Judged, best: Solids) -> str:
        """Which mean reading would surely be right, where the verdict is open and one could be."""
        if judged.would_tell is None or found.shown_brix is None or best.way not in OF_DROPS:
            return ""
        if judged.would_tell not in (WouldTell.MORE_READINGS, WouldTell.TOO_NEAR):
            return ""
        ends = surely_inside(found.shown_brix, best, judged)
        return words.inside_reading_words(*ends) if ends else ""

    def _show_way(self, found: MixFindings, stale: str) -> None:
        best = found.best
        told = [words.way_words(best.way, found.references)] if best else []
        if len(found.ways) > 1:
            told.append(self.tr("Each way: {ways}.").format(ways=words.ways_words(found)))
        if found.volume_blind:
            told.append(self.tr("The volume takes the powder for right: powder so far off hardly shows in it."))
        _say(self.way, " ".join(told))
        ordered = _water_ordered(found)
        doubts = [words.doubt_words(doubt, water_ordered=ordered) for doubt in best.doubts] if best else []
        _say(
            self.odds, odds.look_words(found) if found.contradicts else words.odds_words(found) if found.at_odds else ""
        )
        _say(self.doubts, " ".join([*doubts, *([stale] if stale else [])]))
        set_tone(self.doubts, "warn")
        show_if(self.way_card, best is not None or bool(stale) or bool(found.warm))

    def _show_cautions(self, found: MixFindings, warmth_off: str) -> None:
        clear(self._cautions)
        if warmth_off:
            self._cautions.addWidget(label(warmth_off, "caution"))
        thin = found.judged is not None and found.judged.verdict is Verdict.THIN
        as_planned = found.judged is not None and found.judged.aimed_low
        unsure = found.judged is not None and found.judged.verdict is Verdict.CANNOT_TELL
        risky = not {Caution.SOLIDS_RISK, Caution.OSMOLALITY_RISK}.isdisjoint(found.cautions)
        for caution in found.cautions:
            if (thin or as_planned) and caution is Caution.SOLIDS_LOW:
                continue  # the verdict says so, or the plan did
            calmer = thin and caution is Caution.YOUNG_CALVES
            made = label(
                words.thin_yet_strong_words() if calmer else words.caution_words(caution, unsure=unsure), "caution"
            )
            set_tone(made, "bad" if words.grave(caution) and (risky or not calmer) else "")
            self._cautions.addWidget(made)

    def _show_correction(self, found: MixFindings, batch: Batch, system: UnitSystem) -> None:
        fix = found.correction
        show_if(self.correction_card, fix is not None or (found.at_odds and found.other is None))
        show_if(self.correction, fix is not None)
        if fix is None:
            return
        lines = words.correction_words(
            fix,
            found.correction_scoops,
            system,
            batch.now.powder.resolution_g,
            least_g=batch.now.least_additive_g,
            looked=found.at_odds,
            names=batch.additives,
        )
        if found.correction_planned:
            lines.append(self.tr("Worked out for the volume on the chart; type what is in the vessel to be sure."))
        if found.at_odds:
            lines.insert(0, words.when_words(found))
        self.correction.setText("\n".join(lines))

    def _show_causes(self, found: MixFindings, system: UnitSystem) -> None:
        told = self.tr("{what} ({fits}).")
        lines = [
            told.format(what=words.slip_words(one, system), fits=words.fits_words(one.fits)) for one in found.causes
        ]
        if len(lines) > 1:
            lines = [f"{n}. {line}" for n, line in enumerate(lines, start=1)]
        outside = found.judged is not None and found.judged.verdict.outside
        if outside and not lines:
            lines = [self.tr("No usual slip fits this reading. Weigh the next powder, and look at the scoop.")]
        lines += [words.counts_differ_words()] if _counts_differ(found) else []
        self.causes.setText("\n".join(lines))
        self.causes_card.setVisible(
            outside and not found.batch_doubted and not (found.at_odds and not found.causes)
        )  # what to look at stands above


def may_be_fed(found: MixFindings) -> bool:
    """Whether the verdict is open and nothing about harm is told."""
    open_yet = found.judged is not None and found.judged.verdict is Verdict.CANNOT_TELL
    return (
        open_yet
        and not found.at_odds
        and not found.batch_doubted
        and not any(words.grave(caution) for caution in found.cautions)
    )


def _water_ordered(found: MixFindings) -> bool:
    """Whether a check in plain water is what would tell more, or what comes before anything is added."""
    unchecked = found.at_odds and found.other is None and not found.at_odds_checked
    return unchecked or (found.judged is not None and found.judged.would_tell is WouldTell.ZERO_CHECK)


def _counts_differ(found: MixFindings) -> bool:
    """Whether another number of scoopfuls is to be added than a cause tells to be missing."""
    adds = found.correction_scoops
    missing = [cause.count for cause in found.causes if cause.slip is Slip.SCOOP_LESS]
    return adds is not None and bool(missing) and missing[0] != adds.scoopfuls


def _alike(found: MixFindings) -> bool:
    return found.pails is None or found.pails.verdict in (Pails.ALIKE, Pails.CANNOT_TELL)


def _of_drops(found: MixFindings) -> bool:
    return found.best is not None and found.best.way in OF_DROPS


def _told_card(heading: str) -> tuple[QLabel, QFrame]:
    told = label("")
    return told, card(label(heading, "heading"), told)


def _say(where: QLabel, text: str) -> None:
    where.setText(text)
    show_if(where, bool(text))
