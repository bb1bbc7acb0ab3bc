"""Whether what takes typing or clicks stands still while somebody types: every field of a screen is tried."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QCoreApplication, QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QAbstractSpinBox, QApplication, QComboBox, QLineEdit, QWidget

TYPED = ("7", "1 xq", "2")
"""Something that may be right, something that never is, and something else that may be."""
TARGETS = (QAbstractButton, QAbstractSpinBox, QComboBox, QLineEdit)
Places = dict[str, tuple[int, int, int, int]]


def moves(window: QWidget, texts: tuple[str, ...] = TYPED, tried: set[QLineEdit] | None = None) -> Iterator[str]:
    """What moved, and what was typed where; fields that were `tried` before are left out, where they are told."""
    for field in _fields(window):
        if tried is not None and field in tried:
            continue
        if tried is not None:
            tried.add(field)
        kept = field.text()
        # The form's own part of the screen: the verdict beside it may change with what is typed.
        form = _form_of(field)
        field.setFocus(Qt.FocusReason.TabFocusReason)
        before = places(form)
        for text in texts:
            field.selectAll()
            QTest.keyClicks(field, text)
            _settle()
            yield from _told(before, places(form), field, text)
        _leave(window)
        yield from _told(before, places(form), field, "and left")
        field.setFocus(Qt.FocusReason.TabFocusReason)
        field.selectAll()
        QTest.keyClick(field, Qt.Key.Key_Delete)
        if kept:
            QTest.keyClicks(field, kept)
        _settle()


def _fields(window: QWidget) -> list[QLineEdit]:
    found = [line for line in window.findChildren(QLineEdit) if line.isVisible() and line.isEnabled()]
    return [line for line in found if not isinstance(line.parentWidget(), QComboBox) and not line.isReadOnly()]


def _form_of(field: QWidget) -> QWidget:
    """The form beside what is told of it, else the innermost part that scrolls, or the window."""
    above: QWidget | None = field.parentWidget()
    while above is not None and not above.isWindow():
        frame = above.parentWidget()
        if above.objectName() == "form":
            return above
        if frame is not None and frame.objectName() == "qt_scrollarea_viewport":
            return above
        above = frame
    return field.window()


def places(form: QWidget) -> Places:
    found: Places = {}
    for number, target in enumerate(form.findChildren(QWidget)):
        # A link to the workings stands beside the result and goes with it.
        if target.property("text") in ("How is this computed?", "¿Cómo se calcula?"):
            continue
        if isinstance(target, TARGETS) and target.isVisible() and not isinstance(target.parentWidget(), TARGETS):
            at = target.mapTo(form, QPoint(0, 0))
            name = target.accessibleName() or str(target.property("text") or target.objectName())
            found[f"{number} {name}"] = (at.x(), at.y(), target.width(), target.height())
    return found


def _told(before: Places, after: Places, field: QLineEdit, text: str) -> Iterator[str]:
    gone = [name.split(" ", 1)[1] for name in before if name in after and before[name][:2] != after[name][:2]]
    if gone:
        yield f"“{text}” in “{field.accessibleName()}” moves {gone[:4]}"


def _leave(window: QWidget) -> None:
    focused = QApplication.focusWidget()
    if focused is not None:
        focused.clearFocus()
    _settle()


def _settle() -> None:
    for _ in range(3):
        QCoreApplication.processEvents()
