"""The short run of the simulations: the laws that the long run shows in full, with room for chance."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest

from calibrator.science.scale import ScaleFacts, Taring, check_scale, scale_facts
from calibrator.science.spread import BagHistory
from calibrator.science.weighing import LevelResult, Weighed, level_result

from . import coverage, flags, keeping, procedure, report, vector
from .farm import MEAN_SCOOPFUL_G, TENTH_OF_AN_OUNCE_G, World, fills, lots, read, worlds

MANY = 2000
# Four standard deviations of a share of 95 % in so many weigh-ins, beyond 94 to 96 %.
ROOM = 0.0195


def more(*cases: object) -> list[Any]:
    """Cases that only the long run goes through."""
    return [pytest.param(case, marks=pytest.mark.slow) for case in cases]


def program(readings: np.ndarray, world: World, history: BagHistory | None) -> LevelResult:
    taken = [Weighed(b, float(x)) for b, bag in enumerate(readings) for x in bag]
    taring = Taring.ONCE if world.tared_once else Taring.EACH_FILL
    return level_result(taken, ScaleFacts(world.step_g, taring=taring), history=history, tolerance_g=5.0)


@pytest.mark.parametrize("tared_once", [False, True])
def test_the_quick_copy_is_the_program(tared_once: bool) -> None:
    rng = np.random.default_rng(11)
    for world in worlds(tared_once):
        for bags, each in ((1, 1), (1, 3), (2, 2), (3, 1), (4, 2), (6, 4)):
            past = coverage.history(rng, world, 1)
            readings = fills(rng, world, lots(rng, 1), bags, each)
            pooled = vector.pooled(past)
            history = BagHistory(
                float(pooled.bag_ss[0]), pooled.bag_df, pooled.per_fill, float(pooled.fill_ss[0]), pooled.fill_df, 10
            )
            for quick_past, own_past in ((None, None), (past, history)):
                quick = vector.half_widths(readings, world.step_g, quick_past, tared_once=tared_once)
                assert program(readings[0], world, own_past).half_width_g == pytest.approx(float(quick[0]), rel=1e-9)


def test_three_bags_or_more_cover() -> None:
    found = coverage.without_history(np.random.default_rng(1), MANY)
    assert len(found) == 12 * 16
    assert all(0.94 - ROOM <= c.covered <= 0.96 + ROOM for c in found)
    assert 0.945 <= np.mean([c.covered for c in found]) <= 0.955


def test_a_history_covers_from_one_bag_on() -> None:
    found = coverage.with_history(np.random.default_rng(2), MANY)
    assert len(found) == 12 * 24
    assert all(0.94 - ROOM <= c.covered <= 0.96 + ROOM for c in found)
    assert 0.945 <= np.mean([c.covered for c in found]) <= 0.955


def test_all_fills_as_one_would_not_cover() -> None:
    # The naive interval, t over all fills of two bags × six: what the bag means are there to beat.
    rng = np.random.default_rng(3)
    true = lots(rng, MANY)
    readings = fills(rng, World(0.01, 0.015, 0.01), true, 2, 6).reshape(MANY, 12)
    half = 2.201 * readings.std(axis=1, ddof=1) / np.sqrt(12)
    assert 0.72 <= np.mean(abs(readings.mean(axis=1) - true) <= half) <= 0.82


def test_scoopfuls_weighed_together_on_a_scale_that_is_off_cover() -> None:
    """A scoop of 120 g, two on the scale, which shows a fiftieth too much in steps of 5 g; a check weight of 1 kg."""
    rng, many, gain, world = np.random.default_rng(6), 500, 1.02, World(0.004, 0.006, 5.0)
    covered = 0
    for true_g in lots(rng, many) * 120.0 / MEAN_SCOOPFUL_G:
        bags = true_g * (1 + world.bag_spread * rng.standard_normal((6, 1)))
        together = (bags[..., None] * (1 + world.fill_spread * rng.standard_normal((6, 3, 2)))).sum(axis=2)
        taken = [Weighed(b, float(x) / 2, 2) for b, bag in enumerate(read(rng, world, gain * together)) for x in bag]
        check = check_scale(1000.0, float(read(rng, world, np.array([gain * 1000.0]))[0]), world.step_g)
        found = level_result(taken, scale_facts(world.step_g, check), tolerance_g=2.4)
        covered += found.low_g <= true_g <= found.high_g
    assert covered / many >= 0.95 - 4 * (0.95 * 0.05 / many) ** 0.5


def test_weights_on_a_scale_that_nobody_checked_cover() -> None:
    """It is off by anything that a sound scale is allowed at this load, a step either way, and the same all day."""
    rng, many, world = np.random.default_rng(17), 1000, World(0.004, 0.006, 2.8)
    covered = as_if_right = 0
    for true_g in lots(rng, many):
        gain = 1 + rng.uniform(-1.0, 1.0) * world.step_g / true_g
        bags = true_g * (1 + world.bag_spread * rng.standard_normal((6, 1)))
        shown = read(rng, world, gain * bags * (1 + world.fill_spread * rng.standard_normal((6, 3))))
        taken = [Weighed(b, float(x)) for b, bag in enumerate(shown) for x in bag]
        found = level_result(taken, scale_facts(world.step_g, None), tolerance_g=5.0)
        trusting = level_result(taken, ScaleFacts(world.step_g), tolerance_g=5.0)
        covered += found.low_g <= true_g <= found.high_g
        as_if_right += trusting.low_g <= true_g <= trusting.high_g
    assert covered / many >= 0.95
    assert as_if_right / many < 0.95 - 4 * (0.95 * 0.05 / many) ** 0.5


def test_one_or_two_bags_are_cautious() -> None:
    found = coverage.without_history(np.random.default_rng(4), MANY, range(1, 3))
    assert all(c.covered >= 0.95 - ROOM for c in found)


@pytest.mark.parametrize(("there", "bags", "each"), [(1, 1, 8), (3, 3, 3), (20, 4, 2)])
def test_lots_of_a_known_number_of_bags_cover_their_own_mean(there: int, bags: int, each: int) -> None:
    """Bags twice as far apart as usual: an interval that took them for any bags would hold nearly always."""
    rng, many = np.random.default_rng(13), 1000
    of_bags = 290.0 * (1 + 0.02 * rng.standard_normal((many, there)))
    readings = np.round(of_bags[:, :bags, None] + 290.0 * 0.015 * rng.standard_normal((many, bags, each)))
    held = 0
    for own, lot in zip(readings, of_bags, strict=True):
        taken = [Weighed(b, float(x)) for b, bag in enumerate(own) for x in bag]
        found = level_result(taken, ScaleFacts(1.0), tolerance_g=5.0, bags_there=there)
        held += found.low_g <= lot.mean() <= found.high_g
    assert abs(held / many - 0.95) <= 4 * (0.95 * 0.05 / many) ** 0.5


def test_tared_once_covers() -> None:
    found = coverage.without_history(np.random.default_rng(5), MANY, tared_once=True)
    assert all(0.94 - ROOM <= c.covered <= 0.97 + ROOM for c in found)


@pytest.mark.parametrize("design", [(8,), (4, 4, 4), *more((1, 1, 1, 1, 1, 1), (2, 2, 2, 2))])
def test_flags_fire_at_their_nominal_rate(design: tuple[int, ...]) -> None:
    found = flags.rates(np.random.default_rng(6), World(0.01, 0.015, 0.01), 1500, design)
    assert 0.03 <= found.clean <= 0.07
    assert found.found > 0.7


@pytest.mark.parametrize("design", flags.FIRST_FILLS)
def test_a_fill_far_off_is_mostly_flagged_as_soon_as_it_is_typed(design: tuple[int, ...]) -> None:
    """Off by 15 %, and how often clean ones are flagged where bags and fills spread much."""
    rng = np.random.default_rng(9)
    assert flags.rates(rng, World(0.01, 0.015, 1.0), 400, design, last=True).found > 0.4
    assert flags.rates(rng, World(0.03, 0.02, 1.0), 400, design, last=True).clean <= 0.05 + 0.03


def test_flags_are_quiet_on_a_coarse_display() -> None:
    found = flags.rates(np.random.default_rng(7), World(0.01, 0.015, TENTH_OF_AN_OUNCE_G), 600, (3,))
    assert found.clean <= 0.05


@pytest.mark.parametrize("offset", [-0.021, *more(0.019)])
def test_old_lines_near_the_edge_are_seldom_judged_wrong(offset: float) -> None:
    rng = np.random.default_rng(8)
    histories: list[BagHistory | None] = [procedure.earlier_lots(rng, report.MAIN) for _ in range(10)]
    found = keeping.operating_point(rng, report.MAIN, histories, offset, 150, follow=True)
    # 5 % allowed, and four standard deviations of it.
    assert found.wrong <= 0.05 + 0.07
    assert found.keep + found.move + found.undecided == pytest.approx(1.0)


def test_clear_cases_are_told() -> None:
    rng = np.random.default_rng(9)
    good = keeping.operating_point(rng, report.MAIN, [None], 0.0, 60, follow=True)
    bad = keeping.operating_point(rng, report.MAIN, [None], 0.05, 60, follow=True)
    assert good.keep > 0.9
    assert bad.move > 0.9


def test_following_the_advice_ends_on_target() -> None:
    rng = np.random.default_rng(10)
    for with_history in (False, True):
        found = report.outcomes(rng, report.MAIN, 100, with_history=with_history, carry_over=True)
        assert sum(abs(o.off_share) <= 0.02 for o in found) >= 95
        assert sum(o.settled for o in found) >= 98
        assert sum(o.bags for o in found) / 100 < 12


def test_what_it_is_to_beat() -> None:
    rng = np.random.default_rng(12)
    assert 0.15 <= procedure.old_line_kept(rng, 50_000) <= 0.27
    assert 0.68 <= procedure.one_fill_per_lot(rng, report.MAIN, 50_000) <= 0.8
