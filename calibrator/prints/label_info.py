"""The words on a scoop label: lot, warning, scoop, dates, number."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from calibrator.prints import words
from calibrator.prints.fit import Fitted, fit_block, plain
from calibrator.prints.label_facts import ScoopLabel
from calibrator.prints.languages import Words
from calibrator.prints.lot_mark import LotMark, draw_lot, lay_lot
from calibrator.prints.page import BLACK, WHITE, Box, Item, Weight
from calibrator.prints.sheet import Sheet

_SMALL = 2.5
_NAME = 3.4
_TAIL, _HEAD, _HEAD_LEAST = 11.0, 5.4, 3.4
_LEADING = 1.18


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
class Info:
    """The words laid into a width."""

    width_mm: float
    before: tuple[_Part, ...]
    lot: LotMark
    after: tuple[_Part, ...]

    @property
    def height_mm(self) -> float:
        return sum(p.height_mm for p in (*self.before, *self.after)) + self.lot.height_mm


def lay_info(label: ScoopLabel, said: Words, width_mm: float, height_mm: float | None = None) -> Info:
    """Lay the words into a width; given a height too small for all, the least needed ones give way."""
    before = (_part([said.joined(words.LOT, " / ")], width_mm, _SMALL, Weight.BOLD),)
    lot = lay_lot(label.lot_number, width_mm, _TAIL, _HEAD, _HEAD_LEAST)
    after = tuple(_after(label, said, width_mm))
    info = Info(width_mm, before, lot, after)
    while height_mm is not None and info.height_mm > height_mm and len(info.after) > 1:
        info = Info(width_mm, before, lot, info.after[:-1])
    if height_mm is not None and info.height_mm > height_mm:
        scale = max(0.55, (height_mm - sum(p.height_mm for p in info.after) - 1.0) / (lot.height_mm + _SMALL))
        smaller = lay_lot(
            label.lot_number, width_mm, _TAIL * scale, _HEAD * scale, _HEAD_LEAST * min(1, scale)
        )
        info = Info(width_mm, (), smaller, info.after)
    return info


def _part(
    lines: list[str], width_mm: float, size_mm: float, weight: Weight, gap_mm: float = 0.5, most: int = 4
) -> _Part:
    room = most * size_mm * _LEADING
    return _Part(fit_block(lines, width_mm, room, size_mm, size_mm * 0.86, weight, _LEADING), weight, gap_mm)


def _after(label: ScoopLabel, said: Words, width_mm: float) -> Iterator[_Part]:
    only = fit_block(said.each(words.ONLY_THIS_LOT), width_mm - 2, 9.6, 3.1, 2.3, Weight.BOLD, _LEADING)
    yield _Part(only, Weight.BOLD, 0.4, reversed=True)
    name = said.each(lambda t: t(words.SCOOP_NAME).format(name=plain(label.scoop_name)))
    yield _part([name[0]], width_mm, _NAME, Weight.SEMIBOLD, 1.0, most=2)
    yield _part(list(_number(label, said)), width_mm, _SMALL, Weight.SEMIBOLD)
    yield _part(
        list(said.each(lambda t: t(words.WEIGHED_IN).format(date=t.date(label.weighed_in_on)))),
        width_mm,
        _SMALL,
        Weight.REGULAR,
    )
    for day, phrase in ((label.arrived_on, words.ARRIVED), (label.made_on, words.MADE)):
        if day is not None:
            yield _part([_dated(said, phrase, day)], width_mm, _SMALL, Weight.REGULAR, 0.2, most=2)


def _dated(said: Words, phrase: str, day: date) -> str:
    return said.joined(lambda t: t(phrase).format(date=t.date(day)))


def _number(label: ScoopLabel, said: Words) -> tuple[str, ...]:
    phrase = words.LABEL_NUMBER if label.replaces is None else words.LABEL_REPLACES
    return said.each(lambda t: t(phrase).format(number=label.number, old=label.replaces))


def info_items(info: Info) -> tuple[Item, ...]:
    """The items, the info's top left corner at the origin."""
    sheet = Sheet(info.width_mm, info.height_mm)
    top = 0.0
    for part in info.before:
        top = _draw(sheet, part, info.width_mm, top)
    top = draw_lot(sheet, info.lot, 0.0, top)
    for part in info.after:
        top = _draw(sheet, part, info.width_mm, top)
    return sheet.page().items


def _draw(sheet: Sheet, part: _Part, width_mm: float, top_mm: float) -> float:
    bottom = top_mm + part.height_mm
    top = top_mm + part.gap_mm
    if part.reversed:
        sheet.frame(Box(0, top, width_mm, bottom - top), None, BLACK)
    ink = WHITE if part.reversed else BLACK
    pad = 0.6 if part.reversed else 0.0
    sheet.lines(part.fitted, pad * 1.6, top + pad, part.weight, ink=ink, leading=_LEADING)
    return bottom
