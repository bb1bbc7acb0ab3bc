"""Why a mix is off: what the solids would be after each usual slip, and which slip fits the reading best."""

from __future__ import annotations

import math
from collections.abc import Sequence
from enum import StrEnum

from calibrator.science.errors import CannotCompute
from calibrator.science.guard import between, not_negative, positive
from calibrator.science.mixing import Mix, Powder, mix_of
from calibrator.science.solids import Solids
from calibrator.science.water import density_g_per_ml
from calibrator.values import dataclass

WELL_Z, POSSIBLE_Z = 1.0, 2.0
_LEAST_WATER_SHARE = 0.01  # of a mix that is read; below it there is nothing to reckon with

MOST_MISCOUNTED = 5
"""So many scoopfuls are lost count of in one batch, and no more than a quarter of them: common practice, no source."""
MOST_MISSED_SHARE = 0.5
"""More than half of the scoopfuls nobody forgets or adds; such a reading is another batch's: common practice, no
source."""


class Slip(StrEnum):
    """What may have happened, the usual ones first: equal fits are told in this order."""

    NONE = "none"  # mixed as planned; the reading's own spread
    OLD_LINE = "old_line"  # filled to the line, or counted by the chart, of the lot before
    SCOOP_LESS = "scoop_less"
    SCOOP_MORE = "scoop_more"
    VOLUME_AS_WATER = "volume_as_water"  # the finished volume was drawn as water
    WATER_AS_VOLUME = "water_as_volume"  # filled up to the volume that was meant as water
    OTHER_WATER = "other_water"  # so much more or less water as the finished volume tells
    CALF_LESS = "calf_less"  # powder for one calf fewer than the water
    CALF_MORE = "calf_more"
    RIM_NOT_LINE = "rim_not_line"  # struck level at the rim in place of the line
    NOTHING_BESIDES = "nothing_besides"  # powder alone, the additives left out


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
    `others_g` are weighed in besides, and `powder` is the blend of all.
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
    others_g: float = 0.0

    @property
    def whole_g(self) -> float:
        """All that is weighed in."""
        return self.powder_g + self.others_g


@dataclass(frozen=True)
class Cause:
    """A slip, the solids it would give, how many standard deviations that is off the reading, how it fits. `count`
    is how many scoopfuls too few or too many; `rare` tells that people seldom lose count of so many. `water_ml` is how
    much water was too much, of `OTHER_WATER` alone; below zero, too little."""

    slip: Slip
    solids_share: float
    off_sd: float
    fits: Fits
    count: int = 1
    rare: bool = False
    water_ml: float = 0.0


def _share(value: float, what: str) -> float:
    return between(value, -0.9, 9.0, what, "a tenth and ten times of what is wanted")


def _powder_after(plan: Planned, count: int) -> dict[Slip, float]:
    found, counted_g = {Slip.NONE: plan.powder_g}, plan.powder_g + plan.count_error_g
    if plan.old_line_share is not None:
        found[Slip.OLD_LINE] = counted_g * (
            1 + between(plan.old_line_share, -0.9, 9.0, "The old line", "−90 and 900 %")
        )
    if plan.scoopful_g is not None and plan.scoopfuls > 0:
        miscounted_g = count * positive(plan.scoopful_g, "The weight of a scoopful")
        if plan.scoopfuls > count:
            found[Slip.SCOOP_LESS] = counted_g - miscounted_g
        found[Slip.SCOOP_MORE] = counted_g + miscounted_g
    if plan.calves > 1:
        found[Slip.CALF_LESS] = plan.powder_g * (1 - 1 / plan.calves)
        found[Slip.CALF_MORE] = plan.powder_g * (1 + 1 / plan.calves)
    if plan.rim_share is not None:
        found[Slip.RIM_NOT_LINE] = counted_g * (1 + _share(plan.rim_share, "What a level scoop brings"))
    return {slip: mass for slip, mass in found.items() if mass > 0}


def mixes_after(plan: Planned, count: int = 1) -> dict[Slip, Mix]:
    """The mix after each slip, with so many scoopfuls too few or too many; masses and volumes add up.

    Raises CannotCompute for a plan without water or powder.
    """
    positive(plan.powder_g, "The weight of powder")
    not_negative(plan.powder_u_g, "The spread of the powder")
    planned = mix_of(plan.water_ml, plan.whole_g, plan.powder, plan.water_c)
    found = {
        slip: mix_of(plan.water_ml, mass + plan.others_g, plan.powder, plan.water_c)
        for slip, mass in _powder_after(plan, count).items()
    }
    found[Slip.VOLUME_AS_WATER] = mix_of(planned.volume_ml, plan.whole_g, plan.powder, plan.water_c)
    if plan.others_g > 0:
        found[Slip.NOTHING_BESIDES] = mix_of(plan.water_ml, plan.powder_g, plan.powder, plan.water_c)
    if less := _water_to(plan, plan.water_ml):
        found[Slip.WATER_AS_VOLUME] = less
    return found


