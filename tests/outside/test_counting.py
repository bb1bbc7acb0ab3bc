"""Powder at hand, parts of a scoopful, slips: exact fractions of the standard library, pandas and scipy."""

from __future__ import annotations

from datetime import date
from fractions import Fraction

import pytest

from calibrator.model import Cylinder, FillWay
from calibrator.science.keep import fits_line
from calibrator.science.plausible import scoopfuls_meant
from calibrator.science.scale import ScaleFacts
from calibrator.science.scoopfuls import ScoopWay
from calibrator.science.scoops import parts_of
from calibrator.science.settling import Settling
from calibrator.science.stock import full_days, packages_missing, stock
from calibrator.science.struck import odd_pourings
from calibrator.science.weighing import Weighed, level_result
from tests.outside.checks import LIBRARY, check

FRACTIONS = "fractions, Python standard library"
LB_G = Fraction(45359237, 100000)


@pytest.mark.parametrize(
    ("packages", "bag_lb", "fed_lb", "daily_lb"),
    [
        (Fraction(20), Fraction(50), Fraction(0), Fraction(125, 2)),
        (Fraction(81, 2), Fraction(50), Fraction(333), Fraction(34)),
    ],
)
def test_days_that_powder_lasts(packages: Fraction, bag_lb: Fraction, fed_lb: Fraction, daily_lb: Fraction) -> None:
    left_lb = packages * bag_lb - fed_lb
    told = stock(*(float(part) for part in (packages, bag_lb * LB_G, fed_lb * LB_G, daily_lb * LB_G)), date(2026, 1, 5))
    what = f"{float(packages):g} bags of {float(bag_lb):g} lb less {float(fed_lb):g} lb"
    assert told.days is not None
    check(f"what is left of {what}, lb", FRACTIONS, float(left_lb), told.left_g / float(LB_G), 1e-9, LIBRARY)
    check(f"full days of {what} at {float(daily_lb):g} lb", FRACTIONS, left_lb // daily_lb, told.days, 0.0, LIBRARY)


def test_days_where_each_takes_its_own() -> None:
    import pandas

    needs_g = [4000.0 + 37.5 * day for day in range(60)]
    summed = pandas.Series(needs_g).cumsum()
    days = full_days(100_000.0, needs_g)
    assert days is not None
    check(
        "full days of 100 kg, each day 37.5 g more",
        "pandas, cumsum",
        int((summed <= 100_000.0).sum()),
        days,
        0.0,
        LIBRARY,
    )
    missing = -((Fraction(summed.iloc[-1]) - 100_000) // -(50 * LB_G))
    made = packages_missing(needs_g, 100_000.0, float(50 * LB_G))
    check("bags of 50 lb that have to come for sixty such days", FRACTIONS, missing, made, 0.0, LIBRARY)


@pytest.mark.parametrize(("line_oz", "halves"), [(Fraction(4), True), (Fraction(5), False), (Fraction(20, 7), True)])
def test_a_feeding_in_halves(line_oz: Fraction, halves: bool) -> None:
    """Ten ounces in scoopfuls to a line: 2 1/2 of 4 oz, 2 of 5 oz, 3 1/2 of 2 6/7 oz."""
    count = Fraction(10) / line_oz
    assert (count.denominator == 2) is halves
    way = ScoopWay("s", "Red scoop", FillWay.TO_MARK, float(line_oz) * 28.349523125, 0.5)
    parts = parts_of(283.49523125, (way,), 0.02)
    check(
        f"the smallest part of a scoopful in 10 oz by a line of {line_oz} oz",
        FRACTIONS, 1 / count.denominator, min(parts), 0.0, LIBRARY,
    )  # fmt: skip


@pytest.mark.parametrize("mass_oz", [23.7, 35.2, 47.3])
def test_how_many_scoopfuls_were_meant(mass_oz: float) -> None:
    from scipy import stats

    each_oz, share = 11.8, 0.03
    likeliest = max(range(1, 8), key=lambda n: stats.norm.logpdf(mass_oz, n * each_oz, share * n * each_oz))
    meant = scoopfuls_meant(mass_oz, 1, each_oz)
    assert meant is not None
    check(f"scoopfuls of {each_oz} oz in {mass_oz} oz", "scipy.stats, likeliest normal", likeliest, meant, 0.0, LIBRARY)


def test_which_pouring_is_odd() -> None:
    """Grubbs' test: the farthest from the mean by the spread of all, beyond its bound at 5 % from Student's t."""
    import numpy as np
    from scipy import stats

    masses_g = [661.0, 662.0, 660.5, 704.0, 661.5]
    z = np.abs(stats.zscore(masses_g, ddof=1))
    n, t = len(masses_g), stats.t.isf(0.05 / (2 * len(masses_g)), len(masses_g) - 2)
    assert z.max() > (n - 1) / n**0.5 * (t**2 / (n - 2 + t**2)) ** 0.5
    (odd,) = odd_pourings(masses_g)
    check("odd among five pourings, place", "scipy.stats, Grubbs' test", int(z.argmax()), odd, 0.0, LIBRARY)


def test_how_far_a_scoopful_may_be_from_what_a_line_holds() -> None:
    """The heaviest scoopful that still fits the line: settling by the library, single scoopfuls as the fills tell."""
    from GTC import uncertainty, ureal, value
    from scipy import optimize, stats

    pairs = [(1, 290.0), (1, 293.0), (2, 285.0), (2, 288.0), (3, 295.0), (3, 292.0)]
    level = level_result([Weighed(bag, mass_g) for bag, mass_g in pairs], ScaleFacts(1.0), tolerance_g=6.0)
    shape, settling = Cylinder(diameter_mm=90.0, height_mm=100.0), Settling(1.02, 0.02)
    held = level.mean_g * 0.7 * ureal(settling.factor, settling.u)
    of_one_g = value(held) * (level.next_high_g - level.next_low_g) / 2 / level.mean_g
    of_settling_g = stats.norm.ppf(0.975) * uncertainty(held)
    far = optimize.bisect(lambda g: 0.5 - fits_line(g, shape, level, settling, 30.0), value(held), 400.0, xtol=1e-9)
    reach_g = (of_one_g**2 + of_settling_g**2) ** 0.5
    check(
        "how far a scoopful may be from its line's weight, g",
        "GTC (MSL, New Zealand)",
        reach_g,
        far - value(held),
        1e-6,
        LIBRARY,
    )
