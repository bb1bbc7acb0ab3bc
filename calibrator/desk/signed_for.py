"""What powder of a feeding the lot in use was signed off for. No window needed."""

from __future__ import annotations

from calibrator.desk.standing import Standing
from calibrator.model import WeighIn
from calibrator.records import Records
from calibrator.values import dataclass


@dataclass(frozen=True)
class SignedFor:
    """The weights that a lot's lines were drawn for, the newest last; that one also as it was typed."""

    targets_g: tuple[float, ...]
    typed: str

    @property
    def newest_g(self) -> float:
        return self.targets_g[-1]


def signed_for(records: Records, now: Standing) -> SignedFor | None:
    """Those of the lot in use; None where no line was drawn."""
    known = now.in_use
    if known is None or known.sign_off is None or not known.marks:
        return None
    weigh_in = records.find(WeighIn, known.sign_off.weigh_in_id)
    marked = [mark.target_mass_g for mark in known.marks]
    # Of equal scoopfuls to one line the mark tells one.
    feeding = [] if weigh_in.target_mass_g in (None, marked[-1]) else [weigh_in.target_mass_g]
    return SignedFor((*marked, *feeding), weigh_in.target_typed)
