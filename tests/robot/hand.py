"""The robot's hand: one action by chance at the window as it stands, through its real widgets."""

from __future__ import annotations

import random
import time
from collections.abc import Callable, Sequence
from datetime import UTC, datetime, timedelta
from typing import TypeVar

from PySide6.QtCore import QCoreApplication, QEvent, QModelIndex, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QApplication,
    QComboBox,
    QDialog,
    QLineEdit,
    QSpinBox,
    QTabBar,
    QWidget,
)
from shiboken6 import isValid

from calibrator.desk.pages.weigh_in import WeighInPage
from calibrator.desk.warming import ORDER
from calibrator.desk.widgets.quantity_field import QuantityField
from calibrator.desk.window import Window
from calibrator.model import Lot, Step

W = TypeVar("W", bound=QWidget)
Job = Callable[["Hand"], None]
TEXTS = (
    "11.6", "11.7", "330 g", "10 oz", "12", "96 mm", "3 5/8 in", "2 gal", "43 °C", "110 F", "12.5 %", "AB", "MK",
    "2 Mar 2026", "Windy Hollow", "25-1103C", "0", "-1", "1,5", "1e9", "", "x", "<b>Tom</b> & 🐄\u202e", "W" * 300,
)  # fmt: skip
LONGEST_PAUSE_S = 60
MOST_TRIES = 20
MOST_WAIT_S = 60
_CTRL = Qt.KeyboardModifier.ControlModifier


class Clock:
    """Time that passes only when the robot says so."""

    def __init__(self) -> None:
        self.now = datetime(2026, 11, 25, 6, tzinfo=UTC)

    def __call__(self) -> datetime:
        return self.now

    def pass_by(self, seconds: float) -> None:
        self.now += timedelta(seconds=seconds)


