"""Which lot is fed, which ones wait, which are over: the rule for all pages. No window needed."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from enum import StrEnum

from calibrator.model import Lot


class LotState(StrEnum):
    """What a lot has come to."""

    DELIVERED = "delivered"
    BROUGHT_IN = "brought_in"  # from a file of another program, another lot came after it: it waits for nothing
    UNDER_WAY = "under_way"
    WAITING = "waiting"  # weighed in, and fed from its change-over on
    IN_USE = "in_use"
    LEFT_OVER = "left_over"  # was fed before the one in use, and nobody said that it is finished
    FINISHED = "finished"


WEIGHED_IN = (LotState.WAITING, LotState.IN_USE, LotState.LEFT_OVER)


def changed_over(lot: Lot, today: date) -> bool:
    """Whether the change-over to a lot is done.

    Only one told for a day to come asks the clock: its day came, and with a later feeding the day is over.
    """
    if lot.fed_from is None:
        return False
    return not lot.waits or not to_come(lot.fed_from, lot.fed_from_feeding, today)


def to_come(on: date, feeding: int, today: date) -> bool:
    """Whether a feeding of a day may be still to come."""
    return (on, feeding) > (today, 0)


def lot_fed(open_lots: Sequence[Lot], today: date) -> Lot | None:
    """The lot that is fed, of those weighed in and not finished, that of the newest sign-off last.

    That of the newest change-over; before any that of the newest sign-off. Where all of them wait, the next one.
    """
    begun = [lot for lot in open_lots if not lot.waits or changed_over(lot, today)]
    changed = [lot for lot in begun if lot.fed_from is not None]
    if changed:
        return max(changed, key=_when)
    return begun[-1] if begun else next_lot(open_lots)


def next_lot(waiting: Sequence[Lot]) -> Lot | None:
    """The lot to go on with: the first whose change-over is told, else the one that waits longest."""
    return min(waiting, key=_when, default=None)


def state_of(lot: Lot, fed: Lot, earlier: bool, today: date) -> LotState:
    """What an open lot has come to beside the one that is fed; `earlier` whether it was weighed in before that."""
    if lot.id == fed.id:
        return LotState.IN_USE
    over = changed_over(lot, today) or (earlier and not lot.waits)
    return LotState.LEFT_OVER if over else LotState.WAITING


def _when(lot: Lot) -> tuple[date, int]:
    return lot.fed_from or date.max, lot.fed_from_feeding
