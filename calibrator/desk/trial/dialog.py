"""The trial: who, which scoop, a weight and Enter, the next one; beside it what the fills say."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QSignalBlocker, Qt
from PySide6.QtGui import QCloseEvent
from PySide6.QtWidgets import QComboBox, QDialog, QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.fields import Captioned, TextField, focus_on
from calibrator.desk.help.hands import dust, level_fills
from calibrator.desk.help.view import hands_button
from calibrator.desk.how.of_trial import of_trial
from calibrator.desk.how.view import how_button
from calibrator.desk.how.working import Working
from calibrator.desk.parts import button, card, column, label, row, scrolled, set_style_property
from calibrator.desk.plain_text import LONGEST_LINE, on_screen
from calibrator.desk.speech import day_text, decimal_comma
from calibrator.desk.theme import SPACE
from calibrator.desk.trial.picture import Row, TrialPicture
from calibrator.desk.trial.words import asked_words, figures_words, finding_words, person_words
from calibrator.desk.trial.work import TAKEN_BACK, Setting, TrialWork, doubt
from calibrator.model import Farm, FillWay, Lot, Scale, Scoop, TrialFill
from calibrator.science.plausible import Doubt
from calibrator.science.stats import mean_of
from calibrator.units import Kind, show_mass

WIDTH, HEIGHT = 940, 640


class TrialDialog(QDialog):
    """Everything typed is kept at Enter; closing loses nothing, and the trial is there on return."""

    def __init__(self, desk: Desk, farm: Farm, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.desk = desk
        self.work = TrialWork(desk.records, farm, desk.clock)
        self.setWindowTitle(self.tr("Trial of feeders"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.lot, self.scoop, self.scale, self.way = QComboBox(), QComboBox(), QComboBox(), QComboBox()
        self.past = QComboBox()
        self.person = TextField(self.tr("Who fills"))
        self.weight = Amount(desk, self.tr("Weight of the scoopful"), Kind.MASS)
        self.by = TextField(self.tr("Typed by"), longest=12)
        self.enter_button = button(self.tr("Enter"), self.enter, "main")
        self.undo_button = button(self.tr("Undo"), self.take_back)
        self.strike_button = button(self.tr("Strike out …"), self._strike_or_restore)
        self.new_button = button(self.tr("New trial"), self._begin_anew)
        self.fills = QListWidget()
        self.next = label("", "heading")
        self.finding, self.people, self.figures = label("", "heading"), label(""), label("", "quiet")
        self.picture = TrialPicture()
        self.how = how_button(self.workings)
        self._offer(farm)
        self._lay_out()
        self._wire()
        self.by.set_text(desk.initials)
        self.resize(WIDTH, HEIGHT)
        self.refresh()

    def enter(self) -> None:
        """Keep the weight; the field is free for the next one."""
        setting, person = self.setting(), self.person.text()
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

    def setting(self) -> Setting | None:
        """What the next fill is made with; None where the farm has no lot, scoop or scale."""
        lot, scoop, scale = (box.currentData() for box in (self.lot, self.scoop, self.scale))
        if not (isinstance(lot, Lot) and isinstance(scoop, Scoop) and isinstance(scale, Scale)):
            return None
        marks = self.desk.records.marks(scoop_id=scoop.id, lot_id=lot.id)
        return Setting(lot, scoop, scale, FillWay(self.way.currentData()), marks[-1] if marks else None)

    def pending(self) -> str:
        """What is typed and not kept; blank where all is."""
        return self.weight.text()

    def closeEvent(self, event: QCloseEvent) -> None:
        """A weight that is typed but not entered is not lost by a slip."""
        if not self.pending():
            event.accept()
            return
        event.ignore()
        self.desk.ask.confirm(
            self.tr("A weight is typed but not entered. Close without it?"), self.tr("Close"), self._leave
        )

    def reject(self) -> None:
        self.close()

    def workings(self) -> tuple[Working, ...]:
        """How the verdicts came about."""
        found = self.work.findings()
        return of_trial(found) if found else ()

    def refresh(self) -> None:
        """Show what is kept."""
        self._show_past()
        begun = self.work.trial
        fresh, may = begun is None, self.work.open and self.setting() is not None
        for box in (self.lot, self.scoop, self.scale, self.way):
            box.setEnabled(fresh)
        for widget in (self.person, self.weight, self.by, self.enter_button):
            widget.setEnabled(may)
        self.undo_button.setEnabled(self.work.open and self.work.newest() is not None)
        self.new_button.setEnabled(not fresh)
        self._show_chosen()
        self._show_fills()
        self._tell()

    def _leave(self) -> None:
        self.weight.set_value(None)
        self.done(0)  # asked within a close, another close would be ignored

    def _done(self, act: Callable[[], object]) -> bool:
        kept = self.desk.attempt(act) is not None
        self.refresh()
        return kept

    def _who(self) -> str:
        return self.by.text() or self.desk.initials

    def _tell(self) -> None:
        person = self.person.text()
        words = asked_words(person, self.work.missing(person)) if self.work.open else self.tr("This trial is closed.")
        if self.setting() is None:
            words = self.tr("Enter a lot, a scoop and a scale first: on the pages of the lots and of the setup.")
        self.next.setText(words)
        found = self.work.findings()
        way = self.work.trial.way if self.work.trial else FillWay.LEVEL
        for widget in (self.figures, self.how):
            widget.setVisible(found is not None)
        if found is None:
            self.finding.setText(self.tr("Five fills each, two people or more"))
            self.people.setText(
                self.tr(
                    "Everybody fills the same scoop from the same bag, one after another. It is no test of people: it "
                    "shows which move to practise."
                )
            )
        else:
            self.finding.setText(finding_words(found))
            self.people.setText("\n\n".join(person_words(one, way) for one in found.people))
            self.figures.setText(figures_words(found))
        self._draw(found.mean_g if found else None)

    def _draw(self, middle_g: float | None) -> None:
        told = {name: masses for name, masses in self.work.people().items() if masses}
        rows = tuple(Row(on_screen(name, LONGEST_LINE), tuple(own), mean_of(own)) for name, own in told.items())
        every = [mass for one in rows for mass in one.masses]
        ends = (self._mass(min(every)), self._mass(max(every))) if every else ("", "")
        self.picture.show_rows(rows, middle_g, ends)
        self.picture.setAccessibleName(self.tr("Each person's fills"))
        self.picture.setAccessibleDescription("; ".join(f"{one.name}: {self._mass(one.mean_g)}" for one in rows))

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
            number=fill.number, name=on_screen(fill.person, LONGEST_LINE), mass=self._mass(fill.mass_g)
        )
        if fill.counts:
            return words
        reason = self.tr("taken back") if fill.struck_reason == TAKEN_BACK else on_screen(fill.struck_reason or "")
        return self.tr("{fill} – does not count: {reason}").format(fill=words, reason=reason)

    def _mass(self, mass_g: float) -> str:
        scale = self.scale.currentData()
        step = scale.resolution_g if isinstance(scale, Scale) else None
        return show_mass(mass_g, self.desk.system, resolution_g=step, decimal_comma=decimal_comma())

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
        told = question.format(mass=self._mass(fill.mass_g), name=on_screen(fill.person))
        self.desk.ask.reason(told, partial(self._strike_because, fill))

    def _strike_because(self, fill: TrialFill, reason: str) -> None:
        self._done(partial(self.work.strike, fill, reason, self._who()))

    def _choose_strike_word(self) -> None:
        fill = self._selected()
        self.strike_button.setEnabled(fill is not None and self.work.open)
        counted = fill is None or fill.counts
        self.strike_button.setText(self.tr("Strike out …") if counted else self.tr("Count again"))

    def _begin_anew(self) -> None:
        if self.work.open and not self._done(partial(self.work.close, self._who())):
            return
        self.work.show(None)
        self.person.set_text("")
        self.refresh()

    def _choose_past(self) -> None:
        chosen = self.past.currentData()
        self.work.show(next((one for one in self.work.trials() if one.id == chosen), None))
        self.refresh()

    def _show_past(self) -> None:
        blocker = QSignalBlocker(self.past)
        self.past.clear()
        kept = self.work.trials()
        if self.work.trial is None:
            self.past.addItem(self.tr("a new trial"), "")
        for one in reversed(kept):
            self.past.addItem(day_text(one.started_at.astimezone().date()), one.id)
        self.past.setCurrentIndex(max(0, self.past.findData(self.work.trial.id if self.work.trial else "")))
        blocker.unblock()

    def _show_chosen(self) -> None:
        """What the trial was begun with."""
        begun = self.work.trial
        if begun is None:
            return
        for box, id in ((self.lot, begun.lot_id), (self.scoop, begun.scoop_id), (self.scale, begun.scale_id)):
            place = next((n for n in range(box.count()) if box.itemData(n).id == id), -1)
            box.setCurrentIndex(place)
        self.way.setCurrentIndex(self.way.findData(begun.way.value))

    def _offer(self, farm: Farm) -> None:
        records = self.desk.records
        for lot in reversed(records.every(Lot, farm.id)):
            self.lot.addItem(on_screen(lot.lot_number, LONGEST_LINE), lot)
        for scoop in records.every(Scoop, farm.id):
            self.scoop.addItem(on_screen(scoop.name, LONGEST_LINE), scoop)
        for scale in records.every(Scale, farm.id):
            self.scale.addItem(on_screen(scale.name, LONGEST_LINE), scale)
        self.way.addItem(self.tr("struck level"), FillWay.LEVEL.value)
        self.way.addItem(self.tr("to the line"), FillWay.TO_MARK.value)
        for box in (self.lot, self.scoop, self.scale, self.past):
            box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
            box.setMinimumContentsLength(10)

    def _wire(self) -> None:
        self.weight.entered.connect(self.enter)
        self.person.entered.connect(self.weight.line.setFocus)
        self.person.edited.connect(self._tell)
        self.by.entered.connect(self.weight.line.setFocus)
        self.fills.currentItemChanged.connect(self._choose_strike_word)
        self.past.activated.connect(self._choose_past)

    def _lay_out(self) -> None:
        set_style_property(self.weight.line, "kind", "large")
        self.fills.setAccessibleName(self.tr("Fills, newest first"))
        chosen = row(
            Captioned(self.tr("Lot"), self.lot), Captioned(self.tr("Scoop"), self.scoop),
            Captioned(self.tr("Scale"), self.scale), Captioned(self.tr("Filled"), self.way),
            Captioned(self.tr("Trial of"), self.past),
        )  # fmt: skip
        who = row(self.person, self.by)
        who.setStretch(0, 3)
        who.setStretch(1, 1)
        entry = card(self.next, who, self.weight, row(self.enter_button, None, self.undo_button))
        left = column(entry, self.fills, row(self.strike_button, None, self.new_button))
        told = QWidget()
        inside = QVBoxLayout(told)
        inside.setContentsMargins(0, 0, 0, 0)
        for widget in (self.finding, self.picture, self.people, self.figures):
            inside.addWidget(widget)
        inside.addLayout(row(self.how, None))
        inside.addStretch(1)
        right = column(scrolled(told))
        both = row(left, right, spacing=2 * SPACE)
        both.setStretch(0, 5)
        both.setStretch(1, 6)
        close = button(self.tr("Close"), self.close)
        close.setAutoDefault(False)
        foot = row(label(dust(), "caution"), close)
        foot.setStretch(0, 1)
        body = QVBoxLayout(self)
        body.setSpacing(SPACE)
        body.addLayout(chosen)
        body.addLayout(row(hands_button(level_fills()), None))
        body.addLayout(both, 1)
        body.addLayout(foot)


def _doubt_words(why: Doubt) -> str:
    from PySide6.QtCore import QCoreApplication

    return {
        Doubt.OVER_CAPACITY: QCoreApplication.translate("Trial", "That is more than this scale weighs. Type it again."),
        Doubt.TOO_HEAVY: QCoreApplication.translate("Trial", "No powder is as heavy as that. Look at the unit."),
        Doubt.TOO_LIGHT: QCoreApplication.translate("Trial", "No scoopful is as light as that. Look at the unit."),
    }[why]
