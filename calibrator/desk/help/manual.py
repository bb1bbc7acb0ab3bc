"""The manual, in the language of the screen: Markdown beside its pictures, shown as one long page."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QLocale, Qt, QUrl
from PySide6.QtGui import QImage, QTextCursor, QTextDocument
from PySide6.QtWidgets import QTextBrowser

from calibrator.places import resource

PICTURE_WIDTH = 720


class Manual(QTextBrowser):
    """Pictures are brought to the width of the page; links to other places open nowhere."""

    def __init__(self) -> None:
        super().__init__()
        self.setOpenLinks(False)
        self.setAccessibleName(self.tr("Manual"))
        self.document().setDocumentMargin(16)
        spanish = QLocale().language() == QLocale.Language.Spanish
        self.setMarkdown(resource(f"manual/{'es' if spanish else 'en'}.md").read_text(encoding="utf-8"))

    def paragraphs(self) -> list[tuple[int, str, str]]:
        """Each paragraph: which block it is, the heading it stands under, its text."""
        told, heading, block = [], "", self.document().begin()
        while block.isValid():
            text = block.text().replace("\ufffc", "").strip()  # a picture is such a sign
            if block.blockFormat().headingLevel():
                heading = text
            elif text:
                told.append((block.blockNumber(), heading, text))
            block = block.next()
        return told

    def bring_up(self, number: int) -> None:
        """Scroll to a block, and set the cursor there."""
        cursor = QTextCursor(self.document().findBlockByNumber(number))
        self.setTextCursor(cursor)
        bar = self.verticalScrollBar()
        bar.setValue(bar.value() + self.cursorRect(cursor).top())

    def loadResource(self, kind: int, name: QUrl | str) -> Any:
        """A picture beside the manual, never anything from elsewhere."""
        if kind != QTextDocument.ResourceType.ImageResource.value:
            return None
        path = QUrl(name).path().removeprefix("../")
        image = _picture(path) if path.startswith("pictures/") else QImage()
        if image.width() <= PICTURE_WIDTH:
            return image
        return image.scaledToWidth(PICTURE_WIDTH, Qt.TransformationMode.SmoothTransformation)


def _picture(name: str) -> QImage:
    """The picture, or an empty one: the words stand without it."""
    try:
        return QImage(str(resource(name)))
    except FileNotFoundError:
        return QImage()
