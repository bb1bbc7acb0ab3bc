"""Prices as people write and read them, in the farm's currency. No window."""

from __future__ import annotations

import re
from collections.abc import Iterable

from calibrator.units import NotUnderstood
from calibrator.units.bare import Bare, read_bare

PRICE = Bare("68.50", 0.01, 1_000_000.0)
"""Of a bag of 50 lb in US dollars; common practice, no source."""
PRICE_IN_PESOS = Bare("1200.00", PRICE.lowest, PRICE.highest)
"""Of a bag of 20 kg in Mexican pesos; common practice, no source."""
_PESOS = ("MXN", "MX$")
_DOLLARS = ("USD", "US$")
_AROUND = re.compile(r"(?P<before>[^\d.,+\-−]*)(?P<amount>[\d.,+\-−].*?)(?P<after>[^\d.,]*)", re.DOTALL)
LONGEST_CURRENCY = 5
_TURNED = str.maketrans(".,", ",.")


def usual_price(currency: str, *, in_pesos: bool) -> Bare:
    """What a bag may cost, with an example of this currency; `in_pesos` tells what $ stands for."""
    pesos = currency.upper() in _PESOS or (currency == "$" and in_pesos)
    return PRICE_IN_PESOS if pesos else PRICE


class OtherCurrency(NotUnderstood):
    """A price with the name of a currency that the farm does not keep."""


def names_of(currency: str, *, in_pesos: bool, of_country: str = "") -> tuple[str, ...]:
    """How people may name the farm's currency beside a price. `of_country` is the code of the country's own where that
    has the same sign, else blank. $ is pesos where `in_pesos`, else that of the country, US dollars where none is told.
    """
    if currency.upper() in _PESOS or (currency == "$" and (in_pesos or of_country == "MXN")):
        return (currency, "$", *_PESOS)
    if currency.upper() in _DOLLARS or (currency == "$" and of_country in ("", "USD")):
        return (currency, "$", *_DOLLARS)
    return (currency, of_country) if of_country else (currency,)


def read_price(
    text: str, currency: str, price: Bare = PRICE, *, names: Iterable[str] = (), decimal_comma: bool = False
) -> float:
    """What a bag costs, the currency's sign or one of its `names` before or after it left out: 1,250.00 MXN.

    Raises OtherCurrency for another's name beside it, else NotUnderstood.
    """
    own = {name.casefold() for name in (*names, currency)}
    found = _AROUND.fullmatch(text.strip())
    amount, named = text, []
    if found is not None:
        said = [found[side].strip().rstrip(".") for side in ("before", "after")]
        named = [one for one in said if one]
        amount = found["amount"]
    for one in named:
        if one.casefold() not in own:
            raise OtherCurrency("unexpected", part=one, example=price.shown(decimal_comma=decimal_comma))
    return read_bare(amount, price, decimal_comma=decimal_comma)[0]


def price_text(price: float, currency: str, *, decimal_comma: bool = False) -> str:
    """A price to the cent: "$68.50", "$1,250.00", and "1.250,00 €" where the comma is the decimal sign."""
    amount = f"{price:,.2f}"
    if decimal_comma:
        return f"{amount.translate(_TURNED)} {currency}".strip()
    return f"{currency} {amount}" if currency.isalpha() else f"{currency}{amount}"


__all__ = [
    "LONGEST_CURRENCY",
    "PRICE",
    "NotUnderstood",
    "OtherCurrency",
    "names_of",
    "price_text",
    "read_price",
    "usual_price",
]
