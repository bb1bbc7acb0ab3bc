"""Prices as people write and read them, in the farm's currency. No window."""

from __future__ import annotations

from calibrator.units import NotUnderstood
from calibrator.units.bare import Bare, read_bare

PRICE = Bare("68.50", 0.01, 1_000_000.0)
"""Of a bag of 50 lb in US dollars; common practice, no source."""
PRICE_IN_PESOS = Bare("1200.00", PRICE.lowest, PRICE.highest)
"""Of a bag of 20 kg in Mexican pesos; common practice, no source."""
_PESOS = ("MXN", "MX$")
LONGEST_CURRENCY = 5
_TURNED = str.maketrans(".,", ",.")


def usual_price(currency: str, *, in_pesos: bool) -> Bare:
    """What a bag may cost, with an example of this currency; `in_pesos` tells what $ stands for."""
    pesos = currency.upper() in _PESOS or (currency == "$" and in_pesos)
    return PRICE_IN_PESOS if pesos else PRICE


def read_price(text: str, currency: str, price: Bare = PRICE, *, decimal_comma: bool = False) -> float:
    """What a bag costs, the currency's sign before or after it left out. Raises NotUnderstood."""
    plain = text.strip().removeprefix(currency).removesuffix(currency)
    return read_bare(plain, price, decimal_comma=decimal_comma)[0]


def price_text(price: float, currency: str, *, decimal_comma: bool = False) -> str:
    """A price to the cent: "$68.50", "$1,250.00", and "1.250,00 €" where the comma is the decimal sign."""
    amount = f"{price:,.2f}"
    if decimal_comma:
        return f"{amount.translate(_TURNED)} {currency}".strip()
    return f"{currency} {amount}" if currency.isalpha() else f"{currency}{amount}"


__all__ = ["LONGEST_CURRENCY", "PRICE", "NotUnderstood", "price_text", "read_price", "usual_price"]
