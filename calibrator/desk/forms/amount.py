"""A captioned quantity: says what it understood, refuses in a sentence, knows whether it may stay empty."""

from __future__ import annotations

from calibrator.desk.context import Desk
from calibrator.desk.forms.fields import TextField
from calibrator.desk.speech import decimal_comma
from calibrator.units import Kind, NotUnderstood, Quantity, edit_text, example, read, with_unit

WHOLE_PCT = 100.0


class Amount(TextField):
    """One quantity in the units of the farm in view."""

    def __init__(
        self,
        desk: Desk,
        caption: str,
        kind: Kind,
        note: str = "",
        *,
        optional: bool = False,
        lowest: float | None = None,
        highest: float | None = None,
        default_unit: str | None = None,
    ) -> None:
        super().__init__(caption, note, longest=48)
        self.desk, self.kind, self.optional = desk, kind, optional
        self._limits = (lowest, highest, default_unit)
        self._hint()
        self.edited.connect(self.understood)

    def quantity(self) -> Quantity | None:
        try:
            return self._read()
        except NotUnderstood:
            return None

    def value(self) -> float | None:
        found = self.quantity()
        return found.value if found else None

    def understood(self) -> bool:
        if not self.text() and self.optional:
            self.say("")
            return True
        try:
            found = self._read()
        except NotUnderstood as error:
            self.say(str(error), wrong=True)
            return False
        self.say(f"{found.shown} {found.also}".strip())
        return True

    def set_value(self, value: float | None, typed: str = "") -> None:
        self._hint()
        shown = (
            ""
            if value is None
            else edit_text(value, self.kind, self.desk.system, decimal_comma=decimal_comma())
        )
        self.set_text(typed or shown)

    def share(self) -> float | None:
        """A percentage as a share of one."""
        percent = self.value()
        return None if percent is None else percent / WHOLE_PCT

    def set_share(self, share: float) -> None:
        self.set_value(share * WHOLE_PCT)

    def told(self) -> str:
        """The text with its unit written out, so that it keeps its meaning in the other unit system."""
        unit = self._limits[2]
        comma = decimal_comma()
        return with_unit(self.text(), self.kind, self.desk.system, decimal_comma=comma, default_unit=unit)

    def take(self, text: str) -> None:
        """Put in a text as if it had been typed."""
        self.set_text(text)
        self.edited.emit()

    def _hint(self) -> None:
        self.line.setPlaceholderText(example(self.kind, self.desk.system, decimal_comma=decimal_comma()))

    def _read(self) -> Quantity:
        lowest, highest, unit = self._limits
        return read(
            self.line.text(),
            self.kind,
            self.desk.system,
            decimal_comma=decimal_comma(),
            lowest=lowest,
            highest=highest,
            default_unit=unit,
        )
