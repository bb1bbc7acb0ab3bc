"""Slow work in a thread of its own, so that the screen goes on answering; it can be stopped at any time.

The thread knows no widget: what comes of it is fetched by a timer of the screen's own thread.
"""

from __future__ import annotations

from collections.abc import Callable
from threading import Event, Thread
from time import monotonic
from typing import Any

from PySide6.QtCore import QObject, QTimer, Signal

from calibrator.records import RecordsError
from calibrator.records.moving import Stopped

LOOK_MS = 40

Heard = Callable[[int, int], None]
"""Told how far the work is; raises `Stopped` once nobody waits for it any more."""


class Background(QObject):
    """One piece of work at a time. Starting another one forgets the one before.

    `done(result)`, `failed(error)` with a `RecordsError`, or `late()` when the time is up; `went(done, of)` between.
    """

    done = Signal(object)
    failed = Signal(object)
    late = Signal()
    went = Signal(int, int)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._running: _Running | None = None
        self._until = 0.0
        self._timer = QTimer(self)
        self._timer.setInterval(LOOK_MS)
        self._timer.timeout.connect(self._look)

    @property
    def busy(self) -> bool:
        return self._running is not None

    def start(self, work: Callable[[Heard], Any], limit_s: float | None = None) -> None:
        """Begin. `limit_s` is how long a person should wait for it."""
        self.stop()
        self._until = monotonic() + limit_s if limit_s else float("inf")
        self._running = _Running(work)
        self._timer.start()

    def stop(self) -> None:
        """Forget the work: what comes of it is told to nobody."""
        self._timer.stop()
        if self._running is not None:
            self._running.unwanted.set()
        self._running = None

    def _look(self) -> None:
        running = self._running
        if running is None:
            return
        if not running.ended.is_set():
            self.went.emit(*running.place)
            if monotonic() > self._until:
                self.stop()
                self.late.emit()
            return
        self.stop()
        if isinstance(running.error, RecordsError):
            self.failed.emit(running.error)
        elif running.error is not None:
            raise running.error  # a mistake of our own: logged and told as any other
        else:
            self.done.emit(running.result)


class _Running:
    def __init__(self, work: Callable[[Heard], Any]) -> None:
        self._work = work
        self.unwanted, self.ended = Event(), Event()
        self.place = (0, 0)
        self.result: Any = None
        self.error: Exception | None = None
        Thread(target=self._run, name="background", daemon=True).start()

    def _run(self) -> None:
        try:
            self.result = self._work(self._hear)
        except Stopped:
            pass
        except Exception as error:  # handed to the screen's thread, which knows what to do with it
            self.error = error
        self.ended.set()

    def _hear(self, done: int, of: int) -> None:
        self.place = (done, of)
        if self.unwanted.is_set():
            raise Stopped
