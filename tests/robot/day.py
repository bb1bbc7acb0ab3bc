"""A robot's day at the window, and what is left over after it: memory, windows, timers, errors."""

from __future__ import annotations

import ctypes
import gc
import os
import random
import sys
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager, suppress
from dataclasses import dataclass
from datetime import timedelta
from functools import partial
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QObject, QTimer
from PySide6.QtWidgets import QApplication

from calibrator.desk import app, busy, watch
from calibrator.desk.context import Desk
from calibrator.desk.settings import Settings
from calibrator.desk.window import Window
from calibrator.records import backup, demo_records
from tests.robot.chance import ByChance
from tests.robot.hand import Clock, Hand, settle
from tests.robot.jobs import JOBS
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
    """What came of it. It is counted after the warm-up, each hour and at the end."""

    actions: int
    by_kind: dict[str, int]
    counts: tuple[Count, ...]
    errors: tuple[str, ...]

    @property
    def before(self) -> Count:
        return self.counts[0]

    @property
    def after(self) -> Count:
        return self.counts[-1]

    @property
    def most_memory_mb(self) -> float:
        """Of all that was counted after the warm-up."""
        return max(one.memory_mb for one in self.counts[1:])

    @property
    def memory_growth(self) -> float:
        """To the most of it, as a share of what was there after the warm-up."""
        return self.most_memory_mb / self.before.memory_mb - 1


def spend(hours: float, seed: int, folder: Path) -> Day:
    """Let a robot work on the sample season for that many hours of simulated time. One QApplication must be there.

    It begins with a tour of every screen and does each job once; then it goes by chance.
    """
    rng, clock = random.Random(seed), Clock()
    errors: list[str] = []
    with _as_in_the_program(errors, clock), ExitStack() as at_the_end:
        opener = _opened(folder, rng, clock)
        at_the_end.callback(_close, opener)
        hand = Hand(partial(_window, opener), clock, rng)
        for _ in tour(hand.window):
            settle()
        opener._speak_now()  # another window: that of the tour keeps the dialogs which were only shown in it
        settle()
        for job, _ in JOBS:
            hand.do(job)
        end, counts = clock.now + timedelta(hours=hours), []
        due = clock.now + timedelta(hours=hours * WARM_UP)
        while clock.now < end:
            hand.act(JOBS)
            if clock.now >= due:
                counts.append(_counted_anew(opener, hand))
                due = clock.now + timedelta(hours=1)
        counts.append(_counted_anew(opener, hand))
    done = dict(sorted(hand.done.items()))
    return Day(sum(done.values()), done, tuple(counts), tuple(errors))


@contextmanager
def _as_in_the_program(errors: list[str], clock: Clock) -> Iterator[None]:
    """Errors are noted as the program notes them, its clock is the robot's, and nothing goes on unasked.

    The robot waits for what it began, so that the same seed does the same.
    """
    before_hook, patience = sys.excepthook, (busy.PATIENCE_S, watch.PATIENCE_S)
    warms_up, local_now = app.WARMS_UP, app.local_now

    def hook(kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        errors.append(f"{kind.__name__}: {error}")
        before_hook(kind, error, trace)

    sys.excepthook, app.WARMS_UP, app.local_now = hook, False, clock
    busy.PATIENCE_S = watch.PATIENCE_S = PATIENCE_S
    try:
        yield
    finally:
        sys.excepthook, app.WARMS_UP, app.local_now = before_hook, warms_up, local_now
        busy.PATIENCE_S, watch.PATIENCE_S = patience


def _opened(folder: Path, rng: random.Random, clock: Clock) -> app.Opener:
    """The program on a file with the sample season and a lot just weighed in; copies of it lie beside."""
    answers = ByChance(rng, folder)
    with demo_records(folder) as records:
        weigh_a_new_lot(Desk(records, answers, clock=clock))
        answers.lay_ready(records)
    file = folder / "demo.sqlite"
    for day in (2, 1):
        backup.make(file, "daily", clock() - timedelta(days=day))
    running = QApplication.instance()
    assert isinstance(running, QApplication)
    opener = app.Opener(running, answers, str(file), Settings())
    opener.open()
    return opener


def _counted_anew(opener: app.Opener, hand: Hand) -> Count:
    """Count in a window just made: in one that was worked in, forms and pages stand that were made when needed."""
    opener._speak_now()
    settle()
    return count(hand)


def _window(opener: app.Opener) -> Window:
    assert opener.window is not None, "the window is gone"
    return opener.window


def _close(opener: app.Opener) -> None:
    if opener.window is not None:
        opener.window.replace_by_another()
    opener._tongue.speak("en")
    opener.close()
    settle()


def count(hand: Hand) -> Count:
    """Count what is there, on a page of the records, after all rubbish is gone."""
    hand.rest()
    gc.collect()
    settle()
    windows = [one for one in QApplication.topLevelWidgets() if one.isVisible()]
    running = QApplication.instance()
    assert isinstance(running, QObject)
    timers = [one for owner in (running, *windows) for one in owner.findChildren(QTimer)]
    # Timers that rest, or run once and rest, grow with what there is to show. What must not grow ticks on.
    ticking = sum(one.isActive() and not one.isSingleShot() for one in timers)
    return Count(memory_mb(), len(windows), ticking, len(QApplication.allWidgets()))


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
