"""A season's figures against published examples and reference libraries: least squares, nested spreads, charts."""

from __future__ import annotations

import math
import random

import numpy as np

from calibrator.science.charts import D2_OF_TWO
from calibrator.science.least_squares import fit, joint_p
from calibrator.science.lot_chart import between_lots2, lot_chart
from calibrator.science.nested import Weighed
from tests.outside.checks import FROM_MEMORY, LIBRARY, check
from tests.season_fills import components
from tests.season_rows import lot

STATSMODELS = "statsmodels"
# Longley 1967, J. Am. Stat. Assoc. 62:819: deflator, product, unemployed, forces, population, year; employed.
LONGLEY = (
    (83.0, 234289, 2356, 1590, 107608, 1947, 60323), (88.5, 259426, 2325, 1456, 108632, 1948, 61122),
    (88.2, 258054, 3682, 1616, 109773, 1949, 60171), (89.5, 284599, 3351, 1650, 110929, 1950, 61187),
    (96.2, 328975, 2099, 3099, 112075, 1951, 63221), (98.1, 346999, 1932, 3594, 113270, 1952, 63639),
    (99.0, 365385, 1870, 3547, 115094, 1953, 64989), (100.0, 363112, 3578, 3350, 116219, 1954, 63761),
    (101.2, 397469, 2904, 3048, 117388, 1955, 66019), (104.6, 419180, 2822, 2857, 118734, 1956, 67857),
    (108.4, 442769, 2936, 2798, 120445, 1957, 68169), (110.8, 444546, 4681, 2637, 121950, 1958, 66513),
    (112.6, 482704, 3813, 2552, 123366, 1959, 68655), (114.2, 502601, 3931, 2514, 125368, 1960, 69564),
    (115.7, 518173, 4806, 2572, 127852, 1961, 69331), (116.9, 554894, 4007, 2827, 130081, 1962, 70551),
)  # fmt: skip


def test_least_squares_with_columns_that_nearly_tell_the_same() -> None:
    rows = np.asarray(LONGLEY, dtype=float)
    found = fit(np.column_stack([np.ones(16), rows[:, :6]]), rows[:, 6])
    source = "NIST StRD, Longley"
    certified = (
        -3482258.63459582, 15.0618722713733, -0.0358191792925910, -2.02022980381683, -1.03322686717359,
        -0.0511041056535807, 1829.15146461355,
    )  # fmt: skip
    for n, (value, computed) in enumerate(zip(certified, found.coefficients, strict=True)):
        check(f"coefficient {n}, Longley", source, value, computed, 1e-6 * abs(value), FROM_MEMORY)
    check("residual standard deviation, Longley", source, 304.854073561965, found.sd, 1e-6, FROM_MEMORY)


def test_a_cause_between_kinds_against_the_library() -> None:
    import statsmodels.api as sm

    chance = random.Random(21)
    humidity = [chance.uniform(35, 80) for _ in range(14)]
    kind = [float(n > 9) for n in range(14)]
    y = [0.55 - 0.15 * k - 0.001 * h + chance.gauss(0, 0.01) for h, k in zip(humidity, kind, strict=True)]
    columns = np.column_stack([humidity, kind, np.ones(14)])
    theirs, ours = sm.OLS(y, columns).fit(), fit(columns, np.asarray(y))
    slope = ours.coefficient(0)
    check("slope on humidity beside a kind", STATSMODELS, theirs.params[0], slope.value, 1e-12, LIBRARY)
    low, high = theirs.conf_int()[0]
    check("lower end of that slope", STATSMODELS, low, slope.low, 1e-12, LIBRARY)
    check("upper end of that slope", STATSMODELS, high, slope.high, 1e-12, LIBRARY)
    check("p of that slope", STATSMODELS, theirs.pvalues[0], slope.p, 1e-10, LIBRARY)
    contrast = theirs.t_test([1.0, -1.0, 0.0])
    found = ours.combination([1.0, -1.0, 0.0])
    check("a difference of coefficients", STATSMODELS, contrast.effect[0], found.value, 1e-12, LIBRARY)
    check("its uncertainty", STATSMODELS, contrast.sd[0][0], found.u, 1e-12, LIBRARY)
    f = theirs.compare_f_test(sm.OLS(y, columns[:, 2:]).fit())
    without = fit(columns[:, 2:], np.asarray(y))
    check("p of both columns together", STATSMODELS, f[1], joint_p(ours, without), 1e-10, LIBRARY)


