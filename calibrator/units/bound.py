"""Figures that stay whole where a line is broken."""

from __future__ import annotations

import re

_UNIT = r"(?:%|°|[gL]\b|kg|lb|oz|qt|gal|mL|mm|cm|in\b|pulg|ft\b|Brix|mOsm)"
_HELD = re.compile(rf"(?<=\d) (?={_UNIT})|(?<=±) (?=\d)|(?<=no\.) (?=\d)|(?<=n\.º) (?=\d)")


def with_units_bound(text: str) -> str:
    """The same words; a number keeps its unit beside it, a ± its number, and a "no." the number of the sheet."""
    return _HELD.sub("\u00a0", text)
