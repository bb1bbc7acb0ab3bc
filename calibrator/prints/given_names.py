"""Names of plans and groups that the program gave, for nobody typed one: on paper they are in its language."""

from __future__ import annotations

from functools import lru_cache

from calibrator.prints import words
from calibrator.prints.fit import plain
from calibrator.prints.languages import LANGUAGES, Tongue

_MOST_GROUPS = 99


def name_told(name: str, tongue: Tongue) -> str:
    """A name as it was typed; one that the program gave, in whichever language its screen had then, in this one."""
    given = _given().get(name)
    return plain(name) if given is None else tongue(given[0]).format(number=given[1])


@lru_cache(maxsize=1)
def _given() -> dict[str, tuple[str, int]]:
    """The phrase and the number behind each such name."""
    tongues = [Tongue(code) for code in LANGUAGES]
    groups = ((words.GROUP, number) for number in range(1, _MOST_GROUPS + 1))
    names = [(words.ALL_CALVES, 0), *groups]
    return {tongue(phrase).format(number=number): (phrase, number) for phrase, number in names for tongue in tongues}
