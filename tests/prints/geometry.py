"""What is wrong with a page, told from its description and the real font: overlaps, clipping, struck text."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from functools import lru_cache
from itertools import combinations, pairwise
from typing import NamedTuple

from PySide6.QtCore import QRectF
from PySide6.QtGui import QFontMetricsF

from calibrator.prints import fonts
from calibrator.prints.page import Anchor, Document, Go, Line, Page, Shape, Text, Weight

Point = tuple[float, float]
Chain = tuple[Point, ...]
TOUCH_MM = 0.05
EDGE_MM = 4.0  # no printer reaches all the way to the paper's edge
MOST_INK_STEP = 0.5
SHIFT = {Anchor.START: 0.0, Anchor.MIDDLE: 0.5, Anchor.END: 1.0}


@lru_cache(maxsize=32768)
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
    texts = [(item, _boxed(_shrunk(text_corners_mm(item)))) for item in page.items if isinstance(item, Text)]
    outlines = [(item, _boxed(line)) for item in page.items for line in _outline(item)]
    grounds = _grounds(page)
    for text, boxed in texts:
        corners = boxed.chain
        if not all(
            edge_mm <= x <= page.width_mm - edge_mm and edge_mm <= y <= page.height_mm - edge_mm for x, y in corners
        ):
            yield f"{text.text!r} leaves the page"
        for item, outline in outlines:
            if _crosses(boxed, outline):
                yield f"{text.text!r} is crossed by {type(item).__name__} {outline.chain[:2]}"
        if abs(_ground(grounds[id(text)], corners) - text.ink) < MOST_INK_STEP:
            yield f"{text.text!r} cannot be told from its ground"
    for (one, a), (other, b) in combinations(texts, 2):
        if _overlap(a, b):
            yield f"{one.text!r} overlaps {other.text!r}"


def crossed(text: Text, item: Line | Shape) -> bool:
    """Whether a stroke or an edge runs through a text."""
    corners = _boxed(_shrunk(text_corners_mm(text)))
    return any(_crosses(corners, _boxed(outline)) for outline in _outline(item))


class _Boxed(NamedTuple):
    """A chain of points in its upright box, which is worked out once for the many comparisons."""

    chain: Chain
    left: float
    top: float
    right: float
    bottom: float


def _boxed(chain: Chain) -> _Boxed:
    xs, ys = [x for x, _ in chain], [y for _, y in chain]
    return _Boxed(chain, min(xs), min(ys), max(xs), max(ys))


def _shrunk(corners: Sequence[Point]) -> Chain:
    """The box a hair smaller: touching is no overlap."""
    cx, cy = sum(x for x, _ in corners) / 4, sum(y for _, y in corners) / 4

    def nearer(x: float, y: float) -> Point:
        away = math.hypot(x - cx, y - cy) or 1.0
        keep = max(0.0, 1 - TOUCH_MM / away)
        return cx + (x - cx) * keep, cy + (y - cy) * keep

    return tuple(nearer(x, y) for x, y in corners)


def _outline(item: object) -> Iterator[Chain]:
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


def _crosses(box: _Boxed, line: _Boxed) -> bool:
    if _apart(box, line):
        return False
    corners, chain = box.chain, line.chain
    edges = list(pairwise((*corners, corners[0])))
    return any(_inside(corners, p) for p in chain) or any(
        _meet(a, b, c, d) for a, b in edges for c, d in pairwise(chain)
    )


def _apart(one: _Boxed, other: _Boxed) -> bool:
    """A cheap look at the upright boxes first."""
    return one.right < other.left or other.right < one.left or one.bottom < other.top or other.bottom < one.top


def _overlap(a: _Boxed, b: _Boxed) -> bool:
    return not _apart(a, b) and (
        any(_inside(a.chain, p) for p in b.chain)
        or any(_inside(b.chain, p) for p in a.chain)
        or _crosses(a, _boxed((*b.chain, b.chain[0])))
    )


def _grounds(page: Page) -> dict[int, list[tuple[float, _Boxed]]]:
    """The greys and outlines painted before each text, by the text's id."""
    found, painted = {}, []
    for item in page.items:
        if isinstance(item, Text):
            found.setdefault(id(item), list(painted))
        elif isinstance(item, Shape) and item.fill is not None:
            painted.append((item.fill, _boxed(next(_outline(item)))))
    return found


def _ground(painted: Sequence[tuple[float, _Boxed]], corners: Sequence[Point]) -> float:
    """The grey of what lies under the middle of a text: the last filled shape painted before it."""
    x, y = (sum(p[axis] for p in corners) / 4 for axis in (0, 1))
    under = (
        fill
        for fill, at in reversed(painted)
        if at.left <= x <= at.right and at.top <= y <= at.bottom and _within(at.chain, (x, y))
    )
    return next(under, 1.0)


def _within(chain: Sequence[Point], p: Point) -> bool:
    """Even-odd rule, for outlines that need not be convex."""
    crossings = 0
    for (x1, y1), (x2, y2) in pairwise((*chain, chain[0])):
        if (y1 > p[1]) != (y2 > p[1]) and p[0] < (x2 - x1) * (p[1] - y1) / (y2 - y1) + x1:
            crossings += 1
    return crossings % 2 == 1
