"""Says that a season of many lots is being looked through, how far that is, and ends it or begins it again."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import QHBoxLayout, QProgressBar, QWidget

from calibrator.desk.busy import LOOK_EVERY_MS, STEPS, Work
from calibrator.desk.parts import button, label
from calibrator.desk.refusals import in_words
from calibrator.desk.theme import SPACE
from calibrator.model.underway import Ended, Underway
from calibrator.records import RecordsError

BAR_WIDTH = 160
BEGIN_AFTER_MS = 100  # the picture is painted before


class Looking(QWidget):
    """A line in the page, so that the picture can be looked at meanwhile. Hidden while nothing is underway."""

    done = Signal()

    def __init__(self) -> None:
        super().__init__()
        self._what = ""
        self._do: Callable[[Underway], None] = _nothing
        self._work: Work | None = None
        self.words, self.bar = label("", "quiet"), QProgressBar()
        self.bar.setRange(0, STEPS)
        self.bar.setTextVisible(False)
        self.bar.setFixedWidth(BAR_WIDTH)
        self.end_button = button(self.tr("Stop"), self.end)
        self.again_button = button(self.tr("Look through them"), self._begin)
        self._timer = QTimer(self)
        self._timer.setInterval(LOOK_EVERY_MS)
        self._timer.timeout.connect(self._look)
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(BEGIN_AFTER_MS)
        self._soon.timeout.connect(self._start)
        line = QHBoxLayout(self)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(SPACE)
        line.addWidget(self.words, 1)
        for widget in (self.bar, self.end_button, self.again_button):
            line.addWidget(widget)
        self.hide()

    @property
    def at_work(self) -> bool:
        return self._work is not None

    def begin(self, what: str, do: Callable[[Underway], None]) -> None:
        """Do this in another thread, where it may use no widget; `done` tells when. What was underway ends."""
        self.leave()
        self._what, self._do = what, do
        self._begin()

    def leave(self) -> None:
        """Nobody wants any more what is underway; say nothing of it."""
        self._timer.stop()
        self._soon.stop()
        if self._work is not None:
            self._work.no_longer_wanted.set()
            self._work = None
        self.hide()

    def end(self) -> None:
        """The person ends it."""
        self.leave()
        self._say(self.tr("Stopped: not everything was looked through."))

    def _begin(self) -> None:
        self._work = Work(self._do)
        self._soon.start()
        self._say(self._what)

    def _start(self) -> None:
        if self._work is not None:
            self._work.start()
            self._timer.start()

    def _say(self, words: str) -> None:
        self.words.setText(words)
        self.bar.setValue(0)
        self.bar.setAccessibleName(words)
        for widget in (self.bar, self.end_button):
            widget.setVisible(self.at_work)
        self.again_button.setVisible(not self.at_work)
        self.show()

    def _look(self) -> None:
        work = self._work
        if work is None:
            return
        self.bar.setValue(round(work.share * STEPS))
        if work.is_alive():
            return
        self.leave()
        if work.error is None:
            self.done.emit()
        elif isinstance(work.error, RecordsError):
            self._say(in_words(work.error))
        elif not isinstance(work.error, Ended):
            raise work.error


def _nothing(_underway: Underway) -> None: ...
