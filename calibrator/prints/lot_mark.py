"""The lot number as every print shows it: large, in one size, as it stands on the bag."""

from __future__ import annotations

from calibrator.prints.fit import cut_start, plain, sizes, wrap
from calibrator.prints.fonts import width_mm
from calibrator.prints.page import Weight
from calibrator.prints.sheet import Sheet
from calibrator.values import dataclass

_TAIL = 4
_UP, _DOWN = 0.84, 0.26  # room above and below a baseline, shares of the size
_READABLE = 0.8  # a number on one line may be this much smaller than one on several


@dataclass(frozen=True)
class LotMark:
    """A lot number laid out: its lines, all of one size."""

    lines: tuple[str, ...]
    size_mm: float
    whole: bool = True  # False where the beginning is left out

    @property
    def height_mm(self) -> float:
        return len(self.lines) * self.size_mm * (_UP + _DOWN)

    @property
    def width_mm(self) -> float:
        return max(width_mm(line, self.size_mm, Weight.BOLD) for line in self.lines)


def lay_lot(
    lot_number: str, room_mm: float, largest_mm: float, several_mm: float, least_mm: float, most_lines: int = 3
) -> LotMark:
    """Lay a lot number into a width: on one line of up to `largest_mm`, else on several of up to `several_mm`.

    A number too long for `most_lines` at `least_mm` loses its beginning, never its end: lots of a product are told
    apart by the end.
    """
    lot = plain(lot_number).strip() or "–"
    natural = width_mm(lot, 1.0, Weight.BOLD)
    alone = min(largest_mm, room_mm / natural * (1 - 1e-6))
    if alone >= max(least_mm, min(several_mm, largest_mm) * _READABLE):
        return LotMark((lot,), alone)
    for size in sizes(several_mm, least_mm):
        if natural * size > (most_lines + 1) * room_mm:
            continue  # far too long for so many lines: not worth breaking into all of them
        lines = wrap(lot, room_mm, size, Weight.BOLD)
        if len(lines) <= most_lines:
            return LotMark(_end_together(lot, lines), size)
    kept = cut_start(lot, room_mm * (most_lines - (0.4 if most_lines > 1 else 0.0)), least_mm, Weight.BOLD)
    return LotMark(_end_together(lot, wrap(kept, room_mm, least_mm, Weight.BOLD)[:most_lines]), least_mm, False)


def _end_together(lot: str, lines: list[str]) -> tuple[str, ...]:
    """Where a line breaks within the last four characters, they go to the last line together."""
    missing = _TAIL - len(lines[-1])
    if missing <= 0 or len(lines) == 1 or len(lines[-2]) <= missing:
        return tuple(lines)
    end = lines[-2][-missing:] + lines[-1]
    if " " in end or not lot.endswith(end):  # broken at a space: nothing was torn
        return tuple(lines)
    return (*lines[:-2], lines[-2][:-missing], end)


def draw_lot(sheet: Sheet, mark: LotMark, x_mm: float, top_mm: float, ink: float = 0.0) -> float:
    """Draw it; returns the height below it."""
    top = top_mm
    for line in mark.lines:
        sheet.text(line, x_mm, top + _UP * mark.size_mm, mark.size_mm, Weight.BOLD, ink=ink)
        top += mark.size_mm * (_UP + _DOWN)
    return top