def likeliest(solids: Solids, plan: Planned, volume: tuple[float, float] | None = None) -> tuple[Cause, ...]:
    """Every slip with its fit to the reading, the best first; equal fits in the order of `Slip`.

    A slip is off by |reading − its solids| ÷ √(u² + u²), of the reading and of the powder's own spread; below
    1 it fits well, below 2 it is possible. Where the finished volume was read (mL, with its standard uncertainty), a
    slip that would give another volume is off by that, if it is more: wrong powder leaves the volume nearly as it is,
    wrong water does not. A volume that no slip would give is told by as much more or less water, if the reading bears
    that out; else it is another batch's or misread, and rules out nothing.
    Scoopfuls are told in the number that explains the reading, which is what a correction adds too. Several come after
    what is simpler and fits as well, for some number of them fits nearly any reading; more than people lose count of
    are possible at the most, more than half of them nothing. Only reckoning: looking at the scoop and the chart
    decides.
    """
    spread = solids.share * plan.powder_u_g / positive(plan.whole_g, "The weight of powder")
    u = math.hypot(solids.u, spread)
    if u <= 0:
        raise CannotCompute("A reading without any spread cannot be judged.")
    mixes = mixes_after(plan)
    counts = dict.fromkeys(mixes, 1)
    missing = _missing_scoopfuls(plan, solids.share)
    for slip, count in ((Slip.SCOOP_LESS, missing), (Slip.SCOOP_MORE, -missing)):
        several = mixes_after(plan, count) if count > 1 else {}
        if slip in several:
            mixes[slip], counts[slip] = several[slip], count
    reached = volume is not None and any(_volume_off(mix, volume) < POSSIBLE_Z for mix in mixes.values())
    if volume is not None and not reached:
        other = _water_to(plan, volume[0])
        reached = other is not None and _off(solids.share, u, other, volume) < POSSIBLE_Z
        if other is not None and reached:
            mixes[Slip.OTHER_WATER], counts[Slip.OTHER_WATER] = other, 1
    told_by = volume if reached else None
    found = [_cause(slip, mix, _off(solids.share, u, mix, told_by), counts[slip], plan) for slip, mix in mixes.items()]
    order = list(Slip)
    return tuple(
        sorted(
            found,
            key=lambda c: (list(Fits).index(c.fits), c.rare, c.count > 1, _half_steps(c.off_sd), order.index(c.slip)),
        )
    )


def _missing_scoopfuls(plan: Planned, share: float) -> int:
    """How many scoopfuls fewer than counted, to the nearest, give these solids in the water of the plan; too many are
    below zero. 0 where nothing is scooped.
    """
    if plan.scoopful_g is None:
        return 0
    water_g = plan.water_ml * density_g_per_ml(plan.water_c)
    explained_g = water_g * share / max(1 - share, _LEAST_WATER_SHARE)
    return round((plan.whole_g + plan.count_error_g - explained_g) / plan.scoopful_g)


def _water_to(plan: Planned, volume_ml: float) -> Mix | None:
    """The planned powder with the water that makes this finished volume; None where the powder alone is as much."""
    water_ml = volume_ml - plan.whole_g * plan.powder.specific_volume_ml_per_g
    if water_ml <= _LEAST_WATER_SHARE * volume_ml:
        return None
    return mix_of(water_ml, plan.whole_g, plan.powder, plan.water_c)


def _most_miscounted(plan: Planned) -> int:
    return min(MOST_MISCOUNTED, max(1, plan.scoopfuls // 4))


def _off(share: float, u: float, mix: Mix, volume: tuple[float, float] | None) -> float:
    off = abs(share - mix.solids_share) / u
    return off if volume is None else max(off, _volume_off(mix, volume))


def _volume_off(mix: Mix, volume: tuple[float, float]) -> float:
    read_ml, u_ml = positive(volume[0], "The finished volume"), positive(volume[1], "The volume's doubt")
    return abs(read_ml - mix.volume_ml) / u_ml


def _half_steps(off_sd: float) -> int:
    return math.floor(2 * off_sd)


def _cause(slip: Slip, mix: Mix, off: float, count: int, plan: Planned) -> Cause:
    fits = Fits.WELL if off < WELL_Z else Fits.POSSIBLE if off < POSSIBLE_Z else Fits.NO
    rare = count > _most_miscounted(plan)
    if rare and fits is Fits.WELL:
        fits = Fits.POSSIBLE
    if rare and count > MOST_MISSED_SHARE * plan.scoopfuls:
        fits = Fits.NO
    water_ml = mix.water_ml - plan.water_ml if slip is Slip.OTHER_WATER else 0.0
    return Cause(slip, mix.solids_share, off, fits, count, rare, water_ml)


def told(causes: Sequence[Cause], most: int = 3) -> tuple[Cause, ...]:
    """The causes worth telling a person: those that fit, at most so many."""
    return tuple([c for c in causes if c.fits is not Fits.NO][:most])
