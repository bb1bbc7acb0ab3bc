"""A scale that works as a keyboard types where the cursor is: on a button its Enter would press it.

Such keys come faster than fingers. Where a button or a count gets them, nothing is pressed or changed, and what was
typed goes to whoever waits for a weight (`strays.came`).
"""

from __future__ import annotations

import sys

from PySide6.QtCore import QEvent, QObject, QPointF, QSize, Qt, Signal
from PySide6.QtGui import QFont, QFontMetrics, QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QLineEdit, QPushButton, QSpinBox, QWidget

PACE_MS = (
    35  # between two keys; the fastest fingers need twice that for several keys on end (common practice, no source)
)
LEAST_KEYS = 3
_ALT_WRITES = sys.platform == "darwin"
_ENTER = (Qt.Key.Key_Return, Qt.Key.Key_Enter)


class _Strays(QObject):
    came = Signal(str)


strays = _Strays()


class Burst:
    """The keys that came at one widget without a pause."""

    def __init__(self) -> None:
        self.text = ""
        self._last = 0

    @property
    def running(self) -> bool:
        """Whether so many keys came on end that no fingers typed them; the spaces before are a quick finger's."""
        return len(self.text.strip()) >= LEAST_KEYS

    def take(self, event: QKeyEvent) -> bool:
        """Add a key to the burst, or begin anew after a pause. Gives whether it belongs to what came before."""
        at, text = event.timestamp(), event.text()
        follows = bool(self.text) and at - self._last <= PACE_MS
        if not follows:
            self.text = ""
        self._last = at
        if event.key() not in _ENTER and text.isprintable():
            self.text += text
        return follows

    def end(self) -> str:
        """What was typed, and no more of it."""
        text, self.text = self.text, ""
        return text.strip()


class StrayNet(QObject):
    """Takes a scale's weight out of a question: it neither answers it nor is lost. What a person types stays."""

    def __init__(self, dialog: QWidget) -> None:
        super().__init__(dialog)
        self._burst = Burst()
        self._before = ""
        for kind in (QPushButton, QLineEdit):
            for each in dialog.findChildren(kind):
                each.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() != QEvent.Type.KeyPress or not isinstance(event, QKeyEvent):
            return False
        line = watched if isinstance(watched, QLineEdit) else None
        if not self._burst.take(event):
            self._before = line.text() if line else ""
        weight = self._burst.running and any(sign.isdigit() for sign in self._burst.text)
        if not weight or event.key() not in _ENTER:
            return False
        if line is not None:
            line.setText(self._before)
        strays.came.emit(self._burst.end())
        return True


class SteadyButton(QPushButton):
    """A button that fingers press and a scale's Enter does not.

    It is pressed also where words that come as a field is left, or the place scrolled into view, move it meanwhile.
    """

    def __init__(self, text: str) -> None:
        super().__init__(text)
        self._burst = Burst()
        self._stood = QPointF()
        self._bears: tuple[str, ...] = ()

    def bear(self, *texts: str) -> None:
        """Be as wide as the longest of the texts that it bears in turn, so that its neighbours stay in their places."""
        self._bears = texts
        self.updateGeometry()

    def sizeHint(self) -> QSize:
        usual = super().sizeHint()
        if not self._bears:
            return usual
        lit = QFont(self.font())
        lit.setWeight(QFont.Weight.DemiBold)  # a lit button's letters are the wider ones
        longest = max(_width(text, lit) for text in self._bears)
        return QSize(usual.width() - _width(self.text(), self.font()) + longest, usual.height())

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        follows = self._burst.take(event)
        if follows and self._burst.running and event.key() in _ENTER:
            event.accept()
            strays.came.emit(self._burst.end())
        elif follows and event.key() == Qt.Key.Key_Space and self._burst.text.strip():
            event.accept()  # a space amid a weight; one after another are a quick finger's
        else:
            super().keyPressEvent(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self._stood = event.globalPosition() - event.position()
        super().mousePressEvent(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        super().mouseMoveEvent(self._as_pressed(event))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        super().mouseReleaseEvent(self._as_pressed(event))

    def _as_pressed(self, event: QMouseEvent) -> QMouseEvent:
        """The same seen from where the button stood as it was pressed."""
        at = event.globalPosition() - self._stood
        which, held, keys = event.button(), event.buttons(), event.modifiers()
        return QMouseEvent(event.type(), at, event.globalPosition(), which, held, keys, device=event.pointingDevice())


def _width(text: str, font: QFont) -> int:
    return QFontMetrics(font).size(Qt.TextFlag.TextShowMnemonic, text).width()


class SteadyLine(QLineEdit):
    """A line that Alt with the letter of no button writes nothing into."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        alone = event.modifiers() == Qt.KeyboardModifier.AltModifier
        if alone and event.text().strip() and not _ALT_WRITES:
            event.ignore()
        else:
            super().keyPressEvent(event)


class SteadySpin(QSpinBox):
    """A count that fingers type and a scale's weight does not change."""

    def __init__(self) -> None:
        super().__init__()
        self._burst = Burst()
        self._before = 0

    def keyPressEvent(self, event: QKeyEvent) -> None:
        before = self.value()
        if not self._burst.take(event):
            self._before = before
        if self._burst.running and event.key() in _ENTER:
            event.accept()
            self.setValue(self._before)
            strays.came.emit(self._burst.end())
        else:
            super().keyPressEvent(event)
