"""What a field says beneath itself, in a place of fixed height: nothing that takes typing or clicks moves for it."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QPoint, QRect, QSize, Qt
from PySide6.QtGui import QMouseEvent, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractSpinBox,
    QComboBox,
    QLabel,
    QLineEdit,
    QScrollArea,
    QSizePolicy,
    QWidget,
)

from calibrator.desk.parts import set_style_property
from calibrator.desk.plain_text import LONGEST_TEXT, on_screen, tip
from calibrator.units import with_units_bound

BUBBLE_PX = (260, 420)
BUBBLE_AIR_PX = 11  # its border and padding in the style sheet, and a pixel to spare
ENDLESS_PX = 10_000
STEP_PX = 8  # in which a free place for a bubble is looked for
MOST_HELD = 4
WRAPPED = int(Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignTop)


class Saying(QLabel):
    """As high as its note, or one line, whatever it says.

    What does not fit is told in short, and whole in a bubble over the page for as long as the line `beside` it has
    the focus, which a click or a finger on the words brings there, or once `point_out` told what is wrong; the mouse
    goes through the bubble. `text` is always the whole sentence.
    """

    def __init__(self, beside: QWidget, note: str = "") -> None:
        super().__init__()
        self._beside, self._note, self._whole, self._short = beside, on_screen(note), "", ""
        self._lines = 1
        self._bubble: Bubble | None = None
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setProperty("kind", "quiet")
        self.setWordWrap(True)
        policy = QSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        self.setAlignment(Qt.AlignmentFlag.AlignTop)
        beside.installEventFilter(self)
        self.say(note)

    def set_note(self, note: str) -> None:
        """What stands there where there is nothing to say; it sets the height."""
        self._note = on_screen(note)
        self.updateGeometry()

    def keep_lines(self, lines: int) -> None:
        """So many are free from the beginning, for what is to be read here and not in a bubble."""
        self._lines = lines
        self.updateGeometry()

    def say(self, text: str, *, state: str = "ok", short: str = "") -> None:
        """Say a sentence, or the note again where it is blank. `short` is what it can be told in where room lacks."""
        self._whole = on_screen(text, LONGEST_TEXT) or self._note
        self._short = on_screen(short) or self._whole
        set_style_property(self, "state", state)
        self._fit()

    def point_out(self) -> None:
        """Show what is wrong whole, though the focus went on: it is told on leaving, and seldom fits a narrow field."""
        self._show_bubble(self._beside.hasFocus() or self.property("state") == "wrong")

    def text(self) -> str:
        return self._whole

    @property
    def fits(self) -> bool:
        """Whether it can be read where it stands."""
        return super().text() in (self._whole, self._short)

    def heightForWidth(self, width: int) -> int:
        return max(self._lines * self.fontMetrics().lineSpacing(), self._height(self._note, width))

    def sizeHint(self) -> QSize:
        return QSize(0, self.heightForWidth(max(self.width(), 1)))

    def minimumSizeHint(self) -> QSize:
        return QSize(0, self.fontMetrics().lineSpacing())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self.updateGeometry()
            self._fit()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if not self.fits and self._beside.isEnabled():
            self._beside.setFocus(Qt.FocusReason.MouseFocusReason)
            self._show_bubble(True)
        super().mousePressEvent(event)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() in (QEvent.Type.FocusIn, QEvent.Type.FocusOut, QEvent.Type.Hide):
            self._show_bubble(event.type() == QEvent.Type.FocusIn)
        return super().eventFilter(watched, event)

    def _height(self, text: str, width: int) -> int:
        return text_height(self, text, width)

    def _fit(self) -> None:
        room = self.heightForWidth(self.width())
        told = next((text for text in (self._whole, self._short) if self._height(text, self.width()) <= room), None)
        super().setText(self._cut(room) if told is None else told)
        self.setToolTip("" if self.fits else tip(self._whole))
        self._show_bubble(self._beside.hasFocus())

    def _cut(self, room: int) -> str:
        """The beginning, as many words as there is room for."""
        if room < 2 * self.fontMetrics().lineSpacing():
            return self.fontMetrics().elidedText(self._whole, Qt.TextElideMode.ElideRight, self.width())
        words = self._whole.split(" ")
        while len(words) > 1 and self._height(" ".join(words) + " …", self.width()) > room:
            words.pop()
        return " ".join(words) + " …"

    def _show_bubble(self, wanted: bool) -> None:
        if wanted and not self.fits and self.isVisible():
            self._bubble = self._bubble or Bubble(self)
            self._bubble.tell(self._whole, self)
        elif self._bubble is not None:
            self._bubble.hide()


class Bubble(QLabel):
    """A sentence that lies over the page, beside what it is about."""

    def __init__(self, saying: QWidget) -> None:
        super().__init__(_page_of(saying))
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setProperty("kind", "bubble")
        self.setWordWrap(True)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        saying.destroyed.connect(self.deleteLater)

    def tell(self, text: str, saying: QWidget, beneath: int = 0) -> None:
        """Lie over the saying, or so many pixels down from a field's top; above the field where the page ends."""
        page = _page_of(saying)
        if self.parentWidget() is not page:
            self.setParent(page)
        set_style_property(self, "state", str(saying.property("state")))
        self.setText(text)
        narrow, wide = BUBBLE_PX
        width = min(max(saying.width(), narrow), wide, page.width())
        height = text_height(self, text, width - 2 * BUBBLE_AIR_PX) + 2 * BUBBLE_AIR_PX
        at = saying.mapTo(page, QPoint(0, 0))
        left = max(0, min(at.x(), page.width() - width))
        field = saying if beneath else saying.parentWidget() or saying
        seen = page.visibleRegion().boundingRect()
        above = field.mapTo(page, QPoint(0, 0)).y() - height
        under = at.y() + beneath
        beside = field.mapTo(page, QPoint(field.width(), 0))
        places = [
            *(QRect(left, top, width, height) for top in (under, above)),
            *(QRect(right, beside.y(), width, height) for right in range(beside.x(), seen.right(), STEP_PX)),
            *(QRect(left, top, width, height) for top in range(under, seen.bottom(), STEP_PX)),
        ]
        fields = _fields_on(page)
        free = (place for place in places if seen.contains(place) and not any(map(place.intersects, fields)))
        usual = places[0] if under + height <= seen.bottom() else QRect(left, max(0, above), width, height)
        self.setGeometry(next(free, usual))
        self.show()
        self.raise_()


