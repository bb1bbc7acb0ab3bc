"""The running mean over checks: what it uses, what it leaves alone, when it speaks."""

from __future__ import annotations

import math
import random
from statistics import fmean

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.science.charts import EWMA_WEIGHT, LIMIT_SD, running_means, running_reaches
from calibrator.science.check_season import (
    ASSUMED_DF,
    ASSUMED_SD_SHARE,
    COMMON_SD_SHARE,
    LEAST_BASELINE,
    Point,
    means_by,
    off_share,
    shifted_since,
    watch,
)
from calibrator.science.errors import CannotCompute


def spread_within_lots(points: list[Point]) -> float:
    """The standard deviation of checks about their lot's mean, pooled, with the assumed one as so many more."""
    lots = {lot: [p.off_share for p in points if p.lot_id == lot] for lot in {p.lot_id for p in points}}
    squares = sum((off - fmean(offs)) ** 2 for offs in lots.values() for off in offs)
    df = ASSUMED_DF + len(points) - len(lots)
    return math.sqrt((ASSUMED_DF * ASSUMED_SD_SHARE**2 + squares) / df)


def points(lot: str, *values: float) -> list[Point]:
    return [Point(lot, value) for value in values]


def test_the_running_mean_starts_anew_with_each_lot() -> None:
    watched = watch([*points("a", 0.02, 0.01), *points("b", -0.01)])
    assert [w.running for w in watched] == pytest.approx([0.006, 0.0072, -0.003])
    sd = spread_within_lots([*points("a", 0.02, 0.01), *points("b", -0.01)])
    half = LIMIT_SD * math.hypot(EWMA_WEIGHT * sd, COMMON_SD_SHARE)
    assert watched[2].high - watched[2].low == pytest.approx(2 * half)


def test_a_wild_check_speaks_at_once_and_a_small_shift_after_some() -> None:
    calm = [0.01, -0.012, 0.008, -0.01, 0.002, 0.011, -0.009, 0.004]
    assert not any(w.found for w in watch(points("a", *calm)))
    assert watch(points("a", *calm, 0.2))[-1].found
    shifted = [*points("a", *calm), *points("b", *(0.03 + c for c in calm))]
    since = shifted_since(watch(shifted), "b")
    assert since is not None
    assert 2 <= since <= 8


def test_one_wild_check_is_no_shift_and_a_shift_that_is_over_is_none() -> None:
    calm = [0.01, -0.012, 0.008, -0.01, 0.002, 0.011, -0.009, 0.004]
    wild = watch(points("a", *calm, 0.15))
    assert wild[-1].found
    assert not wild[-1].shifted
    assert shifted_since(wild, "a") is None
    off = [0.06] * 12
    assert shifted_since(watch(points("a", *off)), "a") == next(
        n for n, w in enumerate(watch(points("a", *off)), start=1) if w.shifted
    )
    assert shifted_since(watch(points("a", *off, *[0.0] * 12)), "a") is None


def test_nothing_later_changes_what_was_said() -> None:
    dice = random.Random(2)
    season = [Point(f"lot {n // 9}", dice.gauss(0, 0.02)) for n in range(40)]
    assert watch(season[:17]) == watch(season)[:17]


@given(
    st.lists(
        st.tuples(st.sampled_from("abc"), st.floats(-0.2, 0.2), st.sampled_from([("", 0.0), ("rule", 0.03)])),
        min_size=1,
        max_size=60,
    )
)
def test_each_check_is_judged_as_if_all_before_it_were_gone_over_anew(
    told: list[tuple[str, float, tuple[str, float]]],
) -> None:
    season = [Point(lot, off, *way) for lot, off, way in told]
    for n, watched in enumerate(watch(season), start=1):
        before, newest = season[:n], season[n - 1]
        own = [p for p in before if p.lot_id == newest.lot_id]
        earlier = [p.off_share for p in before if p.lot_id != newest.lot_id and p.way == newest.way]
        known = len(earlier) >= LEAST_BASELINE
        middle = fmean(earlier) if known else 0.0
        doubts = [0.0 if known and p.way == newest.way else p.way_u for p in own]
        sd = spread_within_lots(before)
        reach = running_reaches([sd * sd] * len(own))[-1]
        common = LIMIT_SD * math.hypot(COMMON_SD_SHARE, running_means(doubts, 0.0)[-1])
        assert watched.running == pytest.approx(running_means([p.off_share for p in own], middle)[-1], abs=1e-12)
        assert (watched.low + watched.high) / 2 == pytest.approx(middle, abs=1e-12)
        assert (watched.high - watched.low) / 2 == pytest.approx(math.hypot(reach, common))


def test_a_shift_between_lots_does_not_widen_the_spread() -> None:
    one = points("a", 0.01, -0.01, 0.02, -0.02)
    shifted, same = (
        watch([*one, *points("b", *(off + by for off in (0.01, -0.01, 0.02, -0.02)))]) for by in (0.1, 0.0)
    )
    assert shifted[-1].high - shifted[-1].low == pytest.approx(same[-1].high - same[-1].low)


