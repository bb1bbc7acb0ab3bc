"""Scale and check weights against published standards and examples."""

from __future__ import annotations

import math

import pytest

from calibrator.model import Cylinder
from calibrator.science.keep import manner_before
from calibrator.science.scale import (
    ScaleFacts,
    error_allowed_g,
    smallest_net_weight_g,
    sound_u_g,
    weight_tolerance_g,
)
from tests.outside.checks import COMMON_PRACTICE, FROM_MEMORY, check

R76 = "OIML R 76-1:2006, table 6, in service"
R111 = "OIML R 111-1:2004, table 1, class M2"
USP_41 = "USP <41>, Balances"


@pytest.mark.parametrize(("steps", "allowed"), [(100, 1), (500, 1), (501, 2), (2000, 2), (2001, 3), (10000, 3)])
def test_error_allowed_in_service(steps: int, allowed: int) -> None:
    # Initial verification 0.5 e, 1.0 e, 1.5 e up to 500, 2000, 10 000 e; twice that in service.
    check(f"allowed error at {steps} steps, steps", R76, allowed, error_allowed_g(steps * 2.0, 2.0) / 2.0, 1e-12)


@pytest.mark.parametrize(
    ("nominal_g", "mg", "note"),
    [(1000, 160, ""), (500, 80, ""), (200, 30, ""), (2000, 300, FROM_MEMORY), (100, 16, FROM_MEMORY)],
)
def test_weights_of_class_m2(nominal_g: float, mg: float, note: str) -> None:
    # A line on or just above the staircase, by at most a tenth.
    found = 1000 * weight_tolerance_g(nominal_g)
    check(f"permissible error of {nominal_g} g, mg", R111, mg, found, 0.1 * mg, note)
    assert found >= mg


def test_rounding_is_rectangular() -> None:
    # JCGM 100:2008, F.2.2.1: an indication step δx gives u = 0.29 δx.
    check("u of a display step of 1", "JCGM 100:2008, F.2.2.1", 0.29, ScaleFacts(1.0).step_u_g, 5.1e-3)


def test_a_scale_that_nobody_checked_is_rectangular() -> None:
    # JCGM 100:2008, 4.3.7: within ±a and nothing else known, u = a/√3; a is one step, see above.
    check("u of an unchecked scale, step 1", "JCGM 100:2008, 4.3.7", 0.58, sound_u_g(300.0, 1.0), 5.1e-3, FROM_MEMORY)


def test_smallest_net_weight() -> None:
    # Where s < 0.41 d, use 0.41 d; 2 · s / smallest net weight ≤ 0.10 %.
    least = smallest_net_weight_g(1.0, 0.0, 2.0)  # the weight of which two standard deviations are twice as much
    check("least standard deviation of a display step of 1", USP_41, 0.41, least, 5.1e-3, FROM_MEMORY)
    smallest = smallest_net_weight_g(0.1e-3, 0.0, 0.001)
    check("smallest net weight, step 0.1 mg, 0.1 %, mg", USP_41, 82.0, 1000 * smallest, 0.5, FROM_MEMORY)


def test_two_readings_make_one_net_weight() -> None:
    check("u of a net weight, step 1", "JCGM 100:2008, 5.1.2", 0.41, ScaleFacts(1.0).step_u_g * math.sqrt(2), 5.1e-3)


@pytest.mark.parametrize(
    ("target_oz", "line_share", "level_oz", "now", "meant"),
    [(10.0, 0.5, 4.0, 2, 2), (10.0, 0.5, 4.4, 2, 2), (11.6, 0.9, 3.75, 3, 2), (12.4, 0.1, 4.3, 2, 3)],
)
def test_full_scoops_before_a_line(target_oz: float, line_share: float, level_oz: float, now: int, meant: int) -> None:
    """A straight scoop of 4 oz: 10 oz are two and a half, 11.6 two and nine tenths, 12.4 three and a tenth.

    The line found on it keeps those full scoops before it when the next lot weighs less or more.
    """
    cup = Cylinder(diameter_mm=90, height_mm=100)
    found = manner_before(cup, level_oz, 1.0, 100.0 * (1 - line_share), target_oz, (now, 1))
    name = f"full scoops, now {level_oz} oz each, before a line at {line_share:.0%} for {target_oz} oz"
    assert found[1] == 1  # to the line
    check(name, "Trade", meant, found[0], 0.0, COMMON_PRACTICE)
