"""Weighing and season against reference libraries: GTC for uncertainty, statsmodels and scipy for statistics."""

from __future__ import annotations

import math
import random

import pytest

from calibrator.model import Cylinder
from calibrator.science.budget import Source
from calibrator.science.charts import D2_OF_TWO, EWMA_WEIGHT, running_means_from_first
from calibrator.science.compare import compare
from calibrator.science.components import one_way
from calibrator.science.mark import fill_line, reach_untried_95
from calibrator.science.nested import Weighed, table
from calibrator.science.scale import ScaleFacts, check_scale, scale_facts
from calibrator.science.settling import Settling, settling_before
from calibrator.science.stats import t_quantile, two_sided_t, welch_satterthwaite
from calibrator.science.weighing import bulk_density, level_result
from tests.outside.checks import LIBRARY, check
from tests.season_fills import components

GTC = "GTC (MSL, New Zealand)"
STATSMODELS = "statsmodels"
SCIPY = "scipy.stats"
PANDAS = "pandas"
FILLS = [(1, 290.0), (1, 293.0), (2, 285.0), (2, 288.0), (3, 295.0), (3, 292.0), (4, 290.0), (4, 291.0)]


def fills_of(pairs: list[tuple[int, float]]) -> list[Weighed]:
    return [Weighed(bag, mass) for bag, mass in pairs]


def test_end_gauge_by_the_library() -> None:
    from GTC import dof, uncertainty, ureal

    parts = [(25.0, 18.0), (9.7, 25.6), (2.9, 50.0), (16.6, 2.0)]
    total = sum(ureal(0.0, u, df) for u, df in parts)
    u, df = welch_satterthwaite(parts)
    check("combined u of the end gauge, nm", f"{GTC}, JCGM 100 H.1", uncertainty(total), u, 1e-9, LIBRARY)
    check("its effective degrees of freedom", f"{GTC}, JCGM 100 H.1", dof(total), df, 1e-9, LIBRARY)


def test_resistance_reactance_impedance() -> None:
    # JCGM 100:2008, H.2: five simultaneous readings of V, I and the phase.
    from GTC import cos, sin, ta, uncertainty, value

    volts = [5.007, 4.994, 5.005, 4.990, 4.999]
    milliamperes = [19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3]
    phase = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433]
    v, i, phi = ta.multi_estimate_real((volts, milliamperes, phase))
    source = "JCGM 100:2008, H.2"
    check("R of H.2, Ω", source, 127.732, value(v / i * cos(phi)), 5.1e-4)
    check("X of H.2, Ω", source, 219.847, value(v / i * sin(phi)), 5.1e-4)
    check("Z of H.2, Ω", source, 254.260, value(v / i), 5.1e-4)
    mean_u = [math.sqrt(table(fills_of([(k, x) for k, x in enumerate(xs)])).bag_ms / 5) for xs in (volts, phase)]
    check("u of the mean voltage of H.2, V", source, 0.0032, mean_u[0], 5.1e-5)
    check("u of the mean phase of H.2, rad", source, 0.00075, mean_u[1], 5.1e-6)
    check("u of the mean voltage of H.2, V", GTC, uncertainty(v), mean_u[0], 1e-12, LIBRARY)


def test_a_scale_that_is_off() -> None:
    """Three scoopfuls at a time, on a scale whose check weight of 500 g showed 510 g."""
    from GTC import uncertainty, ureal, value

    checked = check_scale(500.0, 510.0, 1.0)
    level = level_result([Weighed(1, 102.0, 3), Weighed(2, 102.0, 3)], scale_facts(1.0, checked), tolerance_g=2.0)
    true = ureal(102.0, 0.0) * 500.0 / ureal(510.0, checked.u_g)
    of_scale = next(row for row in level.budget if row.source is Source.SCALE_ERROR)
    check("a weight corrected for the scale, g", GTC, value(true), level.mean_g, 1e-9, LIBRARY)
    check("u of that correction, g", GTC, uncertainty(true), of_scale.contribution, 1e-9, LIBRARY)


def test_density_budget() -> None:
    from GTC import dof, ureal
    from GTC import uncertainty as u_of

    mean_g = level_result(fills_of(FILLS), ScaleFacts(1.0), tolerance_g=6.0).mean_g
    scale = ScaleFacts(1.0, error_u_share=0.5 / mean_g, error_df=9.0)
    level = level_result(fills_of(FILLS), scale, tolerance_g=6.0)
    found = bulk_density(level, 575.0, 4.0, 7.0)
    (spread_u, spread_df), _ = level.parts
    mean = ureal(level.mean_g, spread_u, spread_df) + ureal(0.0, 0.5, 9.0)
    density = mean / ureal(575.0, 4.0, 7.0)
    check("u of a bulk density, g/mL", GTC, u_of(density), found.u_g_per_ml, 1e-12, LIBRARY)
    check("degrees of freedom of a bulk density", GTC, dof(density), found.degrees_of_freedom, 0.05, LIBRARY)


