"""What is not a quantity is answered by one message that says how to mend it; nothing is guessed."""

import pickle
from fractions import Fraction
from string import Formatter

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calibrator.model import UnitSystem
from calibrator.units import SENTENCES, Kind, NotUnderstood, read
from calibrator.units.edit import at_least, at_most

FARM, METRIC = UnitSystem.FARM, UnitSystem.METRIC
MASS, VOLUME, LENGTH, TEMPERATURE = Kind.MASS, Kind.VOLUME, Kind.LENGTH, Kind.TEMPERATURE

REFUSED = [
    ("", MASS, "empty"),
    (" \u00a0\t", MASS, "empty"),
    ("9" * 49, MASS, "too_long"),
    ("9" * 5000, MASS, "too_long"),
    ("10\u200b oz", MASS, "hidden"),
    ("\u202e10 oz", MASS, "hidden"),
    ("\ufeff10", MASS, "hidden"),
    ("10\x00", MASS, "hidden"),
    ("10\n20", MASS, "hidden"),
    ("10\ud800", MASS, "hidden"),
    ("oz", MASS, "no_number"),
    ("nan", MASS, "no_number"),
    ("inf", MASS, "no_number"),
    ("-Infinity", MASS, "no_number"),
    ("١٠", MASS, "no_number"),
    ("１０", MASS, "no_number"),
    ("10 oz;", MASS, "unexpected"),
    ("(10)", MASS, "unexpected"),
    ("=10", MASS, "unexpected"),
    ("$10", MASS, "unexpected"),
    ("1_0", MASS, "unexpected"),
    ("10١", MASS, "unexpected"),
    ("oz 10", MASS, "unexpected"),
    ("5-10", MASS, "unexpected"),
    ("10 -1/4", MASS, "unexpected"),
    ("10- 1/4", MASS, "unexpected"),
    ("10+1/4", MASS, "unexpected"),
    ("--5", MASS, "unexpected"),
    ("5 -", MASS, "unexpected"),
    ("- oz 5", MASS, "unexpected"),
    ("1.1/4", MASS, "unexpected"),
    ("1/2/3", MASS, "unexpected"),
    ("1/4.5", MASS, "unexpected"),
    ("1 lb.5 oz", MASS, "unexpected"),
    ("1 lb - 3 oz", MASS, "unexpected"),
    ("1e400", MASS, "exponent"),
    ("1E5 g", MASS, "exponent"),
    ("1.5e-3", MASS, "exponent"),
    ("1.2.3", MASS, "separators"),
    ("1,23.5", MASS, "separators"),
    ("12,3456.7", MASS, "separators"),
    ("0,250.5", MASS, "separators"),
    ("1234,567.8", MASS, "separators"),
    ("1,250,5", MASS, "separators"),
    ("1,250.300,5", MASS, "separators"),
    ("1..2", MASS, "separators"),
    ("10.", MASS, "unfinished"),
    ("1,250.", MASS, "unfinished"),
    (".", MASS, "no_number"),
    ("10 . 5", MASS, "numbers_in_row"),
    ("2,500 oz", MASS, "comma_thousands"),
    ("1234,567 g", MASS, "comma_thousands"),
    ("1,5.2 g", MASS, "separators"),
    ("10,", MASS, "unfinished"),
    ("1,5", Kind.COUNT, "not_whole"),
    ("1 500 g", MASS, "numbers_in_row"),
    ("1\u202f500 g", MASS, "numbers_in_row"),
    ("1¼2", MASS, "numbers_in_row"),
    ("10.5 1/4", MASS, "numbers_in_row"),
    ("10 1/4 1/4", MASS, "numbers_in_row"),
    ("10 20 oz", MASS, "numbers_in_row"),
    ("1/0", MASS, "bad_fraction"),
    ("0/4", MASS, "bad_fraction"),
    ("1/65", MASS, "bad_fraction"),
    ("101/4 oz", MASS, "improper_meant"),
    ("113/16 oz", MASS, "improper_either"),
    ("10 5/4", MASS, "improper"),
    ("4/4", MASS, "improper"),
    ("1 lb 3", MASS, "unit_missing"),
    ("10 oz oz", MASS, "unit_unknown"),
    ("10² g", MASS, "unit_unknown"),
    ("10 stone", MASS, "unit_unknown"),
    ("110 K", TEMPERATURE, "unit_unknown"),
    ("10 °", MASS, "unit_unknown"),
    ("2 lb", VOLUME, "is_mass"),
    ("10 mL", MASS, "is_volume"),
    ("1 cup", MASS, "is_volume"),
    ("3 in", MASS, "is_length"),
    ("110 F", MASS, "is_temperature"),
    ("40 %", MASS, "is_percent"),
    ("2 oz", VOLUME, "oz_in_volume"),
    ("2 gal 3 oz", VOLUME, "oz_in_volume"),
    ("10 fl oz", MASS, "fl_oz_in_mass"),
    ("1 cup", VOLUME, "which_cup"),
    ("cups", VOLUME, "which_cup"),
    ("1 C", VOLUME, "which_cup"),
    ("1 ton", MASS, "which_ton"),
    ("1 t", MASS, "which_ton"),
    ("5 gr", MASS, "grain"),
    ("5 grs.", MASS, "grain"),
    ("5'", LENGTH, "foot_mark"),
    ("5' 3\"", LENGTH, "foot_mark"),
    ("3 oz 1 lb", MASS, "order"),
    ("3 oz 3 oz", MASS, "order"),
    ("1 lb 16 oz", MASS, "carry"),
    ("2 gal 5 qt", VOLUME, "carry"),
    ("1.5 lb 3 oz", MASS, "whole_first"),
    ("1:16.2", MASS, "carry"),
    ("0:285", MASS, "carry"),
    ("0:0", MASS, "zero"),
    ("-0:10.2", MASS, "negative"),
    ("1.5:3", MASS, "unexpected"),
    ("1:2:3", MASS, "unexpected"),
    ("0:10.2 g", MASS, "unexpected"),
    ("1:", MASS, "unexpected"),
    ("1:3", VOLUME, "unexpected"),
    ("1:1.2.3", MASS, "separators"),
    ("1/2 gal 1 qt", VOLUME, "whole_first"),
    ("110 F 43 C", TEMPERATURE, "one_value"),
    ("24.5", Kind.COUNT, "not_whole"),
    ("1/2", Kind.COUNT, "not_whole"),
    ("24 calves", Kind.COUNT, "not_whole"),
    ("24 oz", Kind.COUNT, "not_whole"),
    ("-5", MASS, "negative"),
    ("−5 oz", MASS, "negative"),
    ("-1", Kind.COUNT, "negative"),
    ("-0.1 %", Kind.PERCENT, "negative"),
    ("0", MASS, "zero"),
    ("-0", MASS, "zero"),
    ("0.00 in", LENGTH, "zero"),
    ("-100", TEMPERATURE, "too_little"),
    ("500", TEMPERATURE, "too_much"),
    ("100.1", Kind.PERCENT, "too_much"),
    ("9" * 48, MASS, "too_much"),
]


