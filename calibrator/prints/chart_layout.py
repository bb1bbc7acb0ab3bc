"""How a wall chart is laid out: which way the paper lies, how large the type is, where the pages break."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import replace
from functools import cache, partial
from itertools import pairwise

from calibrator.prints.chart_columns import (
    LARGEST_TYPE_MM,
    LEAST_TYPE_MM,
    Column,
    RowShape,
    column_width,
    row_shapes,
)
from calibrator.prints.chart_scoopfuls import LEAST_SUB_MM, TIGHT_SUBS_MM, WIDER_WORDS_MM, WORDS_MM, Style
from calibrator.prints.chart_words import RowCells
from calibrator.values import dataclass

FLAG_MM = 7.0
TODAY_TYPE_MM = 12.0
_GUTTER, _LEAST_GUTTER = 4.5, 3.5
_WIDEST_GUTTER = 16.0
TYPE_STEP_MM = 0.5
_MOST_AIR = 3.0
_FLOOR = 4.0  # for charts that no paper holds at a legible size: never overlap, whatever comes

_Cost = tuple[int, int, int, float]
"""Rows alone, pages, groups torn, squares of the pages' heights: these are least where all are filled alike."""

Measured = Callable[[Style], tuple[dict[Column, float], tuple[RowShape, ...]]]
"""The widths of the columns in a style, and the shapes of the groups' rows."""


@dataclass(frozen=True)
class Band:
    """Something that takes the chart's whole width: a row with its `shape`, or a group's heading kept with the next
    row."""

    height_mm: float
    row: RowCells | None = None
    shape: RowShape | None = None
    group: int = 0


@dataclass(frozen=True)
class Tight:
    """What the rows' small words, their pictures and the gaps between their columns come down to."""

    small_mm: float
    once: bool = False
    gutter_mm: float = _LEAST_GUTTER
    words_mm: float = WORDS_MM


_ROOMY = Tight(LEAST_SUB_MM, gutter_mm=_GUTTER)


@dataclass(frozen=True)
class Layout:
    """A way to lay the table out. `columns` tells left edge and width of each, from the flag on."""

    landscape: bool
    style: Style
    columns: dict[Column, tuple[float, float]]
    pages: tuple[tuple[Band, ...], ...]

    @property
    def rank(self) -> tuple[bool, int, int, bool, bool, float, bool, bool]:
        """Smaller is better: legible, few pages, groups whole, words in every row, large type, upright, one line a
        row."""
        return _rank(self.style, self.landscape, len(self.pages), self.torn)

    @property
    def largest_mm(self) -> float:
        """The type of the day's own row."""
        return max(self.style.size_mm, self.style.today_mm)

    @property
    def legibility(self) -> tuple[bool, int, int, bool, bool]:
        """What goes before the largest type."""
        return self.rank[:5]

    @property
    def sheets(self) -> tuple[bool, int, int]:
        """What small words give way to: type that is too small, pages, groups that are torn."""
        return self.rank[:3]

    @property
    def torn(self) -> int:
        """How often a group goes on over the page."""
        return sum(page[-1].group == after[0].group for page, after in pairwise(self.pages))


def _rank(style: Style, landscape: bool, pages: int, torn: int) -> tuple[bool, int, int, bool, bool, float, bool, bool]:
    legibility = (style.size_mm < LEAST_TYPE_MM, pages, torn, not style.told, not style.extra)
    return *legibility, -style.size_mm, landscape, style.stacked


def type_sizes(least_mm: float = LEAST_TYPE_MM) -> Iterator[float]:
    size = LARGEST_TYPE_MM
    while size >= least_mm:
        yield size
        size -= TYPE_STEP_MM


def columns_of(rows: Sequence[RowCells]) -> list[Column]:
    """The columns that a chart cannot do without."""
    chosen = [Column.CALVES]
    chosen += [Column.BATCHES] if any(cells.batches != "1 ×" for cells in rows) else []
    chosen += [Column.WATER]
    chosen += [Column.TEMPERATURE] if len({cells.temperature for cells in rows}) > 1 else []
    chosen += [Column.POWDER]
    return chosen + ([Column.SCOOPFULS] if any(cells.parts for cells in rows) else [])


def measure(groups: Sequence[Sequence[RowCells]], least: Mapping[Column, float]) -> Measured:
    """What each column takes in a style, no less than its heading (`least`), and the shape of each group's rows. The
    temperature is measured too, which stands there where there is room for it.

    They are the same whichever way the paper lies and whatever stands above them, and most of the work.
    """
    rows = [cells for group in groups for cells in group]
    columns = {*columns_of(rows), Column.TEMPERATURE}

    @cache
    def measured(style: Style) -> tuple[dict[Column, float], tuple[RowShape, ...]]:
        widths = {column: max(column_width(column, rows, style), least.get(column, 0.0)) for column in columns}
        return widths, row_shapes(groups, style)

    return measured


