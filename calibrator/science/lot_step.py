"""How far the densities of some lots lie from those of others, kind by kind, from sums alone.

It is the least-squares fit of logarithms by a middle for each kind and one step for the lots inside; solved kind by
kind it takes no more work for twenty thousand lots than for twenty.
"""

from __future__ import annotations

import math
from collections.abc import Hashable, Iterable, Mapping

from calibrator.model import SeasonLot
from calibrator.science.lot_kinds import kind_of, log_density
from calibrator.science.stats import mean_of, sum_of_squares, two_sided_t
from calibrator.values import dataclass


@dataclass(frozen=True)
class Step:
    """How far densities stepped, a share with its 95 % interval."""

    share: float
    low: float
    high: float

    @property
    def seen(self) -> bool:
        """Does the interval leave zero out?"""
        return not self.low <= 0 <= self.high


@dataclass(frozen=True)
class Logs:
    """Logarithms of densities of one kind: how many, their mean, their sum of squares about it."""

    count: int
    mean: float
    squares: float


Grouped = Mapping[Hashable, Logs]


def grouped(lots: Iterable[SeasonLot], *, of_kinds: bool = True) -> Grouped:
    """The lots of each kind in sums; all in one where kinds are not to be kept apart."""
    found: dict[Hashable, list[float]] = {}
    for lot in lots:
        found.setdefault(kind_of(lot) if of_kinds else None, []).append(log_density(lot))
    return {kind: _logs(values) for kind, values in found.items()}


def _logs(values: list[float]) -> Logs:
    return Logs(len(values), mean_of(values), sum_of_squares(values))


def step_between(inside: Grouped, others: Grouped) -> Step | None:
    """How much denser the lots inside are than the others of their kinds; None where too few tell it.

    Source: NIST/SEMATECH e-Handbook, 4.1.4.1, the normal equations solved for the step (an analysis of
    covariance with one indicator). Kinds that are only on one side tell nothing of the step, but of the spread.
    """
    kinds = [*dict.fromkeys([*inside, *others])]
    weight = pulled = within = 0.0
    lots = 0
    for kind in kinds:
        one, other = inside.get(kind), others.get(kind)
        within += math.fsum(side.squares for side in (one, other) if side)
        lots += sum(side.count for side in (one, other) if side)
        if one and other:
            own = one.count * other.count / (one.count + other.count)
            weight, pulled = weight + own, pulled + own * (one.mean - other.mean)
            within += own * (one.mean - other.mean) ** 2
    df = lots - len(kinds) - 1
    if weight <= 0 or df < 1:
        return None
    value = pulled / weight
    rest = max(0.0, within - weight * value**2)
    half = two_sided_t(0.95, df) * math.sqrt(rest / df / weight)
    return Step(math.expm1(value), math.expm1(value - half), math.expm1(value + half))