def refusal(text: str, kind: Kind, system: UnitSystem = FARM, **how: float | bool) -> NotUnderstood:
    with pytest.raises(NotUnderstood) as caught:
        read(text, kind, system, **how)  # type: ignore[arg-type]
    return caught.value


def test_a_unit_that_must_be_named_is_asked_for_before_any_size() -> None:
    for text in ("5", "99999", "0.1"):
        with pytest.raises(NotUnderstood) as caught:
            read(text, MASS, FARM, must_name=("lb", "kg"), lowest=200.0, highest=5000.0)
        assert str(caught.value) == f"Its unit is missing: write {text} lb or {text} kg."
    assert read("5 kg", MASS, FARM, must_name=("lb", "kg")).value == 5000


@pytest.mark.parametrize(("text", "kind", "code"), REFUSED)
def test_nonsense_is_refused_by_its_own_sentence(text: str, kind: Kind, code: str) -> None:
    problem = refusal(text, kind)
    assert problem.code == code
    assert str(problem) == SENTENCES[code].format(**problem.params)


def test_every_sentence_is_met() -> None:
    elsewhere = {"too_much_meant", "too_little_meant"}  # tests/units/test_meant.py
    assert {code for _, _, code in REFUSED} | {"point_thousands", "unit_needed"} | elsewhere == set(SENTENCES)


@pytest.mark.parametrize("sentence", SENTENCES.values())
def test_a_sentence_is_one_a_person_can_act_on(sentence: str) -> None:
    assert sentence[0].isupper() or sentence[0] in "“{og" or sentence.startswith("fl oz")
    assert sentence.endswith((".", "?"))
    assert len(sentence) < 110
    assert all(name in (None, "example") or name.isalpha() for _, name, _, _ in Formatter().parse(sentence))


