"""A feeding plan into batches: water, powder and finished volume for any number of calves.

Everything is linear in the calves, so one calf's mix is computed once and every row is a multiple of it:
all rows have the same ratio of powder to water, before any rounding.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import reduce

import numpy as np
from numpy.typing import NDArray

from calibrator.model import Plan, PlanGroup, Vessel
from calibrator.science.errors import CannotCompute
from calibrator.science.feeding import MOST_ROWS, counts_of, group_mix, mix_per_calf, scaled
from calibrator.science.guard import not_negative, positive
from calibrator.science.mixing import Mix, Powder, mix_of
from calibrator.science.rows import Rows
from calibrator.science.steps import down_to_step, to_step
from calibrator.science.vessels import Fit, fit, usable_ml
from calibrator.values import dataclass

__all__ = [
    "BatchRow",
    "BatchTable",
    "Rounded",
    "calves_served",
    "counted_out",
    "counts_of",
    "fewest_batches",
    "group_mix",
    "mix_per_calf",
    "most_calves",
    "moves_powder",
    "rounded",
    "scaled",
    "table",
    "usual_waters",
    "waters_of",
]

MOST_CALVES = 1_000_000
_USUAL_ROWS, _CALVES_WITHOUT_VESSEL = 40, 10
WATER_CLOSE = 0.005
"""By this share of what is measured nobody at a marked pail sees a difference. Common practice, no source."""
_ROUNDING = 1e-9  # a batch that fills a vessel exactly must not ask for one more


def _joined(a: Mix, b: Mix) -> Mix:
    return scaled(a, (a.water_g + b.water_g) / a.water_g)


def _per_calf_of_plan(plan: Plan, powder: Powder) -> Mix:
    t, extra = plan.water_temperature_c, plan.allowance_share
    if not plan.groups:
        raise CannotCompute("Give the plan at least one group of calves.")
    if len(plan.groups) == 1:
        return mix_per_calf(plan.groups[0], powder, t, extra)
    fed = [g for g in plan.groups if not_negative(g.calves, "The number of calves") > 0]
    if not fed:
        raise CannotCompute("Say how many calves there are in each group.")
    mixes = [group_mix(g, g.calves, powder, t, extra) for g in fed]
    alike = all(g.additives == fed[0].additives for g in fed)
    if not alike or any(not math.isclose(m.ratio, mixes[0].ratio, rel_tol=1e-9) for m in mixes):
        raise CannotCompute("These groups are mixed at different rates: make a table for each group.")
    return scaled(reduce(_joined, mixes), 1 / sum(g.calves for g in fed))


@dataclass(frozen=True)
class BatchRow:
    """One feeding of so many calves.

    `batches` is the fewest equal batches that fit the vessel's usable volume; `fits` tells whether one batch
    does, `over_usable_ml` and `overflow_ml` by how much a single batch would not. `most_calves` is what one
    batch can serve; None without a vessel.
    """

    calves: int
    total: Mix
    batches: int
    per_batch: Mix
    fits: bool
    over_usable_ml: float
    overflow_ml: float
    most_calves: int | None


@dataclass(frozen=True, eq=False)
class BatchTable(Rows[BatchRow]):
    """Rows of a batch table, kept as columns; a row is made when it is looked at.

    Columns hold one figure per count of calves: `water_ml`, `powder_g`, `volume_ml` for the whole feeding
    and `batches`, into which all of them divide.
    """

    per_calf: Mix
    calves: NDArray[np.int64]
    vessel: Vessel | None
    batches: NDArray[np.int64]

    @property
    def water_ml(self) -> NDArray[np.float64]:
        return self.calves.astype(np.float64) * self.per_calf.water_ml

    @property
    def powder_g(self) -> NDArray[np.float64]:
        return self.calves.astype(np.float64) * self.per_calf.powder_g

    @property
    def volume_ml(self) -> NDArray[np.float64]:
        return self.calves.astype(np.float64) * self.per_calf.volume_ml

    @property
    def most_calves(self) -> int | None:
        return None if self.vessel is None else most_calves(self.vessel, self.per_calf.volume_ml)

    def __len__(self) -> int:
        return len(self.calves)

    def _row(self, index: int) -> BatchRow:
        calves, batches = int(self.calves[index]), int(self.batches[index])
        total = scaled(self.per_calf, calves)
        room = Fit(True, 0.0, 0.0) if self.vessel is None else fit(total.volume_ml, self.vessel)
        return BatchRow(
            calves=calves,
            total=total,
            batches=batches,
            per_batch=scaled(total, 1 / batches),
            fits=room.fits,
            over_usable_ml=room.over_usable_ml,
            overflow_ml=room.overflow_ml,
            most_calves=self.most_calves,
        )


def most_calves(vessel: Vessel, volume_per_calf_ml: float) -> int:
    """The most calves that one batch in this vessel's usable volume serves; may be 0."""
    return calves_served(usable_ml(vessel), volume_per_calf_ml)


