"""Where the spread comes from, with intervals that hold, and what follows from it."""

from __future__ import annotations

import math
import random

import pytest

from calibrator.model import BagSum, SeasonLot
from calibrator.science.bag_sums import bag_means
from calibrator.science.components import components_of_bags
from calibrator.science.errors import CannotCompute
from calibrator.science.nested import Weighed
from calibrator.science.season_spread import Do, SpreadFindings, open_above, season_spread
from tests.season_fills import components
from tests.season_rows import bags, lot

OZ_TENTH_G = 2.8349523125


def made(
    chance: random.Random, lots: int, lot_sd: float, bag_sd: float, fill_sd: float, by: str = "MK", first: int = 0,
    each: int = 2, own: float = 1.0,
) -> tuple[list[SeasonLot], list[BagSum]]:  # fmt: skip
    rows, sums = [], []
    for n in range(first, first + lots):
        one = lot(n, 0.55 * math.exp(chance.gauss(0, lot_sd)))
        values = [
            [one.level_mean_g * (1 + off + chance.gauss(0, own * fill_sd)) for _ in range(each)]
            for off in (chance.gauss(0, bag_sd) for _ in range(4))
        ]
        rows.append(one)
        sums += bags(one, values, by)
    return rows, sums


def found(rows: list[SeasonLot], sums: list[BagSum], step_g: float = 1.0) -> SpreadFindings:
    return season_spread(rows, sums, 0.02, step_g)


def _sum(own: list[Weighed]) -> BagSum:
    return BagSum(
        "w", own[0].bag, "", len(own), sum(f.scoopfuls for f in own), sum(f.scoopfuls * f.mass_g for f in own),
        sum(f.scoopfuls * f.mass_g**2 for f in own),
    )  # fmt: skip


def test_sums_tell_the_same_as_the_fills() -> None:
    chance = random.Random(1)
    fills = [[Weighed(n % 3, 300 + chance.gauss(0, 5), 1 + n % 2) for n in range(8)] for _ in range(6)]
    direct = components(fills)
    sums = [[_sum([f for f in own if f.bag == bag]) for bag in range(3)] for own in fills]
    summed = components_of_bags([bag_means(own, 1.0) for own in sums])
    assert summed.lot_sd == pytest.approx(direct.lot_sd)
    assert summed.bag_sd == pytest.approx(direct.bag_sd)
    assert summed.fill_sd == pytest.approx(direct.fill_sd)
    assert summed.fills.df == direct.fills.df


def test_intervals_of_the_spreads_hold() -> None:
    """Each 95 % interval holds in 93 to 99 of 100 seasons; the approximations err to the wide side."""
    chance = random.Random(4)
    runs, held = 300, [0, 0, 0]
    for _ in range(runs):
        c = found(*made(chance, 12, 0.02, 0.01, 0.015)).components
        intervals = (c.lot_sd_interval, c.bag_sd_interval, c.fill_sd_interval)
        for n, (interval, true) in enumerate(zip(intervals, (0.02, 0.01, 0.015), strict=True)):
            assert interval is not None
            held[n] += interval[0] <= true <= interval[1]
    assert all(0.92 <= count / runs <= 0.995 for count in held), held


def test_of_one_person_alone_the_fills_of_a_bag_scatter_as_all_of_them_do() -> None:
    """Lots that differ much: with each of them relative to another middle one figure stood there in two sizes."""
    seen = found(*made(random.Random(6), 6, 0.2, 0.01, 0.015))
    (own,) = seen.people
    assert seen.components.fill_sd == pytest.approx(own.scatter.sd_share)
    assert seen.components.fill_sd_interval == pytest.approx((own.low_share, own.high_share))


def test_kinds_are_compared_within_themselves() -> None:
    chance = random.Random(5)
    rows, sums = made(chance, 16, 0.01, 0.005, 0.01)
    light = [one._replace(density_g_per_ml=0.85 * one.density_g_per_ml, agglomerated=True) for one in rows[8:]]
    assert (found([*rows[:8], *light], sums).components.lot_sd or 0) < 0.03


