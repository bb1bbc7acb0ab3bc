"""What people type, and what it means."""

from fractions import Fraction

import pytest

from calibrator.model import UnitSystem
from calibrator.units import Kind, default_unit, example, read, with_unit

FARM, METRIC = UnitSystem.FARM, UnitSystem.METRIC
# Exact factors: NIST Handbook 44, Appendix C; checked again in tests/outside.
OZ, LB = Fraction("28.349523125"), Fraction("453.59237")
QT, GAL, INCH = Fraction("946.352946"), Fraction("3785.411784"), Fraction("25.4")


@pytest.mark.parametrize(
    ("text", "mass_g"),
    [
        ("10 oz", 10 * OZ),
        ("10oz", 10 * OZ),
        ("10.2", Fraction("10.2") * OZ),
        (".5", OZ / 2),
        ("+5", 5 * OZ),
        ("0010.2 oz", Fraction("10.2") * OZ),
        ("10 1/4 oz", Fraction("10.25") * OZ),
        ("10-1/4 oz", Fraction("10.25") * OZ),
        ("10¼ oz", Fraction("10.25") * OZ),
        ("10 ¼oz", Fraction("10.25") * OZ),
        ("10 1⁄4 oz", Fraction("10.25") * OZ),
        ("⅞", OZ * 7 / 8),
        ("10 OZ.", 10 * OZ),
        ("10 ounces", 10 * OZ),
        ("10 onzas", 10 * OZ),
        ("1 lb 3.4 oz", LB + Fraction("3.4") * OZ),
        ("1lb3oz", LB + 3 * OZ),
        ("0:10.2", Fraction("10.2") * OZ),  # as a scale in pounds and ounces shows it
        ("1:03.4", LB + Fraction("3.4") * OZ),
        ("1 : 3 1/2", LB + Fraction("3.5") * OZ),
        ("2:10.2 lb:oz", 2 * LB + Fraction("10.2") * OZ),
        ("2:10.2 LB OZ", 2 * LB + Fraction("10.2") * OZ),
        ("1 lb 3 1/2 oz", LB + Fraction("3.5") * OZ),
        ("1 lb. 0 oz.", LB),
        ("50#", 50 * LB),
        ("283 g", Fraction(283)),
        ("0.283 kg", Fraction(283)),
        ("1 kg 200 g", Fraction(1200)),
        (" \u00a0283\u202fg\r\n", Fraction(283)),
        ("283\tg", Fraction(283)),
    ],
)
def test_a_weight_in_farm_units(text: str, mass_g: Fraction) -> None:
    assert read(text, Kind.MASS, FARM).value == float(mass_g)


@pytest.mark.parametrize(
    ("text", "volume_ml"),
    [
        ("2", 2 * QT),
        ("1/2 qt", QT / 2),
        ("2 gal 1 qt", 2 * GAL + QT),
        ("5 gal", 5 * GAL),
        ("5 galones", 5 * GAL),
        ("5 galo\u0301n", 5 * GAL),
        ("1 gal 1 pt", GAL + GAL / 8),
        ("8 fl. oz.", GAL / 16),
        ("8 fluid ounces", GAL / 16),
        ("2.5 l", Fraction(2500)),
        ("500 mL", Fraction(500)),
        ("500 ML", Fraction(500)),
        ("500 cc", Fraction(500)),
        ("2 US cups", GAL / 8),
        ("1 label cup", Fraction(240)),
        ("2 label cups 240 mL", Fraction(480)),
        ("2 label cups (240 mL)", Fraction(480)),
        ("1 metric cup", Fraction(250)),
    ],
)
def test_a_volume_in_farm_units(text: str, volume_ml: Fraction) -> None:
    assert read(text, Kind.VOLUME, FARM).value == float(volume_ml)