def test_line_of_a_cylinder() -> None:
    from GTC import uncertainty as u_of
    from GTC import ureal

    level, settling, rim = ureal(290.0, 3.0), ureal(1.02, 0.01), ureal(600.0, 12.0)
    area = math.pi * 45.0**2 / 1000.0
    density = level / rim * settling  # both from one rim volume: it cancels
    height = 220.0 / density * (area * 100.0 / rim) / area
    shape = Cylinder(diameter_mm=90.0, height_mm=100.0)
    line = fill_line(shape, 290.0, 3.0, 220.0, 1.02, 0.01)
    check("height of a line, mm", GTC, height.x, line.height_mm, 1e-9, LIBRARY)
    without_volume = ureal(290.0, 3.0) * settling
    check("u of a line, mm", GTC, u_of(220.0 * 100.0 / without_volume), line.u_mm, 1e-9, LIBRARY)


@pytest.mark.parametrize(("level_u_g", "df"), [(0.5, 2.0), (4.0, 2.0), (2.0, 3.0), (6.0, 7.0), (2.0, 29.0)])
def test_reach_of_an_untried_line(level_u_g: float, df: float) -> None:
    # The level mean's doubt as a scaled t (JCGM 101:2008, 6.4.9) and the settling's as a normal (6.4.7), put together.
    from scipy import integrate, optimize, stats

    target_g, settling_u = 200.0, 0.02
    of_level_g, of_settling_g = level_u_g * target_g / 290.0, target_g * settling_u

    def beyond(half_g: float) -> float:
        def inside(t: float) -> float:
            ends = (side * half_g - of_level_g * t for side in (1.0, -1.0))
            high, low = (stats.norm.cdf(end / of_settling_g) for end in ends)
            return float(stats.t.pdf(t, df) * (high - low))

        return 0.95 - 2.0 * float(integrate.quad(inside, 0.0, math.inf, epsabs=1e-10, limit=400)[0])

    half_g = optimize.brentq(beyond, of_settling_g, 20.0 * (of_level_g + of_settling_g))
    line = fill_line(Cylinder(diameter_mm=90.0, height_mm=100.0), 290.0, level_u_g, target_g, 1.0, settling_u)
    found_g, _ = reach_untried_95(line, 290.0, [(level_u_g, df)], Settling(1.0, settling_u))
    name = f"95 % reach of an untried line, u {level_u_g:g} g with {df:g} degrees of freedom, g"
    note = "reference library; added in quadrature it is up to 3 % off the exact interval"
    check(name, f"{SCIPY}, JCGM 101:2008, 6.4", half_g, found_g, 0.03 * half_g, note)


@pytest.mark.parametrize("factors", [(1.01, 1.03, 1.015), (1.02, 1.05, 1.03, 1.01, 1.04, 1.02)])
def test_how_the_next_lot_will_settle(factors: tuple[float, ...]) -> None:
    import numpy as np
    from statsmodels.regression.linear_model import OLS

    low, high = OLS(factors, np.ones(len(factors))).fit().get_prediction([1.0]).conf_int(obs=True, alpha=0.05)[0]
    settling = settling_before(factors)
    half = two_sided_t(0.95, settling.degrees_of_freedom) * settling.u
    name = f"95 % of the next lot's settling factor after {len(factors)} lots"
    check(f"{name}, low", STATSMODELS, low, settling.factor - half, 1e-9, LIBRARY)
    check(f"{name}, high", STATSMODELS, high, settling.factor + half, 1e-9, LIBRARY)


@pytest.mark.parametrize("df", [0.7, 2.5, 16.7, 1e4])
def test_student_between_whole_degrees(df: float) -> None:
    from scipy import stats

    check(f"t at 95 %, {df:g} degrees of freedom", SCIPY, stats.t.ppf(0.975, df), two_sided_t(0.95, df), 1e-9, LIBRARY)


@pytest.mark.parametrize("df", [0.5, 1.0, 3.3, 40.0, 999.0, 1001.0, 1e7])
@pytest.mark.parametrize("probability", [1e-9, 0.025, 0.3, 0.9, 0.999])
def test_student_out_to_the_tails(df: float, probability: float) -> None:
    from scipy.special import stdtrit

    # Not a check of its own for each in the table: the same function as above, held to far places.
    assert t_quantile(probability, df) == pytest.approx(float(stdtrit(df, probability)), rel=1e-9)


