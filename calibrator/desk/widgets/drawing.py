"""Line drawings of scoop, bag, pail and scale, in the colours in force."""

from __future__ import annotations

import re

from PySide6.QtCore import QByteArray, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtWidgets import QWidget

from calibrator.desk.speech import figure_text
from calibrator.desk.theme import the_theme, tokens
from calibrator.model import UnitSystem
from calibrator.places import resource

SIZE = QSize(200, 150)
READINGS = {
    "zero": {UnitSystem.FARM: "0.0 oz", UnitSystem.METRIC: "0 g"},
    "pack": {UnitSystem.FARM: "16.0 oz", UnitSystem.METRIC: "500 g"},
    "weigh": {UnitSystem.FARM: "11.6 oz", UnitSystem.METRIC: "329 g"},
}
"""What the scale in a drawing shows."""


class Drawing(QWidget):
    """One drawing; `words` say to a screen reader what it shows. A scale in it shows the farm's own units."""

    def __init__(self, name: str, words: str, system: UnitSystem = UnitSystem.FARM) -> None:
        super().__init__()
        self._name, self._system = name, system
        self._source = resource(f"drawings/{name}.svg").read_text(encoding="utf-8")
        self._renderer = QSvgRenderer(self)
        self.setFixedSize(SIZE)
        self.setAccessibleName(words)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        the_theme().changed.connect(self._colour)
        self._colour()

    @property
    def reading(self) -> str:
        """What the scale shows; blank where there is none."""
        return figure_text(READINGS[self._name][self._system]) if self._name in READINGS else ""

    def set_system(self, system: UnitSystem) -> None:
        """Show the scale in these units."""
        self._system = system
        self._colour()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        self._renderer.render(painter, QRectF(self.rect()))
        painter.end()

    def _colour(self) -> None:
        now = tokens()
        drawn = self._source.replace("@reading@", self.reading)
        coloured = re.sub(r"@(\w+)@", lambda found: str(getattr(now, found[1])), drawn)
        self._renderer.load(QByteArray(coloured.encode()))
        self.update()
