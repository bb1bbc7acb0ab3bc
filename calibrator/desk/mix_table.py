"""The history of checks and counts of bags as a table for other programs. No window.

Headings are English here and put into the screen's language by `table_headings`; words in the cells are in that
language at once.
"""

from __future__ import annotations

from collections.abc import Sequence

from calibrator.desk.cell_words import answers, reading_words, told
from calibrator.desk.lot_history.words import topic_words
from calibrator.desk.mix_history import Counted, Kept, Names
from calibrator.desk.mix_words import powder_verdict_words, verdict_words, way_name
from calibrator.model import MixCheck, ReadingKind
from calibrator.model.underway import Underway, one_by_one, unwatched
from calibrator.records.lot_history import Topic
from calibrator.records.table_file import Cell, FlatTable, by_columns, rounded
from calibrator.science.check import Verdict
from calibrator.science.solids import SolidsFrom
from calibrator.science.stats import mean_of

READ = {
    ReadingKind.BRIX: ("mean reading (°Brix)", 3),
    ReadingKind.REFRACTOMETER_SG: ("mean reading (SG, sugar scale)", 4),
    ReadingKind.HYDROMETER_SG: ("mean hydrometer (SG)", 4),
    ReadingKind.JUG_MASS: ("mean mix in the jug (g)", 1),
    ReadingKind.PRISM_TEMPERATURE: ("refractometer (°C)", 1),
    ReadingKind.WATER_TEMPERATURE: ("water as shown (°C)", 1),
    ReadingKind.MIX_TEMPERATURE: ("mix as shown (°C)", 1),
    ReadingKind.CALF_TEMPERATURE: ("at the calf as shown (°C)", 1),
    ReadingKind.FINISHED_VOLUME: ("finished volume (mL)", 0),
    ReadingKind.FINISHED_LEVEL: ("finished level (mm)", 0),
}
COLUMNS = (
    "at", "kind", "lot", "product", "plan", "group", "calves", "vessel", "mixed by", "checked by",
    "solids wanted (%)", "tolerance (% solids)", "solids as mixed (%)", "solids low (%)", "solids high (%)", "way",
    "verdict", "counts as a batch", *(heading for heading, _ in READ.values()), "counted since", "bags", "bag (g)",
    "feedings", "powder wanted (g a feeding)", "powder (g a feeding)", "powder low (g a feeding)",
    "powder high (g a feeding)", "readings as typed", "note",
)  # fmt: skip


def history_table(
    kept: Sequence[Kept], counted: Sequence[Counted], known: Names, underway: Underway = unwatched
) -> FlatTable:
    """Checks and counts in the order of time, a row each."""
    said = _Said()
    rows = [(one.at.timestamp(), _check(one, known, said)) for one in one_by_one(kept, underway)]
    rows += [(one.at.timestamp(), _count(one, said)) for one in counted]
    return by_columns(COLUMNS, [row for _, row in sorted(rows, key=_moment)])


class _Said:
    """Words of ours in the cells, by what is kept."""

    def __init__(self) -> None:
        self.answers = answers()
        self.check, self.count = topic_words(Topic.MIX_CHECK), topic_words(Topic.BAG_COUNT)
        self.verdicts = {str(verdict): verdict_words(verdict) for verdict in Verdict}
        self.of_powder = {verdict: powder_verdict_words(verdict) for verdict in Verdict}
        self.ways = {str(way): way_name(way) for way in SolidsFrom}


def _moment(one: tuple[float, dict[str, Cell]]) -> float:
    return one[0]


def _check(one: Kept, known: Names, said: _Said) -> dict[str, Cell]:
    c = one.check
    typed = dict.fromkeys(map(reading_words, c.readings))
    return {
        "at": c.at, "kind": said.check, "lot": one.lot.lot_number, "product": one.lot.product,
        "plan": known.plans.get(c.plan_id or "", ""), "group": c.group_name, "calves": c.calves or None,
        "vessel": known.vessels.get(c.vessel_id or "", ""), "mixed by": c.feeder, "checked by": c.by,
        "solids wanted (%)": _pct(c.target_share), "tolerance (% solids)": _pct(c.tolerance_share),
        "solids as mixed (%)": _pct(c.solids_share), "solids low (%)": _pct(c.solids_low),
        "solids high (%)": _pct(c.solids_high), "way": told(said.ways, c.way),
        "verdict": told(said.verdicts, c.verdict), "counts as a batch": said.answers[not one.told_by], **_readings(c),
        "readings as typed": "; ".join(typed), "note": c.note,
    }  # fmt: skip


def _readings(check: MixCheck) -> dict[str, Cell]:
    found: dict[str, Cell] = {}
    for kind, (heading, digits) in READ.items():
        values = [r.value for r in check.readings if r.kind is kind]
        found[heading] = round(mean_of(values), digits) if values else None
    return found


def _count(one: Counted, said: _Said) -> dict[str, Cell]:
    c, found = one.count, one.result
    return {
        "at": c.at, "kind": said.count, "lot": one.lot.lot_number, "product": one.lot.product, "checked by": c.by,
        "verdict": said.of_powder[found.verdict] if found else "", "counted since": c.since, "bags": c.bags,
        "bag (g)": rounded(c.bag_mass_g, 1), "feedings": c.feedings,
        "powder wanted (g a feeding)": rounded(c.target_mass_g, 1),
        "powder (g a feeding)": rounded(found.mean_g, 1) if found else None,
        "powder low (g a feeding)": rounded(found.low_g, 1) if found else None,
        "powder high (g a feeding)": rounded(found.high_g, 1) if found else None,
    }  # fmt: skip


def _pct(share: float | None) -> float | None:
    return None if share is None else round(100 * share, 2)
