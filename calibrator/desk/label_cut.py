"""How labels are cut: strips or wraps on plain paper, or ready-cut labels whose sheet a person describes once."""

from __future__ import annotations

from dataclasses import asdict, replace
from enum import StrEnum

from calibrator.desk.settings import Preferences
from calibrator.prints.errors import DoesNotFit
from calibrator.prints.label_facts import LabelGrid
from calibrator.prints.label_pages import places_a_sheet

PROPOSED = LabelGrid(
    columns=2, rows=3, width_mm=95.0, height_mm=85.0, left_mm=8.0, top_mm=10.0, pitch_x_mm=99.0, pitch_y_mm=87.0
)  # fmt: skip
_WHOLE = ("columns", "rows", "used")


class Cut(StrEnum):
    """What a label is made of."""

    STRIP = "strip"
    WRAP = "wrap"
    READY_CUT = "ready_cut"


def cut_of(kept: Preferences) -> Cut:
    """How labels were cut last."""
    return Cut(kept.label_cut) if kept.label_cut in tuple(Cut) else Cut.STRIP


def grid_of(kept: Preferences) -> LabelGrid:
    """The label sheet as it was described last; what is missing is as proposed."""
    proposed = kept_grid(PROPOSED)
    sizes = {name: kept.label_grid.get(name, size) for name, size in proposed.items()}
    columns, rows, used = (round(sizes.pop(name)) for name in _WHOLE)
    return LabelGrid(columns=columns, rows=rows, used=used, **sizes)


def kept_grid(grid: LabelGrid) -> dict[str, float]:
    """The label sheet as settings hold it."""
    return {name: float(value) for name, value in asdict(grid).items()}


def after_printing(grid: LabelGrid, labels: int) -> LabelGrid:
    """The sheet on which the next print begins, with so many more labels gone."""
    try:
        return replace(grid, used=(grid.used + labels) % places_a_sheet(grid))
    except DoesNotFit:
        return grid
