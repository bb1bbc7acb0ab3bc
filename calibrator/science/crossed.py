"""Two things crossed, each cell read several times: what each adds to the spread, and what both together do."""

from __future__ import annotations

import math
from collections.abc import Sequence

from calibrator.science.components import AnovaRow, analysis_row
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import finite
from calibrator.science.stats import mean_of, sum_of_squares
from calibrator.values import dataclass


@dataclass(frozen=True)
class Crossed:
    """Rows, columns, rows by columns, and readings within a cell; the first two are judged against the third.

    `each` is how many readings a cell has: their harmonic mean where the numbers differ. The variances are those of
    random effects, never below 0.
    """

    rows: AnovaRow
    columns: AnovaRow
    both: AnovaRow
    within: AnovaRow
    each: float

    @property
    def row_variance(self) -> float:
        return max(0.0, (self.rows.mean_square - self.both.mean_square) / (self.each * (self.columns.df + 1)))

    @property
    def both_variance(self) -> float:
        return max(0.0, (self.both.mean_square - self.within.mean_square) / self.each)


def crossed(cells: Sequence[Sequence[Sequence[float]]], least_within: float = 0.0) -> Crossed:
    """Analyse readings by row and column. Readings within a cell are never taken to vary less than `least_within`.

    Equal numbers: the balanced two-way analysis with random effects (Montgomery, Design and Analysis of Experiments,
    random-effects models). Unequal ones: the same of the unweighted means of the cells (Yates 1934). Raises
    CannotCompute for fewer than two rows or columns, for rows of unequal length, and where a cell has fewer than
    two readings.
    """
    wide = {len(row) for row in cells}
    if len(cells) < 2 or len(wide) != 1 or wide.pop() < 2:
        raise CannotCompute("It takes the same two people or more in two trials or more to compare them over time.")
    if any(len(cell) < 2 for row in cells for cell in row):
        raise CannotCompute("It takes two fills or more of each person in each trial to compare them over time.")
    means = [[mean_of([finite(value, "A value") for value in cell]) for cell in row] for row in cells]
    return _judged(means, [len(cell) for row in cells for cell in row], _within(cells, least_within))


def _within(cells: Sequence[Sequence[Sequence[float]]], least: float) -> AnovaRow:
    df = sum(len(cell) - 1 for row in cells for cell in row)
    squares = math.fsum(sum_of_squares(cell) for row in cells for cell in row)
    return analysis_row(max(squares, least * df), df)


def _judged(means: Sequence[Sequence[float]], sizes: Sequence[int], within: AnovaRow) -> Crossed:
    high, wide = len(means), len(means[0])
    each = len(sizes) / math.fsum(1 / size for size in sizes)
    rows, columns = [mean_of(row) for row in means], [mean_of(column) for column in zip(*means, strict=True)]
    middle = mean_of(rows)
    left = [
        mean - row - column + middle
        for own, row in zip(means, rows, strict=True)
        for mean, column in zip(own, columns, strict=True)
    ]
    both = analysis_row(each * math.fsum(one * one for one in left), (high - 1) * (wide - 1), within)
    return Crossed(
        analysis_row(each * wide * sum_of_squares(rows), high - 1, both),
        analysis_row(each * high * sum_of_squares(columns), wide - 1, both),
        both,
        within,
        each,
    )
