"""Small pieces that every page is put together from."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Literal

from PySide6.QtCore import QAbstractItemModel, QEvent, QObject, Qt
from PySide6.QtGui import QFocusEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QLayout,
    QScrollArea,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from calibrator.desk.plain_text import LONGEST_LINE, LONGEST_TEXT, LONGEST_TITLE, on_screen, tip
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.stray_keys import SteadyButton
from calibrator.units import with_units_bound

ROW_PX = 32  # of a table: every table of the program has the same air

LabelKind = Literal["", "title", "heading", "figure", "quiet", "caution", "tag"]
Tone = Literal["", "good", "warn", "bad"]


class _Words(QLabel):
    """Plain text that no name in it can turn, swell or push off the page. What is cut is told whole in a tip."""

    def __init__(self, longest: int) -> None:
        super().__init__()
        self._longest = longest
        self._plain = ""
        self._tells_whole = False
        self.setTextFormat(Qt.TextFormat.PlainText)

    def setText(self, text: str) -> None:
        shown = on_screen(text, self._longest)
        cut = shown.count("…") > text.count("…")
        if cut or self._tells_whole:  # a tip of the page's own stays
            self.setToolTip(tip(text) if cut else "")
        self._tells_whole = cut
        self._plain = shown
        super().setText(with_units_bound(shown))

    def text(self) -> str:
        """As it was set."""
        return self._plain


LETTER = re.compile(r"&(\w)")
"""In the text of a button: the letter that calls it."""


def label(text: str = "", kind: LabelKind = "", *, wrap: bool = True, tone: Tone = "", longest: int = 0) -> QLabel:
    """A line or paragraph; names of lots and people are plain text, never markup. `longest`: more than usual."""
    usual = LONGEST_TITLE if kind in ("title", "heading") else LONGEST_TEXT if wrap else LONGEST_LINE
    made = _Words(longest or usual)
    made.setText(text)
    made.setWordWrap(wrap)
    made.setProperty("kind", kind)
    made.setProperty("tone", tone)
    return made


def button(text: str, on_click: Callable[[], object], kind: Literal["", "main", "link"] = "") -> SteadyButton:
    """A button that Enter and the space bar press, and only while it has the focus."""
    made = SteadyButton(text)
    made.setProperty("kind", kind)
    made.setAutoDefault(True)  # pages are no dialogs: outside one, nothing is pressed from afar
    made.clicked.connect(on_click)
    return made


def with_free_letter(text: str, taken: set[str]) -> str:
    """The text of a button with the letter that calls it, which is taken then; without it where it is taken."""
    found = LETTER.search(text)
    if found is None or found[1].lower() in taken:
        return without_letter(text)
    taken.add(found[1].lower())
    return text


def with_some_letter(text: str, taken: set[str]) -> str:
    """The text of a button of a question, called by the first letter of a word where it can be, else by any free one,
    which is taken then."""
    plain = without_letter(text)
    free = [at for at, sign in enumerate(plain) if sign.isalpha() and sign.lower() not in taken]
    at = next((at for at in free if at == 0 or plain[at - 1] == " "), free[0] if free else None)
    if at is None:
        return plain
    taken.add(plain[at].lower())
    return f"{plain[:at]}&{plain[at:]}"


def without_letter(text: str) -> str:
    """The text of a button as it reads; in a sentence, and where several like it stand on one page."""
    return LETTER.sub(r"\1", text)


def set_tone(widget: QWidget, tone: Tone) -> None:
    """Colour by verdict; the words beside it must say the same."""
    set_style_property(widget, "tone", tone)


def set_style_property(widget: QWidget, name: str, value: str) -> None:
    """Set a property that the style sheet looks at, and have it looked at again."""
    if widget.property(name) != value:
        widget.setProperty(name, value)
        widget.style().unpolish(widget)
        widget.style().polish(widget)


def show_if(widget: QWidget, wanted: bool) -> None:
    """Show or hide a widget that may be as it should already: asking Qt again for the same costs at every digit."""
    if widget.isHidden() == wanted:
        widget.setVisible(wanted)


def card(*items: QWidget | QLayout, tone: Tone = "") -> QFrame:
    """A framed group of widgets, one under another."""
    frame = QFrame()
    frame.setProperty("kind", "card")
    frame.setProperty("tone", tone)
    layout = QVBoxLayout(frame)
    layout.setContentsMargins(2 * SPACE, 2 * SPACE, 2 * SPACE, 2 * SPACE)
    layout.setSpacing(SPACE)
    add_all(layout, items)
    return frame


def rule() -> QFrame:
    """A thin line between things that are alike."""
    line = QFrame()
    line.setProperty("kind", "rule")
    return line


def row(*items: QWidget | QLayout | None, spacing: int = SPACE) -> QHBoxLayout:
    """Widgets side by side; None is a stretch."""
    layout = QHBoxLayout()
    layout.setSpacing(spacing)
    add_all(layout, items)
    return layout


def column(*items: QWidget | QLayout | None, spacing: int = SPACE) -> QVBoxLayout:
    """Widgets one under another; None is a stretch."""
    layout = QVBoxLayout()
    layout.setSpacing(spacing)
    add_all(layout, items)
    return layout


def add_all(layout: QVBoxLayout | QHBoxLayout, items: tuple[QWidget | QLayout | None, ...]) -> None:
    """Put items into a layout, one after another; None is a stretch."""
    for item in items:
        if item is None:
            layout.addStretch(1)
        elif isinstance(item, QLayout):
            layout.addLayout(item)
        else:
            layout.addWidget(item)


def show_as_rows(
    table: QTableView, model: QAbstractItemModel, name: str, begin_at: Callable[[], int] = lambda: 0
) -> None:
    """Dress a table whose rows are things: one chosen at a time, no grid, Tab leaves it, headings stay quiet.

    The Tab key chooses the row to `begin_at` where none is chosen.
    """
    table.setModel(model)
    table.setAccessibleName(name)
    table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
    table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
    table.setShowGrid(False)
    table.setWordWrap(False)
    table.setTabKeyNavigation(False)
    table.verticalHeader().hide()
    table.verticalHeader().setDefaultSectionSize(ROW_PX)
    header = table.horizontalHeader()
    header.setHighlightSections(False)
    header.setTextElideMode(Qt.TextElideMode.ElideRight)
    header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
    table.installEventFilter(_FirstRow(table, begin_at))


class _FirstRow(QObject):
    """The Tab key chooses a row where none is chosen: the arrow key after it would come to the second."""

    def __init__(self, table: QTableView, begin_at: Callable[[], int]) -> None:
        super().__init__(table)
        self._table, self._begin_at = table, begin_at

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.FocusIn and isinstance(event, QFocusEvent):
            by_tab = event.reason() in (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason)
            if by_tab and not self._table.selectionModel().hasSelection():
                self._table.selectRow(self._begin_at())
        return False


def scrolled(inner: QWidget, area: QScrollArea | None = None) -> QScrollArea:
    """The widget in a frame that scrolls when the window is small."""
    area = area or QScrollArea()
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    area.setWidget(inner)
    return area


def read_by_keys(area: QScrollArea, name: str) -> QScrollArea:
    """Have words and pictures without a field among them come under Tab as one, so that the keys scroll them."""
    area.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
    area.setProperty("kind", "reading")
    area.setAccessibleName(name)
    return area


def framed(window: QWidget) -> QVBoxLayout:
    """The layout of a page or a dialog: the same air along the edges of all of them."""
    body = QVBoxLayout(window)
    body.setContentsMargins(3 * SPACE, 2 * SPACE, 3 * SPACE, 2 * SPACE)
    return body


def clear(layout: QLayout) -> None:
    """Take everything out of a layout and let it go."""
    while (item := layout.takeAt(0)) is not None:
        if (widget := item.widget()) is not None:
            widget.hide()
            widget.deleteLater()
        elif (inner := item.layout()) is not None:
            clear(inner)
