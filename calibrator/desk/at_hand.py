"""Powder at hand: what is left of the lot in use, how many days it lasts, the day a new lot is needed.

No window needed.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

from calibrator.desk.in_use import LotState
from calibrator.desk.standing import LotStanding, Standing
from calibrator.model import BagCount, Lot, Plan
from calibrator.science.as_fed import powder_of_day_g
from calibrator.science.errors import CannotCompute
from calibrator.science.mixing import powder_from
from calibrator.science.stock import Stock, full_days, packages_missing, stock, stock_over
from calibrator.values import dataclass

LONGEST_DAYS = 120
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
    fed = sum(_days_g(plans, lot, since, min((today - since).days, LONGEST_DAYS)))
    needs = _days_g(plans, lot, today, LONGEST_DAYS)
    left = stock_over(packages, lot.package_mass_g, fed, needs, today)
    others = _to_come(now)
    waiting = _waiting_g(others)
    over = _left_over(now, today)
    over_g = sum(old.left_g for old in over)
    signed_g = _waiting_g([known for known in others if known.state is LotState.WAITING])
    if waiting is not None:
        waiting += over_g
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
        signed_days=None if signed_g is None else full_days(left.left_g + signed_g + over_g, needs),
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
        days = min(max(0, (count.since - since).days), LONGEST_DAYS)
        fed_g = sum(_days_g(now.plans, lot, since, days)) + count.bags * count.bag_mass_g
        since = on = _day_of(count)
        packages = stock(packages, lot.package_mass_g, fed_g, 0.0, since).packages_left
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
    mass_g = known.lot.package_mass_g
    try:
        left_g = _left_g(now, known, now.today)
    except CannotCompute:
        return None
    return None if left_g is None or mass_g is None or left_g <= 0 else left_g / mass_g


def _left_over(now: Standing, today: date) -> tuple[LeftOver, ...]:
    """Of each lot that is no longer fed, the whole bags that the plans left of it until the next one was begun."""
    found = []
    for known in now.lots:
        try:
            left_g, mass_g = _left_g(now, known, today), known.lot.package_mass_g
        except CannotCompute:
            continue  # more was emptied than came: there is none to offer
        if left_g is not None and mass_g is not None and left_g >= mass_g:
            found.append(LeftOver(known.lot, left_g / mass_g, left_g))
    return tuple(found)


def _left_g(now: Standing, known: LotStanding, today: date) -> float | None:
    """What the plans left of a lot that is no longer fed, below zero where they took more than there was."""
    lot = known.lot
    if known.state is not LotState.LEFT_OVER:
        return None
    packages, since, _ = _begun_with(now, known)
    if packages is None or since is None or lot.package_mass_g is None:
        return None
    later = (o.lot.fed_from for o in now.lots if o.lot.id != lot.id and o.lot.fed_from and o.lot.fed_from >= since)
    days = (min(later, default=today) - since).days
    return packages * lot.package_mass_g - sum(_days_g(now.plans, lot, since, min(max(0, days), LONGEST_DAYS)))


def _to_come(now: Standing) -> list[LotStanding]:
    """The lots that came and are not fed yet, the one to go on with first."""
    follows = now.next_lot
    others = [known for known in now.lots if known.state in _TO_COME and known is not follows]
    return [follows, *others] if follows else others


def _beside(others: Sequence[LotStanding], left: Stock, needs: Sequence[float]) -> tuple[Beside, ...]:
    """What each lot gives once those before it are used up, the last of one and the first of the next fed together."""
    found, there_g, before = [], left.left_g, left.days
    for known in others:
        came_g, days = _came_g(known), None
        if came_g is not None and before is not None:
            there_g += came_g
            until = full_days(there_g, needs) or 0
            days, before = (until - before if until < len(needs) else None), until
        found.append(Beside(known, days))
    return tuple(found)


def _came_g(known: LotStanding) -> float | None:
    """The powder that came of a lot, or is left of one fed before; None where nobody said how much."""
    left, mass_g = known.lot.packages_left, known.lot.package_mass_g
    count = left.packages if left else known.lot.package_count
    return None if count is None or mass_g is None else count * mass_g


def _days_g(plans: Sequence[Plan], lot: Lot, first: date, days: int) -> list[float]:
    """What the plans take on so many days from the first on, each by its steps and the cold."""
    powder = powder_from(lot.composition)
    if not any(group.steps for plan in plans for group in plan.groups):
        return [sum(powder_of_day_g(plan, powder, first) for plan in plans)] * days
    every = (first + timedelta(days=day) for day in range(days))
    return [sum(powder_of_day_g(plan, powder, on) for plan in plans) for on in every]


def _waiting_g(others: Sequence[LotStanding]) -> float | None:
    """The powder of the other lots; None where it is not told of each."""
    told = [_came_g(known) for known in others]
    known_g = [came_g for came_g in told if came_g is not None]
    return sum(known_g) if len(known_g) == len(told) else None


def _to_order(needs: Sequence[float], left: Stock, waiting_g: float | None, package_mass_g: float) -> int | None:
    if waiting_g is None or left.days is None:
        return None
    return packages_missing(needs[:ORDER_DAYS], left.left_g + waiting_g, package_mass_g)
