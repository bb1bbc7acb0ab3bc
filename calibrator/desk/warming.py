"""Pages are made ready while nobody waits for them, so that the first look at each is as quick as the next.

What they are built of is loaded in a thread; then each is made, read and painted once out of sight, a small piece at a
time and none while somebody types, answers or waits.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial
from threading import Event, Thread

from PySide6.QtCore import QObject, QTimer
from PySide6.QtWidgets import QApplication

from calibrator.desk.window import Window, load_page
from calibrator.records import RecordsError

BEGIN_AFTER_MS = 600
BETWEEN_MS = 120
READ_UP_TO = 20_000
"""Changes in the records: the pages of larger ones take long to read, and wait until they are asked for."""
ORDER = ("weigh_in", "lots", "tables", "mix_check", "season", "setup", "help")


class Warming(QObject):
    """One window at a time."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._window: Window | None = None
        self._pieces: Iterator[Callable[[], object]] = iter(())
        self._no_longer = Event()
        self._thread: Thread | None = None
        self._timer = QTimer(self)
        self._timer.timeout.connect(self._go_on)

    @property
    def at_work(self) -> bool:
        return self._timer.isActive()

    def start(self, window: Window) -> None:
        """Begin once the window has settled."""
        self._window, self._pieces = window, _pieces(window)
        self._timer.start(BEGIN_AFTER_MS)

    def stop(self) -> None:
        """End between two pieces; the window may be let go of afterwards."""
        self._timer.stop()
        self._window = None
        self._no_longer.set()
        if self._thread is not None:
            self._thread.join()
        self._thread = None
        self._no_longer.clear()

    def _go_on(self) -> None:
        window = self._window
        if window is None or not window.isVisible():
            self.stop()
            return
        self._timer.setInterval(BETWEEN_MS)
        if self._thread is None:
            self._thread = Thread(target=self._load, name="loading of pages", daemon=True)
            self._thread.start()
        elif not self._thread.is_alive() and not _wanted_elsewhere(window):
            self._next_piece()

    def _load(self) -> None:
        for key in ORDER:
            if self._no_longer.is_set():
                return
            load_page(key)

    def _next_piece(self) -> None:
        try:
            next(self._pieces, self.stop)()
        except RecordsError:
            self.stop()  # whoever goes to the page is told


def _pieces(window: Window) -> Iterator[Callable[[], object]]:
    """What is left to do for each page, asked for one by one, as pages may be opened meanwhile."""
    records = window.desk.records
    if records.on_server or window.current_page.key == "welcome":
        return
    for key in ORDER:
        if not window.has_page(key):
            yield partial(window.page, key)
            if records.version() <= READ_UP_TO:
                yield partial(window.read_ahead, key)
                yield partial(window.paint_ahead, key)


def _wanted_elsewhere(window: Window) -> bool:
    in_question = QApplication.activeModalWidget() or QApplication.activePopupWidget()
    return bool(in_question or window.desk.busy.at_work or window.typed())
