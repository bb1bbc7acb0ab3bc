"""From a reading of the mix to its solids, each way with its spread and its name.

Solids here are powder weight ÷ mix weight, as mixed, a share. Ways: the farm's own line for this powder;
else a published line for whole milk, of which replacers differ; else the trade's Brix + 2; a hydrometer or a
weighed jug by way of density; the finished volume, which takes the powder for right.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from enum import StrEnum

from calibrator.science.guard import between
from calibrator.science.mixing import Powder
from calibrator.science.own_line import REFERENCE_DROPS, Line, invert
from calibrator.science.refractometer import DROP_SD_BRIX, Brix, Doubt, Refractometer, brix
from calibrator.science.stats import two_sided_t, welch_satterthwaite
from calibrator.values import dataclass

WHOLE_MILK_SLOPE, WHOLE_MILK_INTERCEPT_PCT = 0.9984, 2.077
"""Total solids in % = 0.9984 °Brix + 2.077, whole milk: attributed to Moore et al. 2009, J. Dairy Sci.
92:3503 (from memory, not verified)."""

WHOLE_MILK_U_PCT = 0.8
TRADE_POINTS_PCT = 2.0
TRADE_U_PCT = 1.0
"""How far a replacer may lie off the conversion for whole milk and off Brix + 2: common practice, no source."""

OTHERS_U_SHARE = 0.3
"""How far an additive may bend light otherwise than as much powder does: fat in droplets hardly shows, salts and sugars
show more or less than the powder. Standard uncertainty as a share of what it brings: common practice, no source."""

_CANCEL = (Doubt.NO_KNOWN_SOLUTION, Doubt.KNOWN_OVERDUE)


class SolidsFrom(StrEnum):
    """The way from reading to solids."""

    OWN_LINE = "own_line"
    WHOLE_MILK = "whole_milk"
    TRADE_RULE = "trade_rule"
    HYDROMETER = "hydrometer"
    JUG = "jug"
    FINISHED_VOLUME = "finished_volume"


@dataclass(frozen=True)
class Solids:
    """Solids as a share, as mixed, with standard uncertainty and degrees of freedom.

    `one_reading_sd` is the spread of a single reading in solids, `readings` how many were taken, `rest_u` all
    doubt that more readings would not lessen, `per_unit` the solids for one unit of the reading.
    """

    share: float
    u: float
    degrees_of_freedom: float
    way: SolidsFrom
    readings: int
    one_reading_sd: float
    rest_u: float
    per_unit: float
    doubts: tuple[Doubt, ...] = ()

    @property
    def readings_u(self) -> float:
        """Standard uncertainty of their mean by the spread of the readings alone."""
        return self.one_reading_sd / math.sqrt(self.readings)

    @property
    def half_width(self) -> float:
        """Half the 95 % interval."""
        return two_sided_t(0.95, self.degrees_of_freedom) * self.u

    @property
    def low(self) -> float:
        return max(0.0, self.share - self.half_width)

    @property
    def high(self) -> float:
        return self.share + self.half_width


@dataclass(frozen=True)
class Read:
    """What a way brings: spread of one reading with its degrees of freedom, how many, what all share, and
    the solids for one unit of the reading."""

    sd: float
    df: float
    count: int
    rest_u: float
    per_unit: float


def solids_read(share: float, way: SolidsFrom, read: Read, doubts: tuple[Doubt, ...] = ()) -> Solids:
    """Solids with what the reading brings. Raises CannotCompute outside 0 … 60 %."""
    u, df = welch_satterthwaite([(read.sd / math.sqrt(read.count), read.df), (read.rest_u, math.inf)])
    between(share, 0.0, 0.6, "The solids that this reading stands for", "0 and 60 %; read again")
    return Solids(share, u, df, way, read.count, read.sd, read.rest_u, read.per_unit, doubts)


def by_own_line(brix: Brix, line: Line) -> Solids:
    """By the farm's own line, made with the same instrument: its scale error cancels, zero and temperature
    do not.

    Inverse prediction (see `invert`); the scatter of the reference mixes about the line counts less the part
    that their drops explain, and the new drops count by their own number. Raises CannotCompute where the line
    tells nothing.
    """
    found = invert(line, brix.value, readings=math.inf)
    slope = abs(line.slope)
    unexplained = max(0.0, line.residual_sd**2 - brix.drop_sd**2 / REFERENCE_DROPS)
    line_u = math.hypot(found.u, math.sqrt(unexplained) / slope)
    zero_u, one = brix.zero_and_temperature_u / slope, brix.drop_sd / slope
    parts = [(line_u, found.degrees_of_freedom), (zero_u, math.inf), (one / math.sqrt(brix.drops), brix.drop_df)]
    u, df = welch_satterthwaite(parts)
    between(found.x, 0.0, 0.6, "The solids that this reading stands for", "0 and 60 %; read again")
    doubts = tuple(d for d in brix.doubts if d not in _CANCEL)
    if not found.within:
        doubts = (*doubts, Doubt.OUT_OF_REACH)
    rest = math.hypot(line_u, zero_u)
    return Solids(found.x, u, df, SolidsFrom.OWN_LINE, brix.drops, one, rest, 1 / slope, doubts)


def _brix_read(brix: Brix, per_brix: float, way_u_pct: float) -> Read:
    """`per_brix` is the solids for one °Brix, `way_u_pct` how far the way itself may be off, °Brix."""
    rest = math.hypot(brix.zero_u, brix.scale_u, brix.temperature_u, way_u_pct) * per_brix
    return Read(brix.drop_sd * per_brix, brix.drop_df, brix.drops, rest, per_brix)


def by_whole_milk(brix: Brix, powder: Powder) -> Solids:
    """By the published line for whole milk, whose total solids are dry matter: brought to solids as mixed by
    the powder's own moisture. Replacers differ; the spread says so."""
    dry = (WHOLE_MILK_SLOPE * brix.value + WHOLE_MILK_INTERCEPT_PCT) / 100
    per_brix = WHOLE_MILK_SLOPE / 100 / powder.dry_matter_share
    read = _brix_read(brix, per_brix, WHOLE_MILK_U_PCT)
    return solids_read(dry / powder.dry_matter_share, SolidsFrom.WHOLE_MILK, read, brix.doubts)


