"""Looks every few seconds for what other computers have kept, and sends what waits for the server.

It looks beside the window: a server that is away lets whoever asks wait for seconds, in which nobody could type.
"""

from __future__ import annotations

from PySide6.QtCore import QObject, QTimer, Signal

from calibrator.desk.background import Background
from calibrator.desk.context import Desk
from calibrator.model.underway import Ended, Underway
from calibrator.records import ELSEWHERE, RecordsError, RecordsUnreachable

PATIENCE_S = 0.02
LOOK_AGAIN_MS = 5000
LOOK_AT_LEAST_MS = 60_000


class Watch(QObject):
    """`looked` tells after each look: the error where the records were not reached, else None."""

    looked = Signal(object)

    def __init__(self, desk: Desk, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._version = desk.records.version()
        self._reached = self._version < ELSEWHERE
        self.hindrance: RecordsError | None = None  # why the server, which is there, takes nothing of what waits
        self._waiting = 0
        self._stuck = 0
        self._work = Background(self)
        self._work.done.connect(self._seen)
        self._work.failed.connect(self._not_reached)
        self._copying = Background(self)
        self._copying.failed.connect(self._not_copied)
        self.timer = QTimer(self)
        self.timer.setInterval(LOOK_AGAIN_MS)
        self.timer.timeout.connect(self.look)
        self.timer.start()

    @property
    def alone(self) -> bool:
        """Whether the server is away and this computer's copy stands in for it."""
        return not self._reached and self._desk.outbox is not None and self._desk.outbox.ready

    def stop(self) -> None:
        """Look no more. A file is let go of first, because another may take its place."""
        self.timer.stop()
        self._work.stop(wait=not self._desk.records.on_server)
        self._copying.stop()

    def take(self, version: int) -> None:
        """What is kept up to here is on the screen already."""
        self._version = version

    def look(self) -> None:
        """Look now, unless a look is underway or reading might have to wait for what is being written."""
        if not self._desk.busy.at_work and not self._work.at_work:
            self._waiting = self._desk.waiting
            self._work.start(self._look, patience_s=PATIENCE_S)

    def follow(self) -> None:
        """Bring the copy on this computer up to date with the server, to be read while that is away."""
        if self._desk.outbox is not None and not self._copying.at_work:
            self._copying.start(self._desk.records.follow, patience_s=PATIENCE_S)

    def _look(self, underway: Underway) -> int:
        """The records' version, once what waited is sent."""
        records, outbox = self._desk.records, self._desk.outbox
        version = records.version(anew=True)
        if outbox is None or not outbox.waiting:
            return version
        outbox.deliver(records, underway)
        return records.version()

    def _seen(self, version: int) -> None:
        self._reached, self.hindrance = True, None
        if version != self._version or self._desk.waiting < self._waiting:
            self._desk.changed.emit()
        self.follow()
        self.timer.setInterval(LOOK_AGAIN_MS)
        self.looked.emit(None)

    def _not_reached(self, error: Exception) -> None:
        if not isinstance(error, RecordsError):
            raise error
        self._reached = not isinstance(error, RecordsUnreachable)
        self.hindrance = error if self._reached and self._desk.waiting else None
        outbox = self._desk.outbox
        before, self._stuck = self._stuck, outbox.stuck.number if outbox is not None and outbox.stuck else 0
        if self._desk.waiting < self._waiting or self._stuck != before:
            self._desk.changed.emit()  # some of it was sent before, or there is a way out to show
        if self.hindrance is not None:
            self.follow()  # what others keep is seen all the same
        self.timer.setInterval(min(2 * self.timer.interval(), LOOK_AT_LEAST_MS))
        self.looked.emit(error)

    def _not_copied(self, error: Exception) -> None:
        if not isinstance(error, RecordsError | Ended):
            raise error  # that the server is away is told by the next look
