"""Work that may take long goes on beside the window, with a sign of how far it is and a way to end it.

For a tenth of a second the window waits for it, as for anything else that is pressed: most work is done by then.
Otherwise a sign stands over the window until the work is done, so that nothing else begins meanwhile.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, TypeVar

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QCloseEvent
from PySide6.QtWidgets import QDialog

from calibrator.desk.background import Background
from calibrator.desk.parts import button, framed, label, row
from calibrator.desk.theme import SPACE, the_theme
from calibrator.desk.widgets.share_bar import ShareBar
from calibrator.model.underway import Underway

T = TypeVar("T")
PATIENCE_S = 0.1


class Busy(QObject):
    """One piece of work at a time, in a thread of its own."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._work = Background(self)
        self.sign: Sign | None = None
        self._then: Callable[[Any], None] = _nothing
        self._otherwise: Callable[[Exception], None] = _nothing
        self._work.went.connect(self._show_share)
        self._work.done.connect(self._done)
        self._work.failed.connect(self._failed)

    @property
    def at_work(self) -> bool:
        return self._work.at_work

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
        if self.at_work:
            return
        self._then, self._otherwise = then, otherwise
        self._work.start(work, patience_s=PATIENCE_S)
        if self.at_work and self.sign is None:
            self.sign = Sign(what)
            self.sign.wanted_to_end.connect(self._work.end)
            self.sign.destroyed.connect(self._forget_sign)
            self.sign.open()

    def end(self) -> None:
        """The window closes: end what is underway and wait until it has taken back what it began."""
        self._work.stop(wait=True)
        self._put_away()

    def _show_share(self, share: float) -> None:
        if self.sign is not None:
            self.sign.bar.show_share(share)

    def _done(self, result: object) -> None:
        then = self._then
        self._put_away()
        then(result)

    def _failed(self, error: Exception) -> None:
        otherwise = self._otherwise
        self._put_away()
        otherwise(error)

    def _put_away(self) -> None:
        self._then, self._otherwise = _nothing, _nothing
        sign, self.sign = self.sign, None
        if sign is not None:
            sign.destroyed.disconnect(self._forget_sign)
            sign.put_away()

    def _forget_sign(self) -> None:
        """The work goes on without it."""
        self.sign = None


class Sign(QDialog):
    """Says what is underway and how far it is. Its button, Escape and its closing all ask for the end.

    No window is its parent: the one that is active when work begins may be a dialog on its way out, or be replaced
    before the work is done, and the sign would go with it.
    """

    wanted_to_end = Signal()

    def __init__(self, what: str) -> None:
        super().__init__()
        the_theme().dress(self)
        self.setWindowTitle(self.tr("Scoop calibration"))
        self.setWindowModality(Qt.WindowModality.ApplicationModal)
        self.setMinimumWidth(420)
        self._put_away = False
        self.bar = ShareBar(what)
        self.bar.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.bar.setFocus()  # Enter, pressed once too often, ends nothing
        self.end_button = button(self.tr("Stop"), self.reject)
        self.end_button.setAutoDefault(False)
        body = framed(self)
        body.setSpacing(2 * SPACE)
        body.addWidget(label(what, "heading"))
        body.addWidget(self.bar)
        body.addLayout(row(None, self.end_button))

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
