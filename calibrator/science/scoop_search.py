"""The search behind `scoops`: all targets at once, exact within the rule told there.

For n scoopfuls of two kinds, a of the heavier and n − a of the lighter, the total is linear in a, so the best
a is the nearest whole number; n rises from the fewest that the heaviest kind allows, so the first n with a
count inside the tolerance is the fewest.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations

import numpy as np
from numpy.typing import NDArray

from calibrator.science.scoopfuls import ScoopWay
from calibrator.values import dataclass

ROUNDING = 1e-9

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]


@dataclass(frozen=True)
class Kind:
    """A way at a fraction of its scoop."""

    way: int
    fraction: float
    mass_g: float


@dataclass(frozen=True)
class Pairs:
    """Pairs of kinds that may be counted together, as columns: `first` heavier than `second`.

    `one_second` marks pairs whose second kind is a part fill, taken once. `rank` orders what is simpler.
    """

    first: Ints
    second: Ints
    first_g: Floats
    second_g: Floats
    one_second: Bools
    rank: Floats


def kinds_of(ways: Sequence[ScoopWay], fractions: Sequence[float]) -> list[Kind]:
    return [Kind(i, f, w.mass_g * f) for f in fractions for i, w in enumerate(ways)]


def pairs_of(kinds: Sequence[Kind], whole: int, ways: Sequence[ScoopWay]) -> Pairs:
    """All pairs of two whole kinds of different weight, and of a whole kind with one part fill."""
    by_weight = sorted(range(whole), key=lambda k: -kinds[k].mass_g)
    pairs = [
        (a, b) for a, b in combinations(by_weight, 2) if kinds[a].mass_g - kinds[b].mass_g > ROUNDING * kinds[a].mass_g
    ]
    pairs += [(a, b) for a in range(whole) for b in range(whole, len(kinds))]
    first = np.array([a for a, _ in pairs], dtype=np.int64)
    second = np.array([b for _, b in pairs], dtype=np.int64)
    masses = np.array([k.mass_g for k in kinds])
    two_scoops = [ways[kinds[a].way].scoop_id != ways[kinds[b].way].scoop_id for a, b in pairs]
    one_second = second >= whole
    rank = 2.0 * one_second + np.array(two_scoops, dtype=float)
    return Pairs(first, second, masses[first], masses[second], one_second, rank)


class Search:
    """Raises n for all open targets together until each has its count or cannot have one."""

    def __init__(
        self, targets_g: Floats, kinds: Sequence[Kind], whole: int, pairs: Pairs, tolerance_share: float
    ) -> None:
        self.targets = targets_g
        self.allowed = targets_g * (tolerance_share + ROUNDING)
        self.masses = np.array([k.mass_g for k in kinds])
        self.whole = whole
        self.pairs = pairs
        self.first, self.second = (np.full(len(targets_g), -1, dtype=np.int64) for _ in range(2))
        self.first_n, self.second_n = (np.zeros(len(targets_g), dtype=np.int64) for _ in range(2))

    def run(self, most_scoopfuls: int) -> None:
        wholes = self.masses[: self.whole]
        n = np.maximum(1, np.ceil((self.targets - self.allowed) / wholes.max() - ROUNDING))
        last = np.floor((self.targets + self.allowed) / wholes.min() + ROUNDING) + 1
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
