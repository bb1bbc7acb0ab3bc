"""Work that may take long goes on beside the window, with a sign of how far it is and a way to end it.

For a tenth of a second the window waits for it, as for anything else that is pressed: most work is done by then.
Otherwise a sign stands over the window until the work is done, so that nothing else begins meanwhile.
"""

from __future__ import annotations

from collections.abc import Callable
from threading import Event, Thread
from typing import Any, TypeVar

from PySide6.QtCore import QObject, Qt, QTimer, Signal
from PySide6.QtGui import QCloseEvent
from PySide6.QtWidgets import QApplication, QDialog, QProgressBar, QVBoxLayout, QWidget

from calibrator.desk.parts import button, label, row
from calibrator.desk.theme import SPACE
from calibrator.model.underway import Ended, Underway

T = TypeVar("T")
PATIENCE_S = 0.1
LOOK_EVERY_MS = 20
STEPS = 1000


class Busy(QObject):
    """One piece of work at a time, in a thread of its own."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._work: Work | None = None
        self.sign: Sign | None = None
        self._then: Callable[[Any], None] = _nothing
        self._otherwise: Callable[[Exception], None] = _nothing
        self._timer = QTimer(self)
        self._timer.setInterval(LOOK_EVERY_MS)
        self._timer.timeout.connect(self._look)

    @property
    def at_work(self) -> bool:
        return self._work is not None

    def do(
        self,
        what: str,
        work: Callable[[Underway], T],
        then: Callable[[T], None],
        otherwise: Callable[[Exception], None],
    ) -> None:
        """Do some work and give what came of it to `then`, or what went wrong (`Ended` too) to `otherwise`.

        `work` runs in another thread: it may use the records and paint paper, and no widget. Of the share that it
        tells the sign makes a bar. Asked for while other work is underway, nothing is done.
        """
        if self._work is not None:
            return
        self._then, self._otherwise = then, otherwise
        self._work = Work(work)
        self._work.start()
        self._work.join(PATIENCE_S)
        if not self._work.is_alive():
            self._finish()
            return
        self.sign = Sign(what, QApplication.activeWindow())
        self.sign.wanted_to_end.connect(self._work.no_longer_wanted.set)
        self.sign.open()
        self._timer.start()

    def end(self) -> None:
        """The window closes: end what is underway and wait until it has taken back what it began."""
        if self._work is not None:
            self._work.no_longer_wanted.set()
            self._work.join()
            self._put_away()

    def _look(self) -> None:
        if self._work is None or self.sign is None:
            return
        self.sign.show_share(self._work.share)
        if not self._work.is_alive():
            self._finish()

    def _finish(self) -> None:
        work, then, otherwise = self._work, self._then, self._otherwise
        self._put_away()
        if work is None:
            return
        if work.error is not None:
            otherwise(work.error)
        else:
            then(work.result)

    def _put_away(self) -> None:
        self._timer.stop()
        self._work, self._then, self._otherwise = None, _nothing, _nothing
        if self.sign is not None:
            self.sign.put_away()
            self.sign = None


class Work(Thread):
    """What came of it, or what went wrong, is there once it is no longer alive."""

    def __init__(self, work: Callable[[Underway], Any]) -> None:
        super().__init__(name="beside the window", daemon=True)
        self._do = work
        self.no_longer_wanted = Event()
        self.share = 0.0
        self.result: Any = None
        self.error: Exception | None = None

    def run(self) -> None:
        try:
            self.result = self._do(self._underway)
        except Exception as error:  # whatever it is, it is told where a person can read it
            self.error = error

    def _underway(self, share: float) -> None:
        self.share = share
        if self.no_longer_wanted.is_set():
            raise Ended


class Sign(QDialog):
    """Says what is underway and how far it is. Its button, Escape and its closing all ask for the end."""

    wanted_to_end = Signal()

    def __init__(self, what: str, parent: QWidget | None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Scoop calibration"))
        self.setWindowModality(Qt.WindowModality.ApplicationModal)
        self.setMinimumWidth(420)
        self._put_away = False
        self.bar = QProgressBar()
        self.bar.setRange(0, 0)  # nothing told yet: a bar that only moves
        self.bar.setTextVisible(False)
        self.bar.setAccessibleName(what)
        self.bar.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.bar.setFocus()  # Enter, pressed once too often, ends nothing
        self.end_button = button(self.tr("Stop"), self.reject)
        self.end_button.setAutoDefault(False)
        body = QVBoxLayout(self)
        body.setSpacing(2 * SPACE)
        body.addWidget(label(what, "heading"))
        body.addWidget(self.bar)
        body.addLayout(row(None, self.end_button))

    def show_share(self, share: float) -> None:
        """How far it is, 0 to 1; at 0 the bar only moves."""
        if share > 0:
            self.bar.setRange(0, STEPS)
            self.bar.setValue(round(share * STEPS))

    def reject(self) -> None:
        self.end_button.setEnabled(False)
        self.end_button.setText(self.tr("Stopping …"))
        self.wanted_to_end.emit()

    def put_away(self) -> None:
        self._put_away = True
        self.close()
        self.deleteLater()

    def closeEvent(self, event: QCloseEvent) -> None:
        if self._put_away:
            event.accept()
            return
        self.reject()
        event.ignore()


def _nothing(_result: object) -> None: ...
