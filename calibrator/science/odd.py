"""Flags fills that are oddly far from the others. It only flags: a person decides, with a reason.

A fill is judged inside its bag, so that a bag that differs is not held against its fills: the largest
standardised residual with that fill left out of the deviation, by Bonferroni over all the fills that can be
told apart (Grubbs' test is this very test in one bag). Where a bag has one fill only, it is judged against
the other bags' means. Odd at 5 % for the whole set of fills.

Few fills can hardly say among themselves what is odd, and the first fill of a bag least. Until there are more, a fill
is odd too where it lies far from the others by what fills are known, or else assumed, to spread
(`spread_beforehand`): the second fill can be told already, though not which of the two went wrong. So is one that
is a tenth off all others together, however widely those spread: a slip of the pen rather than of the hand.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from calibrator.science.nested import BagMean, Table, Weighed, table
from calibrator.science.spread import BagHistory, spread_beforehand
from calibrator.science.stats import deletion_t, t_quantile

ALPHA = 0.05
FAR_SHARE = 0.1
"""Nobody who strikes level is off by so much: common practice, no source."""
FEW_FILLS = 12
"""Up to so many what is known beforehand counts too; more of them tell by themselves."""

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
    """
    among = odd_among_themselves(fills, t, reading_u_g, history)
    if not 1 < len(fills) <= FEW_FILLS:
        return among
    suspects = list(_beforehand(fills, t, reading_u_g**2, history))
    odd = _odd(suspects)
    if len(fills) > 2 and odd:  # the farthest alone: beside it a sound one may look odd
        odd = (max(suspect for suspect in suspects if suspect[2] in odd)[2],)
    return tuple(sorted({*among, *odd})) or _far(fills)


def _far(fills: Sequence[Weighed]) -> tuple[int, ...]:
    """The fill that lies a tenth off the mean of the others, the farthest where there are several; of two, both."""
    total, scoopfuls = math.fsum(f.mass_g * f.scoopfuls for f in fills), sum(f.scoopfuls for f in fills)
    off = {
        i: abs(f.mass_g * (scoopfuls - f.scoopfuls) / (total - f.mass_g * f.scoopfuls) - 1)
        for i, f in enumerate(fills)
        if scoopfuls > f.scoopfuls
    }
    far = [i for i, share in off.items() if share > FAR_SHARE]
    return tuple(far) if len(fills) == 2 else tuple(sorted(far, key=lambda i: off[i])[-1:])


def odd_among_themselves(
    fills: Sequence[Weighed], t: Table, reading_u_g: float = 0.0, history: BagHistory | None = None
) -> tuple[int, ...]:
    """Those that are odd by what these fills show, alone and within their bags, with earlier lots' fills.

    Source: Grubbs 1969, Technometrics 11:1; for residuals, Cook and Weisberg 1982, 2.2.2.
    """
    return _odd(_suspects(fills, t, reading_u_g**2, history))


def _odd(suspects: Sequence[Suspect]) -> tuple[int, ...]:
    if not suspects:
        return ()
    p = 1 - ALPHA / (2 * len(suspects))
    critical = {df: t_quantile(p, df) for df in {df for _, df, _ in suspects}}
    return tuple(sorted(i for off, df, i in suspects if off > critical[df]))


def _beforehand(fills: Sequence[Weighed], t: Table, least: float, history: BagHistory | None) -> Iterator[Suspect]:
    """Each fill beside its bag, or where it is its bag's only one beside the lot, as all the others have them.

    Source: Hahn and Meeker 1991, Statistical Intervals, 4.7, for one more value beside those before.
    """
    for i, fill in enumerate(fills):
        own = [f for f in fills if f.bag == fill.bag]
        if len(own) == 2 and len(t.bags) > 1 and fill is not max(own, key=lambda f: abs(f.mass_g - t.mean_g)):
            continue
        rest = table([f for k, f in enumerate(fills) if k != i])
        spread = spread_beforehand(rest, history)
        bag = next((b for b in rest.bags if b.bag == fill.bag), None)
        if bag is not None:
            beside, (share2, df) = bag.mean_g, spread.variance(0.0, 1 / fill.scoopfuls + 1 / bag.scoopfuls)
        else:
            n = len(rest.bags)
            beside, (share2, df) = rest.mean_g, spread.variance(1 + 1 / n, 1 / fill.scoopfuls + rest.per_fill / n)
        if share2 > 0:
            yield abs(fill.mass_g - beside) / math.sqrt(max(share2 * rest.mean_g**2, least)), df, i
