"""A captioned quantity in the units of the farm in view; it keeps its meaning when they change."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QLineEdit

from calibrator.desk.context import Desk
from calibrator.desk.forms.fields import Captioned
from calibrator.desk.forms.following import Following
from calibrator.desk.forms.reach import Reach
from calibrator.desk.widgets.quantity_field import QuantityField
from calibrator.model import UnitSystem
from calibrator.units import Kind, Quantity

WHOLE_PCT = 100.0


class Amount(Captioned):
    """A QuantityField with its caption above; an optional one may stay empty. `within` is both limits at once."""

    edited = Signal()
    finished = Signal()
    entered = Signal()

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
        within: Reach | None = None,
        must_name: tuple[str, str] | None = None,
        example: bool = True,
        examples: Mapping[UnitSystem, str] | None = None,
    ) -> None:
        self.desk, self.kind, self.optional = desk, kind, optional
        self._following = Following.of(desk)
        lowest, highest = within or (lowest, highest)
        self.box = QuantityField(
            kind,
            self._following.system,
            required=not optional,
            must_name=must_name,
            lowest=lowest,
            highest=highest,
            examples=examples,
            note=note,
        )
        super().__init__(caption, self.box, speaks=False)  # the box speaks, in the one place there is
        self.box.set_name(caption.replace("&", ""))
        self._following.add(self.box)
        self.box.show_example(example)
        self.box.line.textEdited.connect(self.edited)
        self.box.editingFinished.connect(self.finished)
        self.box.returnPressed.connect(self._entered)

    def _entered(self) -> None:
        """Enter goes on, unless there is something here to mend."""
        if self.text() and self.box.problem():
            self.line.selectAll()
        else:
            self.entered.emit()

    @property
    def line(self) -> QLineEdit:
        return self.box.line

    @property
    def message(self) -> str:
        return self.box.message

    @property
    def busy(self) -> bool:
        """Whether the person is at it, or has something in it to mend."""
        return self.line.isModified() and (self.line.hasFocus() or bool(self.box.problem()))

    def say(self, text: str, *, wrong: bool = False, care: bool = False, short: str = "") -> None:
        """Say what is wrong for a reason of the page's own; anything else stands where the field says nothing."""
        if wrong:
            self.box.set_problem(text)
        else:
            self.box.set_remark(text)

    def text(self) -> str:
        return self.box.text().strip()

    def quantity(self) -> Quantity | None:
        return self.box.quantity()

    def value(self) -> float | None:
        """In the kind's base unit; None where it is blank or not understood."""
        found = self.quantity()
        return found.value if found else None

    def share(self) -> float | None:
        """A percentage as a share of one."""
        percent = self.value()
        return None if percent is None else percent / WHOLE_PCT

    def problem(self) -> str:
        """What is wrong, in one sentence; blank where nothing is."""
        return self.box.problem()

    def understood(self) -> bool:
        """Whether it can be kept; says beneath what is wrong."""
        return self.box.tell()

    def set_value(self, value: float | None, typed: str = "") -> None:
        """Fill in a value of the base unit, as it was typed where that is known."""
        if typed:
            self.box.set_kept(value, typed)
        else:
            self.box.set_value(value)

    def set_share(self, share: float) -> None:
        self.set_value(share * WHOLE_PCT)

    def set_text(self, text: str) -> None:
        self.box.set_typed(text)

    def told(self) -> str:
        """The text with its unit written out, so that it keeps its meaning in the other unit system."""
        return self.box.told()

    def take(self, text: str) -> None:
        """Put in a text as if it had been typed."""
        self.box.set_typed(text)
        self.edited.emit()
