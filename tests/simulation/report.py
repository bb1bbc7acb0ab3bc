"""All simulations, one after the other, as a page of Markdown."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

import numpy as np

from . import coverage, flags, keeping, procedure
from .coverage import Covered
from .farm import TENTH_OF_AN_OUNCE_G, World
from .procedure import Outcome

MAIN = World(0.01, 0.015, 1.0)
OTHERS = (
    World(0.01, 0.015, TENTH_OF_AN_OUNCE_G),
    World(0.005, 0.015, 1.0),
    World(0.02, 0.015, 1.0),
    World(0.01, 0.03, 1.0),
)
FARMS = 100


def report(lots: int, seed: int) -> str:
    """The whole page; `lots` weigh-ins for each design, fewer where the program itself runs each."""
    rng = np.random.default_rng(seed)
    parts = [
        "# What simulated weigh-ins show\n",
        f"Made by `python -m tests.simulation --lots {lots} --seed {seed}`. Lots differ by 5 %; readings are rounded, "
        "empty and full.\n",
        _without_history(rng, lots),
        _with_history(rng, lots),
        _few_bags(rng, lots),
        _flags(rng, max(200, lots // 4)),
        _keeping(rng, max(60, lots // 20)),
        _procedure(rng, max(60, lots // 5)),
        _first_fills(rng, max(200, lots // 4)),
    ]
    return "\n".join(parts)


def table(head: Sequence[str], rows: Iterable[Sequence[str]]) -> str:
    lines = [f"| {' | '.join(head)} |", f"| {' | '.join('---' for _ in head)} |"]
    return "\n".join([*lines, *(f"| {' | '.join(row)} |" for row in rows)]) + "\n"


def percent(share: float, digits: int = 1) -> str:
    return f"{100 * share:.{digits}f} %"


def spreads(world: World) -> tuple[str, str, str]:
    step = "0.1 oz" if world.step_g > 2 else f"{world.step_g:g} g"
    return f"{100 * world.bag_spread:g} %", f"{100 * world.fill_spread:g} %", step


def _summary(found: list[Covered]) -> str:
    covered = [c.covered for c in found]
    within = sum(0.94 <= c <= 0.96 for c in covered)
    ends = f"lowest {percent(min(covered), 2)}, highest {percent(max(covered), 2)}"
    return f"{within} of {len(found)} cases cover 94 to 96 %; {ends}."


def _by_design(found: list[Covered]) -> str:
    designs = sorted({(c.bags, c.each) for c in found})
    rows = []
    for bags, each in designs:
        cases = [c for c in found if (c.bags, c.each) == (bags, each)]
        low, high = min(c.covered for c in cases), max(c.covered for c in cases)
        widths = [c.half_width for c in cases if c.world.bag_spread == 0.01 and c.world.fill_spread == 0.015]
        rows.append((f"{bags} × {each}", percent(low), percent(high), f"± {percent(sum(widths) / len(widths))}"))
    return table(("bags × fills", "lowest cover", "highest cover", "mean half-width at 1 % and 1.5 %"), rows)


def _without_history(rng: np.random.Generator, lots: int) -> str:
    found = coverage.without_history(rng, lots)
    once = coverage.without_history(rng, lots, tared_once=True)
    return (
        "## 95 % intervals, three bags or more, no history\n\n"
        f"Bag spreads 0.5, 1, 2 %, scoopful spreads 1.5, 3 %, scales 0.1 oz and 1 g. {_summary(found)}\n\n"
        f"{_by_design(found)}\nContainer brought to zero once for all fills: {_summary(once)}\n"
    )


def _with_history(rng: np.random.Generator, lots: int) -> str:
    found = coverage.with_history(rng, lots)
    others = {d: coverage.with_history(rng, lots // 2, d) for d in ((3, 2), (3, 3), (4, 1))}
    lines = "".join(f"\nHistory of {b} bags × {n} fills: {_summary(o)}\n" for (b, n), o in others.items())
    return (
        "## 95 % intervals with a history of ten lots of four bags × two fills\n\n"
        f"{_summary(found)}\n\n{_by_design(found)}{lines}"
    )


def _few_bags(rng: np.random.Generator, lots: int) -> str:
    found = [c for c in coverage.without_history(rng, lots, range(1, 3)) if c.world.step_g == 1.0]
    cases = sorted({(c.world.fill_spread, c.bags, c.each) for c in found})
    rows = []
    for fill, bags, each in cases:
        here = {c.world.bag_spread: c for c in found if (c.world.fill_spread, c.bags, c.each) == (fill, bags, each)}
        rows.append(
            (
                f"{bags} × {each}",
                f"{100 * fill:g} %",
                *(percent(here[b].covered) for b in (0.005, 0.01, 0.02)),
                f"± {percent(here[0.01].half_width)}",
            )
        )
    head = ("bags × fills", "scoopful spread", "bags 0.5 %", "bags 1 %", "bags 2 %", "mean half-width")
    return (
        "## One or two bags, no history: the assumed bag spread of 2 %\n\n"
        "How often the interval holds the truth, by the true spread between bags. It is cautious by design.\n\n"
        f"{table(head, rows)}"
    )


def _flags(rng: np.random.Generator, many: int) -> str:
    rows = []
    for world in (World(0.01, 0.015, 0.01), MAIN, OTHERS[0]):
        for design in flags.DESIGNS:
            found = flags.rates(rng, world, many, design)
            step = "0.1 oz" if world.step_g > 2 else f"{world.step_g:g} g"
            rows.append((" + ".join(map(str, design)), step, percent(found.clean), percent(found.found)))
    head = ("fills of each bag", "display step", "flagged though clean", "found when one is 15 % off")
    return f"## Odd fills, nominal 5 %\n\n{table(head, rows)}"


def _first_fills(rng: np.random.Generator, many: int) -> str:
    rows = []
    for world in (MAIN, World(0.02, 0.03, 1.0), World(0.03, 0.02, 1.0)):
        for design in flags.FIRST_FILLS:
            light, heavy = (flags.rates(rng, world, many, design, slip, last=True) for slip in (0.08, 0.15))
            shares = (percent(share) for share in (light.clean, light.found, heavy.found))
            rows.append((" + ".join(map(str, design)), *spreads(world)[:2], *shares))
    head = ("fills of each bag", "bag spread", "scoopful spread", "flagged though clean", "8 % off", "15 % off")
    return (
        "## The fill just typed, no history\n\n"
        f"How often it is flagged at once, by how far it is off; display step 1 g.\n\n{table(head, rows)}"
    )


def _keeping(rng: np.random.Generator, many: int) -> str:
    text = "## Keep or move an old line, tolerance 2 %, bags 1 %, scoopfuls 1.5 %\n"
    for words, histories in (
        ("No history", [None]),
        ("History of ten lots", [procedure.earlier_lots(rng, MAIN) for _ in range(FARMS)]),
    ):
        rows = []
        for offset in keeping.OFFSETS:
            one = keeping.operating_point(rng, MAIN, histories, offset, many, follow=False)
            end = keeping.operating_point(rng, MAIN, histories, offset, many, follow=True)
            rows.append(
                (
                    f"{100 * offset:+.1f} %",
                    *(percent(x) for x in (one.keep, one.move, one.wrong)),
                    *(percent(x) for x in (end.keep, end.move, end.undecided, end.wrong)),
                    f"{end.fills:.1f}",
                )
            )
        head = ("truly off", "keep", "move", "wrong", "keep then", "move then", "open then", "wrong then", "fills")
        text += f"\n{words}: after four bags × two fills, then as the advice asks (at most 24 fills).\n\n"
        text += table(head, rows)
    return text


def outcomes(
    rng: np.random.Generator, world: World, many: int, *, with_history: bool, carry_over: bool
) -> list[Outcome]:
    """Whole procedures of `many` lots on several farms."""
    pasts = [procedure.earlier_lots(rng, world) if with_history else None for _ in range(FARMS)]
    return [procedure.whole_procedure(rng, world, pasts[i % FARMS], carry_over=carry_over) for i in range(many)]


def _outcome_row(world: World, found: list[Outcome], words: str) -> tuple[str, ...]:
    n = len(found)
    return (
        *spreads(world),
        words,
        percent(sum(abs(o.off_share) <= procedure.TOLERANCE for o in found) / n, 2),
        f"{sum(o.bags for o in found) / n:.1f}",
        f"{sum(o.level_fills for o in found) / n:.1f}",
        f"{sum(o.all_fills for o in found) / n:.1f}",
        percent(sum(o.level_covered for o in found) / n),
    )


def _procedure(rng: np.random.Generator, many: int) -> str:
    rows = []
    for world in (MAIN, *OTHERS):
        lots = many if world in (MAIN, OTHERS[0]) else max(30, many // 8)
        for with_history in (False, True):
            for carry_over in (True, False) if world == MAIN else (True,):
                words = f"{'ten lots' if with_history else 'none'}, {'kept' if carry_over else 'anew'}"
                found = outcomes(rng, world, lots, with_history=with_history, carry_over=carry_over)
                rows.append(_outcome_row(world, found, words))
    head = (
        "bags", "scoopfuls", "scale", "history, fills after a move", "feeding within 2 %",
        "bags opened", "level fills", "all fills", "level interval holds at the stop",
    )  # fmt: skip
    old, one = procedure.old_line_kept(rng, 200_000), procedure.one_fill_per_lot(rng, MAIN, 200_000)
    return (
        "## The whole procedure, stopped by the program's own advice\n\n"
        f"{table(head, rows)}\nFor comparison, bags 1 %, scoopfuls 1.5 %: the line of the lot before kept, "
        f"{percent(old)} of lots within 2 %; the line moved by one fill a lot, {percent(one)}.\n"
    )
