"""An explanation in a dialog over the window, on demand."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QGridLayout, QPushButton, QVBoxLayout, QWidget

from calibrator.desk.how.working import Part, Working
from calibrator.desk.parts import button, label
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.reading_dialog import ReadingDialog

WHAT_WIDTH, RESULT_WIDTH = 190, 230
LONG = 26
"""Results of more characters are told in two lines: else they would leave no width to how they came about."""


class HowDialog(ReadingDialog):
    """One or more workings, one under another."""

    def __init__(self, workings: tuple[Working, ...], parent: QWidget | None) -> None:
        inner = QWidget()
        body = QVBoxLayout(inner)
        body.setContentsMargins(0, 0, 0, 0)
        body.setSpacing(3 * SPACE)
        for working in workings:
            body.addWidget(_working(working))
        body.addStretch(1)
        super().__init__(QCoreApplication.translate("How", "How it is computed"), inner, parent)


def how_button(workings: Callable[[], tuple[Working, ...]]) -> QPushButton:
    """A quiet button that opens the workings of what stands beside it, as they are at that moment."""

    def show() -> None:
        found = workings()
        if found:
            HowDialog(found, made.window()).open()

    made = button(QCoreApplication.translate("How", "How is this computed?"), show, "link")
    return made


def _working(working: Working) -> QWidget:
    holder = QWidget()
    grid = QGridLayout(holder)
    grid.setContentsMargins(0, 0, 0, 0)
    grid.setHorizontalSpacing(2 * SPACE)
    grid.setVerticalSpacing(SPACE)
    grid.addWidget(label(working.title, "heading"), 0, 0, 1, 3)
    if working.words:
        grid.addWidget(label(working.words), 1, 0, 1, 3)
    for number, part in enumerate(working.parts, start=2):
        _row(grid, number, part)
    sources = QCoreApplication.translate("How", "Source: {sources}").format(sources="\n".join(working.sources))
    grid.addWidget(label(sources, "quiet"), len(working.parts) + 2, 0, 1, 3)
    grid.setColumnStretch(1, 1)
    return holder


def _row(grid: QGridLayout, number: int, part: Part) -> None:
    long = len(part.result) > LONG
    what, working, result = label(part.what), label(part.working, "quiet"), label(part.result, wrap=long)
    what.setFixedWidth(WHAT_WIDTH)
    if long:
        result.setFixedWidth(RESULT_WIDTH)
    result.setAccessibleName(f"{part.what}: {part.result}")
    top, right = Qt.AlignmentFlag.AlignTop, Qt.AlignmentFlag.AlignRight
    working.setAlignment(top)
    result.setAlignment(top | right)
    grid.addWidget(what, number, 0, top)
    grid.addWidget(working, number, 1)
    grid.addWidget(result, number, 2, top | right)
