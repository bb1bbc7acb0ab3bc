"""Work that takes its time tells how far it is, and can be ended between two of its steps."""

from collections.abc import Callable, Iterator, Sequence
from typing import TypeVar

T = TypeVar("T")

Underway = Callable[[float], None]
"""Is told the share that is done, 0 to 1, and raises `Ended` where nobody wants the rest any more."""


class Ended(Exception):
    """The person ended the work. Whoever is at it takes back what is begun and lets this pass."""


def unwatched(_share: float) -> None:
    """For work that nobody waits for."""


def part_of(underway: Underway, begin: float, end: float) -> Underway:
    """How far a part of the work is, told as shares of the whole between `begin` and `end`."""

    def told(share: float) -> None:
        underway(begin + (end - begin) * share)

    return told


def one_by_one(things: Sequence[T], underway: Underway) -> Iterator[T]:
    """The things in their order, telling before each how far it is."""
    for number, thing in enumerate(things):
        underway(number / len(things))
        yield thing
