"""The cautions at the foot of a wall chart."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from calibrator.model import FillWay, UnitSystem
from calibrator.prints import words
from calibrator.prints.chart_facts import ChartRow, WallChart
from calibrator.prints.chart_words import weighed
from calibrator.prints.emblems import warning
from calibrator.prints.fit import Fitted, fit_block, fit_line, plain
from calibrator.prints.fonts import width_mm
from calibrator.prints.label_facts import HALF_SHARE
from calibrator.prints.languages import Tongue, Words
from calibrator.prints.page import Anchor, Box, Weight
from calibrator.prints.sheet import Sheet
from calibrator.science.heat import SCALD_CAUTION_C
from calibrator.science.scoopfuls import MOST_COUNTABLE
from calibrator.units import show_mass, show_percent, show_temperature, show_volume
from calibrator.units.registry import to_base
from calibrator.values import dataclass

_SIZE, _LEAST = 4.1, 2.6
_LEADING = 1.16
_FOOT_LINE = 4.2
_MOST_MM = 46.0


@dataclass(frozen=True)
class Foot:
    """The cautions laid into a width, a column to a language."""

    columns: tuple[Fitted, ...]
    column_mm: float

    @property
    def height_mm(self) -> float:
        lines = max(len(column.lines) * column.size_mm for column in self.columns) * _LEADING
        return lines + 2.5 + _FOOT_LINE


def cautions(facts: WallChart, tongue: Tongue) -> list[str]:
    """Whole sentences, the one that saves most harm first."""
    limit = show_temperature(SCALD_CAUTION_C, facts.units)
    told = [tongue(words.MEDICATED)] if facts.medicated else []
    told += [tongue(words.SCALD).format(limit=limit), tongue(words.FEED_AT_ONCE), tongue(words.NO_TUBE)]
    told += [tongue(words.ASK_VET), tongue(words.FRESH_WATER)]  # water beside milk: common practice, no source
    rows = [row for group in facts.groups for row in group.rows]
    if any(row.many for row in rows):
        told.append(tongue(words.MANY_SCOOPFULS).format(most=MOST_COUNTABLE))
    if any(weighed(row, facts) and not row.many for row in rows):
        told.append(tongue(words.NO_COUNT_NEAR))
    told += _measuring(facts, rows, tongue)
    if any(row.portions > 1 for row in rows):
        capacity = show_mass(facts.scale_most_g, facts.units)
        told.append(tongue(words.SCALE_MOST).format(capacity=capacity))
    if any(mass_g < facts.least_additive_g for row in rows for _, mass_g in row.additives):
        least = show_mass(facts.least_additive_g, facts.units)
        told.append(tongue(words.LIGHT_ADDITIVES).format(least=least))
    if facts.scale_off_share:
        off = words.SCALE_HIGH if facts.scale_off_share > 0 else words.SCALE_LOW
        told.append(tongue(off).format(share=show_percent(100 * abs(facts.scale_off_share))))
    return [*told, tongue(words.FOLLOW_LABEL), tongue(words.DUST)]


def _measuring(facts: WallChart, rows: Sequence[ChartRow], tongue: Tongue) -> Iterator[str]:
    """What a reader asks who checks the powder by hand, or comes to half a scoopful."""
    parts = [part for row in rows for part in row.scoopfuls if part.count % 1]
    halves = [part for part in parts if part.way is FillWay.TO_MARK and part.count % 1 == HALF_SHARE]
    of_one_line = len({(part.scoop_name, part.line_g) for part in halves}) == 1  # a label's ½ is that of its main line
    if of_one_line:
        yield tongue(words.HALF_TO_LINE)
    if len(halves) < len(parts) or (halves and not of_one_line):
        yield tongue(words.PART_BY_EYE)
    if facts.water_step and any(row.for_water for row in rows):
        step_ml = float(to_base(Fraction(facts.water_step), "qt" if facts.units is UnitSystem.FARM else "L"))
        yield tongue(words.GOES_BY_WATER).format(step=show_volume(step_ml, facts.units, step=facts.water_step))


def lay_foot(facts: WallChart, said: Words, width_mm: float) -> Foot:
    """Cautions as running text: their order matters more than a line for each."""
    count = len(said.tongues)
    column = (width_mm - 10 - 5 * (count - 1)) / count
    laid = [
        fit_block(
            [" ".join(cautions(facts, t))],
            column,
            _MOST_MM,
            _SIZE if count == 1 else 3.3,
            _LEAST,
            Weight.SEMIBOLD,
            _LEADING,
        )
        for t in said.tongues
    ]
    return Foot(tuple(laid), column)


def draw_foot(sheet: Sheet, facts: WallChart, said: Words, foot: Foot, page: int, pages: int) -> None:
    """Cautions, and below them one small line that tells the sheet."""
    body = sheet.body
    top = body.bottom_mm - foot.height_mm
    sheet.rule(body.x_mm, top, body.right_mm, top, 0.4)
    sheet.put(*warning(Box(body.x_mm, top + 2, 7.5, 6.8)))
    for number, column in enumerate(foot.columns):
        x = body.x_mm + 10 + number * (foot.column_mm + 5)
        sheet.lines(column, x, top + 1.2, Weight.SEMIBOLD, leading=_LEADING)
    told = said.joined(lambda t: t(words.PAGE_OF).format(page=page, pages=pages), " / ")
    sheet.text(told, body.right_mm, body.bottom_mm - 0.8, 2.9, anchor=Anchor.END)
    last = fit_line(_sheet_told(facts, said), body.width_mm - width_mm(told, 2.9) - 4.0, 2.9, 2.2)
    sheet.text(last.text, body.x_mm, body.bottom_mm - 0.8, last.size_mm)


def _sheet_told(facts: WallChart, said: Words) -> str:
    lot = said.joined(words.LOT, "/")
    parts = [f"{lot} {plain(facts.lot_number)}", plain(facts.product)]
    if facts.by:
        who = plain(facts.by)  # initials tell themselves: two languages leave no room for "by"
        parts.append(said.tongues[0](words.BY).format(who=who) if len(said.tongues) == 1 else who)
    if facts.printed_on is not None:
        day, framed = facts.printed_on, any(row.today for group in facts.groups for row in group.rows)
        told = words.FRAMED if framed else words.PRINTED
        parts.insert(0, said.joined(lambda t: t(told).format(date=t.date(day)), " / "))
    return " · ".join(part for part in parts if part)
