"""What can be reached by keyboard on a page that is shown, and the hand that does it."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel, QTabBar, QWidget

MOST_TABS = 80
RAIL = "12345678"  # what the window's rail of pages takes


def mnemonics(page: QWidget) -> list[str]:
    """The Alt letters in force, twice where two want the same."""
    return [text[text.index("&") + 1].upper() for text in _texts(page) if "&" in text.replace("&&", "")]


def _texts(page: QWidget) -> Iterator[str]:
    for widget in page.findChildren(QWidget):
        if not widget.isVisible():
            continue
        if isinstance(widget, QAbstractButton) or (isinstance(widget, QLabel) and widget.buddy()):
            yield widget.text()
        if isinstance(widget, QTabBar):
            yield from (widget.tabText(place) for place in range(widget.count()))


def nameless(page: QWidget) -> list[str]:
    """Widgets that take the focus and that a screen reader could not name."""
    return [
        type(widget).__name__
        for widget in page.findChildren(QWidget)
        if widget.isVisible() and widget.focusPolicy() & Qt.FocusPolicy.TabFocus and not _name(widget)
    ]


def _name(widget: QWidget) -> str:
    text = widget.text() if isinstance(widget, QAbstractButton) else ""
    return widget.accessibleName() or text


def focus() -> QWidget:
    """The widget that has the focus."""
    found = QApplication.focusWidget()
    assert found is not None
    return found


def tab_to(name: str) -> QWidget:
    """Press Tab until the field or button of that name has the focus, as a person does who looks for it."""
    for _ in range(MOST_TABS):
        widget = focus()
        told = widget.accessibleName() or getattr(widget, "text", str)()
        if told.replace("&", "").startswith(name):
            return widget
        QTest.keyClick(widget, Qt.Key.Key_Tab)
    raise AssertionError(f"Tab never came to {name}")


def tab_through(page: QWidget) -> list[QWidget]:
    """What the Tab key comes to on a page, in its order, from the first to the last."""
    found: list[QWidget] = []
    for _ in range(2 * MOST_TABS):
        QTest.keyClick(focus(), Qt.Key.Key_Tab)
        if focus() in found:
            return found
        if page.isAncestorOf(focus()):
            found.append(focus())
    raise AssertionError("Tab never came round")
