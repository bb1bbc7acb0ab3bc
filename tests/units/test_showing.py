"""Numbers as people read them: the rounding rule, the steps, the words between."""

from math import inf, nan

import pytest

from calibrator.model import UnitSystem
from calibrator.units import (
    Kind,
    density_unit,
    edit_text,
    in_unit,
    line_in_both,
    show,
    show_both,
    show_density,
    show_estimate,
    show_factor,
    show_in_one_unit,
    show_length,
    show_mass,
    show_mass_between,
    show_number,
    show_percent,
    show_scoop_estimate,
    show_scoop_volume,
    show_scoopfuls,
    show_temperature,
    show_temperature_span,
    show_temperature_within,
    show_volume,
    show_with_uncertainty,
    span_from_default_unit,
    span_in_default_unit,
    with_sign,
)

FARM, METRIC = UnitSystem.FARM, UnitSystem.METRIC
OZ, LB, QT, INCH = 28.349523125, 453.59237, 946.352946, 25.4


@pytest.mark.parametrize(
    ("ounces", "told"),
    [
        (10, "10.0 oz"),
        (10.2, "10.2 oz"),
        (10.25, "10.3 oz"),
        (10.35, "10.4 oz"),
        (-10.25, "−10.3 oz"),
        (-0.04, "0.0 oz"),
        (0, "0.0 oz"),
        (63.94, "63.9 oz"),
        (63.96, "4 lb"),
        (100, "6 lb 4.0 oz"),
        (2500, "156 lb 4.0 oz"),
        (79.96, "5 lb"),
        (-100, "−6 lb 4.0 oz"),
    ],
)
def test_weights_in_farm_units(ounces: float, told: str) -> None:
    assert show_mass(ounces * OZ, FARM) == told


@pytest.mark.parametrize(
    ("grams", "told"),
    [
        (289.4, "289 g"),
        (289.5, "290 g"),
        (999.4, "999 g"),
        (999.5, "1.00 kg"),
        (3250, "3.25 kg"),
        (99_999, "100.00 kg"),
        (100_000, "100.0 kg"),
        (1_000_000, "1000 kg"),
    ],
)
def test_weights_in_metric(grams: float, told: str) -> None:
    assert show_mass(grams, METRIC) == told


@pytest.mark.parametrize(
    ("grams", "system", "resolution_g", "told"),
    [
        (287.4, METRIC, 5, "285 g"),
        (287.5, METRIC, 5, "290 g"),
        (287.44, METRIC, 0.1, "287.4 g"),
        (3257.4, METRIC, 5, "3.255 kg"),
        (10.3 * OZ, FARM, 0.5 * OZ, "10.5 oz"),
        (10.3 * OZ, FARM, 0.25 * OZ, "10.25 oz"),
        (10.3 * OZ, FARM, OZ / 8, "10.250 oz"),
        (10.3 * OZ, FARM, 0.2 * OZ, "10.4 oz"),
        (10.32 * OZ, FARM, 1, "10.32 oz"),
        (100.3 * OZ, FARM, LB, "6 lb"),
        (100.3 * OZ, FARM, OZ, "6 lb 4 oz"),
    ],
)
def test_weights_keep_to_the_scales_step(grams: float, system: UnitSystem, resolution_g: float, told: str) -> None:
    assert show_mass(grams, system, resolution_g=resolution_g) == told


@pytest.mark.parametrize(
    ("style", "told"),
    [("oz", "100.0 oz"), ("lb", "6.3 lb"), ("lb_oz", "6 lb 4.0 oz"), ("g", "2835 g"), ("kg", "2.83 kg")],
)
def test_a_weight_in_a_way_asked_for(style: str, told: str) -> None:
    assert show_mass(100 * OZ, FARM, style=style) == told


@pytest.mark.parametrize(
    ("quarts", "told"),
    [
        (0.5, "1/2 qt"),
        (2, "2 qt"),
        (2.3, "2 1/4 qt"),
        (2.375, "2 1/2 qt"),
        (0.01, "0 qt"),
        (3.9, "1 gal"),
        (4, "1 gal"),
        (21.3, "5 gal 1 1/4 qt"),
        (20, "5 gal"),
        (500, "125 gal"),
        (-2.25, "−2 1/4 qt"),
    ],
)
def test_water_in_farm_units(quarts: float, told: str) -> None:
    assert show_volume(quarts * QT, FARM) == told


