"""The pages of a print as they will lie on paper, one under another, fitted to the width."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QFrame, QScrollArea, QSizePolicy, QWidget

from calibrator.desk.theme import SPACE, tokens
from calibrator.prints.page import Document
from calibrator.prints.paint import paint_page

GAP = 2 * SPACE
LARGEST_PX_PER_MM = 4.5


class Sheets(QWidget):
    """Paints the pages; the paper is white whatever the screen's theme is."""

    def __init__(self) -> None:
        super().__init__()
        self._document: Document | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def show_document(self, document: Document | None) -> None:
        self._document = document
        self.fit()

    def fit(self) -> None:
        """Take the height that the pages need at this width."""
        tops = self._places()
        self.setFixedHeight(int(tops[-1].bottom() + GAP) if tops else 0)
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(400, self.height())

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._document is None:
            return
        painter = QPainter(self)
        for page, place in zip(self._document.pages, self._places(), strict=True):
            if not place.intersects(QRectF(event.rect())):
                continue
            painter.fillRect(place, Qt.GlobalColor.white)
            painter.setPen(QColor(tokens().edge))
            painter.drawRect(place)
            painter.save()
            painter.setClipRect(place)
            painter.translate(QPointF(place.topLeft()))
            paint_page(painter, page, place.width() / page.width_mm)
            painter.restore()
        painter.end()

    def _places(self) -> list[QRectF]:
        places: list[QRectF] = []
        top = 1.0
        for page in self._document.pages if self._document else ():
            scale = min((self.width() - 2) / page.width_mm, LARGEST_PX_PER_MM)
            width, height = page.width_mm * scale, page.height_mm * scale
            places.append(QRectF((self.width() - width) / 2, top, width, height))
            top += height + GAP
        return places


class PagePreview(QScrollArea):
    """Scrolls by wheel, arrow keys and page keys."""

    def __init__(self) -> None:
        super().__init__()
        self._sheets = Sheets()
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(self.tr("Preview of the print"))
        self.setWidget(self._sheets)
        self.viewport().installEventFilter(self)

    def show_document(self, document: Document | None) -> None:
        """Show another print; the place scrolled to stays."""
        self._sheets.show_document(document)
        pages = len(document.pages) if document else 0
        self.setAccessibleDescription(self.tr("{count} pages").format(count=pages))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Resize:
            self._sheets.fit()
        return bool(super().eventFilter(watched, event))
