"""From drops on a refractometer to a °Brix with its doubts, and what the instrument's own checks say of it."""

from __future__ import annotations

import math
from collections.abc import Sequence
from enum import StrEnum

from calibrator.science.errors import CannotCompute
from calibrator.science.guard import between, not_negative, positive
from calibrator.science.stats import mean_of, rounding_u, sum_of_squares
from calibrator.science.sucrose import HIGHEST_BRIX, temperature_correction_brix
from calibrator.values import dataclass

DROP_SD_BRIX = 0.2
DROP_DF = 6.0
"""Drops of one pail are taken to spread so, worth as much as seven drops: common practice, no source."""

ZERO_DAYS, KNOWN_DAYS = 7, 90
"""How long a check in water and one in a known solution hold: common practice, no source."""

FRESH_ZERO_U, STALE_ZERO_U = 0.06, 0.25
"""Doubt in the zero after a check that still holds, and without one: common practice, no source."""

UNCHECKED_SCALE_U = 0.15
"""Doubt in the scale near 12 °Brix without a known solution: common practice, no source."""

KNOWN_U_BRIX = 0.12
"""Doubt in a known solution weighed on a kitchen scale, at most 0.21: common practice, no source."""

SCALE_OFF_BRIX = 0.4
"""A known solution read further off than this: mend the instrument first. Common practice, no source."""

CORRECTION_U_SHARE = 0.10


class Doubt(StrEnum):
    """What has to be told beside a verdict."""

    NEVER_ZEROED = "never_zeroed"
    ZERO_OVERDUE = "zero_overdue"
    NO_KNOWN_SOLUTION = "no_known_solution"
    KNOWN_OVERDUE = "known_overdue"
    SCALE_OFF = "scale_off"
    TEMPERATURE_UNKNOWN = "temperature_unknown"
    ZERO_TEMPERATURE_UNKNOWN = "zero_temperature_unknown"
    OUT_OF_REACH = "out_of_reach"
    ADDITIVES = "additives"


@dataclass(frozen=True)
class Checked:
    """One check of an instrument: what it should have shown, what it showed, its temperature, days ago."""

    expected: float
    reading: float
    days_ago: float
    temperature_c: float | None = None


@dataclass(frozen=True)
class Refractometer:
    """What is known of it: the division of its scale in °Brix, compensation, the newest checks."""

    division_brix: float
    compensated: bool = True
    water: Checked | None = None
    known: Checked | None = None


@dataclass(frozen=True)
class Brix:
    """A °Brix at 20 °C, zero taken off. Standard uncertainties apart: `drop_sd` of a single drop with
    `drop_df`, of zero, of scale, of temperature; `scale` cancels in a line made with the same instrument."""

    value: float
    drops: int
    drop_sd: float
    drop_df: float
    zero_u: float
    scale_u: float
    temperature_u: float
    doubts: tuple[Doubt, ...] = ()

    @property
    def mean_u(self) -> float:
        """Standard uncertainty of the mean of the drops by their spread alone."""
        return self.drop_sd / math.sqrt(self.drops)

    @property
    def zero_and_temperature_u(self) -> float:
        return math.hypot(self.zero_u, self.temperature_u)

    @property
    def u(self) -> float:
        """All of it together."""
        return math.hypot(self.mean_u, self.zero_u, self.scale_u, self.temperature_u)


def _plausible(readings: Sequence[float]) -> list[float]:
    if not readings:
        raise CannotCompute("Read one drop at least.")
    return [between(r, -1.0, HIGHEST_BRIX, "A Brix reading", "−1 and 32") for r in readings]


def drop_spread(readings: Sequence[float], division_brix: float) -> tuple[float, float]:
    """Spread of a single drop in °Brix and its degrees of freedom.

    The drops' own sum of squares joined with the assumed spread (`DROP_SD_BRIX` worth `DROP_DF` degrees of
    freedom), never below the rounding to the division, d/√12.
    """
    df = DROP_DF + len(readings) - 1
    squares = DROP_DF * DROP_SD_BRIX**2 + sum_of_squares(readings)
    floor = rounding_u(positive(division_brix, "The division of the scale"))
    return max(math.sqrt(squares / df), floor), df


