"""Prices as people write and read them, in the farm's currency. No window."""

from __future__ import annotations

from calibrator.units import NotUnderstood
from calibrator.units.bare import Bare, read_bare
from calibrator.units.rounding import with_comma

PRICE = Bare("68.50", 0.01, 1_000_000.0)
LONGEST_CURRENCY = 5


def read_price(text: str, currency: str, *, decimal_comma: bool = False) -> float:
    """What a bag costs, the currency's sign before or after it left out. Raises NotUnderstood."""
    plain = text.strip().removeprefix(currency).removesuffix(currency)
    return read_bare(plain, PRICE, decimal_comma=decimal_comma)[0]


def price_text(price: float, currency: str, *, decimal_comma: bool = False) -> str:
    """A price to the cent: "$68.50", and "68,50 €" where the comma is the decimal sign."""
    amount = with_comma(f"{price:.2f}", decimal_comma)
    if decimal_comma:
        return f"{amount} {currency}".strip()
    return f"{currency} {amount}" if currency.isalpha() else f"{currency}{amount}"


__all__ = ["LONGEST_CURRENCY", "PRICE", "NotUnderstood", "price_text", "read_price"]
