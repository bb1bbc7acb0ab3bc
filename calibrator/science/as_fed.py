"""The plan of a day: which step a group has come to, which of the day's feedings, and the cold.

The outcome is a plan of plain groups, each with the volume and the rate that hold then; all the rest of the
science needs no calendar. An additive is told for a calf and feeding: another volume does not change it. How calves
are weaned and fed in the cold is for the label and a veterinarian.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import replace
from datetime import date, timedelta
from enum import StrEnum

from calibrator.model import Additive, ColdWeather, Feeding, FeedingStep, MixingRate, Plan, PlanGroup, RateBasis
from calibrator.science.feeding import powder_per_calf_g
from calibrator.science.guard import between, not_negative
from calibrator.science.mixing import Powder, powder_per_water, rate_in
from calibrator.values import dataclass

MOST_MORE = 1.0  # twice the powder is no longer a variant of a plan


class Rest(StrEnum):
    """Why a group is not fed."""

    WEANED = "weaned"
    NOT_NOW = "not_now"  # others are fed once more than it is


@dataclass(frozen=True)
class FedGroup:
    """A group as it is fed at one feeding of one day; with a `rest` it is not."""

    group: PlanGroup
    rest: Rest | None = None


@dataclass(frozen=True)
class Fed:
    """Feedings, each of one calf, and the powder alone that they took, g, allowance included."""

    feedings: int = 0
    powder_g: float = 0.0

    @property
    def each_g(self) -> float | None:
        """The powder of a feeding on average, g; None where nobody was fed."""
        return self.powder_g / self.feedings if self.feedings else None


@dataclass(frozen=True)
class PlansFrom:
    """The plans in use from a day on, until the day of the next ones."""

    on: date
    plans: tuple[Plan, ...]


def step_on(group: PlanGroup, on: date) -> FeedingStep | None:
    """The step that holds on a day; None before the first one, and where no day one is told."""
    if group.day_one is None:
        return None
    day = (on - group.day_one).days + 1
    reached = [step for step in group.steps if step.from_day <= day]
    return max(reached, key=lambda step: step.from_day, default=None)


def feedings_on(group: PlanGroup, on: date, cold: ColdWeather | None = None) -> int:
    """How many feedings a group gets on a day, those of the cold included; 0 once it is weaned."""
    step = step_on(group, on)
    told = len(group.feedings) or group.feedings_per_day
    if step is not None:
        told = min(told, step.feedings_per_day) if group.feedings else step.feedings_per_day
    if told == 0 or (step is not None and step.volume_ml == 0):
        return 0
    return told + (cold.further_feedings if cold and cold.on else 0)


def fed_group(plan: Plan, group: PlanGroup, on: date, feeding: int, powder: Powder) -> FedGroup:
    """A group at a day's feeding (0 is the first). Raises CannotCompute for an impossible rate or more powder."""
    count = feedings_on(group, on, plan.cold)
    if feeding >= count:
        return FedGroup(replace(group, calves=0), Rest.NOT_NOW if count else Rest.WEANED)
    step, named = step_on(group, on), _named(group, feeding)
    share = step.volume_ml / group.volume_ml if step else 1.0
    rate = named.rate or group.rate if named else group.rate
    if plan.cold and plan.cold.on and plan.cold.more_powder_share:
        rate = more_powder(rate, plan.cold.more_powder_share, powder, plan.water_temperature_c)
    volume = (named.volume_ml if named else group.volume_ml) * share
    fed = replace(group, volume_ml=volume, rate=rate, feedings_per_day=count, feedings=(), steps=())
    return FedGroup(replace(fed, additives=tuple(_dosed_in(volume, each, group) for each in group.additives)))


def _dosed_in(volume_ml: float, additive: Additive, group: PlanGroup) -> Additive:
    """As much of an additive for each calf, in another volume than the group's own."""
    told = additive.rate
    return replace(additive, rate=replace(told, volume_ml=volume_ml * (told.volume_ml / group.volume_ml)))


def _named(group: PlanGroup, feeding: int) -> Feeding | None:
    """A feeding of its own; one more for the cold is like the last."""
    return group.feedings[min(feeding, len(group.feedings) - 1)] if group.feedings else None


def more_powder(rate: MixingRate, share: float, powder: Powder, water_temperature_c: float) -> MixingRate:
    """The rate with a share more powder (0 … 100 %): on the same volume, or on the same water.

    Raises CannotCompute for another share or a rate that no mix can have.
    """
    factor = 1 + between(share, 0.0, MOST_MORE, "More powder", "0 and 100 %")
    if rate.basis not in (RateBasis.SOLIDS, RateBasis.DRY_MATTER):
        return replace(rate, powder_mass_g=rate.powder_mass_g * factor, typed="")
    ratio = powder_per_water(rate, powder, water_temperature_c)
    return rate_in(rate.basis, ratio * factor, powder, water_temperature_c)


