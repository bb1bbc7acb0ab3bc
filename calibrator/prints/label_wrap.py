"""The label right around a scoop, in as many pieces as the paper asks; its lines stay level all round."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from calibrator.prints import words
from calibrator.prints.emblems import arrow
from calibrator.prints.errors import DoesNotFit
from calibrator.prints.fonts import width_mm
from calibrator.prints.gauge import LEVEL_TIMES, MAIN_WIDTH_MM, THIN_WIDTH_MM, Beside, beside, level_alone
from calibrator.prints.label_facts import LabelSheet, LineUse, ScoopLabel
from calibrator.prints.label_info import Info, edge_height_mm, lay_info, words_in_edge
from calibrator.prints.label_strip import PAD_MM, Piece, lowest_mm
from calibrator.prints.languages import Words
from calibrator.prints.page import BLACK, WHITE, Anchor, Item, Text, Weight
from calibrator.prints.place import moved
from calibrator.prints.sheet import Sheet, centre_baseline
from calibrator.prints.unrolled import Unrolled, unrolled
from calibrator.science.scoop import Wrap, wrap

FLAP_MM = 12.0
_MOST_PIECES = 8
_START = 3.0
_APART = 8.0
_AGAIN = 45.0  # of unbroken line before the weights come again
_EDGE_WORDS_EVERY = 70.0
_CLEAR = 0.8
_NO_DASH = 1.2  # nearer to the words a line would be read as a dash before them
_LEAST_MORE = 0.6  # size of what a weight is made of, share of the usual
_HALF_HEIGHT = 0.62  # of a weight, share of its size, with what bends away below it
_LEADING = 1.15


def wraps(label: ScoopLabel, facts: LabelSheet, said: Words, room: tuple[float, float]) -> list[Piece]:
    """The pieces of a wrap, each within `room`. Raises DoesNotFit."""
    wall = wrap(label.shape, label.wall_thickness_mm)
    for pieces in range(1, _MOST_PIECES + 1):
        flat = unrolled(wall, wall.rim_edge_mm / pieces + FLAP_MM)
        depth = min(wall.wall_length_mm, max(lowest_mm(label) + 3.0, 46.0))
        left, top, right, bottom = flat.bounds(depth)
        if right - left <= room[0] and bottom - top <= room[1] and _opens(wall, pieces):
            return [_piece(label, facts, said, flat, depth, (number, pieces)) for number in range(1, pieces + 1)]
    raise DoesNotFit("This scoop is too large for a wrap on this paper. Print the strip label instead.")


def _opens(wall: Wrap, pieces: int) -> bool:
    """A part of a ring of more than half a turn cannot be laid on a wall in one go."""
    return wall.angle_deg is None or wall.angle_deg / pieces <= 150.0


def _piece(
    label: ScoopLabel, facts: LabelSheet, said: Words, flat: Unrolled, depth: float, piece: tuple[int, int]
) -> Piece:
    edge = edge_height_mm(label)
    inner = flat.length_mm - FLAP_MM
    info, sag = _info(label, facts, said, flat, depth - edge - 2 * PAD_MM, inner, piece)
    notes = [beside(line, said, facts.units, facts.resolution_g) for line in label.lines]
    items: list[Item] = [flat.band(0.0, edge, 0.0, flat.length_mm, BLACK)]
    items += _edge_words(flat, said, edge, inner)
    top = edge + PAD_MM + (sag if flat.rim_outside else 0.0)
    half = info.width_mm / 2 * flat.spread(top + info.height_mm) + _CLEAR
    items += _flat(info.items(), flat, _START + half, top, info.width_mm)
    taken = (_START - _NO_DASH, _START + 2 * half, top - sag - _CLEAR, top + info.height_mm + sag + _CLEAR)
    room, alone = inner - 2.0 - taken[1] - 4.0, level_alone(notes)
    notes = [_as_fits(note, room, depth - edge, alone) for note in notes]
    middles = [(edge + depth) / 2 if alone else _middle(note, edge, depth) for note in notes]
    items += _lines(flat, list(zip(notes, middles, strict=True)), taken, inner)
    x, y, right, bottom = flat.bounds(depth)
    outline = _outline(flat, depth, inner, edge)
    return Piece(right - x, bottom - y, moved(items, -x, -y), moved(outline, -x, -y))


def _info(
    label: ScoopLabel,
    facts: LabelSheet,
    said: Words,
    flat: Unrolled,
    height: float,
    length: float,
    piece: tuple[int, int],
) -> tuple[Info, float]:
    """The words and how far the wall bends away below them."""
    sag = 0.0
    for _ in range(3):
        info = lay_info(label, facts, said, length * 0.6, height - sag, piece)
        if info is None:
            raise DoesNotFit("The lot number does not fit around this scoop. Print the strip label instead.")
        sag = flat.sag_mm(info.width_mm)
        if info.height_mm + sag <= height:
            return info, sag
    raise DoesNotFit("The words do not fit around this scoop. Print the strip label instead.")


def _flat(items: Sequence[Item], flat: Unrolled, s_mm: float, d_mm: float, width_mm_: float) -> tuple[Item, ...]:
    """Items laid on the wall with the middle of their top at a place."""
    x, y = flat.at(s_mm, d_mm)
    return moved(moved(items, -width_mm_ / 2, 0.0), x, y, flat.angle_deg(s_mm))


def _edge_words(flat: Unrolled, said: Words, edge: float, inner: float) -> Iterator[Item]:
    """The languages in turn along the edge, small where it bends much; each between two arrows."""
    if not words_in_edge(edge):
        return
    told = said.each(words.RIM_EDGE)
    natural = max(width_mm(text, 1.0, Weight.BOLD) for text in told)
    size = 0.66 * edge
    while flat.sag_mm(natural * size) > 0.1 * edge and size > 0.4 * edge:
        size *= 0.95
    half = natural * size / 2
    count = max(1, int(inner / max(2 * half + 4 * edge, _EDGE_WORDS_EVERY / len(told))))
    for number in range(count):
        s = inner * (number + 0.5) / count
        word = Text(told[number % len(told)], 0.0, 0.0, size, Weight.BOLD, Anchor.MIDDLE, ink=WHITE)
        yield from _flat((word,), flat, s, centre_baseline(edge / 2, size), 0.0)
        for beside_s in (s - half - edge, s + half + edge):
            yield from _flat((arrow(0.0, 0.16 * edge, 0.66 * edge, -90, WHITE),), flat, beside_s, 0.0, 0.0)


def _middle(note: Beside, edge_mm: float, depth_mm: float) -> float:
    """How far down the middle of a weight stands: in its line, elsewhere only where that is too near the black edge or
    the lower one."""
    lowest = depth_mm - 0.55 * _tall(note)
    return max(min(note.line.down_wall_mm, lowest), edge_mm + _CLEAR + _HALF_HEIGHT * _tall(note))


def _tall(note: Beside) -> float:
    """Size of a weight with the rows beside it."""
    return max(note.size, _LEADING * note.size * note.share * len(note.rows))


def _as_fits(note: Beside, room: float, height: float, alone: bool) -> Beside:
    """Level scoopfuls that are all there is to tell are large, to be read from afar; what a weight is made of is
    smaller where its line is too short."""
    width = 1.1 * _spot_width(note)
    if alone and width < room:
        return replace(note, times=max(1.0, min(room / width, height / (3 * note.size), LEVEL_TIMES)))
    more = _more_width(note)
    return replace(note, more_times=min(1.0, max(_LEAST_MORE, (room - width + more) / more))) if note.more else note


def _lines(
    flat: Unrolled, notes: Sequence[tuple[Beside, float]], taken: tuple[float, float, float, float], inner: float
) -> Iterator[Item]:
    """Every line from end to end but for the words; its own weight in it again and again, in turn."""
    spots = _spots(flat, notes, taken[1] + 4.0, inner - 2.0)
    for note in (each for each, _ in notes if not each.line.struck_level):
        d = note.line.down_wall_mm
        gaps = [(a, b) for a, b, of, middle in spots if abs(middle - d) < 0.45 * _tall(of) + 0.6 or of is note]
        if taken[2] < d < taken[3]:
            gaps.append((taken[0], taken[1]))
        width = MAIN_WIDTH_MM if note.main else THIN_WIDTH_MM
        yield from (flat.stroke(d, a, b, width) for a, b in _between(gaps, flat.length_mm))
    for start, end, note, middle in spots:
        yield from _spot(flat, note, (start + end) / 2, middle)


def _spots(
    flat: Unrolled, notes: Sequence[tuple[Beside, float]], start: float, end: float
) -> list[tuple[float, float, Beside, float]]:
    """Where weights stand, as often as they fit; raises DoesNotFit where one never does.

    Those far enough apart down the wall stand below each other, the others in the next column.
    """
    order = sorted(notes, key=lambda each: (not each[0].main, each[0].line.down_wall_mm))
    spots: list[tuple[float, float, Beside, float]] = []
    waiting, s = list(order), start
    while True:
        column = _column(waiting)
        width = max(_spot_width(note) * flat.spread(middle) for note, middle in column)
        if s + width > end:
            break
        spots += [(s, s + width, note, middle) for note, middle in column]
        waiting = [each for each in waiting if each not in column]
        s += width + (_APART if waiting else _AGAIN)
        waiting = waiting or list(order)
    if len({id(note) for _, _, note, _ in spots}) < len(order):
        raise DoesNotFit("The weights do not fit around this scoop. Print the strip label instead.")
    return spots


def _column(waiting: Sequence[tuple[Beside, float]]) -> list[tuple[Beside, float]]:
    """The first that waits, and every other that is clear of those already in the column."""
    column: list[tuple[Beside, float]] = []
    for note, middle in waiting:
        apart = (abs(middle - there) for _, there in column)
        clear = (0.6 * (_tall(note) + _tall(one)) + _CLEAR for one, _ in column)
        if all(gap > least for gap, least in zip(apart, clear, strict=True)):
            column.append((note, middle))
    return column


def _spot_text(note: Beside) -> str:
    half = "½ · " if note.line.use is LineUse.HALF else ""
    return f"{half}{note.mass}{' ·' if note.line.several else ''}"


def _spot_width(note: Beside) -> float:
    more = _more_width(note)
    return width_mm(_spot_text(note), note.size, note.weight, True) + (more + 1.2 if note.more else 0.0) + 2.4


def _more_width(note: Beside) -> float:
    return max((width_mm(text, note.size * note.share, Weight.SEMIBOLD) for text in note.rows), default=0.0)


def _spot(flat: Unrolled, note: Beside, s_mm: float, d_mm: float) -> Iterator[Item]:
    width, size = _spot_width(note), note.size
    baseline = centre_baseline(0.0, size)
    items: list[Item] = [Text(_spot_text(note), 1.2, baseline, size, note.weight, figures=True)]
    x = 2.4 + width_mm(_spot_text(note), size, note.weight, True)
    beside_it = size * note.share
    for row, text in enumerate(note.rows):
        y = _LEADING * beside_it * (row - (len(note.rows) - 1) / 2)
        items.append(Text(text, x, centre_baseline(y, beside_it), beside_it, Weight.SEMIBOLD))
    yield from _flat(items, flat, s_mm, d_mm, width)


def _between(gaps: Sequence[tuple[float, float]], length: float) -> Iterator[tuple[float, float]]:
    at = 0.0
    for start, end in sorted(gaps):
        if start > at:
            yield at, start
        at = max(at, end)
    if at < length:
        yield at, length


def _outline(flat: Unrolled, depth: float, inner: float, edge: float) -> list[Item]:
    """The cut, and a dashed line to which the next end overlaps."""
    sheet = Sheet(0, 0)
    sheet.put(flat.stroke(depth, 0.0, flat.length_mm, 0.15))
    for s, dash in ((0.0, ()), (flat.length_mm, ()), (inner, (1.5, 1.2))):
        (x1, y1), (x2, y2) = flat.at(s, edge), flat.at(s, depth)
        sheet.rule(x1, y1, x2, y2, 0.15 if not dash else 0.3, dash_mm=dash)
    return list(sheet.page().items)
