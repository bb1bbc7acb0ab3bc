"""What happened in a season, found in its figures: another powder, another scoop, a humid spell, a lot out of line.

Findings are plain values in the order in which they happened; the screens put them into words.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from statistics import median

import numpy as np
from numpy.typing import NDArray

from calibrator.model import BagSum, SeasonLot
from calibrator.science.bag_sums import Scatter, scatter_of
from calibrator.science.components import f_tail
from calibrator.science.lot_chart import LotChart, Rule, lot_chart
from calibrator.science.lot_kinds import Kind, by_kind, in_order, kind_of
from calibrator.science.lot_step import Grouped, Step, grouped, step_between
from calibrator.science.stats import mean_of
from calibrator.values import dataclass

HUMID_PCT = 70.0
"""From so much relative humidity at the weigh-in on, a spell is called humid: common practice, no source."""
HUMID_ABOVE_USUAL_PCT = 10.0
SCATTER_P = 0.05
FEWEST_TO_JUDGE = 5
"""Fewer lots have no *as always* yet to be held against: common practice, no source."""


@dataclass(frozen=True)
class NewPowder:
    """A kind of powder that came for the first time, beside the kind before it. `at` is its first lot, `last` the
    last one of the kind before. `step` is None where too few lots tell it."""

    at: SeasonLot
    last: SeasonLot
    before: Kind
    after: Kind
    lots: int
    step: Step | None

    @property
    def agglomerated(self) -> bool:
        """Did agglomerated powder take the place of one that is not?"""
        return self.after.agglomerated is True and self.before.agglomerated is not True


@dataclass(frozen=True)
class NewScoop:
    """A scoop that took another's place for good. The reaches are mean half-widths of the 95 % interval of a
    density, as shares, before and after; `step` is of densities of the same kind, None where it cannot be told."""

    at: SeasonLot
    last: SeasonLot
    step: Step | None
    reach_before: float
    reach_after: float


@dataclass(frozen=True)
class HumidSpell:
    """Lots weighed in humid air, one after another. `step` is against the other lots of their kind; `scatter`
    that of their fills, `usual_scatter` that of the others, `scatter_p` the chance of so much more by chance."""

    lots: tuple[SeasonLot, ...]
    humidity_pct: float
    usual_pct: float
    step: Step | None
    scatter: Scatter
    usual_scatter: Scatter
    scatter_p: float | None

    @property
    def at(self) -> SeasonLot:
        return self.lots[0]

    @property
    def scatters_more(self) -> bool:
        return self.scatter_p is not None and self.scatter_p < SCATTER_P


@dataclass(frozen=True)
class OutOfLine:
    """A lot at which rules of the chart fire. `off` is its share from the middle of its kind."""

    at: SeasonLot
    off: float
    rules: tuple[Rule, ...]


Finding = NewPowder | NewScoop | HumidSpell | OutOfLine


@dataclass(frozen=True)
class Season:
    """The lots in their order, the chart, and what was found, the oldest first."""

    lots: tuple[SeasonLot, ...]
    chart: LotChart
    findings: tuple[Finding, ...]


def season(lots: Sequence[SeasonLot], sums: Mapping[str, Sequence[BagSum]]) -> Season:
    """All that happened. `sums` are the bags of each weigh-in (`bag_sums.by_weigh_in`); they may be missing."""
    ordered = in_order(lots)
    chart = lot_chart(ordered)
    spells = _humid_spells(ordered, sums)
    told: list[Finding] = [*_new_powders(ordered), *_new_scoops(ordered, spells), *spells]
    told += _out_of_line(ordered, chart)
    return Season(tuple(ordered), chart, tuple(sorted(told, key=_when)))


def _when(finding: Finding) -> float:
    return finding.at.at.timestamp()


def _new_powders(lots: Sequence[SeasonLot]) -> list[NewPowder]:
    found = []
    groups = by_kind(lots)
    for kind, places in list(groups.items())[1:]:
        last = lots[places[0] - 1]
        before = kind_of(last)
        earlier = grouped((lots[p] for p in groups[before] if p < places[0]), of_kinds=False)
        step = step_between(grouped((lots[p] for p in places), of_kinds=False), earlier)
        found.append(NewPowder(lots[places[0]], last, before, kind, len(places), step))
    return found


def _new_scoops(lots: Sequence[SeasonLot], spells: Sequence[HumidSpell]) -> list[NewScoop]:
    """Lots of humid spells are left out of the step: they would pass for the scoop."""
    humid = {lot.sign_off_id for spell in spells for lot in spell.lots}
    places: dict[str, list[int]] = {}
    for place, lot in enumerate(lots):
        places.setdefault(lot.scoop_id, []).append(place)
    found = []
    for scoop, own in places.items():
        before = lots[own[0] - 1].scoop_id if own[0] else scoop
        if before == scoop or places[before][-1] > own[0]:
            continue  # the first scoop, or one used beside another
        after, earlier = (
            grouped(lots[p] for p in side if lots[p].sign_off_id not in humid) for side in (own, places[before])
        )
        step = step_between(after, earlier)
        found.append(
            NewScoop(lots[own[0]], lots[places[before][-1]], step, _reach(lots, places[before]), _reach(lots, own))
        )
    return found


def _reach(lots: Sequence[SeasonLot], places: Sequence[int]) -> float:
    spans = [(lots[p].density_high_g_per_ml - lots[p].density_low_g_per_ml) / lots[p].density_g_per_ml for p in places]
    return mean_of(spans) / 2


def _humid_spells(lots: Sequence[SeasonLot], sums: Mapping[str, Sequence[BagSum]]) -> list[HumidSpell]:
    told = [lot.humidity_pct for lot in lots if lot.humidity_pct is not None]
    if len(told) < 2:
        return []
    usual = median(told)
    least = max(HUMID_PCT, usual + HUMID_ABOVE_USUAL_PCT)
    spells: list[list[int]] = []
    for place, lot in enumerate(lots):
        if lot.humidity_pct is None or lot.humidity_pct < least:
            continue
        if spells and spells[-1][-1] == place - 1:
            spells[-1].append(place)
        else:
            spells.append([place])
    humid = {place for spell in spells for place in spell}
    dry = [lot for place, lot in enumerate(lots) if place not in humid]
    usual_scatter, dry_lots = scatter_of(dry, sums), grouped(dry)
    return [_spell([lots[p] for p in spell], dry_lots, usual, usual_scatter, sums) for spell in spells]


def _spell(
    inside: list[SeasonLot],
    dry: Grouped,
    usual: float,
    usual_scatter: Scatter,
    sums: Mapping[str, Sequence[BagSum]],
) -> HumidSpell:
    own = grouped(inside)
    step = step_between(own, {kind: dry[kind] for kind in own if kind in dry})
    scatter = scatter_of(inside, sums)
    p = None
    if scatter.degrees_of_freedom and usual_scatter.degrees_of_freedom and usual_scatter.variance > 0:
        ratio = scatter.variance / usual_scatter.variance
        p = f_tail(ratio, scatter.degrees_of_freedom, usual_scatter.degrees_of_freedom)
    humidity = mean_of([lot.humidity_pct or 0.0 for lot in inside])
    return HumidSpell(tuple(inside), humidity, usual, step, scatter, usual_scatter, p)


def _out_of_line(lots: Sequence[SeasonLot], chart: LotChart) -> list[OutOfLine]:
    """Lots at which a rule begins to fire; a run or a drift that goes on is told once."""
    fresh = {rule: fired if rule in _EACH else begun(fired, chart.kinds) for rule, fired in chart.fired.items()}
    places = np.flatnonzero(np.logical_or.reduce(list(fresh.values())))
    return [
        OutOfLine(lots[p], math.expm1(chart.offs[p]), tuple(rule for rule, at in fresh.items() if at[p]))
        for p in places.tolist()
    ]


def begun(fired: NDArray[np.bool_], kinds: NDArray[np.intp]) -> NDArray[np.bool_]:
    """Where a rule fires that did not at the lot before of the same kind."""
    order = np.argsort(kinds, kind="stable")
    own, sorted_kinds = fired[order], kinds[order]
    goes_on = np.append(False, own[:-1] & (sorted_kinds[1:] == sorted_kinds[:-1])) if len(own) else own
    found = np.empty_like(fired)
    found[order] = own & ~goes_on
    return found


_EACH = {Rule.BEYOND, Rule.STEP}
