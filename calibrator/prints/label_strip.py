"""The narrow label that is stuck down the wall, its black edge flush with the rim."""

from __future__ import annotations

from dataclasses import dataclass

from calibrator.prints import words
from calibrator.prints.emblems import arrow
from calibrator.prints.fit import fit_line
from calibrator.prints.gauge import beside, gauge_items, gauge_width_mm
from calibrator.prints.label_facts import LabelSheet, ScoopLabel
from calibrator.prints.label_info import Info, info_items, lay_info
from calibrator.prints.languages import Words
from calibrator.prints.page import BLACK, WHITE, Anchor, Box, Item, Weight
from calibrator.prints.place import moved
from calibrator.prints.sheet import Sheet, centre_baseline
from calibrator.science.scoop import wall_length_mm

_EDGE = 3.6
_BELOW_LAST = 5.0
_PAD = 1.4
_INFO_WIDTHS = (36.0, 40.0, 46.0, 54.0, 64.0, 76.0)


@dataclass(frozen=True)
class Piece:
    """A label or a part of one, drawn at its own corner; `outline` is where it is cut."""

    width_mm: float
    height_mm: float
    items: tuple[Item, ...]
    outline: tuple[Item, ...]


def strip(
    label: ScoopLabel, facts: LabelSheet, said: Words, room: tuple[float, float] | None = None
) -> Piece:
    """A strip for one label; `room` is the size of a ready-cut label that it must keep to."""
    notes = [beside(line, said, facts.units, facts.resolution_g) for line in label.lines]
    left = gauge_width_mm(notes)
    lowest = max(line.down_wall_mm for line in label.lines) + _BELOW_LAST
    wall = wall_length_mm(label.shape)
    edge = edge_height_mm(label)
    if room:
        width, height = room[0], min(room[1], max(wall, lowest))
        info = lay_info(label, said, width - left - 2 * _PAD, height - edge - 2 * _PAD)
    else:
        info = _roomy_info(label, said, max(lowest, wall) - edge - 2 * _PAD)
        width = left + info.width_mm + 2 * _PAD
        height = max(lowest, info.height_mm + edge + 2 * _PAD)
    sheet = Sheet(width, height)
    draw_edge(sheet, said, width, edge)
    sheet.put(*gauge_items(notes, edge, height))
    sheet.rule(left, edge + 1, left, height - 1, 0.15)
    sheet.put(*moved(info_items(info), left + _PAD, edge + _PAD))
    return Piece(width, height, sheet.page().items, cut_outline(width, height))


def edge_height_mm(label: ScoopLabel) -> float:
    """How broad the black edge at the rim may be before it comes near the first line."""
    return min(_EDGE, 0.55 * min(line.down_wall_mm for line in label.lines))


def _roomy_info(label: ScoopLabel, said: Words, height_mm: float) -> Info:
    """The narrowest words that keep within the wall; on a very low wall the widest, shortened."""
    for width in _INFO_WIDTHS:
        info = lay_info(label, said, width)
        if info.height_mm <= height_mm:
            return info
    return lay_info(label, said, _INFO_WIDTHS[-1], height_mm)


def draw_edge(sheet: Sheet, said: Words, width_mm: float, height_mm: float) -> None:
    """The black edge; its outer border is the rim."""
    sheet.frame(Box(0, 0, width_mm, height_mm), None, BLACK)
    if height_mm < 2.2:
        return
    size = 0.72 * height_mm
    told = fit_line(said.joined(words.RIM_EDGE, " / "), width_mm - 6 * size, size, 0.4 * size, Weight.BOLD)
    sheet.text(
        told.text,
        width_mm / 2,
        centre_baseline(height_mm / 2, told.size_mm),
        told.size_mm,
        Weight.BOLD,
        Anchor.MIDDLE,
        ink=WHITE,
    )
    for x in (1.6 * size, width_mm - 1.6 * size):
        sheet.put(arrow(x, 0.14 * height_mm, 0.7 * height_mm, -90, WHITE))


def cut_outline(width_mm: float, height_mm: float) -> tuple[Item, ...]:
    sheet = Sheet(width_mm, height_mm)
    for x in (0.0, width_mm):
        sheet.rule(x, 0, x, height_mm, 0.15)
    sheet.rule(0, height_mm, width_mm, height_mm, 0.15)
    return sheet.page().items
