"""Shows how a figure came about, over the window, on demand."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QDialog, QGridLayout, QPushButton, QVBoxLayout, QWidget

from calibrator.desk.how.working import Part, Working
from calibrator.desk.parts import button, label, row, scrolled
from calibrator.desk.theme import SPACE

WIDTH, HEIGHT = 760, 560


class HowDialog(QDialog):
    """One or more workings, one under another; Escape or the button closes it."""

    def __init__(self, workings: tuple[Working, ...], parent: QWidget | None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("How it is computed"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        inner = QWidget()
        body = QVBoxLayout(inner)
        body.setSpacing(2 * SPACE)
        for working in workings:
            body.addWidget(_working(working))
        body.addStretch(1)
        self.close_button = button(self.tr("Close"), self.close, "main")
        layout = QVBoxLayout(self)
        layout.addWidget(scrolled(inner), 1)
        layout.addLayout(row(None, self.close_button))
        self.resize(WIDTH, HEIGHT)
        self.close_button.setFocus()


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
    for number, part in enumerate(working.parts, start=1):
        _row(grid, number, part)
    sources = QCoreApplication.translate("How", "Source: {sources}").format(sources="\n".join(working.sources))
    grid.addWidget(label(sources, "quiet"), len(working.parts) + 1, 0, 1, 3)
    grid.setColumnStretch(1, 1)
    return holder


def _row(grid: QGridLayout, number: int, part: Part) -> None:
    what, working, result = label(part.what, wrap=False), label(part.working, "quiet"), label(part.result, wrap=False)
    result.setAccessibleName(f"{part.what}: {part.result}")
    top, right = Qt.AlignmentFlag.AlignTop, Qt.AlignmentFlag.AlignRight
    grid.addWidget(what, number, 0, top)
    grid.addWidget(working, number, 1, top)
    grid.addWidget(result, number, 2, top | right)
