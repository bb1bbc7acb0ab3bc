"""The small pictures of the prints, drawn as paths so that no font need have them."""

from __future__ import annotations

import math

from calibrator.model import FillWay
from calibrator.prints.page import BLACK, WHITE, Box, Go, Item, Line, PathStep, Shape, arc, polygon, rectangle

_OUTLINE = 0.055  # stroke of a scoop, share of its height
_LINE_LEVEL = 0.56  # where the drawn line of the small picture lies


def scoop(box: Box, way: FillWay, filled: float = 1.0) -> tuple[Item, ...]:
    """A scoop seen from the side with its handle to the right.

    Struck level it is full to a straight edge at the rim; to the line it is full to a line that stands out
    on both sides of the cup. `filled` below 1 is a part of a level scoopful.
    """
    stroke = box.height_mm * _OUTLINE
    cup = Box(box.x_mm + 0.06 * box.width_mm, box.y_mm + 2 * stroke, box.width_mm * 0.62, box.height_mm - 3 * stroke)
    level = _LINE_LEVEL if way is FillWay.TO_MARK else filled
    return (*_cup(cup, stroke, level), *_handle(cup, box, stroke), *_top(cup, box, stroke, way, level))


def _wall(cup: Box, share: float) -> tuple[float, float]:
    """x of the left and right wall at a share of the height; the cup narrows towards the floor."""
    in_mm = 0.1 * cup.width_mm * (1 - share)
    return cup.x_mm + in_mm, cup.right_mm - in_mm


def _cup(cup: Box, stroke: float, level: float) -> tuple[Item, ...]:
    top = cup.bottom_mm - level * cup.height_mm
    (floor_l, floor_r), (top_l, top_r), (rim_l, rim_r) = _wall(cup, 0), _wall(cup, level), _wall(cup, 1)
    powder = polygon(((top_l, top), (top_r, top), (floor_r, cup.bottom_mm), (floor_l, cup.bottom_mm)))
    wall = polygon(
        ((rim_l, cup.y_mm), (floor_l, cup.bottom_mm), (floor_r, cup.bottom_mm), (rim_r, cup.y_mm)),
        closed=False,
    )
    return Shape(powder, fill=0.35), Shape(wall, stroke_mm=stroke)


def _handle(cup: Box, box: Box, stroke: float) -> tuple[Item, ...]:
    y = cup.y_mm + 1.6 * stroke
    return (Line(cup.right_mm - 0.02 * cup.width_mm, y, box.right_mm, y, 2.6 * stroke),)


def _top(cup: Box, box: Box, stroke: float, way: FillWay, level: float) -> tuple[Item, ...]:
    if way is FillWay.TO_MARK:
        y = cup.bottom_mm - level * cup.height_mm
        left, right = _wall(cup, level)
        out = 0.13 * cup.width_mm
        return (Line(left - out, y, right + out, y, 1.8 * stroke),)
    if level < 1.0:
        return ()
    y = cup.y_mm - 0.5 * stroke
    return (Line(box.x_mm, y, cup.right_mm + 0.06 * cup.width_mm, y, 1.8 * stroke),)


def scale(box: Box) -> tuple[Item, ...]:
    """A kitchen scale from the front: the plate, the body below it, the window of its figures."""
    stroke = 0.06 * box.height_mm
    middle, plate = box.x_mm + box.width_mm / 2, box.y_mm + 0.3 * box.height_mm
    top, bottom = plate + 0.16 * box.height_mm, box.bottom_mm - stroke / 2
    body = polygon(
        (
            (middle - 0.3 * box.width_mm, top),
            (middle + 0.3 * box.width_mm, top),
            (middle + 0.42 * box.width_mm, bottom),
            (middle - 0.42 * box.width_mm, bottom),
        )
    )
    window = Box(middle - 0.2 * box.width_mm, top + 0.3 * (bottom - top), 0.4 * box.width_mm, 0.4 * (bottom - top))
    return (
        Line(box.x_mm, plate, box.right_mm, plate, 2 * stroke),
        Line(middle, plate, middle, top, 3 * stroke),
        Shape(body, fill=0.35),
        Shape(body, stroke_mm=stroke),
        Shape(rectangle(window), fill=WHITE),
        Shape(rectangle(window), stroke_mm=stroke),
    )


def octagon(x_mm: float, y_mm: float, radius_mm: float) -> tuple[Item, ...]:
    """The shape of a stop sign about a centre: black with a white ring inside."""

    def around(radius: float) -> tuple[tuple[float, float], ...]:
        turns = (math.radians(22.5 + 45 * i) for i in range(8))
        return tuple((x_mm + radius * math.cos(t), y_mm + radius * math.sin(t)) for t in turns)

    ring = Shape(polygon(around(radius_mm * 0.9)), stroke_mm=radius_mm * 0.06, ink=WHITE)
    return Shape(polygon(around(radius_mm)), fill=BLACK), ring


def arrow(x_mm: float, y_mm: float, size_mm: float, angle_deg: float, ink: float = BLACK) -> Item:
    """A solid triangle whose tip is at the point; 0° points right, 90° down."""
    turn = math.radians(angle_deg)
    cos, sin = math.cos(turn), math.sin(turn)
    corners = ((0.0, 0.0), (-size_mm, -0.6 * size_mm), (-size_mm, 0.6 * size_mm))
    return Shape(polygon((x_mm + u * cos - v * sin, y_mm + u * sin + v * cos) for u, v in corners), fill=ink)


def drop(box: Box) -> Item:
    """A drop of water."""
    radius = min(box.width_mm / 2, box.height_mm / 3)
    x, y = box.x_mm + box.width_mm / 2, box.bottom_mm - radius
    tip = PathStep(Go.MOVE, x, box.y_mm)
    return Shape((tip, PathStep(Go.ARC, x, y, radius, -25, 230), PathStep(Go.CLOSE)), fill=BLACK)


def thermometer(box: Box) -> tuple[Item, ...]:
    """A thermometer, standing."""
    radius = box.width_mm / 2
    x, y = box.x_mm + radius, box.bottom_mm - radius
    stem = Box(x - 0.45 * radius, box.y_mm, 0.9 * radius, box.height_mm - 1.2 * radius)
    scale = [
        Line(
            stem.right_mm + 0.25 * radius,
            stem.y_mm + i * stem.height_mm / 4,
            stem.right_mm + 0.8 * radius,
            stem.y_mm + i * stem.height_mm / 4,
            0.18 * radius,
        )
        for i in (1, 2, 3)
    ]
    return (
        Shape(rectangle(stem), stroke_mm=0.22 * radius),
        Shape(
            rectangle(Box(x - 0.2 * radius, stem.y_mm + 0.35 * stem.height_mm, 0.4 * radius, stem.height_mm)),
            BLACK,
        ),
        Shape(arc(x, y, radius, 0, 360), BLACK),
        *scale,
    )


def warning(box: Box) -> tuple[Item, ...]:
    """A triangle with a stroke and a dot in it: take care."""
    x, width = box.x_mm + box.width_mm / 2, box.width_mm
    edge = polygon(((x, box.y_mm), (box.right_mm, box.bottom_mm), (box.x_mm, box.bottom_mm)))
    stroke = 0.1 * width
    return (
        Shape(edge, fill=BLACK),
        Line(x, box.y_mm + 0.36 * box.height_mm, x, box.y_mm + 0.7 * box.height_mm, stroke, WHITE),
        Line(x, box.y_mm + 0.78 * box.height_mm, x, box.y_mm + 0.88 * box.height_mm, stroke, WHITE),
    )
