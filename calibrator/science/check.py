"""A check of the mix: the verdict against target and tolerance, what reading would tell more, first pail
against last, cautions. Solids are shares, powder weight ÷ mix weight, as mixed."""

from __future__ import annotations

import math
from collections.abc import Sequence
from enum import StrEnum

from calibrator.science.bands import OSMOLALITY_MOSM_PER_KG, SOLIDS_SHARE, Band, band
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import between, not_negative, positive
from calibrator.science.heat import TOO_COOL_C, scalds
from calibrator.science.mixing import Powder
from calibrator.science.refractometer import FRESH_ZERO_U, STALE_ZERO_U, Doubt, Refractometer, brix
from calibrator.science.solids import Solids, SolidsFrom
from calibrator.science.stats import two_sided_t, welch_satterthwaite
from calibrator.values import dataclass

TOLERANCE_SHARE = 0.005
"""Half a percent of solids either way, where nothing else is said: common practice, no source."""

MOST_READINGS = 8
PAILS_MATTER_BRIX = 0.5
"""Half a degree between the first pail and the last is worth a word: common practice, no source."""

TOO_HOT_TO_DRINK_C = (108.0 - 32.0) / 1.8
"""Above 108 °F the mix is let cool before it is fed: common practice, no source."""

WANTED_WARMTH_C = (100.0 - 32.0) / 1.8, (105.0 - 32.0) / 1.8
"""Calves want 100 to 105 °F: common practice, no source."""
_WATER_ALIKE_C = 2.0
"""Water is drawn as warm as planned to about so much: common practice, no source."""


class Verdict(StrEnum):
    """Where the mix stands, the reading's doubt counted."""

    INSIDE = "inside"
    THIN = "thin"
    STRONG = "strong"
    CANNOT_TELL = "cannot_tell"

    @property
    def outside(self) -> bool:
        return self in (Verdict.THIN, Verdict.STRONG)


class WouldTell(StrEnum):
    """What would settle a verdict that is open."""

    MORE_READINGS = "more_readings"
    ZERO_CHECK = "zero_check"
    OWN_LINE = "own_line"
    MORE_REFERENCES = "more_references"
    TOO_NEAR = "too_near"  # so near the limit that no reading of this kind would tell


@dataclass(frozen=True)
class Judged:
    """A verdict. `deviation` is solids − target; `low … high` the 95 % interval of the solids.

    For an open verdict `would_tell` says what to do, with `more_readings` where that is more of them.
    """

    verdict: Verdict
    target: float
    tolerance: float
    deviation: float
    low: float
    high: float
    would_tell: WouldTell | None = None
    more_readings: int = 0

    @property
    def aimed_low(self) -> bool:
        """Whether what is wanted is itself weaker than what is usually aimed at."""
        return band(self.target, SOLIDS_SHARE) is Band.BELOW


def _verdict(low: float, high: float, target: float, tolerance: float) -> Verdict:
    if low >= target - tolerance - 1e-12 and high <= target + tolerance + 1e-12:
        return Verdict.INSIDE
    if high < target - tolerance:
        return Verdict.THIN
    return Verdict.STRONG if low > target + tolerance else Verdict.CANNOT_TELL


def judge(solids: Solids, target_share: float, tolerance_share: float = TOLERANCE_SHARE) -> Judged:
    """Inside when the whole 95 % interval lies within target ± tolerance, thin or strong when all of it lies
    beyond, else open.

    Raises CannotCompute for a target outside 1 … 50 % solids or a tolerance not above zero.
    """
    target = between(target_share, 0.01, 0.5, "The target", "1 and 50 % solids")
    tolerance = positive(tolerance_share, "The tolerance")
    verdict = _verdict(solids.low, solids.high, target, tolerance)
    found = Judged(verdict, target, tolerance, solids.share - target, solids.low, solids.high)
    if verdict is not Verdict.CANNOT_TELL:
        return found
    what, more = _would_tell(solids, abs(abs(found.deviation) - tolerance))
    return Judged(verdict, target, tolerance, found.deviation, solids.low, solids.high, what, more)


def _half_width(solids: Solids, readings: int, rest_u: float) -> float:
    one = solids.one_reading_sd / math.sqrt(readings)
    # The spread of single readings is known no better than now; the rest is taken as known.
    u, df = welch_satterthwaite([(one, max(1.0, solids.degrees_of_freedom)), (rest_u, math.inf)])
    return two_sided_t(0.95, df) * u


