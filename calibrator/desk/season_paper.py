"""From the records to the season report. No window needed."""

from __future__ import annotations

from datetime import date
from itertools import islice

from calibrator.desk.mix_history import kept_checks
from calibrator.desk.needs import OFF, RIGHT, leans
from calibrator.desk.season.facts import Meaning, SeasonFacts
from calibrator.desk.season_points import change_share, last_two
from calibrator.model import Farm, SeasonLot
from calibrator.prints.season_facts import (
    MOST_BAGS_OFF,
    MOST_CARRIED,
    BagsOff,
    Carried,
    LastChange,
    MixChecks,
    SeasonReport,
)
from calibrator.records import Records
from calibrator.science.check_season import off_share
from calibrator.science.season_spread import SpreadFindings
from calibrator.science.stats import mean_of


def season_report_facts(records: Records, farm: Farm, on: date, languages: tuple[str, ...]) -> SeasonReport | None:
    """The farm's season; None where nothing is signed off yet."""
    facts = SeasonFacts(records, farm)
    if not facts.lots:
        return None
    spread = facts.spread
    return SeasonReport(
        farm_name=farm.name, season=facts.season, spread=spread if isinstance(spread, SpreadFindings) else None,
        checks=_checks(records, farm), tolerance_share=farm.tolerance_share, change=_change(facts),
        carried=_carried(facts), bags_off=_bags_off(facts), currency=farm.currency, printed_on=on, units=farm.units,
        paper=farm.paper, languages=languages,
    )  # fmt: skip


def _change(facts: SeasonFacts) -> LastChange | None:
    pair = last_two(facts.lots)
    if pair is None:
        return None
    before, last = pair
    taken_off = (_taken_off_g(facts, lot) for lot in (last, before))
    return LastChange(last.lot_number, before.lot_number, change_share(before, last), *taken_off)


def _taken_off_g(facts: SeasonFacts, lot: SeasonLot) -> float:
    level = facts.level_result(lot)
    return level.taken_off_g if level is not None else 0.0


def _bags_off(facts: SeasonFacts) -> tuple[BagsOff, ...]:
    newest = sorted(facts.bags_off.values(), key=lambda one: one.at)[-MOST_BAGS_OFF:]
    return tuple(BagsOff(o.lot.lot_number, o.result.mean_g, o.result.share) for o in newest if o.result is not None)


def _carried(facts: SeasonFacts) -> tuple[Carried, ...]:
    newest_first = ((facts.lots[place], facts.meaning(place)) for place in reversed(range(len(facts.lots))))
    found = (_carried_by(lot, told) for lot, told in newest_first if told is not None)
    return tuple(reversed(list(islice(found, MOST_CARRIED))))


def _carried_by(lot: SeasonLot, told: Meaning) -> Carried:
    own, names = told.carried, (lot.lot_number, told.before.lot_number)
    figures = (own.mass_g, own.low_g, own.high_g, own.share)
    return Carried(*names, *figures, told.solids, told.money_a_day, told.before.struck_level, told.wanting)


def _checks(records: Records, farm: Farm) -> MixChecks:
    every = [one.check for one in kept_checks(records, farm)]
    checks = [check for check in every if check.solids_share is not None and check.verdict]
    if not checks:
        return MixChecks()
    inside, outside = (sum(check.verdict in own for check in checks) for own in ((RIGHT,), OFF))
    leaning = sum(bool(leans(check)) for check in checks)
    off = mean_of([off_share(check.solids_share or 0.0, check.target_share) for check in checks])
    return MixChecks(inside, len(checks) - inside - leaning - outside, leaning, outside, off)
