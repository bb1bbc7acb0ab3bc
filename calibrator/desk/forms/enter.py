"""Enter in a field goes on to the next one; nothing is kept by it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QWidget

from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.fields import TextField


def enter_moves_on(holder: QWidget, to_next: Callable[[], object] | None = None) -> None:
    """Let Enter in any field of a holder go on, by default to the next place that the Tab key would come to."""
    move = to_next or (lambda: holder.focusNextChild())
    for text in holder.findChildren(TextField):
        text.entered.connect(move)
    for amount in holder.findChildren(Amount):
        amount.entered.connect(move)
