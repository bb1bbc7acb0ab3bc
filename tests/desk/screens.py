"""What a screen says and where it does not fit, read off the widgets that are shown."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator
from html import unescape
from itertools import combinations

from PySide6.QtCore import QModelIndex, QPoint, QRect, Qt
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractScrollArea,
    QCheckBox,
    QComboBox,
    QDialog,
    QHeaderView,
    QLabel,
    QLineEdit,
    QPushButton,
    QRadioButton,
    QTabBar,
    QTableView,
    QWidget,
)

from calibrator.desk.widgets.name_box import NameBox

MARK_PX = 28  # the mark of a check box or radio button and the gap after it
AIR_PX = 8  # of a button, both sides together, that may go before its words are cut
LINE_AIR_PX = 24  # edge, padding and Qt's own margin of a line, both sides together
CLOSE_PX = 2  # fonts round their widths; nobody sees that
TOLD = (QLabel, QAbstractButton, QLineEdit, QComboBox)


def shown(root: QWidget) -> list[QWidget]:
    """Every widget that is visible."""
    return [widget for widget in root.findChildren(QWidget) if widget.isVisible()]


def texts(root: QWidget) -> Iterator[str]:
    """Everything that is said in words: on widgets, in tables, to the screen reader, over the mouse."""
    for widget in shown(root):
        yield from (widget.accessibleName(), widget.accessibleDescription(), untagged(widget.toolTip()))
        if isinstance(widget, QLabel | QAbstractButton):
            yield plain(widget.text())
        elif isinstance(widget, QLineEdit):
            yield widget.placeholderText()
        elif isinstance(widget, QComboBox):
            yield from (widget.itemText(row) for row in range(widget.count()))
        elif isinstance(widget, QTabBar):
            yield from (plain(widget.tabText(place)) for place in range(widget.count()))
        elif isinstance(widget, QAbstractItemView):
            yield from _cells(widget)


def too_small(root: QWidget, name: str) -> Iterator[str]:
    """Targets that a finger misses: 24 px anywhere (WCAG 2.2, 2.5.8), 44 px with gloves at the weigh-in (2.5.5)."""
    for widget in shown(root):
        if not isinstance(widget, QPushButton) or not widget.isEnabled():
            continue
        gloved = name.startswith("weigh_in-") and widget.property("kind") not in ("link", "rail")
        if min(widget.width(), widget.height()) < (44 if gloved else 24):
            yield f"{widget.text()!r} is {widget.width()} × {widget.height()}"


def plain(text: str) -> str:
    """A caption without its key."""
    return re.sub(r"&(.)", r"\1", text)


def untagged(tip: str) -> str:
    """What a tip says, without the tags that keep it from guessing at others."""
    return unescape(re.sub(r"<[^>]*>", "", tip)) if tip.startswith("<p") else tip


def _cells(view: QAbstractItemView) -> Iterator[str]:
    model = view.model()
    if model is None:
        return
    columns = model.columnCount(QModelIndex()) if isinstance(view, QTableView) else 1
    for column in range(columns):
        if isinstance(view, QTableView):
            yield str(model.headerData(column, Qt.Orientation.Horizontal) or "")
        for row in range(min(model.rowCount(QModelIndex()), 20)):
            yield str(model.index(row, column).data() or "")


def keys_twice(root: QWidget) -> list[str]:
    """Alt letters that two things on the screen answer to: a window's own, and not those of a dialog over it."""
    found: list[tuple[QWidget, str]] = []
    for widget in shown(root):
        told: list[str] = []
        if isinstance(widget, QAbstractButton) or (isinstance(widget, QLabel) and widget.buddy()):
            told = [widget.text()]
        elif isinstance(widget, QTabBar):
            told = [widget.tabText(place) for place in range(widget.count())]
        for text in told:
            found += [(widget.window(), key.upper()) for key in re.findall(r"&(\w)", text.replace("&&", ""))]
    return [key for (_, key), times in Counter(found).items() if times > 1]


def squeezed(root: QWidget) -> Iterator[str]:
    """Texts that have less room than they need, lie outside of what shows them, or under a neighbour."""
    for widget in shown(root):
        if isinstance(widget, QLabel) and widget.text():
            yield from _label(widget)
        elif isinstance(widget, QAbstractButton) and widget.text() and not isinstance(widget, NameBox):
            if widget.width() + CLOSE_PX < _needed(widget):
                yield f"button “{widget.text()}”: {widget.width()} of {_needed(widget)} px"
        elif isinstance(widget, QHeaderView) and widget.orientation() == Qt.Orientation.Horizontal:
            yield from _header(widget)
        elif isinstance(widget, QTabBar):
            yield from _tabs(widget)
        elif isinstance(widget, QLineEdit):
            yield from _example(widget)
        if isinstance(widget, TOLD) and _cut_at_the_side(widget):
            yield f"{type(widget).__name__} “{_said(widget)}” reaches beyond its frame"
    yield from _overlaps(root)


