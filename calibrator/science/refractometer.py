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
    OUT_OF_REACH = "out_of_reach"


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


def _correction(instrument: Refractometer, temperature_c: float | None) -> float:
    if instrument.compensated or temperature_c is None:
        return 0.0
    return temperature_correction_brix(temperature_c)


def _zero(instrument: Refractometer) -> tuple[float, float, list[Doubt]]:
    water = instrument.water
    if water is None:
        return 0.0, STALE_ZERO_U, [Doubt.NEVER_ZEROED]
    # At the same temperature as the reading, the zero takes the temperature's part along.
    zero = water.reading - water.expected + _correction(instrument, water.temperature_c)
    overdue = not_negative(water.days_ago, "The age of a check") > ZERO_DAYS
    rounding = rounding_u(instrument.division_brix)
    u = math.hypot(STALE_ZERO_U if overdue else FRESH_ZERO_U, rounding)
    return zero, u, [Doubt.ZERO_OVERDUE] if overdue else []


def scale_error_brix(instrument: Refractometer) -> float | None:
    """How far off a known solution was read, the zero taken off, °Brix; None without such a check."""
    known = instrument.known
    if known is None:
        return None
    return known.reading + _correction(instrument, known.temperature_c) - _zero(instrument)[0] - known.expected


def _scale(instrument: Refractometer, value: float) -> tuple[float, list[Doubt]]:
    known, error = instrument.known, scale_error_brix(instrument)
    if known is None or error is None:
        return UNCHECKED_SCALE_U, [Doubt.NO_KNOWN_SOLUTION]
    doubts = [Doubt.KNOWN_OVERDUE] if known.days_ago > KNOWN_DAYS else []
    if abs(error) > SCALE_OFF_BRIX:
        doubts.append(Doubt.SCALE_OFF)
    share = max(0.0, value) / positive(known.expected, "The Brix of the known solution")
    hidden = math.hypot(error / math.sqrt(3.0), rounding_u(instrument.division_brix), KNOWN_U_BRIX)
    return (max(hidden, UNCHECKED_SCALE_U) if known.days_ago > KNOWN_DAYS else hidden) * share, doubts


def brix(readings: Sequence[float], instrument: Refractometer, temperature_c: float | None = None) -> Brix:
    """°Brix from several drops, with the zero taken off and, without compensation, brought to 20 °C.

    `readings` are −1 … 32 °Brix as shown, `temperature_c` (5–40 °C) that of the prism. What a known solution
    was read off by is not taken off but counted as doubt (rectangular). Raises CannotCompute for impossible
    readings.
    """
    shown = mean_of(_plausible(readings))
    sd, df = drop_spread(readings, instrument.division_brix)
    zero, zero_u, doubts = _zero(instrument)
    correction = _correction(instrument, temperature_c)
    temperature_u = CORRECTION_U_SHARE * abs(correction)
    if not instrument.compensated and temperature_c is None:
        doubts.append(Doubt.TEMPERATURE_UNKNOWN)
        temperature_u = STALE_ZERO_U
    value = shown + correction - zero
    scale_u, more = _scale(instrument, value)
    return Brix(value, len(readings), sd, df, zero_u, scale_u, temperature_u, (*doubts, *more))