def place_columns(
    chosen: Sequence[Column], widths: Mapping[Column, float], room_mm: float, gutter_mm: float = _GUTTER
) -> dict[Column, tuple[float, float]] | None:
    """Left edge and width of every column, or None where those that are chosen do not fit the room."""
    placed = _placed(chosen, widths, room_mm, gutter_mm)
    if placed is None or Column.TEMPERATURE in chosen:
        return placed
    powder = chosen.index(Column.POWDER)
    return _placed([*chosen[:powder], Column.TEMPERATURE, *chosen[powder:]], widths, room_mm, gutter_mm) or placed


def _placed(
    chosen: Sequence[Column], widths: Mapping[Column, float], room_mm: float, least_gutter: float
) -> dict[Column, tuple[float, float]] | None:
    gutters = len(chosen) + 1
    spare = room_mm - sum(widths[column] for column in chosen) - gutters * least_gutter
    if spare < 0:
        return None
    gutter = min(_WIDEST_GUTTER, least_gutter + spare / gutters)
    edges, x = {}, gutter / 2
    for column in chosen:
        edges[column] = (x, widths[column])
        x += widths[column] + gutter
    return edges


def bands(groups: Sequence[Sequence[RowCells]], headings: Sequence[float], shapes: Sequence[RowShape]) -> list[Band]:
    """Headings and rows in their order; a heading of no height is left out."""
    made: list[Band] = []
    for number, (rows, heading_mm, shape) in enumerate(zip(groups, headings, shapes, strict=True)):
        made += [Band(heading_mm, group=number)] if heading_mm else []
        made += [Band((own := shape.of(cells)).height_mm, cells, own, number) for cells in rows]
    return made


def split(made: Sequence[Band], room_mm: float) -> tuple[tuple[Band, ...], ...]:
    """The bands on pages: no row of a group alone on one, few pages, groups whole where that takes no more, and all
    filled alike, in this order. A group that goes on has its heading there again, for each page may hang alone. A
    heading is followed by a row."""
    headings = {band.group: band for band in made if band.row is None}
    again = [() if band.row is None or band.group not in headings else (headings[band.group],) for band in made]
    counts = Counter(band.group for band in made if band.row is not None)
    best: list[tuple[_Cost, int]] = [((0, 0, 0, 0.0), 0)] * (len(made) + 1)  # of the pages from each band on
    for first in reversed(range(len(made))):
        ways = []
        for end, alone, high_mm in _pages_from(first, made, again[first], counts, room_mm):
            rest, _ = best[end]
            torn = end < len(made) and made[end].group == made[end - 1].group
            ways.append(((rest[0] + alone, rest[1] + 1, rest[2] + torn, rest[3] + high_mm**2), end))
        best[first] = min(ways)
    pages, first = [], 0
    while first < len(made):
        end = best[first][1]
        pages.append((*again[first], *made[first:end]))
        first = end
    return tuple(pages)


def _pages_from(
    first: int, made: Sequence[Band], again: Sequence[Band], counts: Mapping[int, int], room_mm: float
) -> Iterator[tuple[int, int, float]]:
    """Each way to fill a page: where it ends, how many rows of larger groups stand alone on it, and how high it gets.
    It ends after a row, and holds one however high that is."""
    used, alone, its, started = sum(band.height_mm for band in again), 0, 0, False
    for at in range(first, len(made)):
        band = made[at]
        used += band.height_mm
        if started and used > room_mm + 1e-6:
            return
        if at > first and band.group != made[at - 1].group:
            alone, its = alone + (its == 1 < counts[made[at - 1].group]), 0
        if band.row is not None:
            its, started = its + 1, True
            yield at + 1, alone + (its == 1 < counts[band.group]), used


def styles(rows: Sequence[RowCells], tight: Tight = _ROOMY) -> Iterator[tuple[Style, ...]]:
    """Series of styles, each from the largest type down. Rows say how a scoop is filled, and which, where the pictures
    do not tell it: several scoops, or several lines of one."""
    parts = {
        (part.way, part.ways, part.line, part.name) for cells in rows for part in cells.parts if not part.otherwise
    }
    alike = any(name for *_, name in parts) or len({way for way, *_ in parts}) < len(parts)
    stackable = any(len(cells.parts) > 1 for cells in rows)
    extra = any(cells.extra for cells in rows)
    ways = [(True, True)] * extra + [(True, False)] + [(False, False)] * (not alike)
    for stacked in (False, True) if stackable else (False,):
        for told, more in ways:
            made = partial(
                Style, stacked=stacked, told=told, extra=more, small_mm=tight.small_mm, once=tight.once,
                words_mm=tight.words_mm,
            )  # fmt: skip
            yield tuple(made(size) for size in type_sizes(_FLOOR))


