"""How a wall chart is laid out: which way the paper lies, how large the type is, where the pages break."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from functools import cache
from itertools import groupby
from operator import attrgetter

from calibrator.prints.chart_columns import (
    LARGEST_TYPE_MM,
    LEAST_TYPE_MM,
    Column,
    RowShape,
    column_width,
    row_shape,
)
from calibrator.prints.chart_scoopfuls import LEAST_SUB_MM, TIGHT_SUBS_MM, Style
from calibrator.prints.chart_words import RowCells
from calibrator.values import dataclass

FLAG_MM = 7.0
TODAY_TYPE_MM = 12.0
_GUTTER, _GUTTER_OF_TODAY = 4.5, 3.5
_WIDEST_GUTTER = 16.0
TYPE_STEP_MM = 0.5
_MOST_AIR = 3.0
_FLOOR = 4.0  # for charts that no paper holds at a legible size: never overlap, whatever comes


@dataclass(frozen=True)
class Band:
    """Something that takes the chart's whole width: a row, or a group's heading kept with the next row."""

    height_mm: float
    row: RowCells | None = None
    group: int = 0


@dataclass(frozen=True)
class Layout:
    """A way to lay the table out. `columns` tells left edge and width of each, from the flag on."""

    landscape: bool
    shape: RowShape
    columns: dict[Column, tuple[float, float]]
    pages: tuple[tuple[Band, ...], ...]

    @property
    def rank(self) -> tuple[bool, int, bool, bool, float, bool, bool]:
        """Smaller is better: legible, few pages, words in every row, large type, upright, one line a row."""
        style = self.shape.style
        return *self.legibility, -style.size_mm, self.landscape, style.stacked

    @property
    def largest_mm(self) -> float:
        """The type of the day's own row."""
        return max(self.shape.style.size_mm, self.shape.style.today_mm)

    @property
    def legibility(self) -> tuple[bool, int, bool, bool]:
        """What goes before the largest type."""
        style = self.shape.style
        return style.size_mm < LEAST_TYPE_MM, len(self.pages), not style.told, not style.extra


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


def column_widths(rows: Sequence[RowCells], style: Style, least: Mapping[Column, float]) -> dict[Column, float]:
    """What each column takes, and what the temperature would that stands there where there is room for it."""
    return {column: _width(column, rows, style, least) for column in {*columns_of(rows), Column.TEMPERATURE}}


def _width(column: Column, rows: Sequence[RowCells], style: Style, least: Mapping[Column, float]) -> float:
    return max(column_width(column, rows, style), least.get(column, 0.0))


def place_columns(
    chosen: Sequence[Column], widths: Mapping[Column, float], room_mm: float
) -> dict[Column, tuple[float, float]] | None:
    """Left edge and width of every column, or None where those that are chosen do not fit the room."""
    placed = _placed(chosen, widths, room_mm)
    if placed is None or Column.TEMPERATURE in chosen:
        return placed
    powder = chosen.index(Column.POWDER)
    return _placed([*chosen[:powder], Column.TEMPERATURE, *chosen[powder:]], widths, room_mm) or placed


