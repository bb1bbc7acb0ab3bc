"""The lot number as every print shows it: large, its last four characters larger still."""

from __future__ import annotations

from dataclasses import dataclass

from calibrator.prints.fit import cut_start, fit_line, plain, wrap
from calibrator.prints.fonts import width_mm
from calibrator.prints.page import Weight
from calibrator.prints.sheet import Sheet

TAIL = 4
_GAP = 0.06  # between the two parts, share of the tail's size
_UP, _DOWN = 0.84, 0.26  # room above and below a baseline, shares of the size


@dataclass(frozen=True)
class LotMark:
    """A lot number laid out: the lines of its beginning, its end, and whether they share a line."""

    head: tuple[str, ...]
    head_mm: float
    tail: str
    tail_mm: float
    beside: bool
    whole: bool = True  # False where the beginning is left out

    @property
    def height_mm(self) -> float:
        tail = self.tail_mm * (_UP + _DOWN)
        return tail if self.beside else tail + len(self.head) * self.head_mm * (_UP + _DOWN)

    @property
    def width_mm(self) -> float:
        heads = [width_mm(line, self.head_mm, Weight.BOLD) for line in self.head] or [0.0]
        tail = width_mm(self.tail, self.tail_mm, Weight.BOLD)
        return sum(heads) + self.gap_mm + tail if self.beside else max(tail, *heads)

    @property
    def gap_mm(self) -> float:
        return _GAP * self.tail_mm


def lay_lot(
    lot_number: str, room_mm: float, tail_mm: float, head_mm: float, least_mm: float, most_lines: int = 3
) -> LotMark:
    """Lay a lot number into a width: on one line where that leaves it large enough, else on several.

    A number too long for `most_lines` at `least_mm` loses its beginning, never its end.
    """
    lot = plain(lot_number) or "–"
    head, tail = lot[:-TAIL].strip(), lot[-TAIL:]
    tail_size = fit_line(tail, room_mm, tail_mm, least_mm, Weight.BOLD).size_mm
    natural = width_mm(head, 1.0, Weight.BOLD)
    for shrunk in (tail_size, 0.9 * tail_size, 0.8 * tail_size):
        rest = room_mm - width_mm(tail, shrunk, Weight.BOLD) - _GAP * shrunk
        if natural * least_mm * 1.1 <= rest:
            return LotMark((head,), min(head_mm, rest / natural if head else head_mm), tail, shrunk, True)
    lines, size = _head_lines(head, room_mm, head_mm, least_mm, most_lines)
    whole = "".join("".join(lines).split()) == "".join(head.split())
    return LotMark(lines, size, tail, tail_size, False, whole)


def _head_lines(
    head: str, room_mm: float, head_mm: float, least_mm: float, most_lines: int
) -> tuple[tuple[str, ...], float]:
    size = fit_line(head, room_mm, head_mm, least_mm, Weight.BOLD).size_mm
    lines = wrap(head, room_mm, size, Weight.BOLD)
    if len(lines) > most_lines:
        kept = cut_start(head, room_mm * (most_lines - (0.4 if most_lines > 1 else 0.0)), size, Weight.BOLD)
        lines = wrap(kept, room_mm, size, Weight.BOLD)[:most_lines]
    return tuple(lines), size


def draw_lot(sheet: Sheet, mark: LotMark, x_mm: float, top_mm: float, ink: float = 0.0) -> float:
    """Draw it; returns the height below it."""
    top = top_mm
    if not mark.beside:
        for line in mark.head:
            sheet.text(line, x_mm, top + _UP * mark.head_mm, mark.head_mm, Weight.BOLD, ink=ink)
            top += mark.head_mm * (_UP + _DOWN)
    baseline = top + _UP * mark.tail_mm
    x = x_mm
    if mark.beside and mark.head[0]:
        sheet.text(mark.head[0], x, baseline, mark.head_mm, Weight.BOLD, ink=ink)
        x += width_mm(mark.head[0], mark.head_mm, Weight.BOLD) + mark.gap_mm
    sheet.text(mark.tail, x, baseline, mark.tail_mm, Weight.BOLD, ink=ink)
    return top + mark.tail_mm * (_UP + _DOWN)
