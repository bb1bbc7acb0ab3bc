"""The fill mark, whole: where to draw it (`line`), whether it is right (`verify`), whether an old one still
does (`keep`)."""

from calibrator.science.keep import (
    FOR_OLD_LINE,
    OldLine,
    OldLineVerdict,
    OneBag,
    feeding_to_line,
    fits_line,
    manner_before,
    off_in_row,
    old_line,
    one_bag,
)
from calibrator.science.line import (
    Line,
    MarkProblem,
    at_line,
    fill_line,
    fraction_at,
    level_instead,
    lines_for,
    proposed_line,
    reach_95,
    reach_untried_95,
    tolerance_band,
    weighed_to_line,
)
from calibrator.science.verify import LineCheck, LineVerdict, check_line, on_ruler

__all__ = [
    "FOR_OLD_LINE",
    "Line",
    "LineCheck",
    "LineVerdict",
    "MarkProblem",
    "OldLine",
    "OldLineVerdict",
    "OneBag",
    "at_line",
    "check_line",
    "feeding_to_line",
    "fill_line",
    "fits_line",
    "fraction_at",
    "level_instead",
    "lines_for",
    "manner_before",
    "off_in_row",
    "old_line",
    "on_ruler",
    "one_bag",
    "proposed_line",
    "reach_95",
    "reach_untried_95",
    "tolerance_band",
    "weighed_to_line",
]