def test_bags_that_differ_ask_for_more_bags_and_bags_alike_for_more_fills() -> None:
    chance = random.Random(6)
    apart = found(*made(chance, 20, 0.01, 0.03, 0.008))
    assert Do.MORE_BAGS in apart.do
    assert apart.best is not None
    assert apart.best.fills_each == 1
    assert apart.usual == (4.0, 2.0)
    alike = found(*made(chance, 20, 0.01, 0.0, 0.012))
    assert Do.MORE_FILLS in alike.do
    balanced = found(*made(chance, 40, 0.01, 0.010, 0.014))
    assert balanced.best is not None
    assert (balanced.best.bags, balanced.best.fills_each) != (4, 2)
    assert not {Do.AS_NOW, Do.MORE_BAGS, Do.MORE_FILLS} & set(balanced.do)
    assert balanced.usual_reach == pytest.approx(1.96 * math.sqrt((0.010**2 + 0.014**2 / 2) / 4), rel=0.15)


def test_few_lots_name_no_least_work_and_order_nothing() -> None:
    few = found(*made(random.Random(3), 4, 0.01, 0.010, 0.014))
    assert (few.lots_tell, few.best, few.best_fills_each) == (False, None, None)
    assert not {Do.AS_NOW, Do.MORE_BAGS, Do.MORE_FILLS} & set(few.do)
    seasons = [found(*made(random.Random(seed), 12, 0.01, 0.007, 0.0105)) for seed in range(30)]
    plans = {(one.best.bags, one.best.fills_each): one for one in seasons if one.best}
    assert Do.AS_NOW in plans[4, 2].do
    assert all(Do.AS_NOW not in one.do for plan, one in plans.items() if plan != (4, 2))


def test_wild_scooping_asks_for_practice_and_a_coarse_scale_for_a_look_at_it() -> None:
    chance = random.Random(7)
    assert Do.PRACTISE in found(*made(chance, 10, 0.01, 0.01, 0.04)).do
    steady = made(chance, 10, 0.01, 0.01, 0.006)
    assert Do.CHECK_SCALE not in found(*steady).do
    assert Do.CHECK_SCALE in found(*steady, step_g=2 * OZ_TENTH_G).do


def test_one_person_who_scatters_more_is_told_and_people_alike_are_not() -> None:
    chance = random.Random(8)
    first, sums = made(chance, 8, 0.01, 0.005, 0.01, by="RO")
    second, more = made(chance, 8, 0.01, 0.005, 0.01, by="MK", first=8, own=3.0)
    told = found([*first, *second], [*sums, *more])
    assert (told.apart, [own.name for own in told.people]) == ("MK", ["RO", "MK"])
    assert Do.PRACTISE_WITH in told.do
    assert told.people[0].low_share < 0.01 < told.people[0].high_share
    assert [own.name for own in told.scoops] == ["red cup"]
    third, alike = made(chance, 8, 0.01, 0.005, 0.01, by="MK", first=8)
    assert found([*first, *third], [*sums, *alike]).apart == ""


def test_single_fills_tell_no_spread_within_bags() -> None:
    rows, sums = made(random.Random(9), 6, 0.01, 0.01, 0.01, each=1)
    told = found(rows, sums)
    assert (told.components.fill_sd, told.components.fill_sd_interval, told.components.bag_sd_interval) == (
        None, None, None,
    )  # fmt: skip
    assert (told.best, told.people, told.do) == (None, (), ())


def test_no_fills_are_refused() -> None:
    with pytest.raises(CannotCompute, match=r"^[A-Z].*\.$"):
        found([lot(0, 0.55)], [])
    with pytest.raises(CannotCompute):
        season_spread(*made(random.Random(1), 2, 0.01, 0.01, 0.01), 0.0, 1.0)


@pytest.mark.parametrize(
    ("sd", "interval", "is_open"),
    [(0.03, (0.01, 0.2), False), (0.03, (0.01, 0.3), True), (0.058, (0.026, 1.864), True), (0.4, (0.1, 1.0), True),
     (0.0, (0.0, 0.0), False)],
)  # fmt: skip
def test_a_spread_of_a_scoopful_and_more_has_no_upper_end(
    sd: float, interval: tuple[float, float], is_open: bool
) -> None:
    assert open_above(sd, interval) is is_open


@pytest.mark.parametrize(("lots", "tell"), [(2, False), (4, False), (5, True)])
def test_five_lots_tell_how_lots_differ(lots: int, tell: bool) -> None:
    rows, sums = made(random.Random(5), lots, 0.03, 0.01, 0.01)
    assert season_spread(rows, sums, 0.05, OZ_TENTH_G).lots_tell is tell
