"""Opening the desk: one application, its look, the records, the window."""

from __future__ import annotations

import logging
import sys
import traceback
from logging.handlers import RotatingFileHandler
from types import TracebackType

from PySide6.QtCore import QCoreApplication, QTimer
from PySide6.QtWidgets import QApplication

from calibrator import __version__
from calibrator.desk.ask import Ask
from calibrator.desk.context import Desk
from calibrator.desk.theme import Theme
from calibrator.desk.window import Window
from calibrator.records import Records, RecordsError, RecordsLocked
from calibrator.records.paths import data_folder

log = logging.getLogger("calibrator")
BACKUP_AFTER_MS = 2000


def make_application(arguments: list[str]) -> QApplication:
    """The one QApplication, dressed."""
    app = QApplication(arguments)
    app.setApplicationName("calibrator")
    app.setApplicationVersion(__version__)
    Theme(app)
    return app


def run(url: str, *, records: Records | None = None) -> int:
    """Open the desk on a store and stay until the window is closed. Returns the exit code."""
    app = make_application(sys.argv[:1])
    _keep_log()
    ask = Ask(app)
    hook = _Hook(ask)
    sys.excepthook = hook
    opener = _Opener(app, ask, url)
    if records is not None:
        opener.show(records)
    else:
        opener.open()
    code = app.exec()
    opener.close()
    return code


class _Opener:
    """Opens the records and shows the window; where that fails, says why."""

    def __init__(self, app: QApplication, ask: Ask, url: str) -> None:
        self._app, self._ask, self._url = app, ask, url
        self._records: Records | None = None
        self._window: Window | None = None

    def open(self) -> None:
        try:
            self.show(Records.open(self._url))
        except RecordsLocked as error:
            look = QCoreApplication.translate("App", "Look without writing")
            self._ask.confirm(str(error), look, self._open_to_look)
        except RecordsError as error:
            self._ask.tell(str(error))

    def show(self, records: Records) -> None:
        self._records = records
        self._window = Window(Desk(records, self._ask, parent=self._app))
        self._window.show()
        # Not at once: a person at the door should not wait for a copy to be made.
        QTimer.singleShot(BACKUP_AFTER_MS, self._back_up)

    def _back_up(self) -> None:
        if self._records is not None:
            try:
                self._records.backup_if_due()
            except RecordsError as error:
                self._ask.tell(str(error))

    def close(self) -> None:
        if self._records is not None:
            self._records.close()

    def _open_to_look(self) -> None:
        try:
            self.show(Records.open(self._url, read_only=True))
        except RecordsError as error:
            self._ask.tell(str(error))


class _Hook:
    """Our own mistakes: logged whole, told to the person as a sentence, never as a traceback."""

    def __init__(self, ask: Ask) -> None:
        self._ask = ask
        self._telling = False

    def __call__(self, kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        log.error("".join(traceback.format_exception(kind, error, trace)))
        if self._telling or QApplication.instance() is None:
            return
        self._telling = True
        self._ask.tell(str(error) if isinstance(error, RecordsError) else _own_mistake())
        self._telling = False


def _own_mistake() -> str:
    return QCoreApplication.translate(
        "App",
        "Something in the program went wrong, and it was written to the log. What you have kept is safe. "
        "Go to another page and come back; if it happens again, close the program and start it anew.",
    )


def _keep_log() -> None:
    """Write what goes wrong to a small file beside the records; where that cannot be, go without."""
    try:
        data_folder().mkdir(parents=True, exist_ok=True)
        handler = RotatingFileHandler(data_folder() / "calibrator.log", maxBytes=1_000_000, backupCount=1, delay=True)
    except OSError:
        return
    handler.setFormatter(logging.Formatter("%(asctime)s %(levelname)s %(message)s"))
    log.addHandler(handler)