def as_fed(plan: Plan, on: date, feeding: int, powder: Powder) -> tuple[Plan, tuple[Rest | None, ...]]:
    """A plan at one feeding of a day, and for each group why it is not fed (None where it is)."""
    fed = [fed_group(plan, group, on, feeding, powder) for group in plan.groups]
    return replace(plan, groups=tuple(each.group for each in fed)), tuple(each.rest for each in fed)


def day_plan(plan: Plan, on: date, powder: Powder) -> Plan:
    """A plan as it is fed on a day: feedings that differ are groups of their own, weaned groups are left out.

    What is printed, checked and labelled for a day goes by it. Raises CannotCompute as `fed_group`.
    """
    groups = [each for group in plan.groups for each in _day_groups(plan, group, on, powder)]
    return replace(plan, groups=tuple(groups))


def _day_groups(plan: Plan, group: PlanGroup, on: date, powder: Powder) -> list[PlanGroup]:
    count = feedings_on(group, on, plan.cold)
    named = [feeding.name for feeding in group.feedings[:count]]
    if len(named) < 2 or not any(named):
        return [fed_group(plan, group, on, 0, powder).group] if count else []
    fed = [fed_group(plan, group, on, number, powder).group for number in range(len(named))]
    further = count - len(named)  # those of the cold are like the last
    return [
        replace(
            each,
            name=", ".join(part for part in (group.name, name) if part),
            feedings_per_day=1 + (further if number == len(fed) else 0),
        )
        for number, (each, name) in enumerate(zip(fed, named, strict=True), start=1)
    ]


def most_feedings(plan: Plan, on: date) -> int:
    """The most feedings that any group gets on a day."""
    return max((feedings_on(group, on, plan.cold) for group in plan.groups), default=0)


def feedings_differ(plan: Plan, on: date) -> bool:
    """Whether it matters which of the day's feedings is mixed."""
    counts = {feedings_on(group, on, plan.cold) for group in plan.groups} - {0}
    return len(counts) > 1 or any(len(group.feedings) > 1 for group in plan.groups)


def fed_on(plan: Plan, powder: Powder, on: date) -> Fed:
    """What all groups of a plan get on a day. Raises CannotCompute as `fed_group`."""
    t, extra = plan.water_temperature_c, plan.allowance_share
    feedings, powder_g = 0, 0.0
    for feeding in range(most_feedings(plan, on)):
        fed, _ = as_fed(plan, on, feeding, powder)
        groups = [g for g in fed.groups if not_negative(g.calves, "The number of calves") > 0]
        feedings += sum(g.calves for g in groups)
        powder_g += sum(g.calves * powder_per_calf_g(g, powder, t, extra) for g in groups)
    return Fed(feedings, powder_g)


def powder_of_day_g(plan: Plan, powder: Powder, on: date) -> float:
    """Powder that all groups take on a day, g, allowance included."""
    return fed_on(plan, powder, on).powder_g


def powder_of_days_g(plans: Sequence[Plan], powder: Powder, first: date, days: int) -> list[float]:
    """Powder that plans take on each of so many days from the first on, g, by their steps and the cold.

    Raises CannotCompute as `fed_on`.
    """
    return [of_day.powder_g for of_day in _fed_on_days(plans, powder, first, days)]


def _fed_on_days(plans: Sequence[Plan], powder: Powder, first: date, days: int) -> list[Fed]:
    groups = [group for plan in plans for group in plan.groups]
    steps = {
        (group.day_one - first).days + step.from_day - 1
        for group in groups
        if group.day_one is not None
        for step in group.steps
    }
    found: list[Fed] = []
    for day in range(days):
        if day == 0 or day in steps:  # between two steps every day takes the same
            of_day = _together(fed_on(plan, powder, first + timedelta(days=day)) for plan in plans)
        found.append(of_day)
    return found


def _together(each: Iterable[Fed]) -> Fed:
    several = list(each)
    return Fed(sum(fed.feedings for fed in several), math.fsum(fed.powder_g for fed in several))


def fed_between(told: Sequence[PlansFrom], powder: Powder, first: date, until: date) -> Fed:
    """What was fed from a day on, before another: each day by the plans of that day, the oldest told first.

    Days before the first telling go by it: calves were fed before anybody wrote down how. Nothing where `until` is
    not after `first`, and without plans. Raises CannotCompute as `fed_on`.
    """
    fed, start = Fed(), first
    for each, end in zip(told, [*(later.on for later in told[1:]), until], strict=False):
        days = (min(end, until) - start).days
        if days > 0:
            fed = _together([fed, *_fed_on_days(each.plans, powder, start, days)])
            start += timedelta(days=days)
    return fed
