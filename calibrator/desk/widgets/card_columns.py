"""Cards one under another, in two columns where the page is wide enough for both."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import QScrollArea, QWidget

from calibrator.desk.parts import column, scrolled
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.side_by_side import SideBySide

LEAST_PX, MOST_PX = 480, 820  # of a column: lines that are longer are hard to read


def card_columns(first: Sequence[QWidget], then: Sequence[QWidget]) -> QScrollArea:
    """The cards of the first column, beside or above those of the second."""
    both = SideBySide(_column(first), _column(then), gap=2 * SPACE)
    inner = QWidget()
    inside = column(both, None)
    inside.setContentsMargins(0, 0, 0, 0)
    inner.setLayout(inside)
    inner.setMaximumWidth(2 * (MOST_PX + SPACE))
    return scrolled(inner)


def _column(cards: Sequence[QWidget]) -> QWidget:
    made = QWidget()
    inside = column(*cards, None, spacing=2 * SPACE)
    inside.setContentsMargins(0, 0, 0, 0)
    made.setLayout(inside)
    made.setMinimumWidth(LEAST_PX)
    return made
