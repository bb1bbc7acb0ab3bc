"""What a page is: a title, a body, and reading the records anew."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from calibrator.desk.context import Desk
from calibrator.desk.parts import framed, label, row
from calibrator.desk.theme import SPACE


class Page(QWidget):
    """A page of the window. Subclasses fill `body` and override `reload` and, where it fits, `open`.

    `came_from` is the key of the page that was in hand before this one came up, blank where it was this one.
    """

    key = ""
    came_from = ""

    def __init__(self, desk: Desk, title: str, parent: QWidget | None = None) -> None:
        # Where it will stand, before it is filled: the style sheet dresses all of it anew at each place it is put in.
        super().__init__(parent)
        self.desk = desk
        self.title = label(title, "title")
        self.body = framed(self)
        self.body.setSpacing(int(1.5 * SPACE))
        self.body.addWidget(self.title)

    def beside_title(self, widget: QWidget) -> None:
        """Put what belongs to the whole page at the right of its title."""
        self.body.removeWidget(self.title)
        self.body.insertLayout(0, row(self.title, None, widget))

    def reload(self) -> None:
        """Show the records as they are now. Called when the page comes up and after every change."""

    def open(self, thing_id: str) -> None:
        """Show one thing: a lot, a plan. An empty id is the page's own choice."""

    def help_title(self) -> str:
        """The title of the place in the help that tells of what is in hand here; blank where no one place does."""
        return ""

    def pending(self) -> str:
        """What is typed here and not entered yet; blank where nothing would be lost by closing."""
        return ""

    def typed_at(self) -> QWidget:
        """Brings into view what is typed here and not kept yet. Gives the part of the page that holds it."""
        return self

    def leave(self) -> bool:
        """Asked before another page comes up; everything typed must be kept or still be there on return."""
        return True
