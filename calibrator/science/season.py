"""Lots over a season, whole: where the spread comes from (`components`), control charts (`charts`), two lots
compared and trends (`compare`), and how best to share the weighing between bags and fills.

On these stand, for a farm's rows as the records give them: `season_findings` (what happened), `lot_chart` (limits
by each lot's own doubt), `season_spread` (what follows for the work), `why` (what a density goes with) and
`within_lot` (bags of one lot, drift or jump)."""

from calibrator.science.charts import EwmaChart, IndividualsChart, ewma_chart, individuals_chart
from calibrator.science.compare import Difference, Trend, compare, trend
from calibrator.science.components import (
    AnovaRow,
    Components,
    Split,
    best_fills_each,
    best_split,
    components,
    one_way,
)

__all__ = [
    "AnovaRow",
    "Components",
    "Difference",
    "EwmaChart",
    "IndividualsChart",
    "Split",
    "Trend",
    "best_fills_each",
    "best_split",
    "compare",
    "components",
    "ewma_chart",
    "individuals_chart",
    "one_way",
    "trend",
]