def _would_tell(solids: Solids, needed: float) -> tuple[WouldTell, int]:
    for readings in range(solids.readings + 1, MOST_READINGS + 1):
        if _half_width(solids, readings, solids.rest_u) <= needed:
            return WouldTell.MORE_READINGS, readings - solids.readings
    by_rule = solids.way in (SolidsFrom.WHOLE_MILK, SolidsFrom.TRADE_RULE, SolidsFrom.FINISHED_VOLUME)
    unzeroed = bool({Doubt.NEVER_ZEROED, Doubt.ZERO_OVERDUE} & set(solids.doubts))
    if unzeroed and _half_width(solids, MOST_READINGS, _zeroed_u(solids)) <= needed:
        return WouldTell.ZERO_CHECK, 0
    if by_rule and Doubt.ADDITIVES not in solids.doubts:  # weighed mixes have none in them
        return WouldTell.OWN_LINE, 0
    if solids.way is SolidsFrom.OWN_LINE and Doubt.ADDITIVES not in solids.doubts and solids.half_width <= 3 * needed:
        return WouldTell.MORE_REFERENCES, 0
    return WouldTell.TOO_NEAR, 0


def _zeroed_u(solids: Solids) -> float:
    """What readings share of doubt once the instrument is checked in plain water."""
    gone = (STALE_ZERO_U**2 - FRESH_ZERO_U**2) * solids.per_unit**2
    return math.sqrt(max(0.0, solids.rest_u**2 - gone))


def deciding(found: Sequence[Solids], target_share: float, tolerance_share: float = TOLERANCE_SHARE) -> Solids:
    """The way that the verdict rests on: `best`, unless the finished volume is surely outside and every instrument,
    unsure alone, leans to the same side and does not rule it out.

    The volume takes the powder for right; wrong powder that makes up for wrong water would have to show in the
    instrument, which says the contrary. Raises CannotCompute as `best` and `judge` do.
    """
    chosen = best(found)
    volume = next((s for s in found if s.way is SolidsFrom.FINISHED_VOLUME), None)
    if volume is None or volume is chosen:
        return chosen
    judged = judge(volume, target_share, tolerance_share)
    side = math.copysign(1.0, judged.deviation)
    leans = all(side * (s.share - target_share) > tolerance_share and not _apart(s, volume) for s in found)
    unsure = not judge(chosen, target_share, tolerance_share).verdict.outside
    return volume if judged.verdict.outside and leans and unsure else chosen


def contradict(found: Sequence[Solids], target_share: float, tolerance_share: float = TOLERANCE_SHARE) -> bool:
    """Whether the finished volume and the surest instrument cannot both be true of this batch: the volume is surely
    outside, the intervals do not meet, and the instrument is not surely outside on the same side.

    Then water and powder would both have to be wrong, one against the other: the volume is misread, or another
    batch's, and no amount that is reckoned with it can be told. Raises CannotCompute as `best` and `judge` do.
    """
    chosen = best(found)
    volume = next((s for s in found if s.way is SolidsFrom.FINISHED_VOLUME), None)
    if volume is None or volume is chosen or not _apart(chosen, volume):
        return False
    by_volume = judge(volume, target_share, tolerance_share).verdict
    return by_volume.outside and judge(chosen, target_share, tolerance_share).verdict is not by_volume


def _apart(one: Solids, other: Solids) -> bool:
    """Whether the 95 % intervals of two ways do not meet: farther from each other than what merely disagrees."""
    return one.high < other.low or other.high < one.low


def best(found: Sequence[Solids]) -> Solids:
    """The way that is surest: the least doubt, and the finished volume only where there is nothing else.

    Raises CannotCompute for none.
    """
    if not found:
        raise CannotCompute("Read the mix in one way at least.")
    own = [s for s in found if s.way is not SolidsFrom.FINISHED_VOLUME]
    return min(own or found, key=_half_width_of)


def _half_width_of(solids: Solids) -> float:
    return solids.half_width


def disagree(one: Solids, other: Solids) -> bool:
    """Whether two ways differ by more than both their doubts explain (95 %)."""
    u, df = welch_satterthwaite([(one.u, one.degrees_of_freedom), (other.u, other.degrees_of_freedom)])
    return abs(one.share - other.share) > two_sided_t(0.95, df) * u


class Pails(StrEnum):
    """The first pail beside the last."""

    ALIKE = "alike"
    FIRST_STRONGER = "first_stronger"  # powder settles
    LAST_STRONGER = "last_stronger"  # fat rises, or was beaten out by over-mixing
    CANNOT_TELL = "cannot_tell"


@dataclass(frozen=True)
class PailsCompared:
    """The 95 % interval of last − first in °Brix; zero and scale drop out."""

    verdict: Pails
    low: float
    high: float


def compare_pails(first: Sequence[float], last: Sequence[float], instrument: Refractometer) -> PailsCompared:
    """Drops of the first pail against drops of the last, one instrument.

    Different where the 95 % interval of the difference leaves out zero, alike where it stays within half a
    degree. Raises CannotCompute without drops of both.
    """
    a, b = brix(first, instrument), brix(last, instrument)
    u, df = welch_satterthwaite([(a.mean_u, a.drop_df), (b.mean_u, b.drop_df)])
    half = two_sided_t(0.95, df) * u
    difference = b.value - a.value
    low, high = difference - half, difference + half
    return PailsCompared(_pails(low, high), low, high)


