"""What the picture of the lots shows, said beneath it: only what is drawn is explained."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import QCoreApplication

if TYPE_CHECKING:
    from calibrator.desk.season.lots_plot import PlotLots

translate = QCoreApplication.translate


def legend_words(shown: PlotLots | None) -> str:
    """Bars, lines, limits, diamonds, outlines and numbers, each where there is one; blank without a lot."""
    if shown is None or not len(shown.keys):
        return ""
    told = [translate("Season", "Bars: 95 % intervals.")]
    if _joined(shown, np.isfinite(shown.limit_lows)):
        told.append(translate("Season", "Dashes: limits for a lot of its kind."))
    if _joined(shown, np.isfinite(shown.middles)):
        told.append(translate("Season", "Green: middle of a kind."))
    if _joined(shown, np.isfinite(shown.running)):
        told.append(translate("Season", "Orange: running mean."))
    if shown.marked.any():
        told.append(translate("Season", "Diamonds: out of line."))
    if shown.hollow.any():
        told.append(translate("Season", "Hollow: out of a file, not signed off."))
    if shown.tags:
        told.append(translate("Season", "Numbers: see above."))
    return " ".join(told)


def _joined(shown: PlotLots, known: np.ndarray[tuple[int], np.dtype[np.bool_]]) -> bool:
    """Whether two lots of one kind have a value for a line to join."""
    _, counts = np.unique(shown.series[known], return_counts=True)
    return bool((counts > 1).any())
