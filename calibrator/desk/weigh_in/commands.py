"""What a person does to the fills, as commands that can be undone.

The store is written before a command is put on the stack, so that a failed write leaves no command there.
"""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QUndoCommand, QUndoStack

from calibrator.desk.as_typed import as_typed
from calibrator.desk.context import Desk
from calibrator.desk.guide import Guide
from calibrator.model import Fill, FillWay
from calibrator.records.lot_history import fill_history


def enter_fill(
    desk: Desk,
    stack: QUndoStack,
    guide: Guide,
    way: FillWay,
    bag: int,
    mass_g: float,
    typed: str,
    scoopfuls: int,
    *,
    sent: bool,
) -> Fill | None:
    """Keep a fill, typed or `sent` by the scale itself; None where it could not be kept (the person was told why)."""

    def add() -> Fill:
        added = guide.add_fill(way, bag, mass_g, typed, scoopfuls)
        if sent:
            desk.wire.entered.add(added.id)  # before the page shows it
        return added

    fill = desk.attempt(add)
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


def recall(desk: Desk, stack: QUndoStack, guide: Guide, way: FillWay) -> None:
    """Let the stack hold what was done to the fills in view, as the records tell it: after a restart too."""
    stack.clear()
    if guide.signed_off is not None:
        return
    in_view = {fill.id for fill in guide.fills_of(way)}
    done: list[_OnFill] = []
    for one in fill_history(guide.records, guide.weigh_in.id):
        if one.now.id not in in_view:
            continue
        if done and done[-1].was_undone_by(one.now):
            done.pop()
        else:
            done.append(_command(desk, guide, one.now, one.before))
    for command in done:
        stack.push(command)


def _command(desk: Desk, guide: Guide, now: Fill, before: Fill | None) -> _OnFill:
    if before is None:
        return _Entered(desk, guide, now)
    if now.struck_reason is not None:
        return _Struck(desk, guide, before, now.struck_reason)
    return _Restored(desk, guide, before, before.struck_reason or "")


def _weight(desk: Desk, fill: Fill) -> str:
    return as_typed(fill.mass_g, fill.typed, desk.system)


def _taken_back() -> str:
    return QCoreApplication.translate("Commands", "taken back")


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

    def was_undone_by(self, now: Fill) -> bool:
        """Whether what happened next, a fill as it was kept then, was taking this back."""
        return now.id == self._fill.id and now.struck_reason == self._once_undone()

    def _once_undone(self) -> str | None:
        """The reason that the fill bears once this is taken back; None where it counts then."""
        return self._reason

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
        text = QCoreApplication.translate("Commands", "entering {weight}").format(weight=_weight(desk, fill))
        super().__init__(desk, guide, fill, _taken_back(), text)

    def _again(self) -> None:
        self._restore()

    def undo(self) -> None:
        self._strike()


class _Struck(_OnFill):
    def __init__(self, desk: Desk, guide: Guide, fill: Fill, reason: str) -> None:
        text = QCoreApplication.translate("Commands", "striking out {weight}").format(weight=_weight(desk, fill))
        super().__init__(desk, guide, fill, reason, text)

    def _again(self) -> None:
        self._strike()

    def undo(self) -> None:
        self._restore()

    def _once_undone(self) -> str | None:
        return None


class _Restored(_OnFill):
    def __init__(self, desk: Desk, guide: Guide, fill: Fill, reason: str) -> None:
        text = QCoreApplication.translate("Commands", "counting {weight} again").format(weight=_weight(desk, fill))
        super().__init__(desk, guide, fill, reason, text)

    def _again(self) -> None:
        self._restore()

    def undo(self) -> None:
        self._strike()
