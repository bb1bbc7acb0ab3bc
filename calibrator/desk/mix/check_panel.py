"""This mix: the batch and its readings at the left, what they say at the right, kept with one key."""

from __future__ import annotations

from contextlib import suppress
from dataclasses import replace
from datetime import date, datetime
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QVBoxLayout, QWidget

from calibrator import __version__
from calibrator.clock import clock_text
from calibrator.desk.alone import tell_or_wait
from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.enter import enter_moves_on
from calibrator.desk.forms.fields import Captioned, TextField
from calibrator.desk.mix.batch_form import BatchForm
from calibrator.desk.mix.instrument_words import holds, state
from calibrator.desk.mix.occasion_form import OccasionForm
from calibrator.desk.mix.readings_form import READ_WITH, ReadingsForm
from calibrator.desk.mix.verdict_panel import Told, VerdictPanel
from calibrator.desk.mix_batch import Batch, FarmNow, farm_now
from calibrator.desk.mix_checks import (
    BRIX_KINDS,
    TEMPERATURES,
    VOLUME_KINDS,
    Aim,
    MixFindings,
    RightReading,
    right_brix,
    right_in_jug,
    right_sg,
    work_out,
)
from calibrator.desk.mix_history import ANOTHER, taken_to_reread
from calibrator.desk.mix_tools import Tools
from calibrator.desk.mix_words import leaning_words
from calibrator.desk.needs import OFF
from calibrator.desk.parts import button, card, column, label, row
from calibrator.desk.refusals import in_words
from calibrator.desk.speech import day_text
from calibrator.desk.standing import Standing
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.beside import beside
from calibrator.desk.widgets.later import Later
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.model import Farm, InstrumentKind, Lot, MixCheck, Reading, ReadingKind, new_id
from calibrator.science.errors import CannotCompute
from calibrator.values import dataclass


@dataclass(frozen=True)
class Kept:
    """A check that was kept, when, which lot was in use then, and the check before it that it may read again."""

    check: MixCheck
    at: datetime
    in_use: str
    reread: MixCheck | None = None


class BatchCard(QFrame):
    """Which batch was read, of which lot and when: mostly as the chart and the clock have it."""

    def __init__(self, desk: Desk, group: NameChoice) -> None:
        super().__init__()
        self.occasion, self.batch_form = OccasionForm(desk), BatchForm(desk, group)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(card(label(self.tr("The batch"), "heading"), self.occasion, self.batch_form))


