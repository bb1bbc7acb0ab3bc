"""The wall chart: how much water and powder for how many calves, to be read from two metres."""

from __future__ import annotations

from dataclasses import replace

from calibrator.prints import words
from calibrator.prints.chart_columns import Column
from calibrator.prints.chart_facts import WallChart
from calibrator.prints.chart_foot import Foot, draw_foot, lay_foot
from calibrator.prints.chart_head import HEAD_MM, draw_head
from calibrator.prints.chart_layout import Layout, best_layout
from calibrator.prints.chart_table import draw_bands, draw_headings, group_mm, headings_mm, least_widths
from calibrator.prints.chart_two_lots import draw_two_lots, two_lots_mm
from calibrator.prints.chart_weeks import weeks_page, weeks_width
from calibrator.prints.chart_words import RowCells, cold_told, fed_told, group_told, row_cells, scoop_names
from calibrator.prints.emblems import thermometer
from calibrator.prints.errors import DoesNotFit
from calibrator.prints.fit import Fitted, fit_block, fit_line, plain
from calibrator.prints.languages import Words
from calibrator.prints.page import Box, Document, Page, Weight
from calibrator.prints.sheet import MARGIN_MM, Sheet, paper_mm

_TEMPERATURE_MM = 40.0
_EACH_MM = 6.5  # what each calf drinks
GROUP_NAMES_MM = (10.5, 8.0, 5.6)


def wall_chart(facts: WallChart) -> Document:
    """A chart on as few pages as hold it at a legible size. Raises DoesNotFit."""
    if not any(group.rows for group in facts.groups):
        raise DoesNotFit("The plan has no calves to print a chart for. Enter how many calves there are.")
    facts = replace(facts, groups=tuple(group for group in facts.groups if group.rows))
    said = Words.of(facts.languages)
    groups = _cells(facts, said)
    feet = {lies: lay_foot(facts, said, _width(facts, lies)) for lies in (False, True)}
    rooms = {lies: _room(facts, said, lies, foot) for lies, foot in feet.items()}
    layout = _laid_out(groups, said, rooms)
    if layout is None:
        raise DoesNotFit("This chart does not fit the paper. Use fewer kinds of scoops, or larger paper.")
    foot = feet[layout.landscape]
    count = len(layout.pages) + len(facts.weeks)
    pages = tuple(_page(facts, said, layout, foot, number, count) for number in range(len(layout.pages)))
    upright = lay_foot(facts, said, weeks_width(facts))
    pages += tuple(
        weeks_page(facts, weeks, said, upright, number, count)
        for number, weeks in enumerate(facts.weeks, start=len(layout.pages) + 1)
    )
    chart = said.joined(words.WALL_CHART, " / ")
    return Document(f"{chart} {facts.number} · {plain(facts.lot_number)}", pages)


def _laid_out(groups: list[list[RowCells]], said: Words, rooms: dict[bool, tuple[float, float]]) -> Layout | None:
    """With each group's name large enough to be found from afar, where the rows lose nothing by it."""
    least = least_widths(said)
    sizes = GROUP_NAMES_MM if len(groups) > 1 else (0.0,)
    laid = [best_layout(groups, [group_mm(said, size) if size else 0.0] * len(groups), rooms, least) for size in sizes]
    return next((layout for layout in laid if layout and laid[-1] and layout.rank <= laid[-1].rank), laid[-1])


def _cells(facts: WallChart, said: Words) -> list[list[RowCells]]:
    several = len(scoop_names(facts)) > 1
    return [[row_cells(row, group.rate.basis, facts, said, several) for row in group.rows] for group in facts.groups]


def _width(facts: WallChart, landscape: bool) -> float:
    return paper_mm(facts.paper, landscape=landscape)[0] - 2 * MARGIN_MM


def _rate_mm(facts: WallChart, said: Words) -> float:
    """Groups tell their rates above their rows; a single one tells it below the head."""
    return 12.6 if len(facts.groups) > 1 else 10.4 + 2.6 * len(said.tongues)


def _room(facts: WallChart, said: Words, landscape: bool, foot: Foot) -> tuple[float, float]:
    """Width and height that are left for the rows."""
    height = paper_mm(facts.paper, landscape=landscape)[1] - 2 * MARGIN_MM
    used = HEAD_MM + _rate_mm(facts, said) + two_lots_mm(facts, said) + headings_mm(facts, said) + foot.height_mm + 1.5
    return _width(facts, landscape), height - used


def _page(facts: WallChart, said: Words, layout: Layout, foot: Foot, number: int, pages: int) -> Page:
    sheet = Sheet(*paper_mm(facts.paper, landscape=layout.landscape))
    draw_head(sheet, facts, said)
    top, rate = sheet.body.y_mm + HEAD_MM, _rate_mm(facts, said)
    _rate(sheet, facts, said, layout, Box(sheet.body.x_mm, top, sheet.body.width_mm, rate))
    top += rate
    draw_two_lots(sheet, facts, said, top)
    top += two_lots_mm(facts, said)
    draw_headings(sheet, layout, facts, said, top)
    draw_bands(sheet, layout, layout.pages[number], facts, said, top + headings_mm(facts, said))
    draw_foot(sheet, facts, said, foot, number + 1, pages)
    return sheet.page()


def _rate(sheet: Sheet, facts: WallChart, said: Words, layout: Layout, box: Box) -> None:
    """What every calf gets, or that it is for the cold; the water's temperature, where it has no column."""
    room = box.width_mm
    if Column.TEMPERATURE not in layout.columns:
        room -= _TEMPERATURE_MM + 4
        x = box.right_mm - _TEMPERATURE_MM
        told = next(band.row.temperature for page in layout.pages for band in page if band.row is not None)
        sheet.put(*thermometer(Box(x, box.y_mm + 0.8, 3.6, 11.0)))
        sheet.text(told, x + 6.5, box.y_mm + 9.4, 10.0, Weight.BOLD, figures=True)
    cold = [one for t in said.tongues if (one := cold_told(facts, t))]
    if len(facts.groups) > 1:
        if cold:
            fitted = fit_block(cold, room, box.height_mm - 1.0, 6.0, 2.6, Weight.BOLD, 1.16)
            sheet.lines(fitted, box.x_mm, box.y_mm, Weight.BOLD, leading=1.16)
        return
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


def _each(facts: WallChart, said: Words, room_mm: float) -> Fitted:
    """What each calf is to drink, for the one who pours it."""
    told = [one for t in said.tongues if (one := fed_told(facts.groups[0], facts, t))]
    return fit_line(" / ".join(told), room_mm, _EACH_MM, 3.4, Weight.BOLD)
