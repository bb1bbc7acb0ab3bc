"""What keeps the records safe goes on beside the work, in threads of its own; nobody waits for it."""

from __future__ import annotations

from collections.abc import Callable
from threading import Event, Thread

from PySide6.QtCore import QObject, Signal

from calibrator.model.underway import Ended
from calibrator.records import Records, RecordsError


class Guarding(QObject):
    """`found` gives what was found once all sign-offs are looked through, `not_copied` why there is no copy."""

    found = Signal(object)
    not_copied = Signal(object)

    def __init__(self, records: Records, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._records = records
        self._stop = Event()
        self._threads: list[Thread] = []

    def start(self) -> None:
        """Look through the signed-off weigh-ins."""
        self._begin(self._look)

    def copy(self) -> None:
        """Make the day's copy, if it is not there yet."""
        self._begin(self._copy)

    def stop(self) -> None:
        """End early; the records may be closed afterwards."""
        self._stop.set()
        for thread in self._threads:
            thread.join()

    def _begin(self, work: Callable[[], None]) -> None:
        self._threads = [thread for thread in self._threads if thread.is_alive()]
        if not self._stop.is_set():
            self._threads.append(Thread(target=work, name="beside the work", daemon=True))
            self._threads[-1].start()

    def _look(self) -> None:
        try:
            findings = self._records.check_fingerprints(self._underway)
        except (RecordsError, Ended):
            return  # whoever works with the records is told; this is only looking
        if not self._stop.is_set():
            self.found.emit(findings)

    def _copy(self) -> None:
        try:
            self._records.backup_if_due(self._underway)
        except RecordsError as error:
            self.not_copied.emit(error)
        except Ended:
            return  # the next opening makes it

    def _underway(self, _share: float) -> None:
        if self._stop.is_set():
            raise Ended