def calves_served(volume_ml: float, volume_per_calf_ml: float) -> int:
    """How many calves a finished volume serves in full; may be 0."""
    return math.floor(volume_ml / positive(volume_per_calf_ml, "The volume per calf") * (1 + _ROUNDING))


def fewest_batches(volume_ml: NDArray[np.float64], vessel: Vessel | None) -> NDArray[np.int64]:
    """Fewest equal batches for each finished volume, by the vessel's usable volume; 1 without a vessel."""
    if vessel is None:
        return np.ones(len(volume_ml), dtype=np.int64)
    return np.maximum(1, np.ceil(volume_ml / usable_ml(vessel) * (1 - _ROUNDING))).astype(np.int64)


def table(
    plan: Plan,
    powder: Powder,
    vessel: Vessel | None,
    counts: Sequence[int],
    *,
    group: PlanGroup | None = None,
) -> BatchTable:
    """A row for each count of calves: of one `group`, or of the whole plan.

    For the whole plan the groups must share one mixing rate; their calves are taken in today's proportion.
    Every row has the same ratio of powder to water. Raises CannotCompute for counts below 1, groups of
    different rates, and impossible input.
    """
    per_calf = (
        _per_calf_of_plan(plan, powder)
        if group is None
        else mix_per_calf(group, powder, plan.water_temperature_c, plan.allowance_share)
    )
    if min(counts, default=1) < 1:
        raise CannotCompute("A batch needs at least one calf.")
    if max(counts, default=1) > MOST_CALVES:
        raise CannotCompute("A table goes up to 1,000,000 calves.")
    calves = np.asarray(counts, dtype=np.int64)
    return BatchTable(per_calf, calves, vessel, fewest_batches(calves.astype(np.float64) * per_calf.volume_ml, vessel))


def waters_of(least_ml: float, most_ml: float, step_ml: float) -> list[float]:
    """Volumes of water for a table by volume: the multiples of the step from the least to the most, mL.

    Raises CannotCompute for a step that is not above zero, an end below the beginning, no multiple between them, and
    more than 20,000 rows.
    """
    positive(step_ml, "The step between volumes")
    first = max(1, math.ceil(not_negative(least_ml, "The first volume") / step_ml * (1 - _ROUNDING)))
    last = math.floor(not_negative(most_ml, "The last volume") / step_ml * (1 + _ROUNDING))
    if last - first >= MOST_ROWS:
        raise CannotCompute("This table would have more than 20,000 rows: take a larger step.")
    if last < first:
        raise CannotCompute("No volume lies in this range: take a smaller step, or a larger last volume.")
    return [number * step_ml for number in range(first, last + 1)]


def usual_waters(rows: BatchTable, today: int, step_ml: float) -> tuple[float, float, float]:
    """The range and the step of water that a table by volume begins with, mL: up to what one batch may have.

    Without a vessel up to today's water, or that for ten calves. The step is the least of 1, 2, 4, 10, 20, 40 … times
    `step_ml` that makes no more than forty rows.
    """
    mix, vessel = rows.per_calf, rows.vessel
    calves = float(today or _CALVES_WITHOUT_VESSEL) if vessel is None else usable_ml(vessel) / mix.volume_ml
    most = calves * mix.water_ml
    steps = (positive(step_ml, "The step of the water") * of * 10**tens for tens in range(12) for of in (1, 2, 4))
    step = next((step for step in steps if most / step <= _USUAL_ROWS), most)
    return step, most, step


