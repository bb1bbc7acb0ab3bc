"""A bar that shows how far some work is."""

from __future__ import annotations

from PySide6.QtWidgets import QProgressBar

STEPS = 1000


class ShareBar(QProgressBar):
    """Moves without telling how far it is until a share is told."""

    def __init__(self, accessible_name: str = "") -> None:
        super().__init__()
        self.setAccessibleName(accessible_name)
        self.setTextVisible(False)
        self.show_share(0.0)

    def show_share(self, share: float) -> None:
        """How far it is, 0 to 1; at 0 the bar only moves."""
        self.setRange(0, STEPS if share > 0 else 0)
        if share > 0:
            self.setValue(round(share * STEPS))
