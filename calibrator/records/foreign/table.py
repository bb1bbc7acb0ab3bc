"""Cells of a foreign table as they were found."""

from __future__ import annotations

from datetime import date, time

from calibrator.values import dataclass

Value = str | float | bool | date | time | None
"""What a cell holds; a datetime is a date too. Of an empty one None."""

MOST_ROWS = 200_000
MOST_COLUMNS = 300
MOST_CELLS = 8_000_000
"""Of all rows together: about half a gigabyte of memory."""

LARGEST_FILE_MB = 256


class CellError(str):
    """What stands where a spreadsheet could not work out a value: `#DIV/0!`, or a formula that it never worked out."""


class Share(float):
    """A number that the spreadsheet shows in percent: 0.26 stands there as 26 %."""


@dataclass(frozen=True)
class ForeignTable:
    """The rows of a sheet or text file from its first on, each as long as it has cells; empty rows are empty.

    `formulas` tells which cells (row, column, from 0) hold the value that a formula last had. `from_1904` tells from
    which day a workbook counts; None for text, which does not tell.
    """

    name: str
    rows: tuple[tuple[Value, ...], ...]
    formulas: frozenset[tuple[int, int]] = frozenset()
    from_1904: bool | None = None

    @property
    def columns(self) -> int:
        return max(map(len, self.rows), default=0)
