"""A page of the wall chart for a group's way to weaning: days, volume, powder, feedings, the day's milk as a bar."""

from __future__ import annotations

from collections.abc import Sequence

from calibrator.prints import words
from calibrator.prints.chart_facts import WallChart, WeekRow, Weeks
from calibrator.prints.chart_foot import Foot, draw_foot
from calibrator.prints.chart_head import HEAD_MM, draw_head
from calibrator.prints.errors import DoesNotFit
from calibrator.prints.fit import fit_line
from calibrator.prints.given_names import name_told
from calibrator.prints.languages import Words
from calibrator.prints.page import BLACK, Box, Page, Weight
from calibrator.prints.sheet import MARGIN_MM, Sheet, centre_baseline, paper_mm
from calibrator.units import show_mass, show_typed_volume

_TITLE_MM = 12.0
_USUAL = 6.2  # that the cold is left out
_LEAST_ROW_MM, _MOST_ROW_MM = 5.0, 13.0
_SHARES = (0.12, 0.15, 0.11, 0.14, 0.15, 0.15, 0.18)  # of the width; the last column is the bar
_LARGEST, _LEAST = 6.4, 2.6
_BEGINS_AT, _WEANED_AT = 1, 3  # columns whose cells are words
_BAR_SHARE = 0.45  # of a row's height


def weeks_page(facts: WallChart, weeks: Weeks, said: Words, foot: Foot, number: int, pages: int) -> Page:
    """One group's page. Raises DoesNotFit where it has more steps than the page holds."""
    sheet = Sheet(*paper_mm(facts.paper, landscape=False))
    draw_head(sheet, facts, said)
    body, top = sheet.body, sheet.body.y_mm + HEAD_MM
    named = said.joined(lambda t: name_told(weeks.name, t), " / ")
    title = f"{said.joined(words.WEEKS, ' / ')} · {named}".removesuffix(" · ")
    fitted = fit_line(title, body.width_mm, 6.4, 3.4, Weight.BOLD)
    sheet.text(fitted.text, body.x_mm, top + 7.0, fitted.size_mm, Weight.BOLD)
    top += _TITLE_MM
    if facts.cold_below_c is not None:  # it comes and goes, and the rows of the chart have it
        usual = fit_line(said.joined(words.WEEKS_NO_COLD, " / "), body.width_mm, 0.84 * _USUAL, _LEAST, Weight.BOLD)
        sheet.text(usual.text, body.x_mm, top + 0.6, usual.size_mm, Weight.BOLD)
        top += _USUAL
    heading_mm = 5.6 * len(said.tongues) + 1.5
    _headings(sheet, weeks, said, Box(body.x_mm, top, body.width_mm, heading_mm))
    top += heading_mm
    room = body.bottom_mm - foot.height_mm - 2.0 - top
    row_mm = min(_MOST_ROW_MM, room / len(weeks.rows))
    if row_mm < _LEAST_ROW_MM:
        raise DoesNotFit("These steps to weaning do not fit one page. Use fewer steps.")
    most = max(row.day_ml for row in weeks.rows) or 1.0
    for row in weeks.rows:
        _row(sheet, facts, row, said, most, Box(body.x_mm, top, body.width_mm, row_mm))
        top += row_mm
    draw_foot(sheet, facts, said, foot, number, pages)
    return sheet.page()


def weeks_width(facts: WallChart) -> float:
    """The width that the page's foot has."""
    return paper_mm(facts.paper, landscape=False)[0] - 2 * MARGIN_MM


def _boxes(box: Box) -> list[Box]:
    edges, made = box.x_mm, []
    for share in _SHARES:
        made.append(Box(edges, box.y_mm, share * box.width_mm - 2.0, box.height_mm))
        edges += share * box.width_mm
    return made


def _headings(sheet: Sheet, weeks: Weeks, said: Words, box: Box) -> None:
    phrases = (
        words.WEEKS_DAYS,
        words.WEEKS_FROM,
        words.WEEKS_FEEDINGS,
        words.WEEKS_MIX,
        words.WEEKS_POWDER,
        words.WEEKS_DAY,
    )
    for cell, phrase in zip(_boxes(box), phrases, strict=False):
        for number, text in enumerate(said.each(phrase)):
            fitted = fit_line(text, cell.width_mm, 4.2, 2.0, Weight.BOLD)
            sheet.text(fitted.text, cell.x_mm, cell.y_mm + 4.4 + 5.6 * number, fitted.size_mm, Weight.BOLD)
    sheet.rule(box.x_mm, box.bottom_mm, box.right_mm, box.bottom_mm, 0.8)


def _row(sheet: Sheet, facts: WallChart, row: WeekRow, said: Words, most_ml: float, box: Box) -> None:
    cells = _boxes(box)
    baseline = min(_LARGEST, 0.62 * box.height_mm)
    for number, (cell, text) in enumerate(zip(cells, _texts(facts, row, said), strict=False)):
        room = cell.width_mm if row.feedings or number < _WEANED_AT else box.right_mm - cell.x_mm
        fitted = fit_line(text, room, baseline, _LEAST, Weight.BOLD)
        y = centre_baseline(box.y_mm + box.height_mm / 2, fitted.size_mm)
        lettered = number == _BEGINS_AT or not row.feedings
        sheet.text(fitted.text, cell.x_mm, y, fitted.size_mm, Weight.BOLD, figures=not lettered)
    last, high = cells[-1], _BAR_SHARE * box.height_mm
    if row.day_ml:
        width = last.width_mm * row.day_ml / most_ml
        sheet.frame(Box(last.x_mm, box.y_mm + (box.height_mm - high) / 2, width, high), None, BLACK)
    sheet.rule(box.x_mm, box.bottom_mm, box.right_mm, box.bottom_mm, 0.2)


def _texts(facts: WallChart, row: WeekRow, said: Words) -> Sequence[str]:
    days = f"{row.from_day}+" if row.to_day is None else f"{row.from_day}–{row.to_day}"
    begins = said.tongues[0].date(row.begins)
    if not row.feedings:
        return (days, begins, "0", said.joined(words.WEEKS_WEANED, " / "))
    each = "–" if row.feeding_ml is None else show_typed_volume(row.feeding_ml, facts.units)
    powder = "–" if row.feeding_g is None else show_mass(row.feeding_g, facts.units, resolution_g=facts.resolution_g)
    a_day = show_mass(row.day_g, facts.units, resolution_g=facts.resolution_g)
    return (days, begins, f"{row.feedings} ×", each, powder, a_day)
