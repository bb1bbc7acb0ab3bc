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
class LabelledLine:
    """What a printed label tells of one feeding, `target_mass_g`: the line drawn for it, `down_wall_mm` from the rim
    down the wall (0 where level scoopfuls alone are the feeding), a scoopful to which weighs `mass_g` and takes
    `full_scoops` level ones before it, or as many more to the line as make the feeding. `down_wall_mm` is None where it
    is counted by the label's other lines.
    """

    target_mass_g: float
    down_wall_mm: float | None
    full_scoops: int = 0
    mass_g: float = 0.0

    @property
    def to_line(self) -> int:
        """How many scoopfuls to the line a feeding takes."""
        return fills_to_line(self.target_mass_g, self.mass_g, self.full_scoops)

    @property
    def held_g(self) -> float:
        """What stands beside the line, g."""
        several = self.full_scoops > 0 or self.to_line > 1
        return self.mass_g if several and self.down_wall_mm else self.target_mass_g


def fills_to_line(target_g: float, mass_g: float, full_scoops: int) -> int:
    """How many scoopfuls of `mass_g` to a line are the feeding: one where level ones go before it, or where nobody kept
    what it weighs."""
    return max(1, round(target_g / mass_g)) if mass_g > 0 and not full_scoops else 1


@dataclass(frozen=True, kw_only=True)
class Printed:
    """A sheet that left the printer. Numbers run per farm; an outdated sheet is known by its number. `lines` are those
    of a scoop's label; None on other sheets, and for a label of an earlier version, which kept none."""

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
    lines: tuple[LabelledLine, ...] | None = None


@dataclass(frozen=True, kw_only=True)
class SheetEnding:
    """Somebody's word that a printed sheet is gone, or after all is not. The newest word on a sheet counts."""

    id: str
    farm_id: str
    print_id: str
    ending: Ending
    at: datetime
    by: str = ""