class CheckPanel(QWidget):
    """Every digit is worked out at once; nothing is kept before the person says so."""

    kept = Signal()
    instruments_wanted = Signal()
    water_check_wanted = Signal()
    line_wanted = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        # Where it will stand, before it is filled, as a page is: it is dressed once.
        super().__init__(parent)
        self.desk = desk
        self._tools: Tools | None = None
        self._now: FarmNow | None = None
        self._standing: Standing | None = None
        self._read_for: tuple[str, int, date | None] = ("", -1, None)
        self._found = MixFindings()
        self._told: Told | None = None
        self._kept: Kept | None = None  # in view until the next check is begun
        self._again: MixCheck | None = None  # by this the mix in hand was read before
        self._not_again = ""  # the check whose batch somebody said that it is not
        self._batch_sure = False  # somebody was asked whose batch it is, and said the chosen one's
        self._group = NameChoice()
        self.whose = Captioned(self.tr("Batch for"), self._group, speaks=False)
        self._batch = Later(self._make_batch)
        self.readings = ReadingsForm(desk)
        self.verdict = VerdictPanel()
        self.note = TextField(self.tr("Note"), longest=200)
        self.keep_button = button(self.tr("&Keep this check"), self.keep, "main")
        self.clear_button = button(self.tr("Clea&r"), self.clear)
        self.readings.edited.connect(self.work_out)
        self.verdict.water_check_wanted.connect(self.water_check_wanted)
        self.verdict.line_wanted.connect(self.line_wanted)
        self.verdict.again_wanted.connect(self.read_again)
        self.verdict.other_wanted.connect(self._take_other)
        self.verdict.chosen_wanted.connect(self._stay_with_chosen)
        self.verdict.batch_changed.connect(self._change_batch)
        self._lay_out()

    def complete(self) -> None:
        """Make what is not made yet."""
        _ = self._batch.content

    @property
    def occasion(self) -> OccasionForm:
        return self._batch.content.occasion

    @property
    def batch_form(self) -> BatchForm:
        return self._batch.content.batch_form

    def show_farm(self, now: FarmNow, tools: Tools, standing: Standing) -> None:
        """Read anew; what is typed stays. `now` is that of the lot in use."""
        self._now, self._tools, self._standing = now, tools, standing
        self._read_for = ("", -1, None)
        if self._kept is not None:
            self._kept = self._as_told_now(self._kept)
        self.occasion.show_lots(standing)
        read_with = [tool for kind in READ_WITH for tool in tools.of(kind)]
        for part in (self.no_tools, self.other_ways):
            part.setVisible(not read_with)
        self.readings.show_tools(tools)
        self._of_another()

    def _as_told_now(self, kept: Kept) -> Kept | None:
        """None once it is withdrawn."""
        every = self.desk.records.every(MixCheck, kept.check.farm_id)
        told = next((one for one in every if one.id == kept.check.id), kept.check)
        return replace(kept, check=told) if told.counts else None

    def _of_another_typed(self) -> None:
        self._kept, self._again = None, None
        self._of_another()

    def _batch_typed(self) -> None:
        self._kept, self._again, self._batch_sure = None, None, False
        self.work_out()

    def _change_batch(self) -> None:
        """It is another batch after all, or the same: whichever is not told."""
        kept = self._kept
        if kept is None:
            before = self._reread()
            self._not_again = "" if before is None or self._not_again == before.id else before.id
            self.work_out()
            self.keep_button.setFocus(Qt.FocusReason.OtherFocusReason)
        elif kept.reread is not None:
            check = replace(kept.check, same_batch_as=ANOTHER if kept.check.same_batch_as else kept.reread.id)
            told = self._tell(check)
            if told is not None:
                self._kept = replace(kept, check=told)
                self._show_told()

    def _tell(self, check: MixCheck) -> MixCheck | None:
        desk = self.desk
        return desk.attempt(partial(tell_or_wait, desk.records, desk.outbox, check, desk.clock()))

    def _reread(self) -> MixCheck | None:
        """The check whose batch is in hand once more, or is taken to be; None where there is none, or no reading."""
        made = self._made()
        if made is None or self._standing is None:
            return None
        return self._again or taken_to_reread(self._standing.checks, made)

    def _take_other(self) -> None:
        """It is the batch that the volume is right for."""
        if self._found.other is not None:
            self.batch_form.choose(self._found.other)
        self.keep_button.setFocus(Qt.FocusReason.OtherFocusReason)

    def _stay_with_chosen(self) -> None:
        """It is the chosen one, however much it looks like another."""
        self._batch_sure = True
        self.work_out()
        self.keep_button.setFocus(Qt.FocusReason.OtherFocusReason)

    def _of_another(self) -> None:
        """Follow the lot and the moment that are chosen."""
        if self._now is None or self._standing is None:
            return
        self._read_of(self._standing, self._now.farm)
        lot = self._now.powder.lot
        self.no_lot.setVisible(lot is None)
        self.lot.setVisible(lot is not None)
        self._head()
        self.batch_form.show_farm(self._now)
        self.whose.setVisible(self.batch_form.group.count() > 1)
        self.work_out()

    def _head(self) -> None:
        """Name the lot that is told of: over what was kept stays the lot that it was kept for."""
        lot = self._now.powder.lot if self._now else None
        if lot is not None and self._kept is None:
            self.lot.setText(self._lot_words(lot))

    def _read_of(self, standing: Standing, farm: Farm) -> None:
        """What checks of the chosen lot rest on, read only where another lot or another weigh-in counts."""
        chosen, at = self.occasion.chosen(), self.occasion.at() or self.desk.clock()
        lot_id = chosen.lot.id if chosen else ""
        weighed = sum(signed.lot_id == lot_id and signed.at <= at for signed in standing.sign_offs)
        wanted = (lot_id, weighed, at.astimezone().date())
        if wanted == self._read_for:
            return
        try:
            self._now = farm_now(self.desk.records, farm, standing, at, lot_id)
            self._read_for = wanted
        except CannotCompute as error:
            self.desk.say(in_words(error))

    def _lot_words(self, lot: Lot) -> str:
        told = self.tr("Lot {number} {product}").format(number=lot.lot_number, product=lot.product)
        at = self.occasion.at()
        if self.occasion.is_now() or at is None:
            return told
        return self.tr("{lot}, {day} at {time}").format(
            lot=told, day=day_text(at.astimezone().date()), time=clock_text(at.astimezone().time())
        )

    def work_out(self) -> None:
        """What the fields say now."""
        batch = self.batch_form.batch()
        if batch is None or self._tools is None:
            return
        self.readings.show_vessel(batch.vessel)
        self.readings.show_batch_volume(batch.mix.volume_ml if batch.mix else None)
        readings, aim = self.readings.readings(), self.batch_form.aim()
        at = self.occasion.at() or self.desk.clock()
        unread = self.readings.unread()
        right, others = self._right_brix(batch, aim, at), self._right_density(batch, aim, readings, at)
        self.readings.show_right(right, others)
        told = [] if unread else readings
        corrected = self._again is not None and self._again.verdict in OFF and self._again.id != self._not_again
        self._found = work_out(batch, told, aim, self._tools, at, corrected=corrected, batch_sure=self._batch_sure)
        if self.readings.pending():
            self._kept = None
        if self._kept is None:
            self._head()
            form = self.batch_form
            stale = self._stale(readings, self._tools)
            whose = form.whose(by_volume=any(each.kind in VOLUME_KINDS for each in readings))
            other = form.name_of(self._found.other) if self._found.other else ""
            reread = self._reread()
            self._told = Told(
                self._found,
                batch,
                unread=unread,
                stale=stale,
                right_brix=right if self._told_of(InstrumentKind.REFRACTOMETER, readings) else None,
                right_density=tuple(each for each in others if self._told_of(each.kind, readings)),
                kind=self.readings.kind,
                whose=whose,
                assumed=form.group_assumed,
                other=other,
                read_before=reread,
                same=reread is not None and reread.id != self._not_again,
            )
        self._show_told()
        lot_known = self._now is not None and self._now.powder.lot is not None
        self.keep_button.setEnabled(bool(readings) and not unread and lot_known)

    def _told_of(self, kind: InstrumentKind, readings: list[Reading]) -> bool:
        """Whether it is told what such an instrument would show: it is at hand, or was read."""
        read = {reading.kind for reading in readings}
        kinds = {
            InstrumentKind.REFRACTOMETER: set(BRIX_KINDS),
            InstrumentKind.HYDROMETER: {ReadingKind.HYDROMETER_SG},
            InstrumentKind.JUG: {ReadingKind.JUG_MASS},
        }
        return self.readings.kind is kind or not read.isdisjoint(kinds[kind])

    def _right_brix(self, batch: Batch, aim: Aim | None, at: datetime) -> float | None:
        if aim is None or self._tools is None or not self.readings.in_brix:
            return None
        return right_brix(batch, aim, self._tools, self.readings.refractometer_id, at)

    def _right_density(
        self, batch: Batch, aim: Aim | None, readings: list[Reading], at: datetime
    ) -> tuple[RightReading, ...]:
        """Of hydrometer and jug, where the farm has them."""
        if aim is None or self._tools is None:
            return ()
        ways = (
            (right_sg, self.readings.hydrometer_id),
            (right_in_jug, self.readings.jug_id),
        )
        found = []
        for right, tool_id in ways:
            if tool_id:
                with suppress(CannotCompute):  # what cannot be in readings, aim or jug is told with the verdict
                    found.append(right(batch, aim, self._tools, readings, tool_id, at))
        return tuple(found)

    def _show_told(self) -> None:
        """Tell what is typed, or what was kept last, in the units of now."""
        if self._told is None:
            return
        if self._kept is not None:
            reread, same = self._kept.reread, bool(self._kept.check.same_batch_as)
            self._told = replace(self._told, read_before=reread, same=same)
        self.verdict.show_told(self._told, self.desk.system)
        if self._kept is not None:
            self.verdict.show_kept(self._kept_words(self._kept.at), self._now_words(self._told.found))

    def _stale(self, readings: list[Reading], tools: Tools) -> str:
        """Thermometers and jugs that were used and whose check does not hold; the others tell it themselves."""
        read_with = (ReadingKind.JUG_MASS, *TEMPERATURES)
        used = [tools.find(name) for name in dict.fromkeys(r.instrument_id for r in readings if r.kind in read_with)]
        at = self.occasion.at() or self.desk.clock()
        told = self.tr("{name}: {state}.")
        return " ".join(
            told.format(name=t.name, state=state(t, tools, at)) for t in used if t and not holds(t, tools, at)
        )

    @property
    def found(self) -> MixFindings:
        return self._found

    def keep(self) -> None:
        """Keep the check as typed, with what was made of it."""
        wrong = self._first_wrong()
        if wrong is not None:
            wrong.line.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        check, reread = self._made(), self._reread()
        if check is None:
            return
        if reread is not None:
            check = replace(check, same_batch_as=ANOTHER if reread.id == self._not_again else reread.id)
        judged = self._found.judged  # before the fields are emptied
        kept = self._tell(check)
        if kept is not None:
            self._show_kept(kept, reread)
            told = self.tr("The check is kept: {verdict}.")
            verdict = self.tr("no verdict") if judged is None else leaning_words(judged)
            self.desk.say(told.format(verdict=verdict.lower()))
            self.kept.emit()

    def _show_kept(self, check: MixCheck, reread: MixCheck | None) -> None:
        """Empty the fields, and leave what was told where it is: it is read and carried out only now."""
        self._empty(Kept(check, self.desk.clock(), _in_use(self._standing), reread))

    def _kept_words(self, at: datetime) -> str:
        at = at.astimezone()
        told = self.tr("Kept on {day} at {time}. It stays in view until you type the next check.")
        return told.format(day=day_text(at.date()), time=clock_text(at.time()))

    def _now_words(self, found: MixFindings) -> str:
        """What is to be done once a check is kept; blank where nothing is."""
        if found.batch_doubted:
            return ""  # nothing was told to be added
        outside = found.judged is not None and found.judged.verdict.outside
        if found.at_odds and not outside:
            return self.tr("Look at these first. Then:")
        if found.at_odds:
            return self.tr("Look at these first, and type the fresh readings. Once something was added:")
        if found.correction is not None and found.correction.far_off:
            return self.tr("Stirred only? Type the fresh drops. Once something was added:")
        return self.tr("When this is done:") if outside else ""

    def read_again(self) -> None:
        """The same mix once more, after what was told was done: one that was surely off is put right by now."""
        before = self._kept.check if self._kept else None
        self.clear()
        self.batch_form.is_same()
        self._again = before
        if before is not None and before.verdict in OFF:
            self.note.set_text(self.tr("after correcting"))
        self.work_out()
        self.start()

    def pending(self) -> str:
        """What is typed and not kept; blank where nothing is."""
        return self.readings.pending() or self.note.text() or self.occasion.pending()

    def clear(self) -> None:
        """Empty the readings; the batch stays for the next check, which is of the lot in use and of now again."""
        self._empty()

    def _empty(self, kept: Kept | None = None) -> None:
        """Make room for the next check; what was `kept` goes on to be told."""
        self._kept, self._again, self._not_again, self._batch_sure = kept, None, "", False
        self.batch_form.ask_again()
        self.readings.clear()
        self.note.set_text("")
        self.occasion.clear()
        self._of_another()
        self.start()

    def come_anew(self) -> None:
        """Who comes back after a change-over is not told what was kept of the lot before: of that the history tells.

        While the page stays in view it stays too: it may be under way to be carried out.
        """
        if self._kept is not None and self._kept.in_use != _in_use(self._standing):
            self._kept = None
            self._of_another()

    def take_up(self, check: MixCheck) -> None:
        """Check the batch of an earlier check again, unless another one is being typed."""
        if not self.pending():
            self.batch_form.take_up(check)
            self.work_out()

    def start(self) -> None:
        """Put the cursor where the first reading is typed, in view from its top."""
        self._area.verticalScrollBar().setValue(0)
        self.readings.begins.line.setFocus(Qt.FocusReason.OtherFocusReason)

    def _first_wrong(self) -> TextField | Amount | None:
        when = self.occasion.first_wrong()
        if when is not None:
            return when
        aims = [field for field in (self.batch_form.target, self.batch_form.tolerance) if not field.understood()]
        return aims[0] if aims else self.readings.first_wrong()

    def _made(self) -> MixCheck | None:
        batch, aim = self.batch_form.batch(), self.batch_form.aim()
        readings, at = self.readings.readings(), self.occasion.at()
        if at is None or batch is None or aim is None or batch.now.powder.lot is None or not readings:
            return None
        found = self._found
        return MixCheck(
            id=new_id(),
            farm_id=batch.now.farm.id,
            at=at,
            lot_id=batch.now.powder.lot.id,
            readings=tuple(readings),
            target_share=aim.target_share,
            target_typed=self.batch_form.target.told(),
            tolerance_share=aim.tolerance_share,
            tolerance_typed=self.batch_form.tolerance.told(),
            by=self.desk.initials,
            feeder=self.batch_form.feeder.text(),
            plan_id=batch.plan.id if batch.plan else None,
            group_name=batch.group.name if batch.group else "",
            calves=batch.calves,
            vessel_id=batch.vessel.id if batch.vessel else None,
            solids_share=found.best.share if found.best else None,
            solids_low=found.best.low if found.best else None,
            solids_high=found.best.high if found.best else None,
            way=found.best.way if found.best else "",
            verdict=found.judged.verdict if found.judged else "",
            note=self.note.text(),
            program_version=__version__,
        )

    def _make_batch(self) -> BatchCard:
        made = BatchCard(self.desk, self._group)
        made.occasion.edited.connect(self._of_another_typed)
        made.batch_form.edited.connect(self._batch_typed)
        enter_moves_on(made, self.focusNextChild)
        return made

    def _lay_out(self) -> None:
        self.lot = label("", "quiet")
        self.no_lot = label(
            self.tr(
                "No lot is in use. Choose below which lot this was mixed from, or sign off a weigh-in; checks are kept "
                "for a lot."
            ),
            "caution",
        )
        self.other_ways = label(self.tr("A hydrometer or a weighed jug tells the solids too."), "quiet")
        self.no_tools = button(self.tr("En&ter your instruments"), self.instruments_wanted.emit, "link")
        # From the outside in: whatever is filled already is dressed anew by the style sheet at each place it is put in.
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, int(1.5 * SPACE), 0, 0)
        layout.setSpacing(SPACE)
        left, told = QWidget(), QWidget()
        self._area = beside(left, told)
        layout.addWidget(self._area, 1)
        inside = QVBoxLayout(left)
        inside.setContentsMargins(0, 0, 0, 0)
        inside.setSpacing(int(1.5 * SPACE))
        inside.addWidget(card(self.other_ways, row(self.no_tools, None), self.whose, self.readings, self.note))
        inside.addWidget(self._batch)
        inside.addStretch(1)
        # What is told of the lot stands beside the fields: it grows while day and time are typed.
        self.verdict.head(self.lot)
        right = column(self.no_lot, self.verdict)
        right.setContentsMargins(0, 0, 0, 0)
        told.setLayout(right)
        layout.addLayout(row(self.keep_button, self.clear_button, None))
        enter_moves_on(self)


def _in_use(now: Standing | None) -> str:
    return now.in_use.lot.id if now and now.in_use else ""