def test_a_published_example_of_three_levels() -> None:
    """Purity of raw material: three suppliers, four batches of each, three determinations, less 93."""
    source = "Montgomery, Design and Analysis of Experiments, two-stage nested design, purity example"
    coded = (
        ((1, -1, 0), (-2, -3, -4), (-2, 0, 1), (1, 4, 0)),
        ((1, -2, -3), (0, 4, 2), (-1, 0, -2), (0, 3, 2)),
        ((2, 4, 0), (-2, 0, 2), (1, -1, 2), (3, 2, 1)),
    )
    found = components(
        [[Weighed(b, 93.0 + v) for b, batch in enumerate(supplier) for v in batch] for supplier in coded]
    )
    for name, expected, row in (
        ("suppliers", 15.06, found.lots), ("batches in suppliers", 69.92, found.bags), ("error", 63.33, found.fills),
    ):  # fmt: skip
        check(f"sum of squares of {name}", source, expected, row.sum_squares, 0.006, FROM_MEMORY)
    check("F of batches in suppliers", source, 2.94, found.bags.f or 0.0, 0.006, FROM_MEMORY)
    check("variance between batches", source, 1.71, (found.bag_sd or 0.0) ** 2, 0.006, FROM_MEMORY)


def test_limits_of_lots_known_exactly_are_those_of_the_individuals_chart() -> None:
    """The chart works in logarithms: lots whose logarithms are Montgomery's values, a hundredth of them."""
    source = "Montgomery, Introduction to Statistical Quality Control, 6.4, viscosity"
    values = (33.75, 33.05, 34.00, 33.81, 33.46, 34.02, 33.68, 33.27, 33.49, 33.20, 33.62, 33.00, 33.54, 33.12, 33.84)
    chart = lot_chart([lot(n, math.exp(v / 100), level_u_g=0.0) for n, v in enumerate(values)])
    found = chart.lots[0]

    def told(density: float | None) -> float:
        return 100 * math.log(density or 1.0)

    check("centre", source, 33.52, told(found.middle_g_per_ml), 5.1e-3)
    check("mean moving range", source, 0.481, 100 * (chart.lot_sd or 0.0) * D2_OF_TWO, 5.1e-4)
    check("upper limit", source, 34.80, told(found.high_g_per_ml), 5.1e-3)
    check("lower limit", source, 32.24, told(found.low_g_per_ml), 1e-2, "printed from a rounded mean")
    assert not any(one.rules for one in chart.lots)


def test_interval_of_a_spread_between_bags_against_simulated_pivots() -> None:
    """The ends of the Tukey-Williams interval put both mean squares at their quantiles: by the library's tables."""
    from scipy import stats

    chance = random.Random(5)
    fills = [Weighed(b, 290 + off + chance.gauss(0, 3)) for b in range(6) for off in [chance.gauss(0, 5)] * 3]
    found = components([fills])
    low, high = found.bag_sd_interval or (0.0, 0.0)
    for name, end, p in (("lower", low, 0.975), ("upper", high, 0.025)):
        f, c = stats.f.ppf(p, 5, 12), stats.chi2.ppf(p, 5)
        squares = found.bags.sum_squares * (1 - f / (found.bags.f or math.nan)) / (3 * c)
        check(f"{name} end, spread between bags, g", "scipy.stats", math.sqrt(squares), end, 1e-9, LIBRARY)


