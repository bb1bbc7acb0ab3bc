"""Many lots set pixel by pixel into a picture, which looks as if all had been drawn one by one."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PySide6.QtGui import QColor, QImage

Whole = NDArray[np.intp]
DIAMOND_PX, RIM_PX, MARGIN_PX = 6.5, 1.5, 48


class DensePicture:
    """A picture of so many pixels, clear at first. Places are whole pixels.

    About it lies a margin that is not shown, so that a sign half outside needs no cutting; what lies farther out is
    drawn there.
    """

    def __init__(self, wide: int, tall: int) -> None:
        self.wide, self.tall = wide, tall
        self._across = wide + 2 * MARGIN_PX
        self._whole = np.zeros((tall + 2 * MARGIN_PX, self._across), dtype=np.uint32)
        self._flat = self._whole.reshape(-1)
        self.pixels = self._whole[MARGIN_PX:-MARGIN_PX, MARGIN_PX:-MARGIN_PX]
        """What is shown."""

    def draw_bars(self, x: Whole, top: Whole, bottom: Whole, colour: str) -> None:
        """Upright bars; those of one column that overlap are drawn as one."""
        rows = (np.clip(ends, 0, self.tall - 1) for ends in (top, bottom))
        argb = _argb(colour)
        for column, first, last in joined_bars(np.clip(x, -1, self.wide), *rows).tolist():
            self._whole[first + MARGIN_PX : last + MARGIN_PX + 1, column + MARGIN_PX] = argb

    def draw_dots(self, x: Whole, y: Whole, colour: str) -> None:
        """Dots of two by two pixels."""
        self._stamp(x, y, np.array([(0, 0), (0, 1), (1, 0), (1, 1)]), colour)

    def draw_rings(self, x: Whole, y: Whole, colour: str, inside: str) -> None:
        """Squares of four by four pixels, hollow."""
        off = np.array([(b, a) for b in range(-1, 3) for a in range(-1, 3)])
        self._stamp(x, y, off, colour)
        self.draw_dots(x, y, inside)

    def draw_diamonds(self, x: Whole, y: Whole, scale: float, colour: str, rim: str) -> None:
        """Diamonds with a rim that sets them off."""
        half, inner = DIAMOND_PX * scale, (DIAMOND_PX - RIM_PX) * scale
        reach = int(half)
        off = np.array([(b, a) for b in range(-reach, reach + 1) for a in range(-reach, reach + 1)])
        away = np.abs(off).sum(axis=1)
        self._stamp(x, y, off[away <= half], rim)
        self._stamp(x, y, off[away <= inner], colour)

    def _place(self, x: Whole, y: Whole) -> Whole:
        return (y + MARGIN_PX) * self._across + x + MARGIN_PX

    def _stamp(self, x: Whole, y: Whole, off: Whole, colour: str) -> None:
        """One sign at each place; `off` are rows and columns from there, none farther than half the margin."""
        reach, argb = MARGIN_PX // 2, _argb(colour)
        places = self._place(np.clip(x, -reach, self.wide + reach - 1), np.clip(y, -reach, self.tall + reach - 1))
        for step in (off @ np.array([self._across, 1])).tolist():
            self._flat[places + step] = argb

    def image(self, scale: float) -> QImage:
        """The picture for a screen with so many pixels to a point; it borrows the pixels."""
        shape = QImage.Format.Format_ARGB32_Premultiplied
        begin = self._flat[MARGIN_PX * (self._across + 1) :]
        image = QImage(begin.data, self.wide, self.tall, 4 * self._across, shape)
        image.setDevicePixelRatio(scale)
        return image


def joined_bars(x: Whole, top: Whole, bottom: Whole) -> Whole:
    """Columns, first and last rows of bars, those joined that overlap; no two of one column touch."""
    if not len(x):
        return np.empty((0, 3), dtype=np.intp)
    far = int(bottom.max()) + 2
    packed = np.sort((x * far + top) * far + bottom)  # in one number: sorted far quicker than by their order
    columns, starts = packed // (far * far), packed // far
    ends = np.maximum.accumulate(columns * far + packed % far)
    first = np.flatnonzero(np.append(True, starts[1:] > ends[:-1] + 1))
    last = np.append(first[1:], len(starts)) - 1
    columns = columns[first]
    return np.column_stack((columns, starts[first] - columns * far, ends[last] - columns * far))


def _argb(name: str) -> int:
    return int(QColor(name).rgba())
