"""What a scale sends, line by line: a weight with its unit as sent, and whether the scale stood still.

A mask tells how the lines look, in places with a name between braces; everything else stands for itself, and a space
for any number of them:

    {weight}      the number, with or without a sign
    {unit}        g, kg, oz or lb, in small or capital letters; without it the number is read like a typed one
    {still:ST}    ST stands there while the scale stands still, anything else while it does not
    {any}         whatever stands there

So `{still:ST},{any},{weight} {unit}` reads `ST,GS,+ 11.60 oz`. A blank mask takes a line that holds one number and
at most a unit. Nothing is guessed: a line that does not fit gives nothing.
"""

from __future__ import annotations

import re

from calibrator.values import dataclass

LONGEST_LINE = 120
LONGEST_MASK = 120
MOST_ANY = 2  # with more of them a line could be tried in millions of ways
_PLACE = re.compile(r"\{([^{}]*)\}")
_WEIGHT = r"(?P<sign>[+-]?) ?(?P<weight>[0-9]{1,12}(?:[.,][0-9]{1,12})?)"
_UNIT = r"(?P<unit>kg|g|oz|lb)"
_STILL = r"(?P<still>[^\s,;:]{0,20})"
_PLAIN = re.compile(f"{_WEIGHT} ?{_UNIT}?", re.IGNORECASE)


class MaskNotUnderstood(Exception):
    """A mask that names a place nobody knows, or lacks the weight. `code` says which, `part` names it."""

    def __init__(self, code: str, part: str = "") -> None:
        super().__init__(f"{code} {part}".strip())
        self.code, self.part = code, part


@dataclass(frozen=True)
class ScaleReading:
    """A weight as sent, in the words a person would type, and whether the scale stood still."""

    text: str
    still: bool


@dataclass(frozen=True)
class Mask:
    """How the lines of a scale look. `tells_still` says that they tell whether the scale stands still."""

    pattern: re.Pattern[str]
    still: str = ""

    @property
    def tells_still(self) -> bool:
        return bool(self.still)

    def read(self, line: str) -> ScaleReading | None:
        """What a line says; None for one that does not fit."""
        if len(line) > LONGEST_LINE or not line.isascii():
            return None
        found = self.pattern.fullmatch(" ".join(line.split()))
        if found is None:
            return None
        told = found.groupdict()
        minus = "-" if told["sign"] == "-" else ""
        number = re.sub(r"^0+(?=[0-9])", "", told["weight"])
        text = f"{minus}{number} {(told.get('unit') or '').lower()}".strip()
        return ScaleReading(text, not self.still or told.get("still") == self.still)


def read_mask(text: str) -> Mask:
    """The mask that a text tells; blank takes a number with or without a unit. Raises `MaskNotUnderstood`."""
    if not text.strip():
        return Mask(_PLAIN)
    if len(text) > LONGEST_MASK:
        raise MaskNotUnderstood("too_long")
    parts = _PLACE.split(text.strip())
    names = [part.strip() for part in parts[1::2]]
    if names.count("any") > MOST_ANY:
        raise MaskNotUnderstood("any")
    _refuse_twice(names)
    pattern = "".join(_place(part) if at % 2 else _literal(part) for at, part in enumerate(parts))
    still = next((name.partition(":")[2].strip() for name in names if name.startswith("still:")), "")
    return Mask(re.compile(pattern, re.IGNORECASE), still)


def _refuse_twice(names: list[str]) -> None:
    kinds = [name.partition(":")[0].strip() for name in names]
    if kinds.count("weight") != 1:
        raise MaskNotUnderstood("weight")
    for kind in ("unit", "still"):
        if kinds.count(kind) > 1:
            raise MaskNotUnderstood("twice", kind)


def _place(name: str) -> str:
    name = name.strip()
    if name.startswith("still:") and re.fullmatch(r"[^\s,;:]{1,20}", name.removeprefix("still:").strip()):
        return _STILL
    known = {"weight": _WEIGHT, "unit": _UNIT, "any": ".*?"}
    if name not in known:
        raise MaskNotUnderstood("unknown", name)
    return known[name]


def _literal(text: str) -> str:
    if "{" in text or "}" in text:
        raise MaskNotUnderstood("brace")
    return " ?".join(re.escape(word) for word in re.split(r"\s+", text))
