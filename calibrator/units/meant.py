"""What a text that was refused may have been meant as: a space forgotten before a fraction, another unit."""

from __future__ import annotations

import re
from collections.abc import Iterator
from types import MappingProxyType

from calibrator.model import UnitSystem
from calibrator.units.kinds import Kind
from calibrator.units.registry import is_of

_RUN_TOGETHER = re.compile(r"([0-9]+) ?/ ?([0-9]+)")
_NUMBER_ALONE = re.compile(r"([-+]? ?[0-9.,][0-9.,/ -]*?) ?[^0-9]*")
_OFTEN = MappingProxyType(
    {
        Kind.MASS: ("oz", "lb", "g", "kg"),
        Kind.VOLUME: ("qt", "gal", "L", "mL"),
        Kind.LENGTH: ("in", "mm", "cm"),
        Kind.TEMPERATURE: ("°F", "°C"),
    }
)


def spaced(plain: str) -> Iterator[str]:
    """A text in which a fraction is not less than one, with a space wherever one may be missing: 35/8 as 3 5/8,
    113/16 as 1 13/16 and 11 3/16. Those that are no fraction then are among them.
    """
    for found in _RUN_TOGETHER.finditer(plain):
        top, bottom = found.groups()
        for at in range(1, len(top)):
            if top[at] == "0":
                continue  # 101/4 is 10 1/4, never 1 01/4
            yield f"{plain[: found.start()]}{top[:at]} {top[at:]}/{bottom}{plain[found.end() :]}"


def in_other_units(text: str, kind: Kind, system: UnitSystem, first: str = "") -> Iterator[str]:
    """The one number of a text with each unit that people often use, `first` before the others, then those of the
    system; of a text with more numbers, or of a kind with one unit alone, none.
    """
    found = _NUMBER_ALONE.fullmatch(text)
    if found is not None and kind in _OFTEN:
        usual = sorted(_OFTEN[kind], key=lambda unit: not is_of(unit, system))
        yield from (f"{found[1]} {unit}" for unit in dict.fromkeys(filter(None, (first, *usual))))
