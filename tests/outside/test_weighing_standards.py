"""Scale, check weights and flow against published standards and examples."""

from __future__ import annotations

import math

import pytest

from calibrator.science.flow import flow, word_for
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
USP_FLOW = "USP <1174>, table 2"
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


PRINTED = [
    (1.00, 1.11, "excellent"),
    (1.12, 1.18, "good"),
    (1.19, 1.25, "fair"),
    (1.26, 1.34, "passable"),
    (1.35, 1.45, "poor"),
    (1.46, 1.59, "very_poor"),
]


@pytest.mark.parametrize(("low", "high", "word"), PRINTED)
def test_words_of_flow(low: float, high: float, word: str) -> None:
    assert word_for(low) == word_for(high) == word
    # The same class by the Carr index printed beside it, 1 to a whole percent.
    check(f"lower Hausner ratio that is {word}", USP_FLOW, low, _first(word), 1e-9)


def _first(word: str) -> float:
    return next(ratio / 100 for ratio in range(100, 200) if word_for(ratio / 100) == word)


def test_words_of_flow_end() -> None:
    check("lowest Hausner ratio beyond very poor", USP_FLOW, 1.60, _first("very_very_poor"), 1e-9)


@pytest.mark.parametrize(("hausner", "carr"), [(1.11, 10), (1.18, 15), (1.25, 20), (1.34, 25), (1.45, 31), (1.59, 37)])
def test_carr_and_hausner_agree(hausner: float, carr: float) -> None:
    check(f"Carr index at Hausner {hausner}, %", USP_FLOW, carr, flow(1.0, hausner).carr_pct, 0.5)


@pytest.mark.parametrize(
    ("name", "loose", "tapped", "carr", "ratio"),
    [("raw", 0.64, 0.78, 18.18, 1.22), ("agglomerated", 0.38, 0.47, 18.14, 1.22)],
)
def test_skim_powder(name: str, loose: float, tapped: float, carr: float, ratio: float) -> None:
    source = "Food Sci. Anim. Resour. 42(6):915, table 2"
    found = flow(loose, tapped)
    # The densities are printed to two figures, so the index is known to about one.
    check(f"Hausner ratio of {name} skim milk powder", source, ratio, found.hausner, 2e-2)
    check(f"Carr index of {name} skim milk powder, %", source, carr, found.carr_pct, 1.1)
    assert found.word == "fair"


def test_two_readings_make_one_net_weight() -> None:
    check("u of a net weight, step 1", "JCGM 100:2008, 5.1.2", 0.41, ScaleFacts(1.0).step_u_g * math.sqrt(2), 5.1e-3)