def _pails(low: float, high: float) -> Pails:
    if low > 0:
        return Pails.LAST_STRONGER
    if high < 0:
        return Pails.FIRST_STRONGER
    matter = PAILS_MATTER_BRIX
    return Pails.ALIKE if -matter <= low and high <= matter else Pails.CANNOT_TELL


class Caution(StrEnum):
    """What a hand has to be told. The product's label and the veterinarian decide."""

    SCALD = "scald"
    TOO_HOT = "too_hot"
    TOO_COOL = "too_cool"
    SOLIDS_RISK = "solids_risk"
    SOLIDS_LOW = "solids_low"
    OSMOLALITY_RISK = "osmolality_risk"
    YOUNG_CALVES = "young_calves"


def osmolality(share: float, powder: Powder) -> tuple[float, float]:
    """Osmolality that so much powder would bring, mOsm/kg, and its standard uncertainty.

    Reckoned from the powder, never read: a refractometer tells solids only. Raises CannotCompute for a share
    outside 0 … 60 %.
    """
    between(share, 0.0, 0.6, "The solids", "0 and 60 %")
    per_kg = 1000.0 * share / (1 - share)
    return per_kg * powder.mosmol_per_g, per_kg * powder.mosmol_u_per_g


def cautions(
    solids_share: float | None,
    powder: Powder,
    *,
    water_c: float | None = None,
    mix_c: float | None = None,
    calf_c: float | None = None,
    doubt_c: float = 0.0,
) -> tuple[Caution, ...]:
    """What to be careful of, the gravest first. Temperatures in °C; what is not known is left out.

    `doubt_c` is the doubt in each temperature (95 %): for a scald the warmest that it can be counts.
    """
    warmest = [t + not_negative(doubt_c, "The doubt") for t in (water_c, mix_c, calf_c) if t is not None]
    found = [Caution.SCALD] if any(scalds(t) for t in warmest) else []
    drunk = [t for t in (mix_c, calf_c) if t is not None]
    if any(t > TOO_HOT_TO_DRINK_C for t in drunk):
        found.append(Caution.TOO_HOT)
    if any(t < TOO_COOL_C for t in drunk):
        found.append(Caution.TOO_COOL)
    if solids_share is not None:
        found += _strength(solids_share, powder)
    return tuple(found)


class Drunk(StrEnum):
    """How warm a mix is beside what calves want, or its water beside what the plan has."""

    COOLER = "cooler"
    AS_WANTED = "as_wanted"
    WARMER = "warmer"


def drunk(degrees: int, wanted: tuple[int, int]) -> Drunk:
    """Where a temperature lies about the range that calves want: whole degrees of one scale, °C or °F, as both are
    told, so that what reads as within is within.
    """
    low, high = wanted
    if degrees < low:
        return Drunk.COOLER
    return Drunk.WARMER if degrees > high else Drunk.AS_WANTED


def drawn(water_c: float, planned_c: float) -> Drunk:
    """Where the water lies about what the plan has it at, °C."""
    if abs(water_c - planned_c) <= _WATER_ALIKE_C:
        return Drunk.AS_WANTED
    return Drunk.COOLER if water_c < planned_c else Drunk.WARMER


def _strength(share: float, powder: Powder) -> list[Caution]:
    found, solids = [], band(share, SOLIDS_SHARE)
    if solids is Band.RISK:
        found.append(Caution.SOLIDS_RISK)
    if solids is Band.BELOW:
        found.append(Caution.SOLIDS_LOW)
    strong = band(osmolality(share, powder)[0], OSMOLALITY_MOSM_PER_KG)
    if strong is Band.RISK:
        found.append(Caution.OSMOLALITY_RISK)
    if solids in (Band.ABOVE, Band.RISK) or strong is Band.RISK:  # an estimate just above its aim tells nobody much
        found.append(Caution.YOUNG_CALVES)
    return found


def reading_for(shown: float, solids: Solids, share: float) -> float:
    """What the same instrument would show, in its own unit, for another share: by the slope of the way."""
    return shown + (share - solids.share) / solids.per_unit


def surely_inside(shown: float, solids: Solids, judged: Judged) -> tuple[float, float] | None:
    """Between which readings, in the instrument's own unit, the verdict would surely be inside.

    None where this way is too unsure for any reading to be.
    """
    spare = judged.tolerance - solids.half_width
    if spare < 0:
        return None
    ends = [reading_for(shown, solids, judged.target + side * spare) for side in (-1, 1)]
    return min(ends), max(ends)