def test_deliveries_of_paste_casks_and_tests() -> None:
    """Ten deliveries, three casks of each, two tests of each cask: lots, bags and fills. Balanced, so that restricted
    maximum likelihood, by which it is widely shown, gives the same as the analysis of variance."""
    source = "Davies and Goldsmith 1972, Statistical Methods in Research and Production, 6.5, paste"
    deliveries = (
        "62.8 62.6 60.1 62.3 62.7 63.1", "60.0 61.4 57.5 56.9 61.1 58.9", "58.7 57.5 63.9 63.1 65.4 63.7",
        "57.1 56.4 56.9 58.6 64.7 64.5", "55.1 55.1 54.7 54.2 58.8 57.5", "63.4 64.9 59.3 58.1 60.5 60.0",
        "62.5 62.6 61.0 58.7 56.9 57.7", "59.2 59.4 65.2 66.0 64.8 64.1", "54.8 54.8 64.0 64.0 57.7 56.8",
        "58.3 59.3 59.2 59.2 58.9 56.6",
    )  # fmt: skip
    found = components([[Weighed(n // 2, float(value)) for n, value in enumerate(told.split())] for told in deliveries])
    for name, expected, sd in (
        ("deliveries", 1.657, found.lot_sd), ("casks", 8.434, found.bag_sd), ("tests", 0.678, found.fill_sd),
    ):  # fmt: skip
        check(f"variance between {name} of paste", source, expected, (sd or 0.0) ** 2, 0.0006, FROM_MEMORY)


def test_batches_of_dyestuff() -> None:
    """Six batches, five preparations of each: lots and the fills of one bag each."""
    source = "Davies and Goldsmith 1972, Statistical Methods in Research and Production, 6.4, dyestuff"
    batches = (
        (1545, 1440, 1440, 1520, 1580), (1540, 1555, 1490, 1560, 1495), (1595, 1550, 1605, 1510, 1560),
        (1445, 1440, 1595, 1465, 1545), (1595, 1630, 1515, 1635, 1625), (1520, 1455, 1450, 1480, 1445),
    )  # fmt: skip
    found = components([[Weighed(1, float(value)) for value in batch] for batch in batches])
    check("variance between batches of dyestuff", source, 1764.05, (found.lot_sd or 0.0) ** 2, 0.006, FROM_MEMORY)
    check("variance in batches of dyestuff", source, 2451.25, (found.fill_sd or 0.0) ** 2, 0.006, FROM_MEMORY)


# Raudenbush 1984, J. Educ. Psychol. 76:85: nineteen effects with their own known variances.
EFFECTS = (
    (0.03, 0.0156), (0.12, 0.0216), (-0.14, 0.0279), (1.18, 0.1391), (0.26, 0.1362), (-0.06, 0.0106),
    (-0.02, 0.0106), (-0.32, 0.0484), (0.27, 0.0269), (0.80, 0.0630), (0.54, 0.0912), (0.18, 0.0497),
    (-0.02, 0.0835), (0.23, 0.0841), (-0.18, 0.0253), (-0.06, 0.0279), (0.30, 0.0193), (0.07, 0.0088),
    (-0.07, 0.0303),
)  # fmt: skip


def test_variance_between_lots_of_unlike_doubt_by_moments() -> None:
    from statsmodels.stats.meta_analysis import combine_effects

    values, own2 = np.asarray(EFFECTS).T
    source = "Raudenbush 2009, Handbook of Research Synthesis and Meta-Analysis, table 16.3"
    # The data are told right when another estimate of that table comes out too.
    assert round(combine_effects(values, own2, method_re="dl").tau2, 3) == 0.026
    found = between_lots2(float(np.var(values, ddof=1)), own2.tolist())
    check("between-study variance, unweighted moments", source, 0.080, found, 0.0005)


def test_spread_between_lots_on_the_chart_against_the_library() -> None:
    """Lots weighed to between 0.2 and 0.8 %: the chart goes by moving ranges, the library by all lots at once, so the
    two agree only to a few percent, and the better the more lots there are (here 4,000)."""
    from statsmodels.stats.meta_analysis import combine_effects

    chance = random.Random(17)
    us = [chance.uniform(0.002, 0.008) for _ in range(4000)]
    logs = [math.log(0.55) + chance.gauss(0, 0.015) + chance.gauss(0, u) for u in us]
    chart = lot_chart(
        [lot(n, math.exp(v), level_u_g=600 * math.exp(v) * u) for n, (v, u) in enumerate(zip(logs, us, strict=True))]
    )
    for method, name in (("pm", "Paule-Mandel"), ("dl", "DerSimonian-Laird")):
        theirs = combine_effects(np.asarray(logs), np.square(us), method_re=method).tau2
        note = f"{LIBRARY}; moving ranges here"
        check(f"spread between lots, {name}", STATSMODELS, math.sqrt(theirs), chart.lot_sd or 0.0, 5e-4, note)
