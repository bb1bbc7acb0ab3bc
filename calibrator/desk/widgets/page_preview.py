"""The pages of a print as they will lie on paper, one under another, fitted to the width or at true size."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QFrame, QScrollArea, QSizePolicy, QWidget

from calibrator.desk.theme import SPACE, tokens, ui_font
from calibrator.prints.page import Document
from calibrator.prints.paint import MM_PER_INCH, paint_page

GAP = 2 * SPACE
LARGEST_PX_PER_MM = 4.5
BLANK_SCALE = 1.4


class Sheets(QWidget):
    """Paints the pages; the paper is white whatever the screen's theme is."""

    def __init__(self) -> None:
        super().__init__()
        self._document: Document | None = None
        self._instead = ""  # told on blank paper while another print is made
        self.true_size = False
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def show_document(self, document: Document | None) -> None:
        self._document, self._instead = document, ""
        self.fit()

    def show_blank(self, words: str) -> None:
        """Blank paper of the same size, with words on every page."""
        self._instead = words
        self.update()

    def fit(self) -> None:
        """Take the height that the pages need at this width, at true size the width too."""
        widest = max((page.width_mm for page in self._document.pages), default=0.0) if self._document else 0.0
        self.setMinimumWidth(round(widest * self._true_px_per_mm()) + 2 if self.true_size else 0)
        tops = self.places()
        self.setFixedHeight(int(tops[-1].bottom() + GAP) if tops else 0)
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(400, self.height())

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._document is None:
            return
        painter = QPainter(self)
        for page, place in zip(self._document.pages, self.places(), strict=True):
            if not place.intersects(QRectF(event.rect())):
                continue
            painter.fillRect(place, Qt.GlobalColor.white)
            painter.setPen(QColor(tokens().edge))
            painter.drawRect(place)
            if self._instead:
                self._paint_words(painter, place.intersected(QRectF(self.visibleRegion().boundingRect())))
                continue
            painter.save()
            painter.setClipRect(place)
            painter.translate(QPointF(place.topLeft()))
            paint_page(painter, page, place.width() / page.width_mm)
            painter.restore()
        painter.end()

    def _paint_words(self, painter: QPainter, inside: QRectF) -> None:
        painter.setPen(Qt.GlobalColor.black)
        painter.setFont(ui_font(BLANK_SCALE))
        painter.drawText(inside, Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap, self._instead)

    def places(self) -> list[QRectF]:
        """Where each page lies."""
        places: list[QRectF] = []
        top = 1.0
        room = max(self.width(), self.minimumWidth())
        for page in self._document.pages if self._document else ():
            fitted = min((room - 2) / page.width_mm, LARGEST_PX_PER_MM)
            scale = self._true_px_per_mm() if self.true_size else fitted
            width, height = page.width_mm * scale, page.height_mm * scale
            places.append(QRectF((room - width) / 2, top, width, height))
            top += height + GAP
        return places

    def _true_px_per_mm(self) -> float:
        return self.logicalDpiX() / MM_PER_INCH


class PagePreview(QScrollArea):
    """Scrolls by wheel and arrow keys; Page Up and Page Down stop at every page's top, so that none is passed over.

    `turned` tells the page in view and how many there are.
    """

    turned = Signal(int, int)

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
        self.verticalScrollBar().valueChanged.connect(self._tell)
        self.verticalScrollBar().rangeChanged.connect(self._tell)

    def show_document(self, document: Document | None) -> None:
        """Show another print; the place scrolled to stays."""
        self._sheets.show_document(document)
        self._tell()

    def show_blank(self, words: str) -> None:
        """Take the print away until another is made; words say so on the blank paper, and the place stays."""
        self._sheets.show_blank(words)
        self.setAccessibleDescription(words)

    def show_true_size(self, wanted: bool) -> None:
        """As large as on paper, or fitted to the width; the page in view stays."""
        page = self.page
        self._sheets.true_size = wanted
        bars = Qt.ScrollBarPolicy
        self.setHorizontalScrollBarPolicy(bars.ScrollBarAsNeeded if wanted else bars.ScrollBarAlwaysOff)
        self._sheets.fit()
        self._sheets.resize(max(self._sheets.minimumWidth(), self.viewport().width()), self._sheets.height())
        self._sheets.fit()
        self.turn_to(page)

    @property
    def pages(self) -> int:
        return len(self._sheets.places())

    @property
    def page(self) -> int:
        """The page in view, counted from 1; 0 without any."""
        middle = self.verticalScrollBar().value() + self.viewport().height() // 3
        return sum(1 for place in self._sheets.places() if place.top() <= max(middle, 2))

    def turn_to(self, page: int) -> None:
        """Bring up a page by its top."""
        places = self._sheets.places()
        if places:
            self.verticalScrollBar().setValue(self._tops()[min(max(page, 1), len(places)) - 1])

    def turn_forward(self) -> None:
        self.turn_to(self.page + 1)

    def turn_back(self) -> None:
        self.turn_to(self.page - 1)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        bar = self.verticalScrollBar()
        here, step, tops = bar.value(), self.viewport().height() - GAP, self._tops()
        match event.key():
            case Qt.Key.Key_PageDown:
                bar.setValue(min([here + step, *(top for top in tops if top > here)]))
            case Qt.Key.Key_PageUp:
                bar.setValue(max([here - step, *(top for top in tops if top < here)]))
            case Qt.Key.Key_Home:
                bar.setValue(bar.minimum())
            case Qt.Key.Key_End:
                bar.setValue(bar.maximum())
            case _:
                super().keyPressEvent(event)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Resize:
            self._sheets.fit()
            self._tell()
        return bool(super().eventFilter(watched, event))

    def _tops(self) -> list[int]:
        return [int(place.top()) - 1 for place in self._sheets.places()]

    def _tell(self) -> None:
        told = self.tr("Page {page} of {pages}").format(page=self.page, pages=self.pages) if self.pages else ""
        self.setAccessibleDescription(told)
        self.turned.emit(self.page, self.pages)
