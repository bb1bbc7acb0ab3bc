"""The words on a scoop label: lot, warning, number, dates, the scoop's name."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import date
from functools import cache, cached_property

from calibrator.model import UnitSystem
from calibrator.prints import fonts, words
from calibrator.prints.fit import Fitted, fit_block, plain
from calibrator.prints.label_facts import LabelLine, LabelSheet, LineCount, ScoopLabel
from calibrator.prints.languages import Tongue, Words
from calibrator.prints.lot_mark import LotMark, draw_lot, lay_lot
from calibrator.prints.page import BLACK, WHITE, Box, Item, Weight
from calibrator.prints.place import moved
from calibrator.prints.sheet import Sheet
from calibrator.units import line_in_both, show_mass
from calibrator.values import dataclass

_SMALL, _NAME, _ONLY = 2.6, 3.4, 3.3
_LOT_LEAST = 2.2
_LEADING = 1.18
_BETWEEN = 3.0
_EDGE_MM = 3.6
_EDGE_WITH_WORDS_MM = 2.0
_ONE_COLUMN: tuple[float, ...] = (34.0, 38.0, 43.0, 49.0, 56.0, 64.0, 74.0, 86.0, 98.0)
_TWO_COLUMNS = ((34.0, 30.0), (40.0, 34.0), (50.0, 38.0), (62.0, 42.0))
_NO_BREAK = "\N{NO-BREAK SPACE}"
_SCALES = (1.5, 1.25, 1.0, 0.9, 0.8, 0.7)
_AMPLE = 0.5  # share of the room that words larger than needed may take
_MOST_PARTS = 11
_FEWEST_PARTS = 2  # the warning and the number stay, whatever else has to go


@dataclass(frozen=True)
class _LotType:
    """Sizes of a lot number on one line and on several, the least, and on how many lines it may stand."""

    alone_mm: float
    several_mm: float
    least_mm: float
    lines: int


_USUAL = _LotType(10.5, 5.2, 3.2, 3)
_SMALLER = _LotType(7.0, 3.2, _LOT_LEAST, 6)


@dataclass(frozen=True)
class _Part:
    """Lines of one size; `reversed` is white on black."""

    fitted: Fitted
    weight: Weight
    gap_mm: float
    reversed: bool = False

    @property
    def height_mm(self) -> float:
        return self.gap_mm + len(self.fitted.lines) * self.fitted.size_mm * _LEADING + 1.2 * self.reversed


@dataclass(frozen=True)
class _Told:
    """What a part says and how, before it is laid out; the size as it is at a scale of 1."""

    lines: tuple[str, ...]
    size_mm: float
    weight: Weight
    gap_mm: float
    most_lines: int = 4

    def laid(self, width_mm: float, scale: float) -> _Part:
        return _part(self.lines, width_mm, self.size_mm * scale, self.weight, self.gap_mm, self.most_lines)


@dataclass(frozen=True)
class _Column:
    """Parts below each other, the lot number above them where there is one."""

    width_mm: float
    head: _Part | None
    lot: LotMark | None
    parts: tuple[_Part, ...]

    @property
    def height_mm(self) -> float:
        head = self.head.height_mm if self.head else 0.0
        return head + (self.lot.height_mm if self.lot else 0.0) + sum(part.height_mm for part in self.parts)


@dataclass(frozen=True)
class Info:
    """The words laid out in one column or two."""

    columns: tuple[_Column, ...]

    @property
    def width_mm(self) -> float:
        return sum(c.width_mm for c in self.columns) + _BETWEEN * (len(self.columns) - 1)

    @cached_property
    def height_mm(self) -> float:
        return max(column.height_mm for column in self.columns)

    @property
    def bears_lot(self) -> bool:
        """Whether the lot number stands there whole."""
        return all(column.lot is None or column.lot.whole for column in self.columns)

    def items(self) -> tuple[Item, ...]:
        """The items, the top left corner at the origin."""
        x = 0.0
        placed: list[Item] = []
        for column in self.columns:
            placed += moved(_column_items(column), x, 0.0)
            x += column.width_mm + _BETWEEN
        return tuple(placed)


def lay_info(
    label: ScoopLabel,
    facts: LabelSheet,
    said: Words,
    width_mm: float,
    height_mm: float,
    piece: tuple[int, int] = (1, 1),
) -> Info | None:
    """The narrowest words that keep within a width and a height; smaller, then fewer, where they must be.

    A lot number loses its beginning only where it fits whole in no way. None where not even lot, warning and number
    fit.
    """

    told = tuple(_others(label, facts, said, piece))

    # Neither the lot number's type nor how many parts are kept changes any of these.
    @cache
    def others(rest_mm: float, scale: float) -> tuple[_Part, ...]:
        return tuple(one.laid(rest_mm, scale) for one in told)

    @cache
    def first(first_mm: float, scale: float) -> tuple[_Part, _Part]:
        head = _part(_head(label, said), first_mm, _SMALL * scale, Weight.BOLD, 0.0)
        return head, _only(said, first_mm, scale)

    @cache
    def mark(lot: _LotType, first_mm: float, scale: float) -> LotMark:
        least = max(lot.least_mm * scale, _LOT_LEAST)
        return lay_lot(label.lot_number, first_mm, lot.alone_mm * scale, lot.several_mm * scale, least, lot.lines)

    for lot, whole in ((_USUAL, True), (_SMALLER, True), (_USUAL, False), (replace(_USUAL, lines=1), False)):
        for kept in range(_MOST_PARTS, _FEWEST_PARTS + bool(label.counts) + label.medicated - 1, -1):
            for scale in _SCALES:
                for widths in _arrangements(width_mm, scale):
                    rest = others(widths[-1], scale)[: kept - 1]
                    info = _arranged(widths, first(widths[0], scale), mark(lot, widths[0], scale), rest)
                    if info.height_mm <= height_mm and (info.bears_lot or not whole):
                        return info
    return None


def _arrangements(width_mm: float, scale: float) -> list[tuple[float, ...]]:
    """One or two columns, the narrowest first; the full width where all are too wide."""
    large, room = max(1.0, scale), width_mm * (_AMPLE if scale > 1 else 1.0)
    chosen = [(large * one,) for one in _ONE_COLUMN] + [(large * a, large * b) for a, b in _TWO_COLUMNS]
    fitting = [widths for widths in chosen if sum(widths) + _BETWEEN * (len(widths) - 1) <= room]
    return sorted(fitting, key=sum) or ([(width_mm,)] if scale <= 1 else [])


def _arranged(widths: tuple[float, ...], first: tuple[_Part, _Part], mark: LotMark, others: tuple[_Part, ...]) -> Info:
    head, only = first
    if len(widths) == 1:
        return Info((_Column(widths[0], head, mark, (only, *others)),))
    return Info((_Column(widths[0], head, mark, (only,)), _Column(widths[1], None, None, others)))


def edge_height_mm(label: ScoopLabel) -> float:
    """How broad the black edge at the rim may be before it comes near the first line."""
    return min([_EDGE_MM, *(0.55 * line.down_wall_mm for line in label.lines if not line.struck_level)])


def words_in_edge(edge_mm: float) -> bool:
    """Whether the black edge is broad enough to say in it what it is; else it is said beneath."""
    return edge_mm >= _EDGE_WITH_WORDS_MM


def _head(label: ScoopLabel, said: Words) -> tuple[str, ...]:
    lot = said.joined(words.LOT, " / ")
    return (lot,) if words_in_edge(edge_height_mm(label)) else (said.joined(words.RIM_EDGE, " / "), lot)


def _part(
    lines: Sequence[str],
    width_mm: float,
    size_mm: float,
    weight: Weight,
    gap_mm: float = 0.5,
    most: int = 4,
    least: float = 0.86,
) -> _Part:
    room = most * size_mm * _LEADING
    return _Part(fit_block(lines, width_mm, room, size_mm, size_mm * least, weight, _LEADING), weight, gap_mm)


def _only(said: Words, width_mm: float, scale: float) -> _Part:
    size = _ONLY * scale
    told: tuple[str, ...] = (said.joined(words.ONLY_THIS_LOT),)
    if fonts.width_mm(told[0], size, Weight.BOLD) > width_mm - 2.0:
        told = said.each(words.ONLY_THIS_LOT)
    room = len(told) * size * _LEADING
    fitted = fit_block(told, width_mm - 2.0, room, size, size * 0.7, Weight.BOLD, _LEADING)
    return _Part(fitted, Weight.BOLD, 0.4, reversed=True)


def _others(label: ScoopLabel, facts: LabelSheet, said: Words, piece: tuple[int, int]) -> Iterator[_Told]:
    """In the order of their use; the last ones go first where room is short."""
    if label.counts:
        counted = tuple(text for count in label.counts for text in _counted(count, facts, said))
        yield _Told(counted, _NAME, Weight.BOLD, 0.8, 12)
    if label.medicated:
        yield _Told(said.each(words.MEDICATED_POWDER), _SMALL, Weight.BOLD, 0.8)
    yield _Told(_number(label, said, piece), _SMALL, Weight.SEMIBOLD, 0.8)
    yield _Told(_dated(said, words.WEIGHED_IN, label.weighed_in_on), _SMALL, Weight.SEMIBOLD, 0.3)
    yield _Told(_below_rim(label, facts, said), _SMALL, Weight.SEMIBOLD, 0.3, 9)
    yield _Told((_scoop_name(label, said),), _NAME, Weight.SEMIBOLD, 0.7)
    if not all(line.struck_level for line in label.lines):
        yield _Told(said.each(words.ONE_SHAKE), _SMALL, Weight.SEMIBOLD, 0.3)
    if any(line.reckoned for line in label.lines):
        yield _Told(said.each(words.RECKONED), _SMALL, Weight.SEMIBOLD, 0.3)
    for day, phrase in ((label.arrived_on, words.ARRIVED), (label.made_on, words.MADE)):
        if day is not None:
            yield _Told(_dated(said, phrase, day), _SMALL, Weight.REGULAR, 0.3)


def _counted(count: LineCount, facts: LabelSheet, said: Words) -> tuple[str, ...]:
    """A feeding that has no line of its own, as scoopfuls to those that the label bears."""
    mass = _held(show_mass(count.target_mass_g, facts.units, resolution_g=facts.resolution_g))
    phrase = words.COUNT_TO_LINE_AND_HALF if count.to_half else words.COUNT_TO_LINE
    told = said.each(lambda t: t(phrase).format(mass=mass, count=count.to_main))
    return tuple(_parted_at_plus(text) for text in told)


def _parted_at_plus(text: str) -> str:
    """What is added goes to the next line whole."""
    first, plus, added = text.partition(" + ")
    return f"{first} +{_NO_BREAK}{_held(added)}" if plus else first


def _dated(said: Words, phrase: str, day: date) -> tuple[str, ...]:
    return said.each(lambda t: t(phrase).format(date=t.date(day)))


def _below_rim(label: ScoopLabel, facts: LabelSheet, said: Words) -> tuple[str, ...]:
    """How far below the rim each line is, for a check with a ruler once the label is stuck on."""
    lines = sorted((one for one in label.lines if not one.struck_level), key=lambda line: line.down_wall_mm)
    if not lines:
        return (said.joined(words.STRUCK_LEVEL, " / "),)
    if len(lines) == 1:
        return (said.joined(lambda t: t(words.LINE_BELOW_RIM).format(length=_length(lines[0], facts.units, t)), " / "),)
    told = (
        f"{_held(show_mass(one.held_g, facts.units, resolution_g=facts.resolution_g))}:"
        f"{_NO_BREAK}{_length(one, facts.units, said.tongues[0])}"
        for one in lines
    )
    return (f"{said.joined(words.LINES_BELOW_RIM, ' / ')}: {', '.join(told)}",)


def _length(line: LabelLine, units: UnitSystem, tongue: Tongue) -> str:
    own, metric = (_held(tongue.ruler(told)) for told in line_in_both(line.down_wall_mm, units))
    return own if units is UnitSystem.METRIC else f"{own} ({metric})"


def _held(text: str) -> str:
    """A figure and its unit are not parted at the end of a line."""
    return text.replace(" ", _NO_BREAK)


def _scoop_name(label: ScoopLabel, said: Words) -> str:
    """The name alone where it begins with the word itself: no "Scoop: Scoop 1 quart"."""
    name, phrase = plain(label.scoop_name), said.tongues[0](words.SCOOP_NAME)
    word = phrase.partition(":")[0]
    return name if name.casefold().startswith(word.casefold()) else phrase.format(name=name)


def _number(label: ScoopLabel, said: Words, piece: tuple[int, int]) -> tuple[str, ...]:
    phrase = words.SHEET_NUMBER if label.replaces is None else words.LABEL_REPLACES
    told = said.each(lambda t: t(phrase).format(number=label.number, old=label.replaces))
    if piece[1] == 1:
        return told
    return told + said.each(lambda t: t(words.PIECE_OF).format(piece=piece[0], pieces=piece[1]))


def _column_items(column: _Column) -> tuple[Item, ...]:
    sheet = Sheet(column.width_mm, column.height_mm)
    top = _draw(sheet, column.head, column.width_mm, 0.0) if column.head else 0.0
    top = draw_lot(sheet, column.lot, 0.0, top) if column.lot else top
    for part in column.parts:
        top = _draw(sheet, part, column.width_mm, top)
    return sheet.page().items


def _draw(sheet: Sheet, part: _Part, width_mm: float, top_mm: float) -> float:
    bottom, top = top_mm + part.height_mm, top_mm + part.gap_mm
    if part.reversed:
        sheet.frame(Box(0, top, width_mm, bottom - top), None, BLACK)
    pad = 0.6 if part.reversed else 0.0
    ink = WHITE if part.reversed else BLACK
    sheet.lines(part.fitted, pad * 1.6, top + pad, part.weight, ink=ink, leading=_LEADING)
    return bottom
