"""Fields with their caption above and room for a sentence beneath."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date

from PySide6.QtCore import QDate, QEvent, QLocale, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QGridLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from calibrator.clock import figures_month_first
from calibrator.desk.days import DayNotUnderstood, read_day
from calibrator.desk.parts import button, clear, label, row, set_style_property
from calibrator.desk.speech import day_text
from calibrator.desk.widgets.hint import hint
from calibrator.desk.widgets.saying import Saying
from calibrator.desk.widgets.stray_keys import SteadyLine

LONGEST_NAME = 60
_STEPS: dict[int, int] = {Qt.Key.Key_Down: 1, Qt.Key.Key_Right: 1, Qt.Key.Key_Up: -1, Qt.Key.Key_Left: -1}


class Captioned(QWidget):
    """A caption, any input beneath it, and a place of fixed height for a sentence beneath that.

    A choice among what is offered has nothing to say, and needs no such place.
    """

    def __init__(self, caption: str, field: QWidget, note: str = "", *, speaks: bool = True) -> None:
        super().__init__()
        self.caption = label(caption, wrap=False)
        self.caption.setBuddy(field)
        self.field = field
        field.setAccessibleName(caption.replace("&", ""))
        self._note = note
        self._message = Saying(field, note)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(3)
        for widget in (self.caption, field, self._message):
            layout.addWidget(widget)
        layout.addStretch(1)
        self._message.setVisible(speaks)
        self.say(note)

    @property
    def message(self) -> str:
        return self._message.text()

    def say(self, text: str, *, wrong: bool = False, care: bool = False, short: str = "") -> None:
        """Put a sentence beneath the field, wrong or to be heeded; a blank one brings the note back. `short` is what it
        can be told in where the field is narrow.
        """
        self._message.say(text, state="wrong" if wrong else "care" if care and text else "ok", short=short)
        self._message.point_out()
        set_style_property(self.field, "state", "wrong" if wrong else "")
        self.field.setAccessibleDescription(text or self._note)


class TextField(Captioned):
    """One line of text."""

    edited = Signal()
    finished = Signal()
    entered = Signal()

    def __init__(self, caption: str, note: str = "", *, longest: int = LONGEST_NAME) -> None:
        self.line = SteadyLine()
        self.line.setMaxLength(longest)
        super().__init__(caption, self.line, note)
        self.line.textEdited.connect(self._typed)
        self.line.editingFinished.connect(self.finished)
        self.line.returnPressed.connect(self.entered)

    def text(self) -> str:
        """What is typed, without spaces around it."""
        return " ".join(self.line.text().split())

    @property
    def wrong(self) -> bool:
        """Whether there is something in it to mend."""
        return bool(self.line.property("state") == "wrong")

    @property
    def busy(self) -> bool:
        """Whether the person is at it, or has something in it to mend."""
        return (self.line.hasFocus() and self.line.isModified()) or self.wrong

    def filled(self) -> bool:
        """Whether there is a text; says so beneath where there is none."""
        if not self.text():
            self.say(self.tr("Give it a name."), wrong=True)
        return bool(self.text())

    def set_text(self, text: str) -> None:
        self.line.setText(text)
        self.line.setCursorPosition(0)
        self.say("")

    def _typed(self) -> None:
        self.say("")
        self.edited.emit()


class Suggestions(QWidget):
    """Usual values to choose from with one press, in rows of `in_a_row` where that is given.

    The Tab key reaches them right after their own field, `after`, while that is blank: from one that was typed in, it
    goes on to the next figure. The Down key reaches them always, the arrow keys go through them, and Up from the first
    one back to the field.
    """

    chosen = Signal(str)

    def __init__(self, caption: str, after: QLineEdit, in_a_row: int = 0) -> None:
        super().__init__()
        self._after, self._in_a_row = after, in_a_row
        self._rows = QGridLayout(self)
        self._rows.setContentsMargins(0, 0, 0, 0)
        self._rows.setSpacing(0)
        self._rows.setColumnStretch(1, 1)
        self._caption = caption
        self._made: list[QPushButton] = []
        after.textChanged.connect(self._take_turn_while_blank)
        after.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """The arrow keys between the field and what is offered; the field tells of them where it is read aloud."""
        if watched is self._after and event.type() == QEvent.Type.FocusIn:
            self._tell_the_key()  # what is said beneath the field takes the place of what was told before
        if not isinstance(event, QKeyEvent) or event.type() != QEvent.Type.KeyPress:
            return False
        places: list[QWidget] = [self._after, *self._made]
        at = next((at for at, place in enumerate(places) if place is watched), 0)
        step = _STEPS.get(event.key(), 0) if at or event.key() == Qt.Key.Key_Down else 0
        if not step or not self._made:
            return False
        places[min(at + step, len(places) - 1)].setFocus(Qt.FocusReason.OtherFocusReason)
        return True

    def _tell_the_key(self) -> None:
        told, key = self._after.accessibleDescription(), self.tr("The Down key goes to what is often chosen.")
        if self._made and key not in told:
            self._after.setAccessibleDescription(f"{told} {key}".strip())

    def offer(self, texts: Sequence[str]) -> None:
        """Offer these instead."""
        clear(self._rows)
        self._rows.addWidget(label(self._caption, "quiet", wrap=False), 0, 0)
        self._made = []
        before: QWidget = self._after
        for at, text in enumerate(texts):
            made = button(text, self._pressed, "link")
            made.setAccessibleName(f"{self._caption} {text}")
            made.installEventFilter(self)
            self._made.append(made)
            down, across = divmod(at, self._in_a_row or len(texts))
            if across == 0:
                line = row(None, spacing=0)
                self._rows.addLayout(line, down, 1)
            line.insertWidget(line.count() - 1, made)
            QWidget.setTabOrder(before, made)
            before = made
        self._take_turn_while_blank(self._after.text())
        self._tell_the_key()

    def _take_turn_while_blank(self, text: str) -> None:
        for made in self._made:
            made.setFocusPolicy(Qt.FocusPolicy.ClickFocus if text else Qt.FocusPolicy.StrongFocus)

    def _pressed(self) -> None:
        pressed = self.sender()
        if isinstance(pressed, QPushButton):
            self.chosen.emit(pressed.text())


class DayField(TextField):
    """A day typed as people do; says which day it understood, may stay empty. Days to come only where they are let
    in."""

    def __init__(self, caption: str, today: Callable[[], date]) -> None:
        super().__init__(caption, longest=40)
        self._today, self._ahead = today, 0
        self._blank_means = ""
        self.edited.connect(self._judge)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Both ways to write a day, or in a narrow field one of them; or what a blank field means."""
        super().resizeEvent(event)
        if not self._blank_means:
            hint(self.line, self.tr("{day} or 2026-03-02").format(day=_example()), _example())

    def set_blank_means(self, text: str) -> None:
        """Say in grey which day a blank field stands for."""
        self._blank_means = text
        self.line.setPlaceholderText(text)

    def let_in(self, ahead: int) -> None:
        """Take a day up to so many days ahead."""
        self._ahead = ahead

    def day(self) -> date | None:
        """The day, None where the field is empty. Raises DayNotUnderstood."""
        order = figures_month_first()
        return read_day(self.line.text(), self._today(), month_first=order, ahead=self._ahead)

    def set_day(self, day: date | None) -> None:
        self.set_text(day_text(day) if day else "")

    def understood(self) -> bool:
        """Whether the field holds a day or nothing; the sentence beneath tells what is wrong."""
        return self._judge()

    def _judge(self) -> bool:
        try:
            day = self.day()
        except DayNotUnderstood as error:
            self.say(self._sentence(error), wrong=True, short=self._in_short(error))
            return False
        another = day is not None and self._of_another_year(day)
        self.say(_long(day) if day else "", care=another, short=day_text(day) if day else "")
        return True

    def _of_another_year(self, day: date) -> bool:
        """Whether a day typed without its year was taken for one of another year than this."""
        return day.year != self._today().year and str(day.year) not in self.line.text()

    def _sentence(self, error: DayNotUnderstood) -> str:
        days = [day_text(day) for day in error.days]
        if error.code == "two_ways":
            text = self.tr("This can be read two ways. Write {one} or {other}.")
            return text.format(one=days[0], other=days[1])
        if error.code == "other_order":
            return self.tr("Was {day} meant? Then write it like this.").format(day=days[0])
        if error.code == "too_far":
            return self.tr("{day} is too far ahead.").format(day=days[0])
        if error.code == "to_come":
            return self.tr("{day} is still to come.").format(day=days[0])
        if error.code == "too_early":
            return self.tr("{day} is too long ago.").format(day=days[0])
        if error.code == "no_such_day":
            return self.tr("There is no such day. Write it like {day}.").format(day=_example())
        text = self.tr("Write the day with month and full year, like {day} or 2026-03-02.")
        return text.format(day=_example())

    def _in_short(self, error: DayNotUnderstood) -> str:
        """For a narrow field, where there is something to choose."""
        days = [day_text(day) for day in error.days]
        if error.code == "two_ways":
            return self.tr("{one} or {other}?").format(one=days[0], other=days[1])
        return self.tr("{day}?").format(day=days[0]) if error.code == "other_order" else ""


def _example() -> str:
    return day_text(date(2026, 3, 2))


def _long(day: date) -> str:
    return QLocale().toString(QDate(day.year, day.month, day.day), QLocale.FormatType.LongFormat)


def focus_on(field: TextField) -> None:
    """Take the person to a field that has to be mended."""
    field.line.setFocus(Qt.FocusReason.OtherFocusReason)
    field.line.selectAll()
