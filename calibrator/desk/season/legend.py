"""The key to the picture of the lots: only what is drawn is explained."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import QCoreApplication

from calibrator.desk.widgets.picture_key import Entry, Sign

if TYPE_CHECKING:
    from calibrator.desk.season.lots_plot import PlotLots

translate = QCoreApplication.translate


def legend(shown: PlotLots | None) -> list[Entry]:
    """Bars, lines, limits, diamonds, outlines and numbers, each where there is one; none without a lot."""
    if shown is None or not len(shown.keys):
        return []
    told = [Entry(Sign.BAR, "quiet", translate("Season", "almost surely within (95 % interval)"))]
    if _joined(shown, np.isfinite(shown.limit_lows)):
        told.append(Entry(Sign.DASHES, "quiet", translate("Season", "where a usual lot of this powder lies")))
    if _joined(shown, np.isfinite(shown.middles)):
        told.append(Entry(Sign.DOTS, "good", translate("Season", "average of this powder")))
    if _joined(shown, np.isfinite(shown.running)):
        told.append(Entry(Sign.LINE, "mark", translate("Season", "running mean")))
    if shown.marked.any():
        told.append(Entry(Sign.DIAMOND, "mark", translate("Season", "out of line")))
    if shown.hollow.any():
        told.append(Entry(Sign.RING, "action", translate("Season", "out of a file, not signed off")))
    if shown.tags:
        told.append(Entry(Sign.NUMBER, "action", translate("Season", "what happened, see above")))
    return told


def _joined(shown: PlotLots, known: np.ndarray[tuple[int], np.dtype[np.bool_]]) -> bool:
    """Whether two lots of one kind have a value for a line to join."""
    _, counts = np.unique(shown.series[known], return_counts=True)
    return bool((counts > 1).any())
