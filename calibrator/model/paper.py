"""Printed sheets and what became of them."""

from datetime import datetime
from enum import StrEnum

from calibrator.values import dataclass


class PrintKind(StrEnum):
    SCOOP_LABEL = "scoop_label"
    WALL_CHART = "wall_chart"
    LOT_SHEET = "lot_sheet"


class Ending(StrEnum):
    """What became of a printed sheet, as somebody saw it."""

    TAKEN_DOWN = "taken_down"
    REPLACED = "replaced"  # by hand, or by a sheet from elsewhere
    SPOILED = "spoiled"  # never got there: jammed, off scale, thrown away
    STILL_UP = "still_up"  # it stays: it was said to be gone by mistake, or holds as it is


@dataclass(frozen=True, kw_only=True)
class Printed:
    """A sheet that left the printer. Numbers run per farm; an outdated sheet is known by its number."""

    id: str
    farm_id: str
    number: int
    kind: PrintKind
    lot_id: str
    sign_off_id: str
    at: datetime
    by: str = ""
    scoop_id: str | None = None
    plan_id: str | None = None
    replaces: int | None = None


@dataclass(frozen=True, kw_only=True)
class SheetEnding:
    """Somebody's word that a printed sheet is gone, or after all is not. The newest word on a sheet counts."""

    id: str
    farm_id: str
    print_id: str
    ending: Ending
    at: datetime
    by: str = ""
