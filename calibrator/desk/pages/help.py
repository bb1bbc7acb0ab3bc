"""Help: how it is done with the hands, what the words mean, the manual."""

from __future__ import annotations

from PySide6.QtWidgets import QGridLayout, QTabWidget, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.help.glossary import glossary
from calibrator.desk.help.hands import all_of_them
from calibrator.desk.help.manual import Manual
from calibrator.desk.help.view import all_handiwork
from calibrator.desk.page import Page
from calibrator.desk.parts import label, scrolled
from calibrator.desk.theme import SPACE


class HelpPage(Page):
    """Pictures first: they are needed most, and with gloves on."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, self.tr("Help"), parent)
        self.tabs = QTabWidget()
        self.tabs.setAccessibleName(self.tr("Parts of the help"))
        self.tabs.tabBar().setAccessibleName(self.tabs.accessibleName())
        self.tabs.addTab(all_handiwork(all_of_them()), self.tr("How it is done"))
        self.tabs.addTab(_words(), self.tr("What the words mean"))
        self.tabs.addTab(Manual(), self.tr("Manual"))
        self.body.addWidget(self.tabs, 1)


def _words() -> QWidget:
    inner = QWidget()
    grid = QGridLayout(inner)
    grid.setContentsMargins(0, int(1.5 * SPACE), 0, 2 * SPACE)
    grid.setHorizontalSpacing(3 * SPACE)
    grid.setVerticalSpacing(int(1.5 * SPACE))
    grid.setColumnStretch(1, 1)
    words = glossary()
    for number, (word, meaning) in enumerate(words):
        grid.addWidget(label(word, "heading", wrap=False), number, 0)
        grid.addWidget(label(meaning), number, 1)
    grid.setRowStretch(len(words), 1)
    return scrolled(inner)
