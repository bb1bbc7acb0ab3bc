"""Dialogs that fit: as large as what they hold wants, never larger than the program's window or the screen."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QScrollArea, QWidget

from calibrator.desk.parts import scrolled

FRAME = QSize(8, 40)  # what the system draws round a window, known for certain only once it is up


class _Whole(QScrollArea):
    def __init__(self, inner: QWidget) -> None:
        super().__init__()
        self._inner = inner

    def sizeHint(self) -> QSize:
        return self._inner.sizeHint()

    def minimumSizeHint(self) -> QSize:
        """Nothing is cut off at the right, beside a bar neither: only up and down is scrolled."""
        width = self._inner.minimumSizeHint().width() + self.verticalScrollBar().sizeHint().width()
        return QSize(width, super().minimumSizeHint().height())

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        return max(self._inner.heightForWidth(width), self._inner.minimumSizeHint().height())


def whole(inner: QWidget) -> QScrollArea:
    """The widget as high as it is where there is room for it; it scrolls where there is none."""
    area = scrolled(inner, _Whole(inner))
    policy = area.sizePolicy()
    policy.setHeightForWidth(True)
    area.setSizePolicy(policy)
    return area


def fit(dialog: QWidget, width: int, height: int) -> None:
    """Give a dialog its size, or what there is of it."""
    dialog.resize(QSize(width, height).boundedTo(_room(dialog)))


def make_room(dialog: QWidget) -> None:
    """Let a dialog grow where its buttons need more width than it has, or its words, wrapped at it, more height."""
    layout = dialog.layout()
    if layout is not None:
        for area in dialog.findChildren(_Whole):
            area.updateGeometry()  # what it holds is laid out by itself: the dialog remembers how high it was
        layout.activate()
        width = max(dialog.width(), layout.totalMinimumSize().width())
        fit(dialog, width, max(dialog.height(), layout.totalHeightForWidth(width)))


def _room(dialog: QWidget) -> QSize:
    """The size of the program's window, which fits the screen; of a dialog without one, what the screen leaves free."""
    top = dialog
    while (beneath := top.parentWidget()) is not None:
        top = beneath.window()
    return dialog.screen().availableSize() - FRAME if top is dialog else top.size()
