"""Lots of one kind: those that are compared with each other; densities as logarithms."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from functools import lru_cache
from operator import attrgetter
from typing import NamedTuple, Protocol, TypeVar

from calibrator.model import LotPoint, SeasonLot

L = TypeVar("L", SeasonLot, LotPoint)


class Kind(NamedTuple):
    """A product as its label names it, and whether it is agglomerated (None where nobody said)."""

    product: str
    agglomerated: bool | None


class OfKind(Protocol):
    """A lot, as far as its kind goes."""

    @property
    def product(self) -> str: ...

    @property
    def agglomerated(self) -> bool | None: ...


def kind_of(lot: OfKind) -> Kind:
    """The kind of a lot; capitals and spaces in a product's name do not make another kind."""
    return Kind(_plain(lot.product), lot.agglomerated)


@lru_cache(maxsize=1024)
def _plain(product: str) -> str:
    return " ".join(product.split()).casefold()


def by_kind(lots: Sequence[OfKind]) -> dict[Kind, list[int]]:
    """The places of the lots of each kind, in their order."""
    return by_kind_told([lot.product for lot in lots], [lot.agglomerated for lot in lots])


def by_kind_told(products: Sequence[str], agglomerated: Sequence[bool | None]) -> dict[Kind, list[int]]:
    """The same of lots told in columns."""
    found: dict[Kind, list[int]] = {}
    as_told: dict[tuple[str, bool | None], list[int]] = {}
    for place, told in enumerate(zip(products, agglomerated, strict=True)):
        if told not in as_told:
            as_told[told] = found.setdefault(Kind(_plain(told[0]), told[1]), [])
        as_told[told].append(place)
    return found


def in_order(lots: Iterable[L]) -> list[L]:
    """Lots by the time of their sign-off."""
    return sorted(lots, key=attrgetter("at"))


def before(lots: Sequence[SeasonLot], place: int) -> SeasonLot | None:
    """The lot weighed before that at a place with the same scoop, lots being in order; None where there is none."""
    own = lots[place]
    earlier = (lots[n] for n in range(place - 1, -1, -1))
    return next((one for one in earlier if one.scoop_id == own.scoop_id and one.lot_id != own.lot_id), None)


def last_two(lots: Sequence[SeasonLot]) -> tuple[SeasonLot, SeasonLot] | None:
    """The last weighing that has an earlier lot with the same scoop, that one first; None where there is none."""
    pairs = ((before(lots, place), lots[place]) for place in range(len(lots) - 1, -1, -1))
    return next(((earlier, last) for earlier, last in pairs if earlier is not None), None)


def change_share(before: SeasonLot, last: SeasonLot) -> float:
    """How much denser the later lot is, as a share of the earlier; less than 0 for a looser one."""
    return last.density_g_per_ml / before.density_g_per_ml - 1


def log_density(lot: SeasonLot) -> float:
    """Natural logarithm of the density: a small difference is a share."""
    return math.log(lot.density_g_per_ml)


def weighing_u_share(lot: SeasonLot) -> float:
    """The doubt that weighing leaves in a lot's density, as a share; what all lots of a scoop share is left out."""
    return lot.level_u_g / lot.level_mean_g
