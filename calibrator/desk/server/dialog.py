"""Naming a server, trying it, and going over to its records."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QCloseEvent
from PySide6.QtWidgets import QCheckBox, QDialog, QLineEdit, QWidget

from calibrator.desk.background import Background
from calibrator.desk.counted import counted
from calibrator.desk.forms.fields import TextField, focus_on
from calibrator.desk.parts import Tone, button, column, framed, label, row, set_style_property, set_tone
from calibrator.desk.refusals import in_words
from calibrator.desk.server.work import MadeReady, make_ready
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.fitting import make_room, whole
from calibrator.desk.widgets.saying import Held, keep_room
from calibrator.desk.widgets.share_bar import ShareBar
from calibrator.model.underway import Underway
from calibrator.records import Records, RecordsError
from calibrator.records.server import HIGHEST_PORT, USUAL_PORT, FoundThere, ServerAddress, address_of, look_there

WIDTH = 620
LONGEST = 200
WAIT_S = 15.0


class ServerDialog(QDialog):
    """Nothing is remembered before *Use these records from now on*. `chosen` then brings the address.

    `source` is the open file whose records may be brought over; None where there is none.
    """

    chosen = Signal(str)

    def __init__(self, known: str, source: Records | None, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._source = source
        self._options: tuple[tuple[str, str], ...] = ()
        self._found: FoundThere | None = None
        self._work = Background(self)
        self.setWindowTitle(self.tr("Records on a server"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.computer = TextField(self.tr("Computer"), self.tr("Its name or number, like 192.168.1.20"), longest=1000)
        self.port = TextField(self.tr("Port"), longest=5)
        self.database = TextField(self.tr("Name of the database"), longest=LONGEST)
        self.user = TextField(self.tr("User"), longest=LONGEST)
        self.password = TextField(
            self.tr("Password"),
            self.tr("Kept where this computer keeps secrets. Blank: the one kept."),
            longest=LONGEST,
        )
        self.password.line.setEchoMode(QLineEdit.EchoMode.Password)
        self.verdict = Held()
        self.bring = QCheckBox(self.tr("Bring the records of this computer's file over"))
        self.progress = ShareBar(self.tr("Entries brought over"))
        self.try_button = button(self.tr("&Try it"), self.try_it, "main")
        self.use_button = button(self.tr("&Use these records from now on"), self.use)
        self.stop_button = button(self.tr("&Stop"), self.stop)
        self.cancel_button = button(self.tr("Cancel"), self.reject)
        self._lay_out()
        self._listen()
        self._show_known(known)
        self._show_state()

    @property
    def _fields(self) -> tuple[TextField, ...]:
        return self.computer, self.port, self.database, self.user, self.password

    def address(self) -> ServerAddress | None:
        """What is typed; None where something is missing, which is then said at its field."""
        self._split_address()
        wrong = self._wrong()
        if wrong is not None:
            _mend(*wrong)
            return None
        port = int(self.port.text() or USUAL_PORT)
        return ServerAddress(self.computer.text(), self.database.text(), self.user.text(), port, self._options)

    def _wrong(self) -> tuple[TextField, str] | None:
        """The first field that has to be mended, and the words for it."""
        for field, words in (
            (self.computer, self.tr("Say which computer the server runs on.")),
            (self.database, self.tr("Say what the database is called there.")),
            (self.user, self.tr("Say which user the server knows you as.")),
        ):
            if not field.text():
                return field, words
        port = self.port.text() or str(USUAL_PORT)
        if not (port.isascii() and port.isdecimal() and 0 < int(port) <= HIGHEST_PORT):
            told = self.tr("A port is a number from 1 to {most}, usually {usual}.")
            return self.port, told.format(most=HIGHEST_PORT, usual=USUAL_PORT)
        if " " in self.computer.text() and not self.computer.text().startswith("/"):
            return self.computer, self.tr("The name of a computer has no spaces.")
        return None

    def try_it(self) -> None:
        """See what is there; nothing is changed by it."""
        address = self.address()
        if address is None or self._work.at_work:
            return
        self._found = None
        self._say(self.tr("Looking for {place} …").format(place=address.name))
        self._begin(partial(_looked, address, self.password.line.text()), WAIT_S)

    def use(self) -> None:
        """Set the records up where need be, bring over what is asked for, and go over to them."""
        address = self.address()
        if address is None or self._found is None or self._work.at_work:
            return
        source = self._source if self.bring.isVisibleTo(self) and self.bring.isChecked() else None
        self._say(self.tr("Making the records ready …"))
        self._begin(partial(make_ready, address, self.password.line.text(), source))

    def stop(self) -> None:
        """Give up what is under way; nothing of it is kept."""
        self._work.stop()
        self._found = None
        self._say(self.tr("Stopped. Nothing was changed."))
        self._show_state()

    def closeEvent(self, event: QCloseEvent) -> None:
        self._work.stop()
        event.accept()

    def reject(self) -> None:
        self._work.stop()
        super().reject()

    def _lay_out(self) -> None:
        about = self.tr(
            "Several computers work on the same records when these are on a PostgreSQL server. Whoever looks after "
            "it can tell you what to enter here."
        )
        where, who = row(self.computer, self.port), row(self.user, self.password)
        for line, widths in ((where, (3, 1)), (who, (1, 1))):
            for place, width in enumerate(widths):
                line.setStretch(place, width)
        asked = (label(about, "quiet"), where, self.database, who, self.verdict, self.bring, self.progress, None)
        inside = column(*asked, spacing=int(1.5 * SPACE))
        inside.setContentsMargins(0, 0, 0, 0)
        inner = QWidget()
        inner.setLayout(inside)
        keep_room(self.bring, self.stop_button, self.use_button)
        layout = framed(self)
        layout.setSpacing(int(1.5 * SPACE))
        layout.addWidget(whole(inner), 1)
        layout.addLayout(row(self.stop_button, None, self.cancel_button, self.try_button, self.use_button))
        self.setMinimumWidth(WIDTH)

    def _listen(self) -> None:
        for field in self._fields:
            field.edited.connect(self._edited)
        self.computer.finished.connect(self._split_address)
        self._work.done.connect(self._done)
        self._work.failed.connect(self._failed)
        self._work.late.connect(self._late)
        self._work.went.connect(self.progress.show_share)

    def _show_known(self, known: str) -> None:
        self.port.set_text(str(USUAL_PORT))
        self._take_address(known)

    def _split_address(self) -> None:
        """A whole address that is pasted into the first field goes to where its parts belong."""
        if "://" in self.computer.text():
            self._take_address(self.computer.text())

    def _take_address(self, text: str) -> None:
        found = address_of(text)
        if found is None:
            return
        address, password = found
        self._options = address.options
        for field, part in (
            (self.computer, address.computer),
            (self.port, str(address.port)),
            (self.database, address.database),
            (self.user, address.user),
        ):
            field.set_text(part)
        if password:
            self.password.set_text(password)

    def _edited(self) -> None:
        self._found = None
        self._say("")
        self._show_state()

    def _begin(self, work: Callable[[Underway], Any], limit_s: float | None = None) -> None:
        self._work.start(work, limit_s=limit_s)
        self.progress.show_share(0.0)
        self._show_state()

    def _show_state(self) -> None:
        """What can be done now."""
        busy, found = self._work.at_work, self._found
        for field in self._fields:
            field.setEnabled(not busy)
        self.try_button.setEnabled(not busy)
        self.use_button.setEnabled(not busy and found is not None)
        self.stop_button.setVisible(busy)
        self.cancel_button.setVisible(not busy)
        self.progress.setVisible(busy)
        self.bring.setVisible(found is not None and found.empty and self._source is not None)
        self.bring.setEnabled(not busy)
        ready = found is not None
        for made, main in ((self.use_button, ready), (self.try_button, not ready)):
            set_style_property(made, "kind", "main" if main else "")
            made.setDefault(main)
        make_room(self)

    def _done(self, result: FoundThere | MadeReady) -> None:
        if isinstance(result, MadeReady):
            self.accept()
            self.chosen.emit(result.url)
            return
        self._found = result
        self.bring.setChecked(result.empty and self._source is not None)
        self._say(self._found_words(result), "good")
        self._show_state()
        self.use_button.setFocus(Qt.FocusReason.OtherFocusReason)

    def _failed(self, error: Exception) -> None:
        if not isinstance(error, RecordsError):
            raise error
        self._found = None
        self._say(in_words(error), "bad")
        self._show_state()

    def _late(self) -> None:
        self._say(self.tr("No answer in time. Check the computer's name and the network, then try again."), "bad")
        self._show_state()

    def _found_words(self, found: FoundThere) -> str:
        if found.layout is None:
            return self.tr("The server answers. The database is empty: the records will be set up in it.")
        holds = self.tr("The server answers. It has records of this program without a farm yet.")
        if found.farms:
            holds = counted.farms_there(found.farms)
        if not found.older:
            return holds
        older = self.tr(
            "They have an older layout and will be brought up to date; then all computers need this version of the "
            "program. Have a copy made on the server first."
        )
        return f"{holds} {older}"

    def _say(self, words: str, tone: Tone = "") -> None:
        self.verdict.setText(words)
        self.verdict.setVisible(bool(words))
        set_tone(self.verdict, tone)
        make_room(self)


def _looked(address: ServerAddress, password: str, _underway: Underway) -> FoundThere:
    return look_there(address, password)


def _mend(field: TextField, words: str) -> None:
    """Say at a field what it lacks, and take the person there."""
    field.say(words, wrong=True)
    focus_on(field)