@pytest.mark.parametrize(
    ("volume_ml", "system", "step", "told"),
    [
        (1892.7, METRIC, None, "1.9 L"),
        (1850, METRIC, None, "1.9 L"),
        (1892.7, METRIC, 0.5, "2.0 L"),
        (1892.7, METRIC, 0.05, "1.90 L"),
        (1892.7, METRIC, 1, "2 L"),
        (2.3 * QT, FARM, 0.5, "2 1/2 qt"),
        (2.3 * QT, FARM, 0.1, "2.3 qt"),
        (2.3 * QT, FARM, 1, "2 qt"),
        (21.3 * QT, FARM, 0.1, "5 gal 1.3 qt"),
    ],
)
def test_water_to_a_step_of_the_farms_own(volume_ml: float, system: UnitSystem, step: float | None, told: str) -> None:
    assert show_volume(volume_ml, system, step=step) == told


@pytest.mark.parametrize(
    ("length_mm", "system", "step", "told"),
    [
        (33.3375, FARM, None, "1 5/16 in"),
        (33, FARM, None, "1 5/16 in"),
        (50.8, FARM, None, "2 in"),
        (0, FARM, None, "0 in"),
        (1 / 32 * INCH, FARM, None, "1/16 in"),
        (-6.35, FARM, None, "−1/4 in"),
        (33, FARM, 1 / 8, "1 1/4 in"),
        (33.3375, METRIC, None, "33 mm"),
        (33.5, METRIC, None, "34 mm"),
        (33.3375, METRIC, 0.5, "33.5 mm"),
    ],
)
def test_marks(length_mm: float, system: UnitSystem, step: float | None, told: str) -> None:
    assert show_length(length_mm, system, step=step) == told


def test_whole_degrees() -> None:
    assert show_temperature(130 / 3, FARM) == "110 °F"
    assert show_temperature(130 / 3, METRIC) == "43 °C"
    assert show_temperature(-20, FARM) == "−4 °F"


def test_scoops_and_densities_and_percents() -> None:
    assert show_scoop_volume(600, FARM) == "20.3 fl oz"
    assert show_scoop_volume(599.6, METRIC) == "600 mL"
    # 0.512 g/mL × 946.352946 mL/qt ÷ 28.349523125 g/oz = 17.09 oz/qt
    assert show_density(0.512, FARM, brief=True) == "17.1 oz/qt"
    assert show_density(0.512, FARM) == "17.1 oz/qt (0.512 g/mL)"
    assert show_density(0.512, FARM, 0.011) == "17.09 ± 0.37 oz/qt (0.512 g/mL)"
    assert show_density(0.512, FARM, 0.011, unit=False) == "17.09 ± 0.37"
    assert show_density(0.512, METRIC, 0.011) == "0.512 ± 0.011 g/mL"
    assert show_density(0.512, METRIC, 0.0) == "0.512 g/mL"
    assert density_unit(METRIC) == ("g/mL", 1.0)
    assert density_unit(FARM) == ("oz/qt", pytest.approx(946.352946 / 28.349523125, rel=1e-12))
    assert show_density(0.5125, METRIC) == "0.513 g/mL"
    assert show_percent(13.04) == "13.0 %"
    assert show_percent(13.05) == "13.1 %"
    assert show_percent(12.6, 0) == "13 %"


@pytest.mark.parametrize(
    ("share", "told"),
    [
        (0.024, "+2.4 %"),
        (-0.01, "−1.0 %"),
        (0.0, "0.0 %"),
        (0.00049, "0.0 %"),
        (-0.00049, "0.0 %"),
        (-0.0005, "−0.1 %"),
    ],
)
def test_a_difference_that_is_told_as_nought_has_no_sign(share: float, told: str) -> None:
    assert with_sign(show_percent(100 * abs(share)), share) == told
    assert with_sign("MXN 0,00", share) == "MXN 0,00"


@pytest.mark.parametrize(
    ("value", "uncertainty", "told"),
    [
        (289.44, 1.15, "289.4 ± 1.2 g"),
        (289.44, 1.149, "289.4 ± 1.1 g"),
        (2894.4, 123, "2890 ± 120 g"),
        (2.5, 9.96, "3 ± 10 g"),
        (2.5, 0.0996, "2.50 ± 0.10 g"),
        (2.5, 0.0994, "2.500 ± 0.099 g"),
        (-2.5, 0.12, "−2.50 ± 0.12 g"),
        (0.5124, 0.0042, "0.5124 ± 0.0042 g"),
        (0.5, 1, "0.5 ± 1.0 g"),
        (2.5, 0, "2.5 g"),
        (1 / 3, 0, "0.333333333 g"),
        (2.5, 1e-300, "2.500000000 ± 0.000000000 g"),
    ],
)
def test_a_value_with_its_uncertainty(value: float, uncertainty: float, told: str) -> None:
    assert show_with_uncertainty(value, uncertainty, "g") == told


