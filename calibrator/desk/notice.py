"""A passing word of what was done, with the ways to a saved file or back. It stands where nothing is worked on."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import QRect, Qt, QTimer, QUrl, Signal
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QFrame, QGridLayout, QLayout, QSizePolicy, QWidget

from calibrator.desk.parts import button, label, row
from calibrator.desk.theme import SPACE
from calibrator.values import dataclass

NOTICE_MS = 4000
LETTER_MS = 60  # a long one stays as long as it takes to read: some 17 letters a second, common practice, no source
WAYS_MS = 20_000  # long enough to read a folder's name and to reach for a button
_SHORT_END = 10
_LEAST_WIDE, _WIDTH_STEP = 180, 20
_LEAST_BESIDE = 360  # narrower, its ways beside the words leave too little room for these


def _on_lines(name: str) -> str:
    """A file's name that breaks between its parts alone: no dash begins a line, no short end stands by itself."""
    *parts, end = name.split(" - ")
    held = "\u00a0- ".join(parts)
    between = "\u00a0-\u00a0" if len(end) <= _SHORT_END else "\u00a0- "
    return f"{held}{between}{end}" if parts else end


Way = tuple[str, Callable[[], None]]
"""A button's text, and what it does."""


@dataclass(frozen=True)
class _Said:
    """What is said, and what can be done about it."""

    text: str = ""
    file: Path | None = None
    way: Way | None = None


def _at_foot(room: QRect, width: int, height: int) -> QRect:
    return QRect(room.left(), room.bottom() + 1 - height, width, height)


class Notice(QFrame):
    """Fits itself into a gap of its parent, or lies along the foot of the page as low as can be: there it covers the
    fewest figures."""

    not_opened = Signal(Path)

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setObjectName("notice")
        self._said = _Said()
        self._over_page = False
        self._before: _Said | None = None  # what a lasting word has pushed aside
        self._words = label("")
        self._words.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        self.open_file = button(self.tr("Open"), self._open_file)
        self.open_folder = button(self.tr("Folder"), self._open_folder)
        self.open_folder.setToolTip(self.tr("Show the folder"))
        self.way = button("", self._go)
        self.close_button = button("×", self.hide)
        self.close_button.setObjectName("close")
        self.close_button.setAccessibleName(self.tr("Close the notice"))
        self.close_button.setToolTip(self.tr("Close the notice"))
        self._ways = QWidget()
        ways = row(self.open_file, self.open_folder, self.way, None)
        ways.setContentsMargins(0, 0, 0, 0)
        self._ways.setLayout(ways)
        # One in all: a row within another would keep the height of the words before.
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(12, 8, 12, 8)
        self._grid.setSpacing(SPACE)
        self._grid.setSizeConstraint(QLayout.SizeConstraint.SetNoConstraint)  # else words that wrap ask for a square
        self._grid.addWidget(self._words, 0, 0)
        self._grid.addWidget(self.close_button, 0, 2, Qt.AlignmentFlag.AlignTop)
        self._grid.setColumnStretch(0, 1)
        self._put_ways(beside=False)
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self.hide)
        self.hide()

    def text(self) -> str:
        """What it says, as long as it is shown."""
        return self._words.text()

    def say(self, text: str, file: Path | None = None, way: Way | None = None) -> None:
        """Say it for a while; of a saved file in which folder it is, and open it on demand; else the way on or back."""
        self._said = _Said(text, file, way)
        if file is not None:
            folder = self.tr("Folder: {folder}").format(folder=file.parent.name or file.parent)
            text = f"{text.replace(file.name, _on_lines(file.name))}\n{folder}"
            self._words.setToolTip(str(file))
        else:
            self._words.setToolTip("")
        self._words.setText(text)
        for to_file in (self.open_file, self.open_folder):
            to_file.setVisible(file is not None)
        self.way.setText(way[0] if way else "")
        self.way.setVisible(way is not None)
        self.close_button.show()
        self._ways.setVisible(bool(file or way))
        reading = max(NOTICE_MS, LETTER_MS * len(text))
        self._timer.start(max(WAYS_MS, reading) if file or way else reading)

    def begin(self, text: str) -> None:
        """Say it until `end`; what was said before comes back then."""
        self._before = self._said if self.isVisible() else _Said()
        self.say(text)
        self.close_button.hide()
        self._timer.stop()

    def end(self) -> bool:
        """Whether there is something to show again that was said before."""
        before, self._before = self._before, None
        self.hide()
        if before is not None and before.text:
            self.say(before.text, before.file, before.way)
            return True
        return False

    def leave_page(self) -> None:
        """Another page is shown: the ways to a file belong to the one that saved it, and a way that lies over the page
        to what was done there. A way on or back in the gap stays, and so does what was said as the page turned."""
        of_file = self._said.file is not None and self._said.way is None
        if of_file or (self._said.way is not None and self._over_page):
            self.hide()

    def dismiss(self) -> bool:
        """Whether there was something that may be closed, which is gone now."""
        there = self.close_button.isVisible()
        if there:
            self.hide()
        return there

    def place(self, gap: QRect, page: QRect, focus: QRect, taken: Sequence[QRect] = ()) -> None:
        """Stand at the foot of the gap; where it is too small, or what has the keys is there, lie along the foot of
        the page: where it covers none of what is `taken`, else as little of it as can be, or at its head.
        """
        self._put_ways(beside=False)
        high = self._high(gap.width())
        place = _at_foot(gap, gap.width(), high)
        self._over_page = high > gap.height() or place.intersects(focus)
        if self._over_page:
            self._put_ways(beside=True)
            places = self._places(page)
            place = min(places, key=lambda each: (each.intersects(focus), sum(map(each.intersects, taken))))
        self.setGeometry(place)

    def _places(self, page: QRect) -> list[QRect]:
        """Along the foot from the left, then from the right and ever narrower there, at last along the head."""
        wide = self._along(page.width())
        high = self._high(wide)
        foot, head = _at_foot(page, wide, high), QRect(page.left(), page.top(), wide, high)
        widths = range(wide, min(wide, _LEAST_BESIDE) - 1, -_WIDTH_STEP)
        narrower = (_at_foot(page, width, self._high(width)) for width in widths)
        return [foot, *(each.translated(page.right() - each.right(), 0) for each in narrower), head]

    def _along(self, most: int) -> int:
        """The narrowest that is as low as can be."""
        low = self._high(most)
        return next((wide for wide in range(_LEAST_WIDE, most, _WIDTH_STEP) if self._high(wide) <= low), most)

    def _high(self, width: int) -> int:
        return self.heightForWidth(width)

    def _put_ways(self, *, beside: bool) -> None:
        """The ways below the words, or beside them where it is to be low."""
        self._grid.removeWidget(self._ways)
        if beside:
            self._grid.addWidget(self._ways, 0, 1, Qt.AlignmentFlag.AlignTop)
        else:
            self._grid.addWidget(self._ways, 1, 0, 1, 3)

    def _go(self) -> None:
        way = self._said.way
        self.hide()
        if way is not None:
            way[1]()

    def _open_file(self) -> None:
        self._show(self._said.file)

    def _open_folder(self) -> None:
        file = self._said.file
        self._show(file and file.parent)

    def _show(self, place: Path | None) -> None:
        if place is not None and not QDesktopServices.openUrl(QUrl.fromLocalFile(str(place))):
            self.not_opened.emit(place)