def test_analysis_of_variance() -> None:
    from scipy import stats

    groups = [[290.0, 293.0, 291.0], [285.0, 288.0], [295.0], [290.0, 291.0, 289.0, 292.0]]
    f, p = stats.f_oneway(*groups)
    rows = one_way(groups)
    check("F, unequal groups", SCIPY, f, rows[0].f or 0.0, 1e-9, LIBRARY)
    check("p, unequal groups", SCIPY, p, rows[0].p or 0.0, 1e-12, LIBRARY)


def test_welch() -> None:
    from statsmodels.stats.weightstats import CompareMeans, DescrStatsW

    a, b = [290.0, 293.0, 285.0, 288.0, 291.0], [297.0, 299.0, 290.0, 301.0]
    whole = CompareMeans(DescrStatsW(b), DescrStatsW(a))
    low, high = whole.tconfint_diff(usevar="unequal")
    tables = [table([Weighed(k, v) for k, v in enumerate(xs)]) for xs in (a, b)]
    first, second = ((t.mean_g, math.sqrt(t.bag_ms / len(t.bags)), float(t.bag_df)) for t in tables)
    found = compare(first, second)
    check("lower end of a difference of two lots, g", STATSMODELS, low, found.low, 1e-9, LIBRARY)
    check("upper end of a difference of two lots, g", STATSMODELS, high, found.high, 1e-9, LIBRARY)
    _, p, df = whole.ttest_ind(usevar="unequal")
    check("its p", STATSMODELS, p, found.p, 1e-12, LIBRARY)
    check("its degrees of freedom", STATSMODELS, df, found.degrees_of_freedom, 1e-9, LIBRARY)


def test_components_of_a_balanced_season() -> None:
    # On balanced data, restricted maximum likelihood and the analysis of variance agree where none is negative.
    import pandas as pd
    import statsmodels.formula.api as smf

    chance = random.Random(3)
    lots, rows = [], []
    for lot in range(12):
        lot_off = chance.gauss(0, 14)
        fills = []
        for bag in range(4):
            bag_off = chance.gauss(0, 4)
            for _ in range(2):
                value = 290 + lot_off + bag_off + chance.gauss(0, 4)
                fills.append(Weighed(bag, value))
                rows.append((value, lot, f"{lot}-{bag}"))
        lots.append(fills)
    frame = pd.DataFrame(rows, columns=["mass", "lot", "bag"])
    model = smf.mixedlm("mass ~ 1", frame, groups="lot", re_formula="1", vc_formula={"bag": "0 + C(bag)"})
    fit = model.fit(reml=True)
    found = components(lots)
    check(
        "spread between lots, g", STATSMODELS, math.sqrt(float(fit.cov_re.iloc[0, 0])), found.lot_sd or 0, 0.02, LIBRARY
    )
    check("spread between bags, g", STATSMODELS, math.sqrt(float(fit.vcomp[0])), found.bag_sd or 0, 0.02, LIBRARY)
    check("spread between fills, g", STATSMODELS, math.sqrt(float(fit.scale)), found.fill_sd or 0, 0.02, LIBRARY)


def test_interval_of_one_bag_of_readings() -> None:
    from scipy import stats

    values = [290.0, 293.0, 285.0, 288.0, 291.0]
    level = level_result([Weighed(k, v) for k, v in enumerate(values)], ScaleFacts(0.1), tolerance_g=6.0)
    low, high = stats.t.interval(0.95, 4, loc=sum(values) / 5, scale=stats.sem(values))
    check("lower end of a mean, one fill a bag, g", SCIPY, low, level.low_g, 1e-9, LIBRARY)
    check("upper end of a mean, one fill a bag, g", SCIPY, high, level.high_g, 1e-9, LIBRARY)
    n = len(values)
    one_more = two_sided_t(0.95, n - 1) * stats.tstd(values) * math.sqrt(1 + 1 / n)
    check("reach of one more scoopful, g", SCIPY, one_more, level.next_high_g - level.mean_g, 1e-9, LIBRARY)


def test_moving_range_estimates_the_spread() -> None:
    from scipy import stats

    # d2 of two is the mean of the range of two standard normal values: 2/√π.
    mean_range = stats.foldnorm(0.0, scale=math.sqrt(2.0)).mean()
    check("mean range of two standard normal values", SCIPY, float(mean_range), D2_OF_TWO, 1e-12, LIBRARY)


def test_running_mean_begun_at_the_first_value() -> None:
    import pandas as pd

    offs = [0.021, -0.013, 0.034, 0.002, -0.027, 0.011]
    expected = pd.Series(offs).ewm(alpha=EWMA_WEIGHT, adjust=True).mean()
    for t, (told, found) in enumerate(zip(expected, running_means_from_first(offs), strict=True), start=1):
        check(f"running mean begun at the first value, after {t}", PANDAS, float(told), found, 1e-15, LIBRARY)
