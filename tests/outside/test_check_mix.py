"""Readings of a mix against the sugar tables, a published calibration example, milk, and the trade."""

from __future__ import annotations

import math

import numpy as np
import pytest

from calibrator.model import Composition
from calibrator.science import bag_count, correction, mix_density, mixing, own_line, solids, sucrose
from calibrator.science.refractometer import Brix
from calibrator.science.scale import ScaleFacts
from tests.outside.checks import COMMON_PRACTICE, FROM_MEMORY, LIBRARY, check

CRC = "CRC Handbook of Chemistry and Physics, concentrative properties of sucrose, 20 °C"
OUNCE_G, POUND_G = 28.349523125, 453.59237
TYPICAL = mixing.powder_from(Composition())


@pytest.mark.parametrize(
    ("percent", "kg_per_m3"), [(0, 998.2), (5, 1017.8), (10, 1038.1), (12, 1046.5), (15, 1059.2), (20, 1081.0)]
)
def test_the_sg_scale_of_a_refractometer_is_that_of_sucrose(percent: float, kg_per_m3: float) -> None:
    sg = kg_per_m3 / 998.2
    name = f"°Brix at SG {sg:.4f} of a refractometer"
    check(name, CRC, percent, sucrose.brix_from_refractometer_sg(sg), 0.03, "densities are printed to 0.1 kg/m³")


@pytest.mark.parametrize(
    ("celsius", "at_10", "at_15"),
    [
        (5, -0.82, -0.87),
        (7, -0.74, -0.78),
        (10, -0.59, -0.62),
        (13, -0.43, -0.45),
        (15, -0.32, -0.33),
        (17, -0.20, -0.20),
    ],
)
def test_temperature_correction(celsius: float, at_10: float, at_15: float) -> None:
    source = "OIV, Compendium of International Methods of Analysis, OIV-MA-AS2-02, table I"
    found = sucrose.temperature_correction_brix(celsius)
    for percent, expected in ((10, at_10), (15, at_15)):
        check(f"correction at {celsius} °C and {percent} %, °Brix", source, expected, found, 0.06, "one curve for both")


def test_temperature_correction_above_twenty() -> None:
    source = "ICUMSA SPS-3, temperature correction, 10 % sucrose"
    check("correction at 25 °C, °Brix", source, 0.38, sucrose.temperature_correction_brix(25), 0.03, FROM_MEMORY)
    check("correction at 30 °C, °Brix", source, 0.79, sucrose.temperature_correction_brix(30), 0.04, FROM_MEMORY)


# Miller and Miller's fluorescein standards, as a worked example of inverse prediction reprints them.
PG_PER_ML = (0.0, 2.0, 4.0, 6.0, 8.0, 10.0, 12.0)
FLUORESCENCE = (2.1, 5.0, 9.0, 12.6, 17.3, 21.0, 24.7)
MILLER = "Miller and Miller, Statistics and Chemometrics for Analytical Chemistry, 5.4–5.6, fluorescein"


def test_a_published_calibration_line() -> None:
    line = own_line.fit(PG_PER_ML, FLUORESCENCE)
    check("slope of a calibration line", MILLER, 1.9304, line.slope, 5e-5)
    check("intercept of a calibration line", MILLER, 1.5179, line.intercept, 5e-5)
    check("residual standard deviation of a calibration line", MILLER, 0.43285, line.residual_sd, 5e-6)


@pytest.mark.parametrize(
    ("y", "readings", "x", "sd", "note"),
    [
        (13.5, 1, 6.207, 0.2398, ""),
        (13.5, 6, 6.207, 0.1248, ""),
        (2.9, 1, 0.72, 0.26, FROM_MEMORY),
        (23.0, 1, 11.13, 0.26, FROM_MEMORY),
    ],
)
def test_inverse_prediction(y: float, readings: int, x: float, sd: float, note: str) -> None:
    found = own_line.invert(own_line.fit(PG_PER_ML, FLUORESCENCE), y, readings=readings)
    places = 0.005 if note else 0.0005
    check(f"x at y = {y}", MILLER, x, found.x, places, note)
    check(f"standard deviation of x at y = {y}, {readings} readings", MILLER, sd, found.u, places, note)


def test_inverse_prediction_interval() -> None:
    found = own_line.invert(own_line.fit(PG_PER_ML, FLUORESCENCE), 13.5)
    note = "by Fieller's theorem, the source by t · s"
    check("lower end of x at y = 13.5", MILLER, 5.59, found.low, 0.006, note)
    check("upper end of x at y = 13.5", MILLER, 6.82, found.high, 0.006, note)


def test_fiellers_interval_is_where_the_prediction_band_is_crossed() -> None:
    import statsmodels.api as sm

    fitted = sm.OLS(np.array(FLUORESCENCE), sm.add_constant(np.array(PG_PER_ML))).fit()
    found = own_line.invert(own_line.fit(PG_PER_ML, FLUORESCENCE), 13.5)
    band = fitted.get_prediction([[1.0, found.low], [1.0, found.high]]).conf_int(obs=True, alpha=0.05)
    name = "95 % prediction band of the line where the inverse interval"
    check(f"{name} begins", "statsmodels, OLS", 13.5, band[0][1], 1e-9, LIBRARY)
    check(f"{name} ends", "statsmodels, OLS", 13.5, band[1][0], 1e-9, LIBRARY)


