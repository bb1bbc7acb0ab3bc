"""The field for a weight, volume, length, temperature, percentage or count; it says what it understood."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from math import isclose

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QKeySequence, QResizeEvent
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget

from calibrator.desk.parts import set_style_property
from calibrator.desk.speech import decimal_comma, figure_text
from calibrator.desk.widgets.hint import hint
from calibrator.desk.widgets.saying import Saying
from calibrator.desk.widgets.stray_keys import SteadyLine
from calibrator.desk.widgets.unit_sentences import sentence
from calibrator.model import UnitSystem
from calibrator.units import Kind, NotUnderstood, Quantity, edit_text, example, read, show_length, with_unit

_MANY_UNITS = frozenset({Kind.MASS, Kind.VOLUME, Kind.LENGTH})  # each system has more than one unit for these


class EntryLine(SteadyLine):
    """A line whose Enter is its own: it never reaches a dialog's default button, held down it counts once."""

    entered = Signal()

    def event(self, event: QEvent) -> bool:
        """While the line is blank, undo and redo are the page's."""
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.ShortcutOverride and not self.text():
            keys = QKeySequence.StandardKey
            if event.matches(keys.Undo) or event.matches(keys.Redo):
                event.ignore()
                return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() not in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            super().keyPressEvent(event)
            return
        event.accept()
        if not event.isAutoRepeat():
            self.entered.emit()


