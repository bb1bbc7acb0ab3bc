"""The season's two drawings: densities over time with limits and intervals, and the spreads as bars."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from datetime import date, timedelta
from itertools import pairwise

from calibrator.model import SeasonLot, UnitSystem
from calibrator.prints.fit import cut_start, plain
from calibrator.prints.fonts import width_mm
from calibrator.prints.languages import Tongue
from calibrator.prints.page import BLACK, GREY, PALE, Anchor, Box, Shape, Weight, arc, polygon
from calibrator.prints.sheet import Sheet
from calibrator.science.lot_chart import FEWEST_FOR_LIMITS, Charted, LotChart
from calibrator.science.season_spread import open_above
from calibrator.units import density_unit, show_percent
from calibrator.values import dataclass

SMALL = 2.8
_LEFT, _FOOT, _TOP = 13.0, 7.0, 2.0
_STEPS = (0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5)
_OZ_QT_STEPS = (0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0)
_MOST_NAMES = 16
_SIDE = 5.0  # between the frame and the first lot
_BESIDE = 4.0  # between the dots of one day, where there is room
_MOST_SPREAD = 0.8  # of the way to the nearest other day
_NAME_MM = 24.0
_PIECE_MM = 2.0


@dataclass(frozen=True)
class _Scales:
    """From days and densities to places on the paper."""

    box: Box
    first: date
    days: float
    low: float
    high: float
    beside_mm: Mapping[str, float]  # from its day's place, by the sign-off of a lot

    def x_of(self, lot: SeasonLot) -> float:
        """Where a lot stands: those of one day beside each other, or one would hide another."""
        return self.x(lot.weighed_on) + self.beside_mm[lot.sign_off_id]

    def x(self, day: date) -> float:
        if not self.days:
            return self.box.x_mm + self.box.width_mm / 2
        inside = self.box.width_mm - 2 * _SIDE
        return self.box.x_mm + _SIDE + inside * (day - self.first).days / self.days

    def y(self, density_g_per_ml: float) -> float:
        return self.box.bottom_mm - self.box.height_mm * (density_g_per_ml - self.low) / (self.high - self.low)


def draw_densities(
    sheet: Sheet, room: Box, lots: Sequence[SeasonLot], chart: LotChart, units: UnitSystem, tongue: Tongue
) -> None:
    """Each lot at the day of its weigh-in; all are drawn, however many."""
    box = Box(room.x_mm + _LEFT, room.y_mm + _TOP, room.width_mm - _LEFT, room.height_mm - _TOP - _FOOT)
    scales = _scales(box, lots, chart)
    sheet.frame(box, 0.25)
    enough = len(lots) >= FEWEST_FOR_LIMITS
    if enough:
        _draw_limits(sheet, scales, lots, chart)
    _draw_levels(sheet, scales, units)
    _draw_months(sheet, scales, tongue)
    if enough:
        _draw_running(sheet, scales, lots, chart)
    for lot in lots:
        _draw_lot(sheet, scales, lot)
    _draw_marked(sheet, scales, lots, chart)


def _scales(box: Box, lots: Sequence[SeasonLot], chart: LotChart) -> _Scales:
    ends = [end for lot in lots for end in (lot.density_low_g_per_ml, lot.density_high_g_per_ml)]
    if len(lots) >= FEWEST_FOR_LIMITS:
        ends += [end for one in chart.lots for end in (one.low_g_per_ml, one.high_g_per_ml) if end is not None]
    low, high = min(ends), max(ends)
    pad = 0.08 * (high - low) or 0.01
    days = [lot.weighed_on for lot in lots]
    span = float((max(days) - min(days)).days)
    nearest = min((b - a).days for a, b in pairwise(sorted(set(days)))) if span else 1
    apart = (box.width_mm - 2 * _SIDE) * nearest / (span or 1.0)
    return _Scales(box, min(days), span, low - pad, high + pad, _beside(lots, apart))


def _beside(lots: Sequence[SeasonLot], apart_mm: float) -> dict[str, float]:
    """How far each lot stands from the place of its day; `apart_mm` lies between that and the nearest other day."""
    found: dict[str, float] = {}
    by_day: dict[date, list[str]] = {}
    for lot in lots:
        by_day.setdefault(lot.weighed_on, []).append(lot.sign_off_id)
    for own in by_day.values():
        step = min(_BESIDE, _MOST_SPREAD * min(apart_mm, 2 * _SIDE) / len(own))
        found |= {name: step * (place - (len(own) - 1) / 2) for place, name in enumerate(own)}
    return found


def _draw_limits(sheet: Sheet, scales: _Scales, lots: Sequence[SeasonLot], chart: LotChart) -> None:
    """A pale column for each lot, half-way to its neighbours of the same kind."""
    for kind in dict.fromkeys(one.kind for one in chart.lots):
        own = [(lot, one) for lot, one in zip(lots, chart.lots, strict=True) if one.kind == kind]
        xs = [scales.x_of(lot) for lot, _ in own]
        for place, (_, one) in enumerate(own):
            if one.low_g_per_ml is None or one.high_g_per_ml is None:
                continue
            left = (xs[place - 1] + xs[place]) / 2 if place else max(scales.box.x_mm, xs[place] - 2.5)
            right = (
                (xs[place] + xs[place + 1]) / 2 if place + 1 < len(xs) else min(scales.box.right_mm, xs[place] + 2.5)
            )
            top, bottom = scales.y(one.high_g_per_ml), scales.y(one.low_g_per_ml)
            corners = ((left, top), (right, top), (right, bottom), (left, bottom))
            sheet.put(Shape(polygon(corners), fill=PALE))
            middle = scales.y(one.middle_g_per_ml)
            sheet.rule(left, middle, right, middle, 0.15, GREY, (1.2, 0.9))


def _draw_levels(sheet: Sheet, scales: _Scales, units: UnitSystem) -> None:
    for value, told in _levels(scales, units):
        y = scales.y(value)
        sheet.rule(scales.box.x_mm - 1.2, y, scales.box.x_mm, y, 0.2)
        sheet.text(told, scales.box.x_mm - 1.8, y + 1.0, SMALL, anchor=Anchor.END)


def _levels(scales: _Scales, units: UnitSystem) -> list[tuple[float, str]]:
    if units is UnitSystem.METRIC:
        step = next((s for s in _STEPS if (scales.high - scales.low) / s <= 7), _STEPS[-1])
        first = math.ceil(scales.low / step)
        return [(n * step, f"{n * step:.3f}") for n in range(first, math.floor(scales.high / step) + 1)]
    _, per = density_unit(units)
    step = next((s for s in _OZ_QT_STEPS if (scales.high - scales.low) * per / s <= 7), _OZ_QT_STEPS[-1])
    first = math.ceil(scales.low * per / step)
    return [(n * step / per, f"{n * step:.1f}") for n in range(first, math.floor(scales.high * per / step) + 1)]


def _draw_months(sheet: Sheet, scales: _Scales, tongue: Tongue) -> None:
    """Ticks at the first of months, named as far as there is room."""
    last = scales.first + timedelta(days=scales.days)
    months = _firsts(scales.first, last)
    every = max(1, math.ceil(len(months) * 12.0 / scales.box.width_mm))
    for place, day in enumerate(months or [scales.first]):
        x = scales.x(day)
        sheet.rule(x, scales.box.bottom_mm, x, scales.box.bottom_mm + 1.2, 0.2)
        if place % every == 0:
            told = tongue.month(day) + (f" {day.year}" if day.month == 1 or place == 0 else "")
            half = width_mm(told, SMALL) / 2
            at = min(max(x, scales.box.x_mm + half), scales.box.right_mm - half)
            sheet.text(told, at, scales.box.bottom_mm + 4.6, SMALL, anchor=Anchor.MIDDLE)


def _firsts(first: date, last: date) -> list[date]:
    found, year, month = [], first.year, first.month
    while (day := date(year, month, 1)) <= last:
        if day >= first:
            found.append(day)
        year, month = (year + 1, 1) if month == 12 else (year, month + 1)
    return found


def _draw_running(sheet: Sheet, scales: _Scales, lots: Sequence[SeasonLot], chart: LotChart) -> None:
    for kind in dict.fromkeys(one.kind for one in chart.lots):
        told = zip(lots, chart.lots, strict=True)
        points = [(scales.x_of(lot), scales.y(one.running_g_per_ml)) for lot, one in told if one.kind == kind]
        if len(points) > 1:
            sheet.put(Shape(polygon(points, closed=False), stroke_mm=0.35, ink=GREY))


def _draw_lot(sheet: Sheet, scales: _Scales, lot: SeasonLot) -> None:
    x = scales.x_of(lot)
    sheet.rule(x, scales.y(lot.density_low_g_per_ml), x, scales.y(lot.density_high_g_per_ml), 0.3)
    sheet.put(Shape(arc(x, scales.y(lot.density_g_per_ml), 0.75, 0, 360), fill=BLACK))


def _draw_marked(sheet: Sheet, scales: _Scales, lots: Sequence[SeasonLot], chart: LotChart) -> None:
    """A ring round each marked lot; of few lots all are named, of many the marked ones, as far as there is room."""
    pairs = list(zip(lots, chart.lots, strict=True))
    marked = [(lot, one) for lot, one in pairs if one.rules]
    for lot, _ in marked:
        at = (scales.x_of(lot), scales.y(lot.density_g_per_ml))
        sheet.put(Shape(arc(*at, 1.7, 0, 360), stroke_mm=0.4))
    taken = [_bar_box(scales, lot) for lot in lots]
    lines = _line_boxes(scales, pairs)
    named = pairs if len(pairs) <= _MOST_NAMES else marked
    for lot, one in sorted(named, key=_unmarked_last)[-_MOST_NAMES:]:
        _name(sheet, scales, lot, one, taken, lines)


def _line_boxes(scales: _Scales, pairs: Sequence[tuple[SeasonLot, Charted]]) -> list[Box]:
    """The middles and the running means, in pieces."""
    found = []
    for kind in dict.fromkeys(one.kind for _, one in pairs):
        own = [(scales.x_of(lot), one) for lot, one in pairs if one.kind == kind]
        for (x1, a), (x2, b) in pairwise(own):
            for value1, value2 in (
                (a.running_g_per_ml, b.running_g_per_ml),
                (a.middle_g_per_ml, b.middle_g_per_ml),
            ):
                y1, y2 = scales.y(value1), scales.y(value2)
                steps = max(1, math.ceil((x2 - x1) / _PIECE_MM))
                for step in range(steps):
                    ys = [y1 + (y2 - y1) * at / steps for at in (step, step + 1)]
                    found.append(Box(x1 + (x2 - x1) * step / steps, min(ys), _PIECE_MM, abs(ys[1] - ys[0]) + 0.1))
    return found


def _bar_box(scales: _Scales, lot: SeasonLot) -> Box:
    top, bottom = scales.y(lot.density_high_g_per_ml), scales.y(lot.density_low_g_per_ml)
    return Box(scales.x_of(lot) - 0.7, top, 1.4, bottom - top)


def _unmarked_last(pair: tuple[SeasonLot, Charted]) -> bool:
    return not pair[1].rules


def _name(sheet: Sheet, scales: _Scales, lot: SeasonLot, one: Charted, taken: list[Box], lines: Sequence[Box]) -> None:
    """Clear of other names and bars, and of the lines where any place is."""
    weight = Weight.BOLD if one.rules else Weight.REGULAR
    told = cut_start(plain(lot.lot_number), _NAME_MM, SMALL, weight)
    wide = width_mm(told, SMALL, weight)
    x, y = scales.x_of(lot), scales.y(lot.density_g_per_ml)
    above = scales.y(lot.density_high_g_per_ml) - SMALL - 0.8
    below = scales.y(lot.density_low_g_per_ml) + 0.8
    sides = [(left, top) for left in (x + 1.2, x - 1.2 - wide) for top in (y - 3.4, y + 0.9)]
    over = [(left, top) for top in (above, below) for left in (x - wide / 2, x - 1.2, x + 1.2 - wide)]
    boxes = [Box(left, top, wide, SMALL) for left, top in (*sides, *over)]
    free = [box for box in boxes if _inside(box, scales.box) and not any(_meet(box, other) for other in taken)]
    clear = [box for box in free if not any(_meet(box, line) for line in lines)]
    for box in (clear or free)[:1]:
        taken.append(box)
        sheet.text(told, box.x_mm, box.bottom_mm - 0.4, SMALL, weight)


def _inside(box: Box, frame: Box) -> bool:
    across = frame.x_mm + 0.5 < box.x_mm and box.right_mm < frame.right_mm - 0.5
    return across and frame.y_mm < box.y_mm and box.bottom_mm < frame.bottom_mm


def _meet(a: Box, b: Box) -> bool:
    across = a.x_mm < b.right_mm and b.x_mm < a.right_mm
    return across and a.y_mm < b.bottom_mm and b.y_mm < a.bottom_mm


@dataclass(frozen=True)
class SpreadBar:
    """One spread as a share with its interval; None where it cannot be told."""

    name: str
    share: float | None
    interval: tuple[float, float] | None


ROW_MM = 7.0


_WIDEST = 2.5
"""Times the largest bar: an interval that goes farther would leave the bars themselves too short to compare."""


def draw_spreads(sheet: Sheet, room: Box, bars: Sequence[SpreadBar], unknown: str) -> None:
    """A bar for each spread, its interval as a line; a line that is too long ends at the edge with its figure told."""
    left = room.x_mm + max(width_mm(bar.name, 3.3) for bar in bars) + 4.0
    figures = 44.0
    largest = max([bar.share or 0.0 for bar in bars] + [1e-4])
    ends = [bar.interval[1] for bar in bars if bar.share and bar.interval]
    reach = min(max([1.6 * largest, *(1.05 * end for end in ends)]), _WIDEST * largest)
    width = room.right_mm - figures - left

    def across(share: float) -> float:
        return left + width * min(1.0, share / reach)

    for place, bar in enumerate(bars):
        middle = room.y_mm + ROW_MM * (place + 0.5)
        sheet.text(bar.name, room.x_mm, middle + 1.2, 3.3)
        if bar.share is None:
            sheet.text(unknown, left, middle + 1.2, 3.3)
            continue
        sheet.frame(Box(left, middle - 1.8, max(0.3, across(bar.share) - left), 3.6), None, 0.7)
        if bar.interval is not None:
            low, high = bar.interval
            sheet.rule(across(low), middle, across(high), middle, 0.4)
            for end in (low, high):
                if end < reach:
                    sheet.rule(across(end), middle - 1.2, across(end), middle + 1.2, 0.4)
        sheet.text(_figures(bar), room.right_mm, middle + 1.2, 3.3, Weight.SEMIBOLD, Anchor.END)


def _figures(bar: SpreadBar) -> str:
    told = show_percent(100 * (bar.share or 0.0), 1)
    if bar.interval is None:
        return told
    low, high = (show_percent(100 * end, 1) for end in bar.interval)
    if open_above(bar.share or 0.0, bar.interval):
        return f"{told} (≥ {low})"
    return f"{told} ({low} – {high})"
