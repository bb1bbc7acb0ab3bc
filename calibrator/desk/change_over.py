"""The change-over to another lot: on which days it can have been, and what is kept of it. No window needed."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum

from calibrator.desk.standing import LotStanding, Standing
from calibrator.model import Lot, SignOff


class Wrong(StrEnum):
    """Why a lot cannot have been fed from a day on."""

    BEFORE_ARRIVAL = "before_arrival"
    BEFORE_WEIGHED = "before_weighed"  # told only where the day of arrival is not known
    BEFORE_OTHER = "before_other"  # another open lot was begun after it


@dataclass(frozen=True)
class Refused:
    """What stands against a day, the lot that it concerns and the day of that."""

    why: Wrong
    lot: Lot
    day: date


def refused(now: Standing, known: LotStanding, on: date) -> Refused | None:
    """Whether a lot can have been fed from a day on; None where it can."""
    lot, weighed = known.lot, _first_weighed(now.sign_offs, known.lot)
    if lot.arrived_on and on < lot.arrived_on:
        return Refused(Wrong.BEFORE_ARRIVAL, lot, lot.arrived_on)
    if not lot.arrived_on and weighed and on < weighed:
        return Refused(Wrong.BEFORE_WEIGHED, lot, weighed)
    later = [(other.fed_from, other) for other in _others(now, lot) if other.fed_from and other.fed_from > on]
    if later:
        day, other = max(later, key=lambda each: each[0])
        return Refused(Wrong.BEFORE_OTHER, other, day)
    return None


def change_over(now: Standing, known: LotStanding, on: date) -> tuple[Lot, ...]:
    """The lots to keep: this one fed from the day on. Another one said to be begun the same day was not."""
    taken_back = [replace(other, fed_from=None) for other in _others(now, known.lot) if other.fed_from == on]
    return (*taken_back, replace(known.lot, fed_from=on))


def _others(now: Standing, lot: Lot) -> list[Lot]:
    return [known.lot for known in now.open_lots if known.lot.id != lot.id]


def _first_weighed(sign_offs: Sequence[SignOff], lot: Lot) -> date | None:
    return next((signed.at.astimezone().date() for signed in sign_offs if signed.lot_id == lot.id), None)
