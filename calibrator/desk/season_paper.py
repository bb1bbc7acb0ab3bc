"""From the records to the season report. No window needed."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from itertools import islice

from calibrator.desk.mix_history import kept_checks
from calibrator.desk.needs import OFF, RIGHT, leans
from calibrator.desk.season.facts import Meaning, SeasonFacts
from calibrator.desk.season_points import change_share, last_two
from calibrator.model import Farm, SeasonLot
from calibrator.prints.season_facts import MOST_CARRIED, Carried, LastChange, MixChecks, SeasonReport
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
        checks=_checks(records, farm), tolerance_share=farm.tolerance_share, change=_change(facts.lots),
        carried=_carried(facts), currency=farm.currency, printed_on=on, units=farm.units, paper=farm.paper,
        languages=languages,
    )  # fmt: skip


def _change(lots: Sequence[SeasonLot]) -> LastChange | None:
    pair = last_two(lots)
    if pair is None:
        return None
    before, last = pair
    return LastChange(last.lot_number, before.lot_number, change_share(before, last))


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
