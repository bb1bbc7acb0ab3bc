"""What is done with our own mistakes: logged whole, told in a sentence."""

from __future__ import annotations

import logging
import traceback
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QApplication

from calibrator.desk.ask import Ask
from calibrator.desk.refusals import in_words
from calibrator.records import RecordsError
from calibrator.records.paths import data_folder

log = logging.getLogger("calibrator")


class MistakeHook:
    """Our own mistakes: logged whole, told to the person as a sentence, never as a traceback."""

    def __init__(self, ask: Ask, file: Path | None = None) -> None:
        self._ask, self._file = ask, file
        self._telling = False

    def keep_log(self) -> None:
        """Begin the log: once the first page is up, or before the first line for it."""
        self._file = self._file or _begin_log()

    def __call__(self, kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        self.keep_log()
        log.error("".join(traceback.format_exception(kind, error, trace)))
        if self._telling or QApplication.instance() is None:
            return
        self._telling = True
        self._ask.tell(in_words(error) if isinstance(error, RecordsError) else _own_mistake(self._file))
        self._telling = False


def _own_mistake(log_file: Path | None) -> str:
    told = QCoreApplication.translate(
        "App",
        "Something in the program went wrong. What you have kept is safe. "
        "Go to another page and come back; if it happens again, close the program and start it anew.",
    )
    if log_file is None:
        return told
    where = QCoreApplication.translate("App", "What happened was written to the log, {file}.")
    return f"{told}\n\n{where.format(file=log_file)}"


def _begin_log() -> Path | None:
    """Write what goes wrong to a small file beside the records, and say where; where that cannot be, go without."""
    from logging.handlers import RotatingFileHandler  # with sockets: the first page does not wait for them

    file = data_folder() / "calibrator.log"
    try:
        file.parent.mkdir(parents=True, exist_ok=True)
        handler = RotatingFileHandler(file, maxBytes=1_000_000, backupCount=1, delay=True, encoding="utf-8")
    except OSError:
        return None
    handler.setFormatter(logging.Formatter("%(asctime)s %(levelname)s %(message)s"))
    log.addHandler(handler)
    return file
