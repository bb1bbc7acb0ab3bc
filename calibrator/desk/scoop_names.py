"""What scoops are called where one has to be picked from several. No window."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from calibrator.model import Scoop


def scoop_title(scoop: Scoop) -> str:
    """A scoop's name, and what it is known by where somebody said: "red cup (tape on the handle)"."""
    return f"{scoop.name} ({scoop.told_by})" if scoop.told_by else scoop.name


def names_on_paper(scoops: Sequence[Scoop]) -> dict[str, str]:
    """The names of scoops by their ids; what it is known by goes along where another has the same name."""
    plain = Counter(scoop.name.casefold() for scoop in scoops)
    return {s.id: scoop_title(s) if plain[s.name.casefold()] > 1 else s.name for s in scoops}
