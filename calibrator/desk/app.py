"""Opening the desk: one application, its look, the records, the window."""

from __future__ import annotations

import gc
import hashlib
import sys
from collections.abc import Callable
from contextlib import suppress
from datetime import datetime
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, Qt, QTimer
from PySide6.QtGui import QIcon
from PySide6.QtWidgets import QApplication

from calibrator import __version__
from calibrator.desk import busy
from calibrator.desk.ask import Ask
from calibrator.desk.context import Desk, local_now
from calibrator.desk.days import set_back
from calibrator.desk.guarding import Guarding
from calibrator.desk.mistakes import MistakeHook
from calibrator.desk.opening import open_records
from calibrator.desk.refusals import in_words
from calibrator.desk.settings import Settings
from calibrator.desk.theme import Theme, the_theme
from calibrator.desk.tongues import Tongue
from calibrator.desk.trust_words import findings_words, moment, salvaged_words, waiting_words
from calibrator.desk.warming import Warming
from calibrator.desk.window import Window
from calibrator.model.underway import Ended, Underway
from calibrator.places import resource
from calibrator.records import (
    Backup,
    Finding,
    Records,
    RecordsDamaged,
    RecordsError,
    RecordsLocked,
    RecordsReadOnly,
    backups_of,
    default_url,
    is_file,
    name_of,
    restore_backup,
)
from calibrator.records.paths import data_folder

if TYPE_CHECKING:
    from calibrator.desk.server.door import ServerDoor
    from calibrator.records.outbox import Outbox
    from calibrator.records.salvage import Salvaged

BACKUP_AFTER_MS = 2000
CHECK_AFTER_MS = 5000
BACKUP_EVERY_MS = 3_600_000
WARMS_UP = True  # not in tests, which say themselves when what happens


def make_application(arguments: list[str]) -> QApplication:
    """The one QApplication, dressed."""
    app = QApplication(arguments)
    app.setApplicationName("calibrator")
    app.setApplicationVersion(__version__)
    app.setDesktopFileName("calibrator")
    app.setWindowIcon(QIcon(str(resource("desktop/calibrator_128.png"))))
    Theme(app)
    return app


def run(url: str, *, records: Records | None = None) -> int:
    """Open the desk on a store and stay until the window is closed. Returns the exit code.

    Without a store named it is the server that this computer remembers, else the file in the user's data folder.
    `records` are open already and live only as long as the program.
    """
    app = make_application(sys.argv[:1])
    ask = Ask(app)
    sys.excepthook = hook = MistakeHook(ask)
    settings = Settings(data_folder() / "settings.json")
    if settings.now.look:  # dressing anew takes a moment of the start
        the_theme().wear(settings.now.look)
    opener = Opener(app, ask, url, settings)
    if records is not None:
        opener.show(records, throw_away=True)
    else:
        opener.open()
    QTimer.singleShot(0, settle)
    QTimer.singleShot(0, hook.keep_log)
    code = app.exec()
    opener.close()
    return code


def settle() -> None:
    """The first page is up: garbage is collected again."""
    gc.freeze()  # what is loaded now stays; there is no point in looking through it again and again
    gc.enable()