def too_large(window: QWidget) -> list[str]:
    """Dialogs that do not fit the window beneath them."""
    dialogs = [dialog for dialog in window.findChildren(QDialog) if dialog.isVisible()]
    sizes = {type(dialog).__name__: dialog.size() for dialog in dialogs}
    return [f"{name}: {size}" for name, size in sizes.items() if size != size.boundedTo(window.size())]


def _needed(widget: QAbstractButton) -> int:
    """What is narrower than this cuts into its words: of the air in a button only some can be spared."""
    if isinstance(widget, QPushButton):
        return widget.sizeHint().width() - AIR_PX
    mark = MARK_PX if isinstance(widget, QCheckBox | QRadioButton) else 0
    return widget.fontMetrics().horizontalAdvance(plain(widget.text())) + mark


def _label(widget: QLabel) -> Iterator[str]:
    if widget.property("kind") in ("title", "heading") and widget.text().endswith("…") and widget.toolTip():
        yield f"heading “{widget.text()}” is not told to its end"
    if not widget.wordWrap():
        needed = max(widget.fontMetrics().horizontalAdvance(plain(line)) for line in widget.text().split("\n"))
        if widget.width() + CLOSE_PX < needed:
            yield f"label “{widget.text()}”: {widget.width()} of {needed} px"
        return
    needed = widget.heightForWidth(widget.width())
    if widget.height() + CLOSE_PX < needed:
        yield f"label “{widget.text()}”: {widget.height()} of {needed} px high"
    longest = max((widget.fontMetrics().horizontalAdvance(word) for word in plain(widget.text()).split()), default=0)
    if widget.width() + CLOSE_PX < longest:
        yield f"label “{widget.text()}”: a word of {longest} px in {widget.width()}"


def _example(line: QLineEdit) -> Iterator[str]:
    """The example in an empty line; in a list's own line Qt's own words may be cut."""
    needed, room = line.fontMetrics().horizontalAdvance(line.placeholderText()), line.width() - LINE_AIR_PX
    if not line.text() and needed > room + CLOSE_PX:
        yield f"example “{line.placeholderText()}”: {room} of {needed} px"


def _header(header: QHeaderView) -> Iterator[str]:
    metrics = QFontMetrics(header.font())
    for column in range(header.count()):
        text = str(header.model().headerData(column, Qt.Orientation.Horizontal) or "")
        if not header.isSectionHidden(column) and header.sectionSize(column) < metrics.horizontalAdvance(text):
            yield f"heading “{text}”: {header.sectionSize(column)} of {metrics.horizontalAdvance(text)} px"


def _tabs(bar: QTabBar) -> Iterator[str]:
    width = sum(bar.tabRect(place).width() for place in range(bar.count()))
    holder = bar.parentWidget()
    room = holder.width() if holder else bar.width()
    if width > room + CLOSE_PX:
        yield f"tabs “{bar.tabText(0)}” …: {width} in {room} px"


def _cut_at_the_side(widget: QWidget) -> bool:
    """Whether an ancestor shows less than the whole width; up and down one can scroll."""
    above = widget.parentWidget()
    while above is not None and not above.isWindow():
        left = widget.mapTo(above, QPoint(0, 0)).x()
        view = above.parentWidget()
        scrolls = isinstance(view, QAbstractScrollArea) and view.horizontalScrollBar().isVisible()
        if not scrolls and (left < -CLOSE_PX or left + widget.width() > above.width() + CLOSE_PX):
            return True
        above = above.parentWidget()
    return False


def _said(widget: QWidget) -> str:
    return str(widget.property("text") or widget.accessibleName())


def _overlaps(root: QWidget) -> Iterator[str]:
    by_parent: dict[int, list[QWidget]] = {}
    for widget in shown(root):
        if isinstance(widget, TOLD) and not isinstance(widget.parentWidget(), QComboBox | QLineEdit):
            by_parent.setdefault(id(widget.parentWidget()), []).append(widget)
    for siblings in by_parent.values():
        for one, other in combinations(siblings, 2):
            common = _room(one).intersected(_room(other))
            if common.width() > CLOSE_PX and common.height() > CLOSE_PX:
                yield f"“{_said(one)}” lies over “{_said(other)}”"


def _room(widget: QWidget) -> QRect:
    return widget.geometry() if _said(widget) or not isinstance(widget, QLabel) else QRect()
