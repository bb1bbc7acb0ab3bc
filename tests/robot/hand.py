"""The robot's hand: one action by chance at the window as it stands, through its real widgets."""

from __future__ import annotations

import random
from collections.abc import Callable
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

from calibrator.desk.pages.weigh_in import WeighInPage
from calibrator.desk.widgets.quantity_field import QuantityField
from calibrator.desk.window import Window
from calibrator.model import Lot, Step

W = TypeVar("W", bound=QWidget)
TEXTS = (
    "11.6", "11.7", "330 g", "10 oz", "12", "96 mm", "3 5/8 in", "2 gal", "43 °C", "110 F", "12.5 %", "AB", "MK",
    "2 Mar 2026", "Windy Hollow", "25-1103C", "0", "-1", "1,5", "1e9", "", "x", "<b>Tom</b> & 🐄\u202e", "W" * 300,
)  # fmt: skip
LONGEST_PAUSE_S = 60
MOST_TRIES = 20
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
    """Chooses an action, does it, and lets time pass."""

    def __init__(self, window: Window, clock: Clock, rng: random.Random) -> None:
        self._window, self._clock, self._rng = window, clock, rng
        self.done: dict[str, int] = {}
        self._actions: list[tuple[Callable[[], None], int]] = [
            (self._turn_page, 3), (self._press, 8), (self._type, 8), (self._choose, 3), (self._count, 2),
            (self._select, 3), (self._turn_tab, 3), (self._weigh, 6), (self._look_again, 1), (self._resize, 1),
        ]  # fmt: skip

    def act(self) -> None:
        """One action by chance; what it opened is closed again, and what was let go is gone."""
        actions, weights = zip(*self._actions, strict=True)
        action = self._rng.choices(actions, weights)[0]
        action()
        self.done[action.__name__] = self.done.get(action.__name__, 0) + 1
        settle()
        close_dialogs(self._window)
        close_popups()
        settle()
        self._clock.pass_by(self._rng.uniform(1, LONGEST_PAUSE_S))

    def rest(self) -> None:
        """Go to the page that shows most of the records, as before a count of what is there."""
        for key in ("season", "lots", "today"):
            self._window.show_page(key)
            settle()

    def _one(self, kind: type[W]) -> W | None:
        found = [one for one in self._window.findChildren(kind) if one.isVisible() and one.isEnabled()]
        return self._rng.choice(found) if found else None

    def _turn_page(self) -> None:
        QTest.keyClick(self._window, Qt.Key(Qt.Key.Key_1 + self._rng.randrange(7)), _CTRL)

    def _press(self) -> None:
        found = self._one(QAbstractButton)
        if found is not None:
            QTest.mouseClick(found, Qt.MouseButton.LeftButton)

    def _type(self) -> None:
        found = self._one(QLineEdit)
        if found is not None and not found.isReadOnly():
            found.setFocus()
            found.selectAll()
            QApplication.clipboard().setText(self._rng.choice(TEXTS))  # keys of a test know only ASCII
            found.paste()
            QTest.keyClick(found, self._rng.choice((Qt.Key.Key_Return, Qt.Key.Key_Tab, Qt.Key.Key_Escape)))

    def _choose(self) -> None:
        found = self._one(QComboBox)
        if found is not None and found.count():
            place = self._rng.randrange(found.count())
            found.setCurrentIndex(place)
            found.activated.emit(place)

    def _count(self) -> None:
        found = self._one(QSpinBox)
        if found is not None:
            QTest.keyClick(found, self._rng.choice((Qt.Key.Key_Up, Qt.Key.Key_Down)))

    def _select(self) -> None:
        found = self._one(QAbstractItemView)
        model = found.model() if found is not None else None
        if found is not None and model is not None and model.rowCount(QModelIndex()):
            found.setCurrentIndex(model.index(self._rng.randrange(model.rowCount(QModelIndex())), 0))

    def _turn_tab(self) -> None:
        found = self._one(QTabBar)
        if found is not None and found.count():
            found.setCurrentIndex(self._rng.randrange(found.count()))

    def _weigh(self) -> None:
        """A weighing of a lot in hand, as is done most of the day."""
        page = self._window.page("weigh_in")
        assert isinstance(page, WeighInPage)
        if page.guide is None or self._window.current_page is not page:
            lots = self._window.desk.records.every(Lot)
            self._window.show_page("weigh_in", self._rng.choice(lots).id if lots else "")
            return
        if page.guide.step not in (Step.LEVEL_FILLS, Step.FILLS_TO_MARK) or page.guide.signed_off:
            page.next_step() if self._rng.random() < 0.7 else page.close_guide()
            return
        field = page._views[page.guide.step].first_field()
        line = field.line if isinstance(field, QuantityField) else None
        if line is not None:
            QTest.keyClicks(line, f"{self._rng.gauss(11.7, 0.1):.1f}")
            QTest.keyClick(line, Qt.Key.Key_Return)

    def _look_again(self) -> None:
        self._window.watch.look()

    def _resize(self) -> None:
        self._window.resize(self._rng.randrange(1024, 1600), self._rng.randrange(700, 1000))


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
