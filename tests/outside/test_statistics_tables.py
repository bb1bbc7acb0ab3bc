"""Statistics against printed tables: Student's t, Grubbs, control charts, sampling."""

from __future__ import annotations

import math

import pytest

from calibrator.science.charts import D2_OF_TWO, D4_OF_TWO
from calibrator.science.compare import compare
from calibrator.science.components import best_fills_each
from calibrator.science.nested import Weighed, table
from calibrator.science.odd import odd_among_themselves
from calibrator.science.stats import mean_of, sum_of_squares, two_sided_t, welch_satterthwaite
from tests.outside.checks import FROM_MEMORY, check


@pytest.mark.parametrize(
    ("df", "printed"),
    [(1, 12.71), (2, 4.30), (3, 3.18), (4, 2.78), (5, 2.57), (8, 2.31), (10, 2.23), (20, 2.09), (50, 2.01)],
)
def test_student(df: int, printed: float) -> None:
    check(f"t at 95 %, {df} degrees of freedom", "JCGM 100:2008, table G.2", printed, two_sided_t(0.95, df), 5.1e-3)


def test_student_without_end() -> None:
    check("t at 95 %, without end", "JCGM 100:2008, table G.2", 1.96, two_sided_t(0.95, math.inf), 5.1e-3)


# Elongation at break of ten copper wires, the example of Grubbs 1969 and ASTM E178 (the highest value, 596).
WIRES = [568, 570, 570, 570, 572, 572, 572, 578, 584, 596]


def test_grubbs_example() -> None:
    source = "ASTM E178, example of ten wires"
    sd = math.sqrt(sum_of_squares(WIRES) / (len(WIRES) - 1))
    statistic = (max(WIRES) - mean_of(WIRES)) / sd
    check("Grubbs statistic of the ten wires", source, 2.39, statistic, 1e-2, FROM_MEMORY)
    fills = [Weighed(1, float(v)) for v in WIRES]
    # 2.39 is above 2.29, the two-sided value for ten: the flag for one bag is this very test.
    check("odd among the ten wires, place", source, 9, odd_among_themselves(fills, table(fills))[0], 0)


@pytest.mark.parametrize("n", range(3, 11))
def test_flag_switches_at_the_critical_value(n: int) -> None:
    def flagged(extra: float) -> bool:
        fills = [Weighed(1, 100 + (-1) ** i * (1 + 0.1 * i)) for i in range(n - 1)] + [Weighed(1, 100 + extra)]
        return n - 1 in odd_among_themselves(fills, table(fills))

    def statistic(extra: float) -> float:
        values = [100 + (-1) ** i * (1 + 0.1 * i) for i in range(n - 1)] + [100 + extra]
        return (values[-1] - mean_of(values)) / math.sqrt(sum_of_squares(values) / (n - 1))

    low, high = 0.0, 1e4
    for _ in range(200):
        middle = (low + high) / 2
        low, high = (low, middle) if flagged(middle) else (middle, high)
    check(
        f"statistic at which the flag switches, n = {n}",
        "Grubbs 1969, Technometrics 11:1; ASTM E178",
        {3: 1.15, 4: 1.48, 5: 1.71, 6: 1.89, 7: 2.02, 8: 2.13, 9: 2.21, 10: 2.29}[n],
        statistic(high),
        6e-3,
    )


def test_control_chart_constants() -> None:
    source = "ASTM manual on control charts; Montgomery, Introduction to Statistical Quality Control, app. VI"
    check("d2 of two", source, 1.128, D2_OF_TWO, 5.1e-4)
    check("D4 of two", source, 3.267, D4_OF_TWO, 5.1e-4, FROM_MEMORY)
    check("A2 of two", source, 1.880, 3 / (D2_OF_TWO * math.sqrt(2)), 5.1e-4)


def test_end_gauge_budget() -> None:
    source = "JCGM 100:2008, H.1"
    # H.1.3.2: repeated observations, random and systematic effects of the comparator, nm.
    difference, df = welch_satterthwaite([(5.8, 24.0), (3.9, 5.0), (6.7, 8.0)])
    check("u of the measured difference, nm", source, 9.7, difference, 5.1e-2)
    check("its effective degrees of freedom", source, 25.6, df, 0.2, f"{FROM_MEMORY}; from rounded parts")
    # H.1.4: standard, difference, expansion coefficient, temperature difference.
    u, df = welch_satterthwaite([(25.0, 18.0), (9.7, 25.6), (2.9, 50.0), (16.6, 2.0)])
    check("combined u of the end gauge, nm", source, 32.0, u, 0.5)
    check("its effective degrees of freedom", source, 16.7, df, 0.1, FROM_MEMORY)


def test_welch_by_hand() -> None:
    # NIST/SEMATECH e-Handbook, 1.3.5.3: miles per gallon of 249 US and 79 Japanese cars.
    source = "NIST/SEMATECH e-Handbook, 1.3.5.3"
    us = 20.14458, 6.41470 / math.sqrt(249), 248.0
    japan = 30.48101, 6.10771 / math.sqrt(79), 78.0
    found = compare(japan, us)
    check("t of two samples with unequal variances", source, -12.94627, found.difference / found.u, 2e-3, FROM_MEMORY)
    check("its degrees of freedom", source, 136.87499, found.degrees_of_freedom, 2e-2, FROM_MEMORY)


def test_cochran() -> None:
    # Cochran 1977, Sampling Techniques, 10.6: m = S2 / Su · √(c1/c2); with S2 = 2 Su and c1 = 4 c2, m = 4.
    check(
        "best number of second-stage units",
        "Cochran 1977, Sampling Techniques, 10.6",
        4.0,
        best_fills_each(1.0, 2.0, bag_cost=4.0, fill_cost=1.0),
        1e-12,
        "formula, computed by hand",
    )
