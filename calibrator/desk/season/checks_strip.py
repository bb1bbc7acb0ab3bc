"""Mix checks in the period of the lots above them: solids off their target with the running mean of each lot."""

from __future__ import annotations

from collections.abc import Sequence

from calibrator.desk.mix.check_plot import CheckPlot
from calibrator.desk.mix.history_rows import check_point
from calibrator.desk.mix_history import Kept


class ChecksStrip(CheckPlot):
    """The chart of the mix checks, low and without a will of its own over the days."""

    def show_checks(self, checks: Sequence[Kept], caption: str) -> None:
        """Draw these, oldest first; those that tell no solids have no place here."""
        self.show_points([point for one in checks if (point := check_point(one)) is not None], (), caption)

    def show_period(self, first: float, last: float) -> None:
        """Show the days that the chart above shows."""
        self.setXRange(first, last, padding=0)
