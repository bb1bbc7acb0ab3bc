"""A place on a page that is filled when it is first needed: a page is up sooner and holds what is looked at."""

from __future__ import annotations

from collections.abc import Callable
from typing import Generic, TypeVar

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QVBoxLayout, QWidget

W = TypeVar("W", bound=QWidget)


class Later(QWidget, Generic[W]):
    """`content` makes what belongs here the first time it is asked for, `made` is what is here so far."""

    def __init__(self, make: Callable[[], W]) -> None:
        super().__init__()
        self._make = make
        self.made: W | None = None
        self._place = QVBoxLayout(self)
        self._place.setContentsMargins(0, 0, 0, 0)

    @property
    def content(self) -> W:
        if self.made is None:
            self.made = self._make()
            self._place.addWidget(self.made)
            self.made.show()
            take_turn(self, self.made)
        return self.made


def take_turn(after: QWidget, *parts: QWidget) -> None:
    """Have the Tab key come to parts that were added late where they stand: right after what stands before them."""
    # Qt's own chain is not walked: PySide gives each widget in it to the one before, and lets go of both together.
    policy, last = after.focusPolicy(), after
    after.setFocusPolicy(Qt.FocusPolicy.TabFocus)  # Qt puts nothing behind what takes no focus
    for part in parts:
        for each in (part, *part.findChildren(QWidget)):
            if _takes_tab(each, after.window()):
                QWidget.setTabOrder(last, each)
                last = each
    after.setFocusPolicy(policy)


def _takes_tab(widget: QWidget, window: QWidget) -> bool:
    """Whether the key comes to it; the list that drops out of a box is a window of its own."""
    takes = bool(widget.focusPolicy() & Qt.FocusPolicy.TabFocus) and widget.focusProxy() is None
    return takes and widget.window() is window
