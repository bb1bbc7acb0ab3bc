"""Sign-off: everything on one page, then frozen."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QPushButton, QWidget

from calibrator.desk import shown
from calibrator.desk.change_over import FedFrom, asked_at_sign_off
from calibrator.desk.changing_over import ask_change_over, begin_lot
from calibrator.desk.chart_faults import chart_faults
from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.feeding_names import feeding_name
from calibrator.desk.guide import Guide
from calibrator.desk.in_use import LotState
from calibrator.desk.marking import mark_scoop, on_the_scoop
from calibrator.desk.parts import Tone, button, card, clear, label, row, set_style_property, set_tone, without_letter
from calibrator.desk.refusals import in_words
from calibrator.desk.scoop_lines import ScoopState, label_is_printed, line_of, lines_beside, scoop_state
from calibrator.desk.speech import day_text
from calibrator.desk.standing import LotStanding
from calibrator.desk.theme import SPACE
from calibrator.desk.weigh_in import line_words, words
from calibrator.desk.weigh_in.fed_from import FedFromQuestion
from calibrator.desk.weigh_in.step_view import StepView
from calibrator.desk.widgets.initials import select_on_entry
from calibrator.desk.widgets.stray_keys import SteadyLine
from calibrator.desk.words import also_to_draw_words, old_lines_words
from calibrator.model import Fill, Lot, SignOff, Step
from calibrator.science.errors import CannotCompute
from calibrator.science.mark import LineVerdict


class StepSignOff(StepView):
    """Shows the outcome; a signature freezes it, and then label, lot sheet and wall chart can be printed."""

    closes = False  # what is printed is printed from here

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk, "")
        self._shown_id = ""  # the weigh-in
        self.fed_from = FedFromQuestion()
        self._grid = QGridLayout()
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(3 * SPACE)
        self._grid.setVerticalSpacing(SPACE // 4)  # signing in view on the smallest window too
        self._grid.setColumnStretch(1, 1)
        holder = QWidget()
        holder.setLayout(self._grid)
        self._verdict = label("", "heading")
        self._initials = SteadyLine()
        self._initials.setMaxLength(12)
        self._initials.setFixedWidth(140)
        self._initials.setAccessibleName(self.tr("Initials"))
        select_on_entry(self._initials)
        self._initials.returnPressed.connect(self._to_signing)
        self._initials.textChanged.connect(self._stop_asking)
        self.fed_from.ways.currentIndexChanged.connect(self._stop_asking)
        self._asked_for = label("", wrap=False)
        set_style_property(self._asked_for, "state", "wrong")
        self._caption = label(self.tr("&Initials"))
        self._caption.setBuddy(self._initials)
        self._sign_button = button(self.tr("Si&gn off"), self._sign, "main")
        self._label_button = button(self.tr("&Print the scoop label"), self._print_label, "main")
        self._sheet_button = button(self.tr("Lot s&heet"), self._print_sheet)
        self._tables_button = button(self.tr("Batch tables and wall &chart"), self._to_tables)
        self._on_button = button("", self._say_it_is_on)
        self._fill_button = button(self.tr("&Fill to the line"), self._to_fills)
        verdict_line = row(self._verdict, self._fill_button)
        verdict_line.setStretch(0, 1)
        self.body.addWidget(card(verdict_line, holder))
        self.body.addWidget(self.fed_from)
        self.body.addLayout(
            row(
                self._caption,
                self._initials,
                self._sign_button,
                self._asked_for,
                self._label_button,
                self._sheet_button,
                self._tables_button,
                self._on_button,
                None,
            )
        )
        self.body.addStretch(1)

    def refresh(self, guide: Guide, fresh: bool) -> None:
        signed = guide.signed_off
        self.hands.setText(self._what_is_next(guide, signed))
        clear(self._grid)
        for number, (name, value) in enumerate(self._rows(guide, signed)):
            self._grid.addWidget(label(name, "quiet", wrap=False), number, 0, Qt.AlignmentFlag.AlignTop)
            self._grid.addWidget(label(value), number, 1)
        self._show_verdict(guide, signed)
        for part in (self._caption, self._initials, self._sign_button, self._asked_for):
            part.setVisible(signed is None)
        for part in (self._label_button, self._sheet_button, self._tables_button):
            part.setVisible(signed is not None)
        self._show_whether_on(guide)
        self._fill_button.setVisible(guide.line_untried)
        self._ask_when(guide)
        if self._shown_id != guide.weigh_in.id:  # not on coming back to the same one
            self._shown_id = guide.weigh_in.id
            self._initials.setText(guide.weigh_in.by)
            self._stop_asking()

    def _ask_when(self, guide: Guide) -> None:
        now = guide.standing
        fed = asked_at_sign_off(now, guide.lot) if guide.signed_off is None else None
        self.fed_from.setVisible(fed is not None)
        if fed is not None:
            self.fed_from.offer(guide.weigh_in.id, fed.lot.lot_number, now.plans, now.today)

    def _show_whether_on(self, guide: Guide) -> None:
        """What says that the line is on the scoop, while nobody said so; what is done is lit no more."""
        self._on_button.setVisible(_to_mark(guide) is not None)
        self._on_button.setText(_on_it(guide))
        lit = self._comes_next(guide)
        for one in (self._label_button, self._on_button, self._tables_button):
            set_style_property(one, "kind", "main" if one is lit else "")

    def _comes_next(self, guide: Guide) -> QPushButton | None:
        """The button of what is to be done next about a signed lot; None once nothing is."""
        if _plan_comes_first(guide):
            return self._tables_button
        if _is_waiting(guide) or _to_mark(guide) is not None:
            if not _label_is_printed(guide):
                return self._label_button
            return None if _is_waiting(guide) else self._on_button
        fed = _signed_lot(guide, LotState.IN_USE) is not None
        return self._tables_button if fed and self._left_on_paper(guide) else None

    def first_field(self) -> QWidget:
        """What is to be answered first."""
        if self.guide is not None and self.guide.signed_off is not None:
            return self._comes_next(self.guide) or self._tables_button
        asked = self.fed_from.isVisibleTo(self) and not self.fed_from.answered
        return self.fed_from.ways if asked else self._initials

    def _what_is_next(self, guide: Guide, signed: SignOff | None) -> str:
        fed = guide.standing.in_use
        if signed is None:
            return self.tr(
                "Look it over. Signing off freezes this weigh-in. Once the lot is fed, its mark replaces the older "
                "ones, and charts and labels printed before are out of date."
            )
        if fed is not None and _is_waiting(guide):
            text = self.tr(
                "Signed. Lot {old} is fed until the change-over under Today. Print label and wall chart now if you "
                "like; put them up at the change-over."
            )
            known = guide.standing.lot(guide.lot.id)
            if known is not None and known.lot.fed_from is not None:
                text = self.tr(
                    "Signed. Lot {number} is fed from {from_when}, lot {old} until then. Print label and wall chart "
                    "now if you like; put them up at the change-over."
                )
            from_when = _from_when(guide, known.lot) if known is not None else ""
            told = text.format(old=fed.lot.lot_number, number=guide.lot.lot_number, from_when=from_when)
            return " ".join(filter(None, [told, self._plan_first(guide)]))
        if _signed_lot(guide, LotState.IN_USE) is None:
            return self.tr("Signed. This lot is not fed now.")
        first = self._plan_first(guide)
        left = [first, *self._left_on_scoop(guide), "" if first else self._left_on_paper(guide)]
        if any(left):
            return " ".join([self.tr("Signed."), *filter(None, left)])
        if not _label_is_printed(guide):
            return self.tr("All of it is done. The label of this line was not printed here.")
        return self.tr("All of it is done.")

    def _plan_first(self, guide: Guide) -> str:
        """A label printed before the plan knows nothing of the groups' feedings."""
        if not _plan_comes_first(guide):
            return ""
        text = self.tr(
            "Make the plan first, under “{button}”: then the label can bear a line for each group at once. Nothing is "
            "lost otherwise: a label can be printed anew."
        )
        return text.format(button=without_letter(self._tables_button.text()))

    def _left_on_paper(self, guide: Guide) -> str:
        """What is still to come before calves are fed by tables and charts."""
        if not guide.standing.plans:
            return self.tr("Make a plan for the batch tables and the wall chart.")
        return self.tr("Print the wall chart.") if _wants_chart(guide) else ""

    def _left_on_scoop(self, guide: Guide) -> tuple[str, ...]:
        """What is still to be done about the scoop and its label, and what to press then."""
        known = _to_mark(guide)
        if known is None:
            return ()
        text = self.tr("Once that is done, press “{button}”.")
        press = text.format(button=without_letter(_on_it(guide)))
        own = [mark for mark in known.marks if mark.sign_off_id == guide.signed_off.id] if guide.signed_off else []
        beside = [line for mark in own for line in lines_beside(guide.standing, mark)]
        return *self._scoop_and_label(guide), also_to_draw_words(beside, self.desk.system), press

    def _scoop_and_label(self, guide: Guide) -> tuple[str, ...]:
        printed = _label_is_printed(guide)
        if guide.line_stays and not guide.struck_level:
            stays = self.tr("The line stays where it is.")
            first = self.tr("Wipe out the line drawn first for this lot.") if guide.first_try else ""
            new = self.tr("Put this lot's label on.") if printed else self.tr("Print this lot's label and put it on.")
            return stays, first, new
        label_words = self.tr("Put the label on.") if printed else self.tr("Print the label.")
        wiped = guide.line_to_wipe_mm is not None
        others_mm = () if guide.first_try else [one.down_wall_mm for one in guide.further_old]
        if wiped and others_mm:
            return self._wipe_several(guide, others_mm), label_words
        if guide.struck_level:
            return self.tr("Wipe out the old line.") if wiped else "", label_words
        if wiped:
            return self.tr("Wipe out the old line and go over the new one with a pen that lasts."), label_words
        return self.tr("Go over the line with a pen that lasts."), label_words

    def _wipe_several(self, guide: Guide, others_mm: Sequence[float]) -> str:
        old = old_lines_words([guide.line_to_wipe_mm or 0.0, *others_mm], self.desk.system)
        text = self.tr("Wipe out {old} and go over the new one with a pen that lasts.")
        return (self.tr("Wipe out {old}.") if guide.struck_level else text).format(old=old)

    def _show_verdict(self, guide: Guide, signed: SignOff | None) -> None:
        check, target = guide.findings.check, guide.weigh_in.target_mass_g
        if signed is not None:
            text, tone = self._signed_words(guide, signed)
        elif check is None and guide.struck_level and guide.findings.line is not None:
            text, tone = line_words.level_words(guide.findings.line), "good"
        elif check is None or target is None:
            text = self.tr("No fills to the line yet: the line rests on the level fills alone.")
            tone = "warn"
        else:
            text, tone = line_words.check_words(check, guide, self.desk.system)
        self._verdict.setText(text)
        set_tone(self._verdict, tone)

    def _signed_words(self, guide: Guide, signed: SignOff) -> tuple[str, Tone]:
        """Who signed, and, where the fills did not show the line to be right, that it was signed all the same."""
        by = self.tr("Signed off by {by}.").format(by=signed.by)
        check = guide.findings.check
        if signed.verdict == LineVerdict.ON_TARGET:
            return by, "good"
        if check is None and guide.struck_level:
            return by, "good"
        if check is None:
            return self.tr("{signed} No fills to the line were weighed.").format(signed=by), "warn"
        although = self.tr("{signed} When it was signed: {verdict}")
        return although.format(signed=by, verdict=line_words.check_words(check, guide, self.desk.system)[0]), "warn"

    def _rows(self, guide: Guide, signed: SignOff | None) -> list[tuple[str, str]]:
        system, w, found = self.desk.system, guide.weigh_in, guide.findings
        rows: list[tuple[str, str]] = []  # the lot stands above them
        if guide.scoop and guide.scale:
            rows.append((self.tr("Scoop, scale"), f"{guide.scoop.name}, {guide.scale.name}"))
        if found.level:
            text = self.tr("{mean}, between {low} and {high} (95 % interval); {fills} from {bags}")
            level = found.level
            mean, low, high = shown.mass_between(level.mean_g, level.low_g, level.high_g, system)
            weighed, bags = words.weighed_words(level), counted.bags(level.bags)
            told = text.format(mean=mean, low=low, high=high, fills=weighed, bags=bags)
            corrected = f"; {words.corrected_words(level.taken_off_g, system)}" if level.taken_off_g else ""
            rows.append((self.tr("Struck level"), f"{told}{corrected}"))
            if unchecked := words.unchecked_words(level, found.scale, system):
                rows.append((self.tr("Check weight"), unchecked))
        if found.density:
            density = shown.density(found.density.density_g_per_ml, system, found.density.expanded)
            rows.append((self.tr("Bulk density"), density))
        if w.drawn_line_mm is not None:
            where = self.tr("{where} down the wall from the rim").format(where=shown.length(w.drawn_line_mm, system))
            if guide.struck_level:
                where = line_words.level_words(found.line) if found.line else ""
            elif found.line is not None and found.line.to_line > 1:
                where = self.tr("{where}; scoopfuls to it a feeding: {count}").format(
                    where=where, count=found.line.to_line
                )
            rows.append((self.tr("Fill mark"), where))
        if w.target_mass_g is not None:
            rows.append((self.tr("Target weight"), shown.mass(w.target_mass_g, system)))
        if found.check:
            to_line = found.check.result
            mean, low, high = shown.mass_between(to_line.mean_g, to_line.low_g, to_line.high_g, system)
            text = self.tr("{mean}, between {low} and {high} (95 % interval)")
            weighed = text.format(mean=mean, low=low, high=high)
            if found.check.mean_g != found.check.result.mean_g:  # with full scoops; else it is the feeding itself
                rows.append((self.tr("To the line"), weighed))
            rows += [
                (self.tr("Against the target"), line_words.check_reason(found.check, guide, system)),
                (self.tr("How it settles"), line_words.settling_words(found.check)),
            ]
        if found.old:
            if guide.struck_level:
                told = self.tr("Not needed: the scoop is used level.")
            elif w.drawn_line_mm is not None and not guide.line_stays:
                before_g, tried = guide.earlier_target_g, guide.line_tried
                told = line_words.moved_line_words(found.old, before_g, system, tried=tried)
            elif found.check is not None:
                told = self.tr("Kept. What fills to it weighed stands above.")
            else:
                told = line_words.old_line_words(found.old, system)[0]
            rows.append((self.tr("Old line"), told))
        rows.append((self.tr("Weighed by"), w.by))
        if signed is not None and signed.by != w.by:
            rows.append((self.tr("Signed by"), signed.by))
        return rows

    def _to_signing(self) -> None:
        """Enter in the initials signs nothing: one too many, pressed on the page before, would freeze it all."""
        if self._is_answered():
            self._sign_button.setFocus(Qt.FocusReason.OtherFocusReason)

    def _is_answered(self) -> bool:
        """Whether all is said that signing needs; what is not is asked for."""
        if not self._initials.text().strip():
            self._ask_for(self._initials, self.tr("Type your initials, then sign off."))
            return False
        if self.fed_from.isVisibleTo(self) and not self.fed_from.answered:
            self._ask_for(self.fed_from.ways, self.tr("Say from which feeding on the lot is fed, then sign off."))
            return False
        return True

    def _ask_for(self, field: QWidget, told: str) -> None:
        """Say what is missing to the right of all else in the line, so that nothing moves for it, and go there."""
        self.desk.say(told)
        self._asked_for.setText(told)
        field.setAccessibleDescription(told)
        set_style_property(field, "state", "wrong")
        field.setFocus()

    def _stop_asking(self) -> None:
        self._asked_for.setText("")
        for field in (self._initials, self.fed_from.ways):
            field.setAccessibleDescription("")
            set_style_property(field, "state", "")

    def _sign(self) -> None:
        guide = self.guide
        if guide is None or guide.signed_off is not None or not self._is_answered():
            return
        doubt = self._doubt(guide)
        if doubt:
            self.desk.ask.confirm(doubt, self.tr("Sign off all the same"), self._ask_of_the_rest)
        else:
            self._ask_of_the_rest()

    def _doubt(self, guide: Guide) -> str:
        retired = [thing.name for thing in (guide.scoop, guide.scale) if thing and thing.retired_on is not None]
        if retired:
            return self.tr("{name} is retired. Sign off a line weighed with it all the same?").format(name=retired[0])
        check = guide.findings.check
        if guide.struck_level:
            return ""
        if check is None:
            return self.tr(
                "No fill to the line was weighed, so settling is not known and the line may be a few percent off. "
                "Weigh at least two fills to the line, or sign off all the same?"
            )
        if guide.on_target:
            return ""
        verdict = line_words.check_words(check, guide, self.desk.system)[0]
        reason = line_words.check_reason(check, guide, self.desk.system)
        return self.tr("{verdict} {reason}\n\nSign off all the same? The record will say so.").format(
            verdict=verdict, reason=reason
        )

    def _ask_of_the_rest(self) -> None:
        """With a change-over at once it is asked what is left of the lot fed until then."""
        if self.guide is None:
            return
        fed_from = self.fed_from.fed_from() if self.fed_from.isVisibleTo(self) else None
        freeze = partial(self._freeze, fed_from)
        if fed_from is not None and fed_from.is_done(self.guide.standing.today):
            ask_change_over(self.desk, self.guide.standing, "", freeze)
        else:
            freeze(False)

    def _freeze(self, fed_from: FedFrom | None, old_is_finished: bool) -> None:
        """The fills are those on the screen now: what comes from others while the rest is sent is not signed unseen."""
        if self.guide is not None:
            seen, by = self.guide.known.fills, self._initials.text().strip()
            self.desk.send(partial(self._freeze_sent, fed_from, old_is_finished, seen, by))

    def _freeze_sent(self, fed_from: FedFrom | None, old_is_finished: bool, seen: Sequence[Fill], by: str) -> None:
        guide = self.guide
        if guide is None:
            return
        try:
            made = self.desk.attempt(lambda: guide.sign_off(by, seen))
        except CannotCompute as error:
            self.desk.ask.tell(in_words(error))
            return
        if made is None:
            return
        self.desk.say(self.tr("Signed off."))  # what comes next stands on the page
        now = guide.standing
        known = now.lot(made.lot_id)
        if fed_from is not None and known is not None:
            text = self.tr("Signed off. Lot {number} is in use.")
            if not fed_from.is_done(now.today):
                text = self.tr("Signed off. Lot {number} is fed from {from_when}.")
            begun = replace(known.lot, fed_from=fed_from.on, fed_from_feeding=fed_from.feeding or 0)
            said = text.format(number=known.lot.lot_number, from_when=_from_when(guide, begun))
            begin_lot(self.desk, now, known, fed_from, said, old_is_finished=old_is_finished, by=by)
        if self.guide is not None:
            (self._comes_next(self.guide) or self._label_button).setFocus()

    def _to_fills(self) -> None:
        self.wanted.emit(Step.FILLS_TO_MARK)

    def _print_label(self) -> None:
        if self.guide:
            self.desk.go_to.emit("tables", f"label:{self.guide.lot.id}")

    def _say_it_is_on(self) -> None:
        known = _to_mark(self.guide) if self.guide else None
        if self.guide is not None and known is not None and self.guide.scoop is not None:
            self._tables_button.setFocus()
            mark_scoop(self.desk, self.guide.standing, known, self.guide.scoop)

    def _print_sheet(self) -> None:
        if self.guide:
            self.desk.go_to.emit("tables", f"sheet:{self.guide.lot.id}")

    def _to_tables(self) -> None:
        self.desk.go_to.emit("tables", "")


