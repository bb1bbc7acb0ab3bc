"""The table of a wall chart on one page: headings, groups, rows, and the day's count framed."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from calibrator.prints import words
from calibrator.prints.chart_columns import Column, draw_row
from calibrator.prints.chart_facts import WallChart
from calibrator.prints.chart_layout import FLAG_MM, Band, Layout
from calibrator.prints.chart_words import PartCell, fed_told, group_told, scoop_names
from calibrator.prints.emblems import drop, scoop, thermometer
from calibrator.prints.fit import fit_block, fit_line
from calibrator.prints.fonts import width_mm
from calibrator.prints.given_names import name_told
from calibrator.prints.languages import Words
from calibrator.prints.page import BLACK, WHITE, Anchor, Box, Shape, Weight, polygon
from calibrator.prints.sheet import Sheet

_FIRST, _SECOND = 5.2, 4.2
_LEGENDS = (4.4, 3.7)  # in one language as large as the small words of the rows, in two as leaves the rows their room
_LEAST = 2.4
_EACH, _LEAST_EACH = 7.0, 2.9  # what each calf of a group drinks; in two languages it is long
_LEAST_NAME, _NAME_SHARE, _GROUP_GAP = 3.4, 0.4, 4.0  # a long name takes that share of the line, or its least
_COUNTED_BORDER = 1.3
_NAME_GAP = 1.5  # from the scoop's name to the picture that it goes before
_INDENTS = {Column.WATER: 4.0, Column.TEMPERATURE: 3.4}  # room for the picture before the words


def headings_mm(facts: WallChart, said: Words) -> float:
    """How high the headings are; scoopfuls have a line more, for the scoop or for what its pictures mean."""
    legend = _legend_mm(said) if scoop_names(facts) else 0.0
    tongues = len(said.tongues)
    batches = any(row.batches > 1 for group in facts.groups for row in group.rows)
    return 1.2 * (_FIRST + _SECOND * (tongues - 1)) + max(legend, 1.2 * _SECOND * tongues * batches) + 1.6


def _legend_type(said: Words) -> float:
    return _LEGENDS[len(said.tongues) > 1]


def _legend_mm(said: Words) -> float:
    return _legend_type(said) * (1.45 + 0.55 * (len(said.tongues) - 1))


def group_mm(said: Words, name_mm: float) -> float:
    """How high a group's heading is with its name in type of this size."""
    return 1.5 * name_mm + 5.0 * len(said.tongues)


def _phrases(each: bool) -> dict[Column, str]:
    return {
        Column.CALVES: words.CALVES,
        Column.BATCHES: words.BATCHES,
        Column.WATER: words.WATER_EACH if each else words.WATER,
        Column.TEMPERATURE: words.TEMPERATURE,
        Column.POWDER: words.POWDER_EACH if each else words.POWDER,
        Column.SCOOPFULS: words.SCOOPFULS_EACH if each else words.SCOOPFULS,
    }


def _told(column: Column, phrase: str, said: Words) -> tuple[str, ...]:
    """A column's heading, the languages below each other: "2 ×" under "Batches" was read as morning and evening."""
    if column is not Column.BATCHES:
        return said.each(phrase)
    return tuple(one for t in said.tongues for one in (t(phrase), t(words.A_FEEDING)))


def least_widths(said: Words) -> dict[Column, float]:
    """What the headings of narrow columns take at a size that can still be read."""
    phrases = {**_phrases(False), Column.BATCHES: words.BATCHES}
    del phrases[Column.SCOOPFULS]
    return {
        column: max(width_mm(one, 0.8 * _FIRST, Weight.BOLD) for one in _told(column, phrase, said))
        + _INDENTS.get(column, 0.0)
        for column, phrase in phrases.items()
    }


def draw_headings(sheet: Sheet, layout: Layout, facts: WallChart, said: Words, top_mm: float) -> None:
    body, bottom = sheet.body, top_mm + headings_mm(facts, said)
    left = body.x_mm + FLAG_MM
    edges = [left + x for x, _ in layout.columns.values()] + [body.right_mm + 2.0]
    phrases = _phrases(Column.BATCHES in layout.columns)
    for number, column in enumerate(layout.columns):
        box = Box(edges[number], top_mm, edges[number + 1] - edges[number] - 2.0, bottom - top_mm)
        _heading(sheet, _told(column, phrases[column], said), box, column)
        if column is Column.SCOOPFULS:
            _legend(sheet, layout, facts, said, box)
    sheet.rule(body.x_mm, bottom, body.right_mm, bottom, 0.8)


def _heading(sheet: Sheet, told: Sequence[str], box: Box, column: Column) -> None:
    """One line to a language, and a picture for those who read none."""
    indent = _INDENTS.get(column, 0.0)
    if column is Column.WATER:
        sheet.put(drop(Box(box.x_mm, box.y_mm + 0.6, 2.9, 4.2)))
    if column is Column.TEMPERATURE:
        sheet.put(*thermometer(Box(box.x_mm, box.y_mm + 0.3, 1.9, 4.9)))
    y = box.y_mm
    for number, text in enumerate(told):
        size = _SECOND if number else _FIRST
        shift = indent if number == 0 else 0.0
        fitted = fit_line(text, box.width_mm - shift, size, _LEAST, Weight.BOLD)
        sheet.text(fitted.text, box.x_mm + shift, y + 0.9 * size, fitted.size_mm, Weight.BOLD)
        y += 1.2 * size


