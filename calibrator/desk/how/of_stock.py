"""How the days of powder at hand came about."""

from __future__ import annotations

from collections.abc import Iterator

from calibrator.desk import shown
from calibrator.desk.at_hand import ORDER_DAYS, AtHand, Beside
from calibrator.desk.how.working import Part, Working, figure, translate
from calibrator.desk.speech import day_text
from calibrator.model import UnitSystem

MOST_PLANS_TOLD = 8


def of_stock(found: AtHand, system: UnitSystem) -> Working:
    """What is left of the lot in use, and how long it lasts."""
    words = translate(
        "How",
        "What is left, less what the plans take day by day: steps to weaning and the cold count too, and today's "
        "feedings. Each past day counts by the plans as they were on it. What calves leave or spill is not known: "
        "count the bags now and then.",
    )
    parts = (_left(found, system), *_plans(found, system), *_days(found, system), *_order(found, system))
    source = translate("How", "conservation of mass")
    return Working(translate("How", "Powder at hand"), parts, (source,), words)


def _left(found: AtHand, system: UnitSystem) -> Part:
    if found.counted_on is not None:
        text = translate("How", "counted on {day}: {number} × {mass}, less {fed} by the plans since")
    elif found.lot.packages_left is not None:
        text = translate("How", "left on {day} by the plans: {number} × {mass}, less {fed} by the plans since")
    else:
        text = translate("How", "what came: {number} × {mass}, less {fed} by the plans since {day}")
    told = text.format(
        day=day_text(found.since),
        number=figure(found.packages, 1),
        mass=shown.mass(found.lot.package_mass_g or 0.0, system),
        fed=shown.mass(found.fed_g, system),
    )
    return Part(translate("How", "Left"), told, shown.mass(found.stock.left_g, system))


def _plans(found: AtHand, system: UnitSystem) -> Iterator[Part]:
    working = translate("How", "calves × powder of a feeding × feedings a day, hoses and pails included")
    for name, daily_g in found.by_plan[:MOST_PLANS_TOLD]:
        yield Part(name, working, shown.mass(daily_g, system))
    yield Part(translate("How", "All plans today"), translate("How", "added up"), shown.mass(found.daily_g, system))


def _days(found: AtHand, system: UnitSystem) -> Iterator[Part]:
    if found.stock.days is None:
        return
    working = translate("How", "full days: {left} less what each day takes, today's {daily} first")
    told = working.format(left=shown.mass(found.stock.left_g, system), daily=shown.mass(found.daily_g, system))
    yield Part(translate("How", "Days at hand"), told, str(found.stock.days))
    yield from (_beside(each, system) for each in found.beside if each.days is not None)


def _beside(beside: Beside, system: UnitSystem) -> Part:
    lot = beside.known.lot
    working = translate(
        "How", "full days of what came of it: {number} × {mass}, and of what is left of the lots before"
    )
    told = working.format(
        number=figure(lot.package_count or 0.0, 1), mass=shown.mass(lot.package_mass_g or 0.0, system)
    )
    return Part(translate("How", "Days in lot {lot}").format(lot=lot.lot_number), told, str(beside.days))


def _order(found: AtHand, system: UnitSystem) -> Iterator[Part]:
    if found.to_order is None:
        return
    working = translate(
        "How", "what {days} days take, less what is left and {waiting} of other lots, in whole ones like these"
    )
    told = working.format(days=ORDER_DAYS, waiting=shown.mass(found.waiting_g or 0.0, system))
    yield Part(translate("How", "To order"), told, str(found.to_order))