@dataclass(frozen=True)
class Rounded:
    """A mix as it will be measured out; `ratio_error_share` is its ratio ÷ the wanted one − 1.

    `for_water` tells that rounding moved the volume that is measured so far that the powder goes by it, not by what the
    calves are to get. That is the water, or where powder is made up with water the finished mix, which is filled up to
    once the powder is in: `fill_to_ml`, else None.
    """

    mix: Mix
    ratio_error_share: float
    for_water: bool = False
    fill_to_ml: float | None = None
    first_ml: float = 0.0  # of the water, where more fills it up

    @property
    def drawn_ml(self) -> float:
        """The water that is drawn before the powder goes in."""
        return self.mix.water_ml if self.fill_to_ml is None else self.first_ml

    @property
    def drawn_g(self) -> float:
        return self.mix.water_g * self.drawn_ml / self.mix.water_ml


def rounded(
    mix: Mix,
    powder: Powder,
    water_temperature_c: float,
    *,
    water_step_ml: float,
    powder_step_g: float,
    shares: Sequence[float] = (1.0,),
    made_up: bool = False,
    least_additive_g: float = 0.0,
) -> Rounded:
    """Water to the nearest step, powder to the scale's step, and what rounding did.

    Where powder is `made_up` with water the finished mix is what a person measures: it goes to the step, and the water
    drawn first to the step below, so that there is room to fill up.

    The powder is what the calves are to get, as anybody reckons it who checks the table. Only where rounding moves
    what is measured by more than `WATER_CLOSE` is it weighed for the rounded volume instead, which keeps the ratio.
    `shares` are those of powder and additives in what is weighed in: each is brought to the step by itself, but an
    additive lighter than `least_additive_g`, which this scale cannot weigh, stays as it is. A step of 0 leaves a figure
    as it is. Raises CannotCompute for negative steps or no water left.
    """
    exact = measured_ml(mix, made_up)
    measured = to_step(exact, not_negative(water_step_ml, "The step of the water"))
    far = _is_far(measured, exact)
    powder_g = mix.powder_g * measured / exact if far else mix.powder_g
    step_g = not_negative(powder_step_g, "The step of the scale")
    alone_g, *others_g = (powder_g * share for share in shares)
    others_g = [each if each < least_additive_g else to_step(each, step_g) for each in others_g]
    weighed_g = math.fsum((to_step(alone_g, step_g), *others_g))
    water = measured - weighed_g * powder.specific_volume_ml_per_g if made_up else measured
    made = mix_of(water, weighed_g, powder, water_temperature_c)
    off = made.ratio / mix.ratio - 1 if mix.ratio else 0.0
    if not made_up:
        return Rounded(made, off, far)
    return Rounded(made, off, far, measured, down_to_step(water, water_step_ml))


def measured_ml(mix: Mix, made_up: bool) -> float:
    """What a person measures of a mix: its water, or where powder is made up with water the finished volume, mL."""
    return mix.volume_ml if made_up else mix.water_ml


def counted_out(
    mix: Mix, powder_g: float, water_ml: float, powder: Powder, water_temperature_c: float, *, water_step_ml: float
) -> Rounded:
    """A mix whose powder is counted in whole scoopfuls, `powder_g` with all that is weighed in besides, and whose water
    goes by that, to the nearest step. A step of 0 leaves the water as it is. Raises CannotCompute for no water left."""
    made = mix_of(to_step(water_ml, water_step_ml), powder_g, powder, water_temperature_c)
    return Rounded(made, made.ratio / mix.ratio - 1)


def moves_powder(volumes_ml: NDArray[np.float64], step_ml: float) -> bool:
    """Whether rounding any of these to the step moves it so far that its powder goes by it; a step of 0 rounds none."""
    return any(_is_far(to_step(each, step_ml), each) for each in volumes_ml.tolist())


def _is_far(rounded_ml: float, exact_ml: float) -> bool:
    return abs(rounded_ml / exact_ml - 1) > WATER_CLOSE