def by_trade_rule(brix: Brix) -> Solids:
    """Brix + 2, the trade's rule (common practice, no source), with a spread of one point."""
    share = (brix.value + TRADE_POINTS_PCT) / 100
    return solids_read(share, SolidsFrom.TRADE_RULE, _brix_read(brix, 0.01, TRADE_U_PCT), brix.doubts)


def with_others(solids: Solids, others_share: float) -> Solids:
    """Solids by drops of a mix in which so much (0 … 1) of what is weighed in is additives: less sure, by what those
    may bend light otherwise."""
    if others_share == 0:
        return solids
    more = OTHERS_U_SHARE * others_share * solids.share
    u, df = welch_satterthwaite([(solids.u, solids.degrees_of_freedom), (more, math.inf)])
    doubts = (*solids.doubts, Doubt.ADDITIVES)
    return replace(solids, u=u, degrees_of_freedom=df, rest_u=math.hypot(solids.rest_u, more), doubts=doubts)


def as_dry_matter(share: float, powder: Powder) -> float:
    """The same solids as dry matter ÷ mix: what the powder itself holds of water is left out."""
    return share * powder.dry_matter_share


def line_band(line: Line, shares: Sequence[float], instrument: Refractometer) -> tuple[tuple[float, float], ...]:
    """For readings that stand for these solids by the line, where three usual drops leave the solids: ends of the
    95 % interval, shares."""
    halves = [expected_half_width(line, share, instrument) for share in shares]
    return tuple((share - half, share + half) for share, half in zip(shares, halves, strict=True))


def expected_half_width(line: Line, share: float, instrument: Refractometer, drops: int = REFERENCE_DROPS) -> float:
    """Half the 95 % interval that so many usual drops of a mix of this share would give by the line."""
    usual = brix([0.0] * drops, instrument, 20.0)
    read = replace(usual, value=line.y(share), drop_sd=DROP_SD_BRIX)
    return by_own_line(read, line).half_width
