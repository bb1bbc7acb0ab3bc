"""The scoopfuls of a wall chart's row: a number and a picture for each way of filling, words below."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import lru_cache

from calibrator.prints.chart_words import PartCell, RowCells
from calibrator.prints.emblems import scoop
from calibrator.prints.fit import fit_line, two_lines_mm, wrap
from calibrator.prints.fonts import width_mm
from calibrator.prints.page import Box, Weight
from calibrator.prints.sheet import Sheet, centre_baseline
from calibrator.values import dataclass

SUB_LEADING = 1.12
SUB_TOP = 0.98  # where the small words begin, share of the type size: figures have nothing below their line
_PICTURE = 0.98  # a scoop's height, share of the type size
_PICTURE_WIDE = 1.35
_MOST_LINES = 2
LEAST_SUB_MM = 4.4
"""Letters of 2.9 mm, 5 minutes of arc at 2 m, which normal sight just tells (Snellen): the small words of a row."""
WORDS_MM, WIDER_WORDS_MM = 30.0, (40.0, 52.0)
"""The most that small words may widen a part, and what they may where that saves a page: two languages, or capitals,
stand in one line then."""
TIGHT_SUBS_MM = (3.7, 3.3)
"""What they give way to, in this order, where that saves a page or keeps a group on one: a second page is seen less
than they are. Common practice, no source."""


@dataclass(frozen=True)
class Style:
    """Ways to lay out a row: the type size; the scoopfuls below each other or in one line; the words for
    them in every row or once in the heading; what each batch makes, or not; the type of the day's own row, where that
    is larger; the picture once however few the scoopfuls, where that saves a page."""

    size_mm: float
    stacked: bool = False
    told: bool = True
    extra: bool = True
    today_mm: float = 0.0
    small_mm: float = LEAST_SUB_MM  # the small words are no smaller; less where that saves a page or a group's tearing
    once: bool = False
    words_mm: float = WORDS_MM

    def of(self, cells: RowCells) -> Style:
        """That of one row."""
        return replace(self, size_mm=max(self.size_mm, self.today_mm)) if cells.today else self

    def pictures(self, part: PartCell) -> int:
        """How often a part's scoop is drawn: few scoopfuls are, each."""
        return min(1, part.pictures) if self.once else part.pictures

    @property
    def sub_mm(self) -> float:
        """The small words below the figures."""
        return max(self.small_mm, 0.36 * self.size_mm)


def slots(rows: Sequence[RowCells], style: Style) -> tuple[float, ...]:
    """The width that the first, second, … part takes in its widest row, so that they stand in columns."""
    most = max((len(cells.parts) for cells in rows), default=0)
    return tuple(
        max(_width(cells.parts[i], style.of(cells)) for cells in rows if len(cells.parts) > i) for i in range(most)
    )


def scoopfuls_width(rows: Sequence[RowCells], style: Style) -> float:
    widths, plus = slots(rows, style), max((_plus(style.of(cells)) for cells in rows), default=0.0)
    if style.stacked:
        return max(widths, default=0.0) + (plus if len(widths) > 1 else 0.0)
    return sum(widths) + plus * max(0, len(widths) - 1)


def _width(part: PartCell, style: Style) -> float:
    count = width_mm(part.count, style.size_mm, Weight.BOLD, True)
    pictures = style.pictures(part) * _PICTURE * _PICTURE_WIDE * style.size_mm
    how, name = (
        max((width_mm(line, style.sub_mm, _weight(part)) for line in lines), default=0.0)
        for lines in (_how_below(part, style), _name_below(part, style))
    )
    return max(count + 0.2 * style.size_mm + pictures, how, min(style.words_mm, name))


def words_below(part: PartCell, style: Style) -> list[str]:
    """The words below a part, as many lines as they take at their size: shrunk to one they were too small from afar.

    A part filled otherwise than the other rows says so even where their heading does it for them.
    """
    return [*_how_below(part, style), *_name_below(part, style)]


def _how_below(part: PartCell, style: Style) -> list[str]:
    """How it is filled, in two lines at most and wider where they need it: cut off it would leave out which line."""
    if not style.told and not part.otherwise:
        return []
    weight = _weight(part)
    rooms = {told: max(style.words_mm, two_lines_mm(told, style.sub_mm, weight)) for told in part.how}
    return [line for told, room in rooms.items() for line in small_lines(told, room, style, weight)]


def _name_below(part: PartCell, style: Style) -> tuple[str, ...]:
    if not part.name or not (style.told or part.otherwise):
        return ()
    return small_lines(part.name, style.words_mm, style, _weight(part))


def _weight(part: PartCell) -> Weight:
    return Weight.BOLD if part.otherwise else Weight.REGULAR


def small_lines(text: str, room_mm: float, style: Style, weight: Weight = Weight.REGULAR) -> tuple[str, ...]:
    """Small words in two lines at most; a name that takes more stands in one, shrunk and cut as that needs."""
    return _small_lines(text, room_mm, style.sub_mm, weight)


@lru_cache(maxsize=4096)  # hundreds of rows say the same few words
def _small_lines(text: str, room_mm: float, size_mm: float, weight: Weight) -> tuple[str, ...]:
    lines = wrap(text, room_mm, size_mm, weight)
    return tuple(lines) if len(lines) <= _MOST_LINES else (text,)


def _plus(style: Style) -> float:
    return width_mm("+", style.size_mm, Weight.BOLD) + 0.5 * style.size_mm


def draw_scoopfuls(
    sheet: Sheet,
    parts: Sequence[PartCell],
    widths: Sequence[float],
    style: Style,
    weight: Weight,
    x_mm: float,
    top_mm: float,
    line_mm: float,
) -> None:
    """The parts from the left, or from the top down where they are stacked `line_mm` apart."""
    x, top, plus = x_mm, top_mm, _plus(style)
    indent = plus if style.stacked and len(widths) > 1 else 0.0
    for number, part in enumerate(parts):
        if number:
            left = x_mm if style.stacked else x
            sheet.text("+", left + 0.2 * style.size_mm, top + 0.84 * style.size_mm, style.size_mm, weight)
            x += 0.0 if style.stacked else plus
        _draw_part(sheet, part, widths[number], style, weight, x + indent, top)
        if style.stacked:
            top += line_mm
        else:
            x += widths[number]


def _draw_part(
    sheet: Sheet, part: PartCell, room_mm: float, style: Style, weight: Weight, x_mm: float, top_mm: float
) -> None:
    size = style.size_mm
    middle, high = top_mm + 0.5 * size, _PICTURE * size
    sheet.text(part.count, x_mm, centre_baseline(middle, size), size, weight, figures=True)
    x = x_mm + width_mm(part.count, size, weight, True) + 0.2 * size
    for _ in range(style.pictures(part)):
        sheet.put(*scoop(Box(x, middle - high / 2, high * _PICTURE_WIDE * 0.94, high), part.way, part.filled))
        x += high * _PICTURE_WIDE
    top = top_mm + SUB_TOP * size
    for told in words_below(part, style):
        fitted = fit_line(told, room_mm, style.sub_mm, 0.62 * style.sub_mm, _weight(part))
        top += style.sub_mm * SUB_LEADING
        sheet.text(fitted.text, x_mm, top - 0.28 * style.sub_mm, fitted.size_mm, _weight(part))
