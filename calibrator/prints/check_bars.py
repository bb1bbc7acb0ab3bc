"""Two bars of known length, one across and one along the paper: a printer may stretch only one way."""

from __future__ import annotations

from collections.abc import Sequence

from calibrator.model import UnitSystem
from calibrator.prints.fit import fit_block
from calibrator.prints.page import Anchor, Box, Weight
from calibrator.prints.sheet import Sheet

MM_BAR = 50.0
INCH_BAR_MM = 50.8
BARS_HEIGHT_MM = 52.0
BARS_LEAST_MM = 53.0
_ACROSS = {UnitSystem.FARM: (INCH_BAR_MM, "2 in"), UnitSystem.METRIC: (MM_BAR, "50 mm")}
"""The bar across as the rulers of a farm tell it."""
_TICK = 4.0
_STROKE = 0.3


def bars(sheet: Sheet, told: Sequence[str], box: Box, units: UnitSystem) -> None:
    """50 mm down the left side, 2 in or 50 mm along the top, the words between them."""
    _along(sheet, box.x_mm + 2, box.y_mm + 1)
    left = box.x_mm + 12
    _across(sheet, left, box.y_mm + 1, units)
    fitted = fit_block(told, box.right_mm - left, box.height_mm - 13, 4.2, 2.4)
    sheet.lines(fitted, left, box.y_mm + 12)


def bars_alone(sheet: Sheet, box: Box, units: UnitSystem) -> None:
    """Both bars in one corner, for sheets without room for words."""
    x, y = box.x_mm + (box.width_mm - INCH_BAR_MM) / 2, box.y_mm + (box.height_mm - MM_BAR) / 2
    _along(sheet, x, y)
    _across(sheet, x, y + MM_BAR / 2 - _TICK / 2, units)


def _along(sheet: Sheet, x: float, y: float) -> None:
    for end in (y, y + MM_BAR):
        sheet.rule(x - 1, end, x + _TICK - 1, end, _STROKE)
    sheet.rule(x, y, x, y + MM_BAR, _STROKE)
    sheet.text("50 mm", x + 4.6, y + 0.75 * MM_BAR, 4.0, Weight.BOLD, Anchor.MIDDLE, angle_deg=-90)


def _across(sheet: Sheet, x: float, y: float, units: UnitSystem) -> None:
    length, told = _ACROSS[units]
    for end in (x, x + length):
        sheet.rule(end, y, end, y + _TICK, _STROKE)
    sheet.rule(x, y + _TICK / 2, x + length, y + _TICK / 2, _STROKE)
    sheet.text(told, x + length / 2, y + _TICK + 3.4, 4.0, Weight.BOLD, Anchor.MIDDLE)
