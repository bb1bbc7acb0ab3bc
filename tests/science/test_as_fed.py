"""The plan of a day, by plain arithmetic over a calendar."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from calibrator.model import (
    Additive,
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
from calibrator.science.as_fed import (
    Fed,
    PlansFrom,
    Rest,
    as_fed,
    day_plan,
    fed_between,
    fed_on,
    feedings_differ,
    feedings_on,
    more_powder,
    most_feedings,
    powder_of_day_g,
    step_on,
)
from calibrator.science.errors import CannotCompute
from calibrator.science.feeding import mix_per_calf, recipe_of
from calibrator.science.mixing import powder_from, powder_per_water

OUNCE_G, QUART_ML = 28.349523125, 946.352946
POWDER = powder_from(Composition())
DAY_ONE = date(2026, 3, 2)
TEN_ON_TWO = MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=10 * OUNCE_G, volume_ml=2 * QUART_ML)
STEPS = (
    FeedingStep(from_day=8, volume_ml=3 * QUART_ML),
    FeedingStep(from_day=43, volume_ml=2 * QUART_ML, feedings_per_day=1),
    FeedingStep(from_day=50, volume_ml=0.0, feedings_per_day=0),
)


def group(**how: object) -> PlanGroup:
    told = PlanGroup(name="Young", calves=10, volume_ml=2 * QUART_ML, volume_means=VolumeMeans.WATER, rate=TEN_ON_TWO)
    return replace(told, **how)  # type: ignore[arg-type]


def plan(*groups: PlanGroup, cold: ColdWeather | None = None) -> Plan:
    return Plan(id="p", farm_id="f", name="Milk", groups=groups, cold=cold, water_temperature_c=40.0)


@pytest.mark.parametrize(
    ("day", "quarts", "feedings"), [(1, 2, 2), (7, 2, 2), (8, 3, 2), (42, 3, 2), (43, 2, 1), (49, 2, 1), (50, 0, 0)]
)
def test_volume_and_feedings_go_by_the_calves_day(day: int, quarts: float, feedings: int) -> None:
    stepped = group(steps=STEPS, day_one=DAY_ONE)
    on = DAY_ONE + timedelta(days=day - 1)
    assert feedings_on(stepped, on) == feedings
    fed, rests = as_fed(plan(stepped), on, 0, POWDER)
    if feedings:
        assert fed.groups[0].volume_ml == pytest.approx(quarts * QUART_ML)
        assert rests == (None,)
    else:
        assert (fed.groups[0].calves, rests) == (0, (Rest.WEANED,))
    assert powder_of_day_g(plan(stepped), POWDER, on) == pytest.approx(10 * feedings * quarts * 5 * OUNCE_G)


def test_without_a_day_one_there_is_no_step() -> None:
    assert step_on(group(steps=STEPS), DAY_ONE + timedelta(days=60)) is None
    assert step_on(group(steps=STEPS, day_one=DAY_ONE), DAY_ONE) is None


def test_feedings_that_differ_have_their_own_volume_and_rate() -> None:
    strong = replace(TEN_ON_TWO, powder_mass_g=12 * OUNCE_G)
    feedings = (
        Feeding(name="morning", volume_ml=2 * QUART_ML),
        Feeding(name="noon", volume_ml=QUART_ML, rate=strong),
        Feeding(name="night", volume_ml=2 * QUART_ML),
    )
    three = plan(group(feedings=feedings), group(name="Old"))
    assert feedings_differ(three, DAY_ONE)
    assert most_feedings(three, DAY_ONE) == 3
    noon, rests = as_fed(three, DAY_ONE, 1, POWDER)
    assert (noon.groups[0].volume_ml, noon.groups[0].rate) == (QUART_ML, strong)
    assert rests == (None, None)
    night, rests = as_fed(three, DAY_ONE, 2, POWDER)
    assert rests == (None, Rest.NOT_NOW)
    assert night.groups[1].calves == 0
    assert powder_of_day_g(three, POWDER, DAY_ONE) == pytest.approx((10 * (10 + 6 + 10) + 10 * 20) * OUNCE_G)


def test_the_feedings_of_a_day_are_counted_with_their_powder_and_no_additive() -> None:
    """Ten calves three times at 10, 6 and 10 oz, others twice at 10 oz: 50 feedings of 9.2 oz."""
    strong = replace(TEN_ON_TWO, powder_mass_g=12 * OUNCE_G)
    feedings = (
        Feeding(name="morning", volume_ml=2 * QUART_ML),
        Feeding(name="noon", volume_ml=QUART_ML, rate=strong),
        Feeding(name="night", volume_ml=2 * QUART_ML),
    )
    fat = Additive(name="Fat", rate=replace(TEN_ON_TWO, powder_mass_g=2 * OUNCE_G))
    fed = fed_on(plan(group(feedings=feedings, additives=(fat,)), group(name="Old")), POWDER, DAY_ONE)
    assert fed.feedings == 50
    assert fed.powder_g == pytest.approx(460 * OUNCE_G)
    assert fed.each_g == pytest.approx(9.2 * OUNCE_G)
    assert fed_on(plan(group(calves=0)), POWDER, DAY_ONE).each_g is None


def test_what_was_fed_between_two_days_goes_by_the_plans_and_steps_of_each() -> None:
    """Ten calves from day 1 twice 10 oz, from day 8 twice 15 oz; ten more, not stepped, told on day 6.

    Days 3 to 10: 5 × 20 + 3 × 20 feedings of the first, 5 × 20 of the others.
    """
    stepped, more = plan(group(steps=STEPS, day_one=DAY_ONE)), plan(group(name="Old"))
    told = (PlansFrom(DAY_ONE + timedelta(days=3), (stepped,)), PlansFrom(DAY_ONE + timedelta(days=5), (stepped, more)))
    fed = fed_between(told, POWDER, DAY_ONE + timedelta(days=2), DAY_ONE + timedelta(days=10))
    assert fed.feedings == 5 * 20 + 3 * 20 + 5 * 20
    assert fed.powder_g == pytest.approx((5 * 20 * 10 + 3 * 20 * 15 + 5 * 20 * 10) * OUNCE_G)
    assert fed_between(told, POWDER, DAY_ONE, DAY_ONE) == fed_between((), POWDER, DAY_ONE, date.max) == Fed()


def test_a_step_scales_feedings_that_differ() -> None:
    feedings = (Feeding(name="morning", volume_ml=2 * QUART_ML), Feeding(name="noon", volume_ml=QUART_ML))
    stepped = plan(group(feedings=feedings, steps=STEPS, day_one=DAY_ONE))
    on = DAY_ONE + timedelta(days=10)
    volumes = [as_fed(stepped, on, feeding, POWDER)[0].groups[0].volume_ml / QUART_ML for feeding in (0, 1)]
    assert volumes == pytest.approx([3.0, 1.5])
    assert feedings_on(stepped.groups[0], DAY_ONE + timedelta(days=44)) == 1


def test_a_plain_plan_is_fed_as_it_stands() -> None:
    plain = plan(group(), group(name="Old"))
    fed, rests = as_fed(plain, DAY_ONE, 1, POWDER)
    assert (fed, rests) == (plain, (None, None))
    assert not feedings_differ(plain, DAY_ONE)
    assert powder_of_day_g(plain, POWDER, DAY_ONE) == pytest.approx(2 * 10 * 2 * 10 * OUNCE_G)
    assert most_feedings(plan(), DAY_ONE) == 0


def test_a_days_powder_counts_every_feeding_of_every_group_and_the_allowance() -> None:
    """109 calves twice and 10 three times, 10 oz each and a tenth more for hoses and pails."""
    groups = (group(calves=109), group(feedings_per_day=3), group(calves=0))
    told = replace(plan(*groups), allowance_share=0.1)
    assert powder_of_day_g(told, POWDER, DAY_ONE) == pytest.approx(1.1 * (109 * 2 + 10 * 3) * 10 * OUNCE_G)


def test_the_cold_adds_powder_or_a_feeding_only_while_it_is_switched_on() -> None:
    cold = ColdWeather(below_c=5.0, more_powder_share=0.1, further_feedings=1)
    off, on = plan(group(), cold=cold), plan(group(), cold=replace(cold, on=True))
    plain = powder_of_day_g(plan(group()), POWDER, DAY_ONE)
    assert powder_of_day_g(off, POWDER, DAY_ONE) == pytest.approx(plain)
    assert powder_of_day_g(on, POWDER, DAY_ONE) == pytest.approx(plain * 1.1 * 3 / 2)
    weaned = plan(group(steps=STEPS, day_one=DAY_ONE), cold=replace(cold, on=True))
    assert powder_of_day_g(weaned, POWDER, DAY_ONE + timedelta(days=60)) == 0.0


@pytest.mark.parametrize("basis", list(RateBasis))
def test_a_share_more_powder_in_every_basis(basis: RateBasis) -> None:
    """A tenth more: on the same volume where the rate is told by one, else on the same water."""
    rate = MixingRate(basis=basis, powder_mass_g=130.0, volume_ml=1000.0, solids_share=0.12)
    more = more_powder(rate, 0.1, POWDER, 40.0)
    if basis in (RateBasis.SOLIDS, RateBasis.DRY_MATTER):
        ratios = [powder_per_water(each, POWDER, 40.0) for each in (rate, more)]
        assert ratios[1] / ratios[0] == pytest.approx(1.1)
    else:
        assert more.powder_mass_g == pytest.approx(143.0)
    with pytest.raises(CannotCompute, match="More powder"):
        more_powder(rate, 1.5, POWDER, 40.0)


def test_the_plan_of_a_day_holds_each_feeding_once_and_no_weaned_group() -> None:
    """However its feedings are told apart, the day takes the same powder."""
    feedings = (Feeding(name="morning", volume_ml=2 * QUART_ML), Feeding(name="night", volume_ml=QUART_ML))
    cold = ColdWeather(below_c=5.0, more_powder_share=0.1, further_feedings=1, on=True)
    told = plan(
        group(feedings=feedings, steps=STEPS, day_one=DAY_ONE), group(name="Old"), group(name="Plain"), cold=cold
    )
    for days, names in (
        (10, ["Young, morning", "Young, night", "Old", "Plain"]),
        (45, ["Young, morning", "Young, night", "Old", "Plain"]),
        (60, ["Old", "Plain"]),
    ):
        on = DAY_ONE + timedelta(days=days)
        shown = day_plan(told, on, POWDER)
        assert [each.name for each in shown.groups] == names
        within = replace(shown, cold=None)  # it is reckoned in
        assert powder_of_day_g(within, POWDER, on) == pytest.approx(powder_of_day_g(told, POWDER, on))


def test_it_matters_which_feeding_is_mixed_where_groups_get_other_numbers_of_them_or_one_has_its_own() -> None:
    twice, thrice = group(feedings_per_day=2), group(feedings_per_day=3)
    morning = Feeding(name="morning", volume_ml=QUART_ML)
    assert feedings_differ(plan(twice, thrice), DAY_ONE)
    assert not feedings_differ(plan(group(feedings=(morning,))), DAY_ONE)
    assert feedings_differ(plan(group(feedings=(morning, replace(morning, name="night")))), DAY_ONE)


@pytest.mark.parametrize(
    ("names", "told"),
    [(("morning",), ["Young"]), (("", ""), ["Young"]), (("morning", "night"), ["Young, morning", "Young, night"])],
)
def test_feedings_are_groups_of_their_own_only_where_several_have_names(
    names: tuple[str, ...], told: list[str]
) -> None:
    feedings = tuple(Feeding(name=name, volume_ml=QUART_ML) for name in names)
    shown = day_plan(plan(group(feedings=feedings)), DAY_ONE, POWDER)
    assert [each.name for each in shown.groups] == told


TWO, THREE, ONE = (n * QUART_ML for n in (2, 3, 1))


def doses_g(fed: Plan) -> list[float]:
    """What each calf of each group gets of its one additive, g."""
    found = []
    for each in fed.groups:
        shares = recipe_of(each, POWDER, fed.water_temperature_c).shares
        found.append(mix_per_calf(each, POWDER, fed.water_temperature_c).powder_g * shares[1])
    return found


@pytest.mark.parametrize("means", list(VolumeMeans))
def test_an_additive_stays_what_a_calf_gets_whatever_volume_it_is_in(means: VolumeMeans) -> None:
    """20 g for each calf and feeding is 20 g in three quarts and in one, and on a cold day."""
    basis = RateBasis.ON_WATER if means is VolumeMeans.WATER else RateBasis.PER_FINISHED
    dose = Additive(name="salts", rate=MixingRate(basis=basis, powder_mass_g=20.0, volume_ml=TWO))
    steps = (FeedingStep(from_day=8, volume_ml=THREE), FeedingStep(from_day=43, volume_ml=ONE, feedings_per_day=1))
    stepped = group(volume_means=means, additives=(dose,), steps=steps, day_one=DAY_ONE)
    cold = ColdWeather(below_c=5.0, more_powder_share=0.2, on=True)
    for fed in (plan(stepped), plan(stepped, cold=cold)):
        for day in (1, 8, 43):
            then, _ = as_fed(fed, DAY_ONE + timedelta(days=day - 1), 0, POWDER)
            assert doses_g(then) == pytest.approx([20.0]), day
    feedings = (Feeding(name="Morning", volume_ml=THREE), Feeding(name="Evening", volume_ml=TWO))
    differs = plan(group(volume_means=means, additives=(dose,), feedings=feedings))
    assert doses_g(day_plan(differs, DAY_ONE, POWDER)) == pytest.approx([20.0, 20.0])


def test_groups_of_one_dose_in_other_volumes_are_mixed_apart() -> None:
    """As strong in powder, but not in what is weighed in besides."""
    dose = Additive(name="salts", rate=MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=20.0, volume_ml=TWO))
    alike = group(additives=(dose,))
    stepped = group(additives=(dose,), steps=(FeedingStep(from_day=1, volume_ml=THREE),), day_one=DAY_ONE)
    first, second = as_fed(plan(alike, stepped), DAY_ONE, 0, POWDER)[0].groups
    assert first.additives != second.additives
    assert as_fed(plan(alike, alike), DAY_ONE, 0, POWDER)[0].groups[0].additives == (dose,)
