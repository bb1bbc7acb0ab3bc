"""The wall chart: how much water and powder for how many calves, to be read from two metres."""

from __future__ import annotations

from dataclasses import replace

from calibrator.prints import words
from calibrator.prints.chart_columns import Column
from calibrator.prints.chart_facts import WallChart
from calibrator.prints.chart_foot import Foot, draw_foot, lay_foot
from calibrator.prints.chart_head import HEAD_MM, draw_head
from calibrator.prints.chart_layout import FLAG_MM, TYPE_STEP_MM, Layout, best_layout, measure
from calibrator.prints.chart_table import draw_bands, draw_headings, group_mm, headings_mm, least_widths
from calibrator.prints.chart_two_lots import draw_two_lots, two_lots_mm
from calibrator.prints.chart_weeks import weeks_page, weeks_width
from calibrator.prints.chart_words import (
    RowCells,
    cold_told,
    common_mix_told,
    fed_told,
    group_told,
    row_cells,
    scoop_names,
)
from calibrator.prints.emblems import drop, thermometer
from calibrator.prints.errors import DoesNotFit
from calibrator.prints.fit import Fitted, fit_block, fit_line, plain
from calibrator.prints.languages import Words
from calibrator.prints.page import Box, Document, Page, Weight
from calibrator.prints.sheet import MARGIN_MM, Sheet, paper_mm

_TEMPERATURE_MM = 44.0  # with the gap to what stands beside it
_DROP_MM = 5.0
_EACH_MM = 6.5  # what each calf drinks
GROUP_NAMES_MM = (10.5, 8.0, 5.6)
_MORE_MM = (14.0, 7.0, 3.0, 0.0)  # for larger type of a single group's rate
_LARGE_STILL_MM = 9.5


def wall_chart(facts: WallChart) -> Document:
    """A chart on as few pages as hold it at a legible size. Raises DoesNotFit."""
    if not any(group.rows for group in facts.groups):
        raise DoesNotFit("The plan has no calves to print a chart for. Enter how many calves there are.")
    facts = replace(facts, groups=tuple(group for group in facts.groups if group.rows))
    said = Words.of(facts.languages)
    groups = _cells(facts, said)
    feet = {lies: lay_foot(facts, said, _width(facts, lies)) for lies in (False, True)}
    layout, rate_mm = _laid_out(facts, groups, said, feet)
    if layout is None:
        raise DoesNotFit("This chart does not fit the paper. Use fewer kinds of scoops, or larger paper.")
    foot = feet[layout.landscape]
    count = len(layout.pages) + len(facts.weeks)
    pages = tuple(_page(facts, said, layout, rate_mm, foot, number, count) for number in range(len(layout.pages)))
    upright = lay_foot(facts, said, weeks_width(facts))
    pages += tuple(
        weeks_page(facts, weeks, said, upright, number, count)
        for number, weeks in enumerate(facts.weeks, start=len(layout.pages) + 1)
    )
    chart = said.joined(words.WALL_CHART, " / ")
    return Document(f"{chart} {facts.number} · {plain(facts.lot_number)}", pages)


def _laid_out(
    facts: WallChart, groups: list[list[RowCells]], said: Words, feet: dict[bool, Foot]
) -> tuple[Layout | None, float]:
    """The layout and the height of the rate above it.

    Each group's name stands large enough to be found from afar, and a single one's rate to be read from there, where
    the rows lose no more by it than a step of type, and that only down to a size that is large still.
    """
    measured = measure(groups, least_widths(said))
    several = len(groups) > 1

    def laid(name_mm: float, rate_mm: float) -> Layout | None:
        rooms = {lies: _room(facts, said, lies, foot, rate_mm) for lies, foot in feet.items()}
        headings = [group_mm(said, name_mm) if name_mm else 0.0] * len(groups)
        return best_layout(groups, headings, rooms, measured)

    small = _rate_mm(said)
    sizes = [(name, small) for name in GROUP_NAMES_MM] if several else [(0.0, small + more) for more in _MORE_MM]
    tight = laid(*sizes[-1])
    if tight is not None and (several or len(tight.pages) == 1):
        for name_mm, rate_mm in sizes[:-1]:
            found = laid(name_mm, rate_mm)
            if found is not None and _no_worse(found, tight, several):
                return found, rate_mm
    return tight, sizes[-1][1]


def _no_worse(layout: Layout, tight: Layout, several: bool) -> bool:
    if layout.style.small_mm < tight.style.small_mm:
        return False
    if layout.rank <= tight.rank:
        return several or layout.largest_mm >= tight.largest_mm
    size, least = layout.style.size_mm, tight.style.size_mm
    same = layout.legibility == tight.legibility and not several
    return same and size >= _LARGE_STILL_MM and least - size <= TYPE_STEP_MM


def _cells(facts: WallChart, said: Words) -> list[list[RowCells]]:
    several = len(scoop_names(facts)) > 1
    return [[row_cells(row, group.rate.basis, facts, said, several) for row in group.rows] for group in facts.groups]


