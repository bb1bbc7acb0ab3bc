"""The control chart of a season's lots: each kind of powder about its own middle, limits by each lot's own doubt.

Shares throughout: a lot's density ÷ the middle of its kind − 1, in logarithms.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from enum import StrEnum
from functools import cached_property
from typing import Protocol

import numpy as np
from numpy.typing import ArrayLike, NDArray

from calibrator.model import LotPoints
from calibrator.science.charts import (
    D2_OF_TWO,
    D4_OF_TWO,
    LIMIT_SD,
    RUN_LENGTH,
    running_means_from_first,
    running_reaches,
    weights_so_far,
)
from calibrator.science.lot_kinds import Kind, OfKind, by_kind, by_kind_told
from calibrator.science.stats import mean_of
from calibrator.values import dataclass

Floats = NDArray[np.float64]
Bools = NDArray[np.bool_]


FEWEST_FOR_LIMITS = 3
"""Of two lots limits and middles would be drawn as lone ticks, which tell nothing."""


class Weighed(OfKind, Protocol):
    """What the chart must know of a lot."""

    @property
    def density_g_per_ml(self) -> float: ...

    @property
    def level_mean_g(self) -> float: ...

    @property
    def level_u_g(self) -> float: ...


class Rule(StrEnum):
    """Why a lot is marked."""

    BEYOND = "beyond"  # outside its limits
    STEP = "step"  # farther from the lot before than lots are from each other
    RUN = "run"  # the eighth or later in a row on one side of the middle
    DRIFT = "drift"  # the running mean is outside its limits


@dataclass(frozen=True)
class Charted:
    """One lot on the chart. `off` is its share from the middle; limits and running mean are shares too.

    `kind` numbers the kinds in the order in which they came. Limits are None where no two lots of one kind
    were ever compared.
    """

    kind: int
    middle_g_per_ml: float
    off: float
    reach: float | None
    running: float
    running_reach: float | None
    rules: tuple[Rule, ...]

    @property
    def low_g_per_ml(self) -> float | None:
        return None if self.reach is None else self.middle_g_per_ml * math.exp(-self.reach)

    @property
    def high_g_per_ml(self) -> float | None:
        return None if self.reach is None else self.middle_g_per_ml * math.exp(self.reach)

    @property
    def running_g_per_ml(self) -> float:
        return self.middle_g_per_ml * math.exp(self.running)


@dataclass(frozen=True, eq=False)
class LotChart:
    """The lots in the order given, a column for each figure of `Charted`; not-a-number stands for None.

    `fired` tells of each rule at which lots it fires. `lot_sd` is the spread between lots of one kind beyond what
    weighing explains, as a share; None where it cannot be told.
    """

    kinds: NDArray[np.intp]
    middles_g_per_ml: Floats
    offs: Floats
    reaches: Floats
    running: Floats
    running_reaches: Floats
    fired: Mapping[Rule, Bools]
    lot_sd: float | None

    @property
    def lows_g_per_ml(self) -> Floats:
        return self.middles_g_per_ml * np.exp(-self.reaches)

    @property
    def highs_g_per_ml(self) -> Floats:
        return self.middles_g_per_ml * np.exp(self.reaches)

    @property
    def running_g_per_ml(self) -> Floats:
        return self.middles_g_per_ml * np.exp(self.running)

    @cached_property
    def marked(self) -> Bools:
        """At which lots any rule fires."""
        marked: Bools = np.logical_or.reduce(list(self.fired.values()))
        return marked

    def rules(self, place: int) -> tuple[Rule, ...]:
        """The rules that fire at one lot."""
        return tuple(rule for rule, fired in self.fired.items() if fired[place]) if self.marked[place] else ()

    @cached_property
    def lots(self) -> tuple[Charted, ...]:
        """Lot by lot."""
        columns = (self.kinds, self.middles_g_per_ml, self.offs, self.reaches, self.running, self.running_reaches)
        rows = zip(*(column.tolist() for column in columns), strict=True)
        return tuple(
            Charted(kind, middle, off, _known(reach), running, _known(running_reach), self.rules(place))
            for place, (kind, middle, off, reach, running, running_reach) in enumerate(rows)
        )


def _known(value: float) -> float | None:
    return None if math.isnan(value) else value


def lot_chart(lots: Sequence[Weighed]) -> LotChart:
    """Individuals chart and running mean of lots in their order.

    Montgomery, Introduction to Statistical Quality Control, 6.4 (limits mean ± 3·MR̄/1.128), and NIST/SEMATECH
    e-Handbook, 6.3.2.4, with three additions. The running mean begins at the first lot of its kind in place of the
    middle, its limits with it, which marks the same lots. The moving ranges are taken within kinds and pooled, so
    that another product does not widen the limits. Of the spread that they show, the mean variance of weighing is
    taken off and each lot's own put in its place, so that a lot known less well has wider limits; where all lots are
    known alike the limits are the plain ones.
    """
    us = [lot.level_u_g / lot.level_mean_g for lot in lots]
    return _chart([lot.density_g_per_ml for lot in lots], us, by_kind(lots))


def points_chart(points: LotPoints) -> LotChart:
    """The same of lots in columns."""
    kinds = by_kind_told(points.column("product"), points.column("agglomerated"))
    us = np.asarray(points.column("level_u_g"), dtype=float) / np.asarray(points.column("level_mean_g"), dtype=float)
    return _chart(points.column("density_g_per_ml"), us, kinds)


def _chart(densities: ArrayLike, us_told: ArrayLike, by_kinds: Mapping[Kind, Sequence[int]]) -> LotChart:
    """Densities and doubts of weighing (shares) lot by lot, and the places of each kind."""
    logs, us = np.log(np.asarray(densities, dtype=float)), np.asarray(us_told, dtype=float)
    groups = [np.asarray(places, dtype=np.intp) for places in by_kinds.values()]
    between2 = _between2(logs, us, groups)
    kinds, fired = np.zeros(len(logs), dtype=np.intp), {rule: np.zeros(len(logs), dtype=np.bool_) for rule in Rule}
    columns = np.zeros((5, len(logs)))
    for kind, places in enumerate(groups):
        kinds[places] = kind
        own = _of_kind(logs[places], us[places], between2)
        columns[:, places] = own
        if between2 is not None and len(places) > 1:
            for rule, fires in _fired(own, us[places], between2).items():
                fired[rule][places] = fires
    middles, offs, reaches, running, running_reaches = columns
    lot_sd = None if between2 is None else math.sqrt(between2)
    return LotChart(kinds, middles, offs, reaches, running, running_reaches, fired, lot_sd)


def _between2(logs: Floats, us: Floats, groups: Sequence[NDArray[np.intp]]) -> float | None:
    """Variance between lots of one kind, that of weighing taken off."""
    if all(len(places) < 2 for places in groups):
        return None
    ranges = np.concatenate([np.abs(np.diff(logs[places])) for places in groups])
    weighing2 = np.concatenate([(us[places][1:] ** 2 + us[places][:-1] ** 2) / 2 for places in groups])
    return between_lots2((mean_of(ranges.tolist()) / D2_OF_TWO) ** 2, weighing2.tolist())


def between_lots2(seen2: float, weighing2: Sequence[float]) -> float:
    """Variance between lots: the variance that they show less the mean variance of weighing, never below zero.

    Source: Hedges 1983, Psychol. Bull. 93:388, the unweighted estimate by moments. There `seen2` is the sample
    variance; the chart puts that of the moving ranges in its place (Montgomery, 6.4), which a drift or another level
    of density does not widen. Raises CannotCompute for no variance of weighing.
    """
    return max(0.0, seen2 - mean_of(weighing2))


def _of_kind(logs: Floats, us: Floats, between2: float | None) -> Floats:
    """Middle, offs, reaches, running means and their reaches of the lots of one kind, a row each."""
    middle = mean_of(logs.tolist())
    offs = logs - middle
    running = np.asarray(running_means_from_first(offs.tolist()))
    if between2 is None or len(logs) < 2:
        reaches = of_running = np.full(len(logs), math.nan)
    else:
        own2 = between2 + us * us
        reaches, of_running = LIMIT_SD * np.sqrt(own2), np.asarray(running_reaches(own2.tolist()))
        of_running /= weights_so_far(len(logs))
    return np.stack([np.full(len(logs), math.exp(middle)), offs, reaches, running, of_running])


def _fired(own: Floats, us: Floats, between2: float) -> dict[Rule, Bools]:
    """Where each rule fires, in lots of one kind."""
    _, offs, reaches, running, running_reaches = own
    step_reaches = D4_OF_TWO * D2_OF_TWO * np.sqrt(between2 + (us[1:] ** 2 + us[:-1] ** 2) / 2)
    return {
        Rule.BEYOND: np.abs(offs) > reaches,
        Rule.STEP: np.append(False, np.abs(np.diff(offs)) > step_reaches),
        Rule.RUN: _run_lengths(offs) >= RUN_LENGTH,
        Rule.DRIFT: np.abs(running) > running_reaches,
    }


def _run_lengths(offs: Floats) -> NDArray[np.intp]:
    """How many lots in a row, each with those before it, lie on its side of the middle; 0 for one right on it."""
    sides, places = np.sign(offs), np.arange(len(offs))
    begins = np.append(True, sides[1:] != sides[:-1])
    lengths: NDArray[np.intp] = places - np.maximum.accumulate(np.where(begins, places, 0)) + 1
    return np.where(sides == 0, 0, lengths)
