"""Prices as people write and read them."""

from __future__ import annotations

import pytest

from calibrator.desk.money import NotUnderstood, OtherCurrency, names_of, price_text, read_price, usual_price


@pytest.mark.parametrize(
    ("typed", "currency", "comma", "price"),
    [
        ("68.50", "$", False, 68.5),
        ("$ 1500", "$", False, 1500.0),
        ("68,50 €", "€", True, 68.5),
        ("MXN 1450", "MXN", False, 1450.0),
        ("$1,250.00", "$", False, 1250.0),
        ("1.250,00 €", "€", True, 1250.0),
        ("$1,250.00", "$", True, 1250.0),
        ("$ 12,50.00", "$", False, None),
        ("70 1/2", "$", False, 70.5),
        ("70 12", "$", False, None),  # two numbers to this field: a price has one
        ("1,500", "$", False, None),  # thousands or a decimal comma: nobody guesses at money
    ],
)
def test_a_price_is_read_with_or_without_its_sign(typed: str, currency: str, comma: bool, price: float | None) -> None:
    if price is None:
        with pytest.raises(NotUnderstood):
            read_price(typed, currency, decimal_comma=comma)
    else:
        assert read_price(typed, currency, decimal_comma=comma) == price


@pytest.mark.parametrize(
    ("typed", "in_pesos", "of_country", "price"),
    [
        ("1,250.00 MXN", True, "", 1250.0),
        ("$1,250.00 mxn", True, "USD", 1250.0),
        ("MX$ 1250", True, "", 1250.0),
        ("1250 MXN", False, "USD", None),
        ("1250 MXN", False, "MXN", 1250.0),
        ("1250 USD", True, "MXN", None),
        ("68.50 USD", False, "", 68.5),
        ("USD 68.50", False, "USD", 68.5),
        ("68.50 USD", False, "CAD", None),
        ("68.50 CAD", False, "CAD", 68.5),
        ("68.50 CAD", False, "USD", None),
        ("€68.50", False, "USD", None),
    ],
)
def test_the_code_of_the_own_currency_is_taken_and_no_other(
    typed: str, in_pesos: bool, of_country: str, price: float | None
) -> None:
    names = names_of("$", in_pesos=in_pesos, of_country=of_country)
    if price is None:
        with pytest.raises(OtherCurrency):
            read_price(typed, "$", names=names)
    else:
        assert read_price(typed, "$", names=names) == price


@pytest.mark.parametrize(
    ("currency", "comma", "told"),
    [("$", False, "$68.50"), ("MXN", False, "MXN 68.50"), ("€", True, "68,50 €"), ("", False, "68.50")],
)
def test_a_price_is_told_to_the_cent(currency: str, comma: bool, told: str) -> None:
    assert price_text(68.5, currency, decimal_comma=comma) == told
    assert read_price(told, currency, decimal_comma=comma) == 68.5


@pytest.mark.parametrize(("comma", "told"), [(False, "$1,250.00"), (True, "1.250,00 $")])
def test_a_price_in_the_thousands_is_told_in_groups_and_read_back(comma: bool, told: str) -> None:
    assert price_text(1250.0, "$", decimal_comma=comma) == told
    assert read_price(told, "$", decimal_comma=comma) == 1250.0


@pytest.mark.parametrize(
    ("currency", "in_pesos", "example"),
    [("$", True, "1200.00"), ("$", False, "68.50"), ("MXN", False, "1200.00"), ("€", True, "68.50")],
)
def test_the_example_is_a_price_that_bags_have_in_that_currency(currency: str, in_pesos: bool, example: str) -> None:
    assert usual_price(currency, in_pesos=in_pesos).example == example
