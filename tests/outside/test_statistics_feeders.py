"""A trial of feeders against certified values and a reference library."""

from __future__ import annotations

import math

import pytest

from calibrator.science.feeders import trial
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