def _width(facts: WallChart, landscape: bool) -> float:
    return paper_mm(facts.paper, landscape=landscape)[0] - 2 * MARGIN_MM


def _rate_mm(said: Words) -> float:
    """What each calf drinks in one line, below it the rate as small as can be; of several groups, what they share."""
    return 10.4 + 2.6 * len(said.tongues)


def _room(facts: WallChart, said: Words, landscape: bool, foot: Foot, rate_mm: float) -> tuple[float, float]:
    """Width and height that are left for the rows."""
    height = paper_mm(facts.paper, landscape=landscape)[1] - 2 * MARGIN_MM
    used = HEAD_MM + rate_mm + two_lots_mm(facts, said) + headings_mm(facts, said) + foot.height_mm + 1.5
    return _width(facts, landscape), height - used


def _page(facts: WallChart, said: Words, layout: Layout, rate: float, foot: Foot, number: int, pages: int) -> Page:
    sheet = Sheet(*paper_mm(facts.paper, landscape=layout.landscape))
    draw_head(sheet, facts, said)
    top = sheet.body.y_mm + HEAD_MM
    _rate(sheet, facts, said, layout, Box(sheet.body.x_mm, top, sheet.body.width_mm, rate))
    top += rate
    draw_two_lots(sheet, facts, said, top)
    top += two_lots_mm(facts, said)
    draw_headings(sheet, layout, facts, said, top)
    draw_bands(sheet, layout, layout.pages[number], facts, said, top + headings_mm(facts, said))
    draw_foot(sheet, facts, said, foot, number + 1, pages)
    return sheet.page()


def _rate(sheet: Sheet, facts: WallChart, said: Words, layout: Layout, box: Box) -> None:
    """What every calf gets, and that it is for the cold; the water's temperature, where it has no column."""
    column = Column.TEMPERATURE in layout.columns
    if len(facts.groups) > 1:
        left = box.x_mm
        if not column:
            left += FLAG_MM + layout.columns[Column.WATER][0]
            _temperature(sheet, layout, left, box.y_mm)
            left += _TEMPERATURE_MM
        _common(sheet, facts, said, Box(left, box.y_mm, box.right_mm - left, box.height_mm))
        return
    room = box.width_mm
    if not column:
        room -= _DROP_MM + _TEMPERATURE_MM
        x = box.right_mm - _TEMPERATURE_MM + 4.0
        sheet.put(drop(Box(x - _DROP_MM, box.y_mm + 2.6, 4.0, 7.2)))  # over another column it would be read as its own
        _temperature(sheet, layout, x, box.y_mm)
    cold = [one for t in said.tongues if (one := cold_told(facts, t))]
    each = _each(facts, said, room)
    for fed in (False, True):  # in large type of its own, or among the rest where that leaves too little room
        rates = [group_told(facts.groups[0], facts, t, fed=fed) for t in said.tongues]
        lines = [" · ".join(parts) for parts in zip(cold, rates, strict=True)] if cold else rates
        taken = 0.0 if fed or not each.text else 1.16 * each.size_mm
        fitted = fit_block(lines, room, box.height_mm - 1.0 - taken, 4.8, 2.6, Weight.SEMIBOLD, 1.16)
        if not any(line.endswith("…") for line in fitted.lines):
            break
    if taken:
        sheet.text(each.text, box.x_mm, box.y_mm + 0.85 * each.size_mm, each.size_mm, Weight.BOLD)
    sheet.lines(fitted, box.x_mm, box.y_mm + taken, Weight.SEMIBOLD, leading=1.16)


def _common(sheet: Sheet, facts: WallChart, said: Words, box: Box) -> None:
    """What holds for several groups: that it is for the cold, and the mix where all get the same."""
    told = [" · ".join(filter(None, (cold_told(facts, t), common_mix_told(facts, t)))) for t in said.tongues]
    fitted = fit_block(list(filter(None, told)), box.width_mm, box.height_mm - 1.0, 6.0, 2.6, Weight.BOLD, 1.16)
    sheet.lines(fitted, box.x_mm, box.y_mm, Weight.BOLD, leading=1.16)


def _temperature(sheet: Sheet, layout: Layout, x_mm: float, top_mm: float) -> None:
    """How warm the water is."""
    told = next(band.row.temperature for page in layout.pages for band in page if band.row is not None)
    sheet.put(*thermometer(Box(x_mm, top_mm + 0.8, 3.6, 11.0)))
    sheet.text(told, x_mm + 6.5, top_mm + 9.4, 10.0, Weight.BOLD, figures=True)


def _each(facts: WallChart, said: Words, room_mm: float) -> Fitted:
    """What each calf is to drink, for the one who pours it."""
    told = [one for t in said.tongues if (one := fed_told(facts.groups[0], facts, t))]
    return fit_line(" / ".join(told), room_mm, _EACH_MM, 3.4, Weight.BOLD)
