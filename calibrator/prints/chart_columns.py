"""The columns of a wall chart: how wide they are at a type size, and how a row is drawn in them.

Type size. At 2 m a person with half of normal sight (20/40) just tells figures of 10 minutes of arc, which
is 5.8 mm: 20/20 is 5 minutes by definition of the chart (Snellen). Figures of the table are at least 6 mm
high, a type of 9 mm or 25 points, and larger wherever the rows leave room;
those of the day's count then 8 mm, more than a three-hundredth of the distance (common practice, no source).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from enum import StrEnum

from calibrator.prints.chart_scoopfuls import (
    SUB_LEADING,
    SUB_TOP,
    Style,
    draw_scoopfuls,
    scoopfuls_width,
    slots,
    small_lines,
    words_below,
)
from calibrator.prints.chart_words import RowCells
from calibrator.prints.emblems import scale, warning
from calibrator.prints.fit import fit_line
from calibrator.prints.fonts import width_mm
from calibrator.prints.page import Box, Weight
from calibrator.prints.sheet import Sheet
from calibrator.values import dataclass

LEAST_TYPE_MM = 9.0
LARGEST_TYPE_MM = 16.0
_ROW_PAD = 0.9
_WIDEST_NOTE = 52.0
_SIGN = 1.4  # the warning before a note, with its gap, share of the note's type


class Column(StrEnum):
    CALVES = "calves"
    BATCHES = "batches"
    WATER = "water"
    TEMPERATURE = "temperature"
    POWDER = "powder"
    SCOOPFULS = "scoopfuls"


@dataclass(frozen=True)
class RowShape:
    """The shape of a group's rows, all alike, so that the eye can run down the columns."""

    style: Style
    slots: tuple[float, ...]
    figure_lines: int
    sub_lines: int

    def of(self, cells: RowCells) -> RowShape:
        """That of one row: the day's own is larger where the type is small, and so are its small words, which may take
        a line more."""
        if not cells.today:
            return self
        style = self.style.of(cells)
        _, subs = _lines([cells], style)
        return replace(self, style=style, sub_lines=max(self.sub_lines, subs))

    @property
    def size_mm(self) -> float:
        return self.style.size_mm

    @property
    def height_mm(self) -> float:
        subs = self.sub_lines * self.style.sub_mm * SUB_LEADING
        return self.figure_lines * self.size_mm * 1.02 + subs + 2 * _ROW_PAD

    @property
    def line_mm(self) -> float:
        """From one part of the scoopfuls to the next below it."""
        return (self.height_mm - 2 * _ROW_PAD) / self.figure_lines


def _figure(cells: RowCells, column: Column) -> str:
    return {
        Column.CALVES: cells.calves,
        Column.BATCHES: cells.batches,
        Column.WATER: cells.water,
        Column.TEMPERATURE: cells.temperature,
        Column.POWDER: cells.powder,
    }[column]


def column_width(column: Column, rows: Sequence[RowCells], style: Style) -> float:
    """The room that the widest cell takes; measured bold, as any row may be today's."""
    if column is Column.SCOOPFULS:
        return scoopfuls_width(rows, style)
    figure = max(width_mm(_figure(cells, column), style.of(cells).size_mm, Weight.BOLD, True) for cells in rows)
    notes = [
        width_mm(note, style.sub_mm, _note_weight(cells)) for cells in rows for note in _notes(cells, column, style)
    ]
    widest = max(notes, default=0.0)
    sign = _SIGN * style.sub_mm if column is Column.WATER and any(cells.warn for cells in rows) else 0.0
    return max(figure, min(_WIDEST_NOTE, widest + sign))


def row_shapes(groups: Sequence[Sequence[RowCells]], style: Style) -> tuple[RowShape, ...]:
    """That of each group's rows: the scoopfuls in columns throughout, the height only what the group's own words
    need."""
    alike = slots([cells for rows in groups for cells in rows], style)
    return tuple(RowShape(style, alike, *_lines(rows, style)) for rows in groups)


def _lines(rows: Sequence[RowCells], style: Style) -> tuple[int, int]:
    """How many lines of figures a row takes, and how many of small words."""
    parts = [cells.parts for cells in rows]
    lines = max(1, max(map(len, parts), default=0)) if style.stacked else 1
    told = max((len(words_below(part, style)) for row in parts for part in row), default=0)
    notes = max((len(_notes(cells, column, style)) for cells in rows for column in Column), default=0)
    return lines, max(told * lines, notes)


def draw_row(
    sheet: Sheet,
    cells: RowCells,
    shape: RowShape,
    columns: Mapping[Column, tuple[float, float]],
    top_mm: float,
) -> None:
    """One row; `columns` tells the left edge and width of each."""
    size, weight = shape.size_mm, Weight.BOLD if cells.today else Weight.SEMIBOLD
    top = top_mm + _ROW_PAD
    for column, (x, _) in columns.items():
        if column is Column.SCOOPFULS and cells.weighed:
            sheet.put(*scale(Box(x, top, 1.25 * size, size)))  # told from a counted row at a glance
        elif column is Column.SCOOPFULS:
            draw_scoopfuls(sheet, cells.parts, shape.slots, shape.style, weight, x, top, shape.line_mm)
        else:
            sheet.text(_figure(cells, column), x, top + 0.84 * size, size, weight, figures=True)
    for column in (Column.WATER, Column.POWDER):
        _draw_notes(sheet, cells, column, columns[column], top + SUB_TOP * size, shape.style)


def _notes(cells: RowCells, column: Column, style: Style) -> tuple[str, ...]:
    """What stands small below the figure of a column, in as many lines as it takes at its size."""
    if column not in (Column.WATER, Column.POWDER):
        return ()
    told = cells.below(style.extra) if column is Column.WATER else cells.powder_notes
    figure = width_mm(_figure(cells, column), style.of(cells).size_mm, Weight.BOLD, True)
    room = max(_WIDEST_NOTE, figure) - (_SIGN * style.sub_mm if cells.warn and column is Column.WATER else 0.0)
    return tuple(line for note in told for line in small_lines(note, room, style, _note_weight(cells)))


def _note_weight(cells: RowCells) -> Weight:
    return Weight.BOLD if cells.warn else Weight.REGULAR


def _draw_notes(
    sheet: Sheet, cells: RowCells, column: Column, span: tuple[float, float], top_mm: float, style: Style
) -> None:
    (x, room), size = span, style.sub_mm
    for number, note in enumerate(_notes(cells, column, style)):
        mark = cells.warn and column is Column.WATER and number == 0
        weight = Weight.BOLD if mark else Weight.REGULAR
        indent = _SIGN * size if mark else 0.0
        top = top_mm + number * size * SUB_LEADING
        if mark:
            sheet.put(*warning(Box(x, top, 1.1 * size, size)))
        fitted = fit_line(note, room - indent, size, 0.62 * size, weight)
        sheet.text(fitted.text, x + indent, top + 0.88 * size, fitted.size_mm, weight)
