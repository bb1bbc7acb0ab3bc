"""How fast a whole batch table is recomputed, scoopfuls included, beside plain loops over the same counts.

`python tests/bench/bench_scoops.py` prints times and ratios of one run. The loops below do the same work
one count at a time, the way it would be written down first: totals, batches, then every number of
scoopfuls from one upwards, every split between two kinds. The patient loop starts where the quick search
starts; the plain one starts at one scoopful, and is timed on every 50th count.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from functools import partial
from itertools import combinations
from time import perf_counter

from calibrator.model import Composition, FillWay, MixingRate, Plan, PlanGroup, RateBasis, Vessel, VolumeMeans
from calibrator.science import batch, mixing
from calibrator.science.scoops import ScoopWay, fewest_table, usual_table

OUNCE_G, QUART_ML = 28.349523125, 946.352946
COUNTS = range(1, 2001)
SAMPLE = range(50, 2001, 50)
FRAME_MS = 1000.0 / 120.0
POWDER = mixing.powder_from(Composition())
RATE = MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=10 * OUNCE_G, volume_ml=2 * QUART_ML)
GROUP = PlanGroup(name="all", calves=109, volume_ml=2 * QUART_ML, volume_means=VolumeMeans.FINISHED_MIX, rate=RATE)
PLAN = Plan(id="p", farm_id="f", name="bench", groups=(GROUP,))
CART = Vessel(id="c", farm_id="f", name="cart", rim_volume_ml=60 * 4 * QUART_ML)
WAYS = [
    ScoopWay(scoop, scoop, way, mass, 2.0, 5.0)
    for scoop, level, mark in (("A", 1010.0, 907.2), ("B", 520.0, 453.6), ("C", 131.0, 113.4))
    for way, mass in ((FillWay.LEVEL, level), (FillWay.TO_MARK, mark))
]


def quick(tolerance: float) -> list[int]:
    table = batch.table(PLAN, POWDER, CART, COUNTS)
    per_batch = table.powder_g / table.batches
    return [int(n) for n in fewest_table(per_batch, WAYS, tolerance, most_scoopfuls=100_000).scoopfuls]


def as_told(tolerance: float) -> int:
    """What the screen asks for: the same table, to the line of one scoop where that is natural."""
    table = batch.table(PLAN, POWDER, CART, COUNTS)
    return len(usual_table(table.powder_g / table.batches, WAYS, tolerance).scoopfuls)


def best_of(target: float, tolerance: float, first_n: int) -> int:
    """Fewest scoopfuls for one target: one loop inside the other."""
    allowed, masses = tolerance * target, [w.mass_g for w in WAYS]
    n = first_n
    while n * min(masses) <= target + allowed:
        for mass in masses:
            if abs(n * mass - target) <= allowed:
                return n
        for one, other in combinations(masses, 2):
            for a in range(1, n):
                if abs(a * one + (n - a) * other - target) <= allowed:
                    return n
        n += 1
    return 0


def loop(counts: Sequence[int], tolerance: float, patient: bool) -> list[int]:
    found = []
    for calves in counts:
        mix = batch.group_mix(GROUP, calves, POWDER, PLAN.water_temperature_c)
        batches = max(1, math.ceil(mix.volume_ml / (CART.rim_volume_ml * CART.usable_share)))
        target = mix.powder_g / batches
        start = max(1, math.ceil(target * (1 - tolerance) / 1010.0)) if patient else 1
        found.append(best_of(target, tolerance, start))
    return found


def seconds(work: Callable[[], object], repeats: int) -> float:
    times = []
    for _ in range(repeats):
        start = perf_counter()
        work()
        times.append(perf_counter() - start)
    return min(times)


def main() -> None:
    print(f"{len(COUNTS)} counts x {len(WAYS)} kinds of fill, water, powder, batches and scoopfuls, one core")
    for tolerance in (0.02, 0.005, 0.002):
        fast = seconds(partial(quick, tolerance), 15)
        told = seconds(partial(as_told, tolerance), 15)
        patient = seconds(partial(loop, COUNTS, tolerance, True), 1)
        plain = seconds(partial(loop, SAMPLE, tolerance, False), 1) * len(COUNTS) / len(SAMPLE)
        assert quick(tolerance) == loop(COUNTS, tolerance, True)
        print(
            f"tolerance {tolerance:.1%}: {fast * 1e3:.2f} ms, {fast * 1e3 / FRAME_MS:.2f} of a 120 Hz frame; "
            f"as told {told * 1e3:.2f} ms; patient loop {patient * 1e3:.0f} ms = {patient / fast:.0f} x; "
            f"plain loop {plain * 1e3:.0f} ms = {plain / fast:.0f} x"
        )


if __name__ == "__main__":
    main()