@pytest.mark.parametrize(
    ("text", "length_mm"),
    [
        ("1/2 in", INCH / 2),
        ('3 5/16"', INCH * 53 / 16),
        ("3 5/16″", INCH * 53 / 16),
        ("3 5/16 ”", INCH * 53 / 16),
        ("3-5/16", INCH * 53 / 16),
        ("5 ft 3 in", 63 * INCH),
        ("2.1 cm", Fraction(21)),
        ("33 mm", Fraction(33)),
        ("1 m 5 mm", Fraction(1005)),
    ],
)
def test_a_length_in_farm_units(text: str, length_mm: Fraction) -> None:
    assert read(text, Kind.LENGTH, FARM).value == float(length_mm)


@pytest.mark.parametrize(
    ("text", "temperature_c"),
    [
        ("110 F", Fraction(130, 3)),
        ("110 °F", Fraction(130, 3)),
        ("110ºf", Fraction(130, 3)),
        ("110 ℉", Fraction(130, 3)),
        ("110", Fraction(130, 3)),
        ("110°", Fraction(130, 3)),
        ("43 C", Fraction(43)),
        ("43 deg C", Fraction(43)),
        ("−4", Fraction(-20)),
        ("-40 °C", Fraction(-40)),
        ("32", Fraction(0)),
        ("100 1/2 F", (Fraction("100.5") - 32) * 5 / 9),
    ],
)
def test_a_temperature_in_farm_units(text: str, temperature_c: Fraction) -> None:
    assert read(text, Kind.TEMPERATURE, FARM).value == float(temperature_c)


@pytest.mark.parametrize(
    ("text", "kind", "value"),
    [
        ("40 %", Kind.PERCENT, 40),
        ("12 1/2", Kind.PERCENT, 12.5),
        ("24", Kind.COUNT, 24),
        ("0", Kind.COUNT, 0),
    ],
)
def test_percent_and_count(text: str, kind: Kind, value: float) -> None:
    assert read(text, kind, METRIC).value == value


@pytest.mark.parametrize(
    ("kind", "system", "unit"),
    [
        (Kind.MASS, FARM, "oz"),
        (Kind.VOLUME, FARM, "qt"),
        (Kind.LENGTH, FARM, "in"),
        (Kind.TEMPERATURE, FARM, "°F"),
        (Kind.MASS, METRIC, "g"),
        (Kind.VOLUME, METRIC, "L"),
        (Kind.LENGTH, METRIC, "mm"),
        (Kind.TEMPERATURE, METRIC, "°C"),
        (Kind.PERCENT, FARM, "%"),
        (Kind.COUNT, FARM, ""),
        (Kind.DENSITY, FARM, "g/mL"),
    ],
)
def test_a_bare_number_takes_the_units_of_the_farm(kind: Kind, system: UnitSystem, unit: str) -> None:
    assert default_unit(kind, system) == unit
    if kind is not Kind.DENSITY:
        assert read("12", kind, system).value == read(f"12 {unit}", kind, system).value


def test_a_field_may_have_a_unit_of_its_own() -> None:
    bag = read("50", Kind.MASS, FARM, default_unit="lb")
    assert bag.value == float(50 * LB)
    assert (bag.unit, bag.bare) == ("lb", True)
    assert read("50 kg", Kind.MASS, FARM, default_unit="lb").value == 50_000


@pytest.mark.parametrize("unit", ["qt", "stone", ""])
def test_a_fields_unit_of_another_kind_is_a_slip_of_ours(unit: str) -> None:
    with pytest.raises(ValueError, match="is no unit of mass"):
        read("50", Kind.MASS, FARM, default_unit=unit)


def test_a_density_is_never_typed() -> None:
    with pytest.raises(ValueError, match="never typed"):
        read("0.5", Kind.DENSITY, FARM)


@pytest.mark.parametrize(
    ("text", "mass_g"),
    [("0,283 kg", 283), ("1,5", 1.5), ("1,500 kg", 1500), ("0.283 kg", 283), ("2.5", 2.5), (",5", 0.5)],
)
def test_where_the_locale_has_a_decimal_comma(text: str, mass_g: float) -> None:
    assert read(text, Kind.MASS, METRIC, decimal_comma=True).value == mass_g