def _signed_lot(guide: Guide, state: LotState) -> LotStanding | None:
    """The lot, where this weigh-in is signed off and it has come to that; None else."""
    known = guide.standing.lot(guide.lot.id)
    return known if guide.signed_off is not None and known is not None and known.state is state else None


def _is_waiting(guide: Guide) -> bool:
    """Whether the lot is signed off and another one is fed until its change-over."""
    return _signed_lot(guide, LotState.WAITING) is not None


def _from_when(guide: Guide, lot: Lot) -> str:
    """The day and feeding from which a lot is fed; blank where none is chosen."""
    if lot.fed_from is None:
        return ""
    return f"{day_text(lot.fed_from)}, {feeding_name(guide.standing.plans, lot.fed_from_feeding)}"


def _label_is_printed(guide: Guide) -> bool:
    """Whether the label of the lot's line was printed."""
    now, scoop = guide.standing, guide.scoop
    known = now.lot(guide.lot.id)
    own = line_of(known, scoop.id) if known and scoop else None
    return own is not None and label_is_printed(now, own)


def _plan_comes_first(guide: Guide) -> bool:
    """Whether the label has still to be printed, and there is no plan whose feedings it could tell."""
    to_label = _is_waiting(guide) or _to_mark(guide) is not None
    return to_label and not guide.standing.plans and not _label_is_printed(guide)


def _wants_chart(guide: Guide) -> bool:
    """Whether the lot is fed and the wall chart of a plan has still to be printed for it."""
    return _signed_lot(guide, LotState.IN_USE) is not None and bool(chart_faults(guide.standing))


def _on_it(guide: Guide) -> str:
    """What the button says that tells of line and label."""
    wiped = guide.line_to_wipe_mm is not None and not guide.line_stays
    return on_the_scoop(level=guide.struck_level, wiped=wiped)


def _to_mark(guide: Guide) -> LotStanding | None:
    """The lot, where it is signed off and fed and nobody said yet that its line is on the scoop."""
    known, scoop = _signed_lot(guide, LotState.IN_USE), guide.scoop
    if known is None or scoop is None:
        return None
    return known if scoop_state(guide.standing, known, scoop.id) is ScoopState.TO_MARK else None
