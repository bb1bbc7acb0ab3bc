"""A smooth rising curve through poured steps, and its safe inverse.

Piecewise cubic Hermite interpolation that keeps the data's rise (Fritsch and Carlson 1980, SIAM J. Numer.
Anal. 17:238; slopes as Fritsch and Butland 1984, SIAM J. Sci. Stat. Comput. 5:300). Written out here, and
checked against a reference library, because loading that library costs more than the whole science room.
"""

from __future__ import annotations

from bisect import bisect_right
from itertools import pairwise

from calibrator.values import dataclass

_LEAST_RIM_SLOPE = 0.1  # of the last step's own, so that the inverse stays sharp at the rim


@dataclass(frozen=True)
class RisingCurve:
    """y over x through knots that rise in both; `slopes` are dy/dx at the knots."""

    x: tuple[float, ...]
    y: tuple[float, ...]
    slopes: tuple[float, ...]

    def _piece(self, knots: tuple[float, ...], at: float) -> int:
        return min(max(bisect_right(knots, at) - 1, 0), len(knots) - 2)

    def _rise(self, piece: int, dx: float) -> float:
        """y above the piece's first knot at `dx` beyond it."""
        width = self.x[piece + 1] - self.x[piece]
        secant = (self.y[piece + 1] - self.y[piece]) / width
        first, last = self.slopes[piece], self.slopes[piece + 1]
        square = (3 * secant - 2 * first - last) / width
        cube = (first + last - 2 * secant) / width**2
        return dx * (first + dx * (square + dx * cube))

    def value(self, at: float) -> float:
        piece = self._piece(self.x, at)
        return self.y[piece] + self._rise(piece, at - self.x[piece])

    def slope(self, at: float) -> float:
        piece = self._piece(self.x, at)
        width = self.x[piece + 1] - self.x[piece]
        secant = (self.y[piece + 1] - self.y[piece]) / width
        first, last = self.slopes[piece], self.slopes[piece + 1]
        t = (at - self.x[piece]) / width
        return first * (1 - t) * (1 - 3 * t) + last * t * (3 * t - 2) + 6 * secant * t * (1 - t)

    def inverse(self, y: float) -> float:
        """x where the curve is `y`: halving within one piece, down to the last bit."""
        piece = self._piece(self.y, y)
        wanted, low, high = y - self.y[piece], 0.0, self.x[piece + 1] - self.x[piece]
        middle = high / 2
        while low < middle < high:
            low, high = (middle, high) if self._rise(piece, middle) < wanted else (low, middle)
            middle = low + (high - low) / 2
        return self.x[piece] + high


def _inner_slope(width_1: float, width_2: float, secant_1: float, secant_2: float) -> float:
    weight_1, weight_2 = 2 * width_2 + width_1, width_2 + 2 * width_1
    return (weight_1 + weight_2) / (weight_1 / secant_1 + weight_2 / secant_2)


def _end_slope(width: float, next_width: float, secant: float, next_secant: float, least: float) -> float:
    slope = ((2 * width + next_width) * secant - width * next_secant) / (width + next_width)
    return max(slope, least * secant)


def rising_curve(x: tuple[float, ...], y: tuple[float, ...]) -> RisingCurve:
    """The curve through points that rise strictly in both; two points give a straight line."""
    widths = [b - a for a, b in pairwise(x)]
    secants = [(b - a) / width for (a, b), width in zip(pairwise(y), widths, strict=True)]
    if len(widths) == 1:
        return RisingCurve(x, y, (secants[0], secants[0]))
    inner = [_inner_slope(*w, *s) for w, s in zip(pairwise(widths), pairwise(secants), strict=True)]
    floor = _end_slope(widths[0], widths[1], secants[0], secants[1], 0.0)
    rim = _end_slope(widths[-1], widths[-2], secants[-1], secants[-2], _LEAST_RIM_SLOPE)
    return RisingCurve(x, y, (floor, *inner, rim))
