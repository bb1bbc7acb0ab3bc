"""The head of a wall chart: what it is, for which lot, and when it no longer holds."""

from __future__ import annotations

from calibrator.prints import words
from calibrator.prints.chart_facts import WallChart
from calibrator.prints.emblems import octagon
from calibrator.prints.fit import Fitted, fit_block, fit_line, plain
from calibrator.prints.given_names import name_told
from calibrator.prints.languages import Words
from calibrator.prints.lot_mark import draw_lot, lay_lot
from calibrator.prints.page import BLACK, WHITE, Anchor, Box, Weight
from calibrator.prints.sheet import Sheet, centre_baseline

TITLE_MM = 9.0
LOT_BOX_MM = 41.0
HEAD_MM = TITLE_MM + LOT_BOX_MM + 2.0
_LOT_SHARE = 0.56
_BORDER = 1.2


def draw_head(sheet: Sheet, facts: WallChart, said: Words) -> None:
    """Everything above the table, alike on every page: each may hang alone."""
    body = sheet.body
    _title(sheet, facts, said, Box(body.x_mm, body.y_mm, body.width_mm, TITLE_MM))
    top, lot_width = body.y_mm + TITLE_MM, body.width_mm * _LOT_SHARE
    _lot(sheet, facts, said, Box(body.x_mm, top, lot_width, LOT_BOX_MM))
    left = body.x_mm + lot_width + 4
    _stop(sheet, facts, said, Box(left, top, body.right_mm - left, LOT_BOX_MM))


def _title(sheet: Sheet, facts: WallChart, said: Words, box: Box) -> None:
    name = name_told(facts.plan_name, said.tongues[0])  # there is no room for it twice
    told = f"{said.joined(words.WALL_CHART, ' / ')} · {name}"
    title = fit_line(told, box.width_mm * 0.66, 6.4, 4.6, Weight.BOLD)
    sheet.text(title.text, box.x_mm, box.y_mm + 5.4, title.size_mm, Weight.BOLD)
    farm = fit_line(plain(facts.farm_name), box.width_mm * 0.32, 4.6, 3.4, Weight.SEMIBOLD)
    sheet.text(farm.text, box.right_mm, box.y_mm + 5.4, farm.size_mm, Weight.SEMIBOLD, Anchor.END)


def _lot(sheet: Sheet, facts: WallChart, said: Words, box: Box) -> None:
    sheet.frame(box, _BORDER)
    inside = box.inset(_BORDER + 1.8)
    sheet.text(said.joined(words.LOT, " / "), inside.x_mm, inside.y_mm + 4.0, 4.6, Weight.BOLD)
    dates = said.each(lambda t: t(words.WEIGHED_IN).format(date=t.date(facts.weighed_in_on)))
    date_room = inside.width_mm * 0.7
    date = fit_block(dates, date_room, 7.6 * len(dates), 6.4 if len(dates) == 1 else 4.4, 3.0, Weight.BOLD, 1.15)
    bottom = sheet.lines(date, inside.right_mm, inside.y_mm - 0.4, Weight.BOLD, Anchor.END, leading=1.15)
    bar = 7.4
    room = box.bottom_mm - bar - _BORDER - bottom
    mark = lay_lot(facts.lot_number, inside.width_mm, 24.0, 15.0, 6.0)
    scale = 1.0
    while mark.height_mm > room and scale > 0.3:
        scale -= 0.05
        mark = lay_lot(facts.lot_number, inside.width_mm, 24.0 * scale, 15.0 * scale, min(6.0, 9.0 * scale))
    draw_lot(sheet, mark, inside.x_mm, bottom + max(0.0, (room - mark.height_mm) / 2))
    strip = Box(box.x_mm, box.bottom_mm - bar, box.width_mm, bar)
    sheet.frame(strip, None, BLACK)
    only = fit_line(said.joined(words.ONLY_THIS_LOT, " · "), inside.width_mm, 5.2, 2.8, Weight.BOLD)
    baseline = centre_baseline(strip.y_mm + bar / 2, only.size_mm)
    sheet.text(
        only.text,
        strip.x_mm + box.width_mm / 2,
        baseline,
        only.size_mm,
        Weight.BOLD,
        Anchor.MIDDLE,
        ink=WHITE,
    )


def _stop(sheet: Sheet, facts: WallChart, said: Words, box: Box) -> None:
    number_mm = 12.0
    sheet.frame(box, 0.8)
    radius = min(13.5, box.width_mm * 0.19)
    x, y = box.x_mm + radius + 2.5, box.y_mm + (box.height_mm - number_mm) / 2
    sheet.put(*octagon(x, y, radius))
    largest = _sign_type(said) * radius
    stops = [fit_line(told, 1.5 * radius, largest, 1.0, Weight.BOLD) for told in said.each(words.STOP)]
    size = min(stop.size_mm for stop in stops)
    first = centre_baseline(y, size) - 0.55 * size * (len(stops) - 1)
    for number, stop in enumerate(stops):
        sheet.text(stop.text, x, first + 1.1 * size * number, size, Weight.BOLD, Anchor.MIDDLE, ink=WHITE)
    left = x + radius + 3
    room = Box(left, box.y_mm + 2, box.right_mm - left - 2, box.height_mm - number_mm - 3)
    told = fit_block(said.each(words.OTHER_LOT), room.width_mm, room.height_mm, 6.0, 3.2, Weight.BOLD, 1.15)
    height = len(told.lines) * told.size_mm * 1.15
    sheet.lines(told, left, room.y_mm + (room.height_mm - height) / 2, Weight.BOLD, leading=1.15)
    _number(sheet, facts, said, Box(box.x_mm, box.bottom_mm - number_mm, box.width_mm, number_mm))


def _sign_type(said: Words) -> float:
    """Two words above each other must keep clear of the octagon's slanting corners."""
    return 0.62 if len(said.tongues) == 1 else 0.46


def _number(sheet: Sheet, facts: WallChart, said: Words, box: Box) -> None:
    sheet.rule(box.x_mm, box.y_mm, box.right_mm, box.y_mm, 0.4)
    has_old = facts.replaces is not None
    number = said.each(lambda t: t(words.SHEET_NUMBER).format(number=facts.number))
    _number_lines(sheet, number, box, box.width_mm * (0.44 if has_old else 0.95) - 2.5, 7.6, Anchor.START)
    if not has_old:
        return
    old = said.each(lambda t: t(words.CHART_REPLACES).format(old=facts.replaces))
    _number_lines(sheet, old, box, box.width_mm * 0.48, 5.2, Anchor.END)


def _number_lines(
    sheet: Sheet, told: tuple[str, ...], box: Box, room_mm: float, largest_mm: float, anchor: Anchor
) -> None:
    """A line to a language, all at one size, in the middle of the box's height."""
    size = min(fit_line(line, room_mm, largest_mm, 2.8, Weight.BOLD).size_mm for line in told)
    size = min(size, (box.height_mm - 1.5) / len(told) / 1.12)
    top = box.y_mm + (box.height_mm - len(told) * size * 1.12) / 2
    x = box.x_mm + 2.5 if anchor is Anchor.START else box.right_mm - 2.5
    sheet.lines(Fitted(told, size), x, top, Weight.BOLD, anchor, leading=1.12)
