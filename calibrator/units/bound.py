"""Figures that stay whole where a line is broken."""

from __future__ import annotations

import re
from functools import lru_cache

_UNIT = r"(?:%|°|[gL]\b|kg|lb|fl oz|oz|qt|gal|mL|mm|cm|in\b|pulg|ft\b|Brix|mOsm)"
_HELD = re.compile(
    rf"(?<=\d) (?={_UNIT})|(?<=fl) (?=oz)|(?<=\d) (?=\d+/\d)"  # 22.4 fl oz, 3 1/4 qt
    r"|(?<=±) (?=\d)|(?<=\d) (?=× \d)|(?<=[×÷]) (?=[\d√])"  # ± 0.2, 2 × 5, ÷ 40
    r"|(?<=no\.) (?=\d)|(?<=n\.º) (?=\d)|(?<=reemplaza el) (?=\d)"  # the number of a print
)


@lru_cache(maxsize=4096)  # a text that is fitted to its room is wrapped at many sizes
def with_units_bound(text: str) -> str:
    """The same words; a number keeps what it means beside it: its unit, its fraction, its sign."""
    return _HELD.sub("\u00a0", text)
