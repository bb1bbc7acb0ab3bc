"""Scale and check weights against published standards and examples."""

from __future__ import annotations

import math

import pytest

from calibrator.science.scale import (
    ScaleFacts,
    error_allowed_g,
    repeatability,
    smallest_net_weight_g,
    weight_tolerance_g,
)
from tests.outside.checks import FROM_MEMORY, check

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


def test_smallest_net_weight() -> None:
    # Where s < 0.41 d, use 0.41 d; 2 · s / smallest net weight ≤ 0.10 %.
    floor = repeatability(100.0, [100.0, 100.0, 100.0], 1.0)
    check("least standard deviation of a display step of 1", USP_41, 0.41, floor.sd_g, 5.1e-3, FROM_MEMORY)
    smallest = smallest_net_weight_g(0.1e-3, 0.0, 0.001)
    check("smallest net weight, step 0.1 mg, 0.1 %, mg", USP_41, 82.0, 1000 * smallest, 0.5, FROM_MEMORY)


def test_two_readings_make_one_net_weight() -> None:
    check("u of a net weight, step 1", "JCGM 100:2008, 5.1.2", 0.41, ScaleFacts(1.0).step_u_g * math.sqrt(2), 5.1e-3)