class QuantityField(QWidget):
    """A plain line that reads what people type, and a quiet line beneath that says what it understood.

    While a person types, it tells what it understands at once; what is wrong it tells when they press Enter
    or leave, and then keeps telling until it is mended. The text always stays for mending.

    `understood(object)` brings the new Quantity, or None, when typing has changed it; never when the program
    sets it. `editingFinished` comes before `returnPressed`, so that what was typed is taken before the page
    moves on. A number without a unit has that of the example: the usual one of the system, or of `examples`, one each,
    where the usual one would be odd. `must_name` are two units of which one must be written. `lowest` and `highest`
    are in the kind's base unit. `note` stands beneath where there is nothing else to say. Where `ruled`, the program
    tells a value as a line is told everywhere, to the nearest division.
    """

    understood = Signal(object)
    editingFinished = Signal()  # as on Qt's own line
    returnPressed = Signal()

    def __init__(
        self,
        kind: Kind,
        system: UnitSystem,
        *,
        name: str = "",
        required: bool = True,
        must_name: tuple[str, str] | None = None,
        lowest: float | None = None,
        highest: float | None = None,
        examples: Mapping[UnitSystem, str] | None = None,
        note: str = "",
        ruled: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._kind, self._system, self._required = kind, system, required
        self._default_unit: str | None = None
        self._lowest, self._highest = lowest, highest
        self._must_name, self._examples = must_name, examples
        self._filled: float | None = None  # the exact value behind a text that the program wrote
        self._from_outside, self._remark = "", ""
        self._telling = False
        self._example_shown = True
        self._last: Quantity | None = None
        self._line = EntryLine()
        self._note, self._ruled = note, ruled
        self._message = Saying(self._line, note)
        self._lay_out(name)
        self._line.textEdited.connect(self._typed)
        self._line.entered.connect(self._entered)
        self._line.editingFinished.connect(self._left)
        self._show()

    def quantity(self) -> Quantity | None:
        """What the text means; None where it is blank or not understood."""
        try:
            return self._read()
        except NotUnderstood:
            return None

    def problem(self) -> str:
        """What is wrong, in one sentence; blank where nothing is, also for an optional field left blank."""
        if self._from_outside or self._is_left_blank():
            return self._from_outside
        try:
            self._read()
        except NotUnderstood as error:
            return sentence(self._with_own_example(error))
        return ""

    def text(self) -> str:
        """The text as it stands."""
        return self._line.text()

    def told(self) -> str:
        """The text with its unit written out, so that it keeps its meaning in the other unit system."""
        comma, unit = decimal_comma(), self._unit_left_out()
        return with_unit(self.text(), self._kind, self._system, decimal_comma=comma, default_unit=unit)

    def set_examples(self, examples: Mapping[UnitSystem, str] | None) -> None:
        """What stands in the empty field, one each for both systems; None for what is usual."""
        kept, told = self._line.text(), self.told()
        self._examples = examples
        if self._filled is None and told != kept and self.told() != told:
            self._line.setText(told)  # a bare number was meant in the unit of the example before
        self._hint()

    def set_default_unit(self, unit: str | None) -> None:
        """The unit of a number without one, which the example has then too; None for that of the usual example. What
        stands in the field keeps its meaning.
        """
        if unit == self._default_unit:
            return
        kept, told = self._line.text(), self.told()
        self._default_unit = unit
        if self._filled is None and told != kept:
            self._line.setText(told)
        self._hint()
        self._show()

    def set_value(self, value: float | None) -> None:
        """Fill in a value of the base unit, or clear. Left untouched, `quantity` gives back exactly it."""
        text = ""
        if value is not None and self._ruled:
            text = show_length(value, self._system, decimal_comma=decimal_comma())
        elif value is not None:
            text = edit_text(value, self._kind, self._system, decimal_comma=decimal_comma())
        self._put(text, value)

    def set_typed(self, text: str) -> None:
        """Put in a text as a person typed it."""
        self._put(text, None)

    def set_kept(self, value: float | None, typed: str) -> None:
        """Bring back a kept reading: its text as typed where that still means the value, else the value.

        A bare number that was typed in the other unit system, or in another locale, would mean something
        else today.
        """
        self._put(typed, None)
        found = self.quantity()
        if value is None or (found is not None and isclose(found.value, value, rel_tol=1e-9, abs_tol=1e-9)):
            return
        self.set_value(value)

    def set_system(self, system: UnitSystem) -> None:
        """Change the unit system; what stands in the field keeps its meaning.

        A text with its unit stays as typed, a bare number gets the unit it was typed in, and a value that
        the program filled in is told in the new units.
        """
        if system is self._system:
            return
        kept, filled = self._line.text(), self._filled
        told = self.told()
        self._system = system
        if filled is not None:
            self.set_value(filled)
        elif told != kept:
            self._line.setText(told)
        self._hint()
        self._show()

    def set_limits(self, lowest: float | None, highest: float | None) -> None:
        """What sizes can be right, in the kind's base unit."""
        self._lowest, self._highest = lowest, highest
        self._show()

    def set_problem(self, words: str) -> None:
        """Tell something that is wrong for a reason of the page's own, until the text changes."""
        self._from_outside, self._telling = words, True
        self._show()
        self._message.point_out()

    def set_remark(self, words: str) -> None:
        """What stands beneath while there is nothing else to say."""
        self._remark = words
        self._show()

    def set_name(self, name: str) -> None:
        """The name that a screen reader says."""
        self._line.setAccessibleName(name)
        self.setAccessibleName(name)

    def show_example(self, shown: bool) -> None:
        """An example stands in the empty line, unless it could be taken for a weight from afar."""
        self._example_shown = shown
        self._hint()

    def tell(self) -> bool:
        """Say beneath what is wrong, also of a field not touched yet. Gives whether all is well."""
        self._telling = True
        self._show()
        return not self.problem()

    def say_beside(self, hint: str) -> Saying:
        """What it says, to be put beside the line instead of beneath; the hint stands there otherwise."""
        self._note = hint
        self._message.setAlignment(Qt.AlignmentFlag.AlignVCenter)  # a short answer in the room of a longer hint
        self._message.set_note(hint)
        self._show()
        return self._message

    @property
    def example(self) -> str:
        """What the field takes, to show people how; it has the unit that a number without one is taken in."""
        if self._examples and (own := self._own_example()):
            return figure_text(own)
        return example(self._kind, self._system, unit=self._default_unit, decimal_comma=decimal_comma())

    @property
    def line(self) -> QLineEdit:
        """The line itself, for tab order and shortcuts."""
        return self._line

    @property
    def message(self) -> str:
        """What stands beneath."""
        return self._message.text()

    def focusInEvent(self, event: QFocusEvent) -> None:
        """The focus belongs to the line. A focus proxy would be a stop under Tab: where lines were put into another
        order, it leads back to its line for ever.
        """
        self._line.setFocus(event.reason())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._hint()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.LanguageChange, QEvent.Type.LocaleChange):
            self._hint()
            self._show()

    def _lay_out(self, name: str) -> None:
        self.set_name(name)
        self.setFocusPolicy(Qt.FocusPolicy.ClickFocus)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(2)
        layout.addWidget(self._line)
        layout.addWidget(self._message)
        self._hint()

    def _hint(self) -> None:
        words = self.tr("like {example}").format(example=self.example)
        hint(self._line, *((words, self.example) if self._example_shown else ("",)))

    def _own_example(self) -> str:
        """The one of the field's own examples that has the unit of a bare number; blank where none has."""
        examples = self._examples or {}
        if self._default_unit is None:
            return examples[self._system]
        return next((one for one in examples.values() if one.split()[-1] == self._default_unit), "")

    def _with_own_example(self, error: NotUnderstood) -> NotUnderstood:
        """The refusal with the example that stands in the empty field, in place of the kind's usual one."""
        if error.params.get("example") != example(self._kind, self._system, decimal_comma=decimal_comma()):
            return error
        return NotUnderstood(error.code, **{**error.params, "example": self.example})

    def _unit_left_out(self) -> str | None:
        if self._default_unit is None and self._kind in _MANY_UNITS and self._examples:
            return self._examples[self._system].split()[-1]  # after "like 40 gal" a bare 40 is gallons, never quarts
        return self._default_unit

    def _read(self) -> Quantity:
        found = read(
            self._line.text(),
            self._kind,
            self._system,
            decimal_comma=decimal_comma(),
            default_unit=self._unit_left_out(),
            must_name=self._must_name if self._system is UnitSystem.FARM else _turned(self._must_name),
            lowest=self._lowest,
            highest=self._highest,
        )
        return found if self._filled is None else replace(found, value=self._filled)

    def _is_left_blank(self) -> bool:
        return not self._required and not self._line.text().strip()

    def _put(self, text: str, filled: float | None) -> None:
        self._filled = filled
        self._line.setText(text)
        self._from_outside, self._telling = "", bool(text)
        self._last = self.quantity()
        self._show()

    def _typed(self) -> None:
        self._filled, self._from_outside = None, ""
        found = self.quantity()
        if found is not None or not self._line.text().strip():
            self._telling = False
        self._show()
        if found != self._last:
            self._last = found
            self.understood.emit(found)

    def _entered(self) -> None:
        self.tell()
        self.editingFinished.emit()
        self.returnPressed.emit()

    def _left(self) -> None:
        if self._line.text().strip():  # one emptied again is left as one never typed in
            self.tell()
            self._message.point_out()
        self.editingFinished.emit()

    def _show(self) -> None:
        problem = self.problem() if self._telling else ""
        found = None if problem else self.quantity()
        understood = f"= {found}" if found and str(found) != found.typed else ""
        state = "wrong" if problem else "ok"
        own = f"= {found.shown}" if found and found.also and not problem else ""  # where there is no room for both
        self._message.say(problem or understood or self._remark, state=state, short=own)
        self._line.setAccessibleDescription(problem or understood or self._remark or self._note)
        set_style_property(self._line, "state", state)


def _turned(units: tuple[str, str] | None) -> tuple[str, str] | None:
    """The farm's own unit first, wherever two are named."""
    return units and (units[1], units[0])
