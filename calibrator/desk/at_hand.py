"""Powder at hand: what is left of the lot in use, how many days it lasts, the day a new lot is needed.

No window needed.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

from calibrator.desk.in_use import LotState
from calibrator.desk.standing import LotStanding, Standing
from calibrator.model import BagCount, Lot, Plan
from calibrator.science.as_fed import fed_between, powder_of_day_g, powder_of_days_g
from calibrator.science.errors import CannotCompute
from calibrator.science.mixing import powder_from
from calibrator.science.stock import (
    Stock,
    days_of_each,
    full_days,
    packages_missing,
    powder_in_g,
    stock,
    stock_over,
    together_g,
)
from calibrator.values import dataclass

LONGEST_DAYS = 120
"""So far ahead days are told; what was fed is counted however long ago it began."""
ORDER_DAYS = 30
LOW_DAYS = 3
"""A weigh-in takes its day, and a delivery some: common practice, no source."""

_TO_COME = (LotState.WAITING, LotState.DELIVERED, LotState.UNDER_WAY)


@dataclass(frozen=True)
class LeftOver:
    """Whole bags left of a lot that is no longer fed, and that nobody said is finished."""

    lot: Lot
    packages: float
    left_g: float


@dataclass(frozen=True)
class Beside:
    """A lot that came and is not fed yet: how many days it feeds after the lots before it. None where nobody said how
    much came of it, and where it would last beyond the days looked at."""

    known: LotStanding
    days: int | None


@dataclass(frozen=True)
class AtHand:
    """The lot in use and what is left of it.

    `daily_g` is what today takes; `counted_on` is the day of the count that it rests on, of bags left or of bags
    emptied, None where it is what came, or was left as the lot was fed again, less what the plans fed since `since`:
    `packages` less `fed_g`. `by_plan` is what each plan takes today.
    `to_order` is how many packages like these have to come for the next `ORDER_DAYS` days, the other lots' `waiting_g`
    and what is `left_over` of earlier ones counted in; None where nobody said how much came of those. `beside` are
    the lots to come in the order they are gone on with, weighed in or not. `signed_days` are those that all that is
    weighed in, that of this lot, of those that wait and what is left of earlier ones, feeds in full, `LONGEST_DAYS` at
    most; None where nothing is fed, and where nobody said how much came of a lot that waits.
    """

    lot: Lot
    today: date
    stock: Stock
    daily_g: float
    since: date
    counted_on: date | None
    packages: float
    fed_g: float
    by_plan: tuple[tuple[str, float], ...]
    waiting_g: float | None
    to_order: int | None
    beside: tuple[Beside, ...] = ()
    left_over: tuple[LeftOver, ...] = ()
    signed_days: int | None = None

    @property
    def lasts(self) -> bool:
        """Whether what is weighed in feeds longer than days are told."""
        return self.signed_days == LONGEST_DAYS

    @property
    def new_lot_on(self) -> date | None:
        """The first day that what is weighed in does not feed in full; None where that is not known, and where it
        `lasts`."""
        if self.signed_days is None or self.lasts:
            return None
        return self.today + timedelta(days=self.signed_days)

    @property
    def next_lot(self) -> LotStanding | None:
        """The lot to go on with, weighed in or not; None where none has come."""
        return self.beside[0].known if self.beside else None

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


def at_hand(now: Standing, today: date) -> AtHand | None:
    """What is left of the lot in use; None without one, and where neither bags nor their weight are known.

    Raises CannotCompute where more was fed than came, and for plans that cannot be.
    """
    known = now.in_use
    if known is None:
        return None
    lot, plans = known.lot, now.plans
    packages, since, counted_on = _begun_with(now, known)
    if packages is None or lot.package_mass_g is None or since is None:
        return None
    powder = powder_from(lot.composition)
    fed = fed_between(now.plans_told, powder, since, today).powder_g
    needs = powder_of_days_g(plans, powder, today, LONGEST_DAYS)
    left = stock_over(packages, lot.package_mass_g, fed, needs, today)
    others = _to_come(now)
    over = _left_over(now, today)
    over_g = [old.left_g for old in over]
    waiting = together_g([*map(_came_g, others), *over_g])
    signed_g = together_g([left.left_g, *(_came_g(o) for o in others if o.state is LotState.WAITING), *over_g])
    return AtHand(
        lot=lot,
        today=today,
        stock=left,
        daily_g=needs[0],
        since=since,
        counted_on=counted_on,
        packages=packages,
        fed_g=fed,
        by_plan=by_plan_g(plans, lot, today),
        waiting_g=waiting,
        to_order=_to_order(needs, left, waiting, lot.package_mass_g),
        beside=_beside(others, left, needs),
        left_over=over,
        signed_days=None if signed_g is None else full_days(signed_g, needs),
    )


def by_plan_g(plans: Sequence[Plan], lot: Lot, on: date) -> tuple[tuple[str, float], ...]:
    """What each plan takes of a lot on a day, g, by its name. Raises CannotCompute for a plan that cannot be."""
    return tuple((plan.name, powder_of_day_g(plan, powder_from(lot.composition), on)) for plan in plans)


def packages_left(now: Standing, today: date) -> float | None:
    """How many bags are left of the lot in use; None where that cannot be told."""
    try:
        found = at_hand(now, today)
    except CannotCompute:
        return None
    return found.stock.packages_left if found else None


def _begun_with(now: Standing, known: LotStanding) -> tuple[float | None, date | None, date | None]:
    """The bags as counted last, else as they came; since when those are fed from; the day of the count.

    Bags counted as emptied since a day are the new start too: what was there that day by count and plans, less them.
    Raises CannotCompute where more was emptied than there was.
    """
    lot, left = known.lot, known.lot.packages_left
    packages: float | None = left.packages if left else lot.package_count
    since = left.on if left else lot.fed_from or now.first_weighed(lot.id)
    on = left.on if left and left.typed else None
    for count in _one_after_another(
        [c for c in now.bag_counts if c.lot_id == lot.id and c.since >= (left.on if left else date.min)]
    ):
        if packages is None or since is None or lot.package_mass_g is None:
            break
        fed_g = fed_between(now.plans_told, powder_from(lot.composition), since, count.since).powder_g
        since = on = _day_of(count)
        there = stock(packages, lot.package_mass_g, fed_g, 0.0, since)
        emptied_g = powder_in_g(count.bags, count.bag_mass_g)
        packages = stock(there.packages_left, lot.package_mass_g, emptied_g, 0.0, since).packages_left
    return packages, since, on


def _one_after_another(counts: Sequence[BagCount]) -> list[BagCount]:
    """The newest count and those that were over when it began, the oldest first: no bag is taken off twice."""
    found: list[BagCount] = []
    for count in sorted(counts, key=lambda count: count.at, reverse=True):
        if not found or _day_of(count) <= found[0].since:
            found.insert(0, count)
    return found


def _day_of(count: BagCount) -> date:
    return count.at.astimezone().date()


def left_of(now: Standing, known: LotStanding) -> float | None:
    """How many bags, a begun one as its part, the plans left of a lot that is no longer fed; None where that cannot be
    told."""
    left = _left(now, known, now.today)
    return left.packages_left if left and left.packages_left > 0 else None


def _left_over(now: Standing, today: date) -> tuple[LeftOver, ...]:
    """Of each lot that is no longer fed, the whole bags that the plans left of it until the next one was begun."""
    told = ((known.lot, _left(now, known, today)) for known in now.lots)
    return tuple(
        LeftOver(lot, left.packages_left, left.left_g)
        for lot, left in told
        if left is not None and left.packages_left >= 1
    )


def _left(now: Standing, known: LotStanding, today: date) -> Stock | None:
    """What the plans left of a lot that is no longer fed; None where that cannot be told, and where they took more
    than there was."""
    lot = known.lot
    if known.state is not LotState.LEFT_OVER:
        return None
    try:
        packages, since, _ = _begun_with(now, known)
        if packages is None or since is None or lot.package_mass_g is None:
            return None
        later = (o.lot.fed_from for o in now.lots if o.lot.id != lot.id and o.lot.fed_from and o.lot.fed_from >= since)
        until = min(later, default=today)
        fed_g = fed_between(now.plans_told, powder_from(lot.composition), since, until).powder_g
        return stock(packages, lot.package_mass_g, fed_g, 0.0, until)
    except CannotCompute:
        return None


def _to_come(now: Standing) -> list[LotStanding]:
    """The lots that came and are not fed yet, the one to go on with first."""
    follows = now.next_lot
    others = [known for known in now.lots if known.state in _TO_COME and known is not follows]
    return [follows, *others] if follows else others


def _beside(others: Sequence[LotStanding], left: Stock, needs: Sequence[float]) -> tuple[Beside, ...]:
    """What each lot gives once those before it are used up."""
    each = days_of_each([_came_g(known) for known in others], left.left_g, needs)
    return tuple(Beside(known, days) for known, days in zip(others, each, strict=True))


def _came_g(known: LotStanding) -> float | None:
    """The powder that came of a lot, or is left of one fed before; None where nobody said how much."""
    left, mass_g = known.lot.packages_left, known.lot.package_mass_g
    count = left.packages if left else known.lot.package_count
    return None if count is None or mass_g is None else powder_in_g(count, mass_g)


def _to_order(needs: Sequence[float], left: Stock, waiting_g: float | None, package_mass_g: float) -> int | None:
    if waiting_g is None or left.days is None:
        return None
    return packages_missing(needs[:ORDER_DAYS], left.left_g + waiting_g, package_mass_g)