def milk(fat: float, snf: float) -> tuple[Composition, float]:
    """Its dry matter, and its density by the handbook's formula, g/mL."""
    parts = (fat, 0.385 * snf, 0.08 * snf)
    share = 100.0 / (fat + snf)
    label = Composition(
        fat_pct=parts[0] * share,
        protein_pct=parts[1] * share,
        ash_pct=parts[2] * share,
        fibre_pct=0.0,
        moisture_pct=0.0,
    )
    return label, 100 / (fat / 0.93 + snf / 1.608 + 100 - fat - snf)


@pytest.mark.parametrize(("fat", "snf"), [(3.2, 8.5), (4.0, 8.9), (0.1, 9.0)])
def test_solids_of_milk_from_its_density(fat: float, snf: float) -> None:
    label, density = milk(fat, snf)
    found = mix_density.by_jug([1000 * density], 1000.0, 0.0, ScaleFacts(0.1), mixing.powder_from(label), 15.0)
    check(
        f"solids of milk of {fat} % fat and {snf} % solids-not-fat from its density, %",
        "Dairy handbook formula, density = 100/(F/0.93 + SNF/1.608 + W)",
        fat + snf,
        100 * found.share,
        0.55,
        "0.0015 g/mL between the formula and additive volumes is 0.5 % solids",
    )


@pytest.mark.parametrize(("fat", "snf"), [(3.2, 8.5), (4.0, 8.9), (0.1, 9.0)])
def test_what_hydrometer_and_jug_show_in_milk(fat: float, snf: float) -> None:
    from iapws import IAPWS97

    label, density = milk(fat, snf)
    share, powder = (fat + snf) / 100, mixing.powder_from(label)
    name = f"milk of {fat} % fat and {snf} % solids-not-fat at 15 °C"
    source = "Dairy handbook formula, density = 100/(F/0.93 + SNF/1.608 + W)"
    note = "additive volumes of the label's parts"
    held = mix_density.mix_in_jug_g(share, 1000.0, powder, 15.0)
    check(f"a litre of {name}, g", source, 1000 * density, held, 1.6, note)
    shown = mix_density.mix_shows_sg(share, mix_density.Hydrometer(reference_c=15.0), powder, 15.0)
    water = IAPWS97(T=288.15, P=0.101325).rho / 1000
    check(
        f"a 15 °C hydrometer in {name}",
        f"{source}; water: IAPWS-IF97, library iapws",
        density / water,
        shown,
        0.0016,
        note,
    )


def test_a_hydrometer_in_water() -> None:
    at_60_f = mix_density.water_shows_sg(mix_density.Hydrometer(reference_c=15.556), 15.556)
    check("a hydrometer in water at its own temperature", "ISO 649-1, definition of the reading", 1.0, at_60_f, 1e-12)
    warm = mix_density.water_shows_sg(mix_density.Hydrometer(reference_c=20.0), 40.0)
    expected = 992.21521 / 998.20675 * (1 + 25e-6 * 20)
    source = "Tanaka et al. 2001, Metrologia 38:301; glass 25e-6 per °C"
    check("a 20 °C hydrometer in water of 40 °C", source, expected, warm, 1e-7)


def test_the_rule_of_the_trade() -> None:
    rule = solids.by_trade_rule(Brix(11.2, 3, 0.2, 6, 0.06, 0.15, 0.0))
    check("solids at 11.2 °Brix, %", "Trade", 13.2, 100 * rule.share, 1e-9, COMMON_PRACTICE)


def test_whole_milk_by_the_published_line() -> None:
    dry = mixing.Powder(0.7, 1.0, 3.0, 0.3)
    found = solids.by_whole_milk(Brix(8.0, 3, 0.2, 6, 0.06, 0.15, 0.0), dry)
    source = "Washington State University Extension, milk by refractometer"
    check("solids of milk at 8 °Brix, %", source, 10.0, 100 * found.share, 0.1, "'about 10 %'")


def test_bags_and_feedings() -> None:
    right = bag_count.bag_count(1, 50 * POUND_G, 80, 10 * OUNCE_G, 0.02)
    check("feedings of 10 oz in a 50 lb bag", "Trade", 80.0, right.should_be_per_bag, 1e-9, COMMON_PRACTICE)
    heavy = bag_count.bag_count(1, 50 * POUND_G, 76, 10 * OUNCE_G, 0.02)
    check("excess when the bag lasts 76 feedings, %", "Trade", 5.0, 100 * heavy.share, 0.3, COMMON_PRACTICE)


@pytest.mark.parametrize("way", [-1, 1])
def test_what_is_far_off_is_stirred_and_read_again(way: int) -> None:
    """The largest slip, in steps of half a percent, that is put right without a second look."""
    mixes = [correction.Batch(10_000.0, 40.0, 0.13 * (1 + way * (half + 0.5) / 200)) for half in range(60)]
    added = correction.Addition(TYPICAL, Composition())
    near = [half for half, mix in enumerate(mixes) if not correction.correct(mix, 0.13, added).far_off]
    name = f"a mix too {'thin' if way < 0 else 'strong'} is put right at once up to, %"
    check(name, "Trade", 15.0, len(near) / 2, 0.26, COMMON_PRACTICE)
    assert near == list(range(len(near)))


def test_the_known_solution_needs_no_table() -> None:
    made = sucrose.known_solution(200.0, 1.0)
    assert (made.sugar_g, made.water_g) == (24.0, 176.0)
    check("°Brix of 24 g sugar with 176 g water", "Definition of degrees Brix, % by weight", 12.0, made.brix, 1e-12)
    check(
        "doubt of 24 g sugar on a 1 g scale, °Brix",
        "JCGM 100:2008, F.2.2.1",
        12 / 24 / math.sqrt(6),
        made.u_brix,
        1e-12,
    )
