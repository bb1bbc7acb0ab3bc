"""A robot's day at the window, and what is left over after it: memory, windows, timers, errors."""

from __future__ import annotations

import ctypes
import gc
import os
import random
import sys
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QObject, QTimer
from PySide6.QtWidgets import QApplication

from calibrator.desk import busy, watch
from calibrator.desk.ask import Ask
from calibrator.desk.context import Desk
from calibrator.desk.window import Window
from calibrator.records import demo_records
from tests.robot.hand import Clock, Hand, settle
from tests.tour import tour, weigh_a_new_lot

PATIENCE_S = 120.0  # the robot waits for what it began, so that the same seed does the same
WARM_UP = 0.25  # of the day: every page has been made by then


@dataclass(frozen=True)
class Count:
    """What there is at one moment, on the same page each time."""

    memory_mb: float
    windows: int
    timers: int
    widgets: int


@dataclass(frozen=True)
class Day:
    """What came of it. `before` is counted after the warm-up, `after` at the end."""

    actions: int
    by_kind: dict[str, int]
    before: Count
    after: Count
    errors: tuple[str, ...]

    @property
    def memory_growth(self) -> float:
        """As a share of what was there before."""
        return self.after.memory_mb / self.before.memory_mb - 1


def spend(hours: float, seed: int, folder: Path, answers: Ask) -> Day:
    """Let a robot work on the sample season for that many hours of simulated time. One QApplication must be there."""
    rng, clock = random.Random(seed), Clock()
    errors: list[str] = []
    before_hook = sys.excepthook

    def hook(kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        errors.append(f"{kind.__name__}: {error}")
        before_hook(kind, error, trace)

    sys.excepthook = hook
    patience, busy.PATIENCE_S = busy.PATIENCE_S, PATIENCE_S
    try:
        with demo_records(folder) as records:
            busy.PATIENCE_S = watch.PATIENCE_S = (
                600  # the robot waits for what it began, so that the same seed does the same
            )
            desk = Desk(records, answers, clock=clock)
            weigh_a_new_lot(desk)
            window = Window(desk)
            window.show()
            hand = Hand(window, clock, rng)
            for _ in tour(window):
                settle()
            end = clock.now.timestamp() + 3600 * hours
            warm = clock.now.timestamp() + 3600 * hours * WARM_UP
            actions, before = 0, None
            while clock.now.timestamp() < end:
                hand.act()
                actions += 1
                if before is None and clock.now.timestamp() >= warm:
                    before = count(hand)
            after = count(hand)
            assert before is not None
            window.replace_by_another()
            settle()
    finally:
        sys.excepthook = before_hook
        busy.PATIENCE_S = patience
    return Day(actions, dict(sorted(hand.done.items())), before, after, tuple(errors))


def count(hand: Hand) -> Count:
    """Count what is there, on a page of the records, after all rubbish is gone."""
    hand.rest()
    gc.collect()
    settle()
    windows = [one for one in QApplication.topLevelWidgets() if one.isVisible()]
    timers = [one for window in windows for one in window.findChildren(QTimer)]
    app = QApplication.instance()
    assert isinstance(app, QObject)
    return Count(memory_mb(), len(windows), len(timers) + len(app.findChildren(QTimer)), len(QApplication.allWidgets()))


def memory_mb() -> float:
    """What the process holds in memory now; 1 where the system does not tell.

    What was given back to the allocator is first given back to the system, where that can be asked.
    """
    try:
        with suppress(AttributeError, OSError):
            ctypes.CDLL(None).malloc_trim(0)
        pages = int(Path("/proc/self/statm").read_text().split()[1])
    except OSError:
        return 1.0
    return pages * os.sysconf("SC_PAGE_SIZE") / 1e6