def test_an_uncertainty_without_a_unit_and_in_the_persons_units() -> None:
    assert show_with_uncertainty(1.082, 0.011) == "1.082 ± 0.011"
    assert show_estimate(10.25 * OZ, 0.04 * OZ, Kind.MASS, FARM) == "10.250 ± 0.040 oz"
    # A spread of a temperature has no zero point: 1 °C is 1.8 °F.
    assert show_estimate(100, 1, Kind.TEMPERATURE, FARM) == "212.0 ± 1.8 °F"


@pytest.mark.parametrize(
    ("masses", "system", "limits", "told"),
    [
        ((331.25, 326.3, 336.2), METRIC, (), ("331 g", "326 g", "336 g")),
        ((331.25, 330.4, 332.1), METRIC, (), ("331.3 g", "330.4 g", "332.1 g")),
        ((331.25, 307.9, 354.6), METRIC, (), ("331 g", "308 g", "355 g")),
        ((283.7, 278.8, 288.6), METRIC, (277.8, 289.2), ("284 g", "279 g", "289 g")),
        ((284.5, 279.7, 289.3), METRIC, (277.8, 289.2), ("284.5 g", "279.7 g", "289.3 g")),  # 289 g seems inside
        ((318.5, 316.4, 320.6), METRIC, (306.3, 318.8), ("318.5 g", "316.4 g", "320.6 g")),  # 319 g seems beyond
        ((307.4, 301.0, 313.8), METRIC, (307.2, 319.7), ("307.4 g", "301.0 g", "313.8 g")),  # 307 g seems beneath
        ((1055.6, 1020.0, 1091.2), METRIC, (1013.8, 1055.8), ("1.056 kg", "1.020 kg", "1.091 kg")),
        ((318.76, 316.0, 321.5), METRIC, (306.3, 318.78), ("318.8 g", "316.0 g", "321.5 g")),  # the limit reads 318.8
        ((11.25 * OZ, 11.0 * OZ, 11.5 * OZ), FARM, (10.8 * OZ, 11.27 * OZ), ("11.25 oz", "11.00 oz", "11.50 oz")),
        ((1002.0, 990.0, 1014.0), METRIC, (), ("1.00 kg", "0.99 kg", "1.01 kg")),
        ((1002.0, 996.0, 1008.0), METRIC, (), ("1.002 kg", "0.996 kg", "1.008 kg")),
        ((10.21 * OZ, 10.06 * OZ, 10.36 * OZ), FARM, (), ("10.2 oz", "10.1 oz", "10.4 oz")),
        ((10.21 * OZ, 10.17 * OZ, 10.25 * OZ), FARM, (), ("10.21 oz", "10.17 oz", "10.25 oz")),
        ((64.2 * OZ, 63.9 * OZ, 64.5 * OZ), FARM, (), ("4 lb 0.2 oz", "3 lb 15.9 oz", "4 lb 0.5 oz")),
        ((283.0, nan, 284.0), METRIC, (), ("283 g", "–", "284 g")),
    ],
)
def test_a_mean_and_the_ends_of_its_interval_have_the_decimals_that_the_interval_bears(
    masses: tuple[float, float, float], system: UnitSystem, limits: tuple[float, ...], told: tuple[str, str, str]
) -> None:
    assert show_mass_between(*masses, system, limits_g=limits) == told


@pytest.mark.parametrize(
    ("kind", "value", "farm", "metric"),
    [
        (Kind.MASS, 283.49523125, "10.0 oz (283 g)", "283 g (10.0 oz)"),
        (Kind.VOLUME, 1892.705892, "2 qt (1.9 L)", "1.9 L (2 qt)"),
        (Kind.LENGTH, 33.3375, "1 5/16 in (33 mm)", "33 mm (1 5/16 in)"),
        (Kind.TEMPERATURE, 43.3333, "110 °F (43 °C)", "43 °C (110 °F)"),
        (Kind.PERCENT, 13, "13.0 %", "13.0 %"),
        (Kind.COUNT, 109, "109", "109"),
        (Kind.DENSITY, 0.512, "17.1 oz/qt (0.512 g/mL)", "0.512 g/mL"),
    ],
)
def test_both_systems_beside_each_other(kind: Kind, value: float, farm: str, metric: str) -> None:
    assert show_both(value, kind, FARM) == farm
    assert show_both(value, kind, METRIC) == metric


