"""Fields beside each other where they fit, below each other where they do not: nothing is cut off at the right."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QSize
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QGridLayout, QWidget

from calibrator.desk.theme import ROWS, SPACE


class SideBySide(QWidget):
    """As many columns as the width holds; hidden fields take no place. `stretches` share out a single line."""

    def __init__(self, *fields: QWidget, stretches: Sequence[int] = (), gap: int = 0) -> None:
        super().__init__()
        self._fields, self._stretches = fields, tuple(stretches) or (1,) * len(fields)
        self._placed: tuple[tuple[QWidget, ...], int] = ((), 0)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(gap or int(1.5 * SPACE))
        self._grid.setVerticalSpacing(gap or ROWS)
        for field in fields:
            field.setParent(self)
        self._place()

    def minimumSizeHint(self) -> QSize:
        """No wider than the widest field: the rest goes below it."""
        return QSize(max((_least(field) for field in self._shown()), default=0), super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._place()

    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.LayoutRequest:
            self._place()
        return super().event(event)

    @property
    def columns(self) -> int:
        """How many fields stand beside each other."""
        return self._placed[1]

    def _shown(self) -> tuple[QWidget, ...]:
        return tuple(field for field in self._fields if not field.isHidden())

    def _place(self) -> None:
        shown = self._shown()
        wanted = shown, self._fitting(shown)
        if wanted == self._placed:
            return
        self._placed = wanted
        for field in self._fields:
            self._grid.removeWidget(field)
        for column, stretch in enumerate(self._stretches):
            self._grid.setColumnStretch(column, 0 if column >= self.columns else stretch if self._one_line else 1)
        for number, field in enumerate(shown):
            self._grid.addWidget(field, *divmod(number, self.columns))
        self.updateGeometry()

    @property
    def _one_line(self) -> bool:
        return self.columns == len(self._fields)

    def _fitting(self, shown: Sequence[QWidget]) -> int:
        columns = len(shown)
        gap = self._grid.horizontalSpacing()
        while columns > 1 and sum(map(_least, shown[:columns])) + gap * (columns - 1) > self.width():
            columns -= 1
        return max(1, columns)


def _least(field: QWidget) -> int:
    return max(field.minimumSizeHint().width(), field.minimumWidth())
