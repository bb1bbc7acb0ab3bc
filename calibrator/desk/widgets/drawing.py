"""Line drawings of scoop, bag, pail and scale, in the colours in force."""

from __future__ import annotations

import re

from PySide6.QtCore import QByteArray, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtWidgets import QWidget

from calibrator.desk.theme import the_theme, tokens
from calibrator.places import resource

SIZE = QSize(200, 150)


class Drawing(QWidget):
    """One drawing; `words` say to a screen reader what it shows."""

    def __init__(self, name: str, words: str) -> None:
        super().__init__()
        self._source = resource(f"drawings/{name}.svg").read_text(encoding="utf-8")
        self._renderer = QSvgRenderer(self)
        self.setFixedSize(SIZE)
        self.setAccessibleName(words)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        the_theme().changed.connect(self._colour)
        self._colour()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        self._renderer.render(painter, QRectF(self.rect()))
        painter.end()

    def _colour(self) -> None:
        now = tokens()
        coloured = re.sub(r"@(\w+)@", lambda found: str(getattr(now, found[1])), self._source)
        self._renderer.load(QByteArray(coloured.encode()))
        self.update()