def test_earlier_lots_become_the_middle_when_there_are_enough_of_them() -> None:
    steady = points("a", *[0.03] * LEAST_BASELINE)
    after = watch([*steady, *points("b", 0.03)])[-1]
    assert after.running == pytest.approx(0.03)
    assert not after.found
    before = watch([*steady[1:], *points("b", 0.03)])[-1]
    assert before.running == pytest.approx(EWMA_WEIGHT * 0.03)


def test_how_far_off_is_told_as_a_share_of_the_target() -> None:
    assert off_share(0.1365, 0.13) == pytest.approx(0.05)
    with pytest.raises(CannotCompute):
        off_share(0.13, 0.0)


def test_a_lot_never_checked_is_never_found() -> None:
    assert shifted_since(watch(points("a", 0.0)), "b") is None


@pytest.mark.parametrize("value", [math.nan, math.inf])
def test_nonsense_is_refused(value: float) -> None:
    with pytest.raises(CannotCompute, match="ordinary number"):
        watch(points("a", value))


def test_means_by_feeder_hold_what_they_promise() -> None:
    """Simulated feeders without a lean: the 95 % interval of the mean holds zero that often or oftener, and a
    lean of 6 % is seen with eight checks."""
    dice = random.Random(5)
    held = seen = 0
    for _ in range(300):
        names = ["Ana", "Ben"] * 8
        points = [Point("lot", dice.gauss(0.06 if name == "Ben" else 0.0, 0.02)) for name in names]
        found = means_by(names, points)
        held += found["Ana"].low <= 0 <= found["Ana"].high
        seen += found["Ben"].low > 0
        assert found["Ana"].count == 8
        assert found["Ana"].half == pytest.approx(found["Ana"].high - found["Ana"].share)
    assert held >= 0.95 * 300
    assert seen >= 0.9 * 300


def test_of_many_feeders_without_a_lean_hardly_one_is_called_off() -> None:
    """Five names at 95 % each would have one called off in every fourth farm; together it stays within 5 %."""
    dice = random.Random(6)
    names = [*"ABCDE"] * 8
    farms = [means_by(names, [Point("lot", dice.gauss(0.0, 0.02)) for _ in names]) for _ in range(200)]
    assert sum(any(mean.sure for mean in farm.values()) for farm in farms) <= 0.05 * 200
    leaning = means_by(names, [Point("lot", dice.gauss(0.07 if name == "C" else 0.0, 0.02)) for name in names])
    assert [name for name, mean in leaning.items() if mean.sure] == ["C"]


def test_of_fewer_than_three_checks_nobody_is_told_how_somebody_mixes() -> None:
    names = ["Ana", "Ana", "Ana", "Ben", "Ben"]
    assert list(means_by(names, points("a", 0.0, 0.01, -0.01, -0.3, -0.3))) == ["Ana"]


def test_what_one_feeder_leans_does_not_widen_the_others_doubt() -> None:
    names = ["Ana", "Ben"] * 4
    apart = means_by(names, points("a", *[0.0, -0.2] * 4))
    alike = means_by(names, points("a", *[0.0, 0.0] * 4))
    assert apart["Ana"].half == pytest.approx(alike["Ana"].half)
    assert [name for name, mean in apart.items() if mean.sure] == ["Ben"]


def test_what_a_rule_of_thumb_may_be_off_is_laid_to_nobody() -> None:
    """However many checks by it there are: half a mean's interval stays at more than two of its u."""
    names = ["Ana", "Ben"] * 20
    found = means_by(names, [Point("a", -0.11, "rule", 0.06)] * 40)
    assert not any(mean.sure for mean in found.values())
    assert found["Ana"].half > 1.96 * 0.06
    assert all(mean.sure for mean in means_by(names, points("a", *[-0.11] * 40)).values())


def test_what_a_rule_of_thumb_may_be_off_is_not_laid_to_the_lot() -> None:
    """Rule Brix + 2 may be a point off of some thirteen, u some 6 %: a check 11 % thin by it tells nothing yet, the
    same one by the farm's own line does; ten checks of an earlier lot by the same rule take its doubt with them."""
    by_rule = [Point("a", -0.11, "rule", 0.06)]
    assert not watch(by_rule)[-1].found
    assert watch(points("a", -0.11))[-1].found
    assert not any(w.found for w in watch(by_rule * 12))
    earlier = [Point("b", 0.0, "rule", 0.06)] * LEAST_BASELINE
    assert watch([*earlier, *by_rule])[-1].found
    assert not watch([*points("b", *[0.0] * LEAST_BASELINE), *by_rule])[-1].found
    half = watch(by_rule * 40)[-1]
    assert (half.high - half.low) / 2 > LIMIT_SD * 0.06