def _legend(sheet: Sheet, layout: Layout, facts: WallChart, said: Words, box: Box) -> None:
    """The one scoop's name, and what the pictures mean where the rows do not say it."""
    names, baseline, size = scoop_names(facts), box.bottom_mm - 1.9, _legend_type(said)
    told = layout.style.told
    if len(names) == 1:
        # The headings of water and powder leave a line to a name that is longer, or that stands before the pictures.
        left = sheet.body.x_mm + FLAG_MM + layout.columns[Column.WATER][0]
        end = box.right_mm if told else box.x_mm - _NAME_GAP
        name = fit_line(names[0], end - left, size, size * 0.8)
        x = min(box.x_mm, end - width_mm(name.text, name.size_mm))
        sheet.text(name.text, x, baseline, name.size_mm)
    if told:
        return
    parts = _kinds(layout)
    room = box.width_mm / max(1, len(parts))
    for number, part in enumerate(parts):
        x = box.x_mm + number * room
        high = 0.9 * _legend_mm(said)
        sheet.put(*scoop(Box(x, baseline - high + 0.9, 1.3 * high, high), part.way, part.filled))
        told_room = room - 1.45 * high - 1.0
        lines = fit_block(
            (*part.ways, *filter(None, [part.line])), told_room, _legend_mm(said), size, 1.8, Weight.SEMIBOLD, 1.1
        )
        top = baseline + 0.9 - 0.5 * high - 0.55 * len(lines.lines) * lines.size_mm
        sheet.lines(lines, x + 1.45 * high, top, Weight.SEMIBOLD, leading=1.1)


def _kinds(layout: Layout) -> list[PartCell]:
    """One part for each way of filling on the whole chart."""
    rows = (band.row for page in layout.pages for band in page if band.row is not None)
    kinds = {
        (part.ways, part.line): part for row in rows for part in row.parts if part.filled == 1.0 and not part.otherwise
    }
    return list(kinds.values())


def draw_bands(
    sheet: Sheet, layout: Layout, page: Sequence[Band], facts: WallChart, said: Words, top_mm: float
) -> None:
    body, top = sheet.body, top_mm
    columns = {c: (body.x_mm + FLAG_MM + x, width) for c, (x, width) in layout.columns.items()}
    for band in page:
        box = Box(body.x_mm, top, body.width_mm, band.height_mm)
        if band.row is None or band.shape is None:
            _group(sheet, facts, said, band.group, box)
        else:
            spare = band.height_mm - band.shape.height_mm
            draw_row(sheet, band.row, band.shape, columns, top + spare / 2)
            if band.row.today:
                _counted(sheet, said, box, facts.printed_on)
            else:
                sheet.rule(box.x_mm, box.bottom_mm, box.right_mm, box.bottom_mm, 0.2)
        top = box.bottom_mm


def _group(sheet: Sheet, facts: WallChart, said: Words, number: int, box: Box) -> None:
    group = facts.groups[number]
    size = (box.height_mm - group_mm(said, 0.0)) / 1.5
    named = said.joined(lambda t: name_told(group.name, t), " / ")
    drinks = said.joined(lambda t: fed_told(group, facts, t), " / ")
    room = box.width_mm - _GROUP_GAP
    wanted = max(_NAME_SHARE * room, width_mm(named, _LEAST_NAME, Weight.BOLD))
    left = room - min(width_mm(named, size, Weight.BOLD), wanted)
    least = 1.001 * width_mm(drinks, _LEAST_EACH, Weight.BOLD)
    each = fit_line(drinks, max(left, least), min(size, _EACH), _LEAST_EACH, Weight.BOLD)
    sheet.text(each.text, box.right_mm, box.y_mm + 1.04 * size, each.size_mm, Weight.BOLD, Anchor.END)
    room -= width_mm(each.text, each.size_mm, Weight.BOLD)
    name = fit_line(named, room, size, _LEAST_NAME, Weight.BOLD)
    sheet.text(name.text, box.x_mm, box.y_mm + 1.04 * size, name.size_mm, Weight.BOLD)
    told = [group_told(group, facts, t, fed=False) for t in said.tongues]
    fitted = fit_block(told, box.width_mm, group_mm(said, 0.0) + 0.4, 4.2, 2.6, Weight.SEMIBOLD, 1.16)
    sheet.lines(fitted, box.x_mm, box.y_mm + 1.25 * size, Weight.SEMIBOLD, leading=1.16)
    sheet.rule(box.x_mm, box.bottom_mm, box.right_mm, box.bottom_mm, 0.4)


def _counted(sheet: Sheet, said: Words, box: Box, on: date | None) -> None:
    """A thick frame and a black flag at the left, seen without colour; it bears the day, for a chart hangs long.

    Where the row is too low for letters that can be read the flag is bare: the foot tells the day too.
    """
    sheet.frame(box, _COUNTED_BORDER)
    middle, tip = box.y_mm + box.height_mm / 2, box.x_mm + FLAG_MM
    flag = (
        (box.x_mm, box.y_mm),
        (tip - 2.0, box.y_mm),
        (tip, middle),
        (tip - 2.0, box.bottom_mm),
        (box.x_mm, box.bottom_mm),
    )
    sheet.put(Shape(polygon(flag), fill=BLACK))
    if on is None:
        return
    first = said.tongues[0]  # a second month would leave room for tiny letters alone
    told = [str(on.day), first.month(on)][:: -1 if first.month_first else 1]
    largest, room = 0.95 * (FLAG_MM - 1.2) / (1.1 * len(told)), box.height_mm - 2 * _COUNTED_BORDER - 0.6
    size = min(largest, *(room / width_mm(text, 1.0, Weight.BOLD) for text in told))
    if size < _LEAST:
        return
    for number, text in enumerate(told):
        x = box.x_mm + 0.5 * (FLAG_MM - 1.2) + size * (0.34 + 1.1 * (number - (len(told) - 1) / 2))
        sheet.text(text, x, middle, size, Weight.BOLD, Anchor.MIDDLE, angle_deg=-90, ink=WHITE)
