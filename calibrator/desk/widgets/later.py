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
            take_turn(self.made, self)
        return self.made


def take_turn(part: QWidget, after: QWidget) -> None:
    """Have the Tab key come to a part that was added late where it stands: right after what `after` is or follows."""
    # Not by Qt's own chain: PySide gives each widget in it to the one before, and lets go of both together.
    window = part.window()
    every = window.findChildren(QWidget)
    before = every[: every.index(after) + 1] if after in every else []
    last = next((each for each in reversed(before) if _takes_tab(each, window)), None)
    for each in (part, *part.findChildren(QWidget)):
        if _takes_tab(each, window):
            if last is not None:
                QWidget.setTabOrder(last, each)
            last = each


def _takes_tab(widget: QWidget, window: QWidget) -> bool:
    """Whether the key comes to it; the list that drops out of a box is a window of its own."""
    takes = bool(widget.focusPolicy() & Qt.FocusPolicy.TabFocus) and widget.focusProxy() is None
    return takes and widget.window() is window
