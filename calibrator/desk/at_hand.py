"""Powder at hand: what is left of the lot in use, how many days it lasts, the day a new lot is needed.

No window needed.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from calibrator.desk.standing import LotStanding, LotState, Standing
from calibrator.model import Lot, Plan
from calibrator.records import Records
from calibrator.science.as_fed import powder_of_day_g
from calibrator.science.mixing import powder_from
from calibrator.science.stock import Stock, stock_over

LONGEST_DAYS = 120
LOW_DAYS = 3
"""A weigh-in takes its day, and a delivery some: common practice, no source."""


@dataclass(frozen=True)
class AtHand:
    """The lot in use and what is left of it.

    `daily_g` is what today takes; `counted_on` is the day of the count that it rests on, None where it is what
    came less what the plans fed since `since`. `next_lot` is the one to go on with, weighed in or not; None
    where none has come.
    """

    lot: Lot
    stock: Stock
    daily_g: float
    since: date
    counted_on: date | None
    next_lot: LotStanding | None

    @property
    def needed_on(self) -> date | None:
        """The first day that the lot in use does not feed in full."""
        last = self.stock.last_full_day
        return last + timedelta(days=1) if last else None

    @property
    def low(self) -> bool:
        """Whether the next lot has to be seen to now."""
        days = self.stock.days
        return days is not None and days <= LOW_DAYS


def at_hand(records: Records, now: Standing, today: date) -> AtHand | None:
    """What is left of the lot in use; None without one, and where neither bags nor their weight are known.

    Raises CannotCompute where more was fed than came, and for plans that cannot be.
    """
    known = now.in_use
    if known is None:
        return None
    lot, counted = known.lot, known.lot.packages_left
    packages = counted.packages if counted else lot.package_count
    if packages is None or lot.package_mass_g is None or known.sign_off is None:
        return None
    first_fed = lot.fed_from or _first_sign_off(now, lot) or known.sign_off.at.date()
    since = counted.on if counted else first_fed
    fed = sum(_days_g(records, lot, since, min((today - since).days, LONGEST_DAYS)))
    needs = _days_g(records, lot, today, LONGEST_DAYS)
    left = stock_over(packages, lot.package_mass_g, fed, needs, today)
    return AtHand(lot, left, needs[0], since, counted.on if counted else None, _next(now.lots, known))


def _first_sign_off(now: Standing, lot: Lot) -> date | None:
    return next((s.at.date() for s in now.sign_offs if s.lot_id == lot.id), None)


def _days_g(records: Records, lot: Lot, first: date, days: int) -> list[float]:
    """What the plans take on so many days from the first on, each by its steps and the cold."""
    powder = powder_from(lot.composition)
    plans = [plan for plan in records.every(Plan, lot.farm_id) if plan.retired_on is None]
    if not any(group.steps for plan in plans for group in plan.groups):
        return [sum(powder_of_day_g(plan, powder, first) for plan in plans)] * days
    every = (first + timedelta(days=day) for day in range(days))
    return [sum(powder_of_day_g(plan, powder, on) for plan in plans) for on in every]


def _next(lots: Sequence[LotStanding], here: LotStanding) -> LotStanding | None:
    """The newest of the other lots that are not used up: what is weighed in goes before what is not."""
    others = [known for known in lots if known.lot.id != here.lot.id and known.state is not LotState.FINISHED]
    here_at = here.sign_off.at if here.sign_off else None
    others = [o for o in others if o.sign_off is None or (here_at is not None and o.sign_off.at >= here_at)]
    return max(others, key=lambda known: known.sign_off is not None, default=None)
