"""Choices that the wheel leaves alone: rolling over a form or a page scrolls it and changes nothing in it."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QComboBox, QTabBar


class CalmBox(QComboBox):
    """As `QComboBox`; closed, it hands the wheel on, and takes no focus from it. Its open list scrolls as ever."""

    def __init__(self) -> None:
        super().__init__()
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def wheelEvent(self, event: QWheelEvent) -> None:
        event.ignore()

    def showPopup(self) -> None:
        """Where nothing is chosen yet the first is lit: an arrow key would pass over it unseen."""
        super().showPopup()
        if self.currentIndex() < 0:
            self.view().setCurrentIndex(self.model().index(0, self.modelColumn()))


class CalmTabs(QTabBar):
    """As `QTabBar`, in a page that scrolls: the wheel would turn to another tab in passing."""

    def wheelEvent(self, event: QWheelEvent) -> None:
        event.ignore()
