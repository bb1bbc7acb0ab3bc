"""Many lots set pixel by pixel into a picture, which looks as if all had been drawn one by one."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PySide6.QtGui import QColor, QImage

Floats = NDArray[np.float64]
Whole = NDArray[np.intp]
DIAMOND_PX, RIM_PX = 6.5, 1.5


class DensePicture:
    """A picture of so many pixels, clear at first. Places are whole pixels; what lies outside is cut off."""

    def __init__(self, wide: int, tall: int) -> None:
        self.wide, self.tall = wide, tall
        self.pixels = np.zeros((tall, wide), dtype=np.uint32)

    def draw_bars(self, x: Whole, top: Whole, bottom: Whole, colour: str) -> None:
        """Upright bars; those of one column that overlap are drawn as one."""
        top, bottom = (np.clip(rows, 0, self.tall - 1) for rows in (top, bottom))
        argb = _argb(colour)
        for column, first, last in joined_bars(np.clip(x, 0, self.wide - 1), top, bottom):
            self.pixels[first : last + 1, column] = argb

    def draw_dots(self, x: Whole, y: Whole, colour: str) -> None:
        """Dots of two by two pixels."""
        self._stamp(x, y, np.array([(0, 0), (0, 1), (1, 0), (1, 1)]), colour)

    def draw_diamonds(self, x: Whole, y: Whole, scale: float, colour: str, rim: str) -> None:
        """Diamonds with a rim that sets them off."""
        half, inner = DIAMOND_PX * scale, (DIAMOND_PX - RIM_PX) * scale
        reach = int(half)
        off = np.array([(b, a) for b in range(-reach, reach + 1) for a in range(-reach, reach + 1)])
        away = np.abs(off).sum(axis=1)
        self._stamp(x, y, off[away <= half], rim)
        self._stamp(x, y, off[away <= inner], colour)

    def _stamp(self, x: Whole, y: Whole, off: Whole, colour: str) -> None:
        rows = np.clip(y[:, None] + off[:, 0], 0, self.tall - 1)
        self.pixels[rows, np.clip(x[:, None] + off[:, 1], 0, self.wide - 1)] = _argb(colour)

    def image(self, scale: float) -> QImage:
        """The picture for a screen with so many pixels to a point; it borrows the pixels."""
        shape = QImage.Format.Format_ARGB32_Premultiplied
        image = QImage(self.pixels.data, self.wide, self.tall, 4 * self.wide, shape)
        image.setDevicePixelRatio(scale)
        return image


def joined_bars(x: Whole, top: Whole, bottom: Whole) -> list[tuple[int, int, int]]:
    """Columns, first and last rows of bars, those joined that overlap; no two of one column touch."""
    if not len(x):
        return []
    far = int(bottom.max()) + 2
    order = np.argsort(x * far + top)
    starts, ends = (x * far + top)[order], np.maximum.accumulate((x * far + bottom)[order])
    first = np.flatnonzero(np.append(True, starts[1:] > ends[:-1] + 1))
    last = np.append(first[1:], len(starts)) - 1
    columns = x[order][first]
    rows = (starts[first] - columns * far).tolist(), (ends[last] - columns * far).tolist()
    return list(zip(columns.tolist(), *rows, strict=True))


def _argb(name: str) -> int:
    return int(QColor(name).rgba())
