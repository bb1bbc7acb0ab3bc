"""Whose batch a finished volume is, where it is surely not that of the batch that was chosen."""

from __future__ import annotations

from collections.abc import Sequence

from calibrator.science.guard import positive
from calibrator.science.solids import Solids, SolidsFrom
from calibrator.science.stats import NORMAL_95


def instruments(found: Sequence[Solids]) -> list[Solids]:
    """The ways that were read with an instrument: they know nothing of the batch that was chosen."""
    return [solids for solids in found if solids.way is not SolidsFrom.FINISHED_VOLUME]


def is_batch(
    read_ml: float, u_ml: float, found: Sequence[Solids], batch_ml: float, target_share: float, tolerance_share: float
) -> bool:
    """Whether a finished volume as read is that of a batch (95 %), and every instrument allows its solids: its
    interval holds some of what that batch may be.

    Without an instrument the volume alone tells it. Raises CannotCompute for volumes not above zero.
    """
    off_ml = abs(positive(read_ml, "The finished volume") - positive(batch_ml, "The finished volume"))
    allowed = all(
        solids.low <= target_share + tolerance_share and solids.high >= target_share - tolerance_share
        for solids in instruments(found)
    )
    return off_ml <= NORMAL_95 * u_ml and allowed


def calves_of(read_ml: float, batch_ml: float, calves: int) -> int:
    """For how many calves a volume would be, where a batch for `calves` has `batch_ml`: at least one.

    Raises CannotCompute for volumes not above zero.
    """
    share = positive(read_ml, "The finished volume") / positive(batch_ml, "The finished volume")
    return max(1, round(calves * share))
