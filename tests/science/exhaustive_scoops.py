"""Every possible count of scoopfuls, tried one by one: the judge of the quick search.

`python tests/science/exhaustive_scoops.py [cases] [seed]` compares the two over 10,000 random cases.
"""

from __future__ import annotations

import random
import sys
from collections.abc import Iterator, Sequence
from itertools import combinations

from calibrator.model import FillWay
from calibrator.science.scoops import MOST_SCOOPFULS, ScoopCount, ScoopWay, fewest_table

Case = tuple[float, list[ScoopWay], float, tuple[float, ...]]
Key = tuple[int, bool, int, int, float]


def fewest(
    target_g: float,
    ways: Sequence[ScoopWay],
    tolerance_share: float,
    *,
    fractions: Sequence[float] = (1,),
    most_scoopfuls: int = MOST_SCOOPFULS,
) -> ScoopCount | None:
    """The quick search for one target."""
    return fewest_table([target_g], ways, tolerance_share, fractions=fractions, most_scoopfuls=most_scoopfuls)[0]


def _whole(ways: Sequence[ScoopWay], most: int, ceiling_g: float) -> Iterator[dict[int, int]]:
    """All counts of whole scoopfuls of at most two kinds that stay below the ceiling."""
    for i, way in enumerate(ways):
        for n in range(1, most + 1):
            if n * way.mass_g > ceiling_g:
                break
            yield {i: n}
    for (i, one), (j, other) in combinations(enumerate(ways), 2):
        for n in range(1, most):
            if n * one.mass_g > ceiling_g:
                break
            for m in range(1, most - n + 1):
                if n * one.mass_g + m * other.mass_g > ceiling_g:
                    break
                yield {i: n, j: m}


def _part_filled(
    ways: Sequence[ScoopWay], parts: Sequence[float], most: int, ceiling_g: float
) -> Iterator[tuple[dict[int, int], int, float]]:
    """All counts of whole scoopfuls of at most one kind with one part fill after them."""
    for j in range(len(ways)):
        for part in parts:
            yield {}, j, part
            for i, way in enumerate(ways):
                for n in range(1, most):
                    if n * way.mass_g > ceiling_g:
                        break
                    yield {i: n}, j, part


def best_key(
    target: float, ways: Sequence[ScoopWay], tolerance: float, fractions: Sequence[float], most: int
) -> Key | None:
    """The rule's order of the best count: fills, part fill, kinds, scoops, distance; None without one."""
    allowed = target * (tolerance + 1e-9)
    ceiling = target + allowed
    found: list[Key] = []
    for counts in _whole(ways, most, ceiling):
        error = abs(sum(n * ways[i].mass_g for i, n in counts.items()) - target)
        if error <= allowed:
            scoops = len({ways[i].scoop_id for i in counts})
            found.append((sum(counts.values()), False, len(counts), scoops, error))
    parts = [f for f in fractions if f != 1]
    for counts, j, part in _part_filled(ways, parts, most, ceiling):
        total = sum(n * ways[i].mass_g for i, n in counts.items()) + part * ways[j].mass_g
        if abs(total - target) <= allowed:
            scoops = len({ways[i].scoop_id for i in [*counts, j]})
            found.append((sum(counts.values()) + 1, True, len(counts) + 1, scoops, abs(total - target)))
    return min(found, default=None)


def key_of(count: ScoopCount | None) -> Key | None:
    """The same order for a count that the quick search found."""
    if count is None:
        return None
    part = any(n % 1 for _, n in count.parts)
    kinds = sum((n >= 1) + (n % 1 > 0) for _, n in count.parts)
    scoops = len({way.scoop_id for way, _ in count.parts})
    return count.scoopfuls, part, kinds, scoops, abs(count.error_g)


def random_case(chance: random.Random) -> Case:
    ways = []
    for scoop in range(chance.randint(1, 3)):
        level = chance.choice([chance.uniform(30, 1200), float(chance.randint(3, 120) * 10)])
        ways.append(ScoopWay(str(scoop), f"scoop {scoop}", FillWay.LEVEL, level))
        if chance.random() < 0.6:
            share = chance.uniform(0.5, 0.99)
            ways.append(ScoopWay(str(scoop), f"scoop {scoop}", FillWay.TO_MARK, level * share))
    target = chance.choice([chance.uniform(20, 9000), float(chance.randint(2, 900) * 10)])
    tolerance = chance.choice([0.0, 0.001, 0.005, 0.01, 0.02, 0.05])
    return target, ways, tolerance, chance.choice([(1,), (1, 0.5), (1, 0.5, 0.25, 0.75)])


def misses(cases: int, seed: int, most: int = 30) -> list[Case]:
    """Random cases in which the quick search and the exhaustive one disagree."""
    chance, missed = random.Random(seed), []
    for _ in range(cases):
        case = random_case(chance)
        target, ways, tolerance, fractions = case
        quick = key_of(fewest(target, ways, tolerance, fractions=fractions, most_scoopfuls=most))
        slow = best_key(target, ways, tolerance, fractions, most)
        same = quick is slow is None or (
            quick is not None
            and slow is not None
            and quick[:4] == slow[:4]
            and abs(quick[4] - slow[4]) <= 1e-6 * target
        )
        if not same:
            missed.append(case)
    return missed


if __name__ == "__main__":
    number = int(sys.argv[1]) if len(sys.argv) > 1 else 10_000
    seed = int(sys.argv[2]) if len(sys.argv) > 2 else 1
    missed = misses(number, seed)
    print(f"{number} random cases, seed {seed}: {len(missed)} misses")
    for case in missed[:5]:
        print(case)
    sys.exit(bool(missed))
