"""The door to records on a server: it waits for them, and says what can be done when they are away."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QCloseEvent
from PySide6.QtWidgets import QDialog, QWidget

from calibrator.desk.background import Background
from calibrator.desk.opening import open_records
from calibrator.desk.parts import button, column, framed, label, row
from calibrator.desk.refusals import in_words
from calibrator.desk.server.dialog import ServerDialog
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.fitting import make_room, whole
from calibrator.desk.widgets.share_bar import ShareBar
from calibrator.records import Records, RecordsError

WIDTH = 560


class ServerDoor(QDialog):
    """`opened` brings the records; `alone_wanted` asks for this computer's copy of them.

    `file_wanted` asks for the file on this computer, `moved` for another address.
    """

    opened = Signal(object)
    file_wanted = Signal()
    alone_wanted = Signal()
    moved = Signal(str)

    def __init__(
        self, url: str, name: str, waiting: str, *, alone: bool = False, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._url, self._name = url, name
        self._alone = alone
        self._work = Background(self)
        self.setWindowTitle(self.tr("Scoop calibration"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.heading, self.words, self.waits = label("", "heading"), label(""), label("", "quiet")
        self.waits.setText(waiting)
        self.progress = ShareBar(self.tr("Waiting for the server"))
        self.again_button = button(self.tr("&Try again"), self.try_again, "main")
        self.stop_button = button(self.tr("&Stop"), self.stop)
        self.change_button = button(self.tr("&Change address or password …"), self.change)
        self.alone_button = button(self.tr("&Go on without the server"), self.go_alone)
        self.file_button = button(self.tr("&Use the file on this computer"), self.use_file)
        self._lay_out()
        self._work.done.connect(self._done)
        self._work.failed.connect(self._failed)

    def try_again(self) -> None:
        """Ask for the records; the door shows that it waits."""
        self.heading.setText(self.tr("Opening the records on the server"))
        self.words.setText(self._name)
        self._work.start(partial(open_records, self._url))
        self._show_state()

    def stop(self) -> None:
        """Wait no longer."""
        self._work.stop()
        self._say_away(self.tr("You stopped waiting for {place}.").format(place=self._name))

    def change(self) -> None:
        """Enter address and password anew."""
        dialog = ServerDialog(self._url, None, self)
        dialog.chosen.connect(self._moved)
        dialog.open()

    def go_alone(self) -> None:
        """Work on what this computer last read of the server."""
        self._leave()
        self.alone_wanted.emit()

    def use_file(self) -> None:
        """Work on the file this time; the server is asked again at the next start."""
        self._leave()
        self.file_wanted.emit()

    def closeEvent(self, event: QCloseEvent) -> None:
        self._work.stop()
        event.accept()

    def reject(self) -> None:
        self.close()

    def _lay_out(self) -> None:
        self.about_file = label(
            self.tr(
                "The file holds what was on this computer before the server was used. What is entered there is not on "
                "the server; the next start asks for the server again."
            ),
            "quiet",
        )
        self.about_alone = label(
            self.tr(
                "You see what this computer last read of the server. Weighings and checks of the mix wait here and are "
                "sent when it is back; all other changes need it."
            ),
            "quiet",
        )
        inside = column(
            self.heading,
            self.words,
            self.progress,
            self.waits,
            None,
            row(self.stop_button, None),
            row(self.again_button, self.change_button, None),
            row(self.alone_button, None),
            self.about_alone,
            row(self.file_button, None),
            self.about_file,
            spacing=int(1.5 * SPACE),
        )
        inside.setContentsMargins(0, 0, 0, 0)
        inner = QWidget()
        inner.setLayout(inside)
        framed(self).addWidget(whole(inner))
        self.setMinimumWidth(WIDTH)

    def _show_state(self) -> None:
        busy = self._work.at_work
        self.progress.setVisible(busy)
        self.stop_button.setVisible(busy)
        for made in (self.again_button, self.change_button, self.file_button):
            made.setVisible(not busy)
        self.about_file.setVisible(not busy)
        for widget in (self.alone_button, self.about_alone):
            widget.setVisible(not busy and self._alone)
        self.waits.setVisible(not busy and bool(self.waits.text()))
        make_room(self)

    def _done(self, records: Records) -> None:
        self.opened.emit(records)
        self._leave()

    def _failed(self, error: Exception) -> None:
        if not isinstance(error, RecordsError):
            raise error
        self._say_away(in_words(error))

    def _say_away(self, words: str) -> None:
        self.heading.setText(self.tr("The records on the server are not open"))
        self.words.setText(words)
        self._show_state()
        self.again_button.setFocus(Qt.FocusReason.OtherFocusReason)

    def _moved(self, url: str) -> None:
        self._leave()
        self.moved.emit(url)

    def _leave(self) -> None:
        self._work.stop()
        self.hide()
        self.deleteLater()
