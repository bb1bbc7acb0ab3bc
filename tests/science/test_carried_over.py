"""What a lot does to a feeding by the line of the lot before, worked out by hand."""

from __future__ import annotations

import math

import pytest

from calibrator.model import Cylinder
from calibrator.science.carried_over import as_to_the_mark, carried_over, difference_share, money_of, solids_with
from calibrator.science.errors import CannotCompute
from calibrator.science.keep import OldLineVerdict
from calibrator.science.stats import two_sided_t
from tests.season_rows import lot

CUP = Cylinder(diameter_mm=96, height_mm=100)
SURE = {"level_mean_g": 340.0, "level_u_g": 0.01, "settling_factor": 1.05, "settling_u": 1e-9}


@pytest.mark.parametrize(("tolerance", "verdict"), [(0.03, OldLineVerdict.KEEP), (0.02, OldLineVerdict.MOVE)])
def test_a_feeding_by_the_line_of_the_lot_before(tolerance: float, verdict: OldLineVerdict) -> None:
    """Three fifths of a cup below the line, one full cup before it: (1 + 0.6 · 1.05) · 340 = 554.2 g, not 540."""
    before = lot(0, 0.55, down_wall_mm=40.0, full_scoops=1, target_mass_g=540.0)
    found = carried_over(lot(1, 0.56, **SURE), before, CUP, tolerance)
    assert found is not None
    assert (found.mass_g, found.share) == pytest.approx((554.2, 554.2 / 540 - 1))
    assert found.verdict is verdict
    assert found.high_g - found.low_g == pytest.approx(2 * two_sided_t(0.95, 20.0) * 1.63 * 0.01)


def test_a_feeding_in_equal_scoopfuls_to_the_line_of_the_lot_before() -> None:
    """Two of them, three fifths of a cup each: 2 · 0.6 · 1.05 · 340 = 428.4 g, not 420."""
    before = lot(0, 0.55, down_wall_mm=40.0, full_scoops=0, target_mass_g=420.0, mark_mass_g=210.0)
    found = carried_over(lot(1, 0.56, **SURE), before, CUP, 0.02)
    assert found is not None
    assert (found.mass_g, found.share) == pytest.approx((428.4, 0.02))


@pytest.mark.parametrize("lacking", ["down_wall_mm", "target_mass_g"])
def test_without_a_line_nothing_is_carried_over(lacking: str) -> None:
    assert carried_over(lot(1, 0.56), lot(0, 0.55, **{lacking: None}), CUP, 0.02) is None


def test_solids_and_money_of_more_powder() -> None:
    assert solids_with(0.13, 1.0) == pytest.approx(0.13)
    assert solids_with(0.13, 1.05) == pytest.approx(0.13 * 1.05 / (0.87 + 0.13 * 1.05))
    assert solids_with(0.13, 0.0) == 0.0
    assert money_of(-2270.0, 60.0, 22_700.0) == pytest.approx(-6.0)
    for call in (lambda: solids_with(1.0, 1.0), lambda: solids_with(0.13, -1.0), lambda: money_of(1.0, 1.0, 0.0)):
        with pytest.raises(CannotCompute):
            call()


def test_two_lots_with_one_scoop_are_compared_by_their_scoopfuls_else_by_density() -> None:
    first = lot(0, 0.55, level_mean_g=330.0, level_u_g=1.65, density_u_g_per_ml=0.011)
    second = {"level_mean_g": 340.0, "level_u_g": 3.4, "density_u_g_per_ml": 0.0112}
    same = difference_share(first, lot(1, 0.56, **second))
    assert same.difference == pytest.approx(340 / 330 - 1)
    assert same.u == pytest.approx(340 / 330 * math.hypot(0.005, 0.01))
    for other in ({"scoop_id": "blue"}, {"scoop_revision": "newer"}):
        found = difference_share(first, lot(1, 0.56, **second, **other))
        assert found.difference == pytest.approx(0.56 / 0.55 - 1)
        assert found.u == pytest.approx(0.56 / 0.55 * math.hypot(0.02, 0.02))


def test_a_lot_to_the_mark_is_denser_by_its_settling_and_less_sure() -> None:
    """Shares: density 2 % and settling 0.5 %, scoopful 1 %; the half of the interval 3 % with 1.96 times 0.5 %."""
    told = lot(
        0, 0.5, density_u_g_per_ml=0.01, level_mean_g=300.0, level_u_g=3.0, settling_factor=1.04, settling_u=0.0052,
        density_low_g_per_ml=0.485, density_high_g_per_ml=0.515,
    )  # fmt: skip
    found = as_to_the_mark(told)
    assert found.density_g_per_ml == pytest.approx(0.52)
    assert found.density_u_g_per_ml == pytest.approx(0.52 * math.hypot(0.02, 0.005))
    assert found.level_u_g == pytest.approx(300 * math.hypot(0.01, 0.005))
    reach = 0.52 * math.hypot(0.03, 1.959964 * 0.005)
    assert found.density_high_g_per_ml - 0.52 == pytest.approx(reach, rel=1e-6)
    assert 0.52 - found.density_low_g_per_ml == pytest.approx(reach, rel=1e-6)


def test_a_lot_that_was_never_filled_to_a_line_settles_as_the_one_before() -> None:
    """Used level, it told nothing of the shake: 340 g on 0.6 of the cup are 204 g, and 5 % more with the shake."""
    before = lot(0, 0.55, down_wall_mm=40.0, full_scoops=0, target_mass_g=214.2, settling_factor=1.05, settling_u=1e-6)
    level = lot(1, 0.56, level_mean_g=340.0, level_u_g=0.01, settling_factor=1.0, settling_u=0.0)
    found = carried_over(level, before, CUP, 0.02)
    assert found is not None
    assert found.mass_g == pytest.approx(0.6 * 1.05 * 340.0)
    struck = before._replace(down_wall_mm=0.0, target_mass_g=330.0)
    found = carried_over(lot(1, 0.56, **SURE), struck, CUP, 0.02)
    assert found is not None
    assert found.mass_g == pytest.approx(340.0)  # level with level: nothing settles
