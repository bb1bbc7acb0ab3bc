"""Flags fills that are oddly far from the others. It only flags: a person decides, with a reason.

A fill is judged inside its bag, so that a bag that differs is not held against its fills: the largest
standardised residual with that fill left out of the deviation, by Bonferroni over all the fills that can be
told apart (Grubbs' test is this very test in one bag). Where a bag has one fill only, it is judged against
the other bags' means. Odd at 5 % for the whole set of fills.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from calibrator.science.nested import BagMean, Table, Weighed
from calibrator.science.spread import BagHistory
from calibrator.science.stats import deletion_t, t_quantile

ALPHA = 0.05

Suspect = tuple[float, float, int]  # |t|, its degrees of freedom, index of the fill


def _inside(fills: Sequence[Weighed], t: Table, bag: BagMean, ss: float, df: int, least: float) -> list[Suspect]:
    own = [i for i, f in enumerate(fills) if f.bag == bag.bag]
    if len(own) == 2:  # both lie equally far from their mean: the one farther from the lot is the odd one
        own = [max(own, key=lambda i: abs(fills[i].mass_g - t.mean_g))]
    found = []
    for i in own:
        left = 1 / fills[i].scoopfuls - 1 / bag.scoopfuls
        found.append((deletion_t(fills[i].mass_g - bag.mean_g, left, ss, df, least), df - 1.0, i))
    return found


def _alone(t: Table, bag: BagMean, index: int, least: float) -> Suspect:
    others = [b for b in t.bags if b.bag != bag.bag]
    n = len(others)
    mean = math.fsum(b.mean_g for b in others) / n
    ms = math.fsum((b.mean_g - mean) ** 2 for b in others) / (n - 1)
    per_fill = math.fsum(1 / b.scoopfuls for b in others) / n
    own = ms + max(0.0, 1 / bag.scoopfuls - per_fill) * t.fill_ms
    variance = max(own, least) + ms / n
    off = abs(bag.mean_g - mean)
    if off <= 1e-9 * mean:
        return (0.0, n - 1.0, index)
    return (off / math.sqrt(variance) if variance > 0 else math.inf, n - 1.0, index)


def _suspects(fills: Sequence[Weighed], t: Table, least: float, history: BagHistory | None) -> list[Suspect]:
    ss, df = t.fill_ms * t.fill_df, t.fill_df
    if history is not None:
        ss, df = ss + history.fill_ss * t.mean_g**2, df + history.fill_df
    found: list[Suspect] = []
    for bag in t.bags:
        if bag.weighings > 1:
            found += _inside(fills, t, bag, ss, df, least) if df > 1 else []
        elif len(t.bags) > 2:
            index = next(i for i, f in enumerate(fills) if f.bag == bag.bag)
            found.append(_alone(t, bag, index, least))
    return found


def odd_fills(
    fills: Sequence[Weighed], t: Table, reading_u_g: float = 0.0, history: BagHistory | None = None
) -> tuple[int, ...]:
    """Indices of the fills to look at again, most often none. `t` is the table of these fills.

    The other fills are never taken to spread less than `reading_u_g`, the rounding of one net reading: two
    equal weights on a coarse display do not make the third one odd.

    Source: Grubbs 1969, Technometrics 11:1; for residuals, Cook and Weisberg 1982, 2.2.2.
    """
    suspects = _suspects(fills, t, reading_u_g**2, history)
    if not suspects:
        return ()
    p = 1 - ALPHA / (2 * len(suspects))
    critical = {df: t_quantile(p, df) for df in {df for _, df, _ in suspects}}
    return tuple(sorted(i for off, df, i in suspects if off > critical[df]))
