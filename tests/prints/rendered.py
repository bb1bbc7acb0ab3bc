"""A PDF as another program renders it, for measuring what really lies on the paper."""

from __future__ import annotations

import numpy as np
import pypdfium2
from numpy.typing import NDArray
from PySide6.QtGui import QImage, QPainter

from calibrator.prints.output import pdf_bytes
from calibrator.prints.page import Document, Page
from calibrator.prints.paint import paint_page

MM_PER_INCH = 25.4
DARK = 128


def render(content: bytes, page: int, dpi: float) -> NDArray[np.uint8]:
    """A page in grey, row by row."""
    pdf = pypdfium2.PdfDocument(content)
    try:
        return np.asarray(pdf[page].render(scale=dpi / 72, grayscale=True).to_pil().convert("L"))
    finally:
        pdf.close()


def page_image(page: Page, dpi: float = 96.0) -> QImage:
    """A page as a picture on white."""
    scale = dpi / MM_PER_INCH
    image = QImage(round(page.width_mm * scale), round(page.height_mm * scale), QImage.Format.Format_Grayscale8)
    image.fill(0xFFFFFFFF)
    painter = QPainter(image)
    paint_page(painter, page, scale)
    painter.end()
    return image


def text_of(content: bytes) -> str:
    """All text that can be searched, without the spaces that a reader may guess at."""
    pdf = pypdfium2.PdfDocument(content)
    try:
        return "".join("".join(page.get_textpage().get_text_bounded().split()) for page in pdf)
    finally:
        pdf.close()


def picture(document: Document, dpi: float, page: int = 0) -> NDArray[np.uint8]:
    return render(pdf_bytes(document), page, dpi)


def runs_mm(line: NDArray[np.uint8], dpi: float) -> list[tuple[float, float]]:
    """Where a row or column of pixels is dark: start and end of each run, mm, to a part of a pixel.

    An edge pixel counts for as much as it is dark.
    """
    dark = (255.0 - line) / 255.0
    on = np.flatnonzero(np.diff(np.concatenate(([0], dark > 0.02, [0])).astype(int)))
    found = []
    for start, end in zip(on[::2], on[1::2], strict=True):
        first, last = start + 1 - dark[start], end - 1 + dark[end - 1]
        if end - start == 1:
            first, last = start + 0.5 - dark[start] / 2, start + 0.5 + dark[start] / 2
        found.append((float(first) * MM_PER_INCH / dpi, float(last) * MM_PER_INCH / dpi))
    return found
