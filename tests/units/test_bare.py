"""Drops and specific gravities as people type them, and what cannot be meant."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.units import SENTENCES, NotUnderstood
from calibrator.units.bare import Bare, bare_text, read_bare

DROPS = Bare("11.2 11.4 11.2", -1.0, 32.0, 8)
SG = Bare("1.032", 0.98, 1.15)


@pytest.mark.parametrize(
    ("text", "values"),
    [
        ("11.2", (11.2,)),
        (" 11.2  11.4 11 ", (11.2, 11.4, 11.0)),
        ("11.2; 11.4;11.2", (11.2, 11.4, 11.2)),
        ("11.2, 11.4, 11.2", (11.2, 11.4, 11.2)),
        ("11.2 Bx 11.4 °Bx 11.2 Brix", (11.2, 11.4, 11.2)),
        ("11.2° 11.4°", (11.2, 11.4)),
        ("−0.2 +0.1 -0.4", (-0.2, 0.1, -0.4)),
        (".5", (0.5,)),
        ("11,2", (11.2,)),
        ("11,2 11,4", (11.2, 11.4)),
        ("11,2, 11,4; 11", (11.2, 11.4, 11.0)),
        ("12, 13", (12.0, 13.0)),
        ("12,13", (12.13,)),
        ("11,200 11,4", (11.2, 11.4)),  # no thousands go in
        ("32", (32.0,)),
    ],
)
def test_drops(text: str, values: tuple[float, ...]) -> None:
    assert read_bare(text, DROPS) == pytest.approx(values)


def test_drops_where_the_comma_is_the_decimal_sign() -> None:
    assert read_bare("11,2 11.4; 11", DROPS, decimal_comma=True) == pytest.approx((11.2, 11.4, 11.0))
    for text in ("1,032 SG", "1.032 SG"):
        assert read_bare(text, SG, decimal_comma=True) == read_bare(text, SG) == pytest.approx((1.032,))


def test_where_thousands_go_in_three_digits_behind_a_comma_stay_in_doubt() -> None:
    with pytest.raises(NotUnderstood) as refused:
        read_bare("1,032", Bare("6", 0.5, 5000.0))
    assert refused.value.code == "comma_thousands"


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("", "empty"),
        ("   ", "empty"),
        ("none", "no_number"),
        (";", "no_number"),
        ("-", "no_number"),
        ("--3", "unexpected"),
        ("11,20,3", "separators"),
        ("11.2,3", "separators"),
        ("11.2.3", "separators"),
        ("11.", "unfinished"),
        ("1e1", "exponent"),
        ("11.2 oz", "no_number"),
        ("11..2", "separators"),
        ("40", "too_much_meant"),
        ("40.5", "too_much"),
        ("-2", "too_little"),
        ("11*2", "unexpected"),
        ("11\u200b", "hidden"),
        ("1 2 3 4 5 6 7 8 9", "too_long"),
        ("11.2 -", "no_number"),
        ("7/3", "improper"),
        ("9" * 60, "too_long"),
    ],
)
def test_what_is_no_drop_is_answered_in_a_sentence(text: str, code: str) -> None:
    with pytest.raises(NotUnderstood) as refused:
        read_bare(text, DROPS)
    assert refused.value.code == code
    assert code in SENTENCES


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("11.2", "too_much"),
        ("0.5", "too_little"),
        ("-1", "negative"),
        ("1.03 1.04", "one_value"),
        ("1,932", "too_much"),
        ("1.032 kg", "one_value"),
        ("1032", "too_much_meant"),
        ("1932", "too_much"),
        ("SG", "no_number"),
        ("1.03x", "unexpected"),
        ("", "empty"),
    ],
)
def test_what_is_no_specific_gravity_is_answered_in_a_sentence(text: str, code: str) -> None:
    with pytest.raises(NotUnderstood) as refused:
        read_bare(text, SG)
    assert refused.value.code == code


@given(st.lists(st.integers(-10, 320), min_size=1, max_size=6), st.booleans())
def test_what_is_told_is_read_back(tenths: list[int], comma: bool) -> None:
    values = [n / 10 for n in tenths]
    assert read_bare(bare_text(values, 1, decimal_comma=comma), DROPS, decimal_comma=comma) == pytest.approx(values)


@given(st.text(max_size=30))
def test_any_text_is_numbers_or_a_sentence(text: str) -> None:
    try:
        found = read_bare(text, DROPS)
    except NotUnderstood:
        return
    assert all(-1 <= value <= 32 for value in found)


@pytest.mark.parametrize(("text", "bare", "meant"), [("9.1 91 9.2", DROPS, "9.1"), ("1032", SG, "1.032")])
def test_a_lost_decimal_sign_is_asked_about(text: str, bare: Bare, meant: str) -> None:
    with pytest.raises(NotUnderstood) as refused:
        read_bare(text, bare)
    assert f"Was {meant} meant?" in str(refused.value)


def test_a_whole_number_and_a_fraction_behind_it_are_one() -> None:
    """38 1/2 bags; as two readings, 11 and one half of a degree Brix would have come of it."""
    assert read_bare("38 1/2", Bare("12", 0, 500)) == (38.5,)
    assert read_bare("3 7/8 ", Bare("12", 0, 500)) == (3.875,)
    drops = Bare("11.5 11.7 11.5", 0, 30, most=9)
    assert read_bare("11 1/2 11.4", drops) == (11.5, 11.4)
    assert read_bare("11.4; 11 1/2; 1/2", drops) == (11.4, 11.5, 0.5)
    with pytest.raises(NotUnderstood):
        read_bare("38 12", Bare("12", 0, 500))


@pytest.mark.parametrize("text", ["13.4,13.6,13.4", "13.4,13.6, 13.4", "13.4 13.6,13.4"])
def test_a_comma_behind_a_decimal_point_parts_two_readings(text: str) -> None:
    drops = Bare("11.5 11.7 11.5", 0, 30, most=9)
    assert read_bare(text, drops) == (13.4, 13.6, 13.4)
    with pytest.raises(NotUnderstood):
        read_bare(text, Bare("1.045", 0, 30))
    with pytest.raises(NotUnderstood):
        read_bare("13.4,13.6", drops, decimal_comma=True)
