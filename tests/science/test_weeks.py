"""The way to weaning, by plain arithmetic over a calendar; the plan is invented."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from calibrator.model import (
    ColdWeather,
    Composition,
    Feeding,
    FeedingStep,
    MixingRate,
    Plan,
    PlanGroup,
    RateBasis,
    VolumeMeans,
)
from calibrator.science.as_fed import powder_of_day_g
from calibrator.science.mixing import powder_from
from calibrator.science.weeks import phases

OUNCE_G, QUART_ML = 28.349523125, 946.352946
POWDER = powder_from(Composition())
DAY_ONE = date(2026, 3, 2)
RATE = MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=10 * OUNCE_G, volume_ml=2 * QUART_ML)
GROUP = PlanGroup(
    name="Young", calves=10, volume_ml=2 * QUART_ML, volume_means=VolumeMeans.WATER, rate=RATE,
    steps=(
        FeedingStep(from_day=50, volume_ml=0.0, feedings_per_day=0),
        FeedingStep(from_day=8, volume_ml=3 * QUART_ML),
        FeedingStep(from_day=43, volume_ml=2 * QUART_ML, feedings_per_day=1),
    ),
    day_one=DAY_ONE,
)  # fmt: skip
PLAN = Plan(id="p", farm_id="f", name="Milk", groups=(GROUP,), water_temperature_c=40.0, allowance_share=0.05)


def test_every_step_is_told_with_its_days_and_its_powder() -> None:
    """2 qt twice, 3 qt twice, 2 qt once, weaned: 20, 30 and 10 oz a day."""
    found = phases(PLAN, GROUP, POWDER)
    assert [(p.from_day, p.to_day, p.feedings) for p in found] == [(1, 7, 2), (8, 42, 2), (43, 49, 1), (50, None, 0)]
    assert [p.day_g / OUNCE_G for p in found] == pytest.approx([20, 30, 10, 0])
    ten_oz_qt = 10 * OUNCE_G * POWDER.specific_volume_ml_per_g / QUART_ML  # what 10 oz add to 2 qt of water
    drunk = [2 + ten_oz_qt, 3 + 1.5 * ten_oz_qt, 2 + ten_oz_qt, 0]
    assert [p.feeding_ml / QUART_ML for p in found] == pytest.approx(drunk)
    by_mix = phases(PLAN, replace(GROUP, volume_means=VolumeMeans.FINISHED_MIX), POWDER)
    assert [p.feeding_ml / QUART_ML for p in by_mix] == pytest.approx([2, 3, 2, 0])
    assert [p.feeding_g / OUNCE_G for p in found] == pytest.approx([10, 15, 10, 0])
    assert [p.begins for p in found][1] == date(2026, 3, 9)


def test_it_agrees_with_what_the_plan_takes_day_by_day() -> None:
    feedings = (Feeding(name="morning", volume_ml=2 * QUART_ML), Feeding(name="night", volume_ml=QUART_ML))
    group = replace(GROUP, feedings=feedings)
    bare = replace(PLAN, groups=(group,), allowance_share=0.0)
    cold = replace(bare, cold=ColdWeather(below_c=5.0, more_powder_share=0.1, on=True))
    found = phases(cold, group, POWDER)
    for phase in found:
        on = DAY_ONE + timedelta(days=phase.from_day - 1)
        assert 10 * phase.day_g == pytest.approx(powder_of_day_g(bare, POWDER, on))


def test_without_steps_or_a_first_day_there_is_nothing_to_tell() -> None:
    assert phases(PLAN, replace(GROUP, steps=()), POWDER) == ()
    assert phases(PLAN, replace(GROUP, day_one=None), POWDER) == ()
