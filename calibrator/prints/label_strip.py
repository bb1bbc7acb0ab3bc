"""The narrow label that is stuck down the wall, its black edge flush with the rim."""

from __future__ import annotations

from calibrator.prints import words
from calibrator.prints.emblems import arrow
from calibrator.prints.errors import DoesNotFit
from calibrator.prints.fit import fit_line
from calibrator.prints.gauge import beside, gauge_items, gauge_width_mm, large
from calibrator.prints.label_facts import LabelSheet, ScoopLabel
from calibrator.prints.label_info import Info, edge_height_mm, lay_info, words_in_edge
from calibrator.prints.languages import Words
from calibrator.prints.page import BLACK, WHITE, Anchor, Box, Item, Weight
from calibrator.prints.place import moved
from calibrator.prints.sheet import Sheet, centre_baseline
from calibrator.science.scoop import wall_length_mm, wrap
from calibrator.values import dataclass

BELOW_LAST_MM = 5.0
PAD_MM = 1.4
_BELOW_EDGE_MM = 0.8  # a frame that touches the black edge looks like part of it
_AROUND_SHARE = 0.9  # of the scoop's circumference that a strip may cover


@dataclass(frozen=True)
class Piece:
    """A label or a part of one, drawn at its own corner; `outline` is where it is cut."""

    width_mm: float
    height_mm: float
    items: tuple[Item, ...]
    outline: tuple[Item, ...]


def strip(label: ScoopLabel, facts: LabelSheet, said: Words, room: tuple[float, float] | None = None) -> Piece:
    """A strip for one label; `room` is the size of a ready-cut label that it must keep to.

    Raises DoesNotFit where the lines or the lot number do not go on it.
    """
    notes = large([beside(line, said, facts.units, facts.resolution_g) for line in label.lines])
    left, lowest, edge = gauge_width_mm(notes), lowest_mm(label), edge_height_mm(label)
    width, height = _most(label, room, lowest)
    info = lay_info(label, facts, said, width - left - 2 * PAD_MM, height - edge - 2 * PAD_MM)
    _refuse(room, lowest, info, left, width)
    assert info is not None
    if room is None:
        width = left + info.width_mm + 2 * PAD_MM
        height = max(lowest, info.height_mm + edge + 2 * PAD_MM)
    sheet = Sheet(width, height)
    draw_edge(sheet, said, width, edge)
    sheet.put(*gauge_items(notes, edge + _BELOW_EDGE_MM, height))
    sheet.rule(left, edge + 1, left, height - 1, 0.15)
    sheet.put(*moved(info.items(), left + PAD_MM, edge + PAD_MM))
    outline = cut_outline(width, height) if room is None else _trim(width, height, room[1])
    return Piece(width, height, sheet.page().items, outline)


def lowest_mm(label: ScoopLabel) -> float:
    """How far down a label must reach at least."""
    return max(line.down_wall_mm for line in label.lines) + BELOW_LAST_MM


def _most(label: ScoopLabel, room: tuple[float, float] | None, lowest: float) -> tuple[float, float]:
    """The most that a label may take: the ready-cut label, or the wall and a part of the way around."""
    wall = max(wall_length_mm(label.shape), lowest)
    if room:
        return room[0], min(room[1], wall)
    around = wrap(label.shape)
    return min(around.rim_edge_mm, around.floor_edge_mm) * _AROUND_SHARE, wall


def _refuse(room: tuple[float, float] | None, lowest: float, info: Info | None, left: float, width: float) -> None:
    if room and lowest - BELOW_LAST_MM + 1.0 > room[1]:
        raise DoesNotFit("A line lies farther down the wall than these labels are high. Use higher labels.")
    if info is None or info.width_mm > width - left:
        raise DoesNotFit("The lot number does not fit on so small a label. Use larger labels or a larger scoop.")


def draw_edge(sheet: Sheet, said: Words, width_mm: float, height_mm: float) -> None:
    """The black edge; its outer border is the rim."""
    sheet.frame(Box(0, 0, width_mm, height_mm), None, BLACK)
    if not words_in_edge(height_mm):
        return
    size = 0.72 * height_mm
    told = fit_line(said.joined(words.RIM_EDGE, " / "), width_mm - 6 * size, size, 0.4 * size, Weight.BOLD)
    baseline = centre_baseline(height_mm / 2, told.size_mm)
    sheet.text(told.text, width_mm / 2, baseline, told.size_mm, Weight.BOLD, Anchor.MIDDLE, ink=WHITE)
    for x in (1.6 * size, width_mm - 1.6 * size):
        sheet.put(arrow(x, 0.14 * height_mm, 0.7 * height_mm, -90, WHITE))


def cut_outline(width_mm: float, height_mm: float) -> tuple[Item, ...]:
    sheet = Sheet(width_mm, height_mm)
    for x in (0.0, width_mm):
        sheet.rule(x, 0, x, height_mm, 0.15)
    sheet.rule(0, height_mm, width_mm, height_mm, 0.15)
    return sheet.page().items


def _trim(width_mm: float, height_mm: float, room_mm: float) -> tuple[Item, ...]:
    """Where a ready-cut label is longer than the wall, the line to trim it along."""
    if height_mm > room_mm - 1.0:
        return ()
    sheet = Sheet(width_mm, height_mm)
    sheet.rule(0, height_mm, width_mm, height_mm, 0.15, dash_mm=(2.0, 1.5))
    return sheet.page().items