class Hand:
    """Chooses an action, does it, and lets time pass. The window is asked for anew: it may give way to another."""

    def __init__(self, window: Callable[[], Window], clock: Clock, rng: random.Random) -> None:
        self._window, self._clock, self.rng = window, clock, rng
        self.done: dict[str, int] = {}
        self._actions: list[tuple[Callable[[], None], int]] = [
            (self._turn_page, 12), (self._press, 32), (self._type, 32), (self._choose, 12), (self._count, 8),
            (self._select, 12), (self._turn_tab, 12), (self._weigh, 24), (self._look_again, 4), (self._resize, 4),
        ]  # fmt: skip

    @property
    def window(self) -> Window:
        return self._window()

    def act(self, jobs: Sequence[tuple[Job, int]] = ()) -> None:
        """One action by chance, or one of the jobs, each as often as the number beside it says."""
        weights = [weight for _, weight in (*self._actions, *jobs)]
        place = self.rng.choices(range(len(weights)), weights)[0]
        if place < len(self._actions):
            action = self._actions[place][0]
            self._done(action, action.__name__)
        else:
            self.do(jobs[place - len(self._actions)][0])

    def do(self, job: Job) -> None:
        """One job."""
        self._done(lambda: job(self), job.__name__)

    def _done(self, action: Callable[[], None], name: str) -> None:
        """Do it; what it opened is closed again, and what was let go is gone."""
        action()
        self.done[name] = self.done.get(name, 0) + 1
        settle()
        close_dialogs(self.window)
        close_popups()
        settle()
        self._clock.pass_by(self.rng.uniform(1, LONGEST_PAUSE_S))

    def rest(self) -> None:
        """Go through all pages and stay at the first, so that the same is there before each count of it."""
        for key in (*ORDER, "today"):
            self.window.show_page(key)
            settle()

    def press(self, found: QAbstractButton) -> None:
        """Click a button, if it can be pressed."""
        if found.isVisible() and found.isEnabled():
            QTest.mouseClick(found, Qt.MouseButton.LeftButton)
            settle()

    def put(self, line: QLineEdit, text: str, key: Qt.Key | None = None) -> None:
        """Type over what stands in a field, if it can be typed in."""
        if not line.isVisible() or not line.isEnabled() or line.isReadOnly():
            return
        line.setFocus()
        line.selectAll()
        QApplication.clipboard().setText(text)  # keys of a test know only ASCII
        line.paste()
        if key is not None:
            QTest.keyClick(line, key)
        settle()

    def choose(self, box: QComboBox) -> None:
        """Choose anything of a list."""
        if box.isVisible() and box.isEnabled() and box.count():
            place = self.rng.randrange(box.count())
            box.setCurrentIndex(place)
            box.activated.emit(place)
            settle()

    def dialog(self, kind: type[W]) -> W | None:
        """The dialog of that kind that is open over the window."""
        return next((one for one in self.window.findChildren(kind) if one.isVisible()), None)

    def fiddle(self, within: QWidget, times: int) -> None:
        """Press, type and choose by chance, as long as the dialog stays open."""
        acts = (self._press, self._type, self._choose, self._choose, self._select, self._turn_tab)
        for _ in range(times):
            if not isValid(within) or not within.isVisible():
                return
            self.rng.choice(acts)(within)
            settle()

    def wait(self, come: Callable[[], bool], what: str) -> None:
        """Let the program work until something has come. Fails where it does not come in time."""
        end = time.monotonic() + MOST_WAIT_S
        while not come():
            assert time.monotonic() < end, f"{what} did not come within {MOST_WAIT_S} s"
            QTest.qWait(10)

    def _one(self, kind: type[W], within: QWidget | None) -> W | None:
        found = [one for one in (within or self.window).findChildren(kind) if one.isVisible() and one.isEnabled()]
        return self.rng.choice(found) if found else None

    def _turn_page(self) -> None:
        QTest.keyClick(self.window, Qt.Key(Qt.Key.Key_1 + self.rng.randrange(7)), _CTRL)

    def _press(self, within: QWidget | None = None) -> None:
        found = self._one(QAbstractButton, within)
        if found is not None:
            self.press(found)

    def _type(self, within: QWidget | None = None) -> None:
        found = self._one(QLineEdit, within)
        if found is not None:
            keys = (Qt.Key.Key_Return, Qt.Key.Key_Tab, Qt.Key.Key_Escape)
            self.put(found, self.rng.choice(TEXTS), self.rng.choice(keys))

    def _choose(self, within: QWidget | None = None) -> None:
        found = self._one(QComboBox, within)
        if found is not None:
            self.choose(found)

    def _count(self) -> None:
        found = self._one(QSpinBox, None)
        if found is not None:
            QTest.keyClick(found, self.rng.choice((Qt.Key.Key_Up, Qt.Key.Key_Down)))

    def _select(self, within: QWidget | None = None) -> None:
        found = self._one(QAbstractItemView, within)
        model = found.model() if found is not None else None
        if found is not None and model is not None and model.rowCount(QModelIndex()):
            found.setCurrentIndex(model.index(self.rng.randrange(model.rowCount(QModelIndex())), 0))

    def _turn_tab(self, within: QWidget | None = None) -> None:
        found = self._one(QTabBar, within)
        if found is not None and found.count():
            found.setCurrentIndex(self.rng.randrange(found.count()))

    def _weigh(self) -> None:
        """A weighing of a lot in hand, as is done most of the day."""
        page = self.window.page("weigh_in")
        assert isinstance(page, WeighInPage)
        if page.guide is None or self.window.current_page is not page:
            lots = self.window.desk.records.every(Lot)
            self.window.show_page("weigh_in", self.rng.choice(lots).id if lots else "")
            return
        if page.guide.step not in (Step.LEVEL_FILLS, Step.FILLS_TO_MARK) or page.guide.signed_off:
            page.next_step() if self.rng.random() < 0.7 else page.close_guide()
            return
        field = page._views[page.guide.step].first_field()
        line = field.line if isinstance(field, QuantityField) else None
        if line is not None:
            QTest.keyClicks(line, f"{self.rng.gauss(11.7, 0.1):.1f}")
            QTest.keyClick(line, Qt.Key.Key_Return)

    def _look_again(self) -> None:
        self.window.watch.look()

    def _resize(self) -> None:
        self.window.resize(self.rng.randrange(1024, 1600), self.rng.randrange(700, 1000))


def close_dialogs(window: QWidget) -> None:
    """What is open over the window, as by Escape, from the topmost down. Fails where one stays however often."""
    for _ in range(MOST_TRIES):
        still_open = [one for one in window.findChildren(QDialog) if one.isVisible()]
        if not still_open:
            return
        still_open[-1].reject()
        settle()
    raise AssertionError(f"{type(still_open[-1]).__name__} refuses to close")


def close_popups() -> None:
    """Lists and menus that hang open, as when somebody looks elsewhere. Fails where one stays however often."""
    for _ in range(MOST_TRIES):
        popup = QApplication.activePopupWidget()
        if popup is None:
            return
        popup.close()
        settle()
    raise AssertionError(f"{type(popup).__name__} refuses to close")


def settle() -> None:
    """Let what is due happen, and what was let go be gone."""
    QApplication.processEvents()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
