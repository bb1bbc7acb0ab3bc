"""What one calf's feeding takes: the powder alone where there are additives, and the allowance on top."""

from __future__ import annotations

from dataclasses import replace

import pytest

from calibrator.model import Additive, Composition, MixingRate, Plan, PlanGroup, RateBasis, VolumeMeans
from calibrator.science.bands import SOLIDS_SHARE
from calibrator.science.errors import CannotCompute
from calibrator.science.feeding import (
    counts_of,
    fed_ml,
    mix_per_calf,
    powder_per_calf_g,
    target_missed_g,
    usual_volume_ml,
)
from calibrator.science.mixing import powder_from, powder_per_water

OUNCE_G, TWO_QUARTS_ML, WARM_C = 28.349523125, 2 * 946.352946, 43.0
POWDER = powder_from(Composition())


def on_two_quarts(ounces: float) -> MixingRate:
    return MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=ounces * OUNCE_G, volume_ml=TWO_QUARTS_ML)


def group(*additives: Additive) -> PlanGroup:
    return PlanGroup(
        name="all", calves=10, volume_ml=TWO_QUARTS_ML, volume_means=VolumeMeans.WATER, rate=on_two_quarts(10),
        additives=additives,
    )  # fmt: skip


def test_the_powder_of_a_feeding_is_told_without_its_additives() -> None:
    """10 oz of powder and 5 oz of fat on 2 qt of water, and a tenth more of all of it for hoses and pails."""
    fat = Additive(name="fat", rate=on_two_quarts(5), composition=Composition(protein_pct=7.0, fat_pct=60.0))
    for extra in (0.0, 0.1):
        assert powder_per_calf_g(group(fat), POWDER, WARM_C, extra) == pytest.approx(10 * OUNCE_G * (1 + extra))
        whole = mix_per_calf(group(fat), POWDER, WARM_C, extra)
        assert whole.powder_g == pytest.approx(15 * OUNCE_G * (1 + extra))
        assert fed_ml(group(fat), whole) == pytest.approx(whole.volume_ml / (1 + extra))
    assert powder_per_calf_g(group(), POWDER, WARM_C) == pytest.approx(10 * OUNCE_G)


@pytest.mark.parametrize(("powder_g", "litres"), [(500, 3.5), (270, 2.0), (283.5, 2.0), (140, 1.0), (55, 0.375)])
def test_a_weight_of_powder_has_a_usual_volume_in_whole_steps(powder_g: float, litres: float) -> None:
    """500 g in 3.5 L: some 3.1 kg of water with it, 13.9 %."""
    volume = usual_volume_ml(powder_g, POWDER, WARM_C, 500.0)
    assert volume == pytest.approx(1000 * litres)
    made_up = MixingRate(basis=RateBasis.MADE_UP, powder_mass_g=powder_g, volume_ml=volume)
    ratio = powder_per_water(made_up, POWDER, WARM_C)
    assert SOLIDS_SHARE.low <= ratio / (1 + ratio) <= SOLIDS_SHARE.high


def test_where_no_step_will_do_the_volume_is_as_it_comes() -> None:
    """5 g at 13.5 % are 37 g of mix."""
    assert usual_volume_ml(5.0, POWDER, WARM_C, 500.0) == pytest.approx(35.6, abs=0.5)
    with pytest.raises(CannotCompute):
        usual_volume_ml(0.0, POWDER, WARM_C, 500.0)


def test_a_powder_is_held_against_the_nearest_of_the_weights_that_scoops_are_marked_for() -> None:
    assert target_missed_g(1000.0, [500.0], 0.02) == 500.0
    assert target_missed_g(505.0, [250.0, 500.0], 0.02) is None
    assert target_missed_g(300.0, [250.0, 500.0], 0.02) == 250.0
    assert target_missed_g(500.0, [], 0.02) is None


def test_a_group_has_rows_about_its_own_count() -> None:
    """24 beside 60: the range about 84 was suggested for both together and holds neither."""
    rate = MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=283.5, volume_ml=1892.7)
    young, old = (
        PlanGroup(name=name, calves=calves, volume_ml=1892.7, volume_means=VolumeMeans.WATER, rate=rate)
        for name, calves in (("young", 24), ("old", 60))
    )
    plan = Plan(id="p", farm_id="f", name="all", groups=(young, old), count_from=80, count_to=88, counts=(70,))
    assert counts_of(plan) == [70, *range(80, 89)]
    assert counts_of(plan, young) == [*range(20, 29)]  # 70 is nearer to 60
    assert counts_of(plan, old) == [*range(56, 65), 70]
    wide = replace(plan, count_from=20, count_to=100, count_step=10, counts=())
    assert counts_of(wide, young) == [20, 24, *range(30, 101, 10)]  # it holds the group: as it was typed
    apart = replace(plan, count_from=200, count_to=210, counts=())
    assert counts_of(apart, young) == [24, *range(200, 211)]  # meant for something else


def test_a_count_of_ones_own_goes_to_the_group_that_is_nearest_to_it() -> None:
    rate = MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=283.5, volume_ml=1892.7)
    young, old, none = (
        PlanGroup(name=name, calves=calves, volume_ml=1892.7, volume_means=VolumeMeans.WATER, rate=rate)
        for name, calves in (("young", 20), ("old", 60), ("none", 0))
    )
    plan = Plan(id="p", farm_id="f", name="all", groups=(young, old, none), counts=(1, 30, 40, 500))
    assert counts_of(plan) == [1, 30, 40, *range(76, 85), 500]
    assert counts_of(plan, young) == [1, *range(16, 25), 30, 40]
    assert counts_of(plan, old) == [40, *range(56, 65), 500]  # as near to both: nobody can tell
    assert counts_of(plan, none) == []
    unknown = replace(plan, groups=(replace(young, calves=0), replace(old, calves=0)))
    for group in unknown.groups:
        assert counts_of(unknown, group) == [1, 30, 40, 500]


@pytest.mark.parametrize(
    ("calves", "step", "rows"),
    [
        (109, 1, [*range(105, 114)]),
        (3, 1, [1, 2, 3, 4, 5, 6, 7]),
        (60, 5, [40, 45, 50, 55, 60, 65, 70, 75, 80]),
        (0, 1, []),
    ],
)
def test_without_a_range_the_rows_follow_the_calves(calves: int, step: int, rows: list[int]) -> None:
    """Kept as figures, those about yesterday's count hung there when calves were moved."""
    rate = MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=283.5, volume_ml=1892.7)
    group = PlanGroup(name="all", calves=calves, volume_ml=1892.7, volume_means=VolumeMeans.WATER, rate=rate)
    plan = Plan(id="p", farm_id="f", name="all", groups=(group,), count_step=step)
    assert counts_of(plan) == counts_of(plan, group) == rows
