"""Why a mix is off: what the solids would be after each usual slip, and which slip fits the reading best."""

from __future__ import annotations

import math
from collections.abc import Sequence
from enum import StrEnum

from calibrator.science.errors import CannotCompute
from calibrator.science.guard import between, not_negative, positive
from calibrator.science.mixing import Powder, mix_of
from calibrator.science.solids import Solids
from calibrator.values import dataclass

WELL_Z, POSSIBLE_Z = 1.0, 2.0


class Slip(StrEnum):
    """What may have happened, the usual ones first: equal fits are told in this order."""

    NONE = "none"  # mixed as planned; the reading's own spread
    OLD_LINE = "old_line"  # filled to the line, or counted by the chart, of the lot before
    SCOOP_LESS = "scoop_less"
    SCOOP_MORE = "scoop_more"
    VOLUME_AS_WATER = "volume_as_water"  # the finished volume was drawn as water
    WATER_AS_VOLUME = "water_as_volume"  # filled up to the volume that was meant as water
    CALF_LESS = "calf_less"  # powder for one calf fewer than the water
    CALF_MORE = "calf_more"
    RIM_NOT_LINE = "rim_not_line"  # struck level at the rim in place of the line


class Fits(StrEnum):
    """How well a slip fits the reading."""

    WELL = "well"
    POSSIBLE = "possible"
    NO = "no"


@dataclass(frozen=True)
class Planned:
    """The batch as the chart has it. Masses in g, water at `water_c`.

    `scoopful_g` with `scoopfuls` where it is scooped; `old_line_share` is what the line of the lot before
    would bring ÷ what is wanted − 1; `rim_share` the same for scoops struck level; `powder_u_g` the spread of
    the scoopfuls, `count_error_g` what their count brings beyond `powder_g`; `calves` the count it is for.
    """

    water_ml: float
    powder_g: float
    water_c: float
    powder: Powder
    powder_u_g: float = 0.0
    count_error_g: float = 0.0
    scoopful_g: float | None = None
    scoopfuls: int = 0
    old_line_share: float | None = None
    rim_share: float | None = None
    calves: int = 0


@dataclass(frozen=True)
class Cause:
    """A slip, the solids it would give, how many standard deviations that is off the reading, how it fits."""

    slip: Slip
    solids_share: float
    off_sd: float
    fits: Fits


def _share(value: float, what: str) -> float:
    return between(value, -0.9, 9.0, what, "a tenth and ten times of what is wanted")


def _powder_after(plan: Planned) -> dict[Slip, float]:
    found, counted_g = {Slip.NONE: plan.powder_g}, plan.powder_g + plan.count_error_g
    if plan.old_line_share is not None:
        found[Slip.OLD_LINE] = counted_g * (
            1 + between(plan.old_line_share, -0.9, 9.0, "The old line", "−90 and 900 %")
        )
    if plan.scoopful_g is not None and plan.scoopfuls > 0:
        one = positive(plan.scoopful_g, "The weight of a scoopful")
        if plan.scoopfuls > 1:
            found[Slip.SCOOP_LESS] = counted_g - one
        found[Slip.SCOOP_MORE] = counted_g + one
    if plan.calves > 1:
        found[Slip.CALF_LESS] = plan.powder_g * (1 - 1 / plan.calves)
        found[Slip.CALF_MORE] = plan.powder_g * (1 + 1 / plan.calves)
    if plan.rim_share is not None:
        found[Slip.RIM_NOT_LINE] = counted_g * (1 + _share(plan.rim_share, "What a level scoop brings"))
    return {slip: mass for slip, mass in found.items() if mass > 0}


def solids_after(plan: Planned) -> dict[Slip, float]:
    """The solids that each slip would give, a share, as mixed; masses and volumes add up.

    Raises CannotCompute for a plan without water or powder.
    """
    positive(plan.powder_g, "The weight of powder")
    not_negative(plan.powder_u_g, "The spread of the powder")
    planned = mix_of(plan.water_ml, plan.powder_g, plan.powder, plan.water_c)
    found = {
        slip: mix_of(plan.water_ml, mass, plan.powder, plan.water_c).solids_share
        for slip, mass in _powder_after(plan).items()
    }
    found[Slip.VOLUME_AS_WATER] = mix_of(planned.volume_ml, plan.powder_g, plan.powder, plan.water_c).solids_share
    less_ml = plan.water_ml - plan.powder_g * plan.powder.specific_volume_ml_per_g
    if less_ml > 0:
        found[Slip.WATER_AS_VOLUME] = mix_of(less_ml, plan.powder_g, plan.powder, plan.water_c).solids_share
    return found


def likeliest(solids: Solids, plan: Planned) -> tuple[Cause, ...]:
    """Every slip with its fit to the reading, the best first; equal fits in the order of `Slip`.

    A slip is off by |reading − its solids| ÷ √(u² + u²), of the reading and of the powder's own spread; below
    1 it fits well, below 2 it is possible. Only reckoning: looking at the scoop and the chart decides.
    """
    spread = solids.share * plan.powder_u_g / positive(plan.powder_g, "The weight of powder")
    u = math.hypot(solids.u, spread)
    if u <= 0:
        raise CannotCompute("A reading without any spread cannot be judged.")
    found = [_cause(slip, share, abs(solids.share - share) / u) for slip, share in solids_after(plan).items()]
    order = list(Slip)
    return tuple(sorted(found, key=lambda c: (list(Fits).index(c.fits), _half_steps(c.off_sd), order.index(c.slip))))


def _half_steps(off_sd: float) -> int:
    return math.floor(2 * off_sd)


def _cause(slip: Slip, share: float, off: float) -> Cause:
    fits = Fits.WELL if off < WELL_Z else Fits.POSSIBLE if off < POSSIBLE_Z else Fits.NO
    return Cause(slip, share, off, fits)


def told(causes: Sequence[Cause], most: int = 3) -> tuple[Cause, ...]:
    """The causes worth telling a person: those that fit, at most so many."""
    return tuple([c for c in causes if c.fits is not Fits.NO][:most])
