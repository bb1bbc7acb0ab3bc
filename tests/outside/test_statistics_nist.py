"""Statistics against the certified values of NIST's reference data sets and its handbook."""

from __future__ import annotations

import numpy as np
import pytest

from calibrator.science.charts import running_means, running_reach, running_reaches
from calibrator.science.components import one_way
from calibrator.science.least_squares import fit
from calibrator.science.nested import Weighed
from tests.outside import nist
from tests.outside.checks import FROM_MEMORY, check
from tests.season_fills import components

STRD = "NIST StRD"


@pytest.mark.parametrize("name", ["SiRstv", "AtmWtAg", "SmLs01", "SmLs04"])
def test_one_way_analysis_of_variance(name: str) -> None:
    between, within = nist.certified(name)
    rows = one_way(nist.groups(name))
    source = f"{STRD}, {name}"
    # Certified to 15 figures; the differences come from data with up to seven constant leading digits.
    check(f"F, {name}", source, between[3], rows[0].f or 0.0, 1e-7 * between[3])
    check(f"mean square within, {name}", source, within[2], rows[1].mean_square, 1e-7 * within[2])
    check(f"sum of squares between, {name}", source, between[1], rows[0].sum_squares, 1e-7 * between[1])
    assert (rows[0].df, rows[1].df) == (between[0], within[0])


def test_one_lot_nested_is_the_one_way_analysis() -> None:
    between, within = nist.certified("SiRstv")
    fills = [Weighed(bag, value) for bag, group in enumerate(nist.groups("SiRstv")) for value in group]
    found = components([fills])
    # Expected mean squares of the balanced design, five each: variance between = (MSB − MSW)/5.
    expected = (between[2] - within[2]) / 5
    check("variance between instruments, SiRstv", f"{STRD}, SiRstv", expected, (found.bag_sd or 0) ** 2, 1e-10)
    check("F of bags in fills, SiRstv", f"{STRD}, SiRstv", between[3], found.bags.f or 0.0, 1e-7)


def test_straight_line() -> None:
    y, x = zip(*nist.pairs("Norris"), strict=True)
    found = fit(np.column_stack([np.ones(len(x)), x]), np.asarray(y))
    intercept, slope = (found.coefficient(place) for place in (0, 1))
    source = f"{STRD}, Norris"
    check("intercept, Norris", source, -0.262323073774029, intercept.value, 1e-11)
    check("slope, Norris", source, 1.00211681802045, slope.value, 1e-13)
    check("standard deviation of the slope, Norris", source, 0.429796848199937e-3, slope.u, 1e-13)
    check("standard deviation of the intercept, Norris", source, 0.232818234301152, intercept.u, 1e-11)
    check("residual standard deviation, Norris", source, 0.884796396144373, found.sd, 1e-11)


def test_ewma_limits() -> None:
    source = "NIST/SEMATECH e-Handbook, 6.3.2.4"
    values = [
        52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5,
        49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1,
    ]  # fmt: skip
    reach = running_reaches([2.0539**2] * len(values))[-1]
    check("upper EWMA limit, λ 0.3", source, 52.5884, 50.0 + reach, 2e-4, FROM_MEMORY)
    check("lower EWMA limit, λ 0.3", source, 47.4115, 50.0 - reach, 2e-4, FROM_MEMORY)
    alike = running_reach(2.0539, len(values))
    check("upper EWMA limit, λ 0.3, of one spread", source, 52.5884, 50.0 + alike, 2e-4, FROM_MEMORY)
    printed = [
        50.60, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52, 50.05, 49.38,
    ]  # fmt: skip
    for t, (expected, found) in enumerate(zip(printed, running_means(values, 50.0), strict=False), start=1):
        check(f"EWMA after {t} values", source, expected, found, 6e-3, FROM_MEMORY)
