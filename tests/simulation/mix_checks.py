"""Invented seasons of mix checks: how soon a lot that shifted is found out, how often a right one is accused.

A season has three lots of `CHECKS` checks each. The farm has an own line from six weighed mixes, drawn anew for
each season; the refractometer's zero wanders from week to week; three drops are read each time; batches differ
by what scoops and water do. The third lot is heavier by `shift` and is scooped to the old line.

`python -m tests.simulation.mix_checks` runs the long version and writes MIX_CHECKS.md.
"""

from __future__ import annotations

import random
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from statistics import median, quantiles

from calibrator.science.check import Verdict, judge
from calibrator.science.check_season import Point, Watched, off_share, watch
from calibrator.science.own_line import Line, Reference, farm_line
from calibrator.science.refractometer import Checked, Refractometer, brix
from calibrator.science.solids import Solids, by_own_line

TARGET, CHECKS = 0.13, 12
DROP_SD, ZERO_SD, BATCH_SD, POWDER_SD = 0.2, 0.08, 0.02, 0.08
LOTS = ("first", "second", "third")
TOOL = Refractometer(0.2, water=Checked(0.0, 0.0, 2.0))
RESULTS = Path(__file__).with_name("MIX_CHECKS.md")


def shown(dice: random.Random, share: float, zero: float, count: int = 3) -> list[float]:
    """Drops to the nearest division as a person reads them; this powder reads 1.6 below its solids."""
    own = dice.gauss(0, POWDER_SD)
    return [round((100 * share - 1.6 + zero + own + dice.gauss(0, DROP_SD)) / 0.2) * 0.2 for _ in range(count)]


def own_line(dice: random.Random) -> Line:
    """Six weighed mixes between 10 and 16 %."""
    return farm_line(
        [Reference(s, brix(shown(dice, s, 0.0), TOOL).value) for s in (0.10, 0.115, 0.13, 0.13, 0.145, 0.16)]
    )


def season(dice: random.Random, shift: float) -> Iterator[tuple[str, float, Solids]]:
    """Each check: its lot, the true solids, what was read."""
    line = own_line(dice)
    for lot in LOTS:
        heavier = 1 + (shift if lot == LOTS[-1] else 0.0)
        zero = dice.gauss(0, ZERO_SD)
        for _ in range(CHECKS):
            ratio = TARGET / (1 - TARGET) * heavier * (1 + dice.gauss(0, BATCH_SD))
            true = ratio / (1 + ratio)
            yield lot, true, by_own_line(brix(shown(dice, true, zero), TOOL), line)


@dataclass(frozen=True)
class FoundOut:
    """Of all seasons: after how many checks the third lot was found (CHECKS + 1: not at all), what share of
    right lots was accused, how often the interval held the truth, what share of verdicts was plainly wrong."""

    shift: float
    after: tuple[int, ...]
    accused: float
    covered: float
    wrong: float

    @property
    def found(self) -> float:
        return sum(n <= CHECKS for n in self.after) / len(self.after)

    @property
    def middle(self) -> float:
        return median(self.after)

    @property
    def ninety(self) -> float:
        """By this check nine seasons of ten had found it."""
        return quantiles(self.after, n=10)[8]


def run(seed: int, seasons: int, shift: float) -> FoundOut:
    """So many seasons from one seed."""
    dice = random.Random(seed)
    after: list[int] = []
    accused = covered = wrong = 0
    for _ in range(seasons):
        checks = list(season(dice, shift))
        watched = watch([Point(lot, off_share(read.share, TARGET)) for lot, _, read in checks])
        accused += sum(_first_found(watched, lot) is not None for lot in LOTS[:-1])
        after.append(_first_found(watched, LOTS[-1]) or CHECKS + 1)
        covered += sum(read.low <= true <= read.high for _, true, read in checks)
        wrong += sum(_wrong(true, read) for _, true, read in checks)
    every = seasons * CHECKS * len(LOTS)
    return FoundOut(shift, tuple(after), accused / (2 * seasons), covered / every, wrong / every)


def _first_found(watched: Sequence[Watched], lot_id: str) -> int | None:
    """After how many checks of a lot it was found out to be off; None where it was not."""
    own = [w for w in watched if w.point.lot_id == lot_id]
    return next((n for n, w in enumerate(own, start=1) if w.found), None)


def _wrong(true: float, read: Solids) -> bool:
    """Whether a verdict says inside of a mix that is not, or outside of one that is."""
    verdict = judge(read, TARGET).verdict
    inside = abs(true - TARGET) <= 0.005
    return (verdict is Verdict.INSIDE and not inside) or (verdict.outside and inside)


def table(found: list[FoundOut]) -> str:
    """The results for reading."""
    lines = [
        "# A shifted lot is found out by the checks",
        "",
        f"Seasons of three lots, {CHECKS} checks each, three drops a check; the third lot is heavier than its line is "
        "for.",
        "Made by `python -m tests.simulation.mix_checks`.",
        "",
        "| shift of the powder | found within its lot | half of the seasons by check | nine of ten by check "
        "| right lots accused | intervals that held | verdicts plainly wrong |",
        "| ---: | ---: | ---: | ---: | ---: | ---: | ---: |",
    ]
    for one in found:
        late = f"{one.ninety:.0f}" if one.ninety <= CHECKS else "later"
        half = f"{one.middle:.0f}" if one.middle <= CHECKS else "later"
        lines.append(
            f"| {100 * one.shift:.0f} % | {100 * one.found:.0f} % | {half} | {late} | {100 * one.accused:.1f} % "
            f"| {100 * one.covered:.1f} % | {100 * one.wrong:.1f} % |"
        )
    return "\n".join(lines) + "\n"


def main() -> None:
    text = table([run(2026, 600, shift) for shift in (0.0, 0.02, 0.03, 0.05, 0.08, 0.12)])
    RESULTS.write_text(text, encoding="utf-8")
    print(text)


if __name__ == "__main__":
    main()
