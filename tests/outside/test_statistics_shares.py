"""Tails and quantiles of t, F and chi-square against scipy and printed tables, few degrees of freedom and many."""

from __future__ import annotations

import math

import pytest

from calibrator.science.incomplete import beta_ratio, gamma_ratios
from calibrator.science.spread_shares import chi2_quantile, f_above, f_quantile
from calibrator.science.student import student_above
from tests.outside.checks import LIBRARY, check

SCIPY = "scipy.special"
FEW_TO_MANY = (1.0, 2.0, 3.7, 10.0, 37.0, 200.0, 3000.0, 1e5)


@pytest.mark.parametrize(
    ("quantity", "printed", "computed"),
    [
        # NIST/SEMATECH e-Handbook, 1.3.6.7.3 and 1.3.6.7.4, upper tails.
        ("F at 95 %, 3 and 10 degrees of freedom", 3.708, f_quantile(0.95, 3, 10)),
        ("F at 99 %, 5 and 20 degrees of freedom", 4.103, f_quantile(0.99, 5, 20)),
        ("chi-square at 97.5 %, 10 degrees of freedom", 20.483, chi2_quantile(0.975, 10)),
        ("chi-square at 2.5 %, 10 degrees of freedom", 3.247, chi2_quantile(0.025, 10)),
    ],
)
def test_printed_tables(quantity: str, printed: float, computed: float) -> None:
    check(quantity, "NIST/SEMATECH e-Handbook, 1.3.6.7, from memory, not verified", printed, computed, 5.1e-4)


@pytest.mark.parametrize("df", FEW_TO_MANY)
def test_chi_square(df: float) -> None:
    from scipy.special import chdtri

    for p in (0.025, 0.5, 0.975):
        value = float(chdtri(df, 1 - p))
        check(
            f"chi-square, {p:.1%}, {df:g} degrees of freedom",
            SCIPY,
            value,
            chi2_quantile(p, df),
            1e-11 * value,
            LIBRARY,
        )


@pytest.mark.parametrize("below", FEW_TO_MANY)
@pytest.mark.parametrize("above", FEW_TO_MANY)
def test_ratios_of_spreads(above: float, below: float) -> None:
    from scipy.special import fdtrc, fdtri

    for f in (0.01, 0.9, 1.0, 1.1, 30.0):
        assert f_above(f, above, below) == pytest.approx(float(fdtrc(above, below, f)), rel=1e-7, abs=1e-200)
    for p in (0.025, 0.5, 0.975):
        assert f_quantile(p, above, below) == pytest.approx(float(fdtri(above, below, p)), rel=1e-8)
        assert f_above(f_quantile(p, above, below), above, below) == pytest.approx(1 - p, rel=1e-9)


@pytest.mark.parametrize("df", [*FEW_TO_MANY, 2e5, 1e9, math.inf])
def test_tails_of_t(df: float) -> None:
    from scipy.special import stdtr

    for t in (0.0, 1e-3, 1.0, 4.0, 10.0):
        assert student_above(t, df) == pytest.approx(float(stdtr(min(df, 1e15), -t)), rel=1e-7)


@pytest.mark.parametrize(("above", "below", "f"), [(1, 52, 26 / 9), (2, 1, 2 / 3)])
def test_at_the_border_between_its_two_ways(above: int, below: int, f: float) -> None:
    """Here rounding puts F and its counterpart both beyond the border: once that went on without end."""
    from scipy.special import fdtrc

    assert f_above(f, above, below) == pytest.approx(float(fdtrc(above, below, f)), rel=1e-12)


@pytest.mark.parametrize(("a", "b"), [(0.5, 1.0), (0.5, 1.5), (1.0, 0.5), (2.5, 7.0), (14.0, 29.5)])
def test_a_float_beside_the_border_is_as_good(a: float, b: float) -> None:
    from scipy.special import betainc

    border = (a + 1) / (a + b + 2)
    for x in (math.nextafter(border, 0), border, math.nextafter(border, 1), math.nextafter(border, 1) * (1 + 3e-16)):
        for rest in (1 - x, math.nextafter(1 - x, 1)):
            assert beta_ratio(x, rest, a, b) == pytest.approx(float(betainc(a, b, x)), rel=1e-12)


def test_a_quantile_beyond_all_floats_is_their_end() -> None:
    assert f_quantile(0.975, 3, 0.001) > 1e270
    assert chi2_quantile(0.025, 0.001) < 1e-300


def test_the_ends_of_the_shares() -> None:
    assert beta_ratio(0.0, 1.0, 2.0, 3.0) == 0.0
    assert beta_ratio(1.0, 0.0, 2.0, 3.0) == 1.0
    assert gamma_ratios(0.0, 2.0) == (0.0, 1.0)
    assert f_above(0.0, 3, 4) == 1.0
