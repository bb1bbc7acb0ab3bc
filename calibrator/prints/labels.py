"""Sheets of scoop labels."""

from __future__ import annotations

from collections.abc import Iterator

from calibrator.prints import words
from calibrator.prints.check_bars import BARS_HEIGHT_MM, bars
from calibrator.prints.errors import DoesNotFit
from calibrator.prints.fit import plain
from calibrator.prints.label_facts import LabelSheet
from calibrator.prints.label_strip import Piece, strip
from calibrator.prints.languages import Words
from calibrator.prints.page import Box, Document, Page
from calibrator.prints.place import moved
from calibrator.prints.sheet import Sheet, paper_mm

_GAP = 6.0


def scoop_labels(facts: LabelSheet) -> Document:
    """Labels at true scale, several to a page. Raises DoesNotFit."""
    if not facts.labels or not all(label.lines for label in facts.labels):
        raise DoesNotFit("There is no line to print yet. Sign off a weigh-in first.")
    said = Words.of(facts.languages)
    pages = _plain_pages(facts, said)
    return Document(
        f"{said.joined(words.LABEL_SHEET, ' / ')} {plain(facts.labels[0].lot_number)}", tuple(pages)
    )


def _pieces(facts: LabelSheet, said: Words) -> Iterator[Piece]:
    for label in facts.labels:
        piece = strip(label, facts, said)
        yield from [piece] * label.copies


def _plain_pages(facts: LabelSheet, said: Words) -> Iterator[Page]:
    """Shelves of labels from the top down, each page with its check bars at the foot."""
    pieces = sorted(_pieces(facts, said), key=lambda piece: -piece.height_mm)
    while pieces:
        sheet = Sheet(*paper_mm(facts.paper))
        body = sheet.body
        room = Box(body.x_mm, body.y_mm, body.width_mm, body.height_mm - BARS_HEIGHT_MM - _GAP)
        placed = _fill(sheet, room, pieces)
        if not placed:
            raise DoesNotFit("This scoop is too tall for a label on this paper. Use larger paper.")
        pieces = pieces[placed:]
        bars(sheet, said, Box(body.x_mm, body.bottom_mm - BARS_HEIGHT_MM, body.width_mm, BARS_HEIGHT_MM))
        yield sheet.page()


def _fill(sheet: Sheet, room: Box, pieces: list[Piece]) -> int:
    """Place what fits, in order; returns how many were placed."""
    x, y, shelf = room.x_mm, room.y_mm, 0.0
    for placed, piece in enumerate(pieces):
        if x + piece.width_mm > room.right_mm + 1e-9:
            x, y, shelf = room.x_mm, y + shelf + _GAP, 0.0
        if y + piece.height_mm > room.bottom_mm or piece.width_mm > room.width_mm:
            return placed
        sheet.put(*moved((*piece.items, *piece.outline), x, y))
        x, shelf = x + piece.width_mm + _GAP, max(shelf, piece.height_mm)
    return len(pieces)
