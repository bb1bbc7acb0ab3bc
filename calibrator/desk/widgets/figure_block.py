"""One figure to be read at a glance: large, with what it is above and its range beneath."""

from __future__ import annotations

from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from calibrator.desk.parts import Tone, label, set_tone

NARROWEST = 150


class FigureBlock(QWidget):
    """Caption, figure, note. Read out as one sentence."""

    def __init__(self) -> None:
        super().__init__()
        self._caption = label("", "quiet")
        self._caption.setMinimumWidth(NARROWEST)
        self._figure = label("", "figure", wrap=False)
        self._note = label("", "quiet", wrap=False)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        # Figures beside each other stand on one line, whichever captions wrap and whether there is a note.
        layout.addWidget(self._caption)
        layout.addStretch(1)
        layout.addWidget(self._figure)
        layout.addWidget(self._note)
        stays = self._note.sizePolicy()
        stays.setRetainSizeWhenHidden(True)
        self._note.setSizePolicy(stays)

    def tell(self, caption: str, figure: str, note: str = "", tone: Tone = "") -> None:
        """Show a figure."""
        self._caption.setText(caption)
        self._figure.setText(figure)
        set_tone(self._figure, tone)
        self._note.setText(note)
        self._note.setVisible(bool(note))
        self.setAccessibleName(f"{caption}: {figure}. {note}".rstrip(". "))
