"""A passing word of what was done, with the ways to a file that was saved. It stands where nothing is worked on."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QRect, QTimer, QUrl, Signal
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QFrame, QSizePolicy, QVBoxLayout, QWidget

from calibrator.desk.parts import button, label, row
from calibrator.desk.theme import SPACE

NOTICE_MS = 4000
LETTER_MS = 60  # a long one stays as long as it takes to read: some 17 letters a second, common practice, no source
FILE_MS = 20_000  # long enough to read a folder's name and to reach for a button
_WIDTHS = (180, 320, 480, 640)


class Notice(QFrame):
    """Fits itself into a gap of its parent: the narrowest shape that the gap is high enough for."""

    not_opened = Signal(Path)

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setObjectName("notice")
        self._said: tuple[str, Path | None] = ("", None)
        self._before: tuple[str, Path | None] | None = None  # what a lasting word has pushed aside
        self._words = label("")
        self._words.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.MinimumExpanding)
        self.open_file = button(self.tr("Open"), self._open_file)
        self.open_folder = button(self.tr("Folder"), self._open_folder)
        self.open_folder.setToolTip(self.tr("Show the folder"))
        self._ways = QWidget()
        ways = row(self.open_file, self.open_folder, None)
        ways.setContentsMargins(0, 0, 0, 0)
        self._ways.setLayout(ways)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(12, 8, 12, 8)
        layout.setSpacing(SPACE)
        for widget in (self._words, self._ways):
            layout.addWidget(widget)
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self.hide)
        self.hide()

    def text(self) -> str:
        """What it says, as long as it is shown."""
        return self._words.text()

    def say(self, text: str, file: Path | None = None) -> None:
        """Say it for a while; of a saved file in which folder it is, and open it on demand."""
        self._said = (text, file)
        if file is not None:
            folder = self.tr("Folder: {folder}").format(folder=file.parent.name or file.parent)
            text = f"{text}\n{folder}"
            self._words.setToolTip(str(file))
        else:
            self._words.setToolTip("")
        self._words.setText(text)
        self._ways.setVisible(file is not None)
        reading = max(NOTICE_MS, LETTER_MS * len(text))
        self._timer.start(max(FILE_MS, reading) if file is not None else reading)

    def begin(self, text: str) -> None:
        """Say it until `end`; what was said before comes back then."""
        self._before = self._said if self.isVisible() else ("", None)
        self.say(text)
        self._timer.stop()

    def end(self) -> bool:
        """Whether there is something to show again that was said before."""
        before, self._before = self._before, None
        self.hide()
        if before is not None and before[0]:
            self.say(*before)
            return True
        return False

    def place(self, gap: QRect) -> None:
        """Stand at the foot of the gap, wider than it only where the words are too many for its height."""
        width, height = _WIDTHS[-1], 0
        for width in _WIDTHS:
            height = max(self.heightForWidth(width), self.minimumSizeHint().height())
            if height <= gap.height():
                break
        self.setGeometry(QRect(gap.left(), gap.bottom() + 1 - height, width, height))

    def _open_file(self) -> None:
        self._show(self._said[1])

    def _open_folder(self) -> None:
        file = self._said[1]
        self._show(file and file.parent)

    def _show(self, place: Path | None) -> None:
        if place is not None and not QDesktopServices.openUrl(QUrl.fromLocalFile(str(place))):
            self.not_opened.emit(place)
