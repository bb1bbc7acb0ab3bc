"""Bags and fills: means, mean squares, pooled history, and the rule that picks the spread."""

from __future__ import annotations

import math
from datetime import datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.model import Fill, FillWay
from calibrator.science.errors import CannotCompute
from calibrator.science.nested import Weighed, table, weighed
from calibrator.science.spread import IntervalRule, Spread, spread_of
from calibrator.science.stats import (
    deletion_t,
    expanded,
    mean_of,
    t_quantile,
    two_sided_t,
    welch_satterthwaite,
)
from tests.season_fills import pool_bag_history

FOUR_BY_TWO = [
    Weighed(b, m)
    for b, m in ((1, 290.0), (1, 294.0), (2, 284.0), (2, 288.0), (3, 296.0), (3, 292.0), (4, 290.0), (4, 290.0))
]


def fill(
    mass_g: float, bag: int = 1, way: FillWay = FillWay.LEVEL, scoopfuls: int = 1, struck: str | None = None
) -> Fill:
    return Fill(
        id="f", weigh_in_id="w", way=way, bag=bag, mass_g=mass_g, typed="", by="ab", at=datetime(2024, 3, 1),
        scoopfuls=scoopfuls, struck_reason=struck,
    )  # fmt: skip


def test_only_fills_that_count_count_each_as_one_scoopful() -> None:
    found = weighed(
        [fill(290), fill(870, 2, scoopfuls=3), fill(280, way=FillWay.TO_MARK), fill(1, struck="spilt")], FillWay.LEVEL
    )
    assert found == (Weighed(1, 290.0), Weighed(2, 290.0, 3))


def test_mean_squares_by_hand() -> None:
    t = table(FOUR_BY_TWO)
    # Bag means 292, 286, 294, 290; deviations 1.5, −4.5, 3.5, −0.5.
    assert t.mean_g == 290.5
    assert t.bag_ms == pytest.approx((1.5**2 + 4.5**2 + 3.5**2 + 0.5**2) / 3)
    assert t.fill_ms == pytest.approx((8 + 8 + 8 + 0) / 4)
    assert (t.bag_df, t.fill_df, t.per_fill, t.weighings, t.range_g) == (3, 4, 0.5, 8, 12.0)
    assert t.reading_share == pytest.approx(1 / 8)


def test_several_scoopfuls_together_weigh_in_by_their_number() -> None:
    t = table([Weighed(1, 290.0, 3), Weighed(1, 294.0, 1)])
    assert t.mean_g == 291.0
    assert t.fill_ms == pytest.approx(3 * 1.0 + 9.0)
    assert (t.per_fill, t.per_weighing, t.reading_share) == (0.25, 0.5, 2 / 16)


@pytest.mark.parametrize(
    "fills",
    [[], [Weighed(1, 0.0)], [Weighed(1, -1.0)], [Weighed(1, math.nan)], [Weighed(1, math.inf)], [Weighed(1, 290.0, 0)]],
)
def test_impossible_fills_are_refused(fills: list[Weighed]) -> None:
    with pytest.raises(CannotCompute, match=r"^[A-Z].*\.$"):
        table(fills)


masses = st.floats(200, 400)
weigh_ins = st.lists(st.tuples(st.integers(1, 5), masses, st.integers(1, 3)), min_size=1, max_size=20)


@given(weigh_ins, st.floats(0.1, 10))
def test_a_larger_scoop_scales_everything(rows: list[tuple[int, float, int]], factor: float) -> None:
    small = table([Weighed(*row) for row in rows])
    large = table([Weighed(bag, mass * factor, k) for bag, mass, k in rows])
    assert large.mean_g == pytest.approx(factor * small.mean_g)
    assert large.bag_ms == pytest.approx(factor**2 * small.bag_ms, abs=1e-7)
    assert large.fill_ms == pytest.approx(factor**2 * small.fill_ms, abs=1e-7)


@given(weigh_ins, st.randoms())
def test_the_order_of_fills_and_the_names_of_bags_do_not_matter(
    rows: list[tuple[int, float, int]], chance: object
) -> None:
    shuffled = list(rows)
    chance.shuffle(shuffled)  # type: ignore[attr-defined]
    one, other = table([Weighed(*row) for row in rows]), table([Weighed(bag + 7, m, k) for bag, m, k in shuffled])
    assert other.mean_g == pytest.approx(one.mean_g)
    assert other.bag_ms == pytest.approx(one.bag_ms, abs=1e-7)


def test_history_pools_lots_relative_to_their_means() -> None:
    heavy = [Weighed(f.bag, 2 * f.mass_g) for f in FOUR_BY_TWO]
    pooled = pool_bag_history([FOUR_BY_TWO, heavy, []])
    t = table(FOUR_BY_TWO)
    assert pooled is not None
    assert (pooled.lots, pooled.bag_df, pooled.fill_df, pooled.per_fill) == (2, 6, 8, 0.5)
    assert pooled.bag_ss == pytest.approx(2 * t.bag_ms * t.bag_df / 290.5**2)
    assert pooled.fill_ss == pytest.approx(2 * t.fill_ms * t.fill_df / 290.5**2)


