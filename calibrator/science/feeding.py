"""One feeding of a group, and the counts that a plan's table tells.

Light: the day's page asks for it at once.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from calibrator.model import MixingRate, Plan, PlanGroup, RateBasis, VolumeMeans
from calibrator.science.bands import SOLIDS_SHARE
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import between, positive
from calibrator.science.mixing import (
    Mix,
    Powder,
    additive_from,
    mix_on_water,
    mix_to_volume,
    powder_per_water,
)
from calibrator.science.recipe import Additive, Recipe, recipe
from calibrator.science.steps import to_step

MOST_ROWS = 20_000  # of a table
ROWS_ABOUT = 4  # steps to either side of today's count, where no range was told: they hang on one sheet


def scaled(mix: Mix, factor: float) -> Mix:
    """The same mix, `factor` times as much; what counts per weight or volume stays."""
    return replace(
        mix,
        water_g=mix.water_g * factor,
        water_ml=mix.water_ml * factor,
        powder_g=mix.powder_g * factor,
        volume_ml=mix.volume_ml * factor,
        mass_g=mix.mass_g * factor,
    )


def recipe_of(group: PlanGroup, powder: Powder, water_temperature_c: float) -> Recipe:
    """A group's powder with its additives; an additive's laboratory value goes before its composition.

    Raises CannotCompute for impossible rates or compositions.
    """
    additives = [Additive(a.name, additive_from(a.composition, a.mosmol_per_g), a.rate) for a in group.additives]
    return recipe(group.rate, powder, additives, water_temperature_c)


def mix_per_calf(group: PlanGroup, powder: Powder, water_temperature_c: float, allowance_share: float = 0.0) -> Mix:
    """One calf's feeding, with the allowance for hoses and pails on top (0 … 100 %).

    The group's volume is finished mix or water, as it says. `powder_g` is all that is weighed in, additives
    included: `recipe_of` tells the shares. Raises CannotCompute for impossible input.
    """
    extra = between(allowance_share, 0.0, 1.0, "The allowance", "0 and 100 %")
    volume = positive(group.volume_ml, "The volume per calf") * (1 + extra)
    made = recipe_of(group, powder, water_temperature_c)
    make = mix_on_water if group.volume_means is VolumeMeans.WATER else mix_to_volume
    return make(volume, made.ratio, made.powder, water_temperature_c)


def fed_ml(group: PlanGroup, mix: Mix) -> float:
    """Finished mix that one calf is to drink, mL: without the allowance, and with the powder where water is told.

    `mix` is any amount of the group's mix.
    """
    if group.volume_means is VolumeMeans.FINISHED_MIX:
        return group.volume_ml
    return group.volume_ml * mix.volume_ml / mix.water_ml


def powder_per_calf_g(
    group: PlanGroup, powder: Powder, water_temperature_c: float, allowance_share: float = 0.0
) -> float:
    """The powder alone in one calf's feeding, g; otherwise as `mix_per_calf`."""
    mix = mix_per_calf(group, powder, water_temperature_c, allowance_share)
    return mix.powder_g * recipe_of(group, powder, water_temperature_c).shares[0]


def usual_volume_ml(powder_g: float, powder: Powder, water_temperature_c: float, step_ml: float) -> float:
    """The finished mix that holds so much powder near the middle of the aim for solids, in whole steps, mL.

    In halves or quarters of the step where whole ones would leave the aim. Raises CannotCompute for no powder or step.
    """
    low, high = SOLIDS_SHARE.low, SOLIDS_SHARE.high
    aim = MixingRate(basis=RateBasis.SOLIDS, solids_share=(low + high) / 2)
    one = mix_on_water(1000.0, powder_per_water(aim, powder, water_temperature_c), powder, water_temperature_c)
    exact = one.volume_ml * positive(powder_g, "The weight of powder") / one.powder_g
    for step in (positive(step_ml, "The step of the volume") / parts for parts in (1, 2, 4)):
        volume = max(step, to_step(exact, step))
        rate = MixingRate(basis=RateBasis.MADE_UP, powder_mass_g=powder_g, volume_ml=volume)
        ratio = powder_per_water(rate, powder, water_temperature_c)
        if low <= ratio / (1 + ratio) <= high:
            return volume
    return exact


def target_missed_g(powder_g: float, targets_g: Sequence[float], tolerance_share: float) -> float | None:
    """The nearest to a feeding's powder of the weights that scoops are marked for, g; None where one is met, or there
    is none."""
    nearest = min(targets_g, key=lambda target: abs(target - powder_g), default=None)
    if nearest is None or abs(powder_g - nearest) <= tolerance_share * nearest:
        return None
    return nearest


def group_mix(
    group: PlanGroup,
    calves: int,
    powder: Powder,
    water_temperature_c: float,
    allowance_share: float = 0.0,
) -> Mix:
    """One feeding of `calves` fed as this group (1 or more); otherwise as `mix_per_calf`."""
    return scaled(
        mix_per_calf(group, powder, water_temperature_c, allowance_share),
        positive(calves, "The number of calves"),
    )


def counts_of(plan: Plan, group: PlanGroup | None = None) -> list[int]:
    """Counts for a plan's table: its range, the farm's own counts, today's total; sorted, each once.

    Without a range those that there may soon be: `ROWS_ABOUT` steps fewer to as many more than today. For one of its
    groups: that group's count in place of the total; where a range about the total does not hold it,
    as wide a range about it; and of the farm's own counts those that are meant for it. 24 calves beside 60 have no use
    for a row of 80. Raises CannotCompute for a step that is not above zero and for more than 20,000 rows.
    """
    positive(plan.count_step, "The step between counts")
    total = sum(g.calves for g in plan.groups)
    today = total if group is None else group.calves
    in_range = range(plan.count_from, plan.count_to + 1, plan.count_step)
    if not plan.count_to and today:
        about = ROWS_ABOUT * plan.count_step
        in_range = range(today - about, today + about + 1, plan.count_step)
    if len(in_range) > MOST_ROWS:
        raise CannotCompute("This table would have more than 20,000 rows: take a larger step.")
    if today and not plan.count_from <= today <= plan.count_to and plan.count_from <= total <= plan.count_to:
        shift = today - total
        in_range = range(plan.count_from + shift, plan.count_to + shift + 1, plan.count_step)
    own = (count for count in plan.counts if group is None or _meant_for(group, count, plan))
    wanted = {*in_range, *own, today}
    return sorted(c for c in wanted if c > 0)


def _meant_for(group: PlanGroup, count: int, plan: Plan) -> bool:
    """Whether no other group's calves of today are nearer to a count. Without calves any group may be meant."""
    fed = [each.calves for each in plan.groups if each.calves]
    return not fed or (group.calves > 0 and abs(group.calves - count) == min(abs(calves - count) for calves in fed))
