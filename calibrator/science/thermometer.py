"""A thermometer's reading brought right by what it showed in ice water, with the doubt that stays."""

from __future__ import annotations

import math

from calibrator.science.guard import not_negative
from calibrator.science.stats import rounding_u, two_sided_t
from calibrator.values import dataclass

ICE_F, ICE_C = 32.0, 0.0
"""The ice point on the two scales."""

CHECKED_U_C = 0.3
"""How far the error found in ice water may differ from that of a warm mix: common practice, no source."""

UNCHECKED_U_C = 1.0
"""How far a kitchen or dial thermometer that was not checked may be off: common practice, no source."""

MEND_C = 2.0
"""A thermometer further off in ice water is adjusted or replaced: common practice, no source."""

UNKNOWN_DIVISION_C = 1.0


@dataclass(frozen=True)
class Thermometer:
    """The step of its scale, °C, and what it shows too much (`offset_c`); None where that was never found in
    ice water, `overdue` where it was long ago."""

    division_c: float = UNKNOWN_DIVISION_C
    offset_c: float | None = None
    overdue: bool = False


@dataclass(frozen=True)
class Warmth:
    """A temperature with the error of its thermometer taken off, and its standard uncertainty, both °C."""

    celsius: float
    u_c: float

    @property
    def half_width_c(self) -> float:
        """Half the 95 % interval, °C."""
        return two_sided_t(0.95, math.inf) * self.u_c


def ice_offset_c(expected: float, reading: float) -> float:
    """What a thermometer shows too much in ice water, °C.

    Both figures are of the thermometer's own scale: `expected` is 32 for one in Fahrenheit, 0 for one in
    Celsius.
    """
    return (reading - expected) * (1 / 1.8 if expected == ICE_F else 1.0)


def warmth(shown_c: float, thermometer: Thermometer) -> Warmth:
    """A reading with the ice water's error taken off, as one constant error of the scale.

    Rounding counts as d/√12 (JCGM 100:2008, F.2.2.1), once for the reading and once more for the check in ice.
    An overdue error is taken off all the same, but believed no more than none. Raises CannotCompute for a
    division below zero.
    """
    rounding = rounding_u(not_negative(thermometer.division_c, "The division of the scale"))
    if thermometer.offset_c is None:
        return Warmth(shown_c, math.hypot(rounding, UNCHECKED_U_C))
    kept = UNCHECKED_U_C if thermometer.overdue else CHECKED_U_C
    return Warmth(shown_c - thermometer.offset_c, math.hypot(rounding, rounding, kept))


def needs_mending(thermometer: Thermometer) -> bool:
    """Whether it is so far off that it is not to be trusted at all."""
    return thermometer.offset_c is not None and abs(thermometer.offset_c) > MEND_C
