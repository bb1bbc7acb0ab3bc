"""A step between lots from sums: the same as the fit with columns."""

from __future__ import annotations

import math
import random

import numpy as np
import pytest

from calibrator.model import Cylinder
from calibrator.science.carried_over import (
    as_to_the_mark,
    carried_over,
    difference_share,
    money_of,
    solids_with,
)
from calibrator.science.errors import CannotCompute
from calibrator.science.keep import OldLineVerdict
from calibrator.science.least_squares import fit
from calibrator.science.lot_step import grouped, step_between
from tests.season_rows import lot

CUP = Cylinder(diameter_mm=96, height_mm=92)


def test_sums_tell_the_step_that_the_fit_tells() -> None:
    chance = random.Random(3)
    lots = [lot(n, 0.55 * math.exp(chance.gauss(0, 0.02)), product="ab"[n % 2]) for n in range(20)]
    inside = [n in (3, 4, 9, 12) for n in range(20)]
    columns = np.asarray([[float(i), float(n % 2 == 0), float(n % 2)] for n, i in enumerate(inside)])
    theirs = fit(columns, np.asarray([math.log(one.density_g_per_ml) for one in lots])).coefficient(0)
    ours = step_between(
        grouped(one for one, i in zip(lots, inside, strict=True) if i),
        grouped(one for one, i in zip(lots, inside, strict=True) if not i),
    )
    assert ours is not None
    assert math.log1p(ours.share) == pytest.approx(theirs.value)
    assert math.log1p(ours.low) == pytest.approx(theirs.low)
    assert math.log1p(ours.high) == pytest.approx(theirs.high)


def test_nothing_is_told_without_others_of_the_kind() -> None:
    one, other = grouped([lot(0, 0.55)]), grouped([lot(1, 0.55, product="x"), lot(2, 0.56, product="x")])
    assert step_between(one, other) is None
    assert step_between(one, {}) is None
    assert step_between({}, {}) is None


def test_a_line_carried_over_delivers_by_the_new_lot() -> None:
    before = lot(0, 0.5, down_wall_mm=23.0, target_mass_g=0.75 * 300 * 1.03, level_mean_g=300.0)
    same = carried_over(lot(1, 0.5, level_mean_g=300.0, level_u_g=0.5), before, CUP, 0.02)
    assert same is not None
    assert (same.mass_g, same.verdict) == (pytest.approx(before.target_mass_g), OldLineVerdict.KEEP)
    heavy = carried_over(lot(1, 0.55, level_mean_g=330.0, level_u_g=0.5), before, CUP, 0.02)
    assert heavy is not None
    assert (heavy.share, heavy.verdict) == (pytest.approx(0.1), OldLineVerdict.MOVE)
    assert heavy.low_g < heavy.mass_g < heavy.high_g
    assert carried_over(lot(1, 0.5), lot(0, 0.5, down_wall_mm=None), CUP, 0.02) is None


def test_solids_and_money_follow_the_powder() -> None:
    assert solids_with(0.125, 1.0) == pytest.approx(0.125)
    assert solids_with(0.5, 2.0) == pytest.approx(2 / 3)
    assert money_of(-2270.0, 50.0, 22700.0) == pytest.approx(-5.0)
    for call in (lambda: solids_with(1.0, 1.0), lambda: money_of(1.0, -1.0, 1.0), lambda: money_of(1.0, 1.0, 0.0)):
        with pytest.raises(CannotCompute):
            call()


def test_two_lots_of_one_scoop_are_compared_without_its_volume() -> None:
    first, second = lot(0, 0.50), lot(1, 0.51)
    assert difference_share(first, second).difference == pytest.approx(0.02)
    other = second._replace(scoop_id="blue")
    assert difference_share(first, other).u > difference_share(first, second).u


def test_a_lot_filled_to_the_mark_is_settled_and_known_less_well() -> None:
    level, settled = lot(0, 0.5), as_to_the_mark(lot(0, 0.5))
    assert settled.density_g_per_ml == pytest.approx(0.515)
    assert settled.density_u_g_per_ml / settled.density_g_per_ml > level.density_u_g_per_ml / level.density_g_per_ml
    assert settled.density_low_g_per_ml < 0.515 < settled.density_high_g_per_ml
    with pytest.raises(CannotCompute):
        as_to_the_mark(lot(0, 0.5, settling_factor=0.0))
