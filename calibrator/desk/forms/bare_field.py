"""A captioned line for plain numbers: drops in °Brix, a specific gravity. Says what it understood."""

from __future__ import annotations

from PySide6.QtCore import Signal

from calibrator.desk.forms.fields import TextField
from calibrator.desk.speech import decimal_comma
from calibrator.desk.widgets.unit_sentences import sentence
from calibrator.science.stats import mean_of
from calibrator.units import NotUnderstood
from calibrator.units.bare import Bare, bare_text, read_bare

_MOST_PLACES = 6


class BareField(TextField):
    """One number or several. What is wrong is told when the person leaves or presses Enter."""

    understood = Signal()

    def __init__(self, caption: str, bare: Bare, digits: int, note: str = "", *, optional: bool = True) -> None:
        super().__init__(caption, note, longest=60)
        self._bare, self._digits, self._optional = bare, digits, optional
        self._hint()
        self.edited.connect(self._tell_mean)
        self.finished.connect(self._left)
        self.entered.connect(self.tell)

    def values(self) -> tuple[float, ...]:
        """The numbers; none where the field is blank or not understood."""
        try:
            return read_bare(self.line.text(), self._bare, decimal_comma=decimal_comma())
        except NotUnderstood:
            return ()

    def value(self) -> float | None:
        found = self.values()
        return found[0] if found else None

    def problem(self) -> str:
        """What is wrong, in one sentence; blank where nothing is."""
        if self._optional and not self.text():
            return ""
        try:
            read_bare(self.line.text(), self._bare, decimal_comma=decimal_comma())
        except NotUnderstood as error:
            return sentence(error)
        return ""

    def tell(self) -> bool:
        """Say beneath what is wrong. Gives whether it can be kept."""
        problem = self.problem()
        if problem:
            self.say(problem, wrong=True)
        elif self.text():
            self._tell_mean()
        else:
            self.say("")
        return not problem

    def set_values(self, *values: float) -> None:
        self.set_text(bare_text(values, self._digits, decimal_comma=decimal_comma()))

    def set_bare(self, bare: Bare) -> None:
        """Ask for something else from now on; what is typed stays and is judged anew."""
        self._bare = bare
        self._hint()
        if self.text():
            self.tell()

    def set_example(self, bare: Bare) -> None:
        """Show another example of the same; what is typed is left alone."""
        self._bare = bare
        self._hint()

    def rename(self, caption: str) -> None:
        """Another caption, also for readers of the screen."""
        self.caption.setText(caption)
        self.line.setAccessibleName(caption)

    def _hint(self) -> None:
        """One number alone would look filled in; several drops read as an example, and take the room of the words."""
        shown = self._bare.shown(decimal_comma=decimal_comma())
        self.line.setPlaceholderText(self.tr("like {example}").format(example=shown) if self._bare.most == 1 else shown)

    def _left(self) -> None:
        if self.text():
            self.tell()

    def _tell_mean(self) -> None:
        found = self.values()
        if len(found) > 1:
            mean = bare_text([mean_of(found)], self._digits + 1, decimal_comma=decimal_comma())
            short = self.tr("mean {mean}").format(mean=mean)
            self.say(self.tr("{count} readings, mean {mean}").format(count=len(found), mean=mean), short=short)
        elif found:
            self.say(self._told_anew(found[0]))
        self.understood.emit()

    def _told_anew(self, value: float) -> str:
        """What a number with the other decimal sign was taken for: "12,13" may have been meant as two."""
        if ("." if decimal_comma() else ",") not in self.text():
            return ""
        return f"= {bare_text([value], _MOST_PLACES, decimal_comma=decimal_comma())}"
