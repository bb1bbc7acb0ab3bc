"""A group's way to weaning: from which day on it gets how much. The cold, which comes and goes, is left out."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from calibrator.model import Plan, PlanGroup
from calibrator.science.as_fed import day_plan
from calibrator.science.feeding import fed_ml, mix_per_calf, powder_per_calf_g
from calibrator.science.mixing import Powder
from calibrator.values import dataclass


@dataclass(frozen=True)
class Phase:
    """Days that a calf is fed alike, both counted in; `to_day` is None for the last one.

    Volumes are the finished mix that it drinks; weights are the powder alone, without what is
    mixed on top for hoses. `feedings` is 0 once the calf is weaned.
    """

    from_day: int
    to_day: int | None
    begins: date
    feedings: int
    day_ml: float
    day_g: float

    @property
    def feeding_ml(self) -> float:
        """What a feeding is on the mean; 0 once weaned."""
        return self.day_ml / self.feedings if self.feedings else 0.0

    @property
    def feeding_g(self) -> float:
        return self.day_g / self.feedings if self.feedings else 0.0


def phases(plan: Plan, group: PlanGroup, powder: Powder) -> tuple[Phase, ...]:
    """A group's phases, one calf's; none for a group without steps or without a day one.

    Raises CannotCompute for an impossible rate.
    """
    if group.day_one is None or not group.steps:
        return ()
    starts = sorted({1, *(step.from_day for step in group.steps if step.from_day > 0)})
    ends = [start - 1 for start in starts[1:]]
    usual = replace(plan, groups=(group,), cold=None)
    return tuple(
        _phase(usual, start, end, group.day_one + timedelta(days=start - 1), powder)
        for start, end in zip(starts, [*ends, None], strict=True)
    )


def _phase(plan: Plan, from_day: int, to_day: int | None, on: date, powder: Powder) -> Phase:
    fed = day_plan(plan, on, powder).groups
    day_g = sum(powder_per_calf_g(g, powder, plan.water_temperature_c) * g.feedings_per_day for g in fed)
    mixes = [mix_per_calf(g, powder, plan.water_temperature_c) for g in fed]
    day_ml = sum(fed_ml(g, mix) * g.feedings_per_day for g, mix in zip(fed, mixes, strict=True))
    return Phase(from_day, to_day, on, sum(g.feedings_per_day for g in fed), day_ml, day_g)