@pytest.mark.parametrize(
    ("mm", "farm", "metric"),
    [
        (49.6, ("1 15/16 in", "49 mm"), ("50 mm", "1 15/16 in")),
        (9.0, ("3/8 in", "10 mm"), ("9 mm", "3/8 in")),
        (33.3375, ("1 5/16 in", "33 mm"), ("33 mm", "1 5/16 in")),
        (nan, ("–", "–"), ("–", "–")),
    ],
)
def test_a_line_is_at_one_place_on_both_rulers(mm: float, farm: tuple[str, str], metric: tuple[str, str]) -> None:
    assert line_in_both(mm, FARM) == farm
    assert line_in_both(mm, METRIC) == metric


def test_the_decimal_comma_where_the_locale_has_it() -> None:
    comma = {"decimal_comma": True}
    assert show_mass(3250, METRIC, decimal_comma=True) == "3,25 kg"
    assert show_volume(1892.7, METRIC, **comma) == "1,9 L"
    assert show_length(33.3, METRIC, step=0.5, **comma) == "33,5 mm"
    assert show_scoop_volume(600, FARM, **comma) == "20,3 fl oz"
    assert show_density(0.512, FARM, **comma) == "17,1 oz/qt (0,512 g/mL)"
    assert show_percent(13, **comma) == "13,0 %"
    assert show_estimate(289.44, 1.15, Kind.MASS, METRIC, **comma) == "289,4 ± 1,2 g"
    assert edit_text(10.25 * OZ, Kind.MASS, FARM, **comma) == "10,25 oz"


@pytest.mark.parametrize("nothing", [nan, inf, -inf, 1e16])
@pytest.mark.parametrize("system", UnitSystem)
def test_no_number_shows_as_a_dash(nothing: float, system: UnitSystem) -> None:
    for kind in Kind:
        assert show(nothing, kind, system) == "–"
        assert edit_text(nothing, kind, system) == ""
    assert show_scoop_volume(nothing, system) == "–"
    assert show_density(nothing, FARM) == "–"
    assert show_with_uncertainty(1, nothing) == "–"
    assert show_with_uncertainty(nothing, 1) == "–"
    assert show_estimate(1, nothing, Kind.MASS, system) == "–"
    assert show_estimate(nothing, 1, Kind.MASS, system) == "–"


@pytest.mark.parametrize("step", [0.0, -1.0, nan, inf])
def test_a_step_that_is_none_is_a_slip_of_ours(step: float) -> None:
    for system in UnitSystem:
        with pytest.raises(ValueError, match="above zero"):
            show_volume(1000, system, step=step)
        with pytest.raises(ValueError, match="above zero"):
            show_length(100, system, step=step)
        with pytest.raises(ValueError, match="above zero"):
            show_mass(100, system, resolution_g=step)


@pytest.mark.parametrize(
    ("value", "kind", "system", "told"),
    [
        (10.25 * OZ, Kind.MASS, FARM, "10.25 oz"),
        (50 * LB, Kind.MASS, FARM, "50 lb"),
        (0.004 * OZ, Kind.MASS, FARM, "0.004 oz"),
        (290.58, Kind.MASS, METRIC, "290.6 g"),
        (22_680, Kind.MASS, METRIC, "22.68 kg"),
        (QT / 2, Kind.VOLUME, FARM, "16 fl oz"),
        (2 * QT, Kind.VOLUME, FARM, "2 qt"),
        (21 * QT, Kind.VOLUME, FARM, "5.25 gal"),
        (473.2, Kind.VOLUME, METRIC, "473.2 mL"),
        (1892.7, Kind.VOLUME, METRIC, "1.893 L"),
        (33.3375, Kind.LENGTH, FARM, "1 5/16 in"),
        (33, Kind.LENGTH, FARM, "1.299 in"),
        (33.34, Kind.LENGTH, METRIC, "33.3 mm"),
        (-20, Kind.TEMPERATURE, FARM, "-4 °F"),
        (43.33, Kind.TEMPERATURE, METRIC, "43.3 °C"),
        (40, Kind.PERCENT, FARM, "40 %"),
        (109, Kind.COUNT, FARM, "109"),
        (0.5124, Kind.DENSITY, FARM, "0.512 g/mL"),
        (0, Kind.MASS, FARM, "0 oz"),
    ],
)
def test_text_to_fill_a_field_with(value: float, kind: Kind, system: UnitSystem, told: str) -> None:
    assert edit_text(value, kind, system) == told


