"""Tabs that are called by their letters: the keys are where one sees them, also on a tab that is shown first."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt, QTimer, Signal
from PySide6.QtWidgets import QApplication, QTabWidget


class KeyTabs(QTabWidget):
    """As `QTabWidget`; where nothing on the tab called takes the focus, its name has it.

    `called` tells that a tab came up by its letter: the page may put the keys where they begin. With the arrow keys one
    only walks over the names.
    """

    called = Signal()

    def __init__(self) -> None:
        super().__init__()
        self._letter = False
        self.tabBar().installEventFilter(self)
        self.currentChanged.connect(self._changed)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        self._letter = event.type() == QEvent.Type.Shortcut or (self._letter and event.type() != QEvent.Type.KeyPress)
        return super().eventFilter(watched, event)

    def _changed(self) -> None:
        letter, self._letter = self._letter, False
        if letter:
            self.called.emit()
        if self.isVisible() and not QApplication.mouseButtons():
            QTimer.singleShot(0, self, self._keep_focus)  # what the page puts there comes first

    def _keep_focus(self) -> None:
        there = self.window().focusWidget()
        inside = there is not None and there.isVisible() and self.isAncestorOf(there)
        if not inside or there is self.currentWidget():  # Qt puts it anywhere on the window
            self.tabBar().setFocus(Qt.FocusReason.ShortcutFocusReason)
