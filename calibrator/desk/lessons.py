"""What the farm's earlier lots teach of a weigh-in that begins after them. No formula."""

from __future__ import annotations

from bisect import bisect_right
from functools import cached_property, reduce
from itertools import accumulate
from operator import attrgetter
from weakref import WeakKeyDictionary

from calibrator.model import Taught, WeighIn
from calibrator.records import Records, bag_sums, bag_sums_of
from calibrator.records.season import taught
from calibrator.science.bag_sums import bag_means, by_weigh_in
from calibrator.science.settling import Settled
from calibrator.science.spread import BagHistory, LotSpread, Pool, lot_spread
from calibrator.values import dataclass

MOST_ONE_BY_ONE = 200
_SPREADS: WeakKeyDictionary[Records, dict[str, LotSpread]] = WeakKeyDictionary()
"""The fills of a weigh-in stay as they are once it is signed off, so that they are read once."""

_Sums = tuple[Pool, Settled]
_NOTHING: _Sums = Pool(), Settled()


@dataclass(frozen=True)
class Experience:
    """What the farm's earlier lots teach: how bags differ, how much powder settles to the line."""

    history: BagHistory | None
    settling: Settled


class Lessons:
    """What the sign-offs of a farm teach; read once, it tells of many weigh-ins what came before each."""

    def __init__(self, records: Records, farm_id: str) -> None:
        self._records, self._farm_id = records, farm_id
        self._taught = sorted(taught(records, farm_id), key=attrgetter("at"))
        self._ats = [one.at for one in self._taught]
        self._places = {one.weigh_in_id: place for place, one in enumerate(self._taught)}

    @cached_property
    def _spreads(self) -> dict[str, LotSpread]:
        known = _SPREADS.setdefault(self._records, {})
        new = [one.weigh_in_id for one in self._taught if one.weigh_in_id not in known]
        many = len(new) > MOST_ONE_BY_ONE
        sums = bag_sums(self._records, self._farm_id) if many else bag_sums_of(self._records, new)
        known |= {key: lot_spread(bag_means(bags, 1.0)) for key, bags in by_weigh_in(sums).items()}
        return known

    @cached_property
    def _after_each(self) -> list[_Sums]:
        """What the first so many sign-offs teach, for none of them on."""
        return list(accumulate(self._taught, self._joined, initial=_NOTHING))

    def _joined(self, sums: _Sums, one: Taught) -> _Sums:
        pooled, settled = sums
        if (spread := self._spreads.get(one.weigh_in_id)) is not None:
            pooled = pooled.joined(spread)
        return pooled, settled.joined(one.settling_factor) if one.settling_u > 0 else settled

    def before(self, weigh_in: WeighIn) -> Experience:
        """What was signed off before a weigh-in began."""
        count = bisect_right(self._ats, weigh_in.started_at)
        own = min(self._places.get(weigh_in.id, count), count)
        # Its own sign-off is among them where it has the time of the beginning, or a clock was set back.
        pooled, settled = reduce(self._joined, self._taught[own + 1 : count], self._after_each[own])
        return Experience(pooled.history(), settled)


def experience(records: Records, weigh_in: WeighIn) -> Experience:
    """Read what was signed off before a weigh-in began."""
    return Lessons(records, weigh_in.farm_id).before(weigh_in)
