"""The signed-off weigh-ins are looked through beside the work, in a thread of its own; nobody waits for it."""

from __future__ import annotations

from collections.abc import Sequence
from threading import Event, Thread

from PySide6.QtCore import QObject, Signal

from calibrator.records import Finding, Records, RecordsError


class Guarding(QObject):
    """`found` gives what was found once all are looked through."""

    found = Signal(object)

    def __init__(self, records: Records, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._records = records
        self._stop = Event()
        self._thread: Thread | None = None

    def start(self) -> None:
        self._thread = Thread(target=self._look, name="fingerprints", daemon=True)
        self._thread.start()

    def stop(self) -> None:
        """End early; the records may be closed afterwards."""
        self._stop.set()
        if self._thread is not None:
            self._thread.join()

    def _look(self) -> None:
        try:
            findings: Sequence[Finding] = self._records.check_fingerprints(self._stop.is_set)
        except RecordsError:
            return  # whoever works with the records is told; this is only looking
        if not self._stop.is_set():
            self.found.emit(findings)
