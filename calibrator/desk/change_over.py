"""The change-over to another lot: when it can be, and what is kept of it and of its scoops. No window needed."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from enum import StrEnum

from calibrator.desk.in_use import LotState, changed_over, lot_fed, to_come
from calibrator.desk.scoop_lines import words_so_far
from calibrator.desk.standing import LotStanding, Standing
from calibrator.model import Lot
from calibrator.records import Records
from calibrator.values import dataclass

WHY = "change-over"
GIVEN_UP = -1  # before the first feeding of the day: another lot took over on the day that this one was begun


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
    lot, weighed = known.lot, now.first_weighed(known.lot.id)
    if lot.arrived_on and on < lot.arrived_on:
        return Refused(Wrong.BEFORE_ARRIVAL, lot, lot.arrived_on)
    if not lot.arrived_on and weighed and on < weighed:
        return Refused(Wrong.BEFORE_WEIGHED, lot, weighed)
    begun = [other for other in _others(now, lot) if changed_over(other, now.today)]
    later = [(other.fed_from, other) for other in begun if other.fed_from and other.fed_from > on]
    if later:
        day, other = max(later, key=lambda each: each[0])
        return Refused(Wrong.BEFORE_OTHER, other, day)
    return None


@dataclass(frozen=True)
class FedFrom:
    """From when on a lot is fed: a day, and its feeding; none is the next one, whichever that is."""

    on: date
    feeding: int | None = None

    def is_done(self, today: date) -> bool:
        """Whether the lot is fed from now on; else it waits for that feeding."""
        return self.feeding is None or not to_come(self.on, self.feeding, today)


def change_over(now: Standing, known: LotStanding, when: FedFrom) -> tuple[Lot, ...]:
    """The lots to keep: this one fed from then on. Another one that is planned for just then is not; one that was
    begun just then was fed before it."""
    others, on, feeding = _others(now, known.lot), when.on, when.feeding or 0
    if when.feeding is None:  # now is after all that was begun, even where the clock was ahead then
        on = max([on, *(o.fed_from for o in others if o.fed_from and changed_over(o, now.today))])
    same = [other for other in others if (other.fed_from, other.fed_from_feeding) == (on, feeding)]
    taken_back = [
        replace(other, fed_from_feeding=GIVEN_UP)
        if changed_over(other, now.today)
        else replace(other, fed_from=None, fed_from_feeding=0)
        for other in same
    ]
    asks = known.state is LotState.IN_USE and known.lot.waits  # a day that is mended answers nothing else
    waits = asks or not when.is_done(now.today)
    begun = replace(known.lot, fed_from=on, fed_from_feeding=feeding, waits=waits, finished_on=None)
    return (*taken_back, begun)


def with_old_finished(now: Standing, told: Sequence[Lot], on: date) -> tuple[Lot, ...]:
    """What a change-over keeps, the lot that is begun last, where nothing is left of the one fed until then."""
    fed = now.in_use.lot if now.in_use else None
    if fed is None or told[-1].id == fed.id:
        return tuple(told)
    return (*(lot for lot in told if lot.id != fed.id), replace(fed, finished_on=on))


def old_to_ask_of(now: Standing) -> LotStanding | None:
    """The lot that was fed until a change-over planned ahead, which came by the clock: nobody was asked yet whether
    any of it is left. None where that was answered."""
    fed = now.in_use
    if fed is None or not fed.lot.waits:
        return None
    over = lot_fed([known.lot for known in now.open_lots if known.state is LotState.LEFT_OVER], now.today)
    return now.lot(over.id) if over else None


def answered(now: Standing, *, old_is_finished: bool) -> tuple[Lot, ...]:
    """The lots to keep once it was said whether any is left of the lot fed until a change-over that came."""
    fed, old = now.in_use, old_to_ask_of(now)
    if fed is None or old is None:
        return ()
    told = replace(fed.lot, waits=False)
    return (told, replace(old.lot, finished_on=fed.lot.fed_from)) if old_is_finished else (told,)


def asked_at_sign_off(now: Standing, lot: Lot) -> LotStanding | None:
    """The lot that is fed, where it has to be said from when on the one weighed in is fed in its place."""
    fed, known = now.in_use, now.lot(lot.id)
    told = known is not None and (known.lot.waits or known.lot.fed_from is not None)
    return None if fed is None or fed.lot.id == lot.id or told else fed


def before_sign_off(now: Standing, lot: Lot) -> Lot:
    """The lot as it is kept before it is signed off: it takes no other's place, and its scoops wait for the line."""
    waits = lot.waits or asked_at_sign_off(now, lot) is not None
    return replace(lot, waits=waits, scoops_marked=words_so_far(now, lot))


def finished(now: Standing, known: LotStanding, on: date) -> tuple[Lot, ...]:
    """The lots to keep once the last of one was fed: after the one in use the next one is fed."""
    follows = now.next_lot if known.state is LotState.IN_USE else None
    begun = change_over(now, follows, FedFrom(on)) if follows else ()
    asked = old_to_ask_of(now)
    if asked is not None and asked.lot.id == known.lot.id:
        begun = answered(now, old_is_finished=True)
    return (*(lot for lot in begun if lot.id != known.lot.id), replace(known.lot, finished_on=on))


def as_before(lot: Lot, before: Lot) -> Lot:
    """A lot as it is now, with what was told `before` of when it is fed; all else that was told of it since stays."""
    return replace(
        lot,
        fed_from=before.fed_from,
        fed_from_feeding=before.fed_from_feeding,
        waits=before.waits,
        finished_on=before.finished_on,
    )


def keep_lots(records: Records, lots: Sequence[Lot], by: str, why: str = WHY) -> list[Lot]:
    """Keep what a change-over tells of the lots."""
    return [records.keep(lot, by=by, why=why) for lot in lots]


def _others(now: Standing, lot: Lot) -> list[Lot]:
    return [known.lot for known in now.open_lots if known.lot.id != lot.id]