@pytest.mark.parametrize(
    ("text", "mass_g"),
    [
        ("0,1", 0.1),
        ("16,6", 16.6),
        ("12,05 g", 12.05),
        ("0,283 kg", 283),
        (",283 kg", 283),
        ("3,0 g", 3),
        ("3,2500", 3.25),
    ],
)
def test_a_comma_that_can_only_be_a_decimal_sign_is_one(text: str, mass_g: float) -> None:
    assert read(text, Kind.MASS, METRIC).value == mass_g


def test_what_a_comma_was_taken_for_is_told() -> None:
    assert str(read("12,05 cm", Kind.LENGTH, METRIC)) == "120.5 mm"
    assert str(read("2 lb 3,4 oz", Kind.MASS, FARM)) == "35.4 oz"


def test_the_answer_keeps_the_text_and_tells_the_other_system_where_that_was_typed() -> None:
    read_back = read("  10 1/4 oz ", Kind.MASS, FARM)
    assert read_back.typed == "10 1/4 oz"
    assert str(read_back) == "10.25 oz"
    assert str(read("283 g", Kind.MASS, FARM)) == "9.98 oz (283 g)"
    assert str(read("283 g", Kind.MASS, METRIC, decimal_comma=True)) == "283 g"
    assert str(read("9,98 oz", Kind.MASS, METRIC, decimal_comma=True)) == "282,9 g (9,98 oz)"
    assert str(read("40", Kind.PERCENT, FARM)) == "40 %"
    assert str(read('3 5/16"', Kind.LENGTH, FARM)) == "3 5/16 in"
    assert str(read("283", Kind.MASS, FARM, default_unit="g")) == "9.98 oz (283 g)"  # a scale that shows grams


def test_inches_off_the_ruler_are_told_as_the_nearest_sixteenth() -> None:
    assert str(read("1.3 in", Kind.LENGTH, METRIC)) == "33 mm (≈ 1 5/16 in)"
    assert str(read("1 in", Kind.LENGTH, METRIC)) == "25.4 mm (1 in)"


def test_a_limit_is_allowed_itself() -> None:
    assert read("10 oz", Kind.MASS, FARM, lowest=float(10 * OZ), highest=float(10 * OZ)).shown == "10 oz"


def test_zero_and_less_where_the_caller_allows_them() -> None:
    assert read("0", Kind.MASS, FARM, lowest=0).value == 0
    assert read("-1/2", Kind.LENGTH, FARM, lowest=-50).value == -12.7


@pytest.mark.parametrize(
    ("text", "kind", "named"),
    [
        ("10.2", Kind.MASS, "10.2 oz"),
        (" 10 1/4 ", Kind.MASS, "10 1/4 oz"),
        ("110°", Kind.TEMPERATURE, "110 °F"),
        ("283 g", Kind.MASS, "283 g"),
        ("24", Kind.COUNT, "24"),
        ("ten", Kind.MASS, "ten"),
        ("-5", Kind.MASS, "-5 oz"),
    ],
)
def test_naming_the_unit_keeps_the_meaning(text: str, kind: Kind, named: str) -> None:
    assert with_unit(text, kind, FARM) == named


def test_naming_a_fields_own_unit() -> None:
    assert with_unit("50", Kind.MASS, METRIC, default_unit="lb") == "50 lb"


@pytest.mark.parametrize("kind", [kind for kind in Kind if kind is not Kind.DENSITY])
@pytest.mark.parametrize("system", UnitSystem)
@pytest.mark.parametrize("decimal_comma", [False, True])
def test_every_example_given_to_people_can_be_typed(kind: Kind, system: UnitSystem, decimal_comma: bool) -> None:
    told = example(kind, system, decimal_comma=decimal_comma)
    assert read(told, kind, system, decimal_comma=decimal_comma).value > 0


def test_an_example_can_be_asked_for_in_a_unit_of_its_own() -> None:
    for unit in ("oz", "lb", "g", "kg"):
        told = example(Kind.MASS, FARM, unit=unit, decimal_comma=True)
        assert told.endswith(f" {unit}")
        assert read(told, Kind.MASS, FARM, decimal_comma=True).value == pytest.approx(283, rel=0.03)
    with pytest.raises(ValueError, match="no example in ft"):
        example(Kind.LENGTH, FARM, unit="ft")
