"""Making text fit the room it has: cleaned, shrunk, wrapped or cut short, and never beyond its box."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from functools import lru_cache

from calibrator.model.names import tame
from calibrator.prints.fonts import width_mm
from calibrator.prints.page import Weight
from calibrator.units import with_units_bound
from calibrator.values import dataclass

_ELLIPSIS = "…"
_HELD = "\u00a0"
_STEPS = 24


@lru_cache(maxsize=4096)
def plain(text: str) -> str:
    """A name as it may stand on paper: one line, without control, direction or stacked combining characters."""
    return " ".join(tame(text).split())


def cut_end(text: str, room_mm: float, size_mm: float, weight: Weight = Weight.REGULAR) -> str:
    """The text, or as much of its beginning as fits with an ellipsis."""
    if width_mm(text, size_mm, weight) <= room_mm:
        return text
    kept = _most(len(text), lambda n: width_mm(text[:n].rstrip() + _ELLIPSIS, size_mm, weight) <= room_mm)
    return text[:kept].rstrip() + _ELLIPSIS if kept else ""


def cut_start(text: str, room_mm: float, size_mm: float, weight: Weight = Weight.REGULAR) -> str:
    """The text, or as much of its end as fits after an ellipsis: a lot number is told apart by its end."""
    if width_mm(text, size_mm, weight) <= room_mm:
        return text
    kept = _most(len(text), lambda n: width_mm(_ELLIPSIS + text[-n:], size_mm, weight) <= room_mm)
    return _ELLIPSIS + text[-kept:] if kept else ""


def _most(count: int, fits: Callable[[int], bool]) -> int:
    """The most characters that fit, 0 for none. Longer ones are tried from one upwards, twice as many each time.

    A name without an end costs as much as it takes room, not the square of its length.
    """
    high = 1
    while high <= count and fits(high):
        high *= 2
    low, high = high // 2, min(high, count + 1)
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (middle, high) if fits(middle) else (low, middle)
    return low


def _pieces(word: str, room_mm: float, size_mm: float, weight: Weight) -> list[str]:
    """A word that is wider than the line, broken where it must be."""
    if word and width_mm(word, size_mm, weight) <= room_mm:
        return [word]  # nearly every word: looking for the place to break it is half the time of laying out a label
    pieces, rest = [], word
    while rest:
        cut = max(1, _most(len(rest), _Fits(rest, room_mm, size_mm, weight)))
        held = rest.rfind(_HELD, 1, cut + 1) if cut < len(rest) else -1  # a figure goes before its letters do
        pieces.append(rest[: held if held > 0 else cut])
        rest = rest[held + 1 if held > 0 else cut :]
    return pieces


@dataclass(frozen=True)
class _Fits:
    """Whether so many characters of a text fit the room."""

    text: str
    room_mm: float
    size_mm: float
    weight: Weight

    def __call__(self, count: int) -> bool:
        return width_mm(self.text[:count], self.size_mm, self.weight) <= self.room_mm


def wrap(text: str, room_mm: float, size_mm: float, weight: Weight = Weight.REGULAR) -> list[str]:
    """The text in lines no wider than the room; a no-break space holds, and so does a number with its unit.

    Where a line breaks, the dot between two parts is left out: it would hang at the line's end as if more were missing.
    """
    return list(_wrapped(text, room_mm, size_mm, weight))


@lru_cache(maxsize=8192)  # the same words are tried again in each way to lay out a label or a chart
def _wrapped(text: str, room_mm: float, size_mm: float, weight: Weight) -> tuple[str, ...]:
    lines: list[str] = []
    for word in re.split(r"[ \n]+", with_units_bound(text.strip())):
        joined = f"{lines[-1]} {word}" if lines else word
        if lines and width_mm(joined, size_mm, weight) <= room_mm:
            lines[-1] = joined
        else:
            lines.extend(_pieces(word, room_mm, size_mm, weight))
    lines = [*(line.removesuffix(" ·") for line in lines[:-1]), *lines[-1:]]
    return tuple(lines if _HELD in text else [line.replace(_HELD, " ") for line in lines])


@lru_cache(maxsize=4096)
def two_lines_mm(text: str, size_mm: float, weight: Weight = Weight.REGULAR) -> float:
    """The least room in which `wrap` takes two lines for it, or one."""
    words = re.split(r"[ \n]+", with_units_bound(text.strip()))
    parted = ((" ".join(words[:number]), " ".join(words[number:])) for number in range(1, len(words) + 1))
    return min(max(width_mm(line, size_mm, weight) for line in lines) for lines in parted) * (1 + 1e-9)


@dataclass(frozen=True)
class Fitted:
    """Lines and the one size at which they fit."""

    lines: tuple[str, ...]
    size_mm: float

    @property
    def text(self) -> str:
        return " ".join(self.lines)


def sizes(largest_mm: float, least_mm: float) -> list[float]:
    """Sizes to try, from the largest down."""
    step = (largest_mm - least_mm) / _STEPS
    return [largest_mm - i * step for i in range(_STEPS + 1)] if step > 0 else [largest_mm]


def fit_line(text: str, room_mm: float, largest_mm: float, least_mm: float, weight: Weight = Weight.REGULAR) -> Fitted:
    """One line at the largest size that fits; cut short where even the least does not."""
    natural = width_mm(text, 1.0, weight)
    size = min(largest_mm, room_mm / natural * (1 - 1e-6)) if natural > 0 else largest_mm
    if size >= least_mm:
        return Fitted((text,), size)
    return Fitted((cut_end(text, room_mm, least_mm, weight),), least_mm)


def fit_block(
    paragraphs: Sequence[str],
    room_mm: float,
    height_mm: float,
    largest_mm: float,
    least_mm: float,
    weight: Weight = Weight.REGULAR,
    leading: float = 1.2,
) -> Fitted:
    """Paragraphs wrapped at the largest size whose lines fit the height.

    At the least size what is too much is cut off with an ellipsis.
    """
    for size in sizes(largest_mm, least_mm):
        lines = [line for text in paragraphs for line in wrap(text, room_mm, size, weight)]
        if len(lines) * size * leading <= height_mm + 1e-9:
            return Fitted(tuple(lines), size)
    most = max(1, int(height_mm / (least_mm * leading) + 1e-9))
    if len(lines) > most:
        last = lines[most - 1] + _ELLIPSIS
        lines = [*lines[: most - 1], cut_end(last, room_mm, least_mm, weight) or _ELLIPSIS]
    return Fitted(tuple(lines), least_mm)
