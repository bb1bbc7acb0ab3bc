"""The page description: frozen items placed in millimetres from the top left corner of the paper."""

from __future__ import annotations

import math
from collections.abc import Iterable
from enum import IntEnum, StrEnum

from calibrator.values import dataclass

BLACK = 0.0
GREY = 0.45
PALE = 0.88
WHITE = 1.0


class Weight(IntEnum):
    """The weights of the font that comes with the program."""

    REGULAR = 400
    SEMIBOLD = 600
    BOLD = 700


class Anchor(StrEnum):
    """Which point of a text its x tells."""

    START = "start"
    MIDDLE = "middle"
    END = "end"


@dataclass(frozen=True)
class Box:
    """An upright rectangle, mm."""

    x_mm: float
    y_mm: float
    width_mm: float
    height_mm: float

    @property
    def right_mm(self) -> float:
        return self.x_mm + self.width_mm

    @property
    def bottom_mm(self) -> float:
        return self.y_mm + self.height_mm

    def inset(self, by_mm: float) -> Box:
        """The box that lies inside this one by so much on every side."""
        return Box(self.x_mm + by_mm, self.y_mm + by_mm, self.width_mm - 2 * by_mm, self.height_mm - 2 * by_mm)


@dataclass(frozen=True)
class Text:
    """One line of text. (`x_mm`, `y_mm`) is its anchor on the baseline, about which it turns clockwise.

    `size_mm` is the font's em. In a `figures` text the units are set smaller than the numbers and 5/16 as a
    fraction. `ink` runs from black 0 to white 1.
    """

    text: str
    x_mm: float
    y_mm: float
    size_mm: float
    weight: Weight = Weight.REGULAR
    anchor: Anchor = Anchor.START
    angle_deg: float = 0.0
    ink: float = BLACK
    figures: bool = False


@dataclass(frozen=True)
class Line:
    """A straight stroke centred on its two ends' connection; `dash_mm` are strokes and gaps in turn."""

    x1_mm: float
    y1_mm: float
    x2_mm: float
    y2_mm: float
    width_mm: float
    ink: float = BLACK
    dash_mm: tuple[float, ...] = ()


class Go(StrEnum):
    """The steps of a path. An arc tells centre, radius, start and sweep, degrees clockwise from the right."""

    MOVE = "move"
    TO = "to"
    ARC = "arc"
    CLOSE = "close"


@dataclass(frozen=True)
class PathStep:
    go: Go
    x_mm: float = 0.0
    y_mm: float = 0.0
    radius_mm: float = 0.0
    start_deg: float = 0.0
    sweep_deg: float = 0.0


@dataclass(frozen=True)
class Shape:
    """A path that is filled, stroked or both; None leaves out the one or the other."""

    steps: tuple[PathStep, ...]
    fill: float | None = None
    stroke_mm: float | None = None
    ink: float = BLACK
    dash_mm: tuple[float, ...] = ()


Item = Text | Line | Shape


@dataclass(frozen=True)
class Page:
    """One side of paper."""

    width_mm: float
    height_mm: float
    items: tuple[Item, ...]


@dataclass(frozen=True)
class Document:
    """Pages of one print; they may differ in which way the paper lies, not in the paper."""

    title: str
    pages: tuple[Page, ...]


def polygon(points: Iterable[tuple[float, float]], *, closed: bool = True) -> tuple[PathStep, ...]:
    """A path through points."""
    steps = [PathStep(Go.TO if i else Go.MOVE, x, y) for i, (x, y) in enumerate(points)]
    return (*steps, PathStep(Go.CLOSE)) if closed else tuple(steps)


def rectangle(box: Box) -> tuple[PathStep, ...]:
    """A box as a path."""
    return polygon(
        (
            (box.x_mm, box.y_mm),
            (box.right_mm, box.y_mm),
            (box.right_mm, box.bottom_mm),
            (box.x_mm, box.bottom_mm),
        )
    )


def arc(x_mm: float, y_mm: float, radius_mm: float, start_deg: float, sweep_deg: float) -> tuple[PathStep, ...]:
    """An arc as a path of its own; a sweep of 360° is a whole circle."""
    turn = math.radians(start_deg)
    start = PathStep(Go.MOVE, x_mm + radius_mm * math.cos(turn), y_mm + radius_mm * math.sin(turn))
    return (start, PathStep(Go.ARC, x_mm, y_mm, radius_mm, start_deg, sweep_deg))
