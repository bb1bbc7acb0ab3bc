"""A weight of powder as scoopfuls: the fewest within the tolerance, exactly, or the water trimmed to them.

The rule, fixed beforehand, so that nobody has to trust a clever count while calves bawl:

1. A count uses at most two kinds of fills (a kind is one scoop filled one way).
2. Where part fills are allowed, at most one of them, after the whole ones.
3. Of the counts within the tolerance the one with the fewest scoopfuls is taken; then, in this order,
   without a part fill, of one kind, from one scoop, nearest to the target.
4. More than `MOST_COUNTABLE` scoopfuls are told as `countable = False`: weigh it.

Within this rule the search is exact; see `scoop_search`. What people are told first (`usual`) is a count to the line
of one scoop, where such a count lies within the tolerance and takes at most `MOST_TIMES_FEWEST` times the fewest:
a feeder holds a marked scoop, and fills it to its line. Where no whole number comes out and part fills are allowed,
one part fill to that line may end the count: 7 1/2 to the line, not 3 level and 4 to the line. Halves are allowed
anyway where a calf's own feeding ends in half a scoopful to the line (`parts_of`): its label has a line for that, and
a table that avoids it mixes level and line otherwise in each row. Where a feeding takes
level scoops and one to the line, it is that, once for each calf: what the label says. That holds beyond
`MOST_COUNTABLE` too: a table in which 25 calves are told level where 24 are told to the line would have the wrong
powder counted. So many are better weighed, and are told as a count to the line beside that.

A table keeps one manner (`manner_of`): "15 to the line" above "15 level" is misread. It is what gives most of the
counts of calves a natural count, whatever single rows would rather have. A row that no whole count of it fits ends in
half a scoopful (25 calves in two batches: 12 1/2 to the line), though no part fills are asked for; only rows that this
does not fit either take another manner. That a change of manner is misread is common practice, no source.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import lru_cache

import numpy as np

from calibrator.model import FillWay
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import between, not_negative, positive
from calibrator.science.rows import Rows
from calibrator.science.scoop_search import ROUNDING, Bools, Floats, Ints, Kind, Search, kinds_of, pairs_of
from calibrator.science.scoopfuls import (
    MOST_COUNTABLE,
    PART_FILL_SD_SHARE,
    ScoopCount,
    ScoopWay,
    feedings,
    scoop_count,
    spread_95_g,
)
from calibrator.values import dataclass

__all__ = [
    "MOST_COUNTABLE",
    "MOST_SCOOPFULS",
    "MOST_TIMES_FEWEST",
    "PART_FILL_SD_SHARE",
    "ScoopCount",
    "ScoopTable",
    "ScoopWay",
    "WaterTrim",
    "fewest_table",
    "manner_of",
    "parts_of",
    "scoop_count",
    "spread_95_g",
    "trim_water",
    "trimmed_manner",
    "usual",
    "usual_table",
]

MOST_SCOOPFULS = 400
HALF = 0.5
MOST_TIMES_FEWEST = 2


@dataclass(frozen=True, eq=False)
class ScoopTable(Rows["ScoopCount | None"]):
    """The best count for each target, kept as columns; a count is made when it is looked at.

    `first` and `second` are kinds of fills (−1 for none), `first_n` and `second_n` how many of each; all
    are 0 or −1 where no count lies within the tolerance, and the row is None.
    """

    targets_g: Floats
    ways: tuple[ScoopWay, ...]
    kinds: tuple[Kind, ...]
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

    @property
    def parts(self) -> tuple[float, ...]:
        """The parts of a scoopful that its counts end in."""
        told = {*self.first[self.first_n > 0].tolist(), *self.second[self.second_n > 0].tolist()}
        return tuple(sorted({self.kinds[kind].fraction for kind in told} - {1.0}))

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


def _checked(ways: Sequence[ScoopWay], fractions: Sequence[float]) -> list[float]:
    if not ways:
        raise CannotCompute("Weigh at least one scoop with this lot.")
    for way in ways:
        positive(way.mass_g, "The weight of a scoopful")
        not_negative(way.u_mean_g, "The doubt in a scoopful")
        not_negative(way.fill_sd_g, "The spread of scoopfuls")
        not_negative(way.bag_sd_g, "The spread of scoopfuls")
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
    kinds, whole = kinds_of(ways, allowed), len(ways)
    search = Search(targets, kinds, whole, pairs_of(kinds, whole, ways), tolerance)
    search.run(most_scoopfuls)
    return ScoopTable(targets, tuple(ways), tuple(kinds), search.first, search.first_n, search.second, search.second_n)


def usual_table(
    targets_g: Sequence[float] | Floats,
    ways: Sequence[ScoopWay],
    tolerance_share: float,
    *,
    fractions: Sequence[float] = (1,),
    manner: Sequence[ScoopWay] = (),
) -> ScoopTable:
    """The count that people are told for each target: in the `manner` where that is natural, with half a scoopful of it
    at the end if need be, else to the line of one scoop where that is, else the fewest. Of each the nearest whole count
    is looked at, then the nearest with one part fill. Otherwise as `fewest_table`.
    """
    table = fewest_table(targets_g, ways, tolerance_share, fractions=fractions)
    meant = _as_meant(table.ways)
    natural = _natural(table, tolerance_share)
    if meant:
        table = _in_wholes(_with_part(table, natural, meant), meant, natural)
    chosen = [one for one in _manners(table.ways) if one.ways(table.ways) == tuple(manner)]
    if not chosen:
        return table
    kept = _in_manner(table, natural, chosen)
    halves = _with_part(_uncounted(table, kinds_of(table.ways, [HALF])), natural, chosen)
    return _instead(_instead(table, halves), kept)


def _uncounted(table: ScoopTable, more: Sequence[Kind] = ()) -> ScoopTable:
    """The same targets without a count, for ever so many kinds more."""
    none, nought = np.full(len(table), -1), np.zeros(len(table), dtype=np.int64)
    kinds = (*table.kinds, *(kind for kind in more if kind not in table.kinds))
    return replace(table, kinds=kinds, first=none, first_n=nought, second=none, second_n=nought)


def _in_manner(table: ScoopTable, natural: _Natural, meant: list[_Meant]) -> ScoopTable:
    """The counts that are natural in these manners, and no others."""
    return _in_wholes(_with_part(_uncounted(table), natural, meant), meant, natural)


def _instead(table: ScoopTable, better: ScoopTable) -> ScoopTable:
    """The table with the counts of the other wherever that has one; kinds stand in the same order in both, and one of
    them may have more."""
    told = better.first >= 0
    first, first_n, second, second_n = (
        np.where(told, getattr(better, name), getattr(table, name))
        for name in ("first", "first_n", "second", "second_n")
    )
    kinds = max(table.kinds, better.kinds, key=len)
    return replace(table, kinds=kinds, first=first, first_n=first_n, second=second, second_n=second_n)


@lru_cache(maxsize=64)  # every row of a table asks, and each number that is typed makes the table anew
def manner_of(
    feeding_g: float, ways: tuple[ScoopWay, ...], tolerance_share: float, fractions: tuple[float, ...] = (1.0,)
) -> tuple[ScoopWay, ...]:
    """The one manner of filling for a table of so much powder a feeding: one way, or level scoopfuls and one to the
    line for each calf. () where no manner gives a natural count.

    It rests on one feeding, two, three, … up to `MOST_COUNTABLE` scoopfuls, not on the rows of one table: a check of
    the mix and a number typed for today are counted alike. Feedings far below a scoopful end at twice that many calves:
    a guess that more would not choose otherwise. Of equals, what the label says. Otherwise as `fewest_table`.
    """
    manners = list(_manners(ways))
    if not manners:
        return ()
    heaviest_g = max(way.mass_g for way in ways)
    most = min(
        2 * MOST_COUNTABLE,
        max(1, math.floor(MOST_COUNTABLE * heaviest_g / positive(feeding_g, "The weight of powder"))),
    )
    targets = [feeding_g * n for n in range(1, most + 1)]
    table = fewest_table(targets, ways, tolerance_share, fractions=fractions)
    natural = _natural(table, tolerance_share)
    fitting = [int((_in_manner(table, natural, [one]).first >= 0).sum()) for one in manners]
    best = max(range(len(manners)), key=fitting.__getitem__)
    return manners[best].ways(ways) if fitting[best] else ()


@dataclass(frozen=True, eq=False)
class _Natural:
    """For each target the most scoopfuls that a natural count may take, and how near it has to come."""

    targets_g: Floats
    most: Ints
    tolerance_share: float

    def best(self, fills: Floats, total_g: Floats) -> tuple[Bools, Ints]:
        """Whether a target has such a count, and the number of it: the fewest scoopfuls, then the nearest."""
        error = np.abs(total_g / self.targets_g - 1)
        natural = (fills >= 1) & (fills <= self.most) & (error <= self.tolerance_share + ROUNDING)
        best = np.where(natural, fills + error, np.inf).argmin(axis=0)  # an error is below 1
        return natural[best, np.arange(len(best))], best


def _natural(table: ScoopTable, tolerance_share: float) -> _Natural:
    """Up to so many times the fewest; where no count fits, the whole ones of the heaviest scoop: with a half at the end
    another may still come near. Half a scoopful alone is told to nobody who did not ask for it: by eye it is a fifth
    off."""
    heaviest_g = max(way.mass_g for way in table.ways)
    by_weight = np.floor(table.targets_g / heaviest_g).astype(np.int64)
    fewest = np.where(table.scoopfuls > 0, table.scoopfuls, by_weight)
    return _Natural(table.targets_g, MOST_TIMES_FEWEST * fewest, tolerance_share)


def _in_wholes(table: ScoopTable, meant: list[_Meant], natural: _Natural) -> ScoopTable:
    """The table with whole feedings as labels tell them, where they are natural."""
    masses = np.array([feeding.mass_g for feeding in meant])[:, None]
    each = np.array([feeding.level_n + (feeding.line >= 0) for feeding in meant])[:, None]
    n = np.rint(table.targets_g / masses)
    found, best = natural.best(n * each, n * masses)
    times = n[best, np.arange(len(best))].astype(np.int64)
    line, level, level_n = (
        np.array([getattr(feeding, name) for feeding in meant], dtype=np.int64)[best]
        for name in ("line", "level", "level_n")
    )
    first = level_n > 0  # level scoopfuls come first, where there are any
    to_line = line >= 0
    return replace(
        table,
        first=np.where(found, np.where(first, level, line), table.first),
        first_n=np.where(found, np.where(first, level_n * times, times), table.first_n),
        second=np.where(found, np.where(first, line, -1), table.second),
        second_n=np.where(found, np.where(first & to_line, times, 0), table.second_n),
    )


def _with_part(table: ScoopTable, natural: _Natural, meant: list[_Meant]) -> ScoopTable:
    """The table with counts in one way that end in a part fill of it, where they are natural."""
    alone = {one.single for one in meant}
    parts = np.array([at for at, of in enumerate(table.kinds) if of.fraction < 1 and of.way in alone], dtype=np.int64)
    if not len(parts):
        return table
    whole = np.array([table.kinds[at].way for at in parts], dtype=np.int64)
    whole_g, part_g = (np.array([table.kinds[at].mass_g for at in of])[:, None] for of in (whole, parts))
    n = np.maximum(np.rint((table.targets_g - part_g) / whole_g), 0)
    found, best = natural.best(n + 1, n * whole_g + part_g)
    before = n[best, np.arange(len(best))].astype(np.int64)
    any_whole = before > 0
    return replace(
        table,
        first=np.where(found, np.where(any_whole, whole[best], parts[best]), table.first),
        first_n=np.where(found, np.where(any_whole, before, 1), table.first_n),
        second=np.where(found, np.where(any_whole, parts[best], -1), table.second),
        second_n=np.where(found, any_whole.astype(np.int64), table.second_n),
    )


@dataclass(frozen=True)
class _Meant:
    """What a scoop is meant for, a feeding: `level_n` level scoopfuls (way `level`) and one to its line (way `line`);
    −1 for a way that it does not take."""

    line: int
    level: int
    level_n: int
    mass_g: float

    @property
    def single(self) -> int:
        """The way that a feeding is one fill of; −1 where it takes more."""
        return self.line if self.level_n == 0 else self.level if self.level_n == 1 and self.line < 0 else -1

    def ways(self, every: Sequence[ScoopWay]) -> tuple[ScoopWay, ...]:
        return tuple(every[at] for at in (self.level, self.line) if at >= 0)


def _manners(ways: Sequence[ScoopWay]) -> Iterator[_Meant]:
    """The manners that a table may keep: as labels say, then each way for itself; those beside full scoops never are
    alone."""
    yield from _as_meant(ways)
    for at, way in enumerate(ways):
        if way.way is not FillWay.TO_MARK:
            yield _Meant(-1, at, 1, way.mass_g)


def _as_meant(ways: Sequence[ScoopWay]) -> list[_Meant]:
    place = {way: at for at, way in enumerate(ways)}
    found = []
    for feeding in feedings(ways):
        of = {way.way: (place[way], n) for way, n in feeding}
        level, level_n = of.get(FillWay.LEVEL, (-1, 0))
        line, _ = of.get(FillWay.TO_MARK, (-1, 0))
        found.append(_Meant(line, level, level_n, sum(n * way.mass_g for way, n in feeding)))
    return found


@lru_cache(maxsize=64)  # as `manner_of`
def parts_of(
    feeding_g: float, ways: tuple[ScoopWay, ...], tolerance_share: float, allowed: tuple[float, ...] = ()
) -> tuple[float, ...]:
    """The `fractions` of a scoopful for a table of so much powder a feeding: whole ones, the part fills that a person
    `allowed`, and halves where one feeding is some scoopfuls to a scoop's line and half of one, within the tolerance
    (0 … 0.5). Raises CannotCompute for a feeding that is not above zero.
    """
    wanted_g = positive(feeding_g, "The weight of powder")
    for meant in _as_meant(ways):
        if meant.line < 0 or meant.single < 0:
            continue
        halves = round(2 * wanted_g / meant.mass_g)
        near = abs(halves * meant.mass_g / 2 / wanted_g - 1) <= tolerance_share
        if halves > 2 and halves % 2 and near:
            return tuple(dict.fromkeys((1.0, *allowed, HALF)))
    return (1.0, *allowed)


def usual(
    target_g: float,
    ways: Sequence[ScoopWay],
    tolerance_share: float,
    *,
    fractions: Sequence[float] = (1,),
    manner: Sequence[ScoopWay] = (),
) -> ScoopCount | None:
    """The count that people are told for one target weight; otherwise as `usual_table`."""
    return usual_table([target_g], ways, tolerance_share, fractions=fractions, manner=manner)[0]


@dataclass(frozen=True)
class WaterTrim:
    """Whole scoopfuls of one kind, and the water that keeps the rate with them.

    `change_share` is how much more or less of everything there is than was asked for.
    """

    count: ScoopCount
    water_ml: float
    change_share: float


def trim_water(target_g: float, water_ml: float, way: ScoopWay, *, most_share: float = math.inf) -> WaterTrim | None:
    """The nearest whole number of scoopfuls (at least one), with the water in proportion to it.

    The rate of powder to water holds exactly. No more than `most_share` more of everything is made, for what a
    vessel holds; None where not even one scoopful is so little. Raises CannotCompute unless all are above zero.
    """
    positive(way.mass_g, "The weight of a scoopful")
    wanted = positive(target_g, "The weight of powder") / way.mass_g
    most = wanted * (1 + most_share) * (1 + 1e-9)
    n = max(1, round(wanted))
    if n > most:
        n = math.floor(most)
    if n < 1:
        return None
    count = scoop_count([(way, float(n))], target_g)
    factor = count.total_g / target_g
    return WaterTrim(count, positive(water_ml, "The volume of water") * factor, factor - 1)


def trimmed_manner(feeding_g: float, ways: tuple[ScoopWay, ...], most_share: float) -> tuple[ScoopWay, ...]:
    """The one way whose whole scoopfuls change the amount by no more than `most_share` for most counts of calves, and
    among those the least on average; () without a way. It rests on one calf, two, … up to `MOST_COUNTABLE`: a guess at
    how many are fed from one batch, so that it does not change with the rows of one table.
    """
    calves = np.arange(1, MOST_COUNTABLE + 1)

    def fits(way: ScoopWay) -> tuple[int, float]:
        wanted = calves * positive(feeding_g, "The weight of powder") / positive(way.mass_g, "The weight of a scoopful")
        change = np.abs(np.maximum(1, np.rint(wanted)) / wanted - 1)
        return int((change <= most_share).sum()), -float(change.mean())

    return (max(ways, key=fits),) if ways else ()
