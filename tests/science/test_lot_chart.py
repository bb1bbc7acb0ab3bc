"""The chart of lots: limits by each lot's own doubt, kinds apart, rules that fire."""

from __future__ import annotations

import math
import random
from itertools import pairwise
from statistics import fmean

import pytest

from calibrator.science.charts import EWMA_WEIGHT, newest_weight, running_means, running_reaches
from calibrator.science.lot_chart import Rule, lot_chart
from tests.season_rows import lot

VALUES = [0.561, 0.548, 0.566, 0.557, 0.571, 0.552, 0.558, 0.563]


def test_lots_known_exactly_give_the_plain_charts() -> None:
    found = lot_chart([lot(n, v, level_u_g=0.0) for n, v in enumerate(VALUES)])
    logs = [math.log(v) for v in VALUES]
    centre, mean_range = fmean(logs), fmean(abs(b - a) for a, b in pairwise(logs))
    sd = mean_range / (2 / math.sqrt(math.pi))
    assert found.lot_sd == pytest.approx(sd)
    assert [math.log(one.high_g_per_ml or 0) for one in found.lots] == pytest.approx([centre + 3 * sd] * len(VALUES))
    assert [math.log(one.low_g_per_ml or 0) for one in found.lots] == pytest.approx([centre - 3 * sd] * len(VALUES))
    begun = [centre + (1 - 0.7**t) * (math.log(one.running_g_per_ml) - centre) for t, one in enumerate(found.lots, 1)]
    assert begun == pytest.approx(running_means(logs, centre))
    reaches = [(1 - 0.7**t) * (one.running_reach or 0) for t, one in enumerate(found.lots, 1)]
    assert reaches == pytest.approx(running_reaches([sd**2] * len(VALUES)))


def test_the_running_mean_begins_at_its_first_lot_and_comes_to_weigh_by_0_3() -> None:
    one = [lot(n, v) for n, v in enumerate(VALUES)]
    found = lot_chart([*one, *(lot(8 + n, 0.85 * v, agglomerated=True) for n, v in enumerate(VALUES[:3]))])
    for first in (0, 8):  # of each kind
        assert found.running[first] == pytest.approx(found.offs[first])
    assert [newest_weight(count) for count in (1, 2, 40)] == pytest.approx([1.0, 1 / 1.7, 0.3], abs=1e-5)


def test_limits_of_the_running_mean_widen_as_the_closed_form_tells() -> None:
    """Of values alike: L·s·√(λ/(2 − λ)·(1 − (1 − λ)^2t)), NIST/SEMATECH e-Handbook, 6.3.2.4."""
    kept = (1 - EWMA_WEIGHT) ** 2
    by_hand = [3 * 0.02 * math.sqrt(EWMA_WEIGHT / (2 - EWMA_WEIGHT) * (1 - kept**t)) for t in range(1, 41)]
    assert running_reaches([0.02**2] * 40) == pytest.approx(by_hand)
    assert (running_means([], 1.0), running_reaches([])) == ([], [])


def test_a_lot_known_less_well_has_wider_limits() -> None:
    lots = [lot(n, v) for n, v in enumerate(VALUES)]
    lots[3] = lots[3]._replace(level_u_g=0.03 * lots[3].level_mean_g)
    found = lot_chart(lots).lots
    assert (found[3].reach or 0) > 1.5 * (found[2].reach or 0)


def test_weighing_alone_explains_lots_that_are_alike() -> None:
    found = lot_chart([lot(n, 0.55 * (1 + 0.001 * (-1) ** n)) for n in range(8)])
    assert found.lot_sd == 0.0
    assert found.lots[0].reach == pytest.approx(3 * 0.005)


def test_another_kind_has_its_own_middle_and_widens_no_limits() -> None:
    one = [lot(n, v) for n, v in enumerate(VALUES)]
    other = [lot(8 + n, 0.85 * v, agglomerated=True) for n, v in enumerate(VALUES[:3])]
    both = lot_chart([*one, *other])
    assert {c.kind for c in both.lots[8:]} == {1}
    assert both.lots[8].middle_g_per_ml < 0.49
    assert not any(c.rules for c in both.lots)
    assert (both.lot_sd or 0) < 0.02


def test_nothing_is_told_of_a_single_lot() -> None:
    alone = lot_chart([lot(0, 0.55)])
    assert alone.lot_sd is None
    assert (alone.lots[0].reach, alone.lots[0].low_g_per_ml, alone.lots[0].high_g_per_ml) == (None, None, None)
    first_of_its_kind = lot_chart([lot(0, 0.55), lot(1, 0.56), lot(2, 0.47, agglomerated=True)]).lots[2]
    assert (first_of_its_kind.reach, first_of_its_kind.rules) == (None, ())
    assert lot_chart([]).lots == ()


def test_two_lots_are_enough_for_limits() -> None:
    two = lot_chart([lot(0, 0.55), lot(1, 0.56)])
    assert [one.reach is not None and one.running_reach is not None for one in two.lots] == [True, True]
    assert two.running_g_per_ml.tolist() == pytest.approx([one.running_g_per_ml for one in two.lots])
    assert two.lots[1].running_g_per_ml > two.lots[1].middle_g_per_ml


@pytest.mark.parametrize(("step", "marked"), [(0.07, False), (0.1, True)])
def test_a_step_is_marked_by_the_doubt_of_both_its_lots(step: float, marked: bool) -> None:
    """Of lots known to 2 %, alike but for one step, weighing explains all: D4 of two times their mean range is
    3.267 · 1.128 · 0.02 = 0.0737, in logarithms."""
    lots = [
        lot(n, 0.55 * math.exp(step * (n > 3)), level_u_g=0.02 * 600 * 0.55 * math.exp(step * (n > 3)))
        for n in range(8)
    ]
    found = lot_chart(lots)
    assert found.lot_sd == 0.0
    assert [Rule.STEP in one.rules for one in found.lots] == [n == 4 and marked for n in range(8)]


def test_a_lot_beyond_its_limits_and_its_steps_are_marked() -> None:
    values = [0.55, 0.552, 0.549, 0.551, 0.55, 0.552, 0.549, 0.55, 0.551, 0.549, 0.62, 0.55, 0.551]
    found = lot_chart([lot(n, v) for n, v in enumerate(values)])
    assert {Rule.BEYOND, Rule.STEP} <= set(found.lots[10].rules)
    assert Rule.STEP in found.lots[11].rules
    assert found.lots[5].rules == ()


def test_eight_on_one_side_and_a_slow_drift_are_marked() -> None:
    found = lot_chart([lot(n, 0.55 * (1 + 0.004 * (n - 9.5) / 2)) for n in range(20)])
    assert Rule.RUN in found.lots[8].rules
    assert not any(one.rules for one in lot_chart([lot(n, 0.55) for n in range(12)]).lots)
    assert Rule.RUN not in found.lots[6].rules
    assert Rule.DRIFT in found.lots[-1].rules


def test_rules_seldom_fire_where_nothing_happens() -> None:
    chance = random.Random(11)
    fired = lots = 0
    for _ in range(40):
        season = [lot(n, 0.55 * math.exp(chance.gauss(0, 0.015))) for n in range(20)]
        charted = lot_chart(season).lots
        fired += sum(Rule.BEYOND in one.rules for one in charted)
        lots += len(charted)
    assert fired / lots < 0.02
