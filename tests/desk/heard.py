"""What a screen reader is told, read off the accessibility tree of what is shown."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QAccessibleInterface
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractSpinBox,
    QComboBox,
    QLineEdit,
    QTabBar,
    QTableView,
    QWidget,
)
from screens import shown

NAME = QAccessible.Text.Name


def unheard(root: QWidget) -> Iterator[str]:
    """Every control that can have the focus and has no name, and every table whose cells or headings are mute."""
    for widget in shown(root):
        if not _for_hands(widget):
            continue
        told = QAccessible.queryAccessibleInterface(widget)
        if told is None or not told.text(NAME).strip():
            yield f"{type(widget).__name__} {widget.objectName()} has no name"
        elif isinstance(widget, QTableView):
            yield from _mute(widget, told)


def _for_hands(widget: QWidget) -> bool:
    """Can a person get to it by key, and is it not a part inside another control?"""
    if widget.focusPolicy() == Qt.FocusPolicy.NoFocus or not widget.isEnabled():
        return False
    inside = widget.parentWidget()
    if isinstance(inside, QComboBox | QAbstractSpinBox | QAbstractItemView):
        return False
    return isinstance(
        widget, QAbstractButton | QLineEdit | QComboBox | QAbstractSpinBox | QAbstractItemView | QTabBar
    ) or (type(widget).paintEvent is not QWidget.paintEvent and type(widget).__module__.startswith("calibrator."))


def _mute(table: QTableView, told: QAccessibleInterface) -> Iterator[str]:
    """Headings that are missing, and figures of the first row that stand on the screen only."""
    model = table.model()
    if model is None or model.rowCount() == 0:
        return
    name, heard = told.text(NAME), [told.child(place).text(NAME) for place in range(told.childCount())]
    for column in (c for c in range(model.columnCount()) if not table.isColumnHidden(c)):
        if not model.headerData(column, Qt.Orientation.Horizontal):
            yield f"table {name!r}: column {column} has no heading"
        seen = model.index(0, column).data()
        if seen and not any(str(seen) in words for words in heard):
            yield f"table {name!r}: the reader hears nothing of {seen!r}"
