"""Says that a season of many lots is being looked through, how far that is, and ends it or begins it again."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import QHBoxLayout, QWidget

from calibrator.desk.background import Background
from calibrator.desk.parts import button, label
from calibrator.desk.refusals import in_words
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.share_bar import ShareBar
from calibrator.model.underway import Underway
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
        self.words, self.bar = label("", "quiet"), ShareBar()
        self.bar.setFixedWidth(BAR_WIDTH)
        self.end_button = button(self.tr("Stop"), self.end)
        self.again_button = button(self.tr("Look through them"), self._begin)
        self._work = Background(self)
        self._work.went.connect(self.bar.show_share)
        self._work.done.connect(self._done)
        self._work.failed.connect(self._failed)
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
        return self._soon.isActive() or self._work.at_work

    def begin(self, what: str, do: Callable[[Underway], None]) -> None:
        """Do this in another thread, where it may use no widget; `done` tells when. What was underway ends."""
        self.leave()
        self._what, self._do = what, do
        self._begin()

    def leave(self) -> None:
        """Nobody wants any more what is underway; say nothing of it."""
        self._soon.stop()
        self._work.stop()
        self.hide()

    def end(self) -> None:
        """The person ends it."""
        self.leave()
        self._say(self.tr("Stopped: not everything was looked through."))

    def _begin(self) -> None:
        self._soon.start()
        self._say(self._what)

    def _start(self) -> None:
        self._work.start(self._do)

    def _say(self, words: str) -> None:
        self.words.setText(words)
        self.bar.show_share(0.0)
        self.bar.setAccessibleName(words)
        for widget in (self.bar, self.end_button):
            widget.setVisible(self.at_work)
        self.again_button.setVisible(not self.at_work)
        self.show()

    def _done(self, _nothing: None) -> None:
        self.leave()
        self.done.emit()

    def _failed(self, error: Exception) -> None:
        self.leave()
        if not isinstance(error, RecordsError):
            raise error
        self._say(in_words(error))


def _nothing(_underway: Underway) -> None: ...
