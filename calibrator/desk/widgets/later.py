"""A place on a page that is filled when it is first needed: a page is up sooner and holds what is looked at."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise
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
    every = [each for part in parts for each in (part, *part.findChildren(QWidget)) if _has_turn(each, after.window())]
    # What takes no focus goes along, so that it can be followed later on; Qt moves it only while it takes some.
    quiet = [(each, each.focusPolicy()) for each in (after, *every) if not each.focusPolicy() & Qt.FocusPolicy.TabFocus]
    for each, _ in quiet:
        each.setFocusPolicy(Qt.FocusPolicy.TabFocus)
    for before, each in pairwise((after, *every)):
        QWidget.setTabOrder(before, each)
    for each, policy in quiet:
        each.setFocusPolicy(policy)


def _has_turn(widget: QWidget, window: QWidget) -> bool:
    """What hands the focus on has none of its own; the list that drops out of a box is a window of its own."""
    return widget.focusProxy() is None and widget.window() is window