def _at_20(instrument: Refractometer, shown: float, temperature_c: float | None) -> tuple[float, float]:
    """A reading brought to 20 °C with the zero taken off, and its standard uncertainty by temperature, °Brix.

    A prism without compensation of which only one temperature is told, here or in plain water, is taken to have been as
    warm at both, so that the zero takes the temperature's part along; that part is then doubt (rectangular). Raises
    CannotCompute for a temperature outside 5 … 40 °C.
    """
    water = instrument.water
    zeroed = shown - (water.reading - water.expected) if water else shown
    if instrument.compensated:
        return zeroed, 0.0
    here = None if temperature_c is None else temperature_correction_brix(temperature_c)
    if water is None:
        return (zeroed, STALE_ZERO_U) if here is None else (zeroed + here, CORRECTION_U_SHARE * abs(here))
    there = None if water.temperature_c is None else temperature_correction_brix(water.temperature_c)
    if here is None or there is None:
        return zeroed, math.hypot(STALE_ZERO_U, (here or there or 0.0) / math.sqrt(3.0))
    return zeroed + here - there, CORRECTION_U_SHARE * abs(here)


def _zero(instrument: Refractometer) -> tuple[float, list[Doubt]]:
    """Standard uncertainty of the zero, and what it has to be doubted for."""
    water = instrument.water
    if water is None:
        return STALE_ZERO_U, [Doubt.NEVER_ZEROED]
    overdue = not_negative(water.days_ago, "The age of a check") > ZERO_DAYS
    u = math.hypot(STALE_ZERO_U if overdue else FRESH_ZERO_U, rounding_u(instrument.division_brix))
    untold = not instrument.compensated and water.temperature_c is None
    return u, [Doubt.ZERO_OVERDUE] if overdue else [Doubt.ZERO_TEMPERATURE_UNKNOWN] if untold else []


def scale_error_brix(instrument: Refractometer) -> float | None:
    """How far off a known solution was read, the zero taken off, °Brix; None without such a check."""
    known = instrument.known
    return None if known is None else _at_20(instrument, known.reading, known.temperature_c)[0] - known.expected


def _scale(instrument: Refractometer, value: float) -> tuple[float, list[Doubt]]:
    known, error = instrument.known, scale_error_brix(instrument)
    if known is None or error is None:
        return UNCHECKED_SCALE_U, [Doubt.NO_KNOWN_SOLUTION]
    doubts = [Doubt.KNOWN_OVERDUE] if known.days_ago > KNOWN_DAYS else []
    if abs(error) > SCALE_OFF_BRIX:
        doubts.append(Doubt.SCALE_OFF)
    share = max(0.0, value) / positive(known.expected, "The Brix of the known solution")
    temperature_u = _at_20(instrument, known.reading, known.temperature_c)[1]
    hidden = math.hypot(error / math.sqrt(3.0), rounding_u(instrument.division_brix), KNOWN_U_BRIX, temperature_u)
    return (max(hidden, UNCHECKED_SCALE_U) if known.days_ago > KNOWN_DAYS else hidden) * share, doubts


def brix(readings: Sequence[float], instrument: Refractometer, temperature_c: float | None = None) -> Brix:
    """°Brix from several drops, with the zero taken off and, without compensation, brought to 20 °C.

    `readings` are −1 … 32 °Brix as shown, `temperature_c` (5–40 °C) that of the prism. What a known solution
    was read off by is not taken off but counted as doubt (rectangular). Raises CannotCompute for impossible
    readings.
    """
    shown = mean_of(_plausible(readings))
    sd, df = drop_spread(readings, instrument.division_brix)
    zero_u, doubts = _zero(instrument)
    value, temperature_u = _at_20(instrument, shown, temperature_c)
    if not instrument.compensated and temperature_c is None:
        doubts.append(Doubt.TEMPERATURE_UNKNOWN)
    scale_u, more = _scale(instrument, value)
    return Brix(value, len(readings), sd, df, zero_u, scale_u, temperature_u, (*doubts, *more))