def layouts(
    groups: Sequence[Sequence[RowCells]],
    headings: Sequence[float],
    rooms: Mapping[bool, tuple[float, float]],
    measured: Measured,
    tight: Tight = _ROOMY,
) -> Iterator[Layout]:
    """Every layout worth comparing; `rooms` tells width and height of the table, upright and landscape.

    What would be no better on a single page than one before it is not measured: that is most of them.
    """
    rows = [cells for group in groups for cells in group]
    chosen = columns_of(rows)
    best: Layout | None = None
    for landscape, (width, height) in rooms.items():
        for series in styles(rows, tight):
            found = False
            for style in series:
                if found and style.size_mm < LEAST_TYPE_MM:
                    break
                if best is not None and best.rank < _rank(style, landscape, 1, 0):
                    break
                widths, shapes = measured(style)
                columns = place_columns(chosen, widths, width - FLAG_MM, tight.gutter_mm)
                if columns is None or not _holds(height, made := bands(groups, headings, shapes)):
                    continue
                found = True
                layout = Layout(landscape, style, columns, split(made, height))
                best = layout if best is None or layout.rank < best.rank else best
                yield layout


def _tighter(groups: Sequence[Sequence[RowCells]]) -> Iterator[Tight]:
    """What a chart of several pages gives up for fewer, the least loss first: further pictures of the same scoop, then
    larger small words, told in wider columns."""
    several = any(part.pictures > 1 for rows in groups for cells in rows for part in cells.parts)
    if several:
        yield Tight(LEAST_SUB_MM, once=True)
    for small_mm in TIGHT_SUBS_MM:
        for words_mm in WIDER_WORDS_MM:
            yield Tight(small_mm, once=several, words_mm=words_mm)


def _holds(room_mm: float, made: Sequence[Band]) -> bool:
    """Whether a page holds the highest row below a heading."""
    heading_mm = max((band.height_mm for band in made if band.row is None), default=0.0)
    return heading_mm + max(band.height_mm for band in made if band.row is not None) <= room_mm


def best_layout(
    groups: Sequence[Sequence[RowCells]],
    headings: Sequence[float],
    rooms: Mapping[bool, tuple[float, float]],
    measured: Measured,
) -> Layout | None:
    """The best one; None where a single row does not fit any paper."""
    best = min(layouts(groups, headings, rooms, measured), key=lambda layout: layout.rank, default=None)
    if best is None:
        return None
    legible = best.style.size_mm >= LEAST_TYPE_MM
    for tight in _tighter(groups) if legible else ():
        if len(best.pages) == 2 or 1 < len(groups) < len(best.pages):  # three of one group never go into one
            found = min(layouts(groups, headings, rooms, measured, tight), key=lambda layout: layout.rank)
            best = found if found.sheets < best.sheets else best
    room = rooms[best.landscape]
    return _aired(_with_today_large(best, groups, headings, room, measured), room[1])


def _with_today_large(
    layout: Layout,
    groups: Sequence[Sequence[RowCells]],
    headings: Sequence[float],
    room: tuple[float, float],
    measured: Measured,
) -> Layout:
    """The same with the day's own row as large as neither takes a page more nor tears a group, from so large a type
    down."""
    for size in type_sizes(layout.style.size_mm + TYPE_STEP_MM):
        if size > TODAY_TYPE_MM:
            continue
        style = replace(layout.style, today_mm=size)
        # One wide row may come nearer to its neighbours than all of them.
        widths, shapes = measured(style)
        columns = _placed([*layout.columns], widths, room[0] - FLAG_MM, _LEAST_GUTTER)
        made = bands(groups, headings, shapes)
        if columns is None or not _holds(room[1], made):
            continue
        larger = replace(layout, style=style, columns=columns, pages=split(made, room[1]))
        if larger.legibility == layout.legibility:
            return larger
    return layout


def _aired(layout: Layout, room_mm: float) -> Layout:
    """The same with what is left of the height given to the rows."""
    air = min((room_mm - sum(b.height_mm for b in page)) / len(page) for page in layout.pages)
    air = max(0.0, min(_MOST_AIR, air))
    pages = tuple(
        tuple(replace(band, height_mm=band.height_mm + air) if band.row else band for band in page)
        for page in layout.pages
    )
    return replace(layout, pages=pages)
