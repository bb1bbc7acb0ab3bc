"""Slow work in a thread of its own, so that the screen goes on answering; it can be ended at any time.

The thread knows no widget: what comes of it is fetched by a timer of the screen's own thread.
"""

from __future__ import annotations

from collections.abc import Callable
from threading import Event, Thread
from time import monotonic
from typing import Any

from PySide6.QtCore import QObject, QTimer, Signal

from calibrator.model.underway import Ended, Underway

LOOK_EVERY_MS = 20


class Background(QObject):
    """One piece of work at a time. Starting another one forgets the one before.

    `done(result)`, `failed(error)`, or `late()` when the time is up; `went(share)` between. Whoever hears of an error
    raises what is a mistake of our own, so that it is logged and told as any other.
    """

    done = Signal(object)
    failed = Signal(object)
    late = Signal()
    went = Signal(float)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._work: _Work | None = None
        self._until = 0.0
        self._timer = QTimer(self)
        self._timer.setInterval(LOOK_EVERY_MS)
        self._timer.timeout.connect(self._look)

    @property
    def at_work(self) -> bool:
        return self._work is not None

    def start(self, work: Callable[[Underway], Any], *, limit_s: float | None = None, patience_s: float = 0.0) -> None:
        """Begin. `limit_s` is how long a person should wait for it; within `patience_s` the caller waits."""
        self.stop()
        self._until = monotonic() + limit_s if limit_s else float("inf")
        self._work = _Work(work)
        self._work.start()
        self._timer.start()
        if patience_s:
            self._work.join(patience_s)
            self._look()

    def end(self) -> None:
        """Ask the work to take back what it began; once it has, it fails with `Ended`."""
        if self._work is not None:
            self._work.unwanted.set()

    def stop(self, *, wait: bool = False) -> None:
        """Forget the work: what comes of it is told to nobody. Where asked, wait until it has taken back its own."""
        self._timer.stop()
        work, self._work = self._work, None
        if work is not None:
            work.unwanted.set()
            if wait:
                work.join()

    def _look(self) -> None:
        work = self._work
        if work is None:
            return
        if work.is_alive():
            self.went.emit(work.share)
            if monotonic() > self._until:
                self.stop()
                self.late.emit()
            return
        self.stop()
        if work.error is not None:
            self.failed.emit(work.error)
        else:
            self.done.emit(work.result)


class _Work(Thread):
    """What came of it, or what went wrong, is there once it is no longer alive."""

    def __init__(self, do: Callable[[Underway], Any]) -> None:
        super().__init__(name="beside the window", daemon=True)
        self._do = do
        self.unwanted = Event()
        self.share = 0.0
        self.result: Any = None
        self.error: Exception | None = None

    def run(self) -> None:
        try:
            self.result = self._do(self._underway)
        except Exception as error:  # handed to the screen's thread, where a person can read it
            self.error = error

    def _underway(self, share: float) -> None:
        self.share = share
        if self.unwanted.is_set():
            raise Ended
