"""Powder at hand: how many days it lasts, and the day a new lot has to be weighed."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from datetime import date, timedelta

from calibrator.science.errors import CannotCompute
from calibrator.science.guard import not_negative, positive
from calibrator.values import dataclass


@dataclass(frozen=True)
class Stock:
    """What is left of a lot: weight, whole and begun packages, days it feeds in full, its last full day.

    `days` is None when nothing is fed.
    """

    left_g: float
    packages_left: float
    days: int | None
    last_full_day: date | None


def powder_in_g(packages: float, package_mass_g: float) -> float:
    """The powder in so many packages, begun ones as their parts, g. Raises CannotCompute for impossible figures."""
    return not_negative(packages, "The number of packages") * positive(package_mass_g, "The weight of a package")


def together_g(weights_g: Sequence[float | None]) -> float | None:
    """Weights added up, g; None where one of them is not known."""
    known_g = [weight_g for weight_g in weights_g if weight_g is not None]
    return math.fsum(known_g) if len(known_g) == len(weights_g) else None


def stock(packages: float, package_mass_g: float, fed_g: float, daily_g: float, today: date) -> Stock:
    """From packages delivered (or counted now, with nothing fed since) to days; `today` is still to be fed.

    Raises CannotCompute for negative figures, packages without weight, and more fed than there was.
    """
    bought = powder_in_g(packages, package_mass_g)
    left = bought - not_negative(fed_g, "The powder fed so far")
    if left < -1e-9 * bought:
        raise CannotCompute("More powder was fed than came: count the bags that are left.")
    left = max(0.0, left)
    if not_negative(daily_g, "The powder fed in a day") == 0:
        return Stock(left, left / package_mass_g, None, None)
    days = math.floor(left / daily_g * (1 + 1e-9))
    last = today + timedelta(days=days - 1) if 0 < days < 36500 else None
    return Stock(left, left / package_mass_g, days, last)


def stock_over(packages: float, package_mass_g: float, fed_g: float, needs_g: Sequence[float], today: date) -> Stock:
    """As `stock`, where every day takes its own: `needs_g` from today on, long enough to come to an end.

    What is left after the last of them is not looked at: `days` is then as many as were told, or None where
    none of them takes anything.
    """
    known = stock(packages, package_mass_g, fed_g, 0.0, today)
    days = full_days(known.left_g, needs_g)
    return replace(known, days=days, last_full_day=today + timedelta(days=days - 1) if days else None)


def full_days(left_g: float, needs_g: Sequence[float]) -> int | None:
    """How many days so much powder feeds in full, where every day takes its own: no more than were told, and None
    where none of them takes anything. Raises CannotCompute for negative figures."""
    if not any(not_negative(need, "The powder fed in a day") > 0 for need in needs_g):
        return None
    days, left = 0, not_negative(left_g, "The powder left") * (1 + 1e-9)
    for need in needs_g:
        left -= need
        if left < 0:
            break
        days += 1
    return days


def days_of_each(came_g: Sequence[float | None], left_g: float, needs_g: Sequence[float]) -> tuple[int | None, ...]:
    """How many further days each of the lots to come feeds in full, one after another, after `left_g` of this one.

    The last of one and the first of the next are fed together. None for a lot of which nobody said how much came
    (such a lot is left out), where nothing is fed, and where it would last beyond the days told.
    Raises CannotCompute for negative figures.
    """
    there_g, before = left_g, full_days(left_g, needs_g)
    found: list[int | None] = []
    for lot_g in came_g:
        days = None
        if lot_g is not None and before is not None:
            there_g += not_negative(lot_g, "The powder left")
            until = full_days(there_g, needs_g) or 0
            days, before = (until - before if until < len(needs_g) else None), until
        found.append(days)
    return tuple(found)


def about_packages(packages: float) -> int:
    """The nearest whole number of packages, a half counted as one whatever the last digit of a sum made of it.

    Raises CannotCompute for a negative number.
    """
    return math.floor(not_negative(packages, "The number of packages") * (1 + 1e-9) + 0.5)


def packages_needed(powder_g: float, package_mass_g: float) -> int:
    """Whole packages that hold a weight of powder. Raises CannotCompute for impossible weights."""
    wanted = not_negative(powder_g, "The weight of powder")
    return math.ceil(wanted / positive(package_mass_g, "The weight of a package") * (1 - 1e-9))


def packages_missing(needs_g: Sequence[float], left_g: float, package_mass_g: float) -> int:
    """Whole packages that have to come so that the powder left lasts through days that take so much each.

    Raises CannotCompute for impossible weights.
    """
    missing = math.fsum(needs_g) - not_negative(left_g, "The powder left")
    return packages_needed(max(0.0, missing), package_mass_g)
