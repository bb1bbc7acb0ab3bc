"""A trial of feeders against certified values and a reference library."""

from __future__ import annotations

import math

import pytest

from calibrator.science.crossed import crossed
from calibrator.science.feeders import trial
from calibrator.science.repeat_trials import TrialRead, habits
from tests.outside import nist
from tests.outside.checks import LIBRARY, check


def test_five_instruments_of_five_readings_as_five_people() -> None:
    source = "NIST StRD, SiRstv"
    between, within = nist.certified("SiRstv")
    found = trial({str(n): group for n, group in enumerate(nist.groups("SiRstv"))}, 0.0, 0.02)
    repeat2 = within[1] / within[0]
    between2 = (between[1] / between[0] - repeat2) / 5
    repeat, whole = found.repeatability.share * found.mean_g, found.reproducibility.share * found.mean_g
    check("repeatability of a trial, Ω cm", source, math.sqrt(repeat2), repeat, 1e-9)
    derived = "from the certified mean squares"
    check("spread between people, Ω cm", source, math.sqrt(between2), found.between * found.mean_g, 1e-8, derived)
    check("reproducibility of a trial, Ω cm", source, math.sqrt(repeat2 + between2), whole, 1e-8, derived)
    check("chance of people so far apart, F", source, between[3], _f(found.p or 0.0), 1e-6)


def _f(p: float) -> float:
    from scipy.stats import f

    return float(f.isf(p, 4, 20))


@pytest.mark.filterwarnings("ignore::FutureWarning")  # of the library, about its own next version
def test_spreads_and_differences_against_the_libraries() -> None:
    import pandas as pd
    import statsmodels.formula.api as smf
    from statsmodels.stats.weightstats import CompareMeans, DescrStatsW

    people = {"Ana": [102.1, 103.0, 102.4, 101.8, 102.7], "Luis": [100.2, 99.1, 100.9, 99.8, 100.4],
              "Eva": [98.9, 99.6, 98.2, 99.9, 99.0]}  # fmt: skip
    found = trial(people, 0.0, 0.02)
    rows = pd.DataFrame([(name, mass) for name, own in people.items() for mass in own], columns=["who", "g"])
    fitted = smf.mixedlm("g ~ 1", rows, groups=rows["who"]).fit(reml=True, method="lbfgs", pgtol=1e-10, factr=10)
    whole = math.sqrt(float(fitted.cov_re.iloc[0, 0]) + fitted.scale)
    source = "statsmodels, MixedLM (REML)"
    reml = (math.sqrt(fitted.scale), whole)
    ours = [sd.share * found.mean_g for sd in (found.repeatability, found.reproducibility)]
    check("repeatability, balanced trial, g", source, reml[0], ours[0], 1e-4, LIBRARY)
    check(
        "reproducibility, balanced trial, g", source, whole, found.reproducibility.share * found.mean_g, 1e-3, LIBRARY
    )
    pair = trial({name: people[name] for name in ("Ana", "Luis")}, 0.0, 0.02)
    apart = CompareMeans(DescrStatsW(people["Ana"]), DescrStatsW(people["Luis"]))
    low, high = apart.tconfint_diff(usevar="unequal")
    ana = pair.people[0]
    check("difference of two people begins, g", "statsmodels, Welch", low, 2 * ana.low * pair.mean_g, 1e-9, LIBRARY)
    check("difference of two people ends, g", "statsmodels, Welch", high, 2 * ana.high * pair.mean_g, 1e-9, LIBRARY)


PARTS = """21 20 20 20 19 21|24 23 24 24 23 24|20 21 19 21 20 22|27 27 28 26 27 28|19 18 19 18 18 21|23 21 24 21 23 22
22 21 22 24 22 20|19 17 18 20 19 18|24 23 25 23 24 24|25 23 26 25 24 25|21 20 20 20 21 20|18 19 17 19 18 19
23 25 25 25 25 25|24 24 23 25 24 25|29 30 30 28 31 30|26 26 25 26 25 27|20 20 19 20 20 20|19 21 19 19 21 23
25 26 25 24 25 25|19 19 18 17 19 17"""
"""Twenty parts, each measured twice by three operators, part by part."""


def test_a_crossed_study_of_repeatability_and_reproducibility() -> None:
    source = "Montgomery, Design and Analysis of Experiments, measurement systems study (Table 12-4, 5th edition)"
    values = [[float(one) for one in part.split()] for part in PARTS.replace("\n", "|").split("|")]
    found = crossed([[part[2 * n : 2 * n + 2] for part in values] for n in range(3)])
    for name, row, squares, mean in (
        ("parts", found.columns, 1185.425, 62.391),
        ("operators", found.rows, 2.617, 1.308),
        ("parts by operators", found.both, 27.050, 0.712),
        ("error", found.within, 59.500, 0.992),
    ):
        check(f"crossed study, sum of squares of {name}", source, squares, row.sum_squares, 5.1e-4)
        check(f"crossed study, mean square of {name}", source, mean, row.mean_square, 5.1e-4)
    for name, f, p, row in (
        ("parts", 87.65, 0.000, found.columns),
        ("operators", 1.84, 0.173, found.rows),
        ("parts by operators", 0.72, 0.861, found.both),
    ):
        check(f"crossed study, F of {name}", source, f, row.f or 0.0, 5.1e-3)
        check(f"crossed study, chance of {name}", source, p, row.p or 0.0, 5.1e-4)
    check("crossed study, variance of operators", source, 0.0149, found.row_variance, 5.1e-5)
    zero = "printed as −0.1399 and taken as none there"
    check("crossed study, variance of parts by operators", source, 0.0, found.both_variance, 0.0, zero)
    check("crossed study, variance of repeats", source, 0.9917, found.within.mean_square, 5.1e-5)


@pytest.mark.filterwarnings("ignore::FutureWarning")  # of the library, about its own next version
def test_trials_over_time_against_a_library() -> None:
    import pandas as pd
    import statsmodels.formula.api as smf
    from statsmodels.stats.anova import anova_lm

    days = [
        {"Ana": [102.1, 103.0, 102.4], "Luis": [100.2, 99.1, 100.9], "Eva": [98.9, 99.6, 98.2]},
        {"Ana": [151.2, 150.1, 152.0], "Luis": [150.9, 149.0, 149.5], "Eva": [147.9, 149.8, 150.7]},
    ]
    rows = [(who, day, math.log(g)) for day, own in enumerate(days) for who, all_g in own.items() for g in all_g]
    fitted = smf.ols("y ~ C(who) * C(day)", pd.DataFrame(rows, columns=["who", "day", "y"])).fit()
    table = anova_lm(fitted)["mean_sq"]
    found = habits([TrialRead(own, 0.0) for own in days], ("Ana", "Luis", "Eva"), 0.02)
    source = "statsmodels, anova_lm of logarithms"
    between = (table["C(who)"] - table["C(who):C(day)"]) / 6
    by_day = (table["C(who):C(day)"] - table["Residual"]) / 3
    repeat = math.sqrt(table["Residual"])
    check("repeatability over trials, share", source, repeat, found.repeatability.share, 1e-9, LIBRARY)
    check("people over trials, share", source, math.sqrt(between), found.between, 1e-9, LIBRARY)
    check("people by trial, share", source, math.sqrt(by_day), found.by_trial, 1e-9, LIBRARY)
    whole = math.sqrt(between + by_day + table["Residual"])
    check("reproducibility over trials, share", source, whole, found.reproducibility.share, 1e-9, LIBRARY)
