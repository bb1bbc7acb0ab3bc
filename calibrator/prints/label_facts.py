"""What a sheet of scoop labels must be told. Weights in g, lengths in mm, as everywhere."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from enum import StrEnum

from calibrator.model import Mark, Paper, Shape, UnitSystem, fills_to_line
from calibrator.values import dataclass

HALF_SHARE = 0.5  # a half feeding

_SAME_SHARE = 0.005


class LabelForm(StrEnum):
    """A strip down the wall, or a label right around it."""

    STRIP = "strip"
    WRAP = "wrap"


class LineUse(StrEnum):
    """What a line is for; the main one is drawn to be seen first."""

    MAIN = "main"
    HALF = "half"
    OTHER = "other"


@dataclass(frozen=True, kw_only=True)
class LabelLine:
    """A line on the label: `down_wall_mm` from the rim along the wall, for `target_mass_g` of powder.

    `full_scoops` struck-level scoopfuls go before the one filled to this line, which holds `mass_g` itself, or several
    of so much are filled to it. At the rim, 0 mm, there is no line: level scoopfuls alone are the feeding.
    """

    target_mass_g: float
    down_wall_mm: float
    use: LineUse = LineUse.OTHER
    full_scoops: int = 0
    mass_g: float = 0.0  # only where one scoopful to it is not the feeding; else the line holds that
    reckoned: bool = False  # from the main line's fills, never drawn and weighed itself

    @property
    def struck_level(self) -> bool:
        """Whether it is no line but level scoopfuls alone."""
        return self.down_wall_mm == 0

    @property
    def several(self) -> bool:
        """Whether the line alone does not hold the feeding."""
        return (self.full_scoops > 0 or self.to_line > 1) and not self.struck_level

    @property
    def to_line(self) -> int:
        """How many scoopfuls to the line a feeding takes."""
        return fills_to_line(self.target_mass_g, self.mass_g, self.full_scoops)

    @property
    def held_g(self) -> float:
        """What may stand at the line: the weight that a scoopful to it has."""
        return self.mass_g if self.several else self.target_mass_g


@dataclass(frozen=True, kw_only=True)
class LineCount:
    """A feeding of scoopfuls to lines that the label bears: `to_main` to the main one, `to_half` to the half one."""

    target_mass_g: float
    to_main: int
    to_half: int


@dataclass(frozen=True, kw_only=True)
class ScoopLabel:
    """One label and how often it is wanted."""

    scoop_name: str
    shape: Shape
    lot_number: str
    lines: tuple[LabelLine, ...]
    weighed_in_on: date
    number: int
    replaces: int | None = None
    made_on: date | None = None
    arrived_on: date | None = None
    medicated: bool = False
    wall_thickness_mm: float = 0.0  # a wrap on the outside goes around more than the inside
    copies: int = 1
    counts: tuple[LineCount, ...] = ()


@dataclass(frozen=True, kw_only=True)
class LabelGrid:
    """A sheet of ready-cut labels: how many, how large, where the first lies and how far it is to the next.

    `used` labels at the beginning of the first sheet are gone already.
    """

    columns: int
    rows: int
    width_mm: float
    height_mm: float
    left_mm: float
    top_mm: float
    pitch_x_mm: float
    pitch_y_mm: float
    used: int = 0


@dataclass(frozen=True, kw_only=True)
class LabelSheet:
    """Labels to print together. Without `grid` they are set on plain paper with lines to cut along."""

    labels: tuple[ScoopLabel, ...]
    form: LabelForm = LabelForm.STRIP
    units: UnitSystem = UnitSystem.FARM
    paper: Paper = Paper.LETTER
    languages: tuple[str, ...] = ("en",)
    resolution_g: float | None = None
    grid: LabelGrid | None = None


def label_lines(marks: Sequence[Mark], main_target_g: float) -> tuple[LabelLine, ...]:
    """The lines of signed-off marks: the one of the main target, its half feeding, and the others."""
    return tuple(
        LabelLine(
            target_mass_g=mark.target_mass_g,
            down_wall_mm=mark.down_wall_mm,
            use=_use(mark.target_mass_g / main_target_g),
            full_scoops=mark.full_scoops,
            mass_g=mark.mass_g,
        )
        for mark in marks
    )


def line_count(main: LabelLine, target_g: float) -> LineCount | None:
    """A feeding as scoopfuls to the main line and its half; None where it is no whole number of half lines, or where
    one scoopful to the main line is no feeding."""
    halves = round(target_g / (HALF_SHARE * main.target_mass_g))
    if main.struck_level or main.several or halves <= 2:
        return None
    if not same_weight(target_g, halves * HALF_SHARE * main.target_mass_g):
        return None
    return LineCount(target_mass_g=target_g, to_main=halves // 2, to_half=halves % 2)


def same_weight(one_g: float, other_g: float) -> bool:
    """Whether two target weights are one for the eye that reads a scoop."""
    return abs(one_g / other_g - 1.0) <= _SAME_SHARE


def _use(share: float) -> LineUse:
    if same_weight(share, 1.0):
        return LineUse.MAIN
    return LineUse.HALF if same_weight(share, HALF_SHARE) else LineUse.OTHER
