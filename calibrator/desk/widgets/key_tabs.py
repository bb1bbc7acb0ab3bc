"""Tabs that are called by their letters: the keys are where one sees them, also on a tab that is shown first."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import QApplication, QTabWidget


class KeyTabs(QTabWidget):
    """As `QTabWidget`; where nothing on the tab called takes the focus, its name has it."""

    def __init__(self) -> None:
        super().__init__()
        self.currentChanged.connect(self._changed)

    def _changed(self) -> None:
        if self.isVisible() and not QApplication.mouseButtons():
            QTimer.singleShot(0, self, self._keep_focus)  # what the page puts there comes first

    def _keep_focus(self) -> None:
        there = self.window().focusWidget()
        if there is None or not there.isVisible() or there.isAncestorOf(self) or there is self.currentWidget():
            self.tabBar().setFocus(Qt.FocusReason.ShortcutFocusReason)
