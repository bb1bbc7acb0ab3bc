"""A question in the page, about something that can be but is unlikely: asked once, never in the way of Enter."""

from __future__ import annotations

from PySide6.QtCore import QTimer, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QScrollArea, QWidget

from calibrator.desk.parts import button, column, label, row


class Question(QWidget):
    """Whoever presses the button, or keeps the same once more, has answered it with yes."""

    answered = Signal()

    def __init__(self, yes: str, *, narrow: bool = False) -> None:
        """`narrow`: the button stands beneath the words, where a column leaves them no room beside it."""
        super().__init__()
        self._about: object = None
        self._soon = QTimer(self, singleShot=True, interval=0)  # where it stands is known once it is laid out
        self._soon.timeout.connect(self._come_into_view)
        self._words = label("", "caution")
        self._yes = button(yes, self.answered.emit)
        line = column(self._words, row(self._yes, None)) if narrow else row(self._words, self._yes)
        line.setStretch(0, 1)
        line.setContentsMargins(0, 0, 0, 0)
        self.setLayout(line)

    @property
    def words(self) -> str:
        return self._words.text()

    def take_as_known(self, about: object) -> None:
        """What was kept before is not asked about again."""
        self._about = about

    def withdraw(self) -> None:
        """Take the question away unanswered: whoever comes back to it is asked again."""
        self._about = None
        self.hide()

    def ask(self, doubt: str, yes: str) -> None:
        """Put a question that only its button answers: what led to it may have been pressed once too often."""
        self._yes.setText(yes)
        self._put(doubt)
        self.show()

    def settled(self, doubt: str, about: object) -> bool:
        """Whether nothing is to be asked: there is no doubt, or it was asked `about` just this before."""
        if not doubt or about == self._about:
            return True
        self._about = about
        self._put(doubt)
        return False

    def _put(self, doubt: str) -> None:
        self._words.setText(doubt)
        self._yes.setAccessibleDescription(doubt)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._soon.start()

    def _come_into_view(self) -> None:
        """Scroll to it, where the page is longer than the window."""
        above = self.parentWidget()
        while above is not None and not isinstance(above, QScrollArea):
            above = above.parentWidget()
        if above is not None and self.isVisible():
            above.ensureWidgetVisible(self)
