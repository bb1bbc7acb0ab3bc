"""Enter in a field or on a choice goes on to the next one; nothing is kept by it."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QCheckBox, QComboBox, QRadioButton, QWidget

from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.fields import TextField
from calibrator.desk.widgets.count_field import CountField
from calibrator.desk.widgets.shape_choice import ShapeButton


def enter_moves_on(holder: QWidget, to_next: Callable[[], object] | None = None) -> None:
    """Let Enter in any field of a holder go on, by default to the next place that the Tab key would come to."""
    move = to_next or (lambda: holder.focusNextChild())
    for text in holder.findChildren(TextField):
        text.entered.connect(partial(_unless_wrong, text, move))
    for amount in holder.findChildren(Amount):
        amount.entered.connect(move)
    for count in holder.findChildren(CountField):
        count.returnPressed.connect(move)
    for kind in (QCheckBox, QRadioButton, ShapeButton, QComboBox):
        for box in holder.findChildren(kind):
            on_enter(box, move)


def _unless_wrong(field: TextField, move: Callable[[], object]) -> None:
    """What has just been told to be mended is stayed at."""
    if not field.wrong:
        move()


def on_enter(box: QWidget, act: Callable[[], object]) -> None:
    """What Enter does on a choice, where it would do nothing; the space bar ticks and opens, the arrow keys choose."""
    box.installEventFilter(_OnEnter(box, act))


class _OnEnter(QObject):
    def __init__(self, box: QWidget, act: Callable[[], object]) -> None:
        super().__init__(box)
        self._act = act

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() != QEvent.Type.KeyPress or not isinstance(event, QKeyEvent):
            return False
        if event.key() not in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            return False
        if not event.isAutoRepeat():
            self._act()
        return True
