"""Batches that take the last of a lot, on a wall chart: from which bag how much, by which line."""

from __future__ import annotations

from calibrator.model import FillWay
from calibrator.prints import words
from calibrator.prints.chart_facts import LotPart, TwoLots, WallChart
from calibrator.prints.chart_words import scoops_told
from calibrator.prints.fit import fit_block, plain
from calibrator.prints.given_names import name_told
from calibrator.prints.languages import Tongue, Words
from calibrator.prints.page import Box, Weight
from calibrator.prints.sheet import Sheet
from calibrator.units import show_mass

_LINE_MM = 5.8
_LARGEST, _LEAST = 4.8, 2.6
_BORDER = 0.8
_GAP = 2.0


def two_lots_mm(facts: WallChart, said: Words) -> float:
    """How high it is, the gap beneath included; 0 where a batch takes one lot alone."""
    return sum(_one_mm(found, said) for found in facts.two_lots)


def _one_mm(found: TwoLots, said: Words) -> float:
    return _LINE_MM * (1 + len(found.parts)) * len(said.tongues) + 2 * _BORDER + _GAP


def draw_two_lots(sheet: Sheet, facts: WallChart, said: Words, top_mm: float) -> None:
    for found in facts.two_lots:
        height_mm = _one_mm(found, said)
        _draw_one(sheet, found, facts, said, Box(sheet.body.x_mm, top_mm, sheet.body.width_mm, height_mm - _GAP))
        top_mm += height_mm


def _draw_one(sheet: Sheet, found: TwoLots, facts: WallChart, said: Words, box: Box) -> None:
    sheet.frame(box, _BORDER)
    told = [line for tongue in said.tongues for line in _lines(found, facts, tongue)]
    inside = box.inset(_BORDER + 1.0)
    fitted = fit_block(told, inside.width_mm, inside.height_mm, _LARGEST, _LEAST, Weight.BOLD, 1.18)
    spare = inside.height_mm - len(fitted.lines) * fitted.size_mm * 1.18
    sheet.lines(fitted, inside.x_mm, inside.y_mm + spare / 2, Weight.BOLD, leading=1.18)


def _lines(found: TwoLots, facts: WallChart, tongue: Tongue) -> list[str]:
    day = tongue.date(facts.printed_on) if facts.printed_on else ""
    whose = words.TWO_LOTS_CALVES if found.batches == 1 else words.TWO_LOTS_ONE_OF
    who = tongue(whose).format(calves=found.calves, batches=found.batches)
    title = tongue(words.TWO_LOTS)
    if len(found.parts) == 1:
        title = tongue(words.LAST_OF_LOT).format(lot=plain(found.parts[0].lot_number))
    head = " · ".join(part for part in (title, name_told(found.group_name, tongue), who, day) if part)
    return [head, *(_part(part, facts, tongue, one_line=found.one_line) for part in found.parts)]


def _part(part: LotPart, facts: WallChart, tongue: Tongue, *, one_line: bool) -> str:
    powder = show_mass(part.powder_g, facts.units, resolution_g=facts.resolution_g)
    how = scoops_told(part.scoopfuls, facts, tongue, named=True) or tongue(words.WEIGH_POWDER)
    own_line = not one_line and any(each.way is FillWay.TO_MARK for each in part.scoopfuls)
    return tongue(words.TWO_LOTS_PART if own_line else words.TWO_LOTS_NO_LINE).format(
        lot=plain(part.lot_number), powder=powder, how=how
    )
