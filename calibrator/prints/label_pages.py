"""Labels laid on pages: shelves on plain paper, or the places of a sheet of ready-cut labels."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from calibrator.model import UnitSystem
from calibrator.prints.check_bars import BARS_HEIGHT_MM, BARS_LEAST_MM, bars, bars_alone
from calibrator.prints.errors import DoesNotFit
from calibrator.prints.label_facts import LabelGrid
from calibrator.prints.label_strip import Piece
from calibrator.prints.page import Box, Page
from calibrator.prints.place import moved
from calibrator.prints.sheet import MARGIN_MM, Sheet

GAP_MM = 6.0


def shelf_room(paper: tuple[float, float]) -> tuple[float, float]:
    """What a page of this size has for labels, above its check bars."""
    return paper[0] - 2 * MARGIN_MM, paper[1] - 2 * MARGIN_MM - BARS_HEIGHT_MM - GAP_MM


def shelf_pages(
    pieces: Sequence[Piece], paper: tuple[float, float], told: Sequence[str], units: UnitSystem
) -> Iterator[Page]:
    """Labels from the top down, the tallest first; each page has its check bars at the foot."""
    left = sorted(pieces, key=lambda piece: -piece.height_mm)
    while left:
        sheet = Sheet(*paper)
        body = sheet.body
        room = Box(body.x_mm, body.y_mm, *shelf_room(paper))
        placed = _fill(sheet, room, left)
        if not placed:
            raise DoesNotFit("This scoop is too tall for a label on this paper. Use larger paper.")
        left = left[placed:]
        bars(sheet, told, Box(body.x_mm, body.bottom_mm - BARS_HEIGHT_MM, body.width_mm, BARS_HEIGHT_MM), units)
        yield sheet.page()


def _fill(sheet: Sheet, room: Box, pieces: Sequence[Piece]) -> int:
    """Place what fits, in order; returns how many were placed."""
    x, y, shelf = room.x_mm, room.y_mm, 0.0
    for placed, piece in enumerate(pieces):
        if x + piece.width_mm > room.right_mm + 1e-9:
            x, y, shelf = room.x_mm, y + shelf + GAP_MM, 0.0
        if y + piece.height_mm > room.bottom_mm + 1e-9 or piece.width_mm > room.width_mm + 1e-9:
            return placed
        sheet.put(*moved((*piece.items, *piece.outline), x, y))
        x, shelf = x + piece.width_mm + GAP_MM, max(shelf, piece.height_mm)
    return len(pieces)


def check_grid(grid: LabelGrid, paper: tuple[float, float]) -> None:
    """Raises DoesNotFit for a grid that no sheet can have."""
    numbers = (grid.width_mm, grid.height_mm, grid.left_mm, grid.top_mm, grid.pitch_x_mm, grid.pitch_y_mm)
    sound = all(math.isfinite(n) and n >= 0 for n in numbers) and min(grid.columns, grid.rows) >= 1
    if not sound or grid.used < 0 or min(grid.width_mm, grid.height_mm) <= 0:
        raise DoesNotFit("A sheet of labels needs at least one label, and sizes above zero.")
    if (grid.columns > 1 and grid.pitch_x_mm < grid.width_mm) or (grid.rows > 1 and grid.pitch_y_mm < grid.height_mm):
        raise DoesNotFit("The labels of this sheet overlap: from one to the next must be a label's size or more.")
    right = grid.left_mm + (grid.columns - 1) * grid.pitch_x_mm + grid.width_mm
    bottom = grid.top_mm + (grid.rows - 1) * grid.pitch_y_mm + grid.height_mm
    if right > paper[0] + 0.1 or bottom > paper[1] + 0.1:
        raise DoesNotFit("The labels of this sheet reach beyond the paper. Look at its sizes again.")


def places_a_sheet(grid: LabelGrid) -> int:
    """How many labels a sheet takes beside its check bars. Raises DoesNotFit where it takes none."""
    return len(_places(grid)[0])


def grid_pages(
    pieces: Sequence[Piece], grid: LabelGrid, paper: tuple[float, float], units: UnitSystem
) -> Iterator[Page]:
    """Labels in their places; the last places of every sheet hold the check bars."""
    places, bars_box = _places(grid)
    left, used = list(pieces), grid.used
    while left:
        sheet = Sheet(*paper)
        free = places[used % max(1, len(places)) :]
        for (x, y), piece in zip(free, left, strict=False):
            sheet.put(*moved((*piece.items, *piece.outline), x, y))
        left, used = left[len(free) :], 0
        bars_alone(sheet, bars_box, units)
        yield sheet.page()


def _places(grid: LabelGrid) -> tuple[list[tuple[float, float]], Box]:
    """Corners of the labels in reading order, and the box that the check bars take from the last ones."""
    wide = min(grid.columns, math.ceil(BARS_LEAST_MM / grid.pitch_x_mm) if grid.columns > 1 else 1)
    high = min(grid.rows, math.ceil(BARS_LEAST_MM / grid.pitch_y_mm) if grid.rows > 1 else 1)
    corners = [
        (grid.left_mm + column * grid.pitch_x_mm, grid.top_mm + row * grid.pitch_y_mm)
        for row in range(grid.rows)
        for column in range(grid.columns)
        if row < grid.rows - high or column < grid.columns - wide
    ]
    width = (wide - 1) * grid.pitch_x_mm + grid.width_mm
    height = (high - 1) * grid.pitch_y_mm + grid.height_mm
    if not corners or min(width, height) < BARS_LEAST_MM:
        raise DoesNotFit("This sheet has no room for the bars that its scale is checked by. Use plain paper.")
    x = grid.left_mm + (grid.columns - wide) * grid.pitch_x_mm
    y = grid.top_mm + (grid.rows - high) * grid.pitch_y_mm
    return corners, Box(x, y, width, height)
