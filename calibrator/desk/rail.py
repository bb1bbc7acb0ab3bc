"""The rail: the farm and the pages at the left of the window, with a gap where passing notices stand."""

from __future__ import annotations

from PySide6.QtCore import QRect, Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QApplication, QButtonGroup, QLabel, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.emblem import Emblem
from calibrator.desk.farms_menu import FarmsMenu
from calibrator.desk.parts import button, label
from calibrator.desk.pictograms import SIZE, pictogram
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.stray_keys import SteadyButton

RAIL_PX = 196
ABOVE, BELOW = "season", "setup"
"""The pages whose buttons stand above and below the gap."""


class Rail(QWidget):
    """A button for each page; Ctrl with its number presses it from anywhere in the window, the rail hidden or not.

    The number is written before the name; Alt with a letter is left to the pages.
    """

    wanted = Signal(str)
    """The page whose button was pressed."""

    by_key = False
    """Whether a key called the page: whoever works by keys goes on in it. Arrows only go along the rail."""

    def __init__(self, desk: Desk, window: QWidget) -> None:
        super().__init__(window)
        self.setObjectName("rail")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setFixedWidth(RAIL_PX)
        self._farm_name = label("", "quiet")
        self._farm_name.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(SPACE, 2 * SPACE, SPACE, 2 * SPACE)
        layout.setSpacing(4)
        layout.addWidget(Emblem(), 0, Qt.AlignmentFlag.AlignHCenter)
        layout.addWidget(self._farm_name)
        beneath_name = layout.count()
        layout.addSpacing(SPACE)
        self.buttons = self._make_buttons(window)
        for key, made in self.buttons.items():
            if key == BELOW:
                layout.addStretch(1)
            layout.addWidget(made)
        layout.addWidget(self._how_called())
        self.farms = FarmsMenu(desk)  # made last: the pages come first under the Tab key, which leaves the rail here
        layout.insertWidget(beneath_name, self.farms, 0, Qt.AlignmentFlag.AlignHCenter)

    def name_farm(self, name: str) -> None:
        self._farm_name.setText(name)

    @property
    def farm_name(self) -> str:
        return self._farm_name.text()

    def light(self, key: str) -> None:
        """Show which page is in hand; a page without a button leaves the last one lit."""
        made = self.buttons.get(key)
        if made is None:
            return
        made.setChecked(True)
        for each in self.buttons.values():  # Qt leaves the Tab key to the one that had it last, and Enter went there
            each.setFocusPolicy(Qt.FocusPolicy.StrongFocus if each is made else Qt.FocusPolicy.ClickFocus)
        if self.holds_focus():  # else one is lit and another framed
            made.setFocus(Qt.FocusReason.OtherFocusReason)

    def holds_focus(self) -> bool:
        return self.window().focusWidget() in self.buttons.values()

    def draw_anew(self) -> None:
        """Take up the colours now in force."""
        for key, made in self.buttons.items():
            made.setIcon(pictogram(key))

    def gap(self) -> QRect:
        """The free place between the buttons, in the rail."""
        above, below = self.buttons[ABOVE].geometry(), self.buttons[BELOW].geometry()
        top = above.bottom() + SPACE
        return QRect(SPACE, top, above.width(), below.top() - SPACE - top)

    def _how_called(self) -> QLabel:
        told = label(self.tr("Ctrl + number opens it"), "quiet")
        told.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        return told

    def _make_buttons(self, window: QWidget) -> dict[str, SteadyButton]:
        names = {
            "today": self.tr("Today"),
            "lots": self.tr("Lots"),
            "weigh_in": self.tr("Weigh-in"),
            "tables": self.tr("Batch tables"),
            "mix_check": self.tr("Mix check"),
            "season": self.tr("Season"),
            "setup": self.tr("Set-up"),
            "help": self.tr("Help"),
        }
        group = QButtonGroup(self)
        buttons = {}
        for number, (key, name) in enumerate(names.items(), start=1):
            buttons[key] = made = button(f"{number} {name}", self._pressed)
            made.setAccessibleName(name)
            made.setProperty("kind", "rail")
            made.setProperty("page", key)
            made.setCheckable(True)
            made.setIcon(pictogram(key))
            made.setIconSize(SIZE)
            made.setToolTip(self.tr("Ctrl+{number}").format(number=number))
            made.pressed.connect(self._note_key)
            group.addButton(made)
            called = QShortcut(QKeySequence(f"Ctrl+{number}"), window)
            called.setProperty("page", key)
            called.activated.connect(self._call)
        return buttons

    def _note_key(self) -> None:
        made = self.sender()
        by_arrow = self.holds_focus() and self.window().focusWidget() is not made  # it follows once pressed
        self.by_key = QApplication.mouseButtons() == Qt.MouseButton.NoButton and not by_arrow

    def _call(self) -> None:
        made = self.buttons[self.sender().property("page")]
        if self.holds_focus():
            made.setFocus(Qt.FocusReason.ShortcutFocusReason)
        made.click()

    def _pressed(self) -> None:
        self.wanted.emit(self.sender().property("page"))