def _placed(
    chosen: Sequence[Column], widths: Mapping[Column, float], room_mm: float, least_gutter: float = _GUTTER
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


def bands(groups: Sequence[Sequence[RowCells]], headings: Sequence[float], shape: RowShape) -> list[Band]:
    """Headings and rows in their order; a heading of no height is left out."""
    made: list[Band] = []
    for number, (rows, heading_mm) in enumerate(zip(groups, headings, strict=True)):
        made += [Band(heading_mm, group=number)] if heading_mm else []
        made += [Band(shape.of(cells).height_mm, cells, number) for cells in rows]
    return made


def _greedy(made: Sequence[Band], room_mm: float) -> list[list[Band]]:
    """Pages filled from the top; a group that goes on has its heading there again, for each page may hang alone."""
    headings = {band.group: band for band in made if band.row is None}
    pages: list[list[Band]] = [[]]
    used = 0.0
    for i, band in enumerate(made):
        kept_with = made[i + 1].height_mm if band.row is None and i + 1 < len(made) else 0.0
        if pages[-1] and used + band.height_mm + kept_with > room_mm + 1e-6:
            again = [headings[band.group]] if band.row is not None and band.group in headings else []
            pages.append(again)
            used = sum(heading.height_mm for heading in again)
        pages[-1].append(band)
        used += band.height_mm
    return pages


def split(made: Sequence[Band], room_mm: float) -> tuple[tuple[Band, ...], ...]:
    """As few pages as hold the bands; a group that would be torn begins a page of its own where that takes no more."""
    through = _filled_alike(made, room_mm)
    apart = [page for bunch in _bunches(made, room_mm) for page in _filled_alike(bunch, room_mm)]
    return tuple(apart if len(apart) <= len(through) else through)


def _bunches(made: Sequence[Band], room_mm: float) -> list[list[Band]]:
    """Whole groups: as many as one page holds of them, or one that takes several."""
    bunches: list[list[Band]] = []
    for _, its in groupby(made, key=attrgetter("group")):
        group = list(its)
        if bunches and sum(band.height_mm for band in (*bunches[-1], *group)) <= room_mm + 1e-6:
            bunches[-1] += group
        else:
            bunches.append(group)
    return bunches


def _filled_alike(made: Sequence[Band], room_mm: float) -> list[tuple[Band, ...]]:
    """Pages filled alike rather than with a near-empty last one."""
    best = _greedy(made, room_mm)
    low, high = max(band.height_mm for band in made), room_mm
    while high - low > 0.5:
        middle = (low + high) / 2
        pages = _greedy(made, middle)
        best, low, high = (pages, low, middle) if len(pages) == len(best) else (best, middle, high)
    return [tuple(page) for page in best]


def styles(rows: Sequence[RowCells], small_mm: float = LEAST_SUB_MM) -> Iterator[tuple[Style, ...]]:
    """Series of styles, each from the largest type down. Names of several scoops must stand in the rows."""
    named = any(part.name for cells in rows for part in cells.parts)
    stackable = any(len(cells.parts) > 1 for cells in rows)
    extra = any(cells.extra for cells in rows)
    ways = [(True, True)] * extra + [(True, False)] + [(False, False)] * (not named)
    for stacked in (False, True) if stackable else (False,):
        for told, more in ways:
            yield tuple(Style(size, stacked, told, more, small_mm=small_mm) for size in type_sizes(_FLOOR))


def layouts(
    groups: Sequence[Sequence[RowCells]],
    headings: Sequence[float],
    rooms: Mapping[bool, tuple[float, float]],
    least: Mapping[Column, float],
    small_mm: float = LEAST_SUB_MM,
) -> Iterator[Layout]:
    """Every layout worth comparing; `rooms` tells width and height of the table, upright and
    landscape, `least` what the columns' headings take."""
    rows = [cells for group in groups for cells in group]
    chosen = columns_of(rows)

    @cache  # they are the same whichever way the paper lies, and most of the work
    def measured(style: Style) -> tuple[dict[Column, float], RowShape]:
        return column_widths(rows, style, least), row_shape(rows, style)

    for landscape, (width, height) in rooms.items():
        for series in styles(rows, small_mm):
            found = False
            for style in series:
                if found and style.size_mm < LEAST_TYPE_MM:
                    break
                widths, shape = measured(style)
                columns = place_columns(chosen, widths, width - FLAG_MM)
                if columns is None or shape.height_mm + max(headings) > height:
                    continue
                found = True
                yield Layout(landscape, shape, columns, split(bands(groups, headings, shape), height))


def best_layout(
    groups: Sequence[Sequence[RowCells]],
    headings: Sequence[float],
    rooms: Mapping[bool, tuple[float, float]],
    least: Mapping[Column, float],
) -> Layout | None:
    """The best one; None where a single row does not fit any paper."""
    best = min(layouts(groups, headings, rooms, least), key=lambda layout: layout.rank, default=None)
    if best is None:
        return None
    legible = best.shape.size_mm >= LEAST_TYPE_MM
    for small_mm in TIGHT_SUBS_MM if legible and len(best.pages) == 2 else ():  # three never go into one
        tight = min(layouts(groups, headings, rooms, least, small_mm), key=lambda layout: layout.rank)
        if len(tight.pages) == 1 and tight.rank < best.rank:
            best = tight
            break
    room = rooms[best.landscape]
    return _aired(_with_today_large(best, groups, headings, room, least), room[1])


def _with_today_large(
    layout: Layout,
    groups: Sequence[Sequence[RowCells]],
    headings: Sequence[float],
    room: tuple[float, float],
    least: Mapping[Column, float],
) -> Layout:
    """The same with the day's own row as large as takes no page more, from so large a type down."""
    rows = [cells for group in groups for cells in group]
    for size in type_sizes(layout.shape.size_mm + TYPE_STEP_MM):
        if size > TODAY_TYPE_MM:
            continue
        style = replace(layout.shape.style, today_mm=size)
        # One wide row may come nearer to its neighbours than all of them.
        widths = column_widths(rows, style, least)
        columns = _placed([*layout.columns], widths, room[0] - FLAG_MM, _GUTTER_OF_TODAY)
        shape = row_shape(rows, style)
        if columns is None or shape.of(max(rows, key=lambda cells: cells.today)).height_mm + max(headings) > room[1]:
            continue
        pages = split(bands(groups, headings, shape), room[1])
        if len(pages) == len(layout.pages):
            return replace(layout, shape=shape, columns=columns, pages=pages)
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
