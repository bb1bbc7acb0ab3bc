"""What is wrong with a page, told from its description and the real font: overlaps, clipping, struck text."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from itertools import combinations, pairwise

from PySide6.QtCore import QRectF
from PySide6.QtGui import QFontMetricsF

from calibrator.prints import fonts
from calibrator.prints.page import Anchor, Document, Go, Line, Page, Shape, Text, Weight

Point = tuple[float, float]
TOUCH_MM = 0.05
EDGE_MM = 4.0  # no printer reaches all the way to the paper's edge
MOST_INK_STEP = 0.5
SHIFT = {Anchor.START: 0.0, Anchor.MIDDLE: 0.5, Anchor.END: 1.0}


def ink(text: str, weight: Weight, figures: bool = False) -> QRectF:
    """What a text blackens, in ems, from its start on the baseline; y runs down."""
    metrics, x, whole = QFontMetricsF(fonts.font(weight)), 0.0, QRectF()
    for run in fonts.runs(text, figures):
        bounds = metrics.tightBoundingRect(run.text)
        scaled = QRectF(
            x + bounds.x() * run.scale,
            bounds.y() * run.scale - run.rise * fonts.EM,
            bounds.width() * run.scale,
            bounds.height() * run.scale,
        )
        whole = whole.united(scaled) if not bounds.isEmpty() else whole
        x += metrics.horizontalAdvance(run.text) * run.scale
    return QRectF(whole.x() / fonts.EM, whole.y() / fonts.EM, whole.width() / fonts.EM, whole.height() / fonts.EM)


def text_corners_mm(item: Text) -> tuple[tuple[float, float], ...]:
    """The four corners of what a text blackens on its page."""
    bounds = ink(item.text, item.weight, item.figures)
    left = bounds.x() - SHIFT[item.anchor] * fonts.advance(item.text, item.weight, item.figures)
    xs, ys = (left, left + bounds.width()), (bounds.y(), bounds.bottom())
    turn = math.radians(item.angle_deg)
    return tuple(
        (
            item.x_mm + item.size_mm * (x * math.cos(turn) - y * math.sin(turn)),
            item.y_mm + item.size_mm * (x * math.sin(turn) + y * math.cos(turn)),
        )
        for x, y in ((xs[0], ys[0]), (xs[1], ys[0]), (xs[1], ys[1]), (xs[0], ys[1]))
    )


def troubles(document: Document, edge_mm: float = EDGE_MM) -> list[str]:
    """A sentence for everything wrong with the document."""
    return [
        f"page {number}: {told}" for number, page in enumerate(document.pages, start=1) for told in _page(page, edge_mm)
    ]


def _page(page: Page, edge_mm: float) -> Iterator[str]:
    texts = [(item, _shrunk(text_corners_mm(item))) for item in page.items if isinstance(item, Text)]
    outlines = [(item, line) for item in page.items for line in _outline(item)]
    for text, corners in texts:
        if not all(
            edge_mm <= x <= page.width_mm - edge_mm and edge_mm <= y <= page.height_mm - edge_mm for x, y in corners
        ):
            yield f"{text.text!r} leaves the page"
        for item, outline in outlines:
            if _crosses(corners, outline):
                yield f"{text.text!r} is crossed by {type(item).__name__} {outline[:2]}"
        if abs(_ground(page, text, corners) - text.ink) < MOST_INK_STEP:
            yield f"{text.text!r} cannot be told from its ground"
    for (one, a), (other, b) in combinations(texts, 2):
        if _overlap(a, b):
            yield f"{one.text!r} overlaps {other.text!r}"


def crossed(text: Text, item: Line | Shape) -> bool:
    """Whether a stroke or an edge runs through a text."""
    corners = _shrunk(text_corners_mm(text))
    return any(_crosses(corners, outline) for outline in _outline(item))


def _shrunk(corners: Sequence[Point]) -> tuple[Point, ...]:
    """The box a hair smaller: touching is no overlap."""
    cx, cy = sum(x for x, _ in corners) / 4, sum(y for _, y in corners) / 4

    def nearer(x: float, y: float) -> Point:
        away = math.hypot(x - cx, y - cy) or 1.0
        keep = max(0.0, 1 - TOUCH_MM / away)
        return cx + (x - cx) * keep, cy + (y - cy) * keep

    return tuple(nearer(x, y) for x, y in corners)


def _outline(item: object) -> Iterator[tuple[Point, ...]]:
    """The strokes and edges of an item as chains of points."""
    if isinstance(item, Line):
        yield ((item.x1_mm, item.y1_mm), (item.x2_mm, item.y2_mm))
    if isinstance(item, Shape):
        chain: list[Point] = []
        for step in item.steps:
            if step.go is Go.ARC:
                chain += [
                    (
                        step.x_mm + step.radius_mm * math.cos(math.radians(step.start_deg + step.sweep_deg * i / 48)),
                        step.y_mm + step.radius_mm * math.sin(math.radians(step.start_deg + step.sweep_deg * i / 48)),
                    )
                    for i in range(49)
                ]
            elif step.go is Go.CLOSE:
                chain.append(chain[0])
            else:
                chain.append((step.x_mm, step.y_mm))
        yield tuple(chain)


def _side(a: Point, b: Point, p: Point) -> float:
    return (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])


def _inside(corners: Sequence[Point], p: Point) -> bool:
    sides = [_side(a, b, p) for a, b in pairwise((*corners, corners[0]))]
    return all(s > 0 for s in sides) or all(s < 0 for s in sides)


def _meet(a: Point, b: Point, c: Point, d: Point) -> bool:
    return _side(a, b, c) * _side(a, b, d) < 0 and _side(c, d, a) * _side(c, d, b) < 0


def _crosses(corners: Sequence[Point], chain: Sequence[Point]) -> bool:
    if _apart(corners, chain):
        return False
    edges = list(pairwise((*corners, corners[0])))
    return any(_inside(corners, p) for p in chain) or any(
        _meet(a, b, c, d) for a, b in edges for c, d in pairwise(chain)
    )


def _apart(one: Sequence[Point], other: Sequence[Point]) -> bool:
    """A cheap look at the upright boxes first."""
    return any(
        max(p[axis] for p in one) < min(p[axis] for p in other)
        or max(p[axis] for p in other) < min(p[axis] for p in one)
        for axis in (0, 1)
    )


def _overlap(a: Sequence[Point], b: Sequence[Point]) -> bool:
    return not _apart(a, b) and (
        any(_inside(a, p) for p in b) or any(_inside(b, p) for p in a) or _crosses(a, (*b, b[0]))
    )


def _ground(page: Page, text: Text, corners: Sequence[Point]) -> float:
    """The grey of what lies under the middle of a text: the last filled shape painted before it."""
    centre = (sum(x for x, _ in corners) / 4, sum(y for _, y in corners) / 4)
    ground = 1.0
    for item in page.items:
        if item is text:
            break
        if isinstance(item, Shape) and item.fill is not None and _within(next(_outline(item)), centre):
            ground = item.fill
    return ground


def _within(chain: Sequence[Point], p: Point) -> bool:
    """Even-odd rule, for outlines that need not be convex."""
    crossings = 0
    for (x1, y1), (x2, y2) in pairwise((*chain, chain[0])):
        if (y1 > p[1]) != (y2 > p[1]) and p[0] < (x2 - x1) * (p[1] - y1) / (y2 - y1) + x1:
            crossings += 1
    return crossings % 2 == 1
