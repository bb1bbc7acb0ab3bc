"""Batch tables: one ratio for every count, fewest batches, counts, days, rounding."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calibrator.model import Composition, MixingRate, Plan, PlanGroup, RateBasis, Vessel, VolumeMeans
from calibrator.science import batch, mixing
from calibrator.science.errors import CannotCompute
from calibrator.science.scale import least_additive_g

lawful = settings(deadline=None, max_examples=60)
OUNCE_G, QUART_ML = 28.349523125, 946.352946
POWDER = mixing.powder_from(Composition())
TEN_ON_TWO = MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=10 * OUNCE_G, volume_ml=2 * QUART_ML)
GROUP = PlanGroup(name="hutches", calves=109, volume_ml=2 * QUART_ML, volume_means=VolumeMeans.WATER, rate=TEN_ON_TWO)
PLAN = Plan(id="p", farm_id="f", name="morning", groups=(GROUP,))
CART = Vessel(id="c", farm_id="f", name="cart", rim_volume_ml=50 * 4 * QUART_ML, usable_share=0.9)


def plan_of(*groups: PlanGroup, **more: object) -> Plan:
    return replace(PLAN, groups=groups, **more)  # type: ignore[arg-type]


@lawful
@given(
    st.lists(st.integers(1, 5000), min_size=1, max_size=30),
    st.sampled_from(list(VolumeMeans)),
    st.floats(0, 0.3),
)
def test_every_row_has_the_same_ratio(counts: list[int], means: VolumeMeans, allowance: float) -> None:
    plan = plan_of(replace(GROUP, volume_means=means), allowance_share=allowance)
    wanted = mixing.powder_per_water(TEN_ON_TWO, POWDER, plan.water_temperature_c)
    for row in batch.table(plan, POWDER, CART, counts):
        assert row.total.ratio == pytest.approx(wanted, rel=1e-12)
        assert row.per_batch.ratio == pytest.approx(wanted, rel=1e-12)
        assert row.per_batch.powder_g * row.batches == pytest.approx(row.total.powder_g, rel=1e-12)
        assert row.total.mass_g == pytest.approx(row.total.water_g + row.total.powder_g, rel=1e-12)


def test_109_111_and_120_calves_are_fed_alike() -> None:
    """Common practice, no source: counts change daily, the ratio must not."""
    rows = batch.table(PLAN, POWDER, None, [109, 111, 120])
    assert [row.total.powder_g / row.calves for row in rows] == pytest.approx([10 * OUNCE_G] * 3, rel=1e-12)
    assert [row.total.water_ml / row.calves for row in rows] == pytest.approx([2 * QUART_ML] * 3, rel=1e-12)


def test_the_series_from_two_quarts_to_125_gallons() -> None:
    """Common practice, no source: 2 qt, 1 gal, 5 gal … 125 gal take 10, 20, 100 … 2500 oz."""
    for gallons, ounces in [(0.5, 10), (1, 20), (5, 100), (10, 200), (25, 500), (50, 1000), (125, 2500)]:
        row = batch.table(PLAN, POWDER, None, [round(gallons * 2)])[0]
        assert row.total.water_ml == pytest.approx(gallons * 4 * QUART_ML, rel=1e-12)
        assert row.total.powder_g == pytest.approx(ounces * OUNCE_G, rel=1e-12)


def test_volume_per_calf_as_water_or_as_finished_mix() -> None:
    as_mix = replace(GROUP, volume_means=VolumeMeans.FINISHED_MIX)
    water = batch.group_mix(GROUP, 10, POWDER, 43.0)
    mix = batch.group_mix(as_mix, 10, POWDER, 43.0)
    assert water.water_ml == pytest.approx(20 * QUART_ML)
    assert mix.volume_ml == pytest.approx(20 * QUART_ML)
    assert water.volume_ml > mix.volume_ml


def test_allowance_is_mixed_on_top() -> None:
    plain = batch.group_mix(GROUP, 10, POWDER, 43.0)
    more = batch.group_mix(GROUP, 10, POWDER, 43.0, 0.05)
    assert more.powder_g == pytest.approx(1.05 * plain.powder_g)
    assert more.solids_share == pytest.approx(plain.solids_share)


@lawful
@given(st.integers(1, 3000), st.floats(500, 5e5), st.floats(0.3, 1.0))
def test_fewest_batches_fit_and_one_fewer_would_not(calves: int, rim: float, usable: float) -> None:
    vessel = replace(CART, rim_volume_ml=rim, usable_share=usable)
    row = batch.table(PLAN, POWDER, vessel, [calves])[0]
    room = rim * usable
    assert row.per_batch.volume_ml <= room * (1 + 1e-8)
    if row.batches > 1:
        assert row.total.volume_ml / (row.batches - 1) > room * (1 - 1e-8)
    assert row.fits == (row.batches == 1)
    assert row.overflow_ml == max(0.0, row.total.volume_ml - rim)
    assert (row.over_usable_ml == 0.0) == row.fits


@lawful
@given(st.floats(500, 5e5), st.floats(500, 8000))
def test_the_most_calves_fit_and_one_more_would_not(rim: float, per_calf: float) -> None:
    vessel = replace(CART, rim_volume_ml=rim)
    most = batch.most_calves(vessel, per_calf)
    assert most * per_calf <= 0.9 * rim * (1 + 1e-8)
    assert (most + 1) * per_calf > 0.9 * rim * (1 - 1e-8)


def test_a_vessel_filled_exactly_takes_one_batch() -> None:
    per_calf = batch.mix_per_calf(GROUP, POWDER, 43.0).volume_ml
    exact = replace(CART, rim_volume_ml=90 * per_calf / 0.9)
    table = batch.table(PLAN, POWDER, exact, [90, 91])
    assert [row.batches for row in table] == [1, 2]
    assert table.most_calves == 90


def test_without_a_vessel_it_is_one_batch() -> None:
    row = batch.table(PLAN, POWDER, None, [500])[0]
    assert (row.batches, row.fits, row.overflow_ml, row.most_calves) == (1, True, 0.0, None)


def test_a_table_reads_like_a_list_and_like_columns() -> None:
    table = batch.table(PLAN, POWDER, CART, [10, 20, 30])
    assert len(table) == 3
    assert [row.calves for row in table[1:]] == [20, 30]
    assert table[-1] == table[2]
    with pytest.raises(IndexError):
        table[3]
    for name in ("water_ml", "powder_g", "volume_ml"):
        assert list(getattr(table, name)) == pytest.approx([getattr(row.total, name) for row in table])


def test_groups_of_one_rate_share_a_table_in_todays_proportion() -> None:
    small = replace(GROUP, calves=30)
    large = replace(GROUP, calves=10, volume_ml=3 * QUART_ML)
    empty = replace(GROUP, calves=0, rate=replace(TEN_ON_TWO, powder_mass_g=1.0))
    row = batch.table(plan_of(small, large, empty), POWDER, None, [40])[0]
    assert row.total.water_ml == pytest.approx((60 + 30) * QUART_ML)
    assert row.total.powder_g == pytest.approx((300 + 150) * OUNCE_G)


def test_groups_of_different_rates_have_a_table_each() -> None:
    strong = replace(GROUP, rate=replace(TEN_ON_TWO, powder_mass_g=12 * OUNCE_G))
    plan = plan_of(GROUP, strong)
    with pytest.raises(CannotCompute, match="different rates"):
        batch.table(plan, POWDER, None, [10])
    row = batch.table(plan, POWDER, None, [10], group=strong)[0]
    assert row.total.powder_g == pytest.approx(120 * OUNCE_G)


@pytest.mark.parametrize(
    ("plan", "counts", "sentence"),
    [
        (plan_of(), [1], "at least one group"),
        (PLAN, [0], "at least one calf"),
        (PLAN, [10**30], "1,000,000 calves"),
        (plan_of(replace(GROUP, calves=0), replace(GROUP, calves=0)), [1], "how many calves"),
        (plan_of(replace(GROUP, volume_ml=0.0)), [1], "volume per calf"),
        (plan_of(GROUP, allowance_share=math.nan), [1], "allowance"),
        (plan_of(GROUP, water_temperature_c=150.0), [1], "water temperature"),
    ],
)
def test_impossible_plans_are_refused(plan: Plan, counts: list[int], sentence: str) -> None:
    with pytest.raises(CannotCompute, match=sentence):
        batch.table(plan, POWDER, None, counts)


def test_no_calves_are_no_group_mix() -> None:
    with pytest.raises(CannotCompute, match="number of calves"):
        batch.group_mix(GROUP, 0, POWDER, 43.0)


def test_counts_are_the_range_the_farms_own_and_todays() -> None:
    plan = plan_of(GROUP, count_from=0, count_to=30, count_step=10, counts=(111, 20, 120))
    assert batch.counts_of(plan) == [10, 20, 30, 109, 111, 120]
    assert batch.counts_of(plan_of(replace(GROUP, calves=0))) == []
    with pytest.raises(CannotCompute, match="step"):
        batch.counts_of(replace(plan, count_step=0))
    with pytest.raises(CannotCompute, match="larger step"):
        batch.counts_of(replace(plan, count_to=10**12))


def test_rounding_the_water_first_leaves_only_the_scales_step() -> None:
    mix = batch.group_mix(GROUP, 7, POWDER, 43.0)
    made = batch.rounded(mix, POWDER, 43.0, water_step_ml=QUART_ML / 4, powder_step_g=2.0)
    assert made.mix.water_ml / (QUART_ML / 4) == pytest.approx(round(made.mix.water_ml / (QUART_ML / 4)))
    assert made.mix.powder_g / 2.0 == pytest.approx(round(made.mix.powder_g / 2.0))
    assert abs(made.ratio_error_share) <= 1.0 / made.mix.powder_g * (1 + 1e-9)
    exact = batch.rounded(mix, POWDER, 43.0, water_step_ml=0.0, powder_step_g=0.0)
    assert exact.ratio_error_share == pytest.approx(0.0, abs=1e-12)


def test_37_calves_of_280_g_take_what_anybody_reckons() -> None:
    rate = MixingRate(basis=RateBasis.MADE_UP, powder_mass_g=280.0, volume_ml=1784.0)
    group = replace(GROUP, volume_ml=1784.0, volume_means=VolumeMeans.FINISHED_MIX, rate=rate)
    for calves in (33, 37):
        mix = batch.group_mix(group, calves, POWDER, 43.0)
        made = batch.rounded(mix, POWDER, 43.0, water_step_ml=100.0, powder_step_g=1.0)
        assert made.mix.powder_g == pytest.approx(280 * calves)
        assert not made.for_water
    one = batch.rounded(batch.group_mix(group, 1, POWDER, 43.0), POWDER, 43.0, water_step_ml=100.0, powder_step_g=1.0)
    assert one.fill_to_ml is None
    assert one.for_water  # 1.6 L rounded by 1 %: there the powder keeps to the water


@pytest.mark.parametrize(("calves", "quarts", "ounces"), [(3, 9, 31.5), (4, 12, 42.0), (5, 15, 52.5), (6, 18, 63.0)])
def test_what_is_made_up_to_a_volume_is_filled_to_it_with_the_powder_of_its_rate(
    calves: int, quarts: int, ounces: float
) -> None:
    """7.0 oz made up to 2 qt, 3 qt a calf: anybody reckons 42.0 oz made up to 3 gal for four."""
    ounce_g, step = 28.349523125, QUART_ML / 4
    rate = MixingRate(basis=RateBasis.MADE_UP, powder_mass_g=7 * ounce_g, volume_ml=2 * QUART_ML)
    group = replace(GROUP, volume_ml=3 * QUART_ML, volume_means=VolumeMeans.FINISHED_MIX, rate=rate)
    mix = batch.group_mix(group, calves, POWDER, 43.0)
    made = batch.rounded(mix, POWDER, 43.0, water_step_ml=step, powder_step_g=0.1 * ounce_g, made_up=True)
    assert made.mix.powder_g / ounce_g == pytest.approx(ounces)
    assert made.fill_to_ml == pytest.approx(quarts * QUART_ML)
    assert made.mix.volume_ml == pytest.approx(quarts * QUART_ML)
    assert 0 <= made.mix.water_ml - made.drawn_ml < step
    assert made.drawn_ml / step == pytest.approx(round(made.drawn_ml / step))
    assert not made.for_water


def test_a_made_up_volume_that_rounding_moves_far_takes_its_powder_along() -> None:
    """1,784 mL are filled to 1.8 L, 280 g become 282.5; by a step of 2 L the water lies below a whole one: it stays."""
    rate = MixingRate(basis=RateBasis.MADE_UP, powder_mass_g=280.0, volume_ml=1784.0)
    group = replace(GROUP, volume_ml=1784.0, volume_means=VolumeMeans.FINISHED_MIX, rate=rate)
    mix = batch.group_mix(group, 1, POWDER, 43.0)
    made = batch.rounded(mix, POWDER, 43.0, water_step_ml=100.0, powder_step_g=0.0, made_up=True)
    assert made.for_water
    assert (made.fill_to_ml, made.mix.powder_g) == (pytest.approx(1800.0), pytest.approx(280.0 * 1800 / 1784))
    assert made.ratio_error_share == pytest.approx(0.0, abs=1e-9)
    coarse = batch.rounded(mix, POWDER, 43.0, water_step_ml=2000.0, powder_step_g=0.0, made_up=True)
    assert coarse.drawn_ml == coarse.mix.water_ml


@lawful
@given(st.integers(1, 2000), st.floats(10.0, 2000.0))
def test_rounding_never_changes_the_ratio_by_more_than_anybody_sees(calves: int, water_step_ml: float) -> None:
    mix = batch.group_mix(GROUP, calves, POWDER, 43.0)
    made = batch.rounded(mix, POWDER, 43.0, water_step_ml=water_step_ml, powder_step_g=0.0)
    assert abs(made.ratio_error_share) <= batch.WATER_CLOSE * 1.01


def test_rounding_plain_water_and_rounding_it_away() -> None:
    nothing = mixing.mix_on_water(1000.0, 0.0, POWDER, 43.0)
    assert batch.rounded(nothing, POWDER, 43.0, water_step_ml=10.0, powder_step_g=1.0).ratio_error_share == 0.0
    with pytest.raises(CannotCompute, match="water"):
        batch.rounded(nothing, POWDER, 43.0, water_step_ml=1e5, powder_step_g=1.0)
    with pytest.raises(CannotCompute, match="step of the scale"):
        batch.rounded(nothing, POWDER, 43.0, water_step_ml=1.0, powder_step_g=-1.0)


def test_volumes_go_by_the_step_within_their_range() -> None:
    assert batch.waters_of(0.0, 1000.0, 250.0) == [250.0, 500.0, 750.0, 1000.0]
    assert batch.waters_of(300.0, 800.0, 250.0) == [500.0, 750.0]
    for least, most, step in ((0.0, 100.0, 0.0), (0.0, 100.0, 250.0), (900.0, 300.0, 100.0), (0.0, 1e6, 1.0)):
        with pytest.raises(CannotCompute, match=r"^[A-Z].*\.$"):
            batch.waters_of(least, most, step)


def test_a_table_by_volume_begins_with_all_that_the_vessel_holds_in_forty_rows_at_most() -> None:
    """A tank of 100 L with 90 % to use; the powder takes up room beside the water."""
    tank = Vessel(id="t", farm_id="f", name="tank", rim_volume_ml=100_000.0, usable_share=0.9)
    rows = batch.table(PLAN, POWDER, tank, [1])
    least, most, step = batch.usual_waters(rows, 109, 500.0)
    assert rows.per_calf.volume_ml / rows.per_calf.water_ml * most == pytest.approx(90_000.0)
    assert (least, step) == (5000.0, 5000.0)
    assert len(batch.waters_of(least, most, step)) <= 40
    free = batch.table(PLAN, POWDER, None, [1])
    assert batch.usual_waters(free, 109, 500.0)[1] == pytest.approx(109 * rows.per_calf.water_ml)
    assert batch.usual_waters(free, 0, 500.0)[1] == pytest.approx(10 * rows.per_calf.water_ml)
    assert batch.calves_served(90_000.0, rows.per_calf.volume_ml) == batch.most_calves(tank, rows.per_calf.volume_ml)


def test_powder_and_additives_are_each_brought_to_the_scales_step() -> None:
    """100.4 g of powder and 10.4 g of an additive on a scale of 1 g: 100 g and 10 g, not 111 g together."""
    mix = mixing.mix_of(1000.0, 110.8, POWDER, 43.0)
    shares = (100.4 / 110.8, 10.4 / 110.8)
    made = batch.rounded(mix, POWDER, 43.0, water_step_ml=0.0, powder_step_g=1.0, shares=shares)
    assert made.mix.powder_g == pytest.approx(110.0)
    assert made.ratio_error_share == pytest.approx(110.0 / 110.8 - 1)
    kept = batch.rounded(
        mix,
        POWDER,
        43.0,
        water_step_ml=0.0,
        powder_step_g=1.0,
        shares=shares,
        least_additive_g=least_additive_g(2.0),
    )
    assert kept.mix.powder_g == pytest.approx(110.4)  # half a step of 2 g would be a tenth of it


@lawful
@given(st.floats(500.0, 100_000.0), st.floats(0.05, 0.3), st.sampled_from([0.0, 50.0, 100.0]))
def test_water_that_goes_by_scoopfuls_keeps_the_rate_but_for_its_step(water: float, rate: float, step: float) -> None:
    wanted = mixing.mix_of(1000.0, 1000.0 * rate, POWDER, 43.0)
    powder_g = wanted.ratio * mixing.mix_of(water, 1.0, POWDER, 43.0).water_g
    made = batch.counted_out(wanted, powder_g, water, POWDER, 43.0, water_step_ml=step)
    assert abs(made.mix.water_ml - water) <= step / 2 * (1 + 1e-6) + 1e-6
    assert (1 + made.ratio_error_share) * made.mix.water_ml == pytest.approx(water)