def text_height(words: QWidget, text: str, width: int) -> int:
    """In pixels, of a text that wraps at this width; nothing takes none."""
    if not text:
        return 0
    room = QRect(0, 0, max(width, 1), ENDLESS_PX)
    return words.fontMetrics().boundingRect(room, WRAPPED, text).height()


def _fields_on(page: QWidget) -> list[QRect]:
    """Where something takes typing or clicks, which no bubble should cover."""
    return [
        QRect(field.mapTo(page, QPoint(0, 0)), field.size())
        for kind in (QLineEdit, QAbstractButton, QComboBox, QAbstractSpinBox)
        for field in page.findChildren(kind)
        if field.isVisible()
    ]


def _page_of(widget: QWidget) -> QWidget:
    """What scrolls with the widget, or its window."""
    above = widget.parentWidget()
    while above is not None and not above.isWindow():
        frame = above.parentWidget()
        area = frame.parentWidget() if frame else None
        if isinstance(area, QScrollArea) and area.widget() is above:
            return above
        above = frame
    return widget.window()


class Held(QLabel):
    """Words amid fields that never take less room than they once took, so that what is beneath them stays.

    `lines` are kept free from the beginning, for words that may grow as somebody types.
    """

    def __init__(self, kind: str = "", tone: str = "", *, lines: int = 0) -> None:
        super().__init__()
        self._lines = lines
        self._told: list[str] = []
        self._plain = ""
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setProperty("kind", kind)
        self.setProperty("tone", tone)
        self.setWordWrap(True)
        self.setAlignment(Qt.AlignmentFlag.AlignTop)
        policy = self.sizePolicy()
        policy.setHeightForWidth(True)  # which a label without a word in it yet does not ask for
        self.setSizePolicy(policy)

    def setText(self, text: str) -> None:
        self._plain = on_screen(text, LONGEST_TEXT)
        shown = with_units_bound(self._plain)
        # Any of these may be the tallest, as wide as the page happens to be.
        if shown and all(len(shown) > len(told) or shown.count("\n") > told.count("\n") for told in self._told):
            self._told = [*self._told, shown][-MOST_HELD:]
            keep_room(self)
        super().setText(shown)

    def text(self) -> str:
        """As it was set."""
        return self._plain

    def heightForWidth(self, width: int) -> int:
        held = (text_height(self, told, width) for told in self._told)
        return max(super().heightForWidth(width), *held, self._lines * self.fontMetrics().lineSpacing())


def keep_room(*widgets: QWidget) -> None:
    """What is hidden keeps its room, so that nothing beneath it moves when it comes."""
    for widget in widgets:
        keeping = widget.sizePolicy()
        keeping.setRetainSizeWhenHidden(True)
        widget.setSizePolicy(keeping)
