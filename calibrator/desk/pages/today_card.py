"""Today's calves: one large number a group, and at once what it takes."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFont, QResizeEvent
from PySide6.QtWidgets import QFrame, QLabel, QSizePolicy, QVBoxLayout, QWidget

from calibrator.desk.parts import Tone, clear, column, label, row, rule, set_tone
from calibrator.desk.sheets import GroupSheet, SheetLine
from calibrator.desk.table_words import (
    Telling,
    additives_text,
    delivered_words,
    each_text,
    error_words,
    filled_up_text,
    levels_text,
    light_words,
    longest_notes,
    longest_portions,
    portions_text,
    powder_text,
    scoops_text,
    split_text,
    telling,
    water_text,
)
from calibrator.desk.theme import SPACE, ui_font
from calibrator.desk.warmth import Warm
from calibrator.desk.warmth_words import warm_text
from calibrator.desk.widgets.count_field import CountField
from calibrator.desk.widgets.later import take_turn
from calibrator.desk.widgets.question import Question
from calibrator.desk.widgets.saying import text_height
from calibrator.model import PlanGroup, ScoopRule
from calibrator.science.as_fed import Rest

NUMBER_SCALE = 2.0
NAME_WIDTH = 148


class CalvesField(CountField):
    """A number that is typed all day: large, and at once in the table."""

    def __init__(self) -> None:
        super().__init__()
        self.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.setFont(ui_font(NUMBER_SCALE, QFont.Weight.Bold))
        self.setFixedWidth(NAME_WIDTH)


def _say(where: QLabel, text: str) -> None:
    """Show a text in a place that keeps its room once it was needed: else the table jumps at every digit.

    By its least height: what a label of our own answers to the layout at every digit would take twice as long.
    """
    if text != where.text():
        where.setText(text)
    if text and where.isHidden():
        where.show()
    if text and where.isVisible():
        _keep_at_least(where, where.heightForWidth(where.width()))


def _keep_at_least(where: QLabel, tall: int) -> None:
    if tall > where.minimumHeight():
        where.setMinimumHeight(tall)


class Figure(QWidget):
    """A figure with its caption above."""

    def __init__(self) -> None:
        super().__init__()
        self._caption = label("", "quiet", wrap=False)
        self.value = label("", "heading")
        self.note = label("", "quiet")
        self.note.setAlignment(Qt.AlignmentFlag.AlignTop)  # not in the middle of the room it keeps
        self._most = ""  # that may come to stand in the note
        # As wide as its part of the row, whatever it says: the row is not laid out anew for a longer figure.
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(2)
        for each in (self._caption, self.value, self.note):
            layout.addWidget(each)
        layout.addStretch(1)

    def name(self, caption: str) -> None:
        """Say what the figure is of."""
        if caption != self._caption.text():
            self._caption.setText(caption)
            self.setAccessibleName(f"{caption}: {self.value.text()}")

    def tell(self, value: str, note: str = "") -> None:
        """Show a figure and, small, a word on it."""
        if value != self.value.text():
            _say(self.value, value)
            self.setAccessibleName(f"{self._caption.text()}: {value}")
        self.say(note)

    def hold(self, note: str) -> None:
        """Keep room for a note that may come."""
        self._most = note
        self._keep_room()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():  # what a narrower one needed is needed no more
            for words in (self.value, self.note):
                words.setMinimumHeight(text_height(words, words.text(), self.width()) if words.text() else 0)
        self._keep_room()

    def _keep_room(self) -> None:
        if self._most:
            _keep_at_least(self.note, text_height(self.note, self._most, self.width()))

    def say(self, note: str, tone: Tone = "") -> None:
        _say(self.note, note)
        set_tone(self.note, tone)


class TodayRow(QWidget):
    """One group: how many calves today, and what their feeding takes."""

    typed = Signal(int, int)
    finished = Signal()

    def __init__(self, number: int, group: PlanGroup, alone: bool) -> None:
        super().__init__()
        self._number = number
        self._told: tuple[GroupSheet, Warm | None, Rest | None] | None = None
        self.calves = CalvesField()
        self.calves.set_count(group.calves)
        self.calves.counted.connect(self._typed)
        self.calves.editingFinished.connect(self.finished)
        self._caption = label("")
        self._caption.setFixedWidth(NAME_WIDTH)
        self._caption.setBuddy(self.calves)
        self._name(group, alone)
        self.water, self.powder, self.scoops = Figure(), Figure(), Figure()
        self._name_figures(1)
        self.more = label("", "quiet")
        self.question = Question(self.tr("Yes, it is"))
        for each in (self.more, self.question):
            each.hide()
        self._lay_out()

    def tell(self, sheet: GroupSheet, warm: Warm | None = None, rest: Rest | None = None) -> None:
        """Show what the group's table says for today, and how warm its water must be; or why it is not fed."""
        was, self._told = self._told, (sheet, warm, rest)
        if was and sheet.kin_of(was[0]) and (sheet.today, warm, rest) == (was[0].today, *was[1:]):
            return
        line, to = sheet.today_line, telling(sheet)
        if was is None or not sheet.kin_of(was[0]):
            self._keep_room(sheet, to)
        if line is None:
            self._name_figures(1)
            for figure in (self.water, self.powder, self.scoops):
                figure.tell("–")
            reasons = {
                Rest.WEANED: self.tr("weaned: no more milk"),
                Rest.NOT_NOW: self.tr("not at this feeding"),
            }
            self.water.say(reasons[rest] if rest else self.tr("Type how many calves there are today."))
            self.more.setText("")
            return
        self._name_figures(line.batches)
        self.water.tell(each_text(line, water_text(line.batch.drawn_ml, to)))
        by_water = self.tr("goes by the rounded volume") if line.batch.for_water else ""
        besides = (by_water, portions_text(line, to), additives_text(line, sheet, to))
        self.powder.tell(each_text(line, powder_text(line.powder_g, to)), "\n".join(filter(None, besides)))
        if sheet.rule.rule is ScoopRule.WEIGH:
            self.scoops.tell(scoops_text(line, to), self.tr("as the plan says"))
        elif not sheet.ways:
            retired = self.tr("no scoop in use is weighed in for this lot")
            self.scoops.tell("–", retired if sheet.signed_off else self.tr("no lot signed off"))
        elif sheet.lacks_its_scoop:
            self.scoops.tell("–", self.tr("the plan's scoop is retired, or not weighed in for this lot"))
        elif line.scoops is None:
            self.scoops.tell(scoops_text(line, to), self.tr("no count comes near enough"))
        elif not line.scoops.countable:
            told = (error_words(line, to), self.tr("Many to count: weighing is surer."))
            self.scoops.tell(scoops_text(line, to), ". ".join(text for text in told if text))
        else:
            told = (error_words(line, to), delivered_words(line, sheet))
            self.scoops.tell(scoops_text(line, to), ". ".join(text for text in told if text))
        self._tell_vessel(sheet, line, to)
        fill = filled_up_text(line, to)
        warmth = warm_text(line, warm, sheet.farm.hot_water, to) if warm else ""
        light = light_words(line.additives_g, to.least_additive_g, to.system)
        _say(self.more, "\n".join(text for text in (fill, levels_text(line, to), warmth, light) if text))

    def settled(self, doubt: str) -> bool:
        """Whether the count is not to be asked about; else it is."""
        settled = self.question.settled(doubt, doubt)
        if not settled:
            self.question.show()
        return settled

    def _name_figures(self, batches: int) -> None:
        """ "2 × 5" was read as two scoopfuls, or as the morning's and the evening's."""
        captions = self.tr("Water"), self.tr("Powder by weight"), self.tr("Scoopfuls")
        if batches > 1:
            captions = (
                self.tr("Water, {count} batches"),
                self.tr("Powder, {count} batches"),
                self.tr("Scoopfuls, {count} batches"),
            )
        for figure, caption in zip((self.water, self.powder, self.scoops), captions, strict=True):
            figure.name(caption.format(count=batches))

    def _keep_room(self, sheet: GroupSheet, to: Telling) -> None:
        split, counted = longest_notes(to)
        if sheet.table.vessel is not None:
            self.water.hold(split)
        if sheet.ways:
            self.scoops.hold(counted)
        if sheet.in_portions:
            self.powder.hold(longest_portions(to))

    def _tell_vessel(self, sheet: GroupSheet, line: SheetLine, to: Telling) -> None:
        vessel = sheet.table.vessel
        if vessel is None:
            self.water.say("")
        elif line.fits:
            self.water.say(self.tr("fits the {vessel}").format(vessel=vessel.name))
        else:
            self.water.say(split_text(line, to), "warn")

    def _name(self, group: PlanGroup, alone: bool) -> None:
        if alone:
            self._caption.setText(self.tr("C&alves today"))
        else:
            self._caption.setText(group.name.replace("&", "&&") or self.tr("Group"))  # Alt's numbers are the rail's
        told = self.tr("Calves today, {group}").format(group=group.name) if group.name else self.tr("Calves today")
        self.calves.setAccessibleName(told)

    def _typed(self, calves: int) -> None:
        self.typed.emit(self._number, calves)

    def _lay_out(self) -> None:
        body = QVBoxLayout(self)
        body.setContentsMargins(0, 0, 0, 0)
        body.setSpacing(SPACE // 2)
        line = row(column(self._caption, self.calves, None, spacing=SPACE // 2), spacing=2 * SPACE)
        for figure, stretch in ((self.water, 14), (self.powder, 11), (self.scoops, 18)):
            line.addWidget(figure, stretch)
        body.addLayout(line)
        self.more.setContentsMargins(NAME_WIDTH + 2 * SPACE, 0, 0, 0)
        body.addWidget(self.more)
        body.addWidget(self.question)


class TodayCard(QFrame):
    """Today's counts of a plan's groups. `typed` tells group and calves with every keystroke, `answered` that a count
    which was asked about is right."""

    typed = Signal(int, int)
    finished = Signal()
    answered = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setProperty("kind", "card")
        self.rows: list[TodayRow] = []
        self._names: list[str] = []
        self._layout = QVBoxLayout(self)
        self._layout.setContentsMargins(2 * SPACE, 2 * SPACE, 2 * SPACE, 2 * SPACE)
        self._layout.setSpacing(2 * SPACE)

    def show_groups(
        self,
        groups: Sequence[PlanGroup],
        sheets: Sequence[GroupSheet],
        warms: Sequence[Warm] = (),
        rests: Sequence[Rest | None] = (),
    ) -> None:
        """Show these groups; fields stay where they are as long as the groups are the same ones."""
        names = [group.name for group in groups]
        if names != self._names or len(self.rows) != len(groups):
            self._make_rows(groups)
            self._names = names
        for each, group in zip(self.rows, groups, strict=True):
            each.calves.set_count(group.calves)
        for number, (each, sheet) in enumerate(zip(self.rows, sheets, strict=False)):
            each.tell(
                sheet,
                warms[number] if number < len(warms) else None,
                rests[number] if number < len(rests) else None,
            )

    def settled(self, doubts: Sequence[str]) -> bool:
        """Whether no group's count is to be asked about; a doubt is told beneath the group it means, blank for none."""
        settled = [each.settled(doubt) for each, doubt in zip(self.rows, doubts, strict=True)]  # each tells its own
        return all(settled)

    def withdraw_questions(self) -> None:
        for each in self.rows:
            each.question.withdraw()

    def _make_rows(self, groups: Sequence[PlanGroup]) -> None:
        clear(self._layout)
        self.rows = [TodayRow(number, group, len(groups) == 1) for number, group in enumerate(groups)]
        for number, made in enumerate(self.rows):
            made.typed.connect(self.typed)
            made.finished.connect(self.finished)
            made.question.answered.connect(self.answered)
            if number:
                self._layout.addWidget(rule())
            self._layout.addWidget(made)
        take_turn(self, *self.rows)
