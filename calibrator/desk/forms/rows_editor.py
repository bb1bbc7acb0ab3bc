"""A short list of rows alike, that can be added to and taken from."""

from __future__ import annotations

from collections.abc import Callable
from typing import Generic, TypeVar

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from calibrator.desk.parts import button, row

R = TypeVar("R", bound="RowEditor")


class RowEditor(QWidget):
    """One row. `first` gets the cursor when it is added."""

    edited = Signal()
    remove_wanted = Signal()

    def first(self) -> QWidget:
        return self

    def in_order(self) -> tuple[QWidget, ...]:
        """The fields in the order in which the Tab key reaches them."""
        return ()

    def ask_remove(self) -> None:
        self.remove_wanted.emit()


class RowsEditor(QWidget, Generic[R]):
    """Rows one under another, with the button that adds one."""

    edited = Signal()
    rearranged = Signal()

    def __init__(self, make: Callable[[], R], add: str, most: int) -> None:
        super().__init__()
        self._make, self._most = make, most
        self.rows: list[R] = []
        self.add: QPushButton = button(add, self._add, "link")
        self._list = QVBoxLayout()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(self._list)
        layout.addLayout(row(self.add, None))

    def clear(self) -> None:
        for made in list(self.rows):
            self._drop(made)

    def place(self) -> R:
        """One more row, to be filled in."""
        made = self._make()
        made.edited.connect(self.edited)
        made.remove_wanted.connect(self._remove)
        self.rows.append(made)
        self._list.addWidget(made)
        self.add.setVisible(len(self.rows) < self._most)
        return made

    def in_order(self) -> tuple[QWidget, ...]:
        return (*(widget for made in self.rows for widget in made.in_order()), self.add)

    def _add(self) -> None:
        made = self.place()
        self.rearranged.emit()
        self.edited.emit()
        made.first().setFocus(Qt.FocusReason.OtherFocusReason)

    def _remove(self) -> None:
        made = self.sender()
        if made in self.rows:
            self._drop(made)
            self.rearranged.emit()
            self.edited.emit()
            self.add.setFocus(Qt.FocusReason.OtherFocusReason)

    def _drop(self, made: R) -> None:
        self.rows.remove(made)
        self._list.removeWidget(made)
        made.hide()
        made.deleteLater()
        self.add.setVisible(len(self.rows) < self._most)