@pytest.mark.parametrize(
    ("text", "kind", "sentence"),
    [
        ("2 oz", VOLUME, "oz is a weight. For a volume write fl oz."),
        (
            "1 cup",
            VOLUME,
            "Three cups are in use. Write US cup (237 mL), label cup (240 mL) or metric cup (250 mL).",
        ),
        (
            "2,500",
            MASS,
            "“2,500” can be 2500 or 2.5. Write the one that is meant.",
        ),
        ("1 lb 3", MASS, "Write the unit after “3” too, like 1 lb 3 oz."),
        ("5 mL", MASS, "mL is a volume, and something else belongs here. Type it like 10.2 oz."),
    ],
)
def test_the_words_of_a_refusal(text: str, kind: Kind, sentence: str) -> None:
    assert str(refusal(text, kind)) == sentence


def test_examples_are_in_the_persons_own_units() -> None:
    assert refusal("ten", MASS, METRIC).params["example"] == "280 g"
    assert refusal("ten", VOLUME, METRIC, decimal_comma=True).params["example"] == "1,9 L"


@pytest.mark.parametrize("text", ["1.500", "12.345 kg"])
def test_a_point_that_may_part_thousands_where_the_comma_is_decimal(text: str) -> None:
    problem = refusal(text, MASS, METRIC, decimal_comma=True)
    assert problem.code == "point_thousands"
    assert problem.params["whole"] == text.split()[0].replace(".", "")


@pytest.mark.parametrize("text", ["1.50,5", "1,2,3", "1,"])
def test_separators_where_the_comma_is_decimal(text: str) -> None:
    assert refusal(text, MASS, METRIC, decimal_comma=True).code in ("separators", "unfinished")


@pytest.mark.parametrize(("system", "limit"), [(FARM, "at most 17.6 oz."), (METRIC, "at most 500 g.")])
def test_a_highest_size_is_told_in_the_persons_units_and_holds(system: UnitSystem, limit: str) -> None:
    problem = refusal("900 g", MASS, system, highest=500.0)
    assert str(problem).endswith(limit)
    assert read(problem.params["limit"], MASS, system, highest=500.0).value <= 500


@pytest.mark.parametrize(("system", "limit"), [(FARM, "at least 3.6 oz."), (METRIC, "at least 100 g.")])
def test_a_lowest_size_is_told_in_the_persons_units_and_holds(system: UnitSystem, limit: str) -> None:
    problem = refusal("1 g", MASS, system, lowest=100.0)
    assert str(problem).endswith(limit)
    assert read(problem.params["limit"], MASS, system, lowest=100.0).value >= 100


@pytest.mark.parametrize(
    ("text", "kind", "highest", "limit"),
    [
        ("9 in", LENGTH, 101.6, "4 in"),
        ("12 oz", MASS, 283.49523125, "10 oz"),
        ("9 gal", VOLUME, 18927.05892, "5 gal"),
        ("900 lb", MASS, 100_000.0, "220 lb"),
        ("9000 lb", MASS, 2_000_000.0, "4400 lb"),
        ("99 gal", VOLUME, 45_000.0, "11.8 gal"),
        ("9 in", LENGTH, 100.0, "3.9 in"),
    ],
)
def test_a_round_limit_is_told_round(text: str, kind: Kind, highest: float, limit: str) -> None:
    assert refusal(text, kind, highest=highest).params["limit"] == limit


@given(limit_g=st.floats(0.5, 5e6), system=st.sampled_from(UnitSystem), kind=st.sampled_from((MASS, VOLUME, LENGTH)))
@settings(max_examples=300, deadline=None)
def test_a_limit_told_is_short_holds_and_gives_little_away(limit_g: float, system: UnitSystem, kind: Kind) -> None:
    limit = min(limit_g, 5e4) if kind is LENGTH else limit_g
    for told, inward in ((at_most(Fraction(limit), kind, system), -1), (at_least(Fraction(limit), kind, system), 1)):
        size = read(told, kind, system, lowest=0.0).value
        assert (size - limit) * inward >= -1e-5 * limit
        assert abs(size - limit) <= 0.05 * limit
        assert "/" in told or len(told.split()[0].replace(".", "").strip("0")) <= 3


def test_a_lowest_size_above_zero_refuses_zero_by_its_own_sentence() -> None:
    assert refusal("0", MASS, lowest=1.0).code == "zero"


def test_long_nonsense_is_cut_in_the_sentence() -> None:
    assert len(str(refusal("9" * 48, MASS))) < 120


def test_a_refusal_survives_a_journey_between_processes() -> None:
    problem = pickle.loads(pickle.dumps(refusal("2 oz", VOLUME)))
    assert (problem.code, str(problem)) == ("oz_in_volume", "oz is a weight. For a volume write fl oz.")
