"""What happened is found in the figures: another powder, another scoop, a humid spell, a lot out of line."""

from __future__ import annotations

import math
import random

import pytest

from calibrator.model import BagSum, SeasonLot
from calibrator.science.bag_sums import by_weigh_in
from calibrator.science.lot_chart import Rule
from calibrator.science.season_findings import HumidSpell, NewPowder, NewScoop, OutOfLine, season
from tests.season_rows import bags, lot


def lots_of(chance: random.Random, count: int, first: int = 0, density: float = 0.56, **how: object) -> list[SeasonLot]:
    return [lot(first + n, density * math.exp(chance.gauss(0, 0.008)), **how) for n in range(count)]


def fills_of(chance: random.Random, of: SeasonLot, sd: float) -> list[BagSum]:
    return bags(of, [[of.level_mean_g * (1 + chance.gauss(0, sd)) for _ in range(2)] for _ in range(4)])


def test_an_empty_and_a_quiet_season_have_nothing_to_tell() -> None:
    assert season([], {}).findings == ()
    assert season(lots_of(random.Random(2), 8), {}).findings == ()


def test_an_agglomerated_powder_is_found_with_its_step() -> None:
    chance = random.Random(2)
    told = season([*lots_of(chance, 8), *lots_of(chance, 3, 8, 0.476, agglomerated=True)], {}).findings
    assert len(told) == 1
    found = told[0]
    assert isinstance(found, NewPowder)
    assert found.agglomerated
    assert (found.at.lot_number, found.last.lot_number, found.lots) == ("8", "7", 3)
    assert found.step is not None
    assert found.step.seen
    assert found.step.low < -0.15 < found.step.high


def test_one_lot_of_a_new_powder_is_enough_and_two_lots_in_all_are_not() -> None:
    chance = random.Random(3)
    found = season([*lots_of(chance, 6), *lots_of(chance, 1, 6, 0.47, product="other")], {}).findings[0]
    assert isinstance(found, NewPowder)
    assert not found.agglomerated
    assert found.step is not None
    two = season([*lots_of(chance, 1), *lots_of(chance, 1, 1, 0.47, product="other")], {}).findings[0]
    assert isinstance(two, NewPowder)
    assert two.step is None


def test_a_scoop_that_took_another_s_place_is_found() -> None:
    chance = random.Random(4)
    white = {"scoop_id": "white", "scoop_name": "white cup"}
    after = [one._replace(density_high_g_per_ml=1.0 * one.density_g_per_ml) for one in lots_of(chance, 6, 5, **white)]
    told = season([*lots_of(chance, 5), *after], {}).findings
    assert len(told) == 1
    found = told[0]
    assert isinstance(found, NewScoop)
    assert (found.last.scoop_name, found.at.scoop_name) == ("red cup", "white cup")
    assert (found.reach_before, found.reach_after) == (pytest.approx(0.012), pytest.approx(0.006))
    assert found.step is not None
    assert not found.step.seen


def test_two_scoops_in_use_side_by_side_replace_nothing() -> None:
    chance = random.Random(5)
    lots = [
        one._replace(scoop_id=name, scoop_name=name)
        for one, name in zip(lots_of(chance, 8), ["a", "a", "b", "a", "b", "a", "b", "a"], strict=True)
    ]
    assert season(lots, {}).findings == ()


def test_a_humid_spell_is_one_finding_with_density_and_scatter() -> None:
    chance = random.Random(6)
    lots = lots_of(chance, 12)
    for n in (5, 6):
        dense = 0.96 * 0.56
        lots[n] = lot(n, dense, humidity_pct=78.0 + n)
    sums = [bag for n, one in enumerate(lots) for bag in fills_of(chance, one, 0.035 if n in (5, 6) else 0.012)]
    told = [f for f in season(lots, by_weigh_in(sums)).findings if isinstance(f, HumidSpell)]
    assert len(told) == 1
    found = told[0]
    assert [one.lot_number for one in found.lots] == ["5", "6"]
    assert (found.humidity_pct, found.usual_pct) == (pytest.approx(83.5), 45.0)
    assert found.step is not None
    assert found.step.high < 0
    assert found.scatters_more
    assert found.scatter.degrees_of_freedom == 8


def test_a_damp_farm_has_no_humid_spell_and_one_without_fills_no_scatter() -> None:
    chance = random.Random(7)
    damp = [one._replace(humidity_pct=72.0 + n) for n, one in enumerate(lots_of(chance, 8))]
    assert not season(damp, {}).findings
    wet = [*lots_of(chance, 6), lot(6, 0.56, humidity_pct=90.0)]
    found = next(f for f in season(wet, {}).findings if isinstance(f, HumidSpell))
    assert (found.scatter_p, found.scatters_more) == (None, False)


def test_a_lot_out_of_line_is_told_and_a_run_only_once() -> None:
    values = [0.55, 0.552, 0.549, 0.551, 0.55, 0.552, 0.549, 0.55, 0.551, 0.549, 0.62, 0.55, 0.551]
    told = season([lot(n, v) for n, v in enumerate(values)], {}).findings
    assert all(isinstance(f, OutOfLine) for f in told)
    found = next(f for f in told if f.at.lot_number == "10")
    assert isinstance(found, OutOfLine)
    assert Rule.BEYOND in found.rules
    assert found.off > 0.08
    slow = season([lot(n, 0.55 * (1 + 0.004 * (n - 9.5) / 2)) for n in range(20)], {}).findings
    assert sum(Rule.RUN in f.rules for f in slow if isinstance(f, OutOfLine)) == 2  # once below, once above


def test_lots_are_told_in_the_order_of_their_days() -> None:
    lots = lots_of(random.Random(8), 5)
    assert season(lots[::-1], {}).lots == tuple(lots)
