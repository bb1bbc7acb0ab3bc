"""A page while it is being filled; layout code puts items on it and takes a frozen page from it."""

from __future__ import annotations

from collections.abc import Sequence

from calibrator.model import Paper
from calibrator.prints import fonts
from calibrator.prints.fit import Fitted
from calibrator.prints.page import (
    BLACK,
    Anchor,
    Box,
    Item,
    Line,
    Page,
    PathStep,
    Shape,
    Text,
    Weight,
    rectangle,
)

PAPER_MM = {Paper.LETTER: (215.9, 279.4), Paper.A4: (210.0, 297.0)}
MARGIN_MM = 10.0  # wider than what barn and office printers leave unprinted


def paper_mm(paper: Paper, *, landscape: bool = False) -> tuple[float, float]:
    """Width and height of the paper as it lies."""
    short, long = PAPER_MM[paper]
    return (long, short) if landscape else (short, long)


class Sheet:
    """Collects the items of one page."""

    def __init__(self, width_mm: float, height_mm: float) -> None:
        self.width_mm = width_mm
        self.height_mm = height_mm
        self._items: list[Item] = []

    @property
    def body(self) -> Box:
        """What lies inside the margins."""
        return Box(0, 0, self.width_mm, self.height_mm).inset(MARGIN_MM)

    def page(self) -> Page:
        return Page(self.width_mm, self.height_mm, tuple(self._items))

    def put(self, *items: Item) -> None:
        self._items.extend(items)

    def text(
        self,
        text: str,
        x_mm: float,
        y_mm: float,
        size_mm: float,
        weight: Weight = Weight.REGULAR,
        anchor: Anchor = Anchor.START,
        *,
        angle_deg: float = 0.0,
        ink: float = BLACK,
        figures: bool = False,
    ) -> None:
        """One line of text on its baseline; blank text leaves no item."""
        if text:
            self.put(Text(text, x_mm, y_mm, size_mm, weight, anchor, angle_deg, ink, figures))

    def lines(
        self,
        fitted: Fitted,
        x_mm: float,
        top_mm: float,
        weight: Weight = Weight.REGULAR,
        anchor: Anchor = Anchor.START,
        *,
        ink: float = BLACK,
        leading: float = fonts.LEADING,
    ) -> float:
        """Lines below each other from `top_mm` down; returns where the next may begin."""
        for number, line in enumerate(fitted.lines):
            baseline = top_mm + fitted.size_mm * (leading * number + 0.5 * (leading - 1) + 0.8)
            self.text(line, x_mm, baseline, fitted.size_mm, weight, anchor, ink=ink)
        return top_mm + len(fitted.lines) * fitted.size_mm * leading

    def rule(
        self,
        x1_mm: float,
        y1_mm: float,
        x2_mm: float,
        y2_mm: float,
        width_mm: float = 0.25,
        ink: float = BLACK,
        dash_mm: tuple[float, ...] = (),
    ) -> None:
        self.put(Line(x1_mm, y1_mm, x2_mm, y2_mm, width_mm, ink, dash_mm))

    def frame(self, box: Box, stroke_mm: float | None = 0.25, fill: float | None = None) -> None:
        """A rectangle, stroked inside its edge so that it keeps to its box."""
        inside = box.inset((stroke_mm or 0.0) / 2)
        self.put(Shape(rectangle(inside), fill, stroke_mm))

    def shape(self, steps: Sequence[PathStep], fill: float | None = BLACK, stroke_mm: float | None = None) -> None:
        self.put(Shape(tuple(steps), fill, stroke_mm))


def centre_baseline(middle_mm: float, size_mm: float) -> float:
    """The baseline that centres capitals and digits on a height."""
    return middle_mm + size_mm * fonts.CAP_HEIGHT / 2
