"""Chi-square and F without a library, for spreads and their ratios: scipy takes longer to load than a page.

Source: Abramowitz and Stegun 1964, 26.4.19 and 26.6.2, on the incomplete functions. Checked against scipy and printed
tables in tests/outside.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache

from calibrator.science.incomplete import beta_ratio, gamma_ratios

_HALVINGS = 60  # as many as a float tells apart between a number and its double
_DOUBLINGS = 900  # beyond 1e270 no spread is told from another


def f_above(f: float, df_above: float, df_below: float) -> float:
    """Chance of an F ratio above f ≥ 0; degrees of freedom above 0."""
    return _f_shares(f, df_above, df_below)[1]


@lru_cache(maxsize=1024)
def f_quantile(probability: float, df_above: float, df_below: float) -> float:
    """The F ratio that is not exceeded with `probability` (0 … 1, both left out)."""
    return _where(lambda f: _f_shares(f, df_above, df_below), probability)


@lru_cache(maxsize=1024)
def chi2_quantile(probability: float, df: float) -> float:
    """The chi-square that is not exceeded with `probability` (0 … 1, both left out); degrees of freedom above 0."""
    return _where(lambda x: gamma_ratios(x / 2, df / 2), probability)


def _f_shares(f: float, df_above: float, df_below: float) -> tuple[float, float]:
    whole = df_below + df_above * f
    x, rest, a, b = df_above * f / whole, df_below / whole, df_above / 2, df_below / 2
    return beta_ratio(x, rest, a, b), beta_ratio(rest, x, b, a)


def _where(shares: Callable[[float], tuple[float, float]], probability: float) -> float:
    """Where the share below is `probability`, by the smaller of the two shares; in doublings, then in halvings.

    With hardly any degrees of freedom it may lie beyond what is told: then it is the end of that, some 1e270.
    """

    def is_beyond(x: float) -> bool:
        below, above = shares(x)
        return below > probability if probability <= 0.5 else above < 1.0 - probability

    high = 1.0
    for _ in range(_DOUBLINGS):
        if is_beyond(high):
            break
        high *= 2
    low = high / 2
    while low > 0 and is_beyond(low):
        low, high = low / 2, low
    for _ in range(_HALVINGS):
        middle = (low + high) / 2
        low, high = (low, middle) if is_beyond(middle) else (middle, high)
    return (low + high) / 2
