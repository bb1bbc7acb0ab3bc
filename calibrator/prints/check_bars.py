"""Two bars of known length, one across and one along the paper: a printer may stretch only one way."""

from __future__ import annotations

from calibrator.prints import words
from calibrator.prints.fit import fit_block
from calibrator.prints.languages import Words
from calibrator.prints.page import Anchor, Box, Weight
from calibrator.prints.sheet import Sheet

MM_BAR = 50.0
INCH_BAR_MM = 50.8
BARS_HEIGHT_MM = 52.0
_TICK = 4.0
_STROKE = 0.3


def bars(sheet: Sheet, said: Words, box: Box) -> None:
    """50 mm down the left side, 2 in along the top, the words between them."""
    x, y = box.x_mm + 2, box.y_mm + 1
    for end in (y, y + MM_BAR):
        sheet.rule(x - 2, end, x + _TICK - 2, end, _STROKE)
    sheet.rule(x, y, x, y + MM_BAR, _STROKE)
    sheet.text("50 mm", x + 4.2, y + MM_BAR / 2, 4.0, Weight.BOLD, Anchor.MIDDLE, angle_deg=-90)
    left = x + 10
    for end in (left, left + INCH_BAR_MM):
        sheet.rule(end, y, end, y + _TICK, _STROKE)
    sheet.rule(left, y + _TICK / 2, left + INCH_BAR_MM, y + _TICK / 2, _STROKE)
    sheet.text("2 in", left + INCH_BAR_MM / 2, y + _TICK + 3.4, 4.0, Weight.BOLD, Anchor.MIDDLE)
    told = [*said.each(words.CHECK_BAR), *said.each(words.LABEL_HOW)]
    fitted = fit_block(told, box.right_mm - left, box.height_mm - 14, 4.2, 2.6)
    sheet.lines(fitted, left, y + 12)
