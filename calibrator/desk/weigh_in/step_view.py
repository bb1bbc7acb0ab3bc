"""What each step's view offers the page."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QAbstractSpinBox, QCheckBox, QComboBox, QLineEdit, QPushButton, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.guide import Guide, Missing
from calibrator.desk.help.hands import Handiwork
from calibrator.desk.help.view import hands_button
from calibrator.desk.parts import label, row
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.quantity_field import QuantityField


class StepView(QWidget):
    """One step: what to do with the hands, the fields, what came of it. `ready` asks for the next step, `wanted` for
    the one named, `typing` tells that a field with what is still needed is being filled in, `finished` that Enter found
    nothing more to do here.
    """

    ready = Signal()
    typing = Signal()
    wanted = Signal(str)
    finished = Signal()
    closes = True  # once it is signed off, there is nothing to do here

    def __init__(self, desk: Desk, hands: str) -> None:
        super().__init__()
        self.desk = desk
        self.guide: Guide | None = None
        self.hands = label(hands)
        self.tools = QWidget()  # beside the title: what helps here, and is not part of the work
        self.tools_line = row(spacing=SPACE)
        self.tools_line.setContentsMargins(0, 0, 0, 0)
        self.tools.setLayout(self.tools_line)
        self.tools.hide()
        self.body = QVBoxLayout(self)
        self.body.setContentsMargins(0, 0, 0, 0)
        self.body.setSpacing(int(1.5 * SPACE))
        self.closed = label(
            self.tr("Signed off: it can be looked at here, and changed no more. To weigh anew, weigh in the lot again.")
        )
        self.closed.hide()
        self._shut: list[QWidget] = []
        self.body.addWidget(self.closed)
        self.body.addWidget(self.hands)

    def show_how(self, work: Handiwork) -> None:
        """Offer pictures of what the hands do here."""
        self.tools_line.addWidget(hands_button(work, self.desk))

    def show_guide(self, guide: Guide) -> None:
        """Show a weigh-in as it stands."""
        fresh = self.guide is not guide
        self.guide = guide
        self.refresh(guide, fresh)
        if self.closes:
            self.close_entry(guide.signed_off is not None)

    def close_entry(self, signed: bool) -> None:
        """What is signed off looks like it from the start, and not only once something was typed into it."""
        self.closed.setVisible(signed)
        if signed:
            self.hands.hide()
            shut = [w for w in self.findChildren(QWidget) if _takes_entry(w) and w.isEnabled()]
        else:
            if self._shut:
                self.hands.show()
            shut = []
        for widget in self._shut if not signed else shut:
            widget.setEnabled(not signed)
        self._shut = [*self._shut, *shut] if signed else []

    def refresh(self, guide: Guide, fresh: bool) -> None:
        """Bring the view up to the facts; `fresh` when another weigh-in came into view."""

    @property
    def has_lit_button(self) -> bool:
        """Whether a button of its own is what to press next: a screen has one such button."""
        every = self.findChildren(QPushButton)
        return any(b.property("kind") == "main" and b.isEnabled() and b.isVisibleTo(self) for b in every)

    def first_field(self) -> QWidget | None:
        """Where the typing starts."""
        return None

    def pending(self) -> str:
        """What is typed and not entered yet."""
        return ""

    def typed_already(self) -> frozenset[Missing]:
        """Of what is still needed, what stands in a field that the cursor has not left: Next takes it along."""
        return frozenset()

    def take(self) -> bool:
        """Keep what stands in the fields; going on does not wait until the cursor leaves them. Gives whether one may
        go on."""
        return True


def _takes_entry(widget: QWidget) -> bool:
    if isinstance(widget, QPushButton):
        return bool(widget.property("kind") != "link")
    return isinstance(widget, QLineEdit | QComboBox | QCheckBox | QAbstractSpinBox)


def stays_wrong(field: QuantityField) -> bool:
    """Whether a field holds what cannot be taken; the cursor is in it then, what is typed next takes its place."""
    if not field.problem():
        return False
    field.setFocus()
    field.line.selectAll()
    return True


def show_kept(field: QuantityField, value: float | None, typed: str, fresh: bool) -> None:
    """Bring a field up to what is kept, but never over what a person is typing or has yet to mend.

    Where another weigh-in came into view (`fresh`), what stands there was typed for the one before.
    """
    standing = field.quantity()
    at_work = not fresh and (field.line.hasFocus() or bool(field.text() and field.problem()))
    same = (standing.value if standing else None) == value
    if at_work or (same and not (fresh and field.problem())):
        return
    field.set_kept(value, typed)
