"""What is seldom needed, folded away under one line that unfolds it."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from calibrator.desk.parts import button, row


class Fold(QWidget):
    """A link that says what is under it; what is typed under it stays when it is folded again."""

    toggled = Signal(bool)

    def __init__(self, more: str, less: str, inner: QWidget) -> None:
        super().__init__()
        self._more, self._less, self.inner = more, less, inner
        self.link = button(more, self._toggle, "link")
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(row(self.link, None))
        layout.addWidget(inner)
        self.unfold(False)

    @property
    def unfolded(self) -> bool:
        return not self.inner.isHidden()

    def unfold(self, on: bool = True) -> None:
        """Show what is under it, or hide it again."""
        self.inner.setVisible(on)
        self.link.setText(self._less if on else self._more)
        self.toggled.emit(on)

    def _toggle(self) -> None:
        self.unfold(not self.unfolded)
