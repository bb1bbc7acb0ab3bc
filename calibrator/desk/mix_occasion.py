"""Which lots a check may be of, and at what moment a batch can have been mixed. No window."""

from __future__ import annotations

from datetime import date, datetime, time
from enum import StrEnum

from calibrator.desk.in_use import WEIGHED_IN, LotState
from calibrator.desk.standing import LotStanding, Standing
from calibrator.model import Lot
from calibrator.values import dataclass

MIDDAY = time(12)


@dataclass(frozen=True)
class Offered:
    """A lot that a batch can have been mixed from; `weighed_on` is the day of its first sign-off, None before one."""

    lot: Lot
    state: LotState
    weighed_on: date | None = None

    @property
    def in_use(self) -> bool:
        return self.state is LotState.IN_USE


def offered_lots(now: Standing) -> tuple[Offered, ...]:
    """The lot in use first, then the other open ones, those not weighed in, those finished; newest first."""
    found = [Offered(known.lot, known.state, now.first_weighed(known.lot.id)) for known in reversed(now.lots)]
    return tuple(sorted(found, key=_order))


def _order(one: Offered) -> tuple[bool, bool, bool]:
    return not one.in_use, one.state is LotState.FINISHED, one.state not in WEIGHED_IN


def known_lot(now: Standing, lot_id: str) -> LotStanding | None:
    """A lot by its id; the lot in use for a blank one."""
    return now.lot(lot_id) if lot_id else now.in_use


def moment(day: date | None, at: time | None, now: datetime) -> datetime:
    """When a batch was mixed, on the clock of this computer: without a day today, without both now.

    An earlier day without a time is taken for its midday, today without one for now.
    """
    here = now.astimezone()
    if day in (None, here.date()) and at is None:
        return now
    # Made anew from the wall clock, so that the hour of summer time is that of its own day.
    return datetime.combine(day or here.date(), at or MIDDAY).astimezone()


class Wrong(StrEnum):
    """Why a batch cannot have been mixed then."""

    TO_COME = "to_come"
    BEFORE_LOT = "before_lot"


def wrong_with(at: datetime, lot: Lot | None, now: datetime) -> Wrong | None:
    """Whether a batch of this lot can have been mixed then; None where it can."""
    if at > now:
        return Wrong.TO_COME
    came = lot.arrived_on if lot else None
    return Wrong.BEFORE_LOT if came and at.astimezone().date() < came else None
