"""What the line of one lot does with the next that is weighed with the same scoop. No window."""

from __future__ import annotations

from calibrator.desk.findings import read, work_out
from calibrator.desk.lessons import experience
from calibrator.model import Scoop, SeasonLot, WeighIn
from calibrator.records import Records
from calibrator.science.carried_over import settling_as_before
from calibrator.science.errors import CannotCompute
from calibrator.science.mark import OldLine, old_line


def with_line_of(records: Records, before: SeasonLot, last: SeasonLot, tolerance_share: float) -> OldLine | None:
    """What a feeding of the last lot weighs with the line of the lot before; None where that cannot be told.

    It cannot where the lot before has no line, or the last lot's fills are not in the records.
    """
    if before.down_wall_mm is None or before.target_mass_g is None:
        return None
    weigh_in = records.find(WeighIn, last.weigh_in_id)
    level = work_out(read(records, weigh_in.id, experience(records, weigh_in))).level
    if level is None:
        return None
    try:
        return old_line(
            records.revision(Scoop, last.scoop_revision).shape,
            level,
            settling_as_before(last, before),
            before.down_wall_mm,
            before.target_mass_g,
            tolerance_share,
            full_scoops=before.full_scoops or 0,
            to_line=before.to_line,
        )
    except CannotCompute:
        return None