class Opener:
    """Opens the records and shows the window; where that fails, says why.

    A blank `url` is the server that is remembered, or else the user's own file.
    """

    def __init__(self, app: QApplication, ask: Ask, url: str, settings: Settings) -> None:
        self._app, self._ask, self._settings = app, ask, settings
        self._url = url or settings.now.server or default_url()
        self._file = self._url if is_file(self._url) else default_url()  # where one goes back to from a server
        self.door: ServerDoor | None = None
        self._tongue = Tongue(app)
        self._tongue.speak(settings.now.screen_language)
        self._records: Records | None = None
        self._outbox: Outbox | None = None  # while the door waits for its server
        self.desk: Desk | None = None
        self.window: Window | None = None
        self._guarding: Guarding | None = None
        self._daily = QTimer(app)  # a desk is left open for days
        self._daily.timeout.connect(self._back_up)
        self._busy = busy.Busy(app)
        self._warming = Warming(app)

    def open(self) -> None:
        if not is_file(self._url):
            self._open_door()
            return
        opening = QCoreApplication.translate("App", "Opening the records")
        self._busy.do(opening, partial(open_records, self._url), self.show, self._not_opened)

    def _not_opened(self, error: Exception) -> None:
        if isinstance(error, RecordsLocked | RecordsReadOnly):
            look = QCoreApplication.translate("App", "Look without writing")
            self._ask.confirm(in_words(error), look, self._open_to_look)
        elif isinstance(error, RecordsDamaged):
            self._offer_backup(error)
        else:
            self._tell(error)

    def _tell(self, error: Exception) -> None:
        if isinstance(error, RecordsError):
            self._ask.tell(in_words(error))
        elif not isinstance(error, Ended):
            raise error

    def _open_door(self) -> None:
        """Wait for a server at a door of its own: a person should see what the program is doing."""
        from calibrator.desk.server.door import ServerDoor
        from calibrator.records.outbox import Outbox

        place, waiting = name_of(self._url), ""
        with suppress(RecordsError):
            self._outbox = Outbox.beside(data_folder(), place)
            waiting = waiting_words(self._outbox)
        self.door = ServerDoor(self._url, place, waiting, alone=self._outbox is not None and self._outbox.ready)
        the_theme().dress(self.door)
        self.door.alone_wanted.connect(self._go_alone)
        self.door.opened.connect(self._let_in)
        self.door.file_wanted.connect(self._use_file)
        self.door.moved.connect(self._move)
        self.door.show()
        self.door.try_again()

    def _let_in(self, records: Records) -> None:
        self.door = None
        self.show(records)

    def _go_alone(self) -> None:
        """Work on what this computer last read of the server, which is looked for meanwhile."""
        if self._outbox is not None:
            self._let_in(Records.not_reached(self._url, self._outbox))

    def _leave_door(self) -> None:
        self.door = None
        if self._outbox is not None:
            self._outbox.close()
            self._outbox = None

    def _use_file(self) -> None:
        """Only for now: the server is asked again at the next start."""
        self._leave_door()
        self._url = self._file
        self.open()

    def _go_over(self, url: str) -> None:
        """Other records from now on, unless something typed would be lost; blank is the file on this computer."""
        typed = self.window.typed() if self.window else ""
        if not typed:
            self._move(url)
            return
        question = QCoreApplication.translate(
            "App",
            "Not kept yet: “{text}”. It is lost when other records are opened. Open them now all the same?",
        )
        move = QCoreApplication.translate("App", "Open them now")
        self._ask.confirm(question.format(text=typed), move, partial(self._move, url))

    def _move(self, url: str) -> None:
        self._leave_door()
        self._settings.keep(server=url)
        self.close()
        self._url = url or self._file
        self._open_again()

    def _offer_backup(self, error: RecordsDamaged) -> None:
        """Offer to bring over what can be read, copies filling the gaps; the file is set aside, not deleted."""
        from calibrator.records.salvage import has_traces

        copies = backups_of(self._url)
        if error.code == "emptied":
            self._offer_newest(error, copies[-1])
            return
        if not copies and not has_traces(self._url):
            self._ask.tell(in_words(error))
            return
        question = QCoreApplication.translate(
            "App",
            "{trouble}\n\nBring over what can be read? What the copies hold is added, the damaged file is set aside "
            "and kept, and you are told exactly what is lost.",
        )
        bring_over = QCoreApplication.translate("App", "Bring it over")
        self._ask.confirm(question.format(trouble=in_words(error)), bring_over, self._salvage)

    def _offer_newest(self, error: RecordsDamaged, newest: Backup) -> None:
        question = QCoreApplication.translate(
            "App",
            "{trouble}\n\nThe newest copy is of {day}. Put it back now? "
            "What was entered after that moment must be entered again.",
        )
        put_back = QCoreApplication.translate("App", "Put the copy back")
        told = question.format(trouble=in_words(error), day=moment(newest.at))
        self._ask.confirm(told, put_back, partial(self._put_back, newest))

    def _salvage(self) -> None:
        bringing = QCoreApplication.translate("App", "Bringing over what can be read")
        self._busy.do(bringing, partial(_salvaged, self._url), self._open_salvaged, self._tell)

    def _open_salvaged(self, told: Salvaged) -> None:
        with suppress(OSError):  # beside the file that was set aside, for whoever asks later
            told.aside.with_suffix(".txt").write_text(salvaged_words(told, most=None), encoding="utf-8")
        self.open()
        self._ask.tell(salvaged_words(told))

    def _put_back(self, copy: Backup) -> None:
        """Close the records, put a copy in their place, and open them again, whatever came of it."""
        self.close()
        putting = QCoreApplication.translate("App", "Putting the copy back")
        self._busy.do(putting, partial(restore_backup, self._url, copy), self._open_again, self._open_as_before)

    def _open_as_before(self, error: Exception) -> None:
        self._tell(error)
        self._open_again()

    def _open_again(self, _aside: Path | None = None) -> None:
        old, self.window = self.window, None
        self.open()
        if old is not None:
            old.replace_by_another()

    def show(self, records: Records, *, throw_away: bool = False) -> None:
        """Open the window on records."""
        self._records = records
        outbox, self._outbox = self._outbox, None
        not_kept: RecordsError | None = None
        if outbox is None and records.on_server and not records.read_only:
            from calibrator.records.outbox import Outbox  # it sends to servers only

            try:
                outbox = Outbox.beside(data_folder(), records.url)
            except RecordsError as error:  # while the server is there the work goes on without
                not_kept = error
        clock = _season_clock(records) if throw_away else local_now
        if self.desk is not None:
            self.desk.deleteLater()  # the window on it gives way to another
        self.desk = Desk(
            records, self._ask, settings=self._settings, outbox=outbox, busy=self._busy, clock=clock, parent=self._app
        )
        self.desk.throw_away = throw_away
        self.desk.wire.start()
        self.desk.language_changed.connect(self._speak)
        self.desk.put_back.connect(self._put_back, Qt.ConnectionType.QueuedConnection)
        self.desk.go_over.connect(self._go_over, Qt.ConnectionType.QueuedConnection)
        self._guarding = Guarding(records, self.desk)
        self._guarding.found.connect(self._say_found)
        self._guarding.not_copied.connect(self._tell)
        QTimer.singleShot(CHECK_AFTER_MS, self._guarding, self._guarding.start)
        self._open_window("")
        if not_kept is not None:
            self._tell(not_kept)
        # Not at once: a person at the door should not wait for a copy to be made.
        QTimer.singleShot(BACKUP_AFTER_MS, self._back_up)
        self._daily.start(BACKUP_EVERY_MS)

    def _open_window(self, page: str, in_place_of: Window | None = None) -> None:
        assert self.desk is not None
        self.window = Window(self.desk)
        if in_place_of is not None:
            self.window.setGeometry(in_place_of.geometry())
            self.window.setWindowState(in_place_of.windowState())
        if page:
            self.window.show_page(page)
        self.window.show()
        if WARMS_UP:
            self._warming.start(self.window)

    def _speak(self) -> None:
        """Words are put in when a window is made, so another language means another window."""
        typed = self.window.typed() if self.window else ""
        if not typed:
            self._speak_now()
            return
        question = QCoreApplication.translate(
            "App",
            "Not kept yet: “{text}”. It is lost when the language changes. Change it now all the same? Otherwise it "
            "changes when the program is started next.",
        )
        change = QCoreApplication.translate("App", "Change it now")
        self._ask.confirm(question.format(text=typed), change, self._speak_now)

    def _speak_now(self) -> None:
        old = self.window
        self._tongue.speak(self._settings.now.screen_language)
        self._open_window(old.current_page.key if old else "", old)
        self._stay_at_language()
        if old is not None:
            old.replace_by_another()

    def _stay_at_language(self) -> None:
        """The keys are at the same list as before, in the window that took the other one's place."""
        from calibrator.desk.forms.language_form import ScreenLanguage  # the day's page is up before anybody chooses

        found = self.window.current_page.findChild(ScreenLanguage) if self.window else None
        if found is not None:
            found.box.setFocus(Qt.FocusReason.OtherFocusReason)

    def _back_up(self) -> None:
        self._watch_clock()
        if self._guarding is not None:
            self._guarding.copy()

    def _watch_clock(self) -> None:
        """Labels, charts and sheets bear its day: say when it was set back since the program last looked at it."""
        now, before = local_now(), self._settings.now.last_seen
        self._settings.keep(last_seen=now.isoformat())
        if (last := set_back(before, now)) is None:
            return
        told = QCoreApplication.translate(
            "App",
            "This computer's clock says {now}, and it said {before} earlier. Set day and time right: labels, charts "
            "and sheets bear them. What is kept stays in its order.",
        )
        self._ask.tell(told.format(now=moment(now), before=moment(last)))

    def _say_found(self, findings: tuple[Finding, ...]) -> None:
        """Once for what is new: the same again each morning would only teach people to press it away."""
        known = hashlib.sha256(repr([(f.sign_off_id, f.fault) for f in findings]).encode()).hexdigest()
        if findings and known != self._settings.now.findings_told:
            self._settings.keep(findings_told=known)
            self._ask.tell(findings_words(findings))

    def close(self) -> None:
        self._busy.end()
        self._warming.stop()
        self._daily.stop()
        if self.desk is not None:
            self.desk.wire.stop()
        if self._guarding is not None:
            self._guarding.stop()
        if self._records is not None:
            self._records.close()
        self._leave_door()

    def _open_to_look(self) -> None:
        try:
            self.show(Records.open(self._url, read_only=True))
        except RecordsError as error:
            self._ask.tell(in_words(error))


def _season_clock(records: Records) -> Callable[[], datetime]:
    from calibrator.desk.sample import season_clock  # only the sample season needs it

    return season_clock(records, local_now)


def _salvaged(url: str, _underway: Underway) -> Salvaged:
    from calibrator.records.salvage import salvage  # a damaged file is rare, and this is a hundredth of the start

    return salvage(url)