def test_a_value_in_a_unit_by_its_symbol() -> None:
    # NIST Handbook 44, appendix C: 1 qt = 946.352946 mL = 32 fl oz, 1 oz = 28.349523125 g, 1 in = 25.4 mm.
    assert in_unit(946.352946, "qt") == pytest.approx(1.0)
    assert in_unit(946.352946, "fl oz") == pytest.approx(32.0)
    assert in_unit(28.349523125, "oz") == pytest.approx(1.0)
    assert in_unit(25.4, "in") == pytest.approx(1.0)


def test_a_temperature_with_its_doubt_and_a_difference_of_temperatures() -> None:
    # 1 °C is 1.8 °F; 0 °C is 32 °F (the definitions of the scales).
    assert show_temperature_within(0.0, 1.0, FARM) == "32.0 ± 1.8 °F"
    assert show_temperature_within(37.44, 0.74, METRIC, decimal_comma=True) == "37,4 ± 0,7 °C"
    assert show_temperature_span(-1.0, FARM) == "−1.8 °F"
    assert show_temperature_span(0.55, METRIC, decimal_comma=True) == "0,6 °C"
    nothing = float("nan")
    told = [show_temperature_within(*pair, FARM) for pair in ((nothing, 1.0), (1.0, nothing))]
    assert [*told, show_temperature_span(nothing, FARM)] == ["–"] * 3
    assert span_in_default_unit(1.0, Kind.TEMPERATURE, FARM) == pytest.approx(1.8)
    assert span_from_default_unit(1.8, Kind.TEMPERATURE, FARM) == pytest.approx(1.0)
    assert span_from_default_unit(2.0, Kind.TEMPERATURE, METRIC) == 2.0


def test_a_fine_scale_does_not_bring_hundredths_of_an_ounce_beside_pounds() -> None:
    """27 884 g ÷ 28.349523125 g/oz (international avoirdupois ounce, NIST SP 811 appendix B) = 983.58 oz."""
    assert show_mass(27_884.0, UnitSystem.FARM, resolution_g=1.0) == "61 lb 7.6 oz"
    assert show_mass(567.0, UnitSystem.FARM, resolution_g=1.0) == "20.00 oz"


def test_plain_numbers_and_factors() -> None:
    assert show_number(1892.66, 1, "mL") == "1892.7 mL"
    assert show_number(-0.25, 1) == "−0.3"
    assert show_number(3.5, 2, decimal_comma=True) == "3,50"
    assert show_number(float("nan")) == "–"
    assert [show_factor(value) for value in (1.0, 0.001503, 0.35355)] == ["1", "0.0015", "0.354"]
    assert show_factor(0.5, decimal_comma=True) == "0,5"
    assert show_factor(float("inf")) == "–"


def test_a_scoops_volume_is_told_with_its_uncertainty_in_one_unit() -> None:
    assert show_scoop_estimate(953.1, 9.9, FARM) == "1.007 ± 0.010 qt (953.1 ± 9.9 mL)"
    assert show_scoop_estimate(600.0, 12.0, FARM) == "20.29 ± 0.41 fl oz (600 ± 12 mL)"
    assert show_scoop_estimate(600.0, 12.0, METRIC, decimal_comma=True) == "600 ± 12 mL"
    assert show_scoop_estimate(float("nan"), 1.0, FARM) == show_scoop_estimate(float("nan"), 1.0, METRIC)


def test_a_volume_as_one_number_of_one_unit() -> None:
    assert show_in_one_unit(20.4 * 3785.411784, FARM) == "20 gal"
    assert show_in_one_unit(6.44 * 3785.411784, FARM) == "6.4 gal"
    assert show_in_one_unit(2.3 * 946.352946, FARM) == "2.3 qt"
    assert show_in_one_unit(77_200, METRIC) == "77 L"
    assert show_in_one_unit(2_150, METRIC, decimal_comma=True) == "2,2 L"


@pytest.mark.parametrize(
    ("count", "told"), [(0, "0"), (3, "3"), (2.5, "2 1/2"), (0.25, "1/4"), (1.75, "1 3/4"), (1 / 3, "1/3")]
)
def test_scoopfuls_are_told_as_people_count_them(count: float, told: str) -> None:
    assert show_scoopfuls(count) == told
