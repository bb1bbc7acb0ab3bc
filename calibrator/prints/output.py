"""From a document to a PDF file, a printer or a picture, each at true size."""

from __future__ import annotations

import os
from contextlib import suppress
from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF, QSizeF
from PySide6.QtGui import QPageLayout, QPageSize, QPainter, QPdfWriter
from PySide6.QtPrintSupport import QPrinter

from calibrator.model.underway import Ended, Underway, one_by_one, unwatched
from calibrator.prints.page import Document, Page
from calibrator.prints.paint import paint_page

_PDF_DPI = 1200
_DISK_IS_FULL = (28, 122)  # ENOSPC, EDQUOT


class CannotPrint(Exception):
    """A print could not be written or sent; the message says why and what to do.

    `sentence` is the message with its places open and `params` is what stands in them, for other languages.
    """

    def __init__(self, sentence: str, **params: str) -> None:
        super().__init__(sentence.format(**params))
        self.sentence = sentence
        self.params = params


class NotWritten(CannotPrint):
    """A file could not be written; one of that name that was there before is as it was."""

    elsewhere = True  # another place may do


def page_layout(page: Page) -> QPageLayout:
    """The whole paper without margins: the pages bring their own, and a driver's would spoil the scale."""
    landscape = page.width_mm > page.height_mm
    short, long = sorted((page.width_mm, page.height_mm))
    return QPageLayout(
        QPageSize(QSizeF(short, long), QPageSize.Unit.Millimeter),
        QPageLayout.Orientation.Landscape if landscape else QPageLayout.Orientation.Portrait,
        QMarginsF(0, 0, 0, 0),
        QPageLayout.Unit.Millimeter,
    )


def write_pdf(document: Document, path: Path, underway: Underway = unwatched) -> None:
    """Write a PDF file whole or not at all. Raises CannotPrint."""
    beside = path.with_name(path.name + ".part")
    content = pdf_bytes(document, underway)
    check_place(path)
    try:
        beside.write_bytes(content)
        os.replace(beside, path)
    except OSError as error:
        with suppress(OSError):
            beside.unlink(missing_ok=True)
        raise _refused(error, path) from error


def check_place(path: Path) -> None:
    """Raises NotWritten where a file of that name is there and may not be written, or is held by another program."""
    if not path.exists():
        return
    try:
        with path.open("r+b"):  # changes nothing
            return
    except OSError as error:
        raise _refused(error, path) from error


def _refused(error: OSError, path: Path) -> NotWritten:
    name = path.name
    if not path.parent.is_dir():
        return NotWritten("The folder {folder} is not there any more. Choose another place.", folder=str(path.parent))
    if error.errno in _DISK_IS_FULL:
        told = "The disk is full, so {name} was not written. Free some space or choose another place."
        return NotWritten(told, name=name)
    if isinstance(error, PermissionError):
        return NotWritten(
            "{name} cannot be written: another program has it open, or you may not write there. Close it there, or "
            "choose another name or place.",
            name=name,
        )
    return NotWritten(
        "{name} cannot be written: {reason}. Choose another place.", name=name, reason=error.strerror or "?"
    )


def pdf_bytes(document: Document, underway: Underway = unwatched) -> bytes:
    """The document as a PDF file's content. Raises CannotPrint."""
    content = QByteArray()
    buffer = QBuffer(content)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setTitle(document.title)
    writer.setCreator("calibrator")
    writer.setResolution(_PDF_DPI)
    _paint_all(writer, document, underway)
    buffer.close()
    return bytes(content.data())


def print_document(document: Document, printer: QPrinter, underway: Underway = unwatched) -> None:
    """Send every page to a printer, unscaled, each lying as it was made. Raises CannotPrint."""
    printer.setFullPage(True)
    printer.setDocName(document.title)
    try:
        _paint_all(printer, document, underway)
    except Ended:
        printer.abort()
        raise CannotPrint(
            "Printing was stopped. Throw away what comes out of the printer all the same: its numbers are not in use."
        ) from None


def _paint_all(device: QPdfWriter | QPrinter, document: Document, underway: Underway) -> None:
    device.setPageLayout(page_layout(document.pages[0]))
    painter = QPainter()
    if not painter.begin(device):
        raise CannotPrint("The printer did not start. See that it is switched on and try again.")
    try:
        for number, page in enumerate(one_by_one(document.pages, underway)):
            if number:
                device.setPageLayout(page_layout(page))
                if not device.newPage():
                    raise CannotPrint("The printer stopped. See to it and print again.")
            paint_page(painter, page)
    finally:
        painter.end()
