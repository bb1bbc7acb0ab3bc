"""Pictures of how it is done: in a dialog at the step, and all together on the page of the help."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QFrame, QGridLayout, QPushButton, QScrollArea, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.following import drawing
from calibrator.desk.help.hands import Handiwork, Move
from calibrator.desk.parts import button, card, label, row, scrolled
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.reading_dialog import ReadingDialog

ABREAST = 2
WORDS_WIDTH = 124


class HandsDialog(ReadingDialog):
    """The moves of one job."""

    def __init__(self, work: Handiwork, desk: Desk, parent: QWidget | None) -> None:
        super().__init__(work.title, handiwork(work, desk), parent)


def hands_button(work: Handiwork, desk: Desk) -> QPushButton:
    """A quiet button that opens the pictures."""

    def show() -> None:
        HandsDialog(work, desk, made.window()).open()

    made = button(QCoreApplication.translate("Hands", "Show me how"), show, "link")
    return made


def handiwork(work: Handiwork, desk: Desk) -> QWidget:
    """A job with its moves side by side and its caution beneath."""
    holder = QWidget()
    body = QVBoxLayout(holder)
    body.setContentsMargins(0, 0, 0, 0)
    body.setSpacing(SPACE)
    body.addWidget(label(work.title, "heading"))
    grid = QGridLayout()
    grid.setSpacing(SPACE)
    for number, move in enumerate(work.moves):
        grid.addWidget(_move(number + 1, move, desk), number // ABREAST, number % ABREAST)
    body.addLayout(grid)
    body.addWidget(label(work.caution, "caution"))
    return holder


def _move(number: int, move: Move, desk: Desk) -> QFrame:
    words = label(f"{number}. {move.words}")
    words.setMinimumWidth(WORDS_WIDTH)
    words.setMinimumHeight(words.heightForWidth(WORDS_WIDTH))
    line = row(drawing(desk, move.drawing, move.words), words)
    line.setStretch(1, 1)
    return card(line)


def all_handiwork(works: tuple[Handiwork, ...], desk: Desk) -> QScrollArea:
    """Every job, one under another."""
    inner = QWidget()
    body = QVBoxLayout(inner)
    body.setContentsMargins(0, int(1.5 * SPACE), 0, 2 * SPACE)
    body.setSpacing(3 * SPACE)
    for work in works:
        body.addWidget(handiwork(work, desk))
    body.addStretch(1)
    return scrolled(inner)
