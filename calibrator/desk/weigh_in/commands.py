"""What a person does to the fills, as commands that can be undone.

The store is written before a command is put on the stack, so that a failed write leaves no command there.
"""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QUndoCommand, QUndoStack

from calibrator.desk.context import Desk
from calibrator.desk.guide import Guide
from calibrator.model import Fill, FillWay


def enter_fill(
    desk: Desk,
    stack: QUndoStack,
    guide: Guide,
    way: FillWay,
    bag: int,
    mass_g: float,
    typed: str,
    scoopfuls: int,
) -> Fill | None:
    """Keep a fill; None where it could not be kept (the person was told why)."""
    fill = desk.attempt(lambda: guide.add_fill(way, bag, mass_g, typed, scoopfuls))
    if fill is not None:
        stack.push(_Entered(desk, guide, fill))
    return fill


def strike_fill(desk: Desk, stack: QUndoStack, guide: Guide, fill: Fill, reason: str) -> None:
    """Take a fill out of the count, with its reason."""
    if desk.attempt(lambda: guide.strike(fill.id, reason)):
        stack.push(_Struck(desk, guide, fill, reason))


def restore_fill(desk: Desk, stack: QUndoStack, guide: Guide, fill: Fill) -> None:
    """Count a struck-out fill again."""
    if desk.attempt(lambda: guide.restore(fill.id)):
        stack.push(_Restored(desk, guide, fill, fill.struck_reason or ""))


class _OnFill(QUndoCommand):
    """The first redo, which the stack calls at the push, finds the work already done."""

    def __init__(self, desk: Desk, guide: Guide, fill: Fill, reason: str, text: str) -> None:
        super().__init__(text)
        self._desk, self._guide, self._fill, self._reason = desk, guide, fill, reason
        self._pushed = False

    def redo(self) -> None:
        if self._pushed:
            self._again()
        self._pushed = True

    def _again(self) -> None:
        raise AssertionError("each command says how it is done again")

    def _strike(self) -> None:
        if not self._desk.attempt(lambda: self._guide.strike(self._fill.id, self._reason)):
            self.setObsolete(True)

    def _restore(self) -> None:
        if not self._desk.attempt(lambda: self._guide.restore(self._fill.id)):
            self.setObsolete(True)


class _Entered(_OnFill):
    def __init__(self, desk: Desk, guide: Guide, fill: Fill) -> None:
        text = QCoreApplication.translate("Commands", "entering {weight}").format(weight=fill.typed)
        taken_back = QCoreApplication.translate("Commands", "taken back")
        super().__init__(desk, guide, fill, taken_back, text)

    def _again(self) -> None:
        self._restore()

    def undo(self) -> None:
        self._strike()


class _Struck(_OnFill):
    def __init__(self, desk: Desk, guide: Guide, fill: Fill, reason: str) -> None:
        text = QCoreApplication.translate("Commands", "striking out {weight}").format(weight=fill.typed)
        super().__init__(desk, guide, fill, reason, text)

    def _again(self) -> None:
        self._strike()

    def undo(self) -> None:
        self._restore()


class _Restored(_OnFill):
    def __init__(self, desk: Desk, guide: Guide, fill: Fill, reason: str) -> None:
        text = QCoreApplication.translate("Commands", "counting {weight} again").format(weight=fill.typed)
        super().__init__(desk, guide, fill, reason, text)

    def _again(self) -> None:
        self._restore()

    def undo(self) -> None:
        self._strike()