def test_single_bags_teach_about_fills_only() -> None:
    pooled = pool_bag_history([FOUR_BY_TWO, FOUR_BY_TWO, [Weighed(1, 290.0), Weighed(1, 292.0)]])
    assert pooled is not None
    assert (pooled.lots, pooled.bag_df, pooled.fill_df) == (2, 6, 9)


def test_too_little_is_no_history() -> None:
    assert pool_bag_history([]) is None
    assert pool_bag_history([FOUR_BY_TWO]) is None
    assert pool_bag_history([FOUR_BY_TWO, [Weighed(1, 290.0)]]) is None


def test_the_rule_is_fixed_beforehand() -> None:
    history = pool_bag_history([FOUR_BY_TWO, FOUR_BY_TWO])
    one, three = table(FOUR_BY_TWO[:2]), table(FOUR_BY_TWO[:6])
    assert spread_of(one, None)[0] == IntervalRule.CAUTIOUS_DEFAULT
    assert spread_of(three, None)[0] == IntervalRule.BAG_MEANS
    assert spread_of(one, history)[0] == spread_of(three, history)[0] == IntervalRule.POOLED_HISTORY


def test_this_lot_counts_in_the_pool() -> None:
    history = pool_bag_history([FOUR_BY_TWO, FOUR_BY_TWO])
    spread = spread_of(table(FOUR_BY_TWO), history)[1]
    t = table(FOUR_BY_TWO)
    assert (spread.bag_df, spread.fill_df, spread.per_fill) == (9, 12, 0.5)
    assert spread.bag_ms == pytest.approx(t.bag_ms / 290.5**2)


def test_a_history_of_single_fills_leaves_fills_unknown() -> None:
    lot = [Weighed(b, m) for b, m in ((1, 290.0), (2, 286.0), (3, 291.0))]
    history = pool_bag_history([lot, lot])
    spread = spread_of(table([Weighed(1, 290.0)]), history)[1]
    assert (spread.fill_ms, spread.fill_df) == (0.0, 0)


def test_own_design_gives_bag_means_exactly() -> None:
    spread = Spread(4e-4, 3, 0.5, 1e-4, 4)
    assert spread.variance(1 / 4, 0.5 / 4) == (pytest.approx(1e-4), pytest.approx(3.0))
    assert not spread.bags_alike
    assert spread.bag_variance == pytest.approx(3.5e-4)


def test_bags_that_look_alike_are_pooled_where_fills_are_subtracted() -> None:
    alike = Spread(1.1e-4, 30, 0.5, 2e-4, 40)  # mean square ratio 1.1, below the threshold
    variance, df = alike.variance(1.0, 0.25)
    assert df == 70
    assert variance == pytest.approx(0.25 * (1.1e-4 * 30 / 0.5 + 2e-4 * 40) / 70)
    apart = Spread(2e-4, 30, 0.5, 2e-4, 40)
    assert apart.variance(1.0, 0.25)[0] == pytest.approx(2e-4 - 0.25 * 2e-4)
    few = Spread(1.1e-4, 30, 0.5, 2e-4, 2)  # too few fills for the threshold: taken as it is
    assert few.variance(1.0, 0.25)[0] == pytest.approx(1.1e-4 - 0.25 * 2e-4)


def test_no_spread_at_all_keeps_its_degrees_of_freedom() -> None:
    assert Spread(0.0, 3, 0.5, 0.0, 4).variance(0.25, 0.125) == (0.0, 3)


def test_small_statistics_refuse_nonsense() -> None:
    for call in (
        lambda: t_quantile(0.0, 3),
        lambda: t_quantile(0.9, 0),
        lambda: t_quantile(0.9, math.nan),
        lambda: mean_of([]),
    ):
        with pytest.raises(CannotCompute):
            call()


@given(st.lists(st.tuples(st.floats(0, 10), st.floats(1, 100)), min_size=1, max_size=5))
def test_combined_degrees_of_freedom_lie_between(parts: list[tuple[float, float]]) -> None:
    u, df = welch_satterthwaite(parts)
    assert u == pytest.approx(math.hypot(*(p for p, _ in parts)))
    if u > 1e-3:
        assert min(d for _, d in parts) * (1 - 1e-9) <= df <= sum(d for _, d in parts) * (1 + 1e-9)


def test_no_doubt_has_endless_degrees_of_freedom() -> None:
    assert welch_satterthwaite([]) == welch_satterthwaite([(0.0, 3.0)]) == (0.0, math.inf)


def test_expanded_parts_add_in_quadrature() -> None:
    one = two_sided_t(0.95, 3) * 2.0
    assert expanded([(2.0, 3.0)]) == pytest.approx(one)
    assert expanded([(2.0, 3.0), (1.0, math.inf), (0.0, 0.5)]) == pytest.approx(math.hypot(one, 1.959964))


def test_deletion_of_a_residual() -> None:
    assert deletion_t(0.0, 0.5, 4.0, 3, 0.0) == 0.0
    assert deletion_t(1.0, 0.5, 2.0, 3, 0.0) == math.inf  # the others do not differ at all
    assert deletion_t(1.0, 0.5, 2.0, 3, 1.0) == pytest.approx(math.sqrt(2.0))
