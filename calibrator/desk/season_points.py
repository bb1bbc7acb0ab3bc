"""The last change of lot: two lots weighed with one scoop, and what the line of the first does with the second."""

from __future__ import annotations

from collections.abc import Sequence

from calibrator.desk.findings import read, work_out
from calibrator.desk.lessons import experience
from calibrator.model import Scoop, SeasonLot, WeighIn
from calibrator.records import Records
from calibrator.science.carried_over import settling_as_before
from calibrator.science.errors import CannotCompute
from calibrator.science.mark import OldLine, old_line


def last_two(lots: Sequence[SeasonLot]) -> tuple[SeasonLot, SeasonLot] | None:
    """The last weighing that has an earlier lot with the same scoop, and that one; None where there is none."""
    for place in range(len(lots) - 1, -1, -1):
        last = lots[place]
        before = (one for one in lots[:place][::-1] if one.scoop_id == last.scoop_id and one.lot_id != last.lot_id)
        if (found := next(before, None)) is not None:
            return found, last
    return None


def change_share(before: SeasonLot, last: SeasonLot) -> float:
    """How much denser the later lot is, as a share of the earlier."""
    return last.density_g_per_ml / before.density_g_per_ml - 1


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
