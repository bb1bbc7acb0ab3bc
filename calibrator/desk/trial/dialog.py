"""The trial: who, which scoop, a weight and Enter, the next one; beside it what the fills say."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtGui import QCloseEvent, QKeyEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import QDialog, QListWidget, QListWidgetItem, QSizePolicy, QWidget

from calibrator.desk.as_typed import as_typed
from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.fields import TextField, focus_on
from calibrator.desk.help.hands import dust, level_fills
from calibrator.desk.help.view import hands_button
from calibrator.desk.how.of_trial import of_trial
from calibrator.desk.how.view import how_button
from calibrator.desk.how.working import Working
from calibrator.desk.parts import button, card, column, framed, label, row, scrolled, set_style_property
from calibrator.desk.plain_text import LONGEST_LINE, on_screen
from calibrator.desk.speech import decimal_comma
from calibrator.desk.theme import SPACE
from calibrator.desk.trial.choice import TrialChoice
from calibrator.desk.trial.told import TrialTold
from calibrator.desk.trial.words import asked_words
from calibrator.desk.trial.work import TAKEN_BACK, TrialWork, doubt
from calibrator.desk.widgets.fitting import fit, whole
from calibrator.desk.widgets.saying import Held
from calibrator.desk.words import usual_slips
from calibrator.model import Farm, FillWay, TrialFill
from calibrator.science.plausible import Doubt
from calibrator.units import Kind, show_mass

WIDTH, HEIGHT, LEAST_PX = 1000, 760, 140


class TrialDialog(QDialog):
    """Everything typed is kept at Enter; closing loses nothing, and the trial is there on return."""

    def __init__(self, desk: Desk, farm: Farm, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.desk = desk
        self.work = TrialWork(desk.records, farm, desk.clock)
        self.setWindowTitle(self.tr("Trial of feeders"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.choice = TrialChoice(desk.records, farm)
        self.person = TextField(self.tr("Who fills"))
        self.weight = Amount(desk, self.tr("Weight of the scoopful"), Kind.MASS)
        self.by = TextField(self.tr("Typed by"), longest=12)
        self.enter_button = button(self.tr("Ente&r"), self.enter, "main")
        self.undo_button = button(self.tr("&Undo"), self.take_back)
        self.strike_button = button(self.tr("Str&ike out …"), self._strike_or_restore)
        self.new_button = button(self.tr("&New trial"), self._begin_anew)
        self.end_button = button(self.tr("En&d the trial"), self._end_or_go_on)
        self.withdraw_button = button(self.tr("&Withdraw …"), self._withdraw_or_count)
        self.note = TextField(self.tr("Note"), longest=200)
        self.fills = QListWidget()
        self.next = Held("heading")
        self.told = TrialTold(self._mass, how_button(self.workings))
        self._lay_out()
        self._wire()
        self.by.set_text(desk.initials)
        fit(self, WIDTH, HEIGHT)
        self.refresh()

    def enter(self) -> None:
        """Keep the weight; the field is free for the next one."""
        setting, person = self.choice.setting(), self.person.text()
        if not person:
            self.person.say(self.tr("Say whose fill this is."), wrong=True)
            focus_on(self.person)
            return
        if not self.by.text():
            self.by.say(self.tr("Say who types."), wrong=True)
            focus_on(self.by)
            return
        found = self.weight.quantity()
        if setting is None or not self.weight.understood() or found is None:
            self.weight.line.setFocus(Qt.FocusReason.OtherFocusReason)
            self.weight.line.selectAll()
            return
        if setting.way is FillWay.TO_MARK and setting.mark is None:
            self.weight.say(self.tr("This scoop has no line for this lot yet. Fill it struck level."), wrong=True)
            return
        if (why := doubt(setting, found.value)) is not None:
            self.weight.say(_doubt_words(why), wrong=True)
            self.weight.line.selectAll()
            return
        self.desk.initials = self.by.text()
        act = partial(self.work.add, setting, person, found.value, self.weight.told(), self.by.text())
        if self._done(act):
            self.weight.set_value(None)
        where = self.weight.line if self.work.missing(person) else self.person.line
        where.setFocus(Qt.FocusReason.OtherFocusReason)
        where.selectAll()

    def take_back(self) -> None:
        """The last fill no longer counts; it stays visible."""
        newest = self.work.newest()
        if newest is not None:
            self._done(partial(self.work.strike, newest, TAKEN_BACK, self._who()))
        self.weight.line.setFocus(Qt.FocusReason.OtherFocusReason)

    def pending(self) -> str:
        """What is typed and not kept; blank where all is."""
        return self.weight.text()

    def closeEvent(self, event: QCloseEvent) -> None:
        """A weight that is typed but not entered is not lost by a slip, nor is a note."""
        if not self._note_kept():
            event.ignore()
            return
        if not self.pending():
            event.accept()
            return
        event.ignore()
        self.desk.ask.confirm(
            self.tr("A weight is typed but not entered. Close without it?"), self.tr("Close"), self._leave
        )

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter goes on to the weight and keeps it; a dialog would press the first button that it finds as well."""
        if event.key() not in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            super().keyPressEvent(event)

    def reject(self) -> None:
        self.close()

    def workings(self) -> tuple[Working, ...]:
        """How the verdicts came about."""
        found = self.work.findings()
        return of_trial(found, self.desk.system) if found else ()

    def refresh(self) -> None:
        """Show what is kept."""
        begun = self.work.trial
        self.choice.show_trials(self.work.trials(), begun)
        may = self.work.open and not self.work.retired() and self.choice.setting() is not None
        for widget in (self.person, self.weight, self.by, self.enter_button):
            widget.setEnabled(may)
        self.undo_button.setEnabled(self.work.open and self.work.newest() is not None)
        for widget in (self.new_button, self.withdraw_button, self.note):
            widget.setEnabled(begun is not None)
        self.end_button.setEnabled(begun is not None and begun.counts and (self.work.open or not self.work.retired()))
        self.end_button.setText(self.tr("En&d the trial") if self.work.open else self.tr("&Go on with it"))
        counted = begun is None or begun.counts
        self.withdraw_button.setText(self.tr("&Withdraw …") if counted else self.tr("Count again"))
        if not self.note.busy:
            self.note.set_text(begun.note if begun else "")
        self._show_fills()
        self._tell_next()
        self.told.tell(self.work)

    def _leave(self) -> None:
        self.weight.set_value(None)
        self.done(0)  # asked within a close, another close would be ignored

    def _done(self, act: Callable[[], object]) -> bool:
        kept = self.desk.attempt(act) is not None
        if not kept:
            self.work.read()
        self.refresh()
        return kept

    def _who(self) -> str:
        return self.by.text() or self.desk.initials

    def _tell_next(self) -> None:
        self.next.setText(self._next_words())

    def _next_words(self) -> str:
        begun, person = self.work.trial, self.person.text()
        if begun is not None and not begun.counts:
            return self.tr("This trial is withdrawn.")
        if begun is not None and begun.closed:
            return self.tr("This trial is closed.")
        if self.work.retired():
            return self.tr("The scoop or the scale of this trial is no longer used: begin a new trial.")
        if self.choice.setting() is None:
            return self.tr("Enter a lot, a scoop and a scale first: on the pages of the lots and of the setup.")
        return asked_words(person, self.work.missing(person))

    def _show_fills(self) -> None:
        self.fills.clear()
        for fill in reversed(self.work.fills):
            item = QListWidgetItem(self._fill_words(fill))
            item.setData(Qt.ItemDataRole.UserRole, fill)
            font = item.font()
            font.setStrikeOut(not fill.counts)
            item.setFont(font)
            self.fills.addItem(item)
        self._choose_strike_word()

    def _fill_words(self, fill: TrialFill) -> str:
        words = self.tr("{number}.  {name}  {mass}").format(
            number=fill.number, name=on_screen(fill.person, LONGEST_LINE), mass=self._read(fill)
        )
        if fill.counts:
            return words
        reason = self.tr("taken back") if fill.struck_reason == TAKEN_BACK else on_screen(fill.struck_reason or "")
        return self.tr("{fill} – does not count: {reason}").format(fill=words, reason=reason)

    def _mass(self, mass_g: float) -> str:
        step = self.choice.step_g()
        return show_mass(mass_g, self.desk.system, resolution_g=step, decimal_comma=decimal_comma())

    def _read(self, fill: TrialFill) -> str:
        return as_typed(fill.mass_g, fill.typed, self.desk.system, resolution_g=self.choice.step_g())

    def _selected(self) -> TrialFill | None:
        item = self.fills.currentItem()
        fill = item.data(Qt.ItemDataRole.UserRole) if item is not None else None
        return fill if isinstance(fill, TrialFill) else None

    def _strike_or_restore(self) -> None:
        fill = self._selected()
        if fill is None:
            return
        if not fill.counts:
            self._done(partial(self.work.restore, fill, self._who()))
            return
        question = self.tr("Why should {mass} by {name} not count?")
        told = question.format(mass=self._read(fill), name=on_screen(fill.person))
        self.desk.ask.reason(told, partial(self._strike_because, fill), usual_slips(FillWay.LEVEL, of_a_lot=False))

    def _strike_by_key(self) -> None:
        """Delete is not to bring back what it took out of the count."""
        fill = self._selected()
        if fill is not None and fill.counts and self.strike_button.isEnabled():
            self._strike_or_restore()

    def _strike_because(self, fill: TrialFill, reason: str) -> None:
        self._done(partial(self.work.strike, fill, reason, self._who()))

    def _choose_strike_word(self) -> None:
        fill = self._selected()
        self.strike_button.setEnabled(fill is not None and self.work.open)
        counted = fill is None or fill.counts
        self.strike_button.setText(self.tr("Str&ike out …") if counted else self.tr("Count again"))

    def _begin_anew(self) -> None:
        if not self._note_kept() or (self.work.open and not self._done(partial(self.work.close, self._who()))):
            return
        self.work.show(None)
        self.person.set_text("")
        self.refresh()

    def _end_or_go_on(self) -> None:
        self._done(partial(self.work.close if self.work.open else self.work.go_on, self._who()))

    def _withdraw_or_count(self) -> None:
        begun = self.work.trial
        if begun is not None and begun.counts:
            self.desk.ask.reason(self.tr("Why should this trial not count?"), self._withdraw_because)
        elif begun is not None:
            self._done(partial(self.work.withdraw, "", self._who()))

    def _withdraw_because(self, reason: str) -> None:
        self._done(partial(self.work.withdraw, reason, self._who()))

    def _note_kept(self) -> bool:
        """Keep a note that is typed; False where it could not be kept, which was told."""
        begun, text = self.work.trial, self.note.text()
        if begun is None or text == begun.note:
            return True
        kept = self.desk.attempt(partial(self.work.note, text, self._who())) is not None
        if not kept:
            self.work.read()  # somebody else told it anew: the next try comes after that
        return kept

    def _choose_past(self, chosen: str) -> None:
        if self._note_kept():
            self.work.show(next((one for one in self.work.trials() if one.id == chosen), None))
        self.refresh()

    def _wire(self) -> None:
        self.weight.entered.connect(self.enter)
        self.person.entered.connect(self.weight.line.setFocus)
        self.person.edited.connect(self._tell_next)
        self.by.entered.connect(self.weight.line.setFocus)
        self.fills.currentItemChanged.connect(self._choose_strike_word)
        delete = QKeySequence.StandardKey.Delete
        QShortcut(delete, self.fills, self._strike_by_key, context=Qt.ShortcutContext.WidgetShortcut)
        self.choice.chosen.connect(self._choose_past)
        self.note.finished.connect(self._note_kept)

    def _lay_out(self) -> None:
        set_style_property(self.weight.line, "kind", "large")
        self.fills.setAccessibleName(self.tr("Fills, newest first"))
        who = row(self.person, self.by)
        who.setStretch(0, 3)
        who.setStretch(1, 1)
        entry = card(self.next, who, self.weight, row(self.enter_button, None, self.strike_button, self.undo_button))
        told = scrolled(self.told)
        for each in (self.fills, told):  # what scrolls by itself takes what is left
            each.setMinimumHeight(LEAST_PX)
            each.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Ignored)
        left, right = column(entry, self.fills), column(told, self.note)
        left.setStretch(1, 1)
        right.setStretch(0, 1)
        both = row(left, right, spacing=2 * SPACE)
        both.setStretch(0, 5)
        both.setStretch(1, 6)
        close = button(self.tr("Close"), self.close)
        close.setAutoDefault(False)
        foot = row(label(dust(), "caution"), close)
        foot.setStretch(0, 1)
        acts = (self.withdraw_button, self.end_button, self.new_button)
        inside = column(self.choice, row(hands_button(level_fills(), self.desk), None, *acts), both)
        inside.setStretch(2, 1)
        inside.setContentsMargins(0, 0, 0, 0)
        inner = QWidget()
        inner.setLayout(inside)
        body = framed(self)
        body.setSpacing(SPACE)
        body.addWidget(whole(inner), 1)
        body.addLayout(foot)


def _doubt_words(why: Doubt) -> str:
    from PySide6.QtCore import QCoreApplication

    return {
        Doubt.OVER_CAPACITY: QCoreApplication.translate("Trial", "That is more than this scale weighs. Type it again."),
        Doubt.TOO_HEAVY: QCoreApplication.translate("Trial", "No powder is as heavy as that. Look at the unit."),
        Doubt.TOO_LIGHT: QCoreApplication.translate("Trial", "No scoopful is as light as that. Look at the unit."),
    }[why]
