"""A weight of powder as scoopfuls: the fewest within the tolerance, exactly, or the water trimmed to them.

The rule, fixed beforehand, so that nobody has to trust a clever count while calves bawl:

1. A count uses at most two kinds of fills (a kind is one scoop filled one way).
2. Where part fills are allowed, at most one of them, after the whole ones.
3. Of the counts within the tolerance the one with the fewest scoopfuls is taken; then, in this order,
   without a part fill, of one kind, from one scoop, nearest to the target.
4. More than `MOST_COUNTABLE` scoopfuls are told as `countable = False`: weigh it.

Within this rule the search is exact. For n scoopfuls of two kinds, a of the larger and n − a of the smaller,
the total is linear in a, so the best a is the nearest whole number; n rises from the fewest that the largest
kind allows, so the first n with a count inside the tolerance is the fewest.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import combinations
from typing import overload

import numpy as np
from numpy.typing import NDArray

from calibrator.model import FillWay
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import between, not_negative, positive

MOST_COUNTABLE = 24
MOST_SCOOPFULS = 400
PART_FILL_SD_SHARE = 0.05
"""A half or a quarter by eye spreads by this share of the whole scoop: common practice, no source."""

_NORMAL_95 = 1.959963984540054
_ROUNDING = 1e-9

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]


@dataclass(frozen=True)
class ScoopWay:
    """One kind of fill: a scoop, how it is filled, what one scoopful weighs.

    `u_mean_g` is the standard uncertainty of that weight for this lot, `fill_sd_g` the spread of single
    scoopfuls around it.
    """

    scoop_id: str
    name: str
    way: FillWay
    mass_g: float
    u_mean_g: float = 0.0
    fill_sd_g: float = 0.0


@dataclass(frozen=True)
class ScoopCount:
    """Scoopfuls of each kind and what they weigh together.

    `parts` pairs a way with how many (3.5 is three and a half); `scoopfuls` counts fills, a part fill as one.
    `error_g` is total − target: the rounding. `spread_95_g` is the half-width at 95 % of what so many
    scoopfuls weigh: their own spread and the doubt in the lot's mean.
    """

    parts: tuple[tuple[ScoopWay, float], ...]
    scoopfuls: int
    total_g: float
    error_g: float
    error_share: float
    spread_95_g: float

    @property
    def countable(self) -> bool:
        """Few enough to be counted without losing track."""
        return self.scoopfuls <= MOST_COUNTABLE


def spread_95_g(parts: Sequence[tuple[ScoopWay, float]]) -> float:
    """Half-width at 95 % of the weight of these scoopfuls, g, normal.

    Single fills vary independently (their variances add); the means of a lot err together (they add as
    they are). A part fill adds 5 % of its whole scoop, by eye.
    """
    whole = sum(n * way.fill_sd_g**2 for way, n in parts)
    by_eye = sum((PART_FILL_SD_SHARE * way.mass_g) ** 2 for way, n in parts if n != math.floor(n))
    together = sum(n * way.u_mean_g for way, n in parts)
    return _NORMAL_95 * math.sqrt(whole + by_eye + together**2)


def scoop_count(parts: Sequence[tuple[ScoopWay, float]], target_g: float) -> ScoopCount:
    """These scoopfuls beside a target weight. Raises CannotCompute unless the target is above zero."""
    target = positive(target_g, "The weight of powder")
    total = sum(n * way.mass_g for way, n in parts)
    fills = sum(math.ceil(n) for _, n in parts)
    return ScoopCount(tuple(parts), fills, total, total - target, total / target - 1, spread_95_g(parts))


@dataclass(frozen=True)
class _Kind:
    """A way at a fraction of its scoop."""

    way: int
    fraction: float
    mass_g: float


@dataclass(frozen=True)
class _Combos:
    """Pairs of kinds that may be counted together, as columns: `first` heavier than `second`.

    `one_second` marks pairs whose second kind is a part fill, taken once. `rank` orders what is simpler.
    """

    first: Ints
    second: Ints
    first_g: Floats
    second_g: Floats
    one_second: Bools
    rank: Floats


def _kinds(ways: Sequence[ScoopWay], fractions: Sequence[float]) -> list[_Kind]:
    return [_Kind(i, f, w.mass_g * f) for f in fractions for i, w in enumerate(ways)]


def _pairs(kinds: Sequence[_Kind], whole: int, ways: Sequence[ScoopWay]) -> _Combos:
    """All pairs of two whole kinds of different weight, and of a whole kind with one part fill."""
    by_weight = sorted(range(whole), key=lambda k: -kinds[k].mass_g)
    pairs = [
        (a, b)
        for a, b in combinations(by_weight, 2)
        if kinds[a].mass_g - kinds[b].mass_g > _ROUNDING * kinds[a].mass_g
    ]
    pairs += [(a, b) for a in range(whole) for b in range(whole, len(kinds))]
    first = np.array([a for a, _ in pairs], dtype=np.int64)
    second = np.array([b for _, b in pairs], dtype=np.int64)
    masses = np.array([k.mass_g for k in kinds])
    two_scoops = [ways[kinds[a].way].scoop_id != ways[kinds[b].way].scoop_id for a, b in pairs]
    one_second = second >= whole
    rank = 2.0 * one_second + np.array(two_scoops, dtype=float)
    return _Combos(first, second, masses[first], masses[second], one_second, rank)


@dataclass(frozen=True, eq=False)
class ScoopTable(Sequence["ScoopCount | None"]):
    """The best count for each target, kept as columns; a count is made when it is looked at.

    `first` and `second` are kinds of fills (−1 for none), `first_n` and `second_n` how many of each; all
    are 0 or −1 where no count lies within the tolerance, and the row is None.
    """

    targets_g: Floats
    ways: tuple[ScoopWay, ...]
    kinds: tuple[_Kind, ...]
    first: Ints
    first_n: Ints
    second: Ints
    second_n: Ints

    @property
    def total_g(self) -> Floats:
        """Weight of each count, g; 0 where there is none."""
        masses = np.array([*(k.mass_g for k in self.kinds), 0.0])
        total: Floats = self.first_n * masses[self.first] + self.second_n * masses[self.second]
        return total

    @property
    def scoopfuls(self) -> Ints:
        """Fills of each count; 0 where there is none."""
        return self.first_n + self.second_n

    def __len__(self) -> int:
        return len(self.targets_g)

    def _row(self, index: int) -> ScoopCount | None:
        amounts: dict[int, float] = {}
        for kind, n in ((self.first[index], self.first_n[index]), (self.second[index], self.second_n[index])):
            if n:
                of = self.kinds[kind]
                amounts[of.way] = amounts.get(of.way, 0.0) + float(n) * of.fraction
        if not amounts:
            return None
        return scoop_count([(self.ways[w], n) for w, n in amounts.items()], float(self.targets_g[index]))

    @overload
    def __getitem__(self, index: int) -> ScoopCount | None: ...
    @overload
    def __getitem__(self, index: slice) -> list[ScoopCount | None]: ...
    def __getitem__(self, index: int | slice) -> ScoopCount | list[ScoopCount | None] | None:
        if isinstance(index, slice):
            return [self._row(i) for i in range(*index.indices(len(self)))]
        return self._row(range(len(self))[index])

    def __iter__(self) -> Iterator[ScoopCount | None]:
        return (self._row(i) for i in range(len(self)))


class _Search:
    """Raises n for all open targets together until each has its count or cannot have one."""

    def __init__(
        self, targets_g: Floats, kinds: Sequence[_Kind], whole: int, pairs: _Combos, tolerance_share: float
    ) -> None:
        self.targets = targets_g
        self.allowed = targets_g * (tolerance_share + _ROUNDING)
        self.masses = np.array([k.mass_g for k in kinds])
        self.whole = whole
        self.pairs = pairs
        self.first, self.second = (np.full(len(targets_g), -1, dtype=np.int64) for _ in range(2))
        self.first_n, self.second_n = (np.zeros(len(targets_g), dtype=np.int64) for _ in range(2))

    def run(self, most_scoopfuls: int) -> None:
        wholes = self.masses[: self.whole]
        n = np.maximum(1, np.ceil((self.targets - self.allowed) / wholes.max() - _ROUNDING))
        last = np.floor((self.targets + self.allowed) / wholes.min() + _ROUNDING) + 1
        last = np.minimum(last, most_scoopfuls)
        is_open = np.flatnonzero(n <= last)
        n, last = n[is_open], last[is_open]
        while len(is_open):
            left = ~self._settle_one_kind(is_open, n)
            is_open, n, last = is_open[left], n[left], last[left]
            left = ~self._settle_pairs(is_open, n)
            n = n + 1
            left &= n <= last
            is_open, n, last = is_open[left], n[left], last[left]

    def _settle_one_kind(self, is_open: Ints, n: Floats) -> Bools:
        target, allowed = self.targets[is_open], self.allowed[is_open]
        error = np.abs(self.masses[: self.whole, None] * n - target)
        best = error.argmin(axis=0)
        found: Bools = error[best, np.arange(len(n))] <= allowed
        self.first[is_open[found]] = best[found]
        self.first_n[is_open[found]] = n[found].astype(np.int64)
        return found

    def _settle_pairs(self, is_open: Ints, n: Floats) -> Bools:
        pairs = self.pairs
        if not len(is_open) or not len(pairs.first):
            return self._settle_lone_part(is_open, n)
        target, allowed = self.targets[is_open], self.allowed[is_open]
        heavy, light = pairs.first_g[:, None], pairs.second_g[:, None]
        gap = np.where(pairs.one_second[:, None], 1.0, heavy - light)
        nearest = np.rint((target - n * light) / gap)
        of_first = np.where(pairs.one_second[:, None], n - 1, np.clip(nearest, 1, np.maximum(n - 1, 1)))
        error = np.abs(of_first * heavy + (n - of_first) * light - target)
        score = np.where((error <= allowed) & (n > 1), 2 * pairs.rank[:, None] + error / allowed, np.inf)
        best = score.argmin(axis=0)
        columns = np.arange(len(n))
        found: Bools = np.isfinite(score[best, columns])
        rows, pair, a = is_open[found], best[found], of_first[best, columns][found]
        self.first[rows], self.second[rows] = pairs.first[pair], pairs.second[pair]
        self.first_n[rows] = a.astype(np.int64)
        self.second_n[rows] = (n[found] - a).astype(np.int64)
        return found | self._settle_lone_part(is_open, n)

    def _settle_lone_part(self, is_open: Ints, n: Floats) -> Bools:
        found = np.zeros(len(n), dtype=bool)
        lone = np.flatnonzero(n == 1)
        if len(lone) and self.whole < len(self.masses):
            rows = is_open[lone]
            error = np.abs(self.masses[self.whole :, None] - self.targets[rows])
            best = error.argmin(axis=0)
            near = error[best, np.arange(len(rows))] <= self.allowed[rows]
            self.first[rows[near]], self.first_n[rows[near]] = self.whole + best[near], 1
            found[lone[near]] = True
        return found


def _checked(ways: Sequence[ScoopWay], fractions: Sequence[float]) -> list[float]:
    if not ways:
        raise CannotCompute("Weigh at least one scoop with this lot.")
    for way in ways:
        positive(way.mass_g, "The weight of a scoopful")
        not_negative(way.u_mean_g, "The doubt in a scoopful")
        not_negative(way.fill_sd_g, "The spread of scoopfuls")
    parts = [f for f in dict.fromkeys(fractions) if f != 1]
    for f in parts:
        between(f, 0.01, 0.99, "A part fill", "1 and 99 % of a scoop")
    return [1.0, *parts]


def fewest_table(
    targets_g: Sequence[float] | Floats,
    ways: Sequence[ScoopWay],
    tolerance_share: float,
    *,
    fractions: Sequence[float] = (1,),
    most_scoopfuls: int = MOST_SCOOPFULS,
) -> ScoopTable:
    """The best count of scoopfuls for each target weight, by the rule at the head of this file.

    `tolerance_share` 0 … 0.5; `fractions` of a scoop that a person allows besides whole ones (0.5, 0.25,
    0.75). A row is None where no count of up to `most_scoopfuls` lies within the tolerance. Raises
    CannotCompute for targets or weights that are not above zero and for no way at all.
    """
    targets = np.asarray(targets_g, dtype=np.float64).reshape(-1)
    if not np.all(np.isfinite(targets)) or np.any(targets <= 0):
        raise CannotCompute("The weight of powder must be greater than zero.")
    tolerance = between(tolerance_share, 0.0, 0.5, "The tolerance", "0 and 50 %")
    allowed = _checked(ways, fractions)
    positive(most_scoopfuls, "The most scoopfuls")
    kinds, whole = _kinds(ways, allowed), len(ways)
    search = _Search(targets, kinds, whole, _pairs(kinds, whole, ways), tolerance)
    search.run(most_scoopfuls)
    return ScoopTable(
        targets, tuple(ways), tuple(kinds), search.first, search.first_n, search.second, search.second_n
    )


def fewest(
    target_g: float,
    ways: Sequence[ScoopWay],
    tolerance_share: float,
    *,
    fractions: Sequence[float] = (1,),
    most_scoopfuls: int = MOST_SCOOPFULS,
) -> ScoopCount | None:
    """The best count of scoopfuls for one target weight; otherwise as `fewest_table`."""
    return fewest_table(
        [target_g], ways, tolerance_share, fractions=fractions, most_scoopfuls=most_scoopfuls
    )[0]


@dataclass(frozen=True)
class WaterTrim:
    """Whole scoopfuls of one kind, and the water that keeps the rate with them.

    `change_share` is how much more or less of everything there is than was asked for.
    """

    count: ScoopCount
    water_ml: float
    change_share: float


def trim_water(target_g: float, water_ml: float, way: ScoopWay) -> WaterTrim:
    """The nearest whole number of scoopfuls (at least one), with the water in proportion to it.

    The rate of powder to water holds exactly. Raises CannotCompute unless all are above zero.
    """
    positive(way.mass_g, "The weight of a scoopful")
    n = max(1, round(positive(target_g, "The weight of powder") / way.mass_g))
    count = scoop_count([(way, float(n))], target_g)
    factor = count.total_g / target_g
    return WaterTrim(count, positive(water_ml, "The volume of water") * factor, factor - 1)
