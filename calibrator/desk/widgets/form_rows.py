"""Fields one under another, each with its caption at the left and what there is to say of it at the right."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QWidget

from calibrator.desk.parts import label
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.quantity_field import QuantityField


def form_rows(rows: Iterable[tuple[str, QWidget, str]], field_width: int) -> QWidget:
    """Caption with its key, field, hint. What a quantity's field says comes in the place of its hint."""
    holder = QWidget()
    grid = QGridLayout(holder)
    grid.setContentsMargins(0, 0, 0, 0)
    grid.setHorizontalSpacing(2 * SPACE)
    grid.setVerticalSpacing(SPACE)
    for number, (name, field, hint) in enumerate(rows):
        caption = label(name, wrap=False)
        caption.setBuddy(field)
        said = field.say_beside(hint) if isinstance(field, QuantityField) else label(hint, "quiet")
        for place, widget in enumerate((caption, field, said)):
            grid.addWidget(widget, number, place, Qt.AlignmentFlag.AlignVCenter)
    grid.setColumnMinimumWidth(1, field_width)
    grid.setColumnStretch(2, 1)
    return holder
