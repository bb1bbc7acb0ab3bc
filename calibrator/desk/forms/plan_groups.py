"""The groups of a plan below each other: brought in, taken out, told apart."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial

from PySide6.QtCore import QPoint, QTimer, Signal
from PySide6.QtWidgets import QScrollArea, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.enter import enter_moves_on
from calibrator.desk.forms.group_editor import GroupEditor
from calibrator.desk.parts import button, row
from calibrator.desk.signed_for import SignedFor
from calibrator.desk.theme import SPACE
from calibrator.model import PlanGroup
from calibrator.science.mixing import Powder

USUAL_WATER_C = 43.0


class PlanGroups(QWidget):
    """An editor for each group, one at least. `rearranged` asks for the order of the Tab key anew, `counted` tells
    that another number of calves is typed; `to_next` is how Enter goes on.
    """

    edited = Signal()
    counted = Signal()
    rearranged = Signal()

    def __init__(self, desk: Desk, to_next: Callable[[], object]) -> None:
        super().__init__()
        self.desk = desk
        self._to_next = to_next
        self._powder: Powder | None = None
        self._signed: SignedFor | None = None
        self._water_c = USUAL_WATER_C
        self.editors: list[GroupEditor] = []
        self.add = button(self.tr("&Add a group of calves"), self._add)
        self._cards = QVBoxLayout()
        self._cards.setSpacing(int(1.5 * SPACE))
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(int(1.5 * SPACE))
        layout.addLayout(self._cards)
        layout.addLayout(row(self.add, None))

    def show_groups(self, groups: Sequence[PlanGroup | None]) -> None:
        """Show these in place of those there were; None is a new one."""
        for editor in list(self.editors):
            self._drop(editor)
        for group in groups:
            self._place(group)

    def mixed_with(self, powder: Powder | None, water_c: float | None, signed: SignedFor | None) -> None:
        """Tell what the groups are mixed of; None leaves the water's temperature as it was."""
        self._powder, self._signed = powder, signed
        if water_c is None:
            return
        self._water_c = water_c
        for editor in self.editors:
            editor.mixed_with(powder, water_c, signed)
        taking = [editor for editor in self.editors if editor.takes_signed()]
        for editor in self.editors:
            editor.stand_beside(any(other is not editor for other in taking))

    def calves(self) -> int:
        """All calves together."""
        return sum(editor.calves.count() for editor in self.editors)

    def groups(self) -> tuple[PlanGroup, ...]:
        """The groups as typed, without those where something is missing."""
        return tuple(group for editor in self.editors if (group := editor.group()))

    def understood(self) -> bool:
        """Whether all can be kept; what is missing is said beside its field."""
        sound = [editor.understood() for editor in self.editors]  # each says what it lacks, not only the first
        return all(sound)

    def named_apart(self) -> bool:
        """Groups are told apart by their names, in the tables, on paper and in checks of the mix."""
        names: set[str] = set()
        for editor in self.editors:
            if editor.called() in names:
                editor.name.say(self.tr("Another group has this name."), wrong=True)
                return False
            names.add(editor.called())
        return True

    def in_order(self) -> tuple[QWidget, ...]:
        """The fields in the order in which the Tab key reaches them."""
        return (*(widget for editor in self.editors for widget in editor.in_order()), self.add)

    def _add(self) -> None:
        like = next((group for editor in self.editors if (group := editor.group())), None)
        editor = self._place(None)
        if like is not None:
            editor.begin_like(like)
        unnamed = next((one for one in self.editors[:-1] if not one.name.text()), None)
        if unnamed is not None:
            told = self.tr("Give each group a name. The first one has a field for it too: it is “{name}” until you do.")
            editor.name.say(told.format(name=unnamed.called()))
        self.edited.emit()
        editor.name.line.setFocus()
        QTimer.singleShot(0, editor, partial(_bring_up, editor))  # where it stands is known once it is laid out

    def _place(self, group: PlanGroup | None) -> GroupEditor:
        editor = GroupEditor(self.desk)
        if group is not None:
            editor.load(group)
        editor.mixed_with(self._powder, self._water_c, self._signed)
        if group is None:
            editor.begin()
        enter_moves_on(editor, self._to_next)
        editor.edited.connect(self.edited)
        editor.calves.counted.connect(self.counted)
        editor.remove_wanted.connect(self._remove)
        editor.rearranged.connect(self.rearranged)
        self.editors.append(editor)
        self._cards.addWidget(editor)
        self._number()
        return editor

    def _remove(self) -> None:
        editor = self.sender()
        if isinstance(editor, GroupEditor) and len(self.editors) > 1:
            self._drop(editor)
            self._number()
            self.edited.emit()
            self.add.setFocus()

    def _drop(self, editor: GroupEditor) -> None:
        self.editors.remove(editor)
        self._cards.removeWidget(editor)
        editor.hide()
        editor.deleteLater()

    def _number(self) -> None:
        for number, editor in enumerate(self.editors, start=1):
            editor.show_place(number, len(self.editors) == 1)
        self.rearranged.emit()


def _bring_up(editor: GroupEditor) -> None:
    """Scroll to the top of a group: its first field alone would stand at the foot, all others below."""
    area = editor.parentWidget()
    while area is not None and not isinstance(area, QScrollArea):
        area = area.parentWidget()
    inner = area.widget() if area is not None else None
    if area is not None and inner is not None:
        area.verticalScrollBar().setValue(editor.mapTo(inner, QPoint(0, 0)).y())
